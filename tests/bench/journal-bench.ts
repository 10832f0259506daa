/**
 * The journal compared with the least that could be done, in the same run: appending with a bare
 * write + fdatasync of the same bytes, opening with a bare read + JSON.parse of its lines. Printed
 * with the machine; never a timed test.
 */
import * as fs from "node:fs";
import { cpus, platform, tmpdir } from "node:os";
import { join } from "node:path";
import { takeLock } from "../../src/journal/lock.ts";
import { openJournal } from "../../src/journal/open-journal.ts";
import { realDisk } from "../../src/journal/real-disk.ts";
import { bootIdOfThisMachine } from "../../src/session/time/real-clock.ts";

const EVENTS = 100_000;
const APPENDS = 2000;
const WARM_UP = 200;
const OPENINGS = 9;

const scratch = fs.mkdtempSync(join(tmpdir(), "journal-bench-"));
const disk = realDisk();
const year = () => 2027;

/** An event of ordinary size, about 230 bytes as a line. */
function event(i: number): object {
  return {
    at: `2027-08-14T08:${String(i % 60).padStart(2, "0")}:12.123-06:00`,
    written: "2027-08-14T08:00:12.123-06:00",
    cmd: `c${i}`,
    type: "reading-taken",
    batch: `b-${i % 9}`,
    what: "temperature",
    value: 200 + (i % 13),
    unit: "F",
  };
}

function percentile(times: number[], share: number): number {
  const sorted = [...times].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? Number.NaN;
}

function timed(run: () => void): number {
  const startMs = performance.now();
  run();
  return performance.now() - startMs;
}

/** Appends and bare writes alternate, so that both meet the same disk. */
function benchAppend(): void {
  const folder = join(scratch, "append");
  const self = { pid: process.pid, bootId: bootIdOfThisMachine(), startedAt: "" };
  const taken = takeLock(disk, folder, self);
  if (!taken.ok) throw new Error(taken.message);
  const { journal } = openJournal(disk, folder, { year, owns: taken.lock.owns });
  journal.append([event(0)]);
  const path = join(folder, "journal-2027.jsonl");
  const line = fs.readFileSync(path).subarray(-230);
  const bare = fs.openSync(join(scratch, "bare"), "a", 0o600);
  const ours: number[] = [];
  const least: number[] = [];
  for (let i = 1; i <= APPENDS + WARM_UP; i += 1) {
    const record = event(i);
    const leastMs = timed(() => {
      fs.writeSync(bare, line);
      fs.fdatasyncSync(bare);
    });
    let ok = false;
    const oursMs = timed(() => {
      ok = journal.append([record]).ok;
    });
    if (!ok) throw new Error("an append was refused");
    if (i <= WARM_UP) continue;
    least.push(leastMs);
    ours.push(oursMs);
  }
  report("append + sync of one event, p50", percentile(ours, 0.5), percentile(least, 0.5), 1.3);
  report("append + sync of one event, p99", percentile(ours, 0.99), percentile(least, 0.99));
}

function benchOpening(): void {
  const folder = join(scratch, "open");
  const { journal } = openJournal(disk, folder, { year });
  const events: object[] = [];
  for (let i = 0; i < EVENTS; i += 10) {
    for (let k = i; k < i + 10; k += 1) events.push(event(k));
    if (!journal.append(events.splice(0)).ok) throw new Error("an append was refused");
  }
  const path = join(folder, "journal-2027.jsonl");
  const bytes = fs.statSync(path).size;
  console.log(`journal of ${EVENTS} events, ${(bytes / EVENTS).toFixed(0)} bytes a line`);
  const ours: number[] = [];
  const least: number[] = [];
  for (let i = 0; i < OPENINGS; i += 1) {
    globalThis.gc?.();
    least.push(timed(() => check(parseBare(path), EVENTS + 1)));
    globalThis.gc?.();
    ours.push(timed(() => check(openJournal(disk, folder, { year }).records.length, EVENTS)));
  }
  report("opening, first in this run", ours[0] ?? 0, least[0] ?? 0);
  report(
    "opening, p50, without the caller's fold",
    percentile(ours, 0.5),
    percentile(least, 0.5),
    2.5,
  );
}

function parseBare(path: string): number {
  const parsed: unknown[] = [];
  for (const line of fs.readFileSync(path, "utf8").split("\n")) {
    if (line !== "") parsed.push(JSON.parse(line));
  }
  return parsed.length;
}

function check(found: number, wanted: number): void {
  if (found !== wanted) throw new Error(`${found} lines instead of ${wanted}`);
}

function report(what: string, oursMs: number, leastMs: number, atMost?: number): void {
  const ratio = (oursMs / leastMs).toFixed(2);
  const limit = atMost ? ` (at most ${atMost})` : "";
  console.log(`${what}: ${oursMs.toFixed(3)} ms, bare ${leastMs.toFixed(3)} ms, ${ratio}x${limit}`);
}

try {
  console.log(`${platform()}, ${cpus().length} x ${cpus()[0]?.model}, node ${process.version}`);
  benchAppend();
  benchOpening();
} finally {
  fs.rmSync(scratch, { recursive: true, force: true });
}
