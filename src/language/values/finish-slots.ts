import {
  type Command,
  commandOf,
  type Intent,
  type Meant,
  type Ref,
} from "../../kitchen/command.ts";
import type { Context } from "../context.ts";
import { phraseBook } from "../grammar/phrase-book.ts";
import { MEANINGS } from "../intents/all.ts";
import type { Raw } from "../intents/meaning.ts";
import type { Utterance } from "../words.ts";
import { isTarget } from "./named-recipe.ts";
import { meantBy } from "./resolve-names.ts";
import type { Target } from "./targets.ts";

/** The last step: turns what the phrases captured into the slots of the contract. */

/** How much less certain a name matched only by sound or spelling makes a command. */
const MISHEARD = 0.15;

function isMisheard(raw: Raw): boolean {
  return Object.values(raw).some(
    (value) => typeof value === "object" && value !== null && "exact" in value && !value.exact,
  );
}

/** Only what the intent has a slot for: wordings also capture numbers that nobody needs. */
function declared(intent: Intent, raw: Raw): Raw {
  const { slots } = MEANINGS[intent];
  return Object.fromEntries(Object.entries(raw).filter(([slot]) => Object.hasOwn(slots, slot)));
}

/** What a name stands for; where nothing has exactly that name, what it was taken for. */
export function refFor(
  name: Target | string,
  intent: Intent,
  said: Utterance,
  context: Context,
): Meant {
  const whole = typeof name === "string" ? name : name.said;
  const meant = meantBy(whole, context, MEANINGS[intent].ofRecord);
  const out = intent === "done" && said.words.some(({ word }) => word === "out");
  const sorts: Meant["sorts"] = out ? [...meant.sorts, "out"] : meant.sorts;
  if (typeof name === "string" || meant.running.length > 0) return { ...meant, sorts };
  const { batches, timers } = name.meaning;
  const running: Ref[] = [
    ...batches.map((owner) => ({ owner })),
    ...timers.map((timer) => ({ timer })),
  ];
  const recorded = meant.recorded.length > 0 ? meant.recorded : running;
  return { ...meant, sorts, running, recorded };
}

/** "A jar broke in the pot": where jars are reported, a kitchen thing is not a name. */
function isNoJarsName(intent: Intent, value: unknown): boolean {
  if (!isTarget(value) || intent === "instead") return false;
  const { recipes, batches, timers } = value.meaning;
  if (recipes.length + batches.length + timers.length > 0) return false;
  const ofJars = Object.hasOwn(MEANINGS[intent].slots, "jars") || intent === "jars-filled";
  return ofJars
    ? VESSELS.test(value.said)
    : intent === "water-low" && /^(lids|jars)$/.test(value.said);
}

const VESSELS = /\b(pot|pan|canner|kettle|bath|water|jars|lids|fridge|cellar|brine|food)$/;

/** However much has to be assumed, a wording that fits counts for this much. */
const LEAST = 0.3;

/** The slots that name a thing, with where what they stand for goes. */
const NAMING: ReadonlyMap<string, "ref" | "overRef"> = new Map([
  ["target", "ref"],
  ["named", "ref"],
  ["over", "overRef"],
]);

/**
 * Slots as in the contract; undefined where the values make no sense. Names become the words said,
 * and what they can stand for is kept beside the slots.
 */
export function finishSlots(
  intent: Intent,
  raw: Raw,
  confidence: number,
  said: Utterance,
  context: Context,
): Command | undefined {
  const { finish } = MEANINGS[intent];
  const finished = finish
    ? finish(raw, context, phraseBook().plain, said)
    : { slots: declared(intent, raw) };
  if (!finished) return undefined;
  const slots: Raw = {};
  const refs: { ref?: Meant; overRef?: Meant } = {};
  for (const [slot, value] of Object.entries(finished.slots)) {
    if (value === undefined || (slot === "target" && isNoJarsName(intent, value))) continue;
    slots[slot] = isTarget(value) ? value.said : value;
    const naming = NAMING.get(slot);
    if (!naming || !(isTarget(value) || typeof value === "string")) continue;
    refs[naming] = refFor(value, intent, said, context);
  }
  const doubt = Math.max(finished.doubt ?? 0, finished.misheard || isMisheard(raw) ? MISHEARD : 0);
  const least = Math.min(LEAST, confidence);
  const rounded = Math.round(Math.max(least, confidence - doubt) * 100) / 100;
  // The phrases of an intent fill only that intent's slots; tests hold every family to it.
  return commandOf(intent, slots, { confidence: rounded, ...refs });
}
