/**
 * Label sheets by their measures. Of common ones margins and pitch are known; any other label is
 * laid out edge to edge in the middle of the paper.
 */
import type { Units } from "../../reckon/metric-words.ts";
import type { Result } from "../../reckon/result.ts";
import { fail, ok } from "../../reckon/result.ts";
import { MM_PER_IN } from "../../reckon/units.ts";
import { type Grid, stockOf } from "./label-stock.ts";

type Paper = { name: "letter" | "a4"; widthMm: number; heightMm: number };

const PAPERS: Readonly<Record<Paper["name"], Paper>> = {
  letter: { name: "letter", widthMm: 8.5 * MM_PER_IN, heightMm: 11 * MM_PER_IN },
  a4: { name: "a4", widthMm: 210, heightMm: 297 },
};

export type Sheet = Grid & {
  paper: Paper;
  /** How much of a label's width and height is kept free at each edge. */
  freeXMm: number;
  freeYMm: number;
};

/** The usual labels for jars, by the units of a kitchen. */
export const DEFAULT_SHEET: Readonly<Record<Units, string>> = {
  us: "2.625x1in",
  metric: "63.5x38.1mm",
};
/** Nothing can be read on a label smaller than this. */
const LEAST_MM = { width: 30, height: 15 };
/** What printers commonly cannot reach at a paper's edge; common practice. */
const MARGIN_MM = 4.3;
/** Kept free inside a label, since sheets never lie exactly. */
const FREE_MM = 1.5;
/** How far a size that is asked for may be from that of a common sheet. */
const ALIKE_MM = 0.3;

type SheetRequest = { sheet: string; paper?: string | undefined; grid?: string | undefined };

type Size = Pick<Grid, "widthMm" | "heightMm" | "round"> & { metric: boolean };

/** `2 5/8`, `2.625`, `1/2`: a positive number; undefined for other text. */
function numberOf(text: string): number | undefined {
  const match = /^(?:(\d+(?:\.\d+)?))?(?:(?:^|[ -])(\d+)\/(\d+))?$/.exec(text.trim());
  if (!match || text.trim() === "") return undefined;
  const [, whole = "0", top = "0", bottom = "1"] = match;
  const value = Number(whole) + Number(top) / Number(bottom);
  return value > 0 && Number.isFinite(value) ? value : undefined;
}

/** The size of a label as it is written: `2 5/8 x 1 in`, `70x37mm`, `2in round`. */
function sizeOf(text: string): Size | undefined {
  const round = /\bround\b|(?<=in|mm)round/i.test(text);
  const plain = text.replace(/[ -]*round[ -]*/i, "").trim();
  const unit = /(?:"|in|inch|inches|mm)$/i.exec(plain)?.[0];
  if (unit === undefined) return undefined;
  const metric = unit.toLowerCase() === "mm";
  const [first = "", second, ...more] = plain
    .split(/\s*(?:x|×|\bby\b)\s*/i)
    .map((side) => side.replace(/\s*(?:"|in|inch|inches|mm)$/i, ""));
  const wide = numberOf(first);
  const high = second === undefined ? wide : numberOf(second);
  if (wide === undefined || high === undefined || more.length > 0) return undefined;
  if (round ? wide !== high : second === undefined) return undefined;
  const mm = metric ? 1 : MM_PER_IN;
  return { widthMm: wide * mm, heightMm: high * mm, round, metric };
}

/** `3x4`: columns and rows. */
function gridOf(text: string): [number, number] | undefined {
  const match = /^\s*([1-9]\d?)\s*[x×]\s*([1-9]\d?)\s*$/i.exec(text);
  return match ? [Number(match[1]), Number(match[2])] : undefined;
}

function paperOf(text: string): Paper | undefined {
  return text === "letter" || text === "a4" ? PAPERS[text] : undefined;
}

/** The sheet of a label's size, on a4 where that is given in millimeters. */
export function sheetOf(request: SheetRequest): Result<Sheet> {
  const { sheet, grid } = request;
  const asked = JSON.stringify(sheet);
  const size = sizeOf(sheet);
  if (!size) {
    const examples = "2 5/8 x 1 in, 2in round or 63.5x38.1mm";
    return fail(`--sheet: ${asked} is not a label's size; write ${examples}`);
  }
  const name = request.paper ?? (size.metric ? "a4" : "letter");
  const paper = paperOf(name);
  if (!paper) return fail(`--paper: ${JSON.stringify(name)} is neither letter nor a4`);
  const wanted = grid === undefined ? undefined : gridOf(grid);
  if (grid !== undefined && !wanted) {
    return fail(`--grid: ${JSON.stringify(grid)} is not columns by rows; write 3x4`);
  }
  const known = stockOf(paper.name).find((one) => {
    return isSize(one, size) && (!wanted || isGrid(one, wanted));
  });
  if (known) return ok(withFreeEdges(known, paper));
  const { widthMm, heightMm } = size;
  if (widthMm < LEAST_MM.width || heightMm < LEAST_MM.height) {
    return fail(`--sheet: a label of ${asked} is too small to read; at least 30x15mm`);
  }
  const [columns, rows] = wanted ?? [
    Math.floor((paper.widthMm - 2 * MARGIN_MM) / widthMm),
    Math.floor((paper.heightMm - 2 * MARGIN_MM) / heightMm),
  ];
  const [leftMm, topMm] = [
    (paper.widthMm - columns * widthMm) / 2,
    (paper.heightMm - rows * heightMm) / 2,
  ];
  if (columns < 1 || rows < 1 || leftMm < 0 || topMm < 0) {
    const many = wanted ? `${columns}x${rows} labels of ${asked} do` : `a label of ${asked} does`;
    return fail(`--sheet: ${many} not fit on ${name}; name fewer or smaller ones`);
  }
  const laid = { ...size, columns, rows, leftMm, topMm, acrossMm: widthMm, downMm: heightMm };
  return ok(withFreeEdges(laid, paper));
}

/** A common label is also found by its height and width the other way round. */
function isSize(one: Grid, { widthMm, heightMm, round }: Size): boolean {
  const close = (a: number, b: number) => Math.abs(a - b) < ALIKE_MM;
  const is = (a: number, b: number) => close(one.widthMm, a) && close(one.heightMm, b);
  return one.round === round && (is(widthMm, heightMm) || is(heightMm, widthMm));
}

function isGrid(one: Grid, [columns, rows]: [number, number]): boolean {
  return one.columns === columns && one.rows === rows;
}

function withFreeEdges(grid: Grid, paper: Paper): Sheet {
  const { widthMm, heightMm, round, columns, rows, leftMm, topMm, acrossMm, downMm } = grid;
  const right = paper.widthMm - leftMm - (columns - 1) * acrossMm - widthMm;
  const bottom = paper.heightMm - topMm - (rows - 1) * downMm - heightMm;
  const sheet = { widthMm, heightMm, round, columns, rows, leftMm, topMm, acrossMm, downMm };
  return {
    ...sheet,
    paper,
    freeXMm: Math.max(FREE_MM, MARGIN_MM - Math.min(leftMm, right)),
    freeYMm: Math.max(FREE_MM, MARGIN_MM - Math.min(topMm, bottom)),
  };
}

/** How many labels are on a sheet. */
export function placesOn({ columns, rows }: Grid): number {
  return columns * rows;
}

/** A label's size in the units of its paper: `2.625 x 1 in`, `50.8 mm round`. */
export function sizeWords({ widthMm, heightMm, round, paper }: Sheet): string {
  const [mm, unit] = paper.name === "letter" ? [MM_PER_IN, "in"] : [1, "mm"];
  const short = (value: number) => String(Number((value / mm).toFixed(3)));
  const wide = short(widthMm);
  return round ? `${wide} ${unit} round` : `${wide} x ${short(heightMm)} ${unit}`;
}

/** Left and top of the label at a place on its page, and which page that is, counted from 0. */
export function placeOf(sheet: Sheet, index: number): { page: number; xMm: number; yMm: number } {
  const each = placesOn(sheet);
  const at = index % each;
  return {
    page: Math.floor(index / each),
    xMm: sheet.leftMm + (at % sheet.columns) * sheet.acrossMm,
    yMm: sheet.topMm + Math.floor(at / sheet.columns) * sheet.downMm,
  };
}
