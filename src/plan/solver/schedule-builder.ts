import { keepSorted } from "./keep-sorted.ts";
import type { Problem } from "./problem.ts";

/**
 * Serial schedule generation for problems whose lags only ask one activity to end before another
 * starts: activities are placed one by one, each as early as lags and resources let it. The same
 * code places from the back when time is turned round, which gives forward-backward improvement.
 */
export class ScheduleBuilder {
  private readonly problem: Problem;
  private readonly units: Int32Array;
  private readonly forward: Links;
  private readonly backward: Links;
  private readonly rank: Int32Array;
  private readonly used: Int32Array;
  private readonly turned: Int32Array;
  private readonly order: Int32Array;
  private readonly none: Int32Array;
  private filled = 0;
  /** Starts of the last schedule built. */
  readonly starts: Int32Array;
  /** Schedules built so far. */
  built = 0;

  constructor(problem: Problem) {
    const n = problem.count;
    const m = problem.resources.length;
    this.problem = problem;
    this.units = new Int32Array(n * m);
    for (let i = 0; i < n; i++)
      for (let r = 0; r < m; r++) this.units[i * m + r] = problem.demand[r * n + i]!;
    this.forward = linksOf(problem, false);
    this.backward = linksOf(problem, true);
    this.rank = ranksOf(problem);
    this.used = new Int32Array((problem.reach + 1) * m);
    this.turned = new Int32Array(n);
    this.order = new Int32Array(n);
    this.none = new Int32Array(n);
    this.starts = new Int32Array(n);
  }

  /** True where this way of building fits: no maximum lags, no latest starts, no rings of lags. */
  static fits(problem: Problem): boolean {
    for (let e = 0; e < problem.lagFrom.length; e++)
      if (problem.lagMin[e]! < problem.duration[problem.lagFrom[e]!]!) return false;
    for (let i = 0; i < problem.count; i++) {
      if (!problem.counts[i]) return false;
      if (problem.latest[i]! < problem.horizon - problem.duration[i]!) return false;
    }
    return problem.horizon === problem.reach && topological(problem).length === problem.count;
  }

  /** Places in the given order, which must respect the lags; returns the length. */
  place(order: Int32Array): number {
    return this.fill(order, this.forward, this.problem.earliest, this.starts);
  }

  /** Pushes the last schedule to the back and to the front again; never longer. */
  improve(): number {
    const { starts, turned, problem, order } = this;
    const n = problem.count;
    for (let i = 0; i < n; i++) turned[i] = -(starts[i]! + problem.duration[i]!);
    this.sortBy(turned, true);
    this.fill(order, this.backward, this.none, turned);
    let length = 0;
    for (let i = 0; i < n; i++) length = Math.max(length, turned[i]! + problem.duration[i]!);
    for (let i = 0; i < n; i++) starts[i] = length - turned[i]! - problem.duration[i]!;
    this.sortBy(starts, false);
    return this.place(order);
  }

  /** Writes the activities by start into `into`, predecessors first among equals. */
  orderOf(starts: ArrayLike<number>, into: Int32Array): void {
    this.sortBy(starts, false);
    into.set(this.order);
  }

  private sortBy(key: ArrayLike<number>, turned: boolean): void {
    const n = this.order.length;
    for (let i = 0; i < n; i++) this.order[turned ? n - 1 - this.rank[i]! : this.rank[i]!] = i;
    keepSorted(this.order, key);
  }

  private fill(order: Int32Array, links: Links, earliest: Int32Array, starts: Int32Array): number {
    const { problem, used } = this;
    const m = problem.resources.length;
    this.built++;
    used.fill(0, 0, (this.filled + 1) * m);
    let length = 0;
    for (let at = 0; at < order.length; at++) {
      const i = order[at]!;
      let start = earliest[i]!;
      const last = links.head[i + 1]!;
      for (let e = links.head[i]!; e < last; e++) {
        const after = starts[links.before[e]!]! + links.least[e]!;
        if (after > start) start = after;
      }
      const duration = problem.duration[i]!;
      if (duration > 0) start = this.occupy(i * m, m, start, duration);
      starts[i] = start;
      if (start + duration > length) length = start + duration;
    }
    this.filled = length;
    return length;
  }

  private occupy(own: number, m: number, from: number, duration: number): number {
    const { used, units } = this;
    const capacity = this.problem.capacity;
    let start = from;
    for (let t = start; t < start + duration; t++) {
      const row = t * m;
      for (let r = 0; r < m; r++) {
        if (used[row + r]! + units[own + r]! <= capacity[r]!) continue;
        if (units[own + r] === 0) continue;
        start = t + 1;
        break;
      }
    }
    for (let t = start; t < start + duration; t++)
      for (let r = 0; r < m; r++) used[t * m + r] = used[t * m + r]! + units[own + r]!;
    return start;
  }
}

/** Lags into each activity: those of activity i lie from head[i] to head[i + 1]. */
type Links = { head: Int32Array; before: Int32Array; least: Int32Array };

function linksOf(problem: Problem, turned: boolean): Links {
  const { count, duration } = problem;
  const into: [number, number][][] = Array.from({ length: count }, () => []);
  for (let e = 0; e < problem.lagFrom.length; e++) {
    const i = problem.lagFrom[e]!;
    const j = problem.lagTo[e]!;
    const least = problem.lagMin[e]!;
    if (turned) into[i]!.push([j, least + duration[j]! - duration[i]!]);
    else into[j]!.push([i, least]);
  }
  const head = new Int32Array(count + 1);
  into.forEach((list, i) => {
    head[i + 1] = head[i]! + list.length;
  });
  const flat = into.flat();
  return {
    head,
    before: Int32Array.from(flat, ([before]) => before),
    least: Int32Array.from(flat, ([, least]) => least),
  };
}

/** A place for each activity such that lags point from lower to higher places. */
function ranksOf(problem: Problem): Int32Array {
  const rank = new Int32Array(problem.count);
  topological(problem).forEach((i, place) => {
    rank[i] = place;
  });
  return rank;
}

/** The activities so that lags point forward; those in or behind a ring of lags are missing. */
function topological(problem: Problem): number[] {
  const { count, lagFrom, lagTo } = problem;
  const waiting = new Int32Array(count);
  for (const to of lagTo) waiting[to] = waiting[to]! + 1;
  const ready: number[] = [];
  for (let i = 0; i < count; i++) if (waiting[i] === 0) ready.push(i);
  for (let place = 0; place < ready.length; place++) {
    for (let e = 0; e < lagFrom.length; e++) {
      if (lagFrom[e] !== ready[place]) continue;
      const to = lagTo[e]!;
      waiting[to] = waiting[to]! - 1;
      if (waiting[to] === 0) ready.push(to);
    }
  }
  return ready;
}
