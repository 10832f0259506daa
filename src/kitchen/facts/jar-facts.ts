/** Facts about jars: filled, set aside, sealed or not, and what became of them. */

import * as z from "zod/mini";
import { brewing, brewNow, tellBrew } from "../jars/brews.ts";
import { largestLoad } from "../jars/canner-room.ts";
import {
  emptyJars,
  failJars,
  fillTo,
  type NewJar,
  sealJars,
  takeOff,
  takeReady,
} from "../jars/change-jars.ts";
import type { BatchLot } from "../jars/jar.ts";
import { idsFor } from "../jars/jar-ids.ts";
import { allFilled, filledOf, findLot, jarsIn, type LotOf, ready, readyOf } from "../jars/lots.ts";
import { spoil } from "../jars/spoil.ts";
import { checkDone } from "../loads/check-done.ts";
import { filledFrom } from "../loads/standing.ts";
import { unload } from "../loads/unload.ts";
import { isLoad, ownerOf, runOfRole } from "../owners.ts";
import { beginStage, finish, isOver, reopen } from "../stage-run.ts";
import type { Batch, Load, LoadPart, State } from "../state.ts";
import { fact, WOULD_STAND } from "./fact.ts";
import {
  type BatchOption,
  batchId,
  batchOption,
  count,
  disposition,
  jarIds,
  jarNumbers,
  loadId,
  ownerId,
  size,
  someJars,
  spoilSign,
  word,
} from "./fields.ts";
import { markLate } from "./mark-late.ts";

/** `batch` names a lot: the first of a batch has the batch's own id. */
export const JAR_FACTS = {
  "jars-filled": fact({
    fields: {
      batch: batchId,
      count,
      size: z.nullable(size),
      ids: z.optional(jarIds),
      /** The brew that jars not told of before hold, where it is not the one poured now. */
      brew: z.optional(count),
      /** The numbers of jars that were counted and do not exist. */
      without: z.optional(jarNumbers),
    },
    follows: "stages",
    quiets: true,
    timed: "told",
    evolve(state, event): boolean {
      const found = fillingOf(state, event.batch);
      if (!found) return false;
      const { batch, lot, fill } = found;
      if (fill.state === "waiting") beginStage(fill, event.t);
      const from = filledFrom(state, batch, fill, event.t);
      const made = newJar(batch, lot, event, from);
      fillTo(lot, event.count, made, { newId: idsFor(state, event.ids), without: event.without });
      delete lot.uncountedFrom;
      if (event.size) batch.jar = event.size;
      markLate(state, batch.id, event, "jars filled");
      // Those of a brew that ran out: there are more to come.
      if (event.brew !== undefined) return true;
      const full = batch.jar ? largestLoad(state, batch.jar) : event.count;
      const enough = lot.expectedJars !== null && filledOf(lot) >= lot.expectedJars;
      if (!batch.option || ready(batch) < full || enough || lot.again > 0) {
        lot.again = 0;
        lot.allFilled = true;
        if (allFilled(batch) && !isOver(fill)) finish(fill, event.t);
      }
      return true;
    },
  }),
  /** Which brew jars were filled from, where others were poured as well. */
  "brew-told": fact({
    fields: { batch: batchId, jars: jarNumbers, brew: count },
    follows: "stages",
    undoWarns: WOULD_STAND,
    undone: ({ of }) => `what was poured into the jars${of}`,
    evolve(state, event): boolean {
      const lot = findLot(state, event.batch)?.lot;
      if (!lot) return false;
      for (const jar of lot.jars) if (event.jars.includes(jar.number)) tellBrew(jar, event.brew);
      return true;
    },
  }),
  "all-filled": fact({
    fields: { batch: batchId },
    follows: "stages",
    evolve(state, event): boolean {
      const found = fillingOf(state, event.batch);
      if (!found) return false;
      const { batch, lot, fill } = found;
      for (const one of event.batch === batch.id ? batch.lots : [lot]) one.allFilled = true;
      if (allFilled(batch) && !isOver(fill)) finish(fill, event.t);
      return true;
    },
  }),
  "set-aside": fact({
    fields: { batch: batchId, count, jars: z.optional(jarNumbers) },
    follows: "stages",
    evolve(state, event): boolean {
      const found = findLot(state, event.batch);
      if (!found) return false;
      takeReady(found.lot, { what: "set-aside", at: event.t }, takenBy(state, found, event));
      return true;
    },
  }),
  "jar-broken": fact({
    fields: { batch: batchId, count, jars: z.optional(jarNumbers) },
    follows: "stages",
    evolve(state, event): boolean {
      const found = findLot(state, event.batch);
      if (!found) return false;
      const { batch, lot } = found;
      const gone = { what: "broken", at: event.t } as const;
      const inside = lastPart(state, batch, lot);
      if (readyOf(lot).length > 0 || !inside) takeReady(lot, gone, takenBy(state, found, event));
      else {
        const jars = jarsIn(state, inside.load, inside.part);
        takeOff(jars, gone, event.count, event.jars);
        delete inside.load.brokenInside;
      }
      if (inside) checkDone(state, inside.load, event.t);
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
    fields: { load: loadId, batch: batchId, count, jars: z.optional(jarNumbers) },
    follows: "stages",
    quiets: true,
    evolve(state, event): boolean {
      return seals(state, event, (load, part) => {
        sealJars(state, load, part, event.count, event.jars);
      });
    },
  }),
  "seal-failed": fact({
    fields: { load: loadId, batch: batchId, count, jars: jarNumbers },
    follows: "stages",
    quiets: true,
    evolve(state, event): boolean {
      return seals(state, event, (load, part) => {
        failJars(state, load, part, event.count, event.jars);
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
      jars: jarNumbers,
      sign: spoilSign,
    },
    follows: "stages",
    quiets: true,
    ofTheShelf: true,
    undoWarns: () => "It would count as food again.",
    undone: ({ of }) => `the spoiled jar${of}`,
    evolve(state, event): boolean {
      const found = findLot(state, event.batch);
      if (!found) return false;
      spoil(found, { ...event, at: event.t });
      const load = event.load === null ? undefined : state.loads[event.load];
      if (load) checkDone(state, load, event.t);
      return true;
    },
  }),
  disposed: fact({
    fields: {
      owner: ownerId,
      code: word,
      what: disposition,
      count: z.nullable(count),
      /** The lot meant, where a load holds jars of several. */
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

type Taken = { t: number; count: number; jars?: number[] | undefined };

function takenBy(state: State, { batch, lot }: LotOf, event: Taken) {
  const made = newJar(batch, lot, { t: event.t }, event.t);
  return { count: event.count, numbers: event.jars ?? [], made, newId: idsFor(state) };
}

/** A jar told of now: which brew it holds, and which others it may. */
export function newJar(
  batch: Batch,
  { uncountedFrom }: BatchLot,
  { t, brew = brewNow(batch) }: { t: number; brew?: number | undefined },
  from: number,
): NewJar {
  const poured = brew === brewNow(batch) && brewing(batch) ? brew - 1 : brew;
  const earliest = Math.min(uncountedFrom ?? poured, poured);
  return {
    filledFrom: from,
    filledAt: t,
    brew,
    ...(earliest < brew ? { brewFrom: earliest } : {}),
  };
}

function fillingOf(state: State, id: string) {
  const found = findLot(state, id);
  const fill = found && runOfRole(found.batch, "filling");
  return fill && { ...found, fill };
}

/** Jars from a process that was too short go to the refrigerator, the freezer or the bin. */
function takeAside(state: State, load: Load, event: { t: number; count: number | null }): void {
  if (load.unloadedAt === undefined) unload(state, load, { t: event.t, early: true });
  let left = event.count ?? Number.POSITIVE_INFINITY;
  for (const part of load.parts) {
    left -= takeOff(jarsIn(state, load, part), { what: "aside", at: event.t }, left);
  }
  checkDone(state, load, event.t);
}

function lastPart(
  state: State,
  batch: Batch,
  lot: BatchLot,
): { load: Load; part: LoadPart } | undefined {
  for (const id of batch.loads.toReversed()) {
    const load = state.loads[id];
    const part = load?.parts.find((one) => one.lot === lot.id);
    if (load && part) return { load, part };
  }
  return undefined;
}

function seals(
  state: State,
  event: { load: string; batch: string; t: number },
  change: (load: Load, part: LoadPart) => void,
): boolean {
  const load = state.loads[event.load];
  const part = load?.parts.find((one) => one.lot === event.batch);
  if (!load || !part || load.unloadedAt === undefined) return false;
  change(load, part);
  checkDone(state, load, event.t);
  return true;
}

type SentAgain = {
  t: number;
  code: string;
  count: number | null;
  batch?: string | undefined;
  option: BatchOption | null;
};

/** Jars emptied and processed once more: their lot fills again, as the tested hot pack. */
function sendAgain(state: State, load: Load, event: SentAgain): void {
  for (const part of load.parts) {
    const found = fillingOf(state, part.lot);
    if (!found || !event.option) continue;
    const { batch, lot, fill } = found;
    if (event.batch !== undefined && event.batch !== lot.id) continue;
    const failed = event.code === "seal-failed";
    const most = event.count ?? Number.POSITIVE_INFINITY;
    const emptied = emptyJars(lot, jarsIn(state, load, part), { failed, most, at: event.t });
    if (emptied === 0) continue;
    batch.option = event.option;
    batch.pack = event.option.pack;
    batch.state = "running";
    delete batch.endedAt;
    reopen(fill, "waiting");
    if (!state.active.includes(batch.id)) state.active.push(batch.id);
  }
  checkDone(state, load, event.t);
}
