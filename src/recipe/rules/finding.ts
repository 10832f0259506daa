import type { Kinds } from "../kind-in-recipe.ts";
import type { ProcessTable, ProcessTables, TestedFormula } from "../process-table.ts";
import type { Ingredient, ProcessOption, Recipe } from "../recipe.ts";
import type { Keeping } from "./keeping.ts";

/** One thing the safety check found in a recipe. */
export type Finding = {
  /** Name of the rule, the same for every finding it makes: `vinegar-diluted`. */
  rule: string;
  /** Danger: not safe to keep on a shelf. Warning: quality, or doubt. Note: good to know. */
  severity: "danger" | "warning" | "note";
  /** The part of the recipe: `ingredients.vinegar`, with its line where it is known. */
  where: string;
  message: string;
  source: string;
};

/** An option with the table behind it, its formula, and the recipe as its pack makes it. */
type OptionWithTable = {
  option: ProcessOption;
  table: ProcessTable;
  formula?: TestedFormula;
  made: Recipe;
};

/** What a rule looks at: the recipe and the tables it points to. */
export type CheckedRecipe = {
  recipe: Recipe;
  tables: ProcessTables;
  kinds: Kinds;
  /** Options whose table exists, each with that table. */
  known: OptionWithTable[];
  /** Where its words and processes say that it is kept. */
  keeping: Keeping;
  /** True where it is meant for a shelf, with a canner process or without one. */
  shelf: boolean;
};

export type Rule = (subject: CheckedRecipe) => Finding[];

const GUIDE = "USDA Complete Guide to Home Canning";

/** The publications rules rest on. */
export const PUBLICATIONS = {
  principles: `${GUIDE}, Guide 1`,
  tomatoes: `${GUIDE}, Guide 3`,
  tomatoAcid: "University of Missouri Extension GH1456",
  pickles: `${GUIDE}, Guide 6`,
  ferment: `${GUIDE}, Guide 6`,
  jams: `${GUIDE}, Guide 7`,
  vegetables: `${GUIDE}, Guide 4`,
  inversion: "National Center for Home Food Preservation, jar sealing methods",
  vacuum: "National Center for Home Food Preservation, vacuum packaging",
  eggs: "National Center for Home Food Preservation, pickled eggs",
  baked: "National Center for Home Food Preservation, canning breads and cakes",
  inOil: "National Center for Home Food Preservation, garlic in oil, reviewed 2015",
  strongBrine: "USDA Farmers' Bulletin 1438, Making Fermented Pickles",
  steam: "Oklahoma State University Extension, atmospheric steam canners",
  pasteurization: "National Center for Home Food Preservation, low-temperature pasteurization",
  brine: "extension advice for home-devised brines (from memory)",
  oil: "extension advice on vegetables in oil (from memory)",
  alkali: "chemistry of acid and soda (from memory)",
  reducedSalt: `${GUIDE}, Guide 6 (from memory)`,
  thickener: `${GUIDE}, Guide 1 (from memory)`,
} as const;

/** Where the option stands in the recipe, for a finding. */
export function optionPlace(option: ProcessOption): string {
  return `processes.${option.method}-${option.pack}`;
}

export function ingredientPlace(ingredient: Ingredient): string {
  return `ingredients.${ingredient.id}`;
}

export function danger(rule: string, where: string, message: string, source: string): Finding {
  return { rule, severity: "danger", where, message, source };
}

export function warning(rule: string, where: string, message: string, source: string): Finding {
  return { rule, severity: "warning", where, message, source };
}
