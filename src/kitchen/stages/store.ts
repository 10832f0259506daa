/** Kept until its best-by date. */
import type { StageRules } from "./rules.ts";

export const store: StageRules = {
  kind: "store",
  shelf: "rest",
  clock: "at-begin",
  ends: "date",
  watched: false,
  learned: false,
};
