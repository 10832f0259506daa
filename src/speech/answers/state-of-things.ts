/** What is in the canner, which one rang, and how the day stands. */

import { agenda, stageClock } from "../../kitchen/agenda.ts";
import { toCome } from "../../kitchen/day/coming.ts";
import { agreedStep } from "../../kitchen/day/course.ts";
import { loadJars } from "../../kitchen/jars/lots.ts";
import { queue } from "../../kitchen/loads/next-load.ts";
import { activeOwners, inCanner, isLoad, ownerOf, runOf } from "../../kitchen/owners.ts";
import { questions } from "../../kitchen/questions/questions.ts";
import { batchName, loadName, ownerName, timerName, upper } from "../../kitchen/spoken-names.ts";
import { rulesOf } from "../../kitchen/stages/kinds.ts";
import type { Load, State } from "../../kitchen/state.ts";
import { MINUTE_MS } from "../../kitchen/time.ts";
import { isLost } from "../../kitchen/unbroken-time.ts";
import { countWords } from "../../reckon/number-words.ts";
import { durationWords } from "../spoken-time.ts";
import { atMoment, leftUntil } from "./time-left.ts";

function loadSentence(state: State, load: Load, now: number): string {
  const name = upper(loadName(state, load));
  const jars = loadJars(state, load).length;
  const run = load.stages.find((one) => one.state === "running");
  const clock = run && stageClock(run);
  if (load.loadedAt === undefined) return `The canner is warming for ${loadName(state, load)}.`;
  const count = jars > 0 ? `, ${countWords(jars, "jar")}` : "";
  if (clock && !clock.lost && clock.dueAt > now) {
    return `${name}${count}: ${leftUntil(state, clock.dueAt, now)}.`;
  }
  return `${name}${count}${run ? `: ${run.spec.title}` : ""}.`;
}

export function cannerState(state: State, now: number): string {
  const loads = inCanner(state);
  const [next] = queue(state, now);
  const then = next ? ` Next for it: ${batchName(next)}.` : "";
  if (loads.length === 0) {
    return `${state.kitchen.canners.length > 1 ? "The canners are" : "The canner is"} free.${then}`;
  }
  const taken = new Set(loads.map((load) => load.canner));
  const free = state.kitchen.canners.filter(({ id }) => !taken.has(id));
  const others =
    free.length > 0 ? ` ${upper(free.map(({ name }) => name).join(" and "))}: free.` : "";
  return `${loads.map((load) => loadSentence(state, load, now)).join(" ")}${others}${then}`;
}

/** What an alarm's key belongs to. */
function keyName(state: State, key: string): string | undefined {
  const timer = state.timers[key];
  if (timer) return timerName(timer);
  const reminder = state.reminders[key];
  if (reminder) return `the reminder: ${reminder.text}`;
  const [id = "", stage = ""] = key.split("/");
  const owner = ownerOf(state, id);
  const run = runOf(owner, stage);
  return owner && run ? `${ownerName(state, owner)}, ${run.spec.title}` : undefined;
}

/** What rings; else what came due last; else what is asked about. */
export function whichOne(state: State): string {
  const ringing = state.ringing.flatMap((key) => keyName(state, key) ?? []);
  if (ringing.length > 0) return `${upper(ringing.at(-1) ?? "")}.`;
  const open = questions(state).find(({ key }) => state.asked[key] !== undefined);
  const about = open?.about ? ownerOf(state, open.about) : undefined;
  if (open && about) return `${upper(ownerName(state, about))}. ${open.text}`;
  const [last] = Object.entries(state.due).toSorted(([, a], [, b]) => b - a);
  const name = last && keyName(state, last[0]);
  if (name) return `${upper(name)}.`;
  const [only, more] = activeOwners(state).filter((one) => !isLoad(one));
  if (only && !more) return `${upper(ownerName(state, only))}.`;
  return "I haven't spoken of any one just now.";
}

/** What is wrong or late first; then how the day compares with its plan. */
export function standing(state: State, now: number): string {
  const open = questions(state).find(({ key }) => state.asked[key] !== undefined);
  const lost = activeOwners(state).find((owner) =>
    owner.stages.some((run) => {
      return run.state === "running" && run.kept && isLost(run.kept) && rulesOf(run.spec).condition;
    }),
  );
  const troubles = [
    ...(lost ? [`${upper(ownerName(state, lost))} has stopped: bring it back and tell me.`] : []),
    ...(state.ringing.length > 0 ? [`Waiting for you: ${ringingNames(state)}.`] : []),
    ...(open ? [`I've asked: ${open.text}`] : []),
  ];
  return [...troubles, pace(state, now, troubles.length > 0)].slice(0, 3).join(" ");
}

function ringingNames(state: State): string {
  return state.ringing.flatMap((key) => keyName(state, key) ?? []).join("; ");
}

/** What is furthest behind the plan that was agreed to, where anything is. */
function furthestBehind(state: State, now: number): string {
  const behind = toCome(state, now).flatMap(({ owner, run, at }) => {
    const step = isLoad(owner) ? undefined : agreedStep(owner, run.id);
    const lateMs = step ? at - step.from : 0;
    return lateMs > 5 * MINUTE_MS ? [{ owner, run, lateMs }] : [];
  });
  const [most] = behind.toSorted((a, b) => b.lateMs - a.lateMs);
  if (!most) return "";
  const name = upper(ownerName(state, most.owner));
  return ` ${name}: ${most.run.spec.title}, ${durationWords(most.lateMs)} behind.`;
}

function pace(state: State, now: number, troubled: boolean): string {
  const { dayPlan } = state;
  if (dayPlan) {
    const lateMs = dayPlan.finishAt - dayPlan.agreedAt;
    const done = `done ${atMoment(state, dayPlan.finishAt, now).replace(/^at /, "by ")}`;
    if (Math.abs(lateMs) < 5 * MINUTE_MS) return `As planned: ${done}.`;
    const about = durationWords(lateMs);
    if (lateMs < 0) return `About ${about} ahead: ${done}.`;
    return `About ${about} late: ${done}.${furthestBehind(state, now)}`;
  }
  const running = activeOwners(state).filter((owner) => !isLoad(owner));
  if (running.length === 0) return troubled ? "" : "Nothing is running, and nothing is late.";
  const next = agenda(state, now).find((item) => item.at > now);
  const named = next && keyName(state, next.key);
  const due = named && next ? ` Next: ${named}, ${atMoment(state, next.at, now)}.` : "";
  const count = countWords(running.length, "batch").replace(/batchs$/, "batches");
  return `${troubled ? "" : "All is well: "}${count} running.${due}`;
}
