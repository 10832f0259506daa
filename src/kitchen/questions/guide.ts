/**
 * Tested times entered from memory: each is compared once with the person's own guide, and what the
 * guide says is kept for that row of the table and its edition.
 */
import { lasting } from "../../recipe/choose-process.ts";
import type { ProcessTerms } from "../../recipe/recipe.ts";
import type { GuideAnswer } from "../facts/fields.ts";
import type { State } from "../state.ts";

/** The row of a table that a comparison is kept under. */
export function tableRowOf(terms: ProcessTerms): Omit<GuideAnswer, "minutes" | "oursMinutes"> {
  const { table, locator, jarTested, band, pressurePsi } = terms;
  return { table, edition: locator?.edition ?? null, jar: jarTested, band, psi: pressurePsi };
}

/** The row as a word, to tell it from others; null where the terms are unknown or were read. */
export function rowKey(terms: ProcessTerms | null): string | null {
  return terms?.reading === "remembered" ? JSON.stringify(tableRowOf(terms)) : null;
}

/** What the person's guide said about the row behind these terms; undefined where nobody looked. */
function guideFor(state: State, terms: ProcessTerms): GuideAnswer | undefined {
  const row = tableRowOf(terms);
  return state.guides.findLast((one) => {
    return (
      one.table === row.table &&
      one.edition === row.edition &&
      one.jar === row.jar &&
      one.band === row.band &&
      one.psi === row.psi
    );
  });
}

/** True where the time is from memory and was never compared. */
export function isUncompared(state: State, terms: ProcessTerms | null): terms is ProcessTerms {
  return terms?.reading === "remembered" && guideFor(state, terms) === undefined;
}

/** The terms with the longer of the two times, where a guide gives a different one. */
export function withGuide(state: State, terms: ProcessTerms): ProcessTerms {
  const guide = terms.reading === "remembered" ? guideFor(state, terms) : undefined;
  return guide && guide.minutes > terms.minutes ? lasting(terms, guide.minutes) : terms;
}

/** `What does your guide say for pints at this altitude?` */
export function guideQuestion(terms: ProcessTerms): string {
  const pressure = terms.pressurePsi === null ? "" : ` and ${terms.pressurePsi} pounds`;
  return (
    "The time for this is from memory. " +
    `What does your guide say for ${terms.jarTested}s at this altitude${pressure}, in minutes?`
  );
}

/** Why terms from memory do not count as tested; undefined where they do, or were read. */
export function againstMemory(state: State, terms: ProcessTerms | null): string | undefined {
  if (terms?.reading !== "remembered") return undefined;
  const guide = guideFor(state, terms);
  if (!guide) return "the time is from memory, and nobody compared it with a guide";
  if (guide.minutes === guide.oursMinutes) return undefined;
  return `the guide says ${guide.minutes} minutes, the time from memory was ${guide.oursMinutes}`;
}
