import type { Stage } from "../recipe.ts";
import type { CheckedRecipe } from "./finding.ts";
import { either, phrases } from "./phrases.ts";
import type { Statement } from "./statements.ts";

/** A danger that a sentence tells of. */
export type SpokenHazard = {
  rule: string;
  /** All of these stand in one sentence; the first is the danger's own word. */
  says: readonly RegExp[];
  /** What makes the sentence speak of something else. */
  unless?: RegExp;
  when?: (subject: CheckedRecipe, said: Statement) => boolean;
  /** What is wrong and how to mend it; gets the danger's own word. */
  message: (word: string) => string;
  source: string;
};

export const JARS = phrases(
  "jars?",
  "jarred",
  "(half-)?pints?",
  "quarts?",
  "lids?",
  "bottles?",
  "tumblers?",
);
/** Jars worked on, or canning by any word. */
export const CANNING = either(
  JARS,
  phrases(
    "(can|bottle|jar) (these|them|it)",
    "(i|we|you|to|then|and) can (the|my|our|in)",
    "canned",
    "canning",
    "process(ed|ing)?",
    "seal(s|ed|ing)?",
    "no canner",
    "instead of (a |the |any )?(canner|water bath|boiling water)",
  ),
);
/** Jars that are only washed, warmed or drained before they are filled. */
export const EMPTY = phrases(
  "empty",
  "wash(ed|ing)?(?! (up|boiler|kettle))",
  "clean(ed|ing)?",
  "rins*",
  "steriliz*",
  "drain*",
  "until ~3 (fill*|wanted|needed|ready)",
);

const offers = (name: "boiling-water" | "pressure") => (subject: CheckedRecipe) =>
  subject.recipe.processes.some(({ method }) => method === name);
export const byPressure = offers("pressure");
export const byBoiling = offers("boiling-water");
export const isProcessed = ({ recipe }: CheckedRecipe) => recipe.processes.length > 0;
export const onShelf = ({ shelf }: CheckedRecipe) => shelf;
/** Part of a stage that comes after the filling of the jars. */
export function afterFilling({ recipe, kinds }: CheckedRecipe, stage: Stage | undefined): boolean {
  const filled = recipe.stages.findIndex(({ kind }) => kinds[kind].role === "filling");
  return stage !== undefined && filled >= 0 && recipe.stages.indexOf(stage) > filled;
}
