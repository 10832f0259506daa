/** Escape sequences in whatever lies in files, their names and the words of a call. */
import * as fs from "node:fs";
import { join } from "node:path";
import { Kitchen } from "./kitchen.mjs";
import { openOn } from "./stalled-terminal.mjs";
import { must, run } from "./tally.mjs";

/** Renames the window and clears it. */
const BAD = "\u001b]0;pwned\u0007\u001b[2J\u009b31m\u202e";

function clean(text, what) {
  const found = /\u001b\]0|[\u0080-\u009f\u202e]/.exec(text);
  must(!found, `${what}: ${JSON.stringify(text.slice(Math.max(0, (found?.index ?? 0) - 80)))}`);
}

/** What a call prints holds no control at all: nothing here is a terminal. */
function prints(args) {
  const told = run(args);
  must(told.status !== null, `${args[0]} does not end`);
  clean(told.stdout + told.stderr, JSON.stringify(args));
  must(!told.stderr.includes("\u001b"), told.stderr);
}

export async function escapes(tally) {
  await tally.case("in the words of every call", (home) => {
    const calls = [[BAD], [`--${BAD}`], ["help", BAD], ["recipes", BAD], ["check", `./${BAD}`]];
    calls.push(["review", BAD], ["labels", BAD], ["plan", `${BAD} 5lb`], ["rehearse", BAD]);
    calls.push(["reckon", BAD], ["import", `./${BAD}`], ["tell", BAD], ["kitchen", "--units", BAD]);
    for (const call of calls) prints([...call, "--home", home]);
  });
  await tally.case("in the name of the data folder", async (home) => {
    const folder = join(home, BAD);
    prints(["review", "--home", folder]);
    prints(["tell", "note x", "--home", folder]);
    const kitchen = new Kitchen(folder, { args: ["--probe", join(folder, "no such probe")] });
    await kitchen.close();
    clean(kitchen.out + kitchen.err, "the kitchen");
  });
  await tally.case("in a recipe and its file's name", async (home, end) => {
    fs.mkdirSync(join(home, "recipes"));
    fs.writeFileSync(join(home, "recipes", `${BAD}.yaml`), "a: [");
    const fields = ["id", "title", "class"].map((name) => `${name}: ${JSON.stringify(BAD)}\n`);
    fs.writeFileSync(join(home, "recipes", "fields.yaml"), fields.join(""));
    const kitchen = await new Kitchen(home).opened();
    await kitchen.close();
    must(/A recipe was left out/.test(kitchen.out), "nothing of it was shown");
    clean(kitchen.out + kitchen.err, "the kitchen");
    for (const call of ["recipes", "export"]) prints([call, "--home", home]);
    prints(["check", join(home, "recipes", "fields.yaml"), "--home", home]);
    const terminal = await openOn(home);
    end(() => terminal.kill());
    terminal.type("\t");
    await terminal.shows("A recipe was left out");
    clean(terminal.raw, "the screen");
  });
  await tally.case("in a lock that somebody holds", (home) => {
    const bootId = fs.readFileSync("/proc/sys/kernel/random/boot_id", "utf8").trim();
    const holder = { pid: process.pid, bootId, startedAt: BAD };
    fs.writeFileSync(join(home, "lock"), JSON.stringify(holder));
    prints(["--plain", "--silent", "--home", home]);
    prints(["kitchen", "--burners", "3", "--home", home]);
  });
}
