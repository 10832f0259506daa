import { validate } from "node-cron";
import { z } from "zod";
import { parseAmount } from "./amount.ts";
import { parseDuration, parseWindow } from "./duration.ts";
import { JAR_SIZES, METHODS, PACKS, PROVENANCES, STAGE_KINDS } from "./recipe.ts";
import { foodClass, ingredientRole, stageUse } from "./recipe-shape.ts";

/**
 * The shape of a recipe file, before defaults are filled in. Every key is known or refused;
 * every duration carries its unit; every text is plain.
 */

/** Control characters, escape sequences, and characters that reorder or hide text. */
const UNPRINTABLE =
  /[\u0000-\u001f\u007f-\u009f\u061c\u200b-\u200f\u2028-\u202f\u2060-\u206f\ufeff]/;

const text = (max: number) =>
  z
    .string()
    .trim()
    .min(1)
    .max(max)
    .refine((value) => !UNPRINTABLE.test(value), {
      error: "has a control or hidden character; write plain text on one line",
    });

/** When a recurring check is due, in the five fields that cron reads: "0 9 * * 1,3,5". */
const cronExpression = text(60).refine((written) => {
  return written.trim().split(/\s+/).length === 5 && validate(written);
}, 'write five cron fields: minute hour day month weekday, such as "0 9 * * 1,3,5"');

const id = z
  .string()
  .max(60)
  .regex(/^[a-z][a-z0-9]*(-[a-z0-9]+)*$/, "an id is small letters, digits and hyphens")
  .refine((value) => value !== "constructor", { error: "this id is taken by the language" });

const duration = z
  .string("a duration needs its unit, such as `10 min` or `3 h`")
  .transform((value, context) => {
    const minutes = parseDuration(value);
    if (minutes !== undefined) return minutes;
    context.addIssue("is not a duration from above zero to ten years, such as `10 min` or `3 h`");
    return z.NEVER;
  });

const window = z
  .string("a window needs units, such as `3 h to 4 h`")
  .transform((value, context) => {
    const found = parseWindow(value);
    if (found !== undefined) return found;
    context.addIssue("is not a window of time, such as `3 h to 4 h` or `up to 1 year`");
    return z.NEVER;
  });

const amount = text(60).refine((value) => parseAmount(value) !== undefined, {
  error: "is not an amount; write a number and a unit, such as `4 1/2 cups`",
});

const jar = z.enum(JAR_SIZES);
const pack = z.enum(PACKS);

const sourceSchema = z.strictObject({
  publication: text(160),
  guide: text(80).optional(),
  edition: text(40).optional(),
  memory: text(300).optional(),
});

/** Where a table or one of its rows stands, beyond what its source says. */
const locatorSchema = sourceSchema.partial().extend({
  section: text(80).optional(),
  table: text(80).optional(),
  page: text(20).optional(),
  disagrees: text(300).optional(),
});
const reading = z.enum(PROVENANCES);

const ingredient = z.strictObject({
  id,
  name: text(120),
  amount: amount.optional(),
  perJar: z.partialRecord(jar, amount).optional(),
  role: z.enum(ingredientRole.options),
  optional: z.boolean().optional(),
  strengthPercent: z.number().positive().max(100).optional(),
  into: text(40).optional(),
  pack: pack.optional(),
});

const temperatureF = z.number().min(-40).max(400);

const afterItem = z.union([
  id,
  z.strictObject({ stage: id, atLeast: duration.optional(), atMost: duration.optional() }),
]);

const heatUntil = z.union([
  z.enum(["boil", "simmer", "jelling-point"]),
  z.strictObject({ temperatureF }),
]);

const stage = z.strictObject({
  id: id.optional(),
  kind: z.enum(STAGE_KINDS),
  title: text(40).optional(),
  say: text(400).optional(),
  /** Said instead once the whole was said that day; 20 words at most. */
  short: text(120).optional(),
  /** Said when it is done: `Washed and sliced.` */
  done: text(60).optional(),
  after: z.union([afterItem, z.array(afterItem).max(8)]).optional(),
  start: z.enum(["auto", "word"]).optional(),
  typical: duration.optional(),
  perLb: duration.optional(),
  window: window.optional(),
  until: heatUntil.optional(),
  hold: duration.optional(),
  pot: text(30).optional(),
  temperatureF: z.strictObject({ min: temperatureF, max: temperatureF }).optional(),
  checks: z
    .array(z.strictObject({ cron: cronExpression, say: text(240) }))
    .max(8)
    .optional(),
  asks: z.array(id).max(12).optional(),
  cautions: z.array(id).max(6).optional(),
  uses: z.array(z.enum(stageUse.options)).max(3).optional(),
  attended: z.boolean().optional(),
  optional: z.boolean().optional(),
  packs: z.array(pack).min(1).max(2).optional(),
  methods: z.array(z.enum(METHODS)).min(1).max(8).optional(),
  minutes: z.union([z.number().positive().max(6000), duration]).optional(),
});

const processOption = z.strictObject({
  method: z.enum(["boiling-water", "steam", "pressure", "low-temperature"]),
  pack,
  table: id.optional(),
  minutes: z.number().positive().max(6000).optional(),
});

const factor = z.strictObject({
  id,
  ask: text(200),
  words: z.array(text(60)).max(20).optional(),
  onlyFor: z
    .strictObject({
      methods: z.array(z.enum(METHODS)).max(8).optional(),
      packs: z.array(pack).max(2).optional(),
      processUnderMinutes: z.number().positive().max(600).optional(),
    })
    .optional(),
  source: text(200),
});

export const recipeSchema = z.strictObject({
  id,
  title: text(80),
  called: text(40).optional(),
  names: z.array(text(60)).max(40).default([]),
  class: z.enum(foodClass.options),
  tested: z.boolean().default(true),
  source: sourceSchema.optional(),
  note: text(1200).optional(),
  yield: z.strictObject({
    produce: text(60),
    weightLb: z.number().positive().max(2000),
    jars: z.strictObject({ count: z.number().positive().max(500), size: jar }).optional(),
    loads: z
      .array(
        z.strictObject({
          count: z.number().positive().max(500),
          size: jar,
          weightLb: z.number().positive().max(2000),
        }),
      )
      .max(4)
      .optional(),
  }),
  scaling: z.enum(["proportional", "one-batch"]).default("proportional"),
  headspaceIn: z.number().positive().max(4).optional(),
  jars: z.array(jar).max(JAR_SIZES.length).default([]),
  ingredients: z.array(ingredient).min(1).max(60),
  factors: z.array(factor).max(20).default([]),
  processes: z.array(processOption).max(20).default([]),
  keptAs: z.enum(["refrigerator", "ferment", "seed", "dry"]).default("refrigerator"),
  stages: z.array(stage).min(1).max(60),
});

export type RecipeFile = z.infer<typeof recipeSchema>;

const bandMinutes = z.array(z.number().int().positive().max(600)).min(1).max(4);
const gaugePsi = z.array(z.number().positive().max(20).nullable());

export const tablesSchema = z.strictObject({
  top: z.strictObject({
    bands: z.number().positive(),
    dial: z.number().positive(),
    weighted: z.number().positive(),
  }),
  schedules: z.record(
    id,
    z.strictObject({
      dial: gaugePsi.length(4).optional(),
      weighted: gaugePsi.length(2).optional(),
    }),
  ),
  sources: z.record(id, sourceSchema),
  formulas: z.record(
    id,
    z.strictObject({
      produceLb: z.number().positive(),
      vinegarCups: z.number().nonnegative().optional(),
      citrusCups: z.number().positive().optional(),
      waterCups: z.number().nonnegative().optional(),
      saltCups: z.number().positive().optional(),
      besides: z.record(text(40), z.number().positive()).optional(),
      lowAcidLb: z.number().positive().optional(),
      rests: z.record(id, window).optional(),
      fermentF: z.strictObject({ min: temperatureF, max: temperatureF }).optional(),
    }),
  ),
  neighbors: z.record(
    id,
    z.strictObject({
      foods: z.array(text(40)).min(1).optional(),
      words: z.array(text(40)).min(1).optional(),
      why: text(300),
      source: text(160),
    }),
  ),
  tables: z.record(
    id,
    z.strictObject({
      food: text(120),
      of: z.array(text(40)).min(1),
      notOf: z.array(id).min(1).optional(),
      says: z.array(text(40)).min(1).optional(),
      mixed: z.boolean().optional(),
      classes: z.array(recipeSchema.shape.class).min(1),
      method: z.enum(["boiling-water", "pressure", "low-temperature"]),
      packs: z.array(pack).min(1),
      headspaceIn: z.number().positive().max(2),
      bands: z.union([z.literal(3), z.literal(4)]).optional(),
      formula: id.optional(),
      pasteurizes: z.boolean().optional(),
      rows: z
        .array(
          z.strictObject({
            jars: z.array(jar).min(1),
            minutes: bandMinutes,
            schedule: id.optional(),
            locator: locatorSchema.optional(),
            reading: reading.optional(),
          }),
        )
        .min(1),
      source: id,
      locator: locatorSchema,
      reading,
    }),
  ),
});

export type TablesFile = z.infer<typeof tablesSchema>;
