/** Checks what is to be begun against the foods its process was tested for. */

import { gateBeside } from "../../../recipe/foods/beside-food.ts";
import { type FoodGate, gateFood, gateTitle } from "../../../recipe/foods/food-gate.ts";
import { gateRefusal, nameQuestion, untestedWords } from "../../../recipe/foods/gate-words.ts";
import type { Library } from "../../../recipe/library.ts";
import type { ProcessOption, Recipe } from "../../../recipe/recipe.ts";
import type { SlotsOf } from "../../command.ts";
import type { DatedFact } from "../../events.ts";
import type { BatchLot } from "../../jars/jar.ts";
import type { Batch, State } from "../../state.ts";
import { askEither, type Deciding, type Decision, done, refused, type Wish } from "../decision.ts";

/** What may be begun: the variety, whole, and the processes that were tested for the food. */
type Admitted = {
  variety: string | null;
  options: readonly ProcessOption[];
  /** What was learned in passing and is to be written down. */
  facts: DatedFact[];
};

/** What was said before about a name that is also a food's, for one food. */
export function answeredName(state: State): (food: string, name: string) => boolean | undefined {
  return (food, name) =>
    state.nameAnswers.findLast((one) => one.food === food && one.name === name)?.isVariety;
}

/** What the gate says about the food and variety of a recipe that is to be begun. */
function gateOf(
  state: State,
  library: Library,
  recipe: Recipe,
  { variety, foods }: Named,
  answered = answeredName(state),
): FoodGate | undefined {
  const named = [variety ?? "", (foods ?? []).join(" and ")].join(" ").trim();
  return named === "" ? undefined : gateFood(library, recipe, named, answered);
}

/**
 * Words beside the recipe's name that do not belong to a variety: refused where they make something
 * untested of it, asked about where that is not known, and left out of the wish once they are said
 * not to go in. Undefined where there are none.
 */
export function besideOutcome(
  { library, wish }: Deciding<"begin">,
  recipe: Recipe,
): Decision | Wish<"begin"> | undefined {
  const { beside, aside, ...slots } = wish.command.slots;
  const odd = beside === undefined ? undefined : gateBeside(library, recipe, beside);
  if (odd) return refused(untestedWords(library, odd));
  const said = [beside, aside].flatMap((words) => words ?? []).join(", ");
  if (said === "") return undefined;
  if (wish.confirmed === undefined) {
    return askEither(wish, `"${said}": does that go into the jars? Say yes or no.`);
  }
  // A no to this question answers no other.
  if (!wish.confirmed) return { command: { ...wish.command, slots } };
  const known = gateBeside(library, recipe, said);
  if (known) return refused(untestedWords(library, known));
  return refused(
    `Nothing was started. ${recipe.title} was not tested with "${said}". ` +
      "Ask your extension service for a tested recipe, or keep it in the refrigerator.",
  );
}

/** Lets a recipe begin with the food that was named, or says or asks why it does not. */
export function admitted(deciding: Deciding<"begin">, recipe: Recipe): Admitted | Decision {
  const { library, wish } = deciding;
  const odd = gateTitle(recipe, library.tables);
  if (odd) {
    return refused(
      `${recipe.title} can't be canned that way: none of its processes was tested for ${odd.name}.`,
    );
  }
  return held(deciding, recipe, wish.command.slots);
}

/**
 * A variety given for a running batch, checked against what its recipe was tested for; where it is
 * another food, that is written down as a change.
 */
export function admittedVariety(
  deciding: Deciding<"change-batch">,
  { id, recipe }: Batch,
  lot: BatchLot,
  variety: string,
): Admitted | Decision {
  const whole = deciding.library.recipes.get(recipe.id) ?? recipe;
  const outcome = held(deciding, whole, { variety, ...(lot.foods ? { foods: lot.foods } : {}) });
  const { now: t, wish } = deciding;
  if ("kind" in outcome && outcome.kind === "ask") {
    // Unanswered, it may be another food: the jars keep that as a doubt.
    const doubt = { strength: "suspicion", about: "food" } as const;
    return { ...outcome, facts: [{ type: "heard", load: id, text: variety, ...doubt, t }] };
  }
  if (!("kind" in outcome)) {
    if (wish.confirmed === undefined) return outcome;
    const settled = { type: "heard-settled", load: id, held: true, t } as const;
    return { ...outcome, facts: [...outcome.facts, settled] };
  }
  const known = outcome.kind === "done" ? outcome.facts : [];
  const detail = `said to be ${variety}: ${recipe.title} was not tested for that.`;
  const changed = { type: "ingredient-changed", batch: id, detail, t } as const;
  return done(...known, changed);
}

type Named = Pick<SlotsOf["begin"], "variety" | "foods">;

function held(deciding: Deciding, recipe: Recipe, slots: Named): Admitted | Decision {
  const { state, library, wish, now } = deciding;
  const gate = gateOf(state, library, recipe, slots);
  if (gate?.is !== "name-or-food") return settled(gate, library, recipe, []);
  if (wish.confirmed === undefined) return askEither(wish, nameQuestion(gate));
  const { food, key } = gate;
  const isVariety = wish.confirmed;
  const fact: DatedFact = {
    type: "name-settled",
    food: food.name,
    name: key,
    isVariety,
    t: now,
  };
  const known = gateOf(state, library, recipe, slots, () => isVariety);
  return settled(known, library, recipe, [fact]);
}

function settled(
  gate: FoodGate | undefined,
  library: Library,
  recipe: Recipe,
  facts: DatedFact[],
): Admitted | Decision {
  if (gate === undefined) return { variety: null, options: recipe.processes, facts };
  const refusal = gateRefusal(library, recipe, gate);
  if (refusal === undefined && gate.is === "tested") {
    return { variety: gate.variety ?? null, options: gate.options, facts };
  }
  const reason = refusal ?? "";
  return facts.length > 0 ? { kind: "done", facts, refusal: reason } : refused(reason);
}
