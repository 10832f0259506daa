/**
 * A line that does not come through the gate is sealed and named like damage, and what it touches
 * is not as-tested until a person has said whether anything is missing there.
 */

import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeAll, describe, expect, it } from "vitest";
import { recordLine } from "../../../src/journal/line.ts";
import { MemoryDisk } from "../../../src/journal/memory-disk.ts";
import { openJournal } from "../../../src/journal/open-journal.ts";
import { readJournal } from "../../../src/journal/read-journal.ts";
import type { KitchenEvent } from "../../../src/kitchen/events.ts";
import { lotsIn } from "../../../src/kitchen/jars/lots.ts";
import { type Review, review } from "../../../src/review/batch-log.ts";
import { shelfJars } from "../../../src/review/shelf/shelf-jars.ts";
import { archiveText } from "../../../src/session/archive/archive.ts";
import { exportKitchen, importKitchen } from "../../../src/session/archive/move-house.ts";
import { KITCHEN_FORMAT } from "../../../src/session/reading/journal-records.ts";
import { readKitchen } from "../../../src/session/reading/read-kitchen.ts";
import { MadeUpKitchen } from "../../../src/session/rehearsal/made-up-kitchen.ts";
import { SILENT } from "../../../src/session/short-session.ts";
import { moved, opening, playedEvents } from "../../review/demo-season.ts";
import { theLibrary } from "../../scenarios/play.ts";

const HOME = "/home";
const FILE = "journal-2027.jsonl";
const YEARS_BACK = -5 * 366;
const open: string[] = [];
/** Beans, and beets a day later. */
let events: KitchenEvent[];
let beans = "";
let beets = "";

beforeAll(async () => {
  const played = (recipe: string) => playedEvents(theLibrary(), { recipe, jar: "pint" });
  const first = moved(await played("dilled-green-beans"), 0, 1);
  const second = moved(await played("pickled-beets"), 1, 2);
  events = [...opening(first[0]?.t ?? 0), ...first, ...second];
  [beans = "", beets = ""] = events.flatMap((event) => {
    return event.type === "batch-begun" ? [event.batch] : [];
  });
}, 60_000);

afterEach(() => {
  for (const folder of open.splice(0)) rmSync(folder, { recursive: true, force: true });
});

/** The place of the first event of a type, at or after the beginning of a batch. */
function placeOf(type: KitchenEvent["type"], batch = beans): number {
  const from = events.findIndex((event) => event.type === "batch-begun" && event.batch === batch);
  return events.findIndex((event, at) => at >= from && event.type === type);
}

/** A disk with these events, one of them changed. */
function diskWith(at: number, change: object, all: readonly object[] = events): MemoryDisk {
  const disk = new MemoryDisk();
  const records = all.map((event, index) => (index === at ? { ...event, ...change } : event));
  const added = openJournal(disk, HOME, { year: () => 2027 }).journal.append(records);
  if (!added.ok) throw new Error(added.message);
  return disk;
}

/** The same with a byte of a line changed, so that it cannot be read at all. */
function diskTorn(at: number): MemoryDisk {
  const disk = diskWith(-1, {});
  const lines = textOf(disk).split("\n");
  lines[at + 1] = (lines[at + 1] ?? "").replace('"type":"', '"type":"x');
  disk.plant(`${HOME}/${FILE}`, Buffer.from(lines.join("\n")));
  return disk;
}

function textOf(disk: MemoryDisk, file = FILE): string {
  const read = disk.read(`${HOME}/${file}`);
  if (!read.ok) throw new Error(read.message);
  return Buffer.from(read.bytes).toString("utf8");
}

function look(disk: MemoryDisk) {
  const { state, nowMs, notices } = readKitchen(HOME, { wallMs: 0, disk });
  return { state, notices, review: review(state, nowMs), nowMs };
}

function verdictOf(of: Review, id: string) {
  const found = of.batches.find((one) => one.id === id);
  if (!found) throw new Error(`no ${id}`);
  return { verdict: found.verdict, reasons: found.reasons.join("; ") };
}

function kitchenOn(disk: MemoryDisk): MadeUpKitchen {
  return new MadeUpKitchen({
    library: theLibrary(),
    startMs: (events.at(-1)?.w ?? 0) + 60_000,
    zone: "America/Denver",
    setUp: [],
    disk,
    folder: HOME,
    version: "0.0.0",
    voice: () => SILENT,
  });
}

const sealedAlone = (of: Review) =>
  of.batches.filter((one) => one.verdict !== "as-tested").map((one) => one.id);

describe("a line that does not come through the gate", () => {
  it("does not exist where all is well", () => {
    const { notices, review: all } = look(diskWith(-1, {}));
    expect([notices, sealedAlone(all)]).toEqual([[], []]);
  });

  it("is named with its file and line, and bars the batch it names from as-tested", () => {
    const at = placeOf("confirmed");
    const { notices, review: all } = look(diskWith(at, { held: "surely" }));
    expect(notices).toEqual([
      `line ${at + 2} of ${HOME}/${FILE}: the field held of its confirmed holds what it cannot`,
    ]);
    expect(sealedAlone(all)).toEqual([beans]);
    expect(verdictOf(all, beans).reasons).toMatch(/nobody confirmed|damaged at line/);
  });

  it("bars the load it names, and the batch whose jars are in it", () => {
    const at = placeOf("asked", beets);
    const { load } = events[placeOf("end-answer", beets)] as { load: string };
    const change = { type: "water-low", load, key: undefined, text: undefined, dregs: true };
    const { review: all } = look(diskWith(at, change));
    expect(sealedAlone(all)).toEqual([beets]);
    expect(all.loads.find((one) => one.id === load)).toMatchObject({ verdict: "unfinished" });
    expect(verdictOf(all, beets)).toEqual({
      verdict: "unfinished",
      reasons: `the log is damaged at line ${at + 2} of ${FILE}: nobody has said what it held`,
    });
  });

  it("bars what was open between its neighbors where it names nothing", () => {
    const at = placeOf("asked", beets);
    const change = { type: "gap", from: "noon", key: undefined, text: undefined };
    expect(sealedAlone(look(diskWith(at, change)).review)).toEqual([beets]);
    expect(sealedAlone(look(diskTorn(placeOf("asked"))).review)).toEqual([beans]);
  });

  it("also bars what was open where it names one known thing and one unknown", () => {
    const at = placeOf("asked", beets);
    const parts = [
      { batch: beans, jars: 3, first: 1 },
      { batch: 7, jars: 3, first: 4 },
    ];
    const { load } = events[placeOf("end-answer")] as { load: string };
    const change = { type: "loaded", load, parts, key: undefined, text: undefined };
    expect(sealedAlone(look(diskWith(at, change)).review)).toEqual([beans, beets]);
    const both = { ...change, parts: [{ ...parts[0], jars: "three" }] };
    expect(sealedAlone(look(diskWith(at, both)).review)).toEqual([beans]);
  });

  it("may be nested without end", () => {
    const deep = `${"[".repeat(50_000)}${"]".repeat(50_000)}`;
    const text = textOf(diskWith(-1, {}));
    const { n, sum } = JSON.parse(text.trimEnd().split("\n").at(-1) ?? "");
    const place = { n: n + 1, version: 1, left: 0, prev: Number.parseInt(sum, 16) };
    const { text: line } = recordLine(place, `"type":"loaded","parts":${deep},"load":${deep}`);
    const disk = new MemoryDisk();
    disk.makeFolder(HOME);
    disk.plant(`${HOME}/${FILE}`, Buffer.from(text + line));
    expect(look(disk).notices.join()).toContain(`line ${n + 2} of`);
    expect(kitchenOn(disk).session.hear("what now").refused).toBe(false);
  });

  it("bars what the command did that a damaged correction was about", () => {
    const at = placeOf("asked", beets);
    const target = events[placeOf("stage-done")]?.cmd;
    const change = { type: "withdrawn", target, key: undefined, text: undefined, t: "noon" };
    expect(sealedAlone(look(diskWith(at, change)).review)).toEqual([beans]);
  });

  it("keeps sealed jars of the batch it names off the shelf", () => {
    const { state, nowMs } = look(diskWith(placeOf("asked"), { text: 7, about: beans }));
    const batch = state.batches[beans];
    if (!batch) throw new Error("no beans");
    const kept = lotsIn(batch).flatMap((one) => shelfJars(state, one, nowMs).groups);
    expect(kept.map((one) => one.keep)).not.toContain("shelf");
    expect(kept.map((one) => one.why).join()).toContain("the log is damaged at line");
  });

  it("lets the day go on in a fresh file after a yes, where it is written down", () => {
    const at = placeOf("asked", beets);
    const disk = diskWith(at, { text: 7, about: beets });
    const before = textOf(disk);
    const { session, notices } = kitchenOn(disk);
    expect(notices[0]).toContain(`Line ${at + 2} of ${HOME}/${FILE} is damaged`);
    expect(session.notRecorded).toBe(true);
    session.hear("yes");
    expect(session.notRecorded).toBe(false);
    expect(textOf(disk)).toBe(before);
    const fresh = textOf(disk, "journal-2027-2.jsonl");
    expect(fresh).toContain('"type":"line-sealed"');
    expect(fresh).toContain(`"touches":["${beets}"]`);
    const again = readJournal(disk, HOME, KITCHEN_FORMAT);
    expect(again.damages.map((one) => one.stops)).toEqual([false]);
  });

  it("is written down once, however often the kitchen opens", () => {
    const disk = diskWith(placeOf("asked", beets), { text: 7, about: beets });
    const kitchen = kitchenOn(disk);
    kitchen.session.hear("yes");
    for (let time = 0; time < 3; time++) kitchen.crash(60_000);
    const { history } = look(disk).state;
    expect(history.filter((event) => event.type === "line-sealed")).toHaveLength(1);
  });
});

describe("a sealed line", () => {
  function settled(answer: string) {
    const at = placeOf("asked", beets);
    const disk = diskWith(at, { text: 7, about: beets });
    const { session, lines } = kitchenOn(disk);
    session.hear("yes");
    const asked = lines.findLast((line) => line.kind === "asked")?.text;
    const reply = session.hear(answer).lines.join(" ");
    return { at, disk, session, asked, reply, verdict: verdictOf(look(disk).review, beets) };
  }

  it("is asked about by name, and a yes settles it", () => {
    const { at, asked, verdict, disk } = settled("yes");
    expect(asked).toContain(`Line ${at + 2} of ${FILE} cannot be relied on`);
    expect(asked).toContain("pickled beets");
    expect(verdict.verdict).toBe("as-tested");
    expect(sealedAlone(look(disk).review)).toEqual([]);
  });

  it("that hid something leaves its batch not as tested", () => {
    const { reply, verdict } = settled("no");
    expect(reply).toContain("not as tested");
    expect(verdict.verdict).toBe("not-as-tested");
    expect(verdict.reasons).toContain("something is missing there");
  });

  it.each(["okay", "what now", "note the log is damaged"])("stays open after %j", (words) => {
    expect(settled(words).verdict.verdict).toBe("unfinished");
  });

  it("is open again once the answer about it is taken back", () => {
    const { session, disk } = settled("yes");
    expect(session.hear("undo").lines.join()).toContain("the word on the damaged line");
    expect(verdictOf(look(disk).review, beets).verdict).toBe("unfinished");
  });
});

describe("moving house", () => {
  /** Years ago, since an import refuses events later than the machine's clock. */
  const past = () => moved(events, YEARS_BACK, 1);

  function folder(files: Record<string, string> = {}): string {
    const made = mkdtempSync(join(tmpdir(), "sealed-"));
    open.push(made);
    for (const [name, text] of Object.entries(files)) writeFileSync(join(made, name), text);
    return made;
  }

  it.each<[string, object]>([
    ["a timer of a million million minutes", { type: "timer-set", timer: "T1", minutes: 1e12 }],
    ["an altitude in words", { type: "kitchen-set", altitudeFt: "high" }],
    ["a batch named __proto__", { type: "held", batch: "__proto__" }],
  ])("refuses a whole archive that contains %s, naming the line", async (_what, fact) => {
    const to = folder();
    const good = past();
    const stamp = { cmd: "c1", t: good[0]?.t, w: good[0]?.t, label: undefined };
    const odd = { ...stamp, ...fact } as unknown as KitchenEvent;
    const two = [good[0] as KitchenEvent, odd];
    const text = archiveText({ zone: "UTC", events: two, recipes: [] });
    const answer = await importKitchen(to, text);
    expect(answer).toMatchObject({ ok: false, why: "bad" });
    expect(answer).toHaveProperty("message", expect.stringContaining("line 3: "));
    expect(() => readFileSync(join(to, FILE))).toThrow();
  });

  it("exports what a damaged line touches with the rest, and it stays barred there", async () => {
    const good = past();
    const at = good.findLastIndex((event) => event.type === "asked");
    const disk = diskWith(at, { text: 7, about: null }, good);
    const from = folder({ [FILE]: textOf(disk) });
    const { text, notices } = exportKitchen(from);
    expect(notices.join()).toContain(`line ${at + 2} of`);
    const to = folder();
    expect(await importKitchen(to, text)).toMatchObject({ ok: true });
    const barred = (home: string) => {
      const { state, nowMs } = readKitchen(home, { wallMs: 0 });
      return sealedAlone(review(state, nowMs));
    };
    expect(barred(to)).toEqual(barred(from));
    expect(barred(to)).toHaveLength(1);
  });

  it("does not import into a kitchen whose own newest file is damaged", async () => {
    const good = past();
    const disk = diskWith(good.length - 1, { w: "noon" }, good);
    const to = folder({ [FILE]: textOf(disk) });
    const archive = archiveText({ zone: "UTC", events: good, recipes: [] });
    expect(await importKitchen(to, archive)).toMatchObject({ ok: false, why: "disk" });
    expect(readFileSync(join(to, FILE), "utf8")).toBe(textOf(disk));
  });
});
