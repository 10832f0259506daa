/** `brinebell pantry`: what is in store and where, what to eat first, what was eaten. */

import { type Command, commandOf } from "../../kitchen/command.ts";
import { refOf } from "../../kitchen/decide/decision.ts";
import { batchName } from "../../kitchen/spoken-names.ts";
import { disposalWords } from "../../recipe/cautions.ts";
import { counted } from "../../review/report-words.ts";
import { jarReport } from "../../review/shelf/jar-records.ts";
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
import { jarText } from "./jar-text.ts";
import { type JarFound, jarNamed } from "./named-jar.ts";
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
  const named = options.words.length > 0 ? jarNamed(kitchen, options.words.join(" ")) : undefined;
  if (named) return withNotices(oneJar(options, kitchen, named), "pantry", kitchen);
  const said = options.words.join(" ").toLowerCase();
  const show = isOn(options, "eaten") ? eaten : shown;
  const result = show(options, kitchen, said, season.season);
  return withNotices(result, "pantry", kitchen);
}

function oneJar(options: Options, { state, nowMs }: ReadKitchen, jar: JarFound): CommandResult {
  if (!jar.ok) return failed(2, `pantry: ${jar.message}`);
  const report = jarReport(state, jar.found, nowMs);
  if (!report) return failed(1, "pantry: that jar was emptied, to be filled again");
  return isOn(options, "json") ? printedJson({ jar: report }) : printed(jarText(report));
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
  const jar = jarNamed(kitchen, text);
  const found = jar ?? batchNamed(kitchen.state, text, season);
  if (!found.ok) return notFound("--opened", found.message, kitchen);
  const spoiled = isOn(options, "spoiled");
  const { batch, which, of } = meant(found);
  const words = `opened ${spoiled ? "spoiled " : ""}${of}`;
  const slots = { ...which, target: batch.id };
  const command = spoiled
    ? commandOf("spoiled", { ...slots, sign: "off" })
    : commandOf("opened", slots);
  return wrote(options, io, command, words, found);
}

type NamedOnShelf = Extract<JarFound | ReturnType<typeof batchNamed>, { ok: true }>;

/** The batch and the jar of it that is meant, or any of its jars. */
function meant(found: NamedOnShelf) {
  if ("batch" in found) {
    const { batch } = found;
    return { batch, which: { count: 1 }, of: `a jar of ${batchName(batch)}` };
  }
  const { batch, lot, jar } = found.found;
  return { batch, which: { jars: [jar.number] }, of: `jar ${lot.mark} ${jar.number}` };
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
  const name = text.slice(0, cut);
  const found = jarNamed(kitchen, name) ?? batchNamed(kitchen.state, name, season);
  if (!found.ok) return notFound("--place", found.message, kitchen);
  const { batch, which, of } = meant(found);
  const jars = "jars" in which ? { jars: which.jars } : {};
  const words = `put ${"jars" in which ? of : batchName(batch)} in the ${place}`;
  const slots = { place, ...jars, target: batch.id };
  return wrote(options, io, commandOf("place", slots), words, found);
}

function notFound(option: string, message: string, kitchen: ReadKitchen): CommandResult {
  return withNotices(failed(2, `pantry: ${option}: ${message}`), "pantry", kitchen);
}

async function wrote(
  options: Options,
  io: ReviewIo,
  command: Command<"opened" | "spoiled" | "place">,
  words: string,
  found: NamedOnShelf,
): Promise<CommandResult> {
  const chosen = "batch" in found ? { owner: found.batch.id } : refOf(found.found);
  const { recordOrTell } = await import("../day/record-or-tell.ts");
  const done = await recordOrTell("pantry", io, command, words, chosen);
  return done.ok ? printedLines("pantry", done, options) : done.result;
}
