/** Weeks on the shelf for the flavor; a date, not work. */
import type { StageRules } from "./rules.ts";

export const cure: StageRules = {
  kind: "cure",
  shelf: "rest",
  clock: "at-begin",
  ends: "date",
  watched: false,
  learned: false,
};
