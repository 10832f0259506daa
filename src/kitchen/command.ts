/**
 * What a person has asked for or reported, once it is understood: the kitchen's only input besides
 * the passing of time. Slot names and meanings are those of the published command line.
 */

import type { Untested } from "../recipe/foods/food-gate.ts";
import type { JarSize, Method, Pack } from "../recipe/recipe.ts";
import type { HeapOffer, HeapSaid, LotToPlan } from "./day/wanted.ts";
import type { Sign, SpoilSign } from "./facts/fields.ts";
import type { Term } from "./glossary.ts";
import type { HeardDoubt } from "./heard-doubt.ts";
import type { AnswerMeant, DispositionWord } from "./questions/answer-meant.ts";
import type { DayPlan } from "./state.ts";
import type { Act, Emergency, SafetyTopic, Shortage, Trouble } from "./topics.ts";

/** A size of jar, in the singular and in words: `half-pint`, `pint`, `quart` ... */
export type SpokenJarSize =
  | "quarter-pint"
  | "half-pint"
  | "12-ounce"
  | "pint"
  | "pint-and-a-half"
  | "quart"
  | "half-gallon";

/**
 * A batch, variety, load, canner, pot or timer in the person's own words, lower case and without
 * an article; "jars" where the jars in the canner were meant. Only for showing: what it stands for
 * is the command's `ref`.
 */
type Targeted = { target?: string };

/** When it happened, where that was said: local ISO time without an offset. */
type Timed = { at?: string };

/** Where the lids were said to stand out of the water. */
type Uncovered = { uncovered?: true };

/**
 * One thing in the kitchen by its ids: a batch or load, one of its stages, one of several lots of
 * a batch, or a timer.
 */
export type Ref = { owner: string; stage?: string; lot?: string } | { timer: string };

/** Sorts of things named without saying which one; `out` means jars taken from the canner. */
export type Sort =
  | "jars"
  | "lids"
  | "others"
  | "canner"
  | "load"
  | "processing"
  | "boil"
  | "batch"
  | "timer"
  | "all"
  | "it"
  | "out";

/** What a name can stand for; several things where it is open. */
export type Meant = {
  /** What is running under that name: batches and loads, their stages, timers. */
  running: readonly Ref[];
  /** The same among everything on record, finished batches and loads included. */
  recorded: readonly Ref[];
  /**
   * Stages that may be in the vessel, where a vessel is all it names: "the pot", "the water bath".
   */
  vessels: readonly Ref[];
  /** Stages named together with their batch: "the Provider brine". */
  parts: readonly Ref[];
  /** Sorts of things it names without saying which one. */
  sorts: readonly Sort[];
  /** Only a sort was named: "the jars", "it". */
  sortAlone: boolean;
};

/**
 * What is said about a critical factor: that it holds, that it does not, or something in between.
 * `value` is in the factor's own unit where a number was said: 4.5 (percent).
 */
export type Confirm = {
  factor: string;
  value?: number;
  held: "yes" | "no" | "unsure";
  /** Which way a guess leans. */
  leans?: "yes" | "no";
};

/** Words that may mean harm for jars at stake; `intent` is what they may mean. */
export type Evidence = {
  strength: HeardDoubt["strength"];
  about: HeardDoubt["about"];
  text: string;
  /** Foods named with it, sorts of the food (`white`), what there is more or less of (`salt`). */
  foods?: readonly string[];
  sorts?: readonly string[];
  amounts?: readonly string[];
  intent?: Intent;
  /** Jars already out may be meant; or, `earlier`, what ended since. */
  past?: true;
  earlier?: true;
  /** It says that the heat came back: where it never went, as far as anyone told, it may have. */
  returned?: true;
  /** More is told than it may be asked back as: it is kept whatever is answered. */
  more?: true;
};

type Nothing = Record<never, never>;

/**
 * The slots of every intent. Counts are whole numbers of jars, `minutes` may be fractions,
 * `weightLb` is pounds, `feet` whole feet above the sea.
 */
export type SlotsOf = {
  /**
   * Without `recipe` where the name fits several: `named` is what was said, `choices` the ids;
   * `untested` where it fits none. `foods` are names of the food table.
   */
  begin: {
    recipe?: string;
    named?: string;
    choices?: string[];
    untested?: Untested;
    /** Words that make something else of the recipe, or may: `but figs`. */
    beside?: string;
    /** The same in talk of something else: `the chicken is in the oven`. */
    aside?: string;
    foods?: string[];
    variety?: string;
    weightLb?: number;
    jar?: JarSize;
    pack?: Pack;
    method?: Method;
    atPsi?: number;
  };
  /**
   * A critical factor is said to hold or not to hold, or its answer is taken back; where none is
   * named, the one answered last. Every factor mentioned is in the command's `confirms`. An answer
   * taken back in so many words is `takenBack`.
   */
  factor: { factor?: string; value?: number; held: Confirm["held"]; takenBack?: true };
  /** The batches to plan a day for; `quiet` as `22:00-06:00`; `planned` once it is worked out. */
  plan: {
    items?: LotToPlan[];
    startAt?: string;
    finishBy?: string;
    quiet?: string;
    go?: true;
    drop?: true;
    /** What is to change for the items named: none of them, later, before the others, exchanged. */
    change?: string;
    planned?: DayPlan;
  };
  heap: { heaps?: HeapSaid[]; finishBy?: string; offers?: HeapOffer[] };
  done: Targeted & Timed;
  looked: Targeted & Timed;
  repeat: { slower?: true; louder?: true };
  "what-now": Nothing;
  "what-next": Nothing;
  overview: Nothing;
  /** Takes back the last thing, or the last report of what it is about. */
  undo: { about?: Sign };
  /** Puts back what was taken back last. */
  redo: Nothing;
  /** "Never mind": asks first, and never undoes anything by itself. */
  "forget-it": Nothing;
  /** The last thing said was about this one: "no, the Dragon Tongue", "wait, it was B four". */
  instead: Targeted & { jars?: number[] };
  acknowledge: Nothing;
  unhush: Nothing;
  yes: Nothing;
  no: Nothing;
  help: Nothing;
  "time-left": Targeted;
  "finish-time": Targeted;
  /** Changes what can still be changed; `name` is what it is to be called, its variety. */
  "change-batch": Targeted & {
    weightLb?: number;
    /** Comes on top of the weight told before. */
    moreLb?: number;
    jar?: JarSize;
    variety?: string;
    name?: string;
  };
  /** Leaves a stage out. */
  skip: Targeted;
  hold: Targeted;
  resume: Targeted;
  abandon: Targeted;
  focus: Targeted;
  boiling: Targeted & Timed & { covered?: true };
  "boil-lost": Targeted & Timed & Uncovered;
  pressure: Targeted & Timed & { value: number; unit: "psi" | "kPa" };
  "pressure-lost": Targeted & Timed;
  "weight-rocking": Targeted & Timed;
  venting: Targeted & Timed;
  /** `together`: all that stood filled; `counts`: of each lot named, in order, 0 for all of it. */
  loaded: Targeted &
    Timed & { count?: number; size?: SpokenJarSize; together?: true; counts?: number[] };
  "water-low": Targeted & Timed & Uncovered;
  /** Nobody watched for so long, or since anything was last said. */
  "was-away": { minutes?: number };
  /** Something put into the food or the jars that is not in the recipe. */
  added: { food: string; amount?: string };
  /** What was stretched or topped up, and with what: `brew` where it was what is poured. */
  "topped-up": { with: string; brew?: "named" | "it" };
  /** What is poured over ran out, and more of it is made; `count` jars, or `jars`, hold the old. */
  "brew-made": Targeted & { count?: number; jars?: number[] };
  /** `boiling` where it was read at a full boil. */
  temperature: Targeted & Timed & { value: number; unit: "F" | "C"; boiling?: true };
  /** Which brew jars hold: of this number, or the only weak or sound one. */
  "brew-of": Targeted & {
    jars?: number[];
    count?: number;
    which?: "first" | "last" | "all" | "others" | "those";
    brew: "first" | "second" | "third" | "new" | "old" | "weak" | "sound";
  };
  /**
   * `brew` where it was asked how many hold one that ran out; `not` is a count that was wrong,
   * `corrected` where it was not said which; `more` where the count comes on top of what stands;
   * `mixed` where jars of smaller sizes are among them.
   */
  "jars-filled": Targeted & {
    count?: number;
    size?: SpokenJarSize;
    brew?: number;
    not?: number;
    corrected?: true;
    more?: true;
    mixed?: true;
  };
  sealed: Targeted & { all?: true; count?: number; jars?: number[] };
  /** `othersSealed` where the rest was reported sealed in the same breath. */
  "seal-failed": Targeted & { all?: true; count?: number; jars?: number[]; othersSealed?: true };
  "jar-broken": Targeted & { count?: number; jars?: number[]; toldOf?: boolean };
  "set-aside": Targeted & { count?: number; jars?: number[] };
  disposition: Targeted & { what: DispositionWord; count?: number; jars?: number[] };
  /** `uncertaintyFt` where a margin was given; `about` where it was only said to be approximate. */
  altitude: { feet: number; uncertaintyFt?: number; about?: true };
  gauge: { readsHighPsi?: number; untested?: true };
  /** The answer to the open question: the words themselves, and what they mean. */
  answer: { value: number | string } & AnswerMeant;
  /** One number for each score named: `crunch`, `flavor` ...; `words` where it was only told. */
  taste: { target?: string } & { [score: string]: number | string | undefined };
  opened: Targeted & { count?: number; size?: SpokenJarSize; jars?: number[] };
  /** Given away; `to` is whom it went to. */
  given: Targeted & { count?: number; size?: SpokenJarSize; jars?: number[]; to?: string };
  /** Given away before, and brought back unopened. */
  returned: Targeted & { count?: number; jars?: number[] };
  /** Jars that bulged, leaked, spurted, went moldy or off, or came open on the shelf. */
  spoiled: Targeted & { count?: number; size?: SpokenJarSize; jars?: number[]; sign: SpoilSign };
  /** Liked better than `over`, where that was said; `taster` is who said so. */
  prefer: Targeted & { over?: string; taster?: string };
  /** Where the jars of a batch now stand, or some of them. */
  place: Targeted & { place: string; jars?: number[] };
  labeled: Targeted;
  /** What is written on a lot's lids, before each jar's number. */
  "lids-marked": Targeted & { mark: string };
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
  /** A germination test: `sprouted` out of `of` seeds, after so many days. */
  germination: { seed: string; sprouted: number; of: number; days?: number };
  "timer-set": { minutes: number; label?: string };
  "timer-add": Targeted & { minutes: number };
  "timer-cancel": Targeted;
  /** `when` is missing where no time was said; it has to be asked. */
  remind: { when?: string; text: string };
  note: { text: string };
  "correct-time": { at: string };
  hush: { minutes?: number };
  /** How much is said; and the night, as `22:00-06:00`, as none, or as none just this once. */
  settings: { talk?: "whole" | "short"; night?: string };
  /** Going away for some minutes or until a local ISO time, and being back. */
  away: { minutes?: number; until?: string };
  back: Nothing;
  /** A warning this many minutes before something ends. */
  "warn-ahead": Targeted & { minutes: number };
  quit: Nothing;
  /** `what` is the whole question as said; `subject` the thing asked about. */
  "how-much": Targeted & {
    what: string;
    subject?: string;
    /** The recipe's id where the name is of just one. */
    recipe?: string;
    /** The amount asked about: pounds or cups of produce, or jars of a size. */
    amount?: number;
    unit?: "lb" | "cup" | "jar";
    size?: string;
  };
  explain: { term: Term };
  /** Without `what` where something is wrong and nobody said what. */
  emergency: { what?: Emergency };
  trouble: { what?: Trouble };
  /** `about` is what was asked about, as said; `topic` is what it was recognized as. */
  "is-safe": { about?: string; topic?: SafetyTopic };
  /** `what` is what was asked for, as said; `act` is what it was recognized as. */
  "may-i": Targeted & { what?: string; act?: Act };
  /** `value` and `unit` say how much there is of it, where that was said. */
  "short-of": { what: string; item?: Shortage; value?: number; unit?: string };
  "canner-state": Nothing;
  which: Nothing;
  /** What is known of single jars. */
  "which-jar": Targeted & { jars?: number[] };
  /** `of` is the thing that is measured; units in the singular. */
  convert: { value: number; from: string; to: string; of?: string };
  /** `recipe` is its id where the name is of just one. */
  "ready-when": Targeted & { recipe?: string };
  pantry: Targeted;
  seeds: Targeted;
  ingredients: Targeted & { recipe?: string };
  recipes: Nothing;
  more: Nothing;
  standing: Nothing;
  coming: { days: number };
  "own-words": Nothing;
  learned: Nothing;
  /** All of them, the one of this number in their list, or the one learned last. */
  "forget-words": { all?: true; number?: number };
  unknown: Nothing;
};

export type Intent = keyof SlotsOf;

/** One thing asked for or reported, with how sure the understanding is (0 to 1). */
export type CommandOf<I extends Intent> = {
  intent: I;
  slots: SlotsOf[I];
  confidence: number;
  /** What its `target` can stand for (`named` of `begin`); missing where nothing was named. */
  ref?: Meant;
  /** What `over` of `prefer` can stand for. */
  overRef?: Meant;
  /** What its words raise, whatever else is done about them. */
  evidence?: Evidence;
  /** What else it says about critical factors. */
  confirms?: readonly Confirm[];
};

/** A command with one of these intents, told apart by it. */
export type Command<I extends Intent = Intent> = { [Each in I]: CommandOf<Each> }[I];

/** A command, with a certainty of 1 where no other is given. */
export function commandOf<I extends Intent>(
  intent: I,
  slots: SlotsOf[I],
  more: Partial<Omit<CommandOf<I>, "intent" | "slots">> = {},
): Command<I> {
  return { intent, slots, confidence: 1, ...more };
}

/** The command with these slots, whatever it had in them. */
export function withSlots<C extends Command>(command: C, slots: Partial<C["slots"]>): C {
  return { ...command, slots: { ...command.slots, ...slots } };
}
