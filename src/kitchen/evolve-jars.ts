/** Events of jars and loads: filled, loaded, lifted out, sealed or not, and what became of them. */

import type { KitchenEvent } from "./events.ts";
import { markLate } from "./evolve-batch.ts";
import type { Handlers } from "./handler.ts";
import { largestLoad, unaccounted } from "./jars.ts";
import { lose } from "./kept.ts";
import {
  cannerStages,
  LOW_TEMPERATURE_READ_MINUTES,
  STILL_HOT_MINUTES,
} from "./loads/canner-stages.ts";
import { raiseTerms } from "./loads/raise-terms.ts";
import { hasBegun, isLoad, ownerOf, runOf, runOfKind } from "./owners.ts";
import { quiet } from "./settle.ts";
import { begin, finish, isOver, newRun, reopen, skip } from "./stage-run.ts";
import type { Batch, Load, LoadPart, State } from "./state.ts";
import { MINUTE_MS } from "./time.ts";

type JarEvents =
  | "load-opened"
  | "load-terms"
  | "jars-filled"
  | "all-filled"
  | "set-aside"
  | "jar-broken"
  | "loaded"
  | "unloaded"
  | "sealed"
  | "seal-failed"
  | "disposed";

function loadRuns(
  batch: Batch,
  terms: NonNullable<Load["terms"]>,
  gauge: Load["gauge"],
  hot: boolean,
): Load["stages"] {
  return cannerStages(terms, batch.recipe, gauge, hot).map((stage) =>
    newRun(
      stage,
      stage.kind === "process" ? terms.minutes : stage.kind === "vent" ? 10 : undefined,
      terms.method === "low-temperature" && stage.kind === "process"
        ? LOW_TEMPERATURE_READ_MINUTES
        : undefined,
    ),
  );
}

/** Whether a canner had jars lifted out of it so lately that it is still hot. */
function isHot(state: State, canner: string, at: number): boolean {
  return Object.values(state.loads).some((load) => {
    const since = at - (load.unloadedAt ?? Number.NEGATIVE_INFINITY);
    return load.canner === canner && since >= 0 && since <= STILL_HOT_MINUTES * MINUTE_MS;
  });
}

/** Jars of a batch that have been in a canner, or are in one. */
export function loadedJars(state: State, batch: Batch): number {
  return batch.loads.reduce((sum, id) => {
    const parts = state.loads[id]?.parts ?? [];
    return (
      sum + parts.reduce((n, part) => n + (part.batch === batch.id ? part.jars - part.again : 0), 0)
    );
  }, 0);
}

function recount(state: State, batch: Batch): void {
  batch.filled = loadedJars(state, batch) + batch.ready + batch.setAside + batch.brokenBefore;
}

export const JAR_HANDLERS: Handlers<JarEvents> = {
  "load-opened"(state, event) {
    const batch = state.batches[event.batch];
    if (!batch || batch.state === "abandoned") return false;
    batch.terms = event.terms;
    state.loads[event.load] = {
      id: event.load,
      canner: event.canner,
      batch: event.batch,
      terms: event.terms,
      gauge: event.gauge,
      openedAt: event.t,
      state: "running",
      stages: loadRuns(batch, event.terms, event.gauge, isHot(state, event.canner, event.t)),
      parts: [],
      early: false,
      covered: null,
      uncoveredTimes: 0,
      waterLow: [],
      readings: [],
      disposed: [],
      gaps: [],
      late: [],
    };
    state.active.push(event.load);
    return true;
  },
  "load-terms"(state, event) {
    const load = state.loads[event.load];
    const batch = load && state.batches[load.batch];
    if (!load || !batch) return false;
    const begun = hasBegun(load);
    if (begun && !event.raised) return false;
    const hot = isHot(state, load.canner, load.openedAt);
    const stages = loadRuns(batch, event.terms, event.gauge, hot);
    batch.terms = event.terms;
    if (begun) {
      raiseTerms(state, load, event, stages);
      return true;
    }
    load.gauge = event.gauge;
    load.terms = event.terms;
    // What was done of the new stages stays done: the canner is warm, the jars are in. A boil that
    // waits for a word about the water stays reported.
    const unconfirmedAt = runOfKind(load, "process")?.kept?.unconfirmedAt;
    load.stages = stages.map(
      (run) => load.stages.find((one) => one.id === run.id && one.state !== "waiting") ?? run,
    );
    const kept = runOfKind(load, "process")?.kept;
    if (kept && unconfirmedAt !== undefined) kept.unconfirmedAt = unconfirmedAt;
    return true;
  },
  "jars-filled"(state, event) {
    const batch = state.batches[event.batch];
    const fill = batch && runOfKind(batch, "fill");
    if (!batch || !fill) return false;
    if (fill.state === "waiting") begin(fill, event.t);
    batch.ready = event.count;
    if (event.size) batch.jar = event.size;
    recount(state, batch);
    markLate(state, batch.id, event, "jars filled");
    const full = batch.jar ? largestLoad(state, batch.jar) : event.count;
    const enough = batch.expectedJars !== null && batch.filled >= batch.expectedJars;
    if (!batch.option || event.count < full || enough || batch.again > 0) {
      batch.again = 0;
      batch.allFilled = true;
      if (!isOver(fill)) finish(fill, event.t);
    }
    return true;
  },
  "all-filled"(state, event) {
    const batch = state.batches[event.batch];
    const fill = batch && runOfKind(batch, "fill");
    if (!batch || !fill) return false;
    batch.allFilled = true;
    if (!isOver(fill)) finish(fill, event.t);
    return true;
  },
  "set-aside"(state, event) {
    const batch = state.batches[event.batch];
    if (!batch) return false;
    batch.ready = Math.max(0, batch.ready - event.count);
    batch.setAside += event.count;
    recount(state, batch);
    return true;
  },
  "jar-broken"(state, event) {
    const batch = state.batches[event.batch];
    if (!batch) return false;
    const inside = lastPart(state, batch);
    if (batch.ready > 0 || !inside) {
      batch.ready = Math.max(0, batch.ready - event.count);
      batch.brokenBefore += event.count;
      recount(state, batch);
    } else inside.part.broken += event.count;
    if (inside) checkDone(inside.load, event.t);
    return true;
  },
  loaded(state, event) {
    const load = state.loads[event.load];
    if (!load || load.loadedAt !== undefined) return false;
    load.loadedAt = event.t;
    for (const { batch: id, jars, first } of event.parts) {
      const batch = state.batches[id];
      if (!batch) continue;
      batch.ready = Math.max(0, batch.ready - jars);
      load.parts.push({
        batch: id,
        jars,
        first,
        sealed: 0,
        failed: 0,
        failedJars: [],
        broken: 0,
        again: 0,
        failedAgain: 0,
        aside: 0,
      });
      if (!batch.loads.includes(load.id)) batch.loads.push(load.id);
      recount(state, batch);
    }
    for (const id of ["canner", "load"]) {
      const run = runOf(load, id);
      if (run && !isOver(run)) finish(run, event.t);
    }
    markLate(state, load.id, event, "loaded");
    return true;
  },
  unloaded(state, event) {
    const load = state.loads[event.load];
    if (!load || load.loadedAt === undefined || load.unloadedAt !== undefined) return false;
    unload(state, load, event);
    markLate(state, load.id, event, "jars out");
    return true;
  },
  sealed(state, event) {
    return seals(state, event, (part) => {
      part.sealed += event.count;
    });
  },
  "seal-failed"(state, event) {
    return seals(state, event, (part) => {
      const { sealed } = part;
      part.failed += event.count;
      part.failedJars.push(...event.jars);
      // One that had been counted as sealed is so no longer.
      part.sealed = 0;
      part.sealed = Math.min(sealed, unaccounted(part));
    });
  },
  disposed(state, event) {
    const owner = ownerOf(state, event.owner);
    if (!owner) return false;
    const { code, what, count } = event;
    owner.disposed.push({ code, what, at: event.t, count });
    if (!isLoad(owner)) return true;
    if (what === "reprocess") sendAgain(state, owner, event);
    else if (code !== "seal-failed") takeAside(state, owner, event);
    return true;
  },
};

/** The jars come out: what of the load's stages was not done by now never was. */
function unload(state: State, load: Load, event: { t: number; early: boolean }): void {
  load.unloadedAt = event.t;
  load.early = event.early;
  const process = runOfKind(load, "process");
  // Out before a time that had seemed full: then it was not.
  if (process?.state === "complete" && (process.endedAt ?? 0) > event.t) reopen(process, "running");
  if (process?.kept && !isOver(process)) lose(process.kept, event.t, "out");
  for (const run of load.stages) {
    if (run.id === "cool") break;
    if (isOver(run)) continue;
    const done = run.id === "unload" || (run === process && run.startedAt !== undefined);
    if (done) finish(run, event.t);
    else skip(run, event.t);
  }
  quiet(state, `${load.id}/`);
}

/** Jars off a process that was too short leave for the refrigerator, the freezer or the bin. */
function takeAside(state: State, load: Load, event: { t: number; count: number | null }): void {
  if (load.unloadedAt === undefined) unload(state, load, { t: event.t, early: true });
  let left = event.count ?? Number.POSITIVE_INFINITY;
  for (const part of load.parts) {
    const count = Math.min(unaccounted(part) + part.sealed, left);
    part.sealed -= Math.max(0, count - unaccounted(part));
    part.aside += count;
    left -= count;
  }
  checkDone(load, event.t);
}

function lastPart(state: State, batch: Batch): { load: Load; part: LoadPart } | undefined {
  const load = batch.loads.map((id) => state.loads[id]).findLast((one) => one !== undefined);
  const part = load?.parts.find((one) => one.batch === batch.id);
  return load && part ? { load, part } : undefined;
}

function seals(
  state: State,
  event: { load: string; batch: string; t: number },
  change: (part: LoadPart) => void,
): boolean {
  const load = state.loads[event.load];
  const part = load?.parts.find((one) => one.batch === event.batch);
  if (!load || !part || load.unloadedAt === undefined) return false;
  change(part);
  checkDone(load, event.t);
  return true;
}

/** Every jar is accounted for: the seal check is over (and the cooling, if nobody said so). */
function checkDone(load: Load, at: number): void {
  const check = runOfKind(load, "seal-check");
  const cool = runOfKind(load, "cool");
  if (!check || !cool || isOver(check) || load.unloadedAt === undefined) return;
  if (load.parts.some((part) => unaccounted(part) > 0)) return;
  // Where no jar is left to cool, nothing was checked either.
  const left = load.parts.some((part) => part.jars > part.again - part.failedAgain + part.aside);
  const end = left ? finish : skip;
  if (!isOver(cool)) end(cool, at);
  end(check, at);
}

/** Jars emptied and processed once more: their batch fills again, as the tested hot pack. */
function sendAgain(
  state: State,
  load: Load,
  event: Extract<KitchenEvent, { type: "disposed" }>,
): void {
  for (const part of load.parts) {
    const batch = state.batches[part.batch];
    const fill = batch && runOfKind(batch, "fill");
    if (!batch || !fill || !event.option) continue;
    if (event.batch !== undefined && event.batch !== batch.id) continue;
    const failed = event.code === "seal-failed";
    const open = unaccounted(part);
    const able = failed ? part.failed - part.failedAgain : open + part.sealed;
    const count = Math.min(able, event.count ?? able);
    if (count <= 0) continue;
    if (!failed) part.sealed -= Math.max(0, count - open);
    part.again += count;
    if (failed) part.failedAgain += count;
    batch.again += count;
    batch.option = event.option;
    batch.pack = event.option.pack;
    batch.allFilled = false;
    batch.state = "running";
    delete batch.endedAt;
    reopen(fill, "waiting");
    if (!state.active.includes(batch.id)) state.active.push(batch.id);
  }
  checkDone(load, event.t);
}
