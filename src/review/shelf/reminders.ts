/**
 * What is coming in the days and weeks ahead: checks of what ferments or dries, waits that end,
 * seals to check, jars ready to open or past their best, seed to test, and what people asked to be
 * reminded of. All of it follows from the batches; nothing is stored twice.
 */

import { agenda, type DueItem } from "../../kitchen/agenda.ts";
import { checksFrom, matchesUntil } from "../../kitchen/day/checks.ts";
import { onShelf } from "../../kitchen/decide/decide-kitchen.ts";
import { fieldsOf } from "../../kitchen/events.ts";
import { lotsIn, ready, sum } from "../../kitchen/jars/lots.ts";
import { tellAt } from "../../kitchen/nights.ts";
import { activeOwners, isLoad, type Owner, runOfRole } from "../../kitchen/owners.ts";
import { ownerName } from "../../kitchen/spoken-names.ts";
import { rulesOf } from "../../kitchen/stages/kinds.ts";
import { kitchenTimeOf, type StageRun, type State, wallOf } from "../../kitchen/state.ts";
import { DAY_MS, HOUR_MS, instantOf, localFields, MINUTE_MS } from "../../kitchen/time.ts";
import { dayAndTime } from "../day-and-time.ts";
import { atHour, byDay, DAY_HOUR } from "./reminder-hours.ts";
import { seedReminders, shelf } from "./store-room-reminders.ts";
import type { FoundReminder, Upcoming } from "./upcoming.ts";

/** Waits shorter than this, in minutes, are part of the day's work and get no reminder. */
const SHORTEST_WAIT_MINUTES = 60;
/**
 * Everything that comes due within some days of `now` (kitchen time, ms), and what is overdue,
 * soonest first.
 */
export function upcoming(state: State, now: number, days: number): Upcoming[] {
  const wallNow = wallOf(state, now);
  const until = wallNow + days * DAY_MS;
  const changes = lastWritten(state);
  const found = [
    ...fromAgenda(state, now),
    ...checks(state, wallNow, until),
    ...seals(state),
    ...[...shelf(state, now, wallNow), ...seedReminders(state, wallNow)].map((one) => {
      return { ...one, at: byDay(state, one.at) };
    }),
    ...asked(state, wallNow),
  ];
  return found
    .filter((one) => one.at <= until)
    .map(({ owner, ...one }) => ({
      ...one,
      overdue: one.at < wallNow,
      changedAt: Math.round(wallOf(state, changes.get(owner) ?? 0)),
    }))
    .sort((a, b) => a.at - b.at || (a.id < b.id ? -1 : 1));
}

/** What is overdue or comes due on that many days, today among them. */
export function dueWithin(state: State, now: number, days: number): Upcoming[] {
  const { year, month, day } = localFields(wallOf(state, now), state.zone);
  const midnight = { hour: 0, minute: 0, second: 0 };
  const end = instantOf({ year, month, day: day + days, ...midnight }, state.zone);
  return upcoming(state, now, days).filter(({ at }) => at < end);
}

/** When each owner, reminder and seed lot was last written about; corrections touch them all. */
function lastWritten(state: State): Map<string, number> {
  const last = new Map<string, number>();
  let corrected = 0;
  for (const event of state.history) {
    if (event.type === "due" || event.type === "asked") continue;
    for (const key of ["owner", "batch", "load", "reminder", "seed"] as const) {
      const id = fieldsOf(event)[key];
      if (typeof id === "string") last.set(id, event.w);
    }
    if (event.type === "amended" || event.type === "withdrawn" || event.type === "clock-set") {
      corrected = event.w;
    }
  }
  for (const [id, w] of last) last.set(id, Math.max(w, corrected));
  return last;
}

function batchOf(owner: Owner): string {
  return isLoad(owner) ? (owner.parts[0]?.batch ?? owner.batch) : owner.id;
}

/** Windows and dates, by the same clocks that ring in the kitchen. */
function fromAgenda(state: State, now: number): FoundReminder[] {
  return agenda({ ...state, due: {} }, now).flatMap((item): FoundReminder[] => {
    const { owner, run } = item;
    if (!owner || !run) return [];
    const words = wordsFor(state, item, owner, run);
    if (!words) return [];
    const { date } = rulesOf(run.spec);
    if (date && item.at < now - DAY_MS) return [];
    const wall = wallOf(state, item.at);
    const at = date
      ? byDay(state, atHour(wall, state.zone, DAY_HOUR, date === "from"))
      : wallOf(state, item.tellAt);
    return [{ id: item.key, at, ...words, batch: batchOf(owner), owner: owner.id }];
  });
}

function wordsFor(
  state: State,
  { what }: DueItem,
  owner: Owner,
  run: StageRun,
): { title: string; detail: string } | undefined {
  const { window, title } = run.spec;
  const rules = rulesOf(run.spec);
  const name = ownerName(state, owner);
  if (rules.date === "from" && !isLoad(owner)) {
    if (owner.option && sum(lotsIn(owner), onShelf) < 1) return undefined;
    return { title: `Ready to open: ${name}`, detail: "The flavor has had its time." };
  }
  if (rules.date === "until" && !isLoad(owner)) {
    // Jars have their own dates, by where they stand.
    if (owner.option || ready(owner) > 0) return undefined;
    return { title: `Best by: ${name}`, detail: "It has been kept for its best time." };
  }
  if (!rules.window?.reminded || !window || window.minMinutes < SHORTEST_WAIT_MINUTES)
    return undefined;
  if (what === "min") {
    const latest = run.startedAt === undefined ? 0 : run.startedAt + window.maxMinutes * MINUTE_MS;
    const by = dayAndTime(wallOf(state, latest), state.zone);
    const detail = `It has had its shortest time; go on when it is right, by ${by}.`;
    return { title: `May be ready: ${name}, ${title}`, detail };
  }
  if (what === "max") {
    return { title: `Go on: ${name}, ${title}`, detail: "It has had its longest time." };
  }
  if (what !== "end") return undefined;
  return { title: `Time is up: ${name}, ${title}`, detail: "Go on with the next step." };
}

/** Every recurring check up to a moment, and the latest of those nobody has told of. */
function checks(state: State, wallNow: number, until: number): FoundReminder[] {
  return activeOwners(state).flatMap((owner) => {
    if (!isLoad(owner) && owner.state === "abandoned") return [];
    return owner.stages.flatMap((run) => {
      if (run.state !== "running" || run.startedAt === undefined) return [];
      const longest = run.startedAt + (run.spec.window?.maxMinutes ?? 0) * MINUTE_MS;
      const last = wallOf(state, longest) > wallNow ? wallOf(state, longest) : until;
      return (run.spec.checks ?? []).flatMap(({ cron, say }): FoundReminder[] => {
        const ends = Math.min(last, until);
        const all = matchesUntil(cron, checksFrom(state, run, cron), ends, state.zone);
        const missed = all.filter((at) => at <= wallNow).slice(0, -1);
        return all.slice(missed.length).map((at) => ({
          id: `${owner.id}/${run.id}/check/${at / MINUTE_MS}`,
          at: wallOf(state, tellAt(state, kitchenTimeOf(state, at), "check", run)),
          title: `Look at ${ownerName(state, owner)}`,
          detail: say,
          batch: batchOf(owner),
          owner: owner.id,
        }));
      });
    });
  });
}

/**
 * Jars that are cooling or have cooled: their seals are checked in the morning where that falls at
 * night.
 */
function seals(state: State): FoundReminder[] {
  return activeOwners(state).flatMap((owner): FoundReminder[] => {
    if (!isLoad(owner)) return [];
    const cool = runOfRole(owner, "cooling");
    const check = runOfRole(owner, "seals");
    if (!cool || cool.startedAt === undefined || !cool.spec.window) return [];
    const { minMinutes, maxMinutes } = cool.spec.window;
    const latest = wallOf(state, cool.startedAt + maxMinutes * MINUTE_MS);
    const waits = cool.state === "running";
    if (!waits && check?.state !== "running") return [];
    const cooled = wallOf(state, cool.startedAt + minMinutes * MINUTE_MS);
    const ended = wallOf(state, check?.startedAt ?? cool.startedAt);
    const until = dayAndTime(latest, state.zone);
    return [
      {
        id: `${owner.id}/${cool.id}/min`,
        at: waits ? Math.min(byDay(state, cooled), latest - HOUR_MS) : ended,
        title: `Check the seals: ${ownerName(state, owner)}`,
        detail:
          "Bands off, press each lid in the middle. " +
          `A jar that did not seal can go through again only until ${until}.`,
        batch: batchOf(owner),
        owner: owner.id,
      },
    ];
  });
}

/** What people asked to be reminded of, and what rang and nobody answered. */
function asked(state: State, wallNow: number): FoundReminder[] {
  return Object.values(state.reminders).flatMap((one): FoundReminder[] => {
    const rings = one.state === "rang" && state.ringing.includes(one.id);
    if (one.state !== "waiting" && !rings) return [];
    const at = rings ? Math.min(one.wallMs, wallNow - 1) : one.wallMs;
    return [{ id: one.id, at, title: one.text, detail: "", batch: null, owner: one.id }];
  });
}

/** How often what was written has been corrected: counts up with every change of a time. */
export function revision(state: State): number {
  const changing = new Set(["amended", "withdrawn", "clock-set"]);
  return state.history.filter((event) => changing.has(event.type)).length;
}

/** Distinguishes this kitchen's journal from others, by the moment of its first event. */
export function kitchenMark(state: State): string {
  return Math.abs(Math.round(state.history[0]?.t ?? 0)).toString(36);
}
