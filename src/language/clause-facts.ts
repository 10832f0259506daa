/** What a sentence says by its clauses and by the model, with the values found in the words. */
import type { Command, Intent } from "../kitchen/command.ts";
import { confirmInClause, isGuess } from "./confirms.ts";
import type { Context } from "./context.ts";
import { foundSlots } from "./evidence/found-slots.ts";
import { Scan } from "./evidence/scan.ts";
import { clausesIn } from "./evidence/split.ts";
import { phraseBook } from "./grammar/phrase-book.ts";
import { wordSet } from "./grammar/word-set.ts";
import { beginsAsking } from "./guards.ts";
import { MEANINGS } from "./intents/all.ts";
import type { Situation } from "./model/features.ts";
import type { Models } from "./model/linear-model.ts";
import { type Guess, guess } from "./model/shipped.ts";
import { surelyUnderstood } from "./understand.ts";
import { finishSlots } from "./values/finish-slots.ts";
import { slotReader } from "./values/slots.ts";
import { spokenNames } from "./values/targets.ts";
import {
  directness,
  FRAME_TO_ASK,
  idleness,
  isToAct,
  MOST_GUESSED,
  situationOf,
} from "./weighing.ts";
import type { Utterance } from "./words.ts";

export const MOST_CANDIDATES = 3;

export class Hearing {
  private readonly situation: Situation;
  /** Of the utterance that values were last looked for in. */
  private scan: Scan | undefined;

  constructor(
    readonly context: Context,
    private readonly models: Models,
  ) {
    this.situation = situationOf(context);
  }

  guess(said: Utterance): Guess {
    const words = said.words.map(({ word }) => word);
    return guess(words, said.asked, this.situation, this.models);
  }

  /** A reading of the model as a command, with the values found in the words. */
  command(intent: Intent, probability: number, said: Utterance): Command | undefined {
    const raw = foundSlots(intent, this.scanOf(said));
    return raw && finishSlots(intent, raw, Math.min(probability, MOST_GUESSED), said, this.context);
  }

  private scanOf(said: Utterance): Scan {
    if (this.scan?.said !== said) {
      const names = spokenNames(this.context);
      this.scan = new Scan(said, slotReader(said, this.context, names, phraseBook().plain));
    }
    return this.scan;
  }

  /** What the model takes words to mean, with values, the likeliest first. */
  *eachReading(said: Utterance, from: Guess): Generator<Command> {
    const idle = idleness(from);
    for (const { name, probability } of from.intents.slice(0, 2 * MOST_CANDIDATES)) {
      const known = Object.hasOwn(MEANINGS, name) && name !== "unknown";
      if (!known || probability < idle) continue;
      const command = this.command(name as Intent, probability, said);
      if (command) yield command;
    }
  }

  /** What a clause says by its wording; a yes or no only where something is asked. */
  private worded(clause: Utterance, first: boolean): Command | undefined {
    const plain = surelyUnderstood(clause, this.context);
    if (!plain) return undefined;
    if (!MEANINGS[plain.intent].answer) return plain;
    return first && this.context.question ? plain : undefined;
  }

  /** What a clause says about a critical factor, covered from end to end. */
  private confirmed(clause: Utterance, said: Utterance): Command | undefined {
    const factors = this.context.factors ?? [];
    const confirm = factors.length > 0 ? confirmInClause(clause, said, factors) : undefined;
    if (!confirm) return undefined;
    return { intent: "factor", slots: { ...confirm }, confidence: 1, confirms: [confirm] };
  }

  /** The clauses as several facts, where each is one, or says nothing. */
  several(said: Utterance, whole: Guess): ClauseFact[] {
    const clauses = askedAlike(clausesIn(said), said);
    if (clauses.length < 2) return [];
    let found: ClauseFact[] = [];
    const beside: { clause: Utterance; idle: boolean }[] = [];
    const unclear: { clause: Utterance; best: Command | undefined }[] = [];
    let guessed = false;
    for (const [at, clause] of clauses.entries()) {
      if (takesBack(clause)) {
        found = found.filter(({ command }) => isKept(command));
        continue;
      }
      const plain = this.worded(clause, at === 0) ?? this.confirmed(clause, said);
      if (plain) {
        const { answer } = MEANINGS[plain.intent];
        if (!answer && directness(plain.intent, whole) < FRAME_TO_ASK) return [];
        found.push({ command: plain, clause });
        continue;
      }
      const own = this.guess(clause);
      const [best] = this.eachReading(clause, own);
      if (best && isToAct(best, own)) {
        guessed = true;
        found.push({ command: best, clause });
        continue;
      }
      beside.push({ clause, idle: idleness(own) >= IDLE });
      if (!saysNothing(clause, own)) unclear.push({ clause, best });
    }
    const facts = merged(aboutTopics(withoutOpeners(found)));
    const clears = facts.some(({ command }) => MEANINGS[command.intent].cost === "clearing");
    if (clears && beside.some(({ clause }) => makesDoubt(clause))) return [];
    // "The lids are new, two old ones": beside a confirmation stands nothing but idle talk.
    const confirms = facts.some(({ command }) => command.intent === "factor");
    if (confirms && beside.some(({ clause, idle }) => !idle || isGuess(clause.words))) return [];
    if (unclear.length === 0) return facts;
    const another = unclear.some(({ best }) => best && isAnother(best, facts));
    const slight = facts.every(({ clause }) => clause.words.length < LEAST_WORDS);
    return guessed || another || slight ? [] : facts;
  }

  /** "Yes, and what do I do now?": an answer, and what it is said beside. */
  answeredFirst(said: Utterance, plain: Command, whole: Guess): readonly ClauseFact[] | undefined {
    const facts = MEANINGS[plain.intent].answer ? [] : this.several(said, whole);
    const [first, ...others] = facts;
    if (!first || others.length === 0) return undefined;
    const { intent } = first.command;
    if (!MEANINGS[intent].answer && intent !== "acknowledge") return undefined;
    return others.some(({ command }) => command.intent === plain.intent) ? facts : undefined;
  }
}

/** A fact, and the clause it stands in. */
export type ClauseFact = { command: Command; clause: Utterance };

const OWN_QUESTION = /^(what|how|when|where|which|who|whose|why)$/;

/** "It's boiling and the lids are covered?" asks of both; "that's done, what's next?" does not. */
function askedAlike(clauses: Utterance[], said: Utterance): Utterance[] {
  const words = clauses.at(-1)?.words.map(({ word }) => word) ?? [];
  const own = beginsAsking(words) || words.some((word) => OWN_QUESTION.test(word));
  return said.asked && !own ? clauses.map((clause) => ({ ...clause, asked: true })) : clauses;
}

/** "Right, the beans are cut": a word that opens a sentence acknowledges nothing. */
function withoutOpeners(facts: ClauseFact[]): ClauseFact[] {
  const [first, ...others] = facts;
  const opens = first?.command.intent === "acknowledge" && first.clause.words.length === 1;
  return opens && others.length > 0 ? others : facts;
}

/** "Sorry" or "wait" beside words that fit nothing is no fact of its own. */
const LEAST_WORDS = 3;

/** From here on a clause that fits no wording is likely to be something besides. */
const ANOTHER_MEANING = 0.45;

/** Whether a clause that fits no wording is likely to say something besides the facts. */
function isAnother(best: Command, facts: readonly ClauseFact[]): boolean {
  if (best.confidence < ANOTHER_MEANING || MEANINGS[best.intent].cost === "harmless") return false;
  return !facts.some(({ command }) => command.intent === best.intent);
}

/** Losses stay said, and what nobody can take back; all else goes with a "no, not yet". */
function isKept({ intent }: Command): boolean {
  return MEANINGS[intent].cost === "raising" || MEANINGS[intent].cost === "harmless";
}

function makesDoubt({ words }: Utterance): boolean {
  const forgot = words.some(({ word }) => word === "forgot");
  return words.some(({ word }) => {
    return MAKES_DOUBT.has(word) && !(forgot && /^(almost|nearly)$/.test(word));
  });
}

/** In a clause beside a report these can make it a wish, a tale, a condition or its opposite. */
const MAKES_DOUBT = wordSet(
  "if unless until till when whenever wish hope hoping think thought guess maybe perhaps",
  "probably might say says said told tells claims reckon reckons ask asked dreamed dream",
  "pretend suppose used imagine yesterday almost nearly not no never none nothing only should",
  "would could may must",
);

const BACK = new RegExp(
  "^(no|nope|not|not yet|not really|not quite|no no|wrong|never mind|scratch that|strike that|" +
    "forget that|(no )?(it|that|they|she|he) (is|are|was|were|has|have|did|does) not" +
    "( yet| really)?|(i am )?only (joking|kidding)|i take (it|that) back|not true)$",
);

/** "No, it's not": what was said before it does not hold. */
function takesBack({ words }: Utterance): boolean {
  return BACK.test(words.map(({ word }) => word).join(" "));
}

/** Short, or by the model nothing for the kitchen. */
function saysNothing({ words }: Utterance, from: Guess): boolean {
  return words.length <= 2 || idleness(from) >= IDLE || from.frames.idle >= 0.5;
}

/** From here on a clause is taken to be nothing for the kitchen. */
const IDLE = 0.4;

/** "The beans, I'd give them a five": a name before a clause is what the clause is about. */
function aboutTopics(facts: readonly ClauseFact[]): ClauseFact[] {
  const takes = ({ command: { intent, slots } }: ClauseFact) =>
    "target" in MEANINGS[intent].slots && !("target" in slots);
  return facts.flatMap((fact, at): ClauseFact[] => {
    const [before, next] = [facts[at - 1], facts[at + 1]];
    if (fact.command.intent === "focus" && next && takes(next)) return [];
    if (before?.command.intent !== "focus" || !takes(fact)) return [fact];
    const { slots, ref } = before.command;
    const named = { slots: { ...fact.command.slots, ...slots }, ...(ref ? { ref } : {}) };
    return [{ ...fact, command: { ...fact.command, ...named } as Command }];
  });
}

/** A question or a call for help that says less than another of its meaning in the same breath. */
function isLess(one: Command, list: readonly Command[]): boolean {
  if (MEANINGS[one.intent].cost !== "harmless" || Object.keys(one.slots).length > 0) return false;
  return list.some((other) => other !== one && other.intent === one.intent);
}

/** Both say something, and not of the same slots: "crunch two and flavor four". */
function completes(one: Command, other: Command): boolean {
  const [mine, theirs] = [Object.keys(one.slots), Object.keys(other.slots)];
  const apart = !mine.some((slot) => slot !== "target" && theirs.includes(slot));
  return one.intent === other.intent && mine.length > 0 && theirs.length > 0 && apart;
}

/** Of one meaning, what its clauses say together, unless they contradict each other. */
function merged(facts: readonly ClauseFact[]): ClauseFact[] {
  const list: ClauseFact[] = [];
  for (const fact of facts) {
    const { intent, slots } = fact.command;
    const same = list.some(({ command }) => {
      return command.intent === intent && JSON.stringify(command.slots) === JSON.stringify(slots);
    });
    if (same) continue;
    const last = list.at(-1);
    if (last && completes(last.command, fact.command)) {
      const command = { ...last.command, slots: { ...slots, ...last.command.slots } } as Command;
      list[list.length - 1] = { ...last, command };
    } else list.push(fact);
  }
  const all = list.map(({ command }) => command);
  return list.filter(({ command }) => !isLess(command, all));
}
