import { wordSet } from "../grammar/word-set.ts";
import { editDistance, soundKey } from "../spelling/sound.ts";
import { ordinalAt, smallWholeAt } from "../values/spoken-numbers.ts";
import { type Utterance, utteranceOf } from "../words.ts";
import { FACTOR_WORDINGS } from "./factor-wordings.ts";

/** Understanding the answer to "which one?": which of the choices offered are picked. */

const NOTHING_SAID = wordSet(
  "the my our that this those these it is i mean meant one ones please um uh well just okay yes",
  "no actually said was for with go let us do batch load timer of them choice option number",
  "want think say would be talking about we are am now oh sorry",
);

/** The words that are left without those that say nothing. */
function core(said: Utterance): string[] {
  return said.words.map(({ word }) => word).filter((word) => !NOTHING_SAID.has(word));
}

function wordsIn(choice: string): string[] {
  return utteranceOf(choice).words.map(({ word }) => word);
}

/** The choices whose words include everything that was said; misheard words match by sound. */
function namedBy(said: readonly string[], choices: readonly string[], nearToo: boolean): number[] {
  const limit = choices.length <= 3 ? 2 : 1;
  const fits = (choice: string, near: boolean): boolean => {
    const words = wordsIn(choice);
    return said.every((word) =>
      words.some(
        (known) =>
          known === word ||
          (near &&
            word.length > 3 &&
            (soundKey(known) === soundKey(word) ||
              editDistance(known, word, limit) <= Math.min(limit, Math.floor(word.length / 3)))),
      ),
    );
  };
  for (const near of nearToo ? [false, true] : [false]) {
    const found = choices.flatMap((choice, index) => (fits(choice, near) ? [index] : []));
    const exact = found.filter((index) => wordsIn(choices[index]!).join(" ") === said.join(" "));
    if (exact.length === 1) return exact;
    if (found.length > 0) return found;
  }
  return [];
}

/**
 * Which of the choices (by index) an answer picks: by name ("the beets"), place ("the first",
 * "the last one", "number two"), "both", "all", "neither"; several names joined by "and" pick
 * each. Undefined where the words pick nothing, or a name fits several.
 */
export function pickChoices(text: string, choices: readonly string[]): number[] | undefined {
  const said = utteranceOf(text);
  const words = core(said);
  const all = words.join(" ");
  const every = choices.map((_, index) => index);
  if (/^(both|all|everything|every|both them|all both)$/.test(all)) {
    return all === "both" && choices.length !== 2 ? undefined : every;
  }
  if (/^(neither|none|nothing|not either|neither nor)$/.test(all)) return [];
  const place = placeOf(said, choices.length);
  if (place !== undefined) return [place];
  if (words.length === 0) return undefined;
  const picked = new Set<number>();
  for (const part of all.split(/ (?:and|plus|both) | and /)) {
    const found = namedBy(
      part.split(" ").filter((word) => word !== "and"),
      choices,
      true,
    );
    if (found.length !== 1) return undefined;
    picked.add(found[0]!);
  }
  return [...picked].sort((a, b) => a - b);
}

function placeOf(said: Utterance, count: number): number | undefined {
  const words = said.words.filter(
    ({ word }) => !NOTHING_SAID.has(word) || word === "one" || word === "number",
  );
  const first = words[0]?.word;
  if (first === "last" || first === "latter") return count - 1;
  if (first === "former") return 0;
  const rest = words.slice(words[0]?.word === "number" ? 1 : 0);
  const ordinal = ordinalAt(rest, 0) ?? smallWholeAt(rest, 0);
  const left = ordinal && rest.slice(ordinal.next).filter(({ word }) => word !== "one");
  if (!ordinal || left?.length !== 0) return undefined;
  return ordinal.value >= 1 && ordinal.value <= count ? ordinal.value - 1 : undefined;
}

/** Words beside a choice that neither count, doubt, wish nor ask. */
const IDLE_BESIDE = wordSet(
  "um uh er oh ah hm well so right now okay yes yeah yep aye please actually definitely certainly",
  "honestly sorry there just love dear honey sir mm damn bloody blasted blessed",
);
/** These join something to the choice, unless they stand at an end. */
const JOINS = wordSet("and also too");
const DENIES = wordSet("no not never none neither without");

/** What questions about no factor are about, as the subject of an answer. */
const SUBJECTS: Readonly<Record<string, string>> = {
  gauge: "gauge|canner|one",
  cover: "lids|jars",
  "still-covered": "lids|jars",
  still: "lids|jars|canner|pot",
};
const IT = "it|they|them|these|those|that|this|(?:all|every one|each) of (?:it|them|these|those)";
const HAS = "is|are|was|were|has a|has the|have|had|stayed|has been|have been|is a|is the";
const ALL_OF_IT =
  "all of (?:it|them|these|those)|every (?:last )?one(?: of them)?|each one|the lot|all|both|" +
  "the whole (?:lot|batch)|this time";
/** "That's all" ends a list. */
const BUT_THAT = IT.replace("|that|this", "");
/** "All in all" sums up. */
const OF_ALL = ALL_OF_IT.replace("|all|both", "");

/** Whether words say a choice and no more: its own words, said of what was asked. */
function saysPlainly(all: string, choice: string, key: string): boolean {
  const factor = FACTOR_WORDINGS.get(key);
  const nouns = factor?.nouns ?? SUBJECTS[key];
  const named = nouns
    ? `|(?:(?:all|both) )?(?:of )?(?:the |my |our |these |those )?(?:${nouns})`
    : "";
  const after = nouns ? `(?: (?:${nouns}))?` : "";
  const [it, of] = /^all\b/.test(choice) ? [BUT_THAT, OF_ALL] : [IT, ALL_OF_IT];
  const whole = factor?.wholes ?? of;
  const ones = factor?.noOnes ? "" : "(?: ones)?";
  const form =
    `^(?:(?:${it}${named}) )?(?:(?:${HAS}) )?(?:(?:all|both|brand|a|the) )*` +
    `(${choice})${ones}${after}(?: (?:${whole}))?$`;
  return new RegExp(form).test(all);
}

/**
 * The one choice that an answer to a question that guards safety names. What says that all is as it
 * should be takes the whole sentence; what says that something is not may stand in one.
 */
export function exactChoice(said: Utterance, question: ChoicesAsked): string | undefined {
  const { choices = [], right, key = "" } = question;
  if (said.asked) return undefined;
  const words = said.words.map(({ word }) => word);
  const denies = words.filter((word) => DENIES.has(word));
  const fits = choices.filter((choice) => {
    const own = wordsIn(choice);
    return denies.every((word) => own.includes(word));
  });
  const plain = fits.find((choice) => {
    const own = wordsIn(choice);
    const all = words.filter((word, at) => {
      const idle = IDLE_BESIDE.has(word) && !(word === "right" && words[at - 1] === "all");
      const atEnd = JOINS.has(word) && (at === 0 || at === words.length - 1);
      return !(idle || atEnd) || own.includes(word);
    });
    return saysPlainly(all.join(" "), own.join(" "), key);
  });
  if (plain !== undefined) return plain;
  const wrong = (right ? fits : []).filter((choice) => {
    const denied = wordsIn(choice).filter((word) => DENIES.has(word));
    return !right?.includes(choice) && denied.every((word) => denies.includes(word));
  });
  const left = core(said).filter((word) => !BESIDE_WRONG.has(word));
  const found = left.length > 0 ? namedBy(left, wrong, false) : [];
  return found.length === 1 ? wrong[found[0]!] : undefined;
}

const BESIDE_WRONG = wordSet("they them were all that lids jars so");

/** A question between choices, with the words of those that say that all is right. */
type ChoicesAsked = { choices?: readonly string[]; right?: readonly string[]; key?: string };

/**
 * The answer where it picks from the choices: "both", "neither", or the name of the one picked, as
 * it was offered.
 */
export function choiceIn(said: Utterance, choices: readonly string[]): string | undefined {
  const all = core(said).join(" ");
  const several = /^(both|neither|none|all|either)$/.exec(all);
  if (several) return several[0];
  const picked = pickChoices(said.text, choices);
  if (!picked || picked.length === 0) return undefined;
  return picked.map((index) => choices[index]).join(" and ");
}
