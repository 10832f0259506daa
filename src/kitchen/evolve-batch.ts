/** Events of a batch's own stages, from its beginning to a word that ends one. */
import type { Handlers } from "./handler.ts";
import { activeOwners, isLoad, ownerOf, runOf } from "./owners.ts";
import { quiet } from "./settle.ts";
import { begin, finish, isOver, newRun, skip } from "./stage-run.ts";
import type { Batch, State } from "./state.ts";
import { MINUTE_MS } from "./time.ts";

type BatchEvents =
  | "batch-begun"
  | "stage-begun"
  | "stage-done"
  | "stage-skipped"
  | "held"
  | "resumed"
  | "abandoned"
  | "focused"
  | "confirmed"
  | "note"
  | "ingredient-changed";

/** A report written this much after it happened is marked as written late. */
export const WRITTEN_LATE_MS = MINUTE_MS;

/** Keeps in the log that a report was written well after it happened. */
export function markLate(
  state: State,
  ownerId: string,
  event: { t: number; w: number },
  what: string,
): void {
  const owner = ownerOf(state, ownerId);
  if (owner && event.w - event.t >= WRITTEN_LATE_MS) {
    owner.late.push({ at: event.t, written: event.w, what });
  }
}

export const BATCH_HANDLERS: Handlers<BatchEvents> = {
  "batch-begun"(state, event) {
    const { batch: id, recipe, lot, jar, pack, option, terms, expectedJars, mark } = event;
    state.batches[id] = {
      id,
      recipe,
      lot,
      jar,
      pack,
      option,
      terms,
      expectedJars,
      mark,
      begunAt: event.t,
      rehearsal: state.rehearsal,
      state: "running",
      stages: recipe.stages.map((stage) => newRun(stage)),
      ready: 0,
      filled: 0,
      setAside: 0,
      brokenBefore: 0,
      allFilled: false,
      again: 0,
      loads: [],
      confirmed: [],
      holds: [],
      readings: [],
      notes: [],
      changes: [],
      disposed: [],
      late: [],
    };
    state.active.push(id);
    state.focus = id;
    noLongerToBegin(state, recipe.id, lot.variety);
    return true;
  },
  "stage-begun"(state, event) {
    const run = runOf(ownerOf(state, event.owner), event.stage);
    if (run?.state !== "waiting") return false;
    begin(run, event.t);
    markLate(state, event.owner, event, `${run.spec.title} begun`);
    return true;
  },
  "stage-done"(state, event) {
    const owner = ownerOf(state, event.owner);
    const run = runOf(owner, event.stage);
    if (!owner || !run || isOver(run)) return false;
    const reopened = run.startedAt === undefined ? event.t : Math.max(run.startedAt, event.t);
    finish(run, reopened);
    if (run.spec.kind === "fill" && !isLoad(owner)) owner.allFilled = true;
    quiet(state, `${event.owner}/${event.stage}/`);
    markLate(state, event.owner, event, `${run.spec.title} done`);
    if (!isLoad(owner)) state.focus = owner.id;
    return true;
  },
  "stage-skipped"(state, event) {
    const run = runOf(ownerOf(state, event.owner), event.stage);
    if (!run || isOver(run)) return false;
    skip(run, event.t);
    quiet(state, `${event.owner}/${event.stage}/`);
    return true;
  },
  held(state, event) {
    const batch = state.batches[event.batch];
    if (batch?.state !== "running") return false;
    batch.state = "held";
    batch.holds.push({ from: event.t });
    return true;
  },
  resumed(state, event) {
    const batch = state.batches[event.batch];
    if (batch?.state !== "held") return false;
    batch.state = "running";
    const hold = batch.holds.at(-1);
    if (hold) hold.to = event.t;
    return true;
  },
  abandoned(state, event) {
    const batch = state.batches[event.batch];
    if (!batch || batch.state === "abandoned") return false;
    batch.state = "abandoned";
    batch.endedAt = event.t;
    abandonStages(batch, event.t);
    state.active = state.active.filter((id) => id !== batch.id);
    abandonEmptyLoads(state, batch, event.t);
    quiet(state, `${batch.id}/`);
    return true;
  },
  focused(state, event) {
    state.focus = event.owner;
    return true;
  },
  confirmed(state, event) {
    const batch = state.batches[event.batch];
    if (!batch) return false;
    batch.confirmed = batch.confirmed.filter((one) => one.factor !== event.factor);
    batch.confirmed.push({ factor: event.factor, held: event.held, at: event.t });
    return "noted";
  },
  note(state, event) {
    const batch = event.owner === null ? undefined : state.batches[event.owner];
    if (batch) {
      batch.notes.push({ at: event.t, text: event.text, late: event.w - event.t >= MINUTE_MS });
    } else state.notes.push({ at: event.t, text: event.text });
    return true;
  },
  "ingredient-changed"(state, event) {
    const batch = state.batches[event.batch];
    if (!batch) return false;
    batch.changes.push({ at: event.t, detail: event.detail });
    return true;
  },
};

/** A batch that has begun, by the plan or by a word, is begun by the plan no more. */
function noLongerToBegin(state: State, recipe: string, variety: string | null): void {
  const items = state.dayPlan?.items;
  const at = items?.findIndex((one) => one.recipe === recipe && one.variety === variety) ?? -1;
  if (at >= 0) items?.splice(at, 1);
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
    quiet(state, `${owner.id}/`);
    state.active = state.active.filter((id) => id !== owner.id);
  }
}
