/**
 * An earlier plan as a starting point for the next: as it was, or with all that has not begun put
 * off.
 */
import { MINUTE_MS } from "../kitchen/time.ts";
import type { KitchenProject } from "./kitchen-project.ts";
import { CANNER_STAGE } from "./plan-loads.ts";
import type { PlanRequest } from "./plan-request.ts";
import type { Schedule } from "./solver/model.ts";
import { violations } from "./solver/verify.ts";

/** Minutes that everything may be put off by; the search closes the gaps this leaves. */
const DELAYS = [0, 1, 2, 3, 4, 5, 7, 10, 15, 20, 25, 30, 40, 50, 60, 75, 90, 120, 150, 180, 240];

/** The name of a task in which a canner is lit. */
const LIGHTS = new RegExp(`/${CANNER_STAGE}(@1)?$`);

/** The earlier plan in this project, put off by the least that keeps every rule, if any does. */
export function planAgain(request: PlanRequest, kitchen: KitchenProject): Schedule | undefined {
  const { like } = request;
  if (!like) return undefined;
  const starts = new Map<string, number>();
  for (const { activity, step } of kitchen.placed) {
    if (step.startedMs !== undefined) continue;
    const at = like.get(activity);
    if (at === undefined) return undefined;
    const minutes = (at - request.startMs) / MINUTE_MS;
    starts.set(activity, Math.round(minutes / kitchen.gridMinutes));
  }
  for (const id of kitchen.lightings) {
    const lit = [...like].flatMap(([name, at]) => (LIGHTS.test(name) ? at : []));
    if (lit.length === 0) return undefined;
    starts.set(
      id,
      Math.round((Math.min(...lit) - request.startMs) / MINUTE_MS / kitchen.gridMinutes),
    );
  }
  for (const delay of DELAYS) {
    const schedule = delayed(kitchen, starts, Math.ceil(delay / kitchen.gridMinutes));
    if (schedule && violations(kitchen.project, schedule).length === 0) return schedule;
  }
  return undefined;
}

/** Fixed activities where they are, the rest put off, and what is pinned beside its stage. */
function delayed(
  { project }: KitchenProject,
  planned: ReadonlyMap<string, number>,
  delay: number,
): Schedule | undefined {
  const schedule: Record<string, number> = {};
  for (const { id, earliest = 0, latest } of project.activities) {
    const at = planned.get(id);
    if (at !== undefined) schedule[id] = Math.max(earliest, at + delay);
    else if (latest !== undefined && earliest === latest) schedule[id] = earliest;
  }
  for (const { id } of project.activities) {
    if (schedule[id] !== undefined) continue;
    const [parent] = id.split("#");
    const beside = project.lags.find((lag) => lag.from === parent && lag.to === id);
    const at = parent === undefined ? undefined : schedule[parent];
    if (!beside || at === undefined) return undefined;
    schedule[id] = at + beside.atLeast;
  }
  return schedule;
}
