/**
 * Reviewing a season of 60 batches and 20,000 events: one batch compared with `--version`, the
 * whole season, the pantry, and the size of the largest page. Needs the built program (`npm run
 * build`). Several programs are run by turns on one folder, each with its share of the first one's
 * processor time. Printed with the machine; never a timed test.
 *
 *     node tests/bench/run.mjs season [PROGRAM…]
 */
import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync } from "node:fs";
import { cpus, platform, tmpdir } from "node:os";
import { join } from "node:path";
import { parseLibraryFile } from "../../src/kitchen/read-library.ts";
import { libraryOf } from "../../src/recipe/library.ts";
import { demoSeason } from "../review/demo-season.ts";
import { kitchenFolder } from "../review/kitchen-folder.ts";

const EVENTS = 20_000;
const ROUNDS = 15;
/** The journal was written to since somebody last read it, so there is no snapshot. */
const ANEW = "review of one batch, journal anew";
const programs = process.argv.length > 2 ? process.argv.slice(2) : ["dist/brinebell.js"];
/** Loaded before a program: tells its processor time, in microseconds, when it ends. */
const TELLS_CPU =
  'data:text/javascript,import{writeSync}from"node:fs";process.on("exit",()=>{' +
  "const{user,system}=process.cpuUsage();writeSync(3,String(user+system))})";

type Took = { wallMs: number; cpuMs: number };

function timed(program: string, args: string[]): Took {
  const begun = process.hrtime.bigint();
  const run = spawnSync(process.execPath, ["--import", TELLS_CPU, program, ...args], {
    encoding: "utf8",
    stdio: ["ignore", "pipe", "pipe", "pipe"],
  });
  if (run.status !== 0) throw new Error(`${args.join(" ")}: ${run.status} ${run.stderr}`);
  const wallMs = Number(process.hrtime.bigint() - begun) / 1e6;
  return { wallMs, cpuMs: Number(run.output[3]) / 1000 };
}

function median(times: number[]): number {
  return [...times].sort((a, b) => a - b)[Math.floor(times.length / 2)] ?? Number.NaN;
}

/** From the working folder, as a benchmark has no place of its own. */
const library = libraryOf(
  readdirSync("recipes")
    .filter((name) => name.endsWith(".yaml"))
    .map((name) => parseLibraryFile(name, readFileSync(`recipes/${name}`, "utf8"))),
);
const events = await demoSeason(library, EVENTS);
const { folder, done } = kitchenFolder(events);
const out = mkdtempSync(join(tmpdir(), "season-bench-"));
const [batch] = events.flatMap((event) => (event.type === "batch-begun" ? [event.batch] : []));
const home = ["--home", folder];
const calls: Record<string, string[]> = {
  version: ["--version"],
  [ANEW]: ["review", batch ?? "", ...home],
  "review of one batch": ["review", batch ?? "", ...home],
  "review of one batch as a page": [
    "review",
    batch ?? "",
    "--html",
    join(out, "batch.html"),
    ...home,
  ],
  "list of batches": ["review", ...home],
  season: ["review", "--season", "2027", ...home],
  "season as a page": ["review", "--season", "2027", "--html", join(out, "season.html"), ...home],
  pantry: ["pantry", ...home],
};
try {
  const names = Object.keys(calls);
  const times = programs.map(() => new Map(names.map((name) => [name, [] as Took[]])));
  // In turn, so that a busy moment of the machine affects all of them.
  for (let round = 0; round < ROUNDS; round++) {
    for (const [name, args] of Object.entries(calls)) {
      for (const [at, program] of programs.entries()) {
        if (name === ANEW) rmSync(join(folder, "snapshot.json"), { force: true });
        // Each writes a snapshot of its own: only the second run of a program reads it.
        else if (programs.length > 1) timed(program, args);
        times[at]?.get(name)?.push(timed(program, args));
      }
    }
  }
  const middle = (at: number, name: string, of: keyof Took) => {
    return median((times[at]?.get(name) ?? []).map((took) => took[of]));
  };
  console.log(`node ${process.version}, ${platform()}, ${cpus().length} x ${cpus()[0]?.model}`);
  console.log(`${events.length} events; median of ${ROUNDS}, ms by the clock and of the processor`);
  for (const [at, program] of programs.entries()) {
    if (programs.length > 1) console.log(program);
    for (const name of names) {
      const cpu = middle(at, name, "cpuMs");
      const share = at === 0 ? "" : `  ${(cpu / middle(0, name, "cpuMs")).toFixed(2)} times`;
      const wall = middle(at, name, "wallMs").toFixed(0);
      console.log(`${name.padEnd(34)} ${wall.padStart(5)} ${cpu.toFixed(0).padStart(5)}${share}`);
    }
  }
  const allowed = 1.5 * middle(0, "version", "wallMs") + 100;
  const took = middle(0, "review of one batch", "wallMs");
  console.log(`one batch: ${took.toFixed(0)} of ${allowed.toFixed(0)} ms allowed`);
  for (const page of ["batch.html", "season.html"]) {
    console.log(`${page.padEnd(32)} ${(statSync(join(out, page)).size / 1000).toFixed(1)} kB`);
  }
} finally {
  done();
  rmSync(out, { recursive: true, force: true });
}
