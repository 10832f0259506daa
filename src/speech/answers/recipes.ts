/** The recipes there are, by kind, a few at a time. */
import type { FoodClass } from "../../recipe/recipe.ts";
import type { Answer, Known } from "./known.ts";

const KINDS: Record<FoodClass, string> = {
  acidified: "Pickles and salsas",
  acid: "Fruit",
  tomato: "Tomatoes",
  "low-acid": "In a pressure canner",
  jam: "Jams and jellies",
  ferment: "Fermented",
  seed: "Seed to save",
};

/** Titles in one breath. */
const TITLES_A_SENTENCE = 5;

export function recipesAnswer(known: Known): Answer {
  const all = [...known.library.recipes.values()];
  const kinds = (Object.keys(KINDS) as FoodClass[]).filter((kind) => {
    return all.some((recipe) => recipe.class === kind);
  });
  const names = kinds.map((kind) => KINDS[kind].replace(/^\w/, (letter) => letter.toLowerCase()));
  const first = `${all.length} recipes: ${names.join(", ")}. Say more to hear them.`;
  const pages = kinds.flatMap((kind) => {
    const titles = all.filter((recipe) => recipe.class === kind).map(({ title }) => title);
    const lines: string[] = [];
    for (let at = 0; at < titles.length; at += TITLES_A_SENTENCE) {
      const some = titles.slice(at, at + TITLES_A_SENTENCE);
      lines.push(`${KINDS[kind]}${at > 0 ? ", too" : ""}: ${some.join(", ").toLowerCase()}.`);
    }
    return lines;
  });
  return { pages: [first, ...pages], paced: false };
}
