/** Undo and "that was ten minutes ago": corrections are events too, and some need a yes. */

import { type Command, commandOf, withSlots } from "../command.ts";
import type { DatedFact, KitchenEvent } from "../events.ts";
import { historyOf } from "../events.ts";
import { corrections, replayed } from "../evolve.ts";
import { declarationOf } from "../facts/all-facts.ts";
import type { RefKind } from "../facts/fields.ts";
import { namesIn } from "../facts/references.ts";
import { batchOfLot, findLot, type LotOf } from "../jars/lots.ts";
import { isLoad, ownerOf, runOf } from "../owners.ts";
import { batchName, calledLot, listed } from "../spoken-names.ts";
import { isOfCanner } from "../stages/kinds.ts";
import type { State } from "../state.ts";
import { MINUTE_MS } from "../time.ts";
import {
  askYes,
  type Deciding,
  type Decision,
  done,
  happenedAt,
  type Present,
  refused,
  type Wish,
  wallIso,
} from "./decision.ts";

/**
 * Begins the ids of commands from the clock and from opening and closing; people cannot undo those.
 */
export const OWN_COMMAND = "~";

/** Moving a start back by more than this needs a yes. */
const BACK_NEEDS_YES_MS = 5 * MINUTE_MS;

type StandingCommand = { cmd: string; events: KitchenEvent[] };

/** Commands of people that still stand, newest first. */
function standingCommands(state: State): StandingCommand[] {
  const { withdrawn } = corrections(historyOf(state));
  const list: StandingCommand[] = [];
  const known = new Map<string, StandingCommand>();
  for (let index = state.history.length - 1; index >= 0; index--) {
    const event = state.history[index] as KitchenEvent;
    if (event.cmd.startsWith(OWN_COMMAND) || withdrawn.has(event.cmd)) continue;
    if (declarationOf(event.type).undo === "never") continue;
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
  if ("batch" in event && typeof event.batch === "string") {
    return [batchOfLot(state, event.batch)?.id ?? event.batch];
  }
  const id = "load" in event ? event.load : "owner" in event ? event.owner : null;
  const owner = id === null ? undefined : ownerOf(state, id);
  if (!owner) return [];
  if (!isLoad(owner)) return [owner.id];
  return owner.parts.length > 0 ? owner.parts.map((part) => part.batch) : [owner.batch];
}

/** The latest command of the batch in focus, of the shelf, or of no batch at all. */
function latest(
  state: State,
  test: (told: StandingCommand) => boolean,
): StandingCommand | undefined {
  const inFocus = (told: StandingCommand) => {
    const all = told.events
      .filter(({ type }) => !declarationOf(type).ofTheShelf)
      .flatMap((event) => concerns(state, event));
    return all.length === 0 || state.focus === null || all.includes(state.focus);
  };
  const list = standingCommands(state).filter(test);
  return list.find(inFocus) ?? list[0];
}

/** What a command did, in a few words, so that what is taken back can be named. */
export function describe(state: State, events: KitchenEvent[]): string {
  const event = events.find((one) => !declarationOf(one.type).passing) ?? events[0];
  if (!event) return "that";
  const run = "stage" in event ? runOf(ownerOf(state, event.owner), event.stage) : undefined;
  const [id] = concerns(state, event);
  const batch = id === undefined ? undefined : state.batches[id];
  const name = lotNames(state, events) || (batch ? batchName(batch) : "");
  const stage = run?.spec.title ?? "";
  const vessel = run && isOfCanner(run.spec) ? "the canner" : stage;
  const of = name === "" ? "" : ` of ${name}`;
  return (
    declarationOf(event.type).undone?.({ stage, vessel, of, batch: name }, event) ??
    `${event.type.replaceAll("-", " ")}${of}`
  );
}

/** The lots of a batch that events name, where it has several: "the Provider and the Blue Lake". */
function lotNames(state: State, events: readonly KitchenEvent[]): string {
  return listed(lotsNamed(state, events).map((one) => calledLot(state, one)));
}

/** Lots of batches that have several, each once; of a lot that was added, it alone. */
function lotsNamed(state: State, events: readonly KitchenEvent[]): LotOf[] {
  const ids = events.flatMap((event) => {
    return event.type === "lot-added" ? [event.id] : namesIn(event, OF_LOTS);
  });
  return [...new Set(ids)].flatMap((id) => {
    const found = findLot(state, id);
    return found && found.batch.lots.length > 1 ? [found] : [];
  });
}

const OF_LOTS: ReadonlySet<RefKind> = new Set<RefKind>(["batch"]);

/** What taking back a command would do that needs a yes. */
function warningOf(events: readonly KitchenEvent[]): string | undefined {
  return events.flatMap((event) => declarationOf(event.type).undoWarns?.(event) ?? [])[0];
}

export function decideUndo(deciding: Deciding<"undo">): Decision {
  const { state, wish } = deciding;
  const { about } = wish.command.slots;
  const told = latest(state, (one) => {
    return one.events
      .map(({ type }) => declarationOf(type))
      .some(({ undo, sign }) => {
        return !undo && (about === undefined || sign === about);
      });
  });
  if (told) return takenBack(deciding, told);
  const of = about === undefined ? "" : ` about the ${about}`;
  return refused(`There is nothing to take back${of}.`);
}

/** Takes back what was done under an id; refused where it does not stand. */
export function takeBack(present: Present, cmd: string): Decision {
  const told = standingCommands(present.state).find((one) => one.cmd === cmd);
  const command = commandOf("undo", {});
  if (!told) return refused("There is nothing to take back.");
  return takenBack({ ...present, wish: { command } }, told);
}

function takenBack({ state, now, wish }: Deciding<"undo">, told: StandingCommand): Decision {
  const name = describe(state, told.events);
  const warning = warningOf(told.events) ?? otherBatch(state, told);
  const misfit = misfitWithout(state, told.cmd, now);
  if (misfit !== undefined) {
    return refused(`I can't take back ${name}: ${misfit} came after it. Take that back first.`);
  }
  const asks = warning !== undefined || lotsNamed(state, told.events).length > 1;
  if (asks && !wish.confirmed) {
    const why = warning === undefined ? "" : ` ${warning}`;
    return askYes(wish, `Take back ${name}?${why} Say yes or no.`);
  }
  return done({ type: "withdrawn", target: told.cmd, t: now });
}

/** What could not have happened without a command; undefined where everything still fits. */
function misfitWithout(state: State, cmd: string, now: number): string | undefined {
  const before = replayed([...historyOf(state)]).misfits.length;
  const fact = { type: "withdrawn", target: cmd, cmd: "trial", t: now, w: now } as const;
  const { misfits } = replayed([...historyOf(state), fact]);
  if (misfits.length <= before) return undefined;
  const later = misfits.at(-1);
  return later ? describe(state, [later]) : "what came after";
}

/** The last correction that stands, where nobody has said anything since. */
function lastTakenBack(state: State): KitchenEvent[] | undefined {
  const { withdrawn } = corrections(historyOf(state));
  const last = historyOf(state).findLast((event) => {
    return !event.cmd.startsWith(OWN_COMMAND) && !withdrawn.has(event.cmd);
  });
  if (last?.type !== "withdrawn") return undefined;
  return historyOf(state).filter(({ cmd }) => cmd === last.target);
}

/** Said where an undo affects a different batch than the undo before it or the one in focus. */
function otherBatch(state: State, told: StandingCommand): string | undefined {
  const own = batchesIn(state, told.events);
  const before = lastTakenBack(state);
  const at = before ? batchesIn(state, before) : state.focus === null ? [] : [state.focus];
  const crosses = own.length > 0 && at.length > 0 && !own.some((id) => at.includes(id));
  return crosses ? "That was in another batch." : undefined;
}

function batchesIn(state: State, events: readonly KitchenEvent[]): string[] {
  return events
    .filter(({ type }) => !declarationOf(type).ofTheShelf)
    .flatMap((event) => concerns(state, event));
}

/** Puts back what was taken back last; the start of a time that counts needs a yes. */
export function decideRedo(deciding: Deciding<"redo">): Decision {
  const { state, now, wish } = deciding;
  const { withdrawn } = corrections(historyOf(state));
  const taken = historyOf(state).findLast((event) => {
    return event.type === "withdrawn" && !withdrawn.has(event.cmd);
  });
  if (taken?.type !== "withdrawn") return refused("Nothing was taken back.");
  const events = historyOf(state).filter(({ cmd }) => cmd === taken.target);
  const { state: then } = replayed(historyOf(state).filter((event) => event !== taken));
  const name = describe(then, events);
  const counts = events.some(({ type }) => CLEARS.has(declarationOf(type).timed ?? "told"));
  if (counts && !wish.confirmed) {
    return askYes(wish, `Put back ${name}? Its time would count from then. Say yes or no.`);
  }
  const misfit = misfitWithout(state, taken.cmd, now);
  if (misfit !== undefined) return refused(`I can't put back ${name}: ${misfit} came since.`);
  return done({ type: "withdrawn", target: taken.cmd, t: now });
}

const CLEARS: ReadonlySet<string> = new Set(["start"]);

/** "Forget it": asked about, and taken back only after a yes. */
export function decideForget(deciding: Deciding<"forget-it">): Decision {
  const { state, wish } = deciding;
  const told = latest(state, (one) => one.events.some(({ type }) => !declarationOf(type).undo));
  if (!told) return refused("There is nothing to forget.");
  const name = describe(state, told.events);
  const warning = warningOf(told.events) ?? otherBatch(state, told);
  const command = { ...wish.command, intent: "undo", slots: {} } as const;
  const text = `Take back ${name}?${warning ? ` ${warning}` : ""} Say yes or no.`;
  return askYes({ ...wish, command }, text);
}

/**
 * What was said last was about something else: it is taken back here and done there. `last` is the
 * command with the id it was written under.
 */
export function movedTo(
  deciding: Deciding<"instead">,
  last: { command: Command; cmd: string } | undefined,
  again: (state: State, wish: Wish) => Decision,
): Decision {
  const { state, now, wish } = deciding;
  const { ref, slots } = wish.command;
  const told = last && standingCommands(state).find(({ cmd }) => cmd === last.cmd);
  const ofJars = last !== undefined && "jars" in last.command.slots;
  if (!last || !told || (slots.jars && !ofJars)) return refused("I have nothing to move there.");
  const name = describe(state, told.events);
  const warning = warningOf(told.events);
  if (warning !== undefined) return refused(`${warning} Take back ${name} first: say undo.`);
  const misfit = misfitWithout(state, told.cmd, now);
  if (misfit !== undefined) return refused(`I can't move ${name}: ${misfit} came after it.`);
  const fact = { type: "withdrawn", target: told.cmd, t: now } as const;
  const stamped = { ...fact, cmd: "trial", w: now };
  const { state: without } = replayed([...historyOf(state), stamped]);
  const { target, jars } = slots;
  const meant = { ...(target === undefined ? {} : { target }), ...(jars ? { jars } : {}) };
  const command = { ...last.command, ...(ref ? { ref } : {}) };
  const outcome = again(without, { command: withSlots(command, meant) });
  if (outcome.kind !== "done") {
    return refused(`I can't do that with ${slots.target ?? "that"}: ${name} stays as it was.`);
  }
  return { ...outcome, facts: [fact, ...outcome.facts] };
}

export function decideCorrectTime(deciding: Deciding<"correct-time">): Decision {
  const { state, now, wish } = deciding;
  const when = happenedAt(state, wish.command.slots, now);
  if (!when.ok) return refused(when.reason);
  const told = latest(state, (one) => one.events.some(({ type }) => declarationOf(type).timed));
  const event = told?.events.find(({ type }) => declarationOf(type).timed);
  if (!told || !event) return refused("There is nothing whose time I could correct.");
  const bound = earliest(state, event);
  if (bound !== undefined && when.t < bound.at) {
    return refused(
      `That can't have been before ${bound.what}, at ${wallIso(state, bound.at).slice(11, 16)}.`,
    );
  }
  const back = event.t - when.t;
  const { timed } = declarationOf(event.type);
  if (timed === "start" && back > BACK_NEEDS_YES_MS && !wish.confirmed) {
    const minutes = Math.round(back / MINUTE_MS);
    const name = describe(state, told.events);
    return askYes(wish, `Move ${name} back by ${minutes} minutes? Say yes or no.`);
  }
  if (timed === "loss" && back < 0 && !wish.confirmed) {
    const minutes = Math.max(1, Math.round(-back / MINUTE_MS));
    const name = describe(state, told.events);
    return askYes(
      wish,
      `Move ${name} forward by ${minutes} minutes? More of its time would count. Say yes or no.`,
    );
  }
  const fact: DatedFact = { type: "amended", target: told.cmd, t: when.t };
  const before = replayed([...historyOf(state)]).misfits.length;
  const { misfits } = replayed([...historyOf(state), { ...fact, cmd: "trial", w: now }]);
  if (misfits.length > before)
    return refused("Then what was reported after it could not have happened.");
  return done(fact);
}

/** What a report cannot be earlier than: the loading, a loss, a time nobody watched. */
function earliest(state: State, event: KitchenEvent): { at: number; what: string } | undefined {
  const id = "load" in event ? event.load : "owner" in event ? event.owner : null;
  const owner = id === null ? undefined : ownerOf(state, id);
  if (!owner) return undefined;
  if (!isLoad(owner)) return { at: owner.begunAt, what: "the batch began" };
  if (event.type === "loaded") return { at: owner.openedAt, what: "the canner was lit" };
  if (declarationOf(event.type).timed !== "start")
    return { at: owner.loadedAt ?? owner.openedAt, what: "the loading" };
  const bounds = [{ at: owner.loadedAt ?? owner.openedAt, what: "the loading" }];
  for (const run of owner.stages) {
    for (const stretch of run.kept?.stretches ?? []) {
      if (stretch.to !== undefined && stretch.ended !== "out" && stretch.to <= event.t) {
        bounds.push({ at: stretch.to, what: "it was lost" });
      }
    }
  }
  for (const gap of owner.gaps) {
    if (gap.to <= event.t) bounds.push({ at: gap.to, what: "I was away" });
  }
  return bounds.reduce((latest_, one) => (one.at > latest_.at ? one : latest_));
}
