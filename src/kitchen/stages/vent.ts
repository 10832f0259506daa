/** Steady steam from the open vent, ten minutes without a break, before a canner is closed. */
import type { StageRules } from "./rules.ts";

export const vent: StageRules = {
  kind: "vent",
  shelf: "heat",
  clock: "at-sign",
  ends: "kept-time",
  watched: true,
  learned: false,
};
