/**
 * Turns text into words: case, punctuation, contractions and units are normalized, and each word
 * keeps its place in the text so that notes can be kept as they were said.
 */

import { wordSet } from "./grammar/word-set.ts";
import { fromDialect, unswallowed } from "./spelling/dialects.ts";

/**
 * One word as the phrases know it, and where it stood in the text. `alt` is the other word a
 * contraction can stand for: "it's" is "it is" or "it has".
 */
export type Word = { word: string; alt?: string; start: number; end: number };

/**
 * The words of an utterance. `asked` where it ends in a question mark; `within` is the sentence
 * that a clause was cut out of, word by word.
 */
export type Utterance = {
  text: string;
  words: Word[];
  asked: boolean;
  cut: boolean;
  within?: Utterance;
};

/** Nothing is read beyond this many characters or words; only a note may be longer. */
const MAX_CHARACTERS = 600;
const MAX_WORDS = 60;

/** A word, with a mark behind it where that stands for a swallowed end: "boilin'", "o'". */
const WORD =
  "[\\p{L}\\p{M}]+(?:['’ʼ`´][\\p{L}\\p{M}]+)*" +
  "(?:(?<=\\b(?:\\p{L}+in|o|wi|an|th|ol))['’](?!\\p{L}))?";
const PIECE = new RegExp(`(?<=^|\\s)[-−](?=\\d)|\\d+(?:[.,:/]\\d+)*|${WORD}|[½¼¾⅓⅔⅛#°%&]`, "gu");

const SIGNS: Record<string, string[]> = {
  "½": ["and", "a", "half"],
  "¼": ["and", "a", "quarter"],
  "¾": ["and", "three", "quarters"],
  "#": ["number"],
  "°": ["degrees"],
  "%": ["percent"],
  "&": ["and"],
  "-": ["minus"],
  "−": ["minus"],
};

/** What people run together, and what a recognizer writes without its apostrophe. */
const EXPANDED: Record<string, string> = {
  its: "it is",
  thats: "that is",
  whats: "what is",
  whens: "when is",
  hows: "how is",
  wheres: "where is",
  theres: "there is",
  lets: "let us",
  "let's": "let us",
  im: "i am",
  ive: "i have",
  weve: "we have",
  itll: "it will",
  theyll: "they will",
  thatll: "that will",
  id: "i would",
  ill: "i will",
  youll: "you will",
  shouldnt: "should not",
  couldnt: "could not",
  everybodys: "everybody is",
  theyre: "they are",
  theyve: "they have",
  youre: "you are",
  dont: "do not",
  doesnt: "does not",
  didnt: "did not",
  isnt: "is not",
  arent: "are not",
  wasnt: "was not",
  havent: "have not",
  hasnt: "has not",
  cant: "can not",
  cannot: "can not",
  wont: "will not",
  wouldnt: "would not",
  "can't": "can not",
  "won't": "will not",
  "ain't": "is not",
  aint: "is not",
  em: "them",
  bout: "about",
  gonna: "going to",
  gotta: "got to",
  wanna: "want to",
  lemme: "let me",
  gimme: "give me",
  dunno: "do not know",
  whatcha: "what do you",
  whaddya: "what do you",
  whatchu: "what do you",
  kinda: "kind of",
  "o'clock": "oclock",
  "y'all": "you all",
  "ma'am": "",
  "'til": "till",
  til: "till",
  ok: "okay",
  okey: "okay",
  alright: "all right",
  yea: "yeah",
  flavour: "flavor",
  colour: "color",
  thankyou: "thank you",
  another: "another",
  halfpint: "half pint",
  halfpints: "half pints",
  gotcha: "gotcha",
  anymore: "any more",
  brinebell: "brine bell",
  lbs: "pounds",
  lb: "pounds",
  kg: "kilos",
  kgs: "kilos",
  kilograms: "kilos",
  kilogram: "kilos",
  min: "minutes",
  mins: "minutes",
  hr: "hours",
  hrs: "hours",
  sec: "second",
  secs: "seconds",
  ft: "feet",
  qt: "quart",
  qts: "quarts",
  pt: "pint",
  pts: "pints",
  metres: "meters",
  metre: "meters",
  meter: "meters",
  kilopascal: "kpa",
  kilopascals: "kpa",
  kilopascales: "kpa",
  towards: "toward",
  tonite: "tonight",
};

const ENDINGS: Record<string, string> = {
  s: "is",
  re: "are",
  ve: "have",
  ll: "will",
  d: "would",
  m: "am",
};

/** What else a contracted word can stand for. */
const ALTERNATIVES: Record<string, string> = { is: "has", would: "had" };

/** Abbreviations that mean something only right after a number: `8 lb`, `5 m`, `180 F`. */
const AFTER_NUMBER: Record<string, string> = {
  m: "meters",
  f: "fahrenheit",
  c: "celsius",
  h: "hours",
  p: "pints",
  q: "quarts",
  g: "grams",
};

/** Words said without their last sound: "boilin'", "she's sittin at eleven". */
const CLIPPED = wordSet(
  "boilin rollin bubblin simmerin sittin rockin jigglin steamin ventin holdin showin readin",
  "coolin goin doin startin gettin makin puttin takin fillin packin peelin slicin choppin",
  "washin trimmin leakin hittin runnin comin droppin sealin pingin cookin heatin climbin risin",
  "fallin losin workin waitin finishin loadin stirrin drainin rinsin soakin settin somethin",
  "nothin tellin sayin lookin blowin",
);

/** "Too of them", "for of those": counts that were heard as the little words they sound like. */
const COUNTS: Record<string, string> = { too: "two", to: "two", for: "four", won: "one" };
/** "Filled ate pints": a count that was heard as the meal. */
const EIGHT_BEFORE = wordSet("filled packed loaded have got makes is");
const EIGHT_OF = wordSet("pints quarts jars half pounds");

/** Drawn-out sounds of thinking: "ummm", "uhh", "hmmmm". */
const DRAWN = "(u+m+) (u+h+) (e+r+m*) (h+m+) (m{2,}) (a+h+) (o+h{2,}) (so{2,}) (we+ll{2,})";
const UNDRAWN = ["um", "uh", "er", "hmm", "mm", "ah", "oh", "so", "well"];
const ANY_DRAWN = new RegExp(`^(?:${DRAWN.replaceAll(" ", "|")})$`);

function undrawn(word: string): string {
  if (CLIPPED.has(word)) return `${word}g`;
  const drawn = ANY_DRAWN.exec(word);
  return drawn ? (UNDRAWN[drawn.indexOf(word, 1) - 1] ?? word) : word;
}

/** Letters without their accents, as words are known. */
export function unaccented(text: string): string {
  return text.normalize("NFKD").replace(/\p{M}/gu, "");
}

function expand(raw: string, before: string | undefined): string[] {
  const signs = Object.hasOwn(SIGNS, raw) ? SIGNS[raw] : undefined;
  if (signs)
    return raw.length === 1 && /[½¼¾]/.test(raw) && !isDigits(before) ? signs.slice(1) : signs;
  const marked = /[^\x00-\x7f`]/.test(raw);
  const folded = marked ? unaccented(raw) : raw;
  const plain = (marked ? folded.replace(/[’ʼ`´]/g, "'") : folded).toLowerCase();
  const unit = Object.hasOwn(AFTER_NUMBER, plain) ? AFTER_NUMBER[plain] : undefined;
  if (unit && isDigits(before)) return [unit];
  const whole = Object.hasOwn(EXPANDED, plain) ? EXPANDED[plain] : undefined;
  if (whole !== undefined) return whole === "" ? [] : whole.split(" ");
  const spelled = fromDialect(plain);
  if (spelled !== undefined) return spelled.split(" ");
  const quote = plain.lastIndexOf("'");
  if (quote < 0) return [undrawn(plain)];
  const [stem, ending] = [plain.slice(0, quote), plain.slice(quote + 1)];
  if (ending === "") return [fromDialect(stem) ?? unswallowed(stem)];
  if (/^th?$/.test(stem)) return ["the", ...expand(ending, before)];
  if (ending === "t" && stem.endsWith("n")) return [stem.slice(0, -1), "not"];
  const full = Object.hasOwn(ENDINGS, ending) ? ENDINGS[ending] : undefined;
  return full ? [...(fromDialect(stem) ?? stem).split(/['\s]/), full] : plain.split("'");
}

function isDigits(word: string | undefined): boolean {
  return word !== undefined && /^\d/.test(word);
}

/** "Add ten minutes to the egg timer, love": an address, unless somebody loves something. */
const LOVED_BY = wordSet("i we you they to would with of in much my the");

const FIGURE =
  /^(\d.*|one|two|three|four|five|six|seven|eight|nine|ten|hundred|thousand|twenty|thirty|o)$/;

/** Little words of dialect, by the words before and behind them: "an the lids", "a cup o salt". */
const LITTLE: Readonly<Record<string, (before: string, behind: string) => string | undefined>> = {
  ya: (before) => (before === "" ? undefined : "you"),
  our: (before) => (before === "half" ? "hour" : undefined),
  pit: (before) => (/^(i|we|have|she|he|just)$/.test(before) ? "put" : undefined),
  foot: (before) => (FIGURE.test(before) ? "feet" : undefined),
  an: (_before, behind) => (/^[b-gj-np-tv-z]/.test(behind) ? "and" : undefined),
  o: (before, behind) => {
    if (/^(the|them|those|these|my|our|us)$/.test(behind)) return "of";
    return before === "" || FIGURE.test(before) || FIGURE.test(behind) ? undefined : "of";
  },
};

/** Sounds of somebody out of breath or thinking, which stand for nothing. */
const BREATHS = wordSet("hah hff hoo oof pff pfft hnf gah uff hup whoof huff ahem");

/** Little words that are said twice by whoever looks for the next one. */
const STUTTERED = wordSet(
  "the a an my our your of in on to it is that and i we at from for with was by they them this",
  "there have has so if are am been it's gotta got put start",
);
const LONGEST_STUTTER = 3;

/** How many words from here on are said again right behind: "the, the", "warn me, warn me". */
function stutterAt(words: readonly Word[], at: number): number {
  for (let length = LONGEST_STUTTER; length > 0; length -= 1) {
    const first = words.slice(at, at + length).map(({ word }) => word);
    if (first.length < length || (length > 1 && new Set(first).size === 1)) continue;
    const again = first.every((word, step) => words[at + length + step]?.word === word);
    if (!again || first.some((word) => FIGURE.test(word) || NO_STUTTER.has(word))) continue;
    if (length > 1 || STUTTERED.has(first[0] ?? "")) return length;
  }
  return 0;
}

/** Said twice these say more than once. */
const NO_STUTTER = wordSet("no not never very");

/** The words without breaths, and without those that were begun twice. */
function withoutStutters(words: Word[]): Word[] {
  const calm = words.filter(({ word }) => !BREATHS.has(word));
  const said = calm.length > 0 ? calm : words;
  const kept: Word[] = [];
  for (let at = 0; at < said.length; ) {
    const again = stutterAt(said, at);
    const word = said[at];
    if (again === 0 && word) kept.push(word);
    at += Math.max(again, 1);
  }
  return kept;
}

/** Words that only the words around them tell from those they sound like. */
function mendSounds(words: Word[]): void {
  if (words.length > 2 && words.at(-1)?.word === "love") {
    if (!LOVED_BY.has(words.at(-2)?.word ?? "")) words.pop();
  }
  const at = (place: number): string => words[place]?.word ?? "";
  for (const [place, { word }] of words.entries()) {
    const eight = word === "ate" && EIGHT_BEFORE.has(at(place - 1)) && EIGHT_OF.has(at(place + 1));
    const ofThem = at(place + 1) === "of" && /^(them|those|these)$/.test(at(place + 2));
    const count = ofThem && Object.hasOwn(COUNTS, word) ? COUNTS[word] : undefined;
    const little = Object.hasOwn(LITTLE, word) ? LITTLE[word] : undefined;
    const meant = eight ? "eight" : (count ?? little?.(at(place - 1), at(place + 1)));
    if (meant) words[place] = { ...(words[place] as Word), word: meant };
  }
}

/**
 * Splits text of any length into at most 60 words of its first 600 characters. `cut` says that
 * something was left unread.
 */
export function utteranceOf(text: string): Utterance {
  const read = text.slice(0, MAX_CHARACTERS);
  const words: Word[] = [];
  let cut = text.length > MAX_CHARACTERS && text.slice(MAX_CHARACTERS).trim() !== "";
  let before: string | undefined;
  for (const match of read.matchAll(PIECE)) {
    const raw = match[0];
    const start = match.index;
    const end = start + raw.length;
    const prefixed = raw === "a" && /^-[a-z]{2,}(in['’]?|ing)\b/i.test(read.slice(end));
    for (const word of prefixed ? [] : expand(raw, before)) {
      const alt =
        raw.length > word.length && Object.hasOwn(ALTERNATIVES, word)
          ? ALTERNATIVES[word]
          : undefined;
      words.push(alt ? { word, alt, start, end } : { word, start, end });
    }
    before = raw;
    if (words.length > MAX_WORDS) {
      cut = true;
      words.length = MAX_WORDS;
      break;
    }
  }
  mendSounds(words);
  return {
    text,
    words: withoutStutters(words),
    asked: /\?\s*["'”’)]*\s*$/.test(text.slice(-40)),
    cut,
  };
}

/** The word at a place; empty where there is none. */
export function wordAt(words: readonly Word[], at: number): string {
  return words[at]?.word ?? "";
}

/** Words as one text, lower case and without marks. */
export function textOf(words: readonly Pick<Word, "word">[]): string {
  return words.map(({ word }) => word).join(" ");
}
