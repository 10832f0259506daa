/**
 * One session in the kitchen: turns of talk (`turn.ts`) and wake-ups (`wake-up.ts`) around one
 * state, one log and one voice. Nothing is answered before it is written.
 */

import type { Want } from "../desk/want.ts";
import { OWN_COMMAND } from "../kitchen/decide/decide-corrections.ts";
import type { DatedFact } from "../kitchen/events.ts";
import { type State, wallOf } from "../kitchen/state.ts";
import { localDay } from "../kitchen/time.ts";
import type { Context } from "../language/context.ts";
import type { PlanTask } from "../plan/plan-request.ts";
import { wordsIn } from "../reckon/metric-words.ts";
import type { Carried } from "./carried.ts";
import { Conversation, LOG_KEY, type TalkMoment } from "./conversation.ts";
import { DayPlanner } from "./day/day-planner.ts";
import { Deeds } from "./deeds.ts";
import type { Pending } from "./dialogue.ts";
import { FILE_BESIDE, LogWriter, NOT_RECORDED } from "./log-writer.ts";
import type { SecondWitness } from "./probe/second-witness.ts";
import type { SessionParts } from "./session-parts.ts";
import { isHushed } from "./time/outlook.ts";
import { Turn } from "./turn.ts";
import { WakeUp } from "./wake-up.ts";
import { ringing } from "./wants.ts";

/** What came of one utterance, for whoever sent it. */
export type Reply = { refused: boolean; lines: string[] };

export class Session {
  private readonly parts: SessionParts;
  private readonly talk: Conversation;
  private readonly log: LogWriter;
  private readonly deeds: Deeds;
  private readonly dayPlan: DayPlanner;
  private readonly turn: Turn;
  private readonly wakeUp: WakeUp;

  constructor(parts: SessionParts) {
    const { state, library } = parts;
    this.parts = parts;
    this.dayPlan = new DayPlanner({ ...parts, state: () => state });
    this.talk = new Conversation({
      voice: parts.voice,
      moment: () => this.moment(),
      worded: (text) => wordsIn(state.kitchen.units, text),
      ringing: () => ringing(state, this.now()),
      onLines: parts.onLines,
      ...(parts.onDecided ? { onDecided: parts.onDecided } : {}),
    });
    this.log = new LogWriter({
      ...parts,
      now: () => this.now(),
      onTrouble: (message, asks) => {
        this.talk.show("notice", `Not recorded: ${message}`);
        this.talk.want({ rank: "alarm", text: NOT_RECORDED, key: LOG_KEY, guards: true });
        if (asks) this.talk.say("question", FILE_BESIDE);
      },
      onClocksNotKept: (message) => {
        const then = "after a crash nobody can say how long it was.";
        this.talk.show("notice", `The clocks are not kept beside the log (${message}): ${then}`);
      },
    });
    const { talk, log, dayPlan } = this;
    this.deeds = new Deeds({ state, library, log, talk });
    const { deeds } = this;
    this.turn = new Turn({ parts, deeds, log, talk, dayPlan });
    const ask = () => this.turn.ask(this.now());
    this.wakeUp = new WakeUp({ parts, deeds, log, talk, dayPlan, ask });
  }

  get state(): State {
    return this.parts.state;
  }

  /** Kitchen time now. */
  now(): number {
    return this.parts.timeline.now(this.parts.clock.read());
  }

  private moment(): TalkMoment {
    const now = this.now();
    const wallMs = wallOf(this.state, now);
    const day = localDay(wallMs, this.state.zone);
    const short = this.state.kitchen.talk === "short";
    const hushed = isHushed(this.state, now);
    return { now, wallMs, day, asleepUntil: this.turn.asleepUntil(now), short, hushed };
  }

  /** True while what happened is not all on the disk. */
  get notRecorded(): boolean {
    return this.log.notRecorded;
  }

  /** True once somebody has asked to leave the program. */
  get left(): boolean {
    return this.turn.left;
  }

  /** It was one of several windows that was left, and the kitchen goes on. */
  stay(): void {
    this.turn.left = false;
  }

  /** A probe, where there is one: what a person says is compared with what it sees. */
  set second(witness: SecondWitness | undefined) {
    this.turn.second = witness;
  }

  /** What the understanding may know now. */
  context(now = this.now()): Context {
    return this.turn.context(now);
  }

  /** The tasks of the day's plan, in wall time. */
  get plannedTasks(): readonly PlanTask[] {
    return this.dayPlan.tasks;
  }

  /** The transient question that is open. */
  get waitingFor(): Pending | undefined {
    return this.turn.pending;
  }

  /** Words from a person, a script or a recognizer. */
  hear(text: string, confidence = 1): Reply {
    return this.reply((now) => this.turn.hear(text, confidence, now));
  }

  /** The key for wet hands: does what Hands shows. */
  press(): Reply {
    return this.reply((now) => this.turn.press(now));
  }

  /** A command that was put together elsewhere, such as one from a plan or a rehearsal's cook. */
  carry(carried: Carried): Reply {
    return this.reply((now) => this.turn.carry(carried, now));
  }

  /** Writes down facts for one of the program's commands, and answers them like any report. */
  setDown(facts: DatedFact[]): Reply {
    const t = this.now();
    const dated = facts.map((fact) => ({ ...fact, t }));
    return this.witness(dated, undefined, "c");
  }

  /** Writes down what a probe saw, at its own times; `words` are spoken where they matter. */
  witness(facts: DatedFact[], words?: string, who = `${OWN_COMMAND}p`): Reply {
    return this.reply((now) => {
      if (facts.length > 0) this.deeds.seen(facts, this.log.nextId(now, who), now);
      if (words) this.talk.say("prompt", words, "probe");
      return false;
    });
  }

  /** Lets time pass, does one thing, asks what is to be asked, and arms the next wake-up. */
  private reply(act: (now: number) => boolean): Reply {
    const refused = act(this.wakeUp.passTime());
    this.turn.ask(this.now());
    this.wakeUp.arm();
    const lines = this.talk.flush().filter((line) => line.kind !== "heard");
    this.wakeUp.keepPlan();
    return { refused, lines: lines.map((line) => line.text) };
  }

  /** The journal's file is damaged and sealed: asks whether to go on in a fresh one. */
  offerFreshFile(): void {
    this.turn.offerFreshFile();
    this.talk.flush();
  }

  /** Looks at the clocks now, says what came due, and goes on doing so. */
  tick(): void {
    this.wakeUp.tick();
  }

  /** Closes properly. */
  close(): void {
    this.wakeUp.stop();
    const now = this.wakeUp.passTime();
    this.log.commit([{ type: "closed", t: now }], `${OWN_COMMAND}close`);
    this.log.beat(this.parts.clock.read());
    this.talk.flush();
  }

  /** Stops silently, as in a crash. */
  die(): void {
    this.wakeUp.stop();
  }

  /** Adds a notice of the program's own. */
  notice(text: string): void {
    this.talk.show("notice", text);
    this.talk.flush();
  }

  /**
   * Speaks and shows what opening found: what came due meanwhile, what waits, what is asked. All of
   * it passes the desk at once, so that what rings is said with how long ago it came due.
   * `isUp`: a person is there to be asked, also at night.
   */
  greet(wants: readonly Want[], notices: readonly string[], isUp: boolean): void {
    if (isUp) this.turn.begin(this.now());
    for (const text of notices) this.talk.show("notice", text);
    for (const want of wants) this.talk.want(want);
    if (this.log.failing) {
      this.talk.want({ rank: "alarm", text: NOT_RECORDED, key: LOG_KEY, guards: true });
    }
    this.turn.ask(this.now());
    this.talk.flush();
  }
}
