/**
 * A sheet of labels as PDF, in the Helvetica that every reader has: nothing is embedded, so letters
 * that font lacks are written without their accents, or as a question mark.
 */
import type PDFDocument from "pdfkit";
import { MM_PER_IN } from "../../reckon/units.ts";
import { typeSizes } from "../../review/pages/label-page.ts";
import { placeOf, type Sheet } from "../../review/pages/sheet.ts";
import type { Label } from "../../review/shelf/labels.ts";

const PT_PER_MM = 72 / MM_PER_IN;

/** Beyond Latin-1, the characters of the PDF's standard encoding. */
const ENCODED = new Set("€‚ƒ„…†‡ˆ‰Š‹ŒŽ‘’“”•–—˜™š›œžŸ");
const PLAIN: Record<string, string> = {
  ł: "l",
  Ł: "L",
  đ: "d",
  Đ: "D",
  ı: "i",
  ħ: "h",
  "‐": "-",
  "‑": "-",
  "−": "-",
  "′": "'",
  "″": '"',
};

function isKnown(char: string): boolean {
  const code = char.codePointAt(0) ?? 0;
  return (code >= 0x20 && code <= 0x7e) || (code >= 0xa0 && code <= 0xff) || ENCODED.has(char);
}

/** Text that the standard font can write; `lost` where a character has no equivalent. */
export function plainForFont(text: string): { text: string; changed: boolean; lost: boolean } {
  let lost = false;
  const written = [...text.normalize("NFC")].map((char) => {
    if (isKnown(char)) return char;
    const bare = PLAIN[char] ?? char.normalize("NFKD").replace(/\p{M}/gu, "");
    const known = [...bare].filter(isKnown).join("");
    if (known === "") lost = lost || !/\p{M}/u.test(char);
    return known || (/\p{M}/u.test(char) ? "" : "?");
  });
  const result = written.join("");
  return { text: result, changed: result !== text, lost };
}

type LabelPdf = { bytes: Uint8Array; changed: boolean; lost: boolean };

/** The sheet as a file's bytes. `madeAt` is the date it carries. */
export async function labelPdf(
  labels: readonly Label[],
  sheet: Sheet,
  madeAt: Date,
): Promise<LabelPdf> {
  const { default: Document } = await import("pdfkit");
  const { paper } = sheet;
  const document = new Document({
    size: [paper.widthMm * PT_PER_MM, paper.heightMm * PT_PER_MM],
    margin: 0,
    autoFirstPage: false,
    info: {
      Title: `Labels for batch ${labels[0]?.batch ?? ""}`,
      Creator: "Brinebell",
      CreationDate: madeAt,
    },
  });
  const chunks: Uint8Array[] = [];
  document.on("data", (chunk: Uint8Array) => chunks.push(chunk));
  const ended = new Promise<void>((resolve) => document.on("end", () => resolve()));
  let changed = false;
  let lost = false;
  let pages = 0;
  labels.forEach((label, index) => {
    const place = placeOf(sheet, index);
    for (; pages <= place.page; pages++) document.addPage();
    const lines = label.lines.map((line) => {
      const plain = plainForFont(line);
      changed = changed || plain.changed;
      lost = lost || plain.lost;
      return plain.text;
    });
    drawLabel(document, { ...label, lines }, sheet, place);
  });
  document.end();
  await ended;
  return { bytes: Buffer.concat(chunks), changed, lost };
}

function drawLabel(
  document: InstanceType<typeof PDFDocument>,
  label: Label,
  sheet: Sheet,
  { xMm, yMm }: { xMm: number; yMm: number },
): void {
  const sizes = typeSizes(label, sheet);
  const left = (xMm + 2) * PT_PER_MM;
  let top = (yMm + 1.5) * PT_PER_MM;
  const width = (sheet.widthMm - 4) * PT_PER_MM;
  label.lines.forEach((line, index) => {
    const size = index === 0 ? sizes.head : sizes.text;
    document.font(index === 0 ? "Helvetica-Bold" : "Helvetica").fontSize(size);
    // Text that is still too wide for its label is set smaller, never cut.
    const wide = document.widthOfString(line);
    if (wide > width) document.fontSize((size * width) / wide);
    document.text(line, left, top, { lineBreak: false });
    top += size * 1.2;
  });
}
