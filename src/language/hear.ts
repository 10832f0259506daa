/**
 * What a sentence leads to, from all the evidence there is: wordings that fit it as a whole or by
 * clauses, and what a learned model takes it to mean, in the situation it was said in. What a
 * mistake would cost decides between acting, asking back and ignoring it.
 */

import { type Command, commandOf, type Evidence } from "../kitchen/command.ts";
import type { OwnWords } from "../kitchen/own-words.ts";
import { foodsNamed } from "../recipe/foods/name-foods.ts";
import { unhedged, yesAlone } from "./answers/plain-yes.ts";
import { wholeOrders } from "./clauses/beside-begins.ts";
import { agreeing, Hearing, MOST_CANDIDATES } from "./clauses/clause-facts.ts";
import type { ClauseFact } from "./clauses/facts-together.ts";
import { withImplied } from "./clauses/implied.ts";
import { begunLots, lotsRead } from "./clauses/lots-read.ts";
import { besideText } from "./clauses/whole-clauses.ts";
import type { Context } from "./context.ts";
import { isAsked } from "./evidence/asked-about.ts";
import { doubtIn, doubtTakenBack, lossIn, withEvidence } from "./evidence/doubts.ts";
import { isElsewhere } from "./evidence/elsewhere.ts";
import { orSpoiled, signIn } from "./evidence/gone-off.ts";
import { isInJars, untakenDoubt } from "./evidence/untaken.ts";
import { isStopped } from "./frames.ts";
import { isIntent, MEANINGS } from "./intents/all.ts";
import { isCovered } from "./intents/uncovered.ts";
import type { Frame } from "./model/corpus.ts";
import type { Models } from "./model/linear-model.ts";
import { type Guess, shippedModels } from "./model/shipped.ts";
import { asNamed, sealsMeant, withJars, withLots } from "./named-jars.ts";
import { type Recalled, recalled } from "./own-words.ts";
import { toldWithin } from "./polite-reports.ts";
import { withoutFirstThoughts } from "./second-thoughts.ts";
import { CERTAIN, LEAST_KNOWN, surelyUnderstood, understandUtterance } from "./understand.ts";
import { finishSlots } from "./values/finish-slots.ts";
import { type JarsNamed, jarsNamed } from "./values/jar-names.ts";
import { lotsWhen } from "./values/lots-when.ts";
import { BOUNDS, contradicted, DIRECT, frameOf, isToAsk } from "./weighing.ts";
import { type Utterance, utteranceOf } from "./words.ts";

/**
 * `whole`: a wording covers the sentence from its first word to its last. `clauses`: those that the
 * commands stand in. `polite`: a report wrapped in a question.
 */
type Read = Omit<Heard, "unused"> &
  Pick<Guess, "intents"> & {
    whole?: boolean;
    clauses?: readonly Utterance[];
    left?: readonly Utterance[];
    polite?: boolean;
    accounted?: true;
    /** The words in which doubts are looked for, where not in all of them. */
    rest?: Utterance;
  };

export type Heard = {
  /** `sure`: it is acted on; `ask`: a closed question about the first candidate; else nothing. */
  reading: "sure" | "ask" | "unknown";
  /** What is acted on, in the order it was said; empty unless sure. */
  commands: readonly Command[];
  /** What it may mean, the likeliest first; at most three. */
  candidates: readonly Command[];
  /** How it is meant, as far as the model knows. */
  frame: Frame;
  /** The doubt it raises about jars at stake, where nothing is done about it. */
  evidence?: Evidence;
  /** The doubt it raises if its commands turn out to change nothing. */
  otherwise?: Evidence;
  /** Clauses that were neither used nor idle talk, as they were said. */
  unused?: readonly string[];
  /** The memory it is acted on by: a yes that was once said to the same words. */
  memory?: OwnWords;
};

/** Hears a sentence. Deterministic; any text at all gives an answer, in bounded time. */
export function hear(words: string, context: Context, models: Models = shippedModels()): Heard {
  const when = lotsWhen(words, context);
  if (when) {
    const heard = ofJars(when.text, context, models);
    const about = withLots(heard.commands, when, context);
    if (about) return { ...inWords(heard, words), commands: about };
  }
  return wholeOrders(inWords(ofJars(words, context, models), words), words, context);
}

/** Jars named by what is on them are heard as plain numbers, and then looked up. */
function ofJars(words: string, context: Context, models: Models): Heard {
  const named = jarsNamed(words, context);
  if (named) {
    const about = { ...context, jarsSaid: named.jars };
    const heard = plainlyHeard(sealsMeant(named.text, context), about, models);
    const commands = withJars(heard.commands, named, context);
    const { unused = [] } = heard;
    const left = unused.length > 0 ? { unused: unused.map((one) => asNamed(one, named)) } : {};
    if (commands) return { ...heard, ...left, commands };
    const asked = withJars(heard.candidates.slice(0, 1), named, context);
    if (heard.reading === "ask" && asked) return { ...heard, candidates: asked };
    return withoutSeals(plainlyHeard(words, context, models), named, context);
  }
  return plainlyHeard(words, context, models);
}

/** "All down, but R two clicks": with jars named beside it, seals are asked about and not taken. */
function withoutSeals(heard: Heard, named: JarsNamed, context: Context): Heard {
  if (!heard.commands.some(({ intent }) => intent === "sealed")) return heard;
  const failed = commandOf("seal-failed", { jars: [...named.jars.keys()] });
  const candidates = withJars([failed], named, context) ?? [];
  return { ...heard, reading: "ask", commands: [], candidates };
}

/** What is kept of a sentence is kept in its own words. */
function inWords(heard: Heard, text: string): Heard {
  const { evidence, otherwise } = heard;
  return {
    ...heard,
    commands: heard.commands.map((one) => withEvidence(one, text)),
    ...(evidence ? { evidence: { ...evidence, text } } : {}),
    ...(otherwise ? { otherwise: { ...otherwise, text } } : {}),
  };
}

function plainlyHeard(words: string, context: Context, models: Models): Heard {
  const { left, ...heard } = orSpoiled(heardIn(words, context, models), words);
  const acted = heard.reading === "sure" && heard.commands.some((command) => !isHarmless(command));
  const unused = acted ? (left ?? []).map(asSaid).filter((text) => !signIn(text)) : [];
  return unused.length > 0 ? { ...heard, unused } : heard;
}

const asSaid = ({ text, words }: Utterance) => text.slice(words[0]?.start, words.at(-1)?.end);

function heardIn(words: string, context: Context, models: Models): Read {
  const said = withoutFirstThoughts(words, context);
  const hearing = new Hearing(context, models);
  const alone = (one: Utterance) =>
    unhedged(unlessStopped(readIn(one, context, hearing), one), one, context);
  const lots = lotsRead(words, said, hearing, alone);
  const read = unmixed(lots ?? readIn(said, context, hearing));
  const plainly = unhedged(yesAlone(unlessStopped(read, said), said, context), said, context);
  const anew = urgentFirst(plainly, said, hearing);
  const own = anew.reading === "sure" ? undefined : recalled(words, said, anew, hearing);
  const heard = own ? recalling(anew, own) : anew;
  const { frame, intents } = heard;
  const sure = heard.reading === "sure";
  const commands = sure ? withImplied(heard.commands, hearing, said) : heard.commands;
  const lost = commands.map((command): Command => {
    const evidence = lossIn(command, { ...said, text: words });
    return evidence ? { ...command, evidence } : command;
  });
  const aside = doubtBesideAsked(heard, said, context);
  if (aside) return { ...heard, reading: "unknown", commands: [], evidence: aside };
  // A memory does not lessen a doubt that the words raise, nor does first aid.
  const urgent = commands.some(({ intent }) => MEANINGS[intent].urgent === true);
  const answered = anew.reading === "sure" && !urgent;
  const harmless = commands.every(isHarmless);
  const settled = heard.whole === true && !harmless;
  const told = lost.some(({ evidence }) => evidence !== undefined);
  if (told && anew.reading === "sure") return { ...heard, commands: lost };
  const [unsaid] = commands.flatMap((one) => doubtTakenBack(one, { ...said, text: words }) ?? []);
  if (unsaid) return { ...heard, otherwise: unsaid };
  const number = commands.some(isBareNumber) && context.question === undefined;
  if (number) return { ...heard, otherwise: { strength: "trace", about: "boil", text: words } };
  if (isCovered(said)) return heard;
  const evidence = doubtIn(heard.rest ?? said, { frame, intents }, answered);
  if (evidence === undefined) {
    const isNothing =
      heard.reading === "unknown" || (answered && harmless) || isUnsure(commands, said);
    // What was an order or a report and cannot be tells of jars only once some are filled.
    if (!isNothing && answered && !isInJars(context)) return heard;
    // What is told is kept, should it come to nothing.
    const told = answered && !said.asked ? doubtIn(said, { frame, intents }, false) : undefined;
    const kept = told?.past === true && !OF_HEAT.has(told.about) && told.foods === undefined;
    if (kept) return { ...heard, otherwise: weakened(told) };
    const untaken = untakenDoubt(said, hearing.guess(said), context);
    const raises = commands.some(({ intent }) => MEANINGS[intent].cost === "raising");
    if ((heard.whole && !raises) || own || !untaken) return heard;
    return { ...heard, [isNothing ? "evidence" : "otherwise"]: untaken };
  }
  if (answered && settled) {
    return isLikely(evidence) ? { ...heard, otherwise: weakened(evidence) } : heard;
  }
  if (!answered || !harmless) return { ...heard, evidence };
  // "Can I begin the beets now": what a question is about has gone into no jar.
  const asks = said.asked || frame !== "said";
  if (asks && evidence.about === "food") return heard;
  return { ...heard, evidence: weakened(evidence) };
}

const OF_HEAT: ReadonlySet<Evidence["about"]> = new Set(["boil", "water", "pressure"]);

/** More than a word that may have to do with the jars: "it boils" is said often. */
function isLikely({ strength, foods, about, intent }: Evidence): boolean {
  const ofHeat = OF_HEAT.has(about) && about !== "pressure" && intent !== undefined;
  return foods !== undefined || (strength !== "trace" && !ofHeat);
}

/** A question that has its answer interrupts nothing. */
function weakened(evidence: Evidence): Evidence {
  return { ...evidence, strength: "trace" };
}

/**
 * "I may have overfilled a few" while it is asked whether the food was hot: whoever is not sure of
 * something else answers nothing, and raises a doubt about that.
 */
function doubtBesideAsked({ commands, frame, intents }: Read, said: Utterance, context: Context) {
  const unsure = commands.some(({ intent, slots }) => intent === "answer" && "unsure" in slots);
  const { question } = context;
  if (!unsure || !question) return undefined;
  const doubt = doubtIn(said, { frame, intents }, false);
  if (!doubt) return undefined;
  return isAsked(question, said, OF_HEAT.has(doubt.about)) ? undefined : doubt;
}

/** A story told for an answer, of which no more is taken than that nobody knows. */
const isUnsure = (commands: readonly Command[], { words }: Utterance) =>
  words.length >= A_STORY &&
  commands.some(({ intent, slots }) => intent === "answer" && "unsure" in slots);
const A_STORY = 6;

/** "One ninety": with nothing asked it may be what a thermometer or a gauge shows. */
const isBareNumber = ({ intent, slots }: Command) =>
  intent === "answer" && "value" in slots && typeof slots.value === "number";

function isHarmless({ intent }: Command): boolean {
  return MEANINGS[intent].cost === "harmless";
}

/**
 * What is begun along with a food that was not tested may be one mix with it, and is not begun: the
 * untested food is answered, and one that nothing is known of leaves the order open.
 */
function unmixed(heard: Read): Read {
  const begun = heard.commands.filter(({ intent }) => intent === "begin");
  if (begun.length === 0 || heard.commands.length < 2) return heard;
  const untested = begun.filter(({ slots }) => "untested" in slots && slots.untested !== undefined);
  if (untested.length > 0) return { ...heard, commands: untested };
  const stray = heard.commands.some(({ intent, slots }) => {
    if (intent !== "focus" || !("target" in slots)) return false;
    return foodsNamed(String(slots.target)).length > 0;
  });
  return stray ? { ...heard, reading: "unknown", commands: [] } : heard;
}

function recalling(heard: Read, { command, memory }: Recalled): Read {
  return { ...heard, reading: "sure", commands: [command], candidates: [command], memory };
}

/** Somebody hurt or in danger comes before whatever else was said, and before all questions. */
function urgentFirst(heard: Read, said: Utterance, hearing: Hearing): Read {
  const { context } = hearing;
  const { commands, intents, frame } = heard;
  const whole = intents.find(({ name }) => isIntent(name) && MEANINGS[name].urgent);
  const likely = hearing.urgentIn(said) ?? whole;
  const isUrgent = ({ intent }: Command) => MEANINGS[intent].urgent === true;
  if (heard.reading === "sure" && commands.some(isUrgent)) {
    return { ...heard, commands: commands.filter((one) => isUrgent(one) || !isHarmless(one)) };
  }
  // Where all else is questions, a lesser guess is enough: their answers can wait.
  const alone = commands.every(isHarmless);
  const least = alone && commands.length > 0 ? BOUNDS.harmless.ask : BOUNDS.harmless.act;
  if (!likely || likely.probability < BOUNDS.harmless.ask) return heard;
  if (!DIRECT.includes(frame)) return heard;
  const { name, probability } = likely;
  const urgent = isIntent(name) && finishSlots(name, {}, probability, said, context);
  if (!urgent) return heard;
  // Where a word names it, a lesser guess is enough.
  const named = Object.keys(urgent.slots).length > 0 && commands.length > 0;
  if (probability < least && !named) return heard;
  const facts = commands.filter((command) => !isHarmless(command));
  return { ...heard, reading: "sure", commands: [urgent, ...facts] };
}

/**
 * An order or report that its frame takes back is neither acted on nor asked about, nor is a guess
 * about something elsewhere.
 */
function unlessStopped(heard: Read, said: Utterance): Read {
  const [likely] = heard.candidates;
  const meant = heard.reading === "ask" && likely ? [likely] : heard.commands;
  if (heard.polite) return heard;
  const whole = heard.whole === true;
  const stopped = meant.some((one, at) => {
    const clause = heard.reading === "sure" ? heard.clauses?.[at] : undefined;
    // A loss is believed whatever it is told along with.
    const guessed = heard.reading === "ask" || (!whole && one.intent === "done");
    if (guessed && isElsewhere(clause ?? said)) return true;
    return isStopped(one, said, { whole, ...(clause ? { clause } : {}) });
  });
  return stopped ? { ...heard, reading: "unknown", commands: [] } : heard;
}

/** A report wrapped in a question or an order to write it down; a note as such is kept as well. */
function toldPolitely(said: Utterance, context: Context): Read | undefined {
  for (const told of toldWithin(said.text)) {
    const report = surelyUnderstood(utteranceOf(told), context);
    if (!report || !MEANINGS[report.intent].report) continue;
    const { cost } = MEANINGS[report.intent];
    const note = /\bnote\b/i.test(said.text) ? understandUtterance(said, context) : undefined;
    if (note?.intent === "note" && cost !== "raising") continue;
    const commands = note?.intent === "note" ? [report, note] : [report];
    return {
      reading: "sure",
      commands,
      candidates: [report],
      frame: "said",
      intents: [],
      whole: true,
      polite: true,
    };
  }
  return undefined;
}

/** No surer than this, a report was gathered from words in no known order. */
const GATHERED = 0.7;

/** Readings of one sentence, put together as what they come to. */
class Reader {
  private readonly whole: Guess;

  constructor(
    private readonly said: Utterance,
    private readonly hearing: Hearing,
  ) {
    this.whole = hearing.guess(said);
  }

  private read(reading: Heard["reading"], commands: Command[], all: readonly Command[]): Read {
    const once = all.filter(({ intent }, at) => all.findIndex((o) => o.intent === intent) === at);
    const { intents } = this.whole;
    const candidates = once.slice(0, MOST_CANDIDATES);
    return { reading, commands, candidates, frame: frameOf(this.whole), intents };
  }

  /** A wording covers the sentence: it is believed, unless the model is sure of another frame. */
  worded(plain: Command): Read {
    const answered =
      this.hearing.answeredFirst(this.said, plain, this.whole) ??
      this.orderedBefore(plain) ??
      besideText(this.said, plain, this.hearing.context) ??
      this.hearing.runTogether(this.said);
    if (answered) return this.facts(answered, []);
    if (!contradicted(plain, this.whole)) {
      return { ...this.read("sure", [plain], [plain]), whole: true };
    }
    return this.read("ask", [], [...this.hearing.eachReading(this.said, this.whole), plain]);
  }

  /** "Start the beans and set a timer": what is ordered first is no label of the second. */
  private orderedBefore(plain: Command): readonly ClauseFact[] | undefined {
    if (!("label" in plain.slots)) return undefined;
    const { facts } = this.hearing.several(this.said, this.whole);
    const both = facts.length > 1 && facts[0]?.command.intent === "begin";
    return both && facts.some(({ command }) => command.intent === plain.intent) ? facts : undefined;
  }

  private facts(list: readonly ClauseFact[], readings: readonly Command[]): Read {
    const commands = list.map(({ command }) => command);
    const clauses = list.map(({ clause }) => clause);
    return { ...this.read("sure", commands, [...commands, ...readings]), clauses };
  }

  /** No wording covers it surely; `plain` is what one may. */
  guessed(plain: Command): Read {
    const readings = [...this.hearing.eachReading(this.said, this.whole)];
    const unsure = this.hearing.notKnown(this.said, plain, readings);
    if (unsure) return this.read("sure", [unsure], [unsure, ...readings]);
    const { facts, unused } = this.hearing.several(this.said, this.whole);
    const gathered = plain.confidence <= GATHERED && MEANINGS[plain.intent].report;
    const known = plain.intent !== "unknown" && (!gathered || agreeing(plain, this.whole));
    const surer = facts.some(({ command }) => command.confidence > plain.confidence);
    if (facts.length > 1 || (facts.length === 1 && (!known || surer)))
      return { ...this.facts(facts, readings), left: unused };
    const all = [plain, ...readings];
    if (known && plain.confidence > LEAST_KNOWN) return this.read("sure", [plain], all);
    if (known) return this.read("ask", [], all);
    const [best] = readings;
    if (best && this.hearing.isToAct(best, this.whole)) return this.read("sure", [best], readings);
    const asked = readings.filter((one) => isToAsk(one, this.whole));
    return asked.length > 0
      ? this.read("ask", [], [...asked, ...readings])
      : this.read("unknown", [], readings);
  }
}

function readIn(said: Utterance, context: Context, hearing: Hearing): Read {
  const begins = begunLots(said, context);
  if (begins.length > 0) {
    const candidates = begins.slice(0, MOST_CANDIDATES);
    return { reading: "sure", commands: begins, candidates, frame: "ordered", intents: [] };
  }
  const told = toldPolitely(said, context);
  if (told) return told;
  const plain = understandUtterance(said, context);
  const reader = new Reader(said, hearing);
  const certain = plain.intent !== "unknown" && plain.confidence >= CERTAIN;
  return certain ? reader.worded(plain) : reader.guessed(plain);
}
