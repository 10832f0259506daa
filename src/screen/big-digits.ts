/** Digits and the word STOP, large enough to read from across a kitchen, drawn in blocks. */

/** Three dots wide and five high; a row of dots is three bits. */
const SHAPES: Record<string, number[]> = {
  "0": [7, 5, 5, 5, 7],
  "1": [2, 6, 2, 2, 7],
  "2": [7, 1, 7, 4, 7],
  "3": [7, 1, 3, 1, 7],
  "4": [5, 5, 7, 1, 1],
  "5": [7, 4, 7, 1, 7],
  "6": [7, 4, 7, 5, 7],
  "7": [7, 1, 2, 2, 2],
  "8": [7, 5, 7, 5, 7],
  "9": [7, 5, 7, 1, 7],
  "+": [0, 2, 7, 2, 0],
  S: [7, 4, 7, 1, 7],
  T: [7, 2, 2, 2, 2],
  O: [7, 5, 5, 5, 7],
  P: [7, 5, 7, 4, 4],
};
/** The colon takes one dot's width. */
const COLON = [0, 1, 0, 1, 0];

export type DigitSize = "half" | 1 | 2 | 3;

/** Which dots of a text are set, row by row, with a gap of one dot between characters. */
function dots(text: string): boolean[][] {
  const rows: boolean[][] = [[], [], [], [], []];
  for (const character of text) {
    const colon = character === ":";
    const shape = colon ? COLON : SHAPES[character];
    if (!shape) continue;
    const width = colon ? 1 : 3;
    for (const [index, row] of rows.entries()) {
      if (row.length > 0) row.push(false);
      for (let bit = width - 1; bit >= 0; bit--) row.push(((shape[index] ?? 0) >> bit) % 2 === 1);
    }
  }
  return rows;
}

/** The text in block digits; characters without a shape are left out. */
export function bigDigits(text: string, size: DigitSize): string[] {
  const rows = dots(text);
  if (size === "half") return halves(rows);
  return rows.flatMap((row) => {
    const line = row.map((dot) => (dot ? "█" : " ").repeat(2 * size)).join("");
    return Array.from({ length: size }, () => line.trimEnd());
  });
}

/** Two rows of dots in one row of characters. */
function halves(rows: boolean[][]): string[] {
  const lines: string[] = [];
  for (let index = 0; index < rows.length; index += 2) {
    const upper = rows[index] ?? [];
    const lower = rows[index + 1] ?? [];
    const line = upper.map((dot, at) => half(dot, lower[at] ?? false)).join("");
    lines.push(line.trimEnd());
  }
  return lines;
}

function half(upper: boolean, lower: boolean): string {
  if (upper && lower) return "█";
  if (upper) return "▀";
  return lower ? "▄" : " ";
}

/** Cells across that a text takes at a size. */
export function digitsWidth(text: string, size: DigitSize): number {
  const across = Math.max(0, ...dots(text).map((row) => row.length));
  return size === "half" ? across : across * 2 * size;
}
