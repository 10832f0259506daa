/**
 * The kitchen's own figures, each compared with a bare baseline in the same run: the version,
 * opening and replaying a journal of 100,000 events, and how late due moments come with 200 clocks.
 * Printed with the machine; never a timed test.
 */

import { spawnSync } from "node:child_process";
import * as fs from "node:fs";
import { cpus, platform, tmpdir } from "node:os";
import { join } from "node:path";
import { openJournal } from "../../src/journal/open-journal.ts";
import { realDisk } from "../../src/journal/real-disk.ts";
import type { DatedFact, KitchenEvent } from "../../src/kitchen/events.ts";
import { historyOf } from "../../src/kitchen/events.ts";
import { replay } from "../../src/kitchen/evolve.ts";
import { parseLibraryFile } from "../../src/kitchen/read-library.ts";
import { initialState } from "../../src/kitchen/state.ts";
import { seededRandom } from "../../src/plan/solver/random.ts";
import { libraryOf } from "../../src/recipe/library.ts";
import { openSession } from "../../src/session/open-session.ts";
import { eventsOf, KITCHEN_FORMAT, recordOf } from "../../src/session/reading/journal-records.ts";
import { recipeTexts } from "../../src/session/reading/load-library.ts";
import { Rehearsal } from "../../src/session/rehearsal/rehearse.ts";
import { SILENT } from "../../src/session/short-session.ts";
import { realClock } from "../../src/session/time/real-clock.ts";

const EVENTS = 100_000;
const OPENINGS = 7;
const SPAWNS = 31;
const scratch = fs.mkdtempSync(join(tmpdir(), "kitchen-bench-"));
const library = libraryOf(
  recipeTexts("recipes").flatMap((file) => {
    return "text" in file ? [parseLibraryFile(file.name, file.text)] : [];
  }),
);

function percentile(times: number[], share: number): number {
  const sorted = [...times].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? Number.NaN;
}

function timed(run: () => void): number {
  const start = performance.now();
  run();
  return performance.now() - start;
}

function benchVersion(): void {
  const ours: number[] = [];
  const bare: number[] = [];
  for (let i = 0; i < SPAWNS; i++) {
    bare.push(timed(() => spawnSync(process.execPath, ["-e", "0"])));
    ours.push(timed(() => spawnSync(process.execPath, ["dist/brinebell.js", "--version"])));
  }
  const [a, b] = [percentile(ours, 0.5), percentile(bare, 0.5)];
  const bareText = `bare node -e 0 ${b.toFixed(1)} ms`;
  console.log(
    `version          ${a.toFixed(1)} ms, ${bareText}: ${(a / b).toFixed(2)}x (at most 1.5)`,
  );
}

/** Events of real batches, with readings, notes and timers around them, up to a number. */
async function season(): Promise<KitchenEvent[]> {
  const rehearsal = new Rehearsal({
    library,
    recipes: ["dilled-green-beans", "pickled-beets", "snap-beans", "bread-and-butter-pickles"],
    begin: {},
    startMs: Date.UTC(2027, 7, 14, 14),
    zone: "America/Denver",
    setUp: [
      {
        type: "kitchen-set",
        altitudeFt: 6200,
        canners: [
          {
            id: "canner",
            name: "canner",
            holds: { pint: 9, quart: 7 },
            gauge: { kind: "weighted" },
          },
        ],
        t: 0,
      },
    ],
    demoAltitudeFt: 6200,
    version: "bench",
  });
  const { kitchen } = await rehearsal.play();
  const events = [...historyOf(kitchen.session.state)];
  const batches = Object.keys(kitchen.session.state.batches);
  let t = kitchen.session.now();
  for (let i = events.length; i < EVENTS; i++) {
    t += 20_000;
    const batch = batches[i % batches.length] ?? null;
    const fact: DatedFact =
      i % 5 === 0
        ? { type: "timer-set", timer: `T${i % 40}`, label: "rice", minutes: 12, t }
        : i % 5 === 1
          ? { type: "note", owner: batch, text: "the dill had gone to seed and was cut late", t }
          : { type: "temperature", owner: batch, what: "crock", temperatureF: 68 + (i % 7), t };
    events.push({ ...fact, cmd: `c${Math.round(t)}.${i}`, w: t } as KitchenEvent);
  }
  return events;
}

async function benchOpening(): Promise<void> {
  const folder = join(scratch, "season");
  const disk = realDisk();
  disk.makeFolder(folder);
  const { journal } = openJournal(disk, folder, { year: () => 2027 });
  const state = { ...initialState(), zone: "America/Denver" };
  const events = await season();
  for (let i = 0; i < events.length; i += 500) {
    const kept = journal.append(events.slice(i, i + 500).map((event) => recordOf(state, event)));
    if (!kept.ok) throw new Error(kept.message);
  }
  const path = join(folder, "journal-2027.jsonl");
  const bytes = fs.statSync(path).size;
  const ours: number[] = [];
  const bare: number[] = [];
  for (let i = 0; i < OPENINGS; i++) {
    bare.push(
      timed(() => {
        const objects: unknown[] = [];
        for (const line of fs.readFileSync(path, "utf8").split("\n")) {
          if (line) objects.push(JSON.parse(line));
        }
        if (objects.length !== EVENTS + 1) throw new Error("lines are missing");
      }),
    );
    ours.push(
      timed(() => {
        const opened = openJournal(disk, folder, { year: () => 2027, format: KITCHEN_FORMAT });
        const lived = replay(eventsOf(opened.records));
        if (lived.history.length !== EVENTS) throw new Error("events are missing");
      }),
    );
  }
  const [a, b] = [percentile(ours, 0.5), percentile(bare, 0.5)];
  const size = `${Math.round(bytes / EVENTS)} bytes a line`;
  const bareText = `bare JSON.parse ${b.toFixed(0)} ms: ${(a / b).toFixed(2)}x`;
  console.log(`opening 100,000  ${a.toFixed(0)} ms (${size}), ${bareText} (at most 2.5)`);
}

const model = cpus()[0]?.model ?? "unknown";
/**
 * 200 clocks due within a few seconds, compared with as many bare timers due at the same moments.
 */
async function benchLateness(): Promise<void> {
  const { session } = openSession({
    clock: realClock(),
    disk: realDisk(),
    folder: join(scratch, "clocks"),
    voice: SILENT,
    library,
    version: "bench",
    rehearsal: true,
    setUp: [{ type: "kitchen-set", altitudeFt: 6200, t: 0 }],
    onLines: () => {},
  });
  session.tick();
  const random = seededRandom(7);
  const waits = Array.from({ length: 200 }, () => 2 + random() * 4);
  session.setDown(
    waits.map((seconds, i) => {
      return { type: "timer-set", timer: `T${i}`, label: null, minutes: seconds / 60, t: 0 };
    }),
  );
  await new Promise((resolve) => setTimeout(resolve, 7000));
  const ours = historyOf(session.state).flatMap((event) =>
    event.type === "due" && event.key.startsWith("T") ? [event.w - event.t] : [],
  );
  session.close();
  const bare: number[] = [];
  for (const seconds of waits) {
    const due = performance.now() + seconds * 1000;
    setTimeout(() => bare.push(performance.now() - due), seconds * 1000);
  }
  await new Promise((resolve) => setTimeout(resolve, 7000));
  const [a, b] = [percentile(ours, 0.99), percentile(bare, 0.99)];
  console.log(
    `lateness p99     ${a.toFixed(1)} ms over ${ours.length} clocks, ` +
      `bare setTimeout ${b.toFixed(1)} ms: ${(a - b).toFixed(1)} ms more (at most 25)`,
  );
}

console.log(`${model}, ${cpus().length} cores, ${platform()}, Node ${process.version}`);
benchVersion();
await benchOpening();
await benchLateness();
fs.rmSync(scratch, { recursive: true, force: true });
