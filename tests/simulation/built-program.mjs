/** The built program as tests of real faults run it, and what its journal must hold afterwards. */
import { execFileSync, spawn, spawnSync } from "node:child_process";
import * as fs from "node:fs";
import { join } from "node:path";

export const PROGRAM = join(import.meta.dirname, "../../dist/brinebell.js");
if (!fs.existsSync(PROGRAM)) {
  console.error("dist/brinebell.js is missing; build it first: npm run build");
  process.exit(2);
}
export const ROOT = process.getuid?.() === 0 && process.platform === "linux";
export const HAS_TMUX = spawnSync("tmux", ["-V"]).status === 0;

export const wait = (ms) => new Promise((resolve) => setTimeout(resolve, ms));

export class Fault extends Error {}
export function must(holds, message) {
  if (!holds) throw new Fault(message);
}

export async function until(test, message, ms = 15_000) {
  for (const end = Date.now() + ms; !test(); await wait(10)) must(Date.now() < end, message);
}

/** The program as lines over pipes, with what it printed; `under` is a command that runs it. */
export function open(folder, under = []) {
  const words = [...under, process.execPath, PROGRAM, "--plain", "--silent", "--home", folder];
  const child = spawn(words[0], words.slice(1), {
    stdio: ["pipe", "pipe", "pipe"],
    env: { ...process.env, TZ: "America/Denver" },
  });
  const kitchen = { child, out: "", err: "", code: undefined, answered: new Set(), sent: 0 };
  child.stdout.on("data", (data) => {
    kitchen.out += data;
    for (const [, name] of kitchen.out.matchAll(/said: note (mark-\d+-\d+)[\s\S]*?answer: /g)) {
      kitchen.answered.add(name);
    }
  });
  child.stderr.on("data", (data) => {
    kitchen.err += data;
  });
  child.stdin.on("error", () => {});
  child.stdout.on("error", () => {});
  kitchen.ended = new Promise((resolve) => {
    child.on("close", (code, signal) => {
      kitchen.code = signal ?? code;
      resolve();
    });
  });
  return kitchen;
}

let opened = 0;
export function note(kitchen) {
  kitchen.name ??= ++opened;
  const name = `mark-${kitchen.name}-${++kitchen.sent}`;
  kitchen.child.stdin.write(`note ${name}\n`);
  return name;
}

export async function answered(kitchen, name) {
  await until(() => kitchen.answered.has(name), `no answer to ${name}: ${kitchen.out.slice(-300)}`);
}

/** Reads the journal as plain JSON: numbers without a gap, and every name that must be in it. */
export function verify(folder, names, closed) {
  const files = fs.readdirSync(folder).filter((name) => /^journal-.*\.jsonl$/.test(name));
  const rows = new Map();
  for (const file of files.sort()) {
    for (const line of fs.readFileSync(join(folder, file), "utf8").split("\n")) {
      try {
        const row = JSON.parse(line);
        if (typeof row.n === "number") rows.set(row.n, row);
      } catch {
        // What was cut short is not of interest here: what was answered is.
      }
    }
  }
  const text = JSON.stringify([...rows.values()]);
  for (const name of names)
    must(
      text.includes(`note ${name}`) || text.includes(`"${name}"`),
      `${name} was answered and is lost`,
    );
  const numbers = [...rows.keys()].sort((a, b) => a - b);
  for (const [at, n] of numbers.entries())
    must(n === at + 1, `the journal has no number ${at + 1}`);
  for (const file of files) {
    must((fs.statSync(join(folder, file)).mode & 0o077) === 0, `${file} is open to others`);
  }
  if (closed) must([...rows.values()].at(-1)?.type === "closed", "it was not closed in order");
  if (closed) must(!fs.existsSync(join(folder, "lock")), "the lock was left");
  const review = spawnSync(process.execPath, [PROGRAM, "review", "--json", "--home", folder]);
  must(review.status === 0, `review says ${review.status}: ${review.stderr}`);
  return numbers.length;
}

export async function close(kitchen, code = 0) {
  kitchen.child.stdin.end();
  await kitchen.ended;
  must(kitchen.code === code, `it ended with ${kitchen.code}: ${kitchen.err}`);
}

/** A file system of its own, of so many bytes; the answer takes it away again. */
export function mount(folder, bytes) {
  fs.mkdirSync(folder, { recursive: true, mode: 0o700 });
  execFileSync("mount", ["-t", "tmpfs", "-o", `size=${bytes},mode=700`, "tmpfs", folder]);
  return () => execFileSync("umount", ["-l", folder]);
}

/** Fills the folder's file system to the last byte; the answer makes room again. */
export function fill(folder) {
  const filler = join(folder, "filler");
  const file = fs.openSync(filler, "w");
  try {
    for (const size of [65536, 4096, 1]) {
      try {
        for (;;) fs.writeSync(file, Buffer.alloc(size));
      } catch (error) {
        must(error.code === "ENOSPC", `no room expected, not ${error.code}`);
      }
    }
  } finally {
    fs.closeSync(file);
  }
  return () => fs.rmSync(filler);
}
