/** Each jar is found sealed or not; ends when every jar is accounted for. */
import type { StageRules } from "./rules.ts";

export const sealCheck: StageRules = {
  kind: "seal-check",
  shelf: "hands",
  clock: "none",
  ends: "count",
  watched: false,
  learned: true,
};
