/**
 * What became of a sentence whose meaning is known: understood at once, asked about with the right
 * meaning first, asked wrongly, acted on wrongly, or not understood; and, of what is neither a
 * report nor an order, acted on all the same or left.
 */
import type { Intent } from "../../../src/kitchen/command.ts";
import type { Context } from "../../../src/language/context.ts";
import { hear } from "../../../src/language/hear.ts";
import { learned, MEANINGS } from "../../../src/language/intents/all.ts";
import type { Sentence } from "../../../src/language/model/corpus.ts";
import type { Models } from "../../../src/language/model/linear-model.ts";
import { kitchenContext, underWayOf } from "../kitchen-context.ts";

export const KINDS = [
  "exact",
  "asked",
  "asked wrongly",
  "acted wrongly",
  "unknown",
  "left",
  "trap",
] as const;
export type Kind = (typeof KINDS)[number];

function contextOf({ situation }: Sentence): Context {
  const stages = situation.stages.map(underWayOf);
  return kitchenContext({
    running: [
      { id: "b-1", recipe: "dilled-green-beans", variety: "Provider" },
      { id: "b-2", recipe: "pickled-beets" },
    ],
    loads: stages.length > 0 ? [{ id: "L1", canner: "canner", stages }] : [],
    ...(situation.question ? { question: { kind: "yes-no", key: situation.question } } : {}),
  });
}

/** In these frames nothing that is named is to be done or believed. */
const INDIRECT = new Set(["wished", "denied", "imagined", "reported", "past", "elsewhere", "idle"]);

function isTrap({ frame, intents }: Sentence): boolean {
  if (frame !== undefined && INDIRECT.has(frame)) return true;
  const [intent] = intents;
  return frame === "asked" && MEANINGS[intent as Intent]?.report === true;
}

/** `note` says what was meant and what was heard. */
export function judged(labeled: Sentence, models: Models): { kind: Kind; note: string } {
  const sentence = { ...labeled, intents: labeled.intents.map((one) => learned(one).intent) };
  const { reading, commands, candidates } = hear(sentence.text, contextOf(sentence), models);
  const right = (intent: string | undefined) => sentence.intents.includes(intent ?? "");
  const acted = commands.map(({ intent }) => intent);
  const guesses = candidates.map(({ intent, confidence }) => `${intent} ${confidence}`);
  const meant = `${sentence.intents.join("+")} ${sentence.frame}`;
  const note = `${meant} heard ${reading} ${acted.join("+")} | ${guesses.join(", ")}`;
  if (isTrap(sentence)) {
    const wrong = acted.some((intent) => MEANINGS[intent].cost !== "harmless");
    return { kind: wrong ? "trap" : "left", note };
  }
  if (sentence.open && reading === "sure") {
    const harmless = acted.every((intent) => MEANINGS[intent].cost === "harmless");
    return { kind: harmless && acted.every(right) ? "exact" : "acted wrongly", note };
  }
  if (reading === "sure") {
    const all = sentence.intents.filter((intent) => acted.includes(intent as Intent)).length;
    if (acted.every(right) && all === new Set(sentence.intents).size)
      return { kind: "exact", note };
    const harmless = acted.every((intent) => MEANINGS[intent].cost === "harmless");
    return { kind: acted.every(right) ? "exact" : harmless ? "unknown" : "acted wrongly", note };
  }
  if (reading === "ask")
    return { kind: right(candidates[0]?.intent) ? "asked" : "asked wrongly", note };
  return { kind: sentence.intents[0] === "unknown" ? "exact" : "unknown", note };
}
