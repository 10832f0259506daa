/** A set of words written as lines of words with spaces between them. */
export function wordSet(...lines: string[]): ReadonlySet<string> {
  return new Set(lines.join(" ").split(" "));
}
