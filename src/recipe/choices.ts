/** What a recipe may choose from: kinds of stages, jars, packs, methods, gauges. */

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

/** A step that every load goes through and no recipe lists, where others look for it. */
export type LoadStep =
  | "canner"
  | "load"
  | "come-up"
  | "pressurize"
  | "heat-off"
  | "settle"
  | "unload";

/** Jar sizes from smallest to largest; the order is used to find the next larger tested jar. */
export const JAR_SIZES = ["half-pint", "pint", "pint-and-half", "quart", "half-gallon"] as const;
export type JarSize = (typeof JAR_SIZES)[number];

export const PACKS = ["raw", "hot"] as const;
export type Pack = (typeof PACKS)[number];

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

export const GAUGE_KINDS = ["dial", "weighted"] as const;
export type GaugeKind = (typeof GAUGE_KINDS)[number];

/**
 * How a row of a table got here: `read` in the publication itself, `copied` from someone's copy of
 * it, or `remembered`, at least in part.
 */
export const PROVENANCES = ["read", "copied", "remembered"] as const;
export type Provenance = (typeof PROVENANCES)[number];
