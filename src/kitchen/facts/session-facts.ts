/** Facts about the program and its clocks: when it was open, what nobody watched, what came due. */
import * as z from "zod/mini";
import { readStageDue } from "../due-key.ts";
import { activeOwners, isLoad, ownerOf, runOf } from "../owners.ts";
import { knows, leaveFor } from "../places.ts";
import { rulesOf } from "../stages/kinds.ts";
import type { State } from "../state.ts";
import { addGap } from "../unbroken-time.ts";
import { fact, WOULD_COUNT } from "./fact.ts";
import {
  amount,
  clockShift,
  flag,
  gapCause,
  instant,
  key,
  lineNumber,
  ownerId,
  sealId,
  text,
  word,
  zone,
} from "./fields.ts";

/** Marks the doubts about a load that a question covers as asked about. */
function markAsked(state: State, asked: string): void {
  const [kind = "", id = ""] = asked.split("/");
  if (!["still", "end", "heard"].includes(kind)) return;
  for (const one of state.loads[id]?.heard ?? []) {
    if (one.settledAt === undefined) one.asked = true;
  }
}

export const SESSION_FACTS = {
  opened: fact({
    fields: {
      version: text,
      zone,
      offsetMs: clockShift,
      rehearsal: flag,
      /** Whoever gives ids to new jars from now on. */
      writer: z.optional(word),
    },
    follows: "nothing",
    evolve(state, event): boolean {
      state.open = true;
      state.zone = event.zone;
      state.rehearsal = event.rehearsal;
      if (event.writer === undefined) delete state.jarIds.writer;
      else state.jarIds.writer = event.writer;
      if (state.offsets.at(-1)?.offsetMs !== event.offsetMs) {
        state.offsets.push({ from: event.t, offsetMs: event.offsetMs });
      }
      return true;
    },
  }),
  /** The branch of another data folder begins, which went its own way after a fact known here. */
  joined: fact({
    fields: {
      /** The branch that it left, "" where that is this data folder's own. */
      parent: text,
      /** The last fact that they have in common; null where there is none. */
      after: z.nullable(word),
    },
    follows: "nothing",
    own: true,
    undo: "never",
    passing: true,
    evolve(state, { parent }): boolean {
      leaveFor(state, parent);
      return true;
    },
  }),
  /** From here on whoever wrote knew what other data folders had written, up to this wall time. */
  merged: fact({
    fields: { until: instant },
    follows: "nothing",
    own: true,
    undo: "never",
    passing: true,
    evolve: () => true,
  }),
  closed: fact({
    fields: {},
    follows: "nothing",
    evolve(state): boolean {
      state.open = false;
      return true;
    },
  }),
  gap: fact({
    fields: { from: instant, to: instant, cause: gapCause, byWall: flag },
    follows: "stages",
    undoWarns: ({ cause }) => (cause === "away" ? WOULD_COUNT() : undefined),
    undone: () => "the time away",
    evolve(state, event): boolean {
      const gap = { from: event.from, to: event.to, cause: event.cause };
      state.gaps.push(gap);
      for (const owner of activeOwners(state)) {
        if (!isLoad(owner) || !knows(state, owner.id)) continue;
        for (const run of owner.stages) {
          if (run.kept && run.state === "running" && rulesOf(run.spec).watched) {
            addGap(run.kept, gap);
          }
        }
        if (owner.loadedAt !== undefined && owner.unloadedAt === undefined) owner.gaps.push(gap);
      }
      return true;
    },
  }),
  "clock-set": fact({
    fields: { byMs: clockShift },
    follows: "nothing",
    evolve(state, event): boolean {
      const before = state.offsets.at(-1)?.offsetMs ?? 0;
      state.offsets.push({ from: event.t, offsetMs: before + event.byMs });
      state.clockSets.push({ at: event.t, byMs: event.byMs });
      return true;
    },
  }),
  "log-failed": fact({
    fields: { from: instant, to: instant, events: amount },
    follows: "nothing",
    evolve(state, event): boolean {
      state.logFailures.push({ from: event.from, to: event.to, events: event.events });
      return true;
    },
  }),
  /** A place in the journal that cannot be relied on, and what it affects. */
  "line-sealed": fact({
    fields: {
      seal: sealId,
      file: text,
      line: lineNumber,
      reason: text,
      touches: z.array(ownerId),
    },
    begins: "seal",
    follows: "nothing",
    own: true,
    evolve(state, { seal, file, line, reason, touches, t }): boolean {
      state.sealedLines.push({ seal, file, line, reason, touches, at: t });
      return true;
    },
  }),
  /** A person's word on whether anything is missing there. */
  "line-settled": fact({
    fields: { seal: sealId, held: flag },
    follows: "nothing",
    undone: () => "the word on the damaged line",
    evolve(state, { seal, held }): boolean {
      const line = state.sealedLines.find((one) => one.seal === seal);
      if (line) line.held = held;
      return line !== undefined;
    },
  }),
  due: fact({
    fields: { key, rings: flag },
    follows: "nothing",
    own: true,
    passing: true,
    evolve(state, event): boolean {
      state.due[event.key] = event.t;
      const timer = state.timers[event.key];
      const reminder = state.reminders[event.key];
      // A timer that was taken back after it rang is silent in a replay, too.
      const isThere = timer ?? reminder ?? readStageDue(event.key) ?? event.key.includes("/");
      if (event.rings && isThere) state.ringing.push(event.key);
      if (timer?.state === "running") timer.state = "rang";
      if (reminder?.state === "waiting") reminder.state = "rang";
      const due = readStageDue(event.key);
      const run = due?.what === "check" && runOf(ownerOf(state, due.owner), due.stage);
      if (run) run.checkedAt = event.t;
      return true;
    },
  }),
  asked: fact({
    fields: { key, text },
    formerly: ["kind", "about", "detail", "choices"],
    follows: "nothing",
    own: true,
    undo: "never",
    evolve(state, event): boolean {
      state.asked[event.key] ??= event.t;
      markAsked(state, event.key);
      return true;
    },
  }),
  /** A question was answered by a guess: it stays open. */
  "left-open": fact({
    fields: { key },
    follows: "nothing",
    evolve(state, event): boolean {
      state.leftOpen[event.key] = event.t;
      return true;
    },
  }),
  acknowledged: fact({
    fields: { keys: z.array(key) },
    follows: "nothing",
    own: true,
    undo: "along",
    evolve(state, event): boolean {
      state.ringing = state.ringing.filter((key) => !event.keys.includes(key));
      for (const key of event.keys) {
        const timer = state.timers[key];
        if (timer?.state === "rang") timer.state = "answered";
        const reminder = state.reminders[key];
        if (reminder?.state === "rang") reminder.state = "answered";
      }
      return true;
    },
  }),
  hushed: fact({
    fields: { until: z.nullable(instant) },
    follows: "nothing",
    evolve(state, event): boolean {
      state.hushedUntil = event.until;
      return true;
    },
  }),
  unhushed: fact({
    fields: {},
    follows: "nothing",
    evolve(state): boolean {
      state.hushedUntil = undefined;
      return true;
    },
  }),
};
