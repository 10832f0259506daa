/** The stages of a batch and the readings taken in them, over one axis of time. */
import { offsetMs } from "../../kitchen/time.ts";
import type { Units } from "../../reckon/metric-words.ts";
import { clockTime } from "../report-words.ts";
import type { Timeline } from "../timeline.ts";
import type { Trace } from "../trace.ts";
import { chart } from "./chart.ts";
import { html, type Markup } from "./html.ts";
import { axisTicks, timeAxis } from "./time-axis.ts";
import { breakRow, legendOf, stageRow } from "./timeline-svg.ts";
import { traceRow, traceWords } from "./trace-svg.ts";

/** The drawing; a line of text where nothing was begun. */
export function timeChart(
  { rows, zone }: Timeline,
  traces: readonly Trace[],
  name: string,
  units: Units | undefined,
): Markup {
  if (rows.length === 0) return html`<p>Nothing was begun.</p>`;
  const read = traces.flatMap(({ points }) => [points[0]?.at ?? 0, points.at(-1)?.at ?? 0]);
  const axis = timeAxis([...rows.flatMap((row) => [row.from, row.to]), ...read]);
  const ticks = axisTicks(axis, offsetMs(axis.from, zone), 9).map((at) => {
    return { at: axis.at(at), words: clockTime(at, zone) };
  });
  const drawn = [
    ...rows.map((row) => stageRow(row, axis, zone)),
    ...traces.map((trace) => traceRow(trace, axis, units)),
    ...breakRow(axis),
  ];
  const label = `Timeline of ${name}; the table of stages has the same in figures`;
  const said = traces.map((trace) => html`<p>${traceWords(trace, units)}</p>`);
  return html`<figure>${chart(label, drawn, ticks)}
<figcaption><p>${legendOf(rows, axis)}</p>${said}</figcaption></figure>
`;
}
