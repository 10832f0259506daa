/**
 * The state after an event. `apply` changes the state it is given, which is what a session and a
 * replay of a long journal want; `evolve` leaves it alone, which is what a decision and a test
 * want. Both give the same state for the same events, whenever they run.
 */

import type { EventType, KitchenEvent } from "./events.ts";
import { BATCH_HANDLERS } from "./evolve-batch.ts";
import { JAR_HANDLERS } from "./evolve-jars.ts";
import { SESSION_HANDLERS } from "./evolve-session.ts";
import { SIGN_HANDLERS } from "./evolve-signs.ts";
import type { Handler, Handlers } from "./handler.ts";
import { quiet, settle } from "./settle.ts";
import { initialState, type State } from "./state.ts";

/** Events that follow from the program's own doing; a correction may leave them without object. */
const OWN_DOING: ReadonlySet<EventType> = new Set([
  "due",
  "asked",
  "acknowledged",
  "load-opened",
  "load-terms",
  "focused",
]);

/** Events that change no stage, so nothing can follow from them but the passing of time. */
const NO_CONSEQUENCE: ReadonlySet<EventType> = new Set([
  "asked",
  "acknowledged",
  "note",
  "probe",
  "focused",
  "hushed",
  "unhushed",
  "timer-set",
  "timer-added",
  "timer-cancelled",
  "reminder-set",
  "reminder-cancelled",
  "tasted",
  "preferred",
  "jar-opened",
  "jars-moved",
  "seed-saved",
  "germination",
  "due",
  "opened",
  "closed",
  "clock-set",
  "log-failed",
  "kitchen-set",
  "day-planned",
  "day-plan-dropped",
]);

/** Reports that show a person has seen what rang: whatever rings for that owner falls silent. */
const ANSWERS_ALARMS: ReadonlySet<EventType> = new Set([
  "stage-begun",
  "stage-done",
  "stage-skipped",
  "boil",
  "boil-lost",
  "steam",
  "pressure",
  "rocking",
  "pressure-lost",
  "temperature",
  "jars-filled",
  "loaded",
  "unloaded",
  "sealed",
  "seal-failed",
  "abandoned",
  "disposed",
]);

function quietFor(state: State, event: KitchenEvent): void {
  if (state.ringing.length === 0) return;
  if ("load" in event) quiet(state, `${event.load}/`);
  if ("owner" in event) quiet(state, `${event.owner}/`);
  if ("batch" in event) quiet(state, `${event.batch}/`);
  if (event.type === "loaded") for (const part of event.parts) quiet(state, `${part.batch}/`);
}

const HANDLERS: Handlers<Exclude<EventType, "amended" | "withdrawn">> = {
  ...SESSION_HANDLERS,
  ...BATCH_HANDLERS,
  ...SIGN_HANDLERS,
  ...JAR_HANDLERS,
};

/** Runs one event, its time and consequences; false where it did not fit. */
function applyOne(state: State, event: KitchenEvent): boolean {
  // A gap's minutes are not lived through: time is only watched up to where it began.
  const livedUntil = event.type === "gap" ? event.from : event.w;
  if (state.nextEnd <= livedUntil) settle(state, livedUntil);
  const handler = HANDLERS[event.type as keyof typeof HANDLERS] as Handler<EventType> | undefined;
  const came = handler ? handler(state, event) : true;
  const fits = came !== false;
  if (fits && ANSWERS_ALARMS.has(event.type)) quietFor(state, event);
  state.lastW = Math.max(state.lastW, event.w);
  const still = NO_CONSEQUENCE.has(event.type) || (came === "noted" && event.w < state.nextBegin);
  if (!still) settle(state, event.w);
  return fits;
}

/** Adds an event to a state in place. Corrections work the whole history out again. */
export function apply(state: State, event: KitchenEvent): void {
  if (event.type === "amended" || event.type === "withdrawn") {
    const history = state.history;
    history.push(event);
    Object.assign(state, replayed(history).state);
    return;
  }
  state.history.push(event);
  applyOne(state, event);
}

export function evolve(state: State, event: KitchenEvent): State {
  const next = fork(state);
  apply(next, event);
  return next;
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
  return state;
}

/**
 * Works a history out with its corrections: withdrawn commands never happened, amended ones
 * happened when the correction says, in the order they were written. `misfits` are the later
 * events of people that could then not have happened.
 */
export function replayed(history: KitchenEvent[]): { state: State; misfits: KitchenEvent[] } {
  const { withdrawn, amended } = corrections(history);
  const state = initialState();
  const misfits: KitchenEvent[] = [];
  for (const event of history) {
    if (event.type === "amended" || event.type === "withdrawn") {
      if (state.nextEnd <= event.w) settle(state, event.w);
      state.lastW = Math.max(state.lastW, event.w);
      continue;
    }
    if (withdrawn.has(event.cmd)) continue;
    const t = amended.get(event.cmd);
    const lived = t === undefined ? event : { ...event, t };
    if (!applyOne(state, lived) && !OWN_DOING.has(event.type)) misfits.push(event);
  }
  state.history = history;
  return { state, misfits };
}

/** Which commands were withdrawn and which moved, a withdrawn correction counting for nothing. */
export function corrections(history: readonly KitchenEvent[]): {
  withdrawn: Set<string>;
  amended: Map<string, number>;
} {
  const withdrawn = new Set<string>();
  for (const event of history) if (event.type === "withdrawn") withdrawn.add(event.target);
  const amended = new Map<string, number>();
  for (const event of history) {
    if (event.type === "amended" && !withdrawn.has(event.cmd)) amended.set(event.target, event.t);
  }
  return { withdrawn, amended };
}
