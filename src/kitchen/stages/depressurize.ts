/** A closed canner coming to zero by itself, then the wait before its lid is opened. */
import type { StageRules } from "./rules.ts";

export const depressurize: StageRules = {
  kind: "depressurize",
  shelf: "heat",
  clock: "at-sign",
  ends: "wait-after-sign",
  watched: false,
  learned: false,
};
