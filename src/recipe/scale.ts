import { jarsFromProduce } from "../reckon/jars.ts";
import { formatAmount, formatVolume, formatWeight, gramsOf } from "../reckon/measure.ts";
import { VINEGAR_PERCENT } from "../reckon/trade-numbers.ts";
import { type Amount, parseAmount, plural } from "./amount.ts";
import { defaultJar } from "./choose-process.ts";
import { JAR_CUPS, publishedYield } from "./jar-volume.ts";
import { sourceLine } from "./process-table.ts";
import { type Ingredient, JAR_SIZES, type JarSize, type Recipe } from "./recipe.ts";

/**
 * A recipe scaled to what was picked. Everything is multiplied by one factor, so that acid, salt
 * and everything else keep their proportions; acid and salt are rounded up, never down.
 */

type ScaleWish = {
  /** Produce in hand, pounds; absent, the recipe's own amount. */
  forLb?: number;
  jar?: JarSize;
  /** Jars of that size the canner holds. */
  cannerHolds?: number;
};

export type ScaledIngredient = {
  id: string;
  name: string;
  /** In kitchen measures, with grams after it: `1 cup (296 g)`; null where given per jar only. */
  amount: string | null;
  /** Grams at the low end of its range, where its weight is known. */
  grams: number | null;
  perJar: string | null;
  role: Ingredient["role"];
  into: string | null;
  optional: boolean;
};

export type Scaled = {
  /** The factor for every amount in one pot. */
  factor: number;
  /** How many pots of that size to make; more than one only where a recipe does not scale. */
  batches: number;
  weightLb: number;
  jar: JarSize | null;
  jars: { expected: number; low: number; high: number } | null;
  loads: number | null;
  ingredients: ScaledIngredient[];
  buy: { item: string; amount: string }[];
  notes: string[];
};

/** Whether it is never rounded down: acid, and salt that does more than season. */
function neverLess(role: Ingredient["role"]): boolean {
  return role === "acid" || role === "salt";
}

/**
 * The name under which to look up a cup's weight: a cup of crushed fruit is not a cup of pieces.
 */
function weighed(name: string): string {
  return /\bcrushed\b/i.test(name) ? "" : name;
}

function formatPart(amount: Amount, value: number, name: string, up: boolean): string {
  const quantity = value * amount.perUnit;
  if (amount.kind === "mass") return formatWeight(quantity);
  if (amount.kind === "volume") {
    return formatAmount({ kind: "volume", value: quantity }, weighed(name), { atLeast: up });
  }
  const count = Math.ceil(value * 2 - 1e-9) / 2;
  const whole = Math.floor(count);
  const said = count === whole ? `${whole}` : whole === 0 ? "1/2" : `${whole} 1/2`;
  return `${said} ${plural(amount.unit, count)}`.trim();
}

/** An amount as written, multiplied: `4 1/2 cups` by 2 is `9 cups (1,800 g)`. */
export function scaleAmount(text: string, factor: number, name: string, up = false): string {
  const amount = parseAmount(text);
  if (!amount) return text;
  const high = formatPart(amount, amount.high * factor, name, up);
  if (amount.high === amount.low) return high;
  const low = formatPart(amount, amount.low * factor, name, up);
  return amount.kind === "count" ? `${low.split(/ (?=[a-z])/)[0]} to ${high}` : `${low} to ${high}`;
}

function gramsIn(text: string, factor: number, name: string): number | null {
  const amount = parseAmount(text);
  if (!amount || amount.kind === "count") return null;
  const quantity = amount.low * factor * amount.perUnit;
  return amount.kind === "mass" ? quantity : (gramsOf(quantity, weighed(name)) ?? null);
}

/** What goes in each jar of a size: as written, else the next larger size's share by volume. */
export function perJar(ingredient: Ingredient, jar: JarSize): string | undefined {
  const written = ingredient.perJar;
  if (!written) return undefined;
  const larger = JAR_SIZES.slice(JAR_SIZES.indexOf(jar)).find((size) => written[size]);
  const text = larger && written[larger];
  if (!larger || !text) return undefined;
  const share = JAR_CUPS[jar] / JAR_CUPS[larger];
  return share === 1 ? text : scaleAmount(text, share, ingredient.name, neverLess(ingredient.role));
}

function scaledIngredient(
  ingredient: Ingredient,
  factor: number,
  jar: JarSize | undefined,
): ScaledIngredient {
  const { id, name, amount, role, into = null, optional = false } = ingredient;
  return {
    id,
    name,
    amount: amount ? scaleAmount(amount, factor, name, neverLess(role)) : null,
    grams: amount ? gramsIn(amount, factor, name) : null,
    perJar: (jar && perJar(ingredient, jar)) ?? null,
    role,
    into,
    optional,
  };
}

/** Milliliters and grams of all ingredients that pass a test, including what goes into each jar. */
function total(
  recipe: Recipe,
  wanted: (ingredient: Ingredient) => boolean,
  factor: number,
  jar: JarSize | undefined,
  jarCount: number,
): { ml: number; g: number; weighedG: number } {
  const sum = { ml: 0, g: 0, weighedG: 0 };
  for (const ingredient of recipe.ingredients) {
    if (!wanted(ingredient) || ingredient.optional) continue;
    const share = jar && !ingredient.amount ? perJar(ingredient, jar) : undefined;
    const amount = parseAmount(ingredient.amount ?? share?.replace(/ \(.*/, "") ?? "");
    if (!amount || amount.kind === "count") continue;
    const times = ingredient.amount ? factor : jarCount;
    const quantity = amount.high * amount.perUnit * times;
    const isVolume = amount.kind === "volume";
    sum[isVolume ? "ml" : "g"] += quantity;
    // Brown sugar weighs more than white, and flaked salt less than fine.
    sum.weighedG += isVolume ? (gramsOf(quantity, weighed(ingredient.name)) ?? 0) : quantity;
  }
  return sum;
}

const isVinegar = (one: Ingredient) => one.role === "acid" && /vinegar/i.test(one.name);
const isJuice = (one: Ingredient) => one.role === "acid" && /juice/i.test(one.name);
const isSalt = (one: Ingredient) => one.role === "salt";
const isSugar = (one: Ingredient) => one.role === "sugar";

function shopping(
  recipe: Recipe,
  factor: number,
  jar: JarSize | undefined,
  lids: number,
): Scaled["buy"] {
  const buy: Scaled["buy"] = [];
  for (const [item, wanted, byWeight] of [
    [`vinegar, ${VINEGAR_PERCENT} percent`, isVinegar, false],
    ["bottled lemon or lime juice", isJuice, false],
    ["canning salt", isSalt, true],
    ["sugar", isSugar, true],
  ] as const) {
    const { ml, g, weighedG } = total(recipe, wanted, factor, jar, lids);
    if (ml + g === 0) continue;
    const amount = byWeight ? formatWeight(weighedG) : formatVolume(ml, { atLeast: true });
    buy.push({ item, amount });
  }
  if (lids > 0) buy.push({ item: "new lids", amount: String(lids) });
  return buy;
}

function notesFor(recipe: Recipe, batches: number, factor: number): string[] {
  const notes: string[] = [];
  if (recipe.scaling === "one-batch" && batches > 1) {
    notes.push(`made one pot at a time: ${batches} pots of these amounts; a bigger one fails`);
  }
  const acid = recipe.ingredients.some((one) => one.role === "acid" || one.role === "salt");
  if (acid && factor !== 1) notes.push("vinegar, juice, salt and water are scaled together");
  return notes;
}

/**
 * The recipe's amounts, jars, canner loads and shopping for a weight of produce.
 * @param wish `forLb` above 0; the jar is the recipe's usual one where none is named.
 */
export function scaleRecipe(recipe: Recipe, wish: ScaleWish): Scaled {
  const weightLb = wish.forLb ?? recipe.yield.weightLb;
  const exact = weightLb / recipe.yield.weightLb;
  const onePot = recipe.scaling === "one-batch" && exact > 1;
  const batches = onePot ? Math.ceil(exact - 0.05) : 1;
  const factor = onePot ? Math.min(1, exact / batches) : exact;
  const jar = wish.jar ?? defaultJar(recipe);
  const yielded = jar && publishedYield(recipe, jar);
  const reckoned = yielded && reckonJars(recipe, weightLb, yielded, wish.cannerHolds);
  return {
    factor,
    batches,
    weightLb,
    jar: jar ?? null,
    jars: reckoned
      ? { expected: reckoned.value, low: reckoned.range?.[0] ?? 0, high: reckoned.jarsToReady }
      : null,
    loads: reckoned?.loads ?? null,
    ingredients: recipe.ingredients.map((one) => scaledIngredient(one, factor, jar)),
    buy: shopping(recipe, factor * batches, jar, reckoned?.jarsToReady ?? 0),
    notes: notesFor(recipe, batches, factor),
  };
}

function reckonJars(
  recipe: Recipe,
  weightLb: number,
  yielded: { weightLb: number; jars: number },
  cannerHolds: number | undefined,
) {
  const outcome = jarsFromProduce({
    weightLb,
    publishedLb: yielded.weightLb,
    publishedJars: yielded.jars,
    cannerHolds,
    source: sourceLine(recipe.source),
  });
  return outcome.ok ? outcome.value : undefined;
}
