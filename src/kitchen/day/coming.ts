/**
 * What is to be done now, with its reason, and what comes after it: one order for Hands, the key,
 * the answers and the gates.
 */
import { startByWordAt } from "../agenda.ts";
import { activeOwners, inCanner, isLoad, type Owner } from "../owners.ts";
import { heldForCanner } from "../settle.ts";
import { type ShelfItem, shelves } from "../shelves.ts";
import { hasRole, isOfCanner, rulesOf } from "../stages/kinds.ts";
import type { Batch, Load, StageRun, State } from "../state.ts";
import { MINUTE_MS } from "../time.ts";
import { courseBegin } from "./course.ts";
import { minutesLeft, minutesToHot, minutesToOut, wantedAt } from "./expected.ts";

/** Something that is still to begin, and when it is likely to; kitchen time, ms. */
type ToCome = { owner: Owner; run: StageRun; at: number };

/** Why something is to be done now. */
type Reason =
  | { is: "beside-canner"; load: Load; until: number }
  | { is: "wanted"; by: StageRun; at: number }
  | { is: "canner-waits" };

/** What wants hands, in the order in which to do it. */
export function handsNow(state: State, now: number): ShelfItem[] {
  return shelves(state, now).filter(({ shelf, owner }) => {
    return shelf === "hands" && (isLoad(owner) || owner.state !== "held");
  });
}

/** Why the first of what wants hands is the first; undefined where that goes without saying. */
export function reasonOf(state: State, item: ShelfItem, now: number): Reason | undefined {
  const { owner, run, offer } = item;
  if (isLoad(owner)) return undefined;
  if (offer === "begin") return wanted(state, owner, run, now);
  if (hasRole(run.spec, "filling")) {
    const others = handsNow(state, now).length > 1;
    return others ? { is: "canner-waits" } : undefined;
  }
  const load = inCanner(state).find(({ loadedAt, parts }) => {
    return loadedAt !== undefined && parts.every(({ batch }) => batch !== owner.id);
  });
  if (!load) return undefined;
  return { is: "beside-canner", load, until: now + minutesToOut(load, now) * MINUTE_MS };
}

function wanted(state: State, batch: Batch, run: StageRun, now: number): Reason | undefined {
  const by = batch.stages.find((one) => {
    return one.state === "waiting" && one.spec.after.some(({ stage }) => stage === run.id);
  });
  const at = wantedAt(state, batch, run, now);
  if (!by || at === undefined) return undefined;
  return at > now + run.spec.typicalMinutes * MINUTE_MS ? { is: "wanted", by, at } : undefined;
}

/** What is still to begin today, soonest first, without what a canner does by itself. */
export function toCome(state: State, now: number): ToCome[] {
  const list = activeOwners(state).flatMap((owner): ToCome[] => {
    if (isLoad(owner)) return nextOfLoad(owner, now);
    const batch = owner;
    if (batch.state !== "running") return [];
    const left = minutesLeft(batch, now);
    return batch.stages.flatMap((run) => {
      if (run.state !== "waiting" || isOfCanner(run.spec) || rulesOf(run.spec).ends === "date")
        return [];
      const at = beginsAt(state, batch, run, now, left);
      return Number.isFinite(at) ? [{ owner: batch, run, at }] : [];
    });
  });
  return list.sort((a, b) => a.at - b.at);
}

/** What hands do next at a canner. */
function nextOfLoad(load: Load, now: number): ToCome[] {
  if (load.loadedAt === undefined || load.unloadedAt !== undefined) return [];
  const next = load.stages.findIndex(({ state, spec }) => {
    return state === "waiting" && rulesOf(spec).shelf === "hands";
  });
  const run = load.stages[next];
  if (!run || rulesOf(run.spec).ofCanner === "after") return [];
  const before = { ...load, stages: load.stages.slice(0, next) };
  return [{ owner: load, run, at: now + minutesToOut(before, now) * MINUTE_MS }];
}

function beginsAt(
  state: State,
  batch: Batch,
  run: StageRun,
  now: number,
  left: (stage: string) => number,
): number {
  const planned = courseBegin(state, batch, run) ?? startByWordAt(state, batch, run, now);
  const before = Math.max(0, ...run.spec.after.map(({ stage }) => left(stage)));
  const held = hasRole(run.spec, "filling") || heldForCanner(state, batch, run, now);
  const hot = held && batch.option ? minutesToHot(state, batch, now) : 0;
  // What the gate holds back waits for the canner, whatever is planned.
  return Math.max(planned ?? now + before * MINUTE_MS, now + hot * MINUTE_MS);
}
