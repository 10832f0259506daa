import type { Budget } from "./budget.ts";
import { closureOf } from "./closure.ts";
import { Breeder } from "./genetic.ts";
import { Inserter } from "./insertion.ts";
import { groupsOf, neighborhood } from "./neighborhood.ts";
import { type Network, networkOf, type Sum } from "./network.ts";
import type { Problem } from "./problem.ts";
import { ScheduleBuilder } from "./schedule-builder.ts";
import { Search } from "./search.ts";

/** One objective over one problem; `target` is "length" or the number of a sum. */
type Task = {
  problem: Problem;
  sums: readonly Sum[];
  target: "length" | number;
  /** A plan already known. */
  known: Int32Array | null;
  random: () => number;
  budget: Budget;
};

export type SearchResult = {
  plan: Int32Array | null;
  value: number;
  lowerBound: number;
  /** Nothing smaller exists; without a plan: none exists. */
  proved: boolean;
};

/** Above this many activities, the exact search gets only what the quick methods leave over. */
const LARGE = 250;
const RUN_CONFLICTS = 50;
const NEAR_CONFLICTS = 60;
/** Nodes within which small problems are proved; searching near the plan begins after that. */
const SETTLED = 3000;
const NO_TARGET = 1 << 28;

/** Searches for the plan with the smallest objective within the budget. */
export function minimize(task: Task): SearchResult {
  return new Minimiser(task).run();
}

class Minimiser {
  private readonly task: Task;
  private plan: Int32Array | null;
  private value = Number.POSITIVE_INFINITY;
  private readonly groups: number[][];
  private rounds = 0;

  constructor(task: Task) {
    this.task = task;
    this.plan = task.known;
    this.groups = groupsOf(task.problem);
    if (task.known) this.value = this.measure(task.known);
  }

  run(): SearchResult {
    const { task } = this;
    const breeder = this.breeder();
    if (breeder) this.breed(breeder, 300);
    else if (task.target === "length" && !task.known) this.insert();
    if (this.plan && task.budget.glance) return this.outcome(0, false);
    const network = networkOf(task.problem, task.sums);
    if (!network) return this.outcome(task.problem.horizon, true);
    const objective = task.target === "length" ? network.end : network.sums[task.target]!;
    const weights = task.target === "length" ? undefined : task.sums[task.target]!.weights;
    const search = new Search(network, objective, task.budget, weights);
    if (this.plan) {
      search.hint(this.plan);
      search.tighten(this.value - 1);
      this.raiseBound(search);
    }
    while (!search.exhausted && !task.budget.over()) this.round(network, search, breeder);
    return this.outcome(search.lowerBound, search.exhausted);
  }

  private outcome(lowerBound: number, proved: boolean): SearchResult {
    const { plan, value } = this;
    if (!plan) return { plan, value: -1, lowerBound, proved };
    return { plan, value, lowerBound: proved ? value : Math.min(lowerBound, value), proved };
  }

  private measure(starts: ArrayLike<number>): number {
    const { problem, target, sums } = this.task;
    let value = 0;
    if (target !== "length") {
      for (const [i, weight] of sums[target]!.weights) value += weight * starts[i]!;
      return value;
    }
    for (let i = 0; i < problem.count; i++)
      if (problem.counts[i]) value = Math.max(value, starts[i]! + problem.duration[i]!);
    return value;
  }

  /** Keeps a plan where it is better and in time; true where it is. */
  private take(starts: ArrayLike<number>): boolean {
    const value = this.measure(starts);
    if (value >= this.value) return false;
    if (this.task.target === "length" && value > this.task.problem.horizon) return false;
    this.plan = Int32Array.from({ length: this.task.problem.count }, (_, i) => starts[i]!);
    this.value = value;
    return true;
  }

  private breeder(): Breeder | null {
    const { problem, target, random } = this.task;
    if (target !== "length" || problem.count === 0 || !ScheduleBuilder.fits(problem)) return null;
    const { longest, ring } = closureOf(problem);
    return ring ? null : new Breeder(problem, longest, new ScheduleBuilder(problem), random);
  }

  private breed(breeder: Breeder, schedules: number): boolean {
    breeder.run(schedules, this.task.budget);
    return Number.isFinite(breeder.length) && this.take(breeder.best);
  }

  /** First plans group by group, in orders that change a little as long as that helps. */
  private insert(): void {
    const { problem, budget, random } = this.task;
    const inserter = new Inserter(problem);
    const below = (limit: number) => Math.floor(random() * limit);
    const common = this.groups.filter(([first]) => problem.common[first!]).length;
    let order = this.groups.map((_, g) => g);
    let length = Number.POSITIVE_INFINITY;
    const tries = problem.count > LARGE ? Number.POSITIVE_INFINITY : 12 * this.groups.length;
    for (let n = 0; n === 0 || (n < tries && !budget.passed(0.6)); n++) {
      const changed = order.slice();
      for (let moves = n === 0 ? 0 : 1 + below(2); moves > 0; moves--) {
        const own = changed.length - common;
        const [moved] = changed.splice(common + below(own), 1);
        if (moved !== undefined) changed.splice(common + below(own), 0, moved);
      }
      budget.used += this.groups.length;
      if (!inserter.build(this.groups, changed)) continue;
      if (inserter.length() > length) continue;
      length = inserter.length();
      order = changed;
      this.take(inserter.starts);
    }
  }

  /** Halves the range of the objective as long as propagation alone refutes the lower half. */
  private raiseBound(search: Search): void {
    let low = search.lowerBound - 1;
    let high = this.value - 1;
    while (high - low > 1 && !search.exhausted) {
      const middle = (low + high) >> 1;
      search.probe(middle);
      if (search.exhausted || search.lowerBound > middle) low = middle;
      else high = middle;
    }
  }

  private round(network: Network, search: Search, breeder: Breeder | null): void {
    const { random, budget, problem, target } = this.task;
    if (breeder && this.breed(breeder, 50 * problem.count)) {
      search.hint(this.plan!);
      search.tighten(this.value - 1);
    }
    const before = search.best;
    const round = ++this.rounds;
    const near = target === "length" ? budget.used > SETTLED && round % 4 === 0 : round % 3 > 0;
    if (this.plan && !breeder && near) {
      const guide = neighborhood(network, this.plan, this.groups, random);
      search.run(NEAR_CONFLICTS, false, guide, NO_TARGET);
    } else {
      search.run(RUN_CONFLICTS * luby(round), !this.plan, [], this.aim(search, round));
    }
    if (search.best === before || !this.take(search.best!)) return;
    breeder?.welcome(this.plan!);
    if (before === null) this.raiseBound(search);
  }

  /** Now and then asks for much more than a step: a leap, or a better lower bound. */
  private aim(search: Search, round: number): number {
    if (!this.plan || round % 6 !== 1) return NO_TARGET;
    return this.value - 1 - Math.floor((this.value - 1 - search.lowerBound) * 0.3);
  }
}

/** 1 1 2 1 1 2 4 1 1 2 ...: run lengths that cost little, whatever the best length is. */
function luby(place: number): number {
  let size = 1;
  while (2 ** size - 1 < place) size++;
  if (2 ** size - 1 === place) return 2 ** (size - 1);
  return luby(place - 2 ** (size - 1) + 1);
}
