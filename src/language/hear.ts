/**
 * What a sentence leads to, from all the evidence there is: wordings that fit it as a whole or by
 * clauses, and what a learned model takes it to mean, in the situation it was said in. What a
 * mistake would cost decides between acting, asking back and ignoring it.
 */

import { type Command, commandOf } from "../kitchen/command.ts";
import { foodsNamed } from "../recipe/foods/name-foods.ts";
import { likelyAnswer } from "./answers/likely-answer.ts";
import { unhedged, yesAlone } from "./answers/plain-yes.ts";
import { wholeOrders } from "./clauses/beside-begins.ts";
import { Hearing } from "./clauses/clause-facts.ts";
import { withImplied } from "./clauses/implied.ts";
import { lotsRead } from "./clauses/lots-read.ts";
import { asksThroughout } from "./clauses/whole-clauses.ts";
import type { Context } from "./context.ts";
import { withEvidence } from "./evidence/doubts.ts";
import { isElsewhere } from "./evidence/elsewhere.ts";
import { orSpoiled, signIn } from "./evidence/gone-off.ts";
import { doubtBesideAsked, withDoubts } from "./evidence/left-doubts.ts";
import { untakenDoubt } from "./evidence/untaken.ts";
import { isStopped } from "./frames.ts";
import type { Heard, Read } from "./heard.ts";
import { isIntent, MEANINGS } from "./intents/all.ts";
import type { Models } from "./model/linear-model.ts";
import { shippedModels } from "./model/shipped.ts";
import { asNamed, sealsMeant, withJars, withLots, withoutPutRight } from "./named-jars.ts";
import { type Recalled, recalled } from "./own-words.ts";
import { readIn } from "./reader.ts";
import { withoutFirstThoughts } from "./second-thoughts.ts";
import { CERTAIN } from "./understand.ts";
import { finishSlots } from "./values/finish-slots.ts";
import { type JarsNamed, jarsNamed } from "./values/jar-names.ts";
import { lotsWhen } from "./values/lots-when.ts";
import { BOUNDS, DIRECT } from "./weighing.ts";
import { type Utterance, utteranceOf } from "./words.ts";

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
  const all = jarsNamed(words, context);
  if (all) {
    const named = withoutPutRight(all);
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
  if (unused.length === 0) return heard;
  // What tells of the heat has its own doubt.
  const ofHeat = heard.commands.some(({ intent }) => {
    const { goes, comes } = MEANINGS[intent].tellsOf ?? {};
    return goes ?? comes ?? false;
  });
  const evidence = heard.evidence ?? (ofHeat ? undefined : unusedDoubt(unused, context, models));
  return { ...heard, unused, ...(evidence ? { evidence } : {}) };
}

/** The doubt in a clause that nothing is done about. */
function unusedDoubt(unused: readonly string[], context: Context, models: Models) {
  const hearing = new Hearing(context, models);
  const clauses = unused.map(utteranceOf);
  return clauses
    .map((clause) => untakenDoubt(clause, hearing.guess(clause), [], context))
    .find((doubt) => doubt !== undefined);
}

const asSaid = ({ text, words }: Utterance) => text.slice(words[0]?.start, words.at(-1)?.end);

function heardIn(words: string, context: Context, models: Models): Read {
  const said = withoutFirstThoughts(words, context);
  const hearing = new Hearing(context, models);
  const alone = (one: Utterance) =>
    unhedged(unlessStopped(readIn(one, context, hearing), one), one, context);
  const lots = lotsRead(words, said, hearing, alone);
  const read = unmixed(lots ?? readIn(said, context, hearing));
  const kept = unlessAnswers(unlessStopped(read, said), said, context);
  const plainly = unhedged(yesAlone(kept, said, context), said, context);
  const anew = urgentFirst(askedBack(plainly, said, hearing), said, hearing);
  const own = anew.reading === "sure" ? undefined : recalled(words, said, anew, hearing);
  const heard = own ? recalling(anew, own) : anew;
  const commands =
    heard.reading === "sure" ? withImplied(heard.commands, hearing, said) : heard.commands;
  const aside = doubtBesideAsked(heard, said, context);
  if (aside) return { ...heard, reading: "unknown", commands: [], evidence: aside };
  const sure = anew.reading === "sure";
  const remembered = own !== undefined;
  return withDoubts({ heard, commands, words, said, sure, remembered }, hearing);
}

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

/** How likely words have to be about what is asked, for what they may answer to be asked back. */
const ABOUT_ASKED = 0.5;

/** An answer of safety in words that are no plain one is asked back, and they are kept. */
function askedBack(heard: Read, said: Utterance, { context }: Hearing): Read {
  const { question } = context;
  if (heard.reading === "sure" || !question?.guards || question.kind === "yes-no") return heard;
  const about = heard.intents.filter(({ name }) => /^(factor|answer|yes|no)$/.test(name));
  const likely = about.reduce((sum, { probability }) => sum + probability, 0);
  const answer = likely >= ABOUT_ASKED ? likelyAnswer(said, question, context) : undefined;
  return answer ? { ...heard, reading: "ask", candidates: [answer, ...heard.candidates] } : heard;
}

/** Somebody hurt or in danger comes before whatever else was said, and before all questions. */
function urgentFirst(heard: Read, said: Utterance, hearing: Hearing): Read {
  const { context } = hearing;
  const { commands, intents, frame } = heard;
  const whole = intents.find(({ name }) => isIntent(name) && MEANINGS[name].urgent);
  const likely = hearing.urgentIn(said) ?? whole;
  const isUrgent = ({ intent }: Command) => MEANINGS[intent].urgent === true;
  if (heard.reading === "sure" && commands.some(isUrgent)) {
    // "Hand, boiling water, help": one word of it calls, another says what for.
    const named = commands.map((one) => {
      const whole = isUrgent(one) && Object.keys(one.slots).length === 0;
      return (whole && finishSlots(one.intent, {}, one.confidence, said, context)) || one;
    });
    const beside = (one: Command) =>
      !isHarmless(one) && (MEANINGS[one.intent].cost !== "clearing" || one.confidence >= CERTAIN);
    return { ...heard, commands: named.filter((one) => isUrgent(one) || beside(one)) };
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
  const told = asksThroughout(said) ? said : { ...said, asked: false };
  const stopped = meant.some((one, at) => {
    const clause = heard.clauses?.[at];
    // A loss is believed whatever it is told along with.
    const guessed = heard.reading === "ask" || (!whole && one.intent === "done");
    if (guessed && isElsewhere(clause ?? said)) return true;
    return isStopped(one, told, { whole, ...(clause ? { clause } : {}) });
  });
  return stopped ? { ...heard, reading: "unknown", commands: [] } : heard;
}

/**
 * "Yes, I put it in each of them" while it is asked whether the acid is in every jar: a yes or no
 * with more behind it is about what was asked, and no guess is made of something else.
 */
function unlessAnswers(heard: Read, said: Utterance, context: Context): Read {
  const { question } = context;
  if (!question?.guards || heard.reading !== "sure") return heard;
  // "All of it, weighed" may be about what was asked, and then ends no step.
  const ends = heard.commands.every(
    ({ intent, slots }) => intent === "done" && !("target" in slots),
  );
  const answer = ends ? likelyAnswer(said, question, context) : undefined;
  if (answer) return { ...heard, reading: "ask", commands: [], candidates: [answer] };
  const begins = /^(yes|yeah|yep|aye|no|nope|nah)$/.test(said.words[0]?.word ?? "");
  if (!begins || heard.whole) return heard;
  const another = heard.commands.every(({ intent, confirms = [] }) => {
    const { answer, cost } = MEANINGS[intent];
    return !answer && confirms.length === 0 && (cost === "changing" || cost === "clearing");
  });
  return another ? { ...heard, reading: "unknown", commands: [] } : heard;
}
