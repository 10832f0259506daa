import type { MeaningOf } from "./meaning.ts";

/** What the gauge reads. */
export const pressure: MeaningOf<"pressure"> = {
  cost: "clearing",
  plainly: true,
  report: true,
  when: ["load:in-steam"],
  slots: { target: "name", at: "instant", value: "number", unit: "word" },
  example: "eleven pounds on the gauge",
  finish: (raw, { pressureUnit = "psi" }) => ({
    slots: { ...raw, unit: raw.unit ?? pressureUnit },
  }),
  wordings: [
    `[<gauge-subject>] <at-value> {value:number} <pressure-unit> [<gauge-tail>] [<gauge-tail>]
    [<when>]`,
    `[<gauge-subject>] [<got>|<got> a steady|<got> about] {value:number} <pressure-unit>
    [<gauge-tail>] [<gauge-tail>] [<when>]`,
    `<got> (it|her|him|them|everything|the canner) [<still>] [holding|running|sitting|steady]
    <at-value> {value:number} <pressure-unit> [<gauge-tail>] [<when>]`,
    "<gauge-name> [<at-value>] {value:number} [<gauge-tail>] [<gauge-tail>] [<when>]",
    `[<gauge-subject>] (<got>|<at-value>) {value:number} (on|showing on|by) <gauge-name>
    [<gauge-tail>] [<when>]`,
    "{value:number} (on|showing on) <gauge-name> [<gauge-tail>] [<when>]",
    "{value:number} [and] (holding|holding steady) [on <gauge-name>] [<when>]",
    `[<we>|<it>] [am|is|are|have|has] [<got>] <at-value> (target|full|working|our|the) [<gauge>]
    [pressure] [of|at|which is] {value:number} [<pressure-unit>] [<when>]`,
    `(we have reached|reached|we are up to|we hit|up to|we have got|holding|at) [target|full]
    pressure [of|at] {value:number} [<pressure-unit>] [<when>]`,
  ],
  spoken: [
    "{value:number} {unit=psi} pounds [of pressure|on the gauge]",
    "[it is|the gauge is|we are] at {value:number} {unit=psi} pounds",
    "the gauge (says|reads) {value:number} {unit=psi} [pounds]",
    { set: { value: 0, unit: "psi" }, phrases: ["[the] pressure is zero"] },
  ],
  bags: [
    {
      must: ["<at-value> {value:number} <pressure-unit>|{value:number} <pressure-unit>"],
      may: `
        <it>|<we>|<gauge-name>|<is>|<shows>|<still>|<gauge-tail>|<when>|<way>|<approx>|the
        canner|on the|canner|she|all|and|there|here
      `,
    },
    {
      must: ["{value:number}", "<gauge-name>"],
      may: "<it>|<we>|<is>|<shows>|<still>|<gauge-tail>|<when>|<way>|<approx>|<at>|<climbed>|and",
    },
  ],
  lists: {
    gauge: "<gauge-name>|the canner|canner|<the> pressure canner",
    "pressure-unit": "{unit=psi} <psi>|{unit=kPa} <kpa>",
    "gauge-subject": `
      <gauge>|<it>|<we>|everything|<gauge-name> (on|of|in) {target}|
      {target} [<is>] [<still>] [holding|sitting|running|steady|holding steady|come|came|
      gotten|got]|
      <gauge-name> on the canner
    `,
    "gauge-tail": `
      on <gauge>|in {target}|in the canner|steady|even|holding|<still>|of pressure|pressure|
      showing|flat|and holding steady|and staying there|up|on the nose|on the dot|exactly|gauge
      pressure
    `,
  },
};
