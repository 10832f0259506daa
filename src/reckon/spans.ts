/** Spans of time, as instants in ms. */

export type Span = { from: number; to: number };

/** Spans with other spans cut out of them. */
export function without(spans: readonly Span[], others: readonly Span[]): Span[] {
  let left = [...spans];
  for (const other of others) {
    if (!left.some((span) => span.from < other.to && other.from < span.to)) continue;
    left = left.flatMap((span) => {
      const before = { from: span.from, to: Math.min(span.to, other.from) };
      const after = { from: Math.max(span.from, other.to), to: span.to };
      return [before, after].filter(({ from, to }) => to > from);
    });
  }
  return left;
}

/** Milliseconds of spans that do not overlap. */
export function lengthOf(spans: readonly Span[]): number {
  return spans.reduce((sum, { from, to }) => sum + to - from, 0);
}
