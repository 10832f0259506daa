/** Slots found by what a sentence is about, apart from counts, times and names. */
import type { Intent } from "../../kitchen/command.ts";
import { factorsMentioned } from "../answers/factor-wordings.ts";
import { UNIT_WORDINGS } from "../intents/convert.ts";
import type { Raw } from "../intents/meaning.ts";
import type { SpokenLot } from "../values/spoken-lots.ts";
import { type Finder, jarsOf, minutes, target } from "./common-finders.ts";
import { PLACES, SPOIL_SIGNS, TERM_TOPICS } from "./named-topics.ts";
import type { Scan } from "./scan.ts";

function topicsIn<T extends string>(scan: Scan, topics: readonly (readonly [T, RegExp])[]): T[] {
  return topics.filter(([, said]) => said.test(scan.joined)).map(([topic]) => topic);
}

/** The factor's `finish` picks the first of `about` that the kitchen has. */
function factor(scan: Scan): Raw {
  return { held: "unsure", about: factorsMentioned(scan.joined) };
}

function explain(scan: Scan): Raw | undefined {
  const [term] = topicsIn(scan, TERM_TOPICS);
  return term && { term };
}

/** "No mold": a sign that is not there. */
const DENIED = /\b(no|not|without|never) (any )?\w+/g;

/** A jar that a whole sentence tells to be bad in no known words has gone off. */
function spoiled(scan: Scan): Raw | undefined {
  const told = scan.joined.replace(DENIED, "");
  const known = SPOIL_SIGNS.find(([, said]) => said.test(told))?.[0];
  const unnamed = !scan.said.within && told === scan.joined;
  const sign = known ?? (unnamed ? "off" : undefined);
  return sign && { sign, ...jarsOf(scan) };
}

const NO_PLACE = "jars?|pints?|quarts?|canner|pot|water|fridge|freezer|bath|rack|trash|bin";
/** Where something stands, in words that the pantry has no name for: "on the low shelf". */
const STANDS = new RegExp(
  "\\b(?:in|into|on|onto|under|behind|beside|at) (?:the|my|our|that|a) " +
    `(?!(?:${NO_PLACE})\\b)((?:\\w+ ){0,2}?(?:shel\\w+|rack|stairs|bookcase|box|crate|drawer|` +
    "corner|attic|loft|hall|bed|dresser|sideboard|porch|barn|store|shop|bench|counter|room))\\b",
);

function place(scan: Scan): Raw | undefined {
  const where = topicsIn(scan, PLACES)[0] ?? STANDS.exec(scan.joined)?.[1];
  return where === undefined ? undefined : { place: where, ...jarsOf(scan) };
}

/** Words before a name that a batch is given. */
const CALLS = "call|called|name|named|rename|label|variety is|(?:they|these|those) are|it is";
const BESIDE_NAME = "it|that|them|this|these|those|the|batch|one|to|as|is|really|actually|all";
const BEHIND_NAME = "not|instead|after all|please|beans|ones|bean";
const CALLED = new RegExp(
  `\\b(?:${CALLS})(?: (?:${BESIDE_NAME}))* ([a-z]+(?: [a-z]+)?) (?:${BEHIND_NAME}) `,
);

/** Words that make a bare number a weight. */
const WEIGHED = /\b(weigh\w*|scales?|pounds?)\b/;
/** What is taken off a weight: "take two pounds off". */
const LESS = /\b(take|took|knock|knocked|minus|less)\b.*\b(off|from)\b|\bminus\b/;

/** A variety by its capitals, where no sentence begins: "these are Blue Lake". */
function varietySaid({ said, words }: Scan): string | undefined {
  const isName = (at: number) => {
    const word = said.words[at];
    const text = word && said.text.slice(0, word.start);
    const begins = text === undefined || /(^|[.!?])\s*$/.test(text);
    return !begins && /^[A-Z][a-z]/.test(said.text.slice(word?.start));
  };
  const not = words.findIndex((word) => word === "not" || word === "instead");
  const places = [...words.keys()].filter((at) => isName(at) && words[at - 1] !== "said");
  const first = places.find((at) => not < 0 || at < not || at > not + 1);
  if (first === undefined) return undefined;
  let end = first;
  while (isName(end)) end += 1;
  return words.slice(first, end).join(" ");
}

function changed(scan: Scan): Raw | undefined {
  const weight = scan.one<{ weightLb: number }>("weight");
  const bare = WEIGHED.test(scan.joined) ? scan.one<number>("number") : undefined;
  const weightLb = weight?.value.weightLb ?? bare?.value;
  const named = CALLED.exec(scan.joined)?.[1] ?? varietySaid(scan);
  const jar = scan.one<string>(
    "size",
    ({ at }) => !/^(said|wrote|told|not)$/.test(scan.word(at - 1)),
  );
  const less = weightLb !== undefined && LESS.test(scan.joined);
  const found = {
    ...(weightLb === undefined ? {} : less ? { less: weightLb } : { weight: { weightLb } }),
    ...(jar ? { size: jar.value } : {}),
    ...(named && weightLb === undefined ? { called: named } : {}),
  };
  return Object.keys(found).length > 0 ? { ...found, ...jarsOf(scan) } : undefined;
}

/** 1 where what is named is what is to be made: "here are peaches, let's make jam". */
function ordered(scan: Scan, at: number): number {
  const before = [at - 1, at - 2, at - 3].map((place) => scan.word(place));
  return before.some((word) => /^(make|start|begin|do|can|pickle|making|starting)$/.test(word))
    ? 1
    : 0;
}

/** The longest words that name a recipe, or a food of one; first what is to be made. */
function begun(scan: Scan): Raw | undefined {
  const known = (kind: "lot" | "food") =>
    scan
      .all<SpokenLot>(kind, ({ value }) => value.recipes.length > 0)
      .toSorted(
        (a, b) => ordered(scan, b.at) - ordered(scan, a.at) || b.next - b.at - (a.next - a.at),
      );
  const [lot] = known("lot");
  const produce =
    scan.one<{ weightLb: number }>("produce") ?? scan.one<{ weightLb: number }>("weight");
  return lot && { lot: lot.value, ...(produce ? { produce: produce.value } : {}) };
}

const UNIT_WORDS: readonly (readonly [string, RegExp])[] = Object.entries(UNIT_WORDINGS).map(
  ([unit, words]) => [unit, new RegExp(`\\b(?:${words.replaceAll(/\[[^\]]*\] /g, "")})\\b`)],
);
/** "How many cups in a quart", "a quart in cups", "turn four quarts to pints". */
const ASKED_UNIT = /\b(?:how many|how much in|in|into|to|as) ((?:fluid |table |tea )?[a-z]+) /g;

function unitIn(text: string): string | undefined {
  return UNIT_WORDS.find(([, said]) => said.test(text))?.[0];
}

/** What an amount is turned into where only "metric" is said. */
const IN_METRIC: Readonly<Record<string, string>> = {
  pound: "kilo",
  ounce: "gram",
  quart: "liter",
  cup: "ml",
  fahrenheit: "celsius",
  foot: "meter",
  inch: "centimeter",
};
const METRIC = / (new money|metric) /;

function converted(scan: Scan): Raw | undefined {
  const asked = [...scan.joined.matchAll(ASKED_UNIT)].find(([, unit = ""]) => unitIn(unit));
  const value = scan.one<number>("number");
  const amount = value ? { value: value.value } : {};
  const named = UNIT_WORDS.filter(([, said]) => said.test(scan.joined)).map(([unit]) => unit);
  const [first = ""] = named;
  const metric = METRIC.test(scan.joined) ? IN_METRIC[first] : undefined;
  if (metric) return { from: first, to: metric, ...amount };
  // "Ounces in a pound": one of the second in the first.
  const within = / ([a-z]+) (?:in|to) (?:a|an|one|the) ([a-z]+) /.exec(scan.joined);
  const [of, one] = [unitIn(within?.[1] ?? ""), unitIn(within?.[2] ?? "")];
  if (of && one && !value) return { from: one, to: of };
  const to = unitIn(asked?.[1] ?? "");
  const from = to && named.find((unit) => unit !== to);
  return from && to ? { from, to, ...amount } : undefined;
}

function away(scan: Scan): Raw {
  const length = minutes(scan);
  const until = scan.one<string>("future");
  if (length) return { minutes: length.value };
  if (until) return { until: until.value };
  // "Back in ten": minutes, where no other unit is said.
  const bare = scan.one<number>("whole", ({ at }) => /^(in|for|be)$/.test(scan.word(at - 1)));
  return bare ? { minutes: bare.value } : {};
}

function warned(scan: Scan): Raw | undefined {
  const bare = scan.one<number>("whole", ({ next }) => {
    return /^(before|ahead|afore|from|beforehand|minutes?)$/.test(scan.word(next));
  });
  const length = minutes(scan) ?? bare;
  return length && { minutes: length.value, ...target(scan) };
}

export const TOPIC_FINDERS: Partial<Record<Intent, Finder>> = {
  factor,
  explain,
  spoiled,
  place,
  "change-batch": changed,
  begin: begun,
  convert: converted,
  away,
  "warn-ahead": warned,
};
