/** Fill hot jars to the headspace; ends when the jars are counted. */
import type { StageRules } from "./rules.ts";

export const fill: StageRules = {
  kind: "fill",
  shelf: "hands",
  clock: "none",
  ends: "count",
  watched: false,
  learned: true,
};
