/**
 * What can happen in the kitchen. Events are facts: what a person reported, what a clock showed,
 * what was chosen with everything it was chosen from. What follows from them (a restart, a
 * deviation, a verdict) is worked out and never written, so a corrected time corrects it all.
 */
import type { JarSize, Pack, ProcessOption, ProcessTerms, Recipe } from "../recipe/recipe.ts";

/** When it happened and when it was written, in kitchen time (epoch-like ms); whose command. */
export type Stamp = { cmd: string; t: number; w: number };

export type GaugeRecord = {
  kind: "dial" | "weighted";
  /** Season (year) the dial was last tested in, and by how much it reads high, psi. */
  testedSeason?: number;
  readsHighPsi?: number;
  /** Season it was said not to be tested. */
  untestedSeason?: number;
};

export type Canner = {
  id: string;
  name: string;
  /** How many jars of a size it holds. */
  holds: Partial<Record<JarSize, number>>;
  gauge?: GaugeRecord;
};

export type Lot = { variety: string | null; weightLb: number | null; pickedAt: number | null };

/** How many jars of which batch, and the number of the first of them. */
export type Part = { batch: string; jars: number; first: number };

/** The way a batch is processed, with the pressure picked where several were tested. */
export type BatchOption = ProcessOption & { atPsi?: number };

/** A batch the day's plan is still to begin, and when, in kitchen time. */
export type PlannedItem = {
  id: string;
  recipe: string;
  /** What to call it: "Provider dilled green beans". */
  title: string;
  variety: string | null;
  weightLb: number | null;
  beginAt: number;
};

/** Hours of the night in which nothing may need hands, in minutes of the day. */
export type QuietHours = { fromMinute: number; toMinute: number };

export const DISPOSITIONS = [
  "carried-on",
  "restarted",
  "reprocess",
  "refrigerate",
  "freeze",
  "discard",
  "undecided",
] as const;
export type Disposition = (typeof DISPOSITIONS)[number];

/**
 * Why an altitude is doubted: a measured boil, one so far under that it may not boil, a no to
 * whether it is right, or nothing tested so high for jars that are in a canner already.
 */
export type AltitudeDoubt = "boil" | "no-boil" | "denied" | "untested";

export type GapCause = "closed" | "crashed" | "asleep" | "stalled";

export type Fact =
  // the program and its clocks
  | { type: "opened"; version: string; zone: string; offsetMs: number; rehearsal: boolean }
  | { type: "closed" }
  | { type: "gap"; from: number; to: number; cause: GapCause; byWall: boolean }
  | { type: "clock-set"; byMs: number }
  | { type: "log-failed"; from: number; to: number; events: number }
  | { type: "due"; key: string; rings: boolean }
  | { type: "asked"; key: string; text: string }
  | { type: "acknowledged"; keys: string[] }
  | { type: "hushed"; until: number | null }
  | { type: "unhushed" }
  // the kitchen
  | {
      type: "kitchen-set";
      altitudeFt?: number;
      /** How far the altitude may be off, feet; what is not there is taken as exact. */
      altitudeUncertaintyFt?: number;
      canners?: Canner[];
      burners?: number;
      units?: "us" | "metric";
    }
  | { type: "gauge-set"; canner: string; gauge: GaugeRecord }
  // a batch
  | {
      type: "batch-begun";
      batch: string;
      recipe: Recipe;
      lot: Lot;
      jar: JarSize | null;
      pack: Pack | null;
      option: BatchOption | null;
      terms: ProcessTerms | null;
      expectedJars: number | null;
      mark: string;
    }
  | { type: "stage-begun"; owner: string; stage: string }
  | { type: "stage-done"; owner: string; stage: string }
  | { type: "stage-skipped"; owner: string; stage: string }
  | { type: "held"; batch: string }
  | { type: "resumed"; batch: string }
  | { type: "abandoned"; batch: string }
  | { type: "focused"; owner: string }
  | { type: "confirmed"; batch: string; factor: string; held: boolean }
  | { type: "note"; owner: string | null; text: string }
  | { type: "ingredient-changed"; batch: string; detail: string }
  // the day
  | {
      /**
       * The plan as it now stands, of what has not begun. The day's end is kept as it was agreed
       * to and as it was last told.
       */
      type: "day-planned";
      items: PlannedItem[];
      agreedAt: number;
      finishAt: number;
      finishBy: number | null;
      quiet: QuietHours | null;
    }
  | { type: "day-plan-dropped" }
  // signs
  | { type: "boil"; owner: string; stage: string; covered: boolean | null }
  | { type: "boil-lost"; owner: string; stage: string; uncovered: boolean }
  | { type: "cover"; load: string; covered: boolean }
  | { type: "water-low"; load: string }
  | { type: "steam"; load: string }
  | { type: "steam-lost"; load: string }
  | { type: "pressure"; load: string; psi: number }
  | { type: "rocking"; load: string }
  | { type: "pressure-lost"; load: string }
  | { type: "temperature"; owner: string | null; what: string; temperatureF: number }
  | { type: "vouched"; load: string; gap: number; held: boolean; by?: "probe" }
  /** A probe's readings, thinned: each the instant and the value. */
  | { type: "probe"; owner: string; what: string; unit: "F" | "psi"; samples: [number, number][] }
  | { type: "end-answer"; load: string; yes: boolean }
  | { type: "altitude-doubt"; owner: string | null; detail: string; why?: AltitudeDoubt }
  // jars and loads
  | {
      type: "load-opened";
      load: string;
      canner: string;
      batch: string;
      terms: ProcessTerms;
      gauge: GaugeRecord | null;
    }
  | {
      type: "load-terms";
      load: string;
      terms: ProcessTerms;
      gauge: GaugeRecord | null;
      /** The altitude is higher than was thought while the process ran, or after it. */
      raised?: true;
    }
  | { type: "jars-filled"; batch: string; count: number; size: JarSize | null }
  | { type: "all-filled"; batch: string }
  | { type: "set-aside"; batch: string; count: number }
  | { type: "jar-broken"; batch: string; count: number }
  | { type: "loaded"; load: string; parts: Part[] }
  | { type: "unloaded"; load: string; early: boolean }
  | { type: "sealed"; load: string; batch: string; count: number }
  | { type: "seal-failed"; load: string; batch: string; count: number; jars: number[] }
  | {
      type: "disposed";
      owner: string;
      code: string;
      what: Disposition;
      count: number | null;
      /** Whose jars, where a load holds those of several batches and one of them is meant. */
      batch?: string;
      /** Reprocess only: the tested hot pack the jars go through again. */
      option: BatchOption | null;
    }
  // timers and reminders
  | { type: "timer-set"; timer: string; label: string | null; minutes: number }
  | { type: "timer-added"; timer: string; minutes: number }
  | { type: "timer-cancelled"; timer: string }
  | { type: "reminder-set"; reminder: string; wallMs: number; text: string }
  | { type: "reminder-cancelled"; reminder: string }
  // corrections
  | { type: "amended"; target: string; t: number }
  | { type: "withdrawn"; target: string }
  // afterwards
  | {
      type: "tasted";
      batch: string;
      taster: string | null;
      scores: Record<string, number>;
    }
  | { type: "preferred"; batch: string; over: string | null; taster: string | null }
  | { type: "jar-opened"; batch: string; count: number; spoiled: boolean }
  | { type: "jars-moved"; batch: string; place: string }
  | {
      type: "seed-saved";
      seed: string;
      crop: string;
      variety: string | null;
      isolation: string | null;
      fermentDays: number | null;
      dryWeightG: number | null;
      storage: string | null;
      batch: string | null;
    }
  | { type: "germination"; seed: string; sprouted: number; of: number; days: number | null };

export type KitchenEvent = Fact & Stamp;
export type EventType = Fact["type"];
/** A fact and when it happened, before the session stamps it with its command. */
export type DatedFact = Fact & { t: number };
