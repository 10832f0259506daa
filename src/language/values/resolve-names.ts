/** What a name stands for among the things of the kitchen. */
import type { Meant, Ref, Sort } from "../../kitchen/command.ts";
import type { Context, NamedBatch, NamedLoad } from "../context.ts";
import { wordSet } from "../grammar/word-set.ts";
import { utteranceOf } from "../words.ts";
import { ordinalAt } from "./spoken-numbers.ts";

const SMALL_WORDS = wordSet("the a an my new fresh of for from batch lot run round timer in");

function wordsIn(text: string): string[] {
  return text
    .toLowerCase()
    .replace(/[^a-z0-9 ]+/g, " ")
    .split(" ")
    .filter((word) => word && !SMALL_WORDS.has(word))
    .map((word) => word.replace(/(?<=[a-z]{3})(ies)$/, "y").replace(/(?<=[a-z]{3})(es|s)$/, ""));
}

type Said = readonly string[];

/** What a name is looked for among. */
type Surroundings = Pick<Context, "running" | "loads" | "timers" | "onRecord" | "recipes">;

/** How much of a name was said, 0 to 1; every word said must be in it. */
function covers(said: Said, name: string): number {
  const words = new Set(wordsIn(name));
  if (said.length === 0 || words.size === 0) return 0;
  return said.every((word) => words.has(word))
    ? said.length / Math.max(said.length, words.size)
    : 0;
}

function bestOf(said: Said, names: readonly (string | undefined)[]): number {
  return Math.max(0, ...names.map((name) => (name ? covers(said, name) : 0)));
}

function namesOfBatch(batch: NamedBatch, recipes: Context["recipes"]): string[] {
  const { id, variety, title, names = [] } = batch;
  const recipe = title ? undefined : recipes.find((one) => one.id === batch.recipe);
  const own = [...(title ? [title] : []), ...names];
  const all = recipe ? [recipe.title, ...recipe.names, ...own] : own;
  const withLot = variety ? all.map((name) => `${variety} ${name}`) : [];
  return [id, ...(variety ? [variety] : []), ...all, ...withLot];
}

type Scored = { score: number; ref: Ref };

/**
 * A running stage is more likely meant than its batch of the same name, one to come less likely.
 */
const STAGE_BIAS = { running: 0.99, waiting: 0.5 };

function* inBatch(said: Said, batch: NamedBatch, context: Surroundings): Generator<Scored> {
  const { id: owner, lot } = batch;
  const ref = lot === undefined ? { owner } : { owner, lot };
  yield { score: bestOf(said, namesOfBatch(batch, context.recipes)), ref };
  for (const { id, title, pot, kind, state } of batch.stages ?? []) {
    if (!state) continue;
    const score = bestOf(said, [id, title, pot, kind]) * STAGE_BIAS[state];
    yield { score, ref: { owner: batch.id, stage: id } };
  }
}

function* inLoad(said: Said, load: NamedLoad): Generator<Scored> {
  const { canner } = load;
  const names = [canner, `${canner} canner`, load.id, "canner load jars", "canner"];
  yield { score: bestOf(said, names), ref: { owner: load.id } };
  for (const { id, title, state } of load.stages) {
    const whole = state !== undefined && covers(said, title) === 1;
    if (whole) yield { score: STAGE_BIAS[state], ref: { owner: load.id, stage: id } };
  }
}

type Things = { batches: readonly NamedBatch[]; loads: readonly NamedLoad[] };

/** Everything that fits a name best, and equally well. */
function bearing(name: string, things: Things, context: Surroundings): Ref[] {
  const said = wordsIn(name);
  const scored: Scored[] = [];
  for (const batch of things.batches) scored.push(...inBatch(said, batch, context));
  for (const load of things.loads) scored.push(...inLoad(said, load));
  for (const { id, label, minutes } of context.timers) {
    const length = minutes === undefined ? undefined : `${minutes} minute`;
    scored.push({ score: bestOf(said, [label, id, length]), ref: { timer: id } });
  }
  const best = Math.max(0, ...scored.map(({ score }) => score));
  if (best === 0) return [];
  return once(scored.filter(({ score }) => score === best).map(({ ref }) => ref));
}

/** Each thing once: lots of one batch share its stages. */
function once(refs: readonly Ref[]): Ref[] {
  return [...new Map(refs.map((ref) => [JSON.stringify(ref), ref])).values()];
}

/** The same; for several names said together, what fits each of them. */
function bearingEach(name: string, things: Things, context: Surroundings): Ref[] {
  const whole = bearing(name, things, context);
  if (whole.length > 0) return whole;
  return name.split(/\band\b|,|\+/).flatMap((part) => bearing(part, things, context));
}

/** Stages named by their own words, with or without those of their batch. */
function partsOf(said: Said, batch: NamedBatch, context: Surroundings): Ref[] {
  const ofBatch = namesOfBatch(batch, context.recipes).flatMap(wordsIn);
  return (batch.stages ?? []).flatMap(({ id, title, pot = "" }) => {
    const own = new Set([id, title, pot].flatMap(wordsIn));
    const all = new Set([...own, ...ofBatch]);
    const fits = said.some((word) => own.has(word)) && said.every((word) => all.has(word));
    return fits ? [{ owner: batch.id, stage: id }] : [];
  });
}

const POT_WORDS = wordSet("pot stockpot stock big large");
const CANNER_WORDS = new Set(
  [...POT_WORDS].concat("water", "bath", "waterbath", "canning", "canner", "pressure", "steam"),
);

/**
 * Stages that may be in a vessel, where only the vessel was named: "the water bath", "the big pot".
 */
function inVessel(said: Said, { running, loads = [] }: Surroundings): Ref[] {
  if (said.length === 0) return [];
  const pots = said.every((word) => POT_WORDS.has(word))
    ? running.flatMap(({ id, stages = [] }) =>
        stages.filter(({ onStove }) => onStove).map((stage) => ({ owner: id, stage: stage.id })),
      )
    : [];
  const canners = said.every((word) => CANNER_WORDS.has(word))
    ? loads.map(({ id }) => ({ owner: id }))
    : [];
  return once([...pots, ...canners]);
}

const SORT_WORDS: Readonly<Record<string, Sort>> = {
  jar: "jars",
  jars: "jars",
  lid: "lids",
  lids: "lids",
  other: "others",
  others: "others",
  rest: "others",
  canner: "canner",
  load: "load",
  process: "processing",
  boil: "boil",
  batch: "batch",
  timer: "timer",
  timers: "timer",
  all: "all",
  both: "all",
  them: "all",
  everything: "all",
  it: "it",
  this: "it",
  that: "it",
};

function sortsIn(name: string): Pick<Meant, "sorts" | "sortAlone"> {
  const words = name.split(/[^a-z]+/).filter((word) => word !== "" && word !== "the");
  const found = words.flatMap((word) => (Object.hasOwn(SORT_WORDS, word) ? SORT_WORDS[word] : []));
  const sorts = [...new Set(found)].filter((sort) => sort !== undefined);
  return { sorts, sortAlone: found.length > 0 && found.length === words.length };
}

type Nth = { nth: number; rest: string };

/** The place in a row that a name tells, and what is left of it: 2 and `beans`. */
function nthIn(name: string): Nth | undefined {
  const { words } = utteranceOf(name);
  for (let at = 0; at < words.length; at += 1) {
    const found = ordinalAt(words, at);
    if (!found) continue;
    const left = [...words.slice(0, at), ...words.slice(found.next)];
    return { nth: found.value, rest: left.map(({ word }) => word).join(" ") };
  }
  return undefined;
}

/**
 * The batch at that place among those running of the name; the one that runs where the others of
 * its name are over. Empty where there is none at that place.
 */
function nthOf({ nth, rest }: Nth, things: Things, context: Surroundings): Ref[] {
  const refs = bearingEach(rest, { batches: things.batches, loads: [] }, context);
  const owners = things.batches.filter(({ id }) => refs.some((ref) => isOf(ref, id)));
  const before = context.onRecord?.batches ?? [];
  const named = bearingEach(rest, { batches: before, loads: [] }, context);
  const over = before.filter(({ id }) => named.some((ref) => isOf(ref, id))).length;
  const only = owners.length === 1 && over >= nth ? owners[0] : undefined;
  const meant = owners[nth - 1] ?? only;
  return meant ? refs.filter((ref) => isOf(ref, meant.id)) : [];
}

function isOf(ref: Ref, owner: string): boolean {
  return "owner" in ref && ref.owner === owner;
}

/**
 * What a name stands for; empty where it fits nothing. `record` where finished batches may be meant
 * too.
 */
export function meantBy(name: string, context: Surroundings, record = false): Meant {
  const { running: batches, loads = [] } = context;
  const said = wordsIn(name);
  const nth = nthIn(name);
  const running = bearingEach(name, { batches, loads }, context);
  const of = nth && running.length === 0 ? nthOf(nth, { batches, loads }, context) : running;
  const all = record ? context.onRecord : undefined;
  return {
    running: of,
    recorded: all && of === running ? bearingEach(name, all, context) : of,
    vessels: inVessel(said, context),
    parts: once(batches.flatMap((batch) => partsOf(said, batch, context))),
    ...sortsIn(name.toLowerCase()),
  };
}
