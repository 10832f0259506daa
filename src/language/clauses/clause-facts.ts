/** What a sentence says by its clauses and by the model, with the values found in the words. */
import { type Command, commandOf, type Intent, withSlots } from "../../kitchen/command.ts";
import { unsureAnswer } from "../answers/answers.ts";
import { confirmInClause, isGuess } from "../answers/confirms.ts";
import type { Context } from "../context.ts";
import { foundSlots } from "../evidence/found-slots.ts";
import { Scan } from "../evidence/scan.ts";
import { clausesIn } from "../evidence/split.ts";
import { wordSet } from "../grammar/word-set.ts";
import { beginsAsking } from "../guards.ts";
import { isIntent, learned, MEANINGS } from "../intents/all.ts";
import { FRAMES } from "../model/corpus.ts";
import type { Situation } from "../model/features.ts";
import type { Likely, Models } from "../model/linear-model.ts";
import { type Guess, guess } from "../model/shipped.ts";
import { isOwnMatter } from "../qualifying.ts";
import { accountedFor, readerIn, surelyUnderstood } from "../understand.ts";
import { finishSlots } from "../values/finish-slots.ts";
import {
  DIRECT,
  directness,
  FRAME_TO_ACT,
  FRAME_TO_ASK,
  idleness,
  isAtTheTable,
  isToAct,
  MOST_GUESSED,
  situationOf,
} from "../weighing.ts";
import type { Utterance } from "../words.ts";
import { makesDoubt, takesBack } from "./doubting.ts";
import {
  aboutTopics,
  answersPlainly,
  type ClauseFact,
  isKept,
  isLossInside,
  isSlight,
  merged,
  tasteOf,
  withPronouns,
} from "./facts-together.ts";
import { furtherTimer, withLabel } from "./further-timers.ts";
import { runTogether, wholeClauses } from "./whole-clauses.ts";

export const MOST_CANDIDATES = 3;

/** What a sentence says by its clauses, and those that were neither used nor idle talk. */
type ClausesRead = { facts: readonly ClauseFact[]; unused: readonly Utterance[] };

const NOTHING_TOLD: ClausesRead = { facts: [], unused: [] };

/** The clauses of a sentence, sorted: facts, what is said beside them, and what fits nothing. */
type Gathered = {
  found: readonly ClauseFact[];
  beside: readonly { clause: Utterance; idle: boolean }[];
  unclear: readonly { clause: Utterance; best: Command | undefined }[];
  /** A fact rests on a guess. */
  guessed: boolean;
};

export class Hearing {
  private readonly situation: Situation;
  /** Of the utterance in which values were last looked for. */
  private scan: Scan | undefined;
  private readonly guesses = new Map<Utterance, Guess>();

  constructor(
    readonly context: Context,
    private readonly models: Models,
  ) {
    this.situation = situationOf(context);
  }

  guess(said: Utterance): Guess {
    const known = this.guesses.get(said);
    if (known) return known;
    const words = said.words.map(({ word }) => word);
    const { intents, frames } = guess(words, said.asked, this.situation, this.models);
    const made = { intents: asMeanings(intents), frames };
    this.guesses.set(said, made);
    return made;
  }

  /** A clause that says by itself, and names it, that somebody is hurt or in danger. */
  urgentIn(said: Utterance): Likely | undefined {
    const clauses = clausesIn(said);
    if (clauses.length < 2) return undefined;
    return clauses.flatMap((clause): Likely[] => {
      const own = this.guess(clause);
      const [first] = own.intents;
      if (!first || !isIntent(first.name) || !MEANINGS[first.name].urgent) return [];
      if (first.probability < URGENT || own.frames.said < URGENT) return [];
      const named = this.command(first.name, first.probability, clause);
      return named && Object.keys(named.slots).length > 0 ? [first] : [];
    })[0];
  }

  /** That somebody does not know what was asked, unless something else is likelier meant. */
  notKnown(said: Utterance, plain: Command, readings: readonly Command[]): Command | undefined {
    const { question } = this.context;
    const [best] = readings;
    const other = best && best.confidence >= OTHERWISE && !ABOUT_ASKED.has(best.intent);
    if (!question || other || plain.intent !== "unknown") return undefined;
    return unsureAnswer(said, question);
  }

  /** Sure enough to be acted on, in this moment. */
  isToAct(command: Command, from: Guess): boolean {
    return isToAct(command, from, isAtTheTable(this.context));
  }

  /** A reading of the model as a command, with the values found in the words. */
  command(
    intent: Intent,
    probability: number,
    said: Utterance,
    slots: object = {},
  ): Command | undefined {
    const found = foundSlots(intent, this.scanOf(said));
    const raw = found && { ...found, ...slots };
    return raw && finishSlots(intent, raw, Math.min(probability, MOST_GUESSED), said, this.context);
  }

  private scanOf(said: Utterance): Scan {
    if (this.scan?.said !== said) this.scan = new Scan(said, readerIn(said, this.context));
    return this.scan;
  }

  /** What the model takes words to mean, with values, the likeliest first. */
  *eachReading(said: Utterance, from: Guess): Generator<Command> {
    const idle = idleness(from);
    for (const { name, probability, slots } of from.intents.slice(0, 2 * MOST_CANDIDATES)) {
      if (!isIntent(name) || name === "unknown" || probability < idle) continue;
      const command = this.command(name, probability, said, slots);
      if (command) yield command;
    }
  }

  /** Whether a clause is too short to say anything, or is idle talk. */
  isIdle(clause: Utterance): boolean {
    const remark = clause.words[0]?.word === "which";
    return remark || saysNothing(clause, this.guess(clause)) || isOwnMatter(clause);
  }

  /** What a clause says by its wording; a yes or no only where something is asked. */
  private worded(clause: Utterance, said: Utterance, first: boolean): Command | undefined {
    const plain = surelyUnderstood(clause, this.context);
    if (!plain) return undefined;
    if (!MEANINGS[plain.intent].answer) return plain;
    const asks = said.asked || beginsAsking(clause.words.map(({ word }) => word));
    return first && this.context.question && !asks ? plain : undefined;
  }

  /** "The beet water is", "the canner did": what the report before it was about. */
  private echoed(clause: Utterance): Command | undefined {
    if (!ECHO.has(clause.words.at(-1)?.word ?? "")) return undefined;
    const named = surelyUnderstood({ ...clause, words: clause.words.slice(0, -1) }, this.context);
    return named?.intent === "focus" ? named : undefined;
  }

  /** What a clause says about a critical factor, covered from end to end. */
  private confirmed(clause: Utterance, said: Utterance, found: readonly ClauseFact[]) {
    const factors = this.context.factors ?? [];
    const beside = found.some(({ command }) => /^(jars-filled|factor)$/.test(command.intent));
    const confirm = factors.length > 0 ? confirmInClause(clause, said, factors, beside) : undefined;
    if (!confirm) return undefined;
    return commandOf("factor", { ...confirm }, { confirms: [confirm] });
  }

  /** What a clause says without a guess, by itself or after the facts before it. */
  private plain(clause: Utterance, said: Utterance, first: boolean, found: readonly ClauseFact[]) {
    return (
      furtherTimer(clause, found.at(-1)?.command, this.context) ??
      this.worded(clause, said, first) ??
      this.confirmed(clause, said, found) ??
      (found.length > 0 ? this.echoed(clause) : undefined) ??
      tasteOf(clause, found.at(-1)?.command)
    );
  }

  /** The clauses as several facts, where each is one, or says nothing. */
  several(said: Utterance, whole: Guess): ClausesRead {
    const clauses = wholeClauses(said, this.context);
    let found: ClauseFact[] = [];
    const beside: { clause: Utterance; idle: boolean }[] = [];
    const unclear: { clause: Utterance; best: Command | undefined }[] = [];
    let guessed = false;
    for (const [at, clause] of clauses.entries()) {
      if (takesBack(clause)) {
        found = found.filter(({ command }) => isKept(command));
        continue;
      }
      const own = within(this.guess(clause), whole);
      const plain =
        this.plain(clause, said, at === 0, found) ??
        agreeing(accountedFor(clause, this.context), own);
      if (plain) {
        const { answer, plainly } = MEANINGS[plain.intent];
        // "My beans came up, six of them": a count of something else.
        const counted = Object.values(plain.slots).some((value) => typeof value === "number");
        if (plainly && counted && likelihood(plain.intent, whole) < LEAST_COUNTED) continue;
        const alone = clauses.every((one) => one === clause || isOwnMatter(one));
        if (!answer && !this.isMeantSo(plain, clause, alone ? own : whole)) return NOTHING_TOLD;
        if (isContrast(clause, plain, found)) continue;
        const last = found.at(-1);
        if (plain.intent === "correct-time" && clauses.length > 1) {
          // "The weight just started, well, three minutes ago": the moment of the report before.
          const timed = last && "at" in MEANINGS[last.command.intent].slots;
          if (timed && last) {
            const command = withSlots(last.command, { at: plain.slots.at });
            found[found.length - 1] = { ...last, command };
            continue;
          }
          // "The beets are on, like three minutes ago": a moment of what was not understood.
          const before = unclear.at(-1)?.clause === clauses[at - 1];
          if (before || clauses.slice(at + 1).some((one) => this.reports(one))) {
            unclear.push({ clause, best: undefined });
            continue;
          }
        }
        found.push({ command: plain, clause });
        continue;
      }
      const [best] = this.eachReading(clause, own);
      if (best && isContrast(clause, best, found)) continue;
      if (best && this.isToAct(best, own)) {
        guessed = true;
        found.push({ command: best, clause });
        continue;
      }
      const last = found.at(-1);
      const labeled = withLabel(clause, last?.command);
      if (last && labeled) {
        found[found.length - 1] = { ...last, command: labeled };
        continue;
      }
      beside.push({ clause, idle: idleness(own) >= IDLE });
      if (!saysNothing(clause, own)) unclear.push({ clause, best });
    }
    return this.settled({ found, beside, unclear, guessed }, said, whole);
  }

  /** Which of the facts stand beside what was not understood; nothing clears beside a doubt. */
  private settled(
    { found, beside, unclear, guessed }: Gathered,
    said: Utterance,
    whole: Guess,
  ): ClausesRead {
    const all = merged(withPronouns(aboutTopics(found)));
    // "The lids are new, two old ones": only idle talk may stand beside a confirmation.
    const stray = beside.some(({ clause, idle }) => !idle || isGuess(clause.words));
    const another = unclear.some(({ best }) => best && isAnother(best, all));
    const doubt = beside.some(({ clause }) => makesDoubt(clause)) || another;
    const answers = answersPlainly(all, beside, guessed, this.context);
    const facts = all.filter(({ command: { intent } }) => {
      if (intent === "factor") return !stray;
      if (intent === "answer" && !answers) return false;
      // Jars in a canner whose boil is lost have not sealed.
      if (intent === "sealed" && all.some(isLossInside)) return false;
      const clears = MEANINGS[intent].cost === "clearing";
      return !clears || !(doubt || (guessed && unclear.length > 0));
    });
    const dropped = all.filter((one) => !facts.includes(one)).map(({ clause }) => clause);
    const others = unclear.map(({ clause }) => clause).filter((one) => !isOwnMatter(one));
    const unused = [...dropped, ...others];
    if (unclear.length === 0 && dropped.length === 0) return { facts, unused };
    const clears = facts.some(({ command }) => MEANINGS[command.intent].cost === "clearing");
    const own = clears && unclear.every(({ clause }) => isOwnMatter(clause));
    if (facts.every(isSlight) && !own) return NOTHING_TOLD;
    return { facts: clears ? facts : this.alone(facts, said, whole), unused };
  }

  /** Whether a clause is a report that may have a moment of its own. */
  private reports(clause: Utterance): boolean {
    const command = surelyUnderstood(clause, this.context);
    return command !== undefined && MEANINGS[command.intent].report === true;
  }

  /** Whether it is meant as said; a report may stand beside orders, unless it clears a doubt. */
  private isMeantSo({ intent }: Command, clause: Utterance, whole: Guess): boolean {
    if (directness(intent, whole) >= FRAME_TO_ASK) return true;
    if (MEANINGS[intent].cost === "clearing") return false;
    const direct = DIRECT.reduce((sum, frame) => sum + whole.frames[frame], 0);
    return direct >= FRAME_TO_ACT && directness(intent, this.guess(clause)) >= FRAME_TO_ACT;
  }

  /** What stands beside a single fact may hold its values: "I was out, for ten minutes". */
  private alone(
    facts: readonly ClauseFact[],
    said: Utterance,
    whole: Guess,
  ): readonly ClauseFact[] {
    const [fact] = facts;
    if (!fact || facts.length > 1) return facts;
    const [likely] = this.eachReading(said, whole);
    if (likely?.intent !== fact.command.intent) return facts;
    const { intent, slots, ...others } = fact.command;
    return [{ ...fact, command: { ...withSlots(likely, slots), ...others } }];
  }

  /** Two facts with no mark between them, where the words are no single one as a whole. */
  runTogether(said: Utterance): readonly ClauseFact[] | undefined {
    return runTogether(said, this.context)?.flatMap((clause) => {
      const command = surelyUnderstood(clause, this.context);
      return command ? [{ command, clause }] : [];
    });
  }

  /** "Yes, and what do I do now?": an answer, and what it is said beside. */
  answeredFirst(said: Utterance, plain: Command, whole: Guess): readonly ClauseFact[] | undefined {
    const facts = MEANINGS[plain.intent].answer ? [] : this.several(said, whole).facts;
    const [first, ...others] = facts;
    if (!first || others.length === 0) return undefined;
    const { intent } = first.command;
    if (!MEANINGS[intent].answer && intent !== "acknowledge") return undefined;
    return others.some(({ command }) => command.intent === plain.intent) ? facts : undefined;
  }
}

/** Classes of the model as what they mean; of two that mean one thing, the likelier with both. */
function asMeanings(intents: readonly Likely[]): Likely[] {
  const list: Likely[] = [];
  for (const { name, probability } of intents) {
    const { intent, slots } = learned(name);
    const same = list.find((one) => one.name === intent);
    if (same) same.probability += probability;
    else list.push({ name: intent, probability, ...(intent === name ? {} : { slots }) });
  }
  return list.sort((one, other) => other.probability - one.probability);
}

/** How likely a clause has to say that somebody is hurt. */
const URGENT = 0.5;

/** How likely something else has to be meant than an answer to what is asked. */
const OTHERWISE = 0.6;
const ABOUT_ASKED = wordSet("answer yes no factor unknown done repeat");

/** How likely a meaning has to be that is taken from words in no known order. */
const AGREED = 0.4;

/** A report that all words are accounted for in, where the model takes it so, too. */
export function agreeing(plain: Command | undefined, from: Guess): Command | undefined {
  const [first] = from.intents;
  const agreed = first && first.name === plain?.intent && first.probability >= AGREED;
  return agreed && plain && directness(plain.intent, from) >= AGREED ? plain : undefined;
}

/** How likely the whole sentence has to be about what a clause of it counts or measures. */
const LEAST_COUNTED = 0.02;

function likelihood(intent: string, { intents }: Guess): number {
  return intents.find(({ name }) => name === intent)?.probability ?? 0;
}

/** A meaning that the whole sentence speaks against is never quite ruled out for a clause. */
const LEAST_WHOLE = 0.01;

/** What a clause means, as far as the whole sentence bears it out. */
function within(own: Guess, whole: Guess): Guess {
  const intents = own.intents.map((one) => {
    const all = likelihood(one.name, whole);
    return { ...one, probability: Math.sqrt(one.probability * Math.max(all, LEAST_WHOLE)) };
  });
  const sum = intents.reduce((before, { probability }) => before + probability, 0);
  const shared = intents.map((one) => ({ ...one, probability: one.probability / sum }));
  const frames = { ...own.frames };
  for (const frame of FRAMES) frames[frame] = (own.frames[frame] + whole.frames[frame]) / 2;
  return { intents: shared.sort((one, other) => other.probability - one.probability), frames };
}

/** "Quarts for the beets, not pints": what is not meant, after what is. */
function isContrast({ words }: Utterance, { intent }: Command, found: readonly ClauseFact[]) {
  return words[0]?.word === "not" && found.at(-1)?.command.intent === intent;
}

const ECHO = wordSet("is are did does do has have was were");

/** From this probability on, a clause that fits no wording is likely to add something. */
const ANOTHER_MEANING = 0.45;

/** Whether a clause that fits no wording is likely to say something besides the facts. */
function isAnother(best: Command, facts: readonly ClauseFact[]): boolean {
  if (best.confidence < ANOTHER_MEANING || MEANINGS[best.intent].cost === "harmless") return false;
  return !facts.some(({ command }) => command.intent === best.intent);
}

/** Short, or by the model nothing for the kitchen. */
function saysNothing({ words }: Utterance, from: Guess): boolean {
  return words.length <= 2 || idleness(from) >= IDLE || from.frames.idle >= 0.5;
}

/** From this probability on, a clause is taken to be nothing for the kitchen. */
const IDLE = 0.4;
