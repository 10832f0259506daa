/** The built program on a disk that is full, read-only or slow. */
import { execFileSync, spawnSync } from "node:child_process";
import * as fs from "node:fs";
import { join } from "node:path";
import {
  answered,
  close,
  fill,
  mount,
  must,
  note,
  open,
  PROGRAM,
  ROOT,
  until,
  verify,
  wait,
} from "./built-program.mjs";

/** Each sync of the slow disk takes so long, ms. */
const SYNC_MS = 200;
/** A clock rings at most so many syncs late, and what a small busy machine adds, ms. */
const SYNCS = 12;
const BUSY_MS = 2000;

const SLOW = [
  ...["strace", "-f", "--seccomp-bpf", "-o", "/dev/null", "-e", "trace=fsync,fdatasync"],
  ...["-e", `inject=fsync,fdatasync:delay_enter=${SYNC_MS * 1000}`],
];

/** Whether system calls can be made slow here. */
export const HAS_STRACE = spawnSync(SLOW[0], [...SLOW.slice(1), "true"]).status === 0;

const goesOn = (kitchen) => must(kitchen.code === undefined, "it ended the program");

async function saidAndNotClaimed(kitchen, name) {
  await until(() => /not recorded/i.test(kitchen.out), "it is not told");
  await answered(kitchen, name);
  const answer = kitchen.out.split(`said: note ${name}`)[1] ?? "";
  must(!/noted/i.test(answer), `it claims to have written: ${answer}`);
  goesOn(kitchen);
}

const writtenAgain = (kitchen) =>
  until(() => /written again/.test(kitchen.out), `not written again: ${kitchen.out}`);

export async function full(folder) {
  const away = mount(folder, "256k");
  try {
    const kitchen = open(folder);
    await answered(kitchen, note(kitchen));
    const makeRoom = fill(folder);
    for (let count = 0; count < 40; count++) note(kitchen);
    await until(() => /not recorded/i.test(kitchen.out), "a full disk is not told");
    goesOn(kitchen);
    makeRoom();
    await writtenAgain(kitchen);
    await answered(kitchen, note(kitchen));
    await close(kitchen);
    verify(folder, kitchen.answered, true);
  } finally {
    away();
  }
}

/** No room for as much as the lock: it goes on in memory, and writes all of it later. */
export async function fullAtOpening(folder) {
  const away = mount(folder, "256k");
  try {
    const makeRoom = fill(folder);
    const kitchen = open(folder);
    const first = note(kitchen);
    await saidAndNotClaimed(kitchen, first);
    must(fs.readdirSync(folder).join() === "filler", "something was written without the lock");
    makeRoom();
    await writtenAgain(kitchen);
    const second = note(kitchen);
    await answered(kitchen, second);
    const words = ["tell", "--home", folder, "note mark-0-4"];
    const told = spawnSync(process.execPath, [PROGRAM, ...words], { encoding: "utf8" });
    must(told.status === 0, `it does not listen to others: ${told.stderr}`);
    await close(kitchen);
    verify(folder, [first, second, "mark-0-4"], true);
  } finally {
    away();
  }
}

/** There was no room at the opening, and then another program had the folder first. */
export async function takenMeanwhile(folder) {
  const away = mount(folder, "256k");
  try {
    const makeRoom = fill(folder);
    const first = open(folder);
    const lost = note(first);
    await saidAndNotClaimed(first, lost);
    first.child.kill("SIGSTOP");
    makeRoom();
    const second = open(folder);
    const kept = note(second);
    await answered(second, kept);
    first.child.kill("SIGCONT");
    await until(() => /has this kitchen open/.test(first.out), `it is not told: ${first.out}`);
    await answered(first, note(first));
    await close(first, 3);
    must(/not all recorded/.test(first.err), `the end does not say it: ${first.err}`);
    await answered(second, note(second));
    await close(second);
    verify(folder, second.answered, true);
    const files = fs.readdirSync(folder).filter((name) => name.startsWith("journal-"));
    const text = files.map((name) => fs.readFileSync(join(folder, name), "utf8")).join("");
    must(!text.includes(lost), "it wrote into the other's journal");
  } finally {
    away();
  }
}

export async function readOnly(folder) {
  fs.mkdirSync(folder, { recursive: true, mode: 0o700 });
  const away = ROOT ? mount(folder, "256k") : () => {};
  const lock = (on) => {
    if (ROOT) execFileSync("mount", ["-o", `remount,${on ? "ro" : "rw"}`, folder]);
    else fs.chmodSync(folder, on ? 0o500 : 0o700);
  };
  try {
    lock(true);
    const kitchen = open(folder);
    const first = note(kitchen);
    await saidAndNotClaimed(kitchen, first);
    must(/EROFS|EACCES/.test(kitchen.out), `it does not say why: ${kitchen.out}`);
    must(fs.readdirSync(folder).length === 0, "something was written");
    lock(false);
    await writtenAgain(kitchen);
    await close(kitchen);
    verify(folder, [first], true);
  } finally {
    away();
  }
}

/** Nothing is answered before it is on the disk; clocks are no later than the disk is slow. */
export async function slowDisk(folder) {
  const kitchen = open(folder, SLOW);
  await answered(kitchen, note(kitchen));
  for (let turn = 0; turn < 3; turn++) {
    const sent = performance.now();
    const name = note(kitchen);
    await answered(kitchen, name);
    const took = performance.now() - sent;
    must(took >= SYNC_MS, `answered after ${took.toFixed(0)} ms, before it could be on the disk`);
  }
  const set = performance.now();
  kitchen.child.stdin.write("set a timer for two seconds\n");
  await wait(300);
  const asked = performance.now();
  kitchen.child.stdin.write("how long on the timer\n");
  await until(() => /said: how long[\s\S]*answer: /.test(kitchen.out), "a question waits", BUSY_MS);
  const questionMs = performance.now() - asked;
  must(questionMs < SYNCS * SYNC_MS + BUSY_MS, `a question took ${questionMs} ms`);
  await until(() => /alarm: .*timer/.test(kitchen.out), "the timer does not ring");
  const lateMs = performance.now() - set - 2000;
  must(lateMs < SYNCS * SYNC_MS + BUSY_MS, `the timer rang ${lateMs.toFixed(0)} ms late`);
  await close(kitchen);
  verify(folder, kitchen.answered, true);
}

/** The screen takes keys while every sync takes its time. */
export async function slowScreen(folder) {
  const socket = `brinebell-slow-${process.pid}`;
  const tmux = (...args) => spawnSync("tmux", ["-L", socket, ...args], { encoding: "utf8" });
  const program = `${process.execPath} ${PROGRAM} --silent --home ${folder}`;
  tmux("new-session", "-d", "-s", "k", "-x", "100", "-y", "40", `${SLOW.join(" ")} ${program}`);
  try {
    const screen = () => tmux("capture-pane", "-p", "-t", "k").stdout ?? "";
    await until(() => /feet|altitude/i.test(screen()), `no screen: ${screen()}`);
    tmux("send-keys", "-t", "k", "set a timer for nine minutes", "Enter", "what is run");
    await until(() => /> what is run/.test(screen()), `keys wait: ${screen()}`, BUSY_MS);
    tmux("send-keys", "-t", "k", "ning", "Enter");
    // A kitchen in which a timer runs outlives its terminal; this one is to close with it.
    tmux("send-keys", "-t", "k", "cancel the timer", "Enter", "note mark-0-5", "Enter");
    await until(() => /mark-0-5/.test(screen()), `no answer: ${screen()}`);
    await wait(SYNCS * SYNC_MS);
  } finally {
    tmux("kill-server");
  }
  await until(() => !fs.existsSync(join(folder, "lock")), "it was left open");
  verify(folder, ["mark-0-5"], true);
}
