import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import {
  type CaptureSource,
  findRecorder,
  firstSoundDevice,
  startCapture,
} from "../../../src/voice/listening/capture.ts";
import { FakePrograms } from "../fake-programs.ts";

let programs: FakePrograms;
beforeEach(() => {
  programs = new FakePrograms();
});
afterEach(() => programs.remove());

type Outcome = { samples: number[]; end: { over: boolean; reason?: string } };

function captured(source: CaptureSource): Promise<Outcome> {
  const samples: number[] = [];
  return new Promise((resolve) => {
    startCapture(source, {
      onSamples: (some) => samples.push(...some),
      onEnd: (end) => resolve({ samples, end }),
    });
  });
}

function soundFile(length: number): string {
  const path = join(programs.folder, "sound.raw");
  writeFileSync(path, Buffer.from(Int16Array.from({ length }, (_, n) => n).buffer));
  return path;
}

describe("sound from a file", () => {
  it("arrives whole and in order, and is over", async () => {
    const { samples, end } = await captured({ from: "file", path: soundFile(9000), paced: false });
    expect(samples).toHaveLength(9000);
    expect(samples[8999]).toBe(8999);
    expect(end).toEqual({ over: true });
  });

  it("takes its time when paced", async () => {
    const started = performance.now();
    await captured({ from: "file", path: soundFile(8000), paced: true });
    expect(performance.now() - started).toBeGreaterThan(450);
  });

  it("that is not there is a failure with its reason", async () => {
    const { end } = await captured({ from: "file", path: "/nowhere/sound.raw", paced: false });
    expect(end).toMatchObject({ over: false });
    expect(end.reason).toContain("/nowhere/sound.raw");
  });
});

describe("the sound device that ffmpeg lists", () => {
  it.each([
    [
      "with its type",
      '"Camera" (video)\n  Alternative name "@a"\n"Mic (USB)" (audio)\n"B" (audio)',
    ],
    [
      "under a heading",
      'DirectShow video devices\n"Camera"\nDirectShow audio devices\n "Mic (USB)"\n "B"',
    ],
  ])("%s is taken by its name", (_form, listing) => {
    expect(firstSoundDevice(listing)).toBe("Mic (USB)");
  });

  it("is none where only a camera is listed", () => {
    expect(firstSoundDevice('"Camera" (video)\n  Alternative name "@a"')).toBeUndefined();
  });
});

describe.skipIf(process.platform === "win32")("sound from a microphone", () => {
  const microphone = (): CaptureSource => ({ from: "microphone", searchPath: programs.folder });

  it("comes from the first recorder that is there", () => {
    programs.add("ffmpeg", "");
    expect(findRecorder(programs.folder, "linux")?.program).toContain("ffmpeg");
    programs.add("arecord", "");
    expect(findRecorder(programs.folder, "linux")?.program).toContain("arecord");
    expect(findRecorder("/nowhere", "linux")).toBeUndefined();
  });

  it("is refused in words where nothing records", async () => {
    const { end } = await captured({ from: "microphone", searchPath: "/nowhere" });
    expect(end).toEqual({ over: false, reason: "no program that records" });
  });

  it("keeps an odd byte for the next chunk", async () => {
    programs.add("arecord", "printf 'ab'; printf 'c'; sleep 0.2; printf 'd'");
    const { samples } = await captured(microphone());
    expect(samples).toEqual([0x6261, 0x6463]);
  });

  it("that goes away ends with what the recorder said", async () => {
    programs.add("arecord", "printf 'abcd'; echo 'no such device' >&2; exit 1");
    const { samples, end } = await captured(microphone());
    expect(samples).toHaveLength(2);
    expect(end).toEqual({ over: false, reason: "no such device" });
  });

  it("that stops sending is given up", { timeout: 15_000 }, async () => {
    programs.add("arecord", "exec sleep 60");
    const { end } = await captured(microphone());
    expect(end).toEqual({ over: false, reason: "the microphone gives no sound" });
  });
});
