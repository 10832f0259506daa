import type { BoundEngine, Propagator } from "./bound-engine.ts";

/** total >= the weighted sum of variables, both ways: its least, and what each may still be. */
export class LinearSum implements Propagator {
  readonly variables: readonly number[];
  private readonly total: number;
  private readonly terms: Int32Array;
  private readonly bounds: Int32Array;
  private readonly sizes: Int32Array;

  constructor(total: number, weights: ReadonlyMap<number, number>) {
    this.total = total;
    const used = [...weights].filter(([, weight]) => weight !== 0);
    this.terms = Int32Array.from(used, ([x]) => x);
    this.bounds = Int32Array.from(used, ([x, weight]) => 2 * x + (weight > 0 ? 0 : 1));
    this.sizes = Int32Array.from(used, ([, weight]) => Math.abs(weight));
    this.variables = [...this.terms, total];
  }

  /** Least and greatest sum over plain ranges. */
  range(lower: Int32Array, upper: Int32Array): [number, number] {
    let least = 0;
    let most = 0;
    this.terms.forEach((x, t) => {
      const up = (this.bounds[t]! & 1) === 0;
      least += this.sizes[t]! * (up ? lower[x]! : -upper[x]!);
      most += this.sizes[t]! * (up ? upper[x]! : -lower[x]!);
    });
    return [least, most];
  }

  propagate(engine: BoundEngine): boolean {
    const { value } = engine;
    let least = 0;
    for (let t = 0; t < this.terms.length; t++) least += this.sizes[t]! * value[this.bounds[t]!]!;
    if (least > value[2 * this.total]!) {
      engine.beginList();
      this.explain(engine, -1);
      if (!engine.imply(2 * this.total, least)) return false;
    }
    const most = -value[2 * this.total + 1]!;
    const spare = most - least;
    for (let t = 0; t < this.terms.length; t++) {
      const bound = this.bounds[t]!;
      const size = this.sizes[t]!;
      const highest = value[bound]! + Math.floor(spare / size);
      if (-value[bound ^ 1]! <= highest) continue;
      engine.beginList();
      this.explain(engine, t);
      engine.addToList(2 * this.total + 1, -most);
      if (!engine.imply(bound ^ 1, -highest)) return false;
    }
    return true;
  }

  private explain(engine: BoundEngine, but: number): void {
    for (let t = 0; t < this.terms.length; t++) {
      const bound = this.bounds[t]!;
      if (t !== but) engine.addToList(bound, engine.value[bound]!);
    }
  }
}
