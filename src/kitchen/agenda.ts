/**
 * What comes due and when: worked out from the state and the present, so a crash loses nothing.
 * An item is recorded once, under its key; alarms ring until someone answers them.
 */

import {
  HOT_WITHIN_MINUTES,
  LOW_TEMPERATURE_READ_MINUTES,
  STAND_WARNING_MINUTES,
} from "../reckon/trade-numbers.ts";
import { nextCheck } from "./day/checks.ts";
import { courseBegin } from "./day/course.ts";
import { heatsAgain, usualMinutes, wantedAt } from "./day/expected.ts";
import { plannedBegins } from "./decide/begin/planned-begin.ts";
import { type DueWhat, planKey, type StageDue, stageDueKey, warmUpKey } from "./due-key.ts";
import type { DatedFact, PlannedItem } from "./events.ts";
import { readyJars, standingSince } from "./jars/lots.ts";
import { warmUpAt } from "./loads/next-load.ts";
import { mayStandMinutes } from "./loads/standing.ts";
import { eveningBefore, tellAt } from "./nights.ts";
import { activeOwners, isLoad, type Owner, runOf, runOfRole } from "./owners.ts";
import { readyAt } from "./settle.ts";
import { endsAt } from "./stage-run.ts";
import { hasRole, isOfCanner, rulesOf } from "./stages/kinds.ts";
import { type Batch, kitchenTimeOf, type StageRun, type State } from "./state.ts";
import { MINUTE_MS } from "./time.ts";
import {
  clockEndsAt,
  completesAt,
  current,
  isLost,
  OFF_PROCESS_LIMIT_MS,
  offMs,
  roundOf,
} from "./unbroken-time.ts";

export type DueMoment = {
  /** Made by `due-key.ts`, or the id of a timer or reminder. */
  key: string;
  at: number;
  rank: "alarm" | "prompt";
  what: DueWhat;
  owner?: Owner;
  run?: StageRun;
  /** The batch that the day's plan begins. */
  planned?: PlannedItem;
  /** How many of the same check were missed before it. */
  missed?: number;
};

/** With when it is told: later than it is due where it can wait for the morning. */
export type DueItem = DueMoment & { tellAt: number };

/** Everything still to come due, soonest first; what is already recorded is left out. */
export function agenda(state: State, now: number): DueItem[] {
  const items: DueMoment[] = [];
  for (const owner of activeOwners(state)) {
    if (!isLoad(owner) && owner.state === "abandoned") continue;
    for (const run of owner.stages) items.push(...runItems(state, owner, run));
    if (!isLoad(owner)) items.push(...waitingItems(state, owner, now));
  }
  items.push(...warningItems(state));
  for (const batch of Object.values(state.batches)) items.push(...dateItems(batch));
  for (const planned of plannedBegins(state, now)) {
    const at = planned.beginAt;
    items.push({ key: planKey(planned), at, rank: "prompt", what: "begin", planned });
  }
  for (const timer of Object.values(state.timers)) {
    if (timer.state === "running") {
      items.push({ key: timer.id, at: timer.endsAt, rank: "alarm", what: "timer" });
    }
  }
  for (const reminder of Object.values(state.reminders)) {
    if (reminder.state !== "waiting") continue;
    const at = kitchenTimeOf(state, reminder.wallMs);
    items.push({ key: reminder.id, at, rank: "alarm", what: "reminder" });
  }
  return items
    .filter((item) => state.due[item.key] === undefined)
    .map((item) => ({ ...item, tellAt: tellAt(state, item.at, item.what, item.run) }))
    .sort((a, b) => a.at - b.at);
}

/** What has come due by now, as facts with their true times. */
export function comeDue(state: State, now: number): DatedFact[] {
  return agenda(state, now)
    .filter((item) => item.tellAt <= now && item.what !== "warm-up")
    .map((item) => ({ type: "due", key: item.key, rings: item.rank === "alarm", t: item.at }));
}

/** Something of a stage that comes due. */
function stageItem(
  item: { owner: Owner; run: StageRun; what: StageDue } & Pick<DueMoment, "at" | "rank">,
  ...rounds: (string | number)[]
): DueMoment {
  const { owner, run, what } = item;
  return { ...item, key: stageDueKey({ owner: owner.id, stage: run.id, what }, ...rounds) };
}

function runItems(state: State, owner: Owner, run: StageRun): DueMoment[] {
  if (run.state === "complete") return endItem(owner, run);
  if (run.state !== "running") return [];
  const rules = rulesOf(run.spec);
  const items: DueMoment[] = [];
  const add = (what: StageDue, at: number, rank: DueMoment["rank"], ...rounds: number[]) => {
    items.push(stageItem({ owner, run, what, at, rank }, ...rounds));
  };
  const { window } = run.spec;
  if (window && run.startedAt !== undefined && rules.ends === "window") {
    if (window.minMinutes === window.maxMinutes) {
      add("end", run.startedAt + window.minMinutes * MINUTE_MS, "alarm", 0);
    } else {
      const opens = rules.window?.opens ?? "prompt";
      add("min", run.startedAt + window.minMinutes * MINUTE_MS, opens);
      add("max", run.startedAt + window.maxMinutes * MINUTE_MS, "alarm");
    }
  }
  const evening = eveningBefore(state, run);
  if (evening !== undefined) add("evening", evening, "prompt");
  for (const check of run.spec.checks ?? []) {
    const wall = nextCheck(state, run, check.cron);
    if (wall !== undefined) {
      add("check", kitchenTimeOf(state, wall), "prompt", wall / MINUTE_MS);
    }
  }
  if (run.kept) items.push(...keptItems(owner, run));
  return items;
}

/** The end of a clock is announced even when the stage ended with it. */
function endItem(owner: Owner, run: StageRun): DueMoment[] {
  const rules = rulesOf(run.spec);
  const fixed = run.spec.window?.minMinutes === run.spec.window?.maxMinutes;
  const bySelf =
    rules.ends === "kept-time" ||
    rules.ends === "wait-after-sign" ||
    (rules.ends === "sign" && (run.kept?.needMinutes ?? 0) > 0) ||
    (rules.ends === "window" && run.spec.window !== undefined && fixed);
  if (!bySelf || run.endedShort || run.endedAt === undefined) return [];
  const end = run.kept ? completesAt(run.kept) : run.endedAt;
  if (end === undefined || end !== run.endedAt) return [];
  const round = run.kept ? roundOf(run.kept) : "0";
  return [stageItem({ owner, run, what: "end", at: end, rank: "alarm" }, round)];
}

function keptItems(owner: Owner, run: StageRun): DueMoment[] {
  const { kept } = run;
  if (!kept) return [];
  const round = roundOf(kept);
  const items: DueMoment[] = [];
  const add = (what: StageDue, at: number, rank: DueMoment["rank"], ...rounds: number[]) => {
    items.push(stageItem({ owner, run, what, at, rank }, round, ...rounds));
  };
  const end = endsAt(run);
  if (end !== undefined && kept.needMinutes > 0) add("end", end, "alarm");
  const stretch = current(kept);
  const clockEnd = clockEndsAt(kept);
  if (stretch && clockEnd !== undefined && hasRole(run.spec, "treatment")) {
    const { readAt } = kept;
    if (readAt) {
      const reads = readMoments(readAt.at(-1) ?? stretch.from, clockEnd);
      reads.forEach((at, missed) => {
        const again = missed > 0 ? [missed] : [];
        add("read", at, "prompt", readAt.length, ...again);
      });
    } else {
      add("half", stretch.from + (kept.needMinutes * MINUTE_MS) / 2, "prompt");
    }
  }
  const last = kept.stretches.at(-1);
  if (isLost(kept) && last?.to !== undefined && hasRole(run.spec, "treatment")) {
    add("off", last.to + OFF_PROCESS_LIMIT_MS - offMs(kept, last.to) + 1, "alarm");
  }
  return items;
}

/** When a temperature is to be read: every few minutes after the last reading, and at the end. */
function readMoments(last: number, clockEnd: number): number[] {
  const moments: number[] = [];
  const every = LOW_TEMPERATURE_READ_MINUTES * MINUTE_MS;
  for (let at = last + every; at < clockEnd; at += every) moments.push(at);
  return last < clockEnd ? [...moments, clockEnd] : [];
}

/** Waiting stages that are late after the stage before them, or should be started soon. */
function waitingItems(state: State, batch: Batch, now: number): DueMoment[] {
  const items: DueMoment[] = [];
  const warm = warmUpAt(state, batch, now);
  if (warm !== undefined) {
    const key = warmUpKey(batch.id, batch.loads.length);
    items.push({ key, at: warm, rank: "prompt", what: "warm-up", owner: batch });
  }
  items.push(...standingItems(state, batch));
  const again = heatsAgain(state, batch, now);
  if (again) {
    const { run, at, load } = again;
    items.push(stageItem({ owner: batch, run, what: "again", at, rank: "prompt" }, load));
  }
  for (const run of batch.stages) {
    if (run.state !== "waiting" || isOfCanner(run.spec)) continue;
    for (const after of run.spec.after) {
      const end = runOf(batch, after.stage)?.endedAt;
      if (end === undefined || after.atMostMinutes === undefined) continue;
      const at = end + after.atMostMinutes * MINUTE_MS;
      items.push(stageItem({ owner: batch, run, what: "late", at, rank: "alarm" }));
    }
    const start = startByWordAt(state, batch, run, now);
    if (start !== undefined) {
      items.push(stageItem({ owner: batch, run, what: "start", at: start, rank: "prompt" }));
    }
  }
  return items;
}

/** Filled jars waiting for a canner: mentioned early, and rung before they have stood too long. */
function standingItems(state: State, batch: Batch): DueMoment[] {
  const run = runOfRole(batch, "filling");
  const filledFrom = standingSince(readyJars(batch));
  if (!run || !batch.option || filledFrom === undefined) return [];
  const due = (minutes: number, what: "stands" | "stood", rank: DueMoment["rank"]): DueMoment => {
    const at = filledFrom + minutes * MINUTE_MS;
    return stageItem({ owner: batch, run, what, at, rank }, batch.loads.length);
  };
  return [
    due(run.spec.typicalMinutes + HOT_WITHIN_MINUTES, "stands", "prompt"),
    due(mayStandMinutes(state, batch) - STAND_WARNING_MINUTES, "stood", "alarm"),
  ];
}

/** What is put on the heat is ready this long before it is wanted (our choice). */
const AHEAD_MINUTES = 10;

/**
 * When a stage that starts on a person's word should start: by the course of the day; else to be
 * ready together with the long rest beside it, or a little before what follows it can begin.
 * Undefined where that cannot be foreseen.
 */
export function startByWordAt(
  state: State,
  batch: Batch,
  run: StageRun,
  now: number,
): number | undefined {
  if (run.spec.start !== "word") return undefined;
  const ready = readyAt(state, batch, run, now);
  if (ready === undefined) return undefined;
  for (const other of batch.stages) {
    const { window } = other.spec;
    if (other.state !== "running" || !window || other.startedAt === undefined) continue;
    if (rulesOf(other.spec).ends !== "window") continue;
    const end = other.startedAt + window.minMinutes * MINUTE_MS;
    return Math.max(ready, end - run.spec.typicalMinutes * MINUTE_MS);
  }
  // Looking ahead leaves no time to spare.
  const planned = state.dayPlan ? courseBegin(state, batch, run) : undefined;
  if (planned !== undefined) return Math.max(ready, planned);
  const wanted = wantedAt(state, batch, run, now);
  const ahead = (usualMinutes(batch, run) + AHEAD_MINUTES) * MINUTE_MS;
  return wanted === undefined ? undefined : Math.max(ready, wanted - ahead);
}

/** Warnings that were asked for, one each time the clock starts. */
function warningItems(state: State): DueMoment[] {
  return state.warnings.flatMap(({ owner: id, stage, minutes }): DueMoment[] => {
    const owner = activeOwners(state).find((one) => one.id === id);
    const run = owner && runOf(owner, stage);
    const clock = run && stageClock(run);
    if (!owner || !run || !clock || clock.lost) return [];
    const round = run.kept ? roundOf(run.kept) : "0";
    const at = clock.dueAt - minutes * MINUTE_MS;
    const item = { owner, run, what: "warning", at, rank: "alarm" } as const;
    return [stageItem(item, `${round}.${minutes}`)];
  });
}

/** Shelf dates: ready to open, and best by. */
function dateItems(batch: Batch): DueMoment[] {
  if (batch.state === "abandoned") return [];
  const items: DueMoment[] = [];
  for (const run of batch.stages) {
    const { window } = run.spec;
    const { date } = rulesOf(run.spec);
    if (run.state !== "running" || run.startedAt === undefined || !window || !date) continue;
    const what = date === "from" ? "min" : "max";
    const minutes = date === "from" ? window.minMinutes : window.maxMinutes;
    const at = run.startedAt + minutes * MINUTE_MS;
    items.push(stageItem({ owner: batch, run, what, at, rank: "prompt" }));
  }
  return items;
}

/** The clock a stage shows: when it began, when it is due, and whether it has stopped. */
export type StageClock = { from: number; dueAt: number; lost: boolean };

/** What to show for a running stage that has a clock; undefined where it has none. */
export function stageClock(run: StageRun): StageClock | undefined {
  if (run.state !== "running") return undefined;
  const { kept, startedAt } = run;
  const { window } = run.spec;
  if (kept && kept.needMinutes > 0) {
    const stretch = kept.stretches.at(-1);
    if (!stretch) return undefined;
    const dueAt = stretch.from + kept.needMinutes * MINUTE_MS;
    return { from: stretch.from, dueAt, lost: stretch.to !== undefined };
  }
  if (window && startedAt !== undefined && rulesOf(run.spec).ends !== "count") {
    return { from: startedAt, dueAt: startedAt + window.minMinutes * MINUTE_MS, lost: false };
  }
  return undefined;
}
