import type { Kinds } from "./kind-in-recipe.ts";
import { JAR_SIZES, type Recipe, type Stage } from "./recipe.ts";

/**
 * How the parts of a recipe must fit together: ids are unique, stages follow stages that exist and
 * never themselves, and a recipe with a canner process has the stages a canner load needs.
 */

type Fault = { path: readonly (string | number)[]; message: string };

/** Removes links that lead nowhere further, again and again until none is left. */
function peel(links: Map<string, Set<string>>): Map<string, Set<string>> {
  const left = new Map([...links].map(([id, to]) => [id, new Set(to)]));
  let moved = true;
  while (moved) {
    moved = false;
    for (const [id, to] of left) {
      for (const other of to) if (!left.has(other)) to.delete(other);
      if (to.size === 0) moved = left.delete(id) || moved;
    }
  }
  return left;
}

/** Ids of stages that, directly or through others, come after themselves. */
function cyclic(stages: Stage[]): string[] {
  const blocked = peel(new Map(stages.map((s) => [s.id, new Set(s.after.map((a) => a.stage))])));
  const followers = new Map([...blocked.keys()].map((id) => [id, new Set<string>()]));
  for (const [id, after] of blocked) for (const before of after) followers.get(before)?.add(id);
  return [...peel(followers).keys()];
}

function stageFaults(recipe: Recipe, kinds: Kinds): Fault[] {
  const faults: Fault[] = [];
  const ids = new Set<string>();
  const all = new Set(recipe.stages.map((s) => s.id));
  recipe.stages.forEach((stage, index) => {
    const path = ["stages", index];
    if (ids.has(stage.id)) faults.push({ path, message: `the id ${stage.id} is used twice` });
    ids.add(stage.id);
    for (const after of stage.after) {
      if (!all.has(after.stage)) {
        faults.push({ path: [...path, "after"], message: `no stage is called ${after.stage}` });
      }
      const { atLeastMinutes: low = 0, atMostMinutes: high = Number.POSITIVE_INFINITY } = after;
      if (low > high) faults.push({ path: [...path, "after"], message: "atLeast exceeds atMost" });
    }
    if (stage.say === "") faults.push({ path, message: "`say` is missing: what is said here?" });
    faults.push(...lengthFaults(stage, path, kinds));
  });
  const round = cyclic(recipe.stages);
  if (round.length > 0) {
    const index = recipe.stages.findIndex((s) => s.id === round[0]);
    const message = `comes after itself, by way of ${round.join(", ")}`;
    faults.push({ path: ["stages", index, "after"], message });
  }
  return faults;
}

function lengthFaults(stage: Stage, path: Fault["path"], kinds: Kinds): Fault[] {
  const { length } = kinds[stage.kind];
  const faults: Fault[] = [];
  if (length === "written" && stage.typicalMinutes === 0) {
    faults.push({ path, message: "how long does it take? `typical: 20 min` is missing" });
  }
  if (length === "to-its-sign" && (!stage.heat || stage.typicalMinutes === 0)) {
    faults.push({ path, message: `a ${stage.kind} stage needs \`until\` and \`typical\`` });
  }
  const { window, typicalMinutes } = stage;
  if (window && (typicalMinutes < window.minMinutes || typicalMinutes > window.maxMinutes)) {
    faults.push({ path: [...path, "typical"], message: "lies outside the stage's own window" });
  }
  const range = stage.temperatureF;
  if (range && range.min > range.max) {
    faults.push({ path: [...path, "temperatureF"], message: "min is above max" });
  }
  return faults;
}

/** A canner load needs filled jars before it, and cooling and a seal check after it. */
function cannerFaults(recipe: Recipe, kinds: Kinds): Fault[] {
  const index = recipe.stages.findIndex((s) => kinds[s.kind].role === "treatment");
  if (recipe.processes.length === 0) {
    if (index < 0) return [];
    return [
      { path: ["stages", index], message: "a process stage, but `processes` names no table" },
    ];
  }
  const faults: Fault[] = [];
  if (recipe.jars.length === 0) faults.push({ path: ["processes"], message: "`jars` is missing" });
  if (recipe.headspaceIn === undefined) {
    faults.push({ path: ["processes"], message: "`headspaceIn` is missing" });
  }
  for (const [kind, { onceForCanner }] of Object.entries(kinds)) {
    if (!onceForCanner) continue;
    const count = recipe.stages.filter((s) => s.kind === kind).length;
    if (count === 1) continue;
    const message = `a canner recipe has one ${kind} stage; this one has ${count}`;
    faults.push({ path: ["stages"], message });
  }
  return faults;
}

/**
 * Every fault in how a recipe fits together, with the path of the part it is about.
 * @param longestMinutes no stage, with its share for a hundred pounds, may be longer.
 */
export function structureFaults(recipe: Recipe, kinds: Kinds, longestMinutes: number): Fault[] {
  const faults = [...stageFaults(recipe, kinds), ...cannerFaults(recipe, kinds)];
  recipe.stages.forEach((stage, index) => {
    if (stage.typicalMinutes + 100 * (stage.minutesPerLb ?? 0) > longestMinutes) {
      faults.push({ path: ["stages", index], message: "takes longer than ten years" });
    }
  });
  const seen = new Set<string>();
  recipe.ingredients.forEach((ingredient, index) => {
    const path = ["ingredients", index];
    if (seen.has(ingredient.id)) {
      faults.push({ path, message: `the id ${ingredient.id} is used twice` });
    }
    seen.add(ingredient.id);
    if (!ingredient.amount && !ingredient.perJar) {
      faults.push({ path, message: "how much? `amount` or `perJar` is missing" });
    }
  });
  const order = recipe.jars.map((jar) => JAR_SIZES.indexOf(jar));
  if (order.some((at, i) => i > 0 && at <= (order[i - 1] ?? -1))) {
    faults.push({ path: ["jars"], message: "jar sizes go from smallest to largest, each once" });
  }
  return faults;
}
