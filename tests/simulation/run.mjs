/**
 * `npm run simulate -- --kitchens N --seed S|fresh [--jobs J]`: plays the kitchens of seeds S, S+1,
 * … through the real session. A failure prints its seed and the shortest script that shows it.
 */
import { spawn } from "node:child_process";
import { randomInt } from "node:crypto";
import { availableParallelism } from "node:os";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { build } from "esbuild";

const { values } = parseArgs({
  options: {
    kitchens: { type: "string", default: "200" },
    seed: { type: "string", default: "1" },
    jobs: { type: "string", default: String(Math.min(8, availableParallelism())) },
  },
});
const kitchens = Number(values.kitchens);
const first = values.seed === "fresh" ? randomInt(1, 1_000_000_000) : Number(values.seed);
const jobs = Math.min(Number(values.jobs), kitchens);
if (![kitchens, first, jobs].every(Number.isInteger) || jobs < 1) {
  console.error("--kitchens, --seed and --jobs take whole numbers");
  process.exit(2);
}

/** Among so many kitchens every fault is played, or it is a fault that none is. */
const ENOUGH_KITCHENS = 1000;

const bundled = await build({
  entryPoints: [join(import.meta.dirname, "simulate.ts")],
  bundle: true,
  write: false,
  platform: "node",
  format: "esm",
  target: "node20",
  packages: "external",
});

/** Worker `job` plays every `jobs`-th seed; the answer is its sums, or undefined where it died. */
function work(job) {
  const count = Math.ceil((kitchens - job) / jobs);
  const options = ["--input-type=module", "-", first + job, count, jobs].map(String);
  const child = spawn(process.execPath, options, {
    cwd: join(import.meta.dirname, "../.."),
    stdio: ["pipe", "inherit", "inherit", "ipc"],
  });
  child.stdin.end(bundled.outputFiles[0].contents);
  let told;
  child.on("message", (message) => {
    told = message;
  });
  return new Promise((resolve) => child.on("close", () => resolve(told)));
}

console.log(`simulating ${kitchens} kitchens from seed ${first}`);
const began = performance.now();
const results = await Promise.all(Array.from({ length: jobs }, (_, job) => work(job)));
const seconds = (performance.now() - began) / 1000;
const sum = (name) => results.reduce((total, one) => total + (one?.sums[name] ?? 0), 0);

/** The workers' counts of one kind, added up by name. */
function counts(kind) {
  const all = {};
  for (const one of results) {
    for (const [name, count] of Object.entries(one?.[kind] ?? {})) {
      all[name] = (all[name] ?? 0) + count;
    }
  }
  return all;
}

const verdicts = counts("verdicts");
for (const name of Object.keys(verdicts).sort()) console.log(`  ${name} ${verdicts[name]}`);
const faults = Object.entries(counts("faults"));
console.log(`played: ${faults.map(([name, count]) => `${name} ${count}`).join(", ")}`);
const never = faults.filter(([, count]) => count === 0).map(([name]) => name);
if (never.length > 0) console.log(`NEVER PLAYED: ${never.join(", ")}`);
const drawn = never.length === 0 || kitchens < ENOUGH_KITCHENS;
const hours = sum("livedMs") / 3_600_000;
console.log(
  `${sum("kitchens")} kitchens, ${sum("lines")} lines in ${seconds.toFixed(1)} s: ` +
    `${(kitchens / seconds).toFixed(1)} kitchens/s, ${Math.round(hours / seconds)} simulated ` +
    `hours/s; ${sum("failed")} failed`,
);
process.exit(sum("failed") === 0 && sum("kitchens") === kitchens && drawn ? 0 : 1);
