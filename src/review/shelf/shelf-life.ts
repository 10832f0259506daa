/**
 * How long preserved food is at its best, or may be kept at all. Days are calendar days.
 *
 * Sources: a year for sealed jars, and "several days" in the refrigerator for jars that did not
 * seal: USDA Complete Guide to Home Canning, Guide 1 (some extension texts allow 12 to 18 months);
 * fermented pickles and kraut 4 to 6 months under refrigeration: Guide 6, of which the shorter is
 * used. Three to four days for low-acid food that is open, or cooked and never processed: USDA
 * FSIS, "Leftovers and Food Safety", of which the shorter is used. A year in the freezer for
 * quality, and a month for refrigerator pickles, are common practice and from memory.
 */
import { daysWords } from "../../reckon/number-words.ts";
import { BEST_BY_DAYS, FROZEN_BEST_DAYS } from "../../reckon/trade-numbers.ts";

export type Keep = "shelf" | "refrigerate" | "freeze";

type KeepingRule = { days: number; source: string; words: string };

const GUIDE_1 = "USDA Complete Guide to Home Canning, Guide 1";
const PRACTICE = "common practice, from memory";

export type RuleName = "shelf" | "cold" | "low-acid" | "freezer" | "ferment" | "pickle";

export const KEEPING: Record<RuleName, KeepingRule> = {
  shelf: {
    days: BEST_BY_DAYS,
    source: GUIDE_1,
    words: `best within ${daysWords(BEST_BY_DAYS)}, cool, dark and dry`,
  },
  cold: { days: 7, source: GUIDE_1, words: "refrigerate and use within several days" },
  "low-acid": {
    days: 3,
    source: "USDA FSIS, Leftovers and Food Safety",
    words: "refrigerate and use within 3 to 4 days",
  },
  freezer: {
    days: FROZEN_BEST_DAYS,
    source: PRACTICE,
    words: `freeze; best within ${daysWords(FROZEN_BEST_DAYS)}`,
  },
  ferment: {
    days: 120,
    source: "USDA Complete Guide to Home Canning, Guide 6",
    words: "refrigerate; keeps 4 to 6 months",
  },
  pickle: { days: 30, source: PRACTICE, words: "refrigerate and use within a month" },
};
