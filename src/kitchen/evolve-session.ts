/** Events of the program's clocks, of the kitchen as a place, of timers, and of afterwards. */
import type { Handlers } from "./handler.ts";
import { addGap } from "./kept.ts";
import { activeOwners, isLoad, ownerOf, runOf } from "./owners.ts";
import { KINDS } from "./stages/kinds.ts";
import { wallOf } from "./state.ts";
import { MINUTE_MS } from "./time.ts";

type SessionEvents =
  | "opened"
  | "closed"
  | "gap"
  | "clock-set"
  | "log-failed"
  | "due"
  | "asked"
  | "acknowledged"
  | "hushed"
  | "unhushed"
  | "kitchen-set"
  | "gauge-set"
  | "altitude-doubt"
  | "timer-set"
  | "timer-added"
  | "timer-cancelled"
  | "reminder-set"
  | "reminder-cancelled"
  | "tasted"
  | "preferred"
  | "jar-opened"
  | "jars-moved"
  | "seed-saved"
  | "germination"
  | "day-planned"
  | "day-plan-dropped";

export const SESSION_HANDLERS: Handlers<SessionEvents> = {
  opened(state, event) {
    state.open = true;
    state.zone = event.zone;
    state.rehearsal = event.rehearsal;
    if (state.offsets.at(-1)?.offsetMs !== event.offsetMs) {
      state.offsets.push({ from: event.t, offsetMs: event.offsetMs });
    }
    return true;
  },
  closed(state) {
    state.open = false;
    return true;
  },
  gap(state, event) {
    const gap = { from: event.from, to: event.to, cause: event.cause };
    state.gaps.push(gap);
    for (const owner of activeOwners(state)) {
      if (!isLoad(owner)) continue;
      for (const run of owner.stages) {
        if (run.kept && run.state === "running" && KINDS[run.spec.kind].watched) {
          addGap(run.kept, gap);
        }
      }
      if (owner.loadedAt !== undefined && owner.unloadedAt === undefined) owner.gaps.push(gap);
    }
    return true;
  },
  "clock-set"(state, event) {
    const before = state.offsets.at(-1)?.offsetMs ?? 0;
    state.offsets.push({ from: event.t, offsetMs: before + event.byMs });
    state.clockSets.push({ at: event.t, byMs: event.byMs });
    return true;
  },
  "log-failed"(state, event) {
    state.logFailures.push({ from: event.from, to: event.to, events: event.events });
    return true;
  },
  due(state, event) {
    state.due[event.key] = event.t;
    if (event.rings) state.ringing.push(event.key);
    const timer = state.timers[event.key];
    if (timer?.state === "running") timer.state = "rang";
    const reminder = state.reminders[event.key];
    if (reminder?.state === "waiting") reminder.state = "rang";
    const [owner = "", stage = "", what] = event.key.split("/");
    const run = what === "check" ? runOf(ownerOf(state, owner), stage) : undefined;
    if (run) run.checkedAt = event.t;
    return true;
  },
  asked(state, event) {
    state.asked[event.key] ??= event.t;
    return true;
  },
  acknowledged(state, event) {
    state.ringing = state.ringing.filter((key) => !event.keys.includes(key));
    for (const key of event.keys) {
      const timer = state.timers[key];
      if (timer?.state === "rang") timer.state = "answered";
      const reminder = state.reminders[key];
      if (reminder?.state === "rang") reminder.state = "answered";
    }
    return true;
  },
  hushed(state, event) {
    state.hushedUntil = event.until;
    return true;
  },
  unhushed(state) {
    state.hushedUntil = undefined;
    return true;
  },
  "kitchen-set"(state, event) {
    if (event.altitudeFt !== undefined) {
      state.kitchen.altitudeFt = event.altitudeFt;
      state.kitchen.altitudeUncertaintyFt = event.altitudeUncertaintyFt ?? 0;
      for (const doubt of state.doubts) doubt.settledFt ??= event.altitudeFt;
    }
    if (event.canners) state.kitchen.canners = structuredClone(event.canners);
    if (event.burners !== undefined) state.kitchen.burners = event.burners;
    if (event.units) state.kitchen.units = event.units;
    return true;
  },
  "gauge-set"(state, event) {
    const canner = state.kitchen.canners.find((one) => one.id === event.canner);
    if (!canner) return false;
    canner.gauge = { ...event.gauge };
    return true;
  },
  "altitude-doubt"(state, event) {
    const { owner, detail, why } = event;
    const atFt = state.kitchen.altitudeFt;
    state.doubts.push({ at: event.t, detail, owner, atFt, ...(why ? { why } : {}) });
    return true;
  },
  "timer-set"(state, event) {
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
  "timer-added"(state, event) {
    const timer = state.timers[event.timer];
    if (!timer || timer.state === "cancelled") return false;
    // A timer that rang goes on from now; one that runs is only made longer.
    const from = timer.state === "running" ? timer.endsAt : event.t;
    timer.endsAt = from + event.minutes * MINUTE_MS;
    timer.minutes += event.minutes;
    timer.state = "running";
    state.ringing = state.ringing.filter((key) => key !== timer.id);
    delete state.due[timer.id];
    return true;
  },
  "timer-cancelled"(state, event) {
    const timer = state.timers[event.timer];
    if (!timer) return false;
    if (timer.state === "running") timer.state = "cancelled";
    state.ringing = state.ringing.filter((key) => key !== timer.id);
    return true;
  },
  "reminder-set"(state, event) {
    state.reminders[event.reminder] = {
      id: event.reminder,
      wallMs: event.wallMs,
      text: event.text,
      state: "waiting",
    };
    return true;
  },
  "reminder-cancelled"(state, event) {
    const reminder = state.reminders[event.reminder];
    if (!reminder) return false;
    reminder.state = "cancelled";
    return true;
  },
  tasted(state, event) {
    const { batch, taster, scores } = event;
    state.tastings.push({ at: event.t, batch, taster, scores });
    return true;
  },
  preferred(state, event) {
    const { batch, over, taster } = event;
    state.preferences.push({ at: event.t, batch, over, taster });
    return true;
  },
  "jar-opened"(state, event) {
    if (!state.batches[event.batch]) return false;
    const { batch, count, spoiled } = event;
    state.openedJars.push({ at: event.t, batch, count, spoiled });
    return true;
  },
  "jars-moved"(state, event) {
    state.places[event.batch] = event.place;
    return true;
  },
  "seed-saved"(state, event) {
    const { seed, crop, variety, isolation, fermentDays, dryWeightG, storage, batch } = event;
    state.seeds[seed] = {
      id: seed,
      crop,
      variety,
      isolation,
      fermentDays,
      dryWeightG,
      storage,
      batch,
      savedAt: wallOf(state, event.t),
      tests: [],
    };
    return true;
  },
  "day-planned"(state, event) {
    const { agreedAt, finishAt, finishBy, quiet } = event;
    const items = event.items.map((item) => ({ ...item }));
    state.dayPlan = { items, agreedAt, finishAt, finishBy, quiet };
    return true;
  },
  "day-plan-dropped"(state) {
    if (!state.dayPlan) return false;
    state.dayPlan = null;
    return true;
  },
  germination(state, event) {
    const seed = state.seeds[event.seed];
    if (!seed) return false;
    const { sprouted, of, days } = event;
    seed.tests.push({ at: event.t, sprouted, of, days });
    return true;
  },
};
