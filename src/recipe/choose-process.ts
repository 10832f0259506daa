import { withCommas } from "../reckon/reckoned.ts";
import {
  COVER_IN,
  DEEP_COVER_ABOVE_MINUTES,
  LOW_TEMPERATURE_START_F,
  STEAM_LIMIT_MINUTES,
  STERILE_BELOW_MINUTES,
  WATER_START_F,
} from "../reckon/trade-numbers.ts";
import type { PressureBands, ProcessTable, ProcessTables, TableRow } from "./process-table.ts";
import { rowSourceLine } from "./process-table.ts";
import type { GaugeKind, JarSize, Method, Pack, ProcessOption, ProcessTerms } from "./recipe.ts";
import { JAR_SIZES, type Recipe } from "./recipe.ts";

/**
 * Looks up the tested process for a recipe, jar, pack, altitude and gauge. A time is found in a
 * published table or refused with the reason: nothing is interpolated, and nothing is taken from
 * beyond a table's last band.
 */

export type ProcessWish = {
  /** Height of the kitchen above the sea, feet. */
  altitudeFt: number;
  /** How far the altitude may be off, feet; a band edge within that distance counts as passed. */
  altitudeUncertaintyFt?: number;
  pack?: Pack;
  jar?: JarSize;
  method?: Method;
  gauge?: GaugeKind;
  /** Picks among several tested pressures: at this altitude, or as the lowest band prints it. */
  atPsi?: number;
};

/** A refusal names what is `missing` where an answer, and not another table, would resolve it. */
export type ProcessChoice =
  | { ok: true; terms: ProcessTerms }
  | { ok: false; reason: string; missing?: "gauge" };

/** Jar sizes the atmospheric steam canner was tested with. */
const STEAM_JARS: JarSize[] = ["half-pint", "pint", "quart"];
/** No kitchen stands lower than the shore of the Dead Sea, feet. */
const LOWEST_FT = -1500;

/** What the methods of a canner are called. */
export const METHOD_NAMES: Record<ProcessOption["method"], string> = {
  "boiling-water": "boiling water",
  steam: "atmospheric steam",
  pressure: "pressure",
  "low-temperature": "low-temperature pasteurization",
};

class Refusal extends Error {
  readonly missing: "gauge" | undefined;
  constructor(reason: string, missing?: "gauge") {
    super(reason);
    this.missing = missing;
  }
}

function refuse(reason: string, missing?: "gauge"): never {
  throw new Refusal(reason, missing);
}

/** The jar a recipe is put up in by default: that of its yield, else its smallest. */
export function defaultJar(recipe: Recipe): JarSize | undefined {
  const usual = recipe.yield.jars?.size;
  return usual && recipe.jars.includes(usual) ? usual : recipe.jars[0];
}

/**
 * Every way the recipe can be made shelf-stable: its own options, and atmospheric steam for each
 * boiling-water option of a food of pH 4.6 or less.
 * A recipe that is not tested has none, whatever it lists.
 * Source of the steam rule: Oklahoma State University Extension, atmospheric steam canners.
 */
export function processOptions(recipe: Recipe): ProcessOption[] {
  if (!recipe.tested) return [];
  const listed = new Set(recipe.processes.map((p) => `${p.method} ${p.table}`));
  const steam = recipe.processes
    .filter((p) => p.method === "boiling-water" && recipe.class !== "low-acid")
    .filter((p) => !listed.has(`steam ${p.table}`))
    .map((p): ProcessOption => ({ ...p, method: "steam" }));
  return [...recipe.processes, ...steam];
}

/** Why a recipe that is not tested gets no process, and what it may be instead. */
export function whyOffTheShelf({ title, heldBack }: Recipe): string {
  if (heldBack === undefined) return `${title} has no tested source: keep it in the refrigerator`;
  return `${title} is not safe on a shelf (${heldBack}): keep it in the refrigerator`;
}

/** The method that is meant: the one named; pressure where a pressure is named; else the first. */
export function methodMeant(
  options: readonly ProcessOption[],
  { method, atPsi }: Pick<ProcessWish, "method" | "atPsi">,
): Method | undefined {
  return method ?? (atPsi === undefined ? options[0]?.method : "pressure");
}

function pickOption(recipe: Recipe, wish: ProcessWish): ProcessOption {
  if (!recipe.tested) refuse(whyOffTheShelf(recipe));
  const options = processOptions(recipe);
  if (options.length === 0) refuse(`${recipe.title} has no canner process`);
  const method = methodMeant(options, wish);
  if (wish.atPsi !== undefined && method !== "pressure") {
    refuse(`${wish.atPsi} psi can be set only in a pressure canner, not in a ${method} process`);
  }
  const sameMethod = options.filter((o) => o.method === method);
  if (sameMethod.length === 0) {
    const had = [...new Set(options.map((o) => METHOD_NAMES[o.method]))].join(", ");
    const name = METHOD_NAMES[method as ProcessOption["method"]] ?? method;
    refuse(`no ${name} process was tested for ${recipe.title}; it has: ${had}`);
  }
  const found = wish.pack ? sameMethod.find((o) => o.pack === wish.pack) : sameMethod[0];
  if (!found) {
    const packs = [...new Set(sameMethod.map((o) => o.pack))].join(", ");
    refuse(`no ${wish.pack} pack was tested for ${recipe.title}; the pack is: ${packs}`);
  }
  return found;
}

function tableOf(recipe: Recipe, option: ProcessOption, tables: ProcessTables): ProcessTable {
  const table = tables.tables[option.table];
  if (!table) refuse(`there is no tested table behind ${recipe.title} (${option.table})`);
  const method = option.method === "steam" ? "boiling-water" : option.method;
  if (table.method !== method || !table.packs.includes(option.pack)) {
    refuse(
      `the table ${table.id} was not tested for ${option.pack} pack ` +
        `in ${METHOD_NAMES[option.method]}`,
    );
  }
  if (!table.classes.includes(recipe.class)) {
    refuse(`the table ${table.id} was tested for ${table.food}, not for ${recipe.class} food`);
  }
  if (option.method === "low-temperature" && !pasteurizes(recipe, tables)) {
    refuse(`low-temperature pasteurization was not tested for ${recipe.title}`);
  }
  return table;
}

/** True where a boiling-water table of the recipe allows low-temperature pasteurization too. */
export function pasteurizes(recipe: Recipe, tables: ProcessTables): boolean {
  return recipe.processes.some(({ table }) => tables.tables[table]?.pasteurizes === true);
}

/** The tested jar whose time a jar takes: its own size, or the next larger that was tested. */
function testedJar(table: ProcessTable, recipe: Recipe, jar: JarSize): JarSize {
  const tested = new Set(table.rows.flatMap((row) => row.jars));
  const reason = largerThan(
    recipe.jars.filter((size) => tested.has(size)),
    recipe,
    jar,
  );
  if (reason) refuse(reason);
  const found = JAR_SIZES.slice(JAR_SIZES.indexOf(jar)).find((size) => tested.has(size));
  return found ?? refuse(`${jar} jars were not tested for ${recipe.title}`);
}

/** Why a jar larger than all of these is refused; undefined where it is not larger. */
function largerThan(sizes: JarSize[], { title }: Recipe, jar: JarSize): string | undefined {
  const largest = [...JAR_SIZES].reverse().find((size) => sizes.includes(size));
  if (largest && JAR_SIZES.indexOf(jar) <= JAR_SIZES.indexOf(largest)) return undefined;
  return `${jar} jars were not tested for ${title}; the largest is ${largest ?? "none"}`;
}

/**
 * Why a jar larger than any the recipe is canned in is refused; undefined where it is not larger.
 */
export function refusedJar(recipe: Recipe, jar: JarSize): string | undefined {
  const isCanned = recipe.processes.length > 0 && recipe.jars.length > 0;
  return isCanned ? largerThan(recipe.jars, recipe, jar) : undefined;
}

/** Whether anything was tested for a wish at any altitude and gauge; if not, the reason. */
export function refusedAnywhere(
  recipe: Recipe,
  tables: ProcessTables,
  wish: Omit<ProcessWish, "altitudeFt">,
): string | undefined {
  const edges = [0, ...Object.values(tables.tables).flatMap((table) => table.bandEdgesFt)];
  const dials = Object.values(tables.schedules).flatMap(({ dial, weighted }) => {
    return [...(dial?.edgesFt ?? []), ...(weighted?.edgesFt ?? [])];
  });
  const trials = [...new Set([...edges, ...dials].flatMap((edge) => [edge, edge + 1]))];
  const gauges: GaugeKind[] = wish.gauge ? [wish.gauge] : ["dial", "weighted"];
  const choices = trials.flatMap((altitudeFt) => {
    return gauges.map((gauge) => chooseProcess(recipe, tables, { ...wish, gauge, altitudeFt }));
  });
  const [first] = choices;
  return choices.some(({ ok }) => ok) || !first || first.ok ? undefined : first.reason;
}

/** The altitude used for lookups: the higher end of an uncertain one. */
function lookupFt(wish: ProcessWish): number {
  const { altitudeFt, altitudeUncertaintyFt = 0 } = wish;
  if (!Number.isFinite(altitudeFt) || !(altitudeUncertaintyFt >= 0)) {
    refuse("the altitude is not known; say it in feet or meters");
  }
  if (altitudeFt < LOWEST_FT) refuse(`no kitchen stands at ${withCommas(altitudeFt)} ft`);
  return altitudeFt + altitudeUncertaintyFt;
}

/** Which band an altitude falls in; refused above `topFt`. Below the lowest band, the lowest. */
function bandIndex(altitudeFt: number, edgesFt: number[], topFt: number, what: string): number {
  if (altitudeFt > topFt) {
    const here = `this kitchen is at ${withCommas(altitudeFt)} ft`;
    refuse(`no tested ${what} above ${withCommas(topFt)} ft; ${here}`);
  }
  const index = edgesFt.findIndex((edge) => altitudeFt <= edge);
  return index < 0 ? edgesFt.length : index;
}

/** The band as tables print it: `1,001-6,000 ft`, `above 6,000 ft`. */
export function bandLabel(edgesFt: number[], index: number): string {
  if (edgesFt.length === 0) return "all altitudes";
  const below = edgesFt[index - 1];
  const edge = edgesFt[index];
  if (edge === undefined) return `above ${withCommas(below ?? 0)} ft`;
  return `${withCommas(below === undefined ? 0 : below + 1)}-${withCommas(edge)} ft`;
}

type FoundRow = { row: TableRow; minutes: number; band: string; psi: number | null; note?: string };

function byBands(
  table: ProcessTable,
  row: TableRow,
  altitudeFt: number,
  tables: ProcessTables,
): FoundRow {
  const what = "time for this food";
  const index = bandIndex(altitudeFt, table.bandEdgesFt, tables.topFt.bands, what);
  const minutes = row.minutes[index];
  if (minutes === undefined) refuse(`the table ${table.id} has no time at this altitude`);
  return { row, minutes, band: bandLabel(table.bandEdgesFt, index), psi: null };
}

type Setting = FoundRow & { psi: number; basePsi: number | null };

function settingOf(row: TableRow, bands: PressureBands, altitudeFt: number, topFt: number) {
  // The last printed edge of a dial column is where the column ends, not a band of its own.
  const index = bandIndex(altitudeFt, bands.edgesFt, topFt, "pressure");
  const psi = bands.psi[index] ?? null;
  const minutes = row.minutes[0];
  if (psi === null || minutes === undefined) return undefined;
  const band = bandLabel(bands.edgesFt, index);
  return { row, minutes, band, psi, basePsi: bands.psi[0] ?? null };
}

function settings(
  rows: TableRow[],
  gauge: GaugeKind,
  altitudeFt: number,
  tables: ProcessTables,
): Setting[] {
  const found: Setting[] = [];
  for (const row of rows) {
    const bands = tables.schedules[row.schedule ?? ""]?.[gauge];
    const setting = bands && settingOf(row, bands, altitudeFt, tables.topFt[gauge]);
    if (setting) found.push(setting);
  }
  return found;
}

function byPressure(
  rows: TableRow[],
  wish: ProcessWish,
  altitudeFt: number,
  tables: ProcessTables,
): FoundRow {
  const { gauge, atPsi } = wish;
  if (!gauge) {
    refuse(
      "which gauge does the canner have, dial or weighted? The pressure depends on it",
      "gauge",
    );
  }
  const found = settings(rows, gauge, altitudeFt, tables);
  const list = found.map((s) => `${s.minutes} min at ${s.psi} psi`).join(", ");
  if (found.length === 0) refuse(`no tested pressure for a ${gauge} gauge at this altitude`);
  if (atPsi === undefined) {
    const first = found[0] as Setting;
    return found.length > 1
      ? { ...first, note: `the first of the tested settings: ${list}` }
      : first;
  }
  const picked = found.find((s) => s.psi === atPsi) ?? found.find((s) => s.basePsi === atPsi);
  return (
    picked ??
    refuse(`${atPsi} psi is not a tested setting here for a ${gauge} gauge; it has: ${list}`)
  );
}

function checkSteam(recipe: Recipe, jar: JarSize, minutes: number): void {
  if (recipe.class === "low-acid") refuse("low-acid food is never processed in a steam canner");
  if (!STEAM_JARS.includes(jar)) refuse(`${jar} jars were not tested in a steam canner`);
  if (minutes > STEAM_LIMIT_MINUTES) {
    refuse(
      `the process is ${minutes} min at this altitude; a steam canner runs dry after ` +
        `${STEAM_LIMIT_MINUTES} min: use boiling water`,
    );
  }
}

function coverIn(method: ProcessOption["method"], minutes: number): number {
  if (method === "steam" || method === "pressure") return 0;
  return method === "boiling-water" && minutes > DEEP_COVER_ABOVE_MINUTES
    ? COVER_IN.deep
    : COVER_IN.least;
}

function sourceOf(row: TableRow, method: ProcessOption["method"]): string {
  const line = rowSourceLine(row);
  if (method !== "steam") return line;
  return `${line}; steam: Oklahoma State University Extension, atmospheric steam canners`;
}

function termsFor(recipe: Recipe, tables: ProcessTables, wish: ProcessWish): ProcessTerms {
  const option = pickOption(recipe, wish);
  const table = tableOf(recipe, option, tables);
  const jar = wish.jar ?? defaultJar(recipe);
  if (!jar) refuse(`${recipe.title} names no jar size`);
  const jarTested = testedJar(table, recipe, jar);
  const rows = table.rows.filter((row) => row.jars.includes(jarTested));
  const altitudeFt = lookupFt(wish);
  const first = rows[0] as TableRow;
  const found =
    option.method === "pressure"
      ? byPressure(rows, wish, altitudeFt, tables)
      : byBands(table, first, altitudeFt, tables);
  if (option.method === "steam") checkSteam(recipe, jar, found.minutes);
  const { method, pack } = option;
  const { minutes } = found;
  return {
    method,
    pack,
    jar,
    jarTested,
    minutes,
    pressurePsi: found.psi,
    gauge: method === "pressure" ? (wish.gauge ?? null) : null,
    altitudeFt: wish.altitudeFt,
    ...(wish.altitudeUncertaintyFt ? { altitudeUncertaintyFt: wish.altitudeUncertaintyFt } : {}),
    band: found.band,
    table: table.id,
    source: sourceOf(found.row, method),
    locator: found.row.locator,
    reading: found.row.reading,
    sterileJars: sterileWanted(method, minutes),
    coverIn: coverIn(method, minutes),
    waterStartF: method === "low-temperature" ? LOW_TEMPERATURE_START_F : WATER_START_F[pack],
    ...(found.note ? { note: found.note } : {}),
  };
}

/** Terms that run longer than their table says, with the water and jars that such a time needs. */
export function lasting(terms: ProcessTerms, minutes: number): ProcessTerms {
  const { method } = terms;
  const sterileJars = sterileWanted(method, minutes);
  return { ...terms, minutes, sterileJars, coverIn: coverIn(method, minutes) };
}

/** Boiling water and steam sterilize nothing in under ten minutes; pressure always does. */
function sterileWanted(method: ProcessOption["method"], minutes: number): boolean {
  return (method === "boiling-water" || method === "steam") && minutes < STERILE_BELOW_MINUTES;
}

/**
 * The tested process for one load of a recipe.
 *
 * Altitude: below 0 ft the lowest band holds; the last boiling-water band holds to 10,000 ft, a
 * dial gauge to 8,000 ft, a weighted gauge to 10,000 ft. A smaller jar than tested takes the
 * next larger tested jar's time; a larger one is refused. The gauge is never assumed.
 *
 * Sources: USDA Complete Guide to Home Canning, Guide 1 (altitude, pressure, jars, sterile jars,
 * depth of water); Oklahoma State University Extension (steam). That the last boiling-water band
 * and the weighted setting end at 10,000 ft is this program's own limit.
 *
 * @returns the terms, or the reason there are none, fit to be read aloud.
 */
export function chooseProcess(
  recipe: Recipe,
  tables: ProcessTables,
  wish: ProcessWish,
): ProcessChoice {
  try {
    return { ok: true, terms: termsFor(recipe, tables, wish) };
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    const { message: reason, missing } = error;
    return missing ? { ok: false, reason, missing } : { ok: false, reason };
  }
}
