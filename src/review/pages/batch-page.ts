/** The batch log as a page of its own, for screen and paper. */
import type { BatchLot } from "../../kitchen/jars/jar.ts";
import type { Batch, State } from "../../kitchen/state.ts";
import type { Units } from "../../reckon/metric-words.ts";
import { type BatchLog, batchLog, type StageLog, stageLogs } from "../batch-log.ts";
import {
  dateAndTime,
  likedWords,
  openedCount,
  spanOf,
  tastingWords,
  windowOf,
} from "../report-words.ts";
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
import { quantityWords } from "./shown-units.ts";
import { timeCharts } from "./time-chart.ts";

/** More readings than this are shown as a curve only. */
const MOST_READINGS = 60;

/**
 * A whole document about one batch, or about some of its lots: what they shared is shown once.
 * `now` is kitchen time.
 */
export function batchPage(
  state: State,
  batch: Batch,
  now: number,
  lots: readonly BatchLot[] = batch.lots,
): string {
  const all = batch.lots.map((lot) => batchLog(state, batch, now, lot));
  const logs = all.filter(({ id }) => lots.some((lot) => lot.id === id));
  const [log] = logs;
  if (!log) return page(batch.recipe.title, html`<p>None of its lots is on record.</p>`);
  const varieties = logs.flatMap((one) => one.lot.variety ?? []);
  const name = [log.title, ...varieties].join(", ");
  const { units } = state.kitchen;
  const stages = stageLogs(state, batch, now, lots);
  const lines = timelineOf(state, batch, now, lots);
  const body = html`${head(logs, name)}
${logs.map((one) => verdict(one, logs.length > 1))}
${all.length > 1 && lotTable(all)}
<h2>Stages</h2>
${timeCharts(lines, tracesOf(state, batch, now, lots), name, units)}
${stageTable(stages)}
${readings(
  together(logs, (one) => one.readings),
  units,
)}
<h2>Departures from the recipe</h2>
${deviations(
  together(logs, (one) => one.deviations),
  stages,
)}
${logs.flatMap((one) => jars(one, logs.length > 1) ?? [])}
${opened(logs)}
${tastings(logs)}
${notes(log)}
<h2>Confirmed</h2>
${confirmed(log)}
<p class="soft">This page speaks of the record only, never of the food. Follow a current tested
recipe; when a jar is in doubt, throw it out.</p>
`;
  return page(`${name}: batch ${log.id}`, body);
}

/** What several lots have on record, in the order of time; what they share is there once. */
function together<T extends { at: string }>(
  logs: readonly BatchLog[],
  of: (log: BatchLog) => readonly T[],
): T[] {
  const found = new Map(logs.flatMap(of).map((one) => [JSON.stringify(one), one]));
  return [...found.values()].sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0));
}

function lotName({ lot, id }: BatchLog): string {
  return lot.variety ?? `Lot ${id}`;
}

/** Every lot of a batch whose lots shared its pots. */
function lotTable(all: readonly BatchLog[]): Markup {
  const heads = ["Lot", "Batch", "Lids", "Pounds", "Sealed", "Did not seal", "Opened", "Verdict"];
  const rows = all.map((log) => [
    lotName(log),
    log.id,
    log.mark,
    log.lot.weightLb ?? "not weighed",
    log.jars?.sealed ?? "",
    log.jars?.failed ?? "",
    openedCount(log),
    verdictWords(log.verdict),
  ]);
  return html`<h2>Lots</h2>
${table("Lots that shared the pots of this batch", heads, rows)}`;
}

function opened(logs: readonly BatchLog[]): Markup | null {
  const rows = logs.flatMap((log) => {
    const numbers = (jars: number[]) => jars.map((jar) => `${log.mark}${jar}`).join(", ");
    return log.opened.map(({ at, count, jars }) => {
      return [dateAndTime(at), lotName(log), count, numbers(jars)];
    });
  });
  if (rows.length === 0) return null;
  return html`<h2>Opened</h2>
${table("Jars opened and eaten", ["When", "Lot", "Jars", "Which"], rows)}`;
}

function tastings(logs: readonly BatchLog[]): Markup | null {
  const rows = logs.flatMap((log) => {
    const scored = log.tastings.map((one) => [
      dateAndTime(one.at),
      lotName(log),
      tastingWords(one),
    ]);
    const liked = log.preferred.map((one) => [dateAndTime(one.at), lotName(log), likedWords(one)]);
    return [...scored, ...liked];
  });
  if (rows.length === 0) return null;
  return html`<h2>Tastings</h2>
${table("Tastings", ["When", "Lot", "What was said"], rows)}`;
}

function head(logs: readonly BatchLog[], name: string): Markup {
  const [log] = logs;
  if (!log) return html``;
  const ids = logs.map(({ id, mark }) => `${id}, lids marked ${mark}`).join("; ");
  const others = log.sharesWith.filter((id) => !logs.some((one) => one.id === id));
  const loads = [...new Set(logs.flatMap((one) => one.loads))];
  const facts: [string, string | null][] = [
    ["Recipe source", log.source || "none given"],
    [logs.length > 1 ? "Lots" : "Lot", logs.map(({ lot }) => lotWords(lot)).join("; ")],
    ["Shared its pots with", others.join(", ") || null],
    ["Jar", log.jar ? `${log.jar}${log.pack ? `, ${log.pack} pack` : ""}` : null],
    ["Method", idWords(log.method)],
    ["Altitude", log.altitudeFt === null ? null : `${log.altitudeFt} ft`],
    ["Process", processWords(log)],
    ["Process source", log.process?.source ?? null],
    ["Begun", dateAndTime(log.begunAt)],
    ["Finished", log.endedAt ? dateAndTime(log.endedAt) : log.state],
    ["Loads", loads.join(", ") || null],
  ];
  const list = facts.flatMap(([term, value]) =>
    value === null ? [] : [html`<dt>${term}</dt><dd>${value}</dd>\n`],
  );
  const rehearsal = log.rehearsal ? " Played in a rehearsal." : "";
  return html`<h1>${name}</h1>
<p class="soft">Batch ${ids}.${rehearsal}</p>
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

function verdict(log: BatchLog, several: boolean): Markup {
  const good = log.verdict === "as-tested" ? " good" : "";
  const reasons = log.reasons.map((reason) => html`<li>${reasonWords(reason)}</li>`);
  const words = html`<strong>${verdictWords(log.verdict)}</strong>`;
  return html`<div class="verdict${good}"><p>${several && `${lotName(log)}: `}${words}</p>
<ul>${reasons}</ul></div>
`;
}

function stageTable(stages: readonly StageLog[]): Markup {
  const byPlan = stages.some(({ agreed }) => agreed !== null);
  const rows = stages.map((stage) => [
    stage.title,
    stage.state,
    windowOf(stage.planned),
    ...(byPlan ? [stage.agreed ? dateAndTime(stage.agreed.from) : ""] : []),
    dateAndTime(stage.startedAt),
    dateAndTime(stage.endedAt),
    stage.startedAt === null ? "" : spanOf(stage.minutes),
    stage.restarts || "",
  ]);
  const plan = byPlan ? ["By the plan"] : [];
  const heads = ["Stage", "State", "Planned", ...plan, "Began", "Ended", "Took", "Restarts"];
  return table("Stages, planned and actual", heads, rows);
}

function readings(list: BatchLog["readings"], units: Units | undefined): Markup | null {
  if (list.length === 0) return null;
  if (list.length > MOST_READINGS) {
    const count = list.length;
    return html`<p class="soft">${count} readings; all of them are in the CSV and JSON.</p>`;
  }
  const rows = list.map((one) => [
    dateAndTime(one.at),
    one.what,
    quantityWords(one.value, one.unit, units),
  ]);
  return table("Readings", ["When", "What", "Value"], rows);
}

function deviations(list: BatchLog["deviations"], stages: readonly StageLog[]): Markup {
  if (list.length === 0) return html`<p>None on record.</p>`;
  const titles = new Map(stages.map(({ id, title }) => [id, title]));
  const rows = list.map((one) => [
    deviationWords(one.code, one.detail),
    titles.get(one.stage ?? "") ?? "",
    dateAndTime(one.at),
    dispositionWords(one.disposition),
  ]);
  return table("Deviations and what was done", ["What", "Stage", "When", "Done"], rows);
}

function jars(log: BatchLog, several: boolean): Markup | null {
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
  return html`<h2>Jars${several && ` of ${lotName(log)}`}</h2>
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
