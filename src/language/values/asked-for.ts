/**
 * "For five pounds", "for twelve pints", "to four cups of berries": the amount a question is about.
 */
import type { Word } from "../words.ts";
import { sizesAt } from "./open-slots.ts";
import { numbersAt } from "./spoken-numbers.ts";

type AskedFor = {
  /** Pounds or cups of produce, or jars. */
  amount: number;
  unit: "lb" | "cup" | "jar";
  size?: string;
};

const BEFORE = new Set(["for", "from", "to", "of", "with", "in", "out"]);
const LB_PER_KG = 2.20462;

/**
 * The first such amount after one of the words that introduce it, else the first of all; undefined
 * where there is none.
 */
export function askedForIn(words: readonly Word[]): AskedFor | undefined {
  const led = [...words.keys()].filter((at) => BEFORE.has(words[at - 1]?.word ?? ""));
  for (const at of [...led, ...words.keys()]) {
    const found = amountAt(words, at);
    if (found) return found;
  }
  return undefined;
}

function amountAt(words: readonly Word[], at: number): AskedFor | undefined {
  for (const { value, next } of numbersAt(words, at)) {
    const unit = words[next]?.word ?? "";
    if (/^pounds?$/.test(unit)) return { amount: value, unit: "lb" };
    if (/^kilos?$/.test(unit)) return { amount: value * LB_PER_KG, unit: "lb" };
    if (/^cups?$/.test(unit)) return { amount: value, unit: "cup" };
    if (/^jars?$/.test(unit)) return { amount: value, unit: "jar" };
    const size = sizesAt(words, next)[0];
    if (size) return { amount: value, unit: "jar", size: size.value };
  }
  return undefined;
}
