import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { HeardWords } from "../../src/ports/ears.ts";
import { realClock } from "../../src/session/time/real-clock.ts";
import { ChildEars } from "../../src/voice/listening/child-ears.ts";
import { buildListeningProgram } from "../voice/built-program.ts";
import { KITCHEN_GRAMMAR } from "./kitchen-talk.ts";
import { missingForLoop, WAKE_WORDS } from "./loop-bench.ts";
import { noise, speechLevel } from "./noise.ts";
import { syntheticVoices } from "./synthetic-voices.ts";

const missing = missingForLoop();
const COMMANDS = ["it's boiling", "six quarts filled", "what's next", "undo that"];
const RATE = 16_000;

/** Commands over faint noise, and the sample at which each ends. */
function recording(): { bytes: Buffer; endsMs: number[] } {
  const voice = syntheticVoices()[0];
  const spoken = COMMANDS.map((text) => voice?.speak(`${WAKE_WORDS.join(" ")}, ${text}`));
  const gap = RATE * 1.5;
  const length = spoken.reduce((sum, samples) => sum + (samples?.length ?? 0) + gap, 2 * RATE);
  const all = Int16Array.from(noise("fan", length, 5), (value) => value * 100);
  const endsMs: number[] = [];
  let at = 2 * RATE;
  for (const samples of spoken) {
    if (!samples) continue;
    const gain = 2500 / speechLevel(samples);
    samples.forEach((sample, index) => {
      all[at + index] = Math.round((all[at + index] ?? 0) + sample * gain);
    });
    let last = samples.length - 1;
    while (last > 0 && Math.abs(samples[last] ?? 0) * gain < 150) last--;
    endsMs.push(((at + last) * 1000) / RATE);
    at += samples.length + gap;
  }
  return { bytes: Buffer.from(all.buffer), endsMs };
}

describe.skipIf(missing)("a recording, paced, through the listening program", () => {
  let program = "";
  let folder = "";
  beforeAll(async () => {
    program = await buildListeningProgram();
    folder = mkdtempSync(join(tmpdir(), "loop-"));
  });
  afterAll(() => {
    rmSync(dirname(program), { recursive: true, force: true });
    rmSync(folder, { recursive: true, force: true });
  });

  it("gives its commands, each after its end", async () => {
    const { bytes, endsMs } = recording();
    const path = join(folder, "kitchen.raw");
    writeFileSync(path, bytes);
    const heard: (HeardWords & { gotMs: number })[] = [];
    let firstLevelMs: number | undefined;
    const problems: string[] = [];
    await new Promise<void>((resolve) => {
      const ears = new ChildEars({
        programPath: program,
        setup: { source: { from: "file", path, paced: true }, wakeWords: WAKE_WORDS },
        clock: realClock(),
        searchPath: "",
        events: {
          onHeard: (what) => heard.push({ ...what, gotMs: performance.now() }),
          onProblem: (message) => problems.push(message),
          onLevel: () => {
            firstLevelMs ??= performance.now();
          },
          onOver: () => ears.stop().then(resolve),
        },
      });
      ears.start(KITCHEN_GRAMMAR);
    });
    expect(problems).toEqual([]);
    expect(heard.map(({ text }) => text)).toEqual(COMMANDS);
    // The first level is told a quarter of a second into the recording.
    const startMs = (firstLevelMs ?? 0) - 256;
    const delays = heard.map(({ gotMs }, at) => gotMs - startMs - (endsMs[at] ?? 0));
    console.log(`from the end of speech: ${delays.map((each) => each.toFixed(0)).join(", ")} ms`);
    // How soon is a figure to read, not a test: a busy machine is slower.
    expect(Math.min(...delays)).toBeGreaterThan(-1000);
  });
});
