/** The wake-up: time passed, what came due is written and said, and the next one is armed. */
import { OWN_COMMAND } from "../kitchen/decide/decide-corrections.ts";
import { handsFreeAt } from "../kitchen/questions/hands.ts";
import { mustBeKept } from "../kitchen/watched.ts";
import type { Conversation } from "./conversation.ts";
import type { DayPlanner } from "./day/day-planner.ts";
import type { Deeds } from "./deeds.ts";
import { type LogWriter, WRITTEN_AGAIN } from "./log-writer.ts";
import type { SessionParts } from "./session-parts.ts";
import { isHushed } from "./time/outlook.ts";
import { factsOfFindings } from "./time/time-facts.ts";

type WakeUpParts = {
  parts: SessionParts;
  deeds: Deeds;
  log: LogWriter;
  talk: Conversation;
  dayPlan: DayPlanner;
  /** Asks what is to be asked now. */
  ask(): void;
};

export class WakeUp {
  private readonly with: WakeUpParts;
  private stopTick: (() => void) | undefined;
  private stopped = false;

  constructor(parts: WakeUpParts) {
    this.with = parts;
  }

  private now(): number {
    const { timeline, clock } = this.with.parts;
    return timeline.now(clock.read());
  }

  /** Lets the time since the last look pass: gaps, clock changes and what came due are written. */
  passTime(): number {
    const { parts, deeds, log, talk } = this.with;
    const { state, clock, timeline, watch } = parts;
    const reading = clock.read();
    const now = timeline.now(reading);
    if (log.recover(now)) talk.say("news", WRITTEN_AGAIN);
    const found = factsOfFindings(state, watch.observe(reading), now);
    if (found.length > 0) deeds.seen(found, log.nextId(now, OWN_COMMAND), now);
    deeds.comeDue(now);
    talk.hush(isHushed(state, now));
    if (mustBeKept(state)) log.keepBeat(reading);
    return now;
  }

  /** Looks at the clocks, writes what came due, says it, and arms the next wake-up. */
  tick(): void {
    const { talk, ask } = this.with;
    this.stopTick?.();
    this.passTime();
    ask();
    talk.flush();
    this.arm();
    this.keepPlan();
  }

  /** Arms it for the soonest due moment, and at the latest for the next look at the clocks. */
  arm(): void {
    const { parts, deeds, talk } = this.with;
    this.stopTick?.();
    const now = this.now();
    const free = handsFreeAt(parts.state, now) ?? Number.POSITIVE_INFINITY;
    const next = Math.min(deeds.dueAt(now), talk.desk.nextAt(parts.state.ringing), free);
    const wait = Math.min(parts.lookMs(mustBeKept(parts.state)), Math.max(1, next - now));
    this.stopTick = parts.clock.after(wait, () => this.tick());
  }

  /** Plans what has not begun again, once nobody is waiting for an answer. */
  keepPlan(): void {
    const { parts, deeds, log, talk, dayPlan, ask } = this.with;
    if (!dayPlan.isStale(this.now())) return;
    parts.later(() => {
      if (this.stopped || !dayPlan.isStale(this.now())) return;
      const now = this.now();
      const { facts, said } = dayPlan.replan(now);
      if (facts.length > 0) log.commit(facts, log.nextId(now, OWN_COMMAND));
      for (const text of said) talk.say("news", text);
      deeds.comeDue(now);
      ask();
      talk.flush();
      this.arm();
    });
  }

  /** Cancels the next wake-up. */
  stop(): void {
    this.stopTick?.();
    this.stopped = true;
  }
}
