/**
 * What a person has asked for or reported, once it is understood: the kitchen's only input besides
 * the passing of time. Slot names and meanings are those of the published command line.
 */

import type { Term } from "./glossary.ts";

/** A size of jar, in the singular and in words: `half-pint`, `pint`, `quart` ... */
export type SpokenJarSize =
  | "quarter-pint"
  | "half-pint"
  | "12-ounce"
  | "pint"
  | "pint-and-a-half"
  | "quart"
  | "half-gallon";

/** What is done about a deviation or a failed jar. */
export type DispositionWord =
  | "carried-on"
  | "restarted"
  | "reprocess"
  | "refrigerate"
  | "freeze"
  | "discard"
  | "undecided";

/**
 * A batch, variety, load, canner, pot or timer in the person's own words, lower case and without
 * an article; "jars" where the jars in the canner were meant.
 */
export type Targeted = { target?: string };

/** When it happened, where that was said: local ISO time without an offset. */
export type Timed = { at?: string };

/** A batch to be planned, as it was said. */
export type LotToPlan = { recipe: string; variety?: string; weightLb?: number };

type Nothing = Record<never, never>;

/**
 * The slots of every intent. Counts are whole numbers of jars, `minutes` may be fractions,
 * `weightLb` is pounds, `feet` whole feet above the sea.
 */
export type SlotsOf = {
  /** Without `recipe` where the name fits several: `named` is what was said, `choices` the ids. */
  begin: {
    recipe?: string;
    named?: string;
    choices?: string[];
    variety?: string;
    weightLb?: number;
  };
  /** The batches to plan a day of; `quiet` as `22:00-06:00`. */
  plan: {
    items?: LotToPlan[];
    startAt?: string;
    finishBy?: string;
    quiet?: string;
    go?: true;
    drop?: true;
  };
  done: Targeted & Timed;
  repeat: { slower?: true; louder?: true };
  "what-now": Nothing;
  "what-next": Nothing;
  overview: Nothing;
  undo: Nothing;
  acknowledge: Nothing;
  unhush: Nothing;
  yes: Nothing;
  no: Nothing;
  help: Nothing;
  "time-left": Targeted;
  "finish-time": Targeted;
  hold: Targeted;
  resume: Targeted;
  abandon: Targeted;
  focus: Targeted;
  boiling: Targeted & Timed & { covered?: true };
  "boil-lost": Targeted & Timed;
  pressure: Targeted & Timed & { value: number; unit: "psi" | "kPa" };
  "pressure-lost": Targeted & Timed;
  "weight-rocking": Targeted & Timed;
  venting: Targeted & Timed;
  loaded: Targeted & Timed & { count?: number; size?: SpokenJarSize };
  "water-low": Targeted & Timed;
  /** `boiling` where it was read at a full boil. */
  temperature: Targeted & Timed & { value: number; unit: "F" | "C"; boiling?: true };
  "jars-filled": Targeted & { count?: number; size?: SpokenJarSize };
  sealed: Targeted & { all?: true; count?: number; jars?: number[] };
  /** `othersSealed` where the rest was reported sealed in the same breath. */
  "seal-failed": Targeted & { count?: number; jars?: number[]; othersSealed?: true };
  "jar-broken": Targeted & { count?: number; jars?: number[] };
  "set-aside": Targeted & { count?: number; jars?: number[] };
  disposition: Targeted & { what: DispositionWord; count?: number; jars?: number[] };
  /** `uncertaintyFt` where it was said how far that may be off. */
  altitude: { feet: number; uncertaintyFt?: number };
  answer: { value: number | string };
  /** `target` and one number for each score named: `crunch`, `flavor` ... */
  taste: { target?: string } & { [score: string]: number | string | undefined };
  /** `spoiled` where a jar was unsealed, bulged, leaking or off: it is thrown out. */
  opened: Targeted & { count?: number; size?: SpokenJarSize; spoiled?: true };
  /** Liked better than `over`, where that was said; `taster` is who said so. */
  prefer: Targeted & { over?: string; taster?: string };
  /** Where the jars of a batch now stand. */
  place: Targeted & { place: string };
  /** Seed put away; everything but the crop may be unknown. Weight in grams. */
  "seed-saved": {
    crop: string;
    variety?: string;
    isolation?: string;
    fermentDays?: number;
    dryWeightG?: number;
    storage?: string;
    batch?: string;
  };
  /** A germination test: so many sprouted of so many, after so many days. */
  germination: { seed: string; sprouted: number; of: number; days?: number };
  "timer-set": { minutes: number; label?: string };
  "timer-add": Targeted & { minutes: number };
  "timer-cancel": Targeted;
  /** `when` is missing where no time was said; it has to be asked. */
  remind: { when?: string; text: string };
  note: { text: string };
  "correct-time": { at: string };
  hush: { minutes?: number };
  /** `what` is the whole question as said; `subject` the thing asked about. */
  "how-much": Targeted & { what: string; subject?: string };
  explain: { term: Term };
  unknown: Nothing;
};

export type Intent = keyof SlotsOf;

/** One thing asked for or reported, with how sure the understanding is (0 to 1). */
export type CommandOf<I extends Intent> = {
  intent: I;
  slots: SlotsOf[I];
  confidence: number;
  /** The words as they came in. */
  text: string;
};

/** Any command, told apart by `intent`. */
export type Command = { [I in Intent]: CommandOf<I> }[Intent];
