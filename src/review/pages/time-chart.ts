/**
 * The stages of a batch and the readings taken in them, over one axis of time: in hours, and in
 * days where it takes days.
 */
import { DAY_MS, HOUR_MS, localFields, MINUTE_MS } from "../../kitchen/time.ts";
import type { Units } from "../../reckon/metric-words.ts";
import { dateOf, dateWords } from "../dates.ts";
import { clockTime } from "../report-words.ts";
import type { Timeline, TimelineRow } from "../timeline.ts";
import type { Trace } from "../trace.ts";
import { type ChartRow, chart, type Tick } from "./chart.ts";
import { html, type Markup } from "./html.ts";
import { axisTicks, type TimeAxis, timeAxis } from "./time-axis.ts";
import { breakRow, legendOf, mergedRow, stageRow } from "./timeline-svg.ts";
import { traceRow, traceWords } from "./trace-svg.ts";

/** A batch that takes this long has a chart in days. */
const DAYS_FROM_MS = 3 * DAY_MS;
/** Stages shorter than this share a row there. */
const LONG_STAGE_MS = 12 * HOUR_MS;
/** Readings over a longer time than this stand there. */
const LONG_TRACE_MS = DAY_MS;
const MOST_TICKS = 9;

/** The drawings; a line of text where nothing was begun. */
export function timeCharts(
  { rows, dates, zone }: Timeline,
  traces: readonly Trace[],
  name: string,
  units: Units | undefined,
): Markup {
  const all = [...rows, ...dates];
  if (all.length === 0) return html`<p>Nothing was begun.</p>`;
  const ends = all.flatMap(endsOf);
  const inDays = Math.max(...ends) - Math.min(...ends) >= DAYS_FROM_MS;
  const long = traces.filter((trace) => inDays && spanOfTrace(trace) >= LONG_TRACE_MS);
  const short = traces.filter((trace) => !long.includes(trace));
  const label = `of ${name}; the table of stages has the same in figures`;
  const days = () => {
    const axis = timeAxis([...ends, ...readInstants(long)], Number.POSITIVE_INFINITY);
    const drawn = [...dayRows(all, axis, zone), ...long.map((one) => traceRow(one, axis, units))];
    return figure(`Days ${label}`, drawn, dayTicks(axis, zone), legendOf(all, axis), long, units);
  };
  const hours = () => {
    const axis = timeAxis([...rows.flatMap((row) => [row.from, row.to]), ...readInstants(short)]);
    const drawn = [
      ...rows.map((row) => stageRow(row, axis, zone)),
      ...short.map((trace) => traceRow(trace, axis, units)),
      ...breakRow(axis),
    ];
    const legend = legendOf(rows, axis);
    return figure(`Timeline ${label}`, drawn, hourTicks(axis, zone), legend, short, units);
  };
  if (!inDays) return hours();
  const work = rows.some((row) => row.to - row.from < LONG_STAGE_MS);
  return html`<h3>Day by day</h3>\n${days()}${work && html`<h3>Hour by hour</h3>\n${hours()}`}`;
}

/** When a row begins and ends, and, while it goes on, when it will have to. */
function endsOf({ from, to, open, plannedMaxMs }: TimelineRow): number[] {
  return open ? [from, to, from + plannedMaxMs] : [from, to];
}

function spanOfTrace({ points }: Trace): number {
  return (points.at(-1)?.at ?? 0) - (points[0]?.at ?? 0);
}

function readInstants(traces: readonly Trace[]): number[] {
  return traces.flatMap(({ points }) => [points[0], points.at(-1)].flatMap((one) => one?.at ?? []));
}

function dayRows(rows: readonly TimelineRow[], axis: TimeAxis, zone: string): ChartRow[] {
  const isLong = (row: TimelineRow) => Math.max(...endsOf(row)) - row.from >= LONG_STAGE_MS;
  const short = rows.filter((row) => !isLong(row));
  const merged = short.length === 0 ? [] : [mergedRow("shorter stages", short, axis, zone)];
  return [...merged, ...rows.filter(isLong).map((row) => stageRow(row, axis, zone))];
}

/** `14 Aug` without its year. */
function dayWords(at: number, zone: string): string {
  return dateWords(dateOf(at, zone)).slice(0, -5);
}

function dayTicks(axis: TimeAxis, zone: string): Tick[] {
  return axisTicks(axis, zone, MOST_TICKS, DAY_MS).map((at) => {
    const year = String(localFields(at, zone).year);
    return { at: axis.at(at), words: dayWords(at, zone), within: year };
  });
}

function hourTicks(axis: TimeAxis, zone: string): Tick[] {
  return axisTicks(axis, zone, MOST_TICKS, MINUTE_MS).map((at) => {
    return { at: axis.at(at), words: clockTime(at, zone), within: dayWords(at, zone) };
  });
}

function figure(
  label: string,
  rows: readonly ChartRow[],
  ticks: readonly Tick[],
  legend: string,
  traces: readonly Trace[],
  units: Units | undefined,
): Markup {
  const said = [legend, ...traces.map((trace) => traceWords(trace, units))];
  return html`<figure>${chart(label, rows, ticks)}
<figcaption>${said.map((one) => html`<p>${one}</p>`)}</figcaption></figure>
`;
}
