/**
 * From the event to the first sample of speech, compared with starting the engine alone with the
 * same text in the same run. Printed, never a timed test.
 */
import { spawn } from "node:child_process";
import { cpus } from "node:os";
import { realClock } from "../../src/session/time/real-clock.ts";
import { findProgram } from "../../src/voice/find-program.ts";
import { espeakEngine } from "../../src/voice/speaking/espeak-engine.ts";
import { Speaker } from "../../src/voice/speaking/speaker.ts";

const TEXT = "The beans have boiled for ten minutes at 6,200 ft, take the jars out.";
const ROUNDS = 60;

function bareMs(program: string): Promise<number> {
  return new Promise((resolve, reject) => {
    const started = performance.now();
    const child = spawn(program, ["--stdin", "-v", "en-us", "-s", "165", "--stdout"]);
    child.on("error", reject);
    child.stdout.once("data", () => {
      const tookMs = performance.now() - started;
      child.on("close", () => resolve(tookMs));
    });
    child.stdout.resume();
    child.stdin.end(`${TEXT}\n`);
  });
}

async function spokenMs(program: string): Promise<number> {
  let firstMs: number | undefined;
  const sink = () => {
    firstMs ??= performance.now();
  };
  const speaker = new Speaker({
    engine: espeakEngine({ program, sink }),
    bell: { ring: () => {} },
    clock: realClock(),
    advice: "",
    onProblem: (message) => console.error(message),
  });
  const startedMs = performance.now();
  speaker.say({ rank: "alarm", text: TEXT });
  await speaker.idle();
  return (firstMs ?? Number.NaN) - startedMs;
}

function quantile(values: number[], q: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(q * sorted.length))] ?? Number.NaN;
}

const program = findProgram(["espeak-ng"], process.env.PATH ?? "", process.platform);
if (!program) {
  console.log("voice: skipped, espeak-ng is not installed");
} else {
  const bare: number[] = [];
  const spoken: number[] = [];
  for (let round = 0; round < ROUNDS; round++) {
    bare.push(await bareMs(program));
    spoken.push(await spokenMs(program));
  }
  const show = (values: number[]) =>
    `p50 ${quantile(values, 0.5).toFixed(1)} ms, p95 ${quantile(values, 0.95).toFixed(1)} ms`;
  console.log(`machine: ${cpus().length} x ${cpus()[0]?.model}, node ${process.version}`);
  console.log(`engine alone, start to first sample:   ${show(bare)}`);
  console.log(`event to first sample, through queue:  ${show(spoken)}`);
  const over = quantile(spoken, 0.5) - quantile(bare, 0.5);
  console.log(`over the engine alone at p50: ${over.toFixed(1)} ms (at most 60 wanted)`);
}
