import { execFileSync } from "node:child_process";
import {
  lstatSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { type OutputKind, writeOutput } from "../../src/commands/call/write-output.ts";
import { realDisk } from "../../src/journal/real-disk.ts";
import { html } from "../../src/review/pages/html.ts";
import { labelPage } from "../../src/review/pages/label-page.ts";
import { page } from "../../src/review/pages/page.ts";
import { DEFAULT_SHEET, sheetOf } from "../../src/review/pages/sheet.ts";

let place = "";
const inPlace = (...names: string[]) => join(place, ...names);
const PAGE = page("Beans", html``);
const SHEET = sheetOf({ sheet: DEFAULT_SHEET.us });
if (!SHEET.ok) throw new Error(SHEET.error);
const LABELS = labelPage([], SHEET.value);

beforeEach(() => {
  place = mkdtempSync(join(tmpdir(), "output-"));
  mkdirSync(inPlace("kitchen"));
  writeFileSync(inPlace("kitchen", "journal-2027.jsonl"), "the log");
});
afterEach(() => rmSync(place, { recursive: true }));

function write(path: string, force = false, kind: OutputKind = "page", content = PAGE) {
  return writeOutput({ path, content, kind, folder: inPlace("kitchen"), force });
}

describe("what a command writes for a person", () => {
  it("is written where there is nothing, and over an earlier output of its kind", () => {
    expect(write(inPlace("a.html"))).toEqual({ ok: true });
    expect(write(inPlace("a.html"), false, "page", `${PAGE} again`)).toEqual({ ok: true });
    expect(readFileSync(inPlace("a.html"), "utf8")).toContain("again");
  });

  it("overwrites a different file only when forced", () => {
    writeFileSync(inPlace("letter.txt"), "dear aunt");
    expect(write(inPlace("letter.txt"))).toMatchObject({ ok: false, code: 1 });
    expect(readFileSync(inPlace("letter.txt"), "utf8")).toBe("dear aunt");
    write(inPlace("page.html"));
    expect(write(inPlace("page.html"), false, "calendar")).toMatchObject({ ok: false, code: 1 });
    expect(write(inPlace("letter.txt"), true)).toEqual({ ok: true });
  });

  it("takes labels for no page, and a text about a page for none", () => {
    write(inPlace("page.html"));
    expect(write(inPlace("page.html"), false, "labels", LABELS)).toMatchObject({ code: 1 });
    expect(write(inPlace("labels.html"), false, "labels", LABELS)).toEqual({ ok: true });
    expect(write(inPlace("labels.html"), false, "labels", LABELS)).toEqual({ ok: true });
    expect(write(inPlace("labels.html"))).toMatchObject({ code: 1 });
    writeFileSync(inPlace("notes.txt"), `It begins with ${PAGE}`);
    expect(write(inPlace("notes.txt"))).toMatchObject({ code: 1 });
  });

  it("goes where a link leads, and leaves the link", () => {
    write(inPlace("a.html"));
    symlinkSync(inPlace("a.html"), inPlace("link.html"));
    expect(write(inPlace("link.html"), false, "page", `${PAGE} again`)).toEqual({ ok: true });
    expect(readFileSync(inPlace("a.html"), "utf8")).toContain("again");
    expect(lstatSync(inPlace("link.html")).isSymbolicLink()).toBe(true);
  });

  it("never goes into the data folder, forced or by a link", () => {
    const journal = inPlace("kitchen", "journal-2027.jsonl");
    symlinkSync(inPlace("kitchen"), inPlace("way-in"));
    const ways = [journal, inPlace("kitchen", "x.html"), inPlace("way-in", "journal-2027.jsonl")];
    for (const path of ways) {
      expect(write(path, true)).toMatchObject({ ok: false, code: 2 });
    }
    expect(readFileSync(journal, "utf8")).toBe("the log");
  });

  it("is refused at once where there is a pipe or a folder, or no folder to hold it", () => {
    execFileSync("mkfifo", [inPlace("pipe")]);
    expect(write(inPlace("pipe"), true)).toMatchObject({ ok: false, code: 2 });
    mkdirSync(inPlace("folder"));
    expect(write(inPlace("folder"), true)).toMatchObject({ ok: false, code: 2 });
    expect(write(inPlace("no", "such", "x.html"))).toMatchObject({ ok: false, code: 3 });
  });
});

describe("the disk", () => {
  it("refuses a pipe or a device in place of a file at once", () => {
    execFileSync("mkfifo", [inPlace("pipe")]);
    for (const path of [inPlace("pipe"), "/dev/zero", place]) {
      expect(realDisk().read(path)).toMatchObject({ ok: false });
      expect(realDisk().openAppend(path)).toMatchObject({ ok: false });
    }
  });
});
