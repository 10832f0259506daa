import { describe, expect, it } from "vitest";
import { ComfortNoise } from "../../../src/voice/listening/comfort-noise.ts";
import { Fourier } from "../../../src/voice/listening/fourier.ts";
import {
  type CleanedPiece,
  HOP,
  NoiseReduction,
} from "../../../src/voice/listening/noise-reduction.ts";

const PIECES = 300;
const silence = new Int16Array(HOP * PIECES);

function rms(samples: ArrayLike<number>): number {
  let sum = 0;
  for (let at = 0; at < samples.length; at++) sum += (samples[at] ?? 0) ** 2;
  return Math.sqrt(sum / samples.length);
}

function reduced(samples: Int16Array, turnDownDb: number): CleanedPiece[] {
  const reduction = new NoiseReduction();
  reduction.turnDown(turnDownDb);
  const pieces: CleanedPiece[] = [];
  for (let at = 0; at < samples.length; at += HOP) {
    pieces.push(reduction.push(samples.subarray(at, at + HOP)));
  }
  return pieces;
}

const flat = (pieces: CleanedPiece[]) => pieces.flatMap(({ samples }) => [...samples]);

describe("the Fourier transform", () => {
  it("finds a tone and restores the signal", () => {
    const fourier = new Fourier(64);
    const re = Float64Array.from({ length: 64 }, (_, n) => Math.cos((2 * Math.PI * 5 * n) / 64));
    const im = new Float64Array(64);
    fourier.forward(re, im);
    expect(re[5]).toBeCloseTo(32, 6);
    expect(re[6]).toBeCloseTo(0, 6);
    fourier.inverse(re, im);
    expect(re[1]).toBeCloseTo(Math.cos((2 * Math.PI * 5) / 64), 9);
  });
});

describe("turning noise down", () => {
  const noisy = new ComfortNoise().over(silence, 500);

  it("changes nothing when told not to", () => {
    const out = flat(reduced(noisy, 0));
    let worst = 0;
    for (let at = HOP; at < out.length; at++) {
      worst = Math.max(worst, Math.abs((out[at] ?? 0) - (noisy[at - HOP] ?? 0)));
    }
    expect(worst).toBeLessThanOrEqual(2);
  });

  it("makes steady noise fainter by about what was asked", () => {
    const late = flat(reduced(noisy, -8)).slice(HOP * 100);
    const fallDb = 20 * Math.log10(rms(late) / rms(noisy.subarray(HOP * 100)));
    expect(fallDb).toBeLessThan(-5);
    expect(fallDb).toBeGreaterThan(-9);
  });

  it("recognizes a voice over the noise by its rise, and how loud the noise is", () => {
    const voiced = noisy.map((sample, at) => {
      const speaking = at > HOP * 200 && at < HOP * 220;
      const sum = [300, 600, 900, 1500, 2100, 2700, 3300].reduce((all, hertz) => {
        return all + 900 * Math.sin((2 * Math.PI * hertz * at) / 16000);
      }, 0);
      return sample + (speaking ? Math.round(sum) : 0);
    });
    const pieces = reduced(voiced, -8);
    const rise = (from: number, to: number) =>
      pieces.slice(from, to).reduce((sum, piece) => sum + piece.riseDb, 0) / (to - from);
    expect(Math.abs(rise(100, 200))).toBeLessThan(1);
    expect(rise(203, 218)).toBeGreaterThan(2);
    const truth = 20 * Math.log10(500 / 32768);
    expect(Math.abs((pieces[190]?.noiseDb ?? 0) - truth)).toBeLessThan(2.5);
  });
});

describe("comfort noise", () => {
  it("has the loudness asked for and is the same every time", () => {
    const once = new ComfortNoise().over(silence, 40);
    expect(rms(once)).toBeGreaterThan(34);
    expect(rms(once)).toBeLessThan(46);
    expect(new ComfortNoise().over(silence, 40)).toEqual(once);
  });
});
