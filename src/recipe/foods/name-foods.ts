import { FOODS, type Food } from "./foods.ts";

/** Words saying that a food is not meant: none of it, something in its place, or free of it. */
const DENIED =
  /\b(?:not|no|none|without|instead of|in place of|trimmed of|free of)\b[^,;.()]*|\b\w+-free\b/g;
/** Vinegar is named for what it was made from. */
const VINEGAR = /(?:(?!(?:in|with|and|or|plus)\b)[\w-]+ ){0,3}vinegars?\b/g;
const WORD = /[\p{L}\p{M}\d']+/gu;

/** A food where a text names it. */
export type Mention = {
  food: Food;
  /** The name as it stands in the table, in the singular. */
  name: string;
  /** The places of its first word and of the one after its last, among the words of the text. */
  from: number;
  to: number;
  /** True where its last word stands in the plural. */
  plural: boolean;
};

/** The words of a text in lower case. */
export function wordsOf(text: string): string[] {
  return text.toLowerCase().replaceAll("’", "'").match(WORD) ?? [];
}

/** The forms in which people write a word of a name, plural included. */
function formsOf(word: string): string[] {
  if (word.endsWith("y")) return [word, `${word.slice(0, -1)}ies`, `${word}s`];
  if (word.endsWith("f")) return [word, `${word.slice(0, -1)}ves`, `${word}s`];
  return [word, `${word}s`, `${word}es`, `${word}'s`];
}

/** Whether a word is a form of a word in the singular: tomatoes, of tomato. */
export function isFormOf(word: string, singular: string): boolean {
  return formsOf(singular.toLowerCase()).includes(word);
}

/** Names by their first word, the longest first: celery seed is not celery. */
type Index = {
  byFirst: Map<string, { food: Food; name: string; words: string[] }[]>;
  /** From each written form to its word in the table. */
  singular: Map<string, string>;
};

function indexed(): Index {
  const byFirst: Index["byFirst"] = new Map();
  const known = new Set<string>();
  for (const food of FOODS) {
    const names = food.kind === "no food" ? food.also : [food.name, ...food.also];
    for (const name of names) {
      const words = wordsOf(name);
      for (const word of words) known.add(word);
      const first = words[0] ?? "";
      byFirst.set(first, [...(byFirst.get(first) ?? []), { food, name, words }]);
    }
  }
  for (const entries of byFirst.values()) entries.sort((a, b) => b.words.length - a.words.length);
  const singular = new Map<string, string>();
  for (const word of known) {
    for (const form of formsOf(word)) if (!known.has(form)) singular.set(form, word);
  }
  return { byFirst, singular };
}

let index: Index | undefined;

/** Every food that the words name, from left to right; the longest name wins. */
export function mentionsIn(words: readonly string[]): Mention[] {
  index ??= indexed();
  const { byFirst, singular } = index;
  const plain = words.map((word) => singular.get(word) ?? word);
  const found: Mention[] = [];
  for (let from = 0; from < plain.length; ) {
    const entries = byFirst.get(plain[from] ?? "") ?? [];
    const entry = entries.find((one) => one.words.every((word, i) => plain[from + i] === word));
    if (!entry) {
      from += 1;
      continue;
    }
    const to = from + entry.words.length;
    const plural = singular.has(words[to - 1] ?? "");
    found.push({ food: entry.food, name: entry.name, from, to, plural });
    from = to;
  }
  return found;
}

const seen = new Map<string, readonly Food[]>();

/** A name in lower case, without what it says is not meant. */
export function withoutDenied(name: string): string {
  return name.toLowerCase().replace(DENIED, " ");
}

/** A text without vinegars, which are named for what they were made from. */
export function withoutVinegar(text: string): string {
  return text.replace(VINEGAR, " ");
}

/**
 * Every food an ingredient's name mentions, whatever its role: `cucumber and corn medley` is both.
 * What the name only denies (`not Asian pears`) or is called after (`celery seed`) is left out; a
 * name that mentions none gives an empty list.
 */
export function foodsNamed(name: string): readonly Food[] {
  const known = seen.get(name);
  if (known) return known;
  const plain = withoutVinegar(withoutDenied(name));
  const found = [...new Set(mentionsIn(wordsOf(plain)).map(({ food }) => food))];
  if (seen.size < 5000) seen.set(name, found);
  return found;
}
