import type { BoundEngine } from "./bound-engine.ts";

/** Variables ordered by how much they took part in recent conflicts. */
export class VariableHeap {
  private readonly score: Float64Array;
  private readonly heap: Int32Array;
  private readonly place: Int32Array;
  private size: number;
  private step = 1;

  constructor(variables: number) {
    this.score = new Float64Array(variables);
    this.heap = Int32Array.from({ length: variables }, (_, x) => x);
    this.place = this.heap.slice();
    this.size = variables;
  }

  bump(x: number): void {
    this.score[x] = this.score[x]! + this.step;
    if (this.score[x]! > 1e100) {
      for (let y = 0; y < this.score.length; y++) this.score[y] = this.score[y]! * 1e-100;
      this.step *= 1e-100;
    }
    if (this.place[x]! >= 0) this.up(this.place[x]!);
  }

  decay(): void {
    this.step /= 0.95;
  }

  /** Puts a variable back that may have been taken out. */
  restore(x: number): void {
    if (this.place[x]! >= 0) return;
    this.place[x] = this.size;
    this.heap[this.size++] = x;
    this.up(this.place[x]!);
  }

  /** The open variable with the highest score above zero; -1 if none. */
  next(engine: BoundEngine): number {
    while (this.size > 0) {
      const x = this.heap[0]!;
      if (this.score[x] === 0) return -1;
      if (!engine.fixed(x)) return x;
      this.removeTop();
    }
    return -1;
  }

  private removeTop(): void {
    this.place[this.heap[0]!] = -1;
    const last = this.heap[--this.size]!;
    if (this.size === 0) return;
    this.heap[0] = last;
    this.place[last] = 0;
    this.down(0);
  }

  private up(from: number): void {
    let at = from;
    const x = this.heap[at]!;
    const score = this.score[x]!;
    while (at > 0) {
      const parent = (at - 1) >> 1;
      const y = this.heap[parent]!;
      if (this.score[y]! >= score) break;
      this.heap[at] = y;
      this.place[y] = at;
      at = parent;
    }
    this.heap[at] = x;
    this.place[x] = at;
  }

  private down(from: number): void {
    let at = from;
    const x = this.heap[at]!;
    for (;;) {
      let child = 2 * at + 1;
      if (child >= this.size) break;
      const other = child + 1;
      if (other < this.size && this.score[this.heap[other]!]! > this.score[this.heap[child]!]!)
        child = other;
      const y = this.heap[child]!;
      if (this.score[y]! <= this.score[x]!) break;
      this.heap[at] = y;
      this.place[y] = at;
      at = child;
    }
    this.heap[at] = x;
    this.place[x] = at;
  }
}
