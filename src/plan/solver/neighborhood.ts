import type { Network } from "./network.ts";
import type { Problem } from "./problem.ts";
import type { Guide } from "./search.ts";

/**
 * The groups of activities that lags tie together: in a kitchen, the batches. What is common to
 * them stands first.
 */
export function groupsOf(problem: Problem): number[][] {
  const leader = Int32Array.from({ length: problem.count }, (_, i) => i);
  const lead = (i: number): number => {
    let at = i;
    while (leader[at] !== at) at = leader[at]!;
    return at;
  };
  for (let e = 0; e < problem.lagFrom.length; e++) {
    const [from, to] = [problem.lagFrom[e]!, problem.lagTo[e]!];
    if (problem.common[from] === problem.common[to]) leader[lead(from)] = lead(to);
  }
  const groups = new Map<number, number[]>();
  for (let i = 0; i < problem.count; i++) {
    const group = groups.get(lead(i));
    if (group) group.push(i);
    else groups.set(lead(i), [i]);
  }
  const isCommon = (group: readonly number[]) => problem.common[group[0]!]!;
  return [...groups.values()].sort((a, b) => isCommon(b) - isCommon(a));
}

/**
 * A part of the plan to reconsider: two or three whole groups, or what lies in a stretch of
 * time. Returns the literals that keep the order of all other pairs as it is in `plan`.
 */
export function neighborhood(
  network: Network,
  plan: Int32Array,
  groups: readonly number[][],
  random: () => number,
): Guide {
  const free = new Uint8Array(network.end);
  const below = (limit: number) => Math.floor(random() * limit);
  if (groups.length > 3 && random() < 0.5) {
    const many = 2 + below(2);
    for (let g = 0; g < many; g++) for (const i of groups[below(groups.length)]!) free[i] = 1;
  } else {
    const length = plan[network.end]!;
    const width = Math.ceil(length * (0.15 + 0.2 * random()));
    const from = below(length + width) - width;
    for (let i = 0; i < network.end; i++)
      if (plan[i]! >= from && plan[i]! < from + width) free[i] = 1;
  }
  const guide: number[] = [];
  const { pairs, firstPair } = network;
  for (let p = 0; p < pairs.length / 2; p++) {
    const i = pairs[2 * p]!;
    const j = pairs[2 * p + 1]!;
    if (free[i] || free[j]) continue;
    const first = plan[i]! <= plan[j]!;
    guide.push(2 * (firstPair + p) + (first ? 0 : 1), first ? 1 : 0);
  }
  return guide;
}
