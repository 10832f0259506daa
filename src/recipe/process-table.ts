import type {
  FoodClass,
  GaugeKind,
  JarSize,
  Locator,
  Pack,
  ProcessOption,
  Provenance,
} from "./recipe.ts";

/**
 * The tested process tables as plain data, read from `recipes/tables.yaml` by `read-tables.ts`.
 * Minutes stand in the order of the altitude bands they were printed in.
 */

/** Jars that share one line of a table, and the line's minutes, one for each altitude band. */
export type TableRow = {
  jars: JarSize[];
  /** One number for each band; pressure and low-temperature rows have just one. */
  minutes: number[];
  /** Key of the pressure schedule, for pressure rows only. */
  schedule?: string;
  /** Where the row stands: what the table's source says, with what is particular to the row. */
  locator: Locator;
  reading: Provenance;
};

/**
 * A food that is close to a tested one but was not tested. It is known by `foods`, names of the
 * food table, or by `words` that turn a tested name into another food: dried beans are not snap
 * beans.
 */
export type Neighbor = {
  id: string;
  foods: string[];
  words: string[];
  /**
   * Said to whoever brings such food: what is wrong, what similar food was tested, what to do
   * instead.
   */
  why: string;
  source: string;
};

export type ProcessTable = {
  id: string;
  /** What was tested, in a few words. */
  food: string;
  /** Foods it was tested for, by name or kind as in `foods.ts`. */
  of: string[];
  /** Near neighbors it was not tested for, each with the reason. */
  notOf: Neighbor[];
  /** How the food is prepared, as words of which a recipe must have at least one: crushed. */
  says?: string[];
  /** True where it was tested for several foods together. */
  mixed?: boolean;
  /** The kinds of food the table was tested for. */
  classes: FoodClass[];
  method: Exclude<ProcessOption["method"], "steam">;
  packs: Pack[];
  headspaceIn: number;
  /** Highest altitude of each band but the last, feet. Empty where altitude changes nothing. */
  bandEdgesFt: number[];
  rows: TableRow[];
  /** Key of the tested formula that acid, salt and rests are compared with. */
  formula?: string;
  /** True where the recipe may be pasteurized at low temperature instead. */
  pasteurizes?: boolean;
  /** Where the table stands, except for rows that differ. */
  source: Locator;
};

/** Gauge pressure for each altitude band; null where the setting is not recommended. */
export type PressureBands = { edgesFt: number[]; psi: (number | null)[] };

/** The pressures of one setting, by gauge. A gauge that has no such setting is absent. */
export type PressureSchedule = Partial<Record<GaugeKind, PressureBands>>;

/** What a tested recipe holds: the measure for anyone's acid, salt, lime and resting times. */
export type TestedFormula = {
  /** Vegetables or fruit altogether, pounds. */
  produceLb: number;
  /** Vinegar of 5 percent, cups. */
  vinegarCups?: number;
  /** Bottled lemon or lime juice, cups. */
  citrusCups?: number;
  /** Water in the liquid that stays in the jar or crock, cups. */
  waterCups?: number;
  /** Canning salt, cups: what a ferment needs, or a pickle that is pasteurized. */
  saltCups?: number;
  /** Other produce it allows besides `produceLb`, pounds by the food's name. */
  besides?: Record<string, number>;
  /** The part of its produce that brings no acid, pounds: the peppers and onions of a salsa. */
  lowAcidLb?: number;
  /** Coolest and warmest a ferment may stand, degrees Fahrenheit. */
  fermentF?: { min: number; max: number };
  /** Tested resting and fermenting times by stage id, minutes. */
  rests?: Record<string, { minMinutes: number; maxMinutes: number }>;
};

export type ProcessTables = {
  tables: Record<string, ProcessTable>;
  schedules: Record<string, PressureSchedule>;
  formulas: Record<string, TestedFormula>;
  /** Highest altitude the last band holds to, feet. */
  topFt: { bands: number; dial: number; weighted: number };
};

/** A source in one line: publication, guide, edition, place, and what of it is from memory. */
export function sourceLine(source: Locator): string {
  const { publication, guide, section, table, page, memory } = source;
  const edition = source.edition && `${source.edition} edition`;
  const parts = [publication, guide, edition, section, table, page && `p. ${page}`];
  const line = parts.filter((part) => part !== undefined).join(", ");
  return memory ? `${line} (from memory: ${memory})` : line;
}

/** A row's source in one line; says how it was read, unless that was in the publication itself. */
export function rowSourceLine({ locator, reading }: Pick<TableRow, "locator" | "reading">): string {
  const line = sourceLine(locator);
  return reading === "copied" ? `${line} (read in a copy)` : line;
}

/** What is said along with the terms of a remembered row; undefined for any other. */
export function memoryNote({ reading }: { reading?: Provenance }): string | undefined {
  if (reading !== "remembered") return undefined;
  return "this time is from memory: compare it with your own guide before you can by it";
}
