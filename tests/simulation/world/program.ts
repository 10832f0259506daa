/** The real session with a simulated clock and disk, and what of it the outside can see. */
import type { Line } from "../../../src/ports/view.ts";
import type { Library } from "../../../src/recipe/library.ts";
import { type BatchLog, review } from "../../../src/review/batch-log.ts";
import { MadeUpKitchen } from "../../../src/session/rehearsal/made-up-kitchen.ts";
import { SILENT } from "../../../src/session/short-session.ts";
import type { Topic } from "./wordings.ts";

const START_MS = Date.UTC(2027, 7, 14, 14);

/** The published log. */
export type Log = BatchLog;

/** Stages that happen in the canner. */
const IN_LOADS: ReadonlySet<string> = new Set(["process", "cool", "seal-check"]);

export type Stage = {
  id: string;
  state: string;
  kind: string;
  title: string;
  minMinutes: number;
  /** Its clock runs: what has to be kept was reported, and not lost since. */
  boils: boolean;
};

/** By which reasons or deviations the record holds already what is told of a topic once more. */
const STANDS: Partial<Record<Topic, RegExp>> = {
  boil: /^process-short|full boil throughout/,
  cover: /^process-short|full boil throughout/,
  pressure: /^process-short|pressure throughout/,
  vinegar: /vinegar.*answered no/,
  acid: /acid.*answered no/,
  cold: /hot-pack.*answered no/,
  lids: /lids.*answered no/,
  headspace: /headspace.*answered no/,
  sterile: /sterile.*answered no/,
  stood: /^waited/,
  early: /^process-short/,
  gauge: /^gauge-untested/,
};

/** What a program keeps of a thing that was told. */
export type Kept = "loss" | "doubt" | "trace" | "nothing";

export class Program {
  private readonly kitchen: MadeUpKitchen;
  private seen = 0;
  private staged: { events: number; stages: Stage[] } = { events: -1, stages: [] };
  private known: { events: number; log: Log | undefined } | undefined;

  constructor(library: Library, altitudeFt: number) {
    const gauge = { kind: "dial" } as const;
    const holds = { "half-pint": 12, pint: 9, quart: 7 };
    const canner = { id: "canner", name: "canner", holds, gauge };
    this.kitchen = new MadeUpKitchen({
      library,
      startMs: START_MS,
      zone: "America/Denver",
      setUp: [{ type: "kitchen-set", altitudeFt, canners: [canner], burners: 4, t: 0 }],
      voice: () => SILENT,
      version: "0.0.0",
    });
  }

  /** Minutes since the day began. */
  get minutes(): number {
    return (this.kitchen.session.now() - this.startedAt) / 60_000;
  }

  private get startedAt(): number {
    return START_MS;
  }

  /** Every stage of the batch and of its loads: the review shows a load only once it has jars. */
  get stages(): Stage[] {
    const { state } = this.kitchen.session;
    const events = state.history.length;
    if (this.staged.events !== events) this.staged = { events, stages: this.readStages() };
    return this.staged.stages;
  }

  private readStages(): Stage[] {
    const { state } = this.kitchen.session;
    const [batch] = Object.values(state.batches);
    if (!batch) return [];
    const open = Object.values(state.loads).filter((load) => load.state !== "abandoned");
    const own = batch.stages.filter((run) => !IN_LOADS.has(run.spec.kind));
    return [...own, ...(open.at(-1)?.stages ?? [])].map(({ id, state, spec, kept }) => {
      const last = kept?.stretches.at(-1);
      const boils = last !== undefined && last.to === undefined;
      const minMinutes = spec.window?.minMinutes ?? spec.typicalMinutes;
      return { id, state, kind: spec.kind, title: spec.title, minMinutes, boils };
    });
  }

  /** True once the batch is complete, or given up. */
  get over(): boolean {
    const [batch] = Object.values(this.kitchen.session.state.batches);
    return batch?.state === "complete" || batch?.state === "abandoned";
  }

  pass(seconds: number): void {
    this.kitchen.clock.advance(seconds * 1000);
  }

  /** The machine sleeps and wakes. */
  sleep(minutes: number): void {
    this.kitchen.sleep(minutes * 60_000);
  }

  hear(text: string): void {
    this.kitchen.session.hear(text);
  }

  /** What was said, asked, refused or heard since the last look. */
  news(): Line[] {
    const { lines } = this.kitchen;
    const fresh = lines.slice(this.seen);
    this.seen = lines.length;
    return fresh;
  }

  /** The day's batch as the review shows it; undefined before one is begun. */
  get log(): Log | undefined {
    const { session } = this.kitchen;
    const events = session.state.history.length;
    if (this.known?.events === events) return this.known.log;
    return this.lookAgain(events);
  }

  /** The same, worked out at this very moment. */
  get logNow(): Log | undefined {
    return this.lookAgain(this.kitchen.session.state.history.length);
  }

  private lookAgain(events: number): Log | undefined {
    const { session } = this.kitchen;
    const [log] = review(session.state, session.now()).batches;
    this.known = { events, log };
    return log;
  }

  /** The altitude that the program goes by, feet. */
  get altitudeFt(): number | null {
    return this.kitchen.session.state.kitchen.altitudeFt;
  }

  /** The doubts that are kept of any jars, and the answers that were left open. */
  private get doubts(): number {
    const { loads, batches, leftOpen } = this.kitchen.session.state;
    const all = [...Object.values(loads), ...Object.values(batches)];
    const heard = all.reduce((sum, one) => sum + one.heard.length, 0);
    return heard + Object.keys(leftOpen).length;
  }

  /** What is known of the place and its canners. */
  private get place(): string {
    const { altitudeFt, canners } = this.kitchen.session.state.kitchen;
    return JSON.stringify([altitudeFt, canners]);
  }

  /** Hears what is told of something that went wrong; answers with what it keeps of it. */
  told(text: string, topic?: Topic): Kept {
    const before = this.logNow;
    const { doubts, place } = this;
    this.hear(text);
    const after = this.logNow;
    // Another altitude or gauge is taken in before there is a load that it changes.
    if (this.place !== place) return "loss";
    const { canners } = this.kitchen.session.state.kitchen;
    if (topic === "gauge" && canners.some(({ gauge }) => gauge?.readsHighPsi)) return "loss";
    const lines = this.kitchen.lines.slice(this.seen);
    const more = (of: (log: Log) => number) => {
      return after !== undefined && of(after) > (before ? of(before) : 0);
    };
    if (more((log) => log.deviations.length) || more((log) => log.process?.restarts ?? 0)) {
      return "loss";
    }
    const worse = after && before && after.verdict !== before.verdict;
    if (worse && after.verdict === "not-as-tested") return "loss";
    const stands = topic === undefined ? undefined : STANDS[topic];
    const known = [...(after?.reasons ?? []), ...(after?.deviations ?? []).map(({ code }) => code)];
    if (known.some((one) => stands?.test(one))) return "loss";
    // Jars that are put away as not tested have nothing left to lose.
    if (before?.verdict === "not-as-tested" && before.state === "complete") return "loss";
    if (lines.some((line) => line.kind === "asked")) return "doubt";
    return this.doubts > doubts ? "trace" : "nothing";
  }

  /** Closes cleanly. */
  close(): void {
    this.kitchen.session.close();
  }

  /** The events so far, for what is worked out of them elsewhere. */
  get events() {
    return this.kitchen.session.state.history;
  }
}
