import type { Ref } from "../kitchen/command.ts";
import type { OwnWords } from "../kitchen/own-words.ts";
import { rulesOf } from "../kitchen/stages/kinds.ts";
import type { StageRules } from "../kitchen/stages/rules.ts";
import type { Library } from "../recipe/library.ts";
import type { StageKind } from "../recipe/recipe.ts";

/** A stage, with the names it goes by. */
export type NamedStage = {
  id: string;
  title: string;
  kind: StageKind;
  pot?: string;
  /** In a pot on the stove. */
  onStove?: boolean;
  /** Under way, or still to come; over where missing. */
  state?: "running" | "waiting";
  /** What its recipe says of it, in lower case, while it is under way. */
  instructions?: string;
  /** A process timed by its boil, pressure, steam or temperature. */
  timed?: true;
  /** Looked at from time to time. */
  checked?: true;
};

/** A batch, with the names it goes by. */
export type NamedBatch = {
  id: string;
  /** One of several lots that share its pots. */
  lot?: string;
  recipe: string;
  variety?: string;
  title?: string;
  /** Other names of its recipe, its produce among them. */
  names?: readonly string[];
  /** What its lids are marked with, before the jar's number: "P" for Provider. */
  mark?: string;
  /** Its jars by the numbers on their lids, and their ids. */
  jars?: readonly { number: number; id: string }[];
  /** When it was begun, epoch ms. */
  begunMs?: number;
  stages?: readonly NamedStage[];
  /** The batch goes on without it. */
  givenUp?: true;
};

/** A load, with the names it goes by. */
export type NamedLoad = {
  id: string;
  canner: string;
  stages: readonly NamedStage[];
  /** Its jars are in the canner, though between two of its stages none may run. */
  inside?: boolean;
};

/** What is known besides the words: the moment, the place and what is running. */
export type Context = {
  /** Epoch milliseconds. */
  nowMs: number;
  /** IANA zone in which clock times and dates are meant. */
  zone: string;
  recipes: readonly { id: string; title: string; names: readonly string[] }[];
  /** What foods are checked against; without it, a name can only be a recipe's. */
  library?: Library;
  running: readonly NamedBatch[];
  loads?: readonly NamedLoad[];
  timers: readonly { id: string; label: string; minutes?: number }[];
  /** All batches and loads ever begun, oldest first; without it, the running ones. */
  onRecord?: { batches: readonly NamedBatch[]; loads: readonly NamedLoad[] };
  /** Critical factors of what is running; `words` confirm a factor that only its recipe has. */
  factors?: readonly { id: string; words?: readonly string[] }[];
  /** Jars that the sentence names by what is on them, by the numbers that stand for them in it. */
  jarsSaid?: ReadonlyMap<number, { refs: readonly Ref[] }>;
  /** What words of this person were found to mean. */
  ownWords?: readonly OwnWords[];
  /** The question that waits for an answer, if there is one. */
  question?: OpenQuestion;
  /** The unit meant where a temperature is said without one; F where missing. */
  temperatureUnit?: "F" | "C";
  /** The unit meant where a gauge reading is said without one; psi where missing. */
  pressureUnit?: "psi" | "kPa";
};

/**
 * For a question of kind `choice`, `choices` are the names as offered and other names for the same.
 * One that `guards` safety takes no near match, but a guess counts as an answer.
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
    | "inches"
    | "holds";
  choices?: readonly string[];
  /** Those of two choices that say that all is as it should be. */
  right?: readonly string[];
  /** What it asks about: a critical factor, or its kind in the kitchen. */
  key?: string;
  guards?: true;
  /** It may be left for later. */
  mayWait?: true;
  /** A bare number is in metric units. */
  metric?: true;
};

/** Whether an answer is waited for before anything else; a question of set-up can wait. */
export function isWaitedFor({ question }: Pick<Context, "question">): boolean {
  return question !== undefined && question.mayWait !== true;
}

/** The stages under way of batches or loads. */
export function underWay(owners: readonly { stages?: readonly NamedStage[] }[]): NamedStage[] {
  return owners.flatMap(({ stages = [] }) => stages.filter(({ state }) => state === "running"));
}

/** Whether a stage whose kind is so is under way in one of these batches or loads. */
export function runs(
  owners: readonly { stages?: readonly NamedStage[] }[],
  isSo: (rules: StageRules) => boolean,
): boolean {
  return underWay(owners).some((stage) => isSo(rulesOf(stage)));
}
