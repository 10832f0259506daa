/** Odd surroundings: zones, locks, folders, what is typed, windows of any size, archives. */
import * as fs from "node:fs";
import { join } from "node:path";
import { Kitchen, rawly } from "./kitchen.mjs";
import { openOn } from "./stalled-terminal.mjs";
import { journal, must, PROGRAM, run, until, wait } from "./tally.mjs";
import { Terminal } from "./terminal.mjs";

const ZONES = ["", "Nowhere/Bad", ":/etc/localtime", "Etc/Unknown", "UTC+99", "../../etc/passwd"];

export async function zones(tally) {
  for (const TZ of [...ZONES, "EST5EDT,M3.2.0,M11.1.0", "\u001b[31m", "x".repeat(5000)]) {
    await tally.case(`TZ=${TZ.slice(0, 30)}`, async (home, end) => {
      const kitchen = await new Kitchen(home, { env: { TZ } }).opened();
      end(() => kitchen.kill());
      await kitchen.tell("set a timer for one second");
      await until(() => journal(home).some(({ type }) => type === "due"), "it does not ring");
      must((await kitchen.close()) === 0, `it ends with ${kitchen.code}: ${kitchen.err}`);
      const calls = [["review"], ["reminders"], ["plan", "dilled-green-beans 5lb"], ["pantry"]];
      for (const call of calls) {
        const told = run([...call, "--home", home], { env: { TZ } });
        must(told.status === 0, `${call} gives ${told.status}: ${told.stderr}`);
      }
    });
  }
}

export async function locks(tally) {
  const boot = () => fs.readFileSync("/proc/sys/kernel/random/boot_id", "utf8").trim();
  const stale = {
    "process 0": { pid: 0 },
    "a negative one": { pid: -1 },
    "its own group": { pid: -process.pid },
    none: {},
    "nothing at all": "",
    "a cut piece": '{"pid":1,"boo',
    "a word": { pid: "many" },
    "one that is gone": { pid: 4_000_000 },
    "one of another start": { pid: 1, bootId: "another" },
    "one that started otherwise": { pid: 1, startTicks: "7" },
  };
  for (const [name, holder] of Object.entries(stale)) {
    await tally.case(`a lock of ${name} is stale`, async (home) => {
      const whole = { bootId: boot(), ...holder };
      const text = typeof holder === "string" ? holder : JSON.stringify(whole);
      fs.writeFileSync(join(home, "lock"), text);
      const kitchen = await new Kitchen(home).opened();
      await kitchen.tell("note mark one");
      must((await kitchen.close()) === 0, kitchen.err);
      must(JSON.stringify(journal(home)).includes("mark one"), "it does not write");
    });
  }
  await tally.case("a socket of a dead kitchen in a long path is cleared", async (home) => {
    const long = join(home, "x".repeat(90), "y".repeat(60));
    const kitchen = new Kitchen(long);
    const address = join(long, "tell", "address");
    await until(() => fs.existsSync(address), "it does not open");
    const socket = fs.readFileSync(address, "utf8");
    await kitchen.kill();
    must(fs.existsSync(socket), "nothing was left to clear");
    const again = new Kitchen(long);
    const moved = () => {
      return fs.existsSync(address) && fs.readFileSync(address, "utf8") !== socket;
    };
    await until(() => moved() && !fs.existsSync(socket), "the old socket stays");
    await again.close();
  });
  await openFolders(tally);
  await tally.case("a Node that is too old is told so", async (home) => {
    const fake = join(home, "old.cjs");
    const versions = "{ ...process.versions, node: '18.19.0' }";
    fs.writeFileSync(fake, `Object.defineProperty(process, "versions", { value: ${versions} });`);
    const told = run(["review"], { env: { NODE_OPTIONS: `-r ${fake}` } });
    must(told.status === 3 && /needs Node 20/.test(told.stderr), `${told.status} ${told.stderr}`);
    must(told.stderr.trim().split("\n").length === 1, told.stderr);
    const entry = fs.readFileSync(PROGRAM, "utf8");
    must(!/\?\?|\?\.|^await |[^n]await import/.test(entry), "the entry is not for an old Node");
  });
}

async function openFolders(tally) {
  await tally.case("a folder open to others is named", async (home) => {
    fs.chmodSync(home, 0o777);
    const kitchen = await new Kitchen(home).opened();
    await kitchen.close();
    must(/Others on this machine may change/.test(kitchen.out), `it is not said: ${kitchen.out}`);
  });
  await tally.case("a log that others may read is named", async (home) => {
    fs.chmodSync(home, 0o755);
    const first = await new Kitchen(home).opened();
    await first.close();
    must(!/Others on this machine/.test(first.out), `it is said for nothing: ${first.out}`);
    const [name] = fs.readdirSync(home).filter((one) => one.endsWith(".jsonl"));
    fs.chmodSync(join(home, name), 0o644);
    const kitchen = await new Kitchen(home).opened();
    await kitchen.close();
    must(/Others on this machine may read/.test(kitchen.out), `it is not said: ${kitchen.out}`);
  });
}

export async function typing(tally) {
  await tally.case("a storm of resizing from 1x1 to 400x200", async (home, end) => {
    const terminal = await openOn(home);
    end(() => terminal.kill());
    const many = tally.short ? 60 : 600;
    for (let at = 0; at < many; at++) {
      const wide = [1, 2, 400, 40, 1][at % 5];
      terminal.resize(1 + ((at * 37) % wide), 1 + ((at * 53) % 200));
      if (at % 10 === 0) await wait(15);
    }
    terminal.resize(100, 40);
    await terminal.say("note the storm is over");
    await terminal.shows("the storm is over");
    must(!terminal.ended, "it ended");
  });
  await tally.case(
    "who types is asked what is to be set, also beside a pipe",
    async (home, end) => {
      const words = [process.execPath, PROGRAM, "--silent", "--home", home];
      const terminal = new Terminal(["sh", "-c", '"$0" "$@" | cat', ...words]);
      end(() => terminal.kill());
      await terminal.shows("What is your altitude");
      terminal.type("\u0004");
      await terminal.over;
    },
  );
  await tally.case("a page of words pasted", async (home, end) => {
    const terminal = await openOn(home);
    end(() => terminal.kill());
    const lines = Array.from({ length: 60 }, (_, at) => `note line ${at} \u001b]0;x\u0007 of it`);
    terminal.type(`\u001b[200~${lines.join("\r")}\r\u001b[201~`);
    const count = () => journal(home).filter(({ type }) => type === "note").length;
    await until(() => count() === 60, `${count()} of 60 lines were heard`, 30_000);
    await terminal.shows("line 59");
    must(!terminal.raw.includes("\u001b]0;"), "a sequence reached the terminal");
  });
  await tally.case("a flood of messages", async (home, end) => {
    const kitchen = await new Kitchen(home).opened();
    end(() => kitchen.kill());
    const many = tally.short ? 200 : 2000;
    for (let at = 0; at < many; at += 50) {
      const burst = Array.from({ length: 50 }, (_, more) => `note flood ${at + more} end\n`);
      const answers = await Promise.all(burst.map((line) => rawly(home, line, 20_000)));
      for (const answer of answers) must(/^(done|refused)\n/.test(answer), `no answer: ${answer}`);
    }
    const text = JSON.stringify(journal(home));
    for (let at = 0; at < many; at++) must(text.includes(`flood ${at} end`), `${at} is missing`);
  });
}

/** Exported kitchens with fields and bytes changed: never a crash, never half an import. */
export async function archives(tally) {
  const many = tally.short ? 12 : 120;
  await tally.case("a sound one goes in", async (home) => {
    await archiveOf(home);
    const told = run(["import", join(home, "a"), "--home", join(home, "new")]);
    must(told.status === 0, told.stderr);
  });
  for (let turn = 0; turn < many; turn++) {
    await tally.case(`one that was changed, ${turn} of ${many}`, async (home) => {
      const text = await archiveOf(home);
      fs.writeFileSync(join(home, "a"), CHANGES[turn % CHANGES.length](text, turn));
      const told = run(["import", join(home, "a"), "--home", join(home, "new")]);
      must([0, 1, 2, 3].includes(told.status), `it gives ${told.status}`);
      must(!/^ {4}at /m.test(told.stderr), told.stderr);
      must(told.status === 0 || told.stderr !== "", "it does not say why");
      if (told.status !== 0) must(!fs.existsSync(join(home, "new", "lock")), "a lock was left");
      const read = run(["review", "--json", "--home", join(home, "new")]);
      must(read.status === 0 || read.status === 3, `review gives ${read.status}: ${read.stderr}`);
      if (read.stdout !== "") JSON.parse(read.stdout);
    });
  }
}

async function archiveOf(home) {
  const kitchen = await new Kitchen(join(home, "old")).opened();
  for (const words of ["we are at 6200 feet", "start the dilly beans", "trimmed", "note x"]) {
    await kitchen.tell(words);
  }
  await kitchen.close();
  const told = run(["export", join(home, "a"), "--home", join(home, "old")]);
  must(told.status === 0, told.stderr);
  return fs.readFileSync(join(home, "a"), "utf8");
}

/** The same place in every run. */
const place = (text, turn) => Math.floor(text.length * ((turn * 0.618) % 1));

const CHANGES = [
  (text, turn) => text.slice(0, place(text, turn)),
  (text, turn) => `${text.slice(0, place(text, turn))}\u001b[2J${text.slice(place(text, turn))}`,
  (text) => text.replace(/"minutes":\d+/g, '"minutes":-1e308'),
  (text) => text.replace(/"t":\d+/g, '"t":"soon"'),
  (text) => text.replace(/"type":"batch-begun"/g, '"type":"__proto__"'),
  (text) => text.replace(/"(\w+)":/g, (all, _, at) => (at % 7 === 0 ? '"constructor":' : all)),
  (text) => text.replace(/\[/g, (all, at) => (at % 5 === 0 ? "[[[[[" : all)),
  (text) => text.replace(/"zone":"[^"]*"/g, '"zone":"Nowhere/Bad"'),
];
