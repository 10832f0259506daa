import type { EarsEvents, EarsGrammar } from "../../ports/ears.ts";
import { type Acceptance, acceptance, afterSecondHearing } from "./acceptance.ts";
import { ComfortNoise } from "./comfort-noise.ts";
import { ENDPOINTS, Endpointer, type SpeechEdge } from "./endpointer.ts";
import { type CleanedPiece, HOP, NoiseReduction } from "./noise-reduction.ts";
import type { Recognized, Recognizer } from "./recognizer.ts";
import { SAMPLE_RATE } from "./sample-rate.ts";

const PIECE_MS = (HOP * 1000) / SAMPLE_RATE;

/** Sound kept from before speech was noticed, in pieces: it contains soft first consonants. */
const BEFORE = Math.round(350 / PIECE_MS);

/**
 * Nothing is heard for this long after Brinebell falls silent, because of echoes and the sound
 * card's delay.
 */
const DEAF_TAIL_MS = 400;

/** How often the level is reported, in ms. */
const LEVEL_MS = 250;

/** Root mean square of the noise added to everything, so that digital silence has a floor. */
const DITHER = 4;

/** Noise closer to speech than this is reduced, at most by this much. */
const CLEAN_SNR_DB = 20;
const MOST_REDUCTION_DB = -8;

/** Noise further than this below speech is topped up: without any, the recognizer does worse. */
const COMFORT_SNR_DB = 16;

/**
 * Silence that ends an utterance: when only the wake words have been said, when more may come, and
 * otherwise. A soft voice gets lost in loud noise for a moment, so below {@link PLAIN_SNR_DB} the
 * wait is longer by some ms for every dB.
 */
const AFTER_WAKE_WORDS_MS = 1_200;
const PERHAPS_MORE_MS = 480;
const PLAIN_SNR_DB = 18;
const MS_FOR_DB = 12;
const MOST_MORE_MS = 96;

/** How far into a silence the second hearing begins: most silences this long are the end. */
const AHEAD_MS = 176;

/** The loudness assumed for speech before any was heard: a distant voice, dB below full scale. */
const FIRST_SPEECH_DB = -36;

/** A piece of sound with its noise reduced, and with its noise left in. */
type Prepared = { quieter: Int16Array; withNoise: Int16Array };

type ListenerParts = {
  recognizer: Recognizer;
  events: Pick<EarsEvents, "onHeard" | "onUnheard" | "onLevel">;
  withWakeWords: boolean;
  /** Wall clock, epoch ms, and any clock that only goes forward, in ms. */
  wallMs: () => number;
  monoMs: () => number;
};

/**
 * From 16 kHz samples to commands: noise is reduced, speech is cut out, and each piece of speech is
 * decoded while it comes in and judged when it ends. Everything happens in `hear`.
 */
export class Listener {
  private readonly parts: ListenerParts;
  private readonly reduction = new NoiseReduction();
  private readonly dither = new ComfortNoise();
  private readonly comfort = new ComfortNoise();
  private readonly secondComfort = new ComfortNoise();
  private usualDb = FIRST_SPEECH_DB;
  private readonly endpointer = new Endpointer();
  private before: Prepared[] = [];
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

  /** Drops what is being said. */
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
    const dithered = this.dither.over(raw, DITHER);
    const piece = this.reduction.push(dithered);
    const samples = this.prepare(piece, dithered);
    this.tellLevel(piece);
    const edge = this.endpointer.push(piece.riseDb, () => this.enoughMs(piece));
    this.follow(edge, piece, samples);
    this.before.push(samples);
    if (this.before.length > BEFORE) this.before.shift();
  }

  private follow(edge: SpeechEdge, piece: CleanedPiece, sound: Prepared): void {
    const { recognizer } = this.parts;
    if (edge === "begins") {
      this.open = true;
      this.speechDb = [];
      recognizer.begin();
      for (const { quieter, withNoise } of this.before) recognizer.feed(quieter, withNoise);
    }
    if (!this.open) return;
    recognizer.feed(sound.quieter, sound.withNoise);
    if (edge !== "pauses" && edge !== "ends") {
      recognizer.noteSound();
      this.speechDb.push(piece.levelDb);
    }
    if (edge === "pauses" && this.endpointer.sinceSpeechMs === AHEAD_MS) recognizer.hearAhead();
    if (edge === "ends") this.finish(piece);
    if (edge === "too-long") {
      this.giveUp("talking");
      this.unheard("too-long", "", 0);
    }
  }

  private finish(piece: CleanedPiece): void {
    const { recognizer, monoMs, wallMs, events } = this.parts;
    const silentMs = this.endpointer.sinceSpeechMs;
    const first = recognizer.end();
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

  private judge(first: Recognized, snrDb: number): Acceptance {
    const judged = acceptance(first, snrDb, this.parts.withWakeWords);
    if (!judged.taken) return judged;
    const second = this.parts.recognizer.secondOpinion(first);
    return afterSecondHearing(second, snrDb, judged.confidence);
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
      this.parts.recognizer.end();
      this.shut();
    }
    if (next === "silence") this.endpointer.reset();
  }

  private shut(): void {
    this.open = false;
    if (this.waiting) this.takeGrammar();
  }

  private takeGrammar(): void {
    if (this.waiting) this.parts.recognizer.expect(this.waiting);
    this.waiting = undefined;
  }

  /** The silence after which what was said counts as complete, in ms. */
  private enoughMs({ noiseDb }: CleanedPiece): number {
    const progress = this.parts.recognizer.progress();
    if (progress === "only-wake-words") return AFTER_WAKE_WORDS_MS;
    if (progress === "perhaps-more") return PERHAPS_MORE_MS;
    const missingDb = Math.max(0, PLAIN_SNR_DB - (this.usualDb - noiseDb));
    return ENDPOINTS.silenceMs + Math.min(MOST_MORE_MS, missingDb * MS_FOR_DB);
  }

  /** Noise is reduced only where it is loud enough to hurt; where there is none, some is added. */
  private prepare(piece: CleanedPiece, raw: Int16Array): Prepared {
    const snrDb = this.usualDb - piece.noiseDb;
    this.reduction.turnDown(Math.min(0, Math.max(MOST_REDUCTION_DB, snrDb - CLEAN_SNR_DB)));
    const missing = 10 ** ((this.usualDb - COMFORT_SNR_DB) / 20) - 10 ** (piece.noiseDb / 20);
    if (missing <= 0) return { quieter: piece.samples, withNoise: raw };
    const quieter = this.comfort.over(piece.samples, missing * 32768);
    return { quieter, withNoise: this.secondComfort.over(raw, missing * 32768) };
  }

  private tellLevel({ levelDb, noiseDb }: CleanedPiece): void {
    this.sinceLevelMs += PIECE_MS;
    if (this.sinceLevelMs < LEVEL_MS) return;
    this.sinceLevelMs = 0;
    this.parts.events.onLevel?.({ levelDb, noiseDb, speech: this.open });
  }
}
