/** Alarms that ring until someone answers: what they say, and when they say it again. */
import type { DueItem } from "../kitchen/agenda.ts";
import { readStageDue } from "../kitchen/due-key.ts";
import { ownerOf, runOf } from "../kitchen/owners.ts";
import { rulesOf } from "../kitchen/stages/kinds.ts";
import type { State } from "../kitchen/state.ts";
import { dueSentence } from "../speech/due-sentences.ts";

/** First repeat after this, each later one after twice as long, up to the last. */
const FIRST_REPEAT_MS = 30_000;
const LONGEST_REPEAT_MS = 300_000;

type Ringing = { text: string; nextAt: number; waitMs: number };

/** The due item a recorded key stands for. */
export function itemOf(state: State, key: string, at: number): DueItem {
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

/** Whether an alarm guards a process: it is said even when the kitchen is hushed. */
export function guards(state: State, key: string): boolean {
  const { run } = itemOf(state, key, 0);
  return run !== undefined && rulesOf(run.spec).watched;
}

export class Alarms {
  private readonly ringing = new Map<string, Ringing>();
  /** The key of the alarm that was spoken last. */
  last: string | undefined;

  /** Takes up an alarm that has just been spoken. */
  spoke(key: string, text: string, now: number): void {
    this.ringing.set(key, { text, nextAt: now + FIRST_REPEAT_MS, waitMs: FIRST_REPEAT_MS });
    this.last = key;
  }

  /** When the next repeat is due; undefined where nothing rings. What rings unheard is due now. */
  nextAt(state: State): number | undefined {
    if (state.ringing.some((key) => !this.ringing.has(key))) return Number.NEGATIVE_INFINITY;
    const times = [...this.ringing.values()].map((one) => one.nextAt);
    return times.length > 0 ? Math.min(...times) : undefined;
  }

  /** Alarms that still ring and are to be said again now, after those that fell silent are gone. */
  repeats(state: State, now: number): { key: string; text: string }[] {
    const live = new Set(state.ringing);
    for (const key of this.ringing.keys()) if (!live.has(key)) this.ringing.delete(key);
    const due: { key: string; text: string }[] = [];
    for (const key of state.ringing) {
      const known = this.ringing.get(key);
      if (!known) {
        const text = dueSentence(state, itemOf(state, key, state.due[key] ?? now));
        this.spoke(key, text, now);
        due.push({ key, text });
      } else if (now >= known.nextAt) {
        known.waitMs = Math.min(known.waitMs * 2, LONGEST_REPEAT_MS);
        known.nextAt = now + known.waitMs;
        this.last = key;
        due.push({ key, text: known.text });
      }
    }
    return due;
  }
}
