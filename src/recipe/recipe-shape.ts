/**
 * The shape of a recipe as the kitchen uses it and a batch keeps a copy of it. Quantities are kept
 * as written in the file and as numbers in the unit their name ends in. Unknown keys are accepted,
 * so that a copy made by another version can still be read.
 */
import * as z from "zod/mini";
import { GAUGE_KINDS, JAR_SIZES, METHODS, PACKS, PROVENANCES, STAGE_KINDS } from "./choices.ts";

export type Infer<S extends z.ZodMiniType> = z.infer<S>;

const text = z.string();
/** Cannot be mistaken for a built-in key of an object. */
const id = z.string().check(z.regex(/^[a-z][a-z0-9]*(-[a-z0-9]+)*$/), z.maxLength(80));
const positive = z.number().check(z.positive(), z.maximum(1e6));
const minutes = z.number().check(z.nonnegative(), z.maximum(1e7));
const fahrenheit = z.number().check(z.minimum(-100), z.maximum(1000));

export const jarSize = z.enum(JAR_SIZES);
export const pack = z.enum(PACKS);
const method = z.enum(METHODS);
const cannerMethod = z.enum(["boiling-water", "steam", "pressure", "low-temperature"]);

/** What a food is to the safety rules. */
export const foodClass = z.enum([
  "acidified",
  "acid",
  "low-acid",
  "tomato",
  "jam",
  "ferment",
  "seed",
]);

export const ingredientRole = z.enum([
  "produce",
  "acid",
  "salt",
  "sugar",
  "water",
  "spice",
  "lime",
  "thickener",
  "fat",
  "other",
]);

/** What a stage occupies, for planning. */
export const stageUse = z.enum(["burner", "refrigerator", "pot"]);

/** Where a figure was published; `memory` names the part that was not checked there. */
const source = z.object({
  publication: text,
  guide: z.optional(text),
  edition: z.optional(text),
  memory: z.optional(text),
});

/** Where a row of a table stands. `memory` names the part that is remembered. */
export const locator = z.extend(source, {
  section: z.optional(text),
  table: z.optional(text),
  page: z.optional(text),
  /** What a different edition or copy prints instead. */
  disagrees: z.optional(text),
});

export const ingredient = z.object({
  id,
  name: text,
  /** As written: `4 cups`, `6 lb`. Absent where the amount is only given per jar. */
  amount: z.optional(text),
  /** As written, for each jar of a size: `{ pint: "1 tbsp" }`. */
  perJar: z.optional(z.partialRecord(jarSize, text)),
  role: ingredientRole,
  optional: z.optional(z.boolean()),
  /** Acetic acid, percent weight by volume, for vinegar. */
  strengthPercent: z.optional(z.number().check(z.minimum(0), z.maximum(100))),
  /** Which container or soak the amount belongs to, where there are several. */
  into: z.optional(text),
  /** The pack it belongs to; absent, to all. */
  pack: z.optional(pack),
});

/** After which stage, and how soon or late; minutes count from that stage's end. */
export const after = z.object({
  stage: id,
  atLeastMinutes: z.optional(minutes),
  atMostMinutes: z.optional(minutes),
});

export const stage = z.object({
  id,
  kind: z.enum(STAGE_KINDS),
  /** Two or three words for shelves and logs: `salt and chill`. */
  title: text,
  /** What is said when the stage's turn comes: one or two short sentences. */
  say: text,
  /** Stages that must be complete before; an absent list means the stage written above. */
  after: z.array(after),
  /** `word`: waits for a person to start it (a syrup that may cook any time during a long rest). */
  start: z.enum(["auto", "word"]),
  /** Usual length for a batch of the recipe's own size, and what each pound beyond it adds. */
  typicalMinutes: minutes,
  minutesPerLb: z.optional(minutes),
  /** Shortest and longest time, where the stage has a window. */
  window: z.optional(z.object({ minMinutes: minutes, maxMinutes: minutes })),
  /** What a heat stage heats up to, and how long it is held there. */
  heat: z.optional(
    z.object({
      until: z.union([
        z.enum(["boil", "simmer", "jelling-point"]),
        z.object({ temperatureF: fahrenheit }),
      ]),
      holdMinutes: minutes,
    }),
  ),
  /** What is said once the whole was said that day; its title where nothing is written. */
  short: z.optional(text),
  /** What is said when it is done; its title and "done" where nothing is written. */
  done: z.optional(text),
  /** Which pot or place, as people name it: `brine`, `syrup`, `crock`. */
  pot: z.optional(text),
  /** Room or liquid temperature for a long stage; outside it, quality suffers. */
  temperatureF: z.optional(z.object({ min: fahrenheit, max: fahrenheit })),
  /** Recurring checks of a long stage: a cron expression and what to say. */
  checks: z.optional(z.array(z.object({ cron: text, say: text }))),
  /** Ids of the critical factors asked here. */
  asks: z.array(id),
  /** Cautions said when the stage begins. */
  cautions: z.array(text),
  uses: z.array(stageUse),
  /** True where the work needs hands throughout; a rest or a pot coming to a boil does not. */
  attended: z.boolean(),
  /** True for a stage that a person may leave out (an optional soak). */
  optional: z.optional(z.boolean()),
  /** Packs and methods the stage belongs to; absent, to all. See `recipeFor`. */
  onlyFor: z.optional(
    z.object({ packs: z.optional(z.array(pack)), methods: z.optional(z.array(method)) }),
  ),
  /** Minutes somebody wrote into a process stage: never used, and found by the check. */
  writtenMinutes: z.optional(minutes),
});

/**
 * What a factor is answered with. `percent` holds from `least` upward, `inches` at the recipe's
 * headspace; in a choice, the first word of each side is offered, and the others mean the same.
 */
const factorAnswer = z.union([
  z.object({ type: z.literal("percent"), least: positive }),
  z.object({ type: z.literal("inches") }),
  z.object({ type: z.literal("choice"), right: z.array(text), wrong: z.array(text) }),
]);

/** Something that must be right for the jar to be safe, and how it is asked. */
export const criticalFactor = z.object({
  id,
  /** Asks for a value; without `answer`, a yes-or-no question that a yes confirms. */
  ask: text,
  /** As it is asked once the whole was asked that day. */
  askShort: z.optional(text),
  answer: z.optional(factorAnswer),
  /** The same thing serves every lot of the recipe: asked once for all that have begun. */
  shared: z.optional(z.boolean()),
  /** What to do where it does not hold: before the canner, and once the jars are out of it. */
  otherwise: z.optional(text),
  later: z.optional(text),
  /** Whole clauses that confirm it, for a factor that only this recipe has. */
  words: z.optional(z.array(text)),
  /**
   * Where it matters; sterile jars matter only where the process is shorter than this many minutes.
   */
  onlyFor: z.optional(
    z.object({
      methods: z.optional(z.array(method)),
      packs: z.optional(z.array(pack)),
      processUnderMinutes: z.optional(minutes),
    }),
  ),
  source: text,
});

/** A way of processing this recipe: a method and the table that gives its times. */
export const processOption = z.object({
  method: cannerMethod,
  pack,
  /** Key of the table in `recipes/tables.yaml`. */
  table: id,
  /** Minutes somebody wrote here instead of a table: never used, and found by the check. */
  writtenMinutes: z.optional(minutes),
});

const jarCount = z.object({ count: positive, size: jarSize });

export const recipe = z.object({
  id,
  title: text,
  /** What it goes by in the kitchen, where its title is longer: "beets". */
  called: z.optional(text),
  /** Everyday names, lower case. */
  names: z.array(text),
  class: foodClass,
  source,
  /** Disagreements between sources, what comes from memory, variants. */
  note: z.optional(text),
  /** What it is made from, and how much of it makes how many jars. */
  yield: z.object({
    produce: text,
    weightLb: positive,
    jars: z.optional(jarCount),
    /** Produce for a canner load, as published: 7 quarts, 9 pints. */
    loads: z.optional(z.array(z.extend(jarCount, { weightLb: positive }))),
  }),
  /** `proportional`, or `one-batch` where a larger pot would not set or ferment right. */
  scaling: z.enum(["proportional", "one-batch"]),
  /** Inches; absent where nothing is put in jars. */
  headspaceIn: z.optional(positive),
  /** Jar sizes it may be put in, smallest first. */
  jars: z.array(jarSize),
  ingredients: z.array(ingredient),
  critical: z.array(criticalFactor),
  /** The first is the default. Empty: no shelf-stable process. */
  processes: z.array(processOption),
  /** How it is kept where it has no canner process, or none is chosen. */
  keptAs: z.enum(["refrigerator", "ferment", "seed", "dry"]),
  stages: z.array(stage).check(z.minLength(1)),
  /** `tested` names a published source; anything else is a refrigerator food. */
  tested: z.boolean(),
  /** The dangers for which the library keeps a person's own recipe off the shelf, untested. */
  heldBack: z.optional(text),
});

/** The tested process as looked up for one load: everything the log must keep of it. */
export const processTerms = z.object({
  method: cannerMethod,
  pack,
  jar: jarSize,
  /** The tested jar whose time is used: the same, or the next larger one. */
  jarTested: jarSize,
  minutes: z.number().check(z.positive(), z.maximum(600)),
  /** Gauge pressure, pounds per square inch; null where the method has none. */
  pressurePsi: z.nullable(z.number().check(z.positive(), z.maximum(25))),
  gauge: z.nullable(z.enum(GAUGE_KINDS)),
  altitudeFt: z.number().check(z.minimum(-1500), z.maximum(30_000)),
  /** How far the altitude may be off, feet; missing where it was taken as exact. */
  altitudeUncertaintyFt: z.optional(z.number().check(z.nonnegative(), z.maximum(30_000))),
  /** The altitude band the row is for, as printed: `1,001-6,000 ft`. */
  band: text,
  table: text,
  /** The locator and the reading in one line of words. */
  source: text,
  /** Where the row stands, and how it was read. Missing in journals from before they were kept. */
  locator: z.optional(locator),
  reading: z.optional(z.enum(PROVENANCES)),
  /** True where the process is under ten minutes, so jars have to be sterile. */
  sterileJars: z.boolean(),
  /** Water over the jar tops, inches; 0 for steam and pressure. */
  coverIn: z.number().check(z.nonnegative(), z.maximum(12)),
  /** Canner water when jars go in, degrees Fahrenheit. */
  waterStartF: fahrenheit,
  /** Said along with the terms where several settings were tested and none was picked. */
  note: z.optional(text),
});
