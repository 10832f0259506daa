/** Terminals that take no output: nothing else may wait for them. */
import { journal, must, PROGRAM, run, until, wait } from "./tally.mjs";
import { Terminal } from "./terminal.mjs";

/** Opens the kitchen on a terminal, its altitude set. */
export async function openOn(home, args = [], options = {}) {
  const words = [process.execPath, PROGRAM, "--silent", "--home", home, ...args];
  const terminal = new Terminal(words, { env: { TZ: "America/Denver" }, ...options });
  await terminal.shows(args.includes("--plain") ? "local ext" : "> ");
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
      const told = run(["tell", "--home", home, `note crock ${at} is full`], { ms: 3000 });
      must(told.status === 0, `tell gives ${told.status}: ${told.stderr}`);
      must(JSON.stringify(journal(home)).includes(`crock ${at} is full`), "not in the log");
    }
    await terminal.say("set a timer for one second");
    await until(() => journal(home).some(({ type }) => type === "due"), "the timer never rang");
    terminal.stall(false);
    const text = await terminal.shows("ALARM");
    must(/crock 11 is full/.test(text), `the newest is not shown: ${text}`);
    must(/^> /m.test(text), `no whole screen: ${text}`);
  });
  const timers = tally.short ? 12 : 100;
  const late = {};
  for (const stalled of [false, true]) {
    await tally.case(`timers ring, stalled: ${stalled}`, async (home) => {
      late[stalled] = p99(await lateness(home, stalled, timers));
    });
  }
  await tally.case("they ring as punctually", async () => {
    const [normal, stalled] = [late.false, late.true];
    const text = `${normal?.toFixed(1)} ms, stalled ${stalled?.toFixed(1)} ms`;
    tally.note(`p99 lateness of ${timers} timers: ${text}`);
    must(stalled - normal <= 25, `${stalled} ms against ${normal} ms`);
  });
  await itEnds(tally);
  await tally.case("plain lines on a stalled terminal hold nothing up", async (home, end) => {
    const terminal = await openOn(home, ["--plain"]);
    end(() => terminal.kill());
    await floodLines(terminal, home);
    await until(() => journal(home).some(({ type }) => type === "due"), "the timer never rang");
    terminal.stall(false);
    await terminal.shows("the last one");
  });
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
