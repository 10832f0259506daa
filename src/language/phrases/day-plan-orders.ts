// data table
import type { Family } from "./family.ts";

/** The day's plan: asking for one, keeping to it, dropping it. */
export const DAY_PLAN_ORDERS: readonly Family[] = [
  {
    intent: "plan",
    phrases: [
      "[<let>] (plan|plan out|work out|schedule) [<the>] (day|afternoon|morning|rest of the day)",
      "[<let>] (make|make me|work out) (a|the) plan [for <the> (day|afternoon|morning)]",
      "what is the plan [for <the> (day|afternoon|morning)]",
      `
        [<let>] (plan|plan out|work out|schedule) [<the>] [day|afternoon|morning] [for|with|of]
        {lots:text}
      `,
      "[<let>] (make|make me|work out) (a|the) plan (for|with|of) {lots:text}",
    ],
  },
  {
    intent: "plan",
    set: { go: true },
    phrases: [
      `
        [<let>] (start|begin|keep to|go with|follow|use|go ahead with) (the|that|this|our) [day]
        plan
      `,
      "[<let>] plan and (begin|start) {lots:text}",
    ],
  },
  {
    intent: "plan",
    set: { drop: true },
    phrases: [
      `
        [<let>] (drop|cancel|forget|scrap|throw out|stop|leave) (the|that|this|our) [day|day's]
        plan
      `,
      "no more (plan|planning)",
    ],
  },
];
