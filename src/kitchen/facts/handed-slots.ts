/** What may stand in a command that another program hands over as data instead of words. */
import * as z from "zod/mini";
import { type Command, commandOf, type SlotsOf } from "../command.ts";
import { jarNumbers, spoilSign } from "./fields.ts";

const text = z.string();
const number = z.number();
const jars = { count: z.optional(number), jars: z.optional(jarNumbers) };

export type HandedIntent =
  | "plan"
  | "opened"
  | "spoiled"
  | "place"
  | "seed-saved"
  | "forget-words"
  | "germination";

const SLOTS: { [I in HandedIntent]: z.ZodMiniType<SlotsOf[I]> } = {
  plan: z.object({
    items: z.array(z.object({ recipe: text, weightLb: number, variety: z.optional(text) })),
    go: z.literal(true),
    startAt: z.optional(text),
    finishBy: z.optional(text),
    quiet: z.optional(text),
  }),
  opened: z.object({ ...jars, target: text }),
  spoiled: z.object({ ...jars, target: text, sign: spoilSign }),
  place: z.object({ place: text, target: text, jars: z.optional(jarNumbers) }),
  "seed-saved": z.object({
    crop: text,
    variety: z.optional(text),
    isolation: z.optional(text),
    fermentDays: z.optional(number),
    dryWeightG: z.optional(number),
    storage: z.optional(text),
    batch: z.optional(text),
  }),
  "forget-words": z.object({ all: z.optional(z.literal(true)), number: z.optional(number) }),
  germination: z.object({ seed: text, sprouted: number, of: number, days: z.optional(number) }),
};

/** The command; undefined where a slot is invalid or the intent may not be handed over. */
export function handedCommand(intent: unknown, slots: unknown): Command | undefined {
  return isHanded(intent) ? withSlotsRead(intent, slots) : undefined;
}

function isHanded(intent: unknown): intent is HandedIntent {
  return typeof intent === "string" && Object.hasOwn(SLOTS, intent);
}

function withSlotsRead<I extends HandedIntent>(intent: I, slots: unknown): Command<I> | undefined {
  const schema: z.ZodMiniType<SlotsOf[I]> = SLOTS[intent];
  const read = z.safeParse(schema, slots);
  return read.success ? commandOf(intent, read.data) : undefined;
}
