import { describe, expect, it } from "vitest";
import { stockOf } from "../../../src/review/pages/label-stock.ts";
import {
  placeOf,
  placesOn,
  type Sheet,
  sheetOf,
  sizeWords,
} from "../../../src/review/pages/sheet.ts";

function sheetNamed(sheet: string, paper?: string, grid?: string): Sheet {
  const read = sheetOf({ sheet, paper, grid });
  if (!read.ok) throw new Error(read.error);
  return read.value;
}

describe("a label sheet", () => {
  it.each([
    ["2.625x1in", 30],
    ["2 5/8 x 1 in", 30],
    ["4x2in", 10],
    ["2 x 4 in", 10],
    ["1 1/3 by 4 in", 14],
    ["2in round", 12],
    ["2.5in-round", 9],
    ["round 2 1/2 in", 9],
    ['2"x2"', 12],
    ["70x37mm", 24],
    ["63.5x38.1mm", 21],
    ["99.1 x 38.1 mm", 14],
    ["50x30mm", 36],
    ["60mm round", 12],
  ])("of %s has %i to a page, none over another or off the paper", (size, each) => {
    const sheet = sheetNamed(size);
    expect(placesOn(sheet)).toBe(each);
    const boxes = Array.from({ length: each }, (_, i) => placeOf(sheet, i));
    const { paper } = sheet;
    for (const [i, box] of boxes.entries()) {
      expect(box.page).toBe(0);
      expect(box.xMm).toBeGreaterThanOrEqual(0);
      expect(box.yMm).toBeGreaterThanOrEqual(0);
      expect(box.xMm + sheet.widthMm).toBeLessThanOrEqual(paper.widthMm + 0.01);
      expect(box.yMm + sheet.heightMm).toBeLessThanOrEqual(paper.heightMm + 0.01);
      for (const other of boxes.slice(i + 1)) {
        const apart =
          Math.abs(box.xMm - other.xMm) >= sheet.widthMm - 0.01 ||
          Math.abs(box.yMm - other.yMm) >= sheet.heightMm - 0.01;
        expect(apart).toBe(true);
      }
    }
    expect(placeOf(sheet, each).page).toBe(1);
  });

  it("lies in the middle of its paper, for every common one", () => {
    for (const name of ["letter", "a4"] as const) {
      for (const grid of stockOf(name)) {
        const size = grid.round ? `${grid.widthMm}mm round` : `${grid.widthMm}x${grid.heightMm}mm`;
        const sheet = sheetNamed(size, name, `${grid.columns}x${grid.rows}`);
        expect(sheet).toMatchObject(grid);
        const last = placeOf(sheet, placesOn(sheet) - 1);
        const right = sheet.paper.widthMm - last.xMm - sheet.widthMm;
        const bottom = sheet.paper.heightMm - last.yMm - sheet.heightMm;
        expect(Math.abs(right - sheet.leftMm), `${size} across`).toBeLessThan(0.3);
        expect(Math.abs(bottom - sheet.topMm), `${size} down`).toBeLessThan(1.1);
      }
    }
  });

  it("keeps text off the edge of the paper, where no printer reaches", () => {
    const sheet = sheetNamed("70x37mm");
    expect(placeOf(sheet, 0).xMm + sheet.freeXMm).toBeGreaterThan(4);
    expect(placeOf(sheet, 0).yMm + sheet.freeYMm).toBeGreaterThan(4);
  });

  it("is on letter by inches and on a4 by millimeters, or as is asked", () => {
    expect(sheetNamed("2x4in").paper.name).toBe("letter");
    expect(sheetNamed("99.1x38.1mm").paper.name).toBe("a4");
    expect(sheetNamed("50mm round", "letter").paper.name).toBe("letter");
    expect(sizeWords(sheetNamed("2 x 4 in"))).toBe("4 x 2 in");
    expect(sizeWords(sheetNamed("60mm round"))).toBe("60 mm round");
  });

  it("is found by its grid, where a size comes in several", () => {
    expect(placesOn(sheetNamed("2in round", undefined, "4x5"))).toBe(20);
    expect(placesOn(sheetNamed("2.5in round", undefined, "3x4"))).toBe(12);
    expect(sheetNamed("90x50mm", undefined, "2x5")).toMatchObject({ leftMm: 15, topMm: 23.5 });
  });

  it.each([
    "",
    "big",
    "2x1",
    "1x1mm",
    "900x900mm",
    "-2x1in",
    "2in",
    "0x3in",
    "1/0x2in",
    "2x3in round",
  ])("of %j is refused", (size) => {
    expect(sheetOf({ sheet: size }).ok).toBe(false);
  });

  it.each([
    [{ sheet: "2x4in", paper: "a3" }, "--paper"],
    [{ sheet: "2x4in", grid: "many" }, "--grid"],
    [{ sheet: "90x50mm", grid: "3x5" }, "3x5 labels"],
  ])("as %j is refused, and it is said why", (request, why) => {
    const read = sheetOf(request);
    expect(read.ok ? "" : read.error).toContain(why);
  });
});
