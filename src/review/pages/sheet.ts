/**
 * Label sheets by their dimensions, millimeters. For common sheets, margins and pitch are known
 * (from memory: hold a first print against the sheet); any other label is laid out in a grid in the
 * middle of the paper.
 */
import type { Result } from "../../reckon/result.ts";
import { fail, ok } from "../../reckon/result.ts";
import { MM_PER_IN } from "../../reckon/units.ts";

type Paper = { name: "letter" | "a4"; widthMm: number; heightMm: number };

const PAPERS: Readonly<Record<Paper["name"], Paper>> = {
  letter: { name: "letter", widthMm: 8.5 * MM_PER_IN, heightMm: 11 * MM_PER_IN },
  a4: { name: "a4", widthMm: 210, heightMm: 297 },
};

export type Sheet = {
  paper: Paper;
  widthMm: number;
  heightMm: number;
  columns: number;
  rows: number;
  leftMm: number;
  topMm: number;
  /** From one label's edge to the next one's. */
  acrossMm: number;
  downMm: number;
};

type Known = Omit<Sheet, "paper"> & { paper: Paper["name"] };

function inches(
  [widthMm, heightMm]: [number, number],
  [columns, rows]: [number, number],
  [leftMm, topMm]: [number, number],
  [acrossMm, downMm]: [number, number],
): Known {
  const mm = (value: number) => value * MM_PER_IN;
  return {
    paper: "letter",
    widthMm: mm(widthMm),
    heightMm: mm(heightMm),
    columns,
    rows,
    leftMm: mm(leftMm),
    topMm: mm(topMm),
    acrossMm: mm(acrossMm),
    downMm: mm(downMm),
  };
}

const COMMON: readonly Known[] = [
  inches([2.625, 1], [3, 10], [0.1875, 0.5], [2.75, 1]),
  inches([4, 2], [2, 5], [0.15625, 0.5], [4.1875, 2]),
  inches([4, 1.3333], [2, 7], [0.15625, 0.8333], [4.1875, 1.3333]),
  inches([4, 3.3333], [2, 3], [0.15625, 0.5], [4.1875, 3.3333]),
  inches([2, 2], [3, 4], [0.625, 0.625], [2.625, 2.58333]),
  {
    paper: "a4",
    widthMm: 63.5,
    heightMm: 38.1,
    columns: 3,
    rows: 7,
    leftMm: 7.25,
    topMm: 15.15,
    acrossMm: 66,
    downMm: 38.1,
  },
  {
    paper: "a4",
    widthMm: 70,
    heightMm: 37,
    columns: 3,
    rows: 8,
    leftMm: 0,
    topMm: 0.5,
    acrossMm: 70,
    downMm: 37,
  },
];

export const DEFAULT_SHEET = "2.625x1in";
/** Nothing can be read on a label smaller than this. */
const LEAST_MM = { width: 30, height: 15 };
const MARGIN_MM = 6;

/** `2.625x1in`, `70x37mm`: the sheet of a label's size, on a4 where it is given in millimeters. */
export function sheetOf(text: string, paperName?: string): Result<Sheet> {
  const match = /^\s*(\d+(?:\.\d+)?)\s*[x×]\s*(\d+(?:\.\d+)?)\s*(in|inch|inches|mm)\s*$/i.exec(
    text,
  );
  if (!match) {
    return fail(`--sheet: ${JSON.stringify(text)} is not a size; write 2.625x1in or 70x37mm`);
  }
  const metric = match[3]?.toLowerCase() === "mm";
  const unit = metric ? 1 : MM_PER_IN;
  const widthMm = Number(match[1]) * unit;
  const heightMm = Number(match[2]) * unit;
  const name = paperName ?? (metric ? "a4" : "letter");
  if (name !== "letter" && name !== "a4") {
    return fail(`--paper: ${JSON.stringify(name)} is neither letter nor a4`);
  }
  const paper = PAPERS[name];
  const close = (a: number, b: number) => Math.abs(a - b) < 0.3;
  const known = COMMON.find((one) => {
    return one.paper === name && close(one.widthMm, widthMm) && close(one.heightMm, heightMm);
  });
  if (known) return ok({ ...known, paper });
  if (widthMm < LEAST_MM.width || heightMm < LEAST_MM.height) {
    return fail(`--sheet: a label of ${text} is too small to read; at least 30x15mm`);
  }
  const columns = Math.floor((paper.widthMm - 2 * MARGIN_MM) / widthMm);
  const rows = Math.floor((paper.heightMm - 2 * MARGIN_MM) / heightMm);
  if (columns < 1 || rows < 1) return fail(`--sheet: a label of ${text} does not fit on ${name}`);
  return ok({
    paper,
    widthMm,
    heightMm,
    columns,
    rows,
    leftMm: (paper.widthMm - columns * widthMm) / 2,
    topMm: (paper.heightMm - rows * heightMm) / 2,
    acrossMm: widthMm,
    downMm: heightMm,
  });
}

/** Left and top of the label at a place on its page, and which page that is, counted from 0. */
export function placeOf(sheet: Sheet, index: number): { page: number; xMm: number; yMm: number } {
  const each = sheet.columns * sheet.rows;
  const at = index % each;
  return {
    page: Math.floor(index / each),
    xMm: sheet.leftMm + (at % sheet.columns) * sheet.acrossMm,
    yMm: sheet.topMm + Math.floor(at / sheet.columns) * sheet.downMm,
  };
}
