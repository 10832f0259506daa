/** The font of labels: how wide its letters are, and which it lacks. */
import { create } from "fontkit";
import type { Measure } from "../../review/pages/label-layout.ts";

/** A font's two files, as the program ships them. */
export type FontFiles = { regular: Uint8Array; bold: Uint8Array };

export type LabelFont = {
  measure: Measure;
  /** A text as this font can write it, and the characters it lacks, which became `?`. */
  written(text: string): { text: string; lacks: string[] };
};

const CHARACTERS = new Intl.Segmenter("en", { granularity: "grapheme" });

export function labelFont({ regular, bold }: FontFiles): LabelFont {
  const fonts = { regular: create(regular), bold: create(bold) };
  const has = (text: string) => {
    return [...text].every((sign) => fonts.bold.hasGlyphForCodePoint(sign.codePointAt(0) ?? 0));
  };
  return {
    measure(text, isBold) {
      const font = isBold ? fonts.bold : fonts.regular;
      return font.layout(text).advanceWidth / font.unitsPerEm;
    },
    written(text) {
      const lacks: string[] = [];
      const signs = Array.from(CHARACTERS.segment(text), ({ segment }) => {
        if (has(segment)) return segment;
        const plain = segment.normalize("NFKC");
        if (has(plain)) return plain;
        lacks.push(segment);
        return "?";
      });
      return { text: signs.join("").replace(/\?{2,}/g, "?"), lacks };
    },
  };
}
