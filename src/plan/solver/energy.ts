import type { BoundEngine, Propagator } from "./bound-engine.ts";
import { keepSorted } from "./keep-sorted.ts";

/**
 * A renewable resource by its energy (duration times demand): what must lie wholly inside a
 * window may not need more than the window holds, and what would start inside it has to wait
 * until enough is left (edge-finding in its energetic form). Sides as in the timetable.
 */
export class EnergyCheck implements Propagator {
  readonly variables: readonly number[];
  private readonly duration: Int32Array;
  private readonly demand: Int32Array;
  private readonly capacity: number;
  private readonly begin: Int32Array;
  private readonly end: Int32Array;
  private readonly byBegin: Int32Array;
  private readonly byEnd: Int32Array;
  /** The same figures in order of begin, for the inner loop. */
  private readonly sortedBegin: Int32Array;
  private readonly sortedEnd: Int32Array;
  private readonly length: Int32Array;
  private readonly unit: Int32Array;
  private readonly energyOf: Int32Array;

  constructor(tasks: number[], duration: number[], demand: number[], capacity: number) {
    this.variables = tasks;
    this.duration = Int32Array.from(duration);
    this.demand = Int32Array.from(demand);
    this.capacity = capacity;
    this.begin = new Int32Array(tasks.length);
    this.end = new Int32Array(tasks.length);
    this.byBegin = Int32Array.from(tasks, (_, i) => i);
    this.byEnd = this.byBegin.slice();
    this.sortedBegin = new Int32Array(tasks.length);
    this.sortedEnd = new Int32Array(tasks.length);
    this.length = new Int32Array(tasks.length);
    this.unit = new Int32Array(tasks.length);
    this.energyOf = new Int32Array(tasks.length);
  }

  propagate(engine: BoundEngine): boolean {
    return this.sweep(engine, 0) && this.sweep(engine, 1);
  }

  private read(value: Int32Array, side: 0 | 1): void {
    for (let i = 0; i < this.begin.length; i++) {
      const k = 2 * this.variables[i]!;
      const shift = side * this.duration[i]!;
      this.begin[i] = value[k + side]! - shift;
      this.end[i] = this.duration[i]! - value[k + 1 - side]! - shift;
    }
    keepSorted(this.byBegin, this.begin);
    keepSorted(this.byEnd, this.end);
    for (let s = 0; s < this.begin.length; s++) {
      const i = this.byBegin[s]!;
      this.sortedBegin[s] = this.begin[i]!;
      this.sortedEnd[s] = this.end[i]!;
      this.length[s] = this.duration[i]!;
      this.unit[s] = this.demand[i]!;
      this.energyOf[s] = this.duration[i]! * this.demand[i]!;
    }
  }

  private sweep(engine: BoundEngine, side: 0 | 1): boolean {
    this.read(engine.value, side);
    const { begin, end, byBegin, byEnd, sortedBegin, sortedEnd, length, energyOf, unit } = this;
    const { capacity } = this;
    const count = begin.length;
    let windowEnd = -(1 << 30);
    let top = 0;
    for (let e = 0; e < count; e++) {
      if (end[byEnd[e]!]! === windowEnd) continue;
      windowEnd = end[byEnd[e]!]!;
      while (top < count && sortedBegin[top]! < windowEnd) top++;
      let energy = 0;
      let late = -1;
      let lateEnergy = 0;
      for (let s = top - 1; s >= 0; s--) {
        const from = sortedBegin[s]!;
        if (sortedEnd[s]! <= windowEnd) energy += energyOf[s]!;
        else {
          const inside = Math.min(length[s]!, windowEnd - from) * unit[s]!;
          if (inside > lateEnergy) {
            lateEnergy = inside;
            late = s;
          }
        }
        const room = capacity * (windowEnd - from) - energy;
        if (lateEnergy <= room) continue;
        if (room < 0) return this.overload(engine, side, from, windowEnd, energy);
        if (!this.delay(engine, side, byBegin[late]!, from, windowEnd, room)) return false;
        late = -1;
        lateEnergy = 0;
      }
    }
    return true;
  }

  private overload(engine: BoundEngine, side: 0 | 1, a: number, b: number, energy: number): false {
    engine.beginList();
    let spare = energy - this.capacity * (b - a) - 1;
    for (let i = 0; i < this.begin.length; i++) {
      if (this.begin[i]! < a || this.end[i]! > b) continue;
      const own = this.duration[i]! * this.demand[i]!;
      if (own <= spare) spare -= own;
      else this.explainInside(engine, side, i, a, b);
    }
    return engine.fail();
  }

  private explainInside(engine: BoundEngine, side: 0 | 1, i: number, a: number, b: number): void {
    const k = 2 * this.variables[i]!;
    const shift = side * this.duration[i]!;
    engine.addToList(k + side, a + shift);
    engine.addToList(k + 1 - side, this.duration[i]! - b - shift);
  }

  private delay(
    engine: BoundEngine,
    side: 0 | 1,
    late: number,
    a: number,
    b: number,
    room: number,
  ): boolean {
    const duration = this.duration[late]!;
    const part = Math.floor(room / this.demand[late]!);
    const bound = 2 * this.variables[late]! + side;
    const shift = side * duration;
    engine.beginList();
    for (let i = 0; i < this.begin.length; i++) {
      if (i !== late && this.begin[i]! >= a && this.end[i]! <= b)
        this.explainInside(engine, side, i, a, b);
    }
    const least = Math.min(this.begin[late]!, a - duration + part + 1);
    engine.addToList(bound, least + shift);
    return engine.imply(bound, b - part + shift);
  }
}
