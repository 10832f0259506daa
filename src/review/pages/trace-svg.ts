/** Readings as a curve with their target line. */
import { scaleLinear } from "d3-scale";
import type { Units } from "../../reckon/metric-words.ts";
import { joined, type Point, type Trace, thinnedPoints } from "../trace.ts";
import type { ChartRow } from "./chart.ts";
import type { Markup } from "./html.ts";
import { quantityOf, quantityWords } from "./shown-units.ts";
import { element, share } from "./svg.ts";
import type { TimeAxis } from "./time-axis.ts";

const HEIGHT = 170;
const TOP = 10;
const FLOOR = HEIGHT - 10;
/** Curves are drawn in a box this wide, which is stretched to the width of the chart. */
const WIDE = 1000;
/**
 * The most points drawn for one trace; extremes are kept, so that even a single low reading shows.
 */
const MOST_POINTS = 600;
/** Up to this many points, each gets a dot; with more, only a point that no line touches. */
const MOST_DOTS = 60;
/** About how many values are written beside the curve. */
const LEVELS = 4;

/** A row of a chart for a trace of at least two points. */
export function traceRow(trace: Trace, axis: TimeAxis, units: Units | undefined): ChartRow {
  const shown = (value: number) => quantityOf(value, trace.unit, units).value;
  const points = thinnedPoints(trace.points, MOST_POINTS).map((one) => {
    return { at: one.at, value: shown(one.value) };
  });
  const values = points.map((point) => point.value);
  const target = trace.target ? shown(trace.target.value) : undefined;
  if (target !== undefined) values.push(target);
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const pad = low === high ? 1 : 0;
  const y = scaleLinear([low - pad, high + pad], [FLOOR, TOP]).nice(LEVELS);
  const levels = y.ticks(LEVELS).map((value) => {
    const text = element("text", { y: y(value) + 4 }, String(value));
    return element("g", { class: "level" }, across("rule", y(value)), text);
  });
  const pieces = joined(points, trace.losses);
  const alone = pieces.flatMap((piece) => (piece.length === 1 ? piece : []));
  const marked = points.length > MOST_DOTS ? alone : points;
  const dots = marked.map((one) => {
    return element("circle", { class: "dot", cx: share(axis.at(one.at)), cy: y(one.value), r: 3 });
  });
  const parts = [
    ...processBand(trace, axis),
    ...levels,
    ...(target === undefined ? [] : [across("target", y(target))]),
    curves(pieces, axis, y),
    ...dots,
  ];
  return {
    name: `${nameOf(trace)}, ${quantityOf(0, trace.unit, units).unit}`,
    height: HEIGHT,
    tall: true,
    parts,
  };
}

function across(look: string, y: number): Markup {
  return element("line", { class: look, x1: "0", x2: "100%", y1: y, y2: y });
}

function curves(pieces: readonly Point[][], axis: TimeAxis, y: (value: number) => number): Markup {
  const place = (one: Point) => `${(axis.at(one.at) * WIDE).toFixed(1)} ${y(one.value).toFixed(1)}`;
  const paths = pieces
    .filter((piece) => piece.length > 1)
    .map((piece) => element("path", { class: "curve", d: `M${piece.map(place).join("L")}` }));
  const box = { viewBox: `0 0 ${WIDE} ${HEIGHT}`, preserveAspectRatio: "none" };
  return element("svg", { ...box, width: "100%", height: HEIGHT }, paths);
}

function processBand({ process }: Trace, axis: TimeAxis): Markup[] {
  if (!process) return [];
  const left = axis.at(process.from);
  const width = share(Math.max(0, axis.at(process.to) - left));
  const place = { x: share(left), y: TOP, width, height: FLOOR - TOP };
  return [element("rect", { class: "band", ...place })];
}

function nameOf({ what, load }: Trace): string {
  return `${what}${load ? `, load ${load}` : ""}`;
}

/** What the curve shows, in words. */
export function traceWords(trace: Trace, units: Units | undefined): string {
  const { unit, points, target, minutesAtTarget, minutesInProcess } = trace;
  const values = points.map((point) => point.value);
  const least = quantityOf(Math.min(...values), unit, units).value;
  const parts = [
    `${nameOf(trace)}: ${points.length} readings`,
    `${least} to ${quantityWords(Math.max(...values), unit, units)}`,
  ];
  if (target && minutesAtTarget !== null) {
    const within = minutesInProcess === null ? "" : `, ${minutesInProcess} of them in the process`;
    const line = targetWords(target, unit, units);
    parts.push(`${minutesAtTarget} min at or above the line of ${line}${within}`);
  }
  const note = target ? ", by straight lines between readings; not the jars' coldest spot" : "";
  return `${parts.join("; ")}${note}.`;
}

function targetWords(
  { value, words }: NonNullable<Trace["target"]>,
  unit: string,
  units: Units | undefined,
): string {
  if (units !== "metric" || unit !== "F") return words;
  const boiling = words.includes("boiling") ? ", just under boiling here" : "";
  return `${quantityWords(value, unit, units)}${boiling}`;
}
