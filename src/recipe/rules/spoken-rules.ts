import { danger, type Finding, type Rule } from "./finding.ts";
import { PROCESS_HAZARDS } from "./process-hazards.ts";
import { SEALING_HAZARDS } from "./sealing-hazards.ts";
import { isAtTable, statementsOf, toldAt } from "./statements.ts";

const HAZARDS = [...SEALING_HAZARDS, ...PROCESS_HAZARDS];

/** Dangers told in title, note or stages, whatever the recipe's fields say. */
export const spokenHazards: Rule = (subject) =>
  statementsOf(subject.recipe).flatMap((said) => {
    const { text, where } = said;
    const told = new Set<string>();
    if (isAtTable(text)) return [];
    return HAZARDS.flatMap(({ rule, says, unless, when, message, source }): Finding[] => {
      const [own, ...others] = says;
      if (!own || told.has(rule) || !others.every((one) => one.test(text))) return [];
      const found = unless?.test(text) ? undefined : toldAt(said, own);
      if (!found || (when && !when(subject, said))) return [];
      told.add(rule);
      return [danger(rule, where, message(found[0]), source)];
    });
  });
