import { spawn, spawnSync } from "node:child_process";
import * as fs from "node:fs";
import { connect } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { parse } from "csv-parse/sync";
import fc from "fast-check";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { safeOutput } from "../../src/commands/call/safe-output.ts";
import { reviewText } from "../../src/commands/record/review-text.ts";
import { MemoryDisk } from "../../src/journal/memory-disk.ts";
import type { Library } from "../../src/recipe/library.ts";
import { review } from "../../src/review/batch-log.ts";
import { batchCsv, batchesCsv } from "../../src/review/csv.ts";
import { batchMarkdown } from "../../src/review/markdown.ts";
import { batchPage } from "../../src/review/pages/batch-page.ts";
import { plainText } from "../../src/screen/plain.ts";
import { loadLibrary } from "../../src/session/reading/load-library.ts";
import { MadeUpKitchen } from "../../src/session/rehearsal/made-up-kitchen.ts";
import { openTellServer } from "../../src/session/tell/tell-server.ts";
import { Speaker } from "../../src/voice/speaking/speaker.ts";
import { nasties } from "./nasties.ts";

const ZONE = "America/Denver";
/** What could steer a terminal or turn text around. */
const STEERS =
  /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u200e\u200f\u202a-\u202e\u2066-\u2069\u2028\u2029]/;
const SPOKEN = /^[A-Za-z0-9 ,.?!'\-:]*$/;

let library: Library;
let folder: string;
let marker: string;

beforeAll(async () => {
  library = await loadLibrary(["recipes"], {});
  folder = fs.mkdtempSync(join(tmpdir(), "hostile-"));
  marker = join(folder, "marker");
});
afterAll(() => fs.rmSync(folder, { recursive: true, force: true }));

function kitchenThatSpeaks() {
  const spoken: string[] = [];
  const engine = {
    name: "listed",
    start: (text: string) => {
      spoken.push(text);
      return { done: Promise.resolve({ kind: "spoken" as const }), stop: () => {} };
    },
  };
  const disk = new MemoryDisk();
  const kitchen = new MadeUpKitchen({
    library,
    disk,
    startMs: Date.UTC(2027, 7, 14, 14),
    zone: ZONE,
    setUp: [{ type: "kitchen-set", altitudeFt: 6200, t: 0 }],
    version: "0.0.0",
    voice: (clock, notice) =>
      new Speaker({ engine, bell: { ring: () => {} }, clock, advice: "", onProblem: notice }),
  });
  return { kitchen, disk, spoken };
}

/** Everything a person says and everything that may hold their words afterwards. */
async function saidEverywhere(text: string) {
  const { kitchen, disk, spoken } = kitchenThatSpeaks();
  const { session } = kitchen;
  session.hear(`start dilly beans with four pounds of ${text}`);
  // What nobody knows behind "with" is asked about before anything is begun.
  if (session.state.active.length === 0) session.hear("no");
  if (session.state.active.length === 0) session.hear("start dilly beans");
  const batch = session.state.active[0] ?? "";
  session.hear(`note ${text}`);
  session.hear(`set a timer for one minute for the ${text}`);
  session.hear(`remind me tomorrow at nine to ${text}`);
  session.hear(text);
  session.setDown([
    { type: "note", owner: batch, text, t: 0 },
    { type: "timer-set", timer: "planted", label: text, minutes: 1, t: 0 },
    { type: "ingredient-changed", batch, detail: text, t: 0 },
    { type: "jars-moved", batch, place: text, t: 0 },
  ]);
  for (let turn = 0; turn < 8; turn++) await Promise.resolve();
  kitchen.clock.advance(120_000);
  kitchen.crash(60_000);
  for (let turn = 0; turn < 8; turn++) await Promise.resolve();
  return { kitchen, disk, spoken, batch, now: kitchen.session.now() };
}

function journalText(disk: MemoryDisk): string {
  const read = disk.read("made-up/journal-2027.jsonl");
  return read.ok ? Buffer.from(read.bytes).toString("utf8") : "";
}

async function nothingEscapes(text: string): Promise<void> {
  const { kitchen, disk, spoken, batch, now } = await saidEverywhere(text);
  const { state } = kitchen.session;
  for (const line of kitchen.lines) {
    const shown = plainText(line, ZONE);
    expect(shown).not.toMatch(STEERS);
    expect(shown).not.toContain("\n");
  }
  for (const said of spoken) {
    expect(said).toMatch(SPOKEN);
    expect(said.length).toBeLessThanOrEqual(700);
  }
  const lines = journalText(disk).trimEnd().split("\n");
  for (const line of lines) expect(() => JSON.parse(line)).not.toThrow();
  const notes = lines.map((line) => JSON.parse(line)).filter((one) => one.type === "note");
  expect(notes.map((one) => one.text)).toContain(text);
  const log = review(state, now);
  const one = log.batches.find((each) => each.id === batch);
  const kept = state.batches[batch];
  if (!one || !kept) throw new Error("the batch is gone");
  expect(await safeOutput(reviewText(log))).not.toMatch(STEERS);
  const json = await safeOutput(JSON.stringify(log));
  expect(json).not.toMatch(STEERS);
  expect(JSON.parse(json)).toEqual(JSON.parse(JSON.stringify(log)));
  const page = batchPage(state, kept, now);
  expect(page).not.toMatch(/<(script|img|iframe|object|svg\/)|<[^>]*\son\w+\s*=/i);
  for (const table of [batchesCsv(log.batches), batchCsv([one])]) {
    const rows: string[][] = parse(table, { relax_column_count: true });
    for (const cell of rows.flat()) expect(cell).not.toMatch(/^[=+@\t\r]|^-[^0-9]/);
  }
  expect(batchMarkdown(one)).not.toMatch(/(?<!\\)<(script|img|svg)|\]\(javascript:/i);
}

describe("words that are more than words", () => {
  it("stay words in every place they reach", { timeout: 120_000 }, async () => {
    for (const text of nasties(marker)) await nothingEscapes(text);
    expect(fs.existsSync(marker)).toBe(false);
  });

  it("stay words however they are put together", { timeout: 120_000 }, async () => {
    const parts = fc.array(
      fc.oneof(fc.constantFrom(...nasties(marker)), fc.string({ unit: "binary", maxLength: 30 })),
      { minLength: 1, maxLength: 3 },
    );
    await fc.assert(
      fc.asyncProperty(parts, async (list) => nothingEscapes(list.join(" ").slice(0, 6000))),
      { numRuns: 40 },
    );
  });

  it("take bounded time, however long and deep", () => {
    const { kitchen } = kitchenThatSpeaks();
    const long = [
      "yes ".repeat(50_000),
      "((((".repeat(20_000),
      "and ".repeat(20_000),
      "one hundred ".repeat(20_000),
      `note ${"a".repeat(200_000)}`,
      "\u0301".repeat(100_000),
    ];
    for (const text of long) {
      const began = performance.now();
      kitchen.session.hear(text);
      expect(performance.now() - began).toBeLessThan(3000);
    }
  });
});

describe("the socket for other programs", () => {
  it.skipIf(process.platform === "win32")(
    "is its owner's, and takes only what it knows",
    async () => {
      const home = join(folder, "socket");
      fs.mkdirSync(home);
      const heard: string[] = [];
      const opened = await openTellServer(
        home,
        () => true,
        (words) => {
          heard.push(String(words));
          return { refused: false, lines: [String(words)] };
        },
      );
      if (!opened.ok) throw new Error(opened.message);
      expect(fs.statSync(join(home, "tell")).mode & 0o777).toBe(0o700);
      expect(fs.statSync(opened.server.address).mode & 0o177).toBe(0);
      const tell = (text: string | Buffer) =>
        new Promise<string>((resolve) => {
          const socket = connect(opened.server.address);
          let answer = "";
          socket.on("data", (data) => {
            answer += data;
          });
          socket.on("close", () => resolve(answer));
          socket.on("error", () => {});
          socket.end(text);
        });
      for (const text of nasties(marker)) expect(await tell(`${text}\n`)).not.toMatch(STEERS);
      await tell(Buffer.alloc(3_000_000, 0x41));
      await tell(Buffer.from([0xff, 0xfe, 0x00, 0x0a]));
      expect(await tell("what now\n")).toBe("done\nwhat now\n");
      for (const words of heard) expect(words.length).toBeLessThanOrEqual(2000);
      await opened.server.close();
    },
  );
});

describe("hostile recipe files", () => {
  it("are refused in bounded time", { timeout: 60_000 }, async () => {
    const own = join(folder, "recipes");
    fs.mkdirSync(own);
    const laughs = ["a: &a [x, x, x, x, x, x, x, x, x]"];
    for (let at = 1; at < 9; at++) {
      const [name, before] = [String.fromCharCode(97 + at), String.fromCharCode(96 + at)];
      laughs.push(`${name}: &${name} [${`*${before}, `.repeat(8)}*${before}]`);
    }
    const files: Record<string, string> = {
      "deep.yaml": `a: ${"[".repeat(20_000)}${"]".repeat(20_000)}`,
      "laughs.yaml": laughs.join("\n"),
      "long.yaml": `id: x\ntitle: ${"y".repeat(2_000_000)}\n`,
      "proto.yaml": "__proto__: {polluted: true}\nconstructor: {prototype: {polluted: true}}\n",
      "tag.yaml": "id: !!js/function 'function () { return 1 }'\n",
      "escape.yaml": 'id: "\\e[2Jx"\ntitle: "\\e]0;x\\a"\n',
      "binary.yaml": "\u0000\u0001\u0002",
    };
    for (const [name, text] of Object.entries(files)) fs.writeFileSync(join(own, name), text);
    const began = performance.now();
    const read = await loadLibrary(["recipes", own], {});
    expect(performance.now() - began).toBeLessThan(20_000);
    expect(read.recipes.size).toBe(library.recipes.size);
    for (const name of Object.keys(files)) {
      expect(
        read.problems.some((problem) => problem.startsWith(name)),
        name,
      ).toBe(true);
    }
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
  });
});

const PROGRAM = join(import.meta.dirname, "../../dist/brinebell.js");
const hasStrace = spawnSync("strace", ["-V"]).status === 0;

/** Nothing but sockets between programs of this machine may be asked for. */
describe.skipIf(!fs.existsSync(PROGRAM))("the built program", () => {
  function run(args: string[], input = ""): { out: string; calls: string; status: number | null } {
    const home = join(folder, "home");
    const trace = join(folder, "trace");
    const program = [PROGRAM, "--home", home, ...args];
    const traced = ["-f", "-qq", "-e", "trace=connect,socket", "-o", trace, process.execPath];
    const [command, words] = hasStrace
      ? ["strace", [...traced, ...program]]
      : [process.execPath, program];
    const done = spawnSync(command, words, { input, encoding: "utf8", timeout: 60_000 });
    const calls = hasStrace ? fs.readFileSync(trace, "utf8") : "";
    return { out: done.stdout + done.stderr, calls, status: done.status };
  }

  it("opens no connection to any network, and shows nothing that steers", {
    timeout: 180_000,
  }, () => {
    const words = nasties(marker)
      .map((text) => `note ${text.replace(/[\r\n]/g, " ")}\n`)
      .join("");
    const script = `we're at 6200 feet\nstart dilly beans with four pounds of Provider\n${words}`;
    const calls = [
      run(["--plain", "--silent"], script),
      run(["review"]),
      run(["review", "--json"]),
      run(["pantry"]),
      run(["reminders"]),
      run(["recipes"]),
      run(["kitchen"]),
      run(["rehearse", "dilled-green-beans", "--json"]),
      run(["tell", "hello"]),
    ];
    // The kitchen's own socket shows that the trace sees sockets at all.
    if (hasStrace) expect(calls[0]?.calls).toMatch(/socket\(AF_(UNIX|LOCAL)/);
    for (const { out, calls: made, status } of calls) {
      expect(out).not.toMatch(STEERS);
      expect(status).not.toBeNull();
      for (const line of made.split("\n")) {
        if (/\b(socket|connect)\(/.test(line)) expect(line).toMatch(/AF_UNIX|AF_LOCAL|resumed/);
      }
    }
    expect(fs.existsSync(marker)).toBe(false);
  });

  it.skipIf(process.platform === "win32")("keeps its files for their owner alone", () => {
    const open: string[] = [];
    const walk = (path: string) => {
      for (const entry of fs.readdirSync(path, { withFileTypes: true })) {
        const full = join(path, entry.name);
        if ((fs.statSync(full).mode & 0o077) !== 0) open.push(full);
        if (entry.isDirectory()) walk(full);
      }
    };
    const home = join(folder, "home");
    expect(fs.statSync(home).mode & 0o777).toBe(0o700);
    walk(home);
    expect(open).toEqual([]);
  });

  it("takes a flood of lines without growing", { timeout: 60_000 }, async () => {
    const home = join(folder, "flood");
    const args = ["--max-old-space-size=120", PROGRAM, "--home", home, "--plain", "--silent"];
    const child = spawn(process.execPath, args, { stdio: ["pipe", "ignore", "pipe"] });
    child.stdin.on("error", () => {});
    child.stdin.write("x".repeat(30_000_000));
    child.stdin.end("\nnote still here\n");
    const code = await new Promise((resolve) => child.on("close", resolve));
    expect(code).toBe(0);
    const [journal = ""] = fs.readdirSync(home).filter((name) => name.endsWith(".jsonl"));
    expect(fs.readFileSync(join(home, journal), "utf8")).toContain("still here");
  });
});
