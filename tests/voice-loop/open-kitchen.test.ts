import { spawn } from "node:child_process";
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { missingForLoop } from "./loop-bench.ts";
import { recordingOf } from "./recording.ts";
import { syntheticVoices } from "./synthetic-voices.ts";

const PROGRAM = join(import.meta.dirname, "../../dist/brinebell.js");
const built = existsSync(PROGRAM) ? undefined : "the built program (npm run build)";
const missing = missingForLoop() ?? built;
if (missing) console.log(`an open kitchen that listens: skipped, ${missing} is missing`);

/** Quiet after each command: the kitchen answers and takes the next grammar. */
const GAP_MS = 2500;

/** From the first words on the screen to the first sound that is heard, at most. */
const LISTENS_WITHIN_MS = 4000;

type Event = { type: string; [field: string]: unknown };

/** The program's events, and what it wrote on its standard output. */
type Kept = { events: Event[]; text: string };

/** `path` for a kitchen that speaks with the programs found there; silent where missing. */
type Opening = { options?: string[]; path?: string };

/** Opens a kitchen that listens to a recording, until the recording is over. */
async function hearIn(folder: string, sound: Buffer, opening: Opening = {}): Promise<Kept> {
  mkdirSync(folder);
  const path = join(folder, "kitchen.raw");
  writeFileSync(path, sound);
  const home = join(folder, "home");
  const given = ["--home", home, "--plain", "--listen", "--sound", path];
  given.push(...(opening.path === undefined ? ["--silent"] : []), ...(opening.options ?? []));
  const child = spawn(process.execPath, [PROGRAM, ...given], {
    stdio: ["pipe", "pipe", "inherit"],
    env: { ...process.env, PATH: opening.path ?? process.env.PATH },
  });
  let text = "";
  child.stdout.on("data", (chunk: Buffer) => {
    text += chunk.toString();
  });
  const ended = new Promise<void>((resolve) => child.once("close", () => resolve()));
  // It listens from a moment after its first words on: on a busy machine that takes a while.
  child.stdout.once("data", () => {
    setTimeout(() => child.stdin.end(), sound.length / 32 + LISTENS_WITHIN_MS);
  });
  await ended;
  const journal = readdirSync(home).filter((name) => /^journal-\d+\.jsonl$/.test(name));
  const events = journal
    .flatMap((name) => readFileSync(join(home, name), "utf8").trim().split("\n"))
    .map((line) => JSON.parse(line) as Event)
    .filter(({ type }) => type !== undefined);
  return { events, text };
}

function minutesSet(events: readonly Event[]): unknown[] {
  return events.filter(({ type }) => type === "timer-set").map(({ minutes }) => minutes);
}

describe.skipIf(missing)("an open kitchen that listens", () => {
  let folder = "";
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), "open-kitchen-"));
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  const voice = () => {
    const found = syntheticVoices()[0];
    if (!found) throw new Error("no voice speaks");
    return found;
  };

  it("does what is said to it, question by question, and keeps it in its journal", async () => {
    const commands = [
      "six thousand two hundred feet",
      "start the pickled beets",
      "timer for twenty minutes",
      "the beets are done",
      "it's boiling",
      "the beets",
      "abandon the beets",
      "yes",
    ];
    const { bytes } = recordingOf(voice(), commands, GAP_MS);
    const { events, text } = await hearIn(join(folder, "session"), bytes);
    const said = [...text.matchAll(/you said: (.*)/g)].map((match) => match[1]);
    expect(said).toEqual(commands);
    expect(events.find(({ type }) => type === "kitchen-set")).toMatchObject({ altitudeFt: 6200 });
    expect(minutesSet(events)).toEqual([20]);
    const types = events.map(({ type }) => type);
    for (const type of ["batch-begun", "stage-done", "boil", "abandoned"]) {
      expect(types).toContain(type);
    }
  });

  it("hears the very first command, before it knows the voice and the room", async () => {
    const said = "start the dilly beans";
    const { bytes } = recordingOf(voice(), [said], GAP_MS);
    const { events, text } = await hearIn(join(folder, "first"), bytes);
    expect(text).toContain(`you said: ${said}`);
    expect(events.map(({ type }) => type)).toContain("batch-begun");
  });

  it("does not hear what is said while it speaks itself", async () => {
    const programs = join(folder, "programs");
    mkdirSync(programs);
    // A voice that takes four seconds for every sentence; the altitude is asked for at once.
    const voiceProgram = join(programs, "espeak-ng");
    writeFileSync(voiceProgram, "#!/bin/sh\ncat > /dev/null\nsleep 4\n", { mode: 0o755 });
    const said = ["timer for forty minutes", "timer for twenty minutes"];
    const { bytes } = recordingOf(voice(), said, 6000);
    const path = `${programs}:${process.env.PATH}`;
    const { events } = await hearIn(join(folder, "speaking"), bytes, { path });
    expect(minutesSet(events)).toEqual([20]);
  });

  it("listens for other wake words where it is told to, and then for no others", async () => {
    const wakeWords = ["copper", "kettle"];
    const own = recordingOf(voice(), ["timer for twenty minutes"], GAP_MS, wakeWords);
    const other = recordingOf(voice(), ["timer for forty minutes"], GAP_MS);
    const both = Buffer.concat([own.bytes, other.bytes]);
    const options = ["--wake-words", wakeWords.join(" ")];
    const { events } = await hearIn(join(folder, "wake-words"), both, { options });
    expect(minutesSet(events)).toEqual([20]);
  });

  it("listens without wake words in a quiet kitchen", async () => {
    const said = "start the pickled beets";
    const { bytes } = recordingOf(voice(), [said], GAP_MS, []);
    const options = ["--wake-words", "none"];
    const { text } = await hearIn(join(folder, "none"), bytes, { options });
    expect(text).toContain(`you said: ${said}`);
  });
});
