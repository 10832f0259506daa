import type {
  Neighbor,
  PressureSchedule,
  ProcessTable,
  ProcessTables,
  TableRow,
} from "./process-table.ts";
import { type FileProblem, type Path, readYaml } from "./read-yaml.ts";
import { type TablesFile, tablesSchema } from "./schema.ts";

/** Upper edges of the printed bands, feet; the last band of 3 or 4 is open. */
const BAND_EDGES_FT = { 3: [1000, 6000], 4: [1000, 3000, 6000] } as const;
const DIAL_EDGES_FT = [2000, 4000, 6000, 8000];
const WEIGHTED_EDGES_FT = [1000];

type TablesRead = { ok: true; tables: ProcessTables } | { ok: false; problems: FileProblem[] };

function scheduleOf(written: TablesFile["schedules"][string]): PressureSchedule {
  const { dial, weighted } = written;
  return {
    ...(dial ? { dial: { edgesFt: DIAL_EDGES_FT, psi: dial } } : {}),
    ...(weighted ? { weighted: { edgesFt: WEIGHTED_EDGES_FT, psi: weighted } } : {}),
  };
}

type Fault = { path: Path; message: string };

/**
 * What a schema cannot say: every row has a time for each band, every key refers to something, and
 * what is remembered is named.
 */
function faultsOf(id: string, table: TablesFile["tables"][string], file: TablesFile): Fault[] {
  const path = ["tables", id];
  const faults: Fault[] = [];
  const bandCount = table.bands ?? 1;
  if (!file.sources[table.source]) {
    faults.push({ path: [...path, "source"], message: `no source is called ${table.source}` });
  }
  if (table.formula && !file.formulas[table.formula]) {
    faults.push({ path: [...path, "formula"], message: `no formula is called ${table.formula}` });
  }
  for (const key of table.notOf ?? []) {
    if (file.neighbors[key]) continue;
    faults.push({ path: [...path, "notOf"], message: `no neighbor is called ${key}` });
  }
  table.rows.forEach((row, index) => {
    const rowPath = [...path, "rows", index];
    if (row.minutes.length !== bandCount) {
      faults.push({ path: rowPath, message: `${row.minutes.length} times for ${bandCount} bands` });
    }
    const needsSchedule = table.method === "pressure";
    if (needsSchedule !== (row.schedule !== undefined)) {
      faults.push({ path: rowPath, message: "a pressure row, and no other, names its schedule" });
    } else if (row.schedule && !file.schedules[row.schedule]) {
      faults.push({ path: rowPath, message: `no schedule is called ${row.schedule}` });
    }
    const memory = row.locator?.memory ?? table.locator.memory;
    if ((memory !== undefined) !== ((row.reading ?? table.reading) === "remembered")) {
      const message = "a remembered row, and no other, names in `memory` what of it is remembered";
      faults.push({ path: rowPath, message });
    }
  });
  return faults;
}

function neighborOf(key: string, file: TablesFile): Neighbor {
  const { foods = [], words = [], why = "", source = "" } = file.neighbors[key] ?? {};
  return { id: key, foods, words, why, source };
}

function tableOf(
  id: string,
  written: TablesFile["tables"][string],
  file: TablesFile,
): ProcessTable {
  const { bands, source, locator, reading, rows, notOf = [], ...rest } = written;
  const found = file.sources[source] ?? { publication: "unknown" };
  const located = { ...found, ...locator };
  return {
    id,
    ...rest,
    notOf: notOf.map((key) => neighborOf(key, file)),
    rows: rows.map((row): TableRow => {
      return { ...row, locator: { ...located, ...row.locator }, reading: row.reading ?? reading };
    }),
    bandEdgesFt: bands ? [...BAND_EDGES_FT[bands]] : [],
    source: located,
  };
}

/** Reads the file of tested process tables; see `recipes/tables.yaml` for its form. */
export function readTables(text: string, fileName: string): TablesRead {
  const read = readYaml(text, fileName, tablesSchema);
  if (!read.ok) return read;
  const file = read.value;
  const faults = Object.entries(file.tables).flatMap(([id, table]) => faultsOf(id, table, file));
  if (faults.length > 0) {
    const problems = faults.map(({ path, message }) => ({
      file: fileName,
      line: read.lineOf(path),
      message: `${path.join(" ")}: ${message}`,
    }));
    return { ok: false, problems };
  }
  const tables = Object.fromEntries(
    Object.entries(file.tables).map(([id, written]) => [id, tableOf(id, written, file)]),
  );
  const schedules = Object.fromEntries(
    Object.entries(file.schedules).map(([id, written]) => [id, scheduleOf(written)]),
  );
  const { formulas, top } = file;
  return { ok: true, tables: { tables, schedules, formulas, topFt: top } };
}
