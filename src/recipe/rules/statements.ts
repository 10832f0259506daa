import type { Recipe, Stage } from "../recipe.ts";
import { sentences } from "./said-numbers.ts";

/*
 * What a recipe's words tell the cook to do: its sentences with their place, and whether a sentence
 * tells of a thing or against it. A warning against a danger is none; a boast of it is.
 */

/** One sentence, in lower case and with its numbers in digits. */
export type Statement = {
  /** The part of the recipe: `note`, `stages.fill`. */
  where: string;
  text: string;
  /** The sentence after it, which may take it back: `That is no longer done.` */
  next: string;
  stage?: Stage;
};

const read = new WeakMap<Recipe, readonly Statement[]>();

/** Every sentence of title, note and stages, from top to bottom. */
export function statementsOf(recipe: Recipe): readonly Statement[] {
  const known = read.get(recipe);
  if (known) return known;
  const { title, note = "", stages } = recipe;
  const of = (where: string, said: string, stage?: Stage) => {
    const texts = sentences(said.replaceAll("’", "'"))
      .map((text) => text.trim())
      .filter((text) => text !== "");
    return texts.map((text, at) => {
      return { where, text, next: texts[at + 1] ?? "", ...(stage ? { stage } : {}) };
    });
  };
  const all = [
    ...of("title", title),
    ...of("note", note),
    ...stages.flatMap((stage) => {
      const said = [stage.title, stage.say, ...(stage.checks ?? []).map(({ say }) => say)];
      return said.flatMap((one) => of(`stages.${stage.id}`, one, stage));
    }),
  ];
  read.set(recipe, all);
  return all;
}

/** A boast or a want that only looks like a denial: `never lost a jar`, `cannot go wrong`. */
const NO_DENIAL =
  /\b(?:never|not|don't|can't|cannot) (?:yet )?(?:lost|had|have|owned|own|been|got|fails?|failed|hurt|killed|made|knew|seen|saw|spoils?|spoiled|bother\w*|needed|need|go wrong|only|just|beat|mind|matter)\b|\b(?:why|if) not\b|\bno (?:matter|need|time)\b/g;
const DENIES =
  /\b(?:never|not|\w+n't|cannot|nobody|no 1|neither|nor|avoid|beware|stop|refuse|instead of|rather than|no longer|in place of)\b/;
/** Where what was denied ends and something else is told. */
const TURNS =
  /\b(?:but|so|instead(?! of)|just|simply|then|anyway|because|since|i|we|she|he|they)\b|, (?:you|it|my|our)\b/;
/** What is said of a thing afterwards that turns a sentence about it into a warning. */
const DISAPPROVED =
  /\b(?:unsafe|dangerous|dangers?|risky|mistakes?|myth|wrong|never|no longer|cannot|can't|(?:do|does|did|is|are|was|must|may|should|will) not|(?:do|does|did|is|are|was|must|should|wo)n't|(?:is|are|was|has|have|had|makes?) (?:no (?:way|process\w*|seal|substitute|canner|place|good|tested|safe|use|cure|protection|part|time)|nothing)|(?:do|does|did) nothing|spoils?|(?:goes|go|turns?|get) (?:soft|bad)|grow|grows|bursts?|explodes?|too (?:weak|thin|dense|thick|warm|hot|cool|sweet|mild)|unknown|vary|varies|forbidden|not (?:before|safe|enough|advised|recommended|tested|a process))\b/;
const STILL_DONE = /\b(?:but|yet|though|anyway|still)\b.*\b(?:i|we|she|he|they|mine|ours|works?)\b/;
/** What is meant so that nothing goes wrong: `so they do not leak`. */
const PURPOSE =
  /\bso (?:that )?(?:\w+ ){0,2}(?:(?:do|does|will|can)(?:n't| not)|cannot|never) \w+/g;

/** A sentence that takes back the one before it. */
const TAKEN_BACK =
  /^(?:(?:that|this|it|they|these|which|such|neither|both)\b.*\b(?:unsafe|not safe|dangerous|no longer|mistakes?|wrong|forbidden|not (?:\w+ )?(?:safe|process\w*|tested|recommended|advised))\b|(?:don't|do not|never|please don't)\b)/;

/** Where a pattern stands in a sentence that tells of it; undefined where it is denied. */
export function toldAt(
  { text, next }: Pick<Statement, "text" | "next">,
  pattern: RegExp,
): RegExpExecArray | undefined {
  const found = pattern.exec(text);
  if (!found || TAKEN_BACK.test(next)) return undefined;
  const before = text.slice(0, found.index).replace(NO_DENIAL, " ");
  const clause = before.split(TURNS).at(-1) ?? "";
  if (DENIES.test(clause) || /\bno (?:\w+ )?$/.test(clause)) return undefined;
  const after = text
    .slice(found.index + found[0].length)
    .replace(NO_DENIAL, " ")
    .replace(PURPOSE, " ");
  if (!DISAPPROVED.test(after)) return found;
  return STILL_DONE.test(after) ? found : undefined;
}

/** Whether a sentence tells of what the pattern says, and does not warn against it. */
export function tells(said: Pick<Statement, "text" | "next">, pattern: RegExp): boolean {
  return toldAt(said, pattern) !== undefined;
}

/** A sentence about eating: what is done to the jar's food once it is opened. */
export function isAtTable(text: string): boolean {
  return /\b(?:when (?:you |it is |they are )?open\w*|(?:once|after) (?:it is |they are )?open\w*|to serve|serv(?:e|ed|ing)|supper|dinner|breakfast|at the table|over (?:rice|cake|ice cream|toast|pasta))\b/.test(
    text,
  );
}
