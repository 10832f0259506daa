/** Terminals that go away while something runs, windows on the kitchen that goes on, and words. */
import { spawnSync } from "node:child_process";
import { randomUUID } from "node:crypto";
import * as fs from "node:fs";
import { join } from "node:path";
import { Kitchen, rawly } from "./kitchen.mjs";
import { openOn, stall } from "./stalled-terminal.mjs";
import { journal, must, PROGRAM, run, until, wait } from "./tally.mjs";
import { PROMPT, Terminal } from "./terminal.mjs";

const dues = (home) => journal(home).filter(({ type }) => type === "due").length;
const says = (home, words) => JSON.stringify(journal(home)).split(words).length - 1;

function told(home, words) {
  const answer = run(["tell", "--home", home, words]);
  must(answer.status === 0, `tell ${words} gives ${answer.status}: ${answer.stderr}`);
  return answer.stdout;
}

/** The window of a second program on the same kitchen. */
async function glassOn(home, args = []) {
  const words = [process.execPath, PROGRAM, "--silent", "--home", home, ...args];
  const glass = new Terminal(words, { env: { TZ: "America/Denver" } });
  await glass.shows(args.length === 0 ? PROMPT : "crock");
  return glass;
}

const LOSSES = {
  "a hang-up": (terminal) => terminal.hangUp(),
  "SIGHUP alone": (terminal) => terminal.signal("HUP"),
  "a hang-up of a stalled one": async (terminal) => {
    await stall(terminal);
    terminal.hangUp();
  },
  "a hang-up where lines are typed": (terminal) => terminal.hangUp(),
};

/** Calls where only one side of the program is the terminal. */
const HALF_PIPED = {
  "its output goes through a pipe": '"$0" "$@" | cat >/dev/null; :',
  "its words come through a pipe": 'sleep 60 | "$0" "$@"; :',
};

async function halfPiped(tally) {
  for (const [name, call] of Object.entries(HALF_PIPED)) {
    await tally.case(`a timer rings after a hang-up where ${name}`, async (home, end) => {
      const words = [process.execPath, PROGRAM, "--silent", "--home", home];
      const terminal = new Terminal(["sh", "-c", call, ...words]);
      end(() => terminal.kill());
      await until(() => fs.existsSync(join(home, "tell", "protocol")), "it does not open");
      const { pid } = JSON.parse(fs.readFileSync(join(home, "lock"), "utf8"));
      end(() => spawnSync("kill", ["-9", pid]));
      told(home, "we're at 6200 feet");
      told(home, "set a timer for 3 seconds for the crock");
      terminal.hangUp();
      await until(() => dues(home) === 1, "the timer does not ring");
      told(home, "got it");
      await until(() => !fs.existsSync(join(home, "lock")), "it does not end");
      must(journal(home).at(-1).type === "closed", "the log is not closed");
    });
  }
}

export async function lostTerminal(tally) {
  for (const [name, loses] of Object.entries(LOSSES)) {
    await tally.case(`a timer rings after ${name}, and then it ends`, async (home, end) => {
      const terminal = await openOn(home, /lines/.test(name) ? ["--plain"] : []);
      end(() => terminal.kill());
      await terminal.say("set a timer for 4 seconds for the crock");
      await until(() => says(home, "crock") > 0, "no timer");
      await loses(terminal);
      await until(() => dues(home) === 1, "the timer does not ring");
      must(!terminal.ended, "it has ended");
      told(home, "note the lid is on");
      await wait(1500);
      must(!terminal.ended, "it ends while the alarm rings");
      told(home, "got it");
      await Promise.race([terminal.over, wait(5000)]);
      must(terminal.ended?.code === 0, `it ends with ${JSON.stringify(terminal.ended)}`);
      must(journal(home).at(-1).type === "closed", "the log is not closed");
      must(!fs.existsSync(join(home, "lock")), "the lock was left");
    });
  }
  await halfPiped(tally);
  await tally.case("an empty kitchen ends with its terminal", async (home, end) => {
    const terminal = await openOn(home);
    end(() => terminal.kill());
    terminal.hangUp();
    await Promise.race([terminal.over, wait(2000)]);
    must(terminal.ended && journal(home).at(-1).type === "closed", "it does not end in order");
  });
  await early(tally);
  await glasses(tally);
  await messages(tally);
}

async function glasses(tally) {
  await tally.case("windows on a kitchen without a face", async (home, end) => {
    const terminal = await openOn(home);
    end(() => terminal.kill());
    await terminal.say("set a timer for 9 minutes for the crock");
    await terminal.shows("crock timer");
    terminal.hangUp();
    const lock = fs.readFileSync(join(home, "lock"), "utf8");
    const [one, two] = [await glassOn(home), await glassOn(home)];
    const lines = await glassOn(home, ["--plain"]);
    for (const glass of [one, two, lines]) end(() => glass.kill());
    await one.shows(/crock timer[\s\S]*ends \d\d:\d\d:\d\d/i);
    await one.say("note the north crock is full");
    for (const glass of [one, two, lines]) await glass.shows("north crock is full");
    must(says(home, "north crock is full") === 1, "it is not in the log once");
    one.type("\u0003");
    one.type("\u0003");
    await Promise.race([one.over, wait(3000)]);
    must(one.ended?.code === 0, "a window does not close");
    await two.say("quit");
    await Promise.race([two.over, wait(3000)]);
    must(two.ended?.code === 0, "a window is not left by words");
    must(!terminal.ended, "the kitchen ended with its window");
    must(fs.readFileSync(join(home, "lock"), "utf8") === lock, "the lock moved");
    told(home, "cancel the crock timer");
    lines.type("\u0004");
    await Promise.race([terminal.over, wait(4000)]);
    must(terminal.ended?.code === 0, "it does not end when nothing is left");
  });
  await glassesInTrouble(tally);
}

async function early(tally) {
  await tally.case("a timer outlives a hang-up at the very opening", async (home, end) => {
    const before = await openOn(home);
    await before.say("set a timer for 9 minutes for the crock");
    await before.shows("crock timer");
    await before.kill();
    for (let turn = 0; turn < (tally.short ? 3 : 10); turn++) {
      const known = journal(home).length;
      const terminal = new Terminal([process.execPath, PROGRAM, "--silent", "--home", home]);
      end(() => terminal.kill());
      await until(() => journal(home).length > known, "it does not open");
      terminal.hangUp();
      await wait(1000);
      must(!terminal.ended, `it ends with ${JSON.stringify(terminal.ended)}`);
      await terminal.kill();
    }
  });
  await tally.case("a signal while it opens ends it in order", async (home) => {
    for (let turn = 0; turn < (tally.short ? 3 : 10); turn++) {
      const folder = join(home, `${turn}`);
      const kitchen = new Kitchen(folder);
      const isOpen = () => fs.existsSync(folder) && journal(folder).length > 0;
      await until(isOpen, "it does not open");
      kitchen.child.kill("SIGTERM");
      await kitchen.ended;
      must(kitchen.code === 143, `it ends with ${kitchen.code}`);
      must(journal(folder).at(-1).type === "closed", "the log is not closed");
      must(!fs.existsSync(join(folder, "lock")), "the lock was left");
    }
  });
  await tally.case("a window ended by a signal puts its terminal back", async (home, end) => {
    const terminal = await openOn(home);
    const glass = await glassOn(home);
    for (const one of [terminal, glass]) end(() => one.kill());
    glass.signal("TERM");
    await Promise.race([glass.over, wait(3000)]);
    must(glass.ended?.code === 143, `it ends with ${JSON.stringify(glass.ended)}`);
    await until(() => glass.raw.includes("\u001b[?1049l"), "the page stays", 2000);
    must(!terminal.ended, "the kitchen ended");
  });
}

async function glassesInTrouble(tally) {
  await tally.case("a window that takes nothing delays nobody", async (home, end) => {
    const terminal = await openOn(home);
    end(() => terminal.kill());
    const glass = await glassOn(home);
    end(() => glass.kill());
    await stall(glass);
    glass.signal("STOP");
    for (let at = 0; at < 40; at++) await terminal.say(`note crock ${at} has its weight on`);
    await terminal.say("set a timer for one second");
    await until(() => dues(home) === 1, "the timer does not ring");
    terminal.type("\t");
    await terminal.shows("crock 39 has its weight");
    glass.signal("CONT");
    glass.stall(false);
    await glass.shows("ALARM");
  });
  await tally.case("a kitchen that is killed ends its windows", async (home, end) => {
    const terminal = await openOn(home);
    end(() => terminal.kill());
    const glass = await glassOn(home);
    end(() => glass.kill());
    await terminal.kill();
    await Promise.race([glass.over, wait(3000)]);
    must(glass.ended, "the window stays");
    must(/was closed or is gone/.test(glass.raw), "it does not say so");
  });
  await tally.case("a window of another build gets lines", async (home, end) => {
    const terminal = await openOn(home);
    end(() => terminal.kill());
    const heard = await rawly(home, `\u0003${JSON.stringify({ build: "other" })}\n`, 400);
    const [first] = heard.split("\n");
    must(JSON.parse(first).kind === "lines" && !JSON.parse(first).view, `it gets ${first}`);
  });
}

async function messages(tally) {
  const message = (id, said, again = false) => `\u0002${JSON.stringify({ id, again, said })}\n`;
  const many = tally.short ? 20 : 200;
  await tally.case(`${many} messages, each sent three times, act once`, async (home, end) => {
    const terminal = await openOn(home);
    end(() => terminal.kill());
    for (let at = 0; at < many; at++) {
      const line = message(randomUUID(), `note mark ${at} is set`);
      const answers = await Promise.all([
        rawly(home, line, 3000),
        rawly(home, line, 3000),
        rawly(home, line.replace("false", "true"), 3000),
      ]);
      must(new Set(answers.filter((one) => one.startsWith("done"))).size === 1, `${answers}`);
      must(
        says(home, `mark ${at} is set`) === 1,
        `mark ${at} is there ${says(home, `mark ${at}`)}`,
      );
    }
  });
  await tally.case("every cut of a message does nothing", async (home, end) => {
    const terminal = await openOn(home);
    end(() => terminal.kill());
    for (const whole of [message("x1", "note the cut one"), "note the cut one\n"]) {
      const cuts = Array.from(whole).keys();
      const answers = [...cuts].map((at) => rawly(home, whole.slice(0, at), 3000, true));
      for (const answer of await Promise.all(answers)) must(/^refused/.test(answer), answer);
    }
    must(says(home, "the cut one") === 0 && says(home, "note the cut") === 0, "a piece was heard");
  });
  await tally.case("what was sent before a reopening is not acted on", async (home, end) => {
    const terminal = await openOn(home);
    end(() => terminal.kill());
    const answer = await rawly(home, message("y1", "note an old one", true), 3000);
    must(/^refused/.test(answer) && says(home, "an old one") === 0, answer);
  });
}
