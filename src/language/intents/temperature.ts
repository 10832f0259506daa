import { OR_ANOTHER, RISEN_NEAR, RISING, SHORT } from "../values/rough-values.ts";
import type { MeaningOf } from "./meaning.ts";

/** Water boils at no less where anybody cooks: some 180 F at 16,000 feet. */
const LEAST_BOIL_F = 180;
const LEAST_BOIL_C = 82;
/** No kitchen is hotter: above this its heat is a figure of speech. */
const MOST_AIR_F = 130;
const MOST_AIR_C = 54;

/** What the thermometer reads. */
export const temperature: MeaningOf<"temperature"> = {
  cost: "clearing",
  tellsOf: { about: "boil", comes: true },
  plainly: true,
  report: true,
  shaken: {
    clause: [RISING, RISEN_NEAR, SHORT, OR_ANOTHER],
  },
  when: ["temperature-wanted"],
  slots: { target: "name", at: "instant", value: "number", unit: "word", boiling: "flag" },
  example: "it's at one eighty two degrees",
  topical: true,
  finish: (raw, { temperatureUnit = "F" }) => {
    const unit = raw.unit ?? temperatureUnit;
    // "A boil at one thirty-eight" is a time.
    const least = unit === "C" ? LEAST_BOIL_C : LEAST_BOIL_F;
    if (raw.boiling === true && Number(raw.value) < least) return undefined;
    const most = unit === "C" ? MOST_AIR_C : MOST_AIR_F;
    if (raw.target === "kitchen" && Number(raw.value) > most) return undefined;
    return { slots: { ...raw, unit } };
  },
  wordings: [
    "<it> [<at-value>|<fell-to>] {value:temperature} [<degrees>] [<temp-tail>]",
    `<temp-subject> [<at-value>|<fell-to>] {value:temperature} [<degrees>] [{unit=F}
    <fahrenheit>] [<temp-tail>] [<temp-tail>] [<when>]`,
    `[<temp-subject>|<it>|<we>] [<at-value>|<fell-to>|<got>] [a reading of|a temperature of|a
    temp of|a] {value:number} <temp-unit> [<temp-tail>] [<temp-tail>] [<when>]`,
    "(<it>|<we>) (<at-value>|<fell-to>) {value:temperature} [<temp-tail>] [<temp-tail>] [<when>]",
    `[<it>|<we>|<thermometer>] (<at-value>|<is-over>) {value:temperature} [<degrees>]
    (in here|in this kitchen|in <the> kitchen|in <the> room|on <the> wall) {target=kitchen}`,
    `(<the> kitchen|<the> room|<thermometer> on <the> wall) <is-over> {value:temperature}
    {target=kitchen}`,
    "<got> [a] {value:temperature} [<degrees>] (in|on|for|at) ({target}|<thermometer>)",
    "<got> a (reading|temperature|temp) of {value:number} [<temp-unit>] [<temp-tail>]",
    "{value:temperature} (on|by|according to) <thermometer>",
    "(temperature|temp|reading) [of|in] [<the>] {target} [<at-value>] {value:number} [<temp-unit>]",
    `<the> (temperature|temp) (of|in) {target} [<at-value>|<fell-to>] {value:number}
    [<temp-unit>] [<when>]`,
    "[<the>] {target} [temperature|temp] {value:number} <temp-unit>",
    `(measured|i measured|getting|read|took a reading of|we are reading|we are getting|<i-see>)
    ({value:number} <temp-unit>|
    {value:temperature})
    [<temp-tail>]`,
    `[<temp-subject>|<it>|<we>] [<at-value>|<got>] {value:temperature} [<temp-unit>] <at-boil>
    {boiling=true}`,
    `[<the> water|{target}|<it>|<we>] [<is>] [<still>] (boils|boiling|boil|boiled) (at|by)
    [<approx>] {value:temperature} [<temp-unit>] {boiling=true} [now]`,
    `[<it>|{target}|<we>] [<is>] [at] (a|the) [<full>] [<full>] boil (at|is at|is) [<approx>]
    {value:temperature} [<temp-unit>] {boiling=true}`,
    `[<it>|{target}|<we>] [<is>] (at|on) (a|the) [<full>] [<full>] boil [and] [at|reads]
    {value:number} <temp-unit> {boiling=true}`,
  ],
  spoken: [
    "[it is at] {value:temperature} degrees",
    "the {target} is at {value:temperature} degrees",
  ],
  bags: [
    {
      must: ["[<at-value>|<fell-to>] {value:number} <temp-unit>"],
      may: `
        <temp-subject>|<it>|<we>|<is>|<shows>|<still>|<temp-tail>|<when>|<way>|<approx>|
        {target}|there|here|and|the|in the canner|over|all
      `,
    },
    {
      must: ["[<at-value>|<fell-to>] {value:temperature}", "<temp-subject>"],
      may: "<is>|<shows>|<still>|<temp-tail>|<when>|<way>|<approx>|in|of|there|here|and|the",
    },
  ],
  lists: {
    "is-over": `
      (<at-value>|<is>|must be|has to be|got to be|says|reads) [hotter than|warmer than|a good|well]
      [over|above|past|near|<approx>]
    `,
    thermometer: `
      <the> thermometer|thermometer|<the> temperature|temperature|<the> temp|temp|<the> probe|
      probe|<the> reading|reading|the water temperature|the water temp|<the> candy thermometer
    `,
    degrees: "degrees|degree|degrees even",
    fahrenheit: "fahrenheit|f|farenheit",
    celsius: "celsius|centigrade|c|celcius",
    "temp-subject": `
      <thermometer>|{target}|<thermometer> (in|on|for) {target}|
      {target} (in|on) [<the>] (canner|pot|kettle|crock|bath|pan|big pot|water bath)|
      {target} (temperature|temp|thermometer)|<the> [metal|little] (thing|stick|thingy) in {target}|
      <the> (temperature|temp|reading) (of|in|on|for) {target}|
      the water in {target}
    `,
    "temp-unit": `
      <degrees> [{unit=F} <fahrenheit>|{unit=C} <celsius>]|
      {unit=F} <fahrenheit>|{unit=C} <celsius>
    `,
    "at-boil": `
      [<still>] (at|on) (a|the) [<full>] [<full>] boil [now|here]|
      [and] [<still>] boiling [<hard>] [now|here]
    `,
    "temp-tail": `
      now|even|steady|on <thermometer>|by <thermometer>|on the (dot|nose|button|money)|in there|
      holding|exactly|flat|
      already|(in|for|on) {target}|and (rising|climbing|falling|dropping)
    `,
    "fell-to": `
      [has|have|is|are] [<still>] (fell|dropped|fallen|cooled|warmed|cooling|warming|heated|
      heating|falling|dropping|come down|came down|cooled down|warmed up|heated up|cooled off|
      brought|gone down|going down) [back] [up|down|all the way down] to [<approx>]|
      (is|are) [<still>] down to [<approx>]
    `,
  },
};
