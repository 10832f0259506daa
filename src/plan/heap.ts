/**
 * From what lies on the table to what can be made of it: every recipe of the library that takes
 * the food, worked out for its weight in this kitchen, and what cannot be kept safely, with why.
 */
import type { QuietHours } from "../kitchen/events.ts";
import type { Canner } from "../kitchen/facts/fields.ts";
import { sum } from "../kitchen/jars/lots.ts";
import { rulesOf } from "../kitchen/stages/kinds.ts";
import { instantOf, localFields, MINUTE_MS } from "../kitchen/time.ts";
import { recipeNames } from "../recipe/find-recipe.ts";
import { gateBegin } from "../recipe/foods/food-gate.ts";
import { FOODS, type Food, isLowAcid } from "../recipe/foods/foods.ts";
import { isMain, isSeed, tablesOf } from "../recipe/foods/near-recipes.ts";
import { optionsFor, saidIn, testedFor } from "../recipe/foods/tested-foods.ts";
import type { Library } from "../recipe/library.ts";
import type { Method, ProcessTerms, Recipe, Stage } from "../recipe/recipe.ts";
import { type Scaled, scaleRecipe } from "../recipe/scale.ts";
import { BEST_BY_DAYS } from "../reckon/trade-numbers.ts";
import { type DayBatch, dayBatch } from "./day-batches.ts";
import { planKitchen } from "./kitchen-plan.ts";
import type { KitchenPlan, PlanBatch } from "./plan-request.ts";
import { seededRandom } from "./solver/random.ts";
import { type CanningFacts, stageLength, wantedBatch } from "./wanted-batch.ts";

/** A food by its name in the food table, and its weight; each recipe's own where none is said. */
export type Heap = { food: string; weightLb?: number };

/** The kitchen and the day that heaps are put up in. Instants are epoch ms by the wall. */
export type HeapDay = {
  kitchen: CanningFacts & { altitudeKnown: boolean; burners: number };
  canners: readonly Canner[];
  startMs: number;
  zone: string;
  /** The end of the day, or the time that was asked for. */
  byMs: number;
};

/** Where no night is set, a day in the kitchen ends at this hour (our choice). */
const EVENING_HOUR = 21;
/** How long a plan is searched for, where the first one that is put together does not do. */
const NODES = { one: 2_000, several: 4_000 };

/** The instant at which the day of `startMs` ends: the night that is kept quiet, or the evening. */
export function eveningOf(startMs: number, zone: string, quiet: QuietHours | null): number {
  const { year, month, day } = localFields(startMs, zone);
  const minute = quiet && quiet.fromMinute > 12 * 60 ? quiet.fromMinute : EVENING_HOUR * 60;
  return instantOf({ year, month, day, hour: 0, minute, second: 0 }, zone);
}

export type HeapWay = {
  recipe: Recipe;
  heap: Heap;
  weightLb: number;
  method: Method;
  scaled: Scaled;
  /** The tested process; null where it goes through no canner, or the altitude is not known. */
  process: ProcessTerms | null;
  /** Minutes in which hands are busy, and from the first to the last thing the day waits for. */
  handsMinutes: number;
  minutes: number;
  finishMs: number;
  fits: boolean;
  /** What is bought besides the heap. */
  buy: readonly { item: string; amount: string }[];
  /** Days it keeps at its best, and days until it is first good to eat. */
  keepsDays: number | null;
  readyDays: number;
};

/** What cannot be kept safely, or not in this kitchen, and who says so. */
export type HeapRefusal = { what: string; recipe?: string; why: string; source: string };

export type HeapAnswer = { heap: Heap; ways: HeapWay[]; cannot: HeapRefusal[] };

const DAY_MINUTES = 24 * 60;
const LOW_ACID_SOURCE = "USDA Complete Guide to Home Canning, Guide 1";

/** The food of that name in the table. */
export function foodCalled(name: string): Food | undefined {
  return FOODS.find((food) => food.name === name);
}

/** What can be made of each heap here: what fits the day first, then what is least work. */
export function fromHeaps(heaps: readonly Heap[], library: Library, here: HeapDay): HeapAnswer[] {
  return heaps.map((heap) => fromHeap(heap, library, here));
}

function fromHeap(heap: Heap, library: Library, here: HeapDay): HeapAnswer {
  const food = foodCalled(heap.food);
  if (!food) return { heap, ways: [], cannot: [] };
  const ways: HeapWay[] = [];
  const cannot: HeapRefusal[] = [];
  const fit = [...library.recipes.values()].filter((recipe) => {
    return !isSeed(recipe) && isMain(recipe, food) && testedFor(recipe, library.tables, food);
  });
  for (const recipe of fit) {
    const made = wayOf(recipe, heap, food, library, here);
    if ("why" in made) cannot.push(made);
    else ways.push(made);
  }
  ways.sort((a, b) => Number(b.fits) - Number(a.fits) || a.handsMinutes - b.handsMinutes);
  return { heap, ways, cannot: [...cannot, ...neverSafe(food, fit, library)] };
}

function wayOf(
  recipe: Recipe,
  heap: Heap,
  food: Food,
  library: Library,
  here: HeapDay,
): HeapWay | HeapRefusal {
  const refused = (why: string, source = ""): HeapRefusal => {
    return { what: recipe.title, recipe: recipe.id, why, source };
  };
  const weightLb = heap.weightLb ?? recipe.yield.weightLb;
  // Of a recipe's processes, only those that were tested for this food: raspberries go in raw.
  const processes = optionsFor(recipe, library.tables, food);
  const own = recipe.processes.length === 0 ? recipe : { ...recipe, processes };
  const pressed = processes.length > 0 && processes.every(({ method }) => method === "pressure");
  if (pressed && here.canners.length > 0 && !here.canners.some(({ gauge }) => gauge)) {
    return refused("it needs a pressure canner, and no canner here has a gauge", LOW_ACID_SOURCE);
  }
  const wanted = { id: recipe.id, recipe: own, variety: null, weightLb };
  const found = wantedBatch(wanted, library, here.kitchen);
  if (!found.ok) return refused(found.error.replace(`${recipe.title}: `, ""));
  const { batch } = found;
  const planned = planBatchOf(batch, here);
  const plan = planOf([planned], here, NODES.one);
  const jar = batch.jar ?? undefined;
  const perLoad = batch.jars?.perLoad;
  const scaled = scaleRecipe(batch.recipe, { forLb: weightLb, jar, cannerHolds: perLoad });
  const { keepsDays, readyDays } = keepingOf(batch.recipe, batch.terms);
  return {
    recipe: batch.recipe,
    heap,
    weightLb,
    method: batch.terms?.method ?? recipe.keptAs,
    scaled,
    process: here.kitchen.altitudeKnown ? batch.terms : null,
    ...(plan.feasible ? { handsMinutes: handsOf(plan), minutes: plan.minutes } : inTurn(planned)),
    finishMs: plan.finishMs,
    fits: plan.feasible && plan.finishMs <= here.byMs,
    buy: [...besides(scaled), ...scaled.buy],
    keepsDays,
    readyDays,
  };
}

/** Other produce, which the recipe's own list of what to buy takes for picked. */
function besides({ ingredients }: Scaled): { item: string; amount: string }[] {
  const produce = ingredients.filter(({ role, optional }) => role === "produce" && !optional);
  return produce.slice(1).flatMap(({ name, amount }) => (amount ? [{ item: name, amount }] : []));
}

function planBatchOf(batch: DayBatch, { kitchen }: HeapDay): PlanBatch {
  const lengthOf = (stage: Stage) => stageLength(undefined, batch, stage, kitchen.altitudeFt);
  return dayBatch(batch, lengthOf);
}

function planOf(batches: PlanBatch[], here: HeapDay, nodeBudget: number): KitchenPlan {
  const { kitchen, canners, startMs, zone } = here;
  const resources = { hands: 1, burner: kitchen.burners, canner: Math.max(1, canners.length) };
  const request = { batches, resources, startMs, zone, gridMinutes: 5, explain: false };
  const effort = { random: seededRandom(1), nodeBudget };
  const first = planKitchen(request, { ...effort, glance: true });
  // Short windows between stages may take a search.
  return first.feasible && batches.length === 1 ? first : planKitchen(request, effort);
}

function handsOf(plan: KitchenPlan): number {
  const spans = plan.tasks.flatMap(({ attended }) => attended);
  return Math.round(sum(spans, ([from, to]) => to - from) / MINUTE_MS);
}

/** One step after the other, where a window between two of them is too short for this weight. */
function inTurn({ stages }: PlanBatch): { handsMinutes: number; minutes: number } {
  const own = stages.filter(({ afterwards }) => !afterwards);
  const inHand = own.filter(({ hands }) => hands === "all");
  return { handsMinutes: sum(inHand, minutesOf), minutes: sum(own, minutesOf) };
}

const minutesOf = ({ minutes }: { minutes: number }) => minutes;

/** How long it keeps by its own recipe, or a processed jar by the rule for all of them. */
function keepingOf(recipe: Recipe, terms: ProcessTerms | null) {
  const dated = (end: "from" | "until") =>
    recipe.stages.filter((stage) => rulesOf(stage).date === end).map(({ window }) => window);
  const best = Math.max(0, ...dated("until").map((window) => window?.maxMinutes ?? 0));
  const ready = Math.max(0, ...dated("from").map((window) => window?.minMinutes ?? 0));
  const days = Math.round(best / DAY_MINUTES) || (terms ? BEST_BY_DAYS : null);
  return { keepsDays: days, readyDays: Math.round(ready / DAY_MINUTES) };
}

/** What the sources say may not be made of a food, beside what this kitchen cannot do. */
function neverSafe(food: Food, fit: readonly Recipe[], library: Library): HeapRefusal[] {
  const list: HeapRefusal[] = [];
  const tables = fit.flatMap((recipe) => tablesOf(recipe, library.tables));
  const own = [...new Set(tables)].filter((table) => table.of.includes(food.name));
  const names = fit.flatMap(recipeNames).join(", ");
  for (const { words, foods, why, source } of own.flatMap(({ notOf }) => notOf)) {
    // What has a recipe of its own is no reason against the food.
    const [word] = saidIn(names, words) ? [] : words;
    if (word && foods.length === 0) list.push({ what: `${food.name}, ${word}`, why, source });
  }
  if (own.length === 0) {
    const gate = gateBegin(library, food.name);
    if (gate.is === "untested") list.push({ what: food.name, why: gate.why, source: gate.source });
  } else if (isLowAcid(food)) {
    const why = "low in acid: no time in boiling water makes it safe without a tested pickle";
    list.push({ what: `plain ${food.name} in boiling water`, why, source: LOW_ACID_SOURCE });
  }
  return list.filter((one, at) => list.findIndex(({ why }) => why === one.why) === at);
}

/** Whether the first way of every heap fits the day together; undefined where one has none. */
export function together(
  answers: readonly HeapAnswer[],
  library: Library,
  here: HeapDay,
): { ways: HeapWay[]; plan: KitchenPlan; fits: boolean } | undefined {
  const ways = answers.flatMap(({ ways: [first] }) => first ?? []);
  if (ways.length < 2 || ways.length < answers.length) return undefined;
  const batches = ways.flatMap(({ recipe, weightLb }, at) => {
    const whole = library.recipes.get(recipe.id) ?? recipe;
    const wanted = { id: `${recipe.id}#${at + 1}`, recipe: whole, variety: null, weightLb };
    const found = wantedBatch(wanted, library, here.kitchen);
    return found.ok ? [planBatchOf(found.batch, here)] : [];
  });
  const plan = planOf(batches, here, NODES.several);
  return { ways, plan, fits: plan.feasible && plan.finishMs <= here.byMs };
}
