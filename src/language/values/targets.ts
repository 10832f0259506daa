import type { Context } from "../context.ts";
import { editDistance, soundKey } from "../spelling/sound.ts";
import type { Word } from "../words.ts";
import { KITCHEN_THINGS, PICKED, PICKERS } from "./kitchen-things.ts";
import { HEARD_AS, RECIPE_NAMES, VAGUE_NAMES } from "./recipe-names.ts";
import { ordinalAt, type Parsed, smallWholeAt } from "./spoken-numbers.ts";

/** What a name stands for; several where it fits several. */
type Meaning = { recipes: string[]; batches: string[]; timers: string[] };

/**
 * A name found in the words: as said (lower case, no article), what it means, whether it is exact.
 */
export type Target = { said: string; meaning: Meaning; exact: boolean };

type Entry = Meaning & { name: string; key: string };

/** The words of the phrases, which are taken to have been heard right. */
export type PlainWords = { has(word: string): boolean };

/** All names that mean something now. */
export type Names = {
  byName: Map<string, Entry>;
  /** Names that may be misheard or misspelled, running ones first. */
  fuzzy: Entry[];
  /** Recipes by what they sound like. */
  byKey: Map<string, Entry[]>;
  things: Set<string>;
  /** How many batches and timers those are. */
  running: number;
};

const THINGS = new Set(KITCHEN_THINGS);
const PICKER_WORDS = new Set(PICKERS);
const PICKED_WORDS = new Set(PICKED);
const ARTICLES = new Set(["the", "my", "our", "those", "these", "that", "this", "your", "all"]);
const HEADS = new Set([
  "batch",
  "lot",
  "timer",
  "pot",
  "ones",
  "one",
  "jars",
  "crock",
  "kettle",
  "pan",
]);
const LONGEST_NAME = 7;
/** From this many consonants up, names that sound the same count as the same. */
const LONG_KEY = 4;
const LONG_NAME = 9;

function simplify(name: string): string {
  return name
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, " ")
    .trim();
}

function enter(names: Names, said: string, kind: keyof Meaning, id: string): Entry | undefined {
  const name = simplify(said);
  if (name === "") return undefined;
  let entry = names.byName.get(name);
  if (!entry) {
    entry = { name, key: soundKey(name), recipes: [], batches: [], timers: [] };
    names.byName.set(name, entry);
  }
  if (!entry[kind].includes(id)) entry[kind].push(id);
  return entry;
}

const recipeNames = new WeakMap<object, Names>();

/** Names of the recipes alone; kept, since they seldom change. */
function namesOfRecipes(recipes: Context["recipes"]): Names {
  const known = recipeNames.get(recipes);
  if (known) return known;
  const names = emptyNames();
  for (const [id, all] of Object.entries(RECIPE_NAMES)) {
    for (const name of all) enter(names, name, "recipes", id);
  }
  for (const recipe of recipes) {
    for (const name of [recipe.title, recipe.id, ...recipe.names]) {
      enter(names, name, "recipes", recipe.id);
    }
  }
  for (const [name, ids] of Object.entries(VAGUE_NAMES)) {
    for (const id of ids) enter(names, name, "recipes", id);
  }
  for (const entry of names.byName.values()) {
    const alike = names.byKey.get(entry.key);
    if (alike) alike.push(entry);
    else names.byKey.set(entry.key, [entry]);
  }
  recipeNames.set(recipes, names);
  return names;
}

function emptyNames(): Names {
  return { byName: new Map(), fuzzy: [], byKey: new Map(), things: THINGS, running: 0 };
}

/** Names of the last context, which the next one usually shares. */
let last: { recipes: Context["recipes"]; signature: string; names: Names } | undefined;

const namesOf = new WeakMap<Context, Names>();

/** All names that mean something in this context. */
export function spokenNames(context: Context): Names {
  const known = namesOf.get(context);
  if (known) return known;
  const signature = JSON.stringify([context.running, context.timers]);
  if (last?.recipes !== context.recipes || last.signature !== signature) {
    last = { recipes: context.recipes, signature, names: gatherNames(context) };
  }
  namesOf.set(context, last.names);
  return last.names;
}

function gatherNames(context: Context): Names {
  const recipes = namesOfRecipes(context.recipes);
  const names: Names = {
    ...emptyNames(),
    byKey: recipes.byKey,
    running: context.running.length + context.timers.length,
  };
  const own: Names = emptyNames();
  for (const batch of context.running) enterBatch(own, recipes, batch);
  for (const timer of context.timers) enter(own, timer.label, "timers", timer.id);
  names.fuzzy = [...own.byName.values()];
  names.byName = own.byName;
  const layered = new Map(recipes.byName);
  for (const [name, entry] of own.byName) {
    const below = recipes.byName.get(name);
    layered.set(name, below ? { ...entry, recipes: below.recipes } : entry);
  }
  names.byName = layered;
  return names;
}

/** A running batch goes by its recipe's names, its variety, and both together. */
function enterBatch(own: Names, recipes: Names, batch: Context["running"][number]): void {
  enter(own, batch.id, "batches", batch.id);
  if (batch.title) enter(own, batch.title, "batches", batch.id);
  if (batch.variety) enter(own, batch.variety, "batches", batch.id);
  for (const { title, state } of batch.stages ?? []) {
    if (state === "running") enter(own, title, "batches", batch.id);
  }
  for (const entry of recipes.byName.values()) {
    if (!entry.recipes.includes(batch.recipe)) continue;
    enter(own, entry.name, "batches", batch.id);
    if (batch.variety) enter(own, `${batch.variety} ${entry.name}`, "batches", batch.id);
  }
}

function joined(words: readonly Word[], at: number, count: number): string {
  let name = words[at]?.word ?? "";
  for (let step = 1; step < count; step += 1) name += ` ${words[at + step]?.word ?? ""}`;
  return name;
}

/** The longest known name that begins exactly here, spelled right. */
function exactAt(
  words: readonly Word[],
  at: number,
  names: Names,
): Parsed<Entry | string> | undefined {
  for (let count = Math.min(LONGEST_NAME, words.length - at); count > 0; count -= 1) {
    const name = joined(words, at, count);
    const entry = names.byName.get(name);
    if (entry) return { value: entry, next: at + count };
    const single = entry ? undefined : ofOne(name, names);
    if (single) return { value: single, next: at + count };
    if (names.things.has(name)) return { value: name, next: at + count };
  }
  return undefined;
}

/** A running batch by the name of one of its pieces: "the third bean jar". */
function ofOne(name: string, names: Names): Entry | undefined {
  if (name.length < 4 || name.endsWith("s") || names.running === 0) return undefined;
  const all = [`${name}s`, `${name}es`].map((plural) => names.byName.get(plural));
  return all.find((entry) => entry !== undefined && entry.batches.length > 0);
}

/** How far a name may be from what was heard: less where it is short or has many rivals. */
function allowance(name: string, rivals: number): number {
  const byLength = name.length < 5 ? 0 : name.length < 9 ? 1 : 2;
  return rivals <= 3 ? byLength + (name.length >= 6 ? 1 : 0) : byLength;
}

function unheard(word: string): string {
  return Object.hasOwn(HEARD_AS, word) ? (HEARD_AS[word] ?? word) : word;
}

/**
 * A name misheard or misspelled, beginning here. Names of running batches and timers may be
 * further off than the recipes', which have dozens of rivals; `begun` lets recipes go by sound.
 * `plain` are the words of the phrases, which are taken to have been heard right.
 */
export function fuzzyAt(
  words: readonly Word[],
  at: number,
  names: Names,
  begun: boolean,
  plain: PlainWords,
): Parsed<Entry> | undefined {
  for (let count = Math.min(4, words.length - at); count > 0; count -= 1) {
    const said = joined(words, at, count);
    if (said.length < 3 || said.length > 40 || allPlain(words, at, count, plain)) continue;
    const value = rememberedNear(said, names, begun);
    if (value) return { value, next: at + count };
  }
  return undefined;
}

/** What was found near words before, by the names it was looked for among. */
const remembered = new WeakMap<Names, Map<string, Entry | undefined>>();
/** People say the same few thousand things; beyond that many, names are looked for anew. */
const MOST_REMEMBERED = 5000;

function rememberedNear(said: string, names: Names, begun: boolean): Entry | undefined {
  let known = remembered.get(names);
  if (!known || known.size > MOST_REMEMBERED) {
    known = new Map();
    remembered.set(names, known);
  }
  const key = begun ? `begun ${said}` : said;
  if (known.has(key)) return known.get(key);
  const found = near(said, names, begun);
  known.set(key, found);
  return found;
}

function near(said: string, names: Names, begun: boolean): Entry | undefined {
  const several = said.includes(" ");
  const mended = said.split(" ").map(unheard).join(" ");
  const entry = mended === said ? undefined : names.byName.get(mended);
  if (entry && (several || begun || entry.batches.length > 0)) return entry;
  if (said.length < 4) return undefined;
  const close = nearest(said, names.fuzzy, allowance(said, names.running));
  if (close) return close;
  const alike = names.byKey.get(soundKey(said)) ?? [];
  const bySound = begun && soundKey(said).length >= LONG_KEY;
  const limit = bySound ? said.length : allowance(said, 9) + (begun ? 1 : 0);
  const sounded = said.length >= 5 ? nearest(said, alike, limit) : undefined;
  if (sounded) return sounded;
  return begun && said.length >= 7 ? nearest(said, names.byName.values(), 1) : undefined;
}

/** True where every word is one the phrases use: heard right, not a misheard name. */
function allPlain(words: readonly Word[], at: number, count: number, plain: PlainWords): boolean {
  for (let step = 0; step < count; step += 1) {
    const word = words[at + step]?.word ?? "";
    if (!plain.has(word) && !/^\d/.test(word)) return false;
  }
  return true;
}

/** Long names that sound the same may be spelled this much further apart. */
const SAME_SOUND = 2;

/** The one nearest name within the limit; none where two of different meaning are equally near. */
function nearest(said: string, entries: Iterable<Entry>, limit: number): Entry | undefined {
  let best: Entry | undefined;
  let tied = false;
  let least = limit + 1;
  const key = soundKey(said);
  for (const entry of entries) {
    if (entry.name[0] !== said[0] && entry.key[0] !== key[0]) continue;
    const bonus = entry.key === key && said.length >= LONG_NAME ? SAME_SOUND : 0;
    const distance = editDistance(said, entry.name, limit + bonus) - bonus;
    if (distance > limit || distance > least) continue;
    tied = distance === least && best !== undefined && !sameMeaning(best, entry);
    if (distance === least && best) continue;
    best = entry;
    least = distance;
  }
  return tied ? undefined : best;
}

function sameMeaning(a: Meaning, b: Meaning): boolean {
  const ids = ({ recipes, batches, timers }: Meaning) =>
    batches.length + timers.length > 0 ? [...batches, ...timers] : recipes;
  return ids(a).join() === ids(b).join();
}

const NOTHING: Meaning = { recipes: [], batches: [], timers: [] };

function targetFrom(found: Entry | string, exact: boolean): Target {
  if (typeof found === "string") return { said: found, meaning: NOTHING, exact };
  const { recipes, batches, timers } = found;
  return { said: found.name, meaning: { recipes, batches, timers }, exact };
}

/** "the second load", "load two", "canner 2", "the big pot". */
function pickedAt(words: readonly Word[], at: number): Parsed<Target> | undefined {
  const first = words[at]?.word ?? "";
  const second = words[at + 1]?.word ?? "";
  if (PICKER_WORDS.has(first) && PICKED_WORDS.has(second)) {
    return { value: targetFrom(`${first} ${second}`, true), next: at + 2 };
  }
  if (!PICKED_WORDS.has(first)) return undefined;
  const behind = second === "number" ? at + 2 : at + 1;
  const number = smallWholeAt(words, behind);
  if (!number || number.value > 20) return undefined;
  return { value: targetFrom(`${first} ${number.value}`, true), next: number.next };
}

/** What goes by the food in it: "the beet pot", "the bean lids". */
const OF_FOOD = new Set([...HEADS, "water", "brine", "lids", "jar", "lid", "canner", "glasses"]);

/** A food named by one of it, before what it is in. */
function attributeAt(words: readonly Word[], at: number, names: Names) {
  const entry = names.byName.get(`${words[at]?.word ?? ""}s`);
  const named = entry && entry.batches.length > 0 && OF_FOOD.has(words[at + 1]?.word ?? "");
  return named ? { value: entry, next: at + 1 } : undefined;
}

const MAY_BE_ORDINAL = /^(first|second|third|.*(th|st|nd|rd))$/;
const RUNS = /^(batch|lot|run|round)$/;

/**
 * Which of several batches of a name: "second beans", "second batch of the beans", "beans, second
 * batch", "second bean batch".
 */
function nthAt(words: readonly Word[], at: number, names: Names): Parsed<Target> | undefined {
  const word = (place: number) => words[place]?.word ?? "";
  const first = /^(a|one|per|every)$/.test(word(at - 1)) ? undefined : ordinalAt(words, at);
  if (!first && !words.slice(at + 1).some(({ word }) => MAY_BE_ORDINAL.test(word)))
    return undefined;
  let from = first?.next ?? at;
  if (first && RUNS.test(word(from))) {
    from += word(from + 1) === "of" ? 2 : 1;
    while (ARTICLES.has(word(from))) from += 1;
  }
  const found = exactAt(words, from, names);
  if (!found || typeof found.value === "string") return undefined;
  const { batches } = found.value;
  let { next } = found;
  if (first && RUNS.test(word(next))) next += 1;
  if (!first) while (/^(the|my|for|of|from)$/.test(word(next))) next += 1;
  const behind = first ? undefined : ordinalAt(words, next);
  const nth = first ?? (behind && RUNS.test(word(behind.next)) ? behind : undefined);
  if (!nth || batches.length === 0) return undefined;
  const end = behind ? behind.next + 1 : next;
  const said = joined(words, at, end - at);
  const meaning = { recipes: [], batches: batches.slice(nth.value - 1, nth.value), timers: [] };
  return { value: { said, meaning, exact: true }, next: end };
}

/**
 * Names that may begin at this word, without an article or "batch of" before them and "batch" or
 * "timer" after them; the longest first. Only known names, so that talk of other things is not a
 * report.
 */
export function targetsAt(
  words: readonly Word[],
  at: number,
  names: Names,
  plain: PlainWords,
): Parsed<Target>[] {
  let start = at;
  while (ARTICLES.has(words[start]?.word ?? "")) start += 1;
  const picked = nthAt(words, start, names) ?? pickedAt(words, start);
  if (picked) return [picked];
  if (HEADS.has(words[start]?.word ?? "") && words[start + 1]?.word === "of") {
    start += 2;
    while (ARTICLES.has(words[start]?.word ?? "")) start += 1;
  }
  const exact = exactAt(words, start, names) ?? attributeAt(words, start, names);
  const fuzzy = exact ? undefined : fuzzyAt(words, start, names, false, plain);
  const found = exact ?? fuzzy;
  if (!found) return [];
  const target = targetFrom(found.value, exact !== undefined);
  const readings = [{ value: target, next: found.next }];
  const extended = exact ? extendedAt(words, found, names) : undefined;
  if (extended) readings.unshift(extended);
  for (const reading of [...readings]) {
    if (HEADS.has(words[reading.next]?.word ?? "")) {
      readings.unshift({ value: reading.value, next: reading.next + 1 });
    }
  }
  return readings;
}

/** A variety with its produce: "provider" and then "beans". */
function extendedAt(
  words: readonly Word[],
  first: Parsed<Entry | string>,
  names: Names,
): Parsed<Target> | undefined {
  const second = exactAt(words, first.next, names);
  if (!second || typeof first.value === "string") return undefined;
  const name = typeof second.value === "string" ? second.value : second.value.name;
  const { recipes, batches, timers } = first.value;
  const said = `${first.value.name} ${name}`;
  return { value: { said, meaning: { recipes, batches, timers }, exact: true }, next: second.next };
}
