/**
 * The built program against real faults, for so many seconds: kills at random moments, a full and a
 * read-only disk, a terminal that goes away or shrinks to one cell, a stop and a go-on, a closed
 * output, a second program. After each the journal is read again and everything that was answered
 * must be in it.
 *
 *     node tests/simulation/real-faults.mjs [--seconds 60] [--seed S] [--only kill]
 */
import { spawnSync } from "node:child_process";
import * as fs from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { parseArgs } from "node:util";
import {
  answered,
  close,
  Fault,
  HAS_TMUX,
  must,
  note,
  open,
  PROGRAM,
  ROOT,
  until,
  verify,
  wait,
} from "./built-program.mjs";
import {
  full,
  fullAtOpening,
  HAS_STRACE,
  readOnly,
  slowDisk,
  slowScreen,
  takenMeanwhile,
} from "./disk-faults.mjs";

const { values } = parseArgs({
  options: {
    seconds: { type: "string", default: "60" },
    seed: { type: "string", default: String(Date.now() % 1_000_000) },
    only: { type: "string" },
  },
});
let state = Number(values.seed) >>> 0;
/** 0 up to 1; the same seed gives the same kills, as far as a real machine can. */
function chance() {
  state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
  return state / 4294967296;
}

let kills = 0;
let pairs = 0;
const PAIRS = 4;
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

/** Two programs at the same instant, over and over, also where one that was killed left a lock. */
async function twoAtOnce(folder) {
  const names = [];
  for (let round = 0; round < PAIRS; round++) {
    const pair = [open(folder), open(folder)];
    const marks = pair.map(note);
    const isTeller = (one) => /goes to that kitchen/.test(one.err);
    await until(() => pair.some(isTeller), `nobody is told: ${pair.map((one) => one.err)}`);
    const teller = pair.find(isTeller);
    const writer = pair.find((one) => one !== teller);
    await until(
      () => marks.every((mark) => writer.answered.has(mark)),
      `not all reached the writer: ${writer.out} / ${teller.err}`,
    );
    must(!isTeller(writer), "both were told that the other writes");
    await close(teller);
    names.push(...marks);
    pairs += 1;
    if (round % 2 === 1) await close(writer);
    else {
      writer.child.kill("SIGKILL");
      await writer.ended;
    }
    verify(folder, names, round % 2 === 1);
  }
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
  fullAtOpening: ROOT ? fullAtOpening : undefined,
  takenMeanwhile: ROOT ? takenMeanwhile : undefined,
  readOnly,
  slowDisk: HAS_STRACE ? slowDisk : undefined,
  slowScreen: HAS_STRACE && HAS_TMUX ? slowScreen : undefined,
  hangup: (folder) => signalled(folder, "SIGHUP", 129),
  terminated: (folder) => signalled(folder, "SIGTERM", 143),
  interrupted: (folder) => signalled(folder, "SIGINT", 130),
  standStill,
  outputClosed,
  second,
  twoAtOnce,
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
console.log(`${kills} kills survived, ${pairs} pairs raced; ${failures.length} failed`);
process.exit(failures.length === 0 ? 0 : 1);
