/** The stages of a batch as rows over time: planned outlined, actual filled. */
import { localIso } from "../../kitchen/time.ts";
import { clockTime, dateAndTime, spanOf } from "../report-words.ts";
import type { Timeline, TimelineMark, TimelineRow } from "../timeline.ts";
import type { ChartRow } from "./chart.ts";
import type { Markup } from "./html.ts";
import { element, hint, placed, share } from "./svg.ts";
import { type TimeAxis, timeAxis } from "./time-axis.ts";

const HEIGHT = 26;
const MINUTE = 60_000;
/** What is too short to be seen is drawn as wide as this. */
const LEAST_SHARE = 0.004;

/** The axis of a timeline: everything that begins or ends on it is a point of it. */
export function axisOf({ rows }: Timeline): TimeAxis {
  return timeAxis(
    rows.flatMap(({ from, to, agreed }) => [from, to, ...(agreed ? [agreed.from, agreed.to] : [])]),
  );
}

/** A row of a chart for a stage. */
export function stageRow(row: TimelineRow, axis: TimeAxis, zone: string): ChartRow {
  const { from, plannedMinMs, plannedMaxMs } = row;
  const parts = [
    // Behind what happened, so that slipping shows.
    ...(row.agreed ? [bar("agreed", axis, row.agreed, 2, 22)] : []),
    doneBar(row, axis, zone),
    ...(plannedMaxMs > plannedMinMs
      ? [bar("plan-max", axis, { from, to: from + plannedMaxMs }, 4, 18)]
      : []),
    bar("plan", axis, { from, to: from + plannedMinMs }, 4, 18),
    ...row.gaps.map((gap) => gapMark(gap, axis)),
    ...row.marks.map((mark) => signMark(mark, axis, zone)),
  ];
  return { name: row.title, height: HEIGHT, parts };
}

/** One row for several stages, where each would be too short to be seen. */
export function mergedRow(
  name: string,
  rows: readonly TimelineRow[],
  axis: TimeAxis,
  zone: string,
): ChartRow {
  return { name, height: HEIGHT, parts: rows.map((row) => doneBar(row, axis, zone)) };
}

function doneBar(row: TimelineRow, axis: TimeAxis, zone: string): Markup {
  const took = `${spanOf((row.to - row.from) / MINUTE)}${row.open ? " so far" : ""}`;
  const words = hint(`${row.title}: ${dateAndTime(localIso(row.from, zone))}, ${took}`);
  return element("g", {}, words, bar("done", axis, row, 7, 12));
}

type Span = { from: number; to: number };

function bar(look: string, axis: TimeAxis, { from, to }: Span, y: number, height: number): Markup {
  const wide = Math.max(LEAST_SHARE, axis.at(to) - axis.at(from));
  const x = Math.min(axis.at(from), 1 - LEAST_SHARE);
  const place = { x: share(x), y, width: share(wide), height, rx: 2 };
  return element("rect", { class: look, ...place });
}

function gapMark(gap: TimelineRow["gaps"][number], axis: TimeAxis): Markup {
  const said = gap.held === null ? "" : gap.held ? ", it held" : ", it did not hold";
  const words = `unwatched ${spanOf((gap.to - gap.from) / MINUTE)}${said}`;
  return element("g", {}, hint(words), bar("gap", axis, gap, 7, 12));
}

function signMark(mark: TimelineMark, axis: TimeAxis, zone: string): Markup {
  const words = hint(`${mark.text} at ${clockTime(mark.at, zone)}`);
  const at = axis.at(mark.at);
  if (mark.kind === "restart") {
    return placed(at, words, element("path", { class: "again", d: "M0 8l-5 -8h10z" }));
  }
  const d = "M-4 9l8 8m0 -8l-8 8";
  const halo = element("path", { class: "halo", d });
  return placed(at, words, halo, element("path", { class: "lost", d }));
}

/** What the signs in some rows mean, in words. */
export function legendOf(rows: readonly TimelineRow[], axis: TimeAxis): string {
  const marks = new Set(rows.flatMap((row) => row.marks.map((mark) => mark.kind)));
  const parts = [
    "Filled: what happened. Outlined: as planned, dashed where it may take longer.",
    rows.some((row) => row.agreed) && "Shaded: by the plan of the day.",
    rows.some((row) => row.gaps.length > 0) && "Hatched: nobody watched.",
    marks.has("lost") && "Cross: lost.",
    marks.has("restart") && "Triangle: begun again.",
    axis.breaks.length > 0 && "A double stroke below marks a wait drawn short.",
  ];
  return parts.filter(Boolean).join(" ");
}

/** A row without a name for the waits that are drawn short. */
export function breakRow({ breaks, at }: TimeAxis): ChartRow[] {
  if (breaks.length === 0) return [];
  const parts = breaks.map((wait) => {
    const words = `${spanOf((wait.to - wait.from) / MINUTE)} drawn short`;
    const strokes = element("path", { class: "break", d: "M-5 13l4 -10M1 13l4 -10" });
    return placed((at(wait.from) + at(wait.to)) / 2, hint(words), strokes);
  });
  return [{ name: "", height: 16, parts }];
}
