import { SAMPLE_RATE } from "../../src/voice/listening/sample-rate.ts";

type Sound = { sampleRate: number; samples: Int16Array };

/**
 * Reads a PCM WAV of 16 bits; several channels are averaged. A header written by a program that
 * streams, whose sizes are wrong, is read to the end of the bytes.
 * @throws Error when the bytes are not such a WAV
 */
export function readWav(bytes: Buffer): Sound {
  if (bytes.toString("latin1", 0, 4) !== "RIFF" || bytes.toString("latin1", 8, 12) !== "WAVE") {
    throw new Error("not a WAV file");
  }
  let sampleRate = 0;
  let channels = 0;
  for (let at = 12; at + 8 <= bytes.length; ) {
    const name = bytes.toString("latin1", at, at + 4);
    const size = bytes.readUInt32LE(at + 4);
    if (name === "fmt ") {
      channels = bytes.readUInt16LE(at + 10);
      sampleRate = bytes.readUInt32LE(at + 12);
      const bits = bytes.readUInt16LE(at + 22);
      if (bytes.readUInt16LE(at + 8) !== 1 || bits !== 16) throw new Error("not a 16-bit PCM WAV");
    }
    if (name === "data" && sampleRate > 0 && channels > 0) {
      return { sampleRate, samples: mixedDown(bytes.subarray(at + 8, at + 8 + size), channels) };
    }
    at += 8 + size + (size % 2);
  }
  throw new Error("a WAV file without sound");
}

function mixedDown(data: Buffer, channels: number): Int16Array {
  const frames = Math.floor(data.length / 2 / channels);
  const samples = new Int16Array(frames);
  for (let frame = 0; frame < frames; frame++) {
    let sum = 0;
    for (let channel = 0; channel < channels; channel++) {
      sum += data.readInt16LE((frame * channels + channel) * 2);
    }
    samples[frame] = Math.round(sum / channels);
  }
  return samples;
}

/** A WAV file of 16-bit mono samples. */
export function writeWav({ sampleRate, samples }: Sound): Buffer {
  const header = Buffer.alloc(44);
  header.write("RIFF", 0, "latin1");
  header.writeUInt32LE(36 + samples.length * 2, 4);
  header.write("WAVEfmt ", 8, "latin1");
  header.writeUInt32LE(16, 16);
  header.writeUInt16LE(1, 20);
  header.writeUInt16LE(1, 22);
  header.writeUInt32LE(sampleRate, 24);
  header.writeUInt32LE(sampleRate * 2, 28);
  header.writeUInt16LE(2, 32);
  header.writeUInt16LE(16, 34);
  header.write("data", 36, "latin1");
  header.writeUInt32LE(samples.length * 2, 40);
  const data = Buffer.alloc(samples.length * 2);
  samples.forEach((sample, index) => {
    data.writeInt16LE(sample, index * 2);
  });
  return Buffer.concat([header, data]);
}

/** Taps on each side of the resampling filter, in samples of the slower rate. */
const HALF_WIDTH = 16;

/** The sound at 16 kHz, by a windowed sinc below the lower of the two half rates. */
export function at16kHz({ sampleRate, samples }: Sound): Int16Array {
  if (sampleRate === SAMPLE_RATE) return samples;
  const step = sampleRate / SAMPLE_RATE;
  const cutoff = Math.min(1, 1 / step) * 0.95;
  const reach = Math.ceil(HALF_WIDTH / cutoff);
  const out = new Int16Array(Math.floor(samples.length / step));
  for (let index = 0; index < out.length; index++) {
    const center = index * step;
    const first = Math.ceil(center - reach);
    let sum = 0;
    for (let at = Math.max(0, first); at <= center + reach && at < samples.length; at++) {
      const x = at - center;
      const window = 0.5 + 0.5 * Math.cos((Math.PI * x) / reach);
      const arg = Math.PI * cutoff * x;
      sum += (samples[at] ?? 0) * cutoff * window * (x === 0 ? 1 : Math.sin(arg) / arg);
    }
    out[index] = Math.max(-32768, Math.min(32767, Math.round(sum)));
  }
  return out;
}
