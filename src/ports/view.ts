/**
 * What is shown of the kitchen, as plain data: computed by the session, drawn by the screen or
 * printed as lines. Times of day and lengths come in words; instants are wall time, epoch ms.
 */

export type LineKind = "heard" | "answer" | "prompt" | "alarm" | "asked" | "refused" | "notice";

/** One line of the conversation, at a wall instant. */
export type Line = {
  wallMs: number;
  kind: LineKind;
  text: string;
  /** Shown only, as in a hush. */
  unspoken?: true;
  /** Of a prompt: it is the answer to what was heard before it. */
  answers?: true;
};

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

/** `over` is past its end, `open` may end now, `stopped` counts no more. */
export type ClockState = "running" | "open" | "over" | "stopped";

export type ShownClock = {
  state: ClockState;
  /** `11:40`, `2 h 05 min`, `3 days`, and with its state in words where it is not running. */
  text: string;
  /** Time of day it is due; empty for a stopped clock. */
  due: string;
};

/** One piece of work on a shelf, or a timer. */
export type Item = {
  id: string;
  shelf: "hands" | "heat" | "rest" | "timers";
  name: string;
  title: string;
  clock?: ShownClock;
  /** Its state in words, where it has no clock: `waits`. */
  stands?: string;
  keys: LabeledKey[];
  /** What to do, for what has no clock to wait for; and the same short. */
  say?: string;
  brief?: string;
  /** What goes into it for this batch's weight, one ingredient each; for the first of Hands. */
  amounts?: string[];
};

/** The one clock in large digits: what ends within the hour, or has stopped. */
export type BigClock = {
  /** The item it belongs to, whose row then shows no clock. */
  id: string;
  shelf: Item["shelf"];
  name: string;
  title: string;
  state: ClockState;
  /** `11:40`; `STOP` where it has stopped. */
  digits: string;
  /** How much of its time is done, from 0 to 1, and in words. */
  done?: { part: number; text: string };
  /** `ends 09:55:00`; empty for a stopped clock. */
  ends: string;
  /** What to do where it has stopped. */
  say?: string;
  keys: LabeledKey[];
};

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
  clock?: BigClock;
  /** The open question; `of` is how many wait, including this one. */
  question?: { text: string; answer: string; of: number };
  /** What Space or Enter on an empty line does, or what to say instead. */
  key: { text: string; works: boolean };
  keys: LabeledKey[];
  next: string[];
  queue: string[];
  /** Words that raised a doubt which nobody has settled, each with when it was heard. */
  unexplained: string[];
  talk: ShownLine[];
  /** What was heard last, and what was said since that is shown nowhere else. */
  latest: ShownLine[];
  strip: DayStrip;
  input: TypedLine;
  /** What the program itself has to say at this moment, such as how to close it. */
  hint?: string;
  /** The whole conversation is open, this many rows back from its end. */
  talkBack?: number;
};

/** The line being typed; the cursor stands after this many characters. */
type TypedLine = { text: string; cursor: number };

/** What only the screen knows, to be shown with the rest. */
export type ScreenParts = { input: TypedLine; hint?: string; talkBack?: number };
