import { closureOf } from "./closure.ts";
import { NO_PATH, type Problem } from "./problem.ts";

/**
 * Plans built group by group (in a kitchen: batch by batch): each group goes in as early as the
 * groups before it leave room, maximum lags kept. Where an activity can only start too late for one
 * placed before it, that one waits and the group is placed again. Quick at any size.
 */
export class Inserter {
  /** Starts of the last plan built. */
  readonly starts: Int32Array;
  private readonly problem: Problem;
  private readonly longest: Int32Array;
  private readonly used: Int32Array;
  private readonly low: Int32Array;
  private readonly span: number;
  /** What is placed already that all groups may wait for. */
  private readonly ahead: number[] = [];

  constructor(problem: Problem) {
    this.problem = problem;
    this.longest = closureOf(problem).longest;
    this.span = problem.reach + 1;
    this.used = new Int32Array(this.span * problem.resources.length);
    this.low = new Int32Array(problem.count);
    this.starts = new Int32Array(problem.count);
  }

  /** Places the groups in this order; false where one finds no room. */
  build(groups: readonly number[][], order: readonly number[]): boolean {
    this.used.fill(0);
    this.ahead.length = 0;
    for (const g of order) if (!this.placeGroup(groups[g]!)) return false;
    return true;
  }

  /** The latest counted end of the last plan. */
  length(): number {
    let length = 0;
    for (let i = 0; i < this.problem.count; i++) {
      if (!this.problem.counts[i]) continue;
      length = Math.max(length, this.starts[i]! + this.problem.duration[i]!);
    }
    return length;
  }

  private placeGroup(group: readonly number[]): boolean {
    const { low, problem } = this;
    for (const i of group) low[i] = Math.max(problem.earliest[i]!, this.afterCommon(i));
    for (const i of group) this.raise(group, i, low[i]!);
    const order = group.slice();
    for (let attempt = 0; attempt < 40 * group.length; attempt++) {
      order.sort((a, b) => low[a]! - low[b]! || this.longest[b * problem.count + a]!);
      const placed = this.tryOrder(group, order);
      if (placed === "done") {
        if (problem.common[group[0]!]) this.ahead.push(...group);
        return true;
      }
      if (placed === "impossible") return false;
    }
    return false;
  }

  private afterCommon(i: number): number {
    let after = 0;
    for (const j of this.ahead) {
      const path = this.longest[j * this.problem.count + i]!;
      if (path !== NO_PATH) after = Math.max(after, this.starts[j]! + path);
    }
    return after;
  }

  /** Raises the earliest start of i, and of what follows from it. */
  private raise(group: readonly number[], i: number, least: number): void {
    const row = i * this.problem.count;
    for (const j of group) {
      const path = this.longest[row + j]!;
      if (path !== NO_PATH) this.low[j] = Math.max(this.low[j]!, least + path);
    }
  }

  private tryOrder(group: readonly number[], order: readonly number[]) {
    const { problem, longest, starts } = this;
    const n = problem.count;
    for (let at = 0; at < order.length; at++) {
      const i = order[at]!;
      let from = this.low[i]!;
      let most = problem.latest[i]!;
      let holder = -1;
      for (let before = 0; before < at; before++) {
        const j = order[before]!;
        const ahead = longest[j * n + i]!;
        if (ahead !== NO_PATH) from = Math.max(from, starts[j]! + ahead);
        const behind = longest[i * n + j]!;
        if (behind === NO_PATH || starts[j]! - behind >= most) continue;
        most = starts[j]! - behind;
        holder = j;
      }
      const start = this.firstRoom(i, from);
      if (start <= most) {
        starts[i] = start;
        this.occupy(i, start, 1);
        continue;
      }
      for (let before = 0; before < at; before++)
        this.occupy(order[before]!, starts[order[before]!]!, -1);
      if (holder < 0) return "impossible";
      this.raise(group, holder, start + longest[i * n + holder]!);
      return "again";
    }
    return "done";
  }

  private firstRoom(i: number, from: number): number {
    const { problem, used, span } = this;
    const duration = problem.duration[i]!;
    let start = from;
    for (let moved = duration > 0; moved; ) {
      moved = false;
      for (let r = 0; r < problem.resources.length; r++) {
        const units = problem.demand[r * problem.count + i]!;
        if (units === 0) continue;
        const room = problem.capacity[r]! - units;
        for (let t = Math.min(start + duration, span) - 1; t >= start; t--) {
          if (used[r * span + t]! <= room) continue;
          start = t + 1;
          moved = true;
          break;
        }
      }
    }
    return start;
  }

  private occupy(i: number, start: number, sign: 1 | -1): void {
    const { problem, used, span } = this;
    const end = Math.min(start + problem.duration[i]!, span);
    for (let r = 0; r < problem.resources.length; r++) {
      const units = sign * problem.demand[r * problem.count + i]!;
      if (units === 0) continue;
      for (let t = start; t < end; t++) used[r * span + t] = used[r * span + t]! + units;
    }
  }
}
