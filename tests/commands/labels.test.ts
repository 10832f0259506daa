import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { labelsCommand } from "../../src/commands/record/labels.ts";
import type { LabelsIo } from "../../src/commands/record/print-labels.ts";
import type { KitchenEvent } from "../../src/kitchen/events.ts";
import { BAD_SEAL, moved, opening, playedEvents } from "../review/demo-season.ts";
import { ioFor, LIBRARY } from "../review/kitchen-files.ts";
import { kitchenFolder } from "../review/kitchen-folder.ts";
import { readPdf } from "../review/labels/read-labels.ts";

const open: { done(): void }[] = [];
let outside: string;
let events: KitchenEvent[];
let beans: string;
let corn: string;

/** Beans of which a jar did not seal, corn under pressure, and a lot of seed. */
beforeAll(async () => {
  outside = mkdtempSync(join(tmpdir(), "brinebell-labels-"));
  const lots = await Promise.all([
    playedEvents(LIBRARY, {
      recipe: "dilled-green-beans",
      variety: "Fäßchen Łuk",
      weightLb: 4,
      jar: "pint",
      script: BAD_SEAL,
    }),
    playedEvents(LIBRARY, { recipe: "whole-kernel-corn", variety: "黄玉米 Gold", jar: "pint" }),
  ]);
  const [first] = lots[0] ?? [];
  const played = lots.flatMap((lot, i) => moved(lot, i, i + 1));
  const t = (played.at(-1)?.w ?? 0) + 1;
  const stamp = { t, w: t };
  events = [
    ...opening(first?.t ?? 0),
    ...played,
    {
      ...{ type: "seed-saved", cmd: "s1", seed: "S1", crop: "beans", variety: "Provider" },
      ...{ isolation: "20 ft apart", fermentDays: null, dryWeightG: 200, storage: null },
      ...{ batch: null, ...stamp },
    },
    { type: "germination", cmd: "s2", seed: "S1", sprouted: 18, of: 20, days: 7, ...stamp },
  ];
  const begun = events.filter((event) => event.type === "batch-begun");
  [beans = "", corn = ""] = begun.map((event) => event.batch);
});

afterAll(() => {
  for (const one of open) one.done();
  rmSync(outside, { recursive: true });
});

function kitchen(units: "us" | "metric" = "us"): LabelsIo {
  const [first, ...rest] = events;
  const set = {
    type: "kitchen-set",
    units,
    cmd: "u1",
    t: first?.t ?? 0,
    w: first?.w ?? 0,
  } as const;
  const made = kitchenFolder(first ? [first, set, ...rest] : []);
  open.push(made);
  return ioFor(made.folder);
}

let files = 0;

/** What the PDF of a call says, text by text, and what was said beside it. */
async function pdfOf(args: string[], io = kitchen()) {
  const path = join(outside, `${++files}.pdf`);
  const result = await labelsCommand([...args, "--pdf", path], io);
  expect(result.code, result.stderr).toBe(0);
  const pages = await readPdf(readFileSync(path));
  return { pages, texts: pages.map((page) => page.texts.map((one) => one.text)), result };
}

describe("brinebell labels", () => {
  it("shows what will be printed, with shelf labels only for sealed jars", async () => {
    const result = await labelsCommand([beans, "--json"], kitchen());
    const { labels } = JSON.parse(result.stdout);
    const keeps = labels.map((one: { keep: string }) => one.keep);
    expect(keeps.filter((keep: string) => keep === "shelf")).toHaveLength(7);
    expect(keeps.filter((keep: string) => keep === "refrigerate")).toHaveLength(1);
    const text = (await labelsCommand([beans], kitchen())).stdout;
    expect(text).toMatch(/\[F3\] Fäßchen Łuk +\|/);
    expect(text).toContain("REFRIGERATE, use by");
    expect(text).toContain("as tested, boiling water 15 min, 6,200 ft");
    expect(text).toMatch(new RegExp(`\\| [a-z]+ 1, batch ${beans} `));
    expect(text).toContain("7 of these, jars 1, 2, 4, 5, 6, 7, 8");
    expect(text).toContain("8 labels of 2.625 x 1 in on 1 sheet of letter paper, 30 to a sheet");
  });

  it("prints each jar with its variety, title, dates, verdict, process and number", async () => {
    const { texts } = await pdfOf([beans]);
    const all = texts.flat().join(" ");
    expect(all.match(/F[1-8] Fäßchen Łuk/g)).toHaveLength(8);
    expect(all.match(/Dilled green beans/g)).toHaveLength(8);
    expect(all.match(/best by/g)).toHaveLength(7);
    expect(all.match(/as tested, boiling water 15 min, 6,200 ft/g)).toHaveLength(7);
    expect(all.match(/REFRIGERATE use by/g)).toHaveLength(1);
    expect(all.match(/did not seal/g)).toHaveLength(1);
    for (const jar of [1, 2, 3, 4, 5, 6, 7, 8]) {
      expect(all).toContain(`F${jar} Fäßchen Łuk`);
    }
  });

  it("prints over an earlier sheet, and over no other PDF", async () => {
    const path = join(outside, "again.pdf");
    const print = () => labelsCommand([beans, "--pdf", path], kitchen());
    expect((await print()).code).toBe(0);
    expect((await print()).code).toBe(0);
    writeFileSync(path, "%PDF-1.3\n1 0 obj\n(Somebody)\nendobj\n");
    expect((await print()).code).toBe(1);
  });

  it("puts several batches and seeds on one sheet, from the first free place", async () => {
    const { pages, texts } = await pdfOf([beans, corn, "S1", "--start", "28"]);
    expect(pages).toHaveLength(2);
    const [first = [], second = []] = texts;
    expect(first.filter((text) => text.includes(`batch ${beans}`))).toHaveLength(3);
    expect(second.join(" ")).toContain("Provider beans, seed");
    expect(second.join(" ")).toMatch(/18 of 20 sprouted, 1\d Aug 2027/);
    expect(second.join(" ")).toContain("20 ft apart");
    expect(second.join(" ")).toMatch(new RegExp(`[a-z]+ \\d+, batch ${corn}\\b`));
  });

  it("takes names as well as ids, of one batch or of several", async () => {
    const labeled = async (...args: string[]) => {
      const result = await labelsCommand([...args, "--json"], kitchen());
      const { labels = [] } = result.code === 0 ? JSON.parse(result.stdout) : {};
      return new Set(labels.map((one: { batch: string }) => one.batch));
    };
    expect(await labeled("green", "beans")).toEqual(new Set([beans]));
    expect(await labeled("corn", "S1")).toEqual(new Set([corn, "S1"]));
    expect(await labeled(beans, "corn")).toEqual(new Set([beans, corn]));
    expect(await labeled("green", "figs")).toEqual(new Set());
  });

  it("says on practice labels that there are no such jars", async () => {
    const practice = events.map((event) => {
      return event.type === "opened" ? { ...event, rehearsal: true } : event;
    });
    const made = kitchenFolder(practice);
    open.push(made);
    const { texts } = await pdfOf([beans, "--sheet", "2x4in"], ioFor(made.folder));
    expect(texts.flat().filter((text) => text.includes("REHEARSAL ONLY"))).toHaveLength(8);
    expect(texts.flat().join(" ")).not.toContain("as tested");
  });

  it("prints seed packets as often as is asked", async () => {
    const { texts } = await pdfOf(["S1", "--copies", "12", "--sheet", "2in round"]);
    expect(texts).toHaveLength(1);
    expect(texts[0]?.filter((text) => text === "Provider")).toHaveLength(12);
    expect(texts.flat().join(" ")).toMatch(/saved .* 2027/);
  });

  it("is metric in a metric kitchen, on the paper used there", async () => {
    const { pages, texts } = await pdfOf([corn], kitchen("metric"));
    expect(pages[0]?.height).toBeCloseTo((297 / 25.4) * 72, 0);
    const all = texts.flat().join(" ");
    expect(all).toMatch(/pressure \d+ min at \d+ kPa \(\d+ psi\), 1,890 m/);
    expect(all).not.toMatch(/\d ft\b/);
    expect((await pdfOf(["S1"], kitchen("metric"))).texts.flat().join(" ")).toMatch(
      /6 meters apart/,
    );
    const us = (await pdfOf([corn])).texts.flat().join(" ");
    expect(us).toMatch(/pressure \d+ min at \d+ psi, 6,200 ft/);
  });

  it("tells which characters the PDF's font lacks, and has them in the page", async () => {
    const { texts, result } = await pdfOf([corn]);
    expect(result.stderr).toContain("the PDF's font lacks 黄 玉 米, printed as ?");
    expect(texts.flat().join(" ")).toContain("? Gold");
    const path = join(outside, "labels.html");
    const page = await labelsCommand([corn, "--html", path], kitchen());
    expect(page.stderr).toBe("");
    expect(readFileSync(path, "utf8")).toContain("黄玉米 Gold");
    expect((await pdfOf([beans])).result.stderr).toBe("");
  });

  it("says what a label has no room for, and refuses one without room for the name", async () => {
    const { result, texts } = await pdfOf([corn, "--sheet", "38x21mm"]);
    expect(result.stderr).toContain("left out best by, the process");
    expect(texts.flat().join(" ")).toContain("as tested");
    const path = join(outside, "none.pdf");
    const refused = await labelsCommand([beans, "--sheet", "30x15mm", "--pdf", path], kitchen());
    expect(refused.code).toBe(1);
    expect(refused.stderr).toMatch(/Fäßchen Łuk.* does not fit .*--sheet/);
    expect(() => readFileSync(path)).toThrow();
  });

  it.each([
    [["--start", "31"], 2, "--start"],
    [["--start", "0"], 2, "--start"],
    [["--copies", "many"], 2, "--copies"],
    [["--sheet", "4x2"], 2, "--sheet"],
    [["--paper", "a3"], 2, "--paper"],
    [["no-such-batch"], 2, "no-such-batch"],
  ])("refuses %j", async (args, code, why) => {
    const result = await labelsCommand([beans, ...args], kitchen());
    expect(result.code).toBe(code);
    expect(result.stderr).toContain(why);
    expect(result.stdout).toBe("");
  });

  it("says where its fonts are missing", async () => {
    const labelFont = () => {
      throw new Error("ENOENT");
    };
    const io = { ...kitchen(), labelFont };
    const result = await labelsCommand([beans, "--pdf", join(outside, "x.pdf")], io);
    expect(result.code).toBe(3);
    expect(result.stderr).toContain("install it again");
  });
});
