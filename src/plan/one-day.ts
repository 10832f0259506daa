/** A day that is asked for with no end of its own ends with the evening. */
import { MINUTE_MS } from "../kitchen/time.ts";
import { whatFits } from "./plan-obstacles.ts";
import type { KitchenPlan, PlanRequest } from "./plan-request.ts";
import type { Effort } from "./solver/model.ts";

/** Quiet hours that are shorter are an errand. */
const SHORTEST_NIGHT_MINUTES = 4 * 60;

/**
 * Where a plan goes on past the first night although it might not: what fits before it. Null where
 * the day is one, where an end was asked for, or where nothing fits because its rests are long.
 */
export function fitsToday(request: PlanRequest, plan: KitchenPlan, effort: Effort): string | null {
  const { nowMs = request.startMs, startMs, quiet = [] } = request;
  if (!plan.feasible || request.finishByMs !== undefined) return null;
  const nights = quiet
    .filter(([from, to]) => to - from >= SHORTEST_NIGHT_MINUTES)
    .map(([from]) => startMs + from * MINUTE_MS);
  const evening = Math.min(...nights.filter((ms) => ms > nowMs));
  if (!Number.isFinite(evening) || plan.finishMs <= evening) return null;
  const { like: _, ...plain } = request;
  const fits = whatFits({ ...plain, finishByMs: evening, explain: false }, effort);
  return fits && `that is more than one day: ${fits}`;
}
