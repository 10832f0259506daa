/** Sheets of labels as a page to print, each label in its place. */

import { PT_PER_MM } from "../../reckon/units.ts";
import { html, type Markup } from "./html.ts";
import type { LabelLayout } from "./label-layout.ts";
import type { PlacedLabel } from "./label-sheet.ts";
import { page } from "./page.ts";
import type { Sheet } from "./sheet.ts";
import { element } from "./svg.ts";

export function labelPage(labels: readonly PlacedLabel[], sheet: Sheet): string {
  const { paper, round } = sheet;
  const style = `
@page { size: ${paper.widthMm}mm ${paper.heightMm}mm; margin: 0; }
body { margin: 0; background: #fff; color: #000;
  font-family: "Noto Sans", "Liberation Sans", sans-serif; }
h1 { font-size: 1rem; margin: 1rem; } main { margin: 0; }
@media print { h1 { display: none; } }
.sheet { position: relative; width: ${paper.widthMm}mm; height: ${paper.heightMm}mm;
  overflow: hidden; break-after: page; list-style: none; margin: 0; padding: 0; }
.label { position: absolute; box-sizing: border-box;
  width: ${sheet.widthMm}mm; height: ${sheet.heightMm}mm;
  padding: ${sheet.freeYMm.toFixed(2)}mm ${sheet.freeXMm.toFixed(2)}mm; }
.label svg { display: block; width: 100%; height: 100%; print-color-adjust: exact; }
.frame { fill: none; stroke: #000; } .white { fill: #fff; } .bold { font-weight: bold; }
@media screen { .label { outline: 1px dotted #767676; ${round ? "border-radius: 50%;" : ""} } }
`;
  const pages = new Map<number, Markup[]>();
  for (const label of labels) {
    pages.set(label.page, [...(pages.get(label.page) ?? []), labelMarkup(label, sheet)]);
  }
  const sheets = [...pages.values()].map((list) => html`<ul class="sheet">\n${list}</ul>\n`);
  return page("Labels", html`<h1>Labels</h1>\n${sheets}`, style, "Brinebell labels");
}

function labelMarkup({ layout, left, top }: PlacedLabel, sheet: Sheet): Markup {
  const mm = (points: number, free: number) => `${(points / PT_PER_MM - free).toFixed(2)}mm`;
  const place = `left:${mm(left, sheet.freeXMm)};top:${mm(top, sheet.freeYMm)}`;
  return html`<li class="label" style="${place}">${drawing(layout, sheet)}</li>\n`;
}

/** Every piece is as wide as it was measured, whatever font the browser has. */
function drawing({ pieces, boxes }: LabelLayout, sheet: Sheet): Markup {
  const width = (sheet.widthMm - 2 * sheet.freeXMm) * PT_PER_MM;
  const height = (sheet.heightMm - 2 * sheet.freeYMm) * PT_PER_MM;
  const frames = boxes.map(({ x, y, width: wide, height: high, filled }) => {
    const look: Record<string, string> = filled ? {} : { class: "frame" };
    return element("rect", { ...look, x, y, width: wide, height: high });
  });
  const texts = pieces.map(({ text, x, y, width: wide, size, bold, white }) => {
    const look = [bold && "bold", white && "white"].filter(Boolean).join(" ");
    return element(
      "text",
      {
        ...(look === "" ? {} : { class: look }),
        ...{ x, y, "font-size": size.toFixed(2) },
        ...{ textLength: wide, lengthAdjust: "spacingAndGlyphs" },
      },
      text,
    );
  });
  const box = `0 0 ${width.toFixed(2)} ${height.toFixed(2)}`;
  return element("svg", { viewBox: box }, ...frames, ...texts);
}
