/**
 * The one question that is about the words, not the food: "which one?", "really?", "how many?". It
 * is not kept in the journal; a person who changes their mind simply says something else.
 */
import { type Command, withSlots } from "../kitchen/command.ts";
import { type Asked, type Wish, YES_NO } from "../kitchen/decide/decision.ts";
import { isUrgent, PATIENCE_MS, type Question } from "../kitchen/questions/questions.ts";
import { UNSURE } from "../language/answers/answers.ts";
import { pickChoices } from "../language/answers/choosing.ts";
import { MEANINGS } from "../language/intents/all.ts";
import { CERTAIN } from "../language/understand.ts";
import { askedBack } from "../speech/intents.ts";

export type Pending = Asked;

type Resolved =
  /** The answer: the command is decided again with it. */
  | { kind: "wish"; wish: Wish }
  /** It was dropped by a no. */
  | { kind: "dropped" }
  /** The words were about something else. */
  | { kind: "other" };

/** What an utterance does to a pending question. */
export function resolve(pending: Pending, command: Command, text: string): Resolved {
  const { wish, expects, choices } = pending;
  if (command.intent === "no" && !NO_IS_NONE.has(expects)) return { kind: "dropped" };
  switch (expects) {
    case "minutes": {
      if (command.intent === "no" || isUnsure(command)) {
        return { kind: "wish", wish: { ...wish, amount: null } };
      }
      const amount = command.intent === "answer" ? Number(command.slots.value) : Number.NaN;
      return amount > 0 ? { kind: "wish", wish: { ...wish, amount } } : { kind: "other" };
    }
    case "either": {
      const { intent } = command;
      if (intent !== "yes" && intent !== "no") return { kind: "other" };
      return { kind: "wish", wish: { ...wish, confirmed: intent === "yes" } };
    }
    case "yes":
      if (command.intent === "yes") return { kind: "wish", wish: { ...wish, confirmed: true } };
      return isUnsure(command) ? { kind: "dropped" } : { kind: "other" };
    case "heard":
      // It was heard right; whatever else it needs is still to be asked.
      if (command.intent === "yes") return { kind: "wish", wish };
      return isUnsure(command) ? { kind: "dropped" } : { kind: "other" };
    case "which": {
      const [only] = choices;
      if (only && choices.length === 1 && command.intent === "yes") {
        return { kind: "wish", wish: { ...wish, chosen: [only.ref] } };
      }
      const picked = pickChoices(
        text,
        choices.map((choice) => choice.label),
      );
      if (!picked) return { kind: "other" };
      if (picked.length === 0) return { kind: "dropped" };
      const chosen = picked.flatMap((index) => choices[index]?.ref ?? []);
      return { kind: "wish", wish: { ...wish, chosen } };
    }
    case "number": {
      const count = command.intent === "answer" ? Number(command.slots.value) : Number.NaN;
      if (Number.isNaN(count)) return { kind: "other" };
      return { kind: "wish", wish: withSlotsOf(wish, { count }) };
    }
    case "when":
      if (command.intent !== "remind" || command.slots.when === undefined) return { kind: "other" };
      return { kind: "wish", wish: withSlotsOf(wish, { when: command.slots.when }) };
  }
}

/** Questions that a no does not drop: it is one of their answers, or does not answer them. */
const NO_IS_NONE: ReadonlySet<Pending["expects"]> = new Set(["number", "either", "minutes"]);

/** "I think so" is not a yes, and not a new report either. */
function isUnsure({ intent, slots }: Command): boolean {
  return intent === "answer" && "value" in slots && slots.value === UNSURE;
}

function withSlotsOf(wish: Wish, slots: { count: number } | { when: string }): Wish {
  return { ...wish, command: withSlots(wish.command, slots) };
}

/**
 * Whether a report would clear while it is still asked which jars or which boil a doubt is about:
 * "all sealed" before it is known whose jar did not.
 */
export function passesOver(command: Command, { wish, expects }: Pending): boolean {
  const raised = MEANINGS[wish.command.intent].cost === "raising";
  return raised && expects === "which" && MEANINGS[command.intent].cost === "clearing";
}

/** Whether a pending question survives a new report; other words drop a "really?". */
export function survives(pending: Pending | undefined): boolean {
  return pending !== undefined && !YES_NO.has(pending.expects);
}

/**
 * Whether the same recipe is begun again without the name that is asked about: what goes into its
 * jars is still open.
 */
export function leavesNameOpen(pending: Pending, command: Command): boolean {
  const { command: asked } = pending.wish;
  if (asked.intent !== "begin" || command.intent !== "begin") return false;
  const { recipe, variety } = command.slots;
  return pending.expects === "either" && variety === undefined && recipe === asked.slots.recipe;
}

/**
 * Spoken words below this confidence are read back, where they would change something that matters.
 */
export const SURE_ENOUGH = 0.7;

/** From this certainty up, every word is known, in whatever order. */
const KNOWN_WORDS = 0.8;

/** A closed question about what words may mean; undefined where a mistake would cost nothing. */
export function askBack(command: Command, text: string): Pending | undefined {
  const question = askedBack(command);
  if (question === undefined || MEANINGS[command.intent].cost === "harmless") return undefined;
  return {
    kind: "ask",
    text: `I heard: ${text}. ${question}`,
    wish: { command },
    expects: "heard",
    choices: [],
  };
}

/**
 * Asks for a yes to what was heard in doubt; undefined where it is sure or changes little.
 * `guarded`: a question that guards safety is what it answers. A clatter mistaken for a word must
 * not answer that; the yes to this read-back is then accepted, however it sounds.
 */
export function readBack(
  command: Command,
  text: string,
  confidence: number,
  guarded = false,
): Pending | undefined {
  const { answer, plainly, cost } = MEANINGS[command.intent];
  const wanted = cost === "clearing" ? CERTAIN : KNOWN_WORDS;
  const whole = !plainly || command.confidence >= wanted;
  if (confidence >= SURE_ENOUGH && whole) return undefined;
  // Asking whether an answer to our own question was meant would go on forever.
  return answer && !guarded ? undefined : askBack(command, text);
}

/** Whether a transient question stays the open one when another is to be asked. */
export function comesFirst(pending: Pending, sinceMs: number, other: Question): boolean {
  const same = pending.facts !== undefined && other.kind === "still";
  return sinceMs < PATIENCE_MS && (same || !isUrgent(other));
}
