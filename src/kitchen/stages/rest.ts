/** A time to wait: salting, soaking, draining. Too short and too long are both departures. */
import type { StageRules } from "./rules.ts";

export const rest: StageRules = {
  kind: "rest",
  shelf: "rest",
  clock: "at-begin",
  ends: "window",
  watched: false,
  learned: false,
};
