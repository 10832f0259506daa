import type { JarSize, Method, Pack } from "../../recipe/recipe.ts";
import type { Word } from "../words.ts";
import { wordAt } from "../words.ts";
import { sizesAt } from "./open-slots.ts";
import type { Parsed } from "./spoken-numbers.ts";

/** How a lot is put up, where its description says so: `raw pack, in pints`. Never a variety. */
export type Way = { jar?: JarSize; pack?: Pack; method?: Method };

const PACKED = new Set(["pack", "packed"]);
const PACKS: Readonly<Record<string, Pack>> = { raw: "raw", cold: "raw", hot: "hot" };

/** Sizes of jars as people say them, with the recipes' names for them. */
export const JARS_SAID: Readonly<Record<string, JarSize>> = {
  "half-pint": "half-pint",
  pint: "pint",
  "pint-and-a-half": "pint-and-half",
  quart: "quart",
  "half-gallon": "half-gallon",
};

const METHODS: readonly (readonly [said: string, method: Method])[] = [
  ["pressure canner", "pressure"],
  ["pressure cooker", "pressure"],
  ["pressure", "pressure"],
  ["boiling water bath", "boiling-water"],
  ["boiling water canner", "boiling-water"],
  ["boiling water", "boiling-water"],
  ["water bath canner", "boiling-water"],
  ["water bath", "boiling-water"],
  ["waterbath", "boiling-water"],
  ["steam canner", "steam"],
  ["steamer", "steam"],
  ["steam", "steam"],
  ["refrigerator", "refrigerator"],
  ["fridge", "refrigerator"],
];

const BEFORE_A_METHOD = new Set(["by", "in", "with", "using", "for"]);
const BEFORE_A_JAR = new Set(["in", "into", "using"]);
const ARTICLES = new Set(["the", "a", "an", "my", "our"]);

function methodAt(words: readonly Word[], place: number): Parsed<Way> | undefined {
  if (!BEFORE_A_METHOD.has(wordAt(words, place))) return undefined;
  const from = ARTICLES.has(wordAt(words, place + 1)) ? place + 2 : place + 1;
  for (const [said, method] of METHODS) {
    const each = said.split(" ");
    if (!each.every((word, step) => wordAt(words, from + step) === word)) continue;
    return { value: { method }, next: from + each.length };
  }
  return undefined;
}

function jarAt(words: readonly Word[], place: number): Parsed<Way> | undefined {
  const from = ARTICLES.has(wordAt(words, place)) ? place + 1 : place;
  const [size] = sizesAt(words, from);
  const jar = size && JARS_SAID[size.value];
  if (!size || !jar) return undefined;
  const next = /^jars?$/.test(wordAt(words, size.next)) ? size.next + 1 : size.next;
  return { value: { jar }, next };
}

/** Words of pack, jar and method at this place. A jar needs `in` before it, or follows a pack. */
export function wayAt(
  words: readonly Word[],
  place: number,
  behind: boolean,
): Parsed<Way> | undefined {
  const pack = PACKS[wordAt(words, place)];
  if (pack && PACKED.has(wordAt(words, place + 1))) {
    return { value: { pack }, next: place + 2 };
  }
  const method = methodAt(words, place);
  if (method) return method;
  if (BEFORE_A_JAR.has(wordAt(words, place))) return jarAt(words, place + 1);
  return behind ? jarAt(words, place) : undefined;
}
