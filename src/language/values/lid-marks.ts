/** Jars named by the marks on their lids: "D 3 didn't seal", "P2 and P5 failed". */
import type { Context } from "../context.ts";

/** The same words with plain numbers for the marks, and the batch whose marks they are. */
type Marked = { text: string; batch: string };

const MARK = /(?<![\p{L}\p{N}])(?:(?:jars?|lids?|numbers?) +)?([a-z]{1,20})[ -]?(\d{1,3})(?!\w)/giu;
/** "A 3" is a mark, "a 3" is an article and a number. */
const ARTICLE = /^a[ -]/;

/** Undefined where no running batch's mark is said, or marks of several batches are. */
export function markedJars(text: string, running: Context["running"]): Marked | undefined {
  const batches = new Map(running.map(({ id, mark }) => [mark?.toLowerCase(), id]));
  const found = new Set<string>();
  const plain = text.replace(MARK, (whole, letters: string, number: string) => {
    const batch = batches.get(letters.toLowerCase());
    if (batch === undefined || ARTICLE.test(whole)) return whole;
    const first = found.size === 0;
    found.add(batch);
    return first ? `jar ${number}` : number;
  });
  const [batch] = found;
  return batch !== undefined && found.size === 1 ? { text: plain, batch } : undefined;
}
