import { BY_CLAUSE, BY_LAG, BY_LIST, GIVEN } from "./bound-reasons.ts";
import { ClauseStore } from "./clause-store.ts";

/*
 * The heart of the exact search: integer variables known by their bounds, a trail of every bound
 * that was tightened with the reason for it, and clauses learned from conflicts.
 *
 * Bound 2x is the lower bound of variable x, bound 2x+1 its upper bound with the sign turned, so
 * that tightening always means growing. A literal is a pair (bound k, figure v): "bound k is at
 * least v"; its opposite is (k ^ 1, 1 - v). A yes-or-no variable has the range 0 to 1.
 */

/** A rule over many variables (a resource, a sum). False means a conflict was reported. */
export type Propagator = {
  propagate(engine: BoundEngine): boolean;
  /** Variables whose change wakes it. */
  variables: readonly number[];
};

/** A lag from one bound to another that holds where `when` is true (always where -1). */
export type BoundLag = { from: number; to: number; least: number; when: number };

export class BoundEngine {
  readonly value: Int32Array;
  /** What holds without any decision. */
  readonly root: Int32Array;
  readonly clauses: ClauseStore;

  trailSize = 0;
  trailBound = new Int32Array(1 << 12);
  trailOld = new Int32Array(1 << 12);
  trailNew = new Int32Array(1 << 12);
  trailBefore = new Int32Array(1 << 12);
  trailLevel = new Int32Array(1 << 12);
  /** Four figures an entry: kind, and what the kind needs. */
  trailReason = new Int32Array(1 << 14);
  /** The newest trail entry of each bound, or -1. */
  readonly newest: Int32Array;
  level = 0;
  private levelStart: number[] = [0];
  private levelList: number[] = [0];

  /** Literals that hold and cannot all hold, after a failed propagation. */
  clash: number[] = [];

  list = new Int32Array(1 << 14);
  private listSize = 0;
  private listBegin = 0;

  private head = 0;
  private lagHead = new Int32Array(0);
  private lagTo = new Int32Array(0);
  private lagLeast = new Int32Array(0);
  private lagWhen = new Int32Array(0);
  private whenHead = new Int32Array(0);
  private whenFrom = new Int32Array(0);
  private whenTo = new Int32Array(0);
  private whenLeast = new Int32Array(0);
  private propagators: Propagator[] = [];
  private listeners: Int32Array[] = [];
  private readonly woken: Uint8Array;
  /** Called for every variable whose bound is taken back. */
  released: (variable: number) => void = () => {};

  constructor(lower: Int32Array, upper: Int32Array, lags: BoundLag[], propagators: Propagator[]) {
    const bounds = lower.length * 2;
    this.value = new Int32Array(bounds);
    for (let x = 0; x < lower.length; x++) {
      this.value[2 * x] = lower[x]!;
      this.value[2 * x + 1] = -upper[x]!;
    }
    this.root = this.value.slice();
    this.newest = new Int32Array(bounds).fill(-1);
    this.clauses = new ClauseStore(bounds);
    this.propagators = propagators;
    this.woken = new Uint8Array(propagators.length).fill(1);
    this.indexLags(bounds, lags);
    const heard: number[][] = Array.from({ length: lower.length }, () => []);
    propagators.forEach((propagator, p) => {
      for (const x of propagator.variables) heard[x]!.push(p);
    });
    this.listeners = heard.map((list) => Int32Array.from(list));
  }

  private indexLags(bounds: number, lags: BoundLag[]): void {
    const byFrom = lags.slice().sort((a, b) => a.from - b.from || a.when - b.when);
    this.lagHead = heads(
      bounds,
      byFrom.map((lag) => lag.from),
    );
    this.lagTo = Int32Array.from(byFrom, (lag) => lag.to);
    this.lagLeast = Int32Array.from(byFrom, (lag) => lag.least);
    this.lagWhen = Int32Array.from(byFrom, (lag) => lag.when);
    const byWhen = lags.filter((lag) => lag.when >= 0).sort((a, b) => a.when - b.when);
    this.whenHead = heads(
      bounds,
      byWhen.map((lag) => lag.when),
    );
    this.whenFrom = Int32Array.from(byWhen, (lag) => lag.from);
    this.whenTo = Int32Array.from(byWhen, (lag) => lag.to);
    this.whenLeast = Int32Array.from(byWhen, (lag) => lag.least);
  }

  lower(x: number): number {
    return this.value[2 * x]!;
  }

  upper(x: number): number {
    return -this.value[2 * x + 1]!;
  }

  fixed(x: number): boolean {
    return this.value[2 * x]! + this.value[2 * x + 1]! === 0;
  }

  /** Opens a level and takes the literal as true. It must be open: neither true nor false. */
  decide(bound: number, figure: number): void {
    this.level++;
    this.levelStart.push(this.trailSize);
    this.levelList.push(this.listSize);
    this.push(bound, figure, GIVEN, 0, 0, 0);
  }

  /** Tightens what holds without any decision; only at level 0. False: nothing is left. */
  assume(bound: number, figure: number): boolean {
    if (this.value[bound]! >= figure) return true;
    if (this.value[bound ^ 1]! + figure > 0) return false;
    this.push(bound, figure, GIVEN, 0, 0, 0);
    return true;
  }

  /** Starts a list of literals that hold and will be the reason of the next `imply` or `fail`. */
  beginList(): void {
    this.listBegin = this.listSize;
  }

  addToList(bound: number, figure: number): void {
    if (figure <= this.root[bound]!) return;
    if (this.listSize + 2 > this.list.length) this.list = grown(this.list);
    this.list[this.listSize++] = bound;
    this.list[this.listSize++] = figure;
  }

  /** Takes (bound, figure) as following from the list. */
  imply(bound: number, figure: number): boolean {
    const size = this.listSize - this.listBegin;
    return this.enqueue(bound, figure, BY_LIST, this.listBegin, size, 0);
  }

  /** Reports that the list cannot hold together. */
  fail(): false {
    this.clash.length = 0;
    for (let at = this.listBegin; at < this.listSize; at++) this.clash.push(this.list[at]!);
    return false;
  }

  enqueue(bound: number, figure: number, kind: number, a: number, b: number, c: number): boolean {
    if (this.value[bound]! >= figure) return true;
    if (this.value[bound ^ 1]! + figure > 0) {
      this.clash.length = 0;
      this.clash.push(bound ^ 1, 1 - figure);
      this.explain(kind, a, b, c, figure, this.clash);
      return false;
    }
    this.push(bound, figure, kind, a, b, c);
    return true;
  }

  private push(bound: number, figure: number, kind: number, a: number, b: number, c: number): void {
    const at = this.trailSize;
    if (at === this.trailBound.length) this.growTrail();
    this.trailBound[at] = bound;
    this.trailOld[at] = this.value[bound]!;
    this.trailNew[at] = figure;
    this.trailBefore[at] = this.newest[bound]!;
    this.trailLevel[at] = this.level;
    this.trailReason[4 * at] = kind;
    this.trailReason[4 * at + 1] = a;
    this.trailReason[4 * at + 2] = b;
    this.trailReason[4 * at + 3] = c;
    this.newest[bound] = at;
    this.value[bound] = figure;
    this.trailSize = at + 1;
  }

  private growTrail(): void {
    this.trailBound = grown(this.trailBound);
    this.trailOld = grown(this.trailOld);
    this.trailNew = grown(this.trailNew);
    this.trailBefore = grown(this.trailBefore);
    this.trailLevel = grown(this.trailLevel);
    this.trailReason = grown(this.trailReason);
  }

  /** Adds to `out` the literals from which a bound of at least `figure` followed. */
  explain(kind: number, a: number, b: number, c: number, figure: number, out: number[]): void {
    if (kind === BY_LAG) {
      out.push(a, figure - b);
      if (c >= 0) out.push(c, 1 - (c & 1));
    } else if (kind === BY_LIST) {
      for (let at = a; at < a + b; at++) out.push(this.list[at]!);
    } else if (kind === BY_CLAUSE) {
      this.clauses.addOpposites(a, out);
    }
  }

  /** Draws every conclusion. False: `clash` holds the conflict. */
  propagate(): boolean {
    for (;;) {
      while (this.head < this.trailSize) if (!this.follow(this.head++)) return false;
      let p = 0;
      while (p < this.woken.length && this.woken[p] === 0) p++;
      if (p === this.woken.length) return true;
      this.woken[p] = 0;
      if (!this.propagators[p]!.propagate(this)) return false;
    }
  }

  private follow(at: number): boolean {
    const k = this.trailBound[at]!;
    const listeners = this.listeners[k >> 1]!;
    for (let l = 0; l < listeners.length; l++) this.woken[listeners[l]!] = 1;
    if (!this.clauses.visit(this, k, this.trailOld[at]!, this.trailNew[at]!)) return false;
    const base = this.value[k]!;
    const end = this.lagHead[k + 1]!;
    for (let e = this.lagHead[k]!; e < end; e++) {
      const to = this.lagTo[e]!;
      const target = base + this.lagLeast[e]!;
      if (this.value[to]! >= target) continue;
      const when = this.lagWhen[e]!;
      if (when < 0 || this.value[when]! >= 1 - (when & 1)) {
        if (!this.enqueue(to, target, BY_LAG, k, this.lagLeast[e]!, when)) return false;
      } else if (this.value[to ^ 1]! + target > 0 && this.value[when ^ 1]! < (when & 1)) {
        if (!this.refuse(when, k, base, to, target)) return false;
      }
    }
    return this.value[k]! < 1 - (k & 1) || this.switchOn(k);
  }

  /** The lag cannot hold, so its condition is false. */
  private refuse(when: number, from: number, base: number, to: number, target: number): boolean {
    this.beginList();
    this.addToList(from, base);
    this.addToList(to ^ 1, 1 - target);
    return this.imply(when ^ 1, when & 1);
  }

  /** A condition has become true: its lags begin to hold. */
  private switchOn(k: number): boolean {
    const end = this.whenHead[k + 1]!;
    for (let e = this.whenHead[k]!; e < end; e++) {
      const from = this.whenFrom[e]!;
      const least = this.whenLeast[e]!;
      if (!this.enqueue(this.whenTo[e]!, this.value[from]! + least, BY_LAG, from, least, k))
        return false;
    }
    return true;
  }

  /** Takes back every level above `level`. */
  backTo(level: number): void {
    this.woken.fill(0);
    if (level >= this.level) {
      this.head = this.trailSize;
      return;
    }
    const start = this.levelStart[level + 1]!;
    for (let at = this.trailSize - 1; at >= start; at--) {
      const k = this.trailBound[at]!;
      this.value[k] = this.trailOld[at]!;
      this.newest[k] = this.trailBefore[at]!;
      this.released(k >> 1);
    }
    this.trailSize = start;
    this.head = start;
    this.listSize = this.levelList[level + 1]!;
    this.listBegin = this.listSize;
    this.levelStart.length = level + 1;
    this.levelList.length = level + 1;
    this.level = level;
  }

  /** At level 0, after propagation: what holds now holds for good and needs no reasons. */
  settleRoot(): void {
    this.root.set(this.value);
    for (let at = 0; at < this.trailSize; at++) this.newest[this.trailBound[at]!] = -1;
    this.trailSize = 0;
    this.head = 0;
    this.listSize = 0;
    this.listBegin = 0;
  }

  /** Marks every rule as due, and every bound as changed; for the first propagation. */
  propagateAll(): boolean {
    this.woken.fill(1);
    for (let k = 0; k < this.value.length; k++) {
      const base = this.value[k]!;
      for (let e = this.lagHead[k]!; e < this.lagHead[k + 1]!; e++) {
        const when = this.lagWhen[e]!;
        const target = base + this.lagLeast[e]!;
        const to = this.lagTo[e]!;
        if (when < 0) {
          if (!this.enqueue(to, target, BY_LAG, k, this.lagLeast[e]!, when)) return false;
        } else if (this.value[to ^ 1]! + target > 0 && this.value[when ^ 1]! < (when & 1)) {
          if (!this.refuse(when, k, base, to, target)) return false;
        }
      }
    }
    return this.propagate();
  }
}

function heads(bounds: number, sorted: number[]): Int32Array<ArrayBuffer> {
  const head = new Int32Array(bounds + 1);
  for (const k of sorted) head[k + 1] = head[k + 1]! + 1;
  for (let k = 0; k < bounds; k++) head[k + 1] = head[k + 1]! + head[k]!;
  return head;
}

function grown(array: Int32Array): Int32Array<ArrayBuffer> {
  const larger = new Int32Array(array.length * 2);
  larger.set(array);
  return larger;
}
