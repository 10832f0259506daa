import { isTarget } from "../values/named-recipe.ts";
import { meantBy } from "../values/resolve-names.ts";
import type { Finish } from "./meaning.ts";

/** With nothing but a name for it, what is told of has to be on record: "ate the last Provider". */
export const ofRecord: Finish = ({ bare, ...raw }, context) => {
  const name = isTarget(raw.target) ? raw.target.said : String(raw.target);
  const known = bare !== true || meantBy(name, context, true).recorded.length > 0;
  return known ? { slots: raw } : undefined;
};
