/** Jars and the lots they are of, as plain data. */

import type { Lot, SpoilSign } from "../facts/fields.ts";

/** How a jar left those that stand: it is not counted as sealed or failed any more. */
export type Gone = {
  /**
   * `set-aside`: put away before any canner. `aside`: taken off a process that was too short.
   * `again`: emptied, to be processed once more as new jars.
   */
  what: "set-aside" | "broken" | "aside" | "again" | "spoiled";
  at: number;
  /** What showed that it had spoiled. */
  sign?: SpoilSign;
};

/** One filled container, of one lot. */
export type Jar = {
  /** The writer that gave it and a number, never used again; see `jar-ids.ts`. */
  id: string;
  /** On its lid, after its lot's mark; 0 where it is not known. */
  number: number;
  /** When filling it is taken to have begun, kitchen time. */
  filledFrom: number;
  /** When it was said to be filled, kitchen time. */
  filledAt: number;
  /** The brew it holds, 0 the first. */
  brew: number;
  /** The earliest that it may hold instead, where nobody counted the jars as one ran out. */
  brewFrom?: number;
  /** Factors that were denied of this jar and others like it, and when. */
  denied?: { factor: string; at: number }[];
  /** The load it went into. */
  load?: string;
  seal?: "sealed" | "failed";
  gone?: Gone;
  /** When it left the shelf or the refrigerator as food, and how. */
  left?: { what: "opened" | "given" | "discarded"; at: number; to?: string };
  /** What else was told of that, by another data folder: not all of it can be so. */
  also?: NonNullable<Jar["left"]>[];
  /** Where it was put by itself; else it stands where its lot does. */
  place?: string;
  /** Somebody said its number: the others go by theirs since. */
  named?: true;
  /** Which jar it was is not known, only that it was one of them. */
  guessed?: true;
};

/** The produce of one variety in a batch, and the jars it was put into. */
export type BatchLot = Lot & {
  /** A batch's first lot has the batch's own id. */
  id: string;
  /** What its lids are marked with, before the jar's number. */
  mark: string;
  expectedJars: number | null;
  addedAt: number;
  /** How often a lot had joined when jars were filled already, this one counted. */
  round: number;
  /** The earliest brew that jars not told of yet may hold, where one ran out uncounted. */
  uncountedFrom?: number;
  /** When it was given up; the batch went on without it. */
  abandonedAt?: number;
  jars: Jar[];
  /** Nothing more of it is to be filled. */
  allFilled: boolean;
  /** Jars that were emptied and wait to be filled again, as a hot pack. */
  again: number;
  /** Jars that were said to be opened beyond those that are known. */
  openedBeyond: number;
  /** When its jars got their labels. */
  labeledAt?: number;
};

/**
 * Jars that something touches: those of a load, of a lot, of a brew, told of after a moment, of the
 * lots of a round, or those of which a factor was denied.
 */
export type Touched = {
  load?: string;
  lot?: string;
  brew?: number;
  after?: number;
  round?: number;
  denied?: { factor: string; at: number };
};
