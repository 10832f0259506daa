import type { BellPort } from "../../src/ports/bell.ts";
import type { Clock, ClockReading } from "../../src/ports/clock.ts";
import type {
  SentenceOutcome,
  SpeechOutcome,
  SpokenSentence,
  VoiceEngine,
} from "../../src/ports/voice.ts";

/** A clock that moves only when told, with its wake-ups in order. */
export class HandClock implements Clock {
  private atMs: number;
  private pending: { atMs: number; run: () => void }[] = [];

  constructor(startMs = Date.UTC(2027, 7, 14, 20)) {
    this.atMs = startMs;
  }

  nowMs(): number {
    return this.atMs;
  }

  read(): ClockReading {
    const at = this.atMs;
    return { wallMs: at, monoMs: at, bootMs: at, bootId: "one", zone: "America/Denver" };
  }

  after(ms: number, run: () => void): () => void {
    const entry = { atMs: this.atMs + ms, run };
    this.pending.push(entry);
    return () => {
      this.pending = this.pending.filter((other) => other !== entry);
    };
  }

  /** Moves on, running what comes due; promises settle in between. */
  async pass(ms: number): Promise<void> {
    const endMs = this.atMs + ms;
    for (;;) {
      await settle();
      const due = this.pending
        .filter((entry) => entry.atMs <= endMs)
        .sort((a, b) => a.atMs - b.atMs)[0];
      if (!due) break;
      this.pending = this.pending.filter((other) => other !== due);
      this.atMs = due.atMs;
      due.run();
    }
    this.atMs = endMs;
    await settle();
  }
}

/** Lets promises that are ready run to their end. */
export async function settle(): Promise<void> {
  for (let turn = 0; turn < 10; turn++) await Promise.resolve();
}

export type FakeMood = "works" | "dies" | "hangs" | "deaf-to-stop" | "throws";

/** A voice that speaks for a second of the given clock, or misbehaves. */
export class FakeVoice implements VoiceEngine {
  readonly name = "fake";
  readonly heard: { text: string; rate: number; volume: number }[] = [];
  mood: FakeMood = "works";
  /** How long a sentence takes. */
  takesMs = 1000;
  atOnce = 0;
  mostAtOnce = 0;
  private readonly clock: Clock;

  constructor(clock: Clock) {
    this.clock = clock;
  }

  start(text: string, manner: { rate: number; volume: number }) {
    if (this.mood === "throws") throw new Error("no such device");
    this.heard.push({ text, ...manner });
    this.mostAtOnce = Math.max(this.mostAtOnce, ++this.atOnce);
    const { mood } = this;
    let finish: (outcome: SpeechOutcome) => void = () => {};
    const done = new Promise<SpeechOutcome>((resolve) => {
      finish = resolve;
      if (mood === "works") this.clock.after(this.takesMs, () => resolve({ kind: "spoken" }));
      if (mood === "dies") resolve({ kind: "failed", reason: "the program died" });
    });
    done.then(() => this.atOnce--);
    return { done, stop: () => mood !== "deaf-to-stop" && finish({ kind: "stopped" }) };
  }

  get texts(): string[] {
    return this.heard.map((each) => each.text);
  }
}

/** A bell that counts. */
export class FakeBell implements BellPort {
  rings = 0;
  ring(): void {
    this.rings++;
  }
}

/** What a speaker told its owner. */
export class SpeakerDiary {
  problems: string[] = [];
  recoveries = 0;
  speaking: boolean[] = [];
  outcomes: [string, string][] = [];

  readonly callbacks = {
    onProblem: (message: string) => void this.problems.push(message),
    onRecovered: () => void this.recoveries++,
    onSpeaking: (on: boolean) => void this.speaking.push(on),
    onOutcome: (utterance: SpokenSentence, outcome: SentenceOutcome) => {
      const kind = outcome.kind === "dropped" ? outcome.why : outcome.kind;
      this.outcomes.push([utterance.text, kind]);
    },
  };
}
