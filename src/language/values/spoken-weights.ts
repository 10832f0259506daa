/** Weights of produce as people say them. Pounds. */

import type { Word } from "../words.ts";
import { wordAt } from "../words.ts";
import { labelsAt } from "./open-slots.ts";
import { numbersAt, type Parsed } from "./spoken-numbers.ts";

const POUNDS_PER: Record<string, number> = {
  pounds: 1,
  pound: 1,
  kilo: 2.20462262,
  kilos: 2.20462262,
  kilogram: 2.20462262,
  ounces: 1 / 16,
  ounce: 1 / 16,
  grams: 1 / 453.59237,
  gram: 1 / 453.59237,
};

/** The first unit of weight among words; pounds where none is. Pounds. */
export function unitIn(words: readonly Word[]): number {
  const unit = words.find(({ word }) => Object.hasOwn(POUNDS_PER, word));
  return POUNDS_PER[unit?.word ?? "pounds"] ?? 1;
}

/** "Two pounds", "a pound and three quarters", "one pound nine ounces". Pounds. */
export function weightAt(words: readonly Word[], at: number): Parsed<number> | undefined {
  const broken = partOfUnitAt(words, at);
  if (broken) return broken;
  if (partOfUnitAt(words, at - 1) || partOfUnitAt(words, at - 2)) return undefined;
  for (const number of numbersAt(words, at)) {
    const unit = wordAt(words, number.next);
    if (!Object.hasOwn(POUNDS_PER, unit)) continue;
    const part = shareAt(words, number.next + 1);
    const value = (number.value + part.value) * (POUNDS_PER[unit] ?? 1);
    const inPounds = /^pounds?$/.test(unit);
    const bare = part.next === number.next + 1;
    const ounces = inPounds
      ? (ouncesAt(words, part.next) ?? (bare ? bareOuncesAt(words, part.next) : undefined))
      : undefined;
    return { value: value + (ounces?.value ?? 0), next: ounces?.next ?? part.next };
  }
  if (/^(a|an|another)$/.test(wordAt(words, at)) && wordAt(words, at + 1) === "pound") {
    const part = shareAt(words, at + 2);
    return { value: 1 + part.value, next: part.next };
  }
  // "Blue Lake, pound and a half".
  const share = wordAt(words, at) === "pound" ? shareAt(words, at + 1) : undefined;
  const counted = numbersAt(words, at - 1).some(({ next }) => next === at);
  if (share && share.value > 0 && !counted) return { value: 1 + share.value, next: share.next };
  return undefined;
}

const PARTS: Record<string, number> = { half: 1 / 2, quarter: 1 / 4, third: 1 / 3 };

/** "Half a pound", "a quarter pound", "three quarters of a pound". Pounds. */
function partOfUnitAt(words: readonly Word[], at: number): Parsed<number> | undefined {
  let next = at;
  const times = /^(three|3)$/.test(wordAt(words, next)) ? 3 : 1;
  if (times === 3 || wordAt(words, next) === "a") next += 1;
  const part = PARTS[wordAt(words, next).replace(/(quarter|third)s$/, "$1")];
  if (part === undefined || (times === 3 && part === 1 / 2)) return undefined;
  next += 1;
  for (const small of ["of", "a"]) if (wordAt(words, next) === small) next += 1;
  const unit = POUNDS_PER[wordAt(words, next)];
  return unit === undefined ? undefined : { value: times * part * unit, next: next + 1 };
}

/** What comes on top of pounds: "nine ounces", "and nine ounces". Pounds. */
function ouncesAt(words: readonly Word[], at: number): Parsed<number> | undefined {
  const from = wordAt(words, at) === "and" ? at + 1 : at;
  const number = numbersAt(words, from).find(({ next }) => /^ounces?$/.test(wordAt(words, next)));
  return number && { value: number.value / 16, next: number.next + 1 };
}

const OUNCES_IN_A_POUND = 16;

/** "Three pound ten", with nothing behind it that is counted. Pounds. */
function bareOuncesAt(words: readonly Word[], at: number): Parsed<number> | undefined {
  const [before, here] = [words[at - 1], words[at]];
  const [number] = numbersAt(words, at).toSorted((a, b) => b.next - a.next);
  if (!before || !here || !number || here.start - before.end > 1) return undefined;
  const [last, behind] = [words[number.next - 1], words[number.next]];
  const ends = !behind || !last || behind.start - last.end > 1 || behind.word === "and";
  const whole = Number.isInteger(number.value) && number.value < OUNCES_IN_A_POUND;
  return ends && whole && number.value > 0
    ? { value: number.value / OUNCES_IN_A_POUND, next: number.next }
    : undefined;
}

/** "A pound and three quarters": what comes to a whole unit; 0 where nothing does. */
function shareAt(words: readonly Word[], at: number): Parsed<number> {
  const [and, first, second] = [at, at + 1, at + 2].map((place) => wordAt(words, place));
  if (and !== "and") return { value: 0, next: at };
  if (first === "a" && second === "half") return { value: 0.5, next: at + 3 };
  if (first === "a" && second === "quarter") return { value: 0.25, next: at + 3 };
  const three = /^(three|3)$/.test(first ?? "") && /^quarters?$/.test(second ?? "");
  return three ? { value: 0.75, next: at + 3 } : { value: 0, next: at };
}

/** A weight alone: "seven pounds". Pounds. */
export function weighedAt(words: readonly Word[], at: number): Parsed<{ weightLb: number }>[] {
  const weight = weightAt(words, at);
  if (!weight) return [];
  return [{ value: { weightLb: Math.round(weight.value * 1000) / 1000 }, next: weight.next }];
}

/** Produce by weight, before the recipe is named: "ten pounds of cucumbers". Pounds. */
export function producedAt(words: readonly Word[], at: number): Parsed<{ weightLb: number }>[] {
  const weight = weightAt(words, at);
  if (!weight) return [];
  const weightLb = Math.round(weight.value * 1000) / 1000;
  const of = wordAt(words, weight.next) === "of" ? weight.next + 1 : weight.next;
  return labelsAt(words, of).map(({ next }) => ({ value: { weightLb }, next }));
}
