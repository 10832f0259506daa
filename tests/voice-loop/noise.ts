/** Kitchen noise made by seeded code: the same seed gives the same samples. */

export type NoiseKind = "pink" | "fan" | "boiling";

/** Numbers from 0 to 1, the same for the same seed. */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

const RATE = 16_000;

/** Equal power in every octave: three leaky integrators over white noise. */
function pink(length: number, random: () => number): Float64Array {
  const out = new Float64Array(length);
  let a = 0;
  let b = 0;
  let c = 0;
  for (let at = 0; at < length; at++) {
    const white = random() * 2 - 1;
    a = 0.99765 * a + white * 0.099046;
    b = 0.963 * b + white * 0.2965164;
    c = 0.57 * c + white * 1.0526913;
    out[at] = a + b + c + white * 0.1848;
  }
  return out;
}

/** An extractor hood: a rumble that falls with frequency, a blade tone and its overtones. */
function fan(length: number, random: () => number): Float64Array {
  const out = new Float64Array(length);
  let rumble = 0;
  for (let at = 0; at < length; at++) {
    const white = random() * 2 - 1;
    rumble = 0.98 * rumble + white * 0.2;
    const seconds = at / RATE;
    let tone = 0;
    for (let k = 1; k <= 5; k++) tone += Math.sin(2 * Math.PI * 118 * k * seconds + k) / k;
    out[at] = rumble + 0.12 * tone + 0.06 * white;
  }
  return out;
}

/**
 * A rolling boil: a hiss whose loudness wavers, and a hundred and twenty bubbles a second. A
 * bubble rings at a pitch that falls with its size (Minnaert: 3.3 m/s over its radius, so 2 to
 * 20 mm give 1,600 to 160 Hz) and the larger are the louder.
 */
function boiling(length: number, random: () => number): Float64Array {
  const out = new Float64Array(length);
  let low = 0;
  let waver = 0;
  for (let at = 0; at < length; at++) {
    const white = random() * 2 - 1;
    low = 0.9 * low + white * 0.25;
    waver = 0.9997 * waver + (random() * 2 - 1) * 0.02;
    out[at] = (out[at] ?? 0) + (low + 0.08 * white) * (1 + 0.5 * Math.tanh(waver * 2));
    if (random() < 120 / RATE) addBubble(out, at, random);
  }
  return out;
}

function addBubble(out: Float64Array, from: number, random: () => number): void {
  const hertz = 160 * 10 ** random();
  const decay = 30 + random() * 120;
  const loud = ((0.4 + random() * 1.6) * 400) / hertz;
  const rise = 1 + 0.3 * random();
  for (let k = 0; k < 0.06 * RATE && from + k < out.length; k++) {
    const seconds = k / RATE;
    const ring = Math.sin(2 * Math.PI * hertz * seconds * (1 + rise * seconds));
    out[from + k] = (out[from + k] ?? 0) + loud * ring * Math.exp(-decay * seconds);
  }
}

const MAKERS = { pink, fan, boiling };

/** Noise of a kind, at a root mean square of 1. */
export function noise(kind: NoiseKind, length: number, seed: number): Float64Array {
  const raw = MAKERS[kind](length, seeded(seed));
  const level = rms(raw);
  return raw.map((value) => value / level);
}

export function rms(samples: ArrayLike<number>): number {
  let sum = 0;
  for (let at = 0; at < samples.length; at++) sum += (samples[at] ?? 0) ** 2;
  return Math.sqrt(sum / Math.max(1, samples.length));
}

/** Loudness of the speech itself: only 20 ms pieces within 30 dB of the loudest count. */
export function speechLevel(samples: Int16Array): number {
  const pieces: number[] = [];
  for (let at = 0; at + 320 <= samples.length; at += 320) {
    pieces.push(rms(samples.subarray(at, at + 320)));
  }
  const loudest = Math.max(1, ...pieces);
  return rms(pieces.filter((level) => level > loudest / 31.6));
}

/** The sample at which speech ends: the last 10 ms within 30 dB of the loudest. */
export function endOfSpeech(samples: Int16Array): number {
  const pieces: number[] = [];
  for (let at = 0; at + 160 <= samples.length; at += 160) {
    pieces.push(rms(samples.subarray(at, at + 160)));
  }
  const loudest = Math.max(1, ...pieces);
  return (pieces.findLastIndex((level) => level > loudest / 31.6) + 1) * 160;
}
