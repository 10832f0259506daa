import { quoted, readNumber } from "./quantity.ts";
import type { Result } from "./result.ts";
import { fail, ok } from "./result.ts";
import { celsiusOf } from "./units.ts";

/** One reading: minutes since the first, degrees Celsius. */
export type LogReading = { minutes: number; temperatureC: number };

type TemperatureLog = {
  readings: LogReading[];
  notes: string[];
};

type LogOptions = {
  /** The instant of an ISO time in ms; undefined where the text is not one. */
  parseIso: (text: string) => number | undefined;
  /** Unit of bare temperatures where neither the heading nor the value gives one. */
  unitIfUnsaid: "F" | "C";
};

const LONGEST_TEXT = 4_000_000;
/** Nothing in a kitchen's jar is colder or hotter, °C; beyond it the probe is broken. */
const PROBE_RANGE_C = { least: -40, most: 200 } as const;

const TIME_HEADING =
  /\b(?:time|timestamp|date|when|iso|elapsed|min|mins|minutes?|sec|secs|seconds?|hours?)\b/;
const TEMPERATURE_HEADING = /temp|°|\b(?:f|c|fahrenheit|celsius|deg[fc])\b/;

type Columns = {
  time: number;
  temperature: number;
  unit: "F" | "C" | null;
  /** Minutes in one unit of a bare time number. */
  minutesEach: number;
  rowsFrom: number;
};

function cells(line: string, separator: string): string[] {
  return line.split(separator).map((cell) =>
    cell
      .trim()
      .replace(/^"(.*)"$/, "$1")
      .trim(),
  );
}

/** The separate words of a heading, the same for `temp_F` and `Temperature (F)`. */
function heading(cell: string): string {
  return cell.toLowerCase().replace(/[_()[\]/-]+/g, " ");
}

function unitOfHeading(text: string): "F" | "C" | null {
  if (/(?:\bf|temp(?:erature)?f|fahrenheit|degf)\b/.test(text)) return "F";
  if (/(?:\bc|temp(?:erature)?c|celsius|degc)\b/.test(text)) return "C";
  return null;
}

function minutesEachOf(text: string): number {
  if (/\b(?:s|sec|secs|seconds?)\b/.test(text)) return 1 / 60;
  return /\b(?:h|hr|hrs|hours?)\b/.test(text) ? 60 : 1;
}

/** Which column is which, from the first row: a heading, or plain numbers time first. */
function findColumns(first: string[], name: string): Result<Columns> {
  const isHeading = first.some((cell) => /[a-z]{3}/i.test(cell) && !/^\d/.test(cell));
  if (!isHeading) {
    if (first.length < 2)
      return fail(`${name}: only one column; a time and a temperature are needed`);
    return ok({ time: 0, temperature: 1, unit: null, minutesEach: 1, rowsFrom: 0 });
  }
  const words = first.map(heading);
  const time = words.findIndex((text) => TIME_HEADING.test(text));
  const temperature = words.findIndex(
    (text, index) => index !== time && TEMPERATURE_HEADING.test(text),
  );
  if (time < 0) {
    return fail(`${name}: line 1 names no time column; head it "time" (ISO) or "minutes"`);
  }
  if (temperature < 0) {
    return fail(`${name}: line 1 names no temperature column; head it "temperature F" or "C"`);
  }
  const minutesEach = minutesEachOf(words[time] ?? "");
  const unit = unitOfHeading(words[temperature] ?? "");
  return ok({ time, temperature, unit, minutesEach, rowsFrom: 1 });
}

/** Minutes in a time cell: a bare number in the heading's unit, or an ISO time. */
function minutesOf(cell: string, minutesEach: number, options: LogOptions): number | undefined {
  const number = readNumber(cell);
  if (number && /^\s*(?:min|minutes?|m)?\s*$/i.test(number.rest)) return number.value * minutesEach;
  const instant = options.parseIso(cell);
  return instant === undefined ? undefined : instant / 60_000;
}

function celsiusIn(cell: string, columns: Columns, options: LogOptions): number | undefined {
  const number = readNumber(cell);
  const said = number && /^\s*(?:°|deg)?\s*([fc]?)\s*$/i.exec(number.rest);
  if (!number || !said) return undefined;
  const unit = said[1]?.toUpperCase() || columns.unit || options.unitIfUnsaid;
  return unit === "F" ? celsiusOf(number.value) : number.value;
}

/** One row read, or what is wrong with it. */
function readRow(
  row: string[],
  columns: Columns,
  options: LogOptions,
): { ok: true; reading: LogReading } | { ok: false; wrong: string } {
  const timeCell = row[columns.time] ?? "";
  const cell = row[columns.temperature] ?? "";
  const minutes = minutesOf(timeCell, columns.minutesEach, options);
  if (minutes === undefined) {
    return { ok: false, wrong: `${quoted(timeCell)} is not a time; use ISO times or minutes` };
  }
  const temperatureC = celsiusIn(cell, columns, options);
  if (temperatureC === undefined) {
    return { ok: false, wrong: `${quoted(cell)} is not a temperature; write 203 or 203F` };
  }
  if (temperatureC < PROBE_RANGE_C.least || temperatureC > PROBE_RANGE_C.most) {
    return {
      ok: false,
      wrong: `${quoted(cell)} is not a possible temperature in a jar; check the probe`,
    };
  }
  return { ok: true, reading: { minutes, temperatureC } };
}

/**
 * A temperature log from the text of a CSV file: a time column (ISO, or minutes; seconds or hours
 * where the heading says so) and a temperature column, separated by commas, semicolons or tabs,
 * with or without a heading. An error names the file and line: no time, no temperature, a time
 * before the one above it, fewer than two readings.
 */
export function readTemperatureLog(
  text: string,
  name: string,
  options: LogOptions,
): Result<TemperatureLog> {
  if (text.length > LONGEST_TEXT) return fail(`${name}: over 4 MB; cut it to the process's hours`);
  const lines = text
    .replace(/^\uFEFF/, "")
    .split(/\r\n|\n|\r/)
    .map((line, index) => ({ line: line.trim(), number: index + 1 }))
    .filter(({ line }) => line !== "" && !line.startsWith("#"));
  const first = lines[0];
  if (!first) return fail(`${name}: it is empty; a time and a temperature column are needed`);
  const separator = [";", "\t", ","].find((mark) => first.line.includes(mark)) ?? ",";
  const columns = findColumns(cells(first.line, separator), name);
  if (!columns.ok) return columns;
  const readings: LogReading[] = [];
  for (const { line, number } of lines.slice(columns.value.rowsFrom)) {
    const row = readRow(cells(line, separator), columns.value, options);
    if (!row.ok) return fail(`${name}, line ${number}: ${row.wrong}`);
    const before = readings.at(-1);
    if (before && row.reading.minutes < before.minutes) {
      return fail(`${name}, line ${number}: the time runs backwards; put the rows in order`);
    }
    readings.push(row.reading);
  }
  const start = readings[0];
  if (!start || readings.length < 2) {
    return fail(`${name}: ${readings.length} readings; two or more are needed`);
  }
  const notes: string[] = [];
  const lastCell = cells(lines.at(-1)?.line ?? "", separator)[columns.value.temperature] ?? "";
  if (columns.value.unit === null && !/[fc]$/i.test(lastCell)) {
    notes.push(`temperatures have no unit; taken as ${options.unitIfUnsaid}, the reference's`);
  }
  const shifted = readings.map(({ minutes, temperatureC }) => ({
    minutes: minutes - start.minutes,
    temperatureC,
  }));
  return ok({ readings: shifted, notes });
}
