import { saysAbout } from "../values/about.ts";
import type { Finish, MeaningOf } from "./meaning.ts";

const FEET_PER_METRE = 3.280839895;

/** "Between five and six thousand": the first of a span is of the thousands of the second. */
function asLarge(low: number, high: number): number {
  if (low >= 100 || high < 1000) return low;
  return low * (high % 1000 === 0 ? 1000 : 100);
}

/** Feet, and how far they may be off where that was said; of a span, the middle and its half. */
const finishAltitude: Finish = (raw, _context, _plain, said) => {
  const unit = raw.metres === undefined ? 1 : FEET_PER_METRE;
  const inFeet = (value: unknown) => Math.round(Number(value) * unit);
  const spans = raw.low !== undefined && raw.high !== undefined;
  const high = inFeet(spans ? raw.high : (raw.metres ?? raw.feet));
  const low = spans ? inFeet(asLarge(Number(raw.low), Number(raw.high))) : high;
  const feet = spans ? Math.round((low + high) / 2) : high;
  if (feet < -1500 || feet > 20000 || low > high) return undefined;
  const uncertaintyFt = spans ? high - feet : inFeet(raw.off);
  if (uncertaintyFt > 0) return { slots: { feet, uncertaintyFt } };
  return { slots: saysAbout(said) ? { feet, about: true } : { feet } };
};

/** How high the kitchen lies. */
export const altitude: MeaningOf<"altitude"> = {
  cost: "changing",
  tellsOf: { about: "jars" },
  plainly: true,
  when: ["asked:altitude"],
  slots: { feet: "number", uncertaintyFt: "number", about: "flag" },
  parts: ["metres", "low", "high", "off"],
  example: "we're at six thousand two hundred feet",
  forgiving: true,
  unasked: true,
  finish: finishAltitude,
  wordings: [
    `[<we>|it|this|here|the kitchen|our kitchen|my kitchen|this kitchen|our place|the house|this
    place|our house|home|the ranch|the farm|the cabin] [am|is|are|live|lives|sit|sits|cook|
    lies|stands|is up|are up|am up|live up|can|are sitting|are located|is located|are cooking|
    are living|put up food] [up|here|at|around] [at] [about|around|roughly|an altitude of|an
    elevation of|nearly|almost|close to|some|just over|just under|exactly|right at]
    {feet:number} feet [up|high|above sea level|elevation|of elevation|altitude|of altitude|in
    elevation|in altitude|above the sea|in the air|here|up here] [<within>]`,
    `[<we>|it|this|here|the kitchen|our kitchen|my kitchen|this kitchen|our place|the house|this
    place|our house|home|the ranch|the farm|the cabin] [am|is|are|live|lives|sit|sits|cook|
    lies|stands|is up|are up|live up] [up|here|at|around] [at] [about|around|roughly|an altitude
    of|an elevation of|nearly|some] {metres:number} meters [up|high|above sea level|elevation|
    of elevation|altitude|of altitude|in elevation|in altitude|above the sea] [<within>]`,
    `[<the>] [kitchen] (altitude|elevation) [here|of the kitchen|of this kitchen|at home|up here]
    [is|of|at|now] [about|around|roughly|exactly] {feet:number} [feet] [above sea level]
    [<within>]`,
    `[<the>] [kitchen] (altitude|elevation) [here|of the kitchen] [is|of|at] [about|around|
    roughly] {metres:number} meters [above sea level] [<within>]`,
    `(set|change|make) [<the>] [kitchen] (altitude|elevation) [of the kitchen] [to|at|is]
    {feet:number} [feet]`,
    "(set|change|make) [<the>] [kitchen] (altitude|elevation) [to|at] {metres:number} meters",
    "<we> [am|are] [up|live|sit|cook] at (an|a) (altitude|elevation) of {feet:number} [feet]",
    `[this is|we are at] [the|our|my] [cabin|old place|new place|new house] [and] (it is|it lies|it
    sits) [at|up at] [about|around] {feet:number} feet [here|up here|high|there]`,
    `<we> [have] moved [up] [here|to] [about|around] {feet:number} feet [last
    week|last month|last year|this year|since]`,
    "(<we> are|<we> am|<we> live|we are) at sea level {feet=0}",
    "[<of-place>] <between> {low:number} [feet] (and|to) {high:number} feet [<high-up>]",
    `[<of-place>] <between> {low:number} [meters] (and|to) {high:number} meters {metres=0}
    [<high-up>]`,
    "[<of-place>] {low:number} [feet] to {high:number} feet [<high-up>]",
  ],
  spoken: [
    "{feet:number} feet",
    "(we are|it is) at {feet:number} feet",
    "the altitude is {feet:number} [feet]",
  ],
  bags: [
    {
      must: ["{feet:number} feet", "altitude|elevation|up|high|above sea level|at|here|kitchen"],
      may: `
        we|i|are|am|is|it|our|my|the|this|live|sit|sits|cook|place|house|about|around|exactly|
        of|in|roughly|nearly|just over|just under|here|altitude|elevation|kitchen|to|be|set|
        for|almost
      `,
    },
  ],
  lists: {
    "of-place": `
      <we> (are|am|live|sit|cook) [up|here] [at]|
      (it|this|the kitchen|our kitchen|my kitchen|the house|our house|home) (is|sits|lies) [at]|
      [<the>] [kitchen] (altitude|elevation) [here] [is]
    `,
    between: "[somewhere|anywhere|about|at] between|(somewhere|anywhere) from",
    "high-up": "up|high|up here|here|above sea level|of altitude|of elevation|in altitude",
    within: `
      (give or take|within) [about|a] {off:number} [feet|meters] [or so]|
      or so|more or less|give or take
    `,
  },
};
