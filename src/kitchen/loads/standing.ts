/**
 * Filled jars standing before they go into the canner. Nobody measures them as they cool, so the
 * whole time from filling the first jar counts as time in the danger zone.
 */
import { HOT_AIR_F, STAND_HOURS } from "../../reckon/trade-numbers.ts";
import { hasRole } from "../stages/kinds.ts";
import type { Batch, LoadPart, StageRun, State } from "../state.ts";
import { MINUTE_MS } from "../time.ts";

/** Where a thermometer is said to hang when it reads the kitchen's air. */
const AIR: ReadonlySet<string> = new Set(["kitchen", "room", "air"]);

export function isAir(what: string): boolean {
  return AIR.has(what);
}

/**
 * When the first of the jars just reported was filled. Nobody says so: it is taken to be the
 * filling's usual length ago, but not before the filling began or the last jars went in.
 */
export function filledFrom(state: State, batch: Batch, fill: StageRun, told: number): number {
  const usual = told - fill.spec.typicalMinutes * MINUTE_MS;
  const loaded = batch.loads.map((id) => state.loads[id]?.loadedAt ?? 0);
  return Math.min(told, Math.max(usual, fill.startedAt ?? told, ...loaded));
}

/**
 * How many minutes a batch's filled jars may stand: the recipe's own limit, else the two-hour rule.
 */
export function mayStandMinutes({ kitchen }: State, batch: Batch): number {
  // "Over ninety" is heard as ninety.
  const hot = kitchen.airF !== undefined && kitchen.airF >= HOT_AIR_F;
  const rule = 60 * (hot ? STAND_HOURS.hot : STAND_HOURS.usual);
  const own = batch.recipe.stages.flatMap((stage) => {
    if (!hasRole(stage, "treatment")) return [];
    return stage.after.flatMap(({ atMostMinutes }) => atMostMinutes ?? []);
  });
  return Math.min(rule, ...own);
}

/** How many minutes the jars of a load stood beyond what is allowed; 0 where they did not. */
export function stoodOver(part: LoadPart, loadedAt: number | undefined): number {
  if (loadedAt === undefined) return 0;
  return Math.max(0, (loadedAt - part.stood.from) / MINUTE_MS - part.stood.mayMinutes);
}
