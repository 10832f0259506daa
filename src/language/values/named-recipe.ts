/** A name in a question, as the running batch or the one recipe that it stands for. */
import type { Context } from "../context.ts";
import type { Raw } from "../intents/meaning.ts";
import type { Utterance } from "../words.ts";
import { type PlainWords, spokenNames, type Target, targetsAt } from "./targets.ts";

export function isTarget(value: unknown): value is Target {
  return typeof value === "object" && value !== null && "said" in value && "meaning" in value;
}

/** `target` as it was named, and `recipe` where it stands for just one. */
export function withRecipe(target: unknown): Raw {
  if (!isTarget(target)) return target === undefined ? {} : { target };
  const [recipe, another] = target.meaning.recipes;
  return { target, ...(recipe && !another ? { recipe } : {}) };
}

/** The first name of a batch or a recipe anywhere among the words. */
export function namedIn(said: Utterance, context: Context, plain: PlainWords): Target | undefined {
  const names = spokenNames(context);
  for (let at = 0; at < said.words.length; at += 1) {
    for (const { value } of targetsAt(said.words, at, names, plain)) {
      const { batches, recipes } = value.meaning;
      if (value.exact && batches.length + recipes.length > 0) return value;
    }
  }
  return undefined;
}
