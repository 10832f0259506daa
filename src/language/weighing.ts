/**
 * What a guess of the model is worth: what a mistake would cost decides whether it is acted on,
 * asked about or left.
 */
import type { Command, Intent } from "../kitchen/command.ts";
import { rulesOf } from "../kitchen/stages/kinds.ts";
import { type Context, underWay } from "./context.ts";
import { MEANINGS } from "./intents/all.ts";
import type { Cost } from "./intents/meaning.ts";
import type { Frame } from "./model/corpus.ts";
import type { Situation } from "./model/features.ts";
import type { Likely } from "./model/linear-model.ts";
import type { Guess } from "./model/shipped.ts";

/** The most a guess can be worth: never as much as a wording that fits. */
export const MOST_GUESSED = 0.89;

/** How likely a reading of the model has to be: to act on it, and to ask about it. */
type Bounds = { act: number; ask: number };

/** Nothing is ever cleared on a guess: it is asked back. */
const NEVER = 2;
export const BOUNDS: Record<Cost, Bounds> = {
  harmless: { act: 0.3, ask: 0.15 },
  changing: { act: 0.75, ask: 0.15 },
  raising: { act: 0.8, ask: 0.15 },
  clearing: { act: NEVER, ask: 0.2 },
};

/** Frames in which something is meant as true, or to be done, here and now. */
export const DIRECT: readonly Frame[] = ["said", "ordered", "asked"];

/** How likely the frame has to be one in which a meaning can be acted on. */
export const FRAME_TO_ACT = 0.65;
export const FRAME_TO_ASK = 0.3;
/** A wording that fits is not believed where the model is so sure that it is meant otherwise. */
const FRAME_AGAINST = 0.95;

/** What runs and what is asked, in the form the model learned it. */
export function situationOf({ running, loads = [], question }: Context): Situation {
  const stages = underWay([...running, ...loads]).map(({ kind }) => kind);
  const key = question?.key ?? question?.kind;
  return { stages: [...new Set(stages)].sort(), ...(key ? { question: key } : {}) };
}

/** How likely it is meant in a frame in which this meaning can be acted on. */
export function directness(intent: Intent, { frames, marked }: Guess): number {
  const { report, cost, asked, urgent, supposing } = MEANINGS[intent];
  if (report) return frames.said;
  const told = frames.asked + frames.ordered;
  // "Oldest thing on the shelf?" is a question by its mark.
  const meant = told + (marked ? frames.said + frames.idle : 0) + (supposing ? frames.imagined : 0);
  if (asked) return meant;
  // "The smoke alarm's going, but I see nothing": somebody in danger is heard whatever is denied.
  if (urgent) return told + frames.said + frames.denied;
  if (cost === "harmless") return frames.asked + frames.ordered + frames.said;
  return frames.said + frames.ordered + (MEANINGS[intent].unasked ? 0 : frames.asked / 2);
}

/** How likely it is meant so that it can be asked about: a loss is told as what is no longer so. */
function askability(intent: Intent, from: Guess): number {
  const { cost } = MEANINGS[intent];
  return directness(intent, from) + (cost === "raising" ? from.frames.denied : 0);
}

/** How likely a sentence is nothing for the kitchen. */
export function idleness({ intents }: { intents: readonly Likely[] }): number {
  return intents.find(({ name }) => name === "unknown")?.probability ?? 0;
}

/** How it is likeliest meant. */
export function frameOf({ frames }: Guess): Frame {
  const list = Object.entries(frames) as [Frame, number][];
  return list.reduce((best, one) => (one[1] > best[1] ? one : best))[0];
}

/** Nothing runs that a name alone could turn to. */
export function isEmpty({ running, loads = [], timers }: Context): boolean {
  return running.length + loads.length + timers.length === 0;
}

/** Whether a guess needs something to be running where the kitchen is known to be empty. */
export function isOutOfPlace(intent: Intent, context: Context): boolean {
  const { onRecord, question } = context;
  if (!onRecord || question || !isEmpty(context)) return false;
  const { cost, when, ofRecord } = MEANINGS[intent];
  return cost !== "harmless" && !ofRecord && !when.some((one) => /^(always|idle|asked)/.test(one));
}

/**
 * Whether nothing but work at the table is on: what is said too soon to be done is taken back, and
 * nothing is cleared. Jars go in and out of a canner by a plain word.
 */
export function isAtTheTable({ running, loads = [] }: Pick<Context, "running" | "loads">): boolean {
  const stages = underWay(running);
  const table = stages.length > 0 && stages.every((stage) => rulesOf(stage).food === "table");
  return table && underWay(loads).length === 0;
}

/** What a mistake costs in this moment. */
function costIn({ intent }: Command, atTheTable: boolean): Cost {
  const { cost, plainly, anyStep } = MEANINGS[intent];
  if (plainly) return "clearing";
  return anyStep && atTheTable ? "changing" : cost;
}

/** Sure enough, for what a mistake costs, to be acted on. */
export function isToAct(command: Command, from: Guess, atTheTable: boolean): boolean {
  const { act } = BOUNDS[costIn(command, atTheTable)];
  return command.confidence >= act && directness(command.intent, from) >= FRAME_TO_ACT;
}

/** Likely enough to be asked about. */
export function isToAsk(command: Command, from: Guess): boolean {
  const { cost, urgent } = MEANINGS[command.intent];
  // Nobody is asked whether somebody is hurt where no word says how.
  if (urgent && Object.keys(command.slots).length === 0) return false;
  const { ask } = BOUNDS[cost];
  return command.confidence >= ask && askability(command.intent, from) >= FRAME_TO_ASK;
}

/** Whether the model is sure that a report matched by a wording is not meant as true now. */
export function contradicted(plain: Command, from: Guess): boolean {
  const { report, answer } = MEANINGS[plain.intent];
  // A plain loss is believed: all it costs is time.
  if (answer || !report || MEANINGS[plain.intent].cost === "raising") return false;
  return 1 - DIRECT.reduce((sum, one) => sum + from.frames[one], 0) >= FRAME_AGAINST;
}
