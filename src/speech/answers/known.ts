/** What answers are made from besides the state of the kitchen, and the forms they take. */
import type { LotOf } from "../../kitchen/jars/lots.ts";
import type { Library } from "../../recipe/library.ts";

/** Jars of one batch in one place. Dates are ISO days. */
export type StockLine = {
  batch: string;
  title: string;
  variety: string | null;
  jar: string | null;
  left: number;
  place: string;
  by: string;
};

/** A lot of saved seed, with its latest germination test last. */
type SeedLine = {
  crop: string;
  variety: string | null;
  saved: string;
  tests: readonly { sentence: string }[];
};

/** A jar, in the words of the published JSON. */
export type JarLine = {
  id: string;
  short: string;
  mark: string | null;
  /** The day its lot was begun. */
  putUp: string;
  fate: "shelf" | "cold" | "opened" | "spoiled" | "discarded" | "given";
  fateAt: string | null;
  place: string | null;
  verdict: string;
  reasons: readonly string[];
};

/** What comes due, wall ms, as the list of reminders has it. */
export type DueLine = { at: number; title: string; overdue: boolean };

export type Known = {
  library: Library;
  /** The jars of a lot. */
  jars(one: LotOf): readonly JarLine[];
  pantry(): {
    lines: readonly StockLine[];
    eatFirst: readonly string[];
    throwOut: readonly string[];
  };
  seeds(): readonly SeedLine[];
  /** Published shortest and longest life of a crop's seed, years. */
  seedLife(crop: string): readonly [number, number] | undefined;
  /** How long stages take here, and what was left out, one sentence each. */
  learned(): string[];
  /** What comes due within some days; wall ms. */
  coming(days: number): readonly DueLine[];
  /** Reports that something is waiting for, in words. */
  examples(): readonly string[];
  /** How a meaning is said, as an example; undefined where it is none, or is never said. */
  exampleOf(intent: string): string | undefined;
};

/**
 * An answer that is read out piece by piece; `paced` means at the cook's word, with work in
 * between.
 */
export type ReadOut = { pages: readonly string[]; paced: boolean };

export type Answer = string | ReadOut;
