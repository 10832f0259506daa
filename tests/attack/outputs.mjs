/** Outputs onto anything, full devices, and files that are none. */
import { spawnSync } from "node:child_process";
import * as fs from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Kitchen } from "./kitchen.mjs";
import { journal, must, PROGRAM, run, until, wait } from "./tally.mjs";

const OUTPUTS = [["review", "--html"], ["reminders", "--ics"], ["export"]];

export async function outputs(tally) {
  for (const call of OUTPUTS) {
    const targets = {
      "the journal": (home) => join(home, "k", journalName(home)),
      "the lock's place": (home) => join(home, "k", "lock"),
      "a file of another kind": (home) => join(home, "precious.txt"),
      "a full device": () => "/dev/full",
      "a folder": (home) => home,
      "a folder that is not there": (home) => join(home, "no", "such", "file"),
    };
    for (const [name, place] of Object.entries(targets)) {
      await tally.case(`${call.join(" ")} onto ${name}`, async (home) => {
        const kitchen = await new Kitchen(join(home, "k")).opened();
        await kitchen.tell("remind me tomorrow at nine to look in the cellar");
        await kitchen.close();
        fs.writeFileSync(join(home, "precious.txt"), "precious");
        const before = snapshotOf(home);
        const told = run([...call, place(home), "--home", join(home, "k")]);
        must([1, 2, 3].includes(told.status), `it gives ${told.status}: ${told.stdout}`);
        must(told.stderr.trim().split("\n").length === 1, told.stderr);
        must(snapshotOf(home) === before, "something was changed");
      });
    }
  }
}

/** Every command that prints, with standard output on a device that is full. */
export async function fullDevices(tally) {
  const help = run(["--help"]).stdout;
  const known = [...help.matchAll(/^ {2}brinebell ([a-z]+) /gm)].map(([, name]) => name);
  await tally.case("every command is tried here", () => {
    must(known.length > 15, `the help lists ${known}`);
    const left = known.filter((name) => !PRINTING.some((call) => call.split(" ")[0] === name));
    must(left.length === 0, `${left} are not tried`);
  });
  const folder = fs.mkdtempSync(join(tmpdir(), "brinebell-attack-"));
  const [kept, other] = [join(folder, "kept"), join(folder, "other")];
  run(["rehearse", "dilled-green-beans", "--speed", "max", "--home", kept]);
  run(["kitchen", "--altitude", "6200ft", "--home", other]);
  run(["export", join(folder, "b.brinebell"), "--home", other]);
  fs.writeFileSync(join(folder, "r.csv"), "minutes,F\n0,240\n9,250\n");
  for (const call of PRINTING) {
    await tally.case(`${call} onto a full device`, async (home, end) => {
      if (/^tell/.test(call)) {
        const kitchen = new Kitchen(home);
        end(() => kitchen.kill());
        await until(() => fs.existsSync(join(home, "tell", "protocol")), "it does not open");
      }
      const places = { HERE: folder, KEPT: kept, NEW: join(home, "new"), OPEN: home };
      const told = ontoFull(
        call.split(" ").map((word) => word.replace(/[A-Z]{3,}/, (one) => places[one] ?? one)),
      );
      must(told.status === 3, `it gives ${told.status}: ${told.stderr}`);
      must(/cannot be written/.test(told.stderr), `it does not say so: ${told.stderr}`);
      must(!/^ {4}at /m.test(told.stderr), told.stderr);
    });
  }
  await tally.case("a file that has no room for the rest", (home) => {
    const out = join(home, "out.json");
    const call = 'trap "" XFSZ; ulimit -f 2; exec "$0" "$1" review --json --home "$2" > "$3"';
    const words = ["-c", call, process.execPath, PROGRAM, kept, out];
    const told = spawnSync("sh", words, { encoding: "utf8", timeout: 20_000 });
    must(fs.statSync(out).size > 0, "nothing was written");
    must(told.status === 3, `it gives ${told.status}: ${told.stderr}`);
  });
  fs.rmSync(folder, { recursive: true, force: true });
}

function ontoFull(words) {
  const full = fs.openSync("/dev/full", "w");
  try {
    return spawnSync(process.execPath, [PROGRAM, ...words], {
      stdio: ["pipe", full, "pipe"],
      encoding: "utf8",
      input: "it's boiling\n",
      timeout: 20_000,
    });
  } finally {
    fs.closeSync(full);
  }
}

const PRINTING = [
  ...["--version", "--help", "help plan", "--plain --silent --home NEW", "completion bash"],
  ...["rehearse sauerkraut --speed max", "rehearse sauerkraut --json"],
  ...["recipes", "recipes peaches --json", "check peaches", "check peaches --json"],
  "reckon boiling-point --altitude 6200ft",
  "reckon lethality --readings HERE/r.csv --reference 250F --z 18F",
  ...["kitchen --home KEPT", "kitchen --json --home KEPT", "kitchen --burners 3 --home NEW"],
  ...["plan sauerkraut", "plan sauerkraut --json"],
  ...["review --home KEPT", "review --json --home KEPT", "review --csv --home KEPT"],
  ...["review --markdown --home KEPT", "review beans --html - --home KEPT"],
  ...["pantry --home KEPT", "pantry --json --home KEPT", "labels beans --home KEPT"],
  ...["seeds --home KEPT", "seeds --json --home KEPT", "words --home KEPT"],
  ...["words --json --home KEPT", "export - --home KEPT", "export HERE/a.brinebell --home KEPT"],
  ...["import HERE/b.brinebell --home NEW", "tell note the jar is hot --home OPEN"],
  ...["tell --json note the jar is hot --home OPEN", "reminders --home KEPT"],
  ...[
    "reminders --json --home KEPT",
    "watch --once --home KEPT",
    "watch --once --json --home KEPT",
  ],
  ...["understand", "understand --json", "soundcheck --json"],
];

/** Files that a call names, with a pipe nobody writes to or a device in their place. */
export async function namedFiles(tally) {
  const calls = [
    ["rehearse", "--script"],
    ["import"],
    ["check"],
    ["reckon", "lethality", "--reference", "250F", "--z", "18F", "--readings"],
  ];
  for (const call of calls) {
    for (const name of ["./pipe.yaml", "/dev/zero", "/dev/full", "."]) {
      await tally.case(`${call.join(" ")} ${name}`, async (home) => {
        spawnSync("mkfifo", [join(home, "pipe.yaml")]);
        const path = name.startsWith("/") ? name : join(home, name);
        const told = run([...call, path, "--home", join(home, "new")], { ms: 8000 });
        must(told.status === 3, `it gives ${told.status}: ${told.stderr}${told.stdout}`);
        must(told.stderr.trim().split("\n").length === 1, told.stderr);
      });
    }
  }
  for (const signal of ["SIGTERM", "SIGKILL"]) {
    await tally.case(`${signal} to one that listens to a pipe`, async (home, end) => {
      const pipe = join(home, "sound");
      spawnSync("mkfifo", [pipe]);
      const kitchen = await new Kitchen(home, { args: ["--listen", "--sound", pipe] }).opened();
      end(() => kitchen.kill());
      await wait(500);
      kitchen.child.kill(signal);
      await kitchen.ended;
      const left = () => spawnSync("pgrep", ["-f", pipe], { encoding: "utf8" }).stdout;
      await until(() => left() === "", "its listening program stays", 3000);
    });
  }
  const odd = ["tell/protocol", "tell/address", "recipes/odd.yaml", "clocks.json"];
  for (const name of odd) {
    await tally.case(`a kitchen with a pipe as ${name}`, async (home, end) => {
      fs.mkdirSync(join(home, name, ".."), { recursive: true });
      spawnSync("mkfifo", [join(home, name)]);
      const asked = run(["tell", "note mark one", "--home", home]);
      must(asked.status === 3, `tell gives ${asked.status}: ${asked.stderr}`);
      const kitchen = await new Kitchen(home).opened();
      end(() => kitchen.kill());
      await kitchen.tell("note mark one");
      must(JSON.stringify(journal(home)).includes("mark one"), "it does not write");
    });
  }
}

const journalName = (home) =>
  fs.readdirSync(join(home, "k")).find((one) => one.endsWith(".jsonl")) ?? "journal";

function snapshotOf(home) {
  const names = fs.readdirSync(home, { recursive: true, withFileTypes: true });
  const files = names.filter((one) => one.isFile() && one.name !== "snapshot.json");
  return files
    .map((one) => join(one.parentPath, one.name))
    .sort()
    .map((path) => `${path} ${fs.readFileSync(path, "latin1")}`)
    .join("\n");
}
