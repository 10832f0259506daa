import { ASIDE_LISTS } from "./asides.ts";
import { BAG_LISTS } from "./bags.ts";
import { DAY_PLAN_ORDERS } from "./day-plan-orders.ts";
import type { Family } from "./family.ts";
import { HEAT_LISTS, HEAT_REPORTS } from "./heat-reports.ts";
import { JAR_LISTS, JAR_REPORTS } from "./jar-reports.ts";
import { LISTS } from "./lists.ts";
import { ORDER_LISTS, ORDERS } from "./orders.ts";
import { PLACE_LISTS, PLACE_REPORTS } from "./place-reports.ts";
import { QUESTION_LISTS, QUESTIONS } from "./questions.ts";
import { SHELF_LISTS, SHELF_REPORTS } from "./shelf-reports.ts";
import { SPOKEN } from "./spoken.ts";
import { STOVE_LISTS, STOVE_WORDS } from "./stove-words.ts";

/**
 * Every family in the order of preference: where two phrases fit equally well the earlier wins.
 */
export const FAMILIES: readonly Family[] = [
  ...QUESTIONS,
  ...HEAT_REPORTS,
  ...JAR_REPORTS,
  ...PLACE_REPORTS,
  ...DAY_PLAN_ORDERS,
  ...ORDERS,
  ...SHELF_REPORTS,
  ...STOVE_WORDS,
  ...SPOKEN,
];

/** Every shared list by its name. */
export const ALL_LISTS: Readonly<Record<string, readonly string[]>> = {
  ...LISTS,
  ...ASIDE_LISTS,
  ...BAG_LISTS,
  ...HEAT_LISTS,
  ...JAR_LISTS,
  ...ORDER_LISTS,
  ...PLACE_LISTS,
  ...QUESTION_LISTS,
  ...SHELF_LISTS,
  ...STOVE_LISTS,
};
