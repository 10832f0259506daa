import { BoundEngine, type BoundLag, type Propagator } from "./bound-engine.ts";
import { closureOf } from "./closure.ts";
import { EnergyCheck } from "./energy.ts";
import { LinearSum } from "./linear-sum.ts";
import { NO_PATH, type Problem } from "./problem.ts";
import { Timetable } from "./timetable.ts";

/** A weighted sum of starts to be made small, or kept within `most`. */
export type Sum = { weights: Map<number, number>; most?: number };

/** A problem inside the engine: variables 0 to count-1 are starts, then the end, then the rest. */
export type Network = {
  engine: BoundEngine;
  end: number;
  /** Variable of each sum, in order. */
  sums: number[];
  /** Pairs that cannot overlap: variable firstPair + p is 1 where pairs[2p] comes first. */
  firstPair: number;
  pairs: Int32Array;
};

/** More pairs than this would cost more to propagate than they save. */
const MOST_PAIRS = 9000;

/** Builds the engine; null where lags and single resources already rule out every plan. */
export function networkOf(problem: Problem, sums: readonly Sum[] = []): Network | null {
  const n = problem.count;
  const ordered = orderPairs(problem);
  if (!ordered) return null;
  const { forced, pairs } = ordered;
  const firstSum = n + 1;
  const firstPair = firstSum + sums.length;
  const variables = firstPair + pairs.length / 2;
  const lower = new Int32Array(variables);
  const upper = new Int32Array(variables).fill(1);
  lower.set(problem.earliest);
  upper.set(problem.latest);
  upper[n] = problem.horizon;
  for (let x = 0; x < variables; x++) if (lower[x]! > upper[x]!) return null;
  const lags: BoundLag[] = [];
  for (let e = 0; e < problem.lagFrom.length; e++)
    addLag(lags, problem.lagFrom[e]!, problem.lagTo[e]!, problem.lagMin[e]!, -1);
  for (let e = 0; e < forced.length; e += 3)
    addLag(lags, forced[e]!, forced[e + 1]!, forced[e + 2]!, -1);
  for (let i = 0; i < n; i++) {
    if (problem.counts[i]) addLag(lags, i, n, problem.duration[i]!, -1);
  }
  for (let p = 0; p < pairs.length / 2; p++) {
    const when = 2 * (firstPair + p);
    const i = pairs[2 * p]!;
    const j = pairs[2 * p + 1]!;
    addLag(lags, i, j, problem.duration[i]!, when);
    addLag(lags, j, i, problem.duration[j]!, when + 1);
  }
  const propagators = resourceRules(problem, pairs.length / 2);
  sums.forEach((sum, s) => {
    const rule = new LinearSum(firstSum + s, sum.weights);
    const [least, most] = rule.range(lower, upper);
    lower[firstSum + s] = least;
    upper[firstSum + s] = Math.min(most, sum.most ?? most);
    propagators.push(rule);
  });
  for (let s = 0; s < sums.length; s++)
    if (lower[firstSum + s]! > upper[firstSum + s]!) return null;
  const engine = new BoundEngine(lower, upper, lags, propagators);
  if (!engine.propagateAll()) return null;
  engine.settleRoot();
  return { engine, end: n, sums: sums.map((_, s) => firstSum + s), firstPair, pairs };
}

function addLag(lags: BoundLag[], i: number, j: number, least: number, when: number): void {
  lags.push({ from: 2 * i, to: 2 * j, least, when });
  lags.push({ from: 2 * j + 1, to: 2 * i + 1, least, when });
}

/**
 * The timetable for what several activities can share, the energy check for what only one can
 * have at a time (elsewhere it costs more than it saves, measured); pairs do the rest.
 */
function resourceRules(problem: Problem, pairCount: number): Propagator[] {
  const n = problem.count;
  const early: Propagator[] = [];
  const late: Propagator[] = [];
  for (let r = 0; r < problem.resources.length; r++) {
    const capacity = problem.capacity[r]!;
    const tasks: number[] = [];
    let total = 0;
    let single = true;
    for (let i = 0; i < n; i++) {
      const demand = problem.demand[r * n + i]!;
      if (demand === 0 || problem.duration[i] === 0) continue;
      tasks.push(i);
      total += demand;
      if (2 * demand <= capacity) single = false;
    }
    if (total <= capacity || tasks.length < 2) continue;
    const durations = tasks.map((i) => problem.duration[i]!);
    const demands = tasks.map((i) => problem.demand[r * n + i]!);
    if (!single || pairCount === 0) early.push(new Timetable(tasks, durations, demands, capacity));
    if (single) late.push(new EnergyCheck(tasks, durations, demands, capacity));
  }
  return early.concat(late);
}

/**
 * Which of two activities that cannot run together must come first, by the lags between them; what
 * stays open becomes a pair. Repeats while the lags found this way force others.
 */
function orderPairs(problem: Problem): { forced: number[]; pairs: Int32Array } | null {
  const n = problem.count;
  const clashing = clashingPairs(problem);
  if (clashing.length / 2 > MOST_PAIRS) return { forced: [], pairs: new Int32Array(0) };
  const forced: number[] = [];
  for (;;) {
    const { longest, ring } = closureOf(problem, forced);
    if (ring) return null;
    const open: number[] = [];
    const before = forced.length;
    for (let p = 0; p < clashing.length; p += 2) {
      const i = clashing[p]!;
      const j = clashing[p + 1]!;
      const ahead = longest[i * n + j]!;
      const behind = longest[j * n + i]!;
      const [di, dj] = [problem.duration[i]!, problem.duration[j]!];
      if (ahead >= di || behind >= dj) continue;
      const iCanLead = behind === NO_PATH || -behind >= di;
      const jCanLead = ahead === NO_PATH || -ahead >= dj;
      if (!iCanLead && !jCanLead) return null;
      if (!jCanLead) forced.push(i, j, di);
      else if (!iCanLead) forced.push(j, i, dj);
      else open.push(i, j);
    }
    if (forced.length === before) return { forced, pairs: Int32Array.from(open) };
  }
}

function clashingPairs(problem: Problem): number[] {
  const n = problem.count;
  const pairs: number[] = [];
  for (let i = 0; i < n; i++) {
    if (problem.duration[i] === 0) continue;
    for (let j = i + 1; j < n; j++) {
      if (problem.duration[j] === 0) continue;
      for (let r = 0; r < problem.resources.length; r++) {
        const [a, b] = [problem.demand[r * n + i]!, problem.demand[r * n + j]!];
        if (a === 0 || b === 0 || a + b <= problem.capacity[r]!) continue;
        pairs.push(i, j);
        break;
      }
    }
  }
  return pairs;
}
