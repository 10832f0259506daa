/** What a kind of stage says about itself; one mechanism in `../stage-run.ts` runs them all. */
import type { StageKind } from "../../recipe/recipe.ts";

export type StageRules = {
  kind: StageKind;
  /** Where its work waits on the screen. */
  shelf: "hands" | "heat" | "rest";
  /** What starts its clock: its beginning, or a sign someone reports. */
  clock: "none" | "at-begin" | "at-sign";
  /**
   * How it ends: a person's word; a sign (with a hold after it, where the recipe has one); its
   * kept time; its window, by a word inside it; a fixed wait after a sign; a count that adds up;
   * or never, being only a date.
   */
  ends: "word" | "sign" | "kept-time" | "window" | "wait-after-sign" | "count" | "date";
  /** A time nobody watched must be spoken for before it can end. */
  watched: boolean;
  /** Whether how long it takes is this cook's and stove's own, and may be learned. */
  learned: boolean;
};
