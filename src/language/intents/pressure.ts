import { runs } from "../context.ts";
import { wordSet } from "../grammar/word-set.ts";
import { OR_ANOTHER, RISEN_NEAR, RISING, SHORT } from "../values/rough-values.ts";
import type { MeaningOf } from "./meaning.ts";

/** A name and pounds are a pressure where one of these says so. */
const OF_A_GAUGE = wordSet(
  "at on to up reads read says shows showing holding holds pressure psi kpa gauge dial needle " +
    "steady canner sitting sits stands climbed reached hit rising",
);

/** What the gauge reads. */
export const pressure: MeaningOf<"pressure"> = {
  cost: "clearing",
  tellsOf: { about: "pressure", comes: true },
  plainly: true,
  report: true,
  shaken: {
    clause: [RISING, RISEN_NEAR, SHORT, OR_ANOTHER, /\bon me\b/],
  },
  when: ["load:in-steam"],
  slots: { target: "name", at: "instant", value: "gauge", unit: "word" },
  example: "eleven pounds on the gauge",
  finish: (raw, { pressureUnit = "psi", loads }, _plain, said) => {
    const plainly = said.words.some(({ word }) => OF_A_GAUGE.has(word));
    const empty = loads?.every((load) => {
      return !load.inside && !runs([load], ({ shelf }) => shelf !== "hands");
    });
    // "Five pounds" is no pressure where nothing is in a canner.
    if (!plainly && empty) return undefined;
    // "Whole tomatoes, twenty-one pounds" is what they weigh.
    if (raw.target && !plainly) return undefined;
    return { slots: { ...raw, unit: raw.unit ?? pressureUnit } };
  },
  wordings: [
    `[<gauge-subject>] <at-value> {value:number} <pressure-unit> [<gauge-tail>] [<gauge-tail>]
    [<when>]`,
    `[<gauge-subject>] [<got>|<got> a steady|<got> about|<i-see>] {value:number} <pressure-unit>
    [<gauge-tail>] [<gauge-tail>] [<when>]`,
    `<got> (it|her|him|them|everything|the canner) [<still>] [holding|running|sitting|steady]
    <at-value> {value:number} <pressure-unit> [<gauge-tail>] [<when>]`,
    "<gauge-name> [<at-value>] {value:number} [<gauge-tail>] [<gauge-tail>] [<when>]",
    `[<gauge-subject>] (<got>|<i-see>|<at-value>) {value:number} [<pressure-unit>] (on|showing on|
    by)
    <gauge-name> [<gauge-tail>] [<when>]`,
    `{value:number} [<pressure-unit>] is what (<gauge-name>|<it>|<i-see>) [is] [<shows>] [at|on]
    [now]`,
    "{value:number} (on|showing on) <gauge-name> [<gauge-tail>] [<when>]",
    "{value:number} [and] (holding|holding steady) [on <gauge-name>] [<when>]",
    `[<we>|<it>] [am|is|are|have|has] [<got>] <at-value> (target|full|working|our|the) [<gauge>]
    [pressure] [of|at|which is] {value:number} [<pressure-unit>] [<when>]`,
    `(we have reached|reached|we are up to|we hit|up to|we have got|holding|at) [target|full]
    pressure [of|at] {value:number} [<pressure-unit>] [<when>]`,
    `<gauge-name> [<at-value>] {value:number} [<pressure-unit>] [and|<trend>] <trend> [now]
    [<when>]`,
    `(<gauge-name>|pressure|<the> pressure) [<is>] [<still>] (down|dropped|back|fallen|gone|come)
    [down|back down|all the way down|up] to {value:number} [<pressure-unit>] [on <gauge-name>]
    [<trend>] [<when>]`,
    `(<gauge-name>|pressure) [<is>] [<still>] [down|dropped|fallen|back] [down|all the way] (at|
    on|to) {value=0} (nothing|nought|naught|nil) [<trend>] [<when>]`,
    `[<gauge-subject>] <at-value> {value:number} <pressure-unit> [on <gauge-name>] [and] <trend>
    [<when>]`,
    `{value:number} <pressure-unit> [on <gauge-name>] [and] [<trend>] [<when>]`,
    `[<gauge-subject>] [<at-value>] {value:number} [<pressure-unit>] on <gauge-name> [and]
    [<trend>] [<when>]`,
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
    trend: `
      [and] [still|it is|is|it is still|has|just] (rising|climbing|going up|holding|holding steady|
      steady|still|staying|staying put|dropping|falling|creeping up|crawling up|coming up|coming
      down|going down|steadied|steady there|rock steady|quiet) [steady|there|up|nicely|slowly]|
      [as] steady as a rock|like a rock|pretty as you please|where (it|she) should be|and staying
      there|on it is own|by itself|and [there] it (stays|sits)|and will not budge
    `,
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
      showing|flat|and holding steady|and staying there|up|on (there|her|it)|on the (nose|dot|
      button|money)|dead on|
      exactly|gauge
      pressure
    `,
  },
};
