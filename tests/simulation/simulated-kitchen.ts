/** One rehearsed kitchen, line by line, with what must hold looked at after each and at the end. */

import { readRehearseCall } from "../../src/commands/rehearse/rehearse.ts";
import { fileName, filesInOrder } from "../../src/journal/file-name.ts";
import { MemoryDisk } from "../../src/journal/memory-disk.ts";
import { readJournal } from "../../src/journal/read-journal.ts";
import { agenda } from "../../src/kitchen/agenda.ts";
import { batchDeviations } from "../../src/kitchen/deviations.ts";
import type { KitchenEvent } from "../../src/kitchen/events.ts";
import { historyOf } from "../../src/kitchen/events.ts";
import { replay } from "../../src/kitchen/evolve.ts";
import type { Batch, State } from "../../src/kitchen/state.ts";
import type { SpokenSentence } from "../../src/ports/voice.ts";
import type { Library } from "../../src/recipe/library.ts";
import { review } from "../../src/review/batch-log.ts";
import { judgeBatch } from "../../src/review/verdict.ts";
import { grammarNow } from "../../src/session/listening/listening.ts";
import { eventsOf, KITCHEN_FORMAT } from "../../src/session/reading/journal-records.ts";
import { type Direction, readScript } from "../../src/session/rehearsal/rehearsal-script.ts";
import { Rehearsal, type RehearsalParts } from "../../src/session/rehearsal/rehearse.ts";
import type { Session } from "../../src/session/session.ts";
import { contradictions } from "../scenarios/own-figures.ts";
import { AlarmsHeard } from "./alarms-heard.ts";
import { clockChange, type Fault, faultOf } from "./faults-played.ts";
import { type Row, rowsOf, slowObjections } from "./slow-reading.ts";
import {
  jarsAddUp,
  must,
  rangInTime,
  rangOnce,
  sameFromSnapshot,
  sameHistory,
  sameState,
  timersRang,
} from "./what-must-hold.ts";

const FOLDER = "made-up";
const ZONE = "America/Denver";
const MICROPHONE_GONE = "The microphone gives nothing: it is gone. Typing goes on.";
/** A hearing that is less sure than this is read back first. */
const SURE = 0.7;
/** What may be written down on a guess: it says nothing of the food. */
const OF_NO_WEIGHT: ReadonlySet<string> = new Set([
  "acknowledged",
  "hushed",
  "unhushed",
  "focused",
  // Words that are kept because they may tell of harm, and an answer that left it open.
  "heard",
  "left-open",
]);

/** Kitchen time may stray so far in all. */
const TIME_MS = 2000;

/** How a kitchen stood before a line was played. */
type Moment = {
  program: number;
  deaths: number;
  withoutLock: number;
  lines: number;
  session: Session;
  asked: boolean;
  events: number;
};

export class SimulatedKitchen {
  /** How often each verdict came out, as `method verdict`. */
  readonly verdicts: string[] = [];
  /** What was played so far. */
  readonly script: string[] = [];
  private readonly rehearsal: Rehearsal;
  private readonly startMs: number;
  private readonly alarms: AlarmsHeard;
  /** Events that were acknowledged, as JSON. */
  private acknowledged: string[] = [];
  /** How often each fault was played. */
  readonly faults: Partial<Record<Fault, number>> = {};
  private slowestMs = 0;
  private longestStallMs = 0;
  /** How far the wall was set in all, and whether the machine was started anew since. */
  private wallSetMs = 0;
  private rebooted = false;
  private microphoneGone = false;

  private constructor(parts: RehearsalParts) {
    this.alarms = new AlarmsHeard();
    this.rehearsal = new Rehearsal({ ...parts, onSaid: (one, by) => this.hear(one, by) });
    this.startMs = parts.startMs;
  }

  private hear(utterance: SpokenSentence, program: number): void {
    const { clock } = this.rehearsal?.kitchen ?? {};
    this.alarms.said(utterance, program, clock?.read().bootMs ?? 0);
  }

  static async open(args: string[], library: Library): Promise<SimulatedKitchen> {
    const call = await readRehearseCall(args, {
      library: () => library,
      readFile: () => "",
      version: "0.0.0",
    });
    if (!call.ok) throw new Error(`${args.join(" ")}: ${call.message}`);
    const kitchen = new SimulatedKitchen(call.wish.parts);
    await kitchen.rehearsal.begin();
    return kitchen;
  }

  get session(): Session {
    return this.rehearsal.kitchen.session;
  }

  /** Simulated time so far, ms. */
  get livedMs(): number {
    return this.session.now() - this.startMs;
  }

  /** Plays one line; throws `Broken` where something that must hold does not. */
  async play(line: string): Promise<void> {
    this.script.push(line);
    const read = readScript(line);
    const [step] = read.ok ? read.lines : [];
    if (!step) throw new Error(`no script line: ${line}`);
    const { session: before, moment } = this;
    if (step.direction.kind === "power-cut") this.rebooted = true;
    await this.rehearsal.playLine(step);
    if (this.session !== before) {
      this.remember(before);
      this.nothingLost();
    }
    this.remember(this.session);
    const { program, clock } = this.rehearsal.kitchen;
    this.alarms.check(this.session.state, program, clock.read().bootMs, this.slowestMs);
    this.saidWhereNotRecorded(moment);
    this.whoWritesHasTheLock();
    this.timeIsTrue();
    this.count(step.direction, moment);
    if (this.rehearsal.kitchen.listens) this.listenedFor(step.direction, moment);
  }

  private get moment(): Moment {
    const { kitchen, deaths } = this.rehearsal;
    const { program, withoutLock, lines, session } = kitchen;
    const asked = session.waitingFor !== undefined;
    const events = session.state.history.length;
    return { program, deaths, withoutLock, lines: lines.length, session, asked, events };
  }

  /** What a person reported and the disk did not take is said not to be recorded. */
  private saidWhereNotRecorded(before: Moment): void {
    const { session } = this;
    if (session !== before.session || !session.notRecorded) return;
    const reported = session.state.history.slice(before.events);
    if (!reported.some((event) => event.cmd.startsWith("c"))) return;
    const said = this.linesSince(before).some((line) => /not recorded/i.test(line.text));
    must("what is not recorded is said to be", said, () => "nothing was said");
  }

  private whoWritesHasTheLock(): void {
    const { disk, program } = this.rehearsal.kitchen;
    const read = (disk as MemoryDisk).aside(() => disk.read(`${FOLDER}/lock`));
    const holder = read.ok ? JSON.parse(Buffer.from(read.bytes).toString("utf8")).pid : "nobody";
    must("who writes has the lock", this.session.notRecorded || holder === program, () => {
      return `${holder} has it, not ${program}`;
    });
  }

  /** Kitchen time runs with the time that passes, whoever sets, stops or restarts the clocks. */
  private timeIsTrue(): void {
    const lived = this.session.now() - this.startMs;
    const off = Math.round(lived - this.rehearsal.kitchen.clock.passedMs);
    // Across a start of the machine only the wall tells, and nobody knows who had set it.
    const allowed = TIME_MS + (this.rebooted ? this.wallSetMs : 0);
    must("kitchen time is true", Math.abs(off) <= allowed, () => `it is ${off} ms off`);
  }

  private count(direction: Direction, before: Moment): void {
    const { moment } = this;
    const add = (fault: Fault | undefined, times = 1) => {
      if (fault && times > 0) this.faults[fault] = (this.faults[fault] ?? 0) + times;
    };
    add(faultOf(direction));
    if (direction.kind === "clock-set") this.wallSetMs += Math.abs(direction.byMs);
    if (direction.kind === "stands-still") {
      this.longestStallMs = Math.max(this.longestStallMs, direction.ms);
    }
    if (direction.kind === "slow-disk") this.slowestMs = Math.max(this.slowestMs, direction.ms);
    add("died in the midst of a call", moment.deaths - before.deaths);
    add("opened without its lock", moment.withoutLock - before.withoutLock);
    const over = this.linesSince(before).some((line) =>
      line.text.includes("journal in made-up meanwhile"),
    );
    add(over ? "another program wrote meanwhile" : undefined);
    if (direction.kind !== "hears") return;
    const heard = this.linesSince(before).some(
      (line) => line.kind === "heard" && line.text === direction.text,
    );
    add(!heard ? "not heard" : direction.confidence < SURE ? "heard in doubt" : "heard surely");
  }

  private linesSince({ lines }: Moment) {
    return this.rehearsal.kitchen.lines.slice(lines);
  }

  /** What holds of a kitchen that listens, after each line. */
  private listenedFor(direction: Direction, before: Moment): void {
    const { kitchen } = this.rehearsal;
    const begun = kitchen.program - before.program;
    const told = this.linesSince(before).filter((line) => line.text === MICROPHONE_GONE).length;
    const was = this.microphoneGone;
    if (direction.kind === "microphone") this.microphoneGone = direction.gone;
    const pulled = this.microphoneGone && !was;
    // Each program that is begun meanwhile says it once to whoever opened it.
    const most = (pulled ? 1 : 0) + (was || pulled ? begun : 0);
    must("a gone microphone is said once", told <= most, () => `${told} times, not ${most}`);
    must("a gone microphone is said", !pulled || begun > 0 || told === 1, () => "not at all");
    if (direction.kind !== "hears") return;
    const wanted = grammarNow(this.session).rules;
    const listening = kitchen.ears.grammar?.rules;
    must("what can be said is what is listened for", wanted === listening, () => `${listening}`);
    if (direction.confidence >= SURE || direction.orElse || before.asked || begun > 0) return;
    const acted = this.session.state.history.slice(before.events).filter((event) => {
      return event.cmd.startsWith("c") && !OF_NO_WEIGHT.has(event.type);
    });
    must("what was hardly heard is asked, not done", acted.length === 0, () => {
      return `${direction.text}: ${acted.map((event) => event.type).join()}`;
    });
  }

  /** Mends what is broken, closes, and looks at everything. */
  async finish(): Promise<void> {
    await this.play("+0:01 [disk ok]");
    await this.play("+0:01 [crash]");
    if (this.rehearsal.kitchen.notices.some((one) => one.includes("fresh file"))) {
      await this.play("+0:01 yes");
    }
    await this.play("+0:01 what now");
    const { session } = this;
    session.tick();
    must("everything is written in the end", !session.notRecorded, () => "something is not");
    session.close();
    this.remember(session);
    const { state } = session;
    const { events, texts } = this.onDisk();
    sameHistory(this.acknowledged, events);
    sameState(state, replay(events));
    sameFromSnapshot(state);
    const { visitorsNotes } = this.rehearsal.kitchen;
    const kept = events.filter((one) => one.type === "note" && /somebody else/.test(one.text));
    must("nothing of another program is lost", kept.length >= visitorsNotes, () => {
      return `${kept.length} of ${visitorsNotes} notes`;
    });
    const now = session.now();
    rangOnce(historyOf(state));
    const late = agenda(state, now).filter((one) => one.tellAt < now - 1 && one.what !== "warm-up");
    must("nothing that is due is left out", late.length === 0, () => late.map((l) => l.key).join());
    const rows = rowsOf(texts);
    timersRang(rows, now);
    rangInTime(rows, this.slowestMs, this.longestStallMs);
    const [from, to] = [this.startMs, this.rehearsal.kitchen.clock.read().wallMs];
    const change = clockChange(from, to, ZONE);
    if (change) this.faults[change] = 1;
    for (const batch of Object.values(state.batches)) this.judge(state, batch, rows, now);
    const against = contradictions(review(state, now));
    must("no verdict contradicts its own figures", against.length === 0, () => against.join("; "));
  }

  private judge(state: State, batch: Batch, rows: readonly Row[], now: number): void {
    for (const lot of batch.lots) {
      const { verdict } = judgeBatch(state, batch, batchDeviations(state, batch, now, lot), lot);
      this.verdicts.push(`${batch.option?.method ?? "no canner"}: ${verdict}`);
      if (verdict !== "as-tested") continue;
      const objections = slowObjections(rows, batch.id, lot.id);
      must("as tested only with the whole record", objections.length === 0, () => {
        return `${lot.id}: ${objections.join("; ")}`;
      });
    }
    jarsAddUp(state, batch, rows, now);
  }

  /** An event counts as acknowledged once the session does not say that it is not recorded. */
  private remember(session: Session): void {
    if (session.notRecorded) return;
    const { history } = session.state;
    for (let at = this.acknowledged.length; at < history.length; at++) {
      this.acknowledged.push(JSON.stringify(history[at]));
    }
  }

  /** A program that was opened again knows every event that was acknowledged, in order. */
  private nothingLost(): void {
    sameHistory(this.acknowledged, historyOf(this.session.state));
  }

  private onDisk(): { events: KitchenEvent[]; texts: string[] } {
    const { disk } = this.rehearsal.kitchen;
    if (!(disk instanceof MemoryDisk)) throw new Error("the disk is no made-up one");
    const reading = readJournal(disk, FOLDER, KITCHEN_FORMAT);
    const listed = disk.list(FOLDER);
    const texts = filesInOrder(listed.ok ? listed.names : []).map((place) => {
      const read = disk.read(`${FOLDER}/${fileName(place)}`);
      return read.ok ? Buffer.from(read.bytes).toString("utf8") : "";
    });
    return { events: eventsOf(reading.records), texts };
  }
}
