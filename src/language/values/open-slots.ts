import { wordSet } from "../grammar/word-set.ts";
import type { Utterance, Word } from "../words.ts";
import { numbersAt, type Parsed } from "./spoken-numbers.ts";

/** Slots that are not drawn from lists of names: labels, free text, scores, questions, sizes. */

const NO_LABEL = wordSet(
  "i me you we us it they them he she is are was were be been am do does did have has had will",
  "would could should can may might must shall not no yes and or but if when what who why how",
  "where timer timers minute minutes hour hours second seconds more longer another extra for to",
  "on in at by until till ago now please that this these those there here then just so as",
  "because okay with from about than too also the a an my our your its time clock boil boiling",
  "done up off out left going go longer still yet get got again night yesterday tonight today",
  "afternoon evening damn damned bloody goddamn blasted spell stretch",
);
const LABEL_JOINERS = new Set(["and", "of", "n"]);
const LABEL_ARTICLES = new Set(["the", "my", "our", "a", "an", "some", "your", "those", "these"]);

/** After these, a number is an amount and not a name. */
const COUNTED = wordSet(
  "minutes minute hours hour seconds second days day weeks week months month pounds pound degrees",
  "degree cups cup pints pint quarts quart jars ounces psi percent more",
);

/** "crock two", "pot 3": the small whole number that tells things of the same name apart. */
function numberOfThing(words: readonly Word[], at: number): Parsed<number> | undefined {
  return numbersAt(words, at).find(({ value, next }) => {
    const small = Number.isInteger(value) && value > 0 && value < 100;
    return small && !COUNTED.has(words[next]?.word ?? "") && numbersAt(words, next).length === 0;
  });
}

/** A label of one to four content words, perhaps with a number after them, without the article. */
export function labelsAt(words: readonly Word[], at: number): Parsed<string>[] {
  let start = at;
  while (LABEL_ARTICLES.has(words[start]?.word ?? "")) start += 1;
  const found: Parsed<string>[] = [];
  let label = "";
  for (let next = start; next < Math.min(words.length, start + 5); next += 1) {
    const word = words[next]?.word ?? "";
    if (label !== "" && LABEL_JOINERS.has(word)) {
      label += ` ${word}`;
      continue;
    }
    // "Start the beans and set a timer": what is ordered next.
    if (label.endsWith(" and") && ORDERED_NEXT.has(word)) break;
    if (NO_LABEL.has(word) || /^\d/.test(word)) break;
    if (numbersAt(words, next).length > 0) break;
    label += label ? ` ${word}` : word;
    found.push({ value: label, next: next + 1 });
    const number = SCORE_NAMES.has(word) ? undefined : numberOfThing(words, next + 1);
    if (number) found.push({ value: `${label} ${number.value}`, next: number.next });
  }
  return found;
}

const ORDERED_NEXT = new Set([
  "set",
  "start",
  "begin",
  "put",
  "tell",
  "remind",
  "stop",
  "give",
  "let",
]);

/** The words between two places as they were written. */
export function textBetween(said: Utterance, at: number, next: number): string {
  const from = said.words[at];
  const to = said.words[next - 1];
  if (!from || !to) return "";
  const whole = said.cut && next === said.words.length;
  // Brackets, signs and the like next to the words belong to them.
  const before = /[^\s\p{L}\p{N}.,;:!?'"]*$/u.exec(said.text.slice(0, from.start))?.[0] ?? "";
  const after = /^[^\s\p{L}\p{N}.,;:!?'"]*/u.exec(said.text.slice(to.end))?.[0] ?? "";
  const end = whole ? undefined : to.end + after.length;
  const text = said.text.slice(from.start - before.length, end);
  return text.replace(/[\s.,;:!]+$/u, "");
}

const SCORE_NAMES = wordSet(
  "crunch crunchiness crispness flavor texture color salt saltiness sourness tartness heat",
  "spice spiciness sweetness sweet overall look looks appearance aroma smell firmness tang",
  "tanginess body bite aftertaste set acidity bitterness garlic dill brine crisp clarity zing",
  "smoothness sour tart salty tender tenderness juiciness thickness spread freshness crispiness",
);
const SCORE_LINKS = new Set([
  "is",
  "of",
  "a",
  "an",
  "at",
  "was",
  "gets",
  "got",
  "the",
  "its",
  "it",
  "its",
  "scores",
]);

function skipLinks(words: readonly Word[], at: number): number {
  let next = at;
  while (SCORE_LINKS.has(words[next]?.word ?? "")) next += 1;
  return next;
}

/** One score, name first ("crunch four") or number first ("four for crunch"). */
function scoreAt(words: readonly Word[], at: number): Parsed<[string, number]> | undefined {
  const start = skipLinks(words, at);
  const name = words[start]?.word ?? "";
  if (SCORE_NAMES.has(name)) {
    const number = numbersAt(words, skipLinks(words, start + 1)).find(({ value }) => value <= 10);
    return number && { value: [name, number.value], next: skipOutOf(words, number.next) };
  }
  const number = numbersAt(words, start).find(({ value }) => value <= 10);
  if (!number) return undefined;
  let next = skipOutOf(words, number.next);
  if (/^(for|on|in)$/.test(words[next]?.word ?? "")) next += 1;
  next = skipLinks(words, next);
  const behind = words[next]?.word ?? "";
  if (!SCORE_NAMES.has(behind)) return undefined;
  return { value: [behind, number.value], next: next + 1 };
}

/** What a score is given for: "crunch", "flavor" ... */
export function scoreNameAt(words: readonly Word[], at: number): Parsed<string>[] {
  const name = words[at]?.word ?? "";
  return SCORE_NAMES.has(name) ? [{ value: name, next: at + 1 }] : [];
}

/** "out of five" after a score. */
function skipOutOf(words: readonly Word[], at: number): number {
  if (words[at]?.word !== "out" || words[at + 1]?.word !== "of") return at;
  return numbersAt(words, at + 2)[0]?.next ?? at;
}

/** Scores by their names, one or more. */
export function scoresAt(words: readonly Word[], at: number): Parsed<Record<string, number>>[] {
  const scores: Record<string, number> = {};
  let next = at;
  for (;;) {
    if (next > at && words[next]?.word === "and") next += 1;
    const score = scoreAt(words, next);
    if (!score) break;
    scores[score.value[0]] = score.value[1];
    next = score.next;
  }
  return Object.keys(scores).length > 0 ? [{ value: scores, next }] : [];
}

/** Sizes of jars, the longest words first. */
const SIZES: [string[], string][] = [
  [["pint", "and", "a", "half"], "pint-and-a-half"],
  [["pints", "and", "a", "half"], "pint-and-a-half"],
  [["half", "pint"], "half-pint"],
  [["half", "pints"], "half-pint"],
  [["halfpint"], "half-pint"],
  [["quarter", "pint"], "quarter-pint"],
  [["quarter", "pints"], "quarter-pint"],
  [["half", "gallon"], "half-gallon"],
  [["half", "gallons"], "half-gallon"],
  [["twelve", "ounce"], "12-ounce"],
  [["12", "ounce"], "12-ounce"],
  [["eight", "ounce"], "half-pint"],
  [["8", "ounce"], "half-pint"],
  [["four", "ounce"], "quarter-pint"],
  [["4", "ounce"], "quarter-pint"],
  [["pint"], "pint"],
  [["pints"], "pint"],
  [["quart"], "quart"],
  [["quarts"], "quart"],
];

/** The size of jar said here. */
export function sizesAt(words: readonly Word[], at: number): Parsed<string>[] {
  const hit = SIZES.find(([said]) => said.every((word, step) => words[at + step]?.word === word));
  return hit ? [{ value: hit[1], next: at + hit[0].length }] : [];
}

/** Ways to begin a question about quantities; "what" alone begins too many others. */
const ASK_HEADS: string[][] = [
  "how much|how many|how big|how thick|how thin|how hot|how salty|how strong|how full|how high",
  "how deep|how fine|how small|how coarse|how long should i cut|how long do i cut|which vinegar",
  "which salt|what kind of|what sort of|what strength|what size|what spices|what headspace",
  "what is the|what is in|what is our|what are the|what goes in|what goes into|what do i put in",
  "what do we put in|what amount|what quantity|what vinegar|what salt|what do i need for",
  "what do i add|what do we need for|what proportion|what ratio|what ingredients|what else goes in",
  "what headspace|read me the|read the|read out the|read off the|tell me the|tell me how much",
  "tell me how many|list the|list|give me the|remind me how much|remind me how many",
  "remind me the|ingredients|ingredient|headspace|the ingredients|amount of|the headspace",
  "what does it take|what does the recipe|what does the brine|do i need any|do we need any",
  "is there any|does it take|go over the|run through the|show me the|show the|read back the",
]
  .flatMap((line) => line.split("|"))
  .map((head) => head.split(" "));

const ASKED_ABOUT = wordSet(
  "dill salt vinegar sugar water headspace brine juice lemon lime garlic pepper peppers pectin",
  "acid citric ingredients ingredient onions onion mustard celery turmeric spice spices cloves",
  "clove cinnamon ice calcium chloride seed seeds syrup strength quantities quantity amounts",
  "amount measurements proportions proportion ratio peppercorns flakes chili chile oil cabbage",
  "berries cucumbers beans beets tomatoes apples pears peaches cayenne bottled powder allspice",
  "room space recipe vinegar's horseradish leaves ginger honey butter thickness",
);
const ASK_REFUSED = wordSet(
  "longer time was were did had ago yesterday last cost costs price you your he she her his",
  "they minutes hours left when boiling boil sealed should've year years worth pay paid sell",
  "next doing happen happened going think like love eat ate gave",
);
/** Questions of quantity about jars are answered from the recipe too. */
const JARS_ASKED = /^how many (more )?(jars|pints|quarts|half pints|lids|pounds|cups)\b/;

/** A question about what the recipe asks for, up to the end: its words and its subject. */
export function askedAt(
  said: Utterance,
  at: number,
  end: number,
): { what: string; subject?: string } | undefined {
  const { words } = said;
  const head = ASK_HEADS.find((known) =>
    known.every((word, step) => words[at + step]?.word === word),
  );
  if (!head || end - at > 16) return undefined;
  const asked = words.slice(at, end).map((word) => word.word);
  if (asked.some((word) => ASK_REFUSED.has(word))) return undefined;
  const subject = asked.find((word) => ASKED_ABOUT.has(word));
  if (!subject && !JARS_ASKED.test(asked.join(" "))) return undefined;
  const what = textBetween(said, at, end).toLowerCase().replace(/\?+$/, "");
  return subject ? { what, subject } : { what };
}
