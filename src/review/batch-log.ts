/**
 * The batch log as in the published JSON: planned and actual, and what departed from the recipe.
 */

import { agreedStep } from "../kitchen/day/course.ts";
import { batchDeviations, eachOnce } from "../kitchen/deviations.ts";
import { loadsWith, lotCounts } from "../kitchen/jars/canner-room.ts";
import type { BatchLot } from "../kitchen/jars/jar.ts";
import { shortForms } from "../kitchen/jars/jar-ids.ts";
import { jarsIn, type LotOf, loadJars, lotsIn, tally } from "../kitchen/jars/lots.ts";
import { loadRestarts } from "../kitchen/loads/load-deviations.ts";
import { runOfRole } from "../kitchen/owners.ts";
import { seenFor } from "../kitchen/places.ts";
import { isOfCanner } from "../kitchen/stages/kinds.ts";
import { type Batch, type Load, type StageRun, type State, wallOf } from "../kitchen/state.ts";
import { isoWithOffset, MINUTE_MS } from "../kitchen/time.ts";
import { achievedMinutes, completesAt } from "../kitchen/unbroken-time.ts";
import { rounded } from "../reckon/reckoned.ts";
import { type JarRecord, jarRecords } from "./shelf/jar-records.ts";
import { type Tasting, tastingOf } from "./shelf/tasting.ts";
import { judgeBatch, judgeLoad } from "./verdict.ts";

export type StageLog = {
  id: string;
  kind: string;
  title: string;
  state: string;
  planned: { minMinutes: number; maxMinutes: number };
  /** When it was to go on by the day's plan that was agreed to. */
  agreed: { from: string; to: string } | null;
  startedAt: string | null;
  endedAt: string | null;
  minutes: number;
  restarts: number;
  load: string | null;
};

type ProcessLog = {
  testedMinutes: number;
  pressurePsi: number | null;
  source: string;
  achievedMinutes: number;
  restarts: number;
  state: string;
};

export type BatchLog = {
  id: string;
  recipe: string;
  title: string;
  method: string;
  lot: { variety: string | null; weightLb: number | null; pickedAt: string | null };
  /** The other lots of its batch. */
  sharesWith: string[];
  jar: string | null;
  pack: string | null;
  altitudeFt: number | null;
  state: string;
  begunAt: string;
  endedAt: string | null;
  mark: string;
  /** Begun in a rehearsal: its jars do not exist. */
  rehearsal: boolean;
  source: string;
  stages: StageLog[];
  process: ProcessLog | null;
  jars: ReturnType<typeof lotCounts> | null;
  /** Its jars one by one. */
  jarList: JarRecord[];
  /** Jars found spoiled, with their numbers where they were said. */
  spoiled: { at: string; fate: "spoiled"; count: number; jars: number[]; sign: string }[];
  /** Jars opened as food, with their numbers where they were said; spoiled ones are apart. */
  opened: { at: string; count: number; jars: number[] }[];
  tastings: Tasting[];
  /** Where it was liked better, and than which lot. */
  preferred: { at: string; taster: string | null; over: string | null }[];
  loads: string[];
  confirmed: { factor: string; at: string; value?: number }[];
  readings: { at: string; what: string; value: number; unit: string }[];
  deviations: {
    code: string;
    stage: string | null;
    at: string;
    detail: string;
    disposition: string;
  }[];
  notes: { at: string; text: string }[];
  /** What was said while jars were at stake and raised a doubt, and how it was answered. */
  heard: { at: string; text: string; strength: string; asked: boolean; answered: string | null }[];
  verdict: string;
  reasons: string[];
};

export type LoadLog = {
  id: string;
  canner: string;
  jar: string | null;
  jars: number;
  batches: { id: string; jars: number }[];
  process: ProcessLog | null;
  verdict: string;
  reasons: string[];
};

type TimerLog = {
  id: string;
  label: string | null;
  minutes: number;
  endsAt: string;
  state: string;
};

export type Review = { batches: BatchLog[]; loads: LoadLog[]; timers: TimerLog[] };

/**
 * The log as plain data, for all batches or for some with their loads; `now` is kitchen time, for
 * what is still running.
 */
export function review(
  state: State,
  now: number,
  batches: readonly Batch[] = Object.values(state.batches),
): Review {
  const wanted = new Set(batches.map((batch) => batch.id));
  const shortOf = shortForms(state);
  return {
    batches: batches.flatMap(lotsIn).map(({ batch, lot }) => {
      return batchLog(state, batch, now, lot, shortOf);
    }),
    loads: Object.values(state.loads)
      .filter((load) => load.parts.some((part) => wanted.has(part.batch)))
      .map((load) => loadLog(state, load, now)),
    timers: Object.values(state.timers).map((timer) => ({
      id: timer.id,
      label: timer.label,
      minutes: timer.minutes,
      endsAt: iso(seenFor(state, timer.id), timer.endsAt),
      state: timer.state,
    })),
  };
}

function iso(state: State, t: number): string {
  return isoWithOffset(Math.round(wallOf(state, t)), state.zone);
}

function maybe(state: State, t: number | undefined): string | null {
  return t === undefined ? null : iso(state, t);
}

/** The row of one lot of a batch, by itself the first: the pots they share are in each. */
export function batchLog(
  seen: State,
  batch: Batch,
  now: number,
  lot = batch.lots[0] as BatchLot,
  shortOf = shortForms(seen),
): BatchLog {
  const state = seenFor(seen, batch.id);
  const loads = loadsWith(state, batch, [lot]);
  const deviations = batchDeviations(state, batch, now, lot);
  const judged = judgeBatch(state, batch, deviations, lot);
  const terms = loads[0]?.terms ?? batch.terms;
  const readings = [...batch.readings, ...loads.flatMap((load) => load.readings)];
  const others = batch.lots.filter((one) => one !== lot);
  return {
    id: lot.id,
    recipe: batch.recipe.id,
    title: batch.recipe.title,
    method: batch.option?.method ?? keptAs(batch),
    lot: {
      variety: lot.variety,
      weightLb: lot.weightLb,
      pickedAt: lot.pickedAt === null ? null : iso(state, lot.pickedAt),
    },
    sharesWith: others.map(({ id }) => id),
    jar: batch.jar,
    pack: batch.pack,
    altitudeFt: terms?.altitudeFt ?? state.kitchen.altitudeFt,
    state: lot.abandonedAt === undefined ? batch.state : "abandoned",
    begunAt: iso(state, lot.addedAt),
    endedAt: maybe(state, lot.abandonedAt ?? batch.endedAt),
    mark: lot.mark,
    rehearsal: batch.rehearsal,
    source: [batch.recipe.source.publication, batch.recipe.source.guide].filter(Boolean).join(", "),
    stages: stageLogs(state, batch, now, [lot]),
    process: batch.option ? processOf(state, { batch, lot }, loads, now) : null,
    jars: batch.option ? lotCounts(state, batch, lot) : null,
    jarList: jarRecords(state, { batch, lot }, now, { shortOf, deviations }),
    spoiled: spoiledOf(state, lot),
    opened: openedOf(state, lot),
    ...tastedOf(state, lot),
    loads: loads.map((load) => load.id),
    confirmed: batch.confirmed
      .filter((one) => one.held)
      .map(({ factor, at, value }) => {
        return { factor, at: iso(state, at), ...(value === undefined ? {} : { value }) };
      }),
    readings: readings
      .sort((a, b) => a.at - b.at)
      .map(({ at, what, value, unit }) => ({ at: iso(state, at), what, value, unit })),
    deviations: eachOnce(deviations).map(({ only: _, ...one }) => ({
      ...one,
      at: iso(state, one.at),
    })),
    notes: batch.notes.map(({ at, text }) => ({ at: iso(state, at), text })),
    heard: (loads.length > 0 ? loads : [batch]).flatMap((one) => heardOf(state, one)),
    ...judged,
  };
}

/** Jars found spoiled, those found at one time together. */
function spoiledOf(state: State, lot: BatchLot): BatchLog["spoiled"] {
  const found = new Map<string, BatchLog["spoiled"][number]>();
  for (const { gone, number, guessed } of lot.jars) {
    if (gone?.what !== "spoiled") continue;
    const { at, sign = "off" } = gone;
    const known = found.get(`${at} ${sign}`);
    const one = known ?? { at: iso(state, at), fate: "spoiled", count: 0, jars: [], sign };
    one.count += 1;
    if (!guessed && number > 0) one.jars.push(number);
    found.set(`${at} ${sign}`, one);
  }
  return [...found.values()];
}

/** Jars opened and eaten, those opened at one time together. */
function openedOf(state: State, lot: BatchLot): BatchLog["opened"] {
  const found = new Map<number, BatchLog["opened"][number]>();
  for (const { left, gone, number, guessed } of lot.jars) {
    if (left?.what !== "opened" || gone) continue;
    const one = found.get(left.at) ?? { at: iso(state, left.at), count: 0, jars: [] };
    one.count += 1;
    if (!guessed && number > 0) one.jars.push(number);
    found.set(left.at, one);
  }
  return [...found].sort(([a], [b]) => a - b).map(([, one]) => one);
}

function tastedOf(state: State, { id }: BatchLot): Pick<BatchLog, "tastings" | "preferred"> {
  const tastings = state.tastings.filter(({ batch }) => batch === id);
  const preferred = state.preferences.filter(({ batch }) => batch === id);
  return {
    tastings: tastings.map((one) => tastingOf(state, one)),
    preferred: preferred.map(({ at, taster, over }) => ({ at: iso(state, at), taster, over })),
  };
}

function heardOf(state: State, { heard }: Load | Batch): BatchLog["heard"] {
  return heard.map(({ at, text, strength, settledAt, held, asked }) => {
    const answered =
      held === undefined ? (settledAt === undefined ? null : "lost") : held ? "well" : "not well";
    return { at: iso(state, at), text, strength, asked: asked === true, answered };
  });
}

/** How a batch is kept if it goes through no canner. */
function keptAs(batch: Batch): string {
  return batch.recipe.tested ? batch.recipe.keptAs : "refrigerator";
}

/** One stage of a batch or of one of its loads, under an id that is unique in the batch's log. */
type PlacedRun = { id: string; run: StageRun; load: Load | null };

/** The recipe's stages, with those of the loads where the recipe has its process. */
export function stagesInOrder(batch: Batch, loads: readonly Load[]): PlacedRun[] {
  const placed: PlacedRun[] = [];
  let loadsDone = loads.length === 0;
  for (const run of batch.stages) {
    if (!isOfCanner(run.spec) || !batch.option || loads.length === 0) {
      const brews = batch.poured.flatMap((runs) => runs.find(({ id }) => id === run.id) ?? []);
      [...brews, run].forEach((one, index) => {
        placed.push({ id: index === 0 ? run.id : `${run.id}-${index + 1}`, run: one, load: null });
      });
    } else if (!loadsDone) {
      loadsDone = true;
      loads.forEach((load, index) => {
        const tail = index === 0 ? "" : `-${index + 1}`;
        for (const one of load.stages) placed.push({ id: `${one.id}${tail}`, run: one, load });
      });
    }
  }
  return placed;
}

/** The stages that some lots of a batch went through. */
export function stageLogs(
  state: State,
  batch: Batch,
  now: number,
  lots: readonly BatchLot[],
): StageLog[] {
  return stagesInOrder(batch, loadsWith(state, batch, lots)).map(({ id, run, load }) => {
    const step = agreedStep(batch, run.id, load ? batch.loads.indexOf(load.id) + 1 : undefined);
    const at = (t: number) => maybe(state, t) ?? "";
    const agreed = step ? { from: at(step.from), to: at(step.to) } : null;
    return { ...stageLog(state, batch, run, now, load?.id ?? null), id, agreed };
  });
}

function stageLog(
  state: State,
  batch: Batch,
  run: StageRun,
  now: number,
  load: string | null,
): Omit<StageLog, "agreed"> {
  const { window, typicalMinutes, kind } = run.spec;
  const end = run.endedAt ?? (run.startedAt === undefined ? undefined : now);
  const minutes =
    run.startedAt === undefined || end === undefined ? 0 : (end - run.startedAt) / MINUTE_MS;
  const need = run.kept && run.kept.needMinutes > 0 ? run.kept.needMinutes : undefined;
  const held = batch.state === "held" && run.state === "running" && load === null;
  return {
    id: run.id,
    kind,
    title: run.spec.title,
    state: held ? "held" : run.state,
    planned: {
      minMinutes: window?.minMinutes ?? need ?? typicalMinutes,
      maxMinutes: window?.maxMinutes ?? need ?? typicalMinutes,
    },
    startedAt: maybe(state, run.startedAt),
    endedAt: maybe(state, run.endedAt),
    minutes: rounded(minutes, 2),
    restarts: run.kept ? Math.max(0, run.kept.stretches.length - 1) : 0,
    load,
  };
}

/** The least of its loads' unbroken minutes, and all their restarts. */
function processOf(
  state: State,
  { batch, lot }: LotOf,
  loads: Load[],
  now: number,
): ProcessLog | null {
  const logs = loads.flatMap((load) => {
    const part = load.parts.find((one) => one.lot === lot.id);
    const counts = part && tally(state, load, part);
    return counts && counts.jars > counts.again ? (processLog(load, now) ?? []) : [];
  });
  const [first] = logs;
  if (!first) {
    const { terms } = batch;
    if (!terms) return null;
    return {
      testedMinutes: terms.minutes,
      pressurePsi: terms.pressurePsi,
      source: terms.source,
      achievedMinutes: 0,
      restarts: 0,
      state: "waiting",
    };
  }
  const worst = logs.reduce((a, b) => (b.achievedMinutes < a.achievedMinutes ? b : a));
  const open = logs.find((log) => log.state !== "complete");
  return {
    ...worst,
    restarts: logs.reduce((sum, log) => sum + log.restarts, 0),
    state: open?.state ?? worst.state,
  };
}

function processLog(load: Load, now: number): ProcessLog | null {
  const { terms } = load;
  const run = runOfRole(load, "treatment");
  if (!terms || !run?.kept) return null;
  return {
    testedMinutes: terms.minutes,
    pressurePsi: terms.pressurePsi,
    source: terms.source,
    achievedMinutes: rounded(achievedMinutes(run.kept, stillKeptUntil(run, now)), 2),
    restarts: loadRestarts(load),
    state: run.state,
  };
}

/** Until when a process that nobody ended is known to have held: its full time, or so far. */
function stillKeptUntil({ kept }: StageRun, now: number): number {
  return Math.min((kept && completesAt(kept)) ?? now, now);
}

function loadLog(state: State, load: Load, now: number): LoadLog {
  const judged = judgeLoad(state, load);
  return {
    id: load.id,
    canner: load.canner,
    jar: load.terms?.jar ?? null,
    jars: loadJars(state, load).length,
    batches: load.parts.map((part) => ({ id: part.lot, jars: jarsIn(state, load, part).length })),
    process: processLog(load, now),
    ...judged,
  };
}
