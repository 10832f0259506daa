/** How a fact is declared: everything the program has to know of one kind of fact, in one place. */
import type * as z from "zod/mini";
import type { State } from "../state.ts";

/** When it happened and when it was written, in kitchen time (epoch-like ms); whose command. */
export type Stamp = { cmd: string; t: number; w: number };

export type Fields = Record<string, z.ZodMiniType>;
/** What a fact of these fields holds, besides its type and stamp. */
export type FieldsOf<S extends Fields> = [keyof S] extends [never]
  ? unknown
  : z.infer<z.ZodMiniObject<S>>;

/** What a fact is about, by the names people know: the stage, "of" the batch, and the batch. */
export type About = { stage: string; vessel: string; of: string; batch: string };

export type Declaration<S extends Fields> = {
  fields: S;
  /** Fields that older lines have beside these, and that nothing follows from. */
  formerly?: readonly string[];
  /**
   * Changes the state. Says false when the fact could not have happened in this state, and then
   * changes nothing; `noted` when it was written down and no stage depends on it.
   */
  evolve: (state: State, event: FieldsOf<S> & Stamp) => boolean | "noted";
  /** Whether stages may begin or end by it; else nothing follows but the passing of time. */
  follows: "stages" | "nothing";
  /** A report that shows a person has seen what rang for those it names: that falls silent. */
  quiets?: true;
  /** The program's own doing: a correction may leave it without an object. */
  own?: true;
  /** The field with the name that it gives to what it begins. */
  begins?: keyof S & string;
  /** Holds for this kitchen as a place and for its clock: an import leaves it behind. */
  stays?: true;
  /** Its time may be corrected; a start or a loss of what a clock counts within bounds. */
  timed?: "start" | "loss" | "told";
  /** Of jars on the shelf: it moves no focus, so taking it back cannot ask for one. */
  ofTheShelf?: true;
  /** Taken back only along with others of its command, or never. */
  undo?: "along" | "never";
  /** What taking it back would do that wants a yes; undefined where it wants none. */
  undoWarns?: (event: FieldsOf<S>) => string | undefined;
  /** Comes along with others, which name the command better. */
  passing?: true;
  /** What taking it back takes back; its type and batch where nothing is said. */
  undone?: (about: About, event: FieldsOf<S>) => string;
};

/** Declares a kind of fact; its type in TypeScript follows from its fields. */
export function fact<S extends Fields>(declared: Declaration<S>): Declaration<S> {
  return declared;
}

/** The warning of a report whose withdrawal would let a broken time count as whole. */
export const WOULD_COUNT = () => "Its time would count as unbroken.";

/** The warning of a doubt whose withdrawal would let what it doubts stand. */
export const WOULD_STAND = () => "What was in doubt would count as said.";
