/** What is declared about a meaning: a thing that a person can ask for or report. */
import type { Evidence, Intent, SlotsOf } from "../../kitchen/command.ts";
import type { HeapOffer, HeapSaid, LotToPlan } from "../../kitchen/day/wanted.ts";
import type { QuestionKind } from "../../kitchen/questions/questions.ts";
import type { DayPlan } from "../../kitchen/state.ts";
import type { Untested } from "../../recipe/foods/food-gate.ts";
import type { Context } from "../context.ts";
import type { SpokenLot } from "../values/spoken-lots.ts";
import type { PlainWords } from "../values/targets.ts";
import type { Utterance } from "../words.ts";

/**
 * What a mistake costs. Harmless: an answer nobody wanted. Changing: it can be taken back. Raising:
 * a doubt about food that is sound. Clearing: food that is not sound is taken for sound.
 */
export type Cost = "harmless" | "changing" | "raising" | "clearing";

/** A situation in which something makes sense to say, and so is listened for. */
export type When =
  | "always"
  /** Nothing, something, or several batches are under way. */
  | "idle"
  | "working"
  | "several-batches"
  /** A timer runs. */
  | "timer"
  /** A current stage goes by a temperature. */
  | "temperature-wanted"
  /** A pot comes to its heat, or jars are filled: now, or as soon as somebody says so. */
  | "stage:pot"
  | "stage:filling"
  /** A load waits for its jars, is in the canner (in water, in steam), or is out of it. */
  | "load:waiting"
  | "load:in-canner"
  | "load:in-water"
  | "load:in-steam"
  | "load:out"
  /** A question waits for a yes, a no or a value; or one of a kind that has its own answers. */
  | "asked"
  | `asked:${QuestionKind}`;

/**
 * What a slot holds. A name is kept as the person says it; a word is one of a few. How many jars,
 * of which size and at which pressure are kinds of their own: no memory ever fills them.
 */
type SlotKind<V> =
  | (V extends true ? "flag" : never)
  | (V extends number ? "number" | "count" | "gauge" : never)
  | (V extends string
      ? (string extends V ? "name" | "text" | "instant" | "word" : "word") | "size"
      : never)
  | (V extends readonly number[] ? "numbers" : never)
  | (V extends readonly string[] ? "names" : never)
  | (V extends readonly HeapOffer[] ? "offers" : V extends readonly LotToPlan[] ? "lots" : never)
  | (V extends readonly HeapSaid[] ? "heaps" : never)
  | (V extends DayPlan ? "plan" : never)
  | (V extends Untested ? "untested" : never);

/** Slots as the phrases captured them, and parts of which `finish` makes slots. */
export type Raw = Record<string, unknown> & {
  lot?: SpokenLot;
  food?: SpokenLot | string;
  produce?: { weightLb: number };
  weight?: { weightLb: number };
  scores?: Record<string, number>;
};

/** Slots as in the contract, and what makes the command less certain. */
type Finished = { slots: Raw; doubt?: number; misheard?: boolean };

/** Returns undefined where the values make no sense. */
export type Finish = (
  raw: Raw,
  context: Context,
  plain: PlainWords,
  said: Utterance,
) => Finished | undefined;

/**
 * Ways of saying one thing, in the language of pattern.ts; with `set`, all of them fill those
 * slots.
 */
type Wording<I extends Intent> =
  | string
  | { set: Readonly<Partial<SlotsOf[I]>>; phrases: readonly string[] };

/**
 * What a meaning is made up of, in any order: every one of `must` has to be said, and every other
 * word has to be among `may`. For wordings that no phrase foresaw. Reports are kept narrow: nothing
 * may be listed here that could turn one into a question, a wish, a plan or its opposite.
 */
export type Bag<I extends Intent> = {
  set?: Readonly<Partial<SlotsOf[I]>>;
  must: readonly string[];
  may: string;
  /** True where it may begin like a question. */
  asking?: true;
  /** Words that change nothing (`beside-words.ts`) may stand among the others. */
  beside?: true;
};

type Declared<I extends Intent> = {
  /** Sets a count or an altitude, or clears a doubt: a guess or a near match is read back. */
  plainly?: true;
  /** It says that something happened, and is written to the log as a fact. */
  report?: true;
  /**
   * What about jars at stake it is about, should it come to nothing: whether it `goes` (a loss) or
   * `comes` (a boil, steam or pressure).
   */
  tellsOf?: { about: Evidence["about"]; goes?: true; comes?: true };
  /** It may be told in several clauses: "set a timer for the eggs, eight minutes". */
  inPieces?: true;
  /** Any of these. */
  when: readonly When[];
  slots: { readonly [S in keyof SlotsOf[I]]-?: SlotKind<NonNullable<SlotsOf[I][S]>> };
  /** What else phrases capture; `finish` turns it into slots, or nobody needs it. */
  parts?: readonly string[];
  /** An example for help; missing where no sentence has this meaning. */
  example?: string;
  /** It is only asked or ordered: a statement never means it. */
  asked?: true;
  /** What is only imagined is asked about with it: "if I took the weight off". */
  supposing?: true;
  /** Classes of the model that mean this, each with the slots it fills. */
  learnedAs?: Readonly<Record<string, Readonly<Partial<SlotsOf[I]>>>>;
  /** Its answer is spoken before everything else, like an alarm. */
  urgent?: true;
  /** It answers the question that waits. */
  answer?: true;
  /** It may be about jars of a finished batch, so its target may be any batch on record. */
  ofRecord?: true;
  /** Not meant where the sentence ends in a question mark, unless it is a request. */
  unasked?: true;
  /**
   * What makes a report of it less than plain, beside what does so to any: in a clause of its
   * sentence, or in the whole of it.
   */
  shaken?: { clause?: readonly RegExp[]; whole?: RegExp };
  /**
   * It ends whatever step is on: of any food, at any time, and at the table it can be taken back.
   */
  anyStep?: true;
  /** Words of doubt that belong to this report. */
  doubting?: readonly string[];
  /** A name said in the clause before it is its target: "the beets, how long have they got". */
  topical?: true;
  /** Adds nothing beside a clause with one of these meanings. */
  givesWay?: "all" | readonly Intent[];
  finish?: Finish;
  wordings?: readonly Wording<I>[];
  /**
   * The wordings most used aloud, the commonest first: what the recognizer listens for. They are
   * few on purpose: what cannot be said cannot be misheard. Short words that noise is mistaken for
   * ("done", "next", "okay") and wordings that sound like others ("hold on" like "how long") are
   * left out.
   */
  spoken?: readonly Wording<I>[];
  bags?: readonly Bag<I>[];
  /** Pieces used only in these wordings, as `<name>`. */
  lists?: Readonly<Record<string, string>>;
};

/** `forgiving`: it may be understood with one word among its own that nobody expected. */
export type MeaningOf<I extends Intent> = Declared<I> &
  (
    | { cost: "harmless" | "changing"; forgiving?: true }
    | { cost: "raising" | "clearing"; forgiving?: never }
  );
