/** Whatever a denial's wording can produce, it denies and confirms nothing. */
import { describe, expect, it } from "vitest";
import { partedFrom } from "../../../src/language/answers/confirms.ts";
import { FACTOR_LISTS, FACTOR_WORDINGS } from "../../../src/language/answers/factor-wordings.ts";
import { utteranceOf } from "../../../src/language/words.ts";
import { CRITICAL_FACTORS } from "../../../src/recipe/critical-factors.ts";
import { type Dice, dice } from "../../simulation/dice.ts";

/** Splits at the bars outside brackets. */
function choices(text: string): string[] {
  const parts = [""];
  let depth = 0;
  for (const sign of text) {
    if ("([<{".includes(sign)) depth += 1;
    if (")]>}".includes(sign)) depth -= 1;
    if (sign === "|" && depth === 0) parts.push("");
    else parts[parts.length - 1] += sign;
  }
  return parts;
}

/** A random sentence that a phrase of the pattern language stands for. */
function sentenceOf(chance: Dice, phrase: string): string {
  const inner = /\(([^()[\]]*)\)|\[([^()[\]]*)\]|<([^<>]+)>/.exec(phrase);
  if (!inner) return chance.pick(choices(phrase)).trim().replaceAll(/\s+/g, " ");
  const [whole, group, optional, list] = inner;
  const text = list === undefined ? (group ?? optional ?? "") : `(${FACTOR_LISTS[list] ?? list})`;
  const said = optional !== undefined && chance.chance(0.5) ? "" : text;
  const put = list === undefined ? chance.pick(choices(said)) : text;
  const [before, behind] = [phrase.slice(0, inner.index), phrase.slice(inner.index + whole.length)];
  return sentenceOf(chance, `${before}${put}${behind}`);
}

describe("a wording that denies", () => {
  const wordings = [...FACTOR_WORDINGS].flatMap(([factor, { no }]) =>
    no.map((phrase): [string, string] => [factor, phrase]),
  );

  it.each(wordings)("%s: %s", (factor, phrase) => {
    const chance = dice(phrase.length);
    for (let left = 40; left > 0; left -= 1) {
      const text = sentenceOf(chance, phrase);
      const { confirms } = partedFrom(utteranceOf(text).words, CRITICAL_FACTORS);
      const said = confirms.filter((one) => one.factor === factor).map(({ held }) => held);
      expect([text, said]).toEqual([text, ["no"]]);
    }
  });
});
