import { spawnSync } from "node:child_process";
import { describe, expect, it } from "vitest";
import { labelFont } from "../../src/commands/record/label-font.ts";
import { labelPdf } from "../../src/commands/record/label-pdf.ts";
import { PT_PER_MM } from "../../src/reckon/units.ts";
import { layoutLabel } from "../../src/review/pages/label-layout.ts";
import { placeLabels } from "../../src/review/pages/label-sheet.ts";
import { stockOf } from "../../src/review/pages/label-stock.ts";
import { type LabelWords, labelWords } from "../../src/review/pages/label-words.ts";
import { placeOf, placesOn, type Sheet, sheetOf, sizeWords } from "../../src/review/pages/sheet.ts";
import { fontFiles } from "../review/kitchen-files.ts";
import { type ReadPage, type ReadText, readPdf } from "../review/labels/read-labels.ts";
import { COLD, JAR, LONG, sampleLabels } from "../review/labels/sample-labels.ts";

const files = fontFiles();
const font = labelFont(files);
const MADE_AT = new Date("2027-09-20T12:00:00Z");
const MANY = 40;

function sheetNamed(sheet: string, paper?: string, grid?: string): Sheet {
  const read = sheetOf({ sheet, paper, grid });
  if (!read.ok) throw new Error(read.error);
  return read.value;
}

/** Every common sheet, and some that are not. */
const SHEETS = [
  ...(["letter", "a4"] as const).flatMap((paper) => {
    return stockOf(paper).map(({ widthMm, heightMm, round, columns, rows }) => {
      const size = round ? `${widthMm}mm round` : `${widthMm}x${heightMm}mm`;
      return sheetNamed(size, paper, `${columns}x${rows}`);
    });
  }),
  sheetNamed("60mm round"),
  sheetNamed("3 x 5 in"),
].map((sheet) => [`${sizeWords(sheet)}, ${placesOn(sheet)} to a sheet`, sheet] as const);

async function printed(labels: LabelWords[], sheet: Sheet, start = 1): Promise<ReadPage[]> {
  const placed = placeLabels(labels, sheet, start, font.measure);
  const fitting = placed.filter((one) => one !== undefined);
  expect(fitting).toHaveLength(labels.length);
  return readPdf(await labelPdf(fitting, sheet, files, MADE_AT));
}

const known = new Map<Sheet, Promise<ReadPage[]>>();

/** Forty labels of all kinds, printed once for each sheet. */
function fortyOn(sheet: Sheet): Promise<ReadPage[]> {
  const pages = known.get(sheet) ?? printed(sampleLabels(MANY), sheet);
  known.set(sheet, pages);
  return pages;
}

/** The corners of a text: as high as letters with accents, as low as those with tails. */
function cornersOf({ x, y, size, width }: ReadText): [number, number][] {
  return [x, x + width].flatMap((at): [number, number][] => [
    [at, y - 0.9 * size],
    [at, y + 0.25 * size],
  ]);
}

/** Whether a text lies on the label at a place, with nothing of it over the edge. */
function isOn(sheet: Sheet, place: number, text: ReadText): boolean {
  const { xMm, yMm } = placeOf(sheet, place);
  const [left, top] = [xMm * PT_PER_MM, yMm * PT_PER_MM];
  const [width, height] = [sheet.widthMm * PT_PER_MM, sheet.heightMm * PT_PER_MM];
  return cornersOf(text).every(([x, y]) => {
    if (!sheet.round) return x > left && x < left + width && y > top && y < top + height;
    return Math.hypot(x - left - width / 2, y - top - height / 2) < width / 2;
  });
}

/** The texts on each label, by their places counted on from page to page. */
function textsByPlace(pages: readonly ReadPage[], sheet: Sheet): Map<number, ReadText[]> {
  const each = placesOn(sheet);
  const found = new Map<number, ReadText[]>();
  pages.forEach(({ texts }, page) => {
    for (const text of texts) {
      const places = Array.from({ length: each }, (_, at) => page * each + at);
      const on = places.filter((place) => isOn(sheet, place, text));
      expect(on, `${text.text} at ${text.x}, ${text.y}`).toHaveLength(1);
      for (const place of on) found.set(place, [...(found.get(place) ?? []), text]);
    }
  });
  return found;
}

const joined = (texts: readonly (string | null | undefined)[]) =>
  texts.join("").replace(/\s/g, "").normalize("NFC");

describe("labels read back from a PDF", () => {
  it.each(SHEETS)("of %s: forty, each whole and on its label", async (_name, sheet) => {
    const labels = sampleLabels(MANY);
    const pages = await fortyOn(sheet);
    expect(pages).toHaveLength(Math.ceil(MANY / placesOn(sheet)));
    for (const { width, height } of pages) {
      expect(width).toBeCloseTo(sheet.paper.widthMm * PT_PER_MM, 1);
      expect(height).toBeCloseTo(sheet.paper.heightMm * PT_PER_MM, 1);
    }
    const byPlace = textsByPlace(pages, sheet);
    expect([...byPlace.keys()].sort((a, b) => a - b)).toEqual(labels.map((_, at) => at));
    labels.forEach((words, place) => {
      const texts = byPlace.get(place) ?? [];
      const read = joined(texts.map((one) => one.text));
      const { mark, name, title, band, small } = words;
      const head = joined([mark, name, title, band?.loud, band?.until]);
      const forms = small.flatMap((one) => one.forms.map((lines) => head + joined(lines)));
      expect(forms).toContain(read);
    });
  });

  it.each(SHEETS)("of %s: none too small, mark and name the largest", async (_name, sheet) => {
    const labels = sampleLabels(MANY);
    const byPlace = textsByPlace(await fortyOn(sheet), sheet);
    labels.forEach(({ mark, name, title }, place) => {
      const texts = byPlace.get(place) ?? [];
      const sizes = texts.map((one) => one.size);
      expect(Math.min(...sizes)).toBeGreaterThanOrEqual(7);
      const largest = texts.filter((one) => one.size > Math.max(...sizes) - 0.01);
      expect(joined(largest.map((one) => one.text))).toBe(joined([mark, name]));
      if (title === null) return;
      const begun = joined([title]);
      const first = texts[largest.length];
      expect(begun.startsWith(joined([first?.text]))).toBe(true);
      expect(first?.size).toBeGreaterThanOrEqual(Math.min(...sizes));
    });
  });

  it("is larger on a larger label", async () => {
    const sizes = ["2 5/8 x 1 in", "1 1/3 x 4 in", "2 x 4 in"].map(async (size) => {
      const [page] = await printed(sampleLabels(1), sheetNamed(size));
      const all = page?.texts.map((one) => one.size) ?? [];
      return [Math.max(...all), Math.min(...all)];
    });
    const [small, middle, large] = await Promise.all(sizes);
    expect(small?.[0]).toBeLessThan(middle?.[0] ?? 0);
    expect(middle?.[0]).toBeLessThan(large?.[0] ?? 0);
    expect(small?.[1]).toBeLessThan(large?.[1] ?? 0);
  });

  it.each([1, 2, 17, 30])("begins at place %i of a used sheet", async (start) => {
    const sheet = sheetNamed("2 5/8 x 1 in");
    const byPlace = textsByPlace(await printed(sampleLabels(MANY), sheet, start), sheet);
    expect(Math.min(...byPlace.keys())).toBe(start - 1);
    expect(Math.max(...byPlace.keys())).toBe(start - 1 + MANY - 1);
    expect(byPlace.size).toBe(MANY);
  });

  it("is a small file, with the letters it uses inside", async () => {
    const sheet = sheetNamed("2 5/8 x 1 in");
    const placed = placeLabels(sampleLabels(MANY), sheet, 1, font.measure);
    const fitting = placed.filter((one) => one !== undefined);
    const bytes = await labelPdf(fitting, sheet, files, MADE_AT);
    expect(bytes.byteLength).toBeLessThan(60_000);
    expect(Buffer.from(bytes).toString("latin1")).toMatch(/FontFile2/);
  });
});

const RASTER = 144;
const poppler = spawnSync("pdftoppm", ["-v"]).error === undefined;

/** How dark a page is between corners in points, 0 to 1, as another program draws it. */
function darkness(bytes: Uint8Array): (x: number, y: number, right: number, low: number) => number {
  const call = ["-r", String(RASTER), "-gray", "-singlefile", "-"];
  const { stdout } = spawnSync("pdftoppm", call, { input: bytes, maxBuffer: 2 ** 25 });
  const [head = "", width = ""] = /^P5\s+(\d+)\s+\d+\s+255\s/.exec(stdout.toString("latin1")) ?? [];
  const at = (points: number) => Math.round((points * RASTER) / 72);
  return (x, y, right, low) => {
    let [sum, count] = [0, 0];
    for (let row = at(y); row < at(low); row++) {
      for (let column = at(x); column < at(right); column++) {
        sum += 1 - (stdout[head.length + row * Number(width) + column] ?? 255) / 255;
        count += 1;
      }
    }
    return sum / count;
  };
}

describe.skipIf(!poppler)("labels drawn by another program", () => {
  it.each(["2 5/8 x 1 in", "2in round"])("of %s have bands, and only there", async (size) => {
    const sheet = sheetNamed(size);
    const labels = [JAR, COLD].map((label) => labelWords(label, "us"));
    const placed = placeLabels(labels, sheet, 1, font.measure);
    const fitting = placed.filter((one) => one !== undefined);
    const bytes = await labelPdf(fitting, sheet, files, MADE_AT);
    const dark = darkness(bytes);
    const [page] = await readPdf(bytes);
    const darkOf = (words: string) => {
      const text = page?.texts.find((one) => one.text === words);
      if (!text) throw new Error(words);
      const { x, y, width, size: high } = text;
      return dark(x, y - high * 0.7, x + width, y);
    };
    // White letters leave more than half of a band black, black ones less than half of the paper.
    expect(darkOf("REFRIGERATE")).toBeGreaterThan(0.5);
    expect(darkOf("REFRIGERATE")).toBeLessThan(0.8);
    expect(darkOf("Dilled green beans")).toBeGreaterThan(0.1);
    expect(darkOf("Dilled green beans")).toBeLessThan(0.4);
  });
});

describe("the layout of a label", () => {
  const room = { width: 180, height: 62, round: false };

  it("sets what is not for the shelf white on a band across the label", () => {
    const { pieces = [], boxes = [] } =
      layoutLabel(labelWords(COLD, "us"), room, font.measure) ?? {};
    const bands = boxes.filter((box) => box.filled);
    expect(bands).toHaveLength(1);
    const [band] = bands;
    expect(band?.width).toBe(room.width);
    const white = pieces.filter((piece) => piece.white);
    expect(white.map((piece) => piece.text)).toEqual(["REFRIGERATE", "use by 21 Aug 2027"]);
    const others = pieces.filter((piece) => !piece.white && piece.text !== "put up");
    const loud = white[0]?.size ?? 0;
    expect(others.filter((piece) => piece.size >= loud).map((piece) => piece.text)).toEqual([
      ...["D", "Dragon Tongue"],
    ]);
    for (const { x, y, width } of white) {
      expect(x).toBeGreaterThan(band?.x ?? 0);
      expect(x + width).toBeLessThan((band?.x ?? 0) + (band?.width ?? 0));
      expect(y).toBeGreaterThan(band?.y ?? 0);
      expect(y).toBeLessThan((band?.y ?? 0) + (band?.height ?? 0));
    }
  });

  it("has no band for the shelf", () => {
    const laid = layoutLabel(labelWords(JAR, "us"), room, font.measure);
    expect(laid?.boxes.filter((box) => box.filled)).toEqual([]);
    expect(laid?.pieces.filter((piece) => piece.white)).toEqual([]);
  });

  it("wraps a long title, and breaks a word only where no line could hold it", () => {
    const laid = layoutLabel(labelWords({ ...JAR, ...LONG }, "us"), room, font.measure);
    const texts = laid?.pieces.map((piece) => piece.text) ?? [];
    const words = `${LONG.variety} ${LONG.title}`.split(" ");
    expect(texts.join(" ").split(" ")).toEqual(expect.arrayContaining(words));
    const endless = labelWords({ ...JAR, variety: "Gurke".repeat(20) }, "us");
    const broken = layoutLabel(endless, room, font.measure);
    const name = broken?.pieces.filter((piece) => piece.bold).map((piece) => piece.text);
    expect(name?.join("")).toBe(`D${"Gurke".repeat(20)}`);
  });

  it("leaves out the process before it would print too small, and says so", () => {
    const small = { width: 100, height: 50, round: false };
    const laid = layoutLabel(labelWords(JAR, "us"), small, font.measure);
    expect(laid?.left).toBe("best by, the process");
    const words = laid?.pieces.map((piece) => piece.text).join(" ");
    expect(words).toContain("as tested");
    expect(words).not.toContain("boiling water");
  });

  it("gives up where even the name is too long", () => {
    const tiny = { width: 80, height: 40, round: false };
    expect(layoutLabel(labelWords({ ...COLD, ...LONG }, "us"), tiny, font.measure)).toBe(undefined);
  });
});
