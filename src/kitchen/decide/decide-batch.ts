/** Deciding on whole batches: begin, hold, go on, abandon. */

import {
  chooseProcess,
  defaultJar,
  methodMeant,
  processOptions,
  whyOffTheShelf,
} from "../../recipe/choose-process.ts";
import { untestedWords } from "../../recipe/foods/gate-words.ts";
import { isColorName } from "../../recipe/foods/said-food.ts";
import type { JarSize, ProcessOption, ProcessTerms, Recipe } from "../../recipe/recipe.ts";
import { CANNER_METHODS, recipeFor } from "../../recipe/recipe-for.ts";
import type { SlotsOf } from "../command.ts";
import type { BatchOption, DatedFact, Lot } from "../events.ts";
import { historyOf } from "../events.ts";
import type { RefKind } from "../facts/fields.ts";
import { namesIn } from "../facts/references.ts";
import { loadsWith } from "../jars/canner-room.ts";
import { type LotOf, liveLots, lotsIn } from "../jars/lots.ts";
import { lotsOf, namesOnlySort, namesSort, ownerIds, standsFor } from "../meant.ts";
import { activeOwners, isLoad } from "../owners.ts";
import { plainId } from "../places.ts";
import {
  batchName,
  calledLot,
  lidMark,
  listed,
  loadName,
  lotName,
  lower,
  potOf,
  upper,
} from "../spoken-names.ts";
import { hasRole, isOfCanner, KINDS, rulesOf } from "../stages/kinds.ts";
import type { Batch, StageRun, State } from "../state.ts";
import { wallOf } from "../state.ts";
import { localFields } from "../time.ts";
import { admitted, besideOutcome } from "./begin/begin-gate.ts";
import { comparedWithGuide } from "./begin/begin-guide.ts";
import { potsFor } from "./begin/share-pots.ts";
import { type Candidate, choicesOf, isReady } from "./decide-stages.ts";
import {
  askEither,
  askWhich,
  askWhichBatch,
  askYes,
  type Choice,
  type Deciding,
  type Decision,
  done,
  type Present,
  refused,
} from "./decision.ts";

type BeginSlots = SlotsOf["begin"];

/** A heavier lot must be a slip of the tongue. */
export const HEAVIEST_LB = 500;
/** How many jars of one size make one of another, by volume. */
const PINTS: Record<JarSize, number> = {
  "half-pint": 0.5,
  pint: 1,
  "pint-and-half": 1.5,
  quart: 2,
  "half-gallon": 4,
};

/** Jars to expect from a weight, by the recipe's published yield; null where it names none. */
export function expectedJars(recipe: Recipe, lot: Lot, jar: JarSize | null): number | null {
  const { jars, weightLb } = recipe.yield;
  if (!jars || !jar) return null;
  const pounds = lot.weightLb ?? weightLb;
  const count = (jars.count * PINTS[jars.size] * pounds) / (weightLb * PINTS[jar]);
  return Math.max(1, Math.round(count));
}

export function decideBegin(deciding: Deciding<"begin">): Decision {
  const { library, wish } = deciding;
  const { slots } = wish.command;
  if (slots.untested) return refused(untestedWords(library, slots.untested));
  if (slots.recipe === undefined) return askRecipe(deciding);
  const found = library.recipes.get(slots.recipe);
  if (!found) return refused(`I have no recipe called ${slots.recipe}.`);
  const beside = besideOutcome(deciding, found);
  if (beside) return "kind" in beside ? beside : decideBegin({ ...deciding, wish: beside });
  return begun(deciding, found);
}

/** Begins a recipe, of which all that was said is accounted for. */
function begun(deciding: Deciding<"begin">, found: Recipe): Decision {
  const { state, wish, now } = deciding;
  const { slots } = wish.command;
  const gate = admitted(deciding, found);
  if ("kind" in gate) return gate;
  const lot: Lot = {
    variety: gate.variety ?? colorBeside(state, found, slots.variety),
    ...(slots.foods ? { foods: slots.foods } : {}),
    weightLb: slots.weightLb ?? null,
    pickedAt: null,
  };
  if (lot.weightLb !== null && !(lot.weightLb > 0 && lot.weightLb <= HEAVIEST_LB)) {
    return refused(`${lot.weightLb} pounds can't be right. How much is there?`);
  }
  const twin = twinOf(state, found, lot);
  if (twin) {
    return refused(`I have ${lotName(twin)} running already. Name a variety to begin another lot.`);
  }
  const way = wayOf(deciding, found, slots, gate.options);
  if (typeof way === "string") return refused(way);
  const { recipe, option } = way;
  const compared = comparedWithGuide(deciding, way.terms);
  if ("kind" in compared) return compared;
  const { terms } = compared;
  const filled = recipe.stages.some((stage) => hasRole(stage, "filling"));
  const jar = filled ? (slots.jar ?? defaultJar(recipe) ?? null) : null;
  const id = nextId(state, now, "");
  const expected = expectedJars(recipe, lot, jar);
  const mark = lidMark(state, lot.variety, recipe.title);
  const facts = [...gate.facts, ...compared.facts];
  const shared = potsFor(state, { recipe: recipe.id, option, jar, terms }, now);
  if (shared?.made && wish.confirmed === undefined && facts.length === 0) {
    return askEither(wish, enoughQuestion(shared.batch, shared.made, lot));
  }
  if (shared && (!shared.made || wish.confirmed)) {
    const { id: batch } = shared.batch;
    const added = { batch, id, lot, mark, expectedJars: expected, t: now };
    return done(...facts, { type: "lot-added", ...added });
  }
  return done(...facts, {
    type: "batch-begun",
    batch: id,
    recipe,
    lot,
    jar,
    pack: option?.pack ?? null,
    option,
    terms,
    expectedJars: expected,
    mark,
    t: now,
  });
}

/** "Chioggia and golden": beside other lots of its recipe, a color tells one apart. */
function colorBeside(state: State, recipe: Recipe, said: string | undefined): string | null {
  if (said === undefined || !isColorName(said)) return null;
  const others = activeOwners(state).some((one) => !isLoad(one) && one.recipe.id === recipe.id);
  return others ? said : null;
}

/** "Is there enough brine for the Blue Lake, too?" */
function enoughQuestion(batch: Batch, made: StageRun, { variety }: Lot): string {
  const more = variety ? `the ${variety}` : lower(batch.recipe.title);
  return `Is there enough ${potOf(made)} for ${more}, too? Yes, or no for its own.`;
}

/** A running lot that could not be told from another of the recipe. */
function twinOf(state: State, recipe: Recipe, { variety }: Lot): LotOf | undefined {
  return activeOwners(state)
    .flatMap((one) => (isLoad(one) ? [] : lotsIn(one)))
    .find(({ batch, lot }) => {
      const running = batch.state !== "complete" && lot.abandonedAt === undefined;
      return running && batch.recipe.id === recipe.id && lot.variety === variety;
    });
}

function askRecipe(deciding: Deciding<"begin">): Decision {
  const { library, wish } = deciding;
  const { slots } = wish.command;
  const chosenOf = (id: string): Decision => {
    const command = { ...wish.command, slots: { ...slots, recipe: id } };
    return decideBegin({ ...deciding, wish: { command } });
  };
  const chosen = wish.chosen?.[0];
  if (chosen && "owner" in chosen && chosen.stage !== undefined) {
    const { owner, stage } = chosen;
    return done({ type: "stage-begun", owner, stage, t: deciding.now });
  }
  if (chosen && "owner" in chosen) return chosenOf(chosen.owner);
  const ready = readyStages(deciding);
  const [stage] = ready;
  if (stage && ready.length === 1) {
    const { owner, run } = stage;
    return done({ type: "stage-begun", owner: owner.id, stage: run.id, t: deciding.now });
  }
  if (stage) return askWhich(wish, "Which one:", choicesOf(deciding.state, ready));
  const outcomes = (slots.choices ?? []).flatMap((id) => {
    const recipe = library.recipes.get(id);
    if (!recipe) return [];
    const choice: Choice = { label: lower(recipe.title), ref: { owner: id } };
    return [{ choice, outcome: chosenOf(id) }];
  });
  // What would be refused once it is chosen is not offered.
  const open = outcomes.filter(({ outcome }) => outcome.kind !== "refused");
  const lead = open.length < Math.min(2, outcomes.length) ? "Only this one fits:" : "Which recipe:";
  if (open.length > 0)
    return askWhich(
      wish,
      lead,
      open.map(({ choice }) => choice),
    );
  const [refusal] = outcomes;
  if (refusal) return refusal.outcome;
  const said = slots.named ? ` called ${slots.named}` : "";
  return refused(`I have no recipe${said}. Ask for help to hear what there is.`);
}

/** "Start the syrup": stages of running batches that wait for that word. */
function readyStages(deciding: Deciding<"begin">): Candidate[] {
  const parts = deciding.wish.command.ref?.parts ?? [];
  return activeOwners(deciding.state).flatMap((owner) =>
    owner.stages
      .filter((run) => isReady(deciding, owner, run) && standsFor(parts, owner, run))
      .map((run) => ({ owner, run })),
  );
}

/** How a batch is put up: the recipe for the chosen method, its option and its terms. */
function wayOf(
  deciding: Present,
  recipe: Recipe,
  slots: BeginSlots,
  tested: readonly ProcessOption[],
): { recipe: Recipe; option: BatchOption | null; terms: ProcessTerms | null } | string {
  const { state, library } = deciding;
  const uncanned = slots.method === "refrigerator" || slots.method === "ferment";
  const ofFood = new Set(tested.map(({ table }) => table));
  const options = processOptions(recipe).filter(({ table }) => ofFood.has(table));
  if (!recipe.tested && slots.method && CANNER_METHODS.includes(slots.method)) {
    return `${upper(whyOffTheShelf(recipe))}.`;
  }
  if (uncanned || options.length === 0) {
    const method = slots.method ?? recipe.keptAs;
    return { recipe: recipeFor(recipe, KINDS, method), option: null, terms: null };
  }
  const method = methodMeant(options, slots);
  const pressed = slots.atPsi === undefined || method === "pressure";
  const fits = pressed ? options.filter((one) => one.method === method) : [];
  const found = slots.pack ? fits.find((one) => one.pack === slots.pack) : fits[0];
  if (!found) {
    const had = options.map((one) => `${one.pack} pack by ${one.method}`).join(", ");
    return `${recipe.title} is tested for ${had} only.`;
  }
  const option: BatchOption = slots.atPsi === undefined ? found : { ...found, atPsi: slots.atPsi };
  const made = recipeFor(recipe, KINDS, found.method, found.pack);
  const { altitudeFt, altitudeUncertaintyFt } = state.kitchen;
  if (altitudeFt === null) return { recipe: made, option, terms: null };
  const known = state.kitchen.canners.find((one) => one.gauge)?.gauge?.kind;
  // Without a gauge, the question is only whether any gauge has a tested process here.
  const choices = (known ? [known] : (["dial", "weighted"] as const)).map((gauge) =>
    chooseProcess(recipe, library.tables, {
      altitudeFt,
      altitudeUncertaintyFt,
      method: found.method,
      pack: found.pack,
      gauge,
      ...(slots.jar ? { jar: slots.jar } : {}),
      ...(slots.atPsi === undefined ? {} : { atPsi: slots.atPsi }),
    }),
  );
  const choice = choices.find((one) => one.ok) ?? choices[0];
  if (!choice?.ok) {
    const reason = upper(choice?.reason ?? "No process was tested");
    return `${reason}. It could be kept in the refrigerator instead.`;
  }
  if (found.method === "pressure" && !known) return { recipe: made, option, terms: null };
  return { recipe: made, option, terms: choice.terms };
}

const NAMED: ReadonlySet<RefKind> = new Set([
  ...(["batch", "load", "owner", "timer", "reminder", "seed", "seal"] as const),
]);

/** Ids that the log mentions, including those taken back since and those a damaged line began. */
function givenOut(state: State): string[] {
  return historyOf(state).flatMap((event) => namesIn(event, NAMED).map(plainId));
}

/**
 * A short id a person can read out: the day and a running number. None is given twice: what came
 * due for something taken back must not count for something new.
 */
export function nextId(state: State, now: number, letter: string): string {
  const { year, month, day } = localFields(wallOf(state, now), state.zone);
  const two = (value: number) => String(value % 100).padStart(2, "0");
  const head = `${two(year)}${two(month)}${two(day)}-${letter}`;
  const used = new Set(givenOut(state));
  let number = 1;
  while (used.has(`${head}${number}`)) number++;
  return `${head}${number}`;
}

/**
 * The batch that words are about: the one named, the one in focus, or the only one; else it asks.
 */
export function batchFor(
  deciding: Deciding,
  test: (batch: Batch) => boolean,
  lead: string,
): { batch: Batch } | { outcome: Decision } {
  const { state, wish } = deciding;
  const { ref } = wish.command;
  const able = activeOwners(state).filter((one): one is Batch => !isLoad(one) && test(one));
  let list = able;
  if (wish.chosen) {
    const ids = new Set(wish.chosen.map((ref) => ("owner" in ref ? ref.owner : "")));
    list = able.filter((batch) => ids.has(batch.id));
  } else if (ref !== undefined) {
    const named = ownerIds(ref.running);
    list = able.filter((batch) => named.has(batch.id));
    if (list.length === 0 && namesOnlySort(ref, "it", "batch", "all")) list = able;
  }
  if (list.length > 1 && ref === undefined) {
    const focused = list.filter((batch) => batch.id === state.focus);
    if (focused.length === 1) list = focused;
  }
  const [batch] = list;
  if (!batch) return { outcome: refused(`${lead}: no such batch is running.`) };
  if (list.length > 1) {
    return { outcome: askWhichBatch(wish, "Which batch:", list) };
  }
  return { batch };
}

export function decideHold(deciding: Deciding<"hold">): Decision {
  if (namesSort(deciding.wish.command.ref, "processing", "canner", "boil")) {
    return refused(
      "A process can't be held, only lost. If the boil or the pressure drops, tell me.",
    );
  }
  const found = batchFor(deciding, (batch) => batch.state === "running", "Nothing to hold");
  if ("outcome" in found) return found.outcome;
  return done({ type: "held", batch: found.batch.id, t: deciding.now });
}

export function decideResume(deciding: Deciding<"resume">): Decision {
  const { state, wish, now: t } = deciding;
  const named = lotsOf(state, wish.chosen ?? wish.command.ref?.running ?? []);
  const [givenUp] = named.filter(({ lot }) => lot.abandonedAt !== undefined);
  if (givenUp && named.length === 1) {
    const why = whyNotAgain(state, givenUp);
    return why ? refused(why) : done({ type: "lot-restored", batch: givenUp.lot.id, t });
  }
  const found = batchFor(deciding, (batch) => batch.state === "held", "Nothing is held");
  if ("outcome" in found) return found.outcome;
  return done({ type: "resumed", batch: found.batch.id, t: deciding.now });
}

/** Why a lot that was given up cannot be taken up again; undefined where it can. */
function whyNotAgain(state: State, { batch, lot }: LotOf): string | undefined {
  const since = lot.abandonedAt ?? 0;
  const over = loadsWith(state, batch, [lot]).some((load) => load.state !== "running");
  if (over) return "The load its jars were in is over, and nobody checked their lids.";
  const missed = batch.stages.find(({ spec, startedAt }) => {
    return !isOfCanner(spec) && rulesOf(spec).window && (startedAt ?? 0) > since;
  });
  return (
    missed && `It was given up before ${missed.spec.title} began. Begin it as a lot of its own.`
  );
}

export function decideAbandon(deciding: Deciding<"abandon">): Decision {
  const { wish, state } = deciding;
  const live = (batch: Batch) => batch.state === "running" || batch.state === "held";
  const found = batchFor(deciding, live, "Nothing to abandon");
  if ("outcome" in found) return found.outcome;
  const { batch } = found;
  const named = lotsOf(state, wish.chosen ?? wish.command.ref?.running ?? []);
  const ofBatch = named.filter((one) => one.batch === batch);
  const given = ofBatch.filter(({ lot }) => liveLots(batch).includes(lot));
  const [before] = ofBatch;
  if (before && given.length === 0)
    return refused(`${upper(lotName(before))} is given up already.`);
  if (given.length > 0 && given.length < liveLots(batch).length) {
    const names = listed(given.map((one) => calledLot(state, one)));
    if (!wish.confirmed) return askYes(wish, `Give up ${names} for good? Say yes or no.`);
    const facts = given.map(({ lot }): DatedFact => {
      return { type: "lot-abandoned", batch: lot.id, t: deciding.now };
    });
    return done(...facts);
  }
  const name = batchName(batch);
  if (wish.confirmed) return done({ type: "abandoned", batch: batch.id, t: deciding.now });
  const inside = activeOwners(state).find(
    (one) =>
      isLoad(one) && one.unloadedAt === undefined && one.parts.some((p) => p.batch === batch.id),
  );
  const warning =
    inside && isLoad(inside) ? ` ${upper(loadName(state, inside))} is in the canner.` : "";
  return askYes(wish, `Abandon ${name} for good?${warning} Say yes or no.`);
}

export function decideFocus(deciding: Deciding<"focus">): Decision {
  const notAbandoned = (batch: Batch) => batch.state !== "abandoned";
  const found = batchFor(deciding, notAbandoned, "I can't find it");
  if ("outcome" in found) return found.outcome;
  return done({ type: "focused", owner: found.batch.id, t: deciding.now });
}
