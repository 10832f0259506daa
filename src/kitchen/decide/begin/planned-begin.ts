/** When a batch that the day's plan is to begin comes due. */

import { usualMinutes } from "../../day/expected.ts";
import type { PlannedItem } from "../../events.ts";
import { ready } from "../../jars/lots.ts";
import { activeOwners, inCanner, isLoad, type Owner } from "../../owners.ts";
import { hasRole, rulesOf } from "../../stages/kinds.ts";
import type { StageRun, State } from "../../state.ts";
import { MINUTE_MS } from "../../time.ts";

/** When it is this late, a batch is not begun behind the cook's back, only announced. */
export const TOO_LATE_MS = 30 * MINUTE_MS;
/** Work that has taken this many times its usual length was forgotten, and holds nothing up. */
const FORGOTTEN_TIMES = 3;
const SHORTEST_WORK_MINUTES = 5;

/** Planned batches whose time is still to come, or has come while hands are free. */
export function plannedBegins(state: State, now: number): PlannedItem[] {
  const items = state.dayPlan?.items ?? [];
  if (items.every((item) => item.beginAt > now)) return items;
  const busy = handsBusy(state, now);
  return items.filter((item) => {
    return !busy || item.beginAt > now || now - item.beginAt > TOO_LATE_MS;
  });
}

/** Whether work is going on that needs hands throughout. */
export function handsBusy(state: State, now: number): boolean {
  return activeOwners(state).some((owner) =>
    owner.stages.some((run) => {
      if (run.startedAt === undefined || !isHandwork(state, owner, run)) return false;
      const usual = Math.max(
        SHORTEST_WORK_MINUTES,
        isLoad(owner) ? run.spec.typicalMinutes : usualMinutes(owner, run),
      );
      return now - run.startedAt <= FORGOTTEN_TIMES * usual * MINUTE_MS;
    }),
  );
}

/** Whether a stage keeps somebody's hands busy; jars that wait for a canner do not. */
function isHandwork(state: State, owner: Owner, run: StageRun): boolean {
  const { work } = rulesOf(run.spec).plan;
  if (run.state !== "running" || work === "can-wait") return false;
  if (isLoad(owner)) return run.spec.attended;
  if (owner.state !== "running" || !(run.spec.attended || work === "always")) return false;
  if (!hasRole(run.spec, "filling")) return true;
  const inside = inCanner(state).some((load) => load.parts.some((one) => one.batch === owner.id));
  return ready(owner) === 0 && !inside;
}
