import type { HeardDoubt } from "../heard-doubt.ts";

/** Settles doubts; `held` where a person said that all was well, or not. */
export function settleDoubts(doubts: readonly HeardDoubt[], at: number, held?: boolean): void {
  for (const one of doubts) {
    if (one.settledAt !== undefined) continue;
    one.settledAt = at;
    if (held !== undefined) one.held = held;
  }
}
