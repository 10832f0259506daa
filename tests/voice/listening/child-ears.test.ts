import { rmSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from "vitest";
import type { EarsGrammar, HeardWords } from "../../../src/ports/ears.ts";
import { realClock } from "../../../src/session/time/real-clock.ts";
import { ChildEars } from "../../../src/voice/listening/child-ears.ts";
import type { ListeningSetup } from "../../../src/voice/listening/listening-lines.ts";
import { loadSphinx } from "../../../src/voice/listening/sphinx-library.ts";
import { buildListeningProgram } from "../built-program.ts";
import { FakePrograms } from "../fake-programs.ts";

const GRAMMAR: EarsGrammar = { command: "command", rules: "<command> = next | it's boiling;" };
const recognizerIsHere = !("missing" in loadSphinx());

let built = "";
let programs: FakePrograms;
let ears: ChildEars | undefined;
let problems: string[];
let heard: HeardWords[];
let recoveries: number;
let overs: number;

beforeAll(async () => {
  built = await buildListeningProgram();
});
afterAll(() => rmSync(dirname(built), { recursive: true, force: true }));
beforeEach(() => {
  programs = new FakePrograms();
  problems = [];
  heard = [];
  recoveries = 0;
  overs = 0;
});
afterEach(async () => {
  await ears?.stop();
  programs.remove();
});

function open(programPath: string, setup: Partial<ListeningSetup> = {}): ChildEars {
  ears = new ChildEars({
    programPath,
    setup: {
      source: { from: "microphone", searchPath: programs.folder },
      wakeWords: ["brine", "bell"],
      ...setup,
    },
    clock: realClock(),
    searchPath: programs.folder,
    events: {
      onHeard: (what) => heard.push(what),
      onProblem: (message) => problems.push(message),
      onRecovered: () => recoveries++,
      onOver: () => overs++,
    },
  });
  ears.start(GRAMMAR);
  return ears;
}

/** A stand-in for the listening program. */
function script(name: string, body: string): string {
  const path = join(programs.folder, `${name}.mjs`);
  writeFileSync(path, body);
  return path;
}

describe("the ears, a separate program", () => {
  it("that dies is reported once and started again", async () => {
    const path = script("dies", "process.exit(1);");
    open(path);
    await expect.poll(() => problems.length, { timeout: 4000 }).toBe(1);
    writeFileSync(path, 'console.log(JSON.stringify({is:"level",level:{}}));setTimeout(()=>0,6e4)');
    await expect.poll(() => recoveries, { timeout: 6000 }).toBe(1);
    expect(problems).toEqual(["Listening stopped; trying again. Typing goes on."]);
  });

  it("report what they hear, and anything else is ignored", async () => {
    const line = { is: "heard", heard: { text: "next", confidence: 1, heardAtMs: 1, delayMs: 1 } };
    const body = `console.log('rubbish'); console.log(${JSON.stringify(JSON.stringify(line))});
      setTimeout(() => 0, 60000);`;
    open(script("talks", body));
    await expect.poll(() => heard.map(({ text }) => text), { timeout: 4000 }).toEqual(["next"]);
  });

  it("that do not end when asked are killed", async () => {
    const body = "process.stdin.resume(); setInterval(() => 0, 1000);";
    const stubborn = open(script("stays", body));
    const started = performance.now();
    await stubborn.stop();
    expect(performance.now() - started).toBeLessThan(3000);
  });

  it("without their library name all that is missing, and how to get it", async () => {
    programs.add("apt", "");
    open(built, { modelFolder: "/nowhere" });
    await expect.poll(() => problems.length, { timeout: 6000 }).toBe(1);
    expect(problems[0]).toContain("the English model of pocketsphinx, a program that records");
    expect(problems[0]).toContain("sudo apt install libpocketsphinx3 pocketsphinx-en-us");
    expect(problems[0]).toContain("sudo apt install alsa-utils");
    await new Promise((resolve) => setTimeout(resolve, 1500));
    expect(problems).toHaveLength(1);
  });
});

describe.skipIf(!recognizerIsHere || process.platform === "win32")("a microphone", () => {
  it("that is missing is reported once, with the command that gets a recorder", async () => {
    programs.add("dnf", "");
    open(built);
    await expect.poll(() => problems.length, { timeout: 8000 }).toBe(1);
    expect(problems[0]).toContain("no program that records");
    expect(problems[0]).toContain("sudo dnf install alsa-utils");
  });

  it("that comes and goes is reported once each time", { timeout: 30_000 }, async () => {
    programs.add("arecord", "echo 'unplugged' >&2; exit 1");
    open(built);
    await expect.poll(() => problems.length, { timeout: 8000 }).toBe(1);
    programs.add("arecord", "exec cat /dev/zero | head -c 200000; exec sleep 1");
    await expect.poll(() => recoveries, { timeout: 12_000 }).toBe(1);
    expect(problems[0]).toContain("unplugged");
  });

  it("that is a file is heard to its end; a bad grammar changes nothing", async () => {
    const path = join(programs.folder, "silence.raw");
    writeFileSync(path, Buffer.alloc(64_000));
    const listening = open(built, { source: { from: "file", path, paced: false } });
    listening.expect({ command: "command", rules: "<command> = ((((" });
    await expect.poll(() => overs, { timeout: 8000 }).toBe(1);
    await expect.poll(() => problems.length, { timeout: 8000 }).toBe(1);
    expect(problems[0]).toContain("refused the grammar");
    expect(heard).toEqual([]);
  });
});
