/** What the clocks show to have happened between two looks, as facts for the log. */
import type { DatedFact } from "../../kitchen/events.ts";
import type { State } from "../../kitchen/state.ts";
import type { TimeFinding } from "./time-watch.ts";

/** Whether anything is going on: only then are gaps worth a line. */
export function somethingRuns(state: State): boolean {
  if (state.active.length > 0) return true;
  return Object.values(state.timers).some((timer) => timer.state === "running");
}

export function factsOfFindings(state: State, findings: TimeFinding[], now: number): DatedFact[] {
  const facts: DatedFact[] = [];
  for (const found of findings) {
    if (found.kind === "clock-set") facts.push({ type: "clock-set", byMs: found.byMs, t: now });
    else if (somethingRuns(state)) {
      const cause = found.kind === "asleep" ? "asleep" : "stalled";
      const byWall = found.kind === "rebooted";
      facts.unshift({ type: "gap", from: now - found.ms, to: now, cause, byWall, t: now });
    }
  }
  return facts;
}
