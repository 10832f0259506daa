import { parse } from "csv-parse/sync";
import fc from "fast-check";
import { beforeAll, describe, expect, it } from "vitest";
import type { KitchenEvent } from "../../src/kitchen/events.ts";
import { replay } from "../../src/kitchen/evolve.ts";
import { type BatchLog, batchLog } from "../../src/review/batch-log.ts";
import { batchCsv, batchesCsv, csv } from "../../src/review/csv.ts";
import { batchMarkdown } from "../../src/review/markdown.ts";
import { LOST_BOIL, opening, playedEvents } from "./demo-season.ts";
import { LIBRARY } from "./kitchen-files.ts";

let log: BatchLog;

beforeAll(async () => {
  const events = await playedEvents(LIBRARY, {
    recipe: "pickled-beets",
    variety: "=cmd|' /C calc'!A0",
    weightLb: 7,
    jar: "pint",
    script: LOST_BOIL,
  });
  const [first] = events as [KitchenEvent];
  const t = events.at(-1)?.w ?? 0;
  const batch = first.type === "batch-begun" ? first.batch : "";
  const text = '+1 more, "sweet"\nthan last year | <b>';
  const note: KitchenEvent = { type: "note", owner: batch, text, cmd: "n", t, w: t };
  const state = replay([...opening(first.t), ...events, note]);
  log = batchLog(state, Object.values(state.batches)[0]!, t);
});

describe("comma-separated values", () => {
  it("are read back by another parser unchanged, except for what a spreadsheet would run", () => {
    fc.assert(
      fc.property(
        fc.array(fc.array(fc.string({ unit: "grapheme" }), { minLength: 3, maxLength: 3 })),
        (rows) => {
          const read: string[][] = parse(csv(["a", "b", "c"], rows), { bom: false });
          expect(read.slice(1)).toHaveLength(rows.length);
          read.slice(1).forEach((row, i) => {
            row.forEach((cell, j) => {
              const written = rows[i]?.[j] ?? "";
              expect([written, `'${written}`]).toContain(cell);
              expect(cell).not.toMatch(/^[\s]*[=+\-@\t\r]/);
            });
          });
        },
      ),
    );
  });

  it.each([
    "=1+1",
    "+1",
    "-1",
    "@x",
    "\tx",
    "\rx",
    " =1",
    "\n=1",
    "＝1",
    "\u3164=1",
    "\u115f@x",
    "\u202e@SUM(1)",
    "\u200b+1",
  ])("defuses %j", (text) => {
    const read: string[][] = parse(csv(["a"], [[text]]));
    expect(read[1]).toEqual([`'${text}`]);
  });

  it("leave numbers alone, below zero too", () => {
    expect(csv(["a"], [[-2.5]])).toBe("a\r\n-2.5\r\n");
  });

  it("have a row for each stage, reading, departure, confirmation and note of a batch", () => {
    const rows: Record<string, string>[] = parse(batchCsv([log]), { columns: true });
    const count = (row: string) => rows.filter((one) => one.row === row).length;
    expect(count("stage")).toBe(log.stages.length);
    expect(count("reading")).toBe(log.readings.length);
    expect(count("deviation")).toBe(log.deviations.length);
    expect(count("confirmed")).toBe(log.confirmed.length);
    expect(count("jars")).toBe(7);
    const process = rows.find((one) => one.kind === "process");
    expect(process).toMatchObject({
      minutes: String(log.stages.find((s) => s.kind === "process")?.minutes),
      restarts: "1",
    });
    const note = rows.find((one) => one.row === "note");
    expect(note?.detail).toBe(`'${log.notes[0]?.text}`);
    const sealed = rows.find((one) => one.row === "jars" && one.name === "sealed");
    expect(sealed?.value).toBe(String(log.jars?.sealed));
  });

  it("have one row per batch in the list", () => {
    const hostile = { ...log, lot: { ...log.lot, variety: "=cmd|' /C calc'!A0" } };
    const csv = batchesCsv([hostile, hostile]);
    const rows: Record<string, string>[] = parse(csv, { columns: true });
    expect(rows).toHaveLength(2);
    expect(rows[0]).toMatchObject({ batch: log.id, verdict: log.verdict, tested_min: "45" });
    expect(rows[0]?.variety).toBe("'=cmd|' /C calc'!A0");
  });
});

describe("Markdown", () => {
  it("shows hostile text as it is", () => {
    const text = batchMarkdown(log);
    expect(text).toContain("\\<b\\>");
    expect(text).not.toMatch(/[^\\]<b>/);
    expect(text).toContain("## Departures");
    const table = text.split("\n").filter((line) => line.startsWith("|"));
    const bars = (line: string) => line.replace(/\\\|/g, "").split("|").length;
    expect(new Set(table.slice(0, log.stages.length + 2).map(bars)).size).toBe(1);
  });
});
