import type { Word } from "../words.ts";
import { numbersAt, type Parsed } from "./spoken-numbers.ts";

/**
 * Lengths of time as people say them: "an hour and a half", "two and a half hours", "90 min",
 * "a quarter of an hour", "1h30", "three weeks". Answers are in minutes.
 */

const UNIT_MINUTES: Record<string, number> = {
  second: 1 / 60,
  seconds: 1 / 60,
  minute: 1,
  minutes: 1,
  hour: 60,
  hours: 60,
  day: 1440,
  days: 1440,
  week: 10080,
  weeks: 10080,
};

function unitAt(words: readonly Word[], at: number): number | undefined {
  const word = words[at]?.word ?? "";
  return Object.hasOwn(UNIT_MINUTES, word) ? UNIT_MINUTES[word] : undefined;
}

/** "half an", "a quarter of an", "three quarters of an", "a", "an", "another". */
const SHARES: [string[], number][] = [
  [["three", "quarters", "of", "an"], 0.75],
  [["3", "quarters", "of", "an"], 0.75],
  [["a", "quarter", "of", "an"], 0.25],
  [["quarter", "of", "an"], 0.25],
  [["three", "quarters", "of"], 0.75],
  [["three", "quarter"], 0.75],
  [["a", "quarter", "of"], 0.25],
  [["quarter", "of"], 0.25],
  [["half", "of", "an"], 0.5],
  [["a", "good"], 1],
  [["about", "an"], 1],
  [["a", "quarter"], 0.25],
  [["quarter"], 0.25],
  [["half", "an"], 0.5],
  [["half", "a"], 0.5],
  [["a", "half"], 0.5],
  [["half"], 0.5],
  [["a", "couple", "of"], 2],
  [["a", "couple"], 2],
  [["couple", "of"], 2],
  [["a", "few"], 3],
  [["a", "full"], 1],
  [["an"], 1],
  [["a"], 1],
  [["another"], 1],
];

function saysAt(words: readonly Word[], at: number, said: readonly string[]): boolean {
  return said.every((word, step) => words[at + step]?.word === word);
}

/** One amount with its unit; the value is in minutes, `unit` is the unit's length. */
function oneAt(
  words: readonly Word[],
  at: number,
): (Parsed<number> & { unit: number }) | undefined {
  for (const number of numbersAt(words, at)) {
    const skip = words[number.next]?.word === "more" ? 1 : 0;
    const unit = unitAt(words, number.next + skip);
    if (unit) {
      return { value: number.value * unit, next: number.next + skip + 1, unit };
    }
  }
  for (const [said, share] of SHARES) {
    if (!saysAt(words, at, said)) continue;
    const next = at + said.length;
    const unit = unitAt(words, next);
    if (unit) return { value: share * unit, next: next + 1, unit };
  }
  const bare = words[at]?.word === "hour" || words[at]?.word === "minute";
  const unit = bare ? unitAt(words, at) : undefined;
  return unit ? { value: unit, next: at + 1, unit } : undefined;
}

const TAILS: [string[], number][] = [
  [["and", "a", "half"], 0.5],
  [["and", "a", "quarter"], 0.25],
  [["and", "three", "quarters"], 0.75],
];

/**
 * Lengths of time that could begin at this word, in minutes, the longest reading first.
 */
export function durationsAt(words: readonly Word[], at: number): Parsed<number>[] {
  const first = oneAt(words, at);
  if (!first) return [];
  const found: Parsed<number>[] = [{ value: first.value, next: first.next }];
  for (const [said, share] of TAILS) {
    if (saysAt(words, first.next, said) && !unitAt(words, first.next + said.length)) {
      const next = first.next + said.length;
      return [{ value: first.value + share * first.unit, next }, ...found];
    }
  }
  const joined = words[first.next]?.word === "and" ? first.next + 1 : first.next;
  const second = oneAt(words, joined);
  if (second && second.unit < first.unit) {
    found.unshift({ value: first.value + second.value, next: second.next });
  } else if (first.unit === 60 && !second) {
    const loose = numbersAt(words, joined).find((number) => number.value < 60);
    if (loose) found.unshift({ value: first.value + loose.value, next: loose.next });
  }
  return found.map(({ value, next }) => ({ value: Math.round(value * 1000) / 1000, next }));
}
