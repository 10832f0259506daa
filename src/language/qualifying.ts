/**
 * What makes a report less than plain, wherever in its sentence it stands: a doubt, a part that is
 * excepted, a way that is only half gone, a joke, a question behind it, hearsay, another day or an
 * order. A report that would clear a doubt or set a value is then asked back.
 */
import type { Command, SlotsOf } from "../kitchen/command.ts";
import type { Context } from "./context.ts";
import { isOnTheStove } from "./evidence/elsewhere.ts";
import { clausesIn } from "./evidence/split.ts";
import { wordSet } from "./grammar/word-set.ts";
import { MEANINGS } from "./intents/all.ts";
import { isExcuse, toldLate } from "./told-late.ts";
import { textOf, type Utterance } from "./words.ts";

const BE = "(?:is|are|was|were|am|do|does|did|has|have|had|can|could|will|would|should)";
const THEM = "(?:it|that|this|they|them|these|those|she|he|i|we|you)";
const PEOPLE =
  "(?:he|she|they|kids?|boys?|girls?|husband|wife|sister|brother|neighbors?|mother|mom|mum|dad|" +
  "son|daughter|nan|gran|grandma|grandpa|aunt|uncle|cousin|man|woman|lad|lass)";

/** Each is matched against the words of one clause; a meaning has more of its own (`shaken`). */
const QUALIFIES: readonly RegExp[] = [
  // A doubt.
  /\b(i|we) (think|believe|guess|reckon|hope|suppose|suspect|figure|dream\w*|wish)\b/,
  /\b(i|we) (do|would|could|can) not (honestly )?(think|know|say|swear|tell|see)\b/,
  /\b(i|we) would (have )?(say|said|guess|call|bet|thought)\b/,
  /\b((they|it|that|lids?|jars?) look(s|ed)?|looks? (like|as if)|(should|must) (be|have))\b/,
  /\b(pretty|fairly|not|never|nowhere) (sure|certain|near)\b|\bapparently|\b(as|so) far as\b/,
  /\bsurely\b|\bseems\b/,
  /\b(maybe|perhaps|probably|presumably|possibly|supposedly|allegedly|hopefully|unless)\b/,
  /\bi swear (it|they|that)\b|\b(good as|practically|virtually|all but)\b/,
  /\b(give or take|sort of|kind of|ish|more or less|mostly|nearly|almost|barely|hardly)\b/,
  /\b(near|as) (enough|as|near as)( makes)?\b|\bin theory\b|\bat least$|\bgod willing\b/,
  /\b(lord willing|fingers crossed|(knock on|touch) wood|iffy|lost count|in this light)\b/,
  /\b(have|did) not (looked|pressed|checked|look|press|check|have (my|the) (glasses|specs))\b/,
  // A part.
  /\b(except|excepting|save|bar|apart from|other than)\b/,
  /\bbut (for|not|one|this one|two|number|the last)\b/,
  /\bthe ones (i|we|you)\b|\b(half|most|some|part) (of )?(the|them|it)\b|\bon and off\b/,
  /\bin (spurts|fits|dribbles|my head)\b|\bnow and then$|\b(then|till|until) it (quits|stops)\b/,
  // A condition, or what is still to come.
  /\b(provided|providing|assuming|in case|(as|so) long as)\b|\bor (else|i am|am i)\b/,
  /\b(another|(one|two|three|a few|a couple) more) (minutes?|handfuls?|moments?|seconds?)\b/,
  // A joke.
  /^like (a|an|my|your|our|the)\b|\bin (a perfect world|my dreams)\b|\bfor once in\b/,
  /\b(april fools?|(just )?(kidding|joking|teasing)|gotcha|psych|yeah right|as if|haha|ha ha)\b/,
  /\bmy (foot|eye|hat|arse|ass|backside)$|^my (head|blood) is$|\b(out of|like|with|in) my \w+$/,
  /\bthe other one$|\bhad you\b|\b(hundred|million) years\b|\bpigs fly\b|\b(glue|trick|fool\w*)\b/,
  /\b(lie|lies|lied|lying|liar)\b|\bi am (the (one|queen|king|pope)|a dutchman|done for)\b/,
  /\bi am (boiling|steaming|venting|loaded)\b/,
  // A mistake, or what did not last.
  /\bno hang on\b|\bhang on (it|that|they)\b|\b(it|that) is (just|only) (the|my|his|her)\b/,
  /\bthen (one|two|it|they|she) \w+|\bsince (i|we) (bought|got|had) (it|this|that)\b|\bthough$/,
  /\b(wrong|mistaken|misread|mistake|my bad|scratch that|strike that|never mind (that|it))\b/,
  /\bi was (only )?(testing|looking at|reading|wrong|dreaming)\b|\b(sticking|unreliable)\b/,
  /\b(is|are|does|do|has|have|was|were) (not|no) (yet|it)\b|^not( yet)?$|\boh no\b|\bnone\b/,
  // A question.
  new RegExp(`^(or )?${BE} (not )?${THEM}( not)?( now| then| please)*$`),
  new RegExp(`\\bor ${BE} ${THEM}\\b|\\b${BE} (it|that) (right|so|enough|okay|true)$`),
  /\b(do )?you (think|reckon|sure)\b|\b(or not|yes or no|or what)$/,
  /\bwho (says|said|put|loaded)\b|^how many (is|are|was|were)\b/,
  /^not (?!\d|number|a single|a one|one|two|three|four|five|six|seven|eight|nine|ten|eleven)/,
  // A wish.
  /^(oh )?come on\b|^(oh to|please let|let it|may they)\b|\b(all )?(i|we) (want|wished?|hoped?)\b/,
  // What somebody else says or does.
  new RegExp(
    `\\b${PEOPLE} (all )?(say|says|said|tells?|told|claims?|swears?|swore|goes|yell\\w*|` +
      "holler\\w*|shout\\w*|count(s|ed)|reckons?|thinks?|lied|calls?|called|heard|figures?)\\b",
  ),
  /\b(i|we) (hear|heard|am told|was told|gather|understand)\b.* (is|are|has|have)\b/,
  /\b(according to|word is|says the|said nobody|they tell)\b/,
  // Another place, another day, or over.
  /\b(on|for) (our |my |the )?(holidays?|vacation|honeymoon)\b|\b(i|we) (grew up|used to live)\b/,
  /\b(remember (when|that|how)|used to|once upon|yesterday|last (year|summer|week|time|month))\b/,
  /\b(i|we|it|they|that|she) (was|were) (all )?(done|finished|rocking|sealed)\b(?!.*\bago\b)/,
  /^(would|will|could) you$|\b(somebody|anybody|everyone) (put|load|get)\b/,
  // Something else.
  /\b(her|his|their|your) (jars?|lids?|batch|pot|canner)\b|\bmarriage\b/,
  /\boutside\b|\ball over the world\b/,
];

/** An order, where no moment is told at which it was done. */
const ORDERED: readonly RegExp[] = [
  /^(just |please |now |and |so |okay |right |you |go and )*(put|set|lower|say|tell|make|bring)\b/,
  /^(just |please |now |and |so |okay |right |you |go and )*(get|keep|load|be) (?!got)/,
];

/** "It's boiling, right": asked, if not by its mark. */
const TAGGED = /\w (right|huh|correct)$/;

const wordsOf = ({ words }: Utterance) => words.map(({ word }) => word);
const startOf = ({ words }: Utterance) => words[0]?.start ?? 0;

/** Whether a clause tells only of the person, those around them, or the weather. */
export function isOwnMatter({ words }: Pick<Utterance, "words">): boolean {
  const all = textOf(words);
  if (COURTESY.test(all) || isExcuse({ words })) return true;
  return OWN.test(all) && !MATTERS.test(all) && !QUALIFIES.some((pattern) => pattern.test(all));
}

/** "If that is any use", "isn't that grand": nothing that a report hangs on. */
const COURTESY = new RegExp(
  "^(?:" +
    "if (that|it|this) (is (any|of any)|helps|matters)( use| help| good| interest)?( to \\w+)?|" +
    "if you (are|were) (writing|keeping|noting|asking|wondering|interested)( \\w+){0,2}|" +
    "if you (please|like|care to know|want to know)|never mind (them|him|her|us)|" +
    "is not (that|it|this) (grand|lovely|something|nice|great|wonderful|beautiful|a \\w+)|" +
    "(plain|clear) as (day|anything)|let me see|here we (are|go)|(god )?damn ?it|son of a gun|" +
    "i am not (an? )?(idiot|fool|stupid|blind)|for (heaven|pete|god|goodness|pity)( is)? sake|" +
    "(thank|praise|bless) \\w+( \\w+)?|the (rain|wind|sun|storm|snow)( \\w+){1,3}" +
    ")$",
);

const HOUSEHOLD =
  "kids|children|grandkids|baby|boys?|girls?|dogs?|cats?|phone|doorbell|post|postie|mailman|mail|" +
  "radio|wireless|telly|television|sun|weather|rain|wind|house|kitchen|neighbors?|sink|floor|" +
  "windows?|car|truck|hens|chickens|goats|cows|flies|wasps|bins|washing|laundry|preacher|game|news";
const OWN = new RegExp(
  "^(?:(?:god|lord|so|oh) )?(?:(?:need|time for|off to|dying for|gasping for|going to sit)\\b|" +
    `(?:i|we|me|(?:my|our)( \\w+){1,2}|(?:the |that )?(?:${HOUSEHOLD})|somebody|someone) (?:` +
    "am|was|were|have|had|is|are|been|would|did|do|does|has|can|could|need|got|will|went|want|" +
    "wants|want|love|hate|burnt|burned|licked|helped|kept|cried)\\b|" +
    "it (?:is|was) (?:raining|pouring|snowing|hot|warm|late|" +
    "getting (?:late|dark|hot)|lovely|dark)\\b)",
);

/** Words of the kitchen's work and of how it was seen: such a clause may be about the report. */
const MATTERS = new RegExp(
  "\\b((boil|seal|lid|jar|gaug|dial|weight|steam|vent|pot|canner|kettle|stov|burner|flam|fire|" +
    "gas|heat|pressur|needle|thermomet|water|brine|bubbl|simmer|rock|jiggl|fill|load|rack|" +
    "bean|beet|pickl|look|see|saw|read|check|press|count|watch|glass|spec|stop|quit|lost|" +
    "drop|fell|off|power|propane|electric|eye|early|before|until|" +
    "till|only|if|yet|but|other|another)\\w*|" +
    "(it|that|this|they|them|these|those|one|ones|he|she) (is|was|were|are|did|does|has|have))\\b",
);

/** Whether a command would clear a doubt or set a value by a report, or by what is answered. */
function isPlain({ intent, confirms, slots }: Command, { question }: Context): boolean {
  const { cost, plainly, report } = MEANINGS[intent];
  if (intent === "answer") return question?.guards === true && settles(slots);
  return !confirms && (plainly === true || (report === true && cost === "clearing"));
}

/** Whether an answer says a measure, or that all is as it should be. */
function settles({ held, unsure, later, untested, what }: SlotsOf["answer"]): boolean {
  return !(unsure || later || untested || what) && held !== "no";
}

const WEIGHED = wordSet("but though although however except only");

/** "It's boiling, the argument next door": something behind the report that no kitchen has. */
function namesAnother({ words }: Utterance, { slots }: Command): boolean {
  const all = textOf(words);
  const target = "target" in slots ? String(slots.target) : undefined;
  return THING.test(all) && !MATTERS.test(all) && !(target && all.includes(target));
}

const THING = new RegExp(
  "^(?:the|that|those|them) (?!(?:lot|rest|two|three|both|ones?|thing|last|whole|entire)\\b)" +
    "(?!.*\\b(?:is|are|was|were|has|have|had|smells?|looks?|feels?)\\b)" +
    "\\w+(?:( \\w+)? (?:in|of|on|at|from|next|outside)\\b.*)?$",
);

/** A sentence without the moments and the excuses of its clauses: "about", "half", "forgot". */
function withoutMoments(said: Utterance, context: Context): Utterance | undefined {
  const parts = [said, ...clausesIn(said)].flatMap((part) => {
    const late = toldLate(part, context);
    return late ? [{ part, left: (late.present ?? late.rest).words }] : [];
  });
  if (parts.length === 0) return undefined;
  let { words } = said;
  for (const { part, left } of parts) {
    words = words.flatMap((one) => {
      const kept = left.filter(({ start }) => start === one.start);
      if (!part.words.includes(one)) return [one];
      return kept.find(({ word }) => word === one.word) ?? (kept.length === 1 ? kept : []);
    });
  }
  return { ...said, words };
}

/**
 * Whether something in its sentence makes a report less than plain.
 * @param own the clause it stands in, and `others` those that say something else; none where a
 * wording covers the sentence
 */
export function isQualified(
  command: Command,
  whole: Utterance,
  context: Context,
  own?: Utterance,
  others: readonly Utterance[] = [],
): boolean {
  if (!isPlain(command, context)) return false;
  // "Not off at all": how far a dial is off is read from end to end.
  if (!own && "readsHighPsi" in command.slots) return false;
  const timed = "at" in command.slots || !("at" in MEANINGS[command.intent].slots);
  const told = timed ? withoutMoments(whole, context) : undefined;
  const said = told ?? whole;
  const start = own && startOf(own);
  const all = clausesIn(said);
  const kept = all.filter((clause) => {
    if (start === undefined || startOf(clause) === start) return true;
    return !others.some((one) => startOf(one) === startOf(clause)) && !isOwnMatter(clause);
  });
  const left = all.filter((clause) => !kept.includes(clause)).flatMap(({ words }) => words);
  const texts = [
    ...kept.map(({ words }) => words),
    said.words.filter((w) => !left.includes(w)),
  ].map(textOf);
  const always = told ? QUALIFIES : [...QUALIFIES, ...ORDERED];
  const { shaken = {}, anyStep } = MEANINGS[command.intent];
  const patterns = [...always, ...(shaken.clause ?? [])];
  const spoken = textOf(said.words);
  if (!anyStep && kept.some((one) => one.words.length < 5 && isOnTheStove(wordsOf(one)))) {
    return true;
  }
  if (TAGGED.test(spoken) || shaken.whole?.test(spoken)) return true;
  if (texts.some((text) => patterns.some((pattern) => pattern.test(text)))) return true;
  if (start !== undefined && kept.some((one) => namesAnother(one, command))) return true;
  // "It's boiling, but thinly": what comes behind a "but" weighs against it.
  return kept.some((clause) => {
    const [first] = clause.words;
    const before = first && said.words[said.words.indexOf(first) - 1]?.word;
    return start !== undefined && startOf(clause) > start && WEIGHED.has(before ?? "");
  });
}
