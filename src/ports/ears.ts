/**
 * Listening. Off until started; never throws, never hangs: where a recognizer or microphone is
 * missing or goes away, only listening is lost.
 */

/** What may be said now, as rules of a JSGF grammar. */
export type EarsGrammar = {
  /** Rule definitions, each ending in `;`, without header and without a public rule. */
  rules: string;
  /** Name of the rule, without angle brackets, that is one whole command. */
  command: string;
};

/** One command that was heard. */
export type HeardWords = {
  /** The words, lower case, without the wake words. */
  text: string;
  /**
   * 0 to 1: how well the sound fits these words rather than any sounds at all, and a number in
   * them rather than its sound-alike. Below 0.7, commands that matter are read back.
   */
  confidence: number;
  /** The same command with a number that sounds like the one heard. */
  orElse?: string;
  /** When the speech ended, wall clock, epoch ms. */
  heardAtMs: number;
  /** From the end of the speech to this report, in ms. */
  delayMs: number;
};

/** Speech that was not taken for a command, and why. */
export type Unheard = {
  why: "no-wake-words" | "unsure" | "too-long" | "nothing";
  /** The nearest command, for a soundcheck; never to be acted on. */
  nearest: string;
  confidence: number;
  heardAtMs: number;
};

/** Loudness of what comes in, in dB below full scale (0 is the loudest possible). */
export type SoundLevel = { levelDb: number; noiseDb: number; speech: boolean };

/** What listening reports to its owner. */
export type EarsEvents = {
  onHeard(heard: HeardWords): void;
  /** Called for all speech that was not a command. */
  onUnheard?(unheard: Unheard): void;
  /** About four times a second while sound comes in. */
  onLevel?(level: SoundLevel): void;
  /** One line, once for every outage: what is wrong and how to fix it. */
  onProblem(message: string): void;
  /** Listening again after a problem was reported. */
  onRecovered?(): void;
};

/** The ears as the session sees them. */
export type EarsPort = {
  /**
   * Begins to listen for this grammar; what happens is reported to the events given at creation.
   */
  start(grammar: EarsGrammar): void;
  /** Changes what may be said; takes effect with the next utterance. */
  expect(grammar: EarsGrammar): void;
  /** True while Brinebell speaks: nothing is heard until a moment after it falls silent. */
  deafen(speaking: boolean): void;
  /** Stops listening and frees the microphone. */
  stop(): Promise<void>;
};
