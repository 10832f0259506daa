/** The timeline of a batch as lines of text. */

import { axisOf } from "../../review/pages/timeline-svg.ts";
import { clockTime, spanOf } from "../../review/report-words.ts";
import type { Timeline, TimelineRow } from "../../review/timeline.ts";

const WIDTH = 44;
const TITLE = 22;
const MINUTE = 60_000;
const LEGEND = "= done   . planned   x lost   ^ begun again   ? unwatched   // drawn short";

/** One line per stage, with its bar on an axis on which long waits are drawn short. */
export function timelineText(timeline: Timeline): string {
  const { rows, zone } = timeline;
  const [first] = rows;
  if (!first) return "";
  const axis = axisOf(timeline);
  const column = (at: number) => Math.min(WIDTH - 1, Math.floor(axis.at(at) * WIDTH));
  const lines = rows.map((row) => {
    const title = row.title.slice(0, TITLE).padEnd(TITLE);
    const took = spanOf((row.to - row.from) / MINUTE);
    return `  ${clockTime(row.from, zone)} ${title} |${bar(row, column)}| ${took}`;
  });
  const foot = Array<string>(WIDTH).fill(" ");
  for (const wait of axis.breaks) {
    const middle = Math.floor((column(wait.from) + column(wait.to)) / 2);
    foot.splice(Math.min(middle, WIDTH - 2), 2, "/", "/");
  }
  const waits = axis.breaks.length > 0 ? [`  ${" ".repeat(TITLE + 6)} |${foot.join("")}|`] : [];
  return `${[...lines, ...waits, `  ${LEGEND}`].join("\n")}\n`;
}

function bar(row: TimelineRow, column: (at: number) => number): string {
  const cells = Array<string>(WIDTH).fill(" ");
  const fill = (from: number, to: number, sign: string) => {
    const last = Math.max(column(from), column(to));
    for (let at = column(from); at <= last; at++) cells[at] = sign;
  };
  fill(row.from, row.from + row.plannedMaxMs, ".");
  fill(row.from, row.to, "=");
  for (const gap of row.gaps) fill(gap.from, gap.to, "?");
  for (const mark of row.marks) cells[column(mark.at)] = mark.kind === "lost" ? "x" : "^";
  return cells.join("");
}
