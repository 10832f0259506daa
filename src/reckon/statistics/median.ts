/** The middle of the sorted values, or between the two in the middle; 0 where there are none. */
export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const half = sorted.length / 2;
  const low = sorted[Math.ceil(half) - 1] ?? 0;
  return (low + (sorted[Math.floor(half)] ?? low)) / 2;
}
