import { JAR_SIZES, type JarSize, type Recipe } from "./recipe.ts";

/** The nominal volume of a jar of each size, filled to the brim, cups. */
export const JAR_CUPS: Record<JarSize, number> = {
  "half-pint": 1,
  pint: 2,
  "pint-and-half": 3,
  quart: 4,
  "half-gallon": 8,
};

/**
 * Published amount of produce for jars of a size: its own canner load where one is printed, else
 * the recipe's yield converted to that size by volume. Undefined where the recipe fills no jars.
 */
export function publishedYield(
  recipe: Recipe,
  jar: JarSize,
): { weightLb: number; jars: number } | undefined {
  const load = recipe.yield.loads?.find((one) => one.size === jar);
  if (load) return { weightLb: load.weightLb, jars: load.count };
  const { jars, weightLb } = recipe.yield;
  if (!jars) return undefined;
  return { weightLb, jars: (jars.count * JAR_CUPS[jars.size]) / JAR_CUPS[jar] };
}

const SHORT_NAMES = new Map<string, JarSize>([
  ["halfpint", "half-pint"],
  ["pt", "pint"],
  ["1-1/2-pint", "pint-and-half"],
  ["pint-and-a-half", "pint-and-half"],
  ["qt", "quart"],
]);

/** A jar size as people write it: `pint`, `Quarts`, `half pint`; undefined for anything else. */
export function jarSizeOf(text: string): JarSize | undefined {
  const words = text
    .trim()
    .toLowerCase()
    .replace(/\s+/g, "-")
    .replace(/^(.*[^s])s$/, "$1");
  return JAR_SIZES.find((size) => size === words) ?? SHORT_NAMES.get(words);
}
