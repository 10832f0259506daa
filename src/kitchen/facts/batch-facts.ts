/** Facts about a batch and its own stages. */

import * as z from "zod/mini";
import { processTerms, recipe } from "../../recipe/recipe-shape.ts";
import { agreeTo } from "../day/course.ts";
import type { BatchLot } from "../jars/jar.ts";
import { allFilled, filled, findLot, liveLots } from "../jars/lots.ts";
import { checkDone } from "../loads/check-done.ts";
import { turnOff } from "../loads/heat-off.ts";
import { activeOwners, isLoad, ownerOf, runOf, runOfRole } from "../owners.ts";
import { rowKey } from "../questions/guide.ts";
import { quiet } from "../settle.ts";
import { beginStage, finish, isOver, newRun, reopen, skipStage } from "../stage-run.ts";
import { hasRole, rulesOf } from "../stages/kinds.ts";
import type { Batch, StageRun, State } from "../state.ts";
import { MINUTE_MS } from "../time.ts";
import { fact } from "./fact.ts";
import {
  amount,
  batchId,
  batchOption,
  type Lot,
  lot,
  lotId,
  ownerId,
  packed,
  size,
  text,
  word,
} from "./fields.ts";
import { markLate } from "./mark-late.ts";

const STAGE = { owner: ownerId, stage: word };
const BATCH = { batch: batchId };

export const BATCH_FACTS = {
  "batch-begun": fact({
    fields: {
      batch: batchId,
      recipe,
      lot,
      jar: z.nullable(size),
      pack: z.nullable(packed),
      option: z.nullable(batchOption),
      terms: z.nullable(processTerms),
      expectedJars: z.nullable(amount),
      mark: text,
    },
    begins: "batch",
    follows: "stages",
    timed: "told",
    undone: ({ batch }) => `beginning ${batch || "the batch"}`,
    evolve(state, event): boolean {
      state.batches[event.batch] = newBatch(event, state.rehearsal);
      state.active.push(event.batch);
      state.focus = event.batch;
      noLongerToBegin(state, event.recipe.id, event.lot.variety, event.batch);
      return true;
    },
  }),
  /** A further lot that shares its pots. */
  "lot-added": fact({
    fields: {
      batch: batchId,
      id: lotId,
      lot,
      mark: text,
      expectedJars: z.nullable(amount),
    },
    begins: "id",
    follows: "stages",
    timed: "told",
    undone: ({ of }) => `adding a lot${of}`,
    evolve(state, event): boolean {
      const { id, lot, mark, expectedJars } = event;
      const batch = state.batches[event.batch];
      if (!batch || batch.state === "abandoned" || batch.state === "complete") return false;
      if (batch.lots.some((one) => one.id === id)) return false;
      const round = nextRound(batch, batch.lots);
      batch.lots.push(newLot(id, { lot, mark, expectedJars, round }, event.t));
      state.lotsOf[id] = batch.id;
      for (const run of batch.stages) takeIn(run, event.t);
      noLongerToBegin(state, batch.recipe.id, lot.variety, batch.id);
      return true;
    },
  }),
  /** One lot is given up: its jars leave, and the batch goes on without it. */
  "lot-abandoned": fact({
    fields: { batch: batchId },
    follows: "stages",
    undone: ({ of }) => `giving up a lot${of}`,
    evolve(state, event): boolean {
      const found = findLot(state, event.batch);
      if (!found || found.lot.abandonedAt !== undefined) return false;
      const { batch, lot } = found;
      if (liveLots(batch).length < 2) return false;
      lot.abandonedAt = event.t;
      const fill = runOfRole(batch, "filling");
      if (fill && allFilled(batch) && fill.state === "running") finish(fill, event.t);
      for (const id of batch.loads) {
        const load = state.loads[id];
        if (load) checkDone(state, load, event.t);
      }
      return true;
    },
  }),
  /** A lot that was given up is taken up again, with the jars it has. */
  "lot-restored": fact({
    fields: { batch: batchId },
    follows: "stages",
    undone: ({ of }) => `taking up a lot again${of}`,
    evolve(state, event): boolean {
      const found = findLot(state, event.batch);
      const givenUpAt = found?.lot.abandonedAt;
      if (!found || givenUpAt === undefined) return false;
      const { batch, lot } = found;
      if (batch.state === "abandoned" || batch.state === "complete") return false;
      delete lot.abandonedAt;
      const others = batch.lots.filter((one) => one !== lot);
      if (lot.jars.length === 0) lot.round = nextRound(batch, others);
      for (const run of batch.stages) if ((run.endedAt ?? 0) > givenUpAt) takeIn(run, event.t);
      const fill = runOfRole(batch, "filling");
      if (fill?.state === "complete" && !lot.allFilled) reopen(fill, "running");
      return true;
    },
  }),
  /** What is written on a lot's lids, before each jar's number. */
  "lids-marked": fact({
    fields: { batch: batchId, mark: text },
    follows: "nothing",
    undone: ({ of }) => `the mark on the lids${of}`,
    evolve(state, event): boolean {
      const found = findLot(state, event.batch);
      if (!found) return false;
      found.lot.mark = event.mark;
      return true;
    },
  }),
  /** A lot or the jars differ from what was said before; `terms` as looked up for those. */
  "batch-changed": fact({
    fields: {
      batch: batchId,
      lot,
      jar: z.nullable(size),
      terms: z.nullable(processTerms),
      expectedJars: z.nullable(amount),
    },
    follows: "stages",
    undone: ({ batch }) => `the change of ${batch}`,
    evolve(state, event): boolean {
      const found = findLot(state, event.batch);
      if (!found) return false;
      const { batch, lot } = found;
      if (batch.state === "abandoned" || batch.state === "complete") return false;
      const { jar, lot: changed, terms, expectedJars } = event;
      if (jar !== batch.jar && filled(batch) > 0) return false;
      Object.assign(batch, { jar, terms });
      Object.assign(lot, changed, { expectedJars });
      return true;
    },
  }),
  "stage-begun": fact({
    fields: STAGE,
    follows: "stages",
    quiets: true,
    timed: "told",
    undone: ({ stage }) => `${stage} begun`,
    evolve(state, event): boolean {
      const run = runOf(ownerOf(state, event.owner), event.stage);
      if (run?.state !== "waiting") return false;
      beginStage(run, event.t);
      markLate(state, event.owner, event, `${run.spec.title} begun`);
      return true;
    },
  }),
  "stage-done": fact({
    fields: STAGE,
    follows: "stages",
    quiets: true,
    timed: "told",
    undone: ({ stage }) => `${stage} done`,
    evolve(state, event): boolean {
      const owner = ownerOf(state, event.owner);
      const run = runOf(owner, event.stage);
      if (!owner || !run || isOver(run)) return false;
      // Older journals wrote the end of the heat as the end of its stage.
      if (isLoad(owner) && run.spec.step === "heat-off") return turnOff(state, owner, event.t);
      const reopened = run.startedAt === undefined ? event.t : Math.max(run.startedAt, event.t);
      finish(run, reopened);
      if (hasRole(run.spec, "filling") && !isLoad(owner)) {
        for (const lot of owner.lots) lot.allFilled = true;
      }
      quiet(state, event.owner, event.stage);
      markLate(state, event.owner, event, `${run.spec.title} done`);
      if (!isLoad(owner)) state.focus = owner.id;
      return true;
    },
  }),
  /** Somebody looked at what goes on by itself: its next check is due from then. */
  looked: fact({
    fields: STAGE,
    follows: "stages",
    timed: "told",
    undone: ({ stage }) => `the look at ${stage}`,
    evolve(state, event): boolean {
      const run = runOf(ownerOf(state, event.owner), event.stage);
      if (run?.state !== "running" || !run.spec.checks) return false;
      run.lookedAt = Math.max(event.t, run.lookedAt ?? 0);
      return true;
    },
  }),
  "stage-skipped": fact({
    fields: STAGE,
    follows: "stages",
    quiets: true,
    evolve(state, event): boolean {
      const run = runOf(ownerOf(state, event.owner), event.stage);
      if (!run || isOver(run)) return false;
      skipStage(run, event.t);
      quiet(state, event.owner, event.stage);
      return true;
    },
  }),
  held: fact({
    fields: BATCH,
    follows: "stages",
    undone: ({ batch }) => `holding ${batch}`,
    evolve(state, event): boolean {
      const batch = state.batches[event.batch];
      if (batch?.state !== "running") return false;
      batch.state = "held";
      batch.holds.push({ from: event.t });
      return true;
    },
  }),
  resumed: fact({
    fields: BATCH,
    follows: "stages",
    evolve(state, event): boolean {
      const batch = state.batches[event.batch];
      if (batch?.state !== "held") return false;
      batch.state = "running";
      const hold = batch.holds.at(-1);
      if (hold) hold.to = event.t;
      return true;
    },
  }),
  abandoned: fact({
    fields: BATCH,
    follows: "stages",
    quiets: true,
    evolve(state, event): boolean {
      const batch = state.batches[event.batch];
      if (!batch || batch.state === "abandoned") return false;
      batch.state = "abandoned";
      batch.endedAt = event.t;
      abandonStages(batch, event.t);
      state.active = state.active.filter((id) => id !== batch.id);
      abandonEmptyLoads(state, batch, event.t);
      quiet(state, batch.id);
      return true;
    },
  }),
  focused: fact({
    fields: { owner: ownerId },
    follows: "nothing",
    own: true,
    evolve(state, event): boolean {
      state.focus = event.owner;
      return true;
    },
  }),
  note: fact({
    fields: { owner: z.nullable(ownerId), text },
    follows: "nothing",
    timed: "told",
    evolve(state, event): boolean {
      const batch = event.owner === null ? undefined : state.batches[event.owner];
      if (batch) {
        batch.notes.push({ at: event.t, text: event.text, late: event.w - event.t >= MINUTE_MS });
      } else state.notes.push({ at: event.t, text: event.text });
      return true;
    },
  }),
};

/** Answers for jars and lids were given for those that are filled: a lot after them has its own. */
function nextRound(batch: Batch, others: readonly BatchLot[]): number {
  const rounds = Math.max(0, ...others.map((one) => one.round));
  return rounds + (filled(batch) > 0 ? 1 : 0);
}

/** What is done to the produce has to be done to a lot that joins later, too. */
function takeIn(run: StageRun, at: number): void {
  if (run.state === "running" && rulesOf(run.spec).window) run.startedAt = at;
  const ofProduce = rulesOf(run.spec).ends === "word" || hasRole(run.spec, "filling");
  if (ofProduce && run.state === "complete") reopen(run, "running");
}

type Begun = Pick<Batch, "recipe" | "jar" | "pack" | "option" | "terms"> &
  BegunLot & { batch: string; t: number };

type BegunLot = { lot: Lot; mark: string; expectedJars: number | null; round?: number };

function newLot(id: string, begun: BegunLot, addedAt: number): BatchLot {
  const { lot, mark, expectedJars, round = 0 } = begun;
  const none = { jars: [], allFilled: false, again: 0, openedBeyond: 0 };
  return { ...lot, id, mark, expectedJars, addedAt, round, ...none };
}

function newBatch(event: Begun, rehearsal: boolean): Batch {
  const { batch: id, recipe, jar, pack, option, terms } = event;
  return {
    id,
    recipe,
    lots: [newLot(id, event, event.t)],
    jar,
    pack,
    option,
    terms,
    askedRow: rowKey(terms),
    begunAt: event.t,
    rehearsal,
    state: "running",
    stages: recipe.stages.map((stage) => newRun(stage)),
    poured: [],
    loads: [],
    heard: [],
    confirmed: [],
    reopened: [],
    holds: [],
    readings: [],
    notes: [],
    changes: [],
    disposed: [],
    late: [],
  };
}

/** A batch that has begun, by the plan or on a person's word, is taken off the plan. */
function noLongerToBegin(
  state: State,
  recipe: string,
  variety: string | null,
  batch: string,
): void {
  const items = state.dayPlan?.items ?? [];
  const at = items.findIndex((one) => one.recipe === recipe && one.variety === variety);
  const [item] = at >= 0 ? items.splice(at, 1) : [];
  if (item) agreeTo(state, item.id, batch);
}

function abandonStages(owner: { stages: Batch["stages"] }, at: number): void {
  for (const run of owner.stages) {
    if (isOver(run)) continue;
    if (run.state !== "waiting") run.endedAt = at;
    run.state = "abandoned";
  }
}

/** A load goes with its batch unless jars of another batch are in it. */
function abandonEmptyLoads(state: State, batch: Batch, at: number): void {
  for (const owner of activeOwners(state)) {
    if (!isLoad(owner)) continue;
    const others = owner.parts.some((part) => {
      return part.batch !== batch.id && state.batches[part.batch]?.state !== "abandoned";
    });
    const its = owner.parts.length === 0 ? owner.batch === batch.id : !others;
    if (!its) continue;
    owner.state = "abandoned";
    owner.endedAt = at;
    owner.unloadedAt ??= at;
    abandonStages(owner, at);
    quiet(state, owner.id);
    state.active = state.active.filter((id) => id !== owner.id);
  }
}
