/** Work that goes on until the person says it is done. */
import type { StageRules } from "./rules.ts";

export const handsOn: StageRules = {
  kind: "hands-on",
  shelf: "hands",
  clock: "none",
  ends: "word",
  watched: false,
  learned: true,
};
