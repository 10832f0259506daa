/** What was tested instead of what has run out, and how far the rest goes. */

import type { CommandOf } from "../../kitchen/command.ts";
import { weightLb } from "../../kitchen/jars/lots.ts";
import { batchName } from "../../kitchen/spoken-names.ts";
import type { Batch, State } from "../../kitchen/state.ts";
import type { Shortage } from "../../kitchen/topics.ts";
import { parseAmount } from "../../recipe/amount.ts";
import type { Ingredient } from "../../recipe/recipe.ts";
import { UNITS } from "../../reckon/units.ts";
import { withSource } from "../texts/own-text.ts";
import { ANY_SHORTAGE, SHORTAGES } from "../texts/shortages.ts";
import { batchInMind } from "./in-mind.ts";

/** The recipe's ingredient for it: by its id, or by a word in its name. */
function ingredientFor(batch: Batch, item: Shortage): Ingredient | undefined {
  const name = item === "canning-salt" ? "salt" : item.replaceAll("-", " ");
  return batch.recipe.ingredients.find(({ id, name: said }) => {
    return id === item || said.toLowerCase().includes(name);
  });
}

/** "Three cups of vinegar do for four and a half pounds": all else scaled down with it. */
function reaches(batch: Batch, item: Shortage, value: number, unit: string): string | undefined {
  const amount = parseAmount(ingredientFor(batch, item)?.amount ?? "");
  const had = UNITS.get(unit);
  if (!amount || !had || had.kind !== amount.kind) return undefined;
  const share = (value * had.factor) / (amount.high * amount.perUnit);
  const whole = (weightLb(batch) ?? batch.recipe.yield.weightLb) / batch.recipe.yield.weightLb;
  if (share >= whole) return `That's enough for ${batchName(batch)}.`;
  const pounds = Math.floor(share * batch.recipe.yield.weightLb * 4) / 4;
  if (pounds <= 0) return undefined;
  const { produce } = batch.recipe.yield;
  return `That does for ${pounds} pounds of ${produce}, everything else scaled down with it.`;
}

export function shortage(state: State, { slots }: CommandOf<"short-of">): string {
  const { item, value, unit } = slots;
  if (item === undefined) return ANY_SHORTAGE;
  const batch = batchInMind(state, undefined);
  const left =
    batch && value !== undefined && unit !== undefined
      ? reaches(batch, item, value, unit)
      : undefined;
  return left ?? withSource(SHORTAGES[item]);
}
