import type { Intent } from "../../kitchen/command.ts";

/**
 * All ways of saying one thing. To teach the program a new wording, add a phrase to the family of
 * its intent; understanding and the recogniser's grammar both read it from there.
 */
export type Family = {
  intent: Intent;
  /** Slots every phrase of the family fills, whatever was said. */
  set?: Readonly<Record<string, string | number | true>>;
  /** Phrases in the language of pattern.ts. */
  phrases: readonly string[];
};
