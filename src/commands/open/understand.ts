import { isZone, parseIso } from "../../kitchen/time.ts";
import type { Context } from "../../language/context.ts";
import { understand } from "../../language/understand.ts";
import type { Library } from "../../recipe/library.ts";
import { CALLS } from "../call/calls.ts";
import { isOn, type Options, optionValue, parseOptions } from "../call/options.ts";

/** What the command reads and knows; the caller gives the machine's zone and moment. */
export type UnderstandIo = {
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

function unknownRecipe(running: Running, recipes: Context["recipes"]): string | undefined {
  return running.find(({ recipe }) => !recipes.some(({ id }) => id === recipe))?.recipe;
}

function contextFrom(options: Options, io: UnderstandIo): Context | string {
  const recipes = [...io.library.recipes.values()];
  const said = optionValue(options, "now");
  const nowMs = said === undefined ? io.nowMs : parseIso(said, io.zone);
  if (nowMs === undefined) {
    return `--now "${said}" is no time; write it like 2027-08-14T14:00:00`;
  }
  if (!isZone(io.zone)) return `the zone "${io.zone}" is not known; set TZ to one that is`;
  const running = runningFrom(optionValue(options, "running") ?? "");
  const stranger = unknownRecipe(running, recipes);
  if (stranger !== undefined) {
    return `--running names "${stranger}", which is no recipe; see brinebell recipes`;
  }
  const timers = (optionValue(options, "timers") ?? "")
    .split(",")
    .filter((label) => label.trim() !== "")
    .map((label, index) => ({ id: `timer-${index + 1}`, label: label.trim() }));
  return { nowMs, zone: io.zone, recipes, library: io.library, running, timers };
}

/**
 * `brinebell understand [--json] [--now T] [--running ID[:VARIETY],…] [--timers LABEL,…] < lines`:
 * prints for each line what it is understood as. Gives the exit status: 0 done, 2 the words of the
 * call are off.
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
    const { intent, slots, confidence } = understand(text, context);
    if (isOn(options, "json")) io.out(JSON.stringify({ text, intent, slots, confidence }));
    else io.out(plainLine(text, intent, slots, confidence));
  }
  return 0;
}

function plainLine(text: string, intent: string, slots: object, confidence: number): string {
  const filled = Object.entries(slots).map(
    ([slot, value]) => `${slot} ${typeof value === "object" ? JSON.stringify(value) : value}`,
  );
  const words = [intent, ...filled].join(", ");
  return `${text}  ->  ${words} (${Math.round(confidence * 100)} %)`;
}
