import { saysUncovered } from "../values/about.ts";
import type { Finish } from "./meaning.ts";

/** Lids that stand out of the water are more than low water, and than a boil that is gone. */
export const finishUncovered: Finish = ({ target, at }, _context, _plain, said) => ({
  slots: { target, at, uncovered: saysUncovered(said) || undefined },
});
