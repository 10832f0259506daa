/** What kind of kitchen it is: the words of a `brinebell rehearse` call, drawn by chance. */
import type { Library } from "../../src/recipe/library.ts";
import type { Recipe } from "../../src/recipe/recipe.ts";
import type { Dice } from "./dice.ts";

/** Mornings of every sort: ordinary, before the clocks change, and at a year's end. */
const MORNINGS = [
  "2027-08-14T08:00:00",
  "2027-08-14T08:00:00",
  "2027-09-03T21:30:00",
  "2027-11-06T22:10:00",
  "2027-11-07T00:40:00",
  "2027-03-13T23:20:00",
  "2027-03-14T01:20:00",
  "2027-12-31T19:00:00",
];

function altitude(dice: Dice): number {
  return dice.chance(0.5) ? 6200 : dice.whole(-50, 9_500);
}

/** Recipes that are canned come up more often: that is where the rules are. */
function recipe(dice: Dice, library: Library): Recipe {
  const all = [...library.recipes.values()];
  const canned = all.filter((one) => one.processes.length > 0);
  return dice.pick(dice.chance(0.85) ? canned : all);
}

/** The arguments of the call, without a script. */
export function scenario(dice: Dice, library: Library): string[] {
  const first = recipe(dice, library);
  const args = [first.id];
  // Named again, it is a further lot in the same pots.
  while (args.length < 3 && dice.chance(0.3)) args.push(first.id);
  if (dice.chance(0.3)) args.push(recipe(dice, library).id);
  args.push("--altitude", `${altitude(dice)}ft`, "--from", dice.pick(MORNINGS));
  if (first.jars.length > 0 && dice.chance(0.5)) args.push("--jar", dice.pick(first.jars));
  const ways = first.processes;
  if (ways.length > 0 && dice.chance(0.5)) {
    const way = dice.pick(ways);
    args.push("--method", way.method, "--pack", way.pack);
  }
  if (dice.chance(0.5)) args.push("--gauge", dice.pick(["dial", "weighted"]));
  if (dice.chance(0.4)) args.push("--canner-holds", dice.pick(["5", "7", "9pint,7quart", "16"]));
  if (dice.chance(0.3)) args.push("--for", `${dice.whole(2, 24)}lb`);
  return args;
}
