/**
 * The planner on the field's public instances and on seeded kitchens.
 *
 *     node tests/bench/run.mjs plan DIR [--ms N]   every PSPLIB `.sm` in DIR
 *     node tests/bench/run.mjs plan                seeded kitchens of five, six and eight batches
 *
 * `optimum.csv` in DIR holds `name,optimum` lines; `LB..UB` or `..UB` where none is proved. The
 * last line is the mean deviation from the optimum where all are proved or nothing else can be
 * (up to 32 jobs), else from the critical-path bound, as is usual for the larger sets.
 */
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { Project, Solution } from "../../src/plan/solver/model.ts";
import { seededRandom } from "../../src/plan/solver/random.ts";
import { solve } from "../../src/plan/solver/solve.ts";
import { seededKitchen } from "../plan/kitchens.ts";
import { criticalPath, readPsplib } from "./psplib.ts";

const SMALL_JOBS = 32;

function timed(project: Project, limitMs: number): { solution: Solution; ms: number } {
  const from = performance.now();
  const elapsedMs = () => performance.now() - from;
  const random = seededRandom(1);
  const nodeBudget = Number.MAX_SAFE_INTEGER;
  const solution = solve(project, { random, nodeBudget, elapsedMs, limitMs });
  return { solution, ms: elapsedMs() };
}

type Known = { best: number; open: boolean };

function readOptima(directory: string): Map<string, Known> {
  const path = join(directory, "optimum.csv");
  if (!existsSync(path)) return new Map();
  const rows = readFileSync(path, "utf8").trim().split(/\r?\n/).slice(1);
  return new Map(
    rows.map((row) => {
      const [name = "", figure = ""] = row.split(",");
      return [name.trim(), { best: Number(figure.split("..").pop()), open: figure.includes("..") }];
    }),
  );
}

const percent = (share: number) => `${(100 * share).toFixed(2)} %`;

function instances(directory: string, ms: number | undefined): void {
  const optima = readOptima(directory);
  const names = readdirSync(directory).filter((name) => name.endsWith(".sm"));
  names.sort((a, b) => a.localeCompare(b, "en", { numeric: true }));
  let [overOptimum, withOptimum, overPath, proved, totalMs] = [0, 0, 0, 0, 0];
  let large = false;
  for (const name of names) {
    const project = readPsplib(join(directory, name));
    const jobs = project.activities.length;
    const { solution, ms: took } = timed(project, ms ?? (jobs <= SMALL_JOBS ? 200 : 500));
    const path = criticalPath(project);
    const known = optima.get(name);
    const abovePath = solution.makespan / path - 1;
    large ||= jobs > SMALL_JOBS || (known?.open ?? false);
    overPath += abovePath;
    totalMs += took;
    if (solution.status === "optimal") proved += 1;
    let beside = "no optimum known";
    if (known) {
      const above = solution.makespan / known.best - 1;
      overOptimum += above;
      withOptimum += 1;
      beside = `${known.open ? "best known" : "optimum"} ${known.best} ${percent(above)}`;
    }
    const bound = `critical path ${path} ${percent(abovePath)}`;
    const plan = `${solution.makespan} ${solution.status} (at least ${solution.lowerBound})`;
    console.log(`${name}: ${plan}, ${beside}, ${bound}, ${took.toFixed(0)} ms`);
  }
  const count = names.length;
  if (count === 0) throw new Error(`${directory} holds no .sm files`);
  console.log(`proved ${proved} of ${count}, ${(totalMs / count).toFixed(0)} ms each on average`);
  const optimumMean = overOptimum / Math.max(1, withOptimum);
  if (withOptimum > 0)
    console.log(`over the optimum or best known: ${percent(optimumMean)} of ${withOptimum}`);
  console.log(`over the critical-path bound: ${percent(overPath / count)} of ${count}`);
  if (large || withOptimum === 0)
    console.log(`mean deviation ${percent(overPath / count)} over ${count} instances`);
  else console.log(`mean deviation ${percent(optimumMean)} over ${withOptimum} instances`);
}

function kitchens(): void {
  for (const [batches, withinMs] of [
    [5, 150],
    [6, 2000],
  ] as const) {
    const times: number[] = [];
    for (let seed = 1; seed <= 20; seed++) {
      const { solution, ms } = timed(seededKitchen(seed, batches), 10_000);
      times.push(solution.status === "optimal" ? ms : Number.POSITIVE_INFINITY);
    }
    const within = times.filter((ms) => ms <= withinMs).length;
    times.sort((a, b) => a - b);
    const median = times[10]?.toFixed(0);
    console.log(
      `${batches} batches: proved within ${withinMs} ms in ${within} of 20, median ${median} ms, ` +
        `19th ${times[18]?.toFixed(0)} ms, longest ${times[19]?.toFixed(0)} ms`,
    );
  }
  let worst = 0;
  for (let seed = 1; seed <= 5; seed++) {
    const kitchen = seededKitchen(seed, 8);
    const quick = timed(kitchen, 500).solution;
    const { solution: long, ms } = timed(kitchen, 60_000);
    const above = quick.makespan / long.makespan - 1;
    worst = Math.max(worst, above);
    console.log(
      `8 batches, seed ${seed}: ${quick.makespan} in 500 ms, ${long.makespan} ` +
        `(${long.status}) in ${ms.toFixed(0)} ms: ${percent(above)} above`,
    );
  }
  console.log(`8 batches in 500 ms: at most ${percent(worst)} above a minute's search`);
}

const [directory, option, figure] = process.argv.slice(2);
if (option !== undefined && (option !== "--ms" || !(Number(figure) > 0))) {
  console.error("say: plan DIR [--ms N], N a number of milliseconds above zero");
  process.exitCode = 2;
} else if (directory === undefined) kitchens();
else instances(directory, figure === undefined ? undefined : Number(figure));
