/**
 * The built program against real faults, for so many seconds: kills at random moments, a full and a
 * read-only disk, a terminal that goes away or shrinks to one cell, a stop and a go-on, a closed
 * output, a second program. After each the journal is read again and everything that was answered
 * must be in it.
 *
 *     node tests/simulation/real-faults.mjs [--seconds 60] [--seed S] [--only kill]
 */
import { execFileSync, spawn, spawnSync } from "node:child_process";
import * as fs from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { parseArgs } from "node:util";

const { values } = parseArgs({
  options: {
    seconds: { type: "string", default: "60" },
    seed: { type: "string", default: String(Date.now() % 1_000_000) },
    only: { type: "string" },
  },
});
const PROGRAM = join(import.meta.dirname, "../../dist/brinebell.js");
if (!fs.existsSync(PROGRAM)) {
  console.error("dist/brinebell.js is missing; build it first: npm run build");
  process.exit(2);
}
const ROOT = process.getuid?.() === 0 && process.platform === "linux";
const HAS_TMUX = spawnSync("tmux", ["-V"]).status === 0;

let state = Number(values.seed) >>> 0;
/** 0 up to 1; the same seed gives the same kills, as far as a real machine can. */
function chance() {
  state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
  return state / 4294967296;
}
const wait = (ms) => new Promise((resolve) => setTimeout(resolve, ms));

class Fault extends Error {}
function must(holds, message) {
  if (!holds) throw new Fault(message);
}

async function until(test, message, ms = 15_000) {
  for (const end = Date.now() + ms; !test(); await wait(10)) must(Date.now() < end, message);
}

/** The program as lines over pipes, with what it printed. */
function open(folder, args = []) {
  const child = spawn(
    process.execPath,
    [PROGRAM, "--plain", "--silent", "--home", folder, ...args],
    {
      stdio: ["pipe", "pipe", "pipe"],
      env: { ...process.env, TZ: "America/Denver" },
    },
  );
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
function note(kitchen) {
  kitchen.name ??= ++opened;
  const name = `mark-${kitchen.name}-${++kitchen.sent}`;
  kitchen.child.stdin.write(`note ${name}\n`);
  return name;
}

async function answered(kitchen, name) {
  await until(() => kitchen.answered.has(name), `no answer to ${name}: ${kitchen.out.slice(-300)}`);
}

/** Reads the journal as plain JSON: numbers without a gap, and every name that must be in it. */
function verify(folder, names, closed) {
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

async function close(kitchen, code = 0) {
  kitchen.child.stdin.end();
  await kitchen.ended;
  must(kitchen.code === code, `it ended with ${kitchen.code}: ${kitchen.err}`);
}

let kills = 0;
/** One folder is killed over and over, so that each opening finds what a kill has left. */
async function kill(folder) {
  const names = new Set();
  for (let round = 0; round < 4; round++) {
    const kitchen = open(folder);
    if (chance() < 0.7) await answered(kitchen, note(kitchen));
    if (round === 0) kitchen.child.stdin.write("we're at 6200 feet\n");
    const many = 1 + Math.floor(chance() * 30);
    for (let count = 0; count < many; count++) note(kitchen);
    if (chance() < 0.5)
      kitchen.child.stdin.write("set a timer for 20 minutes\nstart the dilly beans\n");
    await wait(chance() * 250);
    kitchen.child.kill("SIGKILL");
    await kitchen.ended;
    kills += 1;
    for (const name of kitchen.answered) names.add(name);
    if (fs.existsSync(folder)) verify(folder, names, false);
  }
  const last = open(folder);
  const name = note(last);
  await answered(last, name);
  must(!/damaged/.test(last.out), `it found damage: ${last.out}`);
  await close(last);
  verify(folder, [...names, name], true);
}

/** A file system of its own, of so many bytes; the answer takes it away again. */
function mount(folder, bytes) {
  fs.mkdirSync(folder, { recursive: true, mode: 0o700 });
  execFileSync("mount", ["-t", "tmpfs", "-o", `size=${bytes},mode=700`, "tmpfs", folder]);
  return () => execFileSync("umount", ["-l", folder]);
}

async function full(folder) {
  const away = mount(folder, "256k");
  try {
    const kitchen = open(folder);
    await answered(kitchen, note(kitchen));
    const filler = join(folder, "filler");
    const file = fs.openSync(filler, "w");
    try {
      for (const size of [65536, 4096, 1]) for (;;) fs.writeSync(file, Buffer.alloc(size));
    } catch (error) {
      must(error.code === "ENOSPC", `no room expected, not ${error.code}`);
    }
    fs.closeSync(file);
    for (let count = 0; count < 40; count++) note(kitchen);
    await until(() => /not recorded/i.test(kitchen.out), "a full disk is not told");
    must(kitchen.code === undefined, "a full disk ended the program");
    fs.rmSync(filler);
    await until(
      () => /written again/.test(kitchen.out),
      "it does not say that the log is written again",
    );
    await answered(kitchen, note(kitchen));
    await close(kitchen);
    verify(folder, kitchen.answered, true);
  } finally {
    away();
  }
}

async function readOnly(folder) {
  let away = () => {};
  if (ROOT) {
    away = mount(folder, "256k");
    execFileSync("mount", ["-o", "remount,ro", folder]);
  } else {
    fs.mkdirSync(folder, { recursive: true });
    fs.chmodSync(folder, 0o500);
  }
  try {
    const kitchen = open(folder);
    await kitchen.ended;
    must(kitchen.code === 3, `a read-only folder gives ${kitchen.code}`);
    must(/EROFS|EACCES/.test(kitchen.err), "a read-only folder is not told");
  } finally {
    away();
  }
}

async function signalled(folder, signal, code) {
  const kitchen = open(folder);
  const name = note(kitchen);
  await answered(kitchen, name);
  kitchen.child.kill(signal);
  await kitchen.ended;
  must(kitchen.code === code, `${signal} gives ${kitchen.code}`);
  verify(folder, [name], true);
}

async function standStill(folder) {
  const kitchen = open(folder);
  await answered(kitchen, note(kitchen));
  kitchen.child.stdin.write("set a timer for one second\n");
  kitchen.child.kill("SIGSTOP");
  await wait(4000);
  kitchen.child.kill("SIGCONT");
  await answered(kitchen, note(kitchen));
  await until(
    () => /timer/i.test(kitchen.out.split("alarm:")[1] ?? ""),
    "a timer over a stop does not ring",
  );
  await close(kitchen);
  verify(folder, kitchen.answered, true);
}

async function outputClosed(folder) {
  const kitchen = open(folder);
  const name = note(kitchen);
  await answered(kitchen, name);
  kitchen.child.stdout.destroy();
  for (let count = 0; count < 20 && kitchen.code === undefined; count++) {
    note(kitchen);
    await wait(20);
  }
  kitchen.child.stdin.end();
  await Promise.race([kitchen.ended, wait(10_000)]);
  must(kitchen.code === 0, `without an output it ends with ${kitchen.code}: ${kitchen.err}`);
  verify(folder, [name], true);
}

async function second(folder) {
  const first = open(folder);
  await answered(first, note(first));
  const other = open(folder);
  other.child.stdin.end("note mark-0-1\n");
  await other.ended;
  must(/open/.test(other.err), `the second is not told: ${other.err}`);
  await close(first);
  verify(folder, [...first.answered, "mark-0-1"], true);
}

/** The screen in a terminal of one cell, and in one that goes away. */
async function terminal(folder) {
  const socket = `brinebell-${process.pid}`;
  const tmux = (...args) => spawnSync("tmux", ["-L", socket, ...args], { encoding: "utf8" });
  const command = `${process.execPath} ${PROGRAM} --silent --home ${folder}`;
  tmux("new-session", "-d", "-s", "k", "-x", "100", "-y", "40", command);
  try {
    const screen = () => tmux("capture-pane", "-p", "-t", "k").stdout ?? "";
    await until(() => /feet|altitude/i.test(screen()), `no screen: ${screen()}`);
    tmux("send-keys", "-t", "k", "we're at 6200 feet", "Enter");
    for (const [x, y] of [
      [1, 1],
      [2, 300],
      [300, 2],
      [40, 12],
      [100, 40],
    ]) {
      tmux("resize-window", "-t", "k", "-x", String(x), "-y", String(y));
      await wait(150);
    }
    tmux("send-keys", "-t", "k", "note mark-0-2", "Enter");
    await until(() => /mark-0-2/.test(screen()), `it does not answer after the sizes: ${screen()}`);
    await wait(300);
  } finally {
    tmux("kill-server");
  }
  await until(
    () => !fs.existsSync(join(folder, "lock")),
    "a terminal that went away leaves it open",
  );
  verify(folder, ["mark-0-2"], true);
}

const CASES = {
  kill,
  full: ROOT ? full : undefined,
  readOnly,
  hangup: (folder) => signalled(folder, "SIGHUP", 129),
  terminated: (folder) => signalled(folder, "SIGTERM", 143),
  interrupted: (folder) => signalled(folder, "SIGINT", 130),
  standStill,
  outputClosed,
  second,
  terminal: HAS_TMUX ? terminal : undefined,
};

const names = Object.keys(CASES).filter((name) => !values.only || name === values.only);
const played = {};
const failures = [];
const end = Date.now() + Number(values.seconds) * 1000;
console.log(`real faults, seed ${values.seed}`);
for (let turn = 0; turn < names.length || Date.now() < end; turn++) {
  // Each once, and then kills for the rest of the time, with another now and then.
  const first = names[turn];
  const name =
    first ?? (names.includes("kill") && chance() < 0.8 ? "kill" : names[turn % names.length]);
  const run = CASES[name];
  if (!run) {
    played[name] = "skipped here";
    if (first === undefined) await wait(1);
    continue;
  }
  const base = fs.mkdtempSync(join(tmpdir(), "real-faults-"));
  try {
    await run(join(base, "home"));
    played[name] = (played[name] ?? 0) + 1;
  } catch (error) {
    failures.push(`${name}: ${error instanceof Fault ? error.message : error.stack}`);
    console.error(`FAILED ${failures.at(-1)}\n  (its folder: ${base})`);
    if (failures.length > 5) break;
    continue;
  }
  fs.rmSync(base, { recursive: true, force: true });
}
for (const [name, count] of Object.entries(played)) console.log(`  ${name}: ${count}`);
console.log(`${kills} kills survived; ${failures.length} failed`);
process.exit(failures.length === 0 ? 0 : 1);
