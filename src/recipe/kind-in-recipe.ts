/**
 * What a kind of stage means for a recipe's file. The kinds themselves are passed in: see `Kinds`.
 */
import type { Stage, StageKind } from "./recipe.ts";

/** The part a stage plays in putting up jars, where it plays one that others look for. */
export type StageRole = "filling" | "venting" | "treatment" | "coming-down" | "cooling" | "seals";

export type KindInRecipe = {
  role: StageRole | null;
  /** Done by a load and not by its batch: in the canner, or with the jars that come out of it. */
  ofCanner: "inside" | "after" | null;
  /** A canner recipe has exactly one. */
  onceForCanner: boolean;
  /** What a thermometer in it measures; a culture can also be too cold to live. */
  thermometer: "pot" | "canner" | "room" | "culture" | null;
  /**
   * Where its length comes from: the file; the heating of what is in the pot, which the file
   * gives with its sign; the tested tables; or the kind's own usual length.
   */
  length: "written" | "to-its-sign" | "tested-table" | "usual";
  /** The tested recipe gives its shortest and longest time. */
  restsAsTested: boolean;
  /** What the file may leave out; null where it may not, or where there is nothing to say. */
  usual: {
    title: string | null;
    say: string | null;
    /** Said once the whole was said that day. */
    short?: string;
    /** What belongs to it in every recipe: said once a day, before its cautions. */
    closing?: string;
    /** Said instead where the jars had no process. */
    sayUnprocessed: string | null;
    minutes: number | null;
    window: NonNullable<Stage["window"]> | null;
    /** Hands are busy throughout. */
    attended: boolean;
    uses: Stage["uses"];
  };
};

/** The kinds a recipe is read and checked by. */
export type Kinds = Readonly<Record<StageKind, KindInRecipe>>;
