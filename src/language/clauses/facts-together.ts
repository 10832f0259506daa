/** Puts the facts of a sentence together: what each is about, and which say the same. */
import { type Command, commandOf, withSlots } from "../../kitchen/command.ts";
import type { Context } from "../context.ts";
import { wordSet } from "../grammar/word-set.ts";
import { MEANINGS } from "../intents/all.ts";
import { isOwnMatter } from "../qualifying.ts";
import { MOST_GUESSED } from "../weighing.ts";
import type { Utterance } from "../words.ts";

/** A fact, and the clause it stands in. */
export type ClauseFact = { command: Command; clause: Utterance };

/** "She's rolling now, that canner": what a report was about, named behind it. */
function isTag({ command }: ClauseFact, before: ClauseFact): boolean {
  const { report, plainly } = MEANINGS[before.command.intent];
  return command.intent === "focus" && !!report && !!plainly && takesName(before);
}

/** "The beans, I'd give them a five": a name before a clause is what the clause is about. */
export function aboutTopics(facts: readonly ClauseFact[]): ClauseFact[] {
  return namedBehind(facts).flatMap((fact, at, all): ClauseFact[] => {
    const [before, next] = [all[at - 1], all[at + 1]];
    if (fact.command.intent === "focus" && next && takesName(next)) return [];
    if (fact.command.intent === "focus" && before && isTag(fact, before)) return [];
    const topic = next && isTag(next, fact) ? next : before;
    if (topic?.command.intent !== "focus" || !takesName(fact)) return [fact];
    return [named(fact, topic.command)];
  });
}

const PRONOUN = /^(it|its|they|them|their|those|that)$/;

/** "How much salt goes in the kraut, and when is it done?": a question after a name is of it. */
export function withPronouns(facts: readonly ClauseFact[]): ClauseFact[] {
  return facts.map((fact, at) => {
    const harmless = MEANINGS[fact.command.intent].cost === "harmless";
    const told = facts.slice(0, at).findLast(({ command }) => "target" in command.slots);
    const meant = fact.clause.words.some(({ word }) => PRONOUN.test(word));
    if (!told || !harmless || !meant || !takesName(fact)) return fact;
    const { slots, ref } = told.command;
    const target = "target" in slots ? { target: slots.target } : {};
    return { ...fact, command: { ...withSlots(fact.command, target), ...(ref ? { ref } : {}) } };
  });
}

/** "It quit boiling, this is the beets": the name comes last. */
function namedBehind(facts: readonly ClauseFact[]): readonly ClauseFact[] {
  const [before, last] = facts.slice(-2);
  if (!before || last?.command.intent !== "focus" || !takesName(before)) return facts;
  const same = (fact: ClauseFact) => {
    return fact.command.intent === before.command.intent && takesName(fact);
  };
  return facts.slice(0, -1).map((fact) => (same(fact) ? named(fact, last.command) : fact));
}

function takesName({ command: { intent, slots } }: ClauseFact): boolean {
  return "target" in MEANINGS[intent].slots && !("target" in slots);
}

function named(fact: ClauseFact, { slots, ref }: Command): ClauseFact {
  return { ...fact, command: { ...withSlots(fact.command, slots), ...(ref ? { ref } : {}) } };
}

export const TASTES = wordSet(
  "sour sweet salty bitter bland clovey spicy hot mild thin thick watery tangy tart crisp crunchy",
  "soft flavor texture heat crunch delicious tasty lovely sharp strong weak mushy tough stringy",
  "rubbery chewy limp great awful horrible terrible nice perfect wonderful dreadful good fine",
  "excellent superb woody garlicky herby peppery dull plain",
);
/** What tells that food has spoiled tells no taste. */
const GONE_OFF = wordSet(
  "off mold moldy mould mouldy fizz fizzed fizzes fizzy fizzing slimy rotten spoiled bad foul",
  "leaked bulged bubbled bubbling spurted smells smelled stinks stank",
);

/** "We opened a jar of the kraut, and it's a bit sour": how it tasted, without a score. */
export function tasteOf(clause: Utterance, before: Command | undefined): Command | undefined {
  if (before?.intent !== "opened") return undefined;
  const whole = clause.within ?? clause;
  if (whole.words.some(({ word }) => GONE_OFF.has(word))) return undefined;
  if (!clause.words.some(({ word }) => TASTES.has(word))) return undefined;
  const { target } = before.slots;
  const words = clause.text.slice(clause.words[0]?.start, clause.words.at(-1)?.end);
  const slots = target === undefined ? { words } : { target, words };
  const ref = before.ref ? { ref: before.ref } : {};
  return commandOf("taste", slots, { confidence: MOST_GUESSED, ...ref });
}

/** A question or a call for help that says less than another of its meaning in the same breath. */
function isLess(one: Command, list: readonly Command[]): boolean {
  if (MEANINGS[one.intent].cost !== "harmless" || Object.keys(one.slots).length > 0) return false;
  return list.some((other) => other !== one && other.intent === one.intent);
}

/** "It dropped to ten": where the pressure was lost, a reading says how far. */
function isOfLoss({ intent }: Command, list: readonly Command[]): boolean {
  return intent === "pressure" && list.some((other) => other.intent === "pressure-lost");
}

/** Both say something, and not of the same slots: "crunch two and flavor four". */
function completes(one: Command, other: Command): boolean {
  const [mine, theirs] = [Object.keys(one.slots), Object.keys(other.slots)];
  const apart = !mine.some((slot) => slot !== "target" && theirs.includes(slot));
  const named = [one, other].map(({ slots }) => ("target" in slots ? slots.target : undefined));
  if (named[0] && named[1] && named[0] !== named[1]) return false;
  return one.intent === other.intent && mine.length > 0 && theirs.length > 0 && apart;
}

/** "Six pints and two half pints filled": one count, by the larger of its sizes. */
function ofTwoSizes(one: Command, other: Command): Command | undefined {
  if (one.intent !== "jars-filled" || other.intent !== "jars-filled") return undefined;
  const [size, further] = [one.slots.size, other.slots.size];
  const named = [one, other].filter(({ slots }) => slots.target !== undefined);
  if (!size || !further || size === further || named.length === 2) return undefined;
  const count = (one.slots.count ?? 0) + (other.slots.count ?? 0);
  const [larger] = [size, further].toSorted((a, b) => SIZES.indexOf(b) - SIZES.indexOf(a));
  const by = named[0] ?? one;
  return withSlots(by as typeof one, { count, size: larger, mixed: true });
}

const SIZES: readonly (string | undefined)[] = [
  ...["quarter-pint", "half-pint", "12-ounce", "pint", "pint-and-a-half", "quart", "half-gallon"],
];

/** Of one meaning, what its clauses say together, unless they contradict each other. */
export function merged(facts: readonly ClauseFact[]): ClauseFact[] {
  const list: ClauseFact[] = [];
  for (const fact of facts) {
    const { intent, slots } = fact.command;
    const same = list.some(({ command }) => command.intent === intent && holds(command, slots));
    if (same) continue;
    const vaguer = list.findIndex(({ command }) => isVaguer(command, fact.command));
    if (vaguer >= 0) {
      list[vaguer] = { ...fact, clause: list[vaguer]?.clause ?? fact.clause };
      continue;
    }
    const last = list.at(-1);
    const sizes = last && ofTwoSizes(last.command, fact.command);
    if (last && sizes) {
      list[list.length - 1] = { ...last, command: sizes };
      continue;
    }
    if (last && completes(last.command, fact.command)) {
      const command = withSlots(last.command, { ...slots, ...last.command.slots });
      list[list.length - 1] = { ...last, command };
    } else list.push(fact);
  }
  const all = list.map(({ command }) => command);
  return list.filter(({ command }) => !isLess(command, all) && !isOfLoss(command, all));
}

/** "It broke, one of the pints": whether a fact is told again with more of it. */
function isVaguer(one: Command, other: Command): boolean {
  if (one.intent !== other.intent || MEANINGS[one.intent].cost === "clearing") return false;
  const slots = other.slots as Record<string, unknown>;
  return Object.entries(one.slots).every(([slot, value]) => {
    return JSON.stringify(slots[slot]) === JSON.stringify(value);
  });
}

/** Whether a command says all that these slots say. */
function holds(command: Command, slots: object): boolean {
  const all: Readonly<Record<string, unknown>> = command.slots;
  const { cost } = MEANINGS[command.intent];
  const said = Object.entries(slots);
  // "One broke, and another broke": without a number each is one more, unless it raises a doubt.
  if (said.length < Object.keys(all).length && cost !== "raising") return false;
  return said.every(([slot, value]) => JSON.stringify(all[slot]) === JSON.stringify(value));
}

export function isLossInside({ command }: ClauseFact): boolean {
  return MEANINGS[command.intent].tellsOf?.goes === true;
}

/** Losses stand, and so does what nobody can take back; a "no, not yet" drops everything else. */
export function isKept({ intent }: Command): boolean {
  return MEANINGS[intent].cost === "raising" || MEANINGS[intent].cost === "harmless";
}

/** "Sorry" or "wait" beside words that fit nothing is no fact of its own. */
const LEAST_WORDS = 3;

export function isSlight({ clause }: ClauseFact): boolean {
  return clause.words.length < LEAST_WORDS;
}

/** Questions, counts and other answers; a name alone may be part of what was answered. */
function mayStandBesideAnswer({ command: { intent } }: ClauseFact): boolean {
  const { cost, answer } = MEANINGS[intent];
  if (answer || intent === "factor" || intent === "jars-filled") return true;
  return cost === "harmless" && intent !== "focus";
}

/** "Five percent, watered down": whether nothing takes from an answer about a factor. */
export function answersPlainly(
  facts: readonly ClauseFact[],
  beside: readonly { clause: Utterance }[],
  guessed: boolean,
  { factors = [], question }: Context,
): boolean {
  if (!factors.some(({ id }) => id === question?.key)) return true;
  const idle = beside.every(({ clause }) => isOwnMatter(clause));
  return !guessed && idle && facts.every(mayStandBesideAnswer);
}

/** "The weight just started, well, three minutes ago": the moment of the report before. */
export function withMoment(
  last: ClauseFact | undefined,
  { slots }: Command,
): ClauseFact | undefined {
  const timed = last && "at" in MEANINGS[last.command.intent].slots && "at" in slots;
  return timed ? { ...last, command: withSlots(last.command, { at: slots.at }) } : undefined;
}
