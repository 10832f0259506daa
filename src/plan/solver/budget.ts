import type { Effort } from "./model.ts";

/** Counts nodes and knows when to stop. Only the outer limit looks at a clock. */
export class Budget {
  used = 0;
  readonly glance: boolean;
  private readonly effort: Effort;
  private share = 1;

  constructor(effort: Effort) {
    this.effort = effort;
    this.glance = effort.glance ?? false;
  }

  /** From now on `over` means this part of the whole, 0 to 1. */
  allow(share: number): void {
    this.share = share;
  }

  over(): boolean {
    return this.passed(1);
  }

  /** True when this part of what is allowed now is used up. */
  passed(part: number): boolean {
    const { nodeBudget, elapsedMs, limitMs } = this.effort;
    const share = this.share * part;
    if (this.used >= nodeBudget * share) return true;
    return elapsedMs !== undefined && limitMs !== undefined && elapsedMs() >= limitMs * share;
  }
}

/** A share of an effort, with its time counted from now. */
export function shareOf(effort: Effort, share: number): Effort {
  const { elapsedMs, limitMs, random, glance = false } = effort;
  const base = { random, glance, nodeBudget: Math.ceil(effort.nodeBudget * share) };
  if (elapsedMs === undefined || limitMs === undefined) return base;
  const from = elapsedMs();
  return { ...base, elapsedMs: () => elapsedMs() - from, limitMs: limitMs * share };
}
