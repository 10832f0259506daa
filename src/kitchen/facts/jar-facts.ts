/** Facts about jars: filled, set aside, sealed or not, and what became of them. */

import * as z from "zod/mini";
import { largestLoad, unaccounted } from "../jars.ts";
import { recount } from "../loads/jar-tally.ts";
import { spoil } from "../loads/spoil.ts";
import { filledFrom } from "../loads/standing.ts";
import { unload } from "../loads/unload.ts";
import { isLoad, ownerOf, runOfRole } from "../owners.ts";
import { beginStage, finish, isOver, reopen, skipStage } from "../stage-run.ts";
import type { Batch, Load, LoadPart, State } from "../state.ts";
import { fact } from "./fact.ts";
import {
  type BatchOption,
  batchId,
  batchOption,
  count,
  disposition,
  loadId,
  ownerId,
  size,
  someJars,
  spoilSign,
  word,
} from "./fields.ts";
import { markLate } from "./mark-late.ts";

export const JAR_FACTS = {
  "jars-filled": fact({
    fields: { batch: batchId, count, size: z.nullable(size) },
    follows: "stages",
    quiets: true,
    timed: "told",
    evolve(state, event): boolean {
      const batch = state.batches[event.batch];
      const fill = batch && runOfRole(batch, "filling");
      if (!batch || !fill) return false;
      if (fill.state === "waiting") beginStage(fill, event.t);
      if (batch.ready === 0) batch.filledFrom = filledFrom(state, batch, fill, event.t);
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
  }),
  "all-filled": fact({
    fields: { batch: batchId },
    follows: "stages",
    evolve(state, event): boolean {
      const batch = state.batches[event.batch];
      const fill = batch && runOfRole(batch, "filling");
      if (!batch || !fill) return false;
      batch.allFilled = true;
      if (!isOver(fill)) finish(fill, event.t);
      return true;
    },
  }),
  "set-aside": fact({
    fields: { batch: batchId, count },
    follows: "stages",
    evolve(state, event): boolean {
      const batch = state.batches[event.batch];
      if (!batch) return false;
      batch.ready = Math.max(0, batch.ready - event.count);
      batch.setAside += event.count;
      recount(state, batch);
      return true;
    },
  }),
  "jar-broken": fact({
    fields: { batch: batchId, count },
    follows: "stages",
    evolve(state, event): boolean {
      const batch = state.batches[event.batch];
      if (!batch) return false;
      const inside = lastPart(state, batch);
      if (batch.ready > 0 || !inside) {
        batch.ready = Math.max(0, batch.ready - event.count);
        batch.brokenBefore += event.count;
        recount(state, batch);
      } else {
        inside.part.broken += event.count;
        delete inside.load.brokenInside;
      }
      if (inside) checkDone(inside.load, event.t);
      return true;
    },
  }),
  /** A jar broke in a closed canner: nobody can count yet. */
  "broken-inside": fact({
    fields: { load: loadId, batch: batchId },
    follows: "nothing",
    evolve(state, event): boolean {
      const load = state.loads[event.load];
      if (!load) return false;
      load.brokenInside = event.batch;
      return true;
    },
  }),
  sealed: fact({
    fields: { load: loadId, batch: batchId, count },
    follows: "stages",
    quiets: true,
    evolve(state, event): boolean {
      return seals(state, event, (part) => {
        part.sealed += event.count;
      });
    },
  }),
  "seal-failed": fact({
    fields: { load: loadId, batch: batchId, count, jars: z.array(someJars) },
    follows: "stages",
    quiets: true,
    evolve(state, event): boolean {
      return seals(state, event, (part) => {
        const { sealed } = part;
        part.failed += event.count;
        part.failedJars.push(...event.jars);
        // A jar that had been counted as sealed no longer is.
        part.sealed = 0;
        part.sealed = Math.min(sealed, unaccounted(part));
      });
    },
  }),
  /** Found spoiled at any time: it is no longer food, whatever it was counted as before. */
  spoiled: fact({
    fields: {
      batch: batchId,
      /** The load it went through; null where it went through none. */
      load: z.nullable(loadId),
      count: someJars,
      jars: z.array(someJars),
      sign: spoilSign,
    },
    follows: "stages",
    quiets: true,
    ofTheShelf: true,
    undoWarns: () => "It would count as food again.",
    undone: ({ of }) => `the spoiled jar${of}`,
    evolve(state, event): boolean {
      const batch = state.batches[event.batch];
      if (!batch) return false;
      const { count, jars, sign } = event;
      spoil(state, batch, event);
      state.spoiledJars.push({ at: event.t, batch: batch.id, count, jars, sign });
      const load = event.load === null ? undefined : state.loads[event.load];
      if (load) checkDone(load, event.t);
      return true;
    },
  }),
  disposed: fact({
    fields: {
      owner: ownerId,
      code: word,
      what: disposition,
      count: z.nullable(count),
      /** The batch meant, where a load holds jars of several batches. */
      batch: z.optional(batchId),
      /** For reprocessing only: the tested hot pack the jars go through again. */
      option: z.nullable(batchOption),
    },
    follows: "stages",
    quiets: true,
    evolve(state, event): boolean {
      const owner = ownerOf(state, event.owner);
      if (!owner) return false;
      const { code, what, count } = event;
      owner.disposed.push({ code, what, at: event.t, count });
      if (!isLoad(owner)) return true;
      if (what === "reprocess") sendAgain(state, owner, event);
      else if (code !== "seal-failed") takeAside(state, owner, event);
      return true;
    },
  }),
};

/** Jars from a process that was too short go to the refrigerator, the freezer or the bin. */
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
  const check = runOfRole(load, "seals");
  const cool = runOfRole(load, "cooling");
  if (!check || !cool || isOver(check) || load.unloadedAt === undefined) return;
  if (load.parts.some((part) => unaccounted(part) > 0)) return;
  // Where no jar was left to cool, nothing was checked either.
  const left = load.parts.some((part) => part.jars > part.again - part.failedAgain + part.aside);
  const end = left ? finish : skipStage;
  if (!isOver(cool)) end(cool, at);
  end(check, at);
}

type SentAgain = {
  t: number;
  code: string;
  count: number | null;
  batch?: string | undefined;
  option: BatchOption | null;
};

/** Jars emptied and processed once more: their batch fills again, as the tested hot pack. */
function sendAgain(state: State, load: Load, event: SentAgain): void {
  for (const part of load.parts) {
    const batch = state.batches[part.batch];
    const fill = batch && runOfRole(batch, "filling");
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
