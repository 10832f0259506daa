import { beforeAll, describe, expect, it } from "vitest";
import { readRehearseCall } from "../../../src/commands/rehearse/rehearse.ts";
import type { MemoryDisk } from "../../../src/journal/memory-disk.ts";
import { readJournal } from "../../../src/journal/read-journal.ts";
import { historyOf } from "../../../src/kitchen/events.ts";
import type { Library } from "../../../src/recipe/library.ts";
import { loadLibrary } from "../../../src/session/reading/load-library.ts";
import { readScript } from "../../../src/session/rehearsal/rehearsal-script.ts";
import { Rehearsal } from "../../../src/session/rehearsal/rehearse.ts";

let library: Library;

beforeAll(async () => {
  library = await loadLibrary(["recipes"], {});
});

/** A morning of beans, played as far as these lines go. */
async function played(...lines: string[]) {
  const call = await readRehearseCall(["dilled-green-beans"], {
    library: () => library,
    readFile: () => "",
    version: "0.0.0",
  });
  if (!call.ok) throw new Error(call.message);
  const script = readScript(lines.join("\n"));
  if (!script.ok) throw new Error(script.message);
  const rehearsal = new Rehearsal({ ...call.wish.parts, script: script.lines });
  const { kitchen, trouble } = await rehearsal.play();
  expect(trouble).toBeUndefined();
  const { session, disk } = kitchen;
  const texts = kitchen.lines.map(({ kind, text }) => `${kind}: ${text}`);
  const history = historyOf(session.state);
  return { kitchen, session, disk: disk as MemoryDisk, texts, history };
}

const onDisk = (disk: MemoryDisk) => readJournal(disk, "made-up").records.length;
const count = (texts: string[], part: string) => texts.filter((one) => one.includes(part)).length;

describe("a kitchen that listens", () => {
  it("takes what is heard clearly as if it were typed", async () => {
    const { history } = await played("+0:05 [hears 91% set a timer for ten minutes]");
    expect(history.filter((one) => one.type === "timer-set").length).toBe(1);
  });

  it("asks before it accepts what is heard in doubt", async () => {
    const doubt = "+0:05 [hears 55% set a timer for ten minutes]";
    const asked = await played(doubt);
    expect(asked.texts.at(-1)).toMatch(/asked: I heard: set a timer.*A timer for .*minutes\?/);
    expect(asked.history.some((one) => one.type === "timer-set")).toBe(false);
    const confirmed = await played(doubt, "+0:00:05 [hears 55% yes]");
    expect(confirmed.history.filter((one) => one.type === "timer-set").length).toBe(1);
    const denied = await played(doubt, "+0:00:05 [hears 90% no]");
    expect(denied.history.some((one) => one.type === "timer-set")).toBe(false);
  });

  it("treats two hearings with the same meaning as certain", async () => {
    const line = "+0:05 [hears 55% set a timer for ten minutes or else timer for ten minutes]";
    const { history } = await played(line);
    expect(history.some((one) => one.type === "timer-set")).toBe(true);
  });

  it("does not let clatter that sounds like a yes vouch for the food", async () => {
    const day = ["+0:25 done", "+0:30 the brine is boiling", "+0:20 the canner's ready"];
    const filled = [...day, "+0:20 8 pints filled, new lids", "+0:01 five percent"];
    const vouches = (played: { history: { type: string }[] }) =>
      played.history.filter((one) => one.type === "confirmed").length;
    const before = vouches(await played(...filled));
    const clatter = await played(...filled, "+0:01 [hears 30% half an inch]");
    expect(clatter.texts.at(-1)).toBe("asked: I heard: half an inch. Is that right?");
    expect(vouches(clatter)).toBe(before);
    const twice = await played(
      ...filled,
      "+0:01 [hears 30% half an inch]",
      "+0:00:04 [hears 80% yes]",
    );
    expect(vouches(twice)).toBe(before + 1);
  });

  it("says once that the microphone is gone, takes typed words, and hears again", async () => {
    const { texts, history } = await played(
      "+0:05 [microphone gone]",
      "+0:05 [microphone gone]",
      "+0:05 [hears 95% set a timer for ten minutes]",
      "+0:05 set a timer for two minutes",
      "+0:05 [microphone ok]",
      "+0:05 [hears 95% set a timer for three minutes]",
    );
    expect(count(texts, "The microphone gives nothing")).toBe(1);
    const minutes = history.flatMap((one) => (one.type === "timer-set" ? one.minutes : []));
    expect(minutes).toEqual([2, 3]);
  });

  it("says so again when it is opened again, and resumes listening by itself", async () => {
    const gone = await played("+0:05 [microphone gone]", "+0:05 [crash]");
    expect(count(gone.texts, "The microphone gives nothing")).toBe(2);
    const back = await played(
      "+0:05 [microphone ok]",
      "+0:05 [crash]",
      "+0:05 [hears 95% set a timer for three minutes]",
    );
    expect(back.history.some((one) => one.type === "timer-set")).toBe(true);
  });

  it("hears nothing while Brinebell speaks", async () => {
    const { history } = await played(
      "+0:05 [microphone ok]",
      "+0:01 [voice hangs]",
      "+0:01 what now",
      "+0:00:01 [hears 95% set a timer for three minutes]",
      "+0:05 [voice ok]",
      "+0:30 [hears 95% set a timer for four minutes]",
    );
    const minutes = history.flatMap((one) => (one.type === "timer-set" ? one.minutes : []));
    expect(minutes).toEqual([4]);
  });
});

describe("a kitchen on a slow disk", () => {
  it("has everything on the disk that it answered, and rings no later than the disk", async () => {
    const slowMs = 3000;
    const { history, disk, session, texts } = await played(
      "+0:05 [disk slow by 0:00:03]",
      "+0:01 set a timer for four minutes",
      "+0:01 set a timer for six minutes",
      "+0:02 what's running",
      "+0:20 what now",
    );
    expect(session.notRecorded).toBe(false);
    expect(onDisk(disk)).toBe(history.length);
    expect(count(texts, "heard: what's running")).toBe(1);
    const lateMs = history.flatMap((one) => {
      if (one.type !== "timer-set") return [];
      const rang = history.find((event) => event.type === "due" && event.key === one.timer);
      return (rang?.w ?? Number.NaN) - (one.t + one.minutes * 60_000);
    });
    expect(lateMs.length).toBe(2);
    for (const late of lateMs) {
      expect(late).toBeGreaterThanOrEqual(0);
      expect(late).toBeLessThanOrEqual(8 * slowMs);
    }
  });
});

describe("a kitchen whose folder is full when it is opened", () => {
  const full = ["+0:05 [disk full]", "+0:01 [crash]", "+0:01 note the north bed"];

  it("says so at once, goes on, and claims nothing", async () => {
    const { kitchen, session, texts, history, disk } = await played(...full);
    expect(kitchen.withoutLock).toBe(1);
    expect(session.notRecorded).toBe(true);
    expect(texts.some((one) => /^notice: Not recorded: .*full/.test(one))).toBe(true);
    expect(count(texts, "alarm: This is not recorded")).toBeGreaterThanOrEqual(1);
    expect(texts.at(-1)).toBe("answer: This is not recorded: the log cannot be written just now.");
    expect(history.some((one) => one.type === "note")).toBe(true);
    expect(onDisk(disk)).toBeLessThan(history.length);
  });

  it("writes everything once there is room", async () => {
    const { session, texts, history, disk } = await played(...full, "+0:01 [disk ok]");
    expect(session.notRecorded).toBe(false);
    expect(count(texts, "The log is written again, with nothing missing.")).toBe(1);
    expect(onDisk(disk)).toBe(history.length);
    expect(disk.list("made-up")).toMatchObject({ names: expect.arrayContaining(["lock"]) });
  });

  it("never writes once another program has opened the folder", async () => {
    const { kitchen, session, disk } = await played(...full);
    disk.roomBytes = Number.POSITIVE_INFINITY;
    const before = kitchen.lines.length;
    kitchen.handOver();
    expect(kitchen.session).not.toBe(session);
    const said = kitchen.lines.slice(before).map((line) => line.text);
    expect(said.some((text) => /another program|has this kitchen open/.test(text))).toBe(true);
    expect(session.notRecorded).toBe(true);
    const notes = readJournal(disk, "made-up").records.filter((one) => one.type === "note");
    expect(notes).toEqual([]);
  });
});

describe("a log whose line that began a load is damaged", () => {
  it("says what it cannot place, and gives the load's name to nothing else", async () => {
    const { kitchen, disk } = await played("+0:00 [cook until process]");
    const path = "made-up/journal-2027.jsonl";
    const read = disk.read(path);
    if (!read.ok) throw new Error(read.message);
    const text = Buffer.from(read.bytes).toString();
    const [load] = Object.keys(kitchen.session.state.loads);
    disk.plant(path, Buffer.from(text.replace('"type":"load-opened"', '"type":"load_opened"')));
    kitchen.crash();
    const said = kitchen.lines.map((line) => line.text).join(" ");
    expect(said).toContain(`What the log says of ${load} cannot be placed`);
    kitchen.session.hear("yes");
    expect(Object.keys(kitchen.session.state.loads)).not.toContain(load);
  });
});
