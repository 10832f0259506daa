/** "I'm out for an hour": whether that is safe, what comes due meanwhile, and what is held. */
import { agenda } from "../../kitchen/agenda.ts";
import type { CommandOf } from "../../kitchen/command.ts";
import { batchName, upper } from "../../kitchen/spoken-names.ts";
import { kitchenTimeOf, type State } from "../../kitchen/state.ts";
import { MINUTE_MS, parseIso } from "../../kitchen/time.ts";
import { dueSentence } from "../due-sentences.ts";
import { overview } from "../telling.ts";
import { dueName, whyStay } from "./leaving.ts";
import { atMoment } from "./time-left.ts";

/** At most this much of what comes due is mentioned. */
const MOST_TOLD = 3;
/** The time assumed where nobody said how long, minutes. */
const USUAL_MINUTES = 30;

export function whileAway(state: State, { slots }: CommandOf<"away">, now: number): string {
  const wall = slots.until === undefined ? undefined : parseIso(slots.until, state.zone);
  const until =
    wall === undefined
      ? now + (slots.minutes ?? USUAL_MINUTES) * MINUTE_MS
      : kitchenTimeOf(state, wall);
  const due = agenda(state, now).filter(({ at }) => at > now && at <= until);
  const told = due.slice(0, MOST_TOLD).map((item) => {
    return `${dueName(state, item)}, ${atMoment(state, item.at, now)}`;
  });
  const more = due.length > told.length ? `, and ${due.length - told.length} more` : "";
  const stay = whyStay(state, now);
  const held = Object.values(state.batches).filter((batch) => batch.state === "held");
  return [
    stay ?? "Nothing needs watching.",
    told.length > 0 ? `Meanwhile: ${told.join("; ")}${more}.` : "Nothing falls due till then.",
    ...held.map((batch) => `${upper(batchName(batch))} is held.`),
    stay === undefined ? "I keep the clocks; say you're back." : "",
  ]
    .filter(Boolean)
    .join(" ");
}

/** Being back: what still rings, and how things stand. */
export function sinceAway(state: State, _: CommandOf<"back">, now: number): string {
  const rang = stillRinging(state);
  return [...rang, overview(state, now)].join(" ");
}

/** What rang and nobody acknowledged, as it was said. */
function stillRinging(state: State): string[] {
  return state.ringing.slice(-MOST_TOLD).flatMap((key) => {
    const at = state.due[key] ?? state.lastW;
    const timer = state.timers[key];
    if (timer) return dueSentence(state, { key, at, rank: "alarm", what: "timer" });
    if (!state.reminders[key]) return [];
    return dueSentence(state, { key, at, rank: "alarm", what: "reminder" });
  });
}
