/**
 * What a sentence leads to, from all the evidence there is: wordings that fit it as a whole or by
 * clauses, and what a learned model takes it to mean, in the situation it was said in. What a
 * mistake would cost decides between acting, asking back and ignoring it.
 */
import type { Command, Evidence, Intent } from "../kitchen/command.ts";
import type { Context } from "./context.ts";
import { doubtIn, lossIn } from "./evidence/doubts.ts";
import { foundSlots } from "./evidence/found-slots.ts";
import { Scan } from "./evidence/scan.ts";
import { clausesIn } from "./evidence/split.ts";
import { isStopped } from "./frames.ts";
import { furtherBegins } from "./further-begins.ts";
import { phraseBook } from "./grammar/phrase-book.ts";
import { MEANINGS } from "./intents/all.ts";
import type { Cost } from "./intents/meaning.ts";
import type { Frame } from "./model/corpus.ts";
import type { Situation } from "./model/features.ts";
import type { Models } from "./model/linear-model.ts";
import { type Guess, guess, shippedModels } from "./model/shipped.ts";
import { CERTAIN, understand, understoodWords } from "./understand.ts";
import { finishSlots } from "./values/finish-slots.ts";
import { slotReader } from "./values/slots.ts";
import { spokenNames } from "./values/targets.ts";
import { type Utterance, utteranceOf } from "./words.ts";

/** `whole`: a wording covers the sentence from its first word to its last. */
type Read = Heard & Pick<Guess, "intents"> & { whole?: boolean };

export type Heard = {
  /** `sure`: it is acted on; `ask`: a closed question about the first candidate; else nothing. */
  reading: "sure" | "ask" | "unknown";
  /** What is acted on, in the order it was said; empty unless sure. */
  commands: readonly Command[];
  /** What it may mean, the likeliest first; at most three. */
  candidates: readonly Command[];
  /** How it is meant, as far as the model knows. */
  frame: Frame;
  /** The doubt it raises about jars at stake, where nothing is done about it. */
  evidence?: Evidence;
};

const MOST_CANDIDATES = 3;

/** How likely a reading by the model has to be to act on it, and to ask about it. */
type Bounds = { act: number; ask: number };

/** Nothing is ever cleared on a guess: it is asked about first. */
const NEVER = 2;
const BOUNDS: Record<Cost, Bounds> = {
  harmless: { act: 0.4, ask: 0.25 },
  changing: { act: 0.55, ask: 0.25 },
  raising: { act: 0.6, ask: 0.2 },
  clearing: { act: NEVER, ask: 0.3 },
};

/** Frames in which something is meant as true, or as an order, here and now. */
const DIRECT: readonly Frame[] = ["said", "ordered", "asked"];

/** How likely the frame has to be one in which a meaning can be acted on. */
const FRAME_TO_ACT = 0.55;
const FRAME_TO_ASK = 0.3;
/**
 * A wording that fits is not believed where the model is this sure that it is meant differently.
 */
const FRAME_AGAINST = 0.95;
function situationOf({ running, loads = [], question }: Context): Situation {
  const stages = [...running.flatMap((one) => one.stages ?? []), ...loads.flatMap((l) => l.stages)]
    .filter(({ state }) => state === "running")
    .map(({ kind }) => kind);
  const key = question?.key ?? question?.kind;
  return { stages: [...new Set(stages)].sort(), ...(key ? { question: key } : {}) };
}

/** How likely it is that the frame is one in which this meaning can be acted on. */
function directness(intent: Intent, { frames }: Guess): number {
  const { report, cost } = MEANINGS[intent];
  if (report) return frames.said;
  if (MEANINGS[intent].asked) return frames.asked + frames.ordered;
  if (cost === "harmless") return frames.asked + frames.ordered + frames.said;
  return frames.said + frames.ordered + (MEANINGS[intent].unasked ? 0 : frames.asked / 2);
}

function frameOf({ frames }: Guess): Frame {
  const list = Object.entries(frames) as [Frame, number][];
  return list.reduce((best, one) => (one[1] > best[1] ? one : best))[0];
}

class Hearing {
  private readonly situation: Situation;

  constructor(
    private readonly context: Context,
    private readonly models: Models,
  ) {
    this.situation = situationOf(context);
  }

  guess(said: Utterance): Guess {
    const words = said.words.map(({ word }) => word);
    return guess(words, said.asked, this.situation, this.models);
  }

  /** A reading by the model as a command, with the values found in the words. */
  command(intent: Intent, probability: number, said: Utterance): Command | undefined {
    const read = slotReader(said, this.context, spokenNames(this.context), phraseBook().plain);
    const raw = foundSlots(intent, new Scan(said, read));
    return raw && finishSlots(intent, raw, probability, said, this.context);
  }

  /** What the model takes the words to mean, with values, the likeliest first. */
  readings(said: Utterance, from: Guess): Command[] {
    const idle = from.intents.find(({ name }) => name === "unknown")?.probability ?? 0;
    return from.intents.slice(0, 2 * MOST_CANDIDATES).flatMap(({ name, probability }) => {
      const known = Object.hasOwn(MEANINGS, name) && name !== "unknown";
      if (!known || probability < idle) return [];
      return this.command(name as Intent, probability, said) ?? [];
    });
  }

  /** The clauses as several facts, where each is one or says nothing. */
  several(said: Utterance, whole: Guess): Command[] {
    const clauses = clausesIn(said);
    if (clauses.length < 2) return [];
    const found: Command[] = [];
    for (const clause of clauses) {
      const plain = understoodWords(clause, this.context);
      const known = plain.intent !== "unknown" && plain.confidence >= CERTAIN;
      if (known && plain.intent !== "answer") {
        if (directness(plain.intent, whole) < FRAME_TO_ASK) return [];
        found.push(plain);
        continue;
      }
      const own = this.guess(clause);
      const [best] = this.readings(clause, own);
      const sure = best && isToAct(best, own);
      if (sure) found.push(best);
      else if (!saysNothing(clause, own)) return [];
    }
    return merged(found);
  }
}

/** Whether it says nothing to the kitchen: short, or idle by the model. */
function saysNothing({ words }: Utterance, { intents, frames }: Guess): boolean {
  const idle = intents.find(({ name }) => name === "unknown")?.probability ?? 0;
  return words.length <= 2 || idle >= 0.4 || frames.idle >= 0.5;
}

/** Whether a question or a call for help says less than another of the same meaning beside it. */
function isLess(one: Command, list: readonly Command[]): boolean {
  if (MEANINGS[one.intent].cost !== "harmless" || Object.keys(one.slots).length > 0) return false;
  return list.some((other) => other !== one && other.intent === one.intent);
}

/** Commands of one meaning combined, unless they contradict each other. */
function merged(commands: readonly Command[]): Command[] {
  const list: Command[] = [];
  for (const command of commands) {
    const same = list.find(({ intent, slots }) => {
      return intent === command.intent && JSON.stringify(slots) === JSON.stringify(command.slots);
    });
    if (!same) list.push(command);
  }
  return list.filter((one) => !isLess(one, list));
}

function isToAct(command: Command, from: Guess): boolean {
  const { act } = BOUNDS[MEANINGS[command.intent].cost];
  return command.confidence >= act && directness(command.intent, from) >= FRAME_TO_ACT;
}

function isToAsk(command: Command, from: Guess): boolean {
  const { cost, urgent } = MEANINGS[command.intent];
  // Nobody is asked whether somebody is hurt where no word says how.
  if (urgent && Object.keys(command.slots).length === 0) return false;
  const { ask } = BOUNDS[cost];
  return command.confidence >= ask && directness(command.intent, from) >= FRAME_TO_ASK;
}

/** Whether the model is sure that a report that a wording fits is not meant as true now. */
function contradicted(plain: Command, from: Guess): boolean {
  const { report, answer } = MEANINGS[plain.intent];
  // A plain loss is believed: it only costs time.
  if (answer || !report || MEANINGS[plain.intent].cost === "raising") return false;
  return 1 - DIRECT.reduce((sum, one) => sum + from.frames[one], 0) >= FRAME_AGAINST;
}

/** Hears a sentence. Deterministic; any text at all gives an answer, in bounded time. */
export function hear(text: string, context: Context, models: Models = shippedModels()): Heard {
  const said = utteranceOf(text);
  const heard = urgentFirst(unlessStopped(readIn(text, context, models), said), said, context);
  const { commands, reading, frame, intents } = heard;
  const lost = commands.map((command): Command => {
    const evidence = lossIn(command, text);
    return evidence ? { ...command, evidence } : command;
  });
  const answered = reading === "sure";
  const costs = commands.map(({ intent }) => MEANINGS[intent].cost);
  const settled = heard.whole === true && !costs.every((cost) => cost === "harmless");
  const meant = costs.includes("raising") || costs.includes("clearing");
  if (answered && (settled || meant)) return { ...heard, commands: lost };
  const evidence = doubtIn(said, { frame, intents }, answered);
  return evidence ? { ...heard, evidence } : heard;
}

/** Somebody hurt or in danger comes before whatever else was said, and before all questions. */
function urgentFirst(heard: Read, said: Utterance, context: Context): Read {
  const { commands, intents, frame } = heard;
  const likely = intents.find(({ name }) => MEANINGS[name as Intent]?.urgent);
  const known = commands.some(({ intent }) => MEANINGS[intent].urgent);
  if (!likely || likely.probability < BOUNDS.harmless.act || known) return heard;
  if (!DIRECT.includes(frame)) return heard;
  const { name, probability } = likely;
  const urgent = finishSlots(name as Intent, {}, probability, said, context);
  if (!urgent) return heard;
  const facts = commands.filter(({ intent }) => MEANINGS[intent].cost !== "harmless");
  return { ...heard, reading: "sure", commands: [urgent, ...facts] };
}

/** An order or report that its frame takes back is neither acted on nor asked about. */
function unlessStopped(heard: Read, said: Utterance): Read {
  const [likely] = heard.candidates;
  const meant = heard.reading === "ask" && likely ? [likely] : heard.commands;
  const stopped = meant.some((one) => isStopped(one, said, heard.whole === true));
  return stopped ? { ...heard, reading: "unknown", commands: [] } : heard;
}

function begunIn(commands: Command[]): Read {
  const candidates = commands.slice(0, MOST_CANDIDATES);
  return { reading: "sure", commands, candidates, frame: "ordered", intents: [] };
}

function readIn(text: string, context: Context, models: Models): Read {
  const said = utteranceOf(text);
  const begins = furtherBegins(said, context);
  if (begins.length > 0) return begunIn(begins);
  const plain = understand(text, context);
  const hearing = new Hearing(context, models);
  const whole = hearing.guess(said);
  const frame = frameOf(whole);
  const known = plain.intent !== "unknown";
  const readings = known && plain.confidence >= CERTAIN ? [] : hearing.readings(said, whole);
  const candidates = (first: readonly Command[]): Command[] => {
    const all = [...first, ...readings];
    const once = all.filter(({ intent }, at) => all.findIndex((o) => o.intent === intent) === at);
    return once.slice(0, MOST_CANDIDATES);
  };
  const sure = (commands: Command[]): Read => {
    return {
      reading: "sure",
      commands,
      candidates: candidates(commands),
      frame,
      intents: whole.intents,
    };
  };
  if (known && plain.confidence >= CERTAIN) {
    if (!contradicted(plain, whole)) return { ...sure([plain]), whole: true };
    const other = hearing.readings(said, whole);
    return {
      reading: "ask",
      commands: [],
      candidates: [...other, plain].slice(0, 3),
      frame,
      intents: whole.intents,
    };
  }
  const several = hearing.several(said, whole);
  if (several.length > 1) return sure(several);
  if (known) return sure([plain]);
  const [only] = several;
  if (only) return sure([only]);
  const [best] = readings;
  if (best && isToAct(best, whole)) return sure([best]);
  const asked = readings.filter((one) => isToAsk(one, whole));
  if (asked.length > 0) {
    return {
      reading: "ask",
      commands: [],
      candidates: candidates(asked),
      frame,
      intents: whole.intents,
    };
  }
  return {
    reading: "unknown",
    commands: [],
    candidates: candidates([]),
    frame,
    intents: whole.intents,
  };
}
