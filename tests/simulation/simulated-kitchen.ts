/** One rehearsed kitchen, line by line, with what must hold looked at after each and at the end. */
import { isDeepStrictEqual } from "node:util";
import { readRehearseCall } from "../../src/commands/rehearse.ts";
import { fileName, filesInOrder } from "../../src/journal/file-name.ts";
import { MemoryDisk } from "../../src/journal/memory-disk.ts";
import { readJournal } from "../../src/journal/read-journal.ts";
import { agenda } from "../../src/kitchen/agenda.ts";
import { batchDeviations } from "../../src/kitchen/deviations.ts";
import type { KitchenEvent } from "../../src/kitchen/events.ts";
import { replay } from "../../src/kitchen/evolve.ts";
import { countTrouble, jarCounts } from "../../src/kitchen/jars.ts";
import type { Batch, State } from "../../src/kitchen/state.ts";
import type { Library } from "../../src/recipe/library.ts";
import { verdictOf } from "../../src/review/verdict.ts";
import { eventsOf } from "../../src/session/journal-records.ts";
import { readScript } from "../../src/session/rehearsal-script.ts";
import { Rehearsal } from "../../src/session/rehearse.ts";
import type { Session } from "../../src/session/session.ts";
import { slowJars, slowTimers } from "./slow-counts.ts";
import { rowsOf, slowObjections } from "./slow-reading.ts";

const FOLDER = "made-up";

/** A thing that must hold and does not: its name, and what was seen. */
export class Broken extends Error {
  readonly rule: string;

  constructor(rule: string, detail: string) {
    super(`${rule}: ${detail}`);
    this.rule = rule;
  }
}

function must(rule: string, holds: boolean, detail: () => string): void {
  if (!holds) throw new Broken(rule, detail());
}

export class SimulatedKitchen {
  /** How often each verdict came out, as `method verdict`. */
  readonly verdicts: string[] = [];
  /** What was played so far. */
  readonly script: string[] = [];
  private readonly rehearsal: Rehearsal;
  private readonly startMs: number;
  /** Events that were acknowledged, as JSON. */
  private acknowledged: string[] = [];

  private constructor(rehearsal: Rehearsal, startMs: number) {
    this.rehearsal = rehearsal;
    this.startMs = startMs;
  }

  static async open(args: string[], library: Library): Promise<SimulatedKitchen> {
    const call = await readRehearseCall(args, {
      library: () => library,
      readFile: () => "",
      readStdin: () => Promise.resolve(""),
      version: "0.0.0",
    });
    if (!call.ok) throw new Error(`${args.join(" ")}: ${call.message}`);
    const { parts } = call.wish;
    const kitchen = new SimulatedKitchen(new Rehearsal(parts), parts.startMs);
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
    const before = this.session;
    await this.rehearsal.playLine(step);
    if (this.session !== before) {
      this.remember(before);
      this.nothingLost();
    }
    this.remember(this.session);
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
    const now = session.now();
    rangOnce(state.history);
    const late = agenda(state, now).filter((one) => one.at < now - 1 && one.what !== "warm-up");
    must("nothing that is due is left out", late.length === 0, () => late.map((l) => l.key).join());
    const rows = rowsOf(texts);
    timersRang(rows, now);
    for (const batch of Object.values(state.batches)) this.judge(state, batch, rows, now);
  }

  private judge(state: State, batch: Batch, rows: ReturnType<typeof rowsOf>, now: number): void {
    const { verdict } = verdictOf(state, batch, now);
    this.verdicts.push(`${batch.option?.method ?? "no canner"}: ${verdict}`);
    if (verdict === "as-tested") {
      const objections = slowObjections(rows, batch.id);
      must("as tested only with the whole record", objections.length === 0, () => {
        return `${batch.id}: ${objections.join("; ")}`;
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
    sameHistory(this.acknowledged, this.session.state.history);
  }

  private onDisk(): { events: KitchenEvent[]; texts: string[] } {
    const { disk } = this.rehearsal.kitchen;
    if (!(disk instanceof MemoryDisk)) throw new Error("the disk is no made-up one");
    const reading = readJournal(disk, FOLDER);
    const listed = disk.list(FOLDER);
    const texts = filesInOrder(listed.ok ? listed.names : []).map((place) => {
      const read = disk.read(`${FOLDER}/${fileName(place)}`);
      return read.ok ? Buffer.from(read.bytes).toString("utf8") : "";
    });
    return { events: eventsOf(reading.records), texts };
  }
}

function sameHistory(acknowledged: readonly string[], events: readonly KitchenEvent[]): void {
  acknowledged.forEach((event, at) => {
    const found = JSON.stringify(events[at]);
    const same =
      found === event || isDeepStrictEqual(JSON.parse(found ?? "null"), JSON.parse(event));
    must("no acknowledged event is lost", same, () => `${at}: ${event} became ${found}`);
  });
}

function sameState(lived: State, replayed: State): void {
  if (isDeepStrictEqual(plain(lived), plain(replayed))) return;
  const [a, b] = [plain(lived) as never, plain(replayed) as never];
  const differ = Object.keys(lived).filter((key) => !isDeepStrictEqual(a[key], b[key]));
  const detail = differ.map((key) => `${key}: ${differenceOf(a[key], b[key], "")}`).join("\n");
  throw new Broken("replay gives the state that was lived", detail);
}

/** Without what JSON does not carry. */
function plain(state: State): unknown {
  return JSON.parse(JSON.stringify(state));
}

function differenceOf(a: unknown, b: unknown, path: string): string {
  if (typeof a !== "object" || typeof b !== "object" || a === null || b === null) {
    return `${path} ${JSON.stringify(a)} / ${JSON.stringify(b)}`;
  }
  for (const key of new Set([...Object.keys(a), ...Object.keys(b)])) {
    const [one, other] = [a[key as never], b[key as never]];
    if (!isDeepStrictEqual(one, other)) return differenceOf(one, other, `${path}.${key}`);
  }
  return path;
}

/** What came due was written once, unless a longer time was given in between. */
function rangOnce(history: readonly KitchenEvent[]): void {
  const rung = new Set<string>();
  for (const event of history) {
    if (event.type === "timer-added") rung.delete(event.timer);
    if (event.type !== "due") continue;
    must("nothing rings twice", !rung.has(event.key), () => event.key);
    rung.add(event.key);
  }
}

function timersRang(rows: ReturnType<typeof rowsOf>, now: number): void {
  for (const timer of slowTimers(rows)) {
    if (timer.cancelled) continue;
    const wanted = timer.endsAt < now - 1000 ? 1 : 0;
    const near = Math.abs(timer.endsAt - now) <= 1000;
    must("every timer rings once", near || timer.rang === wanted, () => {
      return `${timer.id} rang ${timer.rang} times, not ${wanted}`;
    });
  }
}

function jarsAddUp(state: State, batch: Batch, rows: ReturnType<typeof rowsOf>, now: number): void {
  const counts = jarCounts(state, batch);
  const broken = Object.entries(counts).filter(([, count]) => count < 0);
  must("no count is below none", broken.length === 0, () => `${batch.id} ${broken.join()}`);
  const again = rows.some((row) => row.type === "disposed" && row.what === "reprocess");
  const slow = slowJars(rows, batch.id);
  must("filled jars are those reported", again || slow.filled === counts.filled, () => {
    return `${batch.id}: ${counts.filled} in the log, ${slow.filled} by the reports`;
  });
  if (batch.state !== "complete" || !batch.option) return;
  const trouble = countTrouble(state, batch);
  const told = batchDeviations(state, batch, now).some((one) => one.code === "jar-count");
  must("jar counts add up, or the log says not", !trouble || told, () => `${batch.id} ${trouble}`);
}
