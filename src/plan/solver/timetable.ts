import type { BoundEngine, Propagator } from "./bound-engine.ts";
import { keepSorted } from "./keep-sorted.ts";

/**
 * A renewable resource by its timetable: where an activity's latest start lies before its
 * earliest end it certainly runs, and those certain parts together must fit the capacity and
 * leave room for the others. Explanations speak of one moment.
 *
 * "Side 0" is time as it runs and "side 1" time turned round (t becomes -t), so one filter
 * moves earliest starts up and, mirrored, latest starts down.
 */
export class Timetable implements Propagator {
  readonly variables: readonly number[];
  private readonly duration: Int32Array;
  private readonly demand: Int32Array;
  private readonly capacity: number;
  private readonly byStart: Int32Array;
  private readonly byEnd: Int32Array;
  private readonly partFrom: Int32Array;
  private readonly partTo: Int32Array;
  private readonly from: Int32Array;
  private readonly to: Int32Array;
  private readonly height: Int32Array;
  private segments = 0;
  private peak = 0;

  constructor(tasks: number[], duration: number[], demand: number[], capacity: number) {
    const order = tasks.map((_, t) => t).sort((a, b) => demand[b]! - demand[a]! || a - b);
    this.variables = order.map((t) => tasks[t]!);
    this.duration = Int32Array.from(order, (t) => duration[t]!);
    this.demand = Int32Array.from(order, (t) => demand[t]!);
    this.capacity = capacity;
    const count = tasks.length;
    this.byStart = Int32Array.from(order, (_, i) => i);
    this.byEnd = this.byStart.slice();
    this.partFrom = new Int32Array(count);
    this.partTo = new Int32Array(count);
    this.from = new Int32Array(2 * count);
    this.to = new Int32Array(2 * count);
    this.height = new Int32Array(2 * count);
  }

  propagate(engine: BoundEngine): boolean {
    this.build(engine.value);
    if (this.peak > this.capacity) return this.overload(engine);
    if (this.segments === 0) return true;
    return this.filter(engine, 0) && this.filter(engine, 1);
  }

  private build(value: Int32Array): void {
    const { byStart, byEnd, partFrom, partTo } = this;
    const count = byStart.length;
    for (let i = 0; i < count; i++) {
      const x = this.variables[i]!;
      partFrom[i] = -value[2 * x + 1]!;
      partTo[i] = value[2 * x]! + this.duration[i]!;
    }
    keepSorted(byStart, partFrom);
    keepSorted(byEnd, partTo);
    let segments = 0;
    let height = 0;
    let before = 0;
    let peak = 0;
    let s = 0;
    for (let e = 0; e < count; ) {
      const starting = s < count ? byStart[s]! : -1;
      if (starting >= 0 && partFrom[starting]! >= partTo[starting]!) {
        s++;
        continue;
      }
      const ending = byEnd[e]!;
      if (partFrom[ending]! >= partTo[ending]!) {
        e++;
        continue;
      }
      const begins = starting >= 0 && partFrom[starting]! < partTo[ending]!;
      const moment = begins ? partFrom[starting]! : partTo[ending]!;
      if (moment > before && height > 0) {
        this.from[segments] = before;
        this.to[segments] = moment;
        this.height[segments++] = height;
        if (height > peak) peak = height;
      }
      before = moment;
      if (begins) {
        height += this.demand[starting]!;
        s++;
      } else {
        height -= this.demand[ending]!;
        e++;
      }
    }
    this.segments = segments;
    this.peak = peak;
  }

  private overload(engine: BoundEngine): false {
    let m = 0;
    while (this.height[m]! <= this.capacity) m++;
    engine.beginList();
    this.explainMoment(engine, (this.from[m]! + this.to[m]! - 1) >> 1, -1, this.capacity);
    return engine.fail();
  }

  /** Lists activities that certainly run at the moment, until they hold more than `room`. */
  private explainMoment(engine: BoundEngine, moment: number, but: number, room: number): void {
    const { value } = engine;
    let held = 0;
    for (let i = 0; i < this.byStart.length && held <= room; i++) {
      if (i === but) continue;
      const k = 2 * this.variables[i]!;
      const begin = moment - this.duration[i]! + 1;
      if (value[k]! < begin || value[k + 1]! < -moment) continue;
      held += this.demand[i]!;
      engine.addToList(k, begin);
      engine.addToList(k + 1, -moment);
    }
  }

  private filter(engine: BoundEngine, side: 0 | 1): boolean {
    const { value } = engine;
    for (let i = 0; i < this.byStart.length; i++) {
      const demand = this.demand[i]!;
      if (this.peak + demand <= this.capacity) break;
      const x = this.variables[i]!;
      if (value[2 * x]! + value[2 * x + 1]! === 0) continue;
      if (!this.push(engine, side, i)) return false;
    }
    return true;
  }

  private push(engine: BoundEngine, side: 0 | 1, i: number): boolean {
    const { from, to, height, segments } = this;
    const duration = this.duration[i]!;
    const demand = this.demand[i]!;
    const room = this.capacity - demand;
    const own = this.partFrom[i]! < this.partTo[i]!;
    const ownFrom = side === 0 ? this.partFrom[i]! : -this.partTo[i]!;
    const ownTo = side === 0 ? this.partTo[i]! : -this.partFrom[i]!;
    const bound = 2 * this.variables[i]! + side;
    const shift = side * duration;
    let low = engine.value[bound]! - shift;
    for (let step = 0; step < segments; step++) {
      const m = side === 0 ? step : segments - 1 - step;
      const b = side === 0 ? to[m]! : -from[m]!;
      if (b <= low) continue;
      const a = side === 0 ? from[m]! : -to[m]!;
      if (a >= low + duration) return true;
      if (own && a >= ownFrom && b <= ownTo) continue;
      if (height[m]! <= room) continue;
      while (low < b && low + duration > a) {
        const moment = Math.min(b, low + duration) - 1;
        engine.beginList();
        this.explainMoment(engine, side === 0 ? moment : -moment - 1, i, room);
        engine.addToList(bound, moment - duration + 1 + shift);
        low = moment + 1;
        if (!engine.imply(bound, low + shift)) return false;
      }
    }
    return true;
  }
}
