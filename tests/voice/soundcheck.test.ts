import { beforeEach, describe, expect, it } from "vitest";
import type { EarsEvents, EarsPort } from "../../src/ports/ears.ts";
import { type SoundcheckResult, soundcheck } from "../../src/voice/soundcheck.ts";
import { FakeVoice, HandClock } from "./fakes.ts";

const LEVEL = { levelDb: -20, noiseDb: -50, speech: true };

let clock: HandClock;
let voice: FakeVoice;
let lines: string[];
let stopped: number;

beforeEach(() => {
  clock = new HandClock();
  voice = new FakeVoice(clock);
  lines = [];
  stopped = 0;
});

/** A check with ears that do this when they are opened. */
async function check(hears: (events: EarsEvents) => void, engine: FakeVoice | undefined = voice) {
  let result: SoundcheckResult | undefined;
  const openEars = (events: EarsEvents): EarsPort => ({
    start: () => hears(events),
    expect: () => {},
    deafen: () => {},
    stop: async () => {
      stopped++;
    },
  });
  soundcheck({
    voice: { engine, advice: "For a voice: sudo apt install espeak-ng" },
    openEars,
    clock,
    wakeWords: ["brine", "bell"],
    tell: (line) => lines.push(line),
  }).then((done) => {
    result = done;
  });
  await clock.pass(60_000);
  return result as SoundcheckResult;
}

describe("a sound check", () => {
  it("speaks a line, hears one, and reports the levels", async () => {
    const result = await check((events) => {
      events.onLevel?.(LEVEL);
      events.onHeard({ text: "what now", confidence: 0.9, heardAtMs: 0, delayMs: 300 });
    });
    expect(result).toMatchObject({ voice: { works: true }, ears: { works: true } });
    expect(result.problems).toEqual([]);
    expect(lines).toContain('Listening. Please say: "brine bell what now".');
    expect(lines).toContain('Heard: "what now" (90 % sure).');
    expect(lines).toContain("Loudest -20 dB, noise -50 dB.");
    expect(stopped).toBe(1);
  });

  it("without a voice says how to get one, and still listens", async () => {
    const missing = await check(() => {}, null as unknown as undefined);
    expect(missing.voice).toEqual({ works: false, engine: undefined, outcome: "missing" });
    expect(missing.problems[0]).toContain("sudo apt install espeak-ng");
    expect(missing.ears.works).toBe(false);
  });

  it("with a voice that fails asks for a loudspeaker", async () => {
    voice.mood = "dies";
    const result = await check(() => {});
    expect(result.problems[0]).toContain("Is there a loudspeaker?");
  });

  it.each([
    ["no sound at all", [], "No sound came in"],
    ["a muted microphone", [{ ...LEVEL, levelDb: -85, noiseDb: -88 }], "silent"],
    ["one that is cut off", [{ ...LEVEL, levelDb: -1 }], "too loud"],
    ["a noisy kitchen", [{ ...LEVEL, levelDb: -30, noiseDb: -34 }], "Too much noise"],
    ["words that are no command", [LEVEL], "no command was understood"],
  ])("with %s says so", async (_name, levels, words) => {
    const result = await check((events) => {
      for (const level of levels) events.onLevel?.(level);
    });
    expect(result.problems.join()).toContain(words);
    expect(stopped).toBe(1);
  });

  it("passes on what the ears report, and ends", async () => {
    const result = await check((events) => events.onProblem("no program that records"));
    expect(result.problems).toEqual(["no program that records"]);
    expect(lines.join()).not.toContain("Listening");
  });
});
