/** Journals cut at any byte, with bits turned, and in the shape of something else. */
import { spawnSync } from "node:child_process";
import * as fs from "node:fs";
import { join } from "node:path";
import { Kitchen } from "./kitchen.mjs";
import { must, run } from "./tally.mjs";

const READERS = [
  ["review", "--json"],
  ["pantry", "--json"],
  ["seeds", "--json"],
  ["reminders", "--json"],
  ["export", "-"],
  ["words", "--json"],
  ["kitchen", "--json"],
  ["reckon", "process", "--recipe", "dilled-green-beans", "--jar", "pint", "--json"],
  ["plan", "sauerkraut", "--json"],
  ["watch", "--once", "--json"],
];

/** Calls about a batch that no log has, and calls that write something down. */
const ASKING = [
  ["review", "no-such-batch"],
  ["labels", "no-such-batch"],
  ["pantry", "--opened", "no-such-batch"],
];
const WRITING = [
  ["kitchen", "--burners", "3"],
  ["seeds", "add", "beans"],
];
const ALL = [...READERS, ...ASKING, ...WRITING];

/** A kitchen with some lines in its log; the journal's path and bytes. */
async function sample(home) {
  const kitchen = await new Kitchen(home).opened();
  const words = ["we are at 6200 feet", "start the dilly beans", "trimmed", "note the north bed"];
  for (const one of words) await kitchen.tell(one);
  await kitchen.close();
  const [name] = fs.readdirSync(home).filter((one) => one.endsWith(".jsonl"));
  const path = join(home, name);
  return { path, bytes: fs.readFileSync(path) };
}

/** What every reader owes, whatever lies there: an end, a status, a reason, JSON that is JSON. */
function reads(home, args, wanted) {
  const told = run([...args, "--home", home]);
  const name = args.join(" ");
  must(told.status !== null, `${name} does not end`);
  must(wanted.includes(told.status), `${name} gives ${told.status}: ${told.stderr}`);
  must(!/^ {4}at /m.test(told.stderr), `${name} breaks: ${told.stderr.slice(0, 500)}`);
  if (told.status === 3) must(/journal/.test(told.stderr), `${name} does not say: ${told.stderr}`);
  if (told.stdout !== "" && args.includes("--json")) JSON.parse(told.stdout);
  return told;
}

async function opens(home) {
  const kitchen = new Kitchen(home);
  const late = setTimeout(() => kitchen.child.kill("SIGKILL"), 10_000);
  const code = await kitchen.close();
  clearTimeout(late);
  must(code === 0 || code === 3, `opening it gives ${code}: ${kitchen.err.slice(0, 500)}`);
  must(!/^ {4}at /m.test(kitchen.err), kitchen.err);
}

export async function damagedJournal(tally) {
  const many = tally.short ? 6 : 40;
  await tally.case("a sound one is read by all", async (home) => {
    await sample(home);
    for (const args of [...READERS, ...WRITING]) reads(home, args, [0]);
    for (const args of ASKING) reads(home, args, [2]);
  });
  await tally.case("one that is gone is missed by all", async (home) => {
    for (const [at, args] of ALL.entries()) {
      const { path } = await sample(join(home, `${at}`));
      fs.rmSync(path);
      const told = reads(join(home, `${at}`), args, [3]);
      must(/number \d+ had been written/.test(told.stderr), `${args}: ${told.stderr}`);
    }
  });
  for (let turn = 0; turn < many; turn++) {
    await tally.case(`cut, ${turn} of ${many}`, async (home) => {
      const { path, bytes } = await sample(home);
      const at = Math.floor((bytes.length * (turn + 0.5)) / many);
      fs.writeFileSync(path, bytes.subarray(0, at));
      // Every line had been answered, so whatever is cut off is missed.
      const args = ALL[turn % ALL.length];
      const told = reads(home, args, [3]);
      must(/number \d+ had been written|nothing in it|cut short/.test(told.stderr), told.stderr);
      await opens(home);
    });
    await tally.case(`a bit turned, ${turn} of ${many}`, async (home) => {
      const { path, bytes } = await sample(home);
      const at = Math.floor((bytes.length * (turn + 0.3)) / many);
      bytes[at] ^= 1 << (turn % 8);
      fs.writeFileSync(path, bytes);
      reads(home, READERS[turn % READERS.length], [0, 3]);
      must(reads(home, ["review", "--json"], [0, 3]).stderr !== "", "the damage is not said");
      await opens(home);
    });
  }
  const kinds = {
    folder: (path) => fs.mkdirSync(path),
    pipe: (path) => spawnSync("mkfifo", [path]),
    device: (path) => fs.symlinkSync("/dev/zero", path),
    "link to nothing": (path) => fs.symlinkSync("/nonexistent", path),
    "link in a circle": (path) => fs.symlinkSync(path, path),
  };
  for (const [kind, put] of Object.entries(kinds)) {
    await tally.case(`a ${kind} in its place`, async (home) => {
      const { path } = await sample(home);
      fs.rmSync(path);
      put(path);
      for (const args of READERS.slice(0, tally.short ? 2 : undefined)) reads(home, args, [3]);
      await opens(home);
    });
  }
}
