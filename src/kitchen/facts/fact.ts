/**
 * How a fact is declared: everything the program has to know about one kind of fact, in one place.
 */
import type * as z from "zod/mini";
import type { State } from "../state.ts";
import type { Sign } from "./fields.ts";
import type { Stamp } from "./stamp.ts";

export type Fields = Record<string, z.ZodMiniType>;
/** What a fact with these fields holds, besides its type and stamp. */
export type FieldsOf<S extends Fields> = [keyof S] extends [never]
  ? unknown
  : z.infer<z.ZodMiniObject<S>>;

/** What a fact is about, by the names people know: the stage, "of" the batch, and the batch. */
export type About = { stage: string; vessel: string; of: string; batch: string };

export type Declaration<S extends Fields> = {
  fields: S;
  /** Fields that older lines also have, and that nothing follows from. */
  formerly?: readonly string[];
  /**
   * Changes the state. Returns false when the fact could not have happened in this state, and then
   * changes nothing; `noted` when it was written down and no stage depends on it.
   */
  evolve: (state: State, event: FieldsOf<S> & Stamp) => boolean | "noted";
  /** Whether stages may begin or end because of it; otherwise only time passes. */
  follows: "stages" | "nothing";
  /** A report that shows a person has noticed the alarms of what it names: they fall silent. */
  quiets?: true;
  /** Written by the program itself: a correction may leave it without an object. */
  own?: true;
  /** The field that names what it begins. */
  begins?: keyof S & string;
  /** Its time may be corrected; for a start or a loss of what a clock counts, within bounds. */
  timed?: "start" | "loss" | "told";
  /**
   * Concerns jars on the shelf: it does not move the focus, so taking it back cannot depend on it.
   */
  ofTheShelf?: true;
  /** Which sign of a canner it tells of, so that it can be taken back by that name. */
  sign?: Sign;
  /** Taken back only along with other facts of its command, or never. */
  undo?: "along" | "never";
  /** What taking it back would do that needs a yes; undefined where it needs none. */
  undoWarns?: (event: FieldsOf<S>) => string | undefined;
  /** Comes along with other facts, which describe the command better. */
  passing?: true;
  /** How it is named when it is taken back; without this, by its type and batch. */
  undone?: (about: About, event: FieldsOf<S>) => string;
};

/** Declares a kind of fact; its type in TypeScript follows from its fields. */
export function fact<S extends Fields>(declared: Declaration<S>): Declaration<S> {
  return declared;
}

/** The warning of a report whose withdrawal would let a broken time count as whole. */
export const WOULD_COUNT = () => "Its time would count as unbroken.";

/** The warning of a doubt whose withdrawal would let what it doubts stand. */
export const WOULD_STAND = () => "What was in doubt would count after all.";
