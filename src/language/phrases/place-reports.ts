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
        elevation|in altitude|above the sea|in the air|here|up here]
      `,
      `
        [<we>|it|this|here|the kitchen|our kitchen|my kitchen|this kitchen|our place|the house|
        this place|our house|home|the ranch|the farm|the cabin] [am|is|are|live|lives|sit|sits|
        cook|lies|stands|is up|are up|live up] [up|here|at|around] [at] [about|around|roughly|an
        altitude of|an elevation of|nearly|some] {metres:number} meters [up|high|above sea level|
        elevation|of elevation|altitude|of altitude|in elevation|in altitude|above the sea]
      `,
      `
        [<the>] [kitchen] (altitude|elevation) [here|of the kitchen|of this kitchen|at home|up
        here] [is|of|at|now] [about|around|roughly|exactly] {feet:number} [feet] [above sea level]
      `,
      `
        [<the>] [kitchen] (altitude|elevation) [here|of the kitchen] [is|of|at] [about|around|
        roughly] {metres:number} meters [above sea level]
      `,
      `
        (set|change|make) [<the>] [kitchen] (altitude|elevation) [of the kitchen] [to|at|is]
        {feet:number} [feet]
      `,
      "(set|change|make) [<the>] [kitchen] (altitude|elevation) [to|at] {metres:number} meters",
      "<we> [am|are] [up|live|sit|cook] at (an|a) (altitude|elevation) of {feet:number} [feet]",
      "<we> (am|are) [up] {feet:number} feet [up|high]",
      "(<we> are|<we> am|<we> live|we are) at sea level {feet=0}",
    ],
  },
];
