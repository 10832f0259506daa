/** Deciding on the kitchen itself, timers and reminders, notes, quiet, and what is eaten. */

import { nightOf } from "../../reckon/quiet-hours.ts";
import type { Intent, SlotsOf } from "../command.ts";
import { inStore } from "../jars/change-jars.ts";
import { type LotOf, lotsIn } from "../jars/lots.ts";
import { lotsOf, namesOnlySort, timersOf } from "../meant.ts";
import { nextMorning } from "../nights.ts";
import { timerName, toldApart } from "../spoken-names.ts";
import type { State, Timer } from "../state.ts";
import { wallOf } from "../state.ts";
import { HOUR_MS, isRecordable, MINUTE_MS, parseIso } from "../time.ts";
import { nextId } from "./decide-batch.ts";
import {
  askWhich,
  askWhichLot,
  type Choice,
  type Deciding,
  type Decision,
  done,
  type Present,
  refused,
} from "./decision.ts";

/** Where people live and cook, feet; a table's own limits are stricter and said by the table. */
const ALTITUDE_FT = { min: -1400, max: 17000 };
/** A timer of half a second is a slip, and one of a month is a reminder. */
const TIMER_MINUTES = { min: 1 / 60, max: 60 * 24 * 31 };

/**
 * How far off an altitude is taken to be when it is said with "about" or the like: a twentieth of
 * it, and at least 100 feet. The program's own choice; a band's edge within that counts as passed.
 */
const VAGUE = { share: 0.05, leastFt: 100 };

/** How far off an altitude said with "about" is taken to be, feet. */
function vaguenessFt(feet: number): number {
  return Math.max(VAGUE.leastFt, Math.round(Math.abs(feet) * VAGUE.share));
}

/** `uncertaintyFt` as it was said; `about` where it was only said that it is not exact. */
export function altitudeFacts(
  deciding: Present,
  feet: number,
  { uncertaintyFt, about }: { uncertaintyFt?: number; about?: true },
): Decision {
  const off = uncertaintyFt ?? (about ? vaguenessFt(feet) : 0);
  if (!(feet >= ALTITUDE_FT.min && feet <= ALTITUDE_FT.max && off >= 0)) {
    return refused(`${feet} feet can't be right. What is your altitude in feet?`);
  }
  const altitudeFt = Math.round(feet);
  const uncertain = off > 0 ? { altitudeUncertaintyFt: Math.ceil(off) } : {};
  return done({ type: "kitchen-set", altitudeFt, ...uncertain, t: deciding.now });
}

export function decideAltitude(deciding: Deciding<"altitude">): Decision {
  const { slots } = deciding.wish.command;
  return altitudeFacts(deciding, slots.feet, slots);
}

export function decideTimerSet(deciding: Deciding<"timer-set">): Decision {
  const { state, now, wish } = deciding;
  const { slots } = wish.command;
  if (!(slots.minutes >= TIMER_MINUTES.min && slots.minutes <= TIMER_MINUTES.max)) {
    return refused("For how long? A timer runs from a second to a month.");
  }
  const timer = nextId(state, now, "T");
  return done({
    type: "timer-set",
    timer,
    label: slots.label ?? null,
    minutes: slots.minutes,
    t: now,
  });
}

/** The timer meant: the one named, or the only one; else it asks. */
function oneTimer(
  deciding: Deciding<"timer-add" | "timer-cancel">,
): { timer: Timer } | { outcome: Decision } {
  const { state, wish } = deciding;
  const { ref } = wish.command;
  const { target } = wish.command.slots;
  const live = Object.values(state.timers).filter(
    (t) => t.state === "running" || t.state === "rang",
  );
  let list = live;
  const named = wish.chosen ?? (namesOnlySort(ref, "timer", "it") ? undefined : ref?.running);
  if (named) list = timersOf(state, named).filter((timer) => live.includes(timer));
  const ringing = list.filter((timer) => timer.state === "rang");
  if (list.length > 1 && ringing.length === 1) list = ringing;
  const [timer] = list;
  if (!timer) {
    const named = target ? ` called ${target}` : "";
    return { outcome: refused(`There is no timer${named} running.`) };
  }
  if (list.length > 1) {
    const choices = list.map((t): Choice => ({ label: timerName(t), ref: { timer: t.id } }));
    return { outcome: askWhich(wish, "Which timer:", choices) };
  }
  return { timer };
}

export function decideTimerAdd(deciding: Deciding<"timer-add">): Decision {
  const { slots } = deciding.wish.command;
  const found = oneTimer(deciding);
  if ("outcome" in found) return found.outcome;
  if (!(Math.abs(slots.minutes) <= TIMER_MINUTES.max)) return refused("For how much longer?");
  return done({
    type: "timer-added",
    timer: found.timer.id,
    minutes: slots.minutes,
    t: deciding.now,
  });
}

export function decideTimerCancel(deciding: Deciding<"timer-cancel">): Decision {
  const found = oneTimer(deciding);
  if ("outcome" in found) return found.outcome;
  return done({ type: "timer-cancelled", timer: found.timer.id, t: deciding.now });
}

export function decideRemind(deciding: Deciding<"remind">): Decision {
  const { state, now, wish } = deciding;
  const { slots } = wish.command;
  if (slots.when === undefined) {
    return { kind: "ask", text: "When should I remind you?", wish, expects: "when", choices: [] };
  }
  const wallMs = parseIso(slots.when, state.zone);
  if (wallMs === undefined) return refused(`I can't read the time ${slots.when}.`);
  if (wallMs < wallOf(state, now) - MINUTE_MS) return refused("That time is past.");
  if (!isRecordable(wallMs)) return refused("That is too far off for a reminder.");
  const reminder = nextId(state, now, "R");
  return done({ type: "reminder-set", reminder, wallMs, text: slots.text, t: now });
}

export function decideNote(deciding: Deciding<"note">): Decision {
  const { text } = deciding.wish.command.slots;
  if (text.trim() === "") return refused("What should I write down?");
  const owner = deciding.state.focus;
  const batch = owner === null ? undefined : deciding.state.batches[owner];
  return done({ type: "note", owner: batch ? batch.id : null, text, t: deciding.now });
}

export function decideHush(deciding: Deciding<"hush">): Decision {
  const { minutes } = deciding.wish.command.slots;
  const until = minutes === undefined ? null : deciding.now + minutes * MINUTE_MS;
  return done({ type: "hushed", until, t: deciding.now });
}

/** How much is said, and the quiet hours. */
export function decideSettings({ state, now, wish }: Deciding<"settings">): Decision {
  const { talk, night } = wish.command.slots;
  if (talk !== undefined) return done({ type: "kitchen-set", talk, t: now });
  if (night === "not-tonight") {
    const awakeUntil = nextMorning(state, now);
    if (awakeUntil === undefined) return refused("There are no quiet hours.");
    return done({ type: "kitchen-set", awakeUntil, t: now });
  }
  const quiet = nightOf(night ?? "");
  if (quiet === undefined) return refused("From when to when? Say quiet from ten to six.");
  return done({ type: "kitchen-set", quiet, t: now });
}

/** "Got it" answers the alarms that were said last. */
export function decideAcknowledge({ state, now, lastAlarms = [] }: Present): Decision {
  const heard = lastAlarms.filter((key) => state.ringing.includes(key));
  const keys = heard.length > 0 ? heard : state.ringing.slice(-1);
  return keys.length === 0 ? { kind: "tell" } : done({ type: "acknowledged", keys, t: now });
}

/** What may be said of a batch. */
type OfABatch = { [I in Intent]: "target" extends keyof SlotsOf[I] ? I : never }[Intent];

/** A finished or running lot by name that passes the test; where several match, it asks. */
export function shelved(
  deciding: Deciding<OfABatch>,
  test: (one: LotOf) => boolean = () => true,
): LotOf | Decision {
  const { state, wish } = deciding;
  const { target } = wish.command.slots;
  const refs = wish.chosen ?? wish.command.ref?.recorded;
  if (!refs) return refused("Which batch?");
  const named = lotsOf(state, refs).filter(({ batch, lot }) => {
    return batch.state !== "abandoned" && lot.abandonedAt === undefined;
  });
  const fitting = named.filter(test);
  const list = fitting.length > 0 ? fitting : named.slice(0, 1);
  const [one] = list;
  if (!one) return refused(`I have nothing called ${target} in the log.`);
  if (list.length > 1) {
    return askWhichLot(wish, "Which batch:", list, toldApart(state, list));
  }
  return one;
}

/** Jars of a lot that should still be there: sealed, or filled where there is no process. */
export function onShelf({ batch, lot }: LotOf): number {
  return inStore(lot, batch.option !== null).length - lot.openedBeyond;
}

/** The scale of every score, so that scores of different days can be compared. */
const LOWEST_SCORE = 1;
const HIGHEST_SCORE = 5;

export function decideTaste(deciding: Deciding<"taste">): Decision {
  const { state, now, wish } = deciding;
  const { target: _, ...rest } = wish.command.slots;
  const { ref } = wish.command;
  const last = lastOpened(state, now);
  const open = ref === undefined || namesOnlySort(ref, "it", "jars");
  const named = lotsOf(state, wish.chosen ?? ref?.recorded ?? []);
  const fits = last && (open || named.some(({ lot }) => lot === last.of.lot));
  const found = fits && !wish.chosen ? last.of : shelved(deciding);
  if ("kind" in found) return found;
  const scores: Record<string, number> = {};
  for (const [name, value] of Object.entries(rest)) {
    if (typeof value !== "number") continue;
    if (value < LOWEST_SCORE || value > HIGHEST_SCORE) {
      return refused("Scores go from 1 to 5, like crunch four.");
    }
    scores[name] = value;
  }
  const taster = typeof rest.taster === "string" ? rest.taster : null;
  const words = typeof rest.words === "string" ? { words: rest.words } : {};
  if (Object.keys({ ...scores, ...words }).length === 0)
    return refused("Say a score from 1 to 5, like crunch four.");
  const jars = last && last.of.lot === found.lot && last.jars.length > 0 ? last.jars : undefined;
  const tasted = { batch: found.lot.id, taster, scores, ...words, ...(jars ? { jars } : {}) };
  return done({ type: "tasted", ...tasted, t: deciding.now });
}

/** So long after a jar was opened, a tasting without a name is of that jar: our choice. */
const TASTED_WITHIN_MS = 24 * HOUR_MS;

/** The lot a jar was opened of last, and the jars, where they are known. */
function lastOpened(state: State, now: number): { of: LotOf; jars: number[] } | undefined {
  let found: { of: LotOf; at: number } | undefined;
  for (const of of Object.values(state.batches).flatMap(lotsIn)) {
    for (const { left } of of.lot.jars) {
      if (left?.what !== "opened" || now - left.at > TASTED_WITHIN_MS) continue;
      if (!found || left.at >= found.at) found = { of, at: left.at };
    }
  }
  if (!found) return undefined;
  const { of, at } = found;
  const jars = of.lot.jars.filter(({ left, guessed }) => left?.at === at && !guessed);
  return { of, jars: jars.flatMap(({ number }) => (number > 0 ? [number] : [])) };
}
