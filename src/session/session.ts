/**
 * One sitting in the kitchen: words and keys in, events to the disk, sentences out. Everything
 * that happens goes through `commit`, and nothing is answered before it is written.
 */

import { writeHeartbeat } from "../journal/heartbeat.ts";
import type { Journal } from "../journal/journal.ts";
import { agenda } from "../kitchen/agenda.ts";
import type { Command } from "../kitchen/command.ts";
import { decide, decideKeyPress, decideWake } from "../kitchen/decide.ts";
import { OWN_COMMAND } from "../kitchen/decide-corrections.ts";
import type { DatedFact, KitchenEvent } from "../kitchen/events.ts";
import { apply, fork } from "../kitchen/evolve.ts";
import { askYes, type Outcome, type Wish } from "../kitchen/outcome.ts";
import { activeOwners, isLoad } from "../kitchen/owners.ts";
import { questionToAsk } from "../kitchen/questions.ts";
import { keyOffer } from "../kitchen/shelves.ts";
import { KINDS } from "../kitchen/stages/kinds.ts";
import { type State, wallOf } from "../kitchen/state.ts";
import { acknowledgement } from "../language/phrase/acknowledge.ts";
import { dueSentence } from "../language/phrase/due-sentences.ts";
import { newTurns, prompt } from "../language/phrase/prompts.ts";
import { telling } from "../language/phrase/telling.ts";
import { understand } from "../language/understand.ts";
import type { PlanTask } from "../plan/plan-request.ts";
import type { Clock, Reading } from "../ports/clock.ts";
import type { Disk } from "../ports/disk.ts";
import type { SpeechRank, VoicePort } from "../ports/voice.ts";
import type { Library } from "../recipe/library.ts";
import { Alarms, guards, itemOf } from "./alarms.ts";
import { DayPlan } from "./day-plan.ts";
import { contextOf, type Pending, readBack, resolve, survives } from "./dialogue.ts";
import { recordOf } from "./journal-records.ts";
import type { KitchenTimeline } from "./kitchen-timeline.ts";
import { factsOfFindings } from "./time-facts.ts";
import type { TimeWatch } from "./time-watch.ts";

export type LineKind = "heard" | "answer" | "prompt" | "alarm" | "asked" | "refused" | "notice";
/** One line of the conversation, at a wall instant. */
export type Line = { wallMs: number; kind: LineKind; text: string };

export type SessionParts = {
  clock: Clock;
  disk: Disk;
  folder: string;
  voice: VoicePort;
  library: Library;
  journal: Journal;
  state: State;
  timeline: KitchenTimeline;
  watch: TimeWatch;
  /** The longest between two looks at the clocks, ms; shorter where something must be kept. */
  lookMs(kept: boolean): number;
  /** False where nobody is there to be asked. */
  asks: boolean;
  /** Does a piece of work once what is being answered has been answered. */
  later(work: () => void): void;
  /** Milliseconds since some fixed moment, the outer limit of a search for a plan. */
  elapsedMs(): number;
  /** Called after anything changed, with the lines that are new. */
  onLines(lines: Line[]): void;
};

/** Double presses of a wet sleeve within this count once, ms. */
const KEY_GUARD_MS = 2000;
const HEARTBEAT_MS = 5000;
/** A look ahead is taken again after this, ms: queues shift with time alone, slowly. */
const OUTLOOK_MS = 60_000;

/** Somebody else who watches: says why a report is to be doubted, or nothing. */
export type SecondWitness = {
  doubts(facts: readonly DatedFact[], now: number): string | undefined;
};

/** What came of one utterance, for whoever sent it. */
export type Reply = { refused: boolean; lines: string[] };

export class Session {
  private readonly parts: SessionParts;
  /** A probe, where there is one: what a person says is compared with what it sees. */
  second: SecondWitness | undefined;
  private readonly alarms = new Alarms();
  private readonly recipes: { id: string; title: string; names: string[] }[];
  private pending: Pending | undefined;
  private lastSaid = "";
  private lastKeyMs = Number.NEGATIVE_INFINITY;
  private lastBeatMs = Number.NEGATIVE_INFINITY;
  private commands = 0;
  private failingSince: number | undefined;
  private failedEvents = 0;
  private sealed = false;
  private closed = false;
  private readonly dayPlan: DayPlan;
  private stopTick: (() => void) | undefined;
  private collected: Line[] = [];
  /** The last look at what is to come: what it saw of events, what is next, how long it holds. */
  private outlook = { events: -1, dueAt: Number.POSITIVE_INFINITY, until: 0 };

  constructor(parts: SessionParts) {
    this.parts = parts;
    this.recipes = [...parts.library.recipes.values()].map(({ id, title, names }) => {
      return { id, title, names };
    });
    this.dayPlan = new DayPlan({
      state: () => this.state,
      library: parts.library,
      elapsedMs: parts.elapsedMs,
    });
    // Numbers go on where the log ends: an id is never given to two commands.
    this.commands = parts.state.history.length;
    const { pending } = parts.journal;
    if (pending > 0) {
      this.failingSince = this.now();
      this.failedEvents = pending;
    }
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
    return this.parts.journal.pending > 0;
  }

  /** The recipes by name, as the understanding wants them. */
  get names(): readonly { id: string; title: string; names: string[] }[] {
    return this.recipes;
  }

  /** The tasks of the day's plan, in wall time; empty where there is none. */
  get plannedTasks(): readonly PlanTask[] {
    return this.dayPlan.tasks;
  }

  /** The transient question that waits, if one does. */
  get waitingFor(): Pending | undefined {
    return this.pending;
  }

  /** Words from a person, a script or a recogniser. */
  hear(text: string, confidence = 1): Reply {
    this.collected = [];
    const now = this.passTime();
    this.tell("heard", text);
    const command = understand(text, contextOf(this.state, now, this.recipes, this.pending));
    const doubtful = readBack(command, text, confidence);
    const refused = doubtful ? this.follow(doubtful, command, now) : this.take(command, text, now);
    this.ask();
    return this.reply(refused);
  }

  /** The key for wet hands: does what Hands shows. */
  press(): Reply {
    this.collected = [];
    const now = this.passTime();
    if (now - this.lastKeyMs < KEY_GUARD_MS) return { refused: false, lines: [] };
    this.lastKeyMs = now;
    if (!keyOffer(this.state, now)) {
      this.refuse("Nothing there for the key. Say what happened.");
      return this.reply(true);
    }
    const refused = this.follow(
      decideKeyPress(this.state, now, this.parts.library),
      undefined,
      now,
    );
    this.ask();
    return this.reply(refused);
  }

  /** A command that was put together elsewhere, such as one from a plan or a rehearsal's cook. */
  carry(wish: Wish): Reply {
    this.collected = [];
    const now = this.passTime();
    this.tell("heard", wish.command.text);
    const refused = this.follow(this.decided(wish, now), wish.command, now);
    this.ask();
    return this.reply(refused);
  }

  /** Facts a command of the program was asked to write down, answered like any report. */
  setDown(facts: DatedFact[]): Reply {
    this.collected = [];
    const now = this.passTime();
    const dated = facts.map((fact) => ({ ...fact, t: now }));
    this.carryOut(dated, `c${this.nextCommand(now)}`, now);
    this.ask();
    return this.reply(false);
  }

  /** What a probe saw, at its own times; `words` are said where it matters to hear them. */
  witness(facts: DatedFact[], words?: string): Reply {
    this.collected = [];
    const now = this.passTime();
    if (facts.length > 0) this.carryOut(facts, `${OWN_COMMAND}p${this.nextCommand(now)}`, now);
    if (words) this.say("prompt", words, "probe");
    this.ask();
    return this.reply(false);
  }

  /** The journal's file is damaged and sealed: asks whether to go on in a fresh one. */
  offerFreshFile(): void {
    this.sealed = true;
    this.tell("asked", FRESH_FILE);
    this.voice("prompt", FRESH_FILE);
    this.flush();
  }

  /** Starts the wake-ups. */
  start(): void {
    this.tick();
  }

  /** Looks at the clocks, writes what came due, says it, and arms the next wake-up. */
  tick(): void {
    this.stopTick?.();
    this.collected = [];
    this.passTime();
    this.ask();
    this.flush();
    this.arm();
    this.keepPlan();
  }

  /** Plans again what has not begun, once nobody waits for an answer. */
  private keepPlan(): void {
    if (!this.dayPlan.isStale(this.now())) return;
    this.parts.later(() => {
      if (this.closed || !this.dayPlan.isStale(this.now())) return;
      this.collected = [];
      const now = this.now();
      const { facts, said } = this.dayPlan.replan(now);
      if (facts.length > 0) this.commit(facts, `${OWN_COMMAND}${this.nextCommand(now)}`);
      for (const text of said) this.say("prompt", text);
      this.comeDue(now);
      this.ask();
      this.flush();
      this.arm();
    });
  }

  /** One wake-up, for the soonest due moment, and at the latest for the next look at the clocks. */
  private arm(): void {
    this.stopTick?.();
    const now = this.now();
    if (!this.isQuiet(now)) this.lookAhead(now);
    const repeat = this.state.ringing.length > 0 ? this.alarms.nextAt() : undefined;
    const next = Math.min(this.outlook.dueAt, repeat ?? Number.POSITIVE_INFINITY);
    const wait = Math.min(this.parts.lookMs(this.mustBeKept()), Math.max(1, next - now));
    this.stopTick = this.parts.clock.after(wait, () => this.tick());
  }

  /** Works out what comes due next; with nothing overdue, that holds for a minute or to the next event. */
  private lookAhead(now: number): void {
    const items = agenda(this.state, now);
    const dueAt = items.find((item) => item.at > now)?.at ?? Number.POSITIVE_INFINITY;
    const overdue = items.some((item) => item.at <= now);
    const until = overdue ? now : Math.min(dueAt, now + OUTLOOK_MS);
    this.outlook = { events: this.state.history.length, dueAt, until };
  }

  /** Nothing has happened since the last look ahead, and nothing has come due. */
  private isQuiet(now: number): boolean {
    return this.state.history.length === this.outlook.events && now < this.outlook.until;
  }

  /** Closes in good order. */
  close(): void {
    this.stopTick?.();
    this.closed = true;
    this.collected = [];
    const now = this.passTime();
    this.commit([{ type: "closed", t: now }], `${OWN_COMMAND}close`);
    this.beat(this.parts.clock.read());
    this.flush();
  }

  /** Stops without a word to anyone, as a crash does. */
  die(): void {
    this.stopTick?.();
    this.closed = true;
  }

  /** Adds a notice of the program's own. */
  notice(text: string): void {
    this.tell("notice", text);
    this.flush();
  }

  /** Speaks and shows what opening found: what came due meanwhile, what waits, what is asked. */
  greet(lines: { rank: SpeechRank; text: string; key?: string }[]): void {
    const now = this.now();
    for (const { rank, text, key } of lines) {
      this.say(rank, text, key);
      if (rank !== "alarm" || key === undefined || !this.state.ringing.includes(key)) continue;
      // Repeats say what is due, and not how long ago it was at the opening.
      const again = dueSentence(this.state, itemOf(this.state, key, this.state.due[key] ?? now));
      this.alarms.spoke(key, again, now);
    }
    if (this.failingSince !== undefined) this.say("alarm", NOT_RECORDED, "log");
    this.ask();
    this.flush();
  }

  private goOnInFreshFile(): boolean {
    const begun = this.parts.journal.continueInFreshFile();
    this.sealed = !begun.ok;
    this.say("answer", begun.ok ? "Going on in a fresh file." : `No: ${begun.message}`);
    return !begun.ok;
  }

  private reply(refused: boolean): Reply {
    this.arm();
    const lines = this.flush().filter((line) => line.kind !== "heard");
    this.keepPlan();
    return { refused, lines: lines.map((line) => line.text) };
  }

  private take(command: Command, text: string, now: number): boolean {
    if (this.pending) {
      const resolved = resolve(this.pending, command, text);
      if (resolved.kind !== "other") {
        this.pending = undefined;
        if (resolved.kind === "dropped") {
          this.say("answer", "All right, nothing changed.");
          return false;
        }
        return this.follow(this.decided(resolved.wish, now), resolved.wish.command, now);
      }
      if (!survives(this.pending)) this.pending = undefined;
    }
    if (this.sealed && command.intent === "yes") return this.goOnInFreshFile();
    if (command.intent === "repeat") return this.repeat(command);
    return this.follow(this.decided({ command }, now), command, now);
  }

  private decided(wish: Wish, now: number): Outcome {
    const planned = this.dayPlan.outcome(wish, now);
    const outcome = planned ?? decide(this.state, wish, now, this.parts.library, this.alarms.last);
    return this.second ? doubted(this.second, outcome, wish, now) : outcome;
  }

  private follow(outcome: Outcome, command: Command | undefined, now: number): boolean {
    switch (outcome.kind) {
      case "done":
        this.carryOut(outcome.facts, `c${this.nextCommand(now)}`, now);
        if (outcome.refusal !== undefined) this.refuse(outcome.refusal);
        return outcome.refusal !== undefined;
      case "refused":
        this.refuse(outcome.reason);
        return true;
      case "ask":
        this.pending = outcome;
        this.tell("asked", outcome.text);
        this.voice("prompt", outcome.text);
        return false;
      case "tell": {
        const answer = command && telling(this.state, command, now);
        if (answer !== undefined) {
          this.say("answer", answer);
          return false;
        }
        this.refuse("I did not get that. Say help to hear what I understand.");
        return true;
      }
    }
  }

  /** Writes facts down, then answers them and prompts what follows. */
  private carryOut(facts: DatedFact[], cmd: string, now: number): void {
    const before = fork(this.state);
    const written = this.commit(facts, cmd);
    if (!written) this.say("answer", NOT_RECORDED);
    const answer = acknowledgement(before, this.state, facts, now);
    const said = written ? answer : withoutClaims(answer);
    if (said) this.say("answer", said);
    for (const fact of facts) if (fact.type === "acknowledged") this.answered(fact.keys);
    this.comeDue(now, before);
    this.prompts(before, now);
    this.quietened();
  }

  private prompts(before: State, now: number): void {
    const turns = newTurns(before, this.state, now);
    for (const { owner, run } of turns) {
      if (!isLoad(owner) && owner.state === "held") continue;
      const text = prompt(this.state, owner, run, now);
      if (text) this.say("prompt", text, `${owner.id}/${run.id}`);
    }
  }

  private answered(keys: string[]): void {
    const [key] = keys;
    if (key === undefined) return;
    const text = dueSentence(this.state, itemOf(this.state, key, this.state.due[key] ?? 0));
    this.say("answer", `Got it: ${text}`);
  }

  /** Alarms that no longer ring are not said any more. */
  private quietened(): void {
    const last = this.alarms.last;
    if (last !== undefined && !this.state.ringing.includes(last)) this.parts.voice.cancel(last);
  }

  private repeat(command: Extract<Command, { intent: "repeat" }>): boolean {
    const { slower, louder } = command.slots;
    if (slower) this.parts.voice.adjust({ rate: 0.75 });
    if (louder) this.parts.voice.adjust({ volume: 1.5 });
    this.say("answer", this.lastSaid || "I have not said anything yet.");
    return false;
  }

  /** Lets the time since the last look pass: gaps, clock changes and what came due are written. */
  private passTime(): number {
    const reading = this.parts.clock.read();
    const now = this.parts.timeline.now(reading);
    this.recover(now);
    const found = factsOfFindings(this.state, this.parts.watch.observe(reading), now);
    if (found.length > 0) this.carryOut(found, `${OWN_COMMAND}${this.nextCommand(now)}`, now);
    this.comeDue(now);
    for (const { key, text } of this.alarms.repeats(this.state, now)) {
      this.tell("alarm", text);
      this.voice("alarm", text, key);
    }
    this.unhush(now);
    if (this.mustBeKept() && reading.monoMs - this.lastBeatMs >= HEARTBEAT_MS) this.beat(reading);
    return now;
  }

  /** Writes and says what has come due; `before` where a command's own prompts come after it. */
  private comeDue(now: number, before?: State): void {
    if (this.isQuiet(now)) return;
    const items = new Map(agenda(this.state, now).map((item) => [item.key, item]));
    const facts = decideWake(this.state, now, this.parts.library);
    if (facts.length === 0) return;
    const was = before ?? fork(this.state);
    this.commit(facts, `${OWN_COMMAND}${this.nextCommand(now)}`);
    for (const fact of facts) {
      const item = fact.type === "due" ? items.get(fact.key) : undefined;
      if (item) this.sayDue(dueSentence(this.state, item), item.key, item.rank === "alarm", now);
    }
    if (!before) this.prompts(was, now);
  }

  private sayDue(text: string, key: string, alarm: boolean, now: number): void {
    if (!text) return;
    if (!alarm) {
      this.say("prompt", text, key);
      return;
    }
    this.alarms.spoke(key, text, now);
    this.tell("alarm", text);
    this.voice("alarm", text, key);
  }

  private unhush(now: number): void {
    const { hushedUntil } = this.state;
    const hushed = hushedUntil === null || (hushedUntil !== undefined && now < hushedUntil);
    this.parts.voice.hush(hushed);
  }

  /** A process or a vent is running, or may be: the length of a gap would matter. */
  private mustBeKept(): boolean {
    return activeOwners(this.state).some((owner) =>
      owner.stages.some((run) => {
        const may = run.state === "running" || run.kept?.unconfirmedAt !== undefined;
        return may && KINDS[run.spec.kind].watched;
      }),
    );
  }

  private beat(reading: Reading): void {
    this.lastBeatMs = reading.monoMs;
    writeHeartbeat(this.parts.disk, this.parts.folder, {
      reading,
      lastN: this.parts.journal.lastN,
    });
  }

  private nextCommand(now: number): string {
    this.commands += 1;
    return `${Math.round(now)}.${this.commands}`;
  }

  /** Events to the disk and into the state; false where the disk refused them. */
  private commit(facts: DatedFact[], cmd: string): boolean {
    const w = this.now();
    const events = facts.map((fact) => ({ ...fact, cmd, w }) as KitchenEvent);
    const appended = this.parts.journal.append(events.map((event) => recordOf(this.state, event)));
    for (const event of events) apply(this.state, event);
    if (appended.ok) {
      this.beat(this.parts.clock.read());
      return true;
    }
    if (this.failingSince === undefined) {
      this.failingSince = w;
      this.tell("notice", `Not recorded: ${appended.message}`);
      this.voice("alarm", NOT_RECORDED, "log");
    }
    this.failedEvents += events.length;
    return false;
  }

  /** Writes what is missing as soon as the disk takes it, and that it was missing. */
  private recover(now: number): void {
    if (this.failingSince === undefined) return;
    if (this.parts.journal.pending > 0 && !this.parts.journal.retry().ok) return;
    const from = this.failingSince;
    const events = this.failedEvents;
    this.failingSince = undefined;
    this.failedEvents = 0;
    this.commit(
      [{ type: "log-failed", from, to: now, events, t: now }],
      `${OWN_COMMAND}log${Math.round(now)}`,
    );
    if (this.failingSince === undefined)
      this.say("prompt", "The log is written again, with nothing missing.");
  }

  /** Asks the question that guards safety, once. */
  private ask(): void {
    if (!this.parts.asks) return;
    const t = this.now();
    const open = questionToAsk(this.state, t);
    if (!open) return;
    this.commit([{ type: "asked", ...open, t }], `${OWN_COMMAND}${this.nextCommand(t)}`);
    this.tell("asked", open.text);
    this.voice("prompt", open.text, open.key);
    this.lastSaid = open.text;
  }

  private refuse(reason: string): void {
    this.tell("refused", reason);
    this.voice("answer", reason);
    this.lastSaid = reason;
  }

  private say(rank: SpeechRank, text: string, key?: string): void {
    this.tell(rank, text);
    this.voice(rank, text, key);
    this.lastSaid = text;
  }

  private voice(rank: SpeechRank, text: string, key?: string): void {
    const guarding =
      rank === "alarm" && key !== undefined && (key === "log" || guards(this.state, key));
    this.parts.voice.say({
      rank,
      text,
      ...(key === undefined ? {} : { key }),
      ...(guarding ? { guards: true } : {}),
    });
  }

  private tell(kind: LineKind, text: string): void {
    this.collected.push({ wallMs: Math.round(wallOf(this.state, this.now())), kind, text });
  }

  private flush(): Line[] {
    const lines = this.collected;
    this.collected = [];
    this.parts.onLines(lines);
    return lines;
  }
}

/** A report that a probe speaks against needs a yes, and the log then says so. */
function doubted(second: SecondWitness, outcome: Outcome, wish: Wish, now: number): Outcome {
  const doubt = outcome.kind === "done" ? second.doubts(outcome.facts, now) : undefined;
  if (outcome.kind !== "done" || doubt === undefined) return outcome;
  if (!wish.confirmed) return askYes(wish, doubt);
  const told: DatedFact = { type: "note", owner: null, text: `said although: ${doubt}`, t: now };
  return { ...outcome, facts: [...outcome.facts, told] };
}

const FRESH_FILE =
  "The log is damaged and kept as it is, for reading only. Shall I go on in a fresh file? " +
  "Until then nothing is recorded.";

const NOT_RECORDED = "This is not recorded: the log cannot be written just now.";

/** What is answered while the disk refuses must not say that anything was written down. */
function withoutClaims(answer: string): string {
  const sentences = answer.split(/(?<=[.!?]) /);
  return sentences.filter((one) => !/\b(log|written|noted)\b/i.test(one)).join(" ");
}
