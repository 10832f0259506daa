/** When recurring checks of what goes on by itself are due: by their times and the last look. */

import { nextMatch } from "../cron.ts";
import { kitchenTimeOf, type StageRun, type State, wallOf } from "../state.ts";

/** A look this short before a check, as a share of the time to the one after it, is that check. */
const EARLY_SHARE = 0.25;

/** The moment, wall ms, after which checks are due: since the last look, or the beginning. */
export function checksFrom(state: State, run: StageRun, cron: string): number {
  if (run.lookedAt === undefined) return wallOf(state, run.startedAt ?? 0);
  const looked = wallOf(state, run.lookedAt);
  const next = nextMatch(cron, looked, state.zone);
  const after = next && nextMatch(cron, next, state.zone);
  if (next === undefined || after === undefined) return looked;
  return next - looked < (after - next) * EARLY_SHARE ? next : looked;
}

/** The next check, wall ms, that was neither called nor done; undefined where none comes. */
export function nextCheck(state: State, run: StageRun, cron: string): number | undefined {
  const called = wallOf(state, run.checkedAt ?? 0);
  return nextMatch(cron, Math.max(called, checksFrom(state, run, cron)), state.zone);
}

type Due = { what: string; at: number; run?: StageRun; missed?: number };

/** A check that came due, as the latest of those missed by now; `missed`: how many before it. */
export function latestCheck<M extends Due>(state: State, item: M, now: number): M {
  const { run, what } = item;
  if (what !== "check" || !run) return item;
  const until = wallOf(state, now);
  const walls = (run.spec.checks ?? []).flatMap(({ cron }) => {
    return matchesUntil(cron, wallOf(state, item.at), until, state.zone);
  });
  if (walls.length === 0) return item;
  return { ...item, at: kitchenTimeOf(state, Math.max(...walls)), missed: walls.length };
}

/** Every match after one wall instant and up to another. */
export function matchesUntil(cron: string, from: number, until: number, zone: string): number[] {
  const list: number[] = [];
  let at = nextMatch(cron, from, zone);
  while (at !== undefined && at <= until) {
    list.push(at);
    at = nextMatch(cron, at, zone);
  }
  return list;
}
