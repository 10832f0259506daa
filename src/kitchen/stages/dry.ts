/** Drying to a sign, within a window of days or weeks. */
import type { StageRules } from "./rules.ts";

export const dry: StageRules = {
  kind: "dry",
  shelf: "rest",
  clock: "at-begin",
  ends: "window",
  watched: false,
  learned: false,
};
