// data table
/**
 * How many years a crop's seed stays good when kept cool and dry, by two published seed-saving
 * lists and a seed savers' chart. They disagree; the shortest and the longest are kept. Storage
 * matters more than any table: a germination test shows what the lot at hand can do.
 */
export const SEED_LIFE_SOURCE =
  "two published seed-life lists and a seed savers' chart, shortest to longest";

/** Shortest and longest years by crop, singular, lower case. */
export const SEED_LIFE_YEARS: Readonly<Record<string, readonly [number, number]>> = {
  asparagus: [2, 3],
  bean: [3, 4],
  beet: [2, 4],
  cabbage: [3, 4],
  carrot: [1, 3],
  cauliflower: [4, 4],
  celery: [2, 3],
  cucumber: [5, 8],
  eggplant: [5, 6],
  endive: [2, 2],
  kale: [2, 4],
  leek: [2, 3],
  lettuce: [3, 4],
  muskmelon: [5, 7],
  okra: [1, 4],
  onion: [1, 1],
  parsley: [1, 1],
  parsnip: [1, 1],
  pea: [3, 5],
  pepper: [2, 4],
  pumpkin: [3, 7],
  radish: [2, 5],
  spinach: [3, 4],
  squash: [3, 7],
  tomato: [3, 5],
  turnip: [4, 4],
  watermelon: [5, 5],
};
