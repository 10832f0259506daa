import { BY_CLAUSE } from "./bound-reasons.ts";

/**
 * The engine as clauses use it: the value of each bound, and a way to add what a clause implies.
 */
type Bounds = {
  readonly value: Int32Array;
  enqueue(bound: number, figure: number, kind: number, a: number, b: number, c: number): boolean;
};

/**
 * Learned clauses: at least one literal of each must hold. Two literals of every clause are
 * watched; the list of bound k names the clauses that lose a watched literal when k reaches a
 * threshold. A clause is [literal count, quality, bound, figure, bound, figure, ...].
 */
export class ClauseStore {
  private data = new Int32Array(1 << 16);
  private size = 0;
  private readonly watches: number[][];
  count = 0;

  constructor(bounds: number) {
    this.watches = Array.from({ length: bounds }, () => []);
  }

  /** Adds a clause of two or more literals (pairs in `literals`); returns where it lies. */
  add(literals: readonly number[], quality: number): number {
    const ref = this.size;
    const need = literals.length + 2;
    while (this.size + need > this.data.length) {
      const larger = new Int32Array(this.data.length * 2);
      larger.set(this.data);
      this.data = larger;
    }
    this.data[ref] = literals.length / 2;
    this.data[ref + 1] = quality;
    for (let i = 0; i < literals.length; i++) this.data[ref + 2 + i] = literals[i]!;
    this.size += need;
    this.count++;
    this.watch(ref, ref + 2);
    this.watch(ref, ref + 4);
    return ref;
  }

  private watch(ref: number, at: number): void {
    this.watches[this.data[at]! ^ 1]!.push(1 - this.data[at + 1]!, ref);
  }

  /** The opposites of all literals but the first, which is the one that was concluded. */
  addOpposites(ref: number, out: number[]): void {
    const end = ref + 2 + 2 * this.data[ref]!;
    for (let at = ref + 4; at < end; at += 2) out.push(this.data[at]! ^ 1, 1 - this.data[at + 1]!);
  }

  /** Bound k grew from `old` to `now`: visits the clauses that lost a watched literal. */
  visit(engine: Bounds, k: number, old: number, now: number): boolean {
    const list = this.watches[k]!;
    const value = engine.value;
    let keep = 0;
    for (let read = 0; read < list.length; read += 2) {
      const threshold = list[read]!;
      const ref = list[read + 1]!;
      if (threshold > old && threshold <= now && this.moveWatch(value, ref, k, threshold)) continue;
      list[keep++] = threshold;
      list[keep++] = ref;
      if (threshold <= old || threshold > now) continue;
      const first = ref + 2;
      const bound = this.data[first]!;
      const figure = this.data[first + 1]!;
      if (value[bound]! >= figure) continue;
      if (engine.enqueue(bound, figure, BY_CLAUSE, ref, 0, 0)) continue;
      for (read += 2; read < list.length; read++) list[keep++] = list[read]!;
      list.length = keep;
      return false;
    }
    list.length = keep;
    return true;
  }

  /** Finds another literal for the clause to watch; true where the old watch is dropped. */
  private moveWatch(value: Int32Array, ref: number, k: number, threshold: number): boolean {
    const data = this.data;
    const first = ref + 2;
    const second = ref + 4;
    if (data[first] === (k ^ 1) && data[first + 1] === 1 - threshold) {
      data[first] = data[second]!;
      data[first + 1] = data[second + 1]!;
      data[second] = k ^ 1;
      data[second + 1] = 1 - threshold;
    }
    if (value[data[first]!]! >= data[first + 1]!) return false;
    const end = first + 2 * data[ref]!;
    for (let at = ref + 6; at < end; at += 2) {
      const bound = data[at]!;
      const figure = data[at + 1]!;
      if (value[bound ^ 1]! + figure > 0) continue;
      data[at] = k ^ 1;
      data[at + 1] = 1 - threshold;
      data[second] = bound;
      data[second + 1] = figure;
      this.watches[bound ^ 1]!.push(1 - figure, ref);
      return true;
    }
    return false;
  }

  /**
   * Keeps the clauses of quality up to `always` and the better half of the others. Only at
   * level 0, where no clause is a reason: places change.
   */
  thinOut(always: number): void {
    const others: number[] = [];
    for (let ref = 0; ref < this.size; ref += 2 + 2 * this.data[ref]!)
      if (this.data[ref + 1]! > always) others.push(this.data[ref + 1]!);
    others.sort((a, b) => a - b);
    const limit = others[others.length >> 1] ?? always;
    for (const list of this.watches) list.length = 0;
    let write = 0;
    this.count = 0;
    for (let ref = 0; ref < this.size; ) {
      const need = 2 + 2 * this.data[ref]!;
      const quality = this.data[ref + 1]!;
      if (quality <= always || quality < limit) {
        this.data.copyWithin(write, ref, ref + need);
        this.watch(write, write + 2);
        this.watch(write, write + 4);
        write += need;
        this.count++;
      }
      ref += need;
    }
    this.size = write;
  }
}
