/** The batch log as a page of its own, for screen and paper. */
import type { Batch, State } from "../../kitchen/state.ts";
import { type BatchLog, batchLog } from "../batch-log.ts";
import { dateAndTime, spanOf, windowOf } from "../report-words.ts";
import { timelineOf } from "../timeline.ts";
import { tracesOf } from "../trace.ts";
import { html, type Markup, table } from "./html.ts";
import { page } from "./page.ts";
import { timelineSvg } from "./timeline-svg.ts";
import { traceSvg } from "./trace-svg.ts";

const VERDICTS: Record<string, string> = {
  "as-tested": "Done as tested",
  "not-as-tested": "Not as tested",
  unfinished: "Not finished",
  "not-shelf-stable": "Not for the shelf",
  "no-process": "Nothing to process",
};

/** More readings than this are shown as a curve only. */
const MOST_READINGS = 60;

/** A whole document about one batch. `now` is kitchen time. */
export function batchPage(state: State, batch: Batch, now: number): string {
  const log = batchLog(state, batch, now);
  const name = [log.title, log.lot.variety].filter(Boolean).join(", ");
  const timeline = timelineOf(state, batch, now);
  const traces = tracesOf(state, batch, now);
  const body = html`${head(log, name)}
${verdict(log)}
<h2>Stages</h2>
<figure>${timelineSvg(timeline, name)}
<figcaption>Filled: what happened. Outlined: as planned, dashed where it may take longer. Hatched:
nobody watched. Cross: lost. Triangle: begun again. A double stroke below marks a wait drawn
short.</figcaption></figure>
${stages(log)}
${traces.length > 0 && html`<h2>Readings over time</h2>`}
${traces.map((one) => traceSvg(one, state.zone))}
${readings(log)}
<h2>Departures from the recipe</h2>
${deviations(log)}
${jars(log)}
${notes(log)}
<h2>Confirmed</h2>
${confirmed(log)}
<p class="soft">This page speaks of the record only, never of the food. Follow a current tested
recipe; when a jar is in doubt, throw it out.</p>
`;
  return page(`${name}: batch ${log.id}`, body);
}

function head(log: BatchLog, name: string): Markup {
  const { lot } = log;
  const facts: [string, string | null][] = [
    ["Recipe source", log.source || "none given"],
    ["Lot", lotWords(lot)],
    ["Jar", log.jar ? `${log.jar}${log.pack ? `, ${log.pack} pack` : ""}` : null],
    ["Method", log.method],
    ["Altitude", log.altitudeFt === null ? null : `${log.altitudeFt} ft`],
    ["Process", processWords(log)],
    ["Process source", log.process?.source ?? null],
    ["Begun", dateAndTime(log.begunAt)],
    ["Finished", log.endedAt ? dateAndTime(log.endedAt) : log.state],
    ["Loads", log.loads.join(", ") || null],
  ];
  const list = facts.flatMap(([term, value]) =>
    value === null ? [] : [html`<dt>${term}</dt><dd>${value}</dd>\n`],
  );
  const rehearsal = log.rehearsal ? " Played in a rehearsal." : "";
  return html`<h1>${name}</h1>
<p class="soft">Batch ${log.id}, lids marked ${log.mark}.${rehearsal}</p>
<dl>
${list}</dl>
`;
}

function lotWords(lot: BatchLog["lot"]): string {
  const parts = [
    lot.variety ?? "variety not given",
    lot.weightLb === null ? null : `${lot.weightLb} lb`,
    lot.pickedAt === null ? null : `picked ${dateAndTime(lot.pickedAt)}`,
  ];
  return parts.filter(Boolean).join(", ");
}

/** What was tested and how much of it is on record, in one line; null without a process. */
export function processWords({ process }: BatchLog): string | null {
  if (!process) return null;
  const at = process.pressurePsi === null ? "" : ` at ${process.pressurePsi} psi`;
  const times = process.restarts === 1 ? "once" : `${process.restarts} times`;
  const again = process.restarts === 0 ? "" : `, begun again ${times}`;
  const got = `${process.achievedMinutes} min unbroken`;
  return `tested ${process.testedMinutes} min${at}; ${got}${again}`;
}

function verdict(log: BatchLog): Markup {
  const good = log.verdict === "as-tested" ? " good" : "";
  const reasons = log.reasons.map((reason) => html`<li>${reason}</li>`);
  const words = VERDICTS[log.verdict] ?? log.verdict;
  return html`<div class="verdict${good}"><p><strong>${words}</strong></p>
<ul>${reasons}</ul></div>
`;
}

function stages(log: BatchLog): Markup {
  const rows = log.stages.map((stage) => [
    stage.title,
    stage.kind,
    stage.state,
    windowOf(stage.planned),
    dateAndTime(stage.startedAt),
    dateAndTime(stage.endedAt),
    stage.startedAt === null ? "" : spanOf(stage.minutes),
    stage.restarts || "",
  ]);
  const heads = ["Stage", "Kind", "State", "Planned", "Began", "Ended", "Took", "Restarts"];
  return table("Stages, planned and actual", heads, rows);
}

function readings(log: BatchLog): Markup | null {
  if (log.readings.length === 0) return null;
  if (log.readings.length > MOST_READINGS) {
    const count = log.readings.length;
    return html`<p class="soft">${count} readings; all of them are in the CSV and JSON.</p>`;
  }
  const rows = log.readings.map((one) => [
    dateAndTime(one.at),
    one.what,
    `${one.value} ${one.unit === "F" ? "°F" : one.unit}`,
  ]);
  return table("Readings", ["When", "What", "Value"], rows);
}

function deviations(log: BatchLog): Markup {
  if (log.deviations.length === 0) return html`<p>None on record.</p>`;
  const rows = log.deviations.map((one) => [
    one.code,
    one.stage ?? "",
    dateAndTime(one.at),
    one.detail,
    one.disposition,
  ]);
  return table("Deviations and what was done", ["What", "Stage", "When", "Detail", "Done"], rows);
}

function jars(log: BatchLog): Markup | null {
  if (!log.jars) return null;
  const { filled, processed, sealed, failed, setAside, broken, spoiled } = log.jars;
  const heads = ["Filled", "Processed", "Sealed", "Did not seal", "Set aside", "Broken", "Spoiled"];
  const row = [filled, processed, sealed, failed, setAside, broken, spoiled];
  return html`<h2>Jars</h2>
${table("Jars counted", heads, [row])}`;
}

function notes(log: BatchLog): Markup | null {
  if (log.notes.length === 0) return null;
  const list = log.notes.map((note) => {
    return html`<li><span class="soft">${dateAndTime(note.at)}</span> ${note.text}</li>\n`;
  });
  return html`<h2>Notes</h2>
<ul>
${list}</ul>
`;
}

function confirmed(log: BatchLog): Markup {
  if (log.confirmed.length === 0) return html`<p>Nothing was confirmed.</p>`;
  const rows = log.confirmed.map((one) => [one.factor, dateAndTime(one.at)]);
  return table("Critical factors confirmed", ["Factor", "When"], rows);
}
