/**
 * Speaking. Nothing here throws and nothing hangs: if an engine is missing, fails or stops, only
 * the voice is lost.
 */

/** What became of one spoken text. `stopped`: we cut it short or closed. */
export type SpeechOutcome =
  | { kind: "spoken" }
  | { kind: "stopped" }
  | { kind: "failed"; reason: string }
  | { kind: "timed-out"; afterMs: number };

/** How to speak. `rate` and `volume` are factors: 1 is the engine's own, 0.8 slower, 1.5 louder. */
export type SpeechManner = { rate: number; volume: number };

/** One text on its way to the loudspeaker. */
export type SpeechHandle = {
  /** Settles once, by the engine's deadline at the latest; never rejects. */
  done: Promise<SpeechOutcome>;
  /** Ends it now; `done` then settles with `stopped` unless it had settled before. */
  stop(): void;
};

/** One way of speaking. It gets text that has been reduced to what can be read aloud. */
export type VoiceEngine = {
  name: string;
  start(text: string, manner: SpeechManner): SpeechHandle;
};

/** Who goes first: an alarm cuts in on all, an answer on what nobody asked for. */
export type SpeechRank = "alarm" | "answer" | "question" | "prompt";

/** One sentence to be said. */
export type SpokenSentence = {
  rank: SpeechRank;
  text: string;
  /** A later sentence with the same key replaces one that still waits. */
  key?: string;
  /** Wall instant (epoch ms) after which it is no longer worth saying. */
  untilMs?: number;
  /** Asked just before speaking: false drops it. */
  wanted?: () => boolean;
  /** An alarm that guards a process: said even when hushed. */
  guards?: boolean;
};

/** What became of a sentence; a `dropped` one was never begun. */
export type SentenceOutcome = SpeechOutcome | { kind: "dropped"; why: DropReason };

export type DropReason =
  | "hushed"
  | "moment-passed"
  | "replaced"
  | "queue-full"
  | "nothing-to-read"
  | "no-voice"
  | "cancelled"
  | "closed";

/** The voice as the session sees it. */
export type VoicePort = {
  /** Takes a sentence into the queue and returns at once. */
  say(utterance: SpokenSentence): void;
  /** Takes back what waits or is being said under this key, as when an alarm is answered. */
  cancel(key: string): void;
  /** Hushed, only alarms that guard a process are said. */
  hush(on: boolean): void;
  /** Changes how the next sentences are said; factors, kept between 0.5 and 2. */
  adjust(manner: Partial<SpeechManner>): SpeechManner;
  /** Settles when nothing is being said and nothing waits. */
  idle(): Promise<void>;
  /** Stops speaking for good. */
  close(): Promise<void>;
};
