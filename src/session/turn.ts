/** One turn of the talk: words or a key are heard, decided, written down, and answered. */
import type { Command, Evidence } from "../kitchen/command.ts";
import { decide, decideKeyPress } from "../kitchen/decide/decide.ts";
import { OWN_COMMAND } from "../kitchen/decide/decide-corrections.ts";
import type { Decision, Wish } from "../kitchen/decide/decision.ts";
import { nightUntil } from "../kitchen/nights.ts";
import { handsFreeAt, waitsForHands } from "../kitchen/questions/hands.ts";
import {
  type Question,
  questions,
  questionToAsk,
  waitsForMorning,
} from "../kitchen/questions/questions.ts";
import { keyOffer } from "../kitchen/shelves.ts";
import type { State } from "../kitchen/state.ts";
import { MINUTE_MS } from "../kitchen/time.ts";
import type { Context } from "../language/context.ts";
import { hear } from "../language/hear.ts";
import type { Heard } from "../language/heard.ts";
import { MEANINGS } from "../language/intents/all.ts";
import { notUnderstood, notUsed } from "../speech/not-understood.ts";
import { answered, saidAgain } from "./answering.ts";
import type { Carried } from "./carried.ts";
import { contextOf } from "./context-of.ts";
import type { Conversation } from "./conversation.ts";
import type { DayPlanner } from "./day/day-planner.ts";
import { heapOutcome } from "./day/heap-offer.ts";
import type { Deeds } from "./deeds.ts";
import {
  comesFirst,
  leavesNameOpen,
  type Pending,
  passesOver,
  resolve,
  SURE_ENOUGH,
  survives,
} from "./dialogue.ts";
import {
  answerNow,
  eachStep,
  examplesNow,
  KEPT,
  NOT_UNDERSTOOD,
  stepsOf,
  withoutName,
} from "./hearing.ts";
import { FRESH_FILE, type LogWriter, NOT_RECORDED, STAYS_SEALED } from "./log-writer.ts";
import { type LastDone, moved } from "./moved.ts";
import { OwnWordsTalk } from "./own-words.ts";
import { doubted, type SecondWitness } from "./probe/second-witness.ts";
import type { SessionParts } from "./session-parts.ts";
import { isHushed } from "./time/outlook.ts";

/** Double presses by a wet sleeve within this time count once, ms. */
const KEY_GUARD_MS = 2000;

const NOT_HEARD = "I did not get that.";

/** Who has said something within this is awake, ms. */
const AWAKE_MS = 30 * MINUTE_MS;

type TurnParts = {
  parts: SessionParts;
  deeds: Deeds;
  log: LogWriter;
  talk: Conversation;
  dayPlan: DayPlanner;
};

/** Its public methods return whether anything was refused. */
export class Turn {
  private readonly with: TurnParts;
  /** A probe, where there is one: what a person says is compared with what it sees. */
  second: SecondWitness | undefined;
  private readonly own = new OwnWordsTalk();
  private open: Pending | undefined;
  private openSince = 0;
  /** The doubt in words that were asked back: kept unless they are confirmed. */
  private doubted: Evidence | undefined;
  private lastDone: LastDone | undefined;
  /** The command that everything begun in one sentence belongs to: it is taken back as one. */
  private together: string | undefined;
  private lastKeyMs = Number.NEGATIVE_INFINITY;
  /** Sentences in a row that meant nothing. */
  private misses = 0;
  private unsure = false;
  private lastWordsAt = Number.NEGATIVE_INFINITY;
  /** True once the program should close. */
  left = false;

  constructor(parts: TurnParts) {
    this.with = parts;
  }

  /** True while nothing is written before a yes to a fresh file. */
  private get sealed(): boolean {
    return this.with.parts.journal.waitsForYes !== undefined;
  }

  private get state(): State {
    return this.with.parts.state;
  }

  /** The transient question that waits. */
  get pending(): Pending | undefined {
    return this.open;
  }

  /** What the understanding may know. */
  context(now: number): Context {
    return contextOf(this.state, now, this.with.parts.library, this.open);
  }

  hear(text: string, confidence: number, now: number): boolean {
    const { talk } = this.with;
    this.lastWordsAt = now;
    this.unsure = confidence < SURE_ENOUGH;
    talk.show("heard", text);
    const context = this.context(now);
    const heard = hear(text, context);
    const disowned = this.unsure ? undefined : this.disowned(heard, now);
    if (disowned !== undefined) return disowned;
    const guarded = !this.open && questions(this.state).length > 0;
    const kept = heard.evidence && this.keep(heard.evidence, now);
    const steps = stepsOf(this.worthAsking(heard, now), { text, confidence }, guarded, kept);
    this.own.asks(heard, steps, { text, confidence }, context);
    const [before, openBefore] = [this.lastDone, this.open];
    const begins = steps.length > 1 && steps.every(({ command }) => command.intent === "begin");
    this.together = begins ? this.with.log.nextId(now) : undefined;
    const refused = eachStep(
      steps,
      (command, question) =>
        question ? this.follow(question, command, now) : this.take(command, text, now),
      () => steps.length > 1 && this.open !== undefined,
    );
    this.together = undefined;
    if (this.open !== openBefore && this.open) {
      if (openBefore) this.keepDoubted(now);
      this.doubted = kept ? undefined : heard.otherwise;
    }
    const nothing = this.lastDone === before && !this.open;
    const late = nothing && !kept && heard.otherwise && this.keep(heard.otherwise, now);
    const cmd = this.lastDone === before ? undefined : this.lastDone?.cmd;
    const acted = !refused && steps.every(({ question }) => !question);
    this.own.did(acted ? heard.memory : undefined, cmd, now);
    const aloud = late || (nothing ? kept : undefined);
    if (aloud) talk.say("answer", KEPT[aloud]);
    else if (heard.unused && !nothing) talk.say("answer", notUsed(heard.unused));
    this.misses = heard.reading === "unknown" ? this.misses + 1 : 0;
    return refused;
  }

  /** A guess that could have no effect now is not asked about: it was about something else. */
  private worthAsking(heard: Heard, now: number): Heard {
    const [likely, ...others] = heard.candidates;
    if (heard.reading !== "ask" || !likely) return heard;
    // "The vinegar one is bubbling": a name that was guessed and stands for nothing.
    for (const command of [likely, withoutName(likely)]) {
      const { kind } = this.decided({ command }, now);
      if (kind !== "refused") return { ...heard, candidates: [command, ...others] };
    }
    return { ...heard, reading: "unknown", candidates: [] };
  }

  /** A no right after an act by a memory; undefined where the words have yet to be followed. */
  private disowned(heard: Heard, now: number): boolean | undefined {
    const { log, parts } = this.with;
    const present = { state: this.state, now, library: parts.library };
    const disowned = this.own.contradicted(heard, this.open, present);
    if (!disowned) return undefined;
    const { dropped, back } = disowned;
    if (back?.kind === "done") {
      this.own.did(undefined, undefined, now);
      return this.follow({ ...back, facts: [...back.facts, dropped] }, undefined, now);
    }
    log.commit([dropped], log.nextId(now, OWN_COMMAND));
    return back && this.follow(back, undefined, now);
  }

  /** The key for wet hands: does what Hands shows. */
  press(now: number): boolean {
    if (now - this.lastKeyMs < KEY_GUARD_MS) return false;
    this.lastKeyMs = now;
    this.lastWordsAt = now;
    this.own.did(undefined, undefined, now);
    if (!keyOffer(this.state, now)) {
      this.with.talk.refuse("Nothing there for the key. Say what happened.");
      return true;
    }
    const outcome = decideKeyPress(this.state, now, this.with.parts.library);
    return this.follow(outcome, undefined, now);
  }

  /** A command that was put together elsewhere, such as one from a plan or a rehearsal's cook. */
  carry({ wish, words }: Carried, now: number): boolean {
    this.lastWordsAt = now;
    this.with.talk.show("heard", words);
    return this.follow(this.decided(wish, now), wish.command, now);
  }

  private take(command: Command, text: string, now: number): boolean {
    const { talk, log } = this.with;
    if (this.open) {
      const resolved = resolve(this.open, command, text);
      if (resolved.kind !== "other") {
        const question = this.open;
        this.open = undefined;
        if (resolved.kind === "dropped") {
          talk.say("answer", "All right, nothing changed.");
          this.keepDoubted(now);
          return false;
        }
        if (this.doubted?.more) this.keepDoubted(now);
        this.doubted = undefined;
        const outcome = this.decided(resolved.wish, now);
        const taught = this.own.taught(question, outcome, now);
        if (taught.length > 0) log.commit(taught, log.nextId(now, OWN_COMMAND));
        return this.follow(outcome, resolved.wish.command, now);
      }
      if (MEANINGS[command.intent].answer || leavesNameOpen(this.open, command)) {
        talk.refuse(this.open.text);
        return true;
      }
      if (passesOver(command, this.open)) {
        talk.refuse(this.open.text);
        return true;
      }
      if (!survives(this.open)) this.close(now);
    }
    if (this.sealed && command.intent === "yes") return this.goOnInFreshFile();
    if (this.sealed && command.intent === "no" && questions(this.state).length === 0) {
      talk.say("answer", STAYS_SEALED);
      return false;
    }
    if (saidAgain(talk, command, text)) return false;
    return this.follow(this.decided({ command }, now), command, now);
  }

  /** The transient question goes, unanswered. */
  private close(now: number): void {
    this.open = undefined;
    this.keepDoubted(now);
  }

  private keepDoubted(now: number): void {
    const { doubted } = this;
    this.doubted = undefined;
    if (doubted) this.keep(doubted, now);
  }

  /** Keeps words that raise a doubt about jars at stake; undefined where there are none. */
  private keep(evidence: Evidence, now: number): Evidence["strength"] | undefined {
    const outcome = this.decided({ command: { ...NOT_UNDERSTOOD, evidence } }, now);
    if (outcome.kind === "ask") {
      this.follow(outcome, undefined, now);
      return evidence.strength;
    }
    if (outcome.kind !== "done") return undefined;
    const { deeds, log } = this.with;
    deeds.decided(outcome.facts, log.nextId(now), now, false);
    return evidence.strength;
  }

  private decided(wish: Wish, now: number): Decision {
    const { parts, dayPlan, talk } = this.with;
    const { library } = parts;
    const outcome =
      dayPlan.outcome(wish, now) ??
      heapOutcome(wish, this.state, library, now) ??
      moved({ state: this.state, now, library, wish }, this.lastDone) ??
      decide(this.state, wish, now, library, talk.lastAlarms);
    return this.second ? doubted(this.second, outcome, wish, now) : outcome;
  }

  /** Writes down and answers a decision. */
  private follow(outcome: Decision, command: Command | undefined, now: number): boolean {
    const { talk, log, deeds } = this.with;
    switch (outcome.kind) {
      case "done": {
        talk.stopReading();
        const cmd = this.together ?? log.nextId(now);
        deeds.decided(outcome.facts, cmd, now, outcome.refusal === undefined);
        this.lastDone = command && { command, cmd };
        if (outcome.refusal !== undefined) talk.refuse(outcome.refusal);
        return outcome.refusal !== undefined;
      }
      case "refused":
        talk.refuse(outcome.reason);
        return true;
      case "ask":
        if (outcome.facts && !log.commit(outcome.facts, log.nextId(now))) {
          talk.say("answer", NOT_RECORDED);
        }
        this.open = outcome;
        this.openSince = now;
        talk.say(outcome.expects === "heard" ? "read-back" : "question", outcome.text);
        return false;
      case "leave":
        this.left = true;
        return false;
      case "tell":
        return this.tell(command, now);
    }
  }

  private tell(command: Command | undefined, now: number): boolean {
    const { parts, talk } = this.with;
    const { state, open: pending } = this;
    const place = { state, now, library: parts.library, pending };
    if (command && answered(talk, command, place)) return false;
    const examples = examplesNow(state, pending);
    const reason = notUnderstood({
      examples,
      answer: answerNow(state, pending),
      misses: this.misses,
    });
    // What was barely heard may have been the radio, and what is said in a hush the telephone.
    talk.refuse(this.unsure || isHushed(state, now) ? NOT_HEARD : reason);
    return true;
  }

  /** Somebody has just opened the kitchen, and so is up. */
  begin(now: number): void {
    this.lastWordsAt = now;
  }

  /** Nobody has said anything for a while, and it is night. */
  asleepUntil(now: number): number | undefined {
    return now - this.lastWordsAt < AWAKE_MS ? undefined : nightUntil(this.state, now);
  }

  /** Asks the question that guards safety, once; what can wait is asked in the morning. */
  ask(now: number): void {
    const { parts, log, talk } = this.with;
    const asleepUntil = this.asleepUntil(now);
    const moment = { now, asleepUntil, handsFreeAt: handsFreeAt(this.state, now) };
    const mayAsk = (one: Question) => {
      const waits = { morning: waitsForMorning(one), hands: waitsForHands(this.state, one) };
      return talk.desk.mayAsk({ text: one.text, waits }, moment);
    };
    const first = parts.asks ? questionToAsk(this.state, now, mayAsk) : undefined;
    // A damaged file is asked about once the day goes on in another.
    if (!first || (this.sealed && first.kind === "sealed-line")) return;
    if (this.open && comesFirst(this.open, now - this.openSince, first)) return;
    // The words of a question that goes unanswered are quoted in this one.
    const leaves = this.open !== undefined && this.doubted !== undefined;
    this.close(now);
    const open = (leaves ? questionToAsk(this.state, now, mayAsk) : undefined) ?? first;
    const { key, kind, text, lead, short, detail = "" } = open;
    log.commit([{ type: "asked", key, text, t: now }], log.nextId(now, OWN_COMMAND));
    const lesson = short === undefined ? {} : { lesson: { id: `${kind}/${detail}`, short } };
    const own = lead === undefined ? { text } : { name: lead, text: text.slice(lead.length + 2) };
    talk.want({ rank: "question", key, ...own, ...lesson });
  }

  /** The journal's file is damaged and sealed: asks whether to go on in a fresh one. */
  offerFreshFile(): void {
    this.with.talk.say("question", FRESH_FILE);
  }

  private goOnInFreshFile(): boolean {
    const refusal = this.with.log.goOnInFreshFile();
    this.with.talk.say("answer", refusal ? `No: ${refusal}` : "Going on in a fresh file.");
    return refusal !== undefined;
  }
}
