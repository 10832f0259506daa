/** Every kind of fact by its type. */
import type { State } from "../state.ts";
import { BATCH_FACTS } from "./batch-facts.ts";
import { CORRECTION_FACTS } from "./correction-facts.ts";
import type { About, Declaration, Fields } from "./fact.ts";
import { FACTOR_FACTS } from "./factor-facts.ts";
import { HEARD_FACTS } from "./heard-facts.ts";
import { JAR_FACTS } from "./jar-facts.ts";
import { KITCHEN_FACTS } from "./kitchen-facts.ts";
import { LOAD_FACTS } from "./load-facts.ts";
import { PROBE_FACTS } from "./probe-facts.ts";
import { SESSION_FACTS } from "./session-facts.ts";
import { SHELF_FACTS } from "./shelf-facts.ts";
import { SIGN_FACTS } from "./sign-facts.ts";
import { TIMER_FACTS } from "./timer-facts.ts";
import { WORDS_FACTS } from "./words-facts.ts";

export const FACTS = {
  ...SESSION_FACTS,
  ...KITCHEN_FACTS,
  ...BATCH_FACTS,
  ...FACTOR_FACTS,
  ...SIGN_FACTS,
  ...PROBE_FACTS,
  ...HEARD_FACTS,
  ...LOAD_FACTS,
  ...JAR_FACTS,
  ...TIMER_FACTS,
  ...CORRECTION_FACTS,
  ...SHELF_FACTS,
  ...WORDS_FACTS,
};

export type FactType = keyof typeof FACTS;

/** The declaration of a fact of any kind, for code that treats all of them alike. */
export type AnyDeclaration = Omit<
  Declaration<Fields>,
  "evolve" | "undoWarns" | "undone" | "begins"
> & {
  // Methods, whose parameters may be narrower than these.
  evolve(state: State, event: object): boolean | "noted";
  undoWarns?(event: object): string | undefined;
  undone?(about: About, event: object): string;
  begins?: string;
};

export function declarationOf(type: FactType): AnyDeclaration {
  return FACTS[type];
}

export function isFactType(type: unknown): type is FactType {
  return typeof type === "string" && Object.hasOwn(FACTS, type);
}
