/** The quiet hours of the night: what can wait is told in the morning, the rest at any hour. */
import type { DueWhat } from "./due-key.ts";
import type { QuietHours } from "./events.ts";
import { isOfCanner, rulesOf } from "./stages/kinds.ts";
import { kitchenTimeOf, type StageRun, type State, wallOf } from "./state.ts";
import { HOUR_MS, localFields, MINUTE_MS } from "./time.ts";

/** What closes before morning is announced this long before the night begins. */
const EVENING_MS = 30 * MINUTE_MS;

/** A rest that may last this long is one that people leave overnight. */
const OVERNIGHT_HOURS = 10;

const DAY_MINUTES = 24 * 60;

function minuteOfDay(wallMs: number, zone: string): number {
  const { hour, minute } = localFields(wallMs, zone);
  return hour * 60 + minute;
}

/** When the night that an instant lies in is over, kitchen time; undefined by day. */
export function nightUntil(state: State, t: number): number | undefined {
  const { quiet, awakeUntil = Number.NEGATIVE_INFINITY } = state.kitchen;
  if (!quiet || t < awakeUntil) return undefined;
  const wall = wallOf(state, t);
  const { fromMinute, toMinute } = quiet;
  const now = minuteOfDay(wall, state.zone);
  const since = (now - fromMinute + DAY_MINUTES) % DAY_MINUTES;
  if (since >= nightMinutes(quiet)) return undefined;
  const left = (toMinute - now + DAY_MINUTES) % DAY_MINUTES;
  const over = Math.floor(wall / MINUTE_MS) * MINUTE_MS + left * MINUTE_MS;
  // Where the clocks are changed in this night, it is an hour shorter or longer.
  const strayed = minuteOfDay(over, state.zone) - (toMinute % DAY_MINUTES);
  return kitchenTimeOf(state, over - strayed * MINUTE_MS);
}

/** When the night that lies around an instant or comes next is over, kitchen time. */
export function nextMorning(state: State, t: number): number | undefined {
  const { quiet } = state.kitchen;
  if (!quiet) return undefined;
  const minute = minuteOfDay(wallOf(state, t), state.zone);
  const until = (quiet.fromMinute - minute + DAY_MINUTES) % DAY_MINUTES;
  return nightUntil(state, t) ?? nightUntil(state, t + until * MINUTE_MS);
}

function nightMinutes({ fromMinute, toMinute }: QuietHours): number {
  return (toMinute - fromMinute + DAY_MINUTES) % DAY_MINUTES;
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
  const at = morning - nightMinutes(quiet) * MINUTE_MS - EVENING_MS;
  return at > startedAt ? at : undefined;
}
