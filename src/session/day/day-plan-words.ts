/** The day's plan in sentences: when to do what, what limits it, how the day runs against it. */

import type { PlannedItem } from "../../kitchen/events.ts";
import { listed, upper } from "../../kitchen/spoken-names.ts";
import { type DayPlan, type State, wallOf } from "../../kitchen/state.ts";
import { MINUTE_MS } from "../../kitchen/time.ts";
import type { KitchenPlan } from "../../plan/plan-request.ts";
import { durationWords, momentWords } from "../../speech/spoken-time.ts";

const FIVE_MINUTES_MS = 5 * MINUTE_MS;
/** More beginnings than this are shown, not said. */
const MOST_SAID = 5;

/** "by half past nine", rounded up to five minutes. */
function byWords(state: State, t: number, now: number): string {
  const wall = Math.ceil(wallOf(state, t) / FIVE_MINUTES_MS) * FIVE_MINUTES_MS;
  const words = momentWords(wall, wallOf(state, now), state.zone);
  return words.startsWith("at ") ? `by ${words.slice(3)}` : words;
}

function atWords(state: State, t: number, now: number): string {
  if (t <= now + MINUTE_MS) return "now";
  return momentWords(wallOf(state, t), wallOf(state, now), state.zone);
}

/** When each batch begins, when the day is done, and what limits it. */
export function planSentences(
  state: State,
  kept: DayPlan,
  plan: KitchenPlan,
  now: number,
): string[] {
  const items = beginnings(kept);
  const begins = items
    .slice(0, MOST_SAID)
    .map(({ title, beginAt }) => `the ${title} ${atWords(state, beginAt, now)}`);
  const more = items.length - begins.length;
  const list = [...begins, ...(more > 0 ? [`${more} more after that`] : [])];
  const last = list.pop();
  const joined = list.length > 0 ? `${list.join(", ")}, and ${last}` : last;
  const begin = items.length > 0 ? [`Begin ${joined}.`] : [];
  const done = `${upper(outWords(state, kept.finishAt, now))}.`;
  const [why] = plan.why;
  return [...begin, done, ...(why ? [`${upper(why)}.`] : [])];
}

/** What begins and when, lots of one recipe that begin together as one. */
function beginnings({ items }: DayPlan): { title: string; beginAt: number }[] {
  const groups = new Map<string, PlannedItem[]>();
  for (const item of items.toSorted((a, b) => a.beginAt - b.beginAt)) {
    const key = `${item.recipe} ${item.beginAt}`;
    groups.set(key, [...(groups.get(key) ?? []), item]);
  }
  return [...groups.values()].flatMap(([first, ...others]) => {
    if (!first || others.length === 0) return first ?? [];
    const varieties = [first, ...others].map(({ variety }) => variety ?? "");
    // Each title ends in the recipe's own name.
    const own = first.title.slice(first.variety ? first.variety.length + 1 : 0);
    return { title: `${listed(varieties.filter(Boolean))} ${own}`, beginAt: first.beginAt };
  });
}

function outWords(state: State, t: number, now: number): string {
  return `the jars are out ${byWords(state, t, now)}`;
}

/** "The day runs about twenty minutes late: done by half past nine." And what begins next. */
export function finishSentence(state: State, kept: DayPlan, now: number): string {
  const lateMs = kept.finishAt - kept.agreedAt;
  const about = Math.round(Math.abs(lateMs) / FIVE_MINUTES_MS) * FIVE_MINUTES_MS;
  const how = lateMs > 0 ? "late" : "ahead";
  const runs =
    about <= FIVE_MINUTES_MS ? "as planned again" : `about ${durationWords(about)} ${how}`;
  const past = kept.finishBy !== null && kept.finishAt > kept.finishBy;
  const wish = past ? ", past the time you wished" : "";
  const [next] = beginnings(kept);
  const begins = next ? ` The ${next.title} begin ${atWords(state, next.beginAt, now)}.` : "";
  return `The day runs ${runs}: done ${byWords(state, kept.finishAt, now)}${wish}.${begins}`;
}
