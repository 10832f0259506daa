import { describe, expect, it } from "vitest";
import { at16kHz, readWav, writeWav } from "../../voice-loop/wav.ts";

const tone = (sampleRate: number, hertz: number) =>
  Int16Array.from({ length: sampleRate }, (_, n) =>
    Math.round(8000 * Math.sin((2 * Math.PI * hertz * n) / sampleRate)),
  );

const rms = (samples: Int16Array) =>
  Math.sqrt(samples.reduce((sum, value) => sum + value * value, 0) / samples.length);

describe("sound files", () => {
  it("are read as they were written", () => {
    const samples = Int16Array.from([0, 1, -1, 32767, -32768]);
    expect(readWav(writeWav({ sampleRate: 16000, samples }))).toEqual({
      sampleRate: 16000,
      samples,
    });
  });

  it("with the sizes of a program that streams are read to their end", () => {
    const bytes = writeWav({ sampleRate: 22050, samples: Int16Array.from([5, 6, 7]) });
    bytes.writeUInt32LE(0x7ffff000, 40);
    expect(readWav(bytes).samples).toEqual(Int16Array.from([5, 6, 7]));
  });

  it.each([
    Buffer.alloc(0),
    Buffer.from("RIFF"),
    Buffer.from("hello world, this is no sound at all, none"),
    Buffer.from("RIFF....WAVEfmt ", "latin1"),
  ])("that are not WAV are refused, case %#", (bytes) => {
    expect(() => readWav(bytes)).toThrow();
  });

  it("are brought to 16 kHz: tones stay, what cannot be kept is taken out", () => {
    const kept = at16kHz({ sampleRate: 22050, samples: tone(22050, 1000) });
    expect(kept.length).toBe(16000);
    expect(rms(kept.subarray(500, 15500))).toBeCloseTo(8000 / Math.SQRT2, -2);
    const gone = at16kHz({ sampleRate: 22050, samples: tone(22050, 9500) });
    expect(rms(gone.subarray(500, 15500))).toBeLessThan(100);
  });
});
