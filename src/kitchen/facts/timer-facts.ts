/** Facts about timers and reminders. */
import * as z from "zod/mini";
import { ownerOf, runOf } from "../owners.ts";
import { MINUTE_MS } from "../time.ts";
import { fact } from "./fact.ts";
import {
  instant,
  minutes,
  moreMinutes,
  ownerId,
  reminderId,
  text,
  timerId,
  word,
} from "./fields.ts";

export const TIMER_FACTS = {
  "timer-set": fact({
    fields: { timer: timerId, label: z.nullable(text), minutes },
    begins: "timer",
    follows: "nothing",
    undone: () => "the timer",
    evolve(state, event): boolean {
      state.timers[event.timer] = {
        id: event.timer,
        label: event.label,
        setAt: event.t,
        minutes: event.minutes,
        endsAt: event.t + event.minutes * MINUTE_MS,
        state: "running",
      };
      return true;
    },
  }),
  "timer-added": fact({
    fields: { timer: timerId, minutes: moreMinutes },
    follows: "nothing",
    evolve(state, event): boolean {
      const timer = state.timers[event.timer];
      if (!timer || timer.state === "cancelled") return false;
      // A timer that rang starts again from now; one that runs only gets longer.
      const from = timer.state === "running" ? timer.endsAt : event.t;
      timer.endsAt = from + event.minutes * MINUTE_MS;
      timer.minutes += event.minutes;
      timer.state = "running";
      state.ringing = state.ringing.filter((key) => key !== timer.id);
      delete state.due[timer.id];
      return true;
    },
  }),
  "timer-cancelled": fact({
    fields: { timer: timerId },
    follows: "nothing",
    evolve(state, event): boolean {
      const timer = state.timers[event.timer];
      if (!timer) return false;
      if (timer.state === "running") timer.state = "cancelled";
      state.ringing = state.ringing.filter((key) => key !== timer.id);
      return true;
    },
  }),
  /** A warning this many minutes before a stage's clock is full. */
  "warning-set": fact({
    fields: { owner: ownerId, stage: word, minutes },
    follows: "nothing",
    undone: ({ stage }) => `the warning before ${stage} ends`,
    evolve(state, { owner, stage, minutes }): boolean {
      if (!runOf(ownerOf(state, owner), stage)) return false;
      state.warnings.push({ owner, stage, minutes });
      return true;
    },
  }),
  "reminder-set": fact({
    fields: { reminder: reminderId, wallMs: instant, text },
    begins: "reminder",
    follows: "nothing",
    evolve(state, event): boolean {
      state.reminders[event.reminder] = {
        id: event.reminder,
        wallMs: event.wallMs,
        text: event.text,
        state: "waiting",
      };
      return true;
    },
  }),
  "reminder-cancelled": fact({
    fields: { reminder: reminderId },
    follows: "nothing",
    evolve(state, event): boolean {
      const reminder = state.reminders[event.reminder];
      if (!reminder) return false;
      reminder.state = "cancelled";
      return true;
    },
  }),
};
