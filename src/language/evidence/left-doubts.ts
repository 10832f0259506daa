/** The doubts about jars at stake that a sentence leaves besides what is done about it. */
import type { Command, Evidence } from "../../kitchen/command.ts";
import type { Hearing } from "../clauses/clause-facts.ts";
import type { Context } from "../context.ts";
import type { Read } from "../heard.ts";
import { MEANINGS } from "../intents/all.ts";
import { isLoss } from "../intents/trouble.ts";
import { isCovered } from "../intents/uncovered.ts";
import type { Utterance } from "../words.ts";
import { isAsked } from "./asked-about.ts";
import { doubtIn, doubtTakenBack, lossIn } from "./doubts.ts";
import { isOfAnotherFire } from "./elsewhere.ts";
import { isAskedAfter, isInJars, untakenDoubt } from "./untaken.ts";

/** A sentence as it was read, before its doubts are weighed. */
type Weighed = {
  heard: Read;
  commands: readonly Command[];
  /** As it was said, first thoughts and all. */
  words: string;
  said: Utterance;
  /** It was surely understood, apart from a memory. */
  sure: boolean;
  /** It is acted on by a memory. */
  remembered: boolean;
};

const isHarmless = ({ intent }: Command) => MEANINGS[intent].cost === "harmless";

/** What was heard, with the doubts that its words leave. */
export function withDoubts(weighed: Weighed, hearing: Hearing): Read {
  const { heard, commands, words, said, sure } = weighed;
  const { context } = hearing;
  const lost = withLosses(weighed);
  if (lost) return lost;
  const [unsaid] = commands.flatMap((one) => doubtTakenBack(one, { ...said, text: words }) ?? []);
  if (unsaid) return { ...heard, otherwise: unsaid };
  const number = commands.some(isBareNumber) && context.question === undefined;
  if (number) return { ...heard, otherwise: { strength: "trace", about: "boil", text: words } };
  if (isCovered(said)) return heard;
  // First aid does not lessen a doubt that the words raise.
  const urgent = commands.some(({ intent }) => MEANINGS[intent].urgent === true);
  const answered = sure && !urgent;
  const untaken = untakenDoubt(said, hearing.guess(said), commands, context);
  if (untaken && isAskedAfter(said)) return { ...heard, evidence: untaken };
  const named = doubtIn(heard.rest ?? said, heard, answered);
  // A food that is only named says less than one that something is said about.
  const slight = named?.strength === "trace" && named.foods !== undefined;
  const evidence = slight && !answered && untaken?.more ? untaken : named;
  if (!evidence) return comesToNothing(untaken, weighed, answered, context);
  const doubted = beside(evidence, weighed, answered);
  // What it seems to be about may not be here: then the words are kept as what was told.
  const aside = !said.asked && (commands.some(isLoss) || said.words.length >= A_STORY + 2);
  const open = !answered || (commands.every(isHarmless) && aside);
  const food = (named?.foods ?? []).length > 0;
  return untaken && open && (!food || untaken.more) ? { otherwise: untaken, ...doubted } : doubted;
}

/** Plain losses are believed; what another pot or fire lost is asked about. */
function withLosses({ heard, commands, words, said, sure }: Weighed): Read | undefined {
  if (!sure) return undefined;
  const losses = commands.map((one) => lossIn(one, { ...said, text: words }));
  const loss = losses.find((one) => one !== undefined);
  if (!loss) return undefined;
  if (isOfAnotherFire(said)) {
    const evidence = { ...loss, strength: "suspicion" as const };
    return { ...heard, reading: "unknown", commands: [], evidence };
  }
  const lost = commands.map((one, at) => {
    const evidence = losses[at];
    return evidence ? { ...one, evidence } : one;
  });
  return { ...heard, commands: lost };
}

/** What is left of words that raise no doubt by themselves, should nothing come of them. */
function comesToNothing(
  untaken: Evidence | undefined,
  { heard, commands, said, remembered }: Weighed,
  answered: boolean,
  context: Context,
): Read {
  const harmless = commands.every(isHarmless);
  const isNothing =
    heard.reading === "unknown" || (answered && harmless) || isUnsure(commands, said);
  // What was an order or a report and cannot be tells of jars only once some are filled.
  if (!isNothing && answered && !isInJars(context)) return heard;
  const told = answered && !said.asked ? doubtIn(said, heard, false) : undefined;
  const kept = told?.past === true && !OF_HEAT.has(told.about) && told.foods === undefined;
  if (kept) return { ...heard, otherwise: weakened(told) };
  const raises = commands.some((one) => MEANINGS[one.intent].cost === "raising" || isLoss(one));
  if ((heard.whole && !raises) || remembered || !untaken) return heard;
  return { ...heard, [isNothing ? "evidence" : "otherwise"]: untaken };
}

/** A doubt beside what is done or answered. */
function beside(evidence: Evidence, { heard, commands, said }: Weighed, answered: boolean): Read {
  const harmless = commands.every(isHarmless);
  if (answered && heard.whole === true && !harmless) {
    return isLikely(evidence) ? { ...heard, otherwise: weakened(evidence) } : heard;
  }
  if (!answered || !harmless) return { ...heard, evidence };
  // "Can I begin the beets now": what a question is about has gone into no jar.
  const asks = said.asked || heard.frame !== "said";
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
export function doubtBesideAsked(
  { commands, frame, intents }: Read,
  said: Utterance,
  context: Context,
) {
  const unsure = commands.some(({ intent, slots }) => intent === "answer" && "unsure" in slots);
  const { question } = context;
  if (!unsure || !question) return undefined;
  const doubt = doubtIn(said, { frame, intents }, false);
  if (!doubt) return undefined;
  return isAsked(question, said, OF_HEAT.has(doubt.about)) ? undefined : doubt;
}

/** A story in place of an answer: it counts as "I don't know". */
const isUnsure = (commands: readonly Command[], { words }: Utterance) =>
  words.length >= A_STORY &&
  commands.some(({ intent, slots }) => intent === "answer" && "unsure" in slots);
const A_STORY = 6;

/** "One ninety": with nothing asked it may be what a thermometer or a gauge shows. */
const isBareNumber = ({ intent, slots }: Command) =>
  intent === "answer" && "value" in slots && typeof slots.value === "number";
