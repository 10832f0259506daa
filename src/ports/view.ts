/**
 * What is shown of the kitchen, as plain data: computed by the session, drawn by the screen or
 * printed as lines. Times of day and lengths come in words; instants are wall time, epoch ms.
 */

export type LineKind = "heard" | "answer" | "prompt" | "alarm" | "asked" | "refused" | "notice";

/** One line of the conversation, at a wall instant. */
export type Line = { wallMs: number; kind: LineKind; text: string };

/** A line with its time of day, `14:03`. */
export type ShownLine = Line & { time: string };

/** Keys for words that the bare key must not stand for. */
export type KeySign = "!" | "-" | "=";

export type LabeledKey = {
  key: KeySign;
  /** What it says, as typed words would. */
  words: string;
  /** What it says, short, for the label. */
  label: string;
  /** The batch or load and the stage it is about; empty where it asks which. */
  owner: string;
  stage: string;
};

type ClockState = "running" | "open" | "over" | "lost";

export type ShownClock = {
  state: ClockState;
  /** `2 min 41 s`, and with the state in words where it is not simply running. */
  text: string;
  /** Time of day it is due. */
  due: string;
  /** For the large digits. */
  digits: string;
  /** When it is due, kitchen time, ms; infinite for a stopped clock. */
  dueAt: number;
};

/** One piece of work on a shelf, or a timer. */
export type Item = {
  id: string;
  shelf: "hands" | "heat" | "rest" | "timers";
  name: string;
  title: string;
  clock?: ShownClock;
  /** Its state in words, where it has no clock: `not boiling yet`. */
  stands?: string;
  keys: LabeledKey[];
  /** What to do, for the first piece of work and for what is heating up. */
  say?: string;
};

export type BigClock = { digits: string; name: string; title: string; clock: ShownClock };

export type LanePart = {
  fromWallMs: number;
  toWallMs: number;
  label: string;
  phase: "been" | "now" | "coming";
};

/** One row of the day: hands, a burner or a canner. */
export type DayLane = { name: string; parts: LanePart[] };

/** The day from one instant to another by who or what is busy. */
export type DayStrip = {
  fromWallMs: number;
  toWallMs: number;
  lanes: DayLane[];
  /** The full hours in between, each with its time of day; none where there are no lanes. */
  hours: { wallMs: number; text: string }[];
};

/** Everything the screen shows at an instant. */
export type View = {
  /** Time of day, and the same as an instant. */
  time: string;
  nowWallMs: number;
  day: string;
  place: string;
  status: string;
  /** What must be seen at once: a log that cannot be written, an alarm that rings. */
  warnings: string[];
  empty: boolean;
  hands: Item[];
  heat: Item[];
  rest: Item[];
  timers: Item[];
  soonest?: BigClock;
  /** The open question; `of` is how many wait, including this one. */
  question?: { text: string; answer: string; of: number };
  /** What Space or Enter on an empty line does, or what to say instead. */
  key: { text: string; works: boolean };
  keys: LabeledKey[];
  next: string[];
  queue: string[];
  talk: ShownLine[];
  strip: DayStrip;
  input: TypedLine;
  /** What the program itself has to say at this moment, such as how to close it. */
  hint?: string;
};

/** The line being typed; the cursor stands after this many characters. */
type TypedLine = { text: string; cursor: number };

/** What only the screen knows, to be shown with the rest. */
export type ScreenParts = { input: TypedLine; hint?: string };
