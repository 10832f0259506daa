/** "Can I go out", "do I have to stay": what must be watched, and what comes due first. */
import { agenda, type DueItem, stageClock } from "../../kitchen/agenda.ts";
import { handsNow } from "../../kitchen/day/coming.ts";
import { activeOwners, inCanner } from "../../kitchen/owners.ts";
import { ownerName, timerName } from "../../kitchen/spoken-names.ts";
import { rulesOf } from "../../kitchen/stages/kinds.ts";
import type { State } from "../../kitchen/state.ts";
import { heatedOnStove } from "./in-mind.ts";
import { atMoment } from "./time-left.ts";

export function dueName(state: State, { key, owner, run }: DueItem): string {
  if (owner && run) return `${ownerName(state, owner)}, ${run.spec.title}`;
  const timer = state.timers[key];
  if (timer) return timerName(timer);
  return state.reminders[key]?.text ?? "the next thing on the plan";
}

/** Why a person has to stay; undefined where nothing has to be watched. */
export function whyStay(state: State, now: number): string | undefined {
  for (const owner of activeOwners(state)) {
    const watched = owner.stages.find(
      (run) => run.state === "running" && rulesOf(run.spec).watched,
    );
    if (!watched) continue;
    const clock = stageClock(watched);
    const at = clock && clock.dueAt > now ? atMoment(state, clock.dueAt, now) : "it's done";
    const until = at.replace(/^at /, "");
    return `Stay: somebody has to watch ${ownerName(state, owner)} until ${until}.`;
  }
  const hot = heatedOnStove(state, undefined)?.owner ?? inCanner(state)[0];
  return hot ? `Stay with ${ownerName(state, hot)}, on the heat now.` : undefined;
}

export function mayLeave(state: State, now: number): string {
  const stay = whyStay(state, now);
  if (stay !== undefined) return stay;
  const next = agenda(state, now).find((item) => item.at > now);
  const due = next ? ` Next is ${dueName(state, next)}, ${atMoment(state, next.at, now)}.` : "";
  const hands = handsNow(state, now)[0];
  if (hands) {
    return `Nothing needs watching, but ${hands.run.spec.title} waits for your hands.${due}`;
  }
  return due ? `You can go: nothing needs watching.${due}` : "You can go: nothing is running.";
}
