/** Whether a probe reads often and finely enough for what it is to speak for. */
import { BLIND_MS } from "./probe-rules.ts";

/** How a probe has read of late. */
export type Fitness = { lastT?: number; intervals: number[]; steps: number[] };

/** What is wrong with it: it may then neither begin nor vouch for anything. */
export type Unfit = "slow" | "coarse";

/** Judged by its last readings, so that a probe that was set right is heeded again. */
const LOOKED_AT = { intervals: 2, steps: 10 };
const FEWEST_STEPS = 3;
/** The coarsest step that still tells a loss from noise: degrees F, or psi (our choice). */
const COARSEST = { temperature: 1, pressure: 0.5 };

export function newFitness(): Fitness {
  return { intervals: [], steps: [] };
}

/** Takes a reading at `t`, ms, shown to a `step`; the answer is what is wrong, if anything is. */
export function judgeFitness(
  fitness: Fitness,
  { t, step }: { t: number; step: number },
  kind: keyof typeof COARSEST,
): Unfit | undefined {
  const { intervals, steps } = fitness;
  if (fitness.lastT !== undefined) intervals.push(t - fitness.lastT);
  fitness.lastT = t;
  if (intervals.length > LOOKED_AT.intervals) intervals.shift();
  steps.push(step);
  if (steps.length > LOOKED_AT.steps) steps.shift();
  const slow = intervals.length === LOOKED_AT.intervals && Math.min(...intervals) > BLIND_MS;
  if (slow) return "slow";
  const coarse = steps.length >= FEWEST_STEPS && Math.min(...steps) > COARSEST[kind];
  return coarse ? "coarse" : undefined;
}
