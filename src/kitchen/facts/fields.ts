/**
 * What the fields of facts may hold. Ranges are wide: they keep out the impossible, so that nothing
 * computed from a fact can run away; judging what is likely is up to the deciders.
 */
import * as z from "zod/mini";
import { JAR_SIZES } from "../../recipe/recipe.ts";
import {
  type Infer,
  jarSize,
  pack,
  processOption,
  processTerms,
} from "../../recipe/recipe-shape.ts";
import { SET_UP_TOPICS } from "../questions/set-up-topic.ts";
import { isRecordable, isZone } from "../time.ts";

export const text = z.string();
export const setUpTopic = z.enum(SET_UP_TOPICS);
export const flag = z.boolean();
/** Epoch-like ms. */
export const instant = z.number().check(z.refine(isRecordable));
/** By how much a clock was set, ms: a broken one may show any year up to 2999. */
export const clockShift = z.number().check(z.gt(-32_503_680_000_000), z.lt(32_503_680_000_000));
export const count = z.int().check(z.minimum(0), z.maximum(10_000));
/** A line of a file; 0 is the file as a whole. */
export const lineNumber = z.int().check(z.minimum(0), z.maximum(1e9));
export const someJars = z.int().check(z.minimum(1), z.maximum(10_000));
/** Numbers on lids, after their lot's mark. */
export const jarNumbers = z.array(someJars);
const YEAR_MINUTES = 366 * 24 * 60;
/** How long a timer runs, or how long before an end a warning comes. */
export const minutes = z.number().check(z.positive(), z.maximum(YEAR_MINUTES));
/** What a timer is lengthened or shortened by. */
export const moreMinutes = z.number().check(z.minimum(-YEAR_MINUTES), z.maximum(YEAR_MINUTES));
export const feet = z.number().check(z.minimum(-1500), z.maximum(30_000));
/** How far an altitude may be off, feet. */
export const uncertaintyFt = z.number().check(z.nonnegative(), z.maximum(30_000));
export const psi = z.number().check(z.minimum(-20), z.maximum(100));
export const fahrenheit = z.number().check(z.minimum(-100), z.maximum(1000));
/** Of a probe, in whatever unit it has. */
export const reading = z.number().check(z.minimum(-1000), z.maximum(10_000));
export const score = z.number().check(z.minimum(1), z.maximum(5));
/** What an answer about a factor measures: percent, or inches. */
export const measured = z.number().check(z.minimum(0), z.maximum(100));
export const amount = z.number().check(z.minimum(0), z.maximum(1e6));
const season = z.int().check(z.minimum(1970), z.maximum(2999));
export const zone = z.string().check(z.refine(isZone));

/** Whether a name can be a key: never one that every object has. */
const isName = (name: string) => !(name in {});
const NAME = /^[A-Za-z0-9][A-Za-z0-9._-]{0,79}$/;
const name = () => z.string().check(z.regex(NAME), z.refine(isName));

// Names given by other facts: each refers to the same thing in every fact.

/** A batch's or a lot's: a batch's first lot has the batch's own. */
export const batchId = name();
export const lotId = name();
export const loadId = name();
/** A batch's or a load's. */
export const ownerId = name();
export const timerId = name();
export const reminderId = name();
export const seedId = name();
/** A line of the journal that cannot be relied on. */
export const sealId = name();
/** The command that a fact came from; the program's own begin with `~`. */
export const commandId = z
  .string()
  .check(z.regex(/^[A-Za-z0-9~][A-Za-z0-9._~-]{0,99}$/), z.refine(isName));
/** What came due or was asked: names with slashes between. */
export const key = z
  .string()
  .check(z.regex(/^[A-Za-z0-9][A-Za-z0-9._:~/+-]{0,299}$/), z.refine(isName));

/** Names that no fact gives: stages, factors, canners, deviation codes. */
export const word = name();

/** The ids of jars that are filled: who gave them, and the number of the first. */
export const jarIds = z.strictObject({
  writer: word,
  from: z.int().check(z.minimum(1), z.maximum(1e9)),
});

/** What was scored: `crunch`, `flavor` ... */
export const scoreName = z.string().check(z.regex(/^[a-z][a-z0-9 -]{0,39}$/), z.refine(isName));

const KINDS = new Map<z.ZodMiniType, RefKind>();
export type RefKind =
  | "batch"
  | "load"
  | "owner"
  | "timer"
  | "reminder"
  | "seed"
  | "seal"
  | "cmd"
  | "key";
KINDS.set(batchId, "batch")
  .set(lotId, "batch")
  .set(loadId, "load")
  .set(ownerId, "owner")
  .set(timerId, "timer")
  .set(reminderId, "reminder")
  .set(seedId, "seed")
  .set(sealId, "seal")
  .set(commandId, "cmd")
  .set(key, "key");

/** What a field's schema names; undefined where it names nothing. */
export function refKindOf(schema: z.ZodMiniType): RefKind | undefined {
  return KINDS.get(schema);
}

export const size = jarSize;
export const packed = pack;

export const gauge = z.strictObject({
  kind: z.enum(["dial", "weighted"]),
  /** The season (year) in which the dial was last tested, and by how much it reads high, psi. */
  testedSeason: z.optional(season),
  readsHighPsi: z.optional(psi),
  /** The season in which it was said not to be tested. */
  untestedSeason: z.optional(season),
});
export type GaugeRecord = Infer<typeof gauge>;

export const canner = z.strictObject({
  id: word,
  name: text,
  /** How many jars of each size it holds. */
  holds: z.partialRecord(z.enum(JAR_SIZES), count),
  gauge: z.optional(gauge),
});
export type Canner = Infer<typeof canner>;

export const lot = z.strictObject({
  variety: z.nullable(text),
  /** Of the food table, where they were named. */
  foods: z.optional(z.array(text)),
  weightLb: z.nullable(amount),
  pickedAt: z.nullable(instant),
});
export type Lot = Infer<typeof lot>;

/**
 * What a person's own guide says about a row entered from memory, and what it was taken for here.
 */
export const guideAnswer = z.strictObject({
  table: text,
  edition: z.nullable(text),
  jar: jarSize,
  /** The altitude band as printed, and the gauge pressure where the row has one. */
  band: text,
  psi: z.nullable(psi),
  minutes: z.number().check(z.positive(), z.maximum(600)),
  oursMinutes: z.number().check(z.positive(), z.maximum(600)),
});
export type GuideAnswer = Infer<typeof guideAnswer>;

/** How many jars of which lot, the number of the first of them, and of each in newer journals. */
export const part = z.strictObject({
  batch: batchId,
  jars: count,
  first: count,
  numbers: z.optional(jarNumbers),
  /** What was tested for its jars, where they were put in with others that need something else. */
  terms: z.optional(processTerms),
});
export type Part = Infer<typeof part>;

/** The way a batch is processed, with the pressure chosen where several were tested. */
export const batchOption = z.extend(processOption, { atPsi: z.optional(psi) });
export type BatchOption = Infer<typeof batchOption>;

/** A batch the day's plan is still to begin, and when, in kitchen time. */
export const plannedItem = z.strictObject({
  id: word,
  recipe: word,
  /** What to call it: "Provider dilled green beans". */
  title: text,
  variety: z.nullable(text),
  weightLb: z.nullable(amount),
  beginAt: instant,
  /** It was asked for not to begin before this. */
  notBefore: z.optional(instant),
});
export type PlannedItem = Infer<typeof plannedItem>;

/**
 * A step of the day as it is planned: of a batch, or of an item that is still to become one, and of
 * one of its loads, from 1, where there are several. Kitchen time.
 */
export const plannedStep = z.strictObject({
  batch: z.string(),
  stage: z.string(),
  load: z.optional(z.number()),
  from: instant,
  to: instant,
});

export type PlannedStep = Infer<typeof plannedStep>;

const minuteOfDay = z.number().check(z.minimum(0), z.maximum(1440));
/** Hours of the night in which nothing may need hands, in minutes of the day. */
export const quietHours = z.strictObject({ fromMinute: minuteOfDay, toMinute: minuteOfDay });
export type { QuietHours } from "../../reckon/quiet-hours.ts";

export const disposition = z.enum([
  "carried-on",
  "restarted",
  "reprocess",
  "refrigerate",
  "freeze",
  "discard",
  "undecided",
]);
export type Disposition = Infer<typeof disposition>;

/** What shows that a jar has spoiled; `unsealed` where it came open on the shelf. */
export const spoilSign = z.enum(["bulged", "leaked", "spurted", "off", "moldy", "unsealed"]);
export type SpoilSign = Infer<typeof spoilSign>;

/**
 * Why an altitude is doubted: a measured boil, one so far under that it may not boil, a no to
 * whether it is right, or nothing tested so high for jars that are in a canner already.
 */
export const altitudeDoubt = z.enum(["boil", "no-boil", "denied", "untested", "then"]);
export type AltitudeDoubt = Infer<typeof altitudeDoubt>;

export const gapCause = z.enum(["closed", "crashed", "asleep", "stalled", "away"]);
export type GapCause = Infer<typeof gapCause>;

/** What is reported of a canner while its time runs. */
export type Sign = "boil" | "pressure" | "steam" | "burner";
