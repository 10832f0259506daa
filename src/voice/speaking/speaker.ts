import type { BellPort } from "../../ports/bell.ts";
import type { Clock } from "../../ports/clock.ts";
import type {
  DropReason,
  SentenceOutcome,
  SpeechHandle,
  SpeechManner,
  SpeechOutcome,
  SpeechRank,
  SpokenSentence,
  VoiceEngine,
  VoicePort,
} from "../../ports/voice.ts";
import { speechDeadlineMs } from "./child-speech.ts";
import { readable } from "./readable.ts";
import { type Dropped, SpeechQueue } from "./speech-queue.ts";

type SpeakerParts = {
  /** Undefined: the bell rings for alarms and prompts, and the advice is given once. */
  engine: VoiceEngine | undefined;
  bell: BellPort;
  clock: Clock;
  /** How to get a voice on this system, told where there is none. */
  advice: string;
  /** One line, once for every outage of the voice. */
  onProblem(message: string): void;
  /** The voice works again after a problem was reported. */
  onRecovered?(): void;
  /** Called with true just before a sound may be heard, and with false when the queue is silent. */
  onSpeaking?(speaking: boolean): void;
  /** What became of each utterance. */
  onOutcome?(utterance: SpokenSentence, outcome: SentenceOutcome): void;
  manner?: SpeechManner;
};

/** Waits before a failed voice is tried again, in ms: doubled each time up to the last. */
const RETRY_FIRST_MS = 5_000;
const RETRY_LAST_MS = 300_000;

/** How much longer than the engine's own deadline the queue waits for it, in ms. */
const GRACE_MS = 2_000;

/** How long to wait for a stopped sentence before the next begins, in ms. */
const STOP_MS = 300;

/** What a sentence cuts short, which is said again after it. */
const CUTS_IN: Record<SpeechRank, readonly SpeechRank[]> = {
  alarm: ["answer", "question", "prompt"],
  answer: ["question", "prompt"],
  question: ["prompt"],
  prompt: [],
};

/** Answers that come later than this after one another, ms, belong to different words. */
const SAME_TURN_MS = 200;
/** An answer that was being said for this long, ms, was heard. */
const HEARD_MS = 1500;

/** An answer that was cut short and has not come again this long after the words, ms, is old. */
const OLD_MS = 20_000;

type Current = {
  utterance: SpokenSentence;
  handle: SpeechHandle;
  cutShort: boolean;
  sinceMs: number;
};

/**
 * The voice: one sentence at a time, alarms first, each alarm preceded by the bell. A voice that
 * fails or hangs is reported once, the bell replaces it, and it is tried again later.
 */
export class Speaker implements VoicePort {
  private readonly queue = new SpeechQueue();
  private readonly parts: SpeakerParts;
  private manner: SpeechManner;
  private current: Current | undefined;
  private readonly arrived = new WeakMap<SpokenSentence, number>();
  private readonly saidAgain = new WeakSet<SpokenSentence>();
  private outage: { retryAtMs: number; waitMs: number } | undefined;
  private speaking = false;
  private hushed = false;
  private closed = false;
  private idleWaiters: (() => void)[] = [];

  constructor(parts: SpeakerParts) {
    this.parts = parts;
    this.manner = parts.manner ?? { rate: 1, volume: 1 };
  }

  say(utterance: SpokenSentence): void {
    const reason = this.closed ? "closed" : this.unwanted(utterance);
    if (reason) {
      this.drop({ utterance, why: reason });
      return;
    }
    this.arrived.set(utterance, this.msSince());
    const current = this.current;
    const older = (other: SpokenSentence) => this.isAnsweredAnew(other, utterance);
    if (current && !current.cutShort) {
      const cutsIn = CUTS_IN[utterance.rank].includes(current.utterance.rank);
      const cuts = cutsIn || older(current.utterance);
      if (cuts) this.cutShort(current, this.isWantedAgain(current, utterance));
    }
    for (const dropped of this.queue.add(utterance, false, older)) this.drop(dropped);
    this.advance();
  }

  /** Who has said something else meanwhile wants the answer to that first. */
  private isAnsweredAnew(before: SpokenSentence, { rank }: SpokenSentence): boolean {
    if (rank !== "answer" || before.rank !== "answer") return false;
    return this.msSince(this.arrived.get(before)) > SAME_TURN_MS;
  }

  /**
   * An answer that was hardly heard is said again: each time an alarm cut it short, once where
   * another answer did. One that was heard comes again once, after an alarm.
   */
  private isWantedAgain({ utterance, sinceMs }: Current, by: SpokenSentence): boolean {
    if (utterance.rank !== "answer") return true;
    const alarmed = by.rank === "alarm";
    const heard = this.msSince(sinceMs) >= HEARD_MS;
    if (alarmed && !heard) return true;
    const again = !this.saidAgain.has(utterance) && (alarmed || !heard);
    this.saidAgain.add(utterance);
    return again;
  }

  private msSince(ms = 0): number {
    return this.parts.clock.read().monoMs - ms;
  }

  cancel(key: string): void {
    for (const dropped of this.queue.remove(key, "cancelled")) this.drop(dropped);
    if (this.current?.utterance.key === key) this.cutShort(this.current, false);
  }

  hush(on: boolean): void {
    this.hushed = on;
    if (!on) return;
    for (const dropped of this.queue.filter((each) => this.unwanted(each))) this.drop(dropped);
    const current = this.current;
    if (current && !current.utterance.guards) this.cutShort(current, false);
  }

  adjust(manner: Partial<SpeechManner>): SpeechManner {
    const keep = (value: number) => Math.min(2, Math.max(0.5, value));
    const { rate, volume } = { ...this.manner, ...manner };
    this.manner = { rate: keep(rate), volume: keep(volume) };
    return this.manner;
  }

  idle(): Promise<void> {
    if (!this.current && this.queue.length === 0) return Promise.resolve();
    return new Promise((resolve) => this.idleWaiters.push(resolve));
  }

  async close(): Promise<void> {
    this.closed = true;
    for (const dropped of this.queue.filter(() => "closed")) this.drop(dropped);
    if (this.current) this.cutShort(this.current, false);
    await this.idle();
  }

  /** An interrupted sentence that is still wanted waits at the head of its rank. */
  private cutShort(current: Current, again: boolean): void {
    if (current.cutShort) return;
    current.cutShort = true;
    if (again) for (const dropped of this.queue.add(current.utterance, true)) this.drop(dropped);
    current.handle.stop();
    // An engine that hangs even when stopped must not keep an alarm waiting.
    this.parts.clock.after(STOP_MS, () => this.finish(current, { kind: "stopped" }));
  }

  private unwanted(utterance: SpokenSentence): DropReason | undefined {
    const { untilMs, wanted } = utterance;
    const cutAndOld = this.saidAgain.has(utterance) && this.msSince(this.arrived.get(utterance));
    if (cutAndOld && cutAndOld > OLD_MS) return "moment-passed";
    if (this.hushed && !(utterance.rank === "alarm" && utterance.guards)) return "hushed";
    if (untilMs !== undefined && this.parts.clock.read().wallMs > untilMs) return "moment-passed";
    if (wanted && !wanted()) return "moment-passed";
    return undefined;
  }

  private advance(): void {
    while (!this.current) {
      const utterance = this.queue.next();
      if (!utterance) {
        this.fallSilent();
        return;
      }
      const reason = this.unwanted(utterance) ?? this.begin(utterance);
      if (reason) this.drop({ utterance, why: reason });
    }
  }

  /** Begins to speak, or returns the reason why not. */
  private begin(utterance: SpokenSentence): DropReason | undefined {
    const text = readable(utterance.text);
    if (utterance.rank === "alarm") this.parts.bell.ring();
    if (text === "") return "nothing-to-read";
    const { engine, clock } = this.parts;
    if (!engine || (this.outage && clock.read().monoMs < this.outage.retryAtMs)) {
      if (!engine) this.fail(`There is no voice on this system. ${this.parts.advice}`);
      if (utterance.rank === "prompt" || utterance.rank === "question") this.parts.bell.ring();
      return "no-voice";
    }
    if (!this.speaking) {
      this.speaking = true;
      this.parts.onSpeaking?.(true);
    }
    const handle = this.startEngine(engine, text);
    const current = { utterance, handle, cutShort: false, sinceMs: clock.read().monoMs };
    this.current = current;
    const guardMs = speechDeadlineMs(text, this.manner.rate) + GRACE_MS;
    const callOff = clock.after(guardMs, () => {
      this.finish(current, { kind: "timed-out", afterMs: guardMs });
      handle.stop();
    });
    handle.done.then((outcome) => {
      callOff();
      this.finish(current, outcome);
    });
    return undefined;
  }

  private startEngine(engine: VoiceEngine, text: string): SpeechHandle {
    try {
      return engine.start(text, this.manner);
    } catch (error) {
      const reason = error instanceof Error ? error.message : String(error);
      return { done: Promise.resolve({ kind: "failed", reason }), stop: () => {} };
    }
  }

  private finish(current: Current, outcome: SpeechOutcome): void {
    if (this.current !== current) return;
    this.current = undefined;
    const { bell } = this.parts;
    if (!current.cutShort) {
      if (outcome.kind === "failed" || outcome.kind === "timed-out") {
        this.fail(outcome.kind === "failed" ? failureWords(outcome.reason) : HUNG);
        if (current.utterance.rank !== "answer") bell.ring();
      } else if (outcome.kind === "spoken" && this.outage) {
        this.outage = undefined;
        this.parts.onRecovered?.();
      }
    }
    this.parts.onOutcome?.(current.utterance, outcome);
    this.advance();
  }

  private fail(what: string): void {
    const waitMs = Math.min(RETRY_LAST_MS, (this.outage?.waitMs ?? RETRY_FIRST_MS / 2) * 2);
    const first = !this.outage;
    this.outage = { waitMs, retryAtMs: this.parts.clock.read().monoMs + waitMs };
    if (first) this.parts.onProblem(what.trim());
  }

  private drop({ utterance, why }: Dropped): void {
    this.parts.onOutcome?.(utterance, { kind: "dropped", why });
  }

  private fallSilent(): void {
    if (this.speaking) {
      this.speaking = false;
      this.parts.onSpeaking?.(false);
    }
    const waiters = this.idleWaiters;
    this.idleWaiters = [];
    for (const wake of waiters) wake();
  }
}

const HUNG =
  "The voice did not answer in time: another program may hold the loudspeaker. " +
  "brinebell soundcheck tries it.";
/** What engines report where they find nothing to play on. */
const NO_SOUND = /\b(?:audio|sound|alsa|pulse\w*|pcm|device|card)\b/i;

/** What is wrong with a voice that is there, and what to look at. */
function failureWords(reason: string): string {
  if (!NO_SOUND.test(reason)) return `The voice failed: ${reason}. brinebell soundcheck tries it.`;
  return `No sound card or loudspeaker is found: plug one in, or switch it on (${reason}).`;
}
