/** "How much dill per jar", "what headspace": answered from the recipe, scaled to what is asked. */

import type { CommandOf, Meant } from "../kitchen/command.ts";
import { weightLb } from "../kitchen/jars/lots.ts";
import { ownerIds } from "../kitchen/meant.ts";
import { batchName } from "../kitchen/spoken-names.ts";
import type { Batch, State } from "../kitchen/state.ts";
import { parseAmount } from "../recipe/amount.ts";
import { defaultJar } from "../recipe/choose-process.ts";
import { jarSizeOf, publishedYield } from "../recipe/jar-volume.ts";
import type { JarSize, Recipe } from "../recipe/recipe.ts";
import { type ScaledIngredient, scaleRecipe } from "../recipe/scale.ts";
import { inchesWords } from "../reckon/number-words.ts";
import { ML_PER_CUP } from "../reckon/units.ts";
import { batchInMind, runningBatches } from "./answers/in-mind.ts";
import type { Known, ReadOut } from "./answers/known.ts";

/** What is made, and from how much. */
type Made = { recipe: Recipe; name: string; forLb?: number; jar?: JarSize; batch?: Batch };

function madeOf(batch: Batch): Made {
  const { recipe, jar } = batch;
  const pounds = weightLb(batch);
  return {
    ...{ recipe, name: batchName(batch), batch },
    ...(pounds === null ? {} : { forLb: pounds }),
    ...(jar ? { jar } : {}),
  };
}

function madeFrom(recipe: Recipe): Made {
  return { recipe, name: recipe.title.charAt(0).toLowerCase() + recipe.title.slice(1) };
}

/** The batch that was named, else the recipe, else the batch in mind. */
function meant(
  state: State,
  recipe: string | undefined,
  ref: Meant | undefined,
  { library }: Known,
): Made | undefined {
  const batch = batchInMind(state, ref);
  if (batch && ownerIds(ref?.running ?? []).has(batch.id)) return madeOf(batch);
  const named = recipe === undefined ? undefined : library.recipes.get(recipe);
  if (named && batch?.recipe.id !== named.id) return madeFrom(named);
  return batch && madeOf(batch);
}

type Asked = { amount?: number; unit?: "lb" | "cup" | "jar"; size?: string };

/** Scaled to the pounds, cups or jars asked for; unscaled where none were asked for or possible. */
function scaledTo(made: Made, { amount, unit, size }: Asked): Made {
  if (amount === undefined) return made;
  const { recipe } = made;
  const jar = (size ? jarSizeOf(size) : undefined) ?? made.jar ?? defaultJar(recipe);
  if (unit === "lb") return { ...made, forLb: amount };
  if (unit === "jar") {
    const full = jar && publishedYield(recipe, jar);
    return full ? { ...made, jar, forLb: (amount * full.weightLb) / full.jars } : made;
  }
  const produce = recipe.ingredients.find(({ role }) => role === "produce");
  const whole = parseAmount(produce?.amount ?? "");
  if (whole?.kind !== "volume") return made;
  const cups = (whole.high * whole.perUnit) / ML_PER_CUP;
  return { ...made, forLb: (amount / cups) * recipe.yield.weightLb };
}

function headspace({ recipe: { headspaceIn } }: Made): string {
  if (headspaceIn === undefined) return "That recipe has no headspace.";
  return `Headspace ${inchesWords(headspaceIn)}.`;
}

/** An amount as it is spoken, without the grams, which are shown elsewhere. */
function line({ name, amount, perJar }: ScaledIngredient, jar: string | null): string {
  const each = perJar ? `${perJar} in each ${jar}` : undefined;
  return [name, [amount, each].filter(Boolean).join(", ")].filter(Boolean).join(": ");
}

function lines(made: Made): { pots: string; list: string[] } {
  const { recipe, forLb, jar } = made;
  const scaled = scaleRecipe(recipe, {
    ...(forLb === undefined ? {} : { forLb }),
    ...(jar === undefined ? {} : { jar }),
  });
  const pots = scaled.batches > 1 ? ` Make ${scaled.batches} pots of that, one by one.` : "";
  return { pots, list: scaled.ingredients.map((one) => line(one, scaled.jar)) };
}

function jarsAnswer(made: Made): string {
  const { jars, jar } = scaleRecipe(made.recipe, {
    ...(made.forLb === undefined ? {} : { forLb: made.forLb }),
    ...(made.jar === undefined ? {} : { jar: made.jar }),
  });
  return jars ? `About ${jars.expected} ${jar}s.` : `No jars are known for ${made.name}.`;
}

/** What the words ask for, where it is not an ingredient. */
function figure(made: Made, what: string): string | undefined {
  if (/headspace|head space/.test(what)) return headspace(made);
  if (/how long|minutes|process|time/.test(what) && made.batch?.terms) {
    const { minutes, jar, altitudeFt, source, pressurePsi } = made.batch.terms;
    const pounds = pressurePsi ? ` at ${pressurePsi} pounds` : "";
    return `${minutes} minutes${pounds} for ${jar}s at ${altitudeFt} feet, by ${source}.`;
  }
  return /how many (more )?(jars|pints|quarts|half)/.test(what) ? jarsAnswer(made) : undefined;
}

/** The answer from the recipe, scaled to what is asked, else to what was picked. */
export function howMuch(
  state: State,
  { slots, ref }: CommandOf<"how-much">,
  _now: number,
  known: Known,
): string {
  const own = meant(state, slots.recipe, ref, known);
  if (!own) return "Begin a batch first, or name a recipe; then I can say.";
  const made = scaledTo(own, slots);
  const what = slots.what.toLowerCase();
  const told = figure(made, what);
  if (told) return told;
  if (/ingredients|recipe/.test(what) && !/how much/.test(what)) {
    return `For ${made.name}: ${lines(made).list.join("; ")}.`;
  }
  const words = (slots.subject ?? what).split(/\W+/).filter((word) => word.length > 2);
  // What the batch in focus lacks, another running batch may have.
  const others = slots.target === undefined ? runningBatches(state).map(madeOf) : [];
  for (const one of [made, ...others]) {
    const found = lines(one);
    const fitting = one.recipe.ingredients.flatMap((each, index) => {
      return isNamed(each, words) ? (found.list[index] ?? []) : [];
    });
    if (fitting.length === 0) continue;
    const whose = one === made ? "" : `For ${one.name}: `;
    return `${whose}${fitting.join("; ")}.${found.pots}`;
  }
  return `I don't find that in ${made.name}.`;
}

function isNamed({ id, name: title }: { id: string; name: string }, words: string[]): boolean {
  const name = `${id} ${title}`.toLowerCase();
  return words.some((word) => name.includes(word.replace(/s$/, "")));
}

/** The ingredients one at a time: the next on "next" or "more". */
export function ingredientsOneByOne(
  state: State,
  { slots, ref }: CommandOf<"ingredients">,
  _now: number,
  known: Known,
): ReadOut | string {
  const made = meant(state, slots.recipe, ref, known);
  if (!made) return "Of which recipe? Say recipes to hear them.";
  const { list } = lines(made);
  const count = list.length;
  const pages = list.map((each, index) => {
    const lead = index === 0 ? `${count} things for ${made.name}; say next after each. ` : "";
    return `${lead}${each}.${index === count - 1 ? " That's all." : ""}`;
  });
  return { pages, paced: true };
}
