import type { Intent } from "../../kitchen/command.ts";
import type { Context } from "../context.ts";
import { phraseBook } from "../grammar/phrase-book.ts";
import { MEANINGS } from "../intents/all.ts";
import type { Raw } from "../intents/meaning.ts";
import type { Understood } from "../understand.ts";
import type { Utterance } from "../words.ts";
import { type Meaning, meaningOf, namesOf, type Target } from "./targets.ts";

/** The last step: what the phrases captured becomes the slots of the contract. */

function isTarget(value: unknown): value is Target {
  return typeof value === "object" && value !== null && "said" in value && "meaning" in value;
}

/** A name that was matched by its sound or spelling makes a command this much less sure. */
const MISHEARD = 0.15;

function isMisheard(raw: Raw): boolean {
  return Object.values(raw).some(
    (value) => typeof value === "object" && value !== null && "exact" in value && !value.exact,
  );
}

/** What the intent has a slot for: wordings also capture numbers that nobody needs. */
function declared(intent: Intent, raw: Raw): Raw {
  const { slots } = MEANINGS[intent];
  return Object.fromEntries(Object.entries(raw).filter(([slot]) => Object.hasOwn(slots, slot)));
}

/**
 * Slots as the contract has them, or nothing where the values make no sense. Names become the
 * words said, and what they can mean goes beside the slots.
 */
export function finishSlots(
  intent: Intent,
  raw: Raw,
  confidence: number,
  said: Utterance,
  context: Context,
): Understood | undefined {
  const { finish } = MEANINGS[intent];
  const finished = finish
    ? finish(raw, context, phraseBook().plain)
    : { slots: declared(intent, raw) };
  if (!finished) return undefined;
  const slots: Raw = {};
  let refersTo: Meaning | undefined;
  for (const [slot, value] of Object.entries(finished.slots)) {
    if (value === undefined) continue;
    if (isTarget(value)) {
      slots[slot] = value.said;
      refersTo = value.exact ? meaningOf(value.said, namesOf(context)) : value.meaning;
      const { batches, timers, recipes } = refersTo;
      if (batches.length + timers.length + recipes.length === 0) refersTo = value.meaning;
    } else slots[slot] = value;
  }
  const doubt = Math.max(finished.doubt ?? 0, finished.misheard || isMisheard(raw) ? MISHEARD : 0);
  const rounded = Math.max(0.3, Math.round((confidence - doubt) * 100) / 100);
  // The phrases of an intent fill only that intent's slots; tests hold every family to it.
  const command = { intent, slots, confidence: rounded, text: said.text } as Understood;
  const meant =
    refersTo && refersTo.batches.length + refersTo.timers.length + refersTo.recipes.length;
  return meant ? { ...command, refersTo } : command;
}
