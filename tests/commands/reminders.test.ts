import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import ICAL from "ical.js";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { calendarText } from "../../src/commands/record/calendar.ts";
import { remindersCommand } from "../../src/commands/record/reminders.ts";
import { realDisk } from "../../src/journal/real-disk.ts";
import type { Upcoming } from "../../src/review/shelf/upcoming.ts";
import { openSession } from "../../src/session/open-session.ts";
import { MadeUpClock } from "../../src/session/rehearsal/made-up-clock.ts";
import { SILENT } from "../../src/session/short-session.ts";
import { theLibrary } from "../scenarios/play.ts";
import { strictCalendar } from "./strict-calendar.ts";

const ZONE = "America/Denver";
const START = Date.parse("2027-10-22T08:00:00-06:00");
const HOUR_MS = 3_600_000;

let folder = "";
let beside = "";
let clock: MadeUpClock;

beforeEach(() => {
  beside = mkdtempSync(join(tmpdir(), "reminders-"));
  folder = join(beside, "kitchen");
  mkdirSync(folder);
  clock = new MadeUpClock(START, ZONE);
});
afterEach(() => rmSync(beside, { recursive: true, force: true }));

function sitting(...words: string[]): void {
  const { session } = openSession({
    clock,
    disk: realDisk(),
    folder,
    voice: SILENT,
    library: theLibrary(),
    version: "0",
    rehearsal: false,
    onLines: () => {},
  });
  for (const word of words) {
    clock.advance(60_000);
    expect([word, session.hear(word).refused]).toEqual([word, false]);
  }
  session.close();
}

function reminders(...args: string[]) {
  return remindersCommand(args, { folder }, clock.read().wallMs);
}

/** The entries of a calendar file as an independent parser reads them. */
function entries(text: string) {
  const strict = strictCalendar(text);
  const calendar = new ICAL.Component(ICAL.parse(text));
  const found = calendar.getAllSubcomponents("vevent");
  expect(strict.map(({ UID }) => UID)).toEqual(
    found.map((one) => one.getFirstPropertyValue("uid")),
  );
  return found.map((component, index) => {
    const event = new ICAL.Event(component);
    expect(event.summary).toBe(strict[index]?.SUMMARY);
    return {
      uid: event.uid,
      at: event.startDate.toJSDate().toISOString(),
      summary: event.summary,
      description: event.description ?? "",
      sequence: event.sequence,
      stamp: String(component.getFirstPropertyValue("dtstamp")),
      modified: String(component.getFirstPropertyValue("last-modified")),
      alarms: component.getAllSubcomponents("valarm").length,
    };
  });
}

/** Ids of the entries that are cancelled. */
function cancelled(text: string): (string | undefined)[] {
  return strictCalendar(text).flatMap((one) => (one.STATUS === "CANCELLED" ? [one.UID] : []));
}

function uidAt(text: string, start: string): string | undefined {
  return strictCalendar(text).find(({ DTSTART }) => DTSTART === start)?.UID;
}

const KRAUT = [
  "we're at 6200 feet",
  "start the sauerkraut",
  "done",
  "done",
  "remind me november eighth at nine in the morning to look in the cellar",
];

describe("brinebell reminders", () => {
  it("lists what is coming up with its day, in the kitchen's zone", async () => {
    sitting(...KRAUT);
    const { code, stdout } = await reminders("--days", "20");
    expect(code).toBe(0);
    expect(stdout).toMatch(/^Mon Oct 25 2027, 9:00 AM {3}Look at the sauerkraut$/m);
    expect(stdout).toMatch(/^Mon Nov 8 2027, 9:00 AM {4}look in the cellar$/m);
    expect(stdout.match(/under the brine/g)).toHaveLength(1);
  });

  it("gives the same as JSON, each with an id", async () => {
    sitting(...KRAUT);
    const { reminders: list, zone } = JSON.parse((await reminders("--json")).stdout);
    expect(zone).toBe(ZONE);
    expect(list[0]).toMatchObject({ at: "2027-10-22T09:00:00-06:00", overdue: false });
    const ids = list.map((one: { id: string }) => one.id);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it("says that nothing is due in an empty kitchen", async () => {
    expect(await reminders()).toMatchObject({
      code: 0,
      stdout: "Nothing is due in the next 30 days.\n",
    });
  });

  it("writes a calendar whose times hold on both sides of a clock change", async () => {
    sitting(...KRAUT);
    const file = join(beside, "kitchen.ics");
    const written = await reminders("--ics", file, "--days", "30");
    expect(written.stdout).toMatch(/^\d+ reminders written to /);
    const found = entries(readFileSync(file, "utf8"));
    const checks = found.filter(({ summary }) => summary === "Look at the sauerkraut");
    expect(checks.map(({ at }) => at)).toContain("2027-11-05T15:00:00.000Z");
    expect(checks.map(({ at }) => at)).toContain("2027-11-08T16:00:00.000Z");
    expect(found.find(({ summary }) => summary === "look in the cellar")?.at).toBe(
      "2027-11-08T16:00:00.000Z",
    );
    expect(found.every(({ alarms }) => alarms === 1)).toBe(true);
  });

  it("updates without duplicates: the same ids, later stamps, a rising sequence", async () => {
    sitting(...KRAUT);
    const file = join(beside, "kitchen.ics");
    await reminders("--ics", file);
    const first = entries(readFileSync(file, "utf8"));
    clock.advance(26 * HOUR_MS);
    await reminders("--ics", file);
    const second = entries(readFileSync(file, "utf8"));
    const known = new Map(first.map((one) => [one.uid, one]));
    expect(new Set(first.map((one) => one.uid)).size).toBe(first.length);
    const shared = second.filter((one) => known.has(one.uid));
    expect(shared.length).toBeGreaterThan(10);
    for (const one of shared) {
      const before = known.get(one.uid);
      expect(one).toEqual({ ...before, stamp: one.stamp });
      expect(one.stamp > (before?.stamp ?? "")).toBe(true);
    }
    sitting("actually that was ten minutes ago");
    await reminders("--ics", file);
    const third = entries(readFileSync(file, "utf8"));
    for (const one of third) expect(one.sequence).toBe((second[0]?.sequence ?? 0) + 1);
  });

  it("cancels under the same id what ended since, and what a look has put off", async () => {
    sitting(...KRAUT);
    const file = join(beside, "kitchen.ics");
    await reminders("--ics", file, "--days", "12");
    const first = readFileSync(file, "utf8");
    clock.advance(46 * HOUR_MS);
    clock.advance(23 * HOUR_MS);
    sitting("I skimmed the kraut");
    await reminders("--ics", file, "--days", "1");
    const put = readFileSync(file, "utf8");
    expect(cancelled(put)).toEqual([uidAt(first, "20271025T150000Z")]);
    sitting("throw the sauerkraut out", "yes");
    await reminders("--ics", file);
    const ended = cancelled(readFileSync(file, "utf8"));
    expect(ended).toContain(uidAt(put, "20271025T150000Z"));
    expect(ended).not.toContain(undefined);
    entries(readFileSync(file, "utf8"));
  });

  it("writes no empty calendar, and says so", async () => {
    const file = join(beside, "kitchen.ics");
    const { code, stdout } = await reminders("--ics", file);
    expect([code, stdout]).toEqual([0, expect.stringContaining("No calendar is written.")]);
    expect(existsSync(file)).toBe(false);
    expect((await reminders("--ics", "-")).stdout).toBe("");
  });

  it("refuses a number of days that is none, a stray word and an unknown option", async () => {
    for (const days of ["0", "-3", "1.5", "soon", "99999", ""]) {
      const { code, stderr } = await reminders(`--days=${days}`);
      expect([days, code, stderr.split("\n").length]).toEqual([days, 2, 2]);
      expect(stderr).toContain("--days");
    }
    expect((await reminders("tomorrow")).code).toBe(2);
    expect((await reminders("--calendar", "x")).code).toBe(2);
    expect((await reminders("--ics")).code).toBe(2);
  });

  it("says in one line that a file cannot be written, or a journal not read", async () => {
    sitting(...KRAUT);
    const lost = await reminders("--ics", join(beside, "no", "such", "place.ics"));
    expect(lost).toMatchObject({ code: 3, stdout: "" });
    expect(lost.stderr.trim().split("\n")).toHaveLength(1);
    expect(lost.stderr).toContain("--ics");
    mkdirSync(join(folder, "journal-2028.jsonl"));
    const unread = await reminders();
    expect(unread.code).toBe(3);
    expect(unread.stderr.trim().split("\n")).toHaveLength(1);
  });
});

describe("the calendar file", () => {
  const facts = { mark: "k1", revision: 2, madeAt: START, before: "", coming: new Set<string>() };
  const item = (more: Partial<Upcoming>): Upcoming => ({
    ...{ id: "a/b/1", at: START, title: "t", detail: "", batch: null, overdue: false },
    changedAt: START - HOUR_MS,
    ...more,
  });

  it("carries commas, semicolons, backslashes, line ends and emoji through unharmed", () => {
    const title = "Beets, a crate; the \\big\\ one 🥒🫙👩‍🌾 ünïcode";
    const detail = `First, this;\nthen that. ${"🥒".repeat(60)} ${"long ".repeat(60)}end`;
    const text = calendarText([item({ title, detail })], facts);
    for (const line of text.split("\r\n")) expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
    const [entry] = entries(text);
    expect(entry).toMatchObject({ summary: title, description: detail, sequence: 2 });
    expect(entry?.modified).toBe("2027-10-22T13:00:00Z");
  });

  it("does not let text end a line or begin a component", () => {
    const ends = ["\r\n", "\n", "\r", "\u0085", "\u2028", "\u2029", "\u000b", "\u0000", "\\n"];
    for (const end of ends) {
      const evil = `x${end}END:VEVENT${end}BEGIN:VEVENT${end}ATTACH:file:///etc/passwd`;
      const text = calendarText([item({ title: evil, detail: evil, id: evil })], facts);
      expect(
        text.split(/[\r\n\u0085\u2028\u2029]+/).filter((l) => l === "END:VEVENT"),
      ).toHaveLength(1);
      expect(text).not.toMatch(/^ATTACH/m);
      const found = entries(text);
      expect(found).toHaveLength(1);
      expect(found[0]?.summary).toContain("BEGIN:VEVENT");
    }
  });
});
