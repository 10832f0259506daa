/** What is declared of a meaning, a thing a person can ask for or report. */
import type { Intent, LotToPlan, SlotsOf } from "../../kitchen/command.ts";
import type { QuestionKind } from "../../kitchen/questions/questions.ts";
import type { DayPlan } from "../../kitchen/state.ts";
import type { Untested } from "../../recipe/foods/food-gate.ts";
import type { Context } from "../context.ts";
import type { PlainWords } from "../values/targets.ts";
import type { Utterance } from "../words.ts";

/**
 * What a mistake costs. Harmless: an answer nobody wanted. Changing: it can be taken back. Raising:
 * a doubt about food that is sound. Clearing: food that is not sound is taken for sound.
 */
export type Cost = "harmless" | "changing" | "raising" | "clearing";

/** A situation in which something makes sense to be said, and so is listened for. */
export type When =
  | "always"
  /** Nothing is under way, or something is, or several batches are. */
  | "idle"
  | "working"
  | "several-batches"
  /** A timer runs. */
  | "timer"
  /** A stage at hand goes by a temperature. */
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
  /** A question waits for a yes, a no or a value; or one of a kind with answers of its own. */
  | "asked"
  | `asked:${QuestionKind}`;

/** What a slot holds. A name is said as the person says it; a word is one of a few. */
type SlotKind<V> =
  | (V extends true ? "flag" : never)
  | (V extends number ? "number" | "count" : never)
  | (V extends string ? (string extends V ? "name" | "text" | "instant" | "word" : "word") : never)
  | (V extends readonly number[] ? "numbers" : never)
  | (V extends readonly string[] ? "names" : never)
  | (V extends readonly LotToPlan[] ? "lots" : never)
  | (V extends DayPlan ? "plan" : never)
  | (V extends Untested ? "untested" : never);

/** Slots as the phrases captured them. */
export type Raw = Record<string, unknown>;

/** Slots as the contract has them, and what makes the command less sure. */
type Finished = { slots: Raw; doubt?: number; misheard?: boolean };

/** Nothing where the values make no sense. */
export type Finish = (
  raw: Raw,
  context: Context,
  plain: PlainWords,
  said: Utterance,
) => Finished | undefined;

/**
 * Ways of saying one thing, in the language of pattern.ts; where every one of them fills a slot
 * whatever was said, with that slot.
 */
type Wording<I extends Intent> =
  | string
  | { set: Readonly<Partial<SlotsOf[I]>>; phrases: readonly string[] };

/**
 * What a meaning is made up of, in any order: every one of `must` has to be said, and every other
 * word has to be among `may`. For what no phrase has foreseen. Reports are kept narrow: nothing
 * may stand here that could turn one into a question, a wish, a plan or its opposite.
 */
export type Bag<I extends Intent> = {
  set?: Readonly<Partial<SlotsOf[I]>>;
  must: readonly string[];
  may: string;
  /** True where it may begin like a question. */
  asking?: true;
};

type Declared<I extends Intent> = {
  /** Sets a count, an altitude or what clears a doubt: a guess or a near match is read back. */
  plainly?: true;
  /** It says something happened, and is written to the log as a fact. */
  report?: true;
  /** Any of these. */
  when: readonly When[];
  slots: { readonly [S in keyof SlotsOf[I]]-?: SlotKind<NonNullable<SlotsOf[I][S]>> };
  /** What phrases capture besides, which `finish` makes slots of or nobody needs. */
  parts?: readonly string[];
  /** A sentence for help; missing where no sentence means it. */
  example?: string;
  /** It is asked or ordered, and never told: a statement is not answered by it. */
  asked?: true;
  /** It is said before everything else, as an alarm is. */
  urgent?: true;
  /** It answers the question that waits. */
  answer?: true;
  /** It may be of jars whose batch is done with, so that its target is any batch on record. */
  ofRecord?: true;
  /** Not meant where it ends in a question mark, unless it asks for it to be done. */
  unasked?: true;
  /** Doubting words that belong to this report. */
  doubting?: readonly string[];
  /** A name said in a clause before it is its target: "the beets, how long have they got". */
  topical?: true;
  /** Says nothing beside a clause of these meanings. */
  givesWay?: "all" | readonly Intent[];
  finish?: Finish;
  wordings?: readonly Wording<I>[];
  /**
   * The wordings most used aloud, the commonest first: what the recognizer listens for. They are
   * few on purpose: what cannot be said cannot be misheard. Left out are short words that noise is
   * taken for ("done", "next", "okay") and what sounds like another ("hold on" like "how long").
   */
  spoken?: readonly Wording<I>[];
  bags?: readonly Bag<I>[];
  /** Pieces of these wordings alone, used as `<name>`. */
  lists?: Readonly<Record<string, string>>;
};

/** `forgiving`: it may be understood with one word among its own that nobody expected. */
export type MeaningOf<I extends Intent> = Declared<I> &
  (
    | { cost: "harmless" | "changing"; forgiving?: true }
    | { cost: "raising" | "clearing"; forgiving?: never }
  );
