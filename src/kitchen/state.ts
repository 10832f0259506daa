/** The kitchen as worked out from its events: plain data, no behavior. */

import type { JarSize, Pack, ProcessTerms, Recipe, Stage } from "../recipe/recipe.ts";
import { USUAL_CANNER_JARS } from "../reckon/trade-numbers.ts";
import type {
  AltitudeDoubt,
  BatchOption,
  Canner,
  Disposition,
  GapCause,
  GaugeRecord,
  GuideAnswer,
  PlannedItem,
  PlannedStep,
  QuietHours,
} from "./facts/fields.ts";
import type { Written } from "./facts/stamp.ts";
import type { HeardDoubt } from "./heard-doubt.ts";
import type { BatchLot, Touched } from "./jars/jar.ts";
import type { OwnWords } from "./own-words.ts";
import type { SealedLine } from "./questions/sealed-line.ts";
import type { SetUp } from "./questions/set-up-topic.ts";

type StageState = "waiting" | "running" | "held" | "complete" | "skipped" | "abandoned";

/** A stretch of unbroken time; `to` is absent while it lasts. */
export type Stretch = {
  from: number;
  to?: number;
  /** `out`: in good order, after its time or with the jars; every other is a loss. */
  ended?: "lost" | "uncovered" | "unwatched" | "off" | "out" | "raised";
};

/**
 * A time in which nobody and nothing watched; `held` once a person has said whether the condition
 * held.
 */
export type Gap = {
  from: number;
  to: number;
  cause: GapCause | "time-full";
  held?: boolean;
  /** A probe saw it boil, which says nothing about the lids. */
  boiled?: true;
};

/** A condition that has to be kept for a time: boiling, pressure, steam, a temperature. */
export type UnbrokenTime = {
  needMinutes: number;
  stretches: Stretch[];
  gaps: Gap[];
  /** A report that still lacks its confirmation (water over the lids). */
  unconfirmedAt?: number;
  /** How often it was raised after it had begun: the altitude was higher than was thought. */
  raised?: number;
  /** Stretches that began before this do not count: the pressure was too low for the altitude. */
  countsFrom?: number;
  /** Where only readings show the condition: how far apart they may be, and when they were. */
  readEveryMinutes?: number;
  readAt?: number[];
};

export type StageRun = {
  id: string;
  spec: Stage;
  state: StageState;
  startedAt?: number;
  endedAt?: number;
  /** When a recurring check was last called, and when somebody said that they had looked. */
  checkedAt?: number;
  lookedAt?: number;
  kept?: UnbrokenTime;
  /** Ended on a person's word before its window or time allowed. */
  endedShort?: boolean;
};

/** `round`: which brew or which filling it was said of, 0 the first (`questions/rounds.ts`). */
type Confirmation = { factor: string; held: boolean; at: number; value?: number; round: number };

/** A factor whose answer was taken back; `held` is what was said then. */
type Reopened = {
  factor: string;
  at: number;
  saidAt: number;
  held: boolean | null;
  round: number;
};

export type Measurement = { at: number; what: string; value: number; unit: string };

export type Deviation = {
  code: string;
  stage: string | null;
  at: number;
  detail: string;
  disposition: Disposition;
  /** Where it touches some jars of its batch only. */
  only?: Touched;
};

export type Batch = {
  id: string;
  recipe: Recipe;
  /** The lots that share its pots; the first has its id. */
  lots: BatchLot[];
  jar: JarSize | null;
  pack: Pack | null;
  option: BatchOption | null;
  /** As last looked up for it; a load keeps its own. */
  terms: ProcessTerms | null;
  /** The row from memory that was asked about before it began, as `rowKey` has it. */
  askedRow: string | null;
  begunAt: number;
  rehearsal: boolean;
  state: "running" | "held" | "complete" | "abandoned";
  endedAt?: number;
  stages: StageRun[];
  /** The stages of brews that ran out, as they were when the next was made. */
  poured: StageRun[][];
  loads: string[];
  /** Words that raised a doubt about its food before any canner was lit for it. */
  heard: HeardDoubt[];
  confirmed: Confirmation[];
  reopened: Reopened[];
  /** When it was held on purpose; without an end while it is. */
  holds: { from: number; to?: number }[];
  readings: Measurement[];
  notes: { at: number; text: string; late: boolean }[];
  /** Of all its jars, or of those only that were filled after it with one brew. */
  changes: { at: number; detail: string; brew?: number }[];
  disposed: { code: string; what: Disposition; at: number; count: number | null }[];
  /** Reports written well after they happened. */
  late: { at: number; written: number; what: string }[];
  /** When its steps were to go on by the plan that was agreed to. */
  agreed?: PlannedStep[];
};

/** The jars of one lot in a load; which and how many they are, the jars say. */
export type LoadPart = {
  lot: string;
  /** The batch that the lot is in. */
  batch: string;
  /** When its first jar was filled, and how many minutes it was allowed to stand. */
  stood: { from: number; mayMinutes: number };
  /** What was tested for its jars, where it is not what the load was opened for. */
  terms?: ProcessTerms;
};

export type Load = {
  id: string;
  canner: string;
  /** The batch it was opened for. */
  batch: string;
  terms: ProcessTerms | null;
  gauge: GaugeRecord | null;
  openedAt: number;
  state: "running" | "complete" | "abandoned";
  endedAt?: number;
  stages: StageRun[];
  parts: LoadPart[];
  loadedAt?: number;
  unloadedAt?: number;
  early: boolean;
  /** Water over the lids confirmed since the last time it was lost. */
  covered: boolean | null;
  /** How often the lids were found uncovered. */
  uncoveredTimes: number;
  waterLow: { at: number; covered?: boolean }[];
  /** When its terms went up, its altitude being higher than was thought, and from what. */
  raised: {
    at: number;
    fromMinutes: number;
    fromPsi: number | null | undefined;
    fromShown: number;
  }[];
  /** Whether its end is asked about; in older journals, that of a pressure process was not. */
  endAsked: boolean;
  endAnswer?: { at: number; yes: boolean };
  /** Words that raised a doubt while its jars were at stake. */
  heard: HeardDoubt[];
  /** The batch of a jar heard to break in the closed canner; counted at unloading. */
  brokenInside?: string;
  /** When a yes to its end was taken back. */
  endReopened: number[];
  /** Steam canner: a full column seen, and the place's boiling point read, since the last loss. */
  column?: number;
  hot?: number;
  readings: Measurement[];
  disposed: { code: string; what: Disposition; at: number; count: number | null }[];
  gaps: Gap[];
  late: { at: number; written: number; what: string }[];
};

export type Timer = {
  id: string;
  label: string | null;
  setAt: number;
  minutes: number;
  endsAt: number;
  state: "running" | "rang" | "answered" | "cancelled" | "missed";
};

type Reminder = {
  id: string;
  wallMs: number;
  text: string;
  state: "waiting" | "rang" | "answered" | "cancelled";
};

export type SeedLot = {
  id: string;
  crop: string;
  variety: string | null;
  isolation: string | null;
  fermentDays: number | null;
  dryWeightG: number | null;
  storage: string | null;
  batch: string | null;
  savedAt: number;
  tests: { at: number; sprouted: number; of: number; days: number | null }[];
};

/** The plan of the day: what is still to begin, and what was asked for. */
export type DayPlan = {
  items: PlannedItem[];
  /** The day's end in kitchen time, ms: as it was agreed to, and as it was last announced. */
  agreedAt: number;
  finishAt: number;
  finishBy: number | null;
  quiet: QuietHours | null;
  /** Every step as it was agreed to; empty in older journals. */
  steps: PlannedStep[];
};

/** A doubt of the altitude; settled by an altitude that is said after it, which is kept here. */
export type Doubt = {
  at: number;
  detail: string;
  owner: string | null;
  why?: AltitudeDoubt;
  /** The terms that a load finished long ago would have needed. */
  terms?: ProcessTerms;
  /** The altitude that was doubted, feet. */
  atFt: number | null;
  settledFt?: number;
};

export type State = {
  kitchen: {
    altitudeFt: number | null;
    altitudeUncertaintyFt: number;
    /** The air of the kitchen as last reported, degrees F. */
    airF?: number;
    canners: Canner[];
    burners: number;
    units: "us" | "metric";
    quiet: QuietHours | null;
    awakeUntil?: number;
    talk: "whole" | "short";
  };
  zone: string;
  rehearsal: boolean;
  open: boolean;
  /** Wall time less kitchen time, from each instant on; the last holds now. */
  offsets: { from: number; offsetMs: number }[];
  batches: Record<string, Batch>;
  /** The batches of lots that have an id of their own. */
  lotsOf: Record<string, string>;
  loads: Record<string, Load>;
  /** Owners with something still to do, oldest first. */
  active: string[];
  timers: Record<string, Timer>;
  /** Stages to be warned of ahead of their end, and how many minutes. */
  warnings: { owner: string; stage: string; minutes: number }[];
  reminders: Record<string, Reminder>;
  seeds: Record<string, SeedLot>;
  tastings: {
    at: number;
    batch: string;
    taster: string | null;
    scores: Record<string, number>;
    words?: string;
    jars?: number[];
  }[];
  preferences: { at: number; batch: string; over: string | null; taster: string | null }[];
  /** Names that are also another food's, and whether they are varieties of the food named. */
  nameAnswers: { food: string; name: string; isVariety: boolean }[];
  /** Times from memory that were compared with the person's own guide. */
  guides: GuideAnswer[];
  /** What words of this person were found to mean, in the order they were learned. */
  ownWords: OwnWords[];
  places: Record<string, string>;
  /** Who gives ids to new jars; whom those filled before have theirs from, and how many. */
  jarIds: { writer?: string; earlier: string; used: number };
  focus: string | null;
  dayPlan: DayPlan | null;
  /** When each step of the day is to begin, as last worked out; never from the log. */
  course: readonly PlannedStep[] | null;
  /** Due moments already recorded, and those still ringing (newest last). */
  due: Record<string, number>;
  ringing: string[];
  setUp: SetUp[];
  /** Questions already asked, by key, with when. */
  asked: Record<string, number>;
  /** Questions whose answer left them open, by key, with when. */
  leftOpen: Record<string, number>;
  hushedUntil: number | null | undefined;
  clockSets: { at: number; byMs: number }[];
  logFailures: { from: number; to: number; events: number }[];
  sealedLines: SealedLine[];
  gaps: Gap[];
  notes: { at: number; text: string }[];
  doubts: Doubt[];
  /** The soonest moment a running stage ends by itself; Infinity where none does. */
  nextEnd: number;
  /** The soonest moment a waiting stage's turn comes by time alone; Infinity where none does. */
  nextBegin: number;
  /** Written time of the last event. */
  lastW: number;
  /** Every event that was written, to be replayed when one is corrected; see `historyOf`. */
  history: Written[];
  /** The branch of the log that is lived through; "" is this data folder's own. */
  place: string;
  /** What the other branches have of their own. */
  elsewhere: Record<string, Place>;
  /** The branches that know of what was begun; where it is missing, the own one alone. */
  knownTo: Record<string, string[]>;
};

/** What a data folder has of its own, and keeps where another one takes it in. */
export type Place = Pick<State, "zone" | "open" | "offsets" | "clockSets" | "gaps" | "lastW"> &
  Pick<State, "kitchen" | "rehearsal" | "logFailures" | "doubts" | "focus" | "dayPlan"> &
  Pick<State, "hushedUntil" | "setUp" | "jarIds">;

export function initialState(): State {
  return {
    kitchen: {
      altitudeFt: null,
      altitudeUncertaintyFt: 0,
      canners: [{ id: "canner", name: "canner", holds: { ...USUAL_CANNER_JARS } }],
      burners: 4,
      units: "us",
      quiet: { fromMinute: 21 * 60 + 30, toMinute: 6 * 60 + 30 }, // our choice
      talk: "whole",
    },
    zone: "UTC",
    rehearsal: false,
    open: false,
    offsets: [],
    batches: {},
    lotsOf: {},
    loads: {},
    active: [],
    timers: {},
    warnings: [],
    reminders: {},
    seeds: {},
    tastings: [],
    preferences: [],
    nameAnswers: [],
    guides: [],
    ownWords: [],
    places: {},
    jarIds: { earlier: "", used: 0 },
    focus: null,
    dayPlan: null,
    course: null,
    due: {},
    ringing: [],
    setUp: [],
    asked: {},
    leftOpen: {},
    hushedUntil: undefined,
    clockSets: [],
    logFailures: [],
    sealedLines: [],
    gaps: [],
    notes: [],
    doubts: [],
    nextEnd: Number.POSITIVE_INFINITY,
    nextBegin: Number.POSITIVE_INFINITY,
    lastW: 0,
    history: [],
    place: "",
    elsewhere: {},
    knownTo: {},
  };
}

/** Wall time of an instant of kitchen time, by the offset that held then. */
export function wallOf(state: State, t: number): number {
  let offset = state.offsets[0]?.offsetMs ?? 0;
  for (const step of state.offsets) if (step.from <= t) offset = step.offsetMs;
  return t + offset;
}

/** Kitchen time at which the wall will show an instant, by the offset that holds now. */
export function kitchenTimeOf(state: State, wallMs: number): number {
  return wallMs - (state.offsets.at(-1)?.offsetMs ?? 0);
}
