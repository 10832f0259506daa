import type { Library } from "../library.ts";
import type { Recipe } from "../recipe.ts";
import type { FoodGate, NameOrFood, Untested } from "./food-gate.ts";

/** What is said when the food gate refuses: what is wrong, and what can be done. */

/** At most this many recipes are named at once. */
const MOST_TOLD = 3;

function titled(library: Library, ids: readonly string[]): string {
  const titles = ids.slice(0, MOST_TOLD).flatMap((id) => library.recipes.get(id)?.title ?? []);
  const told = titles.map((title) => title.charAt(0).toLowerCase() + title.slice(1));
  const last = told.pop() ?? "";
  return told.length > 0 ? `${told.join(", ")} or ${last}` : last;
}

/**
 * The reason and the way out: recipes that were tested for the food in another form, and those
 * of tested neighbors. None of them is begun.
 */
export function untestedWords(library: Library, untested: Untested): string {
  const { said, food, why, nearby, instead } = untested;
  if (food.kind === "poison") return `Nothing was started. ${why}`;
  const others = nearby.filter((id) => !instead.includes(id));
  const own = instead.length > 0 ? ` For ${food.name} there is ${titled(library, instead)}.` : "";
  const near =
    others.length > 0 && instead.length === 0 ? ` Tested nearby: ${titled(library, others)}.` : "";
  const begin = own || near ? " Say start and its name, if that is what you want." : "";
  return `Nothing was started for "${said.trim()}". ${why}${own}${near}${begin}`;
}

/** Why the gate does not let a recipe begin with what was named; undefined where it may. */
export function gateRefusal(library: Library, recipe: Recipe, gate: FoodGate): string | undefined {
  if (gate.is === "untested") return untestedWords(library, gate);
  if (gate.is === "unknown") return unknownWords(gate.said);
  if (gate.is !== "tested") return "What goes into the jar is not settled.";
  if (gate.options.length > 0 || recipe.processes.length === 0) return undefined;
  return `No process of ${recipe.title} was tested for all of these together.`;
}

/** What is said about an unknown food. */
function unknownWords(said: string): string {
  return (
    `I know no tested recipe for "${said.trim()}", so nothing was started. ` +
    "Ask your extension service for one, or keep it in the refrigerator."
  );
}

/** `Yellow Pear: a tomato?` */
export function nameQuestion({ name, food }: NameOrFood): string {
  return `${name}: ${/^[aeiou]/.test(food.name) ? "an" : "a"} ${food.name}?`;
}
