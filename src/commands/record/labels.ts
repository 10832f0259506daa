/** `brinebell labels BATCH...`: labels for jars and seed packets, to print, or their text. */

import type { State } from "../../kitchen/state.ts";
import type { Units } from "../../reckon/metric-words.ts";
import type { Result } from "../../reckon/result.ts";
import { fail, ok } from "../../reckon/result.ts";
import { type LabelWords, labelLines, labelWords } from "../../review/pages/label-words.ts";
import {
  DEFAULT_SHEET,
  placesOn,
  type Sheet,
  sheetOf,
  sizeWords,
} from "../../review/pages/sheet.ts";
import { counted } from "../../review/report-words.ts";
import { type Label, labelsOf, seedLabel } from "../../review/shelf/labels.ts";
import { holdsRehearsalsAlone } from "../../review/shelf/pantry.ts";
import { CALLS } from "../call/calls.ts";
import { type CommandResult, failed } from "../call/command-result.ts";
import { isOn, type Options, optionValue, parseOptions } from "../call/options.ts";
import { type JarFound, jarNamed } from "./named-jar.ts";
import type { LabelRequest, LabelsIo } from "./print-labels.ts";
import { batchNamed, kitchenFor, printed, printedJson, withNotices } from "./review-io.ts";

/** More labels than this are a slip of the finger. */
const MOST_COPIES = 200;

export async function labelsCommand(args: string[], io: LabelsIo): Promise<CommandResult> {
  const parsed = parseOptions(args, CALLS.labels.options);
  if (!parsed.ok) return failed(2, `labels: ${parsed.error}`);
  const options = parsed.value;
  if (options.words.length === 0) return failed(2, "labels: name a batch: brinebell labels BATCH");
  const read = kitchenFor("labels", io);
  if (!read.ok) return read.result;
  const { state, nowMs } = read.kitchen;
  const { units } = state.kitchen;
  const refused = (code: 1 | 2, why: string) => {
    return withNotices(failed(code, `labels: ${why}`), "labels", read.kitchen);
  };
  const laid = paperFor(options, units);
  if (!laid.ok) return refused(2, laid.error);
  const found = labelsNamed(state, options.words, nowMs);
  if (!found.ok) return refused(found.code, found.message);
  const { sheet, start, copies } = laid.value;
  const labels = found.labels.flatMap((label) => Array<Label>(copies).fill(label));
  const result = await shown({ labels, sheet, start, units }, options, io);
  return withNotices(result, "labels", read.kitchen);
}

/** Sheet, first place and copies; the usual sheet is that of the kitchen's units. */
function paperFor(
  options: Options,
  units: Units,
): Result<{ sheet: Sheet; start: number; copies: number }> {
  const sheet = sheetOf({
    sheet: optionValue(options, "sheet") ?? DEFAULT_SHEET[units],
    paper: optionValue(options, "paper"),
    grid: optionValue(options, "grid"),
  });
  if (!sheet.ok) return sheet;
  const start = countOf(options, "start", placesOn(sheet.value));
  if (!start.ok) return start;
  const copies = countOf(options, "copies", MOST_COPIES);
  if (!copies.ok) return copies;
  return ok({ sheet: sheet.value, start: start.value, copies: copies.value });
}

function countOf(options: Options, name: string, most: number): Result<number> {
  const text = optionValue(options, name) ?? "1";
  const count = /^\d{1,4}$/.test(text) ? Number(text) : 0;
  if (count >= 1 && count <= most) return ok(count);
  return fail(`--${name}: ${JSON.stringify(text)} is not a number from 1 to ${most}`);
}

type Named = { ok: true; labels: Label[] } | { ok: false; code: 1 | 2; message: string };

/** The labels of what all words together name, else, as where they are ids, of each of them. */
function labelsNamed(state: State, words: readonly string[], now: number): Named {
  const isId = (word: string) => Object.hasOwn({ ...state.batches, ...state.seeds }, word);
  const together = words.some(isId) ? undefined : labelsOfOne(state, words.join(" "), now);
  if (together?.ok || together?.code === 1) return together;
  const labels: Label[] = [];
  for (const word of words) {
    const one = labelsOfOne(state, word, now);
    if (!one.ok) return together ?? one;
    labels.push(...one.labels);
  }
  return { ok: true, labels };
}

function labelsOfOne(state: State, said: string, now: number): Named {
  const seed = Object.hasOwn(state.seeds, said) ? state.seeds[said] : undefined;
  if (seed) return { ok: true, labels: [seedLabel(state, seed)] };
  const jar = jarNamed({ state, nowMs: now }, said);
  if (jar) return labelOfJar(state, jar, now);
  const found = batchNamed(state, said);
  if (!found.ok) return { ok: false, code: 2, message: found.message };
  const { batch } = found;
  const refused = (message: string): Named => ({ ok: false, code: 1, message });
  if (batch.rehearsal && !holdsRehearsalsAlone(state)) {
    return refused(`${batch.id} was a rehearsal; it made no jars`);
  }
  const labels = labelsOf(state, batch, now);
  if (labels.length > 0) return { ok: true, labels };
  const why = batch.state === "complete" ? "it has no jars to label" : "it is not finished";
  return refused(`${batch.id}: ${why}`);
}

function labelOfJar(state: State, named: JarFound, now: number): Named {
  if (!named.ok) return { ok: false, code: 2, message: named.message };
  const { batch, lot, jar } = named.found;
  const labels = labelsOf(state, batch, now).filter((label) => {
    return label.batch === lot.id && label.jar === jar.number;
  });
  if (labels.length > 0) return { ok: true, labels };
  const why = batch.state === "complete" ? "has no label: it is not in store" : "is not finished";
  return { ok: false, code: 1, message: `${lot.id}:${jar.number} ${why}` };
}

async function shown(
  request: LabelRequest,
  options: Options,
  io: LabelsIo,
): Promise<CommandResult> {
  const json = isOn(options, "json");
  const { labels, sheet, start } = request;
  const text = json ? printedJson({ sheet, start, labels }) : printed(preview(request));
  const paths = { pdf: optionValue(options, "pdf"), html: optionValue(options, "html") };
  if (paths.pdf === undefined && paths.html === undefined) return text;
  const { printLabels } = await import("./print-labels.ts");
  const done = await printLabels(request, paths, options, io);
  return json && done.code === 0 ? { ...done, stdout: text.stdout } : done;
}

/** What will be printed: labels that differ only by the jar are shown once. */
function preview({ labels, sheet, start, units }: LabelRequest): string {
  const each = placesOn(sheet);
  const sheets = Math.ceil((start - 1 + labels.length) / each);
  const alike = new Map<string, { words: LabelWords; labels: Label[] }>();
  for (const label of labels) {
    const key = JSON.stringify({ ...label, jar: null, id: null, mark: null });
    const { words, labels: list } = alike.get(key) ?? {
      words: labelWords(label, units),
      labels: [],
    };
    alike.set(key, { words, labels: [...list, label] });
  }
  const shapes = [...alike.values()].map(({ words, labels: list }) => {
    const lines = labelLines(words);
    const width = Math.max(...lines.map((line) => line.length));
    const edge = `+${"-".repeat(width + 2)}+`;
    const numbers = list.flatMap((label) => label.jar ?? []);
    const jars = numbers.length === list.length ? `, jars ${numbers.join(", ")}` : "";
    const count = list.length === 1 ? "" : `\n  ${list.length} of these${jars}`;
    const inside = lines.map((line) => `| ${line.padEnd(width)} |`);
    return `${[edge, ...inside, edge].join("\n")}${count}`;
  });
  const counts = `${counted(labels.length, "label")} of ${sizeWords(sheet)} on`;
  const from = start === 1 ? "" : `, from place ${start}`;
  const paper = `${counted(sheets, "sheet")} of ${sheet.paper.name} paper`;
  return `${shapes.join("\n")}\n${counts} ${paper}, ${each} to a sheet${from}.\n`;
}
