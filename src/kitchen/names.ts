/** What things are called aloud, and which thing a spoken name means. */

import { activeOwners, isLoad, type Owner } from "./owners.ts";
import { rulesOf } from "./stages/kinds.ts";
import type { Batch, Load, StageRun, State, Timer } from "./state.ts";

/** A sentence begins with a capital. */
/** What a stage's vessel goes by: its pot, else the stage itself. */
export function potOf({ spec }: StageRun): string {
  return spec.pot ?? spec.title;
}

export function upper(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** "the Provider dilled green beans"; the variety alone tells lots of one recipe apart. */
export function batchName(batch: Batch): string {
  const title = batch.recipe.title.charAt(0).toLowerCase() + batch.recipe.title.slice(1);
  return batch.lot.variety ? `the ${batch.lot.variety} ${title}` : `the ${title}`;
}

export function loadName(state: State, load: Load): string {
  const ids = load.parts.length > 0 ? load.parts.map((part) => part.batch) : [load.batch];
  const names = ids.flatMap((id) => (state.batches[id] ? [batchName(state.batches[id])] : []));
  const canner = state.kitchen.canners.length > 1 ? `${load.canner} with ` : "";
  return `${canner}${names.join(" and ")}`;
}

export function ownerName(state: State, owner: Owner): string {
  return isLoad(owner) ? loadName(state, owner) : batchName(owner);
}

export function timerName(timer: Timer): string {
  return timer.label ? `the ${timer.label} timer` : `the ${timer.minutes} minute timer`;
}

/** "P" for Provider, longer where another batch already marks its lids so. */
export function lidMark(state: State, variety: string | null, title: string): string {
  const letters = (variety ?? title).replace(/[^A-Za-z]/g, "").toUpperCase() || "J";
  const taken = new Set(activeOwners(state).map((owner) => (isLoad(owner) ? "" : owner.mark)));
  for (let length = 1; length <= letters.length; length++) {
    const mark = letters.slice(0, length);
    if (!taken.has(mark)) return mark;
  }
  return `${letters.charAt(0)}${taken.size + 1}`;
}

/** Something a spoken target may mean: a batch or load, one stage of it, or a timer. */
export type Found = { owner: Owner; run?: StageRun } | { timer: Timer };

const SMALL_WORDS = new Set(["the", "a", "an", "my", "of", "for", "batch", "lot", "timer", "in"]);

function wordsOf(text: string): string[] {
  return text
    .toLowerCase()
    .replace(/[^a-z0-9 ]+/g, " ")
    .split(" ")
    .filter((word) => word && !SMALL_WORDS.has(word))
    .map((word) => word.replace(/(?<=[a-z]{3})(ies)$/, "y").replace(/(?<=[a-z]{3})(es|s)$/, ""));
}

/** How much of what was said a name covers, 0 to 1; every word said must be in it. */
function covers(said: string[], name: string): number {
  const words = new Set(wordsOf(name));
  if (said.length === 0 || words.size === 0) return 0;
  return said.every((word) => words.has(word))
    ? said.length / Math.max(said.length, words.size)
    : 0;
}

function bestOf(said: string[], names: (string | null | undefined)[]): number {
  return Math.max(0, ...names.map((name) => (name ? covers(said, name) : 0)));
}

function batchNames(batch: Batch): (string | null)[] {
  const { recipe, lot } = batch;
  const names = [recipe.title, ...recipe.names, recipe.yield.produce];
  const withLot = lot.variety ? names.map((name) => `${lot.variety} ${name}`) : [];
  return [batch.id, lot.variety, ...names, ...withLot];
}

/** Whether words name this stage: by its own names, with or without those of its batch. */
export function meansStage(target: string, batch: Batch, run: StageRun): boolean {
  const said = wordsOf(target);
  const own = new Set([run.id, run.spec.title, run.spec.pot ?? ""].flatMap(wordsOf));
  const all = new Set([...own, ...batchNames(batch).flatMap((name) => wordsOf(name ?? ""))]);
  return said.some((word) => own.has(word)) && said.every((word) => all.has(word));
}

const POT_WORDS = new Set(["pot", "stockpot", "stock", "big", "large"]);
const CANNER_WORDS = new Set(
  [...POT_WORDS].concat("water", "bath", "waterbath", "canning", "canner", "pressure", "steam"),
);

/** Whether words name only the vessel a stage may be in: "the water bath", "the big pot". */
export function meansVessel(target: string, of: { owner: Owner; run: StageRun }): boolean {
  const said = wordsOf(target);
  if (said.length === 0) return false;
  if (isLoad(of.owner)) return said.every((word) => CANNER_WORDS.has(word));
  return rulesOf(of.run.spec).thermometer === "pot" && said.every((word) => POT_WORDS.has(word));
}

/**
 * What running things a target may mean, best first; all that match equally well, so that the
 * caller can ask. Finished batches are found only where `all` is set.
 */
export function find(state: State, target: string, all = false): Found[] {
  const said = wordsOf(target);
  const scored: { score: number; found: Found }[] = [];
  const owners = all
    ? [...Object.values(state.batches), ...Object.values(state.loads)]
    : activeOwners(state);
  for (const owner of owners) {
    if (isLoad(owner)) {
      const score = bestOf(said, [
        ...[owner.canner, `${owner.canner} canner`, owner.id],
        ...["canner load jars", "canner"],
      ]);
      if (score > 0) scored.push({ score, found: { owner } });
      for (const run of owner.stages) {
        const own = run.state === "running" ? covers(said, run.spec.title) : 0;
        if (own === 1) scored.push({ score: 0.99, found: { owner, run } });
      }
    } else {
      const score = bestOf(said, batchNames(owner));
      if (score > 0) scored.push({ score, found: { owner } });
      for (const run of owner.stages) {
        if (run.state !== "running" && run.state !== "waiting") continue;
        const own = bestOf(said, [run.id, run.spec.title, run.spec.pot, run.spec.kind]);
        const bias = run.state === "running" ? 0.99 : 0.5;
        if (own > 0) scored.push({ score: own * bias, found: { owner, run } });
      }
    }
  }
  for (const timer of Object.values(state.timers)) {
    if (timer.state !== "running" && timer.state !== "rang") continue;
    const score = bestOf(said, [timer.label, timer.id, `${timer.minutes} minute`]);
    if (score > 0) scored.push({ score, found: { timer } });
  }
  const best = Math.max(0, ...scored.map((one) => one.score));
  return scored.filter((one) => one.score === best).map((one) => one.found);
}

/** The batches a target names: "the Provider and the Blue Lake" is two, "both" is all of them. */
export function findBatches(state: State, target: string, all = false): Batch[] {
  const found = new Map<string, Batch>();
  for (const part of target.split(/\band\b|,|\+/)) {
    for (const one of find(state, part, all)) {
      if ("owner" in one && !isLoad(one.owner)) found.set(one.owner.id, one.owner);
    }
  }
  return [...found.values()];
}
