/** The quiet hours of the night: what can wait is told in the morning, the rest at any hour. */
import { nextMatch } from "./cron.ts";
import type { DueWhat } from "./due-key.ts";
import { isOfCanner, rulesOf } from "./stages/kinds.ts";
import { kitchenTimeOf, type StageRun, type State, wallOf } from "./state.ts";
import { HOUR_MS, localFields, MINUTE_MS } from "./time.ts";

/** What closes before the morning is told so long before the night begins. */
const EVENING_MS = 30 * MINUTE_MS;

/** A rest that may last so long is one that people leave for the night. */
const OVERNIGHT_HOURS = 10;

function nextAt(state: State, t: number, minuteOfDay: number): number | undefined {
  const cron = `${minuteOfDay % 60} ${Math.floor(minuteOfDay / 60) % 24} * * *`;
  const wall = nextMatch(cron, wallOf(state, t), state.zone);
  return wall === undefined ? undefined : kitchenTimeOf(state, wall);
}

/** When the night that an instant lies in is over, kitchen time; undefined by day. */
export function nightUntil(state: State, t: number): number | undefined {
  const { quiet } = state.kitchen;
  if (!quiet) return undefined;
  const { hour, minute } = localFields(wallOf(state, t), state.zone);
  const since = (hour * 60 + minute - quiet.fromMinute + 24 * 60) % (24 * 60);
  const length = (quiet.toMinute - quiet.fromMinute + 24 * 60) % (24 * 60);
  return since < length ? nextAt(state, t, quiet.toMinute) : undefined;
}

/**
 * Whether what comes due of a stage can wait for the morning: nothing is on the heat, in the
 * canner or stands warm, and its window is long.
 */
function canWait({ spec }: StageRun): boolean {
  const rules = rulesOf(spec);
  if (!rules.waits || (isOfCanner(spec) && rules.ofCanner !== "after")) return false;
  return !spec.window || spec.window.maxMinutes * MINUTE_MS >= OVERNIGHT_HOURS * HOUR_MS;
}

/** When something is told: in the morning where it can wait, and nobody asked to be warned. */
export function tellAt(state: State, at: number, what: DueWhat, run: StageRun | undefined): number {
  if (!run || what === "warning" || !canWait(run)) return at;
  return nightUntil(state, at) ?? at;
}

/** In the evening before a night in which the window of a stage closes; undefined for any other. */
export function eveningBefore(state: State, run: StageRun): number | undefined {
  const { startedAt, spec } = run;
  const { quiet } = state.kitchen;
  if (!quiet || startedAt === undefined || !spec.window || !canWait(run)) return undefined;
  const closes = startedAt + spec.window.maxMinutes * MINUTE_MS;
  const morning = nightUntil(state, closes);
  if (morning === undefined) return undefined;
  const length = (quiet.toMinute - quiet.fromMinute + 24 * 60) % (24 * 60);
  const at = morning - length * MINUTE_MS - EVENING_MS;
  return at > startedAt ? at : undefined;
}
