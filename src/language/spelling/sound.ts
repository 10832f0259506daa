/**
 * How alike two names sound and are spelled, for what a recognizer mishears and a wet finger
 * mistypes.
 */

const SOUND_STEPS: [RegExp, string][] = [
  [/[^a-z]/g, ""],
  [/ough/g, "o"],
  [/igh/g, "i"],
  [/ph/g, "f"],
  [/ck|q|x|c(?=[aoulrtk]|$)/g, "k"],
  [/tch|ch/g, "j"],
  [/c(?=[eiy])|z/g, "s"],
  [/c/g, "k"],
  [/dg|sh/g, "j"],
  [/wh/g, "w"],
  [/gh/g, "g"],
  [/kn/g, "n"],
  [/wr/g, "r"],
  [/mb$/g, "m"],
  [/d/g, "t"],
  [/g/g, "k"],
  [/b/g, "p"],
  [/v/g, "f"],
  [/(?!^)[aeiouyhw]/g, ""],
  [/^[aeiouyh]+/g, "a"],
  [/(.)\1+/g, "$1"],
];

/** Keys computed before; the same names recur with every utterance. */
const keys = new Map<string, string>();
const MOST_KEYS = 5000;

/**
 * A key of consonant sounds, voiced and unvoiced alike: "sauerkraut" and "sour crowd" share one.
 */
export function soundKey(name: string): string {
  const known = keys.get(name);
  if (known !== undefined) return known;
  let key = name.toLowerCase();
  for (const [pattern, into] of SOUND_STEPS) key = key.replace(pattern, into);
  if (keys.size > MOST_KEYS) keys.clear();
  keys.set(name, key);
  return key;
}

/**
 * Letters to add, drop, change or swap to turn one name into the other; an answer above `limit`
 * only means that it is above.
 */
export function editDistance(a: string, b: string, limit: number): number {
  if (Math.abs(a.length - b.length) > limit) return limit + 1;
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, index) => index);
  for (let i = 1; i <= a.length; i += 1) {
    const row = [i];
    let least = i;
    for (let j = 1; j <= b.length; j += 1) {
      const change = a[i - 1] === b[j - 1] ? 0 : 1;
      let best = Math.min(last[j - 1]! + change, last[j]! + 1, row[j - 1]! + 1);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
        best = Math.min(best, before[j - 2]! + 1);
      }
      row.push(best);
      if (best < least) least = best;
    }
    if (least > limit) return limit + 1;
    before = last;
    last = row;
  }
  return last[b.length]!;
}
