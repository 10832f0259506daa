/** What any part of the program wants said, asked or rung, and what the desk makes of it. */

/** Who goes first; what was just said is answered before anything but an alarm. */
export const RANKS = ["alarm", "answer", "read-back", "question", "prompt", "news"] as const;
export type Rank = (typeof RANKS)[number];

/** What may hurt somebody; with a short form, it is said at each load, short after the first. */
export type SaidCaution = { text: string; short?: string };

/** "check the seals", and "by ten past ten". */
export type Task = { todo: string; each: string };

/** A sentence in its forms. */
export type Wording = {
  /** Whose it is, said in front where several are running: "The Provider". */
  name?: string;
  text: string;
  /** Where several come with the same to do, it is said once, with what is particular to each. */
  task?: Task;
  /** What is said once the whole was said today, and under which name it was; 20 words at most. */
  lesson?: { id: string; short: string };
  cautions?: readonly SaidCaution[];
  /** Said short for now, since the time for the whole comes later. */
  brief?: boolean;
};

export type Want = Wording & {
  rank: Rank;
  /** What it is about. A later want of the same key takes the place of one that still waits. */
  key?: string;
  /** A process, a vent, a pressure or hot food hangs on it: said even in a hush. */
  guards?: boolean;
  /** The process it tells of is broken: it rings at the same pace until somebody answers. */
  broken?: boolean;
  /** What to do about what rings, said with it when it is said again. */
  todo?: string;
  /** It says no to what was asked. */
  refuses?: boolean;
  /** It tells what to do next, and that is the answer too. */
  instructs?: boolean;
  /** It says no more than that something was done: what follows of the same one says it too. */
  plain?: boolean;
  /** Kitchen time from which it is not true any more. */
  until?: number;
};

/** One part of a line: whose it is and what is said of it. */
export type LinePart = Pick<Wording, "name" | "text" | "task">;

/** What is said in one breath. */
export type SpokenLine = Pick<Want, "rank" | "guards" | "refuses" | "instructs"> & {
  parts: LinePart[];
  keys: string[];
  /** The whole of what was shortened, for who asks for more; undefined where nothing was. */
  whole: string | undefined;
};

/** What became of a want, and why; `at` and `deferredTill` in kitchen time. */
export type DeskDecision = {
  at: number;
  wanted: string;
  said: string | null;
  mergedWith: string[];
  deferredTill: number | null;
  dropped: boolean;
  why: string | null;
};

/** The whole of a want, its cautions and all. */
export function wholeOf({ text, cautions = [] }: Wording): string {
  return [text, ...cautions.map((caution) => caution.text)].join(" ");
}
