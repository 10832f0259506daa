/** "How much dill per jar", "what headspace": answered from the batch's own copy of its recipe. */
import type { CommandOf } from "../kitchen/command.ts";
import { batchName } from "../kitchen/names.ts";
import type { Batch, State } from "../kitchen/state.ts";
import type { Ingredient } from "../recipe/recipe.ts";
import { perJar, scaleAmount } from "../recipe/scale.ts";
import { batchInMind, runningBatches } from "./answers/in-mind.ts";

const FRACTIONS: Record<number, string> = {
  0.25: "a quarter inch",
  0.5: "half an inch",
  1: "1 inch",
  1.25: "1 and a quarter inches",
};

function headspace(batch: Batch): string {
  const inches = batch.recipe.headspaceIn;
  if (inches === undefined) return "That recipe has no headspace.";
  return `Headspace ${FRACTIONS[inches] ?? `${inches} inches`}.`;
}

function line(batch: Batch, ingredient: Ingredient): string {
  const share = batch.jar ? perJar(ingredient, batch.jar) : undefined;
  const each = share ? `${share} in each ${batch.jar}` : undefined;
  const { weightLb } = batch.recipe.yield;
  const proportional = batch.recipe.scaling === "proportional" && batch.lot.weightLb !== null;
  const factor = proportional ? (batch.lot.weightLb ?? weightLb) / weightLb : 1;
  const amount = ingredient.amount && scaleAmount(ingredient.amount, factor, ingredient.name);
  return [ingredient.name, [amount, each].filter(Boolean).join(", ")].filter(Boolean).join(": ");
}

/** The answer from the recipe as it is made here, scaled to what was picked. */
export function howMuch(state: State, { slots, ref }: CommandOf<"how-much">): string {
  const batch = batchInMind(state, ref);
  if (!batch) return "Begin a batch first; then I can say.";
  const what = slots.what.toLowerCase();
  if (/headspace|head space/.test(what)) return headspace(batch);
  if (/ingredients|recipe/.test(what) && !/how much/.test(what)) {
    const list = batch.recipe.ingredients.map((one) => line(batch, one));
    return `For ${batchName(batch)}: ${list.join("; ")}.`;
  }
  if (/how long|minutes|process|time/.test(what) && batch.terms) {
    const pounds = batch.terms.pressurePsi ? ` at ${batch.terms.pressurePsi} pounds` : "";
    const { minutes, jar, altitudeFt, source } = batch.terms;
    return `${minutes} minutes${pounds} for ${jar}s at ${altitudeFt} feet, by ${source}.`;
  }
  if (/how many jars|jars/.test(what) && batch.expectedJars) {
    return `About ${batch.expectedJars} ${batch.jar}s.`;
  }
  const words = (slots.subject ?? what).split(/\W+/).filter((word) => word.length > 2);
  // What the batch in focus has not, another that runs may have.
  for (const one of ref === undefined ? [batch, ...runningBatches(state)] : [batch]) {
    const found = one.recipe.ingredients.filter((each) => isNamed(each, words));
    if (found.length === 0) continue;
    const whose = one === batch ? "" : `For ${batchName(one)}: `;
    return `${whose}${found.map((each) => line(one, each)).join("; ")}.`;
  }
  return `I don't find that in ${batchName(batch)}.`;
}

function isNamed(ingredient: Ingredient, words: string[]): boolean {
  const name = `${ingredient.id} ${ingredient.name}`.toLowerCase();
  return words.some((word) => name.includes(word.replace(/s$/, "")));
}
