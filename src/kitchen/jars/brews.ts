/**
 * Brews: potfuls of what is poured over the produce. A batch makes another when one runs out; each
 * has a boil and a strength of its own, and a jar knows which it holds.
 */
import type { CriticalFactor } from "../../recipe/recipe.ts";
import { hasRole, rulesOf } from "../stages/kinds.ts";
import type { Batch, StageRun } from "../state.ts";
import type { Jar } from "./jar.ts";

/** The number of the brew that is poured now; the first is 0. */
export function brewNow(batch: Batch): number {
  return batch.poured.length;
}

/** The stages in which the brew that is poured now is made. */
export function brewStages(batch: Batch): StageRun[] {
  const { ingredients, stages } = batch.recipe;
  const into = new Set(ingredients.flatMap((one) => one.into ?? []));
  const fill = stages.findIndex((stage) => hasRole(stage, "filling"));
  const before = new Set(stages.slice(0, fill).map(({ id }) => id));
  return batch.stages.filter(({ spec }) => {
    if (!before.has(spec.id) || rulesOf(spec).thermometer !== "pot") return false;
    return into.has(spec.pot ?? spec.id) || into.has(spec.id) || spec.start === "word";
  });
}

/** Whether a factor is one of the brew's, as its strength is, and asked of each anew. */
export function isOfBrew(batch: Batch, factor: Pick<CriticalFactor, "id">): boolean {
  return brewStages(batch).some(({ spec }) => spec.asks.includes(factor.id));
}

/** Whether a factor of one brew was denied: it is not as strong as it should be. */
export function isWeak(batch: Batch, brew: number): boolean {
  return batch.confirmed.some(({ factor, held, round }) => {
    return !held && round === brew && isOfBrew(batch, { id: factor });
  });
}

/** Whether what is known of one brew touches a jar; what has no brew touches every jar. */
export function holds(jar: Jar, brew: number | undefined): boolean {
  return brew === undefined || (brew <= jar.brew && brew >= (jar.brewFrom ?? jar.brew));
}

/**
 * Writes down which brew a jar is said to hold. Of those it may hold by what was counted, it is
 * this one; one that it could not hold by that is in doubt along with them.
 */
export function tellBrew(jar: Jar, brew: number): void {
  const from = jar.brewFrom ?? jar.brew;
  if (brew >= from && brew <= jar.brew) {
    jar.brew = brew;
    delete jar.brewFrom;
  } else {
    jar.brewFrom = Math.min(from, brew);
    jar.brew = Math.max(jar.brew, brew);
  }
}

/** Whether another brew can be made: one was begun, and the batch is not over. */
export function mayBrew(batch: Batch): boolean {
  const live = batch.state === "running" || batch.state === "held";
  return live && brewStages(batch).some((run) => run.state !== "waiting");
}

/** Whether a brew after the first was begun, and no jar holds it. */
export function isUnpoured(batch: Batch): boolean {
  const now = brewNow(batch);
  return now > 0 && !batch.lots.some((lot) => lot.jars.some((jar) => holds(jar, now)));
}

/** A stage of a brew after the first that is not done: nothing can be poured yet. */
export function brewing(batch: Batch): StageRun | undefined {
  if (brewNow(batch) === 0) return undefined;
  return brewStages(batch).find((run) => run.state === "waiting" || run.state === "running");
}
