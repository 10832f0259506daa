import { parseIso } from "../../src/kitchen/time.ts";
import type { Context, NamedStage } from "../../src/language/context.ts";
import { STAGE_KINDS } from "../../src/recipe/choices.ts";

export const ZONE = "America/Denver";

/** Saturday 2027-08-14 at 14:00 in the mountain kitchen, with nothing running unless given. */
export function kitchenContext(given: Partial<Context> = {}): Context {
  const nowMs = parseIso("2027-08-14T14:00:00", ZONE);
  if (nowMs === undefined) throw new Error("the moment of the tests is no ISO time");
  return { nowMs, zone: ZONE, recipes: [], running: [], timers: [], ...given };
}

/** A stage of this kind under way, which goes by its kind. */
export function underWayOf(name: string): NamedStage {
  const kind = STAGE_KINDS.find((one) => one === name);
  if (!kind) throw new Error(`${name} is no kind of stage`);
  return { id: kind, title: kind, kind, state: "running" };
}
