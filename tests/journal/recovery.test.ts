import { describe, expect, it } from "vitest";
import { MemoryDisk } from "../../src/journal/memory-disk.ts";
import { openJournal } from "../../src/journal/open-journal.ts";
import { bytesOf, diskWith, FOLDER, journalOf, linesOf, namesOn, open, said } from "./support.ts";

const TEXTS = ["jars warm", "canner lit", "½ in. headspace", "lids on", "full boil"];
const FILE = "journal-2027.jsonl";
const sound = journalOf(TEXTS);

const fileOf = (lines: string[]) => diskWith(Buffer.from(`${lines.join("\n")}\n`));
const soundLines = () => linesOf(diskWith(sound.bytes), FILE);

describe("a journal cut short", () => {
  it("recovers at every byte, keeps what was cut, and goes on", () => {
    for (let length = 0; length <= sound.bytes.length; length += 1) {
      const disk = diskWith(sound.bytes.subarray(0, length));
      const whole = sound.ends.filter((end) => end <= length).length;
      const opened = open(disk);
      expect(said(opened), `cut at ${length}`).toEqual(TEXTS.slice(0, whole));
      const aside = namesOn(disk).filter((name) => name.includes(".torn-"));
      const kept = aside.map((name) => bytesOf(disk, name).toString("latin1")).join("");
      const left = namesOn(disk).includes(FILE) ? bytesOf(disk, FILE).toString("latin1") : "";
      expect(left + kept).toBe(sound.bytes.subarray(0, length).toString("latin1"));
      expect(opened.notices.length).toBe(aside.length);
      expect(opened.found === "torn").toBe(aside.length > 0);
      expect(opened.journal.append([{ say: "on" }])).toEqual({ ok: true, lastN: whole + 1 });
      expect(said(open(disk))).toEqual([...TEXTS.slice(0, whole), "on"]);
    }
  });

  it("sets aside garbage or zeros after its last line", () => {
    for (const rubbish of ["rubbish", "rub\nbish\n", "\0".repeat(5000), "\n\n", '{"n":6}\n']) {
      const disk = diskWith(Buffer.concat([sound.bytes, Buffer.from(rubbish)]));
      const opened = open(disk);
      expect([opened.found, said(opened)]).toEqual(["torn", TEXTS]);
      expect(bytesOf(disk, `${FILE}.torn-1`).toString()).toBe(rubbish);
      expect(bytesOf(disk, FILE).equals(sound.bytes)).toBe(true);
      expect(opened.notices[0]).toMatch(/cut short .* is in journal-2027\.jsonl\.torn-1\.$/);
      expect(open(disk).found).toBe("sound");
    }
  });

  it("drops an append of several lines as a whole when its end is missing", () => {
    const disk = new MemoryDisk();
    const { journal } = open(disk);
    journal.append([{ say: "a" }]);
    const before = bytesOf(disk, FILE).length;
    journal.append([{ say: "b" }, { say: "c" }, { say: "d" }]);
    const all = bytesOf(disk, FILE);
    for (let length = before; length < all.length; length += 1) {
      expect(said(open(diskWith(all.subarray(0, length))))).toEqual(["a"]);
    }
    expect(said(open(diskWith(all)))).toEqual(["a", "b", "c", "d"]);
  });

  it("goes on in a fresh file where the cut piece cannot be set aside", () => {
    const disk = diskWith(sound.bytes.subarray(0, sound.bytes.length - 3));
    disk.fault = ({ name }) => (name === "createExclusive" ? { why: "full" } : undefined);
    const opened = open(disk);
    disk.fault = undefined;
    expect(opened.notices[0]).toMatch(/could not be set aside/);
    expect(opened.journal.append([{ say: "on" }]).ok).toBe(true);
    const again = open(disk);
    expect([again.found, said(again)]).toEqual(["sound", [...TEXTS.slice(0, 4), "on"]]);
    expect(bytesOf(disk, FILE).length).toBe(sound.bytes.length - 3);
  });

  it("keeps lines that were never synced once something builds on them", () => {
    const disk = diskWith(sound.bytes.subarray(0, sound.ends[2]));
    const dying = disk.openAppend(`${FOLDER}/${FILE}`);
    if (!dying.ok) throw new Error(dying.message);
    // One whole append and half of the next reach the file, and then the program is dead.
    dying.file.append(sound.bytes.subarray(sound.ends[2], (sound.ends[3] ?? 0) + 9));
    disk.fault = ({ name }) => (name === "createExclusive" ? { why: "full" } : undefined);
    const opened = open(disk);
    disk.fault = undefined;
    expect(said(opened)).toEqual(TEXTS.slice(0, 4));
    expect(opened.journal.append([{ say: "on" }]).ok).toBe(true);
    const again = open(disk.afterPowerCut("lost"));
    expect([again.damages, said(again)]).toEqual([[], [...TEXTS.slice(0, 4), "on"]]);
  });

  it("at a line's end is recognized by the number that had been written", () => {
    const disk = diskWith(sound.bytes.subarray(0, sound.ends[2]));
    const { found, notices } = open(disk, { expectedN: 5 });
    expect(found).toBe("sound");
    expect(notices.join()).toMatch(/ends with number 3, though number 5 had been written/);
  });

  it("that is the whole log is missed, whether its file is empty or gone", () => {
    for (const disk of [diskWith(new Uint8Array()), new MemoryDisk()]) {
      const { notices, damages, journal } = open(disk, { expectedN: 5 });
      expect(notices.join()).toMatch(/nothing is left of it, though number 5 had been written/);
      expect(damages).toHaveLength(1);
      expect(journal.append([{ say: "on" }]).ok).toBe(true);
    }
    expect(open(new MemoryDisk(), { expectedN: 0 }).damages).toEqual([]);
  });

  it("with a line written twice counts it once", () => {
    const lines = soundLines();
    const opened = open(fileOf([...lines, lines.at(-1) ?? ""]));
    expect([opened.found, said(opened)]).toEqual(["sound", TEXTS]);
    expect(opened.journal.append([{ say: "on" }])).toEqual({ ok: true, lastN: 6 });
  });
});

describe("damage further up", () => {
  it("is found at every byte of a middle line, and the line is named", () => {
    const [start = 0, end = 0] = sound.ends.slice(1, 3);
    for (let at = start; at < end; at += 1) {
      for (const flip of [0x01, 0x20, 0x80]) {
        const bytes = Buffer.from(sound.bytes);
        bytes[at] = (bytes[at] as number) ^ flip;
        const disk = diskWith(bytes);
        const opened = open(disk);
        expect(opened.found, `byte ${at} flipped by ${flip}`).toBe("damaged");
        expect(opened.damages[0]).toMatchObject({ file: FILE, line: 4, stops: true });
        expect(opened.damages[0]?.recordsBefore).toBe(2);
        const merged = bytes[end - 1] !== 0x0a;
        const beyond = merged ? ["full boil"] : ["lids on", "full boil"];
        expect(said(opened)).toEqual(["jars warm", "canner lit", ...beyond]);
        expect(bytesOf(disk, FILE).equals(bytes)).toBe(true);
      }
    }
  });

  it("lets the day go on in a fresh file only after a yes, and loses nothing", () => {
    const lines = soundLines();
    lines[3] = (lines[3] ?? "").replace("headspace", "headspade");
    const disk = fileOf(lines);
    const before = bytesOf(disk, FILE);
    const { journal, notices } = open(disk);
    expect(notices[0]).toMatch(
      /Line 4 of .*journal-2027\.jsonl is damaged.*what it said is missing.*with your yes/,
    );
    expect(journal.append([{ say: "on" }])).toMatchObject({ ok: false, why: "read-only" });
    expect(namesOn(disk)).toEqual([FILE]);
    expect(journal.continueInFreshFile()).toEqual({ ok: true, lastN: 6 });
    expect(bytesOf(disk, FILE).equals(before)).toBe(true);
    const again = open(disk);
    expect([again.found, again.notices.length]).toEqual(["sound", 1]);
    expect(again.notices[0]).toMatch(/Line 4 .*This stops nothing today/);
    expect(said(again)).toEqual(["jars warm", "canner lit", "lids on", "full boil", "on"]);
  });

  it("is found where a line is missing or moved, or the first line is gone", () => {
    const lines = soundLines();
    const missing = lines.filter((_, i) => i !== 3);
    const swapped = [...lines.slice(0, 3), lines[4] ?? "", lines[3] ?? "", lines[5] ?? ""];
    for (const changed of [missing, swapped, lines.slice(1), ["", ...lines]]) {
      expect(open(fileOf(changed)).found).toBe("damaged");
    }
    expect(open(fileOf(missing)).damages[0]).toMatchObject({ line: 4, recordsBefore: 2 });
    expect(said(open(fileOf(swapped)))).toEqual(TEXTS);
  });

  it("does not stop anything today in an old year's file", () => {
    const disk = diskWith(sound.bytes);
    open(disk, { year: 2028 }).journal.append([{ say: "next summer" }]);
    const bytes = bytesOf(disk, FILE);
    bytes[200] = (bytes[200] as number) ^ 1;
    disk.plant(`${FOLDER}/${FILE}`, bytes);
    const { found, notices, records, journal } = open(disk, { year: 2028 });
    expect([found, notices.length, records.length]).toEqual(["sound", 1, 5]);
    expect(journal.append([{ say: "goes on" }])).toEqual({ ok: true, lastN: 7 });
  });

  it("is reported, and stops nothing, where an old file is short, gone or unreadable", () => {
    const make = () => {
      const disk = diskWith(sound.bytes);
      open(disk, { year: 2028 }).journal.append([{ say: "next summer" }]);
      return disk;
    };
    const short = make();
    short.truncate(`${FOLDER}/${FILE}`, sound.ends[3] as number);
    expect(open(short).notices.join()).toMatch(/lines are missing at its end: numbers 5 to 5/);
    const gone = make();
    gone.remove(`${FOLDER}/${FILE}`);
    expect(open(gone).notices.join()).toMatch(/the file before it, journal-2027.jsonl, is not/);
    const locked = make();
    locked.fault = ({ path }) => (path.endsWith(FILE) ? { why: "io" } : undefined);
    expect(open(locked).notices.join()).toMatch(/made-up fault/);
    for (const disk of [short, gone, locked]) {
      const { found, journal } = open(disk, { year: 2028 });
      expect(found).toBe("sound");
      expect(journal.append([{ say: "on" }])).toEqual({ ok: true, lastN: 7 });
    }
  });
});

describe("other versions", () => {
  const later = {
    version: 2,
    faultOf: () => undefined,
    upcast: (line: object) => ({ ...line, v: 2, lifted: true }) as never,
  };

  it("older lines are upgraded when read, and never rewritten", () => {
    const disk = diskWith(sound.bytes);
    const options = { year: () => 2027, format: later };
    const { records, journal } = openJournal(disk, FOLDER, options);
    expect(records.every(({ lifted }) => lifted === true)).toBe(true);
    journal.append([{ say: "new" }]);
    const again = openJournal(disk, FOLDER, options);
    expect(again.found).toBe("sound");
    expect(again.records.map(({ lifted }) => lifted)).toEqual([
      ...TEXTS.map(() => true),
      undefined,
    ]);
    expect(bytesOf(disk, FILE).subarray(0, sound.bytes.length).equals(sound.bytes)).toBe(true);
  });

  it("a journal of a later version is read as far as known, and nothing is written", () => {
    const disk = diskWith(sound.bytes);
    openJournal(disk, FOLDER, { year: () => 2027, format: later }).journal.append([{ say: "new" }]);
    const before = bytesOf(disk, FILE);
    const opened = open(disk);
    expect([opened.found, said(opened)]).toEqual(["newer", TEXTS]);
    expect(opened.notices[0]).toMatch(/written by a later version of Brinebell/);
    expect(opened.journal.append([{ say: "x" }])).toMatchObject({ why: "read-only" });
    expect(opened.journal.continueInFreshFile()).toMatchObject({ why: "read-only" });
    expect([namesOn(disk), bytesOf(disk, FILE).equals(before)]).toEqual([[FILE], true]);
  });

  it("a later version that sums its lines differently is recognized by its first line", () => {
    const line = '{"journal":"brinebell","v":3,"after":0,"from":null,"check":"x"}';
    expect(open(fileOf([line, "whatever"])).found).toBe("newer");
  });
});

describe("a folder that cannot be read", () => {
  it("is reported, and nothing is written", () => {
    const disk = diskWith(sound.bytes);
    disk.fault = ({ name }) => (name === "list" ? { why: "denied" } : undefined);
    const { found, notices, journal } = open(disk);
    expect([found, notices.length]).toEqual(["unreadable", 1]);
    disk.fault = undefined;
    expect(journal.append([{ say: "x" }])).toMatchObject({ ok: false, why: "read-only" });
    expect(bytesOf(disk, FILE).equals(sound.bytes)).toBe(true);
  });
});
