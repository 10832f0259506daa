import type { BoundEngine } from "./bound-engine.ts";
import { BY_CLAUSE } from "./bound-reasons.ts";

/*
 * From a conflict to a clause. Walking back along the trail, each needed literal of the current
 * level is replaced by its reason until only one is left; the opposites of what is needed then
 * form a clause that forbids the same mistake everywhere. Only the strongest figure needed of
 * each bound is kept, since it implies the weaker ones.
 */
export class ConflictLearner {
  private readonly engine: BoundEngine;
  /** The figure needed of each bound; meaningful where `needed` is 1. */
  private readonly figure: Int32Array;
  private readonly needed: Uint8Array;
  private readonly entry: Int32Array;
  private active: number[] = [];
  private open = 0;
  private work: number[] = [];
  private readonly bump: (variable: number) => void;

  constructor(engine: BoundEngine, bump: (variable: number) => void) {
    this.engine = engine;
    this.bump = bump;
    this.figure = new Int32Array(engine.value.length);
    this.needed = new Uint8Array(engine.value.length);
    this.entry = new Int32Array(engine.value.length);
  }

  /**
   * Learns from `engine.clash`, goes back and draws the first conclusion. False: the conflict does
   * not depend on any decision, so nothing is left to try.
   */
  learn(): boolean {
    const { engine } = this;
    const level = this.highestLevel(engine.clash);
    if (level === 0) return false;
    engine.backTo(level);
    this.open = 0;
    this.needAll(engine.clash, engine.trailSize);
    const last = this.resolve();
    const bound = engine.trailBound[last]!;
    const figure = this.figure[bound]!;
    this.needed[bound] = 0;
    const clause = [bound ^ 1, 1 - figure];
    const quality = this.collect(clause, bound);
    this.assert(clause, quality);
    return true;
  }

  /** Goes back until one needed literal of the current level is left; returns its entry. */
  private resolve(): number {
    const { engine } = this;
    let at = engine.trailSize - 1;
    for (; ; at--) {
      const bound = engine.trailBound[at]!;
      if (this.needed[bound] === 0 || this.entry[bound] !== at) continue;
      if (this.open === 1) return at;
      this.needed[bound] = 0;
      this.open--;
      this.work.length = 0;
      this.reasonOf(at, this.figure[bound]!, this.work);
      this.needAll(this.work, at);
    }
  }

  private reasonOf(at: number, figure: number, out: number[]): void {
    const r = this.engine.trailReason;
    const base = 4 * at;
    this.engine.explain(r[base]!, r[base + 1]!, r[base + 2]!, r[base + 3]!, figure, out);
  }

  /** Marks literals that hold before trail entry `before` as needed. */
  private needAll(literals: readonly number[], before: number): void {
    const { engine } = this;
    for (let i = 0; i < literals.length; i += 2) {
      const bound = literals[i]!;
      const figure = literals[i + 1]!;
      if (figure <= engine.root[bound]!) continue;
      const was = this.needed[bound] === 1;
      if (was && this.figure[bound]! >= figure) continue;
      const at = this.entryOf(bound, figure, before);
      const current = engine.trailLevel[at] === engine.level;
      if (was) {
        if (engine.trailLevel[this.entry[bound]!] === engine.level) this.open--;
      } else {
        this.needed[bound] = 1;
        this.active.push(bound);
        this.bump(bound >> 1);
      }
      this.figure[bound] = figure;
      this.entry[bound] = at;
      if (current) this.open++;
    }
  }

  /** The trail entry that first made bound >= figure true. */
  private entryOf(bound: number, figure: number, before: number): number {
    const { trailOld, trailBefore } = this.engine;
    let at = this.engine.newest[bound]!;
    while (at >= before || trailOld[at]! >= figure) at = trailBefore[at]!;
    return at;
  }

  private highestLevel(literals: readonly number[]): number {
    let highest = 0;
    for (let i = 0; i < literals.length; i += 2) {
      if (literals[i + 1]! <= this.engine.root[literals[i]!]!) continue;
      const at = this.entryOf(literals[i]!, literals[i + 1]!, this.engine.trailSize);
      highest = Math.max(highest, this.engine.trailLevel[at]!);
    }
    return highest;
  }

  /** True where the literal follows from other needed ones or from nothing. */
  private redundant(bound: number): boolean {
    const at = this.entry[bound]!;
    if (this.engine.trailReason[4 * at] === 0) return false;
    this.work.length = 0;
    this.reasonOf(at, this.figure[bound]!, this.work);
    for (let i = 0; i < this.work.length; i += 2) {
      const k = this.work[i]!;
      const figure = this.work[i + 1]!;
      if (figure <= this.engine.root[k]!) continue;
      if (this.needed[k] === 0 || this.figure[k]! < figure || this.entry[k]! >= at) return false;
    }
    return true;
  }

  /** Moves what is needed into the clause, the deepest level second; returns the level count. */
  private collect(clause: number[], asserting: number): number {
    const { trailLevel } = this.engine;
    const levels = new Set<number>();
    let deepest = 0;
    const kept = this.active.filter(
      (bound, i) =>
        bound !== asserting &&
        this.needed[bound] === 1 &&
        this.active.indexOf(bound) === i &&
        !this.redundant(bound),
    );
    kept.sort((a, b) => b - a);
    for (const bound of kept) {
      const level = trailLevel[this.entry[bound]!]!;
      levels.add(level);
      clause.push(bound ^ 1, 1 - this.figure[bound]!);
      if (level <= deepest) continue;
      deepest = level;
      const end = clause.length - 2;
      const [heldBound, heldFigure] = [clause[2]!, clause[3]!];
      clause[2] = clause[end]!;
      clause[3] = clause[end + 1]!;
      clause[end] = heldBound;
      clause[end + 1] = heldFigure;
    }
    for (const bound of this.active) this.needed[bound] = 0;
    this.active.length = 0;
    this.back = deepest;
    return levels.size;
  }

  private back = 0;

  private assert(clause: number[], quality: number): void {
    const { engine } = this;
    engine.backTo(this.back);
    if (clause.length === 2) {
      engine.assume(clause[0]!, clause[1]!);
      return;
    }
    const ref = engine.clauses.add(clause, quality);
    engine.enqueue(clause[0]!, clause[1]!, BY_CLAUSE, ref, 0, 0);
  }
}
