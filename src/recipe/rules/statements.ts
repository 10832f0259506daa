import type { Recipe, Stage } from "../recipe.ts";
import { either, phrases } from "./phrases.ts";
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
const NO_DENIAL = new RegExp(
  phrases(
    "(never|not|don't|can't|cannot) (yet )?(lost|had|have|owned|own|been|got|knew|seen|saw|made)",
    "(never|not|don't|can't|cannot) (fails?|failed|hurt|killed|spoils?|spoiled|go wrong|beat)",
    "(never|not|don't|can't|cannot) (bother*|needed|need|only|just|mind|matter)",
    "(why|if) not",
    "no (matter|need|time)",
  ).source,
  "g",
);
const DENIES = phrases(
  "never|not|\\w+n't|cannot|nobody|no 1|neither|nor|avoid|beware|stop|refuse|no longer",
  "no (tested )?process",
  "(instead of|in place of|rather than)",
);
/** Where what was denied ends and something else is told. */
const TURNS = either(
  phrases("but|so|instead(?! of)|just|simply|then|anyway|because|since|i|we|she|he|they"),
  /, (?:you|it|my|our)\b/,
);
/** What is said of a thing afterwards that turns a sentence about it into a warning. */
const DISAPPROVED = phrases(
  "left out|unsafe|dangerous|dangers?|risky|mistakes?|myth|wrong|forbidden",
  "never|no longer|cannot|can't",
  "(do|does|did|is|are|was|must|may|should|will|would) not",
  "(do|does|did|is|are|was|must|should|wo)n't",
  "(is|are|was|has|have|had|makes?) no (way|process*|seal|substitute|canner|place|good|tested)",
  "(is|are|was|has|have|had|makes?) no (safe|use|cure|protection|part|time)",
  "(is|are|was|do|does|did) nothing",
  "(goes|go|turns?|get) (soft|bad)|spoils?|grows?|bursts?|explodes?|poison*|useless",
  "too (weak|thin|dense|thick|warm|hot|cool|sweet|mild)|unknown|vary|varies",
  "(throw|toss) ~3 out|trash|discard*|(stays?|left) (off|cold|empty)|(is|are) for salads?",
  "get (botulism|sick|ill)|can (crack|break|burst|warp|shatter)",
  "not (before|safe|enough|advised|recommended|tested|a process)",
);
const STILL_DONE = /\b(?:but|yet|though|anyway|still)\b.*\b(?:i|we|she|he|they|mine|ours|works?)\b/;
/** What is meant so that nothing goes wrong: `so they do not leak`. */
const PURPOSE =
  /\bso (?:that )?(?:\w+ ){0,2}(?:(?:do|does|will|can)(?:n't| not)|cannot|never) \w+/g;
const WARNED = phrases(
  "left out|unsafe|not safe|dangerous|no longer|mistakes?|wrong|forbidden",
  "not (\\w+ )?(safe|process*|tested|recommended|advised)",
);
const BACKWARD = /^(?:that|this|it|they|these|which|such|neither|both)\b/;
const FORBIDDEN = /^(?:don't|do not|never|please don't)\b/;

/** A sentence that takes back the one before it: `That is no longer done.` */
function takesBack(next: string): boolean {
  return FORBIDDEN.test(next) || (BACKWARD.test(next) && WARNED.test(next));
}

/** Where a pattern stands in a sentence that does not deny it beforehand: `never`, `no`. */
export function undenied(text: string, pattern: RegExp): RegExpExecArray | undefined {
  const found = pattern.exec(text);
  const before = text.slice(0, found?.index ?? 0).replace(NO_DENIAL, " ");
  const clause = before.split(TURNS).at(-1) ?? "";
  const denied = DENIES.test(clause) || /\bno (?:\w+ )?$/.test(clause);
  return denied || !found ? undefined : found;
}

/** Where a pattern stands in a sentence that tells of it; undefined where it is denied. */
export function toldAt(
  { text, next }: Pick<Statement, "text" | "next">,
  pattern: RegExp,
): RegExpExecArray | undefined {
  const found = takesBack(next) ? undefined : undenied(text, pattern);
  if (!found) return undefined;
  const rest = text.slice(found.index + found[0].length);
  const after = rest.replace(NO_DENIAL, " ").replace(PURPOSE, " ");
  return !DISAPPROVED.test(after) || STILL_DONE.test(after) ? found : undefined;
}

/** Whether a sentence tells of what the pattern says, and does not warn against it. */
export function tells(said: Pick<Statement, "text" | "next">, pattern: RegExp): boolean {
  return toldAt(said, pattern) !== undefined;
}

const AT_TABLE = phrases(
  "(when|once|after) (you |it is |they are |the jars? (is|are) |a jar is )?open*",
  "to serve|serv(e|ed|ing)|supper|dinner|breakfast|at the table",
  "over (rice|cake|ice cream|toast|pasta)",
);

/** A sentence about eating: what is done to the jar's food once it is opened. */
export function isAtTable(text: string): boolean {
  return AT_TABLE.test(text);
}
