/**
 * Comma-separated values as in RFC 4180. A text that a spreadsheet would run as a formula gets an
 * apostrophe in front; numbers are written as they are.
 */
import type { BatchLog } from "./batch-log.ts";

type Cell = string | number | null | undefined;

/**
 * Begins with a formula sign, perhaps after blanks or invisible characters (controls, direction
 * marks, fillers) that may be lost on the way; or with a tab or carriage return.
 */
const FORMULA =
  /^(?:[\t\r]|[\s\p{C}\p{Default_Ignorable_Code_Point}\u2800]*[=+\-@\uff1d\uff0b\uff0d\uff20])/u;

function cell(value: Cell): string {
  if (value === null || value === undefined) return "";
  if (typeof value === "number") return String(value);
  const tame = FORMULA.test(value) ? `'${value}` : value;
  return /[",\r\n\t]/.test(tame) ? `"${tame.replace(/"/g, '""')}"` : tame;
}

/** Rows after a line of names; every line ends in CR LF. */
export function csv(names: readonly string[], rows: readonly (readonly Cell[])[]): string {
  return [names, ...rows].map((row) => `${row.map(cell).join(",")}\r\n`).join("");
}

/** One row for each batch. */
export function batchesCsv(logs: readonly BatchLog[]): string {
  const names =
    "batch,recipe,title,variety,weight_lb,method,jar,pack,altitude_ft,state,begun,ended," +
    "tested_min,pressure_psi,achieved_min,restarts,filled,processed,sealed,failed,set_aside," +
    "broken,spoiled,deviations,verdict,reasons";
  const rows = logs.map((log): Cell[] => [
    ...[log.id, log.recipe, log.title, log.lot.variety, log.lot.weightLb, log.method],
    ...[log.jar, log.pack, log.altitudeFt, log.state, log.begunAt, log.endedAt],
    ...[log.process?.testedMinutes, log.process?.pressurePsi],
    ...[log.process?.achievedMinutes, log.process?.restarts],
    ...[log.jars?.filled, log.jars?.processed, log.jars?.sealed],
    ...[log.jars?.failed, log.jars?.setAside, log.jars?.broken],
    log.jars?.spoiled,
    log.deviations.map((one) => one.code).join(" "),
    ...[log.verdict, log.reasons.join("; ")],
  ]);
  return csv(names.split(","), rows);
}

/** A row for each stage, reading, deviation, confirmation and note of one batch. */
export function batchCsv(log: BatchLog): string {
  const names =
    "batch,row,name,kind,state,at,ended,minutes,planned_min,planned_max,restarts,value,unit," +
    "detail,disposition";
  const rows: Cell[][] = [];
  const add = (row: string, cells: Cell[]) => rows.push([log.id, row, ...cells]);
  for (const one of log.stages) {
    const { minMinutes, maxMinutes } = one.planned;
    const times = [one.startedAt, one.endedAt, one.minutes, minMinutes, maxMinutes, one.restarts];
    add("stage", [one.title, one.kind, one.state, ...times, null, null, one.load, null]);
  }
  const none = (count: number): null[] => Array(count).fill(null);
  for (const one of log.readings) {
    add("reading", [one.what, null, null, one.at, ...none(5), one.value, one.unit, ...none(2)]);
  }
  for (const one of log.deviations) {
    const tail = [one.detail, one.disposition];
    add("deviation", [one.code, one.stage, null, one.at, ...none(7), ...tail]);
  }
  for (const one of log.confirmed) add("confirmed", [one.factor, ...none(2), one.at, ...none(9)]);
  for (const one of log.notes) add("note", [...none(3), one.at, ...none(7), one.text, null]);
  for (const [name, count] of Object.entries(log.jars ?? {})) {
    add("jars", [name, ...none(8), count, null, null, null]);
  }
  return csv(names.split(","), rows);
}
