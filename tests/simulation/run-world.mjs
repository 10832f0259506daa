/**
 * `npm run world -- --days N --seed S|fresh [--minutes M] [--alone] [--halved|--doubled] [--only
 * RATE] [--against COMMIT]`: plays seeded days of a kitchen with a truth of its own, and prints
 * what the program made of them, beside (unless alone) a program that asks nothing and, where a
 * commit is named, the program as it was then. After so many minutes each plays no further day.
 */
import { execFileSync, spawn } from "node:child_process";
import { randomInt } from "node:crypto";
import { mkdtempSync, rmSync } from "node:fs";
import { availableParallelism } from "node:os";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { build } from "esbuild";

const { values } = parseArgs({
  options: {
    days: { type: "string", default: "1000" },
    seed: { type: "string", default: "1" },
    jobs: { type: "string", default: String(Math.min(8, availableParallelism())) },
    halved: { type: "boolean", default: false },
    doubled: { type: "boolean", default: false },
    only: { type: "string", default: "" },
    against: { type: "string", default: "" },
    minutes: { type: "string", default: "" },
    alone: { type: "boolean", default: false },
  },
});
const days = Number(values.days);
const first = values.seed === "fresh" ? randomInt(1, 1_000_000_000) : Number(values.seed);
const jobs = Math.min(Number(values.jobs), days);
if (![days, first, jobs].every(Number.isInteger) || jobs < 1) {
  console.error("--days, --seed and --jobs take whole numbers");
  process.exit(2);
}
const factor = values.halved ? 0.5 : values.doubled ? 2 : 1;
const root = join(import.meta.dirname, "../..");
const world = join(import.meta.dirname, "world");

/** The worker with the program of this folder, or of another one, around the same world. */
async function bundle(entry, program) {
  const elsewhere = {
    name: "program of another folder",
    setup({ onResolve }) {
      onResolve({ filter: /\/src\// }, ({ path, resolveDir }) => {
        const within = join(resolveDir, path).split(`${root}/src/`)[1];
        return within === undefined ? undefined : { path: join(program, "src", within) };
      });
    },
  };
  const { outputFiles } = await build({
    entryPoints: [join(world, entry)],
    bundle: true,
    write: false,
    platform: "node",
    format: "esm",
    target: "node20",
    packages: "external",
    plugins: program === root ? [] : [elsewhere],
  });
  return outputFiles[0].contents;
}

/** Worker `job` plays every `jobs`-th day; the answer is its days, fewer where it died. */
function work(contents, job, policy, program) {
  const count = Math.ceil((days - job) / jobs);
  const limit = values.minutes;
  const options = [first + job, count, jobs, factor, policy, values.only, limit].map(String);
  const child = spawn(process.execPath, ["--input-type=module", "-", ...options], {
    cwd: root,
    env: { ...process.env, WORLD_RECIPES: join(program, "recipes") },
    stdio: ["pipe", "inherit", "inherit", "ipc"],
  });
  child.stdin.end(contents);
  const told = [];
  child.on("message", (message) => {
    if (message !== "end") told.push(message);
  });
  return new Promise((resolve) => child.on("close", () => resolve(told)));
}

async function play(name, policy, program) {
  const began = performance.now();
  const contents = await bundle("play-days.ts", program);
  const numbers = Array.from({ length: jobs }, (_, job) => job);
  const parts = await Promise.all(numbers.map((job) => work(contents, job, policy, program)));
  const seconds = (performance.now() - began) / 1000;
  const all = parts.flat().sort((a, b) => a.seed - b.seed);
  const rate = (all.length / seconds).toFixed(1);
  console.log(`\n${name}: ${all.length} days in ${seconds.toFixed(0)} s, ${rate} a second`);
  if (all.length !== days && values.minutes === "") process.exitCode = 1;
  return all;
}

/** The figures live in TypeScript with the rest of the world. */
async function figuresModule() {
  const contents = await bundle("figures.ts", root);
  return import(`data:text/javascript;base64,${Buffer.from(contents).toString("base64")}`);
}

const { figures, figureLines, gapLines } = await figuresModule();
const rates = values.only === "" ? "all rates" : values.only;
console.log(`${days} days from seed ${first}; ${rates} times ${factor}`);

const today = await play("the program", "program", root);
for (const line of figureLines(figures(today))) console.log(`  ${line}`);
console.log("  what was wrong and called as tested:");
for (const line of gapLines(today)) console.log(`  ${line}`);

if (!values.alone) {
  const nothing = await play("asks nothing", "asks-nothing", root);
  for (const line of figureLines(figures(nothing))) console.log(`  ${line}`);
}

if (values.against !== "") {
  const folder = mkdtempSync(join(root, "node_modules/.world-"));
  try {
    const tar = execFileSync("git", ["-C", root, "archive", values.against, "src", "recipes"], {
      maxBuffer: 1 << 28,
    });
    execFileSync("tar", ["-x", "-C", folder], { input: tar });
    const before = await play(`the program at ${values.against}`, "program", folder);
    for (const line of figureLines(figures(before))) console.log(`  ${line}`);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
