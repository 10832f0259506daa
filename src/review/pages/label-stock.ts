// data table
/**
 * Common sheets of labels by their measures. Margins and pitch are those that makers of the common
 * grids have agreed on: hold a first print against the sheet, since cuts and printers vary.
 */
import { MM_PER_IN } from "../../reckon/units.ts";

type Pair = readonly [number, number];

/** A sheet of labels. Lengths are millimeters; a round label is as wide as high. */
export type Grid = {
  widthMm: number;
  heightMm: number;
  round: boolean;
  columns: number;
  rows: number;
  leftMm: number;
  topMm: number;
  /** From one label's edge to the next one's. */
  acrossMm: number;
  downMm: number;
};

type Stock = {
  paper: "letter" | "a4";
  /** Width and height of a label, or the diameter of a round one. */
  size: Pair | number;
  /** Columns and rows. */
  grid: Pair;
  /** Left and top of the first label. */
  first: Pair;
  /** From one label's edge to the next one's, across and down. */
  pitch: Pair;
};

/** Inches on letter, millimeters on a4. Of two grids of a size, the first is the usual one. */
const STOCK: readonly Stock[] = [
  { paper: "letter", size: [2.625, 1], grid: [3, 10], first: [0.1875, 0.5], pitch: [2.75, 1] },
  { paper: "letter", size: [4, 2], grid: [2, 5], first: [0.15625, 0.5], pitch: [4.1875, 2] },
  {
    paper: "letter",
    size: [4, 4 / 3],
    grid: [2, 7],
    first: [0.15625, 5 / 6],
    pitch: [4.1875, 4 / 3],
  },
  {
    paper: "letter",
    size: [4, 10 / 3],
    grid: [2, 3],
    first: [0.15625, 0.5],
    pitch: [4.1875, 10 / 3],
  },
  { paper: "letter", size: [2, 2], grid: [3, 4], first: [0.625, 0.625], pitch: [2.625, 31 / 12] },
  { paper: "letter", size: 2, grid: [3, 4], first: [0.625, 0.6], pitch: [2.625, 2.6] },
  { paper: "letter", size: 2, grid: [4, 5], first: [0.15625, 0.375], pitch: [2.0625, 2.0625] },
  { paper: "letter", size: 2.5, grid: [3, 3], first: [0.3125, 1.25], pitch: [2.6875, 3] },
  { paper: "letter", size: 2.5, grid: [3, 4], first: [0.25, 0.4775], pitch: [2.75, 2.515] },
  { paper: "a4", size: [63.5, 38.1], grid: [3, 7], first: [7.25, 15.15], pitch: [66, 38.1] },
  { paper: "a4", size: [99.1, 38.1], grid: [2, 7], first: [4.65, 15.15], pitch: [101.6, 38.1] },
  { paper: "a4", size: [99.1, 67.7], grid: [2, 4], first: [4.65, 13.1], pitch: [101.6, 67.7] },
  { paper: "a4", size: [63.5, 46.6], grid: [3, 6], first: [7.25, 8.7], pitch: [66, 46.6] },
  { paper: "a4", size: [70, 37], grid: [3, 8], first: [0, 0.5], pitch: [70, 37] },
  { paper: "a4", size: [105, 48], grid: [2, 6], first: [0, 4.5], pitch: [105, 48] },
];

/** The common sheets of a paper, measured in millimeters. */
export function stockOf(paper: Stock["paper"]): Grid[] {
  const unit = paper === "letter" ? MM_PER_IN : 1;
  return STOCK.filter((one) => one.paper === paper).map(({ size, grid, first, pitch }) => {
    const [wide, high] = typeof size === "number" ? [size, size] : size;
    return {
      widthMm: wide * unit,
      heightMm: high * unit,
      round: typeof size === "number",
      columns: grid[0],
      rows: grid[1],
      leftMm: first[0] * unit,
      topMm: first[1] * unit,
      acrossMm: pitch[0] * unit,
      downMm: pitch[1] * unit,
    };
  });
}
