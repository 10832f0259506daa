/** A sheet of labels as a page to print, each label in its place on the sheet. */

import { MM_PER_IN } from "../../reckon/units.ts";
import type { Label } from "../shelf/labels.ts";
import { html, type Markup } from "./html.ts";
import { page } from "./page.ts";
import { placeOf, type Sheet } from "./sheet.ts";

const MM_PER_PT = MM_PER_IN / 72;

/** Point sizes that let the lines of a label fit its height; the first line is the largest. */
export function typeSizes(label: Label, sheet: Sheet): { head: number; text: number } {
  const heightPt = (sheet.heightMm - 3) / MM_PER_PT;
  const widthPt = (sheet.widthMm - 4) / MM_PER_PT;
  const line = heightPt / (1.25 * (label.lines.length + 0.4));
  const [first = "", ...rest] = label.lines;
  const wide = (text: string, share: number) => widthPt / Math.max(1, text.length * share);
  const head = Math.min(16, line * 1.4, wide(first, 0.56));
  const text = Math.min(11, line, ...rest.map((one) => wide(one, 0.52)));
  const tenth = (value: number) => Math.max(3, Math.floor(value * 10) / 10);
  return { head: tenth(head), text: tenth(text) };
}

export function labelPage(labels: readonly Label[], sheet: Sheet): string {
  const { paper } = sheet;
  const style = `
@page { size: ${paper.widthMm}mm ${paper.heightMm}mm; margin: 0; }
body { margin: 0; background: #fff; color: #000; font-family: "Liberation Sans", sans-serif; }
h1 { font-size: 1rem; margin: 1rem; } main { margin: 0; }
@media print { h1 { display: none; } }
.sheet { position: relative; width: ${paper.widthMm}mm; height: ${paper.heightMm}mm;
  overflow: hidden; break-after: page; list-style: none; margin: 0; padding: 0; }
.label { position: absolute; box-sizing: border-box; overflow: hidden;
  width: ${sheet.widthMm}mm; height: ${sheet.heightMm}mm; padding: 1.5mm 2mm; line-height: 1.2; }
.label p { margin: 0; white-space: nowrap; } .label p:first-child { font-weight: bold; }
@media screen { .label { outline: 1px dotted #767676; } }
`;
  const pages = new Map<number, Markup[]>();
  labels.forEach((label, index) => {
    const { page: number, xMm, yMm } = placeOf(sheet, index);
    const list = pages.get(number) ?? [];
    list.push(labelMarkup(label, sheet, xMm, yMm));
    pages.set(number, list);
  });
  const sheets = [...pages.values()].map((list) => html`<ul class="sheet">\n${list}</ul>\n`);
  const title = `Labels for batch ${labels[0]?.batch ?? ""}`;
  return page(title, html`<h1>${title}</h1>\n${sheets}`, style, "Brinebell labels");
}

function labelMarkup(label: Label, sheet: Sheet, xMm: number, yMm: number): Markup {
  const { head, text } = typeSizes(label, sheet);
  const lines = label.lines.map((line, index) => {
    return html`<p style="${`font-size:${index === 0 ? head : text}pt`}">${line}</p>`;
  });
  const place = `left:${xMm.toFixed(2)}mm;top:${yMm.toFixed(2)}mm`;
  return html`<li class="label" style="${place}">${lines}</li>\n`;
}
