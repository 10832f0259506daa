/**
 * Sentences heard per second, and how long the slowest take: `npm run bench understand`. Short ones
 * from the tests, by the wordings alone and by all the evidence; then those of the corpus, which
 * people say at length.
 */
import { cpus } from "node:os";
import { parseIso } from "../../src/kitchen/time.ts";
import type { Context } from "../../src/language/context.ts";
import { hear } from "../../src/language/hear.ts";
import { understand } from "../../src/language/understand.ts";
import { CHATTER } from "../language/chatter.ts";
import { COMMANDS } from "../language/commands.ts";
import { SAMPLE } from "../language/sample.ts";
import { corpus } from "../language/training/corpus-files.ts";

const ROUNDS = 10;
const ONE_IN = 20;
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

function measure(name: string, texts: readonly string[], rounds: number, read: Read): void {
  for (const text of texts) read(text, context());
  const cpuBefore = process.cpuUsage();
  const times: number[] = [];
  for (let round = 0; round < rounds; round += 1) {
    for (const text of texts) {
      const before = performance.now();
      read(text, context());
      times.push(performance.now() - before);
    }
  }
  const cpu = process.cpuUsage(cpuBefore);
  const cpuMs = (cpu.user + cpu.system) / 1000;
  const total = times.reduce((sum, time) => sum + time, 0);
  times.sort((a, b) => a - b);
  const figures = [
    `${name}, ${texts.length} x ${rounds}: ${Math.round((times.length / total) * 1000)} a second`,
    `${Math.round((times.length / cpuMs) * 1000)} a second of processor time`,
    `p50 ${percentile(times, 0.5).toFixed(3)} ms`,
    `p99 ${percentile(times, 0.99).toFixed(3)} ms`,
    `max ${(times.at(-1) ?? 0).toFixed(3)} ms`,
  ];
  console.log(figures.join(", "));
}

type Read = (text: string, context: Context) => unknown;

const texts = [...SAMPLE, ...COMMANDS].map(([text]) => text).concat(CHATTER);
const said = [...corpus().values()].flat().filter((_, at) => at % ONE_IN === 0);
console.log(`${cpus()[0]?.model ?? "unknown machine"}, node ${process.version}`);
for (const [name, read] of [
  ["wordings", understand],
  ["all evidence", hear],
] as const) {
  const started = performance.now();
  read("it's boiling", context());
  console.log(`first sentence, ${name}: ${(performance.now() - started).toFixed(0)} ms`);
}
measure("short, by wordings", texts, ROUNDS, understand);
measure("short, by all evidence", texts, ROUNDS, hear);
measure(
  "as people say it, by all evidence",
  said.map(({ text }) => text),
  ROUNDS / 5,
  hear,
);
