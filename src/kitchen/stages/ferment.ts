/** Days to weeks of souring or seed ferment, looked at in between. */
import type { StageRules } from "./rules.ts";

export const ferment: StageRules = {
  kind: "ferment",
  shelf: "rest",
  clock: "at-begin",
  ends: "window",
  watched: false,
  learned: false,
};
