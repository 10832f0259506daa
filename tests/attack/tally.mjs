/** What every attack is made of: cases that hold or do not, counted and named. */
import { spawnSync } from "node:child_process";
import * as fs from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

export const PROGRAM =
  process.env.BRINEBELL_PROGRAM ?? join(import.meta.dirname, "../../dist/brinebell.js");

export const wait = (ms) => new Promise((resolve) => setTimeout(resolve, ms));

export function must(holds, message) {
  if (!holds) throw new Error(message);
}

export async function until(test, message, ms = 10_000) {
  for (const end = performance.now() + ms; !(await test()); await wait(20)) {
    must(performance.now() < end, message);
  }
}

/** The built program, run to its end; one that does not end in ten seconds has status null. */
export function run(args, { input = "", env = {}, ms = 10_000 } = {}) {
  const options = { input, encoding: "utf8", timeout: ms, killSignal: "SIGKILL" };
  return spawnSync(process.execPath, [PROGRAM, ...args], {
    ...options,
    env: { ...process.env, TZ: "America/Denver", ...env },
  });
}

/** The events in a folder's journal, whatever can be read of them, in the order of their files. */
export function journal(folder) {
  const names = fs.readdirSync(folder).filter((name) => /^journal-.*\.jsonl$/.test(name));
  const files = names.sort().map((name) => join(folder, name));
  const lines = files.flatMap((path) => {
    const isFile = fs.statSync(path, { throwIfNoEntry: false })?.isFile();
    return isFile ? fs.readFileSync(path, "utf8").split("\n") : [];
  });
  return lines.flatMap((line) => {
    try {
      const event = JSON.parse(line);
      return typeof event.n === "number" ? [event] : [];
    } catch {
      return [];
    }
  });
}

/** One attack's count. A case is tried once, in a folder of its own that is taken away again. */
export class Tally {
  tried = 0;
  held = 0;
  failures = [];
  notes = [];

  constructor(short, minutes) {
    this.short = short;
    /** How long `windows` looks, where the call says so. */
    this.minutes = minutes;
  }

  async case(name, does) {
    const home = fs.mkdtempSync(join(tmpdir(), "brinebell-attack-"));
    const ends = [];
    this.tried += 1;
    try {
      await does(home, (end) => ends.push(end));
      this.held += 1;
    } catch (error) {
      this.failures.push(`${name}: ${error.message.slice(0, 2000)}`);
    } finally {
      for (const end of ends) await end();
      fs.rmSync(home, { recursive: true, force: true, maxRetries: 20, retryDelay: 50 });
    }
  }

  /** A figure that was measured. */
  note(text) {
    this.notes.push(text);
  }
}
