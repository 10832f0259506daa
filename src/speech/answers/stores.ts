/** What is left in the pantry, what goes first, when it may be eaten; saved seed. */
import type { CommandOf } from "../../kitchen/command.ts";
import { batchesOf, lotsOf } from "../../kitchen/meant.ts";
import { batchName, upper } from "../../kitchen/spoken-names.ts";
import { rulesOf } from "../../kitchen/stages/kinds.ts";
import type { Batch, State } from "../../kitchen/state.ts";
import { wallOf } from "../../kitchen/state.ts";
import { localFields, MINUTE_MS, MONTHS, parseIso } from "../../kitchen/time.ts";
import type { Recipe, Stage } from "../../recipe/recipe.ts";
import { countWords } from "../../reckon/number-words.ts";
import { durationWords } from "../spoken-time.ts";
import { batchInMind } from "./in-mind.ts";
import type { Answer, Known, ReadOut, StockLine } from "./known.ts";
import { atMoment } from "./time-left.ts";

/** "August 14", and its year where it is another. */
export function dayWords(state: State, day: string, now: number): string {
  const at = localFields(parseIso(`${day}T12:00:00`, state.zone) ?? 0, state.zone);
  const year = localFields(wallOf(state, now), state.zone).year;
  const date = `${MONTHS[at.month - 1]} ${at.day}`;
  return at.year === year ? date : `${date}, ${at.year}`;
}

function named({ title, variety }: { title: string; variety: string | null }): string {
  const name = title.charAt(0).toLowerCase() + title.slice(1);
  return variety ? `${variety} ${name}` : name;
}

function stockSentence(state: State, line: StockLine, now: number): string {
  const by = `best by ${dayWords(state, line.by, now)}`;
  const jars = countWords(line.left, line.jar ?? "jar");
  return `${jars} of ${named(line)}, in the ${line.place}, ${by}.`;
}

/** More than this are read out a few at a time. */
const LINES_A_PAGE = 3;

/** A list a few sentences at a time. */
export function inPages(sentences: readonly string[], size = LINES_A_PAGE): ReadOut {
  const pages: string[] = [];
  for (let at = 0; at < sentences.length; at += size) {
    const more = at + size < sentences.length ? " Say more for the rest." : "";
    pages.push(
      `${sentences
        .slice(at, at + size)
        .map(upper)
        .join(" ")}${more}`,
    );
  }
  return { pages, paced: false };
}

export function pantryAnswer(
  state: State,
  { slots, ref }: CommandOf<"pantry">,
  now: number,
  known: Known,
): Answer {
  const { lines, eatFirst, throwOut } = known.pantry();
  const meant = new Set(lotsOf(state, ref?.recorded ?? []).map(({ lot }) => lot.id));
  const asked = slots.target === undefined ? lines : lines.filter(({ batch }) => meant.has(batch));
  const left = asked.filter((line) => line.left > 0);
  if (left.length === 0) {
    const what = slots.target === undefined ? "" : ` of ${slots.target}`;
    return `I have no jars${what} on record.`;
  }
  const bad = left.filter(({ batch }) => throwOut.includes(batch));
  const first = left.find(({ batch }) => eatFirst.includes(batch));
  return inPages([
    ...bad.map((line) => `Past its date, so don't eat it: ${named(line)}, in the ${line.place}.`),
    ...(first && left.length > 1 ? [`Eat the ${named(first)} first.`] : []),
    ...left.filter((line) => !bad.includes(line)).map((line) => stockSentence(state, line, now)),
  ]);
}

function hasName(seed: { crop: string; variety: string | null }, target: string): boolean {
  const name = `${seed.variety ?? ""} ${seed.crop}`.toLowerCase();
  return target.split(" ").some((word) => name.includes(word.replace(/s$/, "")));
}

export function seedsAnswer(
  state: State,
  { slots: { target } }: CommandOf<"seeds">,
  now: number,
  known: Known,
): Answer {
  const lots = known.seeds().filter((lot) => target === undefined || hasName(lot, target));
  if (lots.length === 0) {
    const life = target === undefined ? undefined : known.seedLife(target);
    const none = `I have no${target ? ` ${target}` : ""} seed on record.`;
    if (!life) return none;
    const [short, long] = life;
    const years = short === long ? countWords(short, "year") : `${short} to ${long} years`;
    return `${none} Kept cool and dry it's said to last ${years}; a germination test tells.`;
  }
  return inPages(
    lots.map((lot) => {
      const test = lot.tests.at(-1)?.sentence ?? "no germination test yet";
      const name = [lot.variety, lot.crop].filter(Boolean).join(" ");
      return `${name} seed, saved ${dayWords(state, lot.saved, now)}: ${test}.`;
    }),
  );
}

/** The stage that makes it ready: a cure, else a ferment, whose end is found by looking. */
function readying(stages: readonly Stage[]): Stage | undefined {
  return (
    stages.find((one) => rulesOf(one).date === "from") ??
    stages.find((one) => !rulesOf(one).plan.foreseeable)
  );
}

function windowWords({ window }: Stage): string {
  if (!window) return "some time";
  const [from, to] = [window.minMinutes, window.maxMinutes].map((m) =>
    durationWords(m * MINUTE_MS),
  );
  return from === to ? `${from}` : `${from} to ${to}`;
}

function ofRecipe(recipe: Recipe): string {
  const stage = readying(recipe.stages);
  if (!stage) {
    const sealed =
      recipe.processes.length > 0 ? "As soon as its seals are checked" : "When it's done";
    return `${sealed}; ${recipe.title.toLowerCase()} don't have to stand.`;
  }
  return `${recipe.title}: ${windowWords(stage)} first, for the ${stage.title}.`;
}

function ofBatch(state: State, batch: Batch, now: number): string {
  const spec = readying(batch.recipe.stages);
  const run = spec && batch.stages.find(({ id }) => id === spec.id);
  const begun = run?.startedAt;
  if (!spec?.window || !run || begun === undefined) return ofRecipe(batch.recipe);
  const at = begun + spec.window.minMinutes * MINUTE_MS;
  const name = upper(batchName(batch));
  if (at <= now) return `${name}: now. ${upper(spec.title)} has had its ${windowWords(spec)}.`;
  return `${name}: ${atMoment(state, at, now)} at the earliest, after ${windowWords(spec)}.`;
}

export function readyWhen(
  state: State,
  { slots, ref }: CommandOf<"ready-when">,
  now: number,
  { library }: Known,
): string {
  const recorded = batchesOf(state, ref?.recorded ?? []);
  const batch = slots.target === undefined ? batchInMind(state, undefined) : recorded.at(-1);
  if (batch) return ofBatch(state, batch, now);
  const recipe = slots.recipe === undefined ? undefined : library.recipes.get(slots.recipe);
  return recipe ? ofRecipe(recipe) : "Of which recipe? Say its name.";
}
