import { wordSet } from "../grammar/word-set.ts";
import { editDistance, soundKey } from "../spelling/sound.ts";
import { ordinalAt, smallWholeAt } from "../values/spoken-numbers.ts";
import { type Utterance, utteranceOf } from "../words.ts";

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

const BESIDE_CHOICE = wordSet("they them were all that gauge lids jars so");
const DENIES = wordSet("no not never none neither without");

/** The one choice named by its own words, with no other meaningful words beside them. */
export function exactChoice(said: Utterance, choices: readonly string[]): string | undefined {
  const denies = said.words.filter(({ word }) => DENIES.has(word));
  if (said.asked) return undefined;
  const fits = choices.filter((choice) => {
    const words = wordsIn(choice);
    return denies.every(({ word }) => words.includes(word));
  });
  const all = core(said).join(" ");
  const same = fits.find((choice) => core(utteranceOf(choice)).join(" ") === all);
  if (same !== undefined) return same;
  const words = core(said).filter((word) => !BESIDE_CHOICE.has(word));
  const found = words.length > 0 ? namedBy(words, fits, false) : [];
  return found.length === 1 ? fits[found[0]!] : undefined;
}

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
