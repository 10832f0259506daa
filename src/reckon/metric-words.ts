/**
 * Sentences in pounds, inches and Fahrenheit, said in metric units: the one place that words
 * quantities for a kitchen that wants them so. Jars keep the names of their sizes, spoons stay
 * spoons, and a gauge's own pounds stand beside the kilopascals.
 */
import { ONES, TEENS, TENS } from "./number-words.ts";
import { withCommas } from "./reckoned.ts";
import {
  celsiusOf,
  FT_PER_M,
  G_PER_LB,
  KPA_PER_PSI,
  ML_PER_CUP,
  ML_PER_QUART,
  MM_PER_IN,
} from "./units.ts";

const G_PER_OZ = G_PER_LB / 16;
const QUARTS_PER_GALLON = 4;

const PARTS: Readonly<Record<string, number>> = {
  half: 1 / 2,
  "a half": 1 / 2,
  "a quarter": 1 / 4,
  "three quarters": 3 / 4,
  "a sixteenth": 1 / 16,
  "three sixteenths": 3 / 16,
};
const TENS_WORD = Object.keys(TENS).join("|");
const NAMES = [...Object.keys({ ...ONES, ...TEENS }).slice(1), TENS_WORD].join("|");
const PART = Object.keys(PARTS).join("|");
/** A number in digits or words, whole or with a part: `4 1/2`, `half an`, `one and a quarter`. */
const NUMBER =
  "(?:\\d[\\d,]*(?:\\.\\d+)?(?: \\d/\\d)?|\\d/\\d|(?:a|one) hundred|" +
  `(?:${PART})(?: of)?(?: an?)?|(?:${TENS_WORD})-(?:${NAMES})|` +
  `(?:${NAMES}|\\d+)(?: and (?:${PART}))?|an?)`;

function numberIn(text: string): number {
  const words = text.toLowerCase().trim();
  const fraction = /^(?:(\d[\d,]*) )?(\d)\/(\d)$/.exec(words);
  if (fraction) return Number(fraction[1] ?? 0) + Number(fraction[2]) / Number(fraction[3]);
  if (/^\d/.test(words) && !words.includes(" ")) return Number(words.replaceAll(",", ""));
  if (words === "a" || words === "an") return 1;
  if (words.endsWith(" hundred")) return 100;
  const part = PARTS[words.replace(/(?: of)?(?: an?)?$/, "")] ?? PARTS[words];
  if (part !== undefined) return part;
  const [whole = "", more] = words.split(" and ");
  return wholeOf(whole) + (more ? (PARTS[more] ?? 0) : 0);
}

function wholeOf(word: string): number {
  const known = ONES[word] ?? TEENS[word] ?? TENS[word];
  if (known !== undefined) return known;
  const [tens = "", ones = ""] = word.split("-");
  return TENS[tens] === undefined ? Number(word) : TENS[tens] + (ONES[ones] ?? 0);
}

/** At most this many decimals, none where they are zero. */
function shown(value: number, decimals: number): string {
  const rounded = Number(value.toFixed(decimals));
  return rounded >= 1000 ? withCommas(Math.round(rounded)) : String(rounded);
}

/** From `low` to `high`, which are the same where there is no range. */
type Shown = { low: string; high: string; unit: string };
type Into = (low: number, high: number, exact: boolean) => Shown;
/** How a quantity is found, and what is said in its place; `exact` where digits were said. */
type Measure = { found: RegExp; into: Into };

function measure(unit: string, into: Into): Measure {
  const range = `(?<!\\w)(?<!pascals \\()(${NUMBER})(?:( to | or |-)(${NUMBER}))?(?:${unit})`;
  return { found: new RegExp(range, "gi"), into };
}

function each(unit: string, say: (value: number, exact: boolean) => string): Into {
  return (low, high, exact) => ({ low: say(low, exact), high: say(high, exact), unit });
}

/** Never less than is wanted, since acid depends on it. */
function liquid(unit: string, ml: number): Measure {
  return measure(unit, (low, high) => volume(low * ml, high * ml));
}

function volume(low: number, high: number): Shown {
  const large = high >= 1000;
  const say = (ml: number) => {
    return large ? shown(Math.ceil(ml / 10) / 100, 2) : String(Math.ceil(ml / 5) * 5);
  };
  return { low: say(low), high: say(high), unit: large ? " liters" : " milliliters" };
}

function centimeters(inches: number): string {
  const cm = (inches * MM_PER_IN) / 10;
  return shown(cm, cm < 4 ? 1 : 0);
}

const degrees = (f: number, exact: boolean) => shown(celsiusOf(f), exact ? 1 : 0);

const MEASURES: readonly Measure[] = [
  measure("-inch\\b", each("-centimeter", centimeters)),
  measure(" inch(?:es)?\\b", each(" centimeters", centimeters)),
  measure(
    " ?(?:feet|foot|ft)\\b",
    each(" meters", (ft) => shown(ft / FT_PER_M, 0)),
  ),
  measure("(?: degrees(?: Fahrenheit)?\\b(?! above boiling)| F\\b)", each(" degrees", degrees)),
  measure(
    " degrees(?= above boiling)",
    each(" Celsius degrees", (f) => shown((f * 5) / 9, 1)),
  ),
  measure(
    " (?:lb|pounds?)\\b(?! weight)",
    each(" kilograms", (lb) => shown((lb * G_PER_LB) / 1000, 2)),
  ),
  measure(
    " (?:oz|ounces?)\\b",
    each(" grams", (oz) => shown(oz * G_PER_OZ, 0)),
  ),
  liquid(" cups?\\b", ML_PER_CUP),
  liquid(" quarts?(?= of| for)", ML_PER_QUART),
  liquid(" gallons?\\b", ML_PER_QUART * QUARTS_PER_GALLON),
];

const VOLUMES = {
  cup: ML_PER_CUP,
  quart: ML_PER_QUART,
  gallon: ML_PER_QUART * QUARTS_PER_GALLON,
};

/** What a share is of: "half a cup to the quart", "for each gallon of crock". */
const SHARE = /\b(the last|the|each|every) (cup|quart|gallon)\b(?!-| jars?)/g;

/** Pounds in digits are a gauge's, unless they are pounds of something. */
const PRESSURE = /(\d+(?:\.\d+)?) (?:psi\b|pounds?\b(?! (?:of|make|can't|or)\b)( weight)?)/g;

/** Words that name a metric unit are left as they are. */
const METRIC = /\b(?:\w*(?:meters?|grams?|liters?|pascals?)|Celsius|kg|kPa)\b/;

/** In which units a kitchen is spoken to. */
export type Units = "us" | "metric";

/** A text in the units that a kitchen wants. */
export function wordsIn(units: Units | undefined, text: string): string {
  return units === "metric" ? metricWords(text) : text;
}

/** A text with its quantities in metric units. */
export function metricWords(text: string): string {
  return text
    .split(/(?<=[.!?;]) /)
    .map((sentence) => (METRIC.test(sentence) ? sentence : metricSentence(sentence)))
    .join(" ");
}

/** A text of several lines, or a page, of which only what is read is changed. */
export function metricText(content: string): string {
  if (!content.startsWith("<")) return content.split("\n").map(metricWords).join("\n");
  return content.replace(/(?<=>)[^<>]+(?=<)|(?<=aria-label=")[^"]+/g, metricWords);
}

/** What is followed by its grams is weighed. */
const WEIGHED = new RegExp(
  `${NUMBER} [a-z]+(?: \\+ ${NUMBER} [a-z]+)*(?: \\d+ oz)? \\(([\\d,.]+) g\\)`,
  "gi",
);

function metricSentence(sentence: string): string {
  let said = sentence.replace(WEIGHED, (_, grams: string) => {
    return weight(Number(grams.replaceAll(",", "")));
  });
  said = said.replace(PRESSURE, (_, psi: string, own = "") => {
    const kPa = Math.ceil(Number(psi) * KPA_PER_PSI);
    return own ? `${psi} pound weight (${kPa} kilopascals)` : `${kPa} kilopascals (${psi} pounds)`;
  });
  for (const one of MEASURES) said = into(said, one);
  said = said.replace(SHARE, (_, which: string, name: keyof typeof VOLUMES) => {
    const { high, unit } = volume(0, VOLUMES[name]);
    return `${which === "the" ? "" : `${which} `}${high}${unit}`;
  });
  return said.replace(/\bin feet\b/g, "in meters");
}

function weight(grams: number): string {
  return grams >= 1000 ? `${shown(grams / 1000, 2)} kg` : `${shown(grams, 1)} g`;
}

function into(sentence: string, { found, into: say }: Measure): string {
  return sentence.replace(found, (whole, from, between = "", to = from) => {
    const [low, high] = [numberIn(from), numberIn(to)];
    if (Number.isNaN(low) || Number.isNaN(high)) return whole;
    const said = say(low, high, /\d/.test(from));
    const shownAs = `${said.high}${said.unit}`;
    return between === "" ? shownAs : `${said.low}${between}${shownAs}`;
  });
}
