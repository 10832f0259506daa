/**
 * A command that one program passes to the kitchen another has open, for what words could not say
 * exactly: a particular batch, or seed lots with all their details.
 */
import { handedCommand } from "../../kitchen/facts/handed-slots.ts";
import type { Carried } from "../carried.ts";

/** Begins a line that carries a command as JSON; people's words never contain this character. */
export const COMMAND_MARK = "\u0001";

/** The longest command accepted, in characters. */
export const LONGEST_COMMAND = 50_000;

/** The line for a wish, without its line end. `chosen` is the batch it is about. */
export function handedLine({ wish, words: text }: Carried): string {
  const [ref] = wish.chosen ?? [];
  const owner = ref && "owner" in ref ? { owner: ref.owner } : {};
  const { intent, slots } = wish.command;
  return `${COMMAND_MARK}${JSON.stringify({ intent, slots, text, ...owner })}`;
}

/** The wish in a line; undefined where it is not one, or one that may not be passed on. */
export function handedWish(line: string): Carried | undefined {
  const found = objectIn(line.slice(COMMAND_MARK.length));
  const { intent, slots, text, owner } = found ?? {};
  const command = handedCommand(intent, slots);
  if (typeof text !== "string" || !command) return undefined;
  const wish = typeof owner === "string" ? { command, chosen: [{ owner }] } : { command };
  return { wish, words: text };
}

type Fields = Readonly<Record<string, unknown>>;

function objectIn(text: string): Fields | undefined {
  try {
    const found: unknown = JSON.parse(text);
    return typeof found === "object" && found !== null ? { ...found } : undefined;
  } catch {
    return undefined;
  }
}
