import { type ChildProcess, execFileSync, spawn } from "node:child_process";
import { chmodSync, existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { buildSync } from "esbuild";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openJournal } from "../../src/journal/open-journal.ts";
import { readJournal } from "../../src/journal/read-journal.ts";
import { realDisk } from "../../src/journal/real-disk.ts";
import { bootIdOfThisMachine } from "../../src/session/time/real-clock.ts";

const scratch = mkdtempSync(join(tmpdir(), "real-faults-"));
const program = join(scratch, "appending-child.mjs");
const bootId = bootIdOfThisMachine();

beforeAll(() => {
  const entry = join(import.meta.dirname, "appending-child.ts");
  const format = { bundle: true, platform: "node", format: "esm" } as const;
  buildSync({ entryPoints: [entry], outfile: program, ...format });
});
afterAll(() => rmSync(scratch, { recursive: true, force: true }));

/** A child's lines as they arrive; `whole` are those with their line end. */
function begin(folder: string): {
  child: ChildProcess;
  lines: () => string[];
  gone: Promise<void>;
} {
  const child = spawn(process.execPath, [program, folder, bootId]);
  let heard = "";
  child.stdout.on("data", (chunk) => {
    heard += chunk;
  });
  const gone = new Promise<void>((resolve) => child.on("close", () => resolve()));
  return { child, lines: () => heard.split("\n").slice(0, -1), gone };
}

async function until(holds: () => boolean): Promise<void> {
  for (let left = 1000; left > 0 && !holds(); left -= 1) {
    await new Promise((resolve) => setTimeout(resolve, 10));
  }
  expect(holds()).toBe(true);
}

describe("a program killed while it appends", () => {
  it("loses nothing it had acknowledged, and leaves a lock that the next one takes", async () => {
    const folder = join(scratch, "killed");
    let known = 0;
    for (let kill = 0; kill < 12; kill += 1) {
      const { child, lines, gone } = begin(folder);
      await until(() => lines().length > 1);
      await new Promise((resolve) => setTimeout(resolve, (kill * 13) % 90));
      child.kill("SIGKILL");
      await gone;
      expect(lines()[0]).toMatch(/^open (new|sound|torn)$/);
      const acknowledged = Number(lines().at(-1));
      expect(acknowledged).toBeGreaterThan(known);
      const { records, damages, end } = readJournal(realDisk(), folder);
      expect(damages).toEqual([]);
      expect(end.n).toBeGreaterThanOrEqual(acknowledged);
      expect(records.map(({ n }) => n)).toEqual(Array.from({ length: end.n }, (_, i) => i + 1));
      known = end.n;
    }
    expect(known).toBeGreaterThan(100);
  });
});

describe("several programs that open the same folder at once", () => {
  it("one writes and the others hear who, even over a dead program's lock", async () => {
    const folder = join(scratch, "raced");
    for (let round = 0; round < 4; round += 1) {
      const racers = Array.from({ length: 4 }, () => begin(folder));
      await until(() => racers.every(({ lines }) => lines().length > 0));
      const [winner, ...more] = racers.filter(({ lines }) => lines()[0]?.startsWith("open"));
      expect([winner !== undefined, more.length]).toEqual([true, 0]);
      for (const { lines } of racers.filter((racer) => racer !== winner)) {
        expect(lines()[0]).toBe(`refused: ${lines()[0]?.slice(9)}`);
        expect(lines()[0]).toContain(`process ${winner?.child.pid} has this kitchen open`);
      }
      winner?.child.kill("SIGKILL");
      await Promise.all(racers.map(({ gone }) => gone));
      expect(readJournal(realDisk(), folder).damages).toEqual([]);
      expect(readdirSync(folder).filter((name) => name.startsWith("lock"))).toEqual(["lock"]);
    }
  });
});

/** A small disk of its own, where this may be had. */
function mountSmall(folder: string): boolean {
  try {
    mkdirSync(folder);
    const options = ["-t", "tmpfs", "-o", "size=64k,mode=700", "tmpfs", folder];
    execFileSync("mount", options, { stdio: "ignore" });
    return true;
  } catch {
    return false;
  }
}

describe("a disk that is really full", () => {
  const small = join(scratch, "small");
  const mounted = process.platform === "linux" && process.getuid?.() === 0 && mountSmall(small);
  afterAll(() => {
    if (mounted) execFileSync("umount", [small]);
  });

  it.runIf(mounted)("refuses as full, keeps the rest in memory and writes it once freed", () => {
    const disk = realDisk();
    const folder = join(small, "journal");
    disk.makeFolder(folder);
    disk.replace(join(small, "ballast"), Buffer.alloc(20_000));
    const { journal } = openJournal(disk, folder, { year: () => 2027 });
    const texts = Array.from({ length: 60 }, (_, i) => `${i} ${"x".repeat(900)}`);
    const answers = texts.map((say) => journal.append([{ say }]));
    expect(answers.at(-1)).toMatchObject({ ok: false, why: "full" });
    expect(journal.pending).toBeGreaterThan(5);
    disk.remove(join(small, "ballast"));
    expect(journal.retry()).toEqual({ ok: true, lastN: 60 });
    journal.close();
    const again = openJournal(disk, folder, { year: () => 2027 });
    expect([again.found, again.records.map(({ say }) => say)]).toEqual(["sound", texts]);
    disk.remove(join(folder, "journal-2027.jsonl"));
  });

  it.runIf(mounted)("never replaces a whole file by a part", () => {
    const disk = realDisk();
    const path = join(small, "settings");
    const whole = Buffer.alloc(20_000, "a");
    expect(disk.replace(path, whole).ok).toBe(true);
    expect(disk.replace(path, Buffer.alloc(61_440, "b"))).toMatchObject({ ok: false, why: "full" });
    const read = disk.read(path);
    expect(read.ok && whole.equals(read.bytes)).toBe(true);
    expect(readdirSync(small).filter((name) => name.includes(".new-"))).toEqual([]);
  });
});

describe("a folder that may not be written", () => {
  it.skipIf(process.platform === "win32" || process.getuid?.() === 0)(
    "is read, and appends are refused and kept in memory",
    () => {
      const folder = join(scratch, "read-only");
      mkdirSync(folder);
      chmodSync(folder, 0o500);
      const { found, journal } = openJournal(realDisk(), folder, { year: () => 2027 });
      expect(found).toBe("new");
      expect(journal.append([{ say: "a" }])).toMatchObject({ ok: false, why: "denied" });
      expect(journal.pending).toBe(1);
      chmodSync(folder, 0o700);
      expect(journal.retry()).toEqual({ ok: true, lastN: 1 });
      expect(existsSync(join(folder, "journal-2027.jsonl"))).toBe(true);
    },
  );
});
