/** A set of words, written as lines of words separated by spaces. */
export function wordSet(...lines: string[]): ReadonlySet<string> {
  return new Set(lines.join(" ").split(" "));
}
