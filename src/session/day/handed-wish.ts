/**
 * A command that one program hands to the kitchen another has open, for what it knows better than
 * words could say: the very batch, and seed lots with all there is to know of them.
 */
import type { Command } from "../../kitchen/command.ts";
import type { Wish } from "../../kitchen/decide/outcome.ts";
import { type EventShape, faultyField } from "../archive/event-shapes.ts";

/** A line that begins so carries a command as JSON; people's words never hold such a character. */
export const COMMAND_MARK = "\u0001";

/** So many characters of a command are taken. */
export const LONGEST_COMMAND = 50_000;

/** The intents that are handed over, with the fields their slots may have. */
const SHAPES = {
  plan: { items: "list", go: "flag", startAt: "text?", finishBy: "text?", quiet: "text?" },
  opened: { count: "number", target: "text", spoiled: "flag?" },
  place: { place: "text", target: "text" },
  "seed-saved": {
    crop: "text",
    variety: "text?",
    isolation: "text?",
    fermentDays: "number?",
    dryWeightG: "number?",
    storage: "text?",
    batch: "text?",
  },
  germination: { seed: "text", sprouted: "number", of: "number", days: "number?" },
} as const satisfies Record<string, EventShape>;

const ITEM: EventShape = { recipe: "text", weightLb: "number", variety: "text?" };

export type HandedIntent = keyof typeof SHAPES;

/** The line for a wish, without its line end. `chosen` is the batch it is about. */
export function handedLine({ command, chosen = [] }: Wish): string {
  const [ref] = chosen;
  const owner = ref && "owner" in ref ? { owner: ref.owner } : {};
  const { intent, slots, text } = command;
  return `${COMMAND_MARK}${JSON.stringify({ intent, slots, text, ...owner })}`;
}

/** The wish in a line; undefined where it is none, or one that is not handed over. */
export function handedWish(line: string): Wish | undefined {
  const found = objectIn(line.slice(COMMAND_MARK.length));
  const { intent, slots, text, owner } = found ?? {};
  if (typeof intent !== "string" || !Object.hasOwn(SHAPES, intent)) return undefined;
  const given = fieldsOf(slots, SHAPES[intent as HandedIntent]);
  if (typeof text !== "string" || !given) return undefined;
  const command = { intent, slots: given, confidence: 1, text } as unknown as Command;
  return typeof owner === "string" ? { command, chosen: [{ owner }] } : { command };
}

/** Of an object the fields that a shape has; undefined where one is missing or off. */
function fieldsOf(found: unknown, shape: EventShape): Record<string, unknown> | undefined {
  if (typeof found !== "object" || found === null) return undefined;
  const all = found as Record<string, unknown>;
  if (faultyField(shape, all) !== undefined) return undefined;
  const fields = Object.fromEntries(Object.entries(all).filter(([name]) => name in shape));
  if (!Array.isArray(fields.items)) return fields;
  const items = fields.items.map((item) => fieldsOf(item, ITEM));
  return items.every(Boolean) ? { ...fields, items } : undefined;
}

function objectIn(text: string): Record<string, unknown> | undefined {
  try {
    const found: unknown = JSON.parse(text);
    return typeof found === "object" && found !== null ? (found as never) : undefined;
  } catch {
    return undefined;
  }
}
