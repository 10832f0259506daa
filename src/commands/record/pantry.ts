/** `brinebell pantry`: what is in store and where, what to eat first, what was eaten. */

import { type Command, commandOf } from "../../kitchen/command.ts";
import { batchName } from "../../kitchen/spoken-names.ts";
import type { Batch } from "../../kitchen/state.ts";
import { disposalWords } from "../../recipe/cautions.ts";
import { counted } from "../../review/report-words.ts";
import {
  eatFirst,
  type Opening,
  openings,
  type Pantry,
  type PantryLine,
  pantryOf,
  throwOut,
  withAdvice,
} from "../../review/shelf/pantry.ts";
import type { ReadKitchen } from "../../session/reading/read-kitchen.ts";
import { CALLS } from "../call/calls.ts";
import { type CommandResult, failed } from "../call/command-result.ts";
import { isOn, type Options, optionValue, parseOptions } from "../call/options.ts";
import {
  batchNamed,
  kitchenFor,
  printed,
  printedJson,
  printedLines,
  type ReviewIo,
  seasonFrom,
  withNotices,
} from "./review-io.ts";

export async function pantryCommand(args: string[], io: ReviewIo): Promise<CommandResult> {
  const parsed = parseOptions(args, CALLS.pantry.options);
  if (!parsed.ok) return failed(2, `pantry: ${parsed.error}`);
  const options = parsed.value;
  const season = seasonFrom(optionValue(options, "season"));
  if (!season.ok) return failed(2, `pantry: ${season.message}`);
  const off = wordsOff(options);
  if (off) return failed(2, `pantry: ${off}`);
  const read = kitchenFor("pantry", io);
  if (!read.ok) return read.result;
  const { kitchen } = read;
  const opened = optionValue(options, "opened");
  if (opened !== undefined) return open(options, kitchen, io, opened, season.season);
  const place = optionValue(options, "place");
  if (place !== undefined) return move(options, kitchen, io, place, season.season);
  const said = options.words.join(" ").toLowerCase();
  const show = isOn(options, "eaten") ? eaten : shown;
  const result = show(options, kitchen, said, season.season);
  return withNotices(result, "pantry", kitchen);
}

function wordsOff(options: Options): string | undefined {
  if (isOn(options, "spoiled") && !isOn(options, "opened")) {
    return "--spoiled goes with --opened BATCH";
  }
  if (isOn(options, "opened") && isOn(options, "place")) {
    return "--opened and --place are two commands; give one after the other";
  }
  return undefined;
}

/** Whether a line or an opening contains the words; the size of a jar has to be the whole word. */
function fits(one: PantryLine | Opening, said: string, season: number | undefined): boolean {
  if (season !== undefined && one.season !== season) return false;
  const { title, variety, recipe, batch } = one;
  const names = [title, variety, recipe, batch, "place" in one ? one.place : null];
  return ("jar" in one && one.jar === said) || names.some((n) => n?.toLowerCase().includes(said));
}

function eaten(
  options: Options,
  { state }: ReadKitchen,
  said: string,
  season: number | undefined,
): CommandResult {
  const all = openings(state);
  const list = all.filter((one) => fits(one, said, season));
  if (isOn(options, "json")) return printedJson({ opened: list });
  const lines = list.map((one) => {
    const name = [one.title, one.variety].filter(Boolean).join(", ");
    const spoiled = one.spoiled ? ", spoiled" : "";
    return `${one.at}  ${one.batch}  ${counted(one.count, "jar")} of ${name}${spoiled}\n`;
  });
  const none = all.length === 0 ? "yet" : "that these words fit";
  return printed(lines.join("") || `No jars were opened ${none}.\n`);
}

function shown(
  options: Options,
  { state, nowMs }: ReadKitchen,
  said: string,
  season: number | undefined,
): CommandResult {
  const all = pantryOf(state, nowMs);
  const lines = all.lines.filter((line) => fits(line, said, season));
  const opened = all.opened.filter((one) => fits(one, said, season));
  if (isOn(options, "json")) return printedJson(withAdvice({ ...all, lines, opened }));
  const asked = [said, season].filter(Boolean).join(", ");
  if (lines.length === 0 && asked !== "" && all.lines.length > 0) {
    return printed(
      `Nothing in store fits ${JSON.stringify(asked)}; brinebell pantry lists everything.\n`,
    );
  }
  return printed(pantryText({ ...all, lines }));
}

const HEADS = { shelf: "On the shelf", refrigerate: "Refrigerator", freeze: "Freezer" };

export function pantryText({ lines, waiting, troubles, on }: Pantry): string {
  const left = lines.filter((line) => line.left > 0);
  const out: string[] = [];
  for (const keep of ["refrigerate", "freeze", "shelf"] as const) {
    const here = left.filter((line) => line.keep === keep);
    if (here.length === 0) continue;
    const total = here.reduce((sum, line) => sum + line.left, 0);
    out.push(`${HEADS[keep]}: ${counted(total, "jar")}`);
    for (const line of here) out.push(lineText(line));
    const sources = [...new Set(here.map((line) => `${line.how} (${line.source})`))];
    out.push(...sources.map((source) => `  ${source}`), "");
  }
  if (out.length === 0) out.push(`Nothing is in store on ${on}.`, "");
  const names = (some: PantryLine[]) => {
    return some.map((line) => `${nameOf(line)} (${line.batch}, ${byText(line)})`).join("; ");
  };
  const [first, past] = [eatFirst(lines), throwOut(lines)];
  if (first.length > 0) out.push(`Eat first: ${names(first)}`);
  if (past.length > 0)
    out.push(`Throw out: ${names(past)}`, `  ${disposalWords("low-acid", false)}`);
  for (const one of waiting) {
    out.push(`${one.batch}: ${counted(one.jars, "sealed jar")} of a batch that is not finished`);
  }
  for (const trouble of troubles) out.push(`Does not add up: ${trouble}`);
  return `${out.join("\n").trimEnd()}\n`;
}

function nameOf(line: PantryLine): string {
  return [line.title, line.variety].filter(Boolean).join(", ");
}

function byText({ keep, by, daysLeft }: PantryLine): string {
  const word = keep === "refrigerate" ? "use by" : "best by";
  return daysLeft < 0 ? `past its ${word} ${by}` : `${word} ${by}`;
}

function lineText(line: PantryLine): string {
  const jar = line.jar ? ` ${line.jar}` : "";
  const of = line.opened > 0 ? ` of ${line.jars}` : "";
  const why = line.why ? `; ${line.why}` : "";
  return (
    `  ${String(line.left).padStart(3)}${of}${jar}  ${nameOf(line)}  ${line.batch}  ` +
    `${line.place}, ${byText(line)}${why}`
  );
}

async function open(
  options: Options,
  kitchen: ReadKitchen,
  io: ReviewIo,
  text: string,
  season: number | undefined,
): Promise<CommandResult> {
  const match = /^([^:]*)(?::(\d{1,3}))?$/.exec(text.trim());
  const count = Number(match?.[2] ?? 1);
  if (!match || count < 1)
    return failed(2, "pantry: --opened: write BATCH or BATCH:2, at least one jar");
  const found = batchNamed(kitchen.state, match?.[1] ?? "", season);
  if (!found.ok) return notFound("--opened", found.message, kitchen);
  const spoiled = isOn(options, "spoiled");
  const jars = `${spoiled ? "spoiled " : ""}${count === 1 ? "jar" : "jars"}`;
  const words = `opened ${count} ${jars} of ${batchName(found.batch)}`;
  const slots = { count, target: found.batch.id };
  const command = spoiled
    ? commandOf("spoiled", { ...slots, sign: "off" })
    : commandOf("opened", slots);
  return wrote(options, io, command, words, found.batch);
}

async function move(
  options: Options,
  kitchen: ReadKitchen,
  io: ReviewIo,
  text: string,
  season: number | undefined,
): Promise<CommandResult> {
  const cut = text.lastIndexOf("=");
  const place = text.slice(cut + 1).trim();
  if (cut < 1 || place === "") return failed(2, "pantry: --place: write BATCH=cellar");
  const found = batchNamed(kitchen.state, text.slice(0, cut), season);
  if (!found.ok) return notFound("--place", found.message, kitchen);
  const words = `put ${batchName(found.batch)} in the ${place}`;
  const slots = { place, target: found.batch.id };
  return wrote(options, io, commandOf("place", slots), words, found.batch);
}

function notFound(option: string, message: string, kitchen: ReadKitchen): CommandResult {
  return withNotices(failed(2, `pantry: ${option}: ${message}`), "pantry", kitchen);
}

async function wrote(
  options: Options,
  io: ReviewIo,
  command: Command<"opened" | "spoiled" | "place">,
  words: string,
  batch: Batch,
): Promise<CommandResult> {
  const { recordOrTell } = await import("../day/record-or-tell.ts");
  const done = await recordOrTell("pantry", io, command, words, batch.id);
  return done.ok ? printedLines("pantry", done, options) : done.result;
}
