/**
 * The built program, really open, with a probe at twenty readings a second and words all the time:
 * its memory and its open files at each of five looks. Seconds as the argument: 20 by default, 1200
 * for twenty minutes.
 */
import { spawn } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

const seconds = Number(process.argv[2] ?? 20);
const home = mkdtempSync(join(tmpdir(), "open-kitchen-"));
const words = ["dist/brinebell.js", "--plain", "--silent", "--probe", "-", "--home", home];
const child = spawn(process.execPath, words, { stdio: ["pipe", "ignore", "inherit"] });
const wait = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

function look(atSeconds: number): void {
  const status = readFileSync(`/proc/${child.pid}/status`, "utf8");
  const mb = Number(/VmRSS:\s+(\d+)/.exec(status)?.[1] ?? 0) / 1024;
  const files = readdirSync(`/proc/${child.pid}/fd`).length;
  console.log(`after ${atSeconds} s: ${mb.toFixed(1)} MB, ${files} open files`);
}

child.stdin.write("we're at 6200 feet\nstart a batch of sauerkraut\n");
for (let at = 1; at <= 12; at++) child.stdin.write(`set a timer for ${at} hours for crock ${at}\n`);
await wait(3000);
for (let turn = 0; turn < seconds * 20; turn++) {
  child.stdin.write(`canner ${(200 + (turn % 7) / 10).toFixed(1)}F\n`);
  if (turn % 10 === 0) child.stdin.write("what's running\n");
  if (turn % (seconds * 5) === 0) look(turn / 20);
  await wait(50);
}
look(seconds);
child.stdin.end();
await new Promise((resolve) => child.on("close", resolve));
rmSync(home, { recursive: true, force: true });
console.log(`${seconds} s, ${seconds * 20} readings, ${seconds * 2} questions`);
