import { type Command, commandOf } from "../../kitchen/command.ts";
import type { AnswerMeant, DispositionWord } from "../../kitchen/questions/answer-meant.ts";
import { UNIT_CHOICES } from "../../kitchen/questions/set-up.ts";
import { FT_PER_M, MM_PER_IN } from "../../reckon/units.ts";
import type { OpenQuestion } from "../context.ts";
import { wordSet } from "../grammar/word-set.ts";
import { beginsAsking } from "../guards.ts";
import { saysAbout } from "../values/about.ts";
import { numbersAt } from "../values/spoken-numbers.ts";
import { textOf, type Utterance } from "../words.ts";
import { choiceIn, exactChoice } from "./choosing.ts";
import { isGuess, withoutGuesses } from "./confirms.ts";
import { FACTOR_WORDINGS } from "./factor-wordings.ts";

/** Words that stand around a bare answer and add nothing. */
const AROUND = wordSet(
  "um uh er well so oh just about maybe make it i say would think that is we have at the please",
  "okay sir only exactly around feet jars of them there are got say like probably my our",
);

/** A bare number, allowing for "about", "I'd say" and the like before it. */
function bareNumber(said: Utterance): number | undefined {
  const { words } = said;
  let from = 0;
  while (from < words.length) {
    for (const number of numbersAt(words, from)) {
      const rest = words.slice(number.next);
      if (rest.every(({ word }) => AROUND.has(word))) return number.value;
    }
    if (!AROUND.has(words[from]?.word ?? "")) return undefined;
    from += 1;
  }
  return /^(none|nothing|no jars)$/.test(textOf(words)) ? 0 : undefined;
}

/** Whether the words answer a question about a number with "none at all". */
function noneAtAll(said: Utterance): boolean {
  const all = textOf(said.words);
  return /^(none|none of them|not one|not a single one|not any|zero)$/.test(all);
}

function answer(value: number | string, confidence: number, meant: AnswerMeant = {}): Command {
  return commandOf("answer", { value, ...meant }, { confidence });
}

const DISPOSITIONS: readonly DispositionWord[] = ["reprocess", "refrigerate", "freeze", "discard"];

/** What an offered choice means. */
function chosenMeans(choice: string, { right, choices }: OpenQuestion): AnswerMeant {
  if (right && choices?.includes(choice)) return { held: right.includes(choice) ? "yes" : "no" };
  const units = (["us", "metric"] as const).find((one) =>
    UNIT_CHOICES[one].some((words) => words === choice),
  );
  if (units) return { units };
  if (choice === "dial" || choice === "weighted") return { gauge: choice };
  const what = DISPOSITIONS.find((one) => one === choice);
  return what ? { what } : {};
}

/** "A pound and a half high", "it reads true": how many pounds a dial reads high. */
const DIAL = "(?:it|the dial|the gauge|dial|gauge|she)";
const READS = "(?:reads|read|is|is reading|tests|tested|checks out|tested out|came out)";
const EXACTLY = "(?:(?:dead|spot|bang|exactly|perfectly|quite|absolutely) )?";
const TRUE =
  `(?:${DIAL} )?(?:${READS} )?(?:(?:${EXACTLY}(?:true|accurate)|(?:spot|dead|bang) on)|` +
  "right on(?: the (?:money|nose|dot|button))?|on the (?:money|nose|button))" +
  `|(?:${DIAL} )?reads ${EXACTLY}(?:right|correct(?:ly)?|perfect(?:ly)?)` +
  `|${DIAL} (?:is|tested) ${EXACTLY}(?:right|correct|exact)`;
const NOT_OFF =
  `(?:${DIAL} is )?not (?:off|high) (?:at all|by (?:any|anything|one pound|a pound))` +
  `|(?:${DIAL} )?does not read high(?: at all)?|(?:${DIAL} )?not off any`;
const ZERO = "(?:zero|none|nil|no(?= pounds?))(?: pounds?)?(?: (?:high|off))?(?: at all)?";
const NOTHING_OFF = new RegExp(
  `^(?:(?:no|${ZERO}) (?:${TRUE})|not (?:even )?a pound|${ZERO}|${TRUE}|${NOT_OFF})$`,
);
const OFF = new RegExp(
  `^(?:${DIAL}(?: reads| is)* |that is )?(?:off by )?` +
    "(?:(half) an?|a (half)|(an?|one|two|three|four|five|\\d+(?:\\.\\d+)?)( and a half)?) pounds?" +
    "( and a half)?(?: too)?( high| low| off)?$",
);
const POUNDS: Record<string, number> = { a: 1, one: 1, two: 2, three: 3, four: 4, five: 5 };
const BESIDE_DIAL = wordSet("um uh er oh well okay yes aye love dear honey sir now so please");

/** No dial is off by more. */
const MOST_OFF_PSI = 10;

function poundsOff(said: Utterance): number | undefined {
  if (said.asked) return undefined;
  const all = textOf(said.words.filter(({ word }) => !BESIDE_DIAL.has(word)));
  if (NOTHING_OFF.test(all)) return 0;
  const found = OFF.exec(all);
  if (!found) return undefined;
  const [, half, other, whole = "", more, andHalf, way] = found;
  const over = more || andHalf ? 0.5 : 0;
  const pounds = half || other ? 0.5 : (POUNDS[whole] ?? Number(whole)) + over;
  // "Fourteen pounds" is what the gauge shows, not how far it is off.
  if (way === undefined && pounds > MOST_OFF_PSI) return undefined;
  return way === " low" ? -pounds : pounds;
}

/** "It's at zero" is what a gauge shows; "zero, I think" is a guess. */
function isBareDial({ words }: Utterance): boolean {
  const all = textOf(words);
  return !ROUGHLY.test(all) && !/\b(at|there|say)\b/.test(all);
}

/**
 * When the question is whether it boiled throughout, "it lost its boil" is a no, not a new report.
 */
function lostBoil(said: Utterance): Command | undefined {
  const all = textOf(said.words);
  if (!/^(no )?(it|we) (has |have )?lost (the|its|our) boil$/.test(all)) return undefined;
  return commandOf("no", {});
}

/** A yes or a no in the words of what was asked: "covered". */
function plainly(said: Utterance, question: OpenQuestion): Command | undefined {
  const asks = beginsAsking(said.words.map(({ word }) => word));
  if (asks || HEDGED_CHOICE.test(textOf(said.words))) return undefined;
  const chosen = exactChoice(said, question);
  if (chosen === undefined) return undefined;
  return commandOf(chosenMeans(chosen, question).held === "yes" ? "yes" : "no", {});
}

/** That no test was ever made, where a test is what is asked about. */
const NEVER = new RegExp(
  "^(no |nope )?(" +
    "((it|that|the dial|the gauge) )?((is|was|has) )?(never|not)" +
    "( ever)?( been)?( tested| checked)?|" +
    "(nobody|no one)( (did|has|ever|tested|checked|it)){0,4}|" +
    "(i|we) never did|never (tested|checked) (it|that)|" +
    "(i|we) (never|did not|have (not|never))(?=.* (test|check))" +
    "( (had|have|got|get|ever|it|that)){0,3} (test|check)(ed)?( (it|that))?" +
    ")( (this (year|season|summer)|in years|yet|at all|since last (year|summer))){0,2}$",
);

function neverTested(said: Utterance): boolean {
  return !said.asked && NEVER.test(textOf(said.words));
}

/** Words that make a measure a guess. */
const ROUGHLY = new RegExp(
  "\\b(about|around|maybe|probably|roughly|almost|nearly|think|guess|or so|ish|seems?|looks?|" +
    "surely|at most|at least|close|hope|should|must|would|more or less|give or take|" +
    "eyeball\\w*|by eye|finger|thumb)\\b",
);

const BEFORE =
  "(?:(?:um|uh|er|oh|well|so|okay|yes|yeah|now|right|exactly|just|only|actually) )*" +
  "(?:(?:(?:the |my |our |its )?(?:OF)|it|that|this|there|they|these|i|we) )?" +
  "(?:(?:label|bottle|jug) )?" +
  "(?:(?:is|was|are|says|reads|has|have|got|left|made|gives|shows|have got|have left) )*" +
  "(?:(?:exactly|an|a|at|of|only|just|got) )*";
const BEHIND =
  "(?: (?:UNIT))?(?: (?:exactly|strength|acidity|acid|vinegar|stuff|headspace))?" +
  "(?: (?:on|by|in|from) (?:the |my |our |every |each |all |all the |all of the )?" +
  "(?:label|bottle|jug|guide|book|jars?|rim|front|back|side|it))?" +
  "(?: says| (?:says |reads )?the (?:label|bottle|jug))?" +
  "(?: it says(?: (?:here|there))?" +
  "(?: on (?:it|(?:the|my) (?:front|back|side|label|bottle|jug)))?)?$";

/** What may stand before and behind a measure of a kind, and leave it exact. */
function measuredAs(of: string, unit: string) {
  const before = new RegExp(`^${BEFORE.replace("OF", of)}$`);
  return { before, behind: new RegExp(`^${BEHIND.replace("UNIT", unit)}`) };
}

const MEASURED: Partial<Record<OpenQuestion["kind"], ReturnType<typeof measuredAs>>> = {
  percent: measuredAs("vinegar|label|bottle|jug|strength|acidity|sticker", "percent|per cent"),
  inches: measuredAs(
    "headspace|head space|gap|room|jars",
    "inch|inches|cm|mm|centimeters?|millimeters?",
  ),
  minutes: measuredAs("guide|book|time|my guide|my book|our guide", "minutes?"),
};

/** A measure and nothing else: "five percent", "half an inch"; a rough one is a guess. */
function measure(said: Utterance, { kind, metric }: OpenQuestion): Command | undefined {
  const { words, guessed } = withoutGuesses(said.words);
  const form = MEASURED[kind];
  if (!form || said.asked || beginsAsking(words.map(({ word }) => word))) return undefined;
  const all = textOf(words);
  const rough = guessed || ROUGHLY.test(all);
  const part = kind === "inches" ? partOfInch(all) : undefined;
  if (part !== undefined) return rough ? UNKNOWN_TO_US : answer(part, 1);
  const exactly = (list: typeof words) => textOf(list.filter(({ word }) => !ROUGHLY.test(word)));
  for (let from = 0; from < words.length; from += 1) {
    const head = exactly(words.slice(0, from));
    if (!form.before.test(head === "" ? "" : `${head} `)) continue;
    const whole = numbersAt(words, from).find(({ next }) => {
      const tail = exactly(words.slice(next));
      return form.behind.test(tail === "" ? "" : ` ${tail}`);
    });
    if (whole) {
      const inches = kind === "inches" ? inInches(whole.value, all, metric) : whole.value;
      return rough ? UNKNOWN_TO_US : answer(inches, 1);
    }
  }
  if (/^(about|around|roughly|almost|nearly|maybe) an inch$/.test(all)) return UNKNOWN_TO_US;
  return /^(a|an|(it is )?an) inch$/.test(all) ? answer(1, 1) : undefined;
}

const PARTS: Record<string, number> = { half: 2, third: 3, quarter: 4, eighth: 8, sixteenth: 16 };
const COUNTED: Record<string, number> = { three: 3, five: 5, seven: 7 };
const PART_OF_INCH = new RegExp(
  "^(?:(?:um|uh|well|so|oh|it is|there is|that is|i|we|have|left|got|about|around|just|only|" +
    "maybe|exactly|roughly|almost|nearly) )*(?:(an|one|two) (?:inch(?:es)? )?and )?" +
    "(?:(a|and?|one|three|five|seven) )?(half|third|quarter|eighth|sixteenth)s?" +
    "(?: (?:of )?(?:an? )?inch(?:es)?(?: (?:in|of|on) (?:every|each|all)(?: (?:the )?jars?)?)?)?$",
);

/** "An eighth of an inch", "three quarters", "an inch and a quarter". */
function partOfInch(all: string): number | undefined {
  const found = PART_OF_INCH.exec(all);
  if (!found) return undefined;
  const [, whole, over = "", under = ""] = found;
  const inches = whole === undefined ? 0 : whole === "two" ? 2 : 1;
  return inches + (COUNTED[over] ?? 1) / (PARTS[under] ?? 1);
}

/** A headspace as it was tested, where centimeters come as near to it as they are read. */
function inInches(value: number, all: string, metric: boolean | undefined): number {
  const unit = /\b(millimeter|centimeter|mm|cm|inch)/.exec(all)?.[1] ?? (metric ? "cm" : "inch");
  if (unit === "inch") return value;
  const inches = (unit.startsWith("m") ? value : value * 10) / MM_PER_IN;
  const quarters = Math.round(inches * 4) / 4;
  return Math.abs(quarters - inches) <= 0.03 ? quarters : inches;
}

/** The answer recorded for a guess, or for not knowing. */
export const UNSURE = "unsure";
const UNKNOWN_TO_US = answer(UNSURE, 1, { unsure: true });

/**
 * The answer that somebody does not know, where the words are not understood otherwise: it clears
 * nothing, so a piece of a sentence is enough.
 */
export function unsureAnswer(said: Utterance, question: OpenQuestion): Command | undefined {
  const asksOfFact = question.guards === true || question.kind === "yes-no";
  return asksOfFact ? notKnown(said) : undefined;
}

/** Whoever says one of these does not know. */
const NOT_KNOWN = new RegExp(
  "\\b(" +
    "who (can|could) (tell|say|know)|no (earthly |bloody |damn )?(idea|clue)|" +
    "(do|did|would|could) not (rightly )?(know|say|tell|swear|recall)|" +
    "can not (rightly |honestly )?(tell|say|swear|remember|recall|read|see)|" +
    "not (sure|certain|positive)|not (a |one )?hundred percent|" +
    "could not (tell you|swear to it)|who knows|hard to (say|tell)|" +
    "was not (looking|watching)|were not (looking|watching)|" +
    "did not (look|check|see|notice|watch)|i think so|i (suppose|guess|hope) so|" +
    "happen (they|it)|your guess|beats me|(may|might) have|maybe|mibbe|probably|" +
    "presumably|as far as i know|forgot to (look|check|read|measure)" +
    ")\\b",
);

/** Whoever names a choice along with one of these only thinks so. */
const HEDGED_CHOICE = /\b(think|guess|reckon|suppose|hope|believe|should be|must be|ought)\b/;

/** "I don't know" answers any question that guards safety, whatever is said around it. */
function notKnown(said: Utterance): Command | undefined {
  if (said.asked) return undefined;
  const all = textOf(said.words);
  return NOT_KNOWN.test(all) ? UNKNOWN_TO_US : undefined;
}

/** The answer to a question that guards safety: exact, a guess, or not an answer. */
function guarded(said: Utterance, question: OpenQuestion): Command | undefined {
  if (isGuess(said.words)) return UNKNOWN_TO_US;
  const all = textOf(said.words);
  switch (question.kind) {
    case "yes-no":
      return lostBoil(said) ?? plainly(said, question);
    case "choice": {
      if (beginsAsking(said.words.map(({ word }) => word))) return undefined;
      if (FACTOR_WORDINGS.get(question.key ?? "")?.otherwise?.test(all)) return undefined;
      if (NOT_KNOWN.test(all) || HEDGED_CHOICE.test(all)) return UNKNOWN_TO_US;
      const chosen = exactChoice(said, question);
      return chosen === undefined ? undefined : answer(chosen, 1, chosenMeans(chosen, question));
    }
    case "percent":
    case "inches":
    case "minutes":
      return measure(said, question);
    default:
      return undefined;
  }
}

/**
 * The answer to the open question, where the words are one; a new report, an order or a yes or no
 * is understood as itself.
 */
export function answerTo(said: Utterance, question: OpenQuestion): Command | undefined {
  const words = textOf(said.words);
  const none = question.kind === "holds" && NO_CANNER.test(words);
  if (question.mayWait && (none || LATER.test(words))) return answer("later", 1, { later: true });
  if (question.kind === "holds") return holds(said);
  const safe = question.guards ? guarded(said, question) : undefined;
  if (safe) return safe;
  if (question.guards && !NUMBERED.has(question.kind)) return undefined;
  if (question.kind === "choice" || question.choices) {
    const chosen = choiceIn(said, question.choices ?? []);
    if (chosen !== undefined) return answer(chosen, 1, chosenMeans(chosen, question));
  }
  if (question.kind === "yes-no") return isGuess(said.words) ? UNKNOWN_TO_US : undefined;
  if (question.kind === "gauge-off" && neverTested(said)) {
    return answer("never", 1, { untested: true });
  }
  const off = question.kind === "gauge-off" ? poundsOff(said) : undefined;
  if (off !== undefined) return answer(off, 1, { readsHighPsi: off });
  // When the question is which jars did not seal, "none" means that all sealed.
  if (question.kind === "jars" && noneAtAll(said)) return answer("none", 1, { all: true });
  const number = question.kind === "gauge-off" && !isBareDial(said) ? undefined : bareNumber(said);
  if (number !== undefined && !hasFeet(said)) {
    if (question.kind !== "altitude") return answer(number, 1);
    const feet = question.metric ? Math.round(number * FT_PER_M) : number;
    return answer(feet, 1, saysAbout(said) ? { about: true } : {});
  }
  if (question.kind !== "text" && noneAtAll(said)) return answer(0, 0.9);
  return undefined;
}

/** "Later", "skip that", "not now please": only that, apart from courtesies. */
const LATER = new RegExp(
  "^(?:(?:um|uh|well|oh|okay|no|please|let us|i will) )*" +
    "(?:(?:do|tell|say|ask|answer|leave) (?:you |me )?(?:it |that |this )?(?:for )?)?" +
    "(?:later|another time|not now|next time|(?:skip|pass|leave)(?: it| that| this)?)" +
    "(?: on)?(?: please)?$",
);

/** Who has no canner is asked once something is to go into one. */
const NO_CANNER = /^(?:(?:i|we) have )?(?:none|no canner)$/;

/** "Nine pints and seven quarts": how many jars of each size, and nothing else. */
function holds(said: Utterance): Command | undefined {
  if (said.asked || isGuess(said.words)) return isGuess(said.words) ? UNKNOWN_TO_US : undefined;
  const { words } = said;
  const found: { [size in Size]?: number } = {};
  let at = 0;
  while (at < words.length) {
    const number = numbersAt(words, at).at(-1);
    const after = number && jarAt(words, number.next);
    if (number && after) {
      found[after.size] = number.value;
      at = after.next;
    } else if (BESIDE_HOLDS.has(words[at]?.word ?? "")) at += 1;
    else return undefined;
  }
  const [first] = Object.values(found);
  return first === undefined ? undefined : answer(first, 1, found);
}

const BESIDE_HOLDS = wordSet(
  "um uh er well it holds takes has room for and or the canner at a time fits jars of",
);

type Size = "halfPints" | "pints" | "quarts";

function jarAt(words: Utterance["words"], at: number): { size: Size; next: number } | undefined {
  const word = words[at]?.word ?? "";
  if (word === "half" && /^pints?$/.test(words[at + 1]?.word ?? "")) {
    return { size: "halfPints", next: at + 2 };
  }
  const size = /^(pint|quart)s?$/.exec(word)?.[1];
  return size === undefined ? undefined : { size: `${size}s` as Size, next: at + 1 };
}

/** Questions that guard safety and take a number. */
const NUMBERED: ReadonlySet<OpenQuestion["kind"]> = new Set([
  "altitude",
  "jars",
  "gauge-off",
  "number",
]);

function hasFeet(said: Utterance): boolean {
  return said.words.some(({ word }) => word === "feet" || word === "meters");
}

/** A bare number or "both", said while no question is known to be open. */
export function bareAnswer(said: Utterance): Command | undefined {
  if (said.asked) return undefined;
  const number = numbersAt(said.words, 0).find(({ next }) => next === said.words.length);
  if (number) return answer(number.value, 0.5);
  const all = textOf(said.words);
  const known = /^(the )?(both|neither|none|all|first|second|third|last)( one| of them)?$/.exec(
    all,
  );
  return known ? answer(known[2] ?? all, 0.5) : undefined;
}
