/**
 * The built program on a terminal of 100x40: from its start to its first whole screen, compared
 * with a bare ink hello run unbundled; and what it costs to stay open with 12 clocks running. The
 * terminal is the standard `script`. Needs the built program (`npm run build`). Printed with the
 * machine; never a timed test.
 */
import { type ChildProcess, spawn, spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { cpus, platform, tmpdir } from "node:os";
import { join } from "node:path";

const ROUNDS = 15;
const IDLE_SECONDS = 30;
const TICKS_PER_SECOND = 100;
const scratch = mkdtempSync(join(tmpdir(), "screen-bench-"));

/** Bare ink, as in a program without a bundle. */
const HELLO = `import React from "react";
import { render, Text } from "ink";
render(React.createElement(Text, null, "hello"));
setTimeout(() => {}, 10000);
`;
// Next to node_modules, so that its packages are found.
const hello = join(process.cwd(), "node_modules", ".screen-bench-hello.mjs");

function onTerminal(command: string): ChildProcess {
  const line = `stty rows 40 cols 100; exec ${command}`;
  return spawn("script", ["-qfec", line, "/dev/null"], {
    stdio: ["pipe", "pipe", "inherit"],
    env: { ...process.env, TERM: "xterm-256color", SHELL: "/bin/sh" },
    detached: true,
  });
}

function end(child: ChildProcess): void {
  if (child.pid) process.kill(-child.pid, "SIGKILL");
}

/** Ms until the terminal has shown a text. */
function paintMs(command: string, text: string): Promise<number> {
  return new Promise((resolve, reject) => {
    const begun = performance.now();
    const child = onTerminal(command);
    let shown = "";
    const late = setTimeout(() => {
      end(child);
      reject(new Error(`${command}: nothing like ${JSON.stringify(text)} in ${shown}`));
    }, 20_000);
    child.stdout?.on("data", (data) => {
      shown += data;
      if (!shown.includes(text)) return;
      child.stdout?.removeAllListeners("data");
      clearTimeout(late);
      resolve(performance.now() - begun);
      end(child);
    });
  });
}

function median(times: number[]): number {
  return [...times].sort((a, b) => a - b)[Math.floor(times.length / 2)] ?? Number.NaN;
}

const program = (home: string) => `node dist/brinebell.js --silent --home ${home}`;

async function benchFirstPaint(): Promise<void> {
  writeFileSync(hello, HELLO);
  const ours: number[] = [];
  const bare: number[] = [];
  for (let round = 0; round < ROUNDS; round++) {
    bare.push(await paintMs(`node ${hello}`, "hello"));
    ours.push(await paintMs(program(join(scratch, `home-${round}`)), "Nothing is on"));
  }
  const [a, b] = [median(ours), median(bare)];
  const bareText = `bare ink hello ${b.toFixed(0)} ms`;
  console.log(
    `first paint      ${a.toFixed(0)} ms, ${bareText}: ${(a / b).toFixed(2)}x (at most 0.7)`,
  );
}

/** Processor seconds of the one node that runs in this home, by /proc. */
function processorSeconds(home: string): number {
  const found = spawnSync("pgrep", ["-f", `^node dist/brinebell.js .*${home}$`]);
  const pid = found.stdout.toString().trim().split("\n")[0];
  const stat = readFileSync(`/proc/${pid}/stat`, "utf8");
  const fields = stat.slice(stat.lastIndexOf(")") + 2).split(" ");
  return (Number(fields[11]) + Number(fields[12])) / TICKS_PER_SECOND;
}

async function benchIdle(): Promise<void> {
  const home = join(scratch, "idle");
  const child = onTerminal(program(home));
  child.stdout?.resume();
  const wait = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));
  await wait(2000);
  const say = async (line: string) => {
    child.stdin?.write(line);
    await wait(100);
    child.stdin?.write("\r");
    await wait(300);
  };
  await say("6200 feet");
  for (let at = 1; at <= 12; at++) await say(`set a timer for ${at + 1} hours for crock ${at}`);
  const asked = ["dist/brinebell.js", "tell", "--home", home, "what's running"];
  const answer = spawnSync(process.execPath, asked, { encoding: "utf8" }).stdout;
  const clocks = answer.match(/crock \d+/gi)?.length ?? 0;
  await wait(3000);
  const before = processorSeconds(home);
  await wait(IDLE_SECONDS * 1000);
  const share = (processorSeconds(home) - before) / IDLE_SECONDS;
  end(child);
  console.log(`idle, ${clocks} clocks  ${(share * 100).toFixed(1)} % of a core (under 2)`);
}

try {
  console.log(`node ${process.version}, ${platform()}, ${cpus().length} x ${cpus()[0]?.model}`);
  if (platform() === "linux") {
    await benchFirstPaint();
    await benchIdle();
  } else {
    console.log("skipped: its terminal and its look at processor time are Linux's");
  }
} finally {
  rmSync(hello, { force: true });
  rmSync(scratch, { recursive: true, force: true });
}
