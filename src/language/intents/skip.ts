import type { MeaningOf } from "./meaning.ts";

/** Leaves a stage out. */
export const skip: MeaningOf<"skip"> = {
  cost: "changing",
  when: ["working"],
  slots: { target: "name" },
  example: "skip this step",
  unasked: true,
  wordings: [
    `[<let>] (skip|leave out|omit|pass over|miss out) [<the>|this|that] (step|stage|bit|part|one|
    {target}) [<the>] [step|stage|part|this time|today|altogether|for now]`,
    "[<let>] (skip|leave) [<the>] {target} [out] [this time|today|altogether]",
    "[<let>] skip (it|that|this) [this time|today]",
    `[<let>] (go|move|jump) (straight|right|on) [on] (past|over) [<the>] {target}`,
    `(i am|we are) (skipping|leaving out|not doing|not going to do) [<the>|this] (step|stage|
    {target}) [this time|today]`,
  ],
  spoken: ["skip this step"],
};
