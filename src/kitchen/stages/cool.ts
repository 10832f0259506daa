/** Jars standing undisturbed, 12 to 24 hours. */
import type { StageRules } from "./rules.ts";

export const cool: StageRules = {
  kind: "cool",
  shelf: "rest",
  clock: "at-begin",
  ends: "window",
  watched: false,
  learned: false,
};
