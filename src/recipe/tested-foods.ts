import { type Food, isLowAcid } from "./foods.ts";
import type { Neighbor, ProcessTable } from "./process-table.ts";

/** True where one of the words begins a word of the text, whatever its case. */
export function saidIn(text: string, words: readonly string[]): boolean {
  return words.some((word) => new RegExp(`\\b${word}`, "i").test(text));
}

/** The table's reason against a food, by the food's own name. */
export function neighborOf(table: ProcessTable, { name }: Food): Neighbor | undefined {
  return table.notOf.find(({ foods }) => foods.includes(name));
}

/** The table's reason against what a text says of a tested food: dried, creamed, ground. */
export function neighborSaid(table: ProcessTable, text: string): Neighbor | undefined {
  return table.notOf.find(({ words }) => saidIn(text, words));
}

/**
 * Whether a process was tested for a food: by its name, or by a kind that the table names. A kind
 * takes in no near neighbor, and for an acid food nothing that may pass pH 4.6.
 */
export function wasTested(table: ProcessTable, food: Food): boolean {
  if (table.of.includes(food.name)) return true;
  if (neighborOf(table, food)) return false;
  const byKind = table.of.includes(food.kind);
  return byKind && (table.classes.includes("low-acid") || !isLowAcid(food));
}
