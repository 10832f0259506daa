import type { Budget } from "./budget.ts";
import { NO_PATH, type Problem } from "./problem.ts";
import type { ScheduleBuilder } from "./schedule-builder.ts";

const POPULATION = 40;

/**
 * Plans bred from plans: a first generation drawn by latest finish with regret-biased chances,
 * then crossings of two activity orders, each child built and improved forward and backward.
 * Works where `ScheduleBuilder.fits`.
 */
export class Breeder {
  /** Starts and length of the best plan so far. */
  readonly best: Int32Array;
  length = Number.POSITIVE_INFINITY;
  private readonly builder: ScheduleBuilder;
  private readonly random: () => number;
  private readonly n: number;
  private readonly latestFinish: Int32Array;
  private readonly successors: Int32Array[];
  private readonly blockers: Int32Array;
  private readonly orders: Int32Array[] = [];
  private readonly lengths: number[] = [];
  private readonly child: Int32Array;
  private readonly taken: Uint8Array;
  private idle = 0;
  private elder = 0;

  constructor(
    problem: Problem,
    longest: Int32Array,
    builder: ScheduleBuilder,
    random: () => number,
  ) {
    this.n = problem.count;
    this.builder = builder;
    this.random = random;
    this.best = new Int32Array(this.n);
    this.child = new Int32Array(this.n);
    this.taken = new Uint8Array(this.n);
    this.latestFinish = latestFinishes(problem, longest);
    const followers: number[][] = Array.from({ length: this.n }, () => []);
    this.blockers = new Int32Array(this.n);
    for (let e = 0; e < problem.lagFrom.length; e++) {
      followers[problem.lagFrom[e]!]!.push(problem.lagTo[e]!);
      const to = problem.lagTo[e]!;
      this.blockers[to] = this.blockers[to]! + 1;
    }
    this.successors = followers.map((list) => Int32Array.from(list));
  }

  /** Breeds until about `schedules` more were built; true where the best got better. */
  run(schedules: number, budget: Budget): boolean {
    const { builder } = this;
    const until = builder.built + schedules;
    const before = this.length;
    while (builder.built < until && !budget.over()) {
      if (this.orders.length < POPULATION) this.draw();
      else this.cross();
      const built = builder.built;
      this.judge();
      budget.used += builder.built - built;
    }
    return this.length < before;
  }

  /** Takes in a plan found elsewhere. */
  welcome(starts: ArrayLike<number>): void {
    this.builder.orderOf(starts, this.child);
    this.judge();
  }

  private judge(): void {
    const { builder, child } = this;
    let length = builder.place(child);
    for (let again = true; again; ) {
      const improved = builder.improve();
      again = improved < length;
      length = improved;
    }
    if (length < this.length) {
      this.length = length;
      this.best.set(builder.starts);
      this.idle = 0;
    }
    builder.orderOf(builder.starts, child);
    if (this.orders.length < POPULATION) {
      this.orders.push(child.slice());
      this.lengths.push(length);
      return;
    }
    this.settleIn(length);
    if (++this.idle > 40 * POPULATION) this.startOver();
  }

  /** The child replaces its second parent, unless it is worse or a duplicate. */
  private settleIn(length: number): void {
    for (let p = 0; p < POPULATION; p++)
      if (this.lengths[p] === length && same(this.orders[p]!, this.child)) return;
    if (length > this.lengths[this.elder]!) return;
    this.orders[this.elder]!.set(this.child);
    this.lengths[this.elder] = length;
  }

  /** Nothing better for a long time: keeps the best plan and draws the others again. */
  private startOver(): void {
    this.idle = 0;
    this.orders.length = 0;
    this.lengths.length = 0;
  }

  private below(limit: number): number {
    return Math.floor(this.random() * limit);
  }

  /** Draws an order: the more urgent an activity, the more likely it comes next. */
  private draw(): void {
    const waiting = this.blockers.slice();
    const ready: number[] = [];
    for (let i = 0; i < this.n; i++) if (waiting[i] === 0) ready.push(i);
    for (let at = 0; at < this.n; at++) {
      let latest = NO_PATH;
      for (const i of ready) latest = Math.max(latest, this.latestFinish[i]!);
      let sum = 0;
      for (const i of ready) sum += (latest - this.latestFinish[i]! + 1) ** 2;
      let spin = this.random() * sum;
      let chosen = 0;
      for (; chosen < ready.length - 1; chosen++) {
        spin -= (latest - this.latestFinish[ready[chosen]!]! + 1) ** 2;
        if (spin < 0) break;
      }
      const i = ready[chosen]!;
      ready[chosen] = ready[ready.length - 1]!;
      ready.pop();
      this.child[at] = i;
      for (const next of this.successors[i]!) {
        waiting[next] = waiting[next]! - 1;
        if (waiting[next] === 0) ready.push(next);
      }
    }
  }

  /** Two-point crossing: the middle follows the second parent's order, the rest the first's. */
  private cross(): void {
    this.elder = this.below(POPULATION);
    const first = this.orders[this.elder]!;
    const second = this.orders[this.below(POPULATION)]!;
    const { child, taken, n } = this;
    const width = 1 + this.below(Math.ceil(n / 2));
    const from = this.below(Math.max(1, n - width));
    const to = from + width;
    taken.fill(0);
    let write = 0;
    const copy = (source: Int32Array, until: number) => {
      for (let at = 0; write < until && at < n; at++) {
        const i = source[at]!;
        if (taken[i]) continue;
        taken[i] = 1;
        child[write++] = i;
      }
    };
    copy(first, from);
    copy(second, Math.min(to, n));
    copy(first, n);
    this.mutate();
  }

  private mutate(): void {
    for (let at = 0; at + 1 < this.n; at++) {
      if (this.random() > 0.04) continue;
      const i = this.child[at]!;
      const j = this.child[at + 1]!;
      if (this.successors[i]!.includes(j)) continue;
      this.child[at] = j;
      this.child[at + 1] = i;
    }
  }
}

function same(a: Int32Array, b: Int32Array): boolean {
  for (let i = 0; i < a.length; i++) if (a[i] !== b[i]) return false;
  return true;
}

/** Latest finishes against an end of 0, by the lags alone. */
function latestFinishes(problem: Problem, longest: Int32Array): Int32Array {
  const n = problem.count;
  const finish = new Int32Array(n);
  for (let i = 0; i < n; i++) {
    let tail = problem.duration[i]!;
    for (let j = 0; j < n; j++) {
      const path = longest[i * n + j]!;
      if (path !== NO_PATH) tail = Math.max(tail, path + problem.duration[j]!);
    }
    finish[i] = problem.duration[i]! - tail;
  }
  return finish;
}
