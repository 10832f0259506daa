/** `brinebell seeds`: the seed lots, a new one, or a germination test of one. */

import { type Command, commandOf } from "../../kitchen/command.ts";
import { parseQuantity } from "../../reckon/quantity.ts";
import { counted } from "../../review/report-words.ts";
import { germinationOf, type SeedReport, seedReports } from "../../review/shelf/seeds.ts";
import { CALLS } from "../call/calls.ts";
import { type CommandResult, failed } from "../call/command-result.ts";
import { isOn, type Options, optionValue, parseOptions } from "../call/options.ts";
import {
  kitchenFor,
  printed,
  printedJson,
  printedLines,
  type ReviewIo,
  withNotices,
} from "./review-io.ts";

const USAGE = "say seeds, seeds add CROP --variety NAME, or seeds test LOT 18/20 --days 7";

export async function seedsCommand(args: string[], io: ReviewIo): Promise<CommandResult> {
  const parsed = parseOptions(args, CALLS.seeds.options);
  if (!parsed.ok) return failed(2, `seeds: ${parsed.error}`);
  const options = parsed.value;
  const [verb, ...rest] = options.words;
  if (verb === "add") return add(options, rest, io);
  if (verb === "test") return test(options, rest, io);
  if (verb !== undefined) return failed(2, `seeds: ${JSON.stringify(verb)} is unknown; ${USAGE}`);
  const read = kitchenFor("seeds", io);
  if (!read.ok) return read.result;
  const reports = seedReports(read.kitchen.state);
  const result = isOn(options, "json")
    ? printedJson({ seeds: reports })
    : printed(reports.map(seedText).join("\n") || "No seed lots yet: brinebell seeds add CROP\n");
  return withNotices(result, "seeds", read.kitchen);
}

function wholeDays(options: Options, name: string): number | undefined | string {
  const text = optionValue(options, name);
  if (text === undefined) return undefined;
  const days = Number(text.replace(/\s*d(ays?)?$/, ""));
  return Number.isInteger(days) && days >= 0 && days <= 365
    ? days
    : `--${name}: ${JSON.stringify(text)} is not a number of days; write 7`;
}

async function add(options: Options, words: string[], io: ReviewIo): Promise<CommandResult> {
  const [crop, ...more] = words;
  if (crop === undefined) return failed(2, `seeds: seed of which crop? ${USAGE}`);
  const fermentDays = wholeDays(options, "ferment-days");
  if (typeof fermentDays === "string") return failed(2, `seeds: ${fermentDays}`);
  const weight = optionValue(options, "dry-weight");
  const read = weight === undefined ? undefined : parseQuantity(weight, ["mass"], "--dry-weight");
  if (read && !read.ok) return failed(2, `seeds: ${read.error}`);
  const variety = optionValue(options, "variety") ?? (more.join(" ") || undefined);
  const slots: Record<string, unknown> & { crop: string } = { crop };
  const given = {
    variety,
    isolation: optionValue(options, "isolation"),
    fermentDays,
    dryWeightG: read?.ok ? Math.round(read.value.value * 100) / 100 : undefined,
    storage: optionValue(options, "storage"),
    batch: optionValue(options, "batch"),
  };
  for (const [name, value] of Object.entries(given)) {
    if (value !== undefined) slots[name] = value;
  }
  const text = `saved seed: ${[variety, crop].filter(Boolean).join(" ")}`;
  return record(options, io, commandOf("seed-saved", slots), text, []);
}

async function test(options: Options, words: string[], io: ReviewIo): Promise<CommandResult> {
  const [seed, counts = "", ...more] = words;
  const match = /^(\d{1,5})\s*(?:\/|of)\s*(\d{1,5})$/.exec([counts, ...more].join(" ").trim());
  if (seed === undefined || !match) return failed(2, `seeds: ${USAGE}`);
  const days = wholeDays(options, "days");
  if (typeof days === "string") return failed(2, `seeds: ${days}`);
  const [sprouted, of] = [Number(match[1]), Number(match[2])];
  if (of < 1 || sprouted > of) {
    return failed(2, `seeds: ${sprouted} of ${of} is impossible; write how many of how many`);
  }
  const slots = { seed, sprouted, of, ...(days === undefined ? {} : { days }) };
  const text = `${sprouted} of ${of} seeds of ${seed} sprouted`;
  const after = [germinationOf(sprouted, of).sentence];
  return record(options, io, commandOf("germination", slots), text, after);
}

async function record(
  options: Options,
  io: ReviewIo,
  command: Command<"seed-saved" | "germination">,
  words: string,
  after: string[],
): Promise<CommandResult> {
  const { recordOrTell } = await import("../day/record-or-tell.ts");
  const done = await recordOrTell("seeds", io, command, words);
  return done.ok
    ? printedLines("seeds", { ...done, lines: [...done.lines, ...after] }, options)
    : done.result;
}

function seedText(lot: SeedReport): string {
  const name = [lot.variety, lot.crop].filter(Boolean).join(" ");
  const facts = [
    lot.isolation && `isolated: ${lot.isolation}`,
    lot.fermentDays !== null && `fermented ${lot.fermentDays} days`,
    lot.dryWeightG !== null && `${lot.dryWeightG} g dry`,
    lot.storage && `kept: ${lot.storage}`,
    lot.batch && `from batch ${lot.batch}`,
  ].filter(Boolean);
  const lines = [`${lot.id}  ${name}, saved ${lot.saved}`];
  if (facts.length > 0) lines.push(`  ${facts.join("; ")}`);
  for (const one of lot.tests) {
    const after = one.days === null ? "" : ` after ${one.days} days`;
    lines.push(`  ${one.on}${after}: ${one.sentence}`);
  }
  if (lot.lifeYears && lot.oldAfter) {
    const [short, long] = lot.lifeYears;
    const years = short === long ? counted(short, "year") : `${short} to ${long} years`;
    lines.push(`  lasts about ${years} if kept cool and dry (${lot.lifeSource})`);
  }
  return `${lines.join("\n")}\n`;
}
