/**
 * `npm run mutate -- [--minutes 20] [--files A,B] [--jobs 1]`: changes the files that a verdict
 * rests on, one place at a time, and prints which changes no quick test notices, by group. The
 * minutes are shared out evenly over the files; what was not tried in them is said.
 */
import { spawn } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, relative } from "node:path";
import { parseArgs } from "node:util";

/** At most ten. */
const FILES = [
  "src/kitchen/unbroken-time.ts",
  "src/kitchen/deviations.ts",
  "src/review/verdict.ts",
  "src/kitchen/questions/factor-questions.ts",
  "src/kitchen/loads/low-readings.ts",
  "src/kitchen/loads/heat-off.ts",
  "src/kitchen/decide/gauge-answers.ts",
  "src/recipe/choose-process.ts",
  "src/recipe/foods/food-gate.ts",
  "src/language/answers/confirms.ts",
];

const { values } = parseArgs({
  options: {
    minutes: { type: "string", default: "60" },
    files: { type: "string", default: FILES.join() },
    jobs: { type: "string", default: "1" },
  },
});
const files = values.files.split(",");
const minutes = Number(values.minutes);
const root = join(import.meta.dirname, "../..");
if (!(minutes > 0) || !(Number(values.jobs) >= 1)) {
  console.error("--minutes and --jobs take numbers above zero");
  process.exit(2);
}
const missing = files.filter((file) => !existsSync(join(root, file)));
if (missing.length > 0) {
  console.error(`no such file: ${missing.join(", ")}`);
  process.exit(2);
}

/** Tries the mutants of one file; the answer is those that were tried before the time was over. */
async function tried(file, folder) {
  const told = join(folder, "told.jsonl");
  const env = { ...process.env, MUTATED: file, MUTANTS_TOLD: told, MUTANT_JOBS: values.jobs };
  const config = "tests/mutation/stryker.config.mjs";
  const bin = join(root, "node_modules/@stryker-mutator/core/bin/stryker.js");
  const child = spawn(process.execPath, [bin, "run", config], {
    cwd: root,
    env,
    detached: true,
    stdio: ["ignore", "ignore", "inherit"],
  });
  let cut = false;
  const timer = setTimeout(
    () => {
      cut = true;
      process.kill(-child.pid, "SIGTERM");
    },
    (minutes / files.length) * 60_000,
  );
  const code = await new Promise((resolve) => child.on("close", resolve));
  clearTimeout(timer);
  const lines = existsSync(told) ? readFileSync(told, "utf8").split("\n").filter(Boolean) : [];
  rmSync(told, { force: true });
  rmSync(join(root, ".stryker"), { recursive: true, force: true });
  if (code !== 0 && !cut) process.exitCode = 1;
  return { mutants: lines.map((line) => JSON.parse(line)), cut };
}

const noticed = ({ status }) => status === "Killed" || status === "Timeout";
const counted = ({ status }) => noticed({ status }) || ["Survived", "NoCoverage"].includes(status);
const share = (list) => {
  const hits = list.filter(noticed).length;
  return `${hits} of ${list.length}: ${((100 * hits) / Math.max(1, list.length)).toFixed(1)} %`;
};

const folder = mkdtempSync(join(tmpdir(), "mutants-"));
const all = [];
try {
  for (const file of files) {
    const { mutants, cut } = await tried(file, folder);
    const judged = mutants.filter(counted);
    all.push(...judged);
    console.log(`${file}: noticed ${share(judged)}${cut ? " (time was over)" : ""}`);
    for (const { mutatorName, line, replacement, status } of judged) {
      if (noticed({ status })) continue;
      const text = String(replacement).replace(/\s+/g, " ").slice(0, 70);
      const nobody = status === "NoCoverage" ? ", run by no quick test" : "";
      console.log(
        `  ${relative(root, join(root, file))}:${line}  ${mutatorName}: ${text}${nobody}`,
      );
    }
  }
} finally {
  rmSync(folder, { recursive: true, force: true });
}
console.log("by group:");
for (const name of [...new Set(all.map(({ mutatorName }) => mutatorName))].sort()) {
  console.log(`  ${name}: ${share(all.filter(({ mutatorName }) => mutatorName === name))}`);
}
console.log(`all: noticed ${share(all)}`);
