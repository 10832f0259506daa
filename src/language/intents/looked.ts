import { type Context, underWay } from "../context.ts";
import type { MeaningOf } from "./meaning.ts";

/** Signs of spoiling: with one of them a look is not just done. */
const SPOILING = new RegExp(
  "\\b(foul|mold\\w*|slim[ey]\\w*|soft|mush\\w*|pink|black|brown|rott\\w+|rancid|fuzz\\w*|" +
    "smell\\w*|stink\\w*|spoil\\w*|bad|worms?)\\b",
);

/** Whether something is under way that is looked at from time to time. */
export function looksAt({ running }: Pick<Context, "running">): boolean {
  return underWay(running).some(({ checked }) => checked);
}

/** What ferments or dries was looked at: a recurring check is done, and the step goes on. */
export const looked: MeaningOf<"looked"> = {
  cost: "changing",
  report: true,
  plainly: true,
  when: ["working"],
  slots: { target: "name", at: "instant" },
  shaken: { whole: SPOILING },
  finish: ({ target, at }, context) => {
    return looksAt(context) ? { slots: { target, at } } : undefined;
  },
  example: "I skimmed the kraut",
  givesWay: ["looked"],
  wordings: [
    "[<we>] [have] [just] <tended> <crock> [over|again|today|this morning] [<when>]",
    "[<we>] [have] [just] (checked|looked|peeked) (in on|on|in at|at|over|after) <crock> [<when>]",
    "[<we>] [have] [just] (had|took|given|gave) [<crock>] a (look|peek|stir) [at|to] [<crock>]",
    "[<we>] [have] [just] (took|taken|skimmed|lifted) [off] the (scum|foam) [off] [<crock>]",
    "<crock> (is|are) [now|all|still|back] (under|below|covered (with|by)) [the] (brine|juice)",
    "<crock> (is|are) [now|all] (skimmed|stirred|turned|checked|looked at)",
    "(everything|all) [is|of it is] [still] (under|below) [the] (brine|juice)",
  ],
  lists: {
    tended: "(skimmed|stirred|checked|turned|inspected|examined)",
    crock: "(it|them|[<the>] {target} [crock|jar|jars|seed|beans])",
  },
};
