/**
 * One sitting in the kitchen: words and keys in, events to the disk, sentences out. Everything
 * that happens goes through `commit`, and nothing is answered before it is written.
 */

import { agenda } from "../kitchen/agenda.ts";
import type { Command, Evidence } from "../kitchen/command.ts";
import { decide, decideKeyPress, decideWake } from "../kitchen/decide/decide.ts";
import { OWN_COMMAND } from "../kitchen/decide/decide-corrections.ts";
import type { Decision, Wish } from "../kitchen/decide/decision.ts";
import type { DatedFact } from "../kitchen/events.ts";
import { fork } from "../kitchen/evolve.ts";
import { questions, questionToAsk } from "../kitchen/questions/questions.ts";
import { keyOffer } from "../kitchen/shelves.ts";
import { type State, wallOf } from "../kitchen/state.ts";
import { mustBeKept } from "../kitchen/watched.ts";
import type { Context } from "../language/context.ts";
import { hear } from "../language/hear.ts";
import { MEANINGS } from "../language/intents/all.ts";
import type { PlanTask } from "../plan/plan-request.ts";
import type { SpeechRank } from "../ports/voice.ts";
import { acknowledgement } from "../speech/acknowledge.ts";
import { notUnderstood } from "../speech/not-understood.ts";
import { guards } from "./alarms.ts";
import { Announcements, speaksOfAltitude } from "./announcements.ts";
import { answered, saidAgain } from "./answering.ts";
import type { Carried } from "./carried.ts";
import { contextOf } from "./context-of.ts";
import { Conversation, LOG_KEY, withoutClaims } from "./conversation.ts";
import { DayPlanner } from "./day/day-planner.ts";
import { comesFirst, type Pending, resolve, survives } from "./dialogue.ts";
import { eachStep, examplesNow, KEPT, NOT_UNDERSTOOD, stepsOf } from "./hearing.ts";
import { FRESH_FILE, LogWriter, NOT_RECORDED, WRITTEN_AGAIN } from "./log-writer.ts";
import { type LastDone, moved } from "./moved.ts";
import { doubted, type SecondWitness } from "./probe/second-witness.ts";
import type { SessionParts } from "./session-parts.ts";
import { isHushed, Outlook } from "./time/outlook.ts";
import { factsOfFindings } from "./time/time-facts.ts";

/** Double presses of a wet sleeve within this count once, ms. */
const KEY_GUARD_MS = 2000;

/** What came of one utterance, for whoever sent it. */
export type Reply = { refused: boolean; lines: string[] };

export class Session {
  private readonly parts: SessionParts;
  /** A probe, where there is one: what a person says is compared with what it sees. */
  second: SecondWitness | undefined;
  private readonly talk: Conversation;
  private readonly log: LogWriter;
  private readonly announce: Announcements;
  private pending: Pending | undefined;
  private pendingSince = 0;
  private lastDone: LastDone | undefined;
  left = false;
  private lastKeyMs = Number.NEGATIVE_INFINITY;
  private sealed: boolean;
  /** Sentences in a row that meant nothing. */
  private misses = 0;
  private closed = false;
  private readonly dayPlan: DayPlanner;
  private stopTick: (() => void) | undefined;
  private readonly outlook = new Outlook();

  constructor(parts: SessionParts) {
    this.parts = parts;
    this.sealed = parts.sealed;
    this.dayPlan = new DayPlanner({ ...parts, state: () => this.state });
    this.talk = new Conversation({
      voice: parts.voice,
      wallMs: () => wallOf(this.state, this.now()),
      guards: (key) => guards(this.state, key),
      onLines: parts.onLines,
    });
    this.announce = new Announcements(this.talk, parts.state);
    this.log = new LogWriter({
      ...parts,
      now: () => this.now(),
      onTrouble: (message) => {
        this.talk.show("notice", `Not recorded: ${message}`);
        this.talk.speak("alarm", NOT_RECORDED, LOG_KEY);
      },
    });
  }

  get state(): State {
    return this.parts.state;
  }

  /** Kitchen time now. */
  now(): number {
    return this.parts.timeline.now(this.parts.clock.read());
  }

  /** True while what happened is not all on the disk. */
  get notRecorded(): boolean {
    return this.log.notRecorded;
  }

  /** What the understanding may know now. */
  context(now = this.now()): Context {
    return contextOf(this.state, now, this.parts.library, this.pending);
  }

  /** The tasks of the day's plan, in wall time. */
  get plannedTasks(): readonly PlanTask[] {
    return this.dayPlan.tasks;
  }

  /** The transient question that waits. */
  get waitingFor(): Pending | undefined {
    return this.pending;
  }

  /** Words from a person, a script or a recognizer. */
  hear(text: string, confidence = 1): Reply {
    this.talk.begin();
    const now = this.passTime();
    this.talk.show("heard", text);
    const heard = hear(text, this.context(now));
    const guarded = !this.pending && questions(this.state).length > 0;
    const kept = heard.evidence && this.keep(heard.evidence, now);
    const steps = stepsOf(heard, { text, confidence }, guarded, kept);
    const refused = eachStep(steps, (command, question) =>
      question ? this.follow(question, command, now) : this.take(command, text, now),
    );
    if (kept && heard.reading !== "sure") this.talk.say("answer", KEPT[kept]);
    this.misses = heard.reading === "unknown" ? this.misses + 1 : 0;
    return this.reply(refused);
  }

  /** The key for wet hands: does what Hands shows. */
  press(): Reply {
    this.talk.begin();
    const now = this.passTime();
    if (now - this.lastKeyMs < KEY_GUARD_MS) return { refused: false, lines: [] };
    this.lastKeyMs = now;
    if (!keyOffer(this.state, now)) {
      this.talk.refuse("Nothing there for the key. Say what happened.");
      return this.reply(true);
    }
    const outcome = decideKeyPress(this.state, now, this.parts.library);
    return this.reply(this.follow(outcome, undefined, now));
  }

  /** A command that was put together elsewhere, such as one from a plan or a rehearsal's cook. */
  carry({ wish, words }: Carried): Reply {
    this.talk.begin();
    const now = this.passTime();
    this.talk.show("heard", words);
    return this.reply(this.follow(this.decided(wish, now), wish.command, now));
  }

  /** Facts a command of the program was asked to write down, answered like any report. */
  setDown(facts: DatedFact[]): Reply {
    const t = this.now();
    const dated = facts.map((fact) => ({ ...fact, t }));
    return this.witness(dated, undefined, "c");
  }

  /** What a probe saw, at its own times; `words` are said where it matters to hear them. */
  witness(facts: DatedFact[], words?: string, who = `${OWN_COMMAND}p`): Reply {
    this.talk.begin();
    const now = this.passTime();
    if (facts.length > 0) this.carryOut(facts, this.log.nextId(now, who), now);
    if (words) this.talk.say("prompt", words, "probe");
    return this.reply(false);
  }

  /** The journal's file is damaged and sealed: asks whether to go on in a fresh one. */
  offerFreshFile(): void {
    this.talk.ask(FRESH_FILE);
    this.talk.flush();
  }

  /** Starts the wake-ups. */
  start(): void {
    this.tick();
  }

  /** Looks at the clocks, writes what came due, says it, and arms the next wake-up. */
  tick(): void {
    this.stopTick?.();
    this.talk.begin();
    this.passTime();
    this.ask();
    this.talk.flush();
    this.arm();
    this.keepPlan();
  }

  /** Plans again what has not begun, once nobody waits for an answer. */
  private keepPlan(): void {
    if (!this.dayPlan.isStale(this.now())) return;
    this.parts.later(() => {
      if (this.closed || !this.dayPlan.isStale(this.now())) return;
      this.talk.begin();
      const now = this.now();
      const { facts, said } = this.dayPlan.replan(now);
      if (facts.length > 0) this.log.commit(facts, this.log.nextId(now, OWN_COMMAND));
      for (const text of said) this.talk.say("prompt", text);
      this.comeDue(now);
      this.ask();
      this.talk.flush();
      this.arm();
    });
  }

  /** One wake-up, for the soonest due moment, and at the latest for the next look at the clocks. */
  private arm(): void {
    this.stopTick?.();
    const now = this.now();
    const next = Math.min(this.outlook.dueAt(this.state, now), this.announce.nextRepeatAt());
    const wait = Math.min(this.parts.lookMs(mustBeKept(this.state)), Math.max(1, next - now));
    this.stopTick = this.parts.clock.after(wait, () => this.tick());
  }

  /** Closes in good order. */
  close(): void {
    this.stopTick?.();
    this.closed = true;
    this.talk.begin();
    const now = this.passTime();
    this.log.commit([{ type: "closed", t: now }], `${OWN_COMMAND}close`);
    this.log.beat(this.parts.clock.read());
    this.talk.flush();
  }

  /** Stops without a word to anyone, as a crash does. */
  die(): void {
    this.stopTick?.();
    this.closed = true;
  }

  /** Adds a notice of the program's own. */
  notice(text: string): void {
    this.talk.show("notice", text);
    this.talk.flush();
  }

  /** Speaks and shows what opening found: what came due meanwhile, what waits, what is asked. */
  greet(lines: { rank: SpeechRank; text: string; key?: string }[]): void {
    this.announce.opening(lines, this.now());
    if (this.log.failing) this.talk.say("alarm", NOT_RECORDED, LOG_KEY);
    this.ask();
    this.talk.flush();
  }

  private goOnInFreshFile(): boolean {
    const refusal = this.log.goOnInFreshFile();
    this.sealed = refusal !== undefined;
    this.talk.say("answer", refusal ? `No: ${refusal}` : "Going on in a fresh file.");
    return this.sealed;
  }

  private reply(refused: boolean): Reply {
    this.ask();
    this.arm();
    const lines = this.talk.flush().filter((line) => line.kind !== "heard");
    this.keepPlan();
    return { refused, lines: lines.map((line) => line.text) };
  }

  private take(command: Command, text: string, now: number): boolean {
    if (this.pending) {
      const resolved = resolve(this.pending, command, text);
      if (resolved.kind !== "other") {
        this.pending = undefined;
        if (resolved.kind === "dropped") {
          this.talk.say("answer", "All right, nothing changed.");
          return false;
        }
        return this.follow(this.decided(resolved.wish, now), resolved.wish.command, now);
      }
      if (MEANINGS[command.intent].answer) {
        this.talk.refuse(this.pending.text);
        return true;
      }
      if (!survives(this.pending)) this.pending = undefined;
    }
    if (this.sealed && command.intent === "yes") return this.goOnInFreshFile();
    if (saidAgain(this.talk, command, text)) return false;
    return this.follow(this.decided({ command }, now), command, now);
  }

  /** Keeps words that raise a doubt about jars at stake; undefined where there are none. */
  private keep(evidence: Evidence, now: number): Evidence["strength"] | undefined {
    const outcome = this.decided({ command: { ...NOT_UNDERSTOOD, evidence } }, now);
    if (outcome.kind !== "done") return undefined;
    this.carryOut(outcome.facts, this.log.nextId(now), now);
    return evidence.strength;
  }

  private decided(wish: Wish, now: number): Decision {
    const { library } = this.parts;
    const outcome =
      this.dayPlan.outcome(wish, now) ??
      moved({ state: this.state, now, library, wish }, this.lastDone) ??
      decide(this.state, wish, now, library, this.announce.lastAlarm);
    return this.second ? doubted(this.second, outcome, wish, now) : outcome;
  }

  private follow(outcome: Decision, command: Command | undefined, now: number): boolean {
    switch (outcome.kind) {
      case "done": {
        this.talk.stopReading();
        const cmd = this.log.nextId(now);
        this.carryOut(outcome.facts, cmd, now);
        this.lastDone = command && { command, cmd };
        if (outcome.refusal !== undefined) this.talk.refuse(outcome.refusal);
        return outcome.refusal !== undefined;
      }
      case "refused":
        this.talk.refuse(outcome.reason);
        return true;
      case "ask":
        if (outcome.facts && !this.log.commit(outcome.facts, this.log.nextId(now))) {
          this.talk.say("answer", NOT_RECORDED);
        }
        this.pending = outcome;
        this.pendingSince = now;
        this.talk.ask(outcome.text);
        return false;
      case "leave":
        this.left = true;
        return false;
      case "tell": {
        const { state, pending } = this;
        const place = { state, now, library: this.parts.library, pending };
        if (command && answered(this.talk, command, place)) return false;
        this.talk.refuse(notUnderstood(examplesNow(this.state, this.pending), this.misses));
        return true;
      }
    }
  }

  /** Writes facts down, then answers them and prompts what follows. */
  private carryOut(facts: DatedFact[], cmd: string, now: number): void {
    const before = fork(this.state);
    const written = this.log.commit(facts, cmd);
    if (!written) this.talk.say("answer", NOT_RECORDED);
    const answer = acknowledgement(before, this.state, facts, now);
    const said = written ? answer : withoutClaims(answer);
    if (said) this.talk.say("answer", said);
    this.announce.answered(facts, now);
    this.comeDue(now, before);
    this.announce.turns(before, now);
    this.announce.quietened();
  }

  /** Lets the time since the last look pass: gaps, clock changes and what came due are written. */
  private passTime(): number {
    const reading = this.parts.clock.read();
    const now = this.parts.timeline.now(reading);
    if (this.log.recover(now)) this.talk.say("prompt", WRITTEN_AGAIN);
    const found = factsOfFindings(this.state, this.parts.watch.observe(reading), now);
    if (found.length > 0) this.carryOut(found, this.log.nextId(now, OWN_COMMAND), now);
    this.comeDue(now);
    this.announce.repeats(now);
    this.talk.hush(isHushed(this.state, now));
    if (mustBeKept(this.state)) this.log.keepBeat(reading);
    return now;
  }

  /** Writes and says what has come due; `before` where a command's own prompts come after it. */
  private comeDue(now: number, before?: State): void {
    if (this.outlook.holds(this.state, now)) return;
    this.outlook.dealtWith(now);
    const items = new Map(agenda(this.state, now).map((item) => [item.key, item]));
    const facts = decideWake(this.state, now, this.parts.library);
    if (facts.length === 0) return;
    const was = before ?? fork(this.state);
    this.log.commit(facts, this.log.nextId(now, OWN_COMMAND));
    // An altitude set from outside may have raised what runs: that is said, unlike other terms.
    const raised = acknowledgement(was, this.state, facts.filter(speaksOfAltitude), now);
    if (raised) this.talk.say("alarm", raised);
    for (const fact of facts) {
      const item = fact.type === "due" ? items.get(fact.key) : undefined;
      if (item) this.announce.due(item, now);
    }
    if (!before) this.announce.turns(was, now);
  }

  /** Asks the question that guards safety, once. */
  private ask(): void {
    const t = this.now();
    const open = this.parts.asks ? questionToAsk(this.state, t) : undefined;
    // A damaged file is asked about once the day goes on in another.
    if (!open || (this.sealed && open.kind === "sealed-line")) return;
    if (this.pending && comesFirst(this.pending, t - this.pendingSince, open)) return;
    this.pending = undefined;
    const { key, text } = open;
    this.log.commit([{ type: "asked", key, text, t }], this.log.nextId(t, OWN_COMMAND));
    this.talk.ask(text, key);
  }
}
