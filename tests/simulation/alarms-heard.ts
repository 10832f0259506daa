/** The alarms as somebody in the kitchen hears them, beside what the log says of them. */

import { readStageDue } from "../../src/kitchen/due-key.ts";
import { historyOf, type KitchenEvent } from "../../src/kitchen/events.ts";
import { replay } from "../../src/kitchen/evolve.ts";
import { onlyVariety } from "../../src/kitchen/jars/lots.ts";
import { rulesOf } from "../../src/kitchen/stages/kinds.ts";
import type { StageRun, State } from "../../src/kitchen/state.ts";
import type { SpokenSentence } from "../../src/ports/voice.ts";
import { AND } from "../../src/session/conversation.ts";
import { must } from "./what-must-hold.ts";

/** The alarm that the log cannot be written is about no clock. */
const LOG_KEY = "log";

/** An alarm is said again after half a minute at the earliest. */
const ONE_BREATH_MS = 20_000;

/** What rings is said within so long; an undo can make it ring once more. */
const SOON_MS = 2000;

type Alarm = { key: string; program: number; atMs: number; text: string; guards: boolean };

/** What somebody could know a batch by: its variety, or its food. */
function namesOf(state: State, owner: string): string[][] {
  const load = state.loads[owner];
  const ids = load ? [...new Set([load.batch, ...load.parts.map(({ batch }) => batch)])] : [owner];
  return ids.flatMap((id) => {
    const batch = state.batches[id];
    if (!batch) return [];
    const { title, called = title } = batch.recipe;
    const variety = onlyVariety(batch);
    const lots = batch.lots.flatMap((lot) => lot.variety ?? []);
    return [variety === null ? [title, called, ...lots] : [variety]];
  });
}

/** An alarm of a process, a vent or a falling pressure names its batch and is said in a hush. */
function namesAndGuards(state: State, { key, text, guards }: Alarm): void {
  const due = readStageDue(key);
  const run = due && ownerRun(state, due.owner, due.stage);
  if (!due || !run) return;
  const said = text.toLowerCase();
  const named = namesOf(state, due.owner).some((names) =>
    names.some((name) => said.includes(name.toLowerCase())),
  );
  must("an alarm has the name of its batch", named, () => `${key}: ${text}`);
  const guarding = guards || !rulesOf(run.spec).watched;
  must("an alarm of a process is said in a hush", guarding, () => `${key}: ${text}`);
}

function ownerRun(state: State, owner: string, stage: string): StageRun | undefined {
  const stages = (state.batches[owner] ?? state.loads[owner])?.stages;
  return stages?.find(({ id }) => id === stage);
}

/** How far two logs are one: what was not recorded when a program died is told anew by the next. */
function inCommon(one: readonly KitchenEvent[], other: readonly KitchenEvent[]): number {
  const differs = one.findIndex((event, at) => {
    return event !== other[at] && JSON.stringify(event) !== JSON.stringify(other[at]);
  });
  return differs < 0 ? one.length : differs;
}

export class AlarmsHeard {
  private heard: Alarm[] = [];
  private fresh: Alarm[] = [];
  /** What rang when it was last looked at, and since when. */
  private ringing = new Map<string, number>();
  /** The log when it was last looked at. */
  private known: readonly KitchenEvent[] = [];

  said(sentence: SpokenSentence, program: number, atMs: number): void {
    const { rank, key, text, guards = false } = sentence;
    if (rank !== "alarm" || key === undefined) return;
    // Alarms that are said in one breath are named together.
    for (const one of key.split(AND)) {
      if (one !== LOG_KEY) this.fresh.push({ key: one, program, atMs, text, guards });
    }
  }

  /** What must hold after each line: what rings was said, once; what was answered is not said. */
  check(state: State, program: number, nowMs: number, diskMs: number): void {
    const history = historyOf(state);
    const from = inCommon(this.known, history);
    const due = history.slice(from).flatMap((event) => (event.type === "due" ? event.key : []));
    // An answer that was not recorded died with its program: what it had silenced rings again.
    const rangOn = from < this.known.length ? replay(history.slice(0, from)).ringing : [];
    const cameDue = new Set(due);
    const earlier = this.heard.length;
    for (const one of this.fresh) {
      // A program that has lost the folder to another one knows only of its own clocks.
      const other = one.program !== program;
      const rang = other || this.ringing.has(one.key) || cameDue.has(one.key);
      const rings = rang || rangOn.includes(one.key) || state.ringing.includes(one.key);
      must("what was answered does not ring", rings, () => one.key);
      if (!other && state.ringing.includes(one.key)) namesAndGuards(state, one);
      const again = this.heard.findIndex((before) => {
        const near = one.atMs >= before.atMs && one.atMs - before.atMs < ONE_BREATH_MS;
        return before.key === one.key && before.program === one.program && near;
      });
      // A slow disk delays the moment at which an utterance counts as recorded.
      const dueAgain = again < earlier ? 1 : 2;
      const times = due.filter((key) => key === one.key).length;
      const fine = again < 0 || times >= dueAgain || diskMs > 0;
      must("nothing is said twice in one breath", fine, () => one.key);
      this.heard.push(one);
    }
    this.fresh = [];
    for (const key of state.ringing) {
      const said = this.heard.some((one) => one.key === key && one.program === program);
      const since = this.ringing.get(key) ?? nowMs;
      must("what rings was said", said || nowMs - since < SOON_MS + diskMs * 12, () => key);
    }
    this.heard = this.heard.filter((one) => state.ringing.includes(one.key));
    const since = state.ringing.map((key) => [key, this.ringing.get(key) ?? nowMs] as const);
    this.ringing = new Map(since);
    this.known = [...history];
  }
}
