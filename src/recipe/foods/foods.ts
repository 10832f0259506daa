import { FOOD_TABLE } from "./food-table.ts";

/**
 * The foods a recipe or a person may name, read from `food-table.ts`. Each has its own name, the
 * kind it belongs to, how acid it is, what that rests on, and the other ways it is written.
 */

export const FOOD_KINDS = [
  "vegetable",
  "fruit",
  "any meat",
  "poultry",
  "any fish",
  "other animal food",
  "bone",
  "broth",
  "water",
  /** Fresh herbs: they season, whatever their own acid. */
  "herb",
  /** Garlic, herbs or vegetables under oil. */
  "oil",
  /** Must not be preserved at all. */
  "poison",
  /** A word that contains a food's name but is not a food, or not one that matters: celery seed. */
  "no food",
] as const;
type FoodKind = (typeof FOOD_KINDS)[number];

/** On which side of pH 4.6 a food lies; the worse of its varieties and degrees of ripeness. */
type Acidity =
  /** Every printed reading at or below 4.6, or a published boiling-water process without acid. */
  | "acid"
  /** Passes 4.6 by itself, and has a published process that takes it as an acid food. */
  | "by-process"
  /** Passes 4.6 with variety or ripeness. */
  | "crosses"
  | "low"
  /** No publication was read: counts as low. */
  | "unknown";

export type Food = {
  name: string;
  kind: FoodKind;
  acidity: Acidity;
  /** What the acidity rests on, in the short forms that `food-table.ts` explains. */
  basis: string;
  /** Other names, in the singular. */
  also: readonly string[];
};

const SEASONS: readonly FoodKind[] = ["water", "herb", "no food"];

/** True for what may go into a jar as seasoning or liquid but is not a food of its own. */
export function isNoFood({ kind }: Food): boolean {
  return SEASONS.includes(kind);
}

/**
 * Whether it may not be canned in boiling water as an acid food. What passes 4.6 with variety or
 * ripeness counts as low in acid, and so does what no publication covers.
 */
export function isLowAcid(food: Food): boolean {
  return !isNoFood(food) && food.acidity !== "acid" && food.acidity !== "by-process";
}

/** Grams of one, where a recipe counts pieces: USDA Standard Reference household weights. */
export const PIECE_GRAMS: Readonly<Record<string, number>> = {
  onion: 110,
  tomato: 123,
  cucumber: 301,
  beet: 82,
  cabbage: 908,
  corn: 102,
  garlic: 3,
};

const WRITTEN: Readonly<Record<string, Acidity>> = {
  acid: "acid",
  "by-process": "by-process",
  crosses: "crosses",
  low: "low",
};

function foodOf(line: string): Food {
  const [name = "", kind = "", acidity = "", basis = "", also = ""] = line
    .split("|")
    .map((part) => part.trim());
  return {
    name,
    kind: kind as FoodKind,
    acidity: WRITTEN[acidity] ?? "unknown",
    basis,
    also: also === "" ? [] : also.split(", "),
  };
}

export const FOODS: readonly Food[] = FOOD_TABLE.split("\n")
  .filter((line) => line.includes("|"))
  .map(foodOf);

const BY_NAME = new Map(FOODS.map((food) => [food.name, food]));

/** The food with this as its main name, not as another name it goes by. */
export function foodCalled(name: string): Food | undefined {
  return BY_NAME.get(name);
}
