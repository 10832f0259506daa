import type { Budget } from "./budget.ts";
import { ConflictLearner } from "./conflict-learner.ts";
import type { Network } from "./network.ts";
import { VariableHeap } from "./variable-heap.ts";

/** How a run of the search ended: all tried, a better plan found, or its share used up. */
type RunEnd = "exhausted" | "better" | "spent";

/** Literals taken first, in this order, where they are still open: a neighborhood's fixings. */
export type Guide = readonly number[];

/**
 * Depth-first search with learning over a network, for plans with a smaller objective. Branches
 * on the variables of recent conflicts, towards the best plan known; or, in a plain dive, always
 * starts next what can start first.
 */
export class Search {
  readonly network: Network;
  private readonly learner: ConflictLearner;
  private readonly heap: VariableHeap;
  private readonly objective: number;
  private readonly starts: number;
  /** Values of the best plan, or of the latest hint. */
  private readonly wish: Int32Array;
  private readonly budget: Budget;
  /** Below zero where the objective gains by a late start. */
  private readonly pull: Int32Array;
  private keepClauses = 3000;
  exhausted = false;
  /** Values of every variable in the best plan found here. */
  best: Int32Array | null = null;

  constructor(
    network: Network,
    objective: number,
    budget: Budget,
    weights: ReadonlyMap<number, number> = new Map(),
  ) {
    this.budget = budget;
    this.pull = Int32Array.from({ length: network.end + 1 }, (_, x) => weights.get(x) ?? 0);
    this.network = network;
    this.objective = objective;
    this.starts = network.end;
    const variables = network.engine.value.length / 2;
    this.heap = new VariableHeap(variables);
    this.wish = new Int32Array(variables);
    for (let x = 0; x < variables; x++) this.wish[x] = network.engine.lower(x);
    this.learner = new ConflictLearner(network.engine, (x) => {
      if (x > objective) this.heap.bump(x);
    });
    network.engine.released = (x) => this.heap.restore(x);
  }

  /** The least objective not yet excluded. */
  get lowerBound(): number {
    return this.network.engine.root[2 * this.objective]!;
  }

  /** Asks for plans with an objective of at most `most`, for good. */
  tighten(most: number): void {
    const { engine } = this.network;
    engine.backTo(0);
    if (!engine.assume(2 * this.objective + 1, -most) || !engine.propagate()) this.exhausted = true;
    else engine.settleRoot();
  }

  /** Tries by propagation alone whether at most `most` is refuted; the lower bound then rises. */
  probe(most: number): void {
    const { engine } = this.network;
    if (this.exhausted || !engine.propagate()) return;
    const top = 2 * this.objective + 1;
    if (engine.value[top]! >= -most || engine.lower(this.objective) > most) return;
    this.take(top, -most);
    const refuted = !engine.propagate();
    if (refuted && !this.learner.learn()) this.exhausted = true;
    engine.backTo(0);
    if (!refuted || this.exhausted) return;
    if (engine.propagate()) engine.settleRoot();
    else this.exhausted = true;
  }

  /** Makes the search look near a known plan. */
  hint(starts: ArrayLike<number>): void {
    for (let i = 0; i < this.starts; i++) this.wish[i] = starts[i]!;
    const { pairs, firstPair } = this.network;
    for (let p = 0; p < pairs.length / 2; p++)
      this.wish[firstPair + p] = starts[pairs[2 * p]!]! <= starts[pairs[2 * p + 1]!]! ? 1 : 0;
  }

  /**
   * Searches until a plan is found (it becomes `best`, and only better ones are asked for from
   * then on), all is tried, or `conflicts` or the budget ends the run. `most` is an objective to
   * try for: where it is refuted, the lower bound rises and the run goes on without it.
   */
  run(conflicts: number, dive: boolean, guide: Guide, most: number): RunEnd {
    const { engine } = this.network;
    if (this.exhausted) return "exhausted";
    let met = 0;
    let ticks = 0;
    for (;;) {
      if (!engine.propagate()) {
        this.budget.used++;
        met++;
        this.heap.decay();
        if (!this.learner.learn()) return this.end("exhausted");
        continue;
      }
      if (engine.level === 0) {
        engine.settleRoot();
        if (engine.clauses.count > this.keepClauses) this.thinOut();
      }
      if (met >= conflicts || ((++ticks & 3) === 0 && this.budget.over())) return this.end("spent");
      if (this.decide(dive, guide, most)) continue;
      this.keep();
      return this.end(this.exhausted ? "exhausted" : "better");
    }
  }

  private thinOut(): void {
    this.network.engine.clauses.thinOut(2);
    this.keepClauses += 300;
  }

  private end(how: RunEnd): RunEnd {
    this.network.engine.backTo(0);
    if (how === "exhausted") this.exhausted = true;
    return how;
  }

  /** Everything is settled at its earliest: a plan. */
  private keep(): void {
    const { engine } = this.network;
    const plan = new Int32Array(engine.value.length / 2);
    for (let x = 0; x < plan.length; x++) plan[x] = engine.lower(x);
    this.best = plan;
    this.wish.set(plan);
    this.tighten(plan[this.objective]! - 1);
  }

  /** Takes the next decision; false where none is open. */
  private decide(dive: boolean, guide: Guide, most: number): boolean {
    const { engine } = this.network;
    const top = 2 * this.objective + 1;
    if (engine.level === 0 && engine.value[top]! < -most && engine.lower(this.objective) <= most)
      return this.take(top, -most);
    for (let g = 0; g < guide.length; g += 2) {
      const bound = guide[g]!;
      const figure = guide[g + 1]!;
      if (engine.value[bound]! >= figure || engine.value[bound ^ 1]! + figure > 0) continue;
      return this.take(bound, figure);
    }
    return dive ? this.startNext() : this.branch() || this.startNext();
  }

  private take(bound: number, figure: number): true {
    this.budget.used++;
    this.network.engine.decide(bound, figure);
    return true;
  }

  private branch(): boolean {
    const { engine } = this.network;
    const x = this.heap.next(engine);
    if (x < 0) return false;
    const low = engine.lower(x);
    const wish = this.wish[x]!;
    if (wish <= low) return this.take(2 * x + 1, -low);
    if (wish >= engine.upper(x)) return this.take(2 * x, engine.upper(x));
    return this.take(2 * x + 1, -wish);
  }

  /**
   * Starts at its earliest the open activity that can start first; ties go to the latest end.
   * What gains by a late start comes after all others, and as late as it can.
   */
  private startNext(): boolean {
    const { engine } = this.network;
    let chosen = -1;
    let low = 0;
    let high = 0;
    let lateChosen = -1;
    let latest = -1;
    for (let x = 0; x <= this.starts; x++) {
      if (engine.fixed(x)) continue;
      const from = engine.lower(x);
      const to = engine.upper(x);
      if (this.pull[x]! < 0) {
        if (to <= latest) continue;
        lateChosen = x;
        latest = to;
      } else if (chosen < 0 || from < low || (from === low && to < high)) {
        chosen = x;
        low = from;
        high = to;
      }
    }
    if (chosen >= 0) return this.take(2 * chosen + 1, -low);
    if (lateChosen >= 0) return this.take(2 * lateChosen, latest);
    for (const x of this.network.sums)
      if (!engine.fixed(x)) return this.take(2 * x + 1, -engine.lower(x));
    return false;
  }
}
