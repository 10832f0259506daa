/** How long something still takes, never rounded down. */

import { type State, wallOf } from "../../kitchen/state.ts";
import { MINUTE_MS } from "../../kitchen/time.ts";
import { countWords, numberWords } from "../../reckon/number-words.ts";
import { clockWords, durationWords, momentWords } from "../spoken-time.ts";

function upToMinute(ms: number): number {
  return Math.ceil(ms / MINUTE_MS) * MINUTE_MS;
}

/** "six minutes are left, until 12:29": rounded up, so that the end has come by then. */
export function leftUntil(state: State, dueAt: number, now: number): string {
  const left = upToMinute(dueAt - now);
  const clock = clockWords(upToMinute(wallOf(state, dueAt)), state.zone);
  const one = left === MINUTE_MS;
  return `${durationWords(left)} ${one ? "is" : "are"} left, until ${clock}`;
}

/** "at ten past four", "at nine in the morning tomorrow": never before the instant. */
export function atMoment(state: State, t: number, now: number): string {
  return momentWords(upToMinute(wallOf(state, t)), wallOf(state, now), state.zone);
}

/** "all fifteen minutes" */
export function allMinutes(minutes: number): string {
  return minutes === 1 ? "the whole minute" : `all ${numberWords(minutes)} minutes`;
}

export function minuteWords(minutes: number): string {
  return countWords(minutes, "minute");
}
