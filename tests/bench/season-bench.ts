/**
 * Reviewing a season of 60 batches and 20,000 events: one batch compared with `--version`, the
 * whole season, the pantry, and the size of the largest page. Needs the built program (`npm run
 * build`). Printed with the machine; never a timed test.
 *
 *     node tests/bench/run.mjs season [PROGRAM]
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
const program = process.argv[2] ?? "dist/brinebell.js";

function timed(args: string[]): number {
  const begun = process.hrtime.bigint();
  const run = spawnSync(process.execPath, [program, ...args], { encoding: "utf8" });
  if (run.status !== 0) throw new Error(`${args.join(" ")}: ${run.status} ${run.stderr}`);
  return Number(process.hrtime.bigint() - begun) / 1e6;
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
  const times = Object.fromEntries(Object.keys(calls).map((name) => [name, [] as number[]]));
  // In turn, so that a busy moment of the machine affects all of them.
  for (let round = 0; round < ROUNDS; round++) {
    for (const [name, args] of Object.entries(calls)) {
      if (name === ANEW) rmSync(join(folder, "snapshot.json"), { force: true });
      times[name]?.push(timed(args));
    }
  }
  console.log(`node ${process.version}, ${platform()}, ${cpus().length} x ${cpus()[0]?.model}`);
  console.log(`${events.length} events; median of ${ROUNDS}, ms`);
  for (const [name, list] of Object.entries(times)) {
    console.log(`${name.padEnd(34)} ${median(list).toFixed(0)}`);
  }
  const allowed = 1.5 * median(times.version ?? []) + 100;
  const took = median(times["review of one batch"] ?? []);
  console.log(`one batch: ${took.toFixed(0)} of ${allowed.toFixed(0)} ms allowed`);
  for (const page of ["batch.html", "season.html"]) {
    console.log(`${page.padEnd(32)} ${(statSync(join(out, page)).size / 1000).toFixed(1)} kB`);
  }
} finally {
  done();
  rmSync(out, { recursive: true, force: true });
}
