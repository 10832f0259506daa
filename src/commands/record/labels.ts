/** `brinebell labels BATCH`: a sheet of labels to print, or its text. */

import { labelPage } from "../../review/pages/label-page.ts";
import { DEFAULT_SHEET, type Sheet, sheetOf } from "../../review/pages/sheet.ts";
import { type Label, labelsOf } from "../../review/shelf/labels.ts";
import { holdsRehearsalsAlone } from "../../review/shelf/pantry.ts";
import { CALLS } from "../call/calls.ts";
import { type CommandResult, failed } from "../call/command-result.ts";
import { isOn, type Options, optionValue, parseOptions } from "../call/options.ts";
import {
  batchNamed,
  kitchenFor,
  printed,
  printedJson,
  type ReviewIo,
  withNotices,
  writtenOutput,
} from "./review-io.ts";

export async function labelsCommand(args: string[], io: ReviewIo): Promise<CommandResult> {
  const parsed = parseOptions(args, CALLS.labels.options);
  if (!parsed.ok) return failed(2, `labels: ${parsed.error}`);
  const options = parsed.value;
  if (options.words.length === 0) return failed(2, "labels: name a batch: brinebell labels BATCH");
  const sheet = sheetOf(
    optionValue(options, "sheet") ?? DEFAULT_SHEET,
    optionValue(options, "paper"),
  );
  if (!sheet.ok) return failed(2, `labels: ${sheet.error}`);
  const read = kitchenFor("labels", io);
  if (!read.ok) return read.result;
  const { state, nowMs } = read.kitchen;
  const found = batchNamed(state, options.words.join(" "));
  const refused = (code: 1 | 2, why: string) => {
    return withNotices(failed(code, `labels: ${why}`), "labels", read.kitchen);
  };
  if (!found.ok) return refused(2, found.message);
  const { batch } = found;
  if (batch.rehearsal && !holdsRehearsalsAlone(state)) {
    return refused(1, `${batch.id} was a rehearsal; it made no jars`);
  }
  const labels = labelsOf(state, batch, nowMs);
  if (labels.length === 0) {
    const why = batch.state === "complete" ? "it has no jars to label" : "it is not finished";
    return refused(1, `${batch.id}: ${why}`);
  }
  const html = optionValue(options, "html");
  const pdf = optionValue(options, "pdf");
  const json = isOn(options, "json");
  const shown = json
    ? printedJson({ sheet: sheet.value, labels })
    : printed(preview(labels, sheet.value));
  if (html === undefined && pdf === undefined) return withNotices(shown, "labels", read.kitchen);
  const results: CommandResult[] = [];
  if (html !== undefined) {
    results.push(
      writtenOutput("labels", io, options, {
        path: html,
        content: labelPage(labels, sheet.value),
        kind: "labels",
      }),
    );
  }
  if (pdf !== undefined) results.push(await writePdf(labels, sheet.value, io, options, pdf));
  const done = together(results);
  const result = json && done.code === 0 ? { ...done, stdout: shown.stdout } : done;
  return withNotices(result, "labels", read.kitchen);
}

function together(results: readonly CommandResult[]): CommandResult {
  const code = results.find((one) => one.code !== 0)?.code ?? 0;
  const join = (what: "stdout" | "stderr") => results.map((one) => one[what]).join("");
  return { code, stdout: join("stdout"), stderr: join("stderr") };
}

async function writePdf(
  labels: readonly Label[],
  sheet: Sheet,
  io: ReviewIo,
  options: Options,
  path: string,
): Promise<CommandResult> {
  const { labelPdf } = await import("./label-pdf.ts");
  const { bytes, changed, lost } = await labelPdf(labels, sheet, new Date(io.nowMs ?? Date.now()));
  const result = writtenOutput("labels", io, options, { path, content: bytes, kind: "pdf" });
  if (result.code !== 0 || !changed) return result;
  const what = lost
    ? "some letters do not exist in the PDF's font and are printed as ?; --html has them all"
    : "some letters are printed without their accents in the PDF; --html has them";
  return { ...result, stderr: `brinebell labels: ${what}\n` };
}

/** What will be printed: labels that differ only by the jar's number are shown once. */
function preview(labels: readonly Label[], sheet: Sheet): string {
  const each = sheet.columns * sheet.rows;
  const sheets = Math.ceil(labels.length / each);
  const tenths = (mm: number) => Math.round(mm * 10) / 10;
  const size = `${tenths(sheet.widthMm)} x ${tenths(sheet.heightMm)} mm`;
  const alike = new Map<string, Label[]>();
  for (const label of labels) {
    const key = label.lines.slice(0, -1).join("\n");
    alike.set(key, [...(alike.get(key) ?? []), label]);
  }
  const shown = [...alike.values()].map((list) => {
    const lines = list[0]?.lines ?? [];
    const width = Math.max(...lines.map((line) => line.length));
    const edge = `+${"-".repeat(width + 2)}+`;
    const numbers = list.flatMap((label) => label.jar ?? []);
    const jars = numbers.length === list.length ? `, jars ${numbers.join(", ")}` : "";
    const count = list.length === 1 ? "" : `\n  ${list.length} of these${jars}`;
    const inside = lines.map((line) => `| ${line.padEnd(width)} |`);
    return `${[edge, ...inside, edge].join("\n")}${count}`;
  });
  const counts = `${labels.length} labels of ${size} on ${sheets} sheet${sheets === 1 ? "" : "s"}`;
  return `${shown.join("\n")}\n${counts} of ${sheet.paper.name} paper, ${each} to a sheet.\n`;
}
