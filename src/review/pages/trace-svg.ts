/** Readings as a curve with their target line. */
import { offsetMs } from "../../kitchen/time.ts";
import { clockTime } from "../report-words.ts";
import { joined, type Point, type Trace, thinnedPoints } from "../trace.ts";
import { html, type Markup } from "./html.ts";
import { drawing, element, svgText } from "./svg.ts";
import { axisTicks, timeAxis } from "./time-axis.ts";

const WIDTH = 960;
const HEIGHT = 240;
const LEFT = 60;
const RIGHT = 20;
const TOP = 16;
const FLOOR = HEIGHT - 30;
/**
 * The most points drawn for one trace; extremes are kept, so that even a single low reading shows.
 */
const MOST_POINTS = 600;
/** Up to this many points, each gets a dot; with more, only a point that no line touches. */
const MOST_DOTS = 60;

function steps(low: number, high: number): number[] {
  const rough = (high - low) / 4 || 1;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].map((one) => one * power).find((one) => one >= rough) ?? rough;
  const list: number[] = [];
  for (let at = Math.ceil(low / step) * step; at <= high + step / 1e6; at += step) list.push(at);
  return list.map((value) => Math.round(value * 1000) / 1000);
}

/** The drawing of a trace of at least two points, with its caption. */
export function traceSvg(trace: Trace, zone: string): Markup {
  const points = thinnedPoints(trace.points, MOST_POINTS);
  const values = points.map((point) => point.value);
  const target = trace.target?.value;
  if (target !== undefined) values.push(target);
  const pad = (Math.max(...values) - Math.min(...values)) * 0.08 || 1;
  const low = Math.min(...values) - pad;
  const high = Math.max(...values) + pad;
  const axis = timeAxis(points.map((point) => point.at));
  const x = (at: number) => LEFT + axis.at(at) * (WIDTH - LEFT - RIGHT);
  const y = (value: number) => TOP + ((high - value) / (high - low)) * (FLOOR - TOP);
  const place = (one: Point) => `${x(one.at).toFixed(1)} ${y(one.value).toFixed(1)}`;
  const across = (value: number) => `M${LEFT} ${y(value).toFixed(1)}H${WIDTH - RIGHT}`;
  const levels = steps(low, high).flatMap((value) => [
    element("path", { class: "axis", d: across(value) }),
    svgText(LEFT - 8, y(value) + 4, String(value), "end", true),
  ]);
  const times = axisTicks(axis, offsetMs(axis.from, zone), 9).map((at) => {
    return svgText(x(at), HEIGHT - 10, clockTime(at, zone), "middle", true);
  });
  const pieces = joined(points, trace.losses);
  const curves = pieces.map((piece) => {
    const d = piece.map((one, i) => `${i === 0 ? "M" : "L"}${place(one)}`).join("");
    return element("path", { class: "curve", d });
  });
  const alone = pieces.flatMap((piece) => (piece.length === 1 ? piece : []));
  const marked = points.length > MOST_DOTS ? alone : points;
  const dots = marked.map((one) => dot(x(one.at), y(one.value)));
  const line =
    target === undefined ? null : element("path", { class: "target", d: across(target) });
  const caption = captionOf(trace);
  const parts = [processBand(trace, x), levels, times, line, curves, dots];
  return html`<figure>${drawing(caption, WIDTH, HEIGHT, ...parts)}
<figcaption>${caption}</figcaption></figure>
`;
}

function dot(cx: number, cy: number): Markup {
  return element("circle", { class: "dot", cx, cy, r: 3 });
}

function processBand({ process }: Trace, x: (at: number) => number): Markup | null {
  if (!process) return null;
  const left = x(process.from);
  const width = Math.max(0, x(process.to) - left);
  return element("rect", { class: "band", x: left, y: TOP, width, height: FLOOR - TOP });
}

/** What the curve shows, in words. */
function captionOf(trace: Trace): string {
  const { what, unit, points, target, minutesAtTarget, minutesInProcess, load } = trace;
  const values = points.map((point) => point.value);
  const parts = [
    `${what}${load ? `, load ${load}` : ""}: ${points.length} readings`,
    `${Math.min(...values)} to ${Math.max(...values)} ${unit === "F" ? "°F" : unit}`,
  ];
  if (target && minutesAtTarget !== null) {
    const within = minutesInProcess === null ? "" : `, ${minutesInProcess} of them in the process`;
    parts.push(`${minutesAtTarget} min at or above the line of ${target.words}${within}`);
  }
  const note = target ? ", by straight lines between readings; not the jars' coldest spot" : "";
  return `${parts.join("; ")}${note}.`;
}
