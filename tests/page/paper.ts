/** What a printed page says and where, read back from its PDF. */
import { execFileSync } from "node:child_process";

export type PaperWord = {
  text: string;
  page: number;
  left: number;
  top: number;
  right: number;
  bottom: number;
};
/** Points. */
export type Paper = { width: number; height: number; words: PaperWord[] };

const ENTITIES: Record<string, string> = { amp: "&", lt: "<", gt: ">", quot: '"', apos: "'" };

/** The words of a PDF with their places, by pdftotext of poppler. */
export function paperOf(pdf: Buffer): Paper {
  const bounds = { encoding: "utf8", input: pdf, maxBuffer: 50_000_000 } as const;
  const text = execFileSync("pdftotext", ["-bbox", "-", "-"], bounds);
  const words: PaperWord[] = [];
  let page = -1;
  let [width, height] = [0, 0];
  for (const line of text.split("\n")) {
    const said = /<(page|word) (.*?)>(?:(.*)<\/word>)?$/.exec(line.trim());
    if (!said) continue;
    const [, kind, attributes = "", word = ""] = said;
    const numbers = [...attributes.matchAll(/"([\d.-]+)"/g)].map(([, one]) => Number(one));
    if (kind === "page") {
      page += 1;
      [width = 0, height = 0] = numbers;
    } else {
      const [left = 0, top = 0, right = 0, bottom = 0] = numbers;
      const plain = word.replace(/&(#?\w+);/g, (all, name) => ENTITIES[name] ?? all);
      words.push({ text: plain, page, left, top, right, bottom });
    }
  }
  return { width, height, words };
}

/** Words without a sign inside that are longer than this may be broken anywhere. */
const LONGEST_WHOLE = 18;

/** Words that a page says more often than its paper does. */
export function missingOn(paper: Paper, said: readonly string[]): string[] {
  const counts = new Map<string, number>();
  for (const { text } of paper.words) counts.set(text, (counts.get(text) ?? 0) + 1);
  const wanted = new Map<string, number>();
  for (const word of said) wanted.set(word, (wanted.get(word) ?? 0) + 1);
  return [...wanted].flatMap(([word, times]) => {
    if ((counts.get(word) ?? 0) >= times) return [];
    const broken = word.length > LONGEST_WHOLE || /\W\S/.test(word);
    return broken && inPieces(word, counts) ? [] : [word];
  });
}

/** Whether a word is made of pieces of at least two letters that stand on the paper. */
function inPieces(word: string, pieces: ReadonlyMap<string, number>): boolean {
  const reached = new Set([0]);
  for (let from = 0; from < word.length; from++) {
    if (!reached.has(from)) continue;
    for (let to = word.length; to >= from + 1; to--) {
      const last = to === word.length;
      if ((last || to - from > 1) && pieces.has(word.slice(from, to))) reached.add(to);
    }
  }
  return reached.has(word.length);
}

const POINTS_PER_MM = 72 / 25.4;

/** Words that do not lie whole inside margins of so many millimetres. */
export function outsideMargins({ width, height, words }: Paper, marginMm: number): string[] {
  const margin = marginMm * POINTS_PER_MM - 1;
  return words
    .filter(({ left, top, right, bottom }) => {
      const across = left < margin || right > width - margin;
      return across || top < margin || bottom > height - margin;
    })
    .map(({ text, page }) => `${text} on page ${page + 1}`);
}

/** Pairs of words of which one covers a good part of the other. */
export function overlapping({ words }: Paper): string[] {
  return words.flatMap((one, index) => {
    return words.slice(index + 1).flatMap((other) => {
      if (other.page !== one.page) return [];
      const wide = Math.min(one.right, other.right) - Math.max(one.left, other.left);
      const high = Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top);
      return wide > 1.5 && high > 3 ? [`${one.text} and ${other.text}`] : [];
    });
  });
}
