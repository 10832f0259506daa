import { FOODS, type Food } from "./foods.ts";

/** What says that a food is not meant: none of it, something else in its place, freed of it. */
const DENIED =
  /\b(?:not|no|none|without|instead of|in place of|trimmed of|free of)\b[^,;.()]*|\b\w+-free\b/g;
/** Vinegar is named for what it was made from. */
const VINEGAR = /(?:(?!(?:in|with|and|or|plus)\b)[\w-]+ ){0,3}vinegars?\b/g;

/** A name as people write it: in the plural, joined by hyphens, a comma before what follows. */
function pattern(name: string): string {
  const words = name.toLowerCase().split(/[ -]/);
  const forms = words.map((word) => {
    if (word.endsWith("y")) return `${word.slice(0, -1)}(?:y|ies)`;
    if (word.endsWith("f")) return `${word.slice(0, -1)}(?:f|ves)`;
    return `${word}(?:e?s)?`;
  });
  return forms.join(",?[ -]+");
}

const BY_PHRASE = FOODS.flatMap((food) =>
  [food.name, ...(food.also ?? [])].map((name) => ({ food, name })),
)
  .filter(({ food, name }) => food.kind !== "no food" || name !== food.name)
  // The longest name wins: celery seed is no celery, tomato juice no tomato.
  .sort((a, b) => b.name.length - a.name.length);

const PHRASES = BY_PHRASE.map(({ name }) => `(${pattern(name)})`).join("|");
const ANY = new RegExp(`(?<![\\p{L}\\d])(?:${PHRASES})(?![\\p{L}\\d])`, "giu");

const seen = new Map<string, readonly Food[]>();

/** A name in small letters, without what it says is not meant. */
export function withoutDenied(name: string): string {
  return name.toLowerCase().replace(DENIED, " ");
}

function find(text: string): Food[] {
  const plain = withoutDenied(text).replace(VINEGAR, " ");
  const found = new Set<Food>();
  for (const match of plain.matchAll(ANY)) {
    const index = match.slice(1).findIndex((group) => group !== undefined);
    const food = BY_PHRASE[index]?.food;
    if (food) found.add(food);
  }
  return [...found];
}

/**
 * Every food an ingredient's name speaks of, whatever its role: `cucumber and corn medley` is
 * both. What the name only denies (`not Asian pears`) or is called after (`celery seed`) is left
 * out; a name that says none of these gives an empty list.
 */
export function foodsNamed(name: string): readonly Food[] {
  const known = seen.get(name);
  if (known) return known;
  const found = find(name);
  if (seen.size < 5000) seen.set(name, found);
  return found;
}
