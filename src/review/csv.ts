/**
 * Comma-separated values as in RFC 4180. A text that a spreadsheet would run as a formula gets an
 * apostrophe in front; numbers are written as they are.
 */
import type { BatchLog } from "./batch-log.ts";
import type { Comparison } from "./compare.ts";
import { openedCount, tastingWords } from "./report-words.ts";

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

/** One row for each lot. */
export function batchesCsv(logs: readonly BatchLog[]): string {
  const names =
    "batch,recipe,title,variety,weight_lb,method,jar,pack,altitude_ft,state,begun,ended," +
    "tested_min,pressure_psi,achieved_min,restarts,filled,processed,sealed,failed,set_aside," +
    "broken,spoiled,deviations,verdict,reasons,mark,shares_with,opened,tastings";
  const rows = logs.map((log): Cell[] => [
    ...[log.id, log.recipe, log.title, log.lot.variety, log.lot.weightLb, log.method],
    ...[log.jar, log.pack, log.altitudeFt, log.state, log.begunAt, log.endedAt],
    ...[log.process?.testedMinutes, log.process?.pressurePsi],
    ...[log.process?.achievedMinutes, log.process?.restarts],
    ...[log.jars?.filled, log.jars?.processed, log.jars?.sealed],
    ...[log.jars?.failed, log.jars?.setAside, log.jars?.broken],
    log.jars?.spoiled,
    log.deviations.map((one) => one.code).join(" "),
    ...[log.verdict, log.reasons.join("; "), log.mark, log.sharesWith.join(" ")],
    ...[openedCount(log), log.tastings.map(tastingWords).join("; ")],
  ]);
  return csv(names.split(","), rows);
}

/** A row for each stage, reading, deviation, confirmation, note, opening and tasting of lots. */
export function batchCsv(logs: readonly BatchLog[]): string {
  const names =
    "batch,row,name,kind,state,at,ended,minutes,planned_min,planned_max,restarts,value,unit," +
    "detail,disposition";
  return csv(names.split(","), logs.flatMap(rowsOf));
}

function rowsOf(log: BatchLog): Cell[][] {
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
  for (const { at, count, jars } of log.opened) {
    add("opened", [...none(3), at, ...none(5), count, null, jars.join(" "), null]);
  }
  for (const { at, taster, scores, words } of log.tastings) {
    if (words !== null) add("tasting", [...none(3), at, ...none(7), words, taster]);
    for (const [name, score] of Object.entries(scores)) {
      add("tasting", [name, ...none(2), at, ...none(5), score, null, taster, null]);
    }
  }
  for (const { at, taster, over } of log.preferred) {
    add("preferred", [over, ...none(2), at, ...none(7), taster, null]);
  }
  return rows;
}

/**
 * One row for each lot, one for each variety over all its lots, and one for each score that was
 * given at a tasting.
 */
export function comparisonCsv({ lots, varieties, scores }: Comparison): string {
  const names =
    "row,recipe,title,variety,batch,lots,begun,jar,weight_lb,jars,jars_per_lb,pints_per_lb," +
    "sealed,checked,seal_low,seal_high,failed,spoiled,opened,hands_on_min,deviations,verdict," +
    "score,value";
  const ofLots = lots.map((line): Cell[] => [
    ...["lot", line.recipe, line.title, line.variety, line.batch, 1, line.begun, line.jar],
    ...[line.weightLb, line.jars, line.jarsPerLb, line.pintsPerLb],
    ...[line.checked.sealed, line.checked.of, null, null, line.failed, line.spoiled, line.opened],
    ...[line.handsOnMinutes, line.deviations.join(" "), line.verdict, null, null],
  ]);
  const ofVarieties = varieties.map((line): Cell[] => {
    const verdicts = Object.entries(line.verdicts).map(([verdict, count]) => `${count} ${verdict}`);
    const interval = line.seal?.interval.map((share) => Number(share.toFixed(3))) ?? [null, null];
    return [
      ...["variety", line.recipe, line.title, line.variety, null, line.lots, null, line.jar],
      ...[line.weightLb, line.jars, line.jarsPerLb, line.pintsPerLb],
      ...[line.seal?.sealed, line.seal?.of, ...interval, null, line.spoiled, line.opened],
      ...[line.handsOnMinutes, null, verdicts.join(" "), null, null],
    ];
  });
  const { recipe = null, title = null } = lots[0] ?? {};
  const ofScores = scores.flatMap(({ name, rows }) => {
    return rows.flatMap(({ thing, scores: given }) => {
      return given.map((value): Cell[] => {
        return ["score", recipe, title, thing, ...Array(18).fill(null), name, value];
      });
    });
  });
  return csv(names.split(","), [...ofLots, ...ofVarieties, ...ofScores]);
}
