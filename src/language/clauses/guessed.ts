/** What the model takes a sentence and its clauses to mean, put together. */
import type { Command, Intent } from "../../kitchen/command.ts";
import { wordSet } from "../grammar/word-set.ts";
import { isIntent, learned } from "../intents/all.ts";
import { FRAMES } from "../model/corpus.ts";
import type { Likely } from "../model/linear-model.ts";
import type { Guess } from "../model/shipped.ts";
import { directness, idleness } from "../weighing.ts";
import type { Utterance } from "../words.ts";

/** The model's classes as meanings; two classes of the same meaning are added up. */
export function asMeanings(intents: readonly Likely[]): Likely[] {
  const list: Likely[] = [];
  for (const { name, probability } of intents) {
    const { intent, slots } = learned(name);
    const same = list.find((one) => one.name === intent);
    if (same) same.probability += probability;
    else list.push({ name: intent, probability, ...(intent === name ? {} : { slots }) });
  }
  return list.sort((one, other) => other.probability - one.probability);
}

/** How likely a meaning is. */
export function likelihood(intent: string, { intents }: Guess): number {
  return intents.find(({ name }) => name === intent)?.probability ?? 0;
}

/** A meaning that the whole sentence speaks against is never quite ruled out for a clause. */
const LEAST_WHOLE = 0.01;

/** What a clause means, as far as the whole sentence bears it out. */
export function within(own: Guess, whole: Guess): Guess {
  const intents = own.intents.map((one) => {
    const all = likelihood(one.name, whole);
    return { ...one, probability: Math.sqrt(one.probability * Math.max(all, LEAST_WHOLE)) };
  });
  const sum = intents.reduce((before, { probability }) => before + probability, 0);
  const shared = intents.map((one) => ({ ...one, probability: one.probability / sum }));
  const frames = { ...own.frames };
  for (const frame of FRAMES) frames[frame] = (own.frames[frame] + whole.frames[frame]) / 2;
  const ranked = shared.sort((one, other) => other.probability - one.probability);
  return { ...own, intents: ranked, frames };
}

/** Short, or by the model nothing for the kitchen. */
export function saysNothing({ words }: Utterance, from: Guess): boolean {
  return words.length <= 2 || idleness(from) >= IDLE || from.frames.idle >= 0.5;
}

/** From this probability on, a clause is taken to be nothing for the kitchen. */
export const IDLE = 0.4;

/** How likely a meaning has to be that is taken from words in no known order. */
const AGREED = 0.4;

/** A report that all words are accounted for in, where the model takes it so, too. */
export function agreeing(plain: Command | undefined, from: Guess): Command | undefined {
  const [first] = from.intents;
  const agreed = first && first.name === plain?.intent && first.probability >= AGREED;
  return agreed && plain && directness(plain.intent, from) >= AGREED ? plain : undefined;
}

/** How sure the whole sentence has to be of one thing to leave no room for another in it. */
export const SURE_WHOLE = 0.6;
const LEAST_BORNE_OUT = 0.02;

/** "Wait", "pardon me", "oops": said in passing, too. */
export const IN_PASSING = wordSet("hold repeat resume undo redo overview help");

/** "Hang on, it's dropped": whether the whole sentence bears out what a few words of it say. */
export function isBorneOut(intent: Intent, clause: Utterance, whole: Guess): boolean {
  const [first] = whole.intents;
  const surely = first && first.name !== intent && first.probability >= SURE_WHOLE;
  if (!surely || !isIntent(first.name) || first.name === "unknown") return true;
  return clause.asked || likelihood(intent, whole) >= LEAST_BORNE_OUT;
}
