/** Clauses beside the facts of a sentence: what they add, and which of them is asked about. */
import type { Command } from "../../kitchen/command.ts";
import type { Context } from "../context.ts";
import { opensOnly } from "../fillers.ts";
import { MEANINGS } from "../intents/all.ts";
import { isOwnMatter } from "../qualifying.ts";
import type { Utterance } from "../words.ts";
import type { ClauseFact } from "./facts-together.ts";

/** A clause that is no fact; `asks` where the best reading of it can be asked about. */
export type Unclear = { clause: Utterance; best: Command | undefined; asks?: boolean };

/** What a sentence says by its clauses, and those that were neither used nor idle talk. */
export type ClausesRead = {
  facts: readonly ClauseFact[];
  unused: readonly Utterance[];
  /** What an unused clause is likely enough to say to be asked about. */
  asked?: ClauseFact;
};

export const NOTHING_TOLD: ClausesRead = { facts: [], unused: [] };

/** The clauses of a sentence, sorted: facts, what is said beside them, and what fits nothing. */
export type Gathered = {
  found: readonly ClauseFact[];
  beside: readonly { clause: Utterance; idle: boolean }[];
  unclear: readonly Unclear[];
  /** A fact rests on a guess. */
  guessed: boolean;
};

/** The likeliest of what is unclear, what raises a doubt first, unless a fact says as much. */
export function askedOf(unclear: readonly Unclear[], facts: readonly ClauseFact[]) {
  const all = unclear.flatMap(({ clause, best, asks }): ClauseFact[] => {
    const told = facts.some(({ command }) => command.intent === best?.intent);
    const { cost = "harmless", answer } = best ? MEANINGS[best.intent] : {};
    const quiet = !asks || told || answer || cost === "harmless" || best?.intent === "factor";
    return best && !quiet ? [{ command: best, clause }] : [];
  });
  return raisingFirst(all)[0];
}

/** Words before an answer that only open it, or tell of the speaker. */
export function addsNothing(clause: Utterance): boolean {
  return opensOnly(clause.words) || isOwnMatter(clause);
}

/** "Quarts for the beets, not pints": what is not meant, after what is. */
export function isContrast(
  { words }: Utterance,
  { intent }: Command,
  found: readonly ClauseFact[],
) {
  return words[0]?.word === "not" && found.at(-1)?.command.intent === intent;
}

/** From this probability on, a clause that fits no wording is likely to add something. */
export const ANOTHER_MEANING = 0.45;

/** Whether a clause that fits no wording is likely to say something besides the facts. */
export function isAnother(best: Command, facts: readonly ClauseFact[]): boolean {
  if (best.confidence < ANOTHER_MEANING || MEANINGS[best.intent].cost === "harmless") return false;
  return !facts.some(({ command }) => command.intent === best.intent);
}

/**
 * "Been round once, they're clean", said to a question of safety: what is done and not named may
 * be part of the answer, where the words beside it fit nothing.
 */
export function isPartOfAnswer(
  { intent, slots }: Command,
  unclear: readonly Unclear[],
  { question }: Context,
): boolean {
  const vague = intent === "done" && !("target" in slots);
  return vague && question?.guards === true && unclear.length > 0;
}

/** The unclear clauses that tell of more than the speaker. */
export function othersOf(unclear: readonly Unclear[]): Utterance[] {
  return unclear.map(({ clause }) => clause).filter((one) => !isOwnMatter(one));
}

/** What raises a doubt goes before all else. */
export function raisingFirst(facts: readonly ClauseFact[]): ClauseFact[] {
  const raises = ({ command }: ClauseFact) => MEANINGS[command.intent].cost === "raising";
  return [...facts.filter(raises), ...facts.filter((one) => !raises(one))];
}
