/** Jars named by the marks on their lids: "D 3 didn't seal", "P2 and P5 failed". */
import type { Context, NamedBatch } from "../context.ts";

/** The same words with plain numbers for the marks, and the lot whose marks they are. */
type Marked = { text: string; of: NamedBatch };

const MARK = /(?<![\p{L}\p{N}])(?:(?:jars?|lids?|numbers?) +)?([a-z]{1,20})[ -]?(\d{1,3})(?!\w)/giu;
/** "A 3" is a mark, "a 3" is an article and a number. */
const ARTICLE = /^a[ -]/;

/** Undefined where no running lot's mark is said, or marks of several lots are. */
export function markedJars(text: string, running: Context["running"]): Marked | undefined {
  const lots = new Map(running.map((one) => [one.mark?.toLowerCase(), one]));
  const found = new Set<NamedBatch>();
  const plain = text.replace(MARK, (whole, letters: string, number: string) => {
    const lot = lots.get(letters.toLowerCase());
    if (lot === undefined || ARTICLE.test(whole)) return whole;
    const first = found.size === 0;
    found.add(lot);
    return first ? `jar ${number}` : number;
  });
  const [of] = found;
  return of !== undefined && found.size === 1 ? { text: plain, of } : undefined;
}
