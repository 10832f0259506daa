import type { Context } from "../context.ts";
import { begin } from "../intents/begin.ts";
import { numberInWords } from "./spoken-words.ts";

/** What can be named and counted at this moment, besides what the context holds. */
export type SpokenMoment = {
  /** Stages, pots and canners that may be mentioned now: "brine", "canner". */
  things?: readonly string[];
  /** Pots that wait to be put on. */
  pots?: readonly string[];
  /** Ingredients whose amount may be asked. */
  ingredients?: readonly string[];
  /** Names a new timer may be given, besides those of what is running. */
  labels?: readonly string[];
  /** Highest number of jars; 9 where missing. */
  mostJars?: number;
  /** Lowest and highest reading of a gauge, in the context's unit; 5 to 18 psi where missing. */
  pressure?: readonly [number, number];
  /** Lowest and highest temperature, in the context's unit; 170 to 220 F where missing. */
  temperature?: readonly [number, number];
  /** How many names of a recipe are listened for; 2 where missing, 0 for no recipes at all. */
  recipeNames?: number;
};

const MOST_JARS = 9;
const PRESSURE = { psi: [5, 18], kPa: [35, 125] } as const;
const TEMPERATURE = { F: [170, 220], C: [75, 105] } as const;
/** Gauges in kilopascals are read in steps of five. */
const KPA_STEP = 5;
/**
 * Timers are set to any minute up to twenty, and beyond that to these: others sound too similar.
 */
const ROUND_MINUTES = [25, 30, 35, 40, 45, 50, 55, 60, 75, 90];
/** The most words in a name that anybody uses for a recipe. */
const LONGEST_NAME = 5;
const ORDINALS = ["first", "second", "third", "fourth", "fifth", "sixth"];

function oneOf(all: readonly string[]): string {
  return `( ${[...new Set(all)].join(" | ")} )`;
}

/** Pots that are started by name. */
const POTS = (begin.lists?.pot ?? "").split("|").map((phrase) => phrase.trim().split(" ")[0] ?? "");

/** In lower case and without the article, where the recognizer can handle it. */
function spoken(names: readonly string[]): string[] {
  return names
    .map((name) =>
      name
        .toLowerCase()
        .replace(/[-,.]+/g, " ")
        .replace(/\s+/g, " ")
        .trim(),
    )
    .map((name) => name.replace(/^(?:the|a|an) /, ""))
    .filter((name) => /^[a-z][a-z' ]*$/.test(name));
}

/** "the beans are", "the brine is"; a variety may be either. */
function being(names: readonly string[], either: readonly string[]): string[] {
  return names.flatMap((name) => {
    if (either.includes(name)) return [`${name} is`, `${name} are`];
    return /s$/.test(name) && !/(?:ss|us)$/.test(name) ? `${name} are` : `${name} is`;
  });
}

function range(from: number, to: number, step = 1): string[] {
  const said: string[] = [];
  for (let value = from; value <= to; value += step) said.push(numberInWords(value));
  return said;
}

/** "one hundred eighty two", and "one eighty two" for short. */
function degrees([from, to]: readonly [number, number]): string[] {
  return range(from, to).flatMap((said) => {
    const short = said.replace(" hundred", "");
    return short === said || / hundred$/.test(said) ? [said] : [said, short];
  });
}

/** Feet above the sea as people say them: "six thousand two hundred", "sixty two hundred". */
function feet(): string {
  const digit = oneOf(range(1, 9));
  const hundreds = oneOf(range(11, 99).filter((said) => !/^(?:\w+ty|ten)$/.test(said)));
  return `( ${oneOf(range(1, 12))} thousand [ ${digit} hundred ] | ${hundreds} hundred )`;
}

/** The names a batch goes by: its variety, its recipe's commonest name, and the crop's. */
function batchNames({ recipe, title, variety }: Context["running"][number], context: Context) {
  const known = context.recipes.find(({ id }) => id === recipe);
  const [common] = known?.names ?? [];
  const name = common ?? title ?? known?.title ?? recipe;
  const crop = name.split(" ").at(-1) ?? name;
  return [...(variety ? [variety, `${variety} ${crop}`] : []), name, crop];
}

/** A recipe's title and its first everyday names, without the long ones. */
function recipeNames(context: Context, most: number): string[] {
  return context.recipes.flatMap(({ title, names }) => {
    const short = spoken([title, ...names]).filter(
      (name) => name.split(" ").length <= LONGEST_NAME,
    );
    return short.slice(0, most);
  });
}

function minutes(): string {
  const counted = [...range(2, 20), ...ROUND_MINUTES.map(numberInWords)];
  const round = ["one minute", "half an hour", "an hour", "an hour and a half", "two hours"];
  return `( ${oneOf(counted)} minutes | ${round.join(" | ")} )`;
}

/**
 * The right-hand sides of the slots that can be spoken now, by `slot:kind`, by kind, or by the name
 * of a list. Phrases with a kind that is missing here cannot be spoken.
 */
export function slotRules(context: Context, moment: SpokenMoment): Map<string, string> {
  const timers = spoken(context.timers.map(({ label }) => label));
  const batches = context.running.flatMap((batch) => batchNames(batch, context));
  const targets = spoken([...batches, ...(moment.things ?? [])]);
  const labels = [...targets, ...spoken(moment.labels ?? [])];
  const psi = context.pressureUnit !== "kPa";
  const [low, high] = moment.pressure ?? PRESSURE[psi ? "psi" : "kPa"];
  const jar = oneOf(range(1, moment.mostJars ?? MOST_JARS));
  const length = minutes();
  const rules: [string, string[] | string][] = [
    ["target", targets],
    [
      "target:being",
      being(targets, spoken(context.running.flatMap(({ variety }) => variety ?? []))),
    ],
    ["open", [...targets, ...timers]],
    ["thing", labels],
    ["person", labels],
    ["known-timer", timers],
    ["pot", spoken(moment.pots ?? []).filter((pot) => POTS.includes(pot))],
    ["asked", spoken(moment.ingredients ?? []).map((what) => `how much ${what}`)],
    ["lot", recipeNames(context, moment.recipeNames ?? 2)],
    ["whole", jar],
    ["whole:several", range(2, Math.max(2, moment.mostJars ?? MOST_JARS))],
    ["jars", `${jar} [ and ${jar} ]`],
    ["value:number", range(low, high, psi ? 1 : KPA_STEP)],
    ["feet:number", feet()],
    ["temperature", degrees(moment.temperature ?? TEMPERATURE[context.temperatureUnit ?? "F"])],
    ["size", "( pints | quarts | half pints )"],
    ["duration", length],
    ["length", length],
    ["more", `${oneOf(range(2, 20))} more minutes`],
    ["ago", `( a minute | ${oneOf([...range(2, 20), "thirty"])} minutes ) ago`],
  ];
  return new Map(
    rules.flatMap(([name, said]) => {
      const body = typeof said === "string" ? said : said.length > 0 ? oneOf(said) : "";
      return body === "" ? [] : [[name, body]];
    }),
  );
}

/** Words of a choice that no other choice has, which are enough to pick it. */
function ownWords(choice: string, all: readonly string[]): string[] {
  const others = all.filter((one) => one !== choice).flatMap((one) => one.split(" "));
  return choice.split(" ").filter((word) => word.length > 3 && !others.includes(word));
}

/** The answers to the open question, besides a yes, a no or a report. */
export function answersTo(question: Context["question"]): string[] {
  if (!question) return [];
  const choices = spoken(question.choices ?? []);
  if (choices.length > 0) {
    const places = ORDINALS.slice(0, choices.length).map((place) => `the ${place} [ one ]`);
    const named = choices.flatMap((choice) => [choice, ...ownWords(choice, choices)]);
    const several = choices.length === 2 ? ["both", "neither"] : ["all of them", "none of them"];
    return [`[ the ] ${oneOf(named)}`, ...places, ...several];
  }
  if (question.kind === "number") return [oneOf(["zero", ...range(1, 20)])];
  if (question.kind === "jars") return ["none of them"];
  return [];
}
