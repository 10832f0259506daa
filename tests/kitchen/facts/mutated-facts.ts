/**
 * Facts as no program writes them: a field changed, lost, added or moved, by a seeded generator.
 */
import type { KitchenEvent } from "../../../src/kitchen/events.ts";
import { FACTS } from "../../../src/kitchen/facts/all-facts.ts";
import type { Dice } from "../../simulation/dice.ts";

type Bag = Record<string, unknown>;

const VALUES: readonly unknown[] = [
  ...["", "high", "__proto__", "constructor", "toString", "hasOwnProperty", "a/b", "../x", "~"],
  ...["\u0000", "\u202e", "x".repeat(5000), "270701-1", "canner", "NaN", "1e999", "batch-begun"],
  ...[0, -0, -1, 1, 0.5, 1e12, -1e12, 1e308, 5e-324, 2 ** 53, 2 ** 53 + 2, 253_402_300_800_000],
  ...[null, true, false, [], {}, [[]], [null], [0], [-1], { length: 3 }, { batch: "x" }],
];

/** Keys that mean something to the language, or to another kind of fact. */
export const KEYS = [
  "__proto__",
  "constructor",
  "prototype",
  "batch",
  "load",
  "type",
  "t",
  "held",
  "x",
];

function anObject(dice: Dice, event: Bag): Bag {
  let found = event;
  while (dice.chance(0.5)) {
    const inner = Object.values(found).filter((one) => typeof one === "object" && one !== null);
    if (inner.length === 0) break;
    found = dice.pick(inner) as Bag;
  }
  return found;
}

/** Sets an own property of an object, whatever its name. */
function put(into: Bag, key: string, value: unknown): void {
  Object.defineProperty(into, key, {
    value,
    enumerable: true,
    configurable: true,
    writable: true,
  });
}

/** Sets, deletes, adds or swaps something in one place. */
function mutateOnce(dice: Dice, event: Bag, others: readonly KitchenEvent[]): void {
  const place = anObject(dice, event);
  const keys = Object.keys(place);
  const key = keys.length > 0 ? dice.pick(keys) : dice.pick(KEYS);
  const value = place[key];
  const how = dice.whole(0, 7);
  if (how <= 1) put(place, key, structuredClone(dice.pick(VALUES)));
  else if (how === 2) delete place[key];
  else if (how === 3) put(place, dice.pick(KEYS), structuredClone(dice.pick(VALUES)));
  else if (how === 4) {
    const factor = dice.pick([-1, 0, 1e-9, 0.5, 2, 1000, 1e6]);
    put(place, key, typeof value === "number" ? value * factor : [value]);
  } else if (how === 5) put(event, "type", dice.pick(Object.keys(FACTS)));
  else if (how === 6) {
    const other = dice.pick(others) as Bag;
    put(place, key, structuredClone(other[dice.pick(Object.keys(other))]));
  } else put(event, dice.pick(["t", "w"]), dice.pick([0, 1, 1e12, 2e12, 3.2e13, -5, null]));
}

/** A copy of an event with one to three such changes. */
export function mutated(dice: Dice, event: KitchenEvent, others: readonly KitchenEvent[]): Bag {
  const copy = structuredClone(event) as Bag;
  const changes = dice.pick([1, 1, 1, 2, 3]);
  for (let made = 0; made < changes; made += 1) mutateOnce(dice, copy, others);
  return copy;
}
