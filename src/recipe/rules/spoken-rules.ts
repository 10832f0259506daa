import { danger, type Finding, type Rule } from "./finding.ts";
import { SPOKEN_HAZARDS } from "./spoken-hazards.ts";
import { isAtTable, statementsOf, toldAt } from "./statements.ts";

/** Dangers told in title, note or stages, whatever the recipe's fields say. */
export const spokenHazards: Rule = (subject) => {
  return statementsOf(subject.recipe).flatMap((said) => {
    const told = new Set<string>();
    return SPOKEN_HAZARDS.flatMap(({ rule, says, unless, when, message, source }): Finding[] => {
      const { text, where } = said;
      const [own, ...others] = says;
      if (!own || !others.every((one) => one.test(text)) || unless?.test(text)) return [];
      const found = isAtTable(text) ? undefined : toldAt(said, own);
      if (!found || (when && !when(subject, said)) || told.has(rule)) return [];
      told.add(rule);
      return [danger(rule, where, message(found[0]), source)];
    });
  });
};
