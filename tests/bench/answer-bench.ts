/**
 * The built program with a voice that takes as long as a real one and writes down when it begins:
 * from the end of a command to the beginning of its answer, while prompts, questions and earlier
 * answers are being spoken. `answer N` says N commands; 60 by default. `answer N ringing` sets
 * timers of one minute, which ring from then on and are never answered.
 */
import { spawn } from "node:child_process";
import { chmodSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** Seconds for a word at 165 words a minute. */
const SECONDS_PER_WORD = 60 / 165;
const FAKE = `#!/bin/sh
begun=$(date +%s%3N)
text=$(cat)
printf '%s %s\\n' "$begun" "$text" >> "$SPOKEN"
exec sleep $(echo "$text" | wc -w | awk '{print $1 * ${SECONDS_PER_WORD.toFixed(3)}}')
`;

const RINGING = process.argv.includes("ringing");
const TIMER = RINGING ? "one minute" : "two hours";

/** What is said, each with the beginning of its answer. */
const TURNS: [words: string, answer: RegExp][] = [
  ["what's running", /dilled green beans.*canner|Dilly beans/i],
  ["how much salt", /salt/i],
  ["what headspace", /^Headspace/],
  ["how long", /eggs timer: about|eggs timer, about|No clock/i],
  ["what next", /^Next/],
  [`set a timer for ${TIMER} for the eggs`, new RegExp(`^The eggs timer, ${TIMER}`)],
  ["note: the beans are thin today", /^Noted/],
  ["what now", /^Wash the beans/],
];

const count = Number(process.argv[2] ?? 60);
const top = mkdtempSync(join(tmpdir(), "answer-"));
const [bin, home, spoken] = ["bin", "kitchen", "spoken"].map((name) => join(top, name)) as [
  string,
  string,
  string,
];
mkdirSync(bin);
writeFileSync(spoken, "");
writeFileSync(join(bin, "espeak-ng"), FAKE);
chmodSync(join(bin, "espeak-ng"), 0o755);
const env = { ...process.env, PATH: `${bin}:${process.env.PATH}`, SPOKEN: spoken };
const main = process.argv.find((one) => one.endsWith(".js")) ?? join("dist", "brinebell.js");
const child = spawn(process.execPath, [main, "--plain", "--home", home], {
  stdio: ["pipe", "ignore", "inherit"],
  env,
});
const wait = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));
const heard = () =>
  readFileSync(spoken, "utf8")
    .split("\n")
    .filter(Boolean)
    .map((line) => ({ begun: Number(line.slice(0, 13)), text: line.slice(14) }));

async function answered(words: string, answer: RegExp): Promise<number> {
  const before = heard().length;
  const at = Date.now();
  child.stdin.write(`${words}\n`);
  for (;;) {
    const all = heard().slice(before);
    const found = all.find(({ text }) => answer.test(text));
    if (found) return found.begun - at;
    if (Date.now() - at > 30_000) {
      child.kill();
      throw new Error(`no answer to "${words}", but ${JSON.stringify(all)}`);
    }
    await wait(5);
  }
}

for (const words of ["we're at 6200 feet", "start the dilly beans, four pounds"]) {
  child.stdin.write(`${words}\n`);
  await wait(1500);
}
const times: number[] = [];
for (let turn = 0; turn < count; turn++) {
  const [words, answer] = TURNS[turn % TURNS.length] as (typeof TURNS)[number];
  times.push(await answered(words, answer));
  await wait(200 + ((turn * 397) % 1700));
}
child.stdin.end();
child.kill();
await new Promise((resolve) => child.on("close", resolve));
rmSync(top, { recursive: true, force: true });
times.sort((a, b) => a - b);
const part = (share: number) => times[Math.floor(times.length * share)] ?? 0;
console.log(
  `${times.length} commands: p50 ${part(0.5)} ms, p95 ${part(0.95)} ms, longest ${times.at(-1)} ms`,
);
