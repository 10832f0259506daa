import { chmodSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { delimiter, join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { takeLock } from "../../src/journal/lock.ts";
import { MemoryDisk } from "../../src/journal/memory-disk.ts";
import { Announcer } from "../../src/session/announcer.ts";
import { desktopNotice, noticeCall } from "../../src/session/desktop-notice.ts";
import { type OpenedSession, openSession } from "../../src/session/open-session.ts";
import { readKitchen } from "../../src/session/reading/read-kitchen.ts";
import { MadeUpClock } from "../../src/session/rehearsal/made-up-clock.ts";
import { SILENT } from "../../src/session/short-session.ts";
import { Watch, type WatchFinding } from "../../src/session/watch/watch.ts";
import { theLibrary } from "../scenarios/play.ts";

const ZONE = "America/Denver";
const MORNING = Date.parse("2027-08-14T08:00:00-06:00");
const MINUTE_MS = 60_000;
const HOUR_MS = 60 * MINUTE_MS;
const FOLDER = "made-up";

let clock: MadeUpClock;
let disk: MemoryDisk;

function open(lines: string[] = []): OpenedSession {
  return openSession({
    clock,
    disk,
    folder: FOLDER,
    voice: SILENT,
    library: theLibrary(),
    version: "0",
    rehearsal: false,
    onLines: (added) => {
      for (const line of added) lines.push(`${line.kind}: ${line.text}`);
    },
  });
}

/** Opens, says these things, and closes again. */
function sitting(...words: string[]): void {
  const { session } = open();
  for (const word of words) expect(session.hear(word)).toMatchObject({ refused: false });
  session.close();
}

function watching(): { watch: Watch; looks: WatchFinding[] } {
  const watch = new Watch({ clock, disk, folder: FOLDER, library: theLibrary(), version: "0" });
  return { watch, looks: [] };
}

function texts(looks: WatchFinding[]): string[] {
  return looks.flatMap((look) => (look.kind === "told" ? look.told.map((one) => one.text) : []));
}

beforeEach(() => {
  clock = new MadeUpClock(MORNING, ZONE);
  disk = new MemoryDisk();
});

describe("watch, while no kitchen is open", () => {
  it("announces a reminder once, at its time, and writes down that it did", () => {
    sitting("remind me tomorrow morning at nine to wipe the jars");
    const { watch, looks } = watching();
    watch.start((look) => looks.push(look));
    clock.advance(24 * HOUR_MS);
    expect(texts(looks)).toEqual([]);
    clock.advance(2 * HOUR_MS);
    expect(texts(looks)).toEqual(["A reminder: wipe the jars."]);
    const [told] = looks.flatMap((look) => (look.kind === "told" ? look.told : []));
    expect(told?.at).toBe(MORNING + 25 * HOUR_MS);
    clock.advance(48 * HOUR_MS);
    expect(texts(looks)).toHaveLength(1);
    watch.stop();
    const { state } = readKitchen(FOLDER, { wallMs: clock.read().wallMs, disk });
    expect(Object.values(state.reminders).map((one) => one.state)).toEqual(["rang"]);
    expect(state.history.filter((event) => event.type === "due")).toHaveLength(1);
  });

  it("announces each thing exactly once, even where two watch and after a restart", () => {
    sitting("remind me in one hour to stir");
    const [first, second] = [watching(), watching()];
    for (const { watch, looks } of [first, second]) watch.start((look) => looks.push(look));
    clock.advance(2 * HOUR_MS);
    const later = watching();
    later.looks.push(later.watch.look());
    expect([...texts(first.looks), ...texts(second.looks), ...texts(later.looks)]).toHaveLength(1);
  });

  it("stays silent where a kitchen is open, which announces things itself", () => {
    sitting("remind me in one hour to stir");
    const lock = takeLock(disk, FOLDER, { pid: process.pid, bootId: "boot-1", startedAt: "" });
    if (!lock.ok) throw new Error(lock.message);
    const lines: string[] = [];
    const { session } = open(lines);
    session.tick();
    const { watch, looks } = watching();
    watch.start((look) => looks.push(look));
    clock.advance(2 * HOUR_MS);
    expect(texts(looks)).toEqual([]);
    expect(lines.filter((line) => line === "alarm: A reminder: stir.").length).toBeGreaterThan(0);
    watch.stop();
    session.close();
    lock.lock.release();
  });

  it("comes up with what is due after the machine slept", () => {
    sitting("remind me in one hour to stir");
    const { watch, looks } = watching();
    watch.start((look) => looks.push(look));
    clock.sleep(5 * HOUR_MS);
    clock.advance(30_000);
    expect(texts(looks)[0]).toMatch(/^A reminder: stir\. That was four hours/);
  });

  it("keeps a wall clock's promise when the clock is set, and a span's when it is not", () => {
    sitting("remind me at noon to turn the fan", "timer for two hours for the brine");
    const { watch, looks } = watching();
    watch.start((look) => looks.push(look));
    clock.setWall(3 * HOUR_MS + 59 * MINUTE_MS);
    clock.advance(2 * MINUTE_MS);
    expect(texts(looks)).toEqual(["A reminder: turn the fan."]);
    clock.setWall(-6 * HOUR_MS);
    clock.advance(2 * HOUR_MS);
    expect(texts(looks)[1]).toMatch(/^The brine timer is done\./);
    expect(texts(looks)).toHaveLength(2);
    const opened = readKitchen(FOLDER, { wallMs: clock.read().wallMs, disk }).state.history;
    expect(opened.filter((event) => event.type === "opened").length).toBeLessThan(6);
  });

  it("calls the recurring checks of a ferment, one at each of its times", () => {
    sitting("we're at 6200 feet", "start the cucumber seed", "done");
    const { watch, looks } = watching();
    watch.start((look) => looks.push(look));
    clock.advance(50 * HOUR_MS);
    const stirs = texts(looks).filter((text) => text.includes("Stir the cucumber seed"));
    expect(stirs).toHaveLength(3);
    expect(texts(looks).some((text) => text.includes("it has had"))).toBe(true);
  });

  it("asks nothing, and leaves that to the next opening", () => {
    sitting("start the dilly beans", "remind me in one hour to stir");
    const { watch } = watching();
    clock.advance(2 * HOUR_MS);
    expect(watch.look().kind).toBe("told");
    const { state } = readKitchen(FOLDER, { wallMs: clock.read().wallMs, disk });
    const asked = state.history.filter((event) => event.type === "asked");
    expect(asked.every((event) => event.w < MORNING + HOUR_MS)).toBe(true);
  });

  it("announces what it cannot write down, says so, and does not repeat it", () => {
    sitting("remind me in one hour to stir");
    const { watch } = watching();
    clock.advance(2 * HOUR_MS);
    disk.roomBytes = 0;
    const look = watch.look();
    expect(look).toMatchObject({ kind: "told", told: [{ text: "A reminder: stir." }] });
    expect(look.kind === "told" && look.notRecorded).toBeTruthy();
    expect(watch.look()).toEqual({ kind: "quiet" });
  });

  it("leaves an empty folder empty", () => {
    const { watch } = watching();
    expect(watch.look()).toEqual({ kind: "quiet" });
    expect(disk.list(FOLDER).ok).toBe(false);
  });
});

describe("what came due while nothing ran", () => {
  it("is announced at the next opening, with how long ago it was, and rings until answered", () => {
    sitting("remind me tomorrow morning at nine to wipe the jars");
    clock.advance(26 * HOUR_MS);
    const lines: string[] = [];
    const { session } = open(lines);
    expect(lines).toContain("alarm: A reminder: wipe the jars. That was an hour ago.");
    expect(session.hear("got it").lines[0]).toMatch(/wipe the jars/);
    expect(Object.values(session.state.reminders)[0]?.state).toBe("answered");
    session.close();
  });
});

describe("a notice on the desktop", () => {
  const nasty = "-- $(touch x) `id`; 'a' \"b\" <b>&\nnext\u001b[31m";
  let folder = "";

  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), "notice-"));
  });
  afterEach(() => rmSync(folder, { recursive: true, force: true }));

  /** A program of that name that writes down its arguments, one a line, and ends as told. */
  function fakeProgram(name: string, code: number): string {
    const out = join(folder, "arguments");
    const script = `#!/bin/sh\nprintf '%s\\n' "$@" > '${out}'\nexit ${code}\n`;
    writeFileSync(join(folder, name), script);
    chmodSync(join(folder, name), 0o755);
    return out;
  }

  it("passes text as data: one argument, nothing executed, markup shown as it is", async () => {
    const out = fakeProgram("notify-send", 0);
    const show = desktopNotice("linux", [folder, "/bin", "/usr/bin"].join(delimiter), process.env);
    expect(await show?.("Brinebell", nasty)).toBe(true);
    const lines = readFileSync(out, "utf8").trim().split("\n");
    expect(lines).toEqual([
      "--app-name=Brinebell",
      "--",
      "Brinebell",
      "$(touch x) `id`; 'a' \"b\" &lt;b&gt;&amp; next [31m",
    ]);
  });

  it("puts none of the text into a script on other systems", () => {
    const mac = noticeCall("darwin", "osascript", "Brinebell", nasty);
    expect(mac.args.slice(0, -2).join(" ")).not.toContain("touch");
    expect(mac.args.at(-1)).toContain("$(touch x)");
    const windows = noticeCall("win32", "powershell", "Brinebell", nasty);
    expect(windows.args.join(" ")).not.toContain("touch");
    expect(windows.env?.BRINEBELL_TEXT).toContain("$(touch x)");
  });

  it("is reported as failed, or as missing", async () => {
    fakeProgram("notify-send", 1);
    const show = desktopNotice("linux", [folder, "/bin"].join(delimiter), process.env);
    expect(await show?.("Brinebell", "x")).toBe(false);
    expect(desktopNotice("linux", "/nowhere", process.env)).toBeUndefined();
  });

  it("is replaced by a line and the bell where it cannot be shown", async () => {
    const printed: string[] = [];
    let rings = 0;
    const stir = { at: MORNING, rank: "alarm" as const, guards: false };
    const told = [{ ...stir, key: "k", text: "Stir.\u0007\u001b[2J" }];
    const parts = { print: (line: string) => printed.push(line), voice: undefined };
    const bell = { ring: () => void rings++ };
    const now = { told, hushed: false, wallMs: MORNING, zone: ZONE };
    const silent = new Announcer({ ...parts, bell, notice: async () => false });
    await silent.announce(now);
    expect(printed).toEqual(["Sat Aug 14 2027, 8:00 AM  Stir. [2J"]);
    expect(rings).toBe(1);
    await new Announcer({ ...parts, bell, notice: async () => true }).announce(now);
    await silent.announce({ ...now, hushed: true });
    expect(rings).toBe(1);
    expect(printed).toHaveLength(3);
    const guarding = { ...stir, key: "p", text: "The time is full.", guards: true };
    await silent.announce({ ...now, told: [guarding], hushed: true });
    expect(rings).toBe(2);
  });

  it("says over the desk, in one breath, what came due together", async () => {
    const printed: string[] = [];
    const parts = { print: (line: string) => printed.push(line), voice: undefined };
    const bell = { ring: () => {} };
    const announcer = new Announcer({ ...parts, bell, notice: undefined });
    const told = ["Stir.", "Skim it."].map((text, n) => {
      return { key: `${n}`, at: MORNING, rank: "alarm" as const, text, guards: false };
    });
    await announcer.announce({ told, hushed: false, wallMs: MORNING, zone: ZONE });
    expect(printed).toEqual(["Sat Aug 14 2027, 8:00 AM  Stir. Skim it."]);
  });
});
