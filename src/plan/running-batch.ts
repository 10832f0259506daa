/** A running batch, as the planner sees it: what has happened is a fact, the rest is open. */

import { historyOf } from "../kitchen/events.ts";
import { largestLoad, loadsOf } from "../kitchen/jars/canner-room.ts";
import { allFilled, filled, jarsExpected, liveLots, ready } from "../kitchen/jars/lots.ts";
import { openLoad } from "../kitchen/loads/open-load.ts";
import { runOf, runOfRole, runOfStep } from "../kitchen/owners.ts";
import { isOver } from "../kitchen/stage-run.ts";
import { cool } from "../kitchen/stages/cool.ts";
import { hasRole, rulesOf } from "../kitchen/stages/kinds.ts";
import { process } from "../kitchen/stages/process.ts";
import type { Batch, Load, StageRun, State } from "../kitchen/state.ts";
import { MINUTE_MS } from "../kitchen/time.ts";
import { clockEndsAt } from "../kitchen/unbroken-time.ts";
import type { Stage } from "../recipe/recipe.ts";
import {
  LID_WAIT_MINUTES,
  SETTLE_MINUTES,
  STILL_HOT_MINUTES,
  TO_ZERO_MINUTES,
} from "../reckon/trade-numbers.ts";
import { dayBatch, type StageLength } from "./day-batches.ts";
import { CANNER_STAGE, type PlanStep, planSteps } from "./plan-loads.ts";
import type { PlanBatch, PlanLot, PlanStage } from "./plan-request.ts";
import { lotsLabel } from "./wanted-batch.ts";

type Happened = { startedMs?: number; endedMs?: number; minutes?: number };

/** Heat off, and jars lifted out. */
const OUT_MINUTES = 6;
/** A stage past its usual time is taken to need this share of it again. */
const OVERDUE_PART = 0.15;
const OVERDUE_MINUTES = 5;

/** The steps of the day, with what has happened to them; undefined where nothing is left to do. */
export function runningBatch(
  state: State,
  batch: Batch,
  now: number,
  lengthOf: (stage: Stage) => StageLength,
): PlanBatch | undefined {
  const loads = loadsFor(state, batch);
  const day = new RunningDay(state, batch, now, loads);
  const steps = planSteps(dayBatch(day.asPlanned(), lengthOf));
  const stages = steps.map((step) => day.withFacts(step));
  const work = stages.filter(({ id, afterwards }) => id !== CANNER_STAGE && !afterwards);
  if (work.every((stage) => stage.endedMs !== undefined)) return undefined;
  const { id } = batch;
  return { id, label: day.label, stages: stages.map((stage) => withoutLost(stage, stages)) };
}

/** Its lots, with the weight the recipe is written for where none is known. */
export function lotsOf(batch: Batch): PlanLot[] {
  return liveLots(batch).map(({ id, variety, weightLb, expectedJars: jars }) => {
    return { id, variety, weightLb: weightLb ?? batch.recipe.yield.weightLb, jars };
  });
}

/** Loads its jars went into, and the one open for its next jars. */
function loadsFor(state: State, batch: Batch): Load[] {
  const gone = loadsOf(state, batch).filter((load) => load.loadedAt !== undefined);
  const open = openLoad(state, batch);
  return open && !gone.includes(open) ? [...gone, open] : gone;
}

class RunningDay {
  readonly label: string;
  private readonly gone: number;

  constructor(
    private readonly state: State,
    private readonly batch: Batch,
    private readonly now: number,
    private readonly loads: readonly Load[],
  ) {
    this.label = lotsLabel(
      batch.recipe,
      liveLots(batch).map(({ variety }) => variety),
    );
    this.gone = loads.filter((load) => load.loadedAt !== undefined).length;
  }

  /** The batch, by the number of jars it is now known to make. */
  asPlanned() {
    const { batch, state, gone } = this;
    const { id, recipe, terms, jar } = batch;
    const perLoad = jar ? Math.max(1, largestLoad(state, jar)) : 1;
    const expected = allFilled(batch) ? filled(batch) : (jarsExpected(batch) ?? filled(batch));
    const least = gone + (ready(batch) > 0 || !allFilled(batch) ? 1 : 0);
    const needed = allFilled(batch) && ready(batch) === 0 ? gone : Math.ceil(expected / perLoad);
    const loads = Math.max(1, least, needed);
    const count = Math.min(loads * perLoad, Math.max(expected, (loads - 1) * perLoad + 1));
    const jars = terms && jar ? { count, perLoad } : null;
    return { id, label: this.label, recipe, lots: lotsOf(batch), jar, terms, jars };
  }

  withFacts(step: PlanStep): PlanStage {
    const happened = this.happened(step, step.load ?? 1);
    const { batch, stage, load, ...plain } = step;
    return { ...plain, ...happened };
  }

  private happened(step: PlanStep, load: number): Happened {
    switch (step.stage) {
      case "canner":
        return this.cannerWarm();
      case process.kind:
        return this.inCanner(step, this.loads[load - 1]);
      case cool.kind: {
        const out = this.loads[load - 1]?.unloadedAt;
        return out === undefined ? {} : { startedMs: out };
      }
      default: {
        const run = runOf(this.batch, step.stage);
        if (!run) return {};
        return hasRole(step, "filling") ? this.filled(step, run, load) : this.own(step, run);
      }
    }
  }

  private own(step: PlanStage, run: StageRun): Happened {
    if (isOver(run)) {
      const endedMs = run.endedAt ?? this.batch.begunAt;
      return { startedMs: run.startedAt ?? endedMs, endedMs };
    }
    if (run.state !== "running" || run.startedAt === undefined) return {};
    const boils = run.kept && clockEndsAt(run.kept);
    const known = boils && (boils - run.startedAt) / MINUTE_MS;
    return this.going(step, run.startedAt, known);
  }

  /** Something going on: it ends when its clock says, or after its usual time and a little more. */
  private going(step: PlanStage, startedMs: number, known?: number): Happened {
    const elapsed = (this.now - startedMs) / MINUTE_MS;
    const overdue = elapsed + Math.max(OVERDUE_MINUTES, OVERDUE_PART * step.minutes);
    const usual = elapsed < step.minutes ? step.minutes : overdue;
    return { startedMs, minutes: Math.max(known ?? usual, elapsed) };
  }

  /** Jars of one load: filled and in the canner, filled and waiting, or being filled. */
  private filled(step: PlanStage, run: StageRun, load: number): Happened {
    const { batch, gone } = this;
    const canner = this.loads[load - 1];
    const from = Math.max(
      run.startedAt ?? 0,
      canner ? (runOfStep(canner, "canner")?.endedAt ?? 0) : 0,
    );
    if (load <= gone) {
      const at = canner?.loadedAt ?? this.now;
      return { startedMs: Math.min(from, at), endedMs: at };
    }
    if (load > gone + 1 || run.startedAt === undefined) return {};
    if (ready(batch) > 0 || isOver(run)) {
      const at = run.endedAt ?? this.lastFilled() ?? this.now;
      return { startedMs: Math.min(from, at), endedMs: at };
    }
    const hot = canner && runOfStep(canner, "canner")?.state === "complete";
    return hot ? this.going(step, from) : {};
  }

  private lastFilled(): number | undefined {
    return historyOf(this.state).findLast(
      (event) => event.type === "jars-filled" && event.batch === this.batch.id,
    )?.t;
  }

  /** A canner that is being made hot, or is hot, for its next jars. */
  private cannerWarm(): Happened {
    const open = this.loads.find((load) => load.loadedAt === undefined);
    const run = open && runOfStep(open, "canner");
    if (run?.startedAt === undefined) return {};
    const minutes = run.spec.typicalMinutes;
    if (run.endedAt !== undefined) return { startedMs: run.startedAt, endedMs: run.endedAt };
    const elapsed = (this.now - run.startedAt) / MINUTE_MS;
    return { startedMs: run.startedAt, minutes: Math.max(minutes, elapsed + OVERDUE_MINUTES) };
  }

  /** From the first jar going in to the last coming out. */
  private inCanner(step: PlanStage, load: Load | undefined): Happened {
    if (load?.loadedAt === undefined) return {};
    const startedMs = load.loadedAt;
    if (load.unloadedAt !== undefined) return { startedMs, endedMs: load.unloadedAt };
    const process = runOfRole(load, "treatment");
    const end = process?.endedAt ?? (process?.kept && clockEndsAt(process.kept));
    const pressure = load.terms?.method === "pressure";
    const down = pressure ? TO_ZERO_MINUTES + LID_WAIT_MINUTES : SETTLE_MINUTES;
    const known = end && (end - startedMs) / MINUTE_MS + down + OUT_MINUTES;
    return this.going(step, startedMs, known);
  }
}

/** How many canners are warming, in use, or were a short time ago. */
export function hotCanners(state: State, now: number): number {
  const hot = Object.values(state.loads).filter((load) => {
    if (load.state === "abandoned") return false;
    return now - (load.unloadedAt ?? now) <= STILL_HOT_MINUTES * MINUTE_MS;
  });
  return new Set(hot.map(({ canner }) => canner)).size;
}

/**
 * The batch cooks once, however many loads it has: food that waits for a later load was kept hot,
 * so windows no longer count from that cooking.
 */
function withoutLost(stage: PlanStage, stages: readonly PlanStage[]): PlanStage {
  if (!/@([2-9]|\d\d)$/.test(stage.id)) return stage;
  const after = stage.after.map((link) => {
    const before = stages.find(({ id }) => id === link.stage);
    const single = before?.startedMs !== undefined && rulesOf(before).plan.burner;
    if (!single) return link;
    const { atMostMinutes, ...rest } = link;
    return rest;
  });
  return { ...stage, after };
}
