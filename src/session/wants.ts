/**
 * What the kitchen wants to say of its own accord: stages whose turn came, what is due, what rings.
 */
import type { Want } from "../desk/want.ts";
import type { DueMoment } from "../kitchen/agenda.ts";
import { readStageDue } from "../kitchen/due-key.ts";
import type { DatedFact } from "../kitchen/events.ts";
import { isLoad, ownerOf, runOf } from "../kitchen/owners.ts";
import { listed, lower } from "../kitchen/spoken-names.ts";
import { rulesOf } from "../kitchen/stages/kinds.ts";
import type { State } from "../kitchen/state.ts";
import { isLost } from "../kitchen/unbroken-time.ts";
import { reckonWith } from "../plan/learning/learned-report.ts";
import { dueWording } from "../speech/due-sentences.ts";
import { newTurns, promptWording } from "../speech/prompts.ts";

/** The due item a recorded key stands for. */
function itemOf(state: State, key: string): DueMoment {
  const at = state.due[key] ?? 0;
  const timer = state.timers[key];
  if (timer) return { key, at, rank: "alarm", what: "timer" };
  if (state.reminders[key]) return { key, at, rank: "alarm", what: "reminder" };
  const due = readStageDue(key);
  const owner = due && ownerOf(state, due.owner);
  const run = due && runOf(owner, due.stage);
  return {
    key,
    at,
    rank: "alarm",
    what: due?.what ?? "end",
    ...(owner ? { owner } : {}),
    ...(run ? { run } : {}),
  };
}

/** All that rings, as it is said now. */
export function ringing(state: State, now: number): Want[] {
  return state.ringing.map((key) => alarmOf(state, itemOf(state, key), now));
}

/** An alarm that guards a process is said even when the kitchen is hushed. */
function alarmOf(state: State, item: DueMoment, now: number): Want {
  const { key, run, what } = item;
  const guards = run !== undefined && rulesOf(run.spec).watched;
  const broken = guards && (what === "off" || (run.kept !== undefined && isLost(run.kept)));
  const todo = nextStep(state, item, now);
  const wording = dueWording(state, item);
  return { rank: "alarm", key, guards, broken, ...wording, ...(todo ? { todo } : {}) };
}

/** What the end of a clock has begun, in short. */
function nextStep(state: State, { owner, run, what }: DueMoment, now: number): string {
  if (what !== "end" || !owner || !run) return "";
  const after = owner.stages.slice(owner.stages.indexOf(run) + 1);
  const next = after.find((one) => one.state === "running");
  const wording = next && promptWording(state, owner, next, now);
  return wording?.lesson?.short ?? wording?.text ?? "";
}

/** What came due; an alarm is said because it rings. */
export function dueWants(state: State, item: DueMoment): Want[] {
  if (item.rank === "alarm") return [];
  const wording = dueWording(state, item);
  // What was begun at the moment it was to be is only told how.
  const { owner, run, what } = item;
  const key = what === "start" && owner && run ? `${owner.id}/${run.id}` : item.key;
  return wording.text === "" ? [] : [{ rank: "prompt", key, ...wording }];
}

/** Prompts for the stages whose turn came since an earlier state. */
export function turnWants(before: State, state: State, now: number): Want[] {
  return newTurns(before, state, now).flatMap(({ owner, run }): Want[] => {
    if (!isLoad(owner) && owner.state === "held") return [];
    const wording = promptWording(state, owner, run, now);
    const key = `${owner.id}/${run.id}`;
    return wording.text === "" ? [] : [{ rank: "prompt", key, ...wording }];
  });
}

/** Names the alarms that were answered. */
export function answeredWants(state: State, facts: readonly DatedFact[]): Want[] {
  return facts.flatMap((fact): Want[] => {
    if (fact.type !== "acknowledged" || fact.keys.length === 0) return [];
    const wordings = fact.keys.map((key) => dueWording(state, itemOf(state, key)));
    const names = wordings.flatMap(({ name }) => name ?? []);
    const others = wordings.flatMap(({ name, text }) =>
      name === undefined ? lower(text.replace(/ is done\.$|\.$/, "")) : [],
    );
    const text = others.length > 0 ? `Got it: ${listed(others)}.` : "Okay.";
    return [{ rank: "answer", ...(names.length > 0 ? { name: listed(names) } : {}), text }];
  });
}

/** Whether terms are announced at once, whoever set them. */
export function speaksOfAltitude(fact: DatedFact): boolean {
  return fact.type === "load-terms" || fact.type === "altitude-doubt";
}

/** What to reckon with in batches that began, where this cook differs from their recipes. */
export function reckoned(state: State, facts: readonly DatedFact[]): Want[] {
  return facts.flatMap((fact): Want[] => {
    const batch = fact.type === "batch-begun" ? state.batches[fact.batch] : undefined;
    const text = batch && reckonWith(state, batch);
    return text ? [{ rank: "answer", text }] : [];
  });
}
