/**
 * A recipe as the kitchen uses it: plain data, read from one YAML file by `read-recipe.ts`.
 * Quantities are kept as said in the file and as numbers in the unit their name ends in.
 */

export const STAGE_KINDS = [
  "hands-on",
  "rest",
  "heat",
  "fill",
  "vent",
  "process",
  "depressurize",
  "cool",
  "seal-check",
  "ferment",
  "dry",
  "cure",
  "store",
] as const;
export type StageKind = (typeof STAGE_KINDS)[number];

/** Jar sizes from smallest to largest; the order is used to find the next larger tested jar. */
export const JAR_SIZES = ["half-pint", "pint", "pint-and-half", "quart", "half-gallon"] as const;
export type JarSize = (typeof JAR_SIZES)[number];

export type Pack = "raw" | "hot";

/** How a batch is kept. Canner methods come first; the rest have no canner process. */
export const METHODS = [
  "boiling-water",
  "steam",
  "pressure",
  "low-temperature",
  "refrigerator",
  "ferment",
  "seed",
  "dry",
] as const;
export type Method = (typeof METHODS)[number];

export type GaugeKind = "dial" | "weighted";

/** Where a figure was published; `memory` names what of it was not read again. */
export type Source = {
  publication: string;
  guide?: string;
  edition?: string;
  memory?: string;
};

/**
 * How a row of a table came here: `read` in the publication itself, `copied` from another's copy
 * of it, or `remembered`, some of it at least.
 */
export const READINGS = ["read", "copied", "remembered"] as const;
export type Reading = (typeof READINGS)[number];

/** Where a row of a table stands. `memory` names what of it is remembered. */
export type Locator = Source & {
  section?: string;
  table?: string;
  page?: string;
  /** What another edition or copy prints instead. */
  disagrees?: string;
};

/** What a food is to the safety rules. */
export type FoodClass = "acidified" | "acid" | "low-acid" | "tomato" | "jam" | "ferment" | "seed";

export type IngredientRole =
  | "produce"
  | "acid"
  | "salt"
  | "sugar"
  | "water"
  | "spice"
  | "lime"
  | "thickener"
  | "fat"
  | "other";

export type Ingredient = {
  id: string;
  name: string;
  /** As written: `4 cups`, `6 lb`. Absent where the amount is only given per jar. */
  amount?: string;
  /** As written, for each jar of a size: `{ pint: "1 tbsp" }`. */
  perJar?: Partial<Record<JarSize, string>>;
  role: IngredientRole;
  optional?: boolean;
  /** Acetic acid, percent weight by volume, for vinegar. */
  strengthPercent?: number;
  /** Which container or soak the amount belongs to, where there are several. */
  into?: string;
  /** The pack it belongs to; absent, to all. */
  pack?: Pack;
};

/** After which stage, and how soon or late; minutes count from that stage's end. */
export type After = { stage: string; atLeastMinutes?: number; atMostMinutes?: number };

export type Stage = {
  id: string;
  kind: StageKind;
  /** Two or three words for shelves and logs: `salt and chill`. */
  title: string;
  /** What is said when the stage's turn comes: one or two short sentences. */
  say: string;
  /** Stages that must be complete before; an absent list means the stage written above. */
  after: After[];
  /** `word`: waits to be started (a syrup that may cook at any time during a long rest). */
  start: "auto" | "word";
  /** Usual length for a batch of the recipe's own size, and what each pound beyond it adds. */
  typicalMinutes: number;
  minutesPerLb?: number;
  /** Shortest and longest time, where the stage has a window. */
  window?: { minMinutes: number; maxMinutes: number };
  /** What a heat stage heats up to, and how long it is held there. */
  heat?: {
    until: "boil" | "simmer" | "jelling-point" | { temperatureF: number };
    holdMinutes: number;
  };
  /** Which pot or place, as people name it: `brine`, `syrup`, `crock`. */
  pot?: string;
  /** Room or liquid temperature a long stage wants; outside it is a quality matter. */
  temperatureF?: { min: number; max: number };
  /** Recurring checks of a long stage: a cron expression and what to say. */
  checks?: { cron: string; say: string }[];
  /** Ids of the critical factors asked here. */
  asks: string[];
  /** Cautions said when the stage begins. */
  cautions: string[];
  /** What the stage occupies, for planning. */
  uses: ("burner" | "refrigerator" | "pot")[];
  /** True where the work needs hands throughout; a rest or a pot coming to a boil does not. */
  attended: boolean;
  /** True for a stage that may be left out by a word (an optional soak). */
  optional?: boolean;
  /** Packs and methods the stage belongs to; absent, to all. See `recipeFor`. */
  onlyFor?: { packs?: Pack[]; methods?: Method[] };
  /** Minutes somebody wrote into a process stage: never used, and found by the check. */
  writtenMinutes?: number;
};

/** Something that must be right for the jar to be safe, and how it is asked. */
export type CriticalFactor = {
  id: string;
  /** A yes-or-no question whose yes confirms it. */
  ask: string;
  /** Words in which a report already confirms it ("five percent", "new lids"). */
  words: string[];
  /** Where it matters; a sterile jar only where the process is shorter than so many minutes. */
  onlyFor?: { methods?: Method[]; packs?: Pack[]; processUnderMinutes?: number };
  source: string;
};

/** A way of processing this recipe: a method and the table that gives its times. */
export type ProcessOption = {
  method: "boiling-water" | "steam" | "pressure" | "low-temperature";
  pack: Pack;
  /** Key of the table in `recipes/tables.yaml`. */
  table: string;
  /** Minutes somebody wrote here instead of a table: never used, and found by the check. */
  writtenMinutes?: number;
};

export type Recipe = {
  id: string;
  title: string;
  /** Everyday names, lower case. */
  names: string[];
  class: FoodClass;
  source: Source;
  /** Disagreements between sources, what comes from memory, variants. */
  note?: string;
  /** What it is made from, and how much of it makes how many jars. */
  yield: {
    produce: string;
    weightLb: number;
    jars?: { count: number; size: JarSize };
    /** Produce for a canner load, as published: 7 quarts, 9 pints. */
    loads?: { count: number; size: JarSize; weightLb: number }[];
  };
  /** `proportional`, or `one-batch` where a larger pot would not set or ferment right. */
  scaling: "proportional" | "one-batch";
  /** Inches; absent where nothing is put in jars. */
  headspaceIn?: number;
  /** Jar sizes it may be put in, smallest first. */
  jars: JarSize[];
  ingredients: Ingredient[];
  critical: CriticalFactor[];
  /** The first is the default. Empty: no shelf-stable process. */
  processes: ProcessOption[];
  /** How it is kept where it has no canner process, or none is chosen. */
  keptAs: "refrigerator" | "ferment" | "seed" | "dry";
  stages: Stage[];
  /** `tested` names a published source; anything else is a refrigerator food. */
  tested: boolean;
  /** The dangers for which the library keeps a person's own recipe off the shelf, untested. */
  heldBack?: string;
};

/** The tested process as looked up for one load: everything the log must keep of it. */
export type ProcessTerms = {
  method: ProcessOption["method"];
  pack: Pack;
  jar: JarSize;
  /** The tested jar whose time is used: the same, or the next larger one. */
  jarTested: JarSize;
  minutes: number;
  /** Gauge pressure, pounds per square inch; null where the method has none. */
  pressurePsi: number | null;
  gauge: GaugeKind | null;
  altitudeFt: number;
  /** How far the altitude may be off, feet; missing where it was taken as exact. */
  altitudeUncertaintyFt?: number;
  /** The altitude band the row is for, as printed: `1,001-6,000 ft`. */
  band: string;
  table: string;
  /** The locator and the reading in one line of words. */
  source: string;
  /** Where the row stands, and how it was read. Missing in journals from before they were kept. */
  locator?: Locator;
  reading?: Reading;
  /** True where the process is under ten minutes and jars are to be sterile. */
  sterileJars: boolean;
  /** Water over the jar tops, inches; 0 for steam and pressure. */
  coverIn: number;
  /** Canner water when jars go in, degrees Fahrenheit. */
  waterStartF: number;
  /** Said beside the terms where several settings were tested and none was picked. */
  note?: string;
};
