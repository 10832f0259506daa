/** Two windows on a kitchen that has lost its terminal, for a long while: nothing may grow. */
import { readdirSync, readFileSync } from "node:fs";
import { openOn } from "./stalled-terminal.mjs";
import { must, PROGRAM, wait } from "./tally.mjs";
import { PROMPT, Terminal } from "./terminal.mjs";

const CLOCKS = 12;
const NOTE_EVERY_MS = 10_000;
/** The clock ticks of `/proc` in a second, as Linux has them on every machine of today. */
const TICKS = 100;
/** How much more memory the last quarter may take than the second, MB: a heap fills first. */
const flatMb = (minutes) => (minutes < 30 ? 40 : 10);

/** Memory in MB, open files and CPU seconds so far of a process. */
function costOf(pid) {
  const status = readFileSync(`/proc/${pid}/status`, "utf8");
  const stat = readFileSync(`/proc/${pid}/stat`, "utf8");
  const [user, system] = stat
    .slice(stat.lastIndexOf(")") + 2)
    .split(" ")
    .slice(11, 13);
  return {
    mb: Number(/VmRSS:\s+(\d+)/.exec(status)[1]) / 1024,
    files: readdirSync(`/proc/${pid}/fd`).length,
    cpu: (Number(user) + Number(system)) / TICKS,
  };
}

export async function windows(tally) {
  const minutes = tally.minutes ?? (tally.short ? 1 : 4);
  await tally.case(`two windows for ${minutes} minutes`, async (home, end) => {
    const terminal = await openOn(home);
    end(() => terminal.kill());
    for (let at = 1; at <= CLOCKS; at++)
      await terminal.say(`set a timer for ${at + 1} hours for crock ${at}`);
    await terminal.shows("crock 12");
    terminal.hangUp();
    const words = [process.execPath, PROGRAM, "--silent", "--home", home];
    const one = new Terminal(words);
    const two = new Terminal(words);
    for (const glass of [one, two]) end(() => glass.kill());
    for (const glass of [one, two]) await glass.shows(PROMPT);
    const looks = [];
    let notes = 0;
    for (let quarter = 0; quarter <= 4; quarter++) {
      looks.push([terminal, one, two].map(({ pid }) => costOf(pid)));
      const until = performance.now() + (quarter < 4 ? minutes * 15_000 : 0);
      while (performance.now() < until) {
        await one.say(`note crock ${notes++} is covered`);
        await wait(Math.min(NOTE_EVERY_MS, Math.max(0, until - performance.now())));
      }
    }
    await two.shows(`crock ${notes - 1} is`);
    for (const [at, name] of ["kitchen", "first window", "second window"].entries()) {
      const mine = looks.map((look) => look[at]);
      const shares = mine
        .slice(1)
        .map(({ cpu }, quarter) => (cpu - mine[quarter].cpu) / (minutes * 0.15));
      const mb = mine.map((one) => one.mb.toFixed(1)).join(", ");
      const files = mine.map((one) => one.files);
      const parts = shares.map((share) => share.toFixed(2)).join(", ");
      tally.note(`${name}: ${mb} MB; ${files} open files; ${parts} % of a core`);
      must(new Set(files).size === 1, `the ${name}'s open files are ${files}`);
      must(mine[4].mb < mine[2].mb + flatMb(minutes), `the ${name}'s memory grows: ${mb} MB`);
    }
  });
}
