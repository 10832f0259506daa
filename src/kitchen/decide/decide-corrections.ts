/** Undo and "that was ten minutes ago": corrections are events too, and some need a yes. */

import type { DatedFact, EventType, KitchenEvent } from "../events.ts";
import { corrections, replayed } from "../evolve.ts";
import { LOAD_KINDS } from "../loads/canner-stages.ts";
import { batchName } from "../names.ts";
import { isLoad, ownerOf, runOf } from "../owners.ts";
import type { State } from "../state.ts";
import { MINUTE_MS } from "../time.ts";
import {
  askYes,
  type Deciding,
  done,
  happenedAt,
  type Outcome,
  refused,
  wallIso,
} from "./outcome.ts";

/** Commands of the clock and of opening and closing; people cannot take those back. */
export const OWN_COMMAND = "~";

/** Moving a start back by more than this needs a yes. */
const BACK_NEEDS_YES_MS = 5 * MINUTE_MS;

const LOSSES: ReadonlySet<EventType> = new Set(["boil-lost", "pressure-lost", "steam-lost"]);
const STARTS: ReadonlySet<EventType> = new Set(["boil", "pressure", "rocking", "steam"]);
/** Facts whose time a person may correct. */
const TIMED: ReadonlySet<EventType> = new Set([
  ...LOSSES,
  ...STARTS,
  "stage-begun",
  "stage-done",
  "loaded",
  "unloaded",
  "jars-filled",
  "temperature",
  "note",
  "water-low",
  "batch-begun",
]);

type Told = { cmd: string; events: KitchenEvent[] };

/** Commands of people that still stand, newest first. */
function standing(state: State): Told[] {
  const { withdrawn } = corrections(state.history);
  const list: Told[] = [];
  const known = new Map<string, Told>();
  for (let index = state.history.length - 1; index >= 0; index--) {
    const event = state.history[index] as KitchenEvent;
    if (event.cmd.startsWith(OWN_COMMAND) || withdrawn.has(event.cmd)) continue;
    if (event.type === "withdrawn" || event.type === "asked") continue;
    const told = known.get(event.cmd);
    if (told) told.events.unshift(event);
    else {
      const fresh = { cmd: event.cmd, events: [event] };
      known.set(event.cmd, fresh);
      list.push(fresh);
    }
    if (list.length > 40) break;
  }
  return list;
}

/** Which batches an event concerns; none for the kitchen's own. */
function concerns(state: State, event: KitchenEvent): string[] {
  if ("batch" in event && typeof event.batch === "string") return [event.batch];
  const id = "load" in event ? event.load : "owner" in event ? event.owner : null;
  const owner = id === null ? undefined : ownerOf(state, id);
  if (!owner) return [];
  if (!isLoad(owner)) return [owner.id];
  return owner.parts.length > 0 ? owner.parts.map((part) => part.batch) : [owner.batch];
}

/** What is told of jars on the shelf moves no focus, so taking it back cannot ask for one. */
const OF_THE_SHELF: ReadonlySet<EventType> = new Set([
  "jar-opened",
  "jars-moved",
  "tasted",
  "preferred",
]);

/** The latest command of the batch in focus, of the shelf, or of no batch at all. */
function latest(state: State, test: (told: Told) => boolean): Told | undefined {
  const inFocus = (told: Told) => {
    const all = told.events
      .filter(({ type }) => !OF_THE_SHELF.has(type))
      .flatMap((event) => concerns(state, event));
    return all.length === 0 || state.focus === null || all.includes(state.focus);
  };
  const list = standing(state).filter(test);
  return list.find(inFocus) ?? list[0];
}

/** What a command did, in a few words, so that what is taken back can be named. */
export function describe(state: State, events: KitchenEvent[]): string {
  const event = events.find((one) => !PASSING.has(one.type)) ?? events[0];
  if (!event) return "that";
  const stage = "stage" in event ? runOf(ownerOf(state, event.owner), event.stage) : undefined;
  const ids = concerns(state, event);
  const batch = ids[0] === undefined ? undefined : state.batches[ids[0]];
  const of = batch ? ` of ${batchName(batch)}` : "";
  const title = stage ? stage.spec.title : "";
  const words: Partial<Record<EventType, string>> = {
    boil: `the boil of ${stage && LOAD_KINDS.has(stage.spec.kind) ? "the canner" : title}`,
    "boil-lost": "the lost boil",
    "pressure-lost": "the lost pressure",
    "stage-done": `${title} done`,
    "stage-begun": `${title} begun`,
    "batch-begun": `beginning ${batch ? batchName(batch) : "the batch"}`,
    amended: "the corrected time",
    "timer-set": "the timer",
    "kitchen-set": "altitudeFt" in event ? "the altitude" : "the kitchen's setting",
    "jar-opened": `opening a jar${of}`,
    "jars-moved": `putting away the jars${of}`,
    tasted: `the tasting${of}`,
    preferred: `what was said for ${batch ? batchName(batch) : "it"}`,
  };
  return words[event.type] ?? `${event.type.replaceAll("-", " ")}${of}`;
}

const PASSING: ReadonlySet<EventType> = new Set(["load-opened", "load-terms", "confirmed", "due"]);

export function decideUndo(deciding: Deciding): Outcome {
  const { state, now, wish } = deciding;
  const told = latest(state, (one) => one.events.some((event) => event.type !== "acknowledged"));
  if (!told) return refused("There is nothing to take back.");
  const name = describe(state, told.events);
  if (told.events.some((event) => LOSSES.has(event.type)) && !wish.confirmed) {
    return askYes(wish, `Take back ${name}? Its time would count as unbroken. Say yes or no.`);
  }
  if (told.events.some((event) => event.type === "load-terms" && event.raised) && !wish.confirmed) {
    return askYes(wish, `Take back ${name}? The tested process would be less. Say yes or no.`);
  }
  const fact: DatedFact = { type: "withdrawn", target: told.cmd, t: now };
  const before = replayed([...state.history]).misfits.length;
  const stamped = { ...fact, cmd: "trial", w: now };
  const { misfits } = replayed([...state.history, stamped]);
  if (misfits.length > before) {
    const later = misfits.at(-1);
    const what = later ? describe(state, [later]) : "what came after";
    return refused(`I can't take back ${name}: ${what} came after it. Take that back first.`);
  }
  return done(fact);
}

export function decideCorrectTime(deciding: Deciding): Outcome {
  const { state, now, wish } = deciding;
  const slots = wish.command.slots as { at: string };
  const when = happenedAt(state, slots, now);
  if (!when.ok) return refused(when.reason);
  const told = latest(state, (one) => one.events.some((event) => TIMED.has(event.type)));
  const event = told?.events.find((one) => TIMED.has(one.type));
  if (!told || !event) return refused("There is nothing whose time I could correct.");
  const bound = earliest(state, event);
  if (bound !== undefined && when.t < bound.at) {
    return refused(
      `That can't have been before ${bound.what}, at ${wallIso(state, bound.at).slice(11, 16)}.`,
    );
  }
  const back = event.t - when.t;
  if (STARTS.has(event.type) && back > BACK_NEEDS_YES_MS && !wish.confirmed) {
    const minutes = Math.round(back / MINUTE_MS);
    const name = describe(state, told.events);
    return askYes(wish, `Move ${name} back by ${minutes} minutes? Say yes or no.`);
  }
  if (LOSSES.has(event.type) && back < 0 && !wish.confirmed) {
    const minutes = Math.max(1, Math.round(-back / MINUTE_MS));
    const name = describe(state, told.events);
    return askYes(
      wish,
      `Move ${name} forward by ${minutes} minutes? More of its time would count. Say yes or no.`,
    );
  }
  const fact: DatedFact = { type: "amended", target: told.cmd, t: when.t };
  const before = replayed([...state.history]).misfits.length;
  const { misfits } = replayed([...state.history, { ...fact, cmd: "trial", w: now }]);
  if (misfits.length > before)
    return refused("Then what was reported after it could not have happened.");
  return done(fact);
}

/** What a report cannot have come before: the loading, a loss, a time nobody watched. */
function earliest(state: State, event: KitchenEvent): { at: number; what: string } | undefined {
  const id = "load" in event ? event.load : "owner" in event ? event.owner : null;
  const owner = id === null ? undefined : ownerOf(state, id);
  if (!owner) return undefined;
  if (!isLoad(owner)) return { at: owner.begunAt, what: "the batch began" };
  if (event.type === "loaded") return { at: owner.openedAt, what: "the canner was lit" };
  if (!STARTS.has(event.type)) return { at: owner.loadedAt ?? owner.openedAt, what: "the loading" };
  const bounds = [{ at: owner.loadedAt ?? owner.openedAt, what: "the loading" }];
  for (const run of owner.stages) {
    for (const stretch of run.kept?.stretches ?? []) {
      if (stretch.to !== undefined && stretch.to <= event.t) {
        bounds.push({ at: stretch.to, what: "it was lost" });
      }
    }
  }
  for (const gap of owner.gaps) {
    if (gap.to <= event.t) bounds.push({ at: gap.to, what: "I was away" });
  }
  return bounds.reduce((latest_, one) => (one.at > latest_.at ? one : latest_));
}
