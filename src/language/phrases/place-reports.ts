// data table
import type { Family } from "./family.ts";

/** How high the kitchen lies. Metres are turned into feet afterwards. */
export const PLACE_REPORTS: readonly Family[] = [
  {
    intent: "altitude",
    phrases: [
      `
        [<we>|it|this|here|the kitchen|our kitchen|my kitchen|this kitchen|our place|the house|
        this place|our house|home|the ranch|the farm|the cabin] [am|is|are|live|lives|sit|sits|
        cook|lies|stands|is up|are up|am up|live up|can|are sitting|are located|is located|are
        cooking|are living|put up food] [up|here|at|around] [at] [about|around|roughly|an altitude
        of|an elevation of|nearly|almost|close to|some|just over|just under|exactly|right at]
        {feet:number} feet [up|high|above sea level|elevation|of elevation|altitude|of altitude|in
        elevation|in altitude|above the sea|in the air|here|up here] [<within>]
      `,
      `
        [<we>|it|this|here|the kitchen|our kitchen|my kitchen|this kitchen|our place|the house|
        this place|our house|home|the ranch|the farm|the cabin] [am|is|are|live|lives|sit|sits|
        cook|lies|stands|is up|are up|live up] [up|here|at|around] [at] [about|around|roughly|an
        altitude of|an elevation of|nearly|some] {metres:number} meters [up|high|above sea level|
        elevation|of elevation|altitude|of altitude|in elevation|in altitude|above the sea]
        [<within>]
      `,
      `
        [<the>] [kitchen] (altitude|elevation) [here|of the kitchen|of this kitchen|at home|up
        here] [is|of|at|now] [about|around|roughly|exactly] {feet:number} [feet] [above sea level]
        [<within>]
      `,
      `
        [<the>] [kitchen] (altitude|elevation) [here|of the kitchen] [is|of|at] [about|around|
        roughly] {metres:number} meters [above sea level]
        [<within>]
      `,
      `
        (set|change|make) [<the>] [kitchen] (altitude|elevation) [of the kitchen] [to|at|is]
        {feet:number} [feet]
      `,
      "(set|change|make) [<the>] [kitchen] (altitude|elevation) [to|at] {metres:number} meters",
      "<we> [am|are] [up|live|sit|cook] at (an|a) (altitude|elevation) of {feet:number} [feet]",
      "<we> (am|are) [up] {feet:number} feet [up|high]",
      "(<we> are|<we> am|<we> live|we are) at sea level {feet=0}",
      "[<of-place>] <between> {low:number} [feet] (and|to) {high:number} feet [<high-up>]",
      `
        [<of-place>] <between> {low:number} [meters] (and|to) {high:number} meters {metres=0}
        [<high-up>]
      `,
      "[<of-place>] {low:number} [feet] to {high:number} feet [<high-up>]",
    ],
  },
];

/** Lists that belong to this family alone. */
export const PLACE_LISTS: Readonly<Record<string, readonly string[]>> = {
  "of-place": [
    "<we> (are|am|live|sit|cook) [up|here] [at]",
    "(it|this|the kitchen|our kitchen|my kitchen|the house|our house|home) (is|sits|lies) [at]",
    "[<the>] [kitchen] (altitude|elevation) [here] [is]",
  ],
  between: ["[somewhere|anywhere|about|at] between", "(somewhere|anywhere) from"],
  "high-up": ["up|high|up here|here|above sea level|of altitude|of elevation|in altitude"],
  within: [
    "(give or take|within) [about|a] {off:number} [feet|meters] [or so]",
    "or so",
    "more or less",
    "give or take",
  ],
};
