import { dayWishIn } from "../values/day-wish.ts";
import type { Finish, MeaningOf } from "./meaning.ts";

/** The lots and times of a day to be planned; undefined where any of the words is neither. */
const finishPlan: Finish = ({ lots, ...rest }, context, plain) => {
  if (lots === undefined) return { slots: rest };
  const wish = dayWishIn(String(lots), context, plain);
  if (!wish) return undefined;
  const { exact, ...slots } = wish;
  return { slots: { ...rest, ...slots }, misheard: !exact };
};

/** A plan of the day is asked for, accepted or dropped. */
export const plan: MeaningOf<"plan"> = {
  cost: "changing",
  when: ["idle"],
  slots: {
    items: "lots",
    startAt: "instant",
    finishBy: "instant",
    quiet: "word",
    go: "flag",
    drop: "flag",
    change: "word",
    planned: "plan",
  },
  parts: ["lots"],
  example: "plan the day",
  finish: finishPlan,
  wordings: [
    "[<let>] (plan|plan out|work out|schedule) [<the>] (day|afternoon|morning|rest of the day)",
    "[<let>] (make|make me|work out) (a|the) plan [for <the> (day|afternoon|morning)]",
    "what is the plan [for <the> (day|afternoon|morning)]",
    `[<let>] (plan|plan out|work out|schedule) [<the>] [day|afternoon|morning] [for|with|of]
    {lots:text}`,
    "[<let>] (make|make me|work out) (a|the) plan (for|with|of) {lots:text}",
    {
      set: { go: true },
      phrases: [
        `[<let>] (start|begin|keep to|go with|follow|use|go ahead with) (the|that|this|our) [day]
        plan`,
        "[<let>] plan and (begin|start) {lots:text}",
      ],
    },
    "add {lots:text} to (the|our|my|today's) plan",
    {
      set: { change: "drop" },
      phrases: [
        `[<let>] (drop|leave|take|scratch) {lots:text} (from|out of|off) (the|our|my|today's)
        plan`,
      ],
    },
    {
      set: { change: "later" },
      phrases: ["[<let>] (plan|do|put) {lots:text} later", "{lots:text} later in the plan"],
    },
    { set: { change: "first" }, phrases: ["[<let>] (plan|do|put) {lots:text} first"] },
    { set: { change: "swap" }, phrases: ["[<let>] swap {lots:text} [in (the|our|my) plan]"] },
    {
      set: { drop: true },
      phrases: [
        `[<let>] (drop|cancel|forget|scrap|throw out|stop|leave) (the|that|this|our) [day|day's]
        plan`,
        "no more (plan|planning)",
      ],
    },
  ],
  spoken: ["plan the day", "what is the plan"],
};
