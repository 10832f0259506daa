// data table
/**
 * What a cup, a tablespoon and a teaspoon of things weigh, grams. USDA National Nutrient Database
 * for Standard Reference (household weights) unless the row says otherwise.
 */

import { ML_PER_CUP, ML_PER_TBSP, ML_PER_TSP } from "./units.ts";

export type HouseholdWeight = {
  id: string;
  /** Names it is called by, lower case; the longest that fits a name wins. */
  names: readonly string[];
  gPerCup?: number;
  gPerTbsp?: number;
  gPerTsp?: number;
  /** Lightest and heaviest cup published or measured, where brands and crystals differ. */
  cupRangeG?: readonly [number, number];
  source: string;
};

const SR = "USDA Standard Reference household weights";
const MEASURED = "measured cups of a packed brand";
const MEMORY = "from memory";

export const HOUSEHOLD_WEIGHTS: readonly HouseholdWeight[] = [
  {
    id: "canning-salt",
    names: ["canning salt", "pickling salt", "canning or pickling salt", "salt"],
    gPerCup: 296,
    gPerTbsp: 18.5,
    cupRangeG: [273, 304],
    source: MEASURED,
  },
  {
    id: "table-salt",
    names: ["table salt"],
    gPerCup: 292,
    gPerTbsp: 18,
    gPerTsp: 6,
    cupRangeG: [273, 304],
    source: SR,
  },
  {
    id: "coarse-kosher-salt",
    names: ["coarse kosher salt", "kosher salt", "kosher", "coarse salt"],
    gPerCup: 248,
    gPerTbsp: 15.5,
    cupRangeG: [200, 256],
    source: MEASURED,
  },
  {
    id: "flake-salt",
    names: ["flake salt", "flaky salt", "flake kosher salt"],
    gPerCup: 181,
    gPerTbsp: 11.3,
    cupRangeG: [135, 181],
    source: MEASURED,
  },
  {
    id: "sugar",
    names: ["granulated sugar", "white sugar", "sugar"],
    gPerCup: 200,
    gPerTbsp: 12.6,
    gPerTsp: 4.2,
    source: SR,
  },
  {
    id: "brown-sugar",
    names: ["brown sugar", "packed brown sugar"],
    gPerCup: 220,
    gPerTsp: 4.6,
    source: SR,
  },
  { id: "honey", names: ["honey"], gPerCup: 339, gPerTbsp: 21, source: SR },
  { id: "water", names: ["water"], gPerCup: 237, source: SR },
  {
    id: "vinegar",
    names: ["vinegar", "white vinegar", "distilled vinegar"],
    gPerCup: 238,
    gPerTbsp: 14.9,
    gPerTsp: 5,
    source: SR,
  },
  { id: "cider-vinegar", names: ["cider vinegar"], gPerCup: 239, gPerTbsp: 14.9, source: SR },
  { id: "lemon-juice", names: ["lemon juice"], gPerCup: 244, gPerTbsp: 15.2, source: SR },
  { id: "lime-juice", names: ["lime juice"], gPerCup: 242, gPerTbsp: 15.4, source: SR },
  {
    id: "mustard-seed",
    names: ["mustard seed", "mustard seeds"],
    gPerTbsp: 11,
    gPerTsp: 3.3,
    source: `${SR}, an older edition, ${MEMORY}`,
  },
  {
    id: "ground-mustard",
    names: ["ground mustard", "ground mustard seed", "dry mustard"],
    gPerTbsp: 6.3,
    gPerTsp: 2,
    source: SR,
  },
  {
    id: "celery-seed",
    names: ["celery seed", "celery seeds"],
    gPerTbsp: 6.5,
    gPerTsp: 2,
    source: SR,
  },
  { id: "turmeric", names: ["turmeric", "ground turmeric"], gPerTbsp: 9.4, gPerTsp: 3, source: SR },
  { id: "dill-seed", names: ["dill seed", "dill seeds"], gPerTbsp: 6.6, gPerTsp: 2.1, source: SR },
  { id: "cinnamon", names: ["ground cinnamon"], gPerTbsp: 7.8, gPerTsp: 2.6, source: SR },
  { id: "cloves", names: ["ground cloves"], gPerTbsp: 6.5, gPerTsp: 2.1, source: SR },
  { id: "allspice", names: ["ground allspice"], gPerTbsp: 6, gPerTsp: 1.9, source: SR },
  { id: "black-pepper", names: ["ground black pepper"], gPerTbsp: 6.9, gPerTsp: 2.3, source: SR },
  { id: "peppercorns", names: ["peppercorns", "whole black pepper"], gPerTsp: 2.9, source: SR },
  { id: "garlic", names: ["garlic"], gPerCup: 136, gPerTsp: 2.8, source: SR },
  {
    id: "cucumber",
    names: ["cucumber", "cucumbers", "sliced cucumbers", "pickling cucumbers"],
    gPerCup: 104,
    source: SR,
  },
  { id: "chopped-onion", names: ["chopped onion", "diced onion"], gPerCup: 160, source: SR },
  { id: "onion", names: ["sliced onion", "onions", "onion"], gPerCup: 115, source: SR },
  { id: "chopped-cabbage", names: ["chopped cabbage"], gPerCup: 89, source: SR },
  { id: "cabbage", names: ["cabbage", "shredded cabbage"], gPerCup: 70, source: SR },
  { id: "snap-beans", names: ["green beans", "snap beans"], gPerCup: 100, source: SR },
  { id: "carrots", names: ["carrots", "sliced carrots"], gPerCup: 122, source: SR },
  { id: "corn", names: ["corn", "corn kernels", "whole-kernel corn"], gPerCup: 145, source: SR },
  { id: "beets", names: ["beets", "beet"], gPerCup: 136, source: SR },
  {
    id: "bell-pepper",
    names: ["bell pepper", "sweet pepper", "sweet peppers", "green pepper", "red pepper"],
    gPerCup: 149,
    source: SR,
  },
  { id: "tomatoes", names: ["tomato", "tomatoes", "chopped tomatoes"], gPerCup: 180, source: SR },
  { id: "apples", names: ["apple", "apples"], gPerCup: 125, source: SR },
  { id: "applesauce", names: ["applesauce"], gPerCup: 244, source: SR },
  { id: "blueberries", names: ["blueberries"], gPerCup: 148, source: SR },
  { id: "strawberries", names: ["strawberries", "whole strawberries"], gPerCup: 144, source: SR },
  { id: "crushed-berries", names: ["crushed strawberries"], gPerCup: 232, source: SR },
  { id: "cranberries", names: ["cranberries"], gPerCup: 100, source: SR },
  { id: "peaches", names: ["peaches", "peach"], gPerCup: 154, source: SR },
  { id: "pears", names: ["pears", "pear"], gPerCup: 140, source: SR },
];

/** The row for an ingredient's name; the longest of its names found in whole words wins. */
export function findHouseholdWeight(name: string): HouseholdWeight | undefined {
  const words = ` ${name
    .toLowerCase()
    .replace(/[^a-z]+/g, " ")
    .trim()} `;
  let best: HouseholdWeight | undefined;
  let bestLength = 0;
  for (const row of HOUSEHOLD_WEIGHTS) {
    for (const known of row.names) {
      if (known.length > bestLength && words.includes(` ${known.replace("-", " ")} `)) {
        best = row;
        bestLength = known.length;
      }
    }
  }
  return best;
}

/**
 * Grams in one milliliter of a row's ingredient when spooned or poured into a measure; from the
 * largest measure it was weighed in, since a level cup is measured more exactly than a teaspoon.
 */
export function gramsPerMl(row: HouseholdWeight): number {
  if (row.gPerCup !== undefined) return row.gPerCup / ML_PER_CUP;
  if (row.gPerTbsp !== undefined) return row.gPerTbsp / ML_PER_TBSP;
  return (row.gPerTsp ?? 0) / ML_PER_TSP;
}
