/** Terminals that take no output: nothing else may wait for them. */
import { readFileSync } from "node:fs";
import { journal, must, PROGRAM, run, until, wait } from "./tally.mjs";
import { PROMPT, Terminal } from "./terminal.mjs";

/** Opens the kitchen on a terminal, its altitude set. */
export async function openOn(home, args = [], options = {}) {
  const words = [process.execPath, PROGRAM, "--silent", "--home", home, ...args];
  const terminal = new Terminal(words, { env: { TZ: "America/Denver" }, ...options });
  await terminal.shows(args.includes("--plain") ? "local ext" : PROMPT);
  await terminal.say("we're at 6200 feet");
  await terminal.shows("Altitude 6200 feet.");
  return terminal;
}

/** Takes no more output, and has so much sent that the system's own store for it is full. */
export async function stall(terminal) {
  terminal.stall();
  for (let at = 0; at < 80; at++) {
    terminal.type("\u000c");
    if (at % 10 === 9) await wait(40);
  }
  await wait(100);
}

/** How late each timer was written down, ms, of so many that end one after another. */
async function lateness(home, stalled, timers) {
  const terminal = await openOn(home);
  try {
    if (stalled) await stall(terminal);
    // All are set before the first rings, which then is late by nothing else.
    const seconds = 3 + Math.ceil(timers / 5);
    for (let at = 0; at < timers; at++) {
      await terminal.say(`set a timer for ${seconds} seconds for crock ${at}`);
      await wait(60);
    }
    const due = () => journal(home).filter(({ type }) => type === "due");
    await until(() => due().length === timers, `${due().length} of ${timers} rang`, 60_000);
    return due().map(({ t, w }) => w - t);
  } finally {
    await terminal.kill();
  }
}

const p99 = (values) => values.toSorted((a, b) => a - b)[Math.ceil(values.length * 0.99) - 1];

export async function stalledTerminal(tally) {
  await tally.case("words are answered and logged", async (home, end) => {
    const terminal = await openOn(home);
    end(() => terminal.kill());
    await stall(terminal);
    for (let at = 0; at < 12; at++) {
      const told = run(["tell", "--home", home, `note crock ${at} is full`], { ms: 9000 });
      must(told.status === 0, `tell gives ${told.status}: ${told.stderr}`);
      must(JSON.stringify(journal(home)).includes(`crock ${at} is full`), "not in the log");
    }
    await terminal.say("set a timer for one second");
    await until(() => journal(home).some(({ type }) => type === "due"), "the timer never rang");
    terminal.stall(false);
    await terminal.shows("ALARM");
    terminal.type("\t");
    const text = await terminal.shows("crock 11 is full");
    must(PROMPT.test(text), `no whole screen: ${text}`);
  });
  await punctual(tally);
  await itEnds(tally);
  await suspended(tally);
  await tally.case("plain lines on a stalled terminal hold nothing up", async (home, end) => {
    const terminal = await openOn(home, ["--plain"]);
    end(() => terminal.kill());
    await floodLines(terminal, home);
    await until(() => journal(home).some(({ type }) => type === "due"), "the timer never rang");
    terminal.stall(false);
    await terminal.shows("the last one");
  });
}

/**
 * A kitchen on a stalled terminal and one on a normal terminal at the same time, so that what else
 * the machine does makes both late; that only ever adds, so the best of three tries counts.
 */
async function punctual(tally) {
  const timers = tally.short ? 12 : 100;
  await tally.case(
    "timers ring as punctually as on a terminal that is not stalled",
    async (home) => {
      const tries = [];
      for (let at = 0; at < 3 && !tries.some(({ more }) => more <= 25); at++) {
        const homes = [`${home}/${at}-normal`, `${home}/${at}-stalled`];
        const both = homes.map((one, index) => lateness(one, index === 1, timers));
        const [normal, stalled] = (await Promise.all(both)).map(p99);
        tries.push({ normal, stalled, more: stalled - normal });
      }
      const text = tries.map(({ normal, stalled }) => `${normal} ms, stalled ${stalled} ms`);
      tally.note(`p99 lateness of ${timers} timers: ${text.join("; ")}`);
      must(
        tries.some(({ more }) => more <= 25),
        text.join("; "),
      );
    },
  );
}

/** However it is asked to, it ends within a second. */
async function itEnds(tally) {
  for (const [name, args, ends] of [
    ["Ctrl-C", [], (terminal) => terminal.type("\u0003")],
    ["a signal", [], (terminal) => terminal.signal("TERM")],
    ["its own words", [], (terminal) => terminal.say("quit")],
    ["a signal, as lines", ["--plain"], (terminal) => terminal.signal("TERM")],
  ]) {
    await tally.case(`it ends within a second by ${name}`, async (home, end) => {
      const terminal = await openOn(home, args);
      end(() => terminal.kill());
      if (args.length === 0) await stall(terminal);
      else await floodLines(terminal, home);
      const asked = performance.now();
      await ends(terminal);
      await Promise.race([terminal.over, wait(5000)]);
      must(terminal.ended, "it does not end");
      const ms = terminal.ended.atMs - asked;
      must(ms < 1000, `it takes ${ms} ms`);
      must(journal(home).at(-1)?.type === "closed", "the log is not closed");
    });
  }
}

const stateOf = (pid) => readFileSync(`/proc/${pid}/stat`, "utf8").split(") ")[1][0];

async function suspended(tally) {
  for (const args of [[], ["--plain"]]) {
    await tally.case(`it is not stopped while a timer runs ${args}`, async (home, end) => {
      const terminal = await openOn(home, args);
      end(() => terminal.kill());
      await terminal.say("set a timer for 3 seconds for the crock");
      await terminal.shows("crock timer");
      terminal.type("\u001a");
      terminal.signal("TSTP");
      await terminal.shows("Not stopped: the crock timer runs");
      must(stateOf(terminal.pid) !== "T", "it stands still");
      await until(() => journal(home).some(({ type }) => type === "due"), "the timer never rang");
    });
  }
}

/** Says so much with nobody taking the answers that the system's store for them is full. */
async function floodLines(terminal, home) {
  terminal.stall();
  const long = `note ${"the crock by the north wall is full ".repeat(30)}`;
  run(["tell", "--home", home, "set a timer for two seconds"]);
  for (let at = 0; at < 24; at++) {
    const told = run(["tell", "--home", home, at === 23 ? "note the last one" : long], {
      ms: 3000,
    });
    must(told.status === 0, `tell gives ${told.status} at ${at}: ${told.stderr}`);
  }
}
