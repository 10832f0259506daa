/** Heaps of produce as people tell of them: "ten pounds of Roma tomatoes and five of beets". */
import type { HeapSaid } from "../../kitchen/day/wanted.ts";
import { readSaidFood } from "../../recipe/foods/said-food.ts";
import { textOf, utteranceOf } from "../words.ts";
import { weighedAt } from "./spoken-weights.ts";

const BETWEEN = /\s*(?:[,;+]|\band\b|\bplus\b|\bas well as\b)+\s*/i;
/** Words before and after a heap that tell nothing of it. */
const BEFORE = new RegExp(
  "^(?:(?:about|around|roughly|nearly|almost|some|maybe|all|of|the|these|those|my|our|this|" +
    "that|here|up|another|with|a|an) )+",
);
const BEHIND = new RegExp(
  " (?:(?:here|left|over|now|today|waiting|ready|picked|in|on|the|my|our|table|counter|kitchen|" +
    "porch|basket|bucket|crate|garden|from|to|use|up|put|do|with|get|through|by|and|them|it|" +
    "go|going|soft|fresh|ripe) ?)+$",
);

/**
 * Every heap of a text, in order, foods by their names in the food table and weights in pounds;
 * undefined where any part of it is no food, or has no weight although one is `weighed`.
 */
export function heapsIn(text: string, weighed: boolean): HeapSaid[] | undefined {
  const pieces = text.split(BETWEEN).filter((piece) => piece.trim() !== "");
  const heaps: HeapSaid[] = [];
  for (const piece of pieces) {
    const heap = heapIn(piece);
    if (!heap || (weighed && heap.weightLb === undefined)) return undefined;
    heaps.push(heap);
  }
  return heaps.length > 0 ? heaps : undefined;
}

function heapIn(piece: string): HeapSaid | undefined {
  const plain = utteranceOf(textOf(utteranceOf(piece).words).replace(BEFORE, ""));
  const [weight] = weighedAt(plain.words, 0).toSorted((a, b) => b.next - a.next);
  const rest = textOf(plain.words.slice(weight?.next ?? 0)).replace(BEHIND, "");
  const said = readSaidFood(rest.replace(BEFORE, ""));
  const foods = [...new Set(said.heads.map(({ food }) => food.name))];
  const [food] = foods;
  if (food === undefined || foods.length > 1 || said.foodlike.length > 0) return undefined;
  // Cucumbers are also called pickles; whatever else is named for its form is made already.
  if (said.forms.size > 0 || said.rest.length > MOST_BESIDE) return undefined;
  return { food, ...(weight ? { weightLb: weight.value.weightLb } : {}) };
}

/** Words of a variety beside the food; with more of them it is a story. */
const MOST_BESIDE = 2;
