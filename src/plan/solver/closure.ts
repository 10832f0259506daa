import { NO_PATH, type Problem } from "./problem.ts";

/** Longest lags between all pairs; `ring` is a cycle of lags that cannot all hold, if any. */
type Closure = { longest: Int32Array; ring: number[] | null };

/**
 * Longest-path closure of the lags: longest[i * count + j] is the least start(j) - start(i), or
 * NO_PATH. Rows without a path are skipped, so separate batches cost only their own size cubed.
 */
export function closureOf(problem: Problem, extra: readonly number[] = []): Closure {
  const n = problem.count;
  const longest = new Int32Array(n * n).fill(NO_PATH);
  for (let i = 0; i < n; i++) longest[i * n + i] = 0;
  for (let e = 0; e < problem.lagFrom.length; e++) {
    const cell = problem.lagFrom[e]! * n + problem.lagTo[e]!;
    longest[cell] = Math.max(longest[cell]!, problem.lagMin[e]!);
  }
  for (let e = 0; e < extra.length; e += 3) {
    const cell = extra[e]! * n + extra[e + 1]!;
    longest[cell] = Math.max(longest[cell]!, extra[e + 2]!);
  }
  for (let k = 0; k < n; k++) {
    for (let i = 0; i < n; i++) {
      const head = longest[i * n + k]!;
      if (head === NO_PATH || i === k) continue;
      for (let j = 0; j < n; j++) {
        const tail = longest[k * n + j]!;
        if (tail === NO_PATH) continue;
        if (head + tail > longest[i * n + j]!) longest[i * n + j] = head + tail;
      }
      if (longest[i * n + i]! > 0) return { longest, ring: ringThrough(problem) };
    }
  }
  for (let i = 0; i < n; i++)
    if (longest[i * n + i]! > 0) return { longest, ring: ringThrough(problem) };
  return { longest, ring: null };
}

/** The lags (by number) of one cycle whose sum is above zero, found by relaxing n times. */
function ringThrough(problem: Problem): number[] {
  const n = problem.count;
  const reach = new Float64Array(n);
  const by = new Int32Array(n).fill(-1);
  let touched = -1;
  for (let round = 0; round <= n; round++) {
    touched = -1;
    for (let e = 0; e < problem.lagFrom.length; e++) {
      const to = problem.lagTo[e]!;
      const value = reach[problem.lagFrom[e]!]! + problem.lagMin[e]!;
      if (value <= reach[to]!) continue;
      reach[to] = value;
      by[to] = e;
      touched = to;
    }
    if (touched < 0) return [];
  }
  let at = touched;
  for (let step = 0; step < n; step++) at = problem.lagFrom[by[at]!]!;
  const ring: number[] = [];
  let node = at;
  do {
    ring.push(by[node]!);
    node = problem.lagFrom[by[node]!]!;
  } while (node !== at);
  return ring.reverse();
}
