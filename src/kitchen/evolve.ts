/**
 * The state after an event. `apply` changes the state it is given, which is what a session and the
 * replay of a long journal want; a decision and a test work on a `fork`. The same events give the
 * same state, whenever they are applied.
 */

import type { KitchenEvent } from "./events.ts";
import { fieldsOf, historyOf } from "./events.ts";
import { declarationOf } from "./facts/all-facts.ts";
import { idsOf, namesIn } from "./facts/references.ts";
import { beginIds, endIds } from "./jars/used-ids.ts";
import { begunIn, enterPlace, isAlone, knows } from "./places.ts";
import { liveUntil, quiet, settle } from "./settle.ts";
import { initialState, type State } from "./state.ts";

function quietFor(state: State, event: KitchenEvent): void {
  if (state.ringing.length === 0) return;
  for (const id of idsOf(event)) quiet(state, id);
}

const NAMED = new Set([
  ...(["batch", "load", "owner", "timer", "reminder", "seed", "key"] as const),
]);

/** A branch knows of what it began, and of whatever it tells a fact of. */
function getToKnow(state: State, event: KitchenEvent): void {
  if (isAlone(state)) return;
  const { begins } = declarationOf(event.type);
  const begun = begins === undefined ? undefined : fieldsOf(event)[begins];
  if (typeof begun === "string") state.knownTo[begun] = [state.place];
  for (const id of namesIn(event, NAMED).flatMap((name) => name.split("/"))) {
    const begun = begunIn(state).some((all) => Object.hasOwn(all, id));
    if (!begun || knows(state, id)) continue;
    state.knownTo[id] = [...(state.knownTo[id] ?? [""]), state.place];
  }
}

/** Applies one event, the time before it and what follows; false where it did not fit. */
function applyOne(state: State, event: KitchenEvent): boolean {
  enterPlace(state, event.branch ?? "");
  beginIds(state, event);
  // A gap's minutes are not lived through: time is only watched up to where it began.
  const livedUntil = event.type === "gap" ? event.from : event.w;
  liveUntil(state, livedUntil);
  const declared = declarationOf(event.type);
  const came = declared.evolve(state, event);
  const fits = came !== false;
  if (fits) getToKnow(state, event);
  if (fits && declared.quiets) quietFor(state, event);
  state.lastW = Math.max(state.lastW, event.w);
  const still = declared.follows === "nothing" || came === "noted";
  if (!still) settle(state, event.w);
  endIds(state, event);
  return fits;
}

/** Adds an event to a state in place. A correction replays the whole history. */
export function apply(state: State, event: KitchenEvent): void {
  if (event.type === "amended" || event.type === "withdrawn") {
    const history = historyOf(state);
    history.push(event);
    Object.assign(state, replayed(history).state);
    return;
  }
  state.history.push(event);
  applyOne(state, event);
}

/** Parts that no event changes once they are there, and that copies may share. */
export const SHARED_PARTS: ReadonlySet<string> = new Set([
  "recipe",
  "spec",
  "terms",
  "option",
  "lot",
]);

function copy<T>(value: T): T {
  if (Array.isArray(value)) return value.map(copy) as T;
  if (typeof value !== "object" || value === null) return value;
  const made: Record<string, unknown> = {};
  for (const key in value) made[key] = SHARED_PARTS.has(key) ? value[key] : copy(value[key]);
  return made as T;
}

/** A copy that shares nothing that `apply` changes. */
export function fork(state: State): State {
  const { history, ...rest } = state;
  return { ...copy(rest), history: [...history] };
}

/** The state that a journal's events lead to. */
export function replay(events: readonly KitchenEvent[]): State {
  if (events.some((event) => event.type === "amended" || event.type === "withdrawn")) {
    return replayed([...events]).state;
  }
  const state = initialState();
  for (const event of events) apply(state, event);
  enterPlace(state, "");
  return state;
}

/**
 * Replays a history with its corrections: withdrawn commands never happened, and amended ones
 * happened when the correction says, in the order they were written. `misfits` are people's later
 * reports that could then not have happened.
 */
export function replayed(history: KitchenEvent[]): { state: State; misfits: KitchenEvent[] } {
  const { withdrawn, amended } = corrections(history);
  const state = initialState();
  const misfits: KitchenEvent[] = [];
  for (const event of history) {
    if (event.type === "amended" || event.type === "withdrawn") {
      enterPlace(state, event.branch ?? "");
      liveUntil(state, event.w);
      state.lastW = Math.max(state.lastW, event.w);
      continue;
    }
    if (withdrawn.has(event.cmd)) {
      enterPlace(state, event.branch ?? "");
      beginIds(state, event);
      endIds(state, event);
      continue;
    }
    const t = amended.get(event.cmd);
    const lived = t === undefined ? event : { ...event, t };
    if (!applyOne(state, lived) && !declarationOf(event.type).own) misfits.push(event);
  }
  enterPlace(state, "");
  state.history = history;
  return { state, misfits };
}

/** Which commands were withdrawn and which moved, a withdrawn correction counting for nothing. */
export function corrections(history: readonly KitchenEvent[]): {
  withdrawn: Set<string>;
  amended: Map<string, number>;
} {
  const withdrawn = new Set<string>();
  // A withdrawal comes after what it withdraws, so that the last word on each is met first.
  for (const event of history.toReversed()) {
    if (event.type === "withdrawn" && !withdrawn.has(event.cmd)) withdrawn.add(event.target);
  }
  const amended = new Map<string, number>();
  for (const event of history) {
    if (event.type === "amended" && !withdrawn.has(event.cmd)) amended.set(event.target, event.t);
  }
  return { withdrawn, amended };
}
