/** Utterances understood per second, and how long the slowest take: `npm run bench understand`. */
import { cpus } from "node:os";
import { parseIso } from "../../src/kitchen/time.ts";
import type { Context } from "../../src/language/context.ts";
import { understand } from "../../src/language/understand.ts";
import { CHATTER } from "../language/chatter.ts";
import { COMMANDS } from "../language/commands.ts";
import { SAMPLE } from "../language/sample.ts";

const ROUNDS = 20;
const zone = "America/Denver";

const recipes: Context["recipes"] = [];

/** A fresh context each time, as a kitchen makes one; only the recipes stay the same. */
function context(): Context {
  return {
    nowMs: parseIso("2027-08-14T14:00:00", zone) ?? 0,
    zone,
    recipes,
    running: [
      { id: "b-1", recipe: "dilled-green-beans", variety: "Provider" },
      { id: "b-2", recipe: "pickled-beets" },
      { id: "b-3", recipe: "dilled-green-beans", variety: "Dragon Tongue" },
    ],
    timers: [{ id: "t-1", label: "rice" }],
  };
}

function percentile(sorted: readonly number[], share: number): number {
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? 0;
}

const texts = [...SAMPLE, ...COMMANDS].map(([text]) => text).concat(CHATTER);
const started = performance.now();
understand("it's boiling", context());
const first = performance.now() - started;
for (const text of texts) understand(text, context());

const cpuBefore = process.cpuUsage();
const times: number[] = [];
for (let round = 0; round < ROUNDS; round += 1) {
  for (const text of texts) {
    const before = performance.now();
    understand(text, context());
    times.push(performance.now() - before);
  }
}
const cpu = process.cpuUsage(cpuBefore);
const cpuMs = (cpu.user + cpu.system) / 1000;
const total = times.reduce((sum, time) => sum + time, 0);
times.sort((a, b) => a - b);
const line = [
  `${cpus()[0]?.model ?? "unknown machine"}, node ${process.version}`,
  `first utterance (phrases compiled): ${first.toFixed(0)} ms`,
  `${texts.length} utterances x ${ROUNDS}: ${Math.round((times.length / total) * 1000)} a second`,
  `${Math.round((times.length / cpuMs) * 1000)} a second of processor time`,
  `p50 ${percentile(times, 0.5).toFixed(3)} ms`,
  `p99 ${percentile(times, 0.99).toFixed(3)} ms`,
  `max ${(times.at(-1) ?? 0).toFixed(3)} ms`,
];
console.log(line.join("\n"));
