/** What is still to begin, changed as somebody asked: left out, put off, put first, swapped. */
import type { SlotsOf } from "../../kitchen/command.ts";
import type { LotToPlan } from "../../kitchen/day/wanted.ts";
import type { PlannedItem } from "../../kitchen/events.ts";
import { MINUTE_MS } from "../../kitchen/time.ts";

/** How much later "later" is, and how long others wait for what goes first (our choice). */
const LATER_MS = 60 * MINUTE_MS;
const AHEAD_MS = 30 * MINUTE_MS;

/** The items as they are to be, or why not. */
export function changedItems(
  items: readonly PlannedItem[],
  { change, items: named = [] }: SlotsOf["plan"],
  now: number,
): PlannedItem[] | string {
  const isNamed = (item: PlannedItem) => named.some((lot) => fits(lot, item));
  const chosen = items.filter(isNamed);
  const [first, second] = chosen;
  if (!first || chosen.length < named.length)
    return "That is not among what the plan has to begin.";
  switch (change) {
    case "drop":
      return items.filter((item) => !isNamed(item));
    case "later":
      return items.map((item) => {
        if (!isNamed(item)) return item;
        return { ...item, notBefore: Math.max(now, item.beginAt) + LATER_MS };
      });
    case "first":
      return items.map((item) => (isNamed(item) ? soon(item) : after(item, now + AHEAD_MS)));
    case "swap": {
      if (!second || chosen.length > 2) return "Name the two that I am to swap.";
      const [early, late] = first.beginAt <= second.beginAt ? [first, second] : [second, first];
      const begin = Math.max(late.beginAt, early.beginAt + AHEAD_MS);
      return items.map((item) => {
        if (item === early) return after(item, begin);
        return item === late ? soon(item) : item;
      });
    }
    default:
      return "I can leave something out, put it first or later, or swap two.";
  }
}

/** "The beets" are the pickled beets, where those are what is planned. */
function fits({ recipe, variety }: LotToPlan, item: PlannedItem): boolean {
  const named = recipe.replaceAll("-", " ");
  const same = item.recipe === recipe || item.title.toLowerCase().includes(named);
  return same && (variety === undefined || item.variety === variety);
}

function soon({ notBefore: _, ...item }: PlannedItem): PlannedItem {
  return item;
}

function after(item: PlannedItem, at: number): PlannedItem {
  return { ...item, notBefore: Math.max(at, item.notBefore ?? at) };
}
