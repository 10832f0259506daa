import type { Command } from "../../kitchen/command.ts";
import { isZone, parseIso } from "../../kitchen/time.ts";
import type { Context, NamedStage, OpenQuestion } from "../../language/context.ts";
import { hear } from "../../language/hear.ts";
import { isAtTheTable } from "../../language/weighing.ts";
import { CRITICAL_FACTORS } from "../../recipe/critical-factors.ts";
import type { Library } from "../../recipe/library.ts";
import { type CriticalFactor, STAGE_KINDS } from "../../recipe/recipe.ts";
import { CALLS } from "../call/calls.ts";
import { isOn, type Options, optionValue, parseOptions } from "../call/options.ts";

/** What the command reads and knows; the caller gives the machine's zone and moment. */
type UnderstandIo = {
  /** Lines to understand, in order, without their line ends. */
  lines: Iterable<string> | AsyncIterable<string>;
  /** IANA zone for clock times and dates. */
  zone: string;
  /** Epoch milliseconds, where `--now` is not given. */
  nowMs: number;
  library: Library;
  out: (line: string) => void;
  err: (line: string) => void;
};

type Running = Context["running"];

const LOAD_ID = /^L\d+$/;

function runningFrom(text: string): Running {
  const parts = text
    .split(",")
    .map((part) => part.trim())
    .filter((part) => part !== "");
  return parts.map((part, index) => {
    const colon = part.indexOf(":");
    const recipe = colon < 0 ? part : part.slice(0, colon);
    const batch = { id: `${recipe}-${index + 1}`, recipe };
    return colon < 0 ? batch : { ...batch, variety: part.slice(colon + 1).replaceAll("-", " ") };
  });
}

/** `ID:KIND`: what runs now, as a load's or a batch's stage. */
function stageFrom(text: string | undefined) {
  if (text === undefined) return undefined;
  const [owner, kind, ...more] = text.split(":");
  const known = STAGE_KINDS.find((one) => one === kind);
  if (!owner || !known || more.length > 0) {
    return `--stage "${text}" is not one; write it like L1:process (${STAGE_KINDS.join(", ")})`;
  }
  const stage: NamedStage = { id: known, title: known, kind: known, state: "running" };
  return { owner, stage };
}

/** Questions that take more than a yes or a no. */
const ANSWERED_BY: Readonly<Record<string, OpenQuestion["kind"]>> = {
  altitude: "altitude",
  seals: "jars",
  gauge: "choice",
  "gauge-off": "gauge-off",
  filled: "number",
  which: "choice",
};

/** The question that a critical factor is asked by. */
function factorQuestion({ id, answer }: CriticalFactor): OpenQuestion {
  const { right = [], wrong = [] } = answer?.type === "choice" ? answer : {};
  const choices = right.length > 0 ? { choices: [...right, ...wrong], right } : {};
  return { kind: answer?.type ?? "yes-no", key: id, guards: true, ...choices };
}

/** The question of a key that `--question` may name. */
export function questionFrom(key: string | undefined): OpenQuestion | undefined {
  if (key === undefined) return undefined;
  const factor = CRITICAL_FACTORS.find(({ id }) => id === key);
  if (factor) return factorQuestion(factor);
  const choices = key === "gauge" ? { choices: ["dial", "weighted"] } : {};
  const guards = key === "which" ? {} : { guards: true as const };
  return { kind: ANSWERED_BY[key] ?? "yes-no", key, ...guards, ...choices };
}

function unknownRecipe(running: Running, recipes: Context["recipes"]): string | undefined {
  return running.find(({ recipe }) => !recipes.some(({ id }) => id === recipe))?.recipe;
}

function contextFrom(options: Options, io: UnderstandIo): Context | string {
  const recipes = [...io.library.recipes.values()];
  const said = optionValue(options, "now");
  const nowMs = said === undefined ? io.nowMs : parseIso(said, io.zone);
  if (nowMs === undefined) {
    return `--now "${said}" is not a time; write it like 2027-08-14T14:00:00`;
  }
  if (!isZone(io.zone)) return `the zone "${io.zone}" is not known; set TZ to one that is`;
  const running = runningFrom(optionValue(options, "running") ?? "");
  const stranger = unknownRecipe(running, recipes);
  if (stranger !== undefined) {
    return `--running names "${stranger}", which is not a recipe; see brinebell recipes`;
  }
  const timers = (optionValue(options, "timers") ?? "")
    .split(",")
    .filter((label) => label.trim() !== "")
    .map((label, index) => ({ id: `timer-${index + 1}`, label: label.trim() }));
  const stage = stageFrom(optionValue(options, "stage"));
  if (typeof stage === "string") return stage;
  const question = questionFrom(optionValue(options, "question"));
  const [first, ...others] = running;
  // What is done at the table is a batch's own, all else a load's.
  const byHand = first && stage && isAtTheTable({ running: [{ ...first, stages: [stage.stage] }] });
  const ofBatch = byHand && !LOAD_ID.test(stage.owner);
  const worked = ofBatch ? [{ ...first, stages: [stage.stage] }, ...others] : running;
  const stages = stage && !ofBatch ? [stage.stage] : [];
  const loads = stage ? [{ id: stage.owner, canner: "canner", stages }] : [];
  const { zone, library } = io;
  const ofRunning = running.flatMap(({ recipe }) => library.recipes.get(recipe)?.critical ?? []);
  const asked = CRITICAL_FACTORS.filter(({ id }) => id === question?.key);
  const factors = [...new Map([...ofRunning, ...asked].map((one) => [one.id, one])).values()];
  const base = { nowMs, zone, recipes, library, running: worked, timers, loads, factors };
  return question ? { ...base, question } : base;
}

/**
 * `brinebell understand [--json] [--now T] [--running ID[:VARIETY],…] [--timers LABEL,…] < lines`:
 * prints for each line what it is understood as. Returns the exit status: 0 done, 2 wrong usage.
 */
export async function understandCommand(
  args: readonly string[],
  io: UnderstandIo,
): Promise<number> {
  const parsed = parseOptions(args, CALLS.understand.options);
  if (!parsed.ok) {
    io.err(`brinebell understand: ${parsed.error}`);
    return 2;
  }
  const options = parsed.value;
  if (options.words.length > 0) {
    const hint = "give the lines on standard input";
    io.err(`brinebell understand: "${options.words[0]}" is one word too many; ${hint}`);
    return 2;
  }
  const context = contextFrom(options, io);
  if (typeof context === "string") {
    io.err(`brinebell understand: ${context}`);
    return 2;
  }
  for await (const text of io.lines) {
    const answer = answerOf(text, context);
    io.out(isOn(options, "json") ? JSON.stringify(answer) : plainLine(answer));
  }
  return 0;
}

/** The answer for one line, in the form of the contract. */
function answerOf(text: string, context: Context) {
  const { reading, commands, candidates } = hear(text, context);
  const [first = { intent: "unknown", slots: {}, confidence: 0 }, ...also] = commands.map(shown);
  return {
    text,
    ...first,
    reading,
    candidates: candidates.map(shown),
    also: also.map(({ intent, slots }) => ({ intent, slots })),
  };
}

function shown({ intent, slots, confidence }: Command) {
  return { intent, slots, confidence };
}

function plainLine(answer: ReturnType<typeof answerOf>): string {
  const { text, reading, intent, slots, confidence, candidates, also } = answer;
  const [likely] = candidates;
  if (reading === "ask" && likely) {
    return `${text}  ->  asks: ${inWords(likely)} (${Math.round(likely.confidence * 100)} %)`;
  }
  const all = [{ intent, slots }, ...also].map(inWords).join("; ");
  return `${text}  ->  ${all} (${Math.round(confidence * 100)} %)`;
}

function inWords({ intent, slots }: { intent: string; slots: object }): string {
  const filled = Object.entries(slots).map(
    ([slot, value]) => `${slot} ${typeof value === "object" ? JSON.stringify(value) : value}`,
  );
  return [intent, ...filled].join(", ");
}
