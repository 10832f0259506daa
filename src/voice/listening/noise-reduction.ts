import { Fourier } from "./fourier.ts";
import { SAMPLE_RATE } from "./sample-rate.ts";

/** Samples in one analyzed piece (32 ms), and from one piece to the next (16 ms). */
const SIZE = 512;
export const HOP = 256;
const BINS = SIZE / 2 + 1;

/** The band in which speech is distinguished from noise, in Hz. */
const SPEECH_FROM = Math.round((250 * SIZE) / SAMPLE_RATE);
const SPEECH_TO = Math.round((3800 * SIZE) / SAMPLE_RATE);

/** The signal-to-noise ratio assumed for speech where it is present: 15 dB. */
const PRIOR_SNR = 10 ** 1.5;
const PRIOR_SHARE = PRIOR_SNR / (1 + PRIOR_SNR);

/** One piece of sound with its noise reduced. */
export type CleanedPiece = {
  /** {@link HOP} samples, {@link HOP} later than they came in. */
  samples: Int16Array;
  /** Loudness of what came in and of the noise in it, dB below full scale. */
  levelDb: number;
  noiseDb: number;
  /** Mean rise over the noise in the speech bands, in dB (0 for noise alone). */
  riseDb: number;
};

/**
 * Reduces steady and wavering noise. The noise in each band is tracked by the chance that
 * speech is absent (T. Gerkmann and R. C. Hendriks, "Unbiased MMSE-based noise power estimation
 * with low complexity and low tracking delay", IEEE TASLP 20, 2012), and each band is weighted by
 * a Wiener gain on a decision-directed ratio (Y. Ephraim and D. Malah, IEEE TASSP 32, 1984).
 */
export class NoiseReduction {
  private readonly fourier = new Fourier(SIZE);
  private readonly window = Float64Array.from({ length: SIZE }, (_, index) =>
    Math.sin((Math.PI * (index + 0.5)) / SIZE),
  );
  private readonly history = new Float64Array(SIZE);
  private readonly overlap = new Float64Array(SIZE);
  private readonly noise = new Float64Array(BINS);
  private readonly presence = new Float64Array(BINS).fill(0.5);
  private readonly clean = new Float64Array(BINS);
  private readonly re = new Float64Array(SIZE);
  private readonly im = new Float64Array(SIZE);
  private pieces = 0;
  private floor = 1;

  /** How far noise may be reduced, in dB (0 or less): too little leaves noise, too much rings. */
  turnDown(floorDb: number): void {
    this.floor = 10 ** (floorDb / 20);
  }

  /** Takes the next {@link HOP} samples. */
  push(samples: Int16Array): CleanedPiece {
    this.history.copyWithin(0, HOP);
    let energy = 0;
    for (let at = 0; at < HOP; at++) {
      const value = samples[at] ?? 0;
      this.history[SIZE - HOP + at] = value;
      energy += value * value;
    }
    for (let at = 0; at < SIZE; at++) {
      this.re[at] = (this.history[at] ?? 0) * (this.window[at] ?? 0);
      this.im[at] = 0;
    }
    this.fourier.forward(this.re, this.im);
    this.pieces += 1;
    const riseDb = this.weigh();
    this.fourier.inverse(this.re, this.im);
    const out = this.overlapped();
    const noisePower = this.noise.reduce((sum, power) => sum + power, 0) / (SIZE * HOP);
    return {
      samples: out,
      levelDb: decibels(energy / HOP),
      noiseDb: decibels(noisePower * 2),
      riseDb,
    };
  }

  /** Weights every bin; returns the mean rise over the noise in the speech bands. */
  private weigh(): number {
    let rise = 0;
    for (let bin = 0; bin < BINS; bin++) {
      const re = this.re[bin] ?? 0;
      const im = this.im[bin] ?? 0;
      const power = re * re + im * im + 1;
      const noise = this.track(bin, power);
      const ratio = power / noise;
      if (bin >= SPEECH_FROM && bin < SPEECH_TO) rise += 10 * Math.log10(Math.max(0.5, ratio));
      const before = (this.clean[bin] ?? 0) / noise;
      const prior = 0.96 * before + 0.04 * Math.max(0, ratio - 1);
      const gain = Math.max(this.floor, prior / (1 + prior));
      this.clean[bin] = gain * gain * power;
      this.re[bin] = re * gain;
      this.im[bin] = im * gain;
      if (bin > 0 && bin < SIZE / 2) {
        this.re[SIZE - bin] = re * gain;
        this.im[SIZE - bin] = -im * gain;
      }
    }
    return rise / (SPEECH_TO - SPEECH_FROM);
  }

  private track(bin: number, power: number): number {
    const known = this.noise[bin] ?? 0;
    // The first pieces are taken as noise: nobody speaks in the first tenth of a second.
    if (this.pieces <= 6) {
      const mean = known + (power - known) / this.pieces;
      this.noise[bin] = mean;
      return mean;
    }
    const likelihood = (1 + PRIOR_SNR) * Math.exp(-Math.min(200, (power / known) * PRIOR_SHARE));
    let present = 1 / (1 + likelihood);
    const smooth = 0.9 * (this.presence[bin] ?? 0) + 0.1 * present;
    this.presence[bin] = smooth;
    // Without this, a sudden louder noise would count as speech forever.
    if (smooth > 0.99) present = Math.min(present, 0.99);
    const estimate = present * known + (1 - present) * power;
    const noise = 0.85 * known + 0.15 * estimate;
    this.noise[bin] = noise;
    return noise;
  }

  private overlapped(): Int16Array {
    const out = new Int16Array(HOP);
    for (let at = 0; at < SIZE; at++) {
      const windowed = (this.re[at] ?? 0) * (this.window[at] ?? 0);
      this.overlap[at] = (this.overlap[at] ?? 0) + windowed;
    }
    for (let at = 0; at < HOP; at++) {
      out[at] = Math.max(-32768, Math.min(32767, Math.round(this.overlap[at] ?? 0)));
    }
    this.overlap.copyWithin(0, HOP);
    this.overlap.fill(0, SIZE - HOP);
    return out;
  }
}

function decibels(meanSquare: number): number {
  return 10 * Math.log10(Math.max(1, meanSquare) / 32768 ** 2);
}
