import type { Intent, SlotsOf } from "../../kitchen/command.ts";
import type { Context } from "../context.ts";
import { phraseBook } from "../grammar/phrase-book.ts";
import type { Understood } from "../understand.ts";
import type { Utterance } from "../words.ts";
import { dayWishIn } from "./day-wish.ts";
import type { Lot } from "./lots.ts";
import { type Meaning, meaningOf, namesOf, type Target } from "./targets.ts";

/** The last step: what the phrases captured becomes the slots of the contract. */

const FEET_PER_METRE = 3.280839895;

type Raw = Record<string, unknown>;
type Finished = { slots: Raw; doubt?: number; refersTo?: Meaning };

function isTarget(value: unknown): value is Target {
  return typeof value === "object" && value !== null && "said" in value && "meaning" in value;
}

/** A lot becomes the recipe it names, or the choices where it names several. */
function finishBegin(raw: Raw, context: Context): Finished | undefined {
  const lot = raw.lot as Lot | undefined;
  if (!lot) return { slots: raw };
  const slots: SlotsOf["begin"] = {};
  const [only] = lot.recipes;
  let doubt = 0;
  const best = lot.recipes.length > 1 ? firstChoice(lot, context) : only;
  if (best) slots.recipe = best;
  else {
    slots.named = lot.named;
    slots.choices = lot.recipes;
    doubt = 0.3;
  }
  if (lot.variety) slots.variety = lot.variety;
  const produce = raw.produce as { weightLb: number } | undefined;
  const weightLb = lot.weightLb ?? produce?.weightLb;
  if (weightLb !== undefined) slots.weightLb = weightLb;
  return { slots, doubt };
}

/** Where a name fits several recipes, the one it belongs to by title alone. */
function firstChoice(lot: Lot, context: Context): string | undefined {
  const titled = lot.recipes.filter(
    (id) =>
      id.replaceAll("-", " ") === lot.named ||
      context.recipes.some(
        (recipe) => recipe.id === id && recipe.title.toLowerCase() === lot.named,
      ),
  );
  return titled.length === 1 ? titled[0] : undefined;
}

function finishTaste(raw: Raw): Finished {
  const { scores, scoreName, score, ...rest } = raw;
  const named = typeof scoreName === "string" ? { [scoreName]: score } : {};
  return { slots: { ...rest, ...named, ...(scores as Record<string, number>) } };
}

/** "Between five and six thousand": the first of a span is of the thousands of the second. */
function asLarge(low: number, high: number): number {
  if (low >= 100 || high < 1000) return low;
  return low * (high % 1000 === 0 ? 1000 : 100);
}

/** Feet, and how far they may be off where that was said; of a span, the middle and its half. */
function finishAltitude(raw: Raw): Finished | undefined {
  const unit = raw.metres === undefined ? 1 : FEET_PER_METRE;
  const inFeet = (value: unknown) => Math.round(Number(value) * unit);
  const spans = raw.low !== undefined && raw.high !== undefined;
  const high = inFeet(spans ? raw.high : (raw.metres ?? raw.feet));
  const low = spans ? inFeet(asLarge(Number(raw.low), Number(raw.high))) : high;
  const feet = spans ? Math.round((low + high) / 2) : high;
  if (feet < -1500 || feet > 20000 || low > high) return undefined;
  const uncertaintyFt = spans ? high - feet : inFeet(raw.off);
  return { slots: { feet, ...(uncertaintyFt > 0 ? { uncertaintyFt } : {}) } };
}

/** The lots and times of a day to be planned; nothing where any of the words is neither. */
function finishPlan(raw: Raw, context: Context): Finished | undefined {
  const { lots, ...rest } = raw;
  if (lots === undefined) return { slots: rest };
  const wish = dayWishIn(String(lots), context, phraseBook().plain, (lot) => {
    return lot.recipes.length > 1 ? firstChoice(lot, context) : lot.recipes[0];
  });
  if (!wish) return undefined;
  const { exact, ...slots } = wish;
  return { slots: { ...rest, ...slots }, doubt: exact ? 0 : MISHEARD };
}

const FINISHERS: Partial<Record<Intent, (raw: Raw, context: Context) => Finished | undefined>> = {
  begin: finishBegin,
  plan: finishPlan,
  taste: finishTaste,
  altitude: finishAltitude,
  temperature: (raw, context) => ({
    slots: { ...raw, unit: raw.unit ?? context.temperatureUnit ?? "F" },
  }),
  pressure: (raw, context) => ({
    slots: { ...raw, unit: raw.unit ?? context.pressureUnit ?? "psi" },
  }),
  "how-much": (raw) => ({ slots: raw.what as Raw }),
};

/** A name that was matched by its sound or spelling makes a command this much less sure. */
const MISHEARD = 0.15;

function isMisheard(raw: Raw): boolean {
  return Object.values(raw).some(
    (value) => typeof value === "object" && value !== null && "exact" in value && !value.exact,
  );
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
  const finisher = FINISHERS[intent];
  const finished = finisher ? finisher(raw, context) : { slots: raw };
  if (!finished) return undefined;
  const slots: Raw = {};
  let refersTo = finished.refersTo;
  for (const [slot, value] of Object.entries(finished.slots)) {
    if (value === undefined || slot === "number") continue;
    if (isTarget(value)) {
      slots[slot] = value.said;
      refersTo = value.exact ? meaningOf(value.said, namesOf(context)) : value.meaning;
      const { batches, timers, recipes } = refersTo;
      if (batches.length + timers.length + recipes.length === 0) refersTo = value.meaning;
    } else slots[slot] = value;
  }
  const doubt = Math.max(finished.doubt ?? 0, isMisheard(raw) ? MISHEARD : 0);
  const rounded = Math.max(0.3, Math.round((confidence - doubt) * 100) / 100);
  // The phrases of an intent fill only that intent's slots; tests hold every family to it.
  const command = { intent, slots, confidence: rounded, text: said.text } as Understood;
  const meant =
    refersTo && refersTo.batches.length + refersTo.timers.length + refersTo.recipes.length;
  return meant ? { ...command, refersTo } : command;
}
