/** "Can I turn it off", "what happens if I stop": from the clocks, the plan and the rules. */

import { stageClock } from "../../kitchen/agenda.ts";
import type { CommandOf, Meant } from "../../kitchen/command.ts";
import { handsBusy } from "../../kitchen/decide/begin/planned-begin.ts";
import { queue } from "../../kitchen/loads/next-load.ts";
import { ownerIds } from "../../kitchen/meant.ts";
import { inCanner, runOfRole, runOfStep } from "../../kitchen/owners.ts";
import { REPROCESS_WITHIN_MS } from "../../kitchen/questions/dispositions.ts";
import { readyAt } from "../../kitchen/settle.ts";
import { batchName, loadName, ownerName, upper } from "../../kitchen/spoken-names.ts";
import type { Batch, Load, StageRun, State } from "../../kitchen/state.ts";
import { isLost, OFF_PROCESS_LIMIT_MS, offMs } from "../../kitchen/unbroken-time.ts";
import { inchesWords } from "../../reckon/number-words.ts";
import {
  COOLING_APART_IN,
  LID_WAIT_MINUTES,
  REPROCESS_WITHIN_HOURS,
  SETTLE_MINUTES,
} from "../../reckon/trade-numbers.ts";
import { ASK_EXTENSION, SOURCES, withSource } from "../texts/own-text.ts";
import { type ClockAct, PERMISSIONS } from "../texts/permissions.ts";
import { heatedOnStove, runningBatches } from "./in-mind.ts";
import { mayLeave } from "./leaving.ts";
import { allMinutes, atMoment, leftUntil, minuteWords } from "./time-left.ts";

type Asked = { state: State; ref: Meant | undefined; now: number };

const NOTHING_ON = "Nothing that I know of is on the heat.";

/** The load that was named, else the one whose time runs, else the first in a canner. */
function loadMeant({ state, ref }: Asked): Load | undefined {
  const loads = inCanner(state);
  const named = ownerIds(ref?.running ?? []);
  return (
    loads.find((load) => named.has(load.id) || load.parts.some(({ batch }) => named.has(batch))) ??
    loads.find((load) => runOfRole(load, "treatment")?.state === "running") ??
    loads[0]
  );
}

/** A load's process: every load has one. */
function processOf(load: Load): StageRun {
  return runOfRole(load, "treatment") as StageRun;
}

/** Where a load is between the lighting of its canner and the lifting of its jars. */
type Phase = "empty" | "coming-up" | "timed" | "lost" | "full" | "off" | "unload";

function phaseOf(load: Load): Phase {
  if (load.loadedAt === undefined) return "empty";
  const process = runOfRole(load, "treatment");
  if (process?.kept && process.state === "running") {
    if (isLost(process.kept)) return "lost";
    return process.kept.stretches.length > 0 ? "timed" : "coming-up";
  }
  if (process?.state === "waiting") return "coming-up";
  if (runOfStep(load, "unload")?.state === "running") return "unload";
  return runOfStep(load, "heat-off")?.state === "running" ? "full" : "off";
}

function needed(load: Load): number {
  return runOfRole(load, "treatment")?.kept?.needMinutes ?? load.terms?.minutes ?? 0;
}

/** "Six minutes are left, until 12:29"; where a question holds the end up, that instead. */
function stillTimed({ state, now }: Asked, run: StageRun): string {
  const clock = stageClock(run);
  if (!clock || clock.dueAt <= now) return "its time waits for your answer";
  return leftUntil(state, clock.dueAt, now);
}

const SHUT = "Leave it shut: the pressure has to fall to zero by itself.";
const SETTLING = `the jars wait ${minuteWords(SETTLE_MINUTES)}`;

function heatOff(asked: Asked): string {
  const load = loadMeant(asked);
  if (!load) return potOff(asked);
  const process = processOf(load);
  switch (phaseOf(load)) {
    case "empty":
      return "Yes, no jars are in it. But it will have to warm up again before they go in.";
    case "coming-up":
      return "No: its time hasn't begun. Leave the heat high until it has, and tell me.";
    case "timed":
      return `No: ${stillTimed(asked, process)}.`;
    case "lost":
      return `No: bring it back up. Then ${allMinutes(needed(load))} start again.`;
    case "full":
      if (load.terms?.method === "pressure") return `Yes. ${SHUT}`;
      if (load.terms?.method === "steam") return `Yes. Leave the dome on, and ${SETTLING}.`;
      return `Yes, and take the lid off, away from you. Then ${SETTLING}.`;
    default:
      return "Yes: its time is full. The heat should be off already.";
  }
}

/** A pot on the stove that boils for a time. */
function potOff(asked: Asked): string {
  const pot = heatedOnStove(asked.state, asked.ref);
  if (!pot) return NOTHING_ON;
  const name = `${ownerName(asked.state, pot.owner)}, ${pot.run.spec.title}`;
  const clock = stageClock(pot.run);
  if (clock?.lost) return `No: ${name} has gone off the boil. Bring it back first.`;
  if (clock && clock.dueAt > asked.now) {
    return `No: ${stillTimed(asked, pot.run)} for ${name}.`;
  }
  return `Not yet: ${name} hasn't come to its heat, as far as I know.`;
}

function open(asked: Asked): string {
  const load = loadMeant(asked);
  if (!load) return "There's nothing in a canner that I know of.";
  const process = processOf(load);
  const phase = phaseOf(load);
  if (phase === "empty") return "Yes: no jars are in it.";
  if (load.terms?.method === "pressure") return openUnderPressure(asked, load, phase);
  if (phase === "timed") {
    return `Leave it on: ${stillTimed(asked, process)}. Lifting it can lose the boil.`;
  }
  if (phase === "coming-up" || phase === "lost") return "Leave it on: it comes up sooner so.";
  if (phase === "full") return "When the heat is off: then lift it away from you.";
  return load.terms?.method === "steam" && phase !== "unload"
    ? `Leave the dome on while ${SETTLING}.`
    : "Yes: lift it away from you.";
}

function openUnderPressure({ state, now }: Asked, load: Load, phase: Phase): string {
  if (phase === "unload") return "Yes: weight off, unlock it, and lift the lid away from you.";
  const zero = runOfRole(load, "coming-down");
  const clock = zero && stageClock(zero);
  if (clock && !clock.lost && clock.dueAt > now) {
    return `Not yet: ${leftUntil(state, clock.dueAt, now)}.`;
  }
  const wait = minuteWords(LID_WAIT_MINUTES);
  return `No, never under pressure. It falls to zero by itself; then tell me, and wait ${wait}.`;
}

function takeOut(asked: Asked): string {
  const load = loadMeant(asked);
  if (!load) return "There's nothing in a canner that I know of.";
  const process = processOf(load);
  switch (phaseOf(load)) {
    case "empty":
      return "Yes: it isn't loaded yet, as far as I know.";
    case "coming-up":
      return "No: the time hasn't begun.";
    case "timed":
      return `No: ${stillTimed(asked, process)}.`;
    case "lost":
      return "They aren't done: bring it back up, and the whole time starts again.";
    case "full":
      return `Not yet: heat off first. Tell me, and I'll time the wait.`;
    case "unload":
      return `Yes: straight up, and ${inchesWords(COOLING_APART_IN)} apart, out of drafts.`;
    case "off": {
      const settle = stageClock(runOfStep(load, "settle") ?? process);
      if (!settle || settle.dueAt <= asked.now) return open(asked);
      return `Not yet: ${leftUntil(asked.state, settle.dueAt, asked.now)}.`;
    }
  }
}

function stop(asked: Asked): string {
  const load = loadMeant(asked);
  const phase = load && phaseOf(load);
  const from = `By ${SOURCES.general}.`;
  if (load && phase === "timed") {
    const process = processOf(load);
    const again = `If it stops, ${allMinutes(needed(load))} start again`;
    return `${upper(stillTimed(asked, process))}. ${again}. ${from}`;
  }
  if (load && phase === "lost") {
    return `It has stopped: bring it back, and ${allMinutes(needed(load))} start again. ${from}`;
  }
  if (load && phase === "coming-up") return "Its time hasn't begun, so none is lost.";
  const pot = heatedOnStove(asked.state, asked.ref);
  if (pot && stageClock(pot.run)) return "Then its boiling time starts again from the next boil.";
  return "Nothing that would have to start over is running just now.";
}

/** "Can I begin the beets now": what they would wait for. */
function begin(asked: Asked & { recipe: string | undefined; named: string | undefined }): string {
  const { state, ref, now, named } = asked;
  const ids = ownerIds(ref?.running ?? []);
  const batch = runningBatches(state).find(({ id }) => ids.has(id));
  if (batch) return beginStage(state, batch, now);
  const load = inCanner(state)[0];
  const process = load && runOfRole(load, "treatment");
  const clock = process && stageClock(process);
  const until = clock && clock.dueAt > now ? ` ${atMoment(state, clock.dueAt, now)}` : "";
  const then = until && ` until${until.replace(/^ at/, "")}`;
  const taken = load ? ` The canner has ${loadName(state, load)}${then}.` : "";
  if (handsBusy(state, now)) return `Other work has your hands now; finish that first.${taken}`;
  const line = queue(state, now)[0];
  const waits = line ? ` ${upper(batchName(line))} is next for the canner.` : "";
  return `It can begin: say start ${named ?? "and its name"}.${taken || waits}`;
}

function beginStage(state: State, batch: Batch, now: number): string {
  const name = batchName(batch);
  if (batch.state === "held") return `${upper(name)} is held. Say resume to go on.`;
  const waiting = batch.stages.find((run) => run.state === "waiting" && run.spec.start === "word");
  const at = waiting && readyAt(state, batch, waiting, now);
  if (waiting && at !== undefined && at <= now)
    return `It can begin: say start the ${waiting.spec.title}.`;
  if (waiting && at !== undefined) {
    return `Not yet: ${waiting.spec.title} can begin ${atMoment(state, at, now)}.`;
  }
  const running = batch.stages.find((run) => run.state === "running");
  return `${upper(name)} has begun${running ? `: it's at ${running.spec.title}` : ""}.`;
}

/** Whether jars may still be processed again, by when they came out. */
function reprocess({ state, now }: Asked): string {
  const rule = withSource(PERMISSIONS.reprocess);
  const last = Object.values(state.loads)
    .flatMap(({ unloadedAt }) => unloadedAt ?? [])
    .reduce((latest, at) => Math.max(latest, at), 0);
  if (last === 0 || now <= last + REPROCESS_WITHIN_MS) return rule;
  return (
    `The last jars came out more than ${REPROCESS_WITHIN_HOURS} hours ago. ` +
    "What didn't seal is thrown out now."
  );
}

/** Whether a lost process may still be started over. */
function startOver(asked: Asked): string {
  const load = loadMeant(asked);
  const kept = load && runOfRole(load, "treatment")?.kept;
  if (!kept || !isLost(kept)) return withSource(PERMISSIONS["start-over"]);
  const left = OFF_PROCESS_LIMIT_MS - offMs(kept, asked.now);
  if (left <= 0) return "It's been off too long to start over. Say what becomes of the jars.";
  const by = atMoment(asked.state, asked.now + left - 60_000, asked.now).replace(/^at /, "");
  const again = `${allMinutes(needed(load))} start again`;
  return `There is time until ${by}: bring it back up, and ${again}.`;
}

const CLOCKS: Record<ClockAct, (asked: Asked) => string> = {
  "heat-off": heatOff,
  open,
  "take-out": takeOut,
  stop,
  leave: ({ state, now }) => mayLeave(state, now),
  begin: (asked) => begin({ ...asked, recipe: undefined, named: undefined }),
};

function isOfClock(act: string): act is ClockAct {
  return Object.hasOwn(CLOCKS, act);
}

export function mayI(
  state: State,
  { slots: { act, target }, ref }: CommandOf<"may-i">,
  now: number,
): string {
  const asked = { state, ref, now };
  if (act === undefined) return `${ASK_EXTENSION} The recipe as it stands is what was tested.`;
  if (act === "begin") return begin({ ...asked, recipe: undefined, named: target });
  if (act === "reprocess") return reprocess(asked);
  if (act === "start-over") return startOver(asked);
  return isOfClock(act) ? CLOCKS[act](asked) : withSource(PERMISSIONS[act]);
}
