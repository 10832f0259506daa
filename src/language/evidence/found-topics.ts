/** Slots found by what a sentence is about, apart from counts, times and names. */
import type { Intent } from "../../kitchen/command.ts";
import { UNIT_WORDINGS } from "../intents/convert.ts";
import type { Raw } from "../intents/meaning.ts";
import type { SpokenLot } from "../values/lots.ts";
import { type Finder, minutes, size, target } from "./common-finders.ts";
import { FACTOR_TOPICS, PLACES, SPOIL_SIGNS, TERM_TOPICS } from "./named-topics.ts";
import type { Scan } from "./scan.ts";

function topicsIn<T extends string>(scan: Scan, topics: readonly (readonly [T, RegExp])[]): T[] {
  return topics.filter(([, said]) => said.test(scan.joined)).map(([topic]) => topic);
}

/** The factor's `finish` picks the first of `about` that the kitchen has. */
function factor(scan: Scan): Raw {
  return { held: "unsure", about: topicsIn(scan, FACTOR_TOPICS) };
}

function explain(scan: Scan): Raw | undefined {
  const [term] = topicsIn(scan, TERM_TOPICS);
  return term && { term };
}

function spoiled(scan: Scan): Raw | undefined {
  const [sign] = topicsIn(scan, SPOIL_SIGNS);
  return sign && { sign, ...target(scan) };
}

function place(scan: Scan): Raw | undefined {
  const [where] = topicsIn(scan, PLACES);
  return where === undefined ? undefined : { place: where, ...target(scan) };
}

/** Words before a name that a batch is given. */
const CALLS = "call|called|name|named|rename|label|variety is|(?:they|these|those) are|it is";
const BESIDE_NAME = "it|that|them|this|these|those|the|batch|one|to|as|is|really|actually|all";
const BEHIND_NAME = "not|instead|after all|please|beans|ones|bean";
const CALLED = new RegExp(
  `\\b(?:${CALLS})(?: (?:${BESIDE_NAME}))* ([a-z]+(?: [a-z]+)?) (?:${BEHIND_NAME}) `,
);

function changed(scan: Scan): Raw | undefined {
  const weight = scan.one<{ weightLb: number }>("weight");
  const called = CALLED.exec(scan.joined)?.[1];
  const found = {
    ...(weight ? { weight: weight.value } : {}),
    ...size(scan),
    ...(called && !weight ? { called } : {}),
  };
  return Object.keys(found).length > 0 ? { ...found, ...target(scan) } : undefined;
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

function converted(scan: Scan): Raw | undefined {
  const asked = [...scan.joined.matchAll(ASKED_UNIT)].find(([, unit = ""]) => unitIn(unit));
  if (!asked) return undefined;
  const to = unitIn(asked[1] ?? "");
  const rest = scan.joined.replace(asked[0], " ");
  const from = UNIT_WORDS.find(([unit, said]) => unit !== to && said.test(rest))?.[0];
  const value = scan.one<number>("number");
  return from && to ? { from, to, ...(value ? { value: value.value } : {}) } : undefined;
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
