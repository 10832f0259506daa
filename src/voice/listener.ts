import type { EarsEvents, EarsGrammar } from "../ports/ears.ts";
import { type Acceptance, acceptance, afterSecondHearing } from "./acceptance.ts";
import { ComfortNoise } from "./comfort-noise.ts";
import { Endpointer, type SpeechEdge } from "./endpointer.ts";
import { type CleanedPiece, HOP, NoiseReduction } from "./noise-reduction.ts";
import type { Recognised, Recogniser } from "./recogniser.ts";
import { SAMPLE_RATE } from "./wav.ts";

const PIECE_MS = (HOP * 1000) / SAMPLE_RATE;

/** Sound kept from before speech was noticed, in pieces: soft first consonants are in it. */
const BEFORE = Math.round(350 / PIECE_MS);

/** After Brinebell falls silent nothing is heard for so long: echo, and the sound card's own. */
const DEAF_TAIL_MS = 400;

/** How often the level is told, in ms. */
const LEVEL_MS = 250;

/** Root mean square of the noise added to everything, so that digital silence has a floor. */
const DITHER = 4;

/** Noise closer to speech than this is turned down, by so much at most. */
const CLEAN_SNR_DB = 20;
const MOST_REDUCTION_DB = -8;

/** Noise fainter than this below speech is topped up: without any, the recogniser does worse. */
const COMFORT_SNR_DB = 16;

/** How loud speech is taken to be before any was heard: a distant voice, dB below full scale. */
const FIRST_SPEECH_DB = -36;

export type ListenerParts = {
  recogniser: Recogniser;
  events: Pick<EarsEvents, "onHeard" | "onUnheard" | "onLevel">;
  withWakeWords: boolean;
  /** Wall clock, epoch ms, and any clock that only goes forward, in ms. */
  wallMs: () => number;
  monoMs: () => number;
};

/**
 * From 16 kHz samples to commands: noise turned down, speech cut out of it, each piece of speech
 * decoded while it comes in and judged when it ends. Everything happens in `hear`.
 */
export class Listener {
  private readonly parts: ListenerParts;
  private readonly reduction = new NoiseReduction();
  private readonly dither = new ComfortNoise();
  private readonly comfort = new ComfortNoise();
  private usualDb = FIRST_SPEECH_DB;
  private readonly endpointer = new Endpointer();
  private before: Int16Array[] = [];
  private rest = new Int16Array(0);
  private open = false;
  private deaf = false;
  private deafForMs = 0;
  private sinceLevelMs = 0;
  private speechDb: number[] = [];
  private arrivedMs = 0;
  private waiting: EarsGrammar | undefined;

  constructor(parts: ListenerParts) {
    this.parts = parts;
  }

  /**
   * What may be said from the next utterance on.
   * @throws Error when the grammar does not parse (at once when nobody is speaking)
   */
  expect(grammar: EarsGrammar): void {
    this.waiting = grammar;
    if (!this.open) this.takeGrammar();
  }

  /** Gives up what is being said. */
  close(): void {
    this.giveUp();
  }

  deafen(speaking: boolean): void {
    if (speaking) this.giveUp();
    this.deaf = speaking;
    this.deafForMs = DEAF_TAIL_MS;
  }

  /** Takes samples as they come, in chunks of any size. */
  hear(chunk: Int16Array): void {
    this.arrivedMs = this.parts.monoMs();
    const samples = new Int16Array(this.rest.length + chunk.length);
    samples.set(this.rest);
    samples.set(chunk, this.rest.length);
    let at = 0;
    for (; at + HOP <= samples.length; at += HOP) this.piece(samples.subarray(at, at + HOP));
    this.rest = samples.slice(at);
  }

  private piece(raw: Int16Array): void {
    if (this.deaf || this.deafForMs > 0) {
      if (!this.deaf) this.deafForMs -= PIECE_MS;
      return;
    }
    const piece = this.reduction.push(this.dither.over(raw, DITHER));
    const samples = this.prepare(piece);
    this.tellLevel(piece);
    const edge = this.endpointer.push(piece.riseDb, (silentMs) =>
      this.parts.recogniser.isUnfinished(silentMs),
    );
    this.follow(edge, piece, samples);
    this.before.push(samples);
    if (this.before.length > BEFORE) this.before.shift();
  }

  private follow(edge: SpeechEdge, piece: CleanedPiece, samples: Int16Array): void {
    const { recogniser } = this.parts;
    if (edge === "begins") {
      this.open = true;
      this.speechDb = [];
      recogniser.begin();
      for (const earlier of this.before) recogniser.feed(earlier);
    }
    if (!this.open) return;
    recogniser.feed(samples);
    if (edge !== "pauses") this.speechDb.push(piece.levelDb);
    if (edge === "ends") this.finish(piece);
    if (edge === "too-long") {
      this.giveUp("talking");
      this.unheard("too-long", "", 0);
    }
  }

  private finish(piece: CleanedPiece): void {
    const { recogniser, monoMs, wallMs, events } = this.parts;
    const silentMs = this.endpointer.sinceSpeechMs;
    const first = recogniser.end();
    this.endpointer.reset();
    const levelDb = this.speechDb.reduce((sum, db) => sum + db, 0) / (this.speechDb.length || 1);
    this.usualDb += 0.3 * (levelDb - this.usualDb);
    const judged = this.judge(first, levelDb - piece.noiseDb);
    if (judged.taken) {
      const { confidence, orElse } = judged;
      const delayMs = silentMs + monoMs() - this.arrivedMs;
      const heard = { text: first.text, confidence, heardAtMs: wallMs() - delayMs, delayMs };
      events.onHeard(orElse ? { ...heard, orElse } : heard);
    } else this.unheard(judged.why, first.text, judged.confidence);
    this.shut();
  }

  private judge(first: Recognised, snrDb: number): Acceptance {
    const judged = acceptance(first, snrDb, this.parts.withWakeWords);
    if (!judged.taken) return judged;
    return afterSecondHearing(this.parts.recogniser.secondOpinion(first), judged.confidence);
  }

  private unheard(
    why: "no-wake-words" | "unsure" | "too-long" | "nothing",
    nearest: string,
    confidence: number,
  ): void {
    this.parts.events.onUnheard?.({ why, nearest, confidence, heardAtMs: this.parts.wallMs() });
  }

  private giveUp(next: "silence" | "talking" = "silence"): void {
    if (this.open) {
      this.parts.recogniser.end();
      this.shut();
    }
    if (next === "silence") this.endpointer.reset();
  }

  private shut(): void {
    this.open = false;
    if (this.waiting) this.takeGrammar();
  }

  private takeGrammar(): void {
    if (this.waiting) this.parts.recogniser.expect(this.waiting);
    this.waiting = undefined;
  }

  /** Noise is turned down only where loud enough to hurt; where there is none, some is added. */
  private prepare(piece: CleanedPiece): Int16Array {
    const snrDb = this.usualDb - piece.noiseDb;
    this.reduction.turnDown(Math.min(0, Math.max(MOST_REDUCTION_DB, snrDb - CLEAN_SNR_DB)));
    const missing = 10 ** ((this.usualDb - COMFORT_SNR_DB) / 20) - 10 ** (piece.noiseDb / 20);
    return missing > 0 ? this.comfort.over(piece.samples, missing * 32768) : piece.samples;
  }

  private tellLevel({ levelDb, noiseDb }: CleanedPiece): void {
    this.sinceLevelMs += PIECE_MS;
    if (this.sinceLevelMs < LEVEL_MS) return;
    this.sinceLevelMs = 0;
    this.parts.events.onLevel?.({ levelDb, noiseDb, speech: this.open });
  }
}
