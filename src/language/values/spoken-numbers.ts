import { ONES, TEENS, TENS } from "../../reckon/number-words.ts";
import type { Word } from "../words.ts";
import { wordAt } from "../words.ts";

/**
 * Numbers as people say them: "eleven and a half", "one eighty two", "six thousand two hundred",
 * "half a dozen", "10 1/2", "6,200".
 */

/** A reading of some words: the value, and the place of the first word after it. */
export type Parsed<T> = { value: T; next: number };

const ORDINALS = [
  "first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth thirteenth",
  "fourteenth fifteenth sixteenth seventeenth eighteenth nineteenth twentieth",
]
  .join(" ")
  .split(" ");

function own(table: Readonly<Record<string, number>>, word: string): number | undefined {
  return Object.hasOwn(table, word) ? table[word] : undefined;
}

/** "first", "21st", "twenty first" as a number from 1 to 39. */
export function ordinalAt(words: readonly Word[], at: number): Parsed<number> | undefined {
  const word = wordAt(words, at);
  const index = ORDINALS.indexOf(word);
  if (index >= 0) return { value: index + 1, next: at + 1 };
  if (word === "thirtieth") return { value: 30, next: at + 1 };
  const ending = wordAt(words, at + 1);
  if (/^\d{1,2}$/.test(word) && /^(st|nd|rd|th)$/.test(ending)) {
    return { value: Number(word), next: at + 2 };
  }
  const tens = own(TENS, word);
  const unit = ORDINALS.indexOf(ending);
  if ((tens === 20 || tens === 30) && unit >= 0 && unit < 9) {
    return { value: tens + unit + 1, next: at + 2 };
  }
  return undefined;
}

/** "Third", "third and fifth": the places in a row that are named one after the other. */
export function ordinalsAt(words: readonly Word[], at: number): Parsed<number[]> | undefined {
  const first = ordinalAt(words, at);
  if (!first) return undefined;
  const list = [first.value];
  let { next } = first;
  while (wordAt(words, next) === "and") {
    const one = ordinalAt(words, wordAt(words, next + 1) === "the" ? next + 2 : next + 1);
    if (!one) break;
    list.push(one.value);
    next = one.next;
  }
  return { value: list, next };
}

/** A whole number below 100 in words, or digits without a fraction. */
export function smallWholeAt(words: readonly Word[], at: number): Parsed<number> | undefined {
  const word = wordAt(words, at);
  if (/^\d{1,5}$/.test(word)) return { value: Number(word), next: at + 1 };
  const single = own(ONES, word) ?? own(TEENS, word);
  if (single !== undefined) return { value: single, next: at + 1 };
  const tens = own(TENS, word);
  if (tens === undefined) return undefined;
  const unit = own(ONES, wordAt(words, at + 1));
  return unit ? { value: tens + unit, next: at + 2 } : { value: tens, next: at + 1 };
}

/** Two more digits said after a first one: "eighty two", "oh five", "twenty", "fifteen". */
function lowerPairAt(words: readonly Word[], at: number): Parsed<number> | undefined {
  const word = wordAt(words, at);
  if (word === "oh" || word === "o") {
    const unit = own(ONES, wordAt(words, at + 1));
    return unit === undefined ? undefined : { value: unit, next: at + 2 };
  }
  const small = smallWholeAt(words, at);
  return small && !/^\d/.test(word) && small.value >= 10 ? small : undefined;
}

/** Hundreds and thousands put together, or digits said one after the other. */
function largeAt(words: readonly Word[], at: number): Parsed<number> | undefined {
  const first = wordAt(words, at);
  let head: Parsed<number> | undefined = smallWholeAt(words, at);
  if (!head && first === "a" && /^(hundred|thousand)$/.test(wordAt(words, at + 1))) {
    head = { value: 1, next: at + 1 };
  }
  if (!head) return undefined;
  const scale = wordAt(words, head.next);
  if (scale === "thousand") {
    const thousands = { value: head.value * 1000, next: head.next + 1 };
    return addRest(words, thousands, 1000);
  }
  if (scale === "hundred") {
    return addRest(words, { value: head.value * 100, next: head.next + 1 }, 100);
  }
  return runTogetherAt(words, head) ?? head;
}

/** What follows "thousand" or "hundred", below that scale, with or without "and". */
function addRest(
  words: readonly Word[],
  head: Parsed<number>,
  below: number,
): Parsed<number> | undefined {
  const start = wordAt(words, head.next) === "and" ? head.next + 1 : head.next;
  if (/^(a|an)$/.test(wordAt(words, start))) return head;
  const rest = below > 100 ? largeAt(words, start) : smallWholeAt(words, start);
  // "nine hundred and eleven hundred" are two numbers.
  const another =
    start > head.next && /^(hundred|thousand)$/.test(wordAt(words, rest?.next ?? start));
  if (another) return head;
  return rest && rest.value < below ? { value: head.value + rest.value, next: rest.next } : head;
}

/** "one eighty two" is 182, "two oh five" 205, "one eight two" 182, "sixty two hundred" 6200. */
function runTogetherAt(words: readonly Word[], head: Parsed<number>): Parsed<number> | undefined {
  if (/^\d/.test(wordAt(words, head.next - 1)) || head.value < 1) return undefined;
  const pair = lowerPairAt(words, head.next);
  if (pair && head.value < 10) return { value: head.value * 100 + pair.value, next: pair.next };
  const second = own(ONES, wordAt(words, head.next));
  if (head.value < 10 && second && wordAt(words, head.next + 1) === "hundred") {
    return { value: head.value * 1000 + second * 100, next: head.next + 2 };
  }
  const third = own(ONES, wordAt(words, head.next + 1));
  if (head.value < 10 && second !== undefined && third !== undefined) {
    return { value: head.value * 100 + second * 10 + third, next: head.next + 2 };
  }
  return undefined;
}

/** "and a half", "point five", "and three quarters", "1/2" after a whole number. */
function fractionAt(words: readonly Word[], at: number): Parsed<number> | undefined {
  const word = wordAt(words, at);
  if (word === "point") {
    let next = at + 1;
    let digits = "";
    for (;;) {
      const said = wordAt(words, next);
      const digit = said === "oh" ? 0 : own(ONES, said);
      if (digit === undefined && !/^\d+$/.test(said)) break;
      digits += digit === undefined ? said : String(digit);
      next += 1;
    }
    return digits ? { value: Number(`0.${digits}`), next } : undefined;
  }
  if (/^\d\/\d$/.test(word)) return { value: ratio(word), next: at + 1 };
  if (word !== "and") return undefined;
  return partAt(words, at + 1);
}

function ratio(text: string): number {
  const [over = 0, under = 1] = text.split("/").map(Number);
  return under === 0 ? 0 : over / under;
}

/** "a half", "a quarter", "three quarters", "one half", "half". */
function partAt(words: readonly Word[], at: number): Parsed<number> | undefined {
  const word = wordAt(words, at);
  const following = wordAt(words, at + 1);
  if (/^\d\/\d$/.test(word)) return { value: ratio(word), next: at + 1 };
  if (word === "half") return { value: 0.5, next: at + 1 };
  if (/^(a|one|1)$/.test(word) && following === "half") return { value: 0.5, next: at + 2 };
  if (/^(a|one|1)$/.test(word) && following === "quarter") return { value: 0.25, next: at + 2 };
  if (/^(three|3)$/.test(word) && /^quarters?$/.test(following))
    return { value: 0.75, next: at + 2 };
  return undefined;
}

/** "a dozen", "half a dozen", "two dozen", "a couple", "a pair". */
function dozensAt(words: readonly Word[], at: number): Parsed<number> | undefined {
  const said = [0, 1, 2].map((step) => wordAt(words, at + step));
  if (said[0] === "half" && said[1] === "a" && said[2] === "dozen") {
    return { value: 6, next: at + 3 };
  }
  if (said[0] === "a" && said[1] === "half" && said[2] === "dozen") {
    return { value: 6, next: at + 3 };
  }
  if (said[0] === "half" && said[1] === "dozen") return { value: 6, next: at + 2 };
  const many = said[0] === "a" ? 1 : own(ONES, said[0] ?? "");
  if (many && said[1] === "dozen") return { value: many * 12, next: at + 2 };
  if (said[0] === "dozen") return { value: 12, next: at + 1 };
  if (said[0] === "a" && (said[1] === "couple" || said[1] === "pair")) {
    return { value: 2, next: said[2] === "of" ? at + 3 : at + 2 };
  }
  return undefined;
}

/**
 * Every number that could be meant by the words beginning at `at`, the longest first. Never
 * negative; "one eighty two" gives 182 and also 1, for the phrase to choose.
 */
export function numbersAt(words: readonly Word[], at: number): Parsed<number>[] {
  const dozens = dozensAt(words, at);
  if (dozens) return [dozens];
  const word = wordAt(words, at);
  const found: Parsed<number>[] = [];
  const whole = /^\d{1,3}(,\d{3})+$/.test(word)
    ? { value: Number(word.replaceAll(",", "")), next: at + 1 }
    : /^\d{1,6}(\.\d{1,4})?$/.test(word)
      ? { value: Number(word), next: at + 1 }
      : undefined;
  for (const base of [
    whole ? scaledUp(words, whole) : undefined,
    largeAt(words, at),
    whole,
    smallWholeAt(words, at),
  ]) {
    if (!base || found.some((known) => known.next === base.next)) continue;
    const part = fractionAt(words, base.next);
    if (part) found.push({ value: base.value + part.value, next: part.next });
    found.push(base);
  }
  const part = partAt(words, at);
  if (found.length === 0 && part) found.push(part);
  return found.sort((a, b) => b.next - a.next);
}

/** "6 thousand 2 hundred" with its parts in digits. */
function scaledUp(words: readonly Word[], head: Parsed<number>): Parsed<number> | undefined {
  const scale = wordAt(words, head.next);
  if (scale === "thousand") {
    return addRest(words, { value: head.value * 1000, next: head.next + 1 }, 1000);
  }
  return undefined;
}

/**
 * Jar numbers in a row: "three and seven", "3, 5 and 8", "two through five". Whole numbers from 1
 * to 99, each once, in the order said.
 */
export function jarListAt(words: readonly Word[], at: number): Parsed<number[]>[] {
  const found: Parsed<number[]>[] = [];
  const jars: number[] = [];
  let next = at;
  for (;;) {
    if (wordAt(words, next) === "number" || wordAt(words, next) === "jar") next += 1;
    const one = smallWholeAt(words, next);
    if (!one || one.value < 1 || one.value > 99) break;
    if (!jars.includes(one.value)) jars.push(one.value);
    next = one.next;
    const range = /^(through|thru)$/.test(wordAt(words, next));
    const last = range ? smallWholeAt(words, next + 1) : undefined;
    if (last && last.value > one.value && last.value < 100) {
      for (let jar = one.value + 1; jar <= last.value; jar += 1) jars.push(jar);
      next = last.next;
    }
    found.push({ value: [...jars], next });
    if (/^(and|or|plus)$/.test(wordAt(words, next))) next += 1;
  }
  return found.reverse();
}
