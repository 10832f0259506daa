/**
 * The three shelves: what needs hands now, what is on the heat, what rests by itself; and what
 * the one wet-hands key would do.
 */

import { type StageClock, stageClock, startByWordAt } from "./agenda.ts";
import { courseBegin, courseStep } from "./day/course.ts";
import { nextFills } from "./jars/canner-room.ts";
import { ready } from "./jars/lots.ts";
import { activeOwners, inCanner, isLoad, type Owner } from "./owners.ts";
import { readyAt } from "./settle.ts";
import { hasRole, isOfCanner, rulesOf } from "./stages/kinds.ts";
import type { Batch, StageRun, State } from "./state.ts";
import { MINUTE_MS } from "./time.ts";
import { isLost } from "./unbroken-time.ts";

type Shelf = "hands" | "heat" | "rest";

export type ShelfItem = {
  shelf: Shelf;
  owner: Owner;
  run: StageRun;
  clock?: StageClock;
  /** What the key does: end the stage, or begin it; absent where only words will do. */
  offer?: "done" | "begin";
  /** Smaller comes first; of the same, what is to begin sooner by the course of the day. */
  order: number;
  at?: number;
};

export function shelves(state: State, now: number): ShelfItem[] {
  const items: ShelfItem[] = [];
  for (const owner of activeOwners(state)) {
    if (isLoad(owner)) items.push(...loadItems(state, owner, now));
    else if (owner.state !== "abandoned") items.push(...batchItems(state, owner, now));
  }
  const focus = state.focus;
  return items.sort((a, b) => {
    const byOrder = a.order - b.order || (a.at ?? 0) - (b.at ?? 0);
    if (byOrder !== 0) return byOrder;
    const mine = Number(b.owner.id === focus) - Number(a.owner.id === focus);
    return mine || (a.run.startedAt ?? now) - (b.run.startedAt ?? now);
  });
}

/** Hot jars first, then a lost boil, then plain work, then what could be begun. */
const ORDER = { lost: 0, hot: 1, work: 2, due: 3, couldBegin: 4, heat: 5, rest: 6 };

function loadItems(state: State, load: Owner, now: number): ShelfItem[] {
  const items: ShelfItem[] = [];
  for (const run of load.stages) {
    if (run.state !== "running") continue;
    const clock = stageClock(run);
    const lost = run.kept !== undefined && isLost(run.kept) && rulesOf(run.spec).condition !== null;
    const item = { owner: load, run, ...(clock ? { clock } : {}) };
    if (lost) {
      items.push({ ...item, shelf: "heat", order: ORDER.lost });
    } else if (rulesOf(run.spec).shelf === "hands") {
      const guarded = run.spec.step === "unload" || rulesOf(run.spec).guarded;
      items.push({ ...item, shelf: "hands", order: ORDER.hot, ...(guarded ? {} : offerDone) });
    } else if (rulesOf(run.spec).ends === "window") {
      items.push(windowItem(state, load, run, now, clock));
    } else {
      const warm = run.spec.step === "canner" ? offerDone : {};
      const shelf = rulesOf(run.spec).shelf;
      items.push({ ...item, shelf, order: shelf === "rest" ? ORDER.rest : ORDER.heat, ...warm });
    }
  }
  return items;
}

const offerDone = { offer: "done" as const };

function windowItem(
  state: State,
  owner: Owner,
  run: StageRun,
  now: number,
  clock: StageClock | undefined,
): ShelfItem {
  const due = clock !== undefined && now >= clock.dueAt;
  const item = { owner, run, ...(clock ? { clock } : {}) };
  if (!due) return { ...item, shelf: "rest", order: ORDER.rest };
  // What has rested long enough goes on when the course of the day has what follows it.
  const step = isLoad(owner) ? undefined : courseStep(state, owner, run);
  if (!step) return { ...item, shelf: "hands", order: ORDER.due, offer: "done" };
  return { ...item, shelf: "hands", order: ORDER.work, at: step.to, offer: "done" };
}

function batchItems(state: State, batch: Batch, now: number): ShelfItem[] {
  const items: ShelfItem[] = [];
  for (const run of batch.stages) {
    if (isOfCanner(run.spec)) continue;
    const rules = rulesOf(run.spec);
    const clock = stageClock(run);
    const at = courseBegin(state, batch, run);
    const item = {
      owner: batch,
      run,
      ...(clock ? { clock } : {}),
      ...(at === undefined ? {} : { at }),
    };
    if (run.state === "waiting") {
      const waits = run.spec.start === "word" && batch.state === "running";
      const ready = waits ? readyAt(state, batch, run, now) : undefined;
      if (ready === undefined || ready > now) continue;
      const soon = (startByWordAt(state, batch, run, now) ?? ready) <= now + 5 * MINUTE_MS;
      const order = !soon ? ORDER.rest : at === undefined ? ORDER.couldBegin : ORDER.work;
      items.push({ ...item, shelf: "hands", order, offer: "begin" });
    } else if (run.state === "running" && rules.ends !== "date") {
      const held = batch.state === "held";
      if (rules.shelf === "hands") {
        if (hasRole(run.spec, "filling") && waitsForCanner(state, batch)) continue;
        const hot = hasRole(run.spec, "filling") && at === undefined;
        const order = hot ? ORDER.hot : ORDER.work;
        items.push({ ...item, shelf: "hands", order, ...(held ? {} : offerDone) });
      } else if (rules.shelf === "rest") items.push(windowItem(state, batch, run, now, clock));
      else items.push({ ...item, shelf: "heat", order: ORDER.heat });
    }
  }
  return items;
}

/** Whether filled jars wait to be lifted in: filling goes on when the canner is free again. */
function waitsForCanner(state: State, batch: Batch): boolean {
  const full = ready(batch) > 0 && nextFills(state, batch).length === 0;
  const busy = inCanner(state).some((load) => load.parts.some((part) => part.batch === batch.id));
  return full || busy;
}

/** What Space or Enter on an empty line does now; undefined where only words will do. */
export function keyOffer(state: State, now: number): ShelfItem | undefined {
  const items = shelves(state, now);
  const top = items.find((item) => item.shelf === "hands") ?? items.find((item) => item.offer);
  return top?.offer ? top : undefined;
}
