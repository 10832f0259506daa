/** Sheets of labels as PDF, with what is used of the font inside it. */
import PDFDocument from "pdfkit";
import { PT_PER_MM } from "../../reckon/units.ts";
import type { PlacedLabel } from "../../review/pages/label-sheet.ts";
import type { Sheet } from "../../review/pages/sheet.ts";
import type { FontFiles } from "./label-font.ts";

/** The sheets as a file's bytes. `madeAt` is the date it carries. */
export async function labelPdf(
  labels: readonly PlacedLabel[],
  sheet: Sheet,
  font: FontFiles,
  madeAt: Date,
): Promise<Uint8Array> {
  const { paper } = sheet;
  const document = new PDFDocument({
    size: [paper.widthMm * PT_PER_MM, paper.heightMm * PT_PER_MM],
    margin: 0,
    autoFirstPage: false,
    info: { Title: "Labels", Creator: "Brinebell", CreationDate: madeAt },
  });
  document.registerFont("regular", font.regular).registerFont("bold", font.bold);
  const chunks: Uint8Array[] = [];
  document.on("data", (chunk: Uint8Array) => chunks.push(chunk));
  const ended = new Promise<void>((resolve) => document.on("end", () => resolve()));
  let pages = 0;
  for (const label of labels) {
    for (; pages <= label.page; pages++) document.addPage();
    drawLabel(document, label);
  }
  document.end();
  await ended;
  return Buffer.concat(chunks);
}

function drawLabel(document: PDFDocument, { layout, left, top }: PlacedLabel): void {
  for (const { x, y, width, height, filled } of layout.boxes) {
    document.rect(left + x, top + y, width, height);
    if (filled) document.fill("black");
    else document.lineWidth(1).stroke("black");
  }
  for (const { text, x, y, size, bold, white } of layout.pieces) {
    document.font(bold ? "bold" : "regular").fontSize(size);
    document.fillColor(white ? "white" : "black");
    document.text(text, left + x, top + y, { lineBreak: false, baseline: "alphabetic" });
  }
}
