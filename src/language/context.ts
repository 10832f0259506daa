import type { Library } from "../recipe/library.ts";

/** A stage by what it goes by. */
export type NamedStage = {
  id: string;
  title: string;
  kind: string;
  pot?: string;
  /** In a pot on the stove. */
  onStove?: boolean;
  /** Under way, or still to come; over where missing. */
  state?: "running" | "waiting";
  /** A process that runs by its boil, pressure, steam or temperature. */
  timed?: true;
};

/** A batch by what it goes by. */
export type NamedBatch = {
  id: string;
  recipe: string;
  variety?: string;
  title?: string;
  /** Other names of its recipe, its produce among them. */
  names?: readonly string[];
  /** What its lids are marked with, before the number of the jar: "P" for Provider. */
  mark?: string;
  stages?: readonly NamedStage[];
};

/** A load by what it goes by. */
export type NamedLoad = { id: string; canner: string; stages: readonly NamedStage[] };

/** What the understanding may know besides the words: the moment, the place and what is running. */
export type Context = {
  /** Epoch milliseconds. */
  nowMs: number;
  /** IANA zone in which clock times and dates are meant. */
  zone: string;
  recipes: readonly { id: string; title: string; names: readonly string[] }[];
  /** What foods are held against; without it a name is only that of a recipe. */
  library?: Library;
  running: readonly NamedBatch[];
  loads?: readonly NamedLoad[];
  timers: readonly { id: string; label: string; minutes?: number }[];
  /** All batches and loads that were ever begun, oldest first; the running ones where missing. */
  onRecord?: { batches: readonly NamedBatch[]; loads: readonly NamedLoad[] };
  /** Critical factors of what is running; `words` confirm one that only its recipe has. */
  factors?: readonly { id: string; words?: readonly string[] }[];
  /** The question that waits for an answer, if one does. */
  question?: OpenQuestion;
  /** The unit meant where a temperature is said without one; F where missing. */
  temperatureUnit?: "F" | "C";
  /** The unit meant where a gauge reading is said without one; psi where missing. */
  pressureUnit?: "psi" | "kPa";
};

/**
 * `choices` are the names as they were offered, and others for the same, for a question of kind
 * `choice`. One that `guards` safety takes no near match, and a guess answers it.
 */
export type OpenQuestion = {
  kind:
    | "yes-no"
    | "number"
    | "choice"
    | "altitude"
    | "jars"
    | "text"
    | "gauge-off"
    | "percent"
    | "minutes"
    | "inches";
  choices?: readonly string[];
  /** What it asks about: a critical factor, or its kind in the kitchen. */
  key?: string;
  guards?: true;
};
