/** Edits (insert, delete, change, swap of neighbors) that make one word of another. */
function editDistance(from: string, to: string): number {
  let before: number[] = [];
  let above = Array.from({ length: to.length + 1 }, (_, column) => column);
  for (let row = 1; row <= from.length; row++) {
    const now = [row];
    for (let column = 1; column <= to.length; column++) {
      const same = from[row - 1] === to[column - 1];
      const change = (above[column - 1] ?? 0) + (same ? 0 : 1);
      let least = Math.min(change, (above[column] ?? 0) + 1, (now[column - 1] ?? 0) + 1);
      const swapped = from[row - 1] === to[column - 2] && from[row - 2] === to[column - 1];
      if (row > 1 && column > 1 && swapped) least = Math.min(least, (before[column - 2] ?? 0) + 1);
      now.push(least);
    }
    before = above;
    above = now;
  }
  return above[to.length] ?? 0;
}

const LONGEST_WORD = 40;

/** The known name nearest to a mistyped one; undefined where none is close. */
export function nearestName(typed: string, known: Iterable<string>): string | undefined {
  if (typed.length > LONGEST_WORD) return undefined;
  let best: string | undefined;
  let least = Math.max(2, Math.floor(typed.length / 3)) + 1;
  for (const name of known) {
    const extra = typed.length >= 3 && name.startsWith(typed) ? 1 : editDistance(typed, name);
    if (extra < least) {
      best = name;
      least = extra;
    }
  }
  return best;
}
