/** A recording of commands over faint noise, as raw 16 kHz sound. */
import { WAKE_WORDS } from "./loop-bench.ts";
import { noise, speechLevel } from "./noise.ts";
import type { SyntheticVoice } from "./synthetic-voices.ts";

const RATE = 16_000;
const SPEECH_RMS = 2500;
/** A quiet room: 28 dB below the speech. */
const NOISE_RMS = 100;

/** Fainter than this is the silence that a voice ends in. */
const SILENT = 150;

/** The sound, and when each command ends in it. */
export type Recording = { bytes: Buffer; endsMs: number[] };

/** Each command behind the wake words, with so much quiet after it. */
export function recordingOf(
  voice: SyntheticVoice,
  commands: readonly string[],
  gapMs: number,
  wakeWords: readonly string[] = WAKE_WORDS,
): Recording {
  const spoken = commands.map((text) => voice.speak([...wakeWords, text].join(" ")));
  const gap = (RATE * gapMs) / 1000;
  const length = spoken.reduce((sum, samples) => sum + samples.length + gap, 2 * RATE);
  const all = Int16Array.from(noise("fan", length, 5), (value) => value * NOISE_RMS);
  const endsMs: number[] = [];
  let at = 2 * RATE;
  for (const samples of spoken) {
    const gain = SPEECH_RMS / speechLevel(samples);
    samples.forEach((sample, index) => {
      all[at + index] = Math.round((all[at + index] ?? 0) + sample * gain);
    });
    let last = samples.length - 1;
    while (last > 0 && Math.abs(samples[last] ?? 0) * gain < SILENT) last--;
    endsMs.push(((at + last) * 1000) / RATE);
    at += samples.length + gap;
  }
  return { bytes: Buffer.from(all.buffer), endsMs };
}
