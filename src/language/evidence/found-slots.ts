/**
 * The slots of a meaning that is known by evidence other than a wording: each value by its type,
 * anywhere in the sentence.
 */
import type { Intent } from "../../kitchen/command.ts";
import type { DispositionWord } from "../../kitchen/questions/answer-meant.ts";
import type { Raw } from "../intents/meaning.ts";
import { textBetween } from "../values/open-slots.ts";
import {
  type Finder,
  jarsOf,
  meantInstead,
  minutes,
  moment,
  size,
  target,
} from "./common-finders.ts";
import { altitude, pressure, temperature } from "./found-measures.ts";
import { TOPIC_FINDERS } from "./found-topics.ts";
import { foodsIn } from "./put-in.ts";
import type { FoundValue, Scan } from "./scan.ts";

const COUNTED = /^(jars?|pints?|quarts?|half|pints|lids?|of|more|them|sealed|filled|full|done)$/;
const UNITS = new Set(
  (
    "minute minutes hour hours second seconds pound pounds degree degrees percent psi kpa feet " +
    "meters inch inches cup cups day days week weeks kilo kilos ago o'clock"
  ).split(" "),
);

/** A whole number that counts jars: before "jars" or a size, else one without another unit. */
function count(scan: Scan): FoundValue<number> | undefined {
  const numbers = scan.all<number>("whole", ({ at, next }) => {
    return !UNITS.has(scan.word(next)) && scan.word(at - 1) !== "number" && !isJarNumber(scan, at);
  });
  const counted = numbers.filter(({ next }) => COUNTED.test(scan.word(next)));
  return scan.chosen(counted) ?? scan.chosen(numbers);
}

function isJarNumber(scan: Scan, at: number): boolean {
  const before = scan.word(at - 1);
  // "No. 4" is a number, and "oh no, one of them" is none.
  return /^(number|jar)$/.test(before) || (before === "no" && /^\d/.test(scan.word(at)));
}

/** The jars named by number: "number four", "jars two and five". */
function numbered(scan: Scan): Raw {
  const list = scan.all<number[]>("jars", ({ at, value, next }) => {
    if (UNITS.has(scan.word(next)) || value.length === 0) return false;
    return isJarNumber(scan, at) || /^(numbers|jars)$/.test(scan.word(at - 1)) || named(scan, at);
  });
  const found = scan.chosen(list);
  return found ? { jars: found.value } : {};
}

/** Whether the number itself is preceded by "number" or "jar". */
function named(scan: Scan, at: number): boolean {
  return /^(number|numbers|jar)$/.test(scan.word(at));
}

/** "The third jar", "the fourth bean one": the jar of that number, counted in their row. */
function nth(scan: Scan): Raw {
  const list = scan.all<number[]>("ordinal", ({ next }) => {
    return [next, next + 1].some((at) => /^(jar|lid|one|pint|quart)s?$/.test(scan.word(at)));
  });
  const found = scan.chosen(list);
  return found ? { jars: found.value } : {};
}

/** "The little jar at the end", "its lid": one, where no more than one is talked of. */
const THE_JAR = /\b(the|that|this|my|it is) (\w+ )?(jar|lid|pint|quart)\b/;
const MORE_THAN_ONE = /\b(jars|lids|pints|quarts|both|two|all|some|few|couple)\b/;

/** Jars by number, by their place in a row or by how many they are. */
function jarsInRow(scan: Scan): Raw {
  const jars = nth(scan);
  if (jars.jars) return { ...jars, ...jarsOf(scan) };
  const found = someJars(scan);
  const one = THE_JAR.test(scan.joined) && !MORE_THAN_ONE.test(scan.joined);
  return one && !found.jars && found.count === undefined ? { ...found, count: 1 } : found;
}

function someJars(scan: Scan): Raw {
  const jars = numbered(scan);
  if (jars.jars) return { ...jars, ...jarsOf(scan) };
  const many = count(scan);
  if (many) return { count: many.value, ...jarsOf(scan) };
  const one = scan.has("a jar", "one jar", "a lid", "one of them", "one of the jars", "another");
  return { ...(one ? { count: 1 } : {}), ...jarsOf(scan) };
}

const ALL_OF_THEM =
  /\b(all|every|everything|each|whole lot|the lot|entire|whole batch|one and all)\b/;

function sealed(scan: Scan): Raw | undefined {
  const jars = numbered(scan);
  if (jars.jars) return { ...jars, ...jarsOf(scan) };
  const many = count(scan);
  if (ALL_OF_THEM.test(scan.joined)) return { all: true, ...jarsOf(scan) };
  return many ? { count: many.value, ...jarsOf(scan) } : undefined;
}

const DISPOSED: readonly [RegExp, DispositionWord][] = [
  [
    /\b(re ?process|(process|can) (it|them|that|those) again|do (it|them) over|new lids?)/,
    "reprocess",
  ],
  [/\b(start(ing)?|begin|count\w*) .*\b(again|over|zero|scratch|anew)\b|\brestart/, "restarted"],
  [/\b(fridge|refrigerat\w*|ice ?box|cold box|cooler)\b/, "refrigerate"],
  [
    /\b(eat|have|use|finish) (it|them|that|those|this)\b.*\b(week|tonight|first|soon)\b/,
    "refrigerate",
  ],
  [/\b(freez\w*|deep freeze)\b/, "freeze"],
  [
    /\b(throw|thrown|toss\w*|chuck\w*|bin|bins|binned|discard\w*|compost|trash|garbage)\b/,
    "discard",
  ],
  [/\b(pigs?|hogs?|dogs?|chickens|hens|out with|overboard|rubbish|dump\w*)\b/, "discard"],
  [
    /^ (straight )?out (it|they|straight)\b|\b(out (it|they) (goes|go|went)|threw|get rid)\b/,
    "discard",
  ],
];

function disposition(scan: Scan): Raw | undefined {
  const what = DISPOSED.find(([pattern]) => pattern.test(scan.joined))?.[1];
  return what && { what, ...someJars(scan) };
}

/** Words that are never a timer's name. */
const NO_LABEL = new RegExp(
  "^(clock|timer|alarm|one|stove|oven|fire|record|last|time|minutes?|while|moment|spell|pot|pan|" +
    "canner|bit)$",
);
/** A label stands behind one of these, or begins the sentence. */
const BEFORE_LABEL = /^(the|for|my|on|that|this|them|those|to|an?|some)$/;

/** What a timer is for, as it is written. */
function labelSaid(scan: Scan): string | undefined {
  const found = scan.all<string>("thing", ({ at, value }) => {
    const [first = ""] = value.split(" ");
    const placed = at === 0 || BEFORE_LABEL.test(scan.word(at - 1)) || /^(the|my)$/.test(first);
    return placed && !NO_LABEL.test(first) && !NOT_LABEL.has(first);
  });
  const first = scan.chosen(found.filter(({ at }) => at > 0)) ?? scan.chosen(found);
  if (!first) return undefined;
  const words = String(first.value).split(" ");
  const end = words.findIndex((word) => LABEL_ENDS.has(word) || NO_LABEL.test(word));
  const label = words.slice(0, end < 1 ? words.length : end);
  const from = first.next - words.length;
  return textBetween(scan.said, from, from + label.length);
}

/** Verbs and little words that a sentence begins with, and no label does. */
const NOT_LABEL = new Set(
  (
    "set start put give add stick throw let make time stop kill cancel drop forget turn tell " +
    "warn call shout remind ring buzz gimme go keep leave bump another okay right please hey " +
    "never fash"
  ).split(" "),
);
/** A label is over where one of these begins. */
const LABEL_ENDS = new Set(
  "needs need wants want is are was were has have clock timer alarm again already eaten".split(" "),
);

function label(scan: Scan): Raw {
  const found = labelSaid(scan);
  return found === undefined ? {} : { label: found };
}

/** A timer by its name, known or not. */
function timerNamed(scan: Scan): Raw {
  const known = target(scan);
  if (known.target) return known;
  const said = labelSaid(scan);
  if (said === undefined) return {};
  return { target: { said, meaning: { recipes: [], batches: [], timers: [] }, exact: true } };
}

/** No timer longer than this is set by a bare number, minutes. */
const MOST_BARE_MINUTES = 180;

/** A length of time, or a number without another unit: "eggs, eight". */
function timed(scan: Scan): FoundValue<number> | undefined {
  const bare = scan.one<number>("whole", ({ next, value }) => {
    const counts = UNITS.has(scan.word(next)) || /^(timers?|alarms?)$/.test(scan.word(next));
    return value > 0 && value <= MOST_BARE_MINUTES && !counts;
  });
  return minutes(scan) ?? bare;
}

function timerSet(scan: Scan): Raw | undefined {
  const length = timed(scan);
  return length && { minutes: length.value, ...label(scan) };
}

function timerAdd(scan: Scan): Raw | undefined {
  const length = timed(scan);
  return length && { minutes: length.value, ...timerNamed(scan) };
}

function remind(scan: Scan): Raw {
  const when = scan.one<string>("future");
  const { said, words } = scan;
  const to = words.findIndex((word, at) => word === "to" && at > 0);
  const about = words.findIndex((word) => word === "about" || word === "that");
  const from = to > 0 ? to + 1 : about > 0 ? about + 1 : 0;
  const end = when && when.at > from ? when.at : words.length;
  const text = textBetween(said, from, Math.max(end, from + 1));
  return { ...(when ? { when: when.value } : {}), text };
}

const NOTE_LEADS = new RegExp(
  "^.*?\\b(?:note(?: down)?|write (?:this |that |it )?down|jot down|for the record|" +
    "put (?:it )?down|remember|make a note)(?: that)?[,:]?\\s+(?=\\S)",
  "i",
);

function note(scan: Scan): Raw {
  return { text: scan.said.text.replace(NOTE_LEADS, "").replace(/[\s.,;:!]+$/u, "") };
}

/** A time is put right only where words say so. */
const PUT_RIGHT = new RegExp(
  "\\b(not?|wrong|mis\\w+|mean\\w*|ma[kd]e|call|put|mark|change|correct\\w*|fix|actually|rather|" +
    "earlier|sooner|should|said|told|record|entry|log|really|truth|clock|watch|that was|forgot)\\b",
);
function correctTime(scan: Scan): Raw | undefined {
  if (!PUT_RIGHT.test(scan.joined)) return undefined;
  const found = scan.one<string>("moment");
  return found && { at: found.value };
}

function hush(scan: Scan): Raw {
  const length = minutes(scan);
  return length ? { minutes: length.value } : {};
}

/** What went in, after its verb: the name of a food or thing, no more. */
const WENT_IN = new RegExp(
  "\\b(?:added|put|threw|tossed|dropped|stirred|mixed|chucked|slipped|with)(?: in)?" +
    "(?: some| a few| a little| a| an| the| extra)? ",
);

function wentIn(scan: Scan): Raw | undefined {
  const all = scan.words.join(" ");
  const found = WENT_IN.exec(all);
  const from = found
    ? all.slice(0, found.index + found[0].length).split(" ").length - 1
    : undefined;
  const label = scan.one<string>("thing", ({ at }) => at === from);
  const food = label ? String(label.value) : foodsIn(all)[0];
  return food === undefined ? undefined : { food };
}

const LIQUID = /\b(boiling water|hot water|salt water|water|brine|syrup|vinegar|juice)\b/;

function howMuch(scan: Scan): Raw {
  const what = scan.said.text
    .trim()
    .toLowerCase()
    .replace(/[?.!]+$/, "");
  return { what: { what } };
}

/** The whole question under a name. */
function asked(slot: string): Finder {
  return ({ said }) => ({ [slot]: said.text.trim().toLowerCase() });
}

/** No kitchen counts this many jars: the number means something else. */
const TOO_MANY = 200;

const ONE_JAR = /\b(a|another|the last|the first|one) (half )?(jar|pint|quart)\b|\bone of\b/;

function filled(scan: Scan): Raw | undefined {
  const many = count(scan);
  if (many && many.value > TOO_MANY) return undefined;
  return { ...(many ? { count: many.value } : {}), ...size(scan), ...jarsOf(scan) };
}

/** Scores by their names, or what was said of it. */
function tasted(scan: Scan): Raw {
  const scores = scan.one<Record<string, number>>("scores");
  const said = scores ? { scores: scores.value } : { words: scan.said.text.trim() };
  return { ...said, ...jarsOf(scan) };
}

function bareNumber(scan: Scan): Raw | undefined {
  const found = scan.one<number>("number");
  return found && { value: found.value };
}

/** Only words that say nothing else leave the program: clocks may run. */
const LEAVING =
  /\b(quit|exit|close|shut down|bye|goodbye|good ?night|log out|switch off|see you|off home)\b/;

function leaving(scan: Scan): Raw | undefined {
  return LEAVING.test(scan.joined) ? {} : undefined;
}

const withTarget: Finder = (scan) => target(scan);
const withMoment: Finder = (scan) => ({ ...target(scan), ...moment(scan) });
const none: Finder = () => ({});

/** Meanings that can be acted on without a wording; the others are only asked about. */
const FINDERS: Partial<Record<Intent, Finder>> = {
  ...TOPIC_FINDERS,
  done: withMoment,
  "time-left": withTarget,
  "finish-time": withTarget,
  hold: withTarget,
  resume: withTarget,
  abandon: withTarget,
  focus: (scan) => {
    const found = target(scan);
    return found.target ? found : undefined;
  },
  boiling: (scan) => ({ ...withMoment(scan) }),
  "boil-lost": withMoment,
  "pressure-lost": withMoment,
  "weight-rocking": withMoment,
  venting: withMoment,
  loaded: (scan) => {
    const jars = filled(scan);
    return jars && { ...jars, ...moment(scan) };
  },
  "water-low": withMoment,
  added: wentIn,
  "topped-up": (scan) => {
    const poured = LIQUID.exec(scan.joined)?.[0] ?? wentIn(scan)?.food;
    return poured === undefined ? undefined : { with: poured };
  },
  "was-away": hush,
  pressure,
  temperature,
  "jars-filled": filled,
  sealed,
  "seal-failed": jarsInRow,
  "jar-broken": jarsInRow,
  "set-aside": jarsInRow,
  disposition,
  altitude,
  answer: bareNumber,
  taste: tasted,
  opened: (scan) => {
    const jars = filled(scan);
    const one = ONE_JAR.test(scan.joined) ? { count: 1 } : {};
    return jars && { ...one, ...jars };
  },
  "timer-set": timerSet,
  "timer-add": timerAdd,
  "timer-cancel": timerNamed,
  remind,
  note,
  "correct-time": correctTime,
  hush,
  "how-much": howMuch,
  // What these are about is worked out from their words in `finish`.
  emergency: none,
  trouble: none,
  "is-safe": asked("about"),
  "short-of": none,
  "may-i": withTarget,
  "canner-state": none,
  which: none,
  standing: none,
  "ready-when": jarsOf,
  pantry: (scan) => (scan.has("seed", "seeds") ? undefined : jarsOf(scan)),
  seeds: jarsOf,
  ingredients: jarsOf,
  recipes: none,
  more: none,
  repeat: none,
  "what-now": none,
  "what-next": none,
  overview: none,
  undo: none,
  acknowledge: none,
  unhush: none,
  yes: none,
  no: none,
  help: none,
  back: none,
  "forget-it": none,
  redo: none,
  quit: leaving,
  plan: none,
  skip: withTarget,
  instead: meantInstead,
};

/** The slots of a meaning found in a sentence; undefined where a needed one is missing. */
export function foundSlots(intent: Intent, scan: Scan): Raw | undefined {
  return FINDERS[intent]?.(scan);
}
