/** What may stand in a command that another program hands over as data instead of words. */
import * as z from "zod/mini";
import { spoilSign } from "./fields.ts";

const text = z.string();
const number = z.number();

const SLOTS = {
  plan: z.object({
    items: z.array(z.object({ recipe: text, weightLb: number, variety: z.optional(text) })),
    go: z.boolean(),
    startAt: z.optional(text),
    finishBy: z.optional(text),
    quiet: z.optional(text),
  }),
  opened: z.object({ count: number, target: text }),
  spoiled: z.object({ count: number, target: text, sign: spoilSign }),
  place: z.object({ place: text, target: text }),
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

export type HandedIntent = keyof typeof SLOTS;

/** The slots of an intent; undefined where one is invalid or the intent may not be handed over. */
export function handedSlots(intent: unknown, slots: unknown): object | undefined {
  if (typeof intent !== "string" || !Object.hasOwn(SLOTS, intent)) return undefined;
  const read = z.safeParse(SLOTS[intent as HandedIntent], slots);
  return read.success ? read.data : undefined;
}
