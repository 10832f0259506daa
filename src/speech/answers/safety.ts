/** "Is it safe", "are you sure": from what is running where that tells, else from the rules. */
import type { CommandOf } from "../../kitchen/command.ts";
import { batchName } from "../../kitchen/spoken-names.ts";
import type { State } from "../../kitchen/state.ts";
import type { ProcessTables } from "../../recipe/process-table.ts";
import { withCommas } from "../../reckon/reckoned.ts";
import { SAFETY } from "../texts/fears.ts";
import { ASK_EXTENSION, withSource } from "../texts/own-text.ts";
import { batchInMind } from "./in-mind.ts";
import type { Known } from "./known.ts";

/** The tested time of what is being made, with where it stands. */
function processTime(state: State): string | undefined {
  const batch = batchInMind(state, undefined);
  const terms = batch?.terms;
  if (!batch || !terms) return undefined;
  const { minutes, jar, altitudeFt, pressurePsi, source } = terms;
  const pounds = pressurePsi ? ` at ${pressurePsi} pounds` : "";
  const feet = withCommas(altitudeFt);
  const where = `in ${jar}s at ${feet} feet`;
  return `Yes: ${minutes} minutes${pounds} for ${batchName(batch)}, ${where}. By ${source}.`;
}

/** A stem that is the same in singular and plural. */
function stem(word: string): string {
  return word.replace(/(ies|y|es|s)$/, "");
}

/** A food that no process was tested for, and why: of several named, that of the longest name. */
function untestedFood(about: string, { tables }: ProcessTables): string | undefined {
  const said = new Set(about.split(/[^a-z]+/).map(stem));
  const all = Object.values(tables);
  const tested = new Set(all.flatMap((table) => table.of));
  const named = all
    .flatMap(({ notOf }) => notOf.flatMap((one) => one.foods.map((food) => ({ food, ...one }))))
    .filter(({ food }) => !tested.has(food))
    .filter(({ food }) => food.split(" ").every((word) => said.has(stem(word))))
    .toSorted((a, b) => b.food.length - a.food.length)[0];
  return named && `${named.why} By ${named.source}.`;
}

export function safetyAnswer(
  state: State,
  { slots: { about = "", topic } }: CommandOf<"is-safe">,
  _now: number,
  { library }: Known,
): string {
  if (topic === undefined) {
    const untested = untestedFood(about.toLowerCase(), library.tables);
    return untested ?? `${ASK_EXTENSION} Until you know, don't eat it.`;
  }
  const known = topic === "process-time" ? processTime(state) : undefined;
  return known ?? withSource(SAFETY[topic]);
}
