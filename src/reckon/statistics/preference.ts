/**
 * Small exact statistics for tasting and for seed tests: what a few answers can and cannot show.
 */

/** Probability of exactly `k` of `n` when each is a coin's toss. */
function tossProbability(k: number, n: number): number {
  let log = -n * Math.LN2;
  for (let i = 1; i <= k; i++) log += Math.log(n - k + i) - Math.log(i);
  return Math.exp(log);
}

/**
 * Chance of a split at least as uneven as `preferred` of `tasters` when nobody has a preference
 * (two-sided exact binomial; ISO 5495). Whole numbers, `preferred` from 0 to `tasters`.
 */
export function pairedPreferenceP(preferred: number, tasters: number): number {
  const larger = Math.max(preferred, tasters - preferred);
  let tail = 0;
  for (let k = larger; k <= tasters; k++) tail += tossProbability(k, tasters);
  return Math.min(1, 2 * tail);
}

/**
 * The fewest who must prefer the same one for a two-sided p of at most `alpha`; null where there
 * are too few tasters to show it (5 or fewer at 0.05).
 */
export function fewestForPreference(tasters: number, alpha: number): number | null {
  for (let k = Math.ceil(tasters / 2); k <= tasters; k++) {
    if (pairedPreferenceP(k, tasters) <= alpha) return k;
  }
  return null;
}

/** Two-sided 95 % of a normal distribution. */
const Z_95 = 1.959963984540054;

/** Wilson's 95 % interval of a share, `successes` of `trials` (at least one), within 0 to 1. */
export function wilsonInterval(successes: number, trials: number): [number, number] {
  const share = successes / trials;
  const z2 = Z_95 ** 2;
  const middle = (share + z2 / (2 * trials)) / (1 + z2 / trials);
  const reach =
    (Z_95 / (1 + z2 / trials)) *
    Math.sqrt((share * (1 - share)) / trials + z2 / (4 * trials * trials));
  return [Math.max(0, middle - reach), Math.min(1, middle + reach)];
}
