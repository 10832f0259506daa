/** The batch log as a page of its own, for screen and paper. */
import type { Batch, State } from "../../kitchen/state.ts";
import type { Units } from "../../reckon/metric-words.ts";
import { type BatchLog, batchLog } from "../batch-log.ts";
import { dateAndTime, spanOf, windowOf } from "../report-words.ts";
import { timelineOf } from "../timeline.ts";
import { tracesOf } from "../trace.ts";
import { html, type Markup, table } from "./html.ts";
import { page } from "./page.ts";
import {
  deviationWords,
  dispositionWords,
  idWords,
  reasonWords,
  verdictWords,
} from "./plain-words.ts";
import { quantityWords } from "./quantity.ts";
import { timeCharts } from "./time-chart.ts";

/** More readings than this are shown as a curve only. */
const MOST_READINGS = 60;

/** A whole document about one batch. `now` is kitchen time. */
export function batchPage(state: State, batch: Batch, now: number): string {
  const log = batchLog(state, batch, now);
  const name = [log.title, log.lot.variety].filter(Boolean).join(", ");
  const { units } = state.kitchen;
  const body = html`${head(log, name)}
${verdict(log)}
<h2>Stages</h2>
${timeCharts(timelineOf(state, batch, now), tracesOf(state, batch, now), name, units)}
${stages(log)}
${readings(log, units)}
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
    ["Method", idWords(log.method)],
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
  const reasons = log.reasons.map((reason) => html`<li>${reasonWords(reason)}</li>`);
  return html`<div class="verdict${good}"><p><strong>${verdictWords(log.verdict)}</strong></p>
<ul>${reasons}</ul></div>
`;
}

function stages(log: BatchLog): Markup {
  const rows = log.stages.map((stage) => [
    stage.title,
    stage.state,
    windowOf(stage.planned),
    dateAndTime(stage.startedAt),
    dateAndTime(stage.endedAt),
    stage.startedAt === null ? "" : spanOf(stage.minutes),
    stage.restarts || "",
  ]);
  const heads = ["Stage", "State", "Planned", "Began", "Ended", "Took", "Restarts"];
  return table("Stages, planned and actual", heads, rows);
}

function readings(log: BatchLog, units: Units | undefined): Markup | null {
  if (log.readings.length === 0) return null;
  if (log.readings.length > MOST_READINGS) {
    const count = log.readings.length;
    return html`<p class="soft">${count} readings; all of them are in the CSV and JSON.</p>`;
  }
  const rows = log.readings.map((one) => [
    dateAndTime(one.at),
    one.what,
    quantityWords(one.value, one.unit, units),
  ]);
  return table("Readings", ["When", "What", "Value"], rows);
}

function deviations(log: BatchLog): Markup {
  if (log.deviations.length === 0) return html`<p>None on record.</p>`;
  const titles = new Map(log.stages.map(({ id, title }) => [id, title]));
  const rows = log.deviations.map((one) => [
    deviationWords(one.code, one.detail),
    titles.get(one.stage ?? "") ?? "",
    dateAndTime(one.at),
    dispositionWords(one.disposition),
  ]);
  return table("Deviations and what was done", ["What", "Stage", "When", "Done"], rows);
}

function jars(log: BatchLog): Markup | null {
  if (!log.jars) return null;
  const { filled, processed, sealed, failed, setAside, broken, spoiled } = log.jars;
  const counts: [string, number][] = [
    ["Filled", filled],
    ["Processed", processed],
    ["Sealed", sealed],
    ["Did not seal", failed],
    ["Set aside", setAside],
    ["Broken", broken],
    ["Spoiled", spoiled],
  ];
  const list = counts.map(([term, count]) => html`<div><dt>${term}</dt><dd>${count}</dd></div>\n`);
  return html`<h2>Jars</h2>
<dl class="counts">
${list}</dl>
`;
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
  const rows = log.confirmed.map((one) => [idWords(one.factor), dateAndTime(one.at)]);
  return table("Critical factors confirmed", ["Factor", "When"], rows);
}
