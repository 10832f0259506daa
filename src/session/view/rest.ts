/** Long stretches in which nobody has work: everything rests by itself. */
import { shelves } from "../../kitchen/shelves.ts";
import { rulesOf } from "../../kitchen/stages/kinds.ts";
import type { StageRun, State } from "../../kitchen/state.ts";
import { MINUTE_MS } from "../../kitchen/time.ts";

/** When the first rest may end, kitchen ms; undefined where anything else goes on, or nothing. */
export function restUntil(state: State, now: number): number | undefined {
  const runs = shelves(state, now).map((item) => item.run);
  if (runs.length === 0 || !runs.every(restsByItself)) return undefined;
  return Math.min(...runs.map((run) => restEnds(run, now)));
}

function restsByItself(run: StageRun): boolean {
  return run.state === "running" && rulesOf(run.spec).shelf === "rest";
}

/** When a rest may end next: its shortest time, and after that its longest. */
function restEnds({ startedAt = 0, spec }: StageRun, now: number): number {
  const { minMinutes = 0, maxMinutes = 0 } = spec.window ?? {};
  const soonest = startedAt + minMinutes * MINUTE_MS;
  return soonest > now ? soonest : startedAt + maxMinutes * MINUTE_MS;
}
