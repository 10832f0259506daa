/** Files of the data folder swapped, changed and taken away while the kitchen is open. */
import { spawnSync } from "node:child_process";
import * as fs from "node:fs";
import { join } from "node:path";
import { Kitchen } from "./kitchen.mjs";
import { journal, must, run, until } from "./tally.mjs";

const NOT_RECORDED = /not recorded/i;
const has = (home, words) => JSON.stringify(journal(home)).includes(words);

/** The journal of a kitchen of its own, put in this one's place. */
async function otherLog(home) {
  const kitchen = await new Kitchen(`${home}/other`).opened();
  for (let at = 0; at < 12; at++) await kitchen.tell(`note another kitchen's ${at}`);
  await kitchen.close();
  const [name] = fs.readdirSync(`${home}/other`).filter((one) => one.endsWith(".jsonl"));
  return fs.readFileSync(join(home, "other", name));
}

const JOURNAL_SWAPS = {
  "another log renamed over it": (path, other) => {
    fs.writeFileSync(`${path}.new`, other);
    fs.renameSync(`${path}.new`, path);
  },
  "another log as long as it renamed over it": (path) => {
    const bytes = fs.readFileSync(path);
    const at = bytes.lastIndexOf("mark two");
    bytes.write("mark too", at);
    fs.writeFileSync(`${path}.new`, bytes);
    fs.renameSync(`${path}.new`, path);
  },
  "another log written into it": (path, other) => fs.writeFileSync(path, other),
  "a page written over it": (path) => fs.writeFileSync(path, "<!doctype html><p>beans"),
  emptied: (path) => fs.truncateSync(path, 0),
  "cut by some bytes": (path) => fs.truncateSync(path, fs.statSync(path).size - 7),
  "a line added by somebody": (path) => fs.appendFileSync(path, "beans\n"),
  removed: (path) => fs.rmSync(path),
  "renamed away": (path) => fs.renameSync(path, `${path}.old`),
  "an older copy restored": (path, _, older) => {
    fs.writeFileSync(`${path}.new`, older);
    fs.renameSync(`${path}.new`, path);
  },
  "a folder in its place": (path) => {
    fs.rmSync(path);
    fs.mkdirSync(path);
  },
  "a pipe in its place": (path) => {
    fs.rmSync(path);
    spawnSync("mkfifo", [path]);
  },
  "a link to nothing in its place": (path) => {
    fs.rmSync(path);
    fs.symlinkSync("/nonexistent/journal", path);
  },
  "a device in its place": (path) => {
    fs.rmSync(path);
    fs.symlinkSync("/dev/full", path);
  },
};

/** Swaps that change nothing of what can be read, so that the day goes on by itself. */
const FINE = {
  "the same content under another number": (path) => {
    fs.copyFileSync(path, `${path}.copy`);
    fs.renameSync(`${path}.copy`, path);
  },
};

async function swapJournal(home, end, swap, fine) {
  const other = await otherLog(home);
  const kitchen = await new Kitchen(home).opened();
  end(() => kitchen.kill());
  const [name] = fs.readdirSync(home).filter((one) => one.endsWith(".jsonl"));
  const path = join(home, name);
  await kitchen.tell("note mark one");
  const older = fs.readFileSync(path);
  await kitchen.tell("note mark two");
  swap(path, other, older);
  const answer = await kitchen.tell("note mark three");
  must(has(home, "mark three") || NOT_RECORDED.test(answer), `answered and not there: ${answer}`);
  if (!fine) {
    must(NOT_RECORDED.test(answer), `it is not said: ${answer}`);
    await until(() => /Another file stands where the log was/.test(kitchen.out), "not asked");
    await kitchen.tell("yes");
  }
  const after = await kitchen.tell("note mark four");
  must(!NOT_RECORDED.test(after), `it does not go on: ${after}`);
  for (const mark of ["one", "two", "three", "four"]) {
    must(has(home, `mark ${mark}`), `mark ${mark} is not in the folder's log`);
  }
  must((await kitchen.close()) === 0, `it ends with ${kitchen.code}: ${kitchen.err}`);
  const again = new Kitchen(home);
  end(() => again.kill());
  await again.opened();
  await again.close();
  must(!/it broke/.test(again.err), again.err);
}

export async function swappedFiles(tally) {
  for (const [name, swap] of Object.entries(JOURNAL_SWAPS).slice(0, tally.short ? 3 : undefined)) {
    await tally.case(`the journal: ${name}`, (home, end) => swapJournal(home, end, swap, false));
  }
  for (const [name, swap] of Object.entries(FINE)) {
    await tally.case(`the journal: ${name}`, (home, end) => swapJournal(home, end, swap, true));
  }
  if (!tally.short) await besideTheJournal(tally);
}

async function besideTheJournal(tally) {
  await tally.case("other things under the names of fresh files", async (home, end) => {
    const kitchen = await new Kitchen(home).opened();
    end(() => kitchen.kill());
    await kitchen.tell("we're at 6200 feet");
    await kitchen.tell("note mark one");
    const [name] = fs.readdirSync(home).filter((one) => one.endsWith(".jsonl"));
    const beside = (part) => join(home, name.replace(".jsonl", `-${part}.jsonl`));
    fs.mkdirSync(beside(2));
    spawnSync("mkfifo", [beside(3)]);
    fs.symlinkSync("/dev/full", beside(4));
    fs.symlinkSync("/nonexistent/journal", beside(5));
    fs.rmSync(join(home, name));
    must(NOT_RECORDED.test(await kitchen.tell("note mark two")), "it is not said");
    const no = await kitchen.tell("no");
    must(/Nothing is recorded until you say yes/.test(no), `a no is not taken: ${no}`);
    await kitchen.tell("yes");
    must(!NOT_RECORDED.test(await kitchen.tell("note mark three")), "it does not go on");
    for (const mark of ["one", "two", "three"]) must(has(home, `mark ${mark}`), `no mark ${mark}`);
  });
  await tally.case("the whole folder moved away", async (home, end) => {
    const kitchen = await new Kitchen(`${home}/in`).opened();
    end(() => kitchen.kill());
    fs.renameSync(`${home}/in`, `${home}/moved`);
    kitchen.child.stdin.write("note mark one\n");
    await new Promise((resolve) => setTimeout(resolve, 700));
    must(NOT_RECORDED.test(kitchen.out), `it is not said: ${kitchen.out}`);
    must(!fs.existsSync(`${home}/in/lock`), "a folder was made in its place");
    fs.renameSync(`${home}/moved`, `${home}/in`);
    await kitchen.tell("note mark two");
    for (const mark of ["one", "two"]) must(has(`${home}/in`, `mark ${mark}`), `no mark ${mark}`);
  });
  const odd = {
    "a folder": (path) => fs.mkdirSync(path),
    "a pipe": (path) => spawnSync("mkfifo", [path]),
    junk: (path) => fs.writeFileSync(path, "junk"),
    "a link to a device": (path) => fs.symlinkSync("/dev/zero", path),
    nothing: () => {},
  };
  for (const file of ["clocks.json", "snapshot.json", "lock"]) {
    for (const [name, put] of Object.entries(odd)) {
      await tally.case(`${file}: ${name} in its place`, async (home, end) => {
        const kitchen = await new Kitchen(home).opened();
        end(() => kitchen.kill());
        fs.rmSync(join(home, file), { force: true, recursive: true });
        put(join(home, file));
        const answer = await kitchen.tell("note mark one");
        must(has(home, "mark one") || NOT_RECORDED.test(answer), `answered, not there: ${answer}`);
        // One that was only taken away is made anew.
        const held = fs.statSync(join(home, file), { throwIfNoEntry: false })?.size > 10;
        if (file === "lock" && !held) {
          must(NOT_RECORDED.test(answer), `written without the lock: ${answer}`);
        }
        await kitchen.kill();
        const read = run(["review", "--json", "--home", home]);
        must(read.status === 0, `review gives ${read.status}: ${read.stderr}`);
      });
    }
  }
}
