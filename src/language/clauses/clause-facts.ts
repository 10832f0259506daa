/** What a sentence says by its clauses and by the model, with the values found in the words. */
import { type Command, commandOf, type Intent, withSlots } from "../../kitchen/command.ts";
import { unsureAnswer } from "../answers/answers.ts";
import { confirmInClause, isGuess } from "../answers/confirms.ts";
import type { Context } from "../context.ts";
import { isAsked } from "../evidence/asked-about.ts";
import { foundSlots } from "../evidence/found-slots.ts";
import { Scan } from "../evidence/scan.ts";
import { clausesIn } from "../evidence/split.ts";
import { opensOnly } from "../fillers.ts";
import { wordSet } from "../grammar/word-set.ts";
import { beginsAsking } from "../guards.ts";
import { isIntent, MEANINGS } from "../intents/all.ts";
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
  isEmpty,
  isOutOfPlace,
  isToAct,
  isToAsk,
  MOST_GUESSED,
  situationOf,
} from "../weighing.ts";
import type { Utterance } from "../words.ts";
import { answerable } from "./answerable.ts";
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
  withMoment,
  withPronouns,
} from "./facts-together.ts";
import { furtherTimer, withLabel } from "./further-timers.ts";
import {
  agreeing,
  asMeanings,
  IDLE,
  IN_PASSING,
  isBorneOut,
  likelihood,
  saysNothing,
  within,
} from "./guessed.ts";
import {
  ANOTHER_MEANING,
  addsNothing,
  askedOf,
  type ClausesRead,
  type Gathered,
  isAnother,
  isContrast,
  isPartOfAnswer,
  NOTHING_TOLD,
  othersOf,
  raisingFirst,
  type Unclear,
} from "./unclear.ts";
import { runTogether, wholeClauses } from "./whole-clauses.ts";

export const MOST_CANDIDATES = 3;

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
    const guessed = guess(words, said.asked, this.situation, this.models);
    const made = { ...guessed, intents: asMeanings(guessed.intents) };
    this.guesses.set(said, made);
    return made;
  }

  /** A clause that says by itself, and names it, that somebody is hurt or in danger. */
  urgentIn(said: Utterance): Likely | undefined {
    const clauses = clausesIn(said);
    if (clauses.length < 2) return undefined;
    return clauses.flatMap((clause): Likely[] => {
      const { intents, frames } = this.guess(clause);
      const [first] = intents;
      if (!first || !isIntent(first.name) || !MEANINGS[first.name].urgent) return [];
      if (first.probability < URGENT || frames.said < URGENT) return [];
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
    const long = clausesIn(said).length > 1 || said.words.length >= A_STORY;
    const story = long && !isAsked(question, said, false);
    if (story && !readings.some(({ intent }) => ABOUT_ASKED.has(intent))) return undefined;
    return unsureAnswer(said, question);
  }

  /** Sure enough to be acted on, in this moment. */
  isToAct(command: Command, from: Guess): boolean {
    // Words that may be meant for an answer of safety finish nothing by a guess.
    const guarded = this.context.question?.guards === true;
    return isToAct(command, from, isAtTheTable(this.context) && !guarded);
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

  /** A question by what it is about: of those that are near, the one that has an answer. */
  answerable(command: Command, said: Utterance, from: Guess): Command {
    // A clause may be about what another one names: "the lid won't go down, it sits crooked".
    const whole = said.within ?? said;
    return answerable(command, from, (intent) => this.command(intent, MOST_GUESSED, whole));
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
      if (isOutOfPlace(name, this.context)) continue;
      const command = this.command(name, probability, said, slots);
      if (command) yield this.answerable(command, said, from);
    }
  }

  /** What clauses say by themselves and may be asked about, what raises a doubt first. */
  likelyClauses(said: Utterance, whole: Guess): ClauseFact[] {
    const direct = DIRECT.reduce((sum, frame) => sum + whole.frames[frame], whole.frames.denied);
    const clauses = direct >= FRAME_TO_ACT ? wholeClauses(said, this.context) : [];
    const likely = clauses.flatMap((clause): ClauseFact[] => {
      const own = within(this.guess(clause), whole);
      const [command] = this.eachReading(clause, own);
      const asks = command && !MEANINGS[command.intent].answer && isToAsk(command, own);
      return asks ? [{ command, clause }] : [];
    });
    return raisingFirst(likely);
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

  /** "Um... five. It says five.": what was answered, once more. */
  private answersAgain(clause: Utterance, found: readonly ClauseFact[]): boolean {
    const again = this.context.question && surelyUnderstood(clause, this.context);
    return found.some(({ command }) => {
      const same = JSON.stringify(command.slots) === JSON.stringify(again?.slots);
      return MEANINGS[command.intent].answer && again?.intent === command.intent && same;
    });
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
    const unclear: Unclear[] = [];
    let guessed = false;
    for (const [at, clause] of clauses.entries()) {
      if (takesBack(clause)) {
        found = found.filter(({ command }) => isKept(command));
        continue;
      }
      const own = within(this.guess(clause), whole);
      const first = found.length === 0 && clauses.slice(0, at).every(addsNothing);
      const plain =
        this.plain(clause, said, first, found) ?? agreeing(accountedFor(clause, this.context), own);
      if (plain) {
        const { answer, plainly } = MEANINGS[plain.intent];
        // "My beans came up, six of them": a count of something else.
        const counted = Object.values(plain.slots).some((value) => typeof value === "number");
        if (plainly && counted && likelihood(plain.intent, whole) < LEAST_COUNTED) continue;
        if (IN_PASSING.has(plain.intent) && !isBorneOut(plain.intent, clause, whole)) continue;
        const alone = clauses.every((one) => one === clause || isOwnMatter(one));
        if (!answer && !this.isMeantSo(plain, clause, alone ? own : whole)) return NOTHING_TOLD;
        if (isContrast(clause, plain, found)) continue;
        const moment = plain.intent === "correct-time" && clauses.length > 1;
        const timed = moment ? withMoment(found.at(-1), plain) : undefined;
        if (timed) {
          found[found.length - 1] = timed;
          continue;
        }
        // "The beets are on, like three minutes ago": a moment of what was not understood.
        const before = unclear.at(-1)?.clause === clauses[at - 1];
        if (moment && (before || clauses.slice(at + 1).some((one) => this.reports(one)))) {
          unclear.push({ clause, best: undefined });
          continue;
        }
        found.push({ command: plain, clause });
        continue;
      }
      const [best] = this.eachReading(clause, own);
      if (best && isContrast(clause, best, found)) continue;
      if (best && this.isToActBeside(best, clause, own, whole)) {
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
      if (opensOnly(clause.words) || this.answersAgain(clause, found)) continue;
      beside.push({ clause, idle: idleness(own) >= IDLE });
      const asks = best && best.confidence >= ANOTHER_MEANING && isToAsk(best, own);
      if (!saysNothing(clause, own)) unclear.push({ clause, best, asks: asks === true });
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
    const facts = all.filter(({ command }) => {
      const { intent } = command;
      if (intent === "focus" && isEmpty(this.context)) return false;
      if (intent === "factor") return !stray;
      if (isPartOfAnswer(command, unclear, this.context)) return false;
      if (intent === "answer" && !answers) return false;
      // Jars in a canner whose boil is lost have not sealed.
      if (intent === "sealed" && all.some(isLossInside)) return false;
      const clears = MEANINGS[intent].cost === "clearing";
      return !clears || !(doubt || (guessed && unclear.length > 0));
    });
    const dropped = all.filter((one) => !facts.includes(one)).map(({ clause }) => clause);
    const unused = [...dropped, ...othersOf(unclear)];
    if (unclear.length === 0 && dropped.length === 0) return { facts, unused };
    const clears = facts.some(({ command }) => MEANINGS[command.intent].cost === "clearing");
    const own = clears && othersOf(unclear).length === 0;
    if (facts.every(isSlight) && !own) return NOTHING_TOLD;
    if (clears) return { facts, unused };
    const asked = askedOf(unclear, facts);
    return { facts: this.alone(facts, said, whole), unused, ...(asked ? { asked } : {}) };
  }

  /** Whether a clause is a report that may have a moment of its own. */
  private reports(clause: Utterance): boolean {
    const command = surelyUnderstood(clause, this.context);
    return command !== undefined && MEANINGS[command.intent].report === true;
  }

  /** A guess of a clause is acted on where the whole sentence bears it out. */
  private isToActBeside(best: Command, clause: Utterance, own: Guess, whole: Guess): boolean {
    if (best.confidence < LEAST_BESIDE || !this.isToAct(best, own)) return false;
    const { cost, answer, urgent } = MEANINGS[best.intent];
    if (cost === "raising" || answer || urgent) return true;
    return isBorneOut(best.intent, clause, whole);
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

/** How likely a clause has to say that somebody is hurt. */
const URGENT = 0.5;

/** From so many words on, whoever does not know something has to name what was asked. */
const A_STORY = 9;
/** How likely something else has to be meant than an answer to what is asked. */
const OTHERWISE = 0.6;
const ABOUT_ASKED = wordSet("answer yes no factor unknown done repeat");

/** How likely the whole sentence has to be about what a clause of it counts or measures. */
const LEAST_COUNTED = 0.02;

/** How likely a clause of several has to say something for it to be acted on. */
const LEAST_BESIDE = 0.5;

const ECHO = wordSet("is are did does do has have was were");
