/** Labels laid out and written to files. */
import type { Units } from "../../reckon/metric-words.ts";
import { labelPage } from "../../review/pages/label-page.ts";
import { type PlacedLabel, placeLabels } from "../../review/pages/label-sheet.ts";
import { type LabelWords, labelWords } from "../../review/pages/label-words.ts";
import { type Sheet, sizeWords } from "../../review/pages/sheet.ts";
import type { Label } from "../../review/shelf/labels.ts";
import { type CommandResult, failed } from "../call/command-result.ts";
import type { Options } from "../call/options.ts";
import { type FontFiles, type LabelFont, labelFont } from "./label-font.ts";
import { labelPdf } from "./label-pdf.ts";
import { type ReviewIo, writtenOutput } from "./review-io.ts";

export type LabelsIo = ReviewIo & { labelFont(): FontFiles };

/** What was asked for, as it is to lie on paper: from a place on the first sheet, 1 the first. */
export type LabelRequest = { labels: Label[]; sheet: Sheet; start: number; units: Units };

type Paths = { pdf: string | undefined; html: string | undefined };

/** Writes what was asked for; what could not be printed as it is, is said. */
export async function printLabels(
  request: LabelRequest,
  paths: Paths,
  options: Options,
  io: LabelsIo,
): Promise<CommandResult> {
  let files: FontFiles;
  try {
    files = io.labelFont();
  } catch {
    return failed(3, "labels: the program's fonts cannot be read; install it again");
  }
  const font = labelFont(files);
  const results: CommandResult[] = [];
  const words = request.labels.map((label) => labelWords(label, request.units));
  if (paths.html !== undefined) {
    const laid = laidOut(words, request, font);
    if (!laid.ok) return laid.result;
    const content = labelPage(laid.labels, request.sheet);
    const output = { path: paths.html, content, kind: "labels" } as const;
    results.push(withNote(writtenOutput("labels", io, options, output), laid.note));
  }
  if (paths.pdf !== undefined) {
    const known = words.map((one) => inFont(one, font));
    const laid = laidOut(
      known.map((one) => one.words),
      request,
      font,
    );
    if (!laid.ok) return laid.result;
    const madeAt = new Date(io.nowMs ?? Date.now());
    const content = await labelPdf(laid.labels, request.sheet, files, madeAt);
    const output = { path: paths.pdf, content, kind: "pdf" } as const;
    const written = withNote(writtenOutput("labels", io, options, output), laid.note);
    results.push(withNote(written, lackNote(known.flatMap((one) => one.lacks))));
  }
  return together(results);
}

type LaidOut =
  | { ok: true; labels: PlacedLabel[]; note: string }
  | { ok: false; result: CommandResult };

function laidOut(
  words: LabelWords[],
  { labels, sheet, start }: LabelRequest,
  font: LabelFont,
): LaidOut {
  const placed = placeLabels(words, sheet, start, font.measure);
  const size = sizeWords(sheet);
  const full = placed.indexOf(undefined);
  if (full >= 0) {
    const name = [labels[full]?.variety, labels[full]?.title].filter(Boolean).join(", ");
    const why = `does not fit a label of ${size} in letters that can be read`;
    return {
      ok: false,
      result: failed(1, `labels: ${name} ${why}; choose a larger one with --sheet`),
    };
  }
  const fitting = placed.filter((one) => one !== undefined);
  const left = new Set(fitting.flatMap((one) => one.layout.left ?? []));
  const what = [...left].join("; ");
  const note = what === "" ? "" : `labels of ${size} have no room for all: left out ${what}`;
  return { ok: true, labels: fitting, note };
}

/** The words as the font of the PDF can write them, and what it lacks. */
function inFont(words: LabelWords, font: LabelFont): { words: LabelWords; lacks: string[] } {
  const lacks: string[] = [];
  const write = (text: string) => {
    const written = font.written(text);
    lacks.push(...written.lacks);
    return written.text;
  };
  const { mark, name, title, band, small } = words;
  return {
    words: {
      mark: mark && write(mark),
      name: write(name),
      title: title && write(title),
      band,
      small: small.map(({ forms, left }) => {
        return { forms: forms.map((lines) => lines.map(write)), left };
      }),
    },
    lacks,
  };
}

function lackNote(lacks: readonly string[]): string {
  const which = [...new Set(lacks)].join(" ");
  return which === ""
    ? ""
    : `the PDF's font lacks ${which}, printed as ?; --html prints what the browser has`;
}

function withNote(result: CommandResult, note: string): CommandResult {
  if (result.code !== 0 || note === "") return result;
  return { ...result, stderr: `${result.stderr}brinebell labels: ${note}\n` };
}

function together(results: readonly CommandResult[]): CommandResult {
  const code = results.find((one) => one.code !== 0)?.code ?? 0;
  const join = (what: "stdout" | "stderr") => results.map((one) => one[what]).join("");
  const forPrograms = results.some((one) => one.forPrograms);
  return {
    code,
    stdout: join("stdout"),
    stderr: join("stderr"),
    ...(forPrograms ? { forPrograms } : {}),
  };
}
