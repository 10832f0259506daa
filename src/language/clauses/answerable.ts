/** Questions that are answered by their topic: which of them knows what these words are about. */
import type { Command, Intent } from "../../kitchen/command.ts";
import type { Guess } from "../model/shipped.ts";
import { likelihood } from "./guessed.ts";

/** The slot that says what each of them is about. */
const TOPICS: ReadonlyMap<Intent, string> = new Map([
  ["may-i", "act"],
  ["is-safe", "topic"],
  ["trouble", "what"],
  ["explain", "term"],
  ["short-of", "item"],
]);

/** How likely another has to be to be asked instead. */
const LEAST = 0.02;

/** The meaning itself, or a related one that has a topic where this one has none. */
export function answerable(
  command: Command,
  from: Guess,
  read: (intent: Intent) => Command | undefined,
): Command {
  const slot = TOPICS.get(command.intent);
  if (slot === undefined || slot in command.slots) return command;
  const others = [...TOPICS].filter(([intent]) => likelihood(intent, from) >= LEAST);
  const ranked = others.sort(([a], [b]) => likelihood(b, from) - likelihood(a, from));
  for (const [intent, topic] of [[command.intent, slot] as const, ...ranked]) {
    const other = read(intent);
    if (other && topic in other.slots) return { ...other, confidence: command.confidence };
  }
  return command;
}
