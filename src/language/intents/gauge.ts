import type { Finish, MeaningOf } from "./meaning.ts";

/** Pounds that the dial reads too high, below zero where it reads low; or that nobody tested it. */
const finishGauge: Finish = ({ untested, pounds, half, low }) => {
  if (untested !== undefined) return { slots: { untested: true } };
  const psi = (pounds === undefined ? 0 : Number(pounds)) + (half === undefined ? 0 : 0.5);
  return { slots: { readsHighPsi: low === undefined ? psi : -psi } };
};

/** How far a dial gauge is off, or that it was not tested, said without being asked. */
export const gauge: MeaningOf<"gauge"> = {
  cost: "changing",
  plainly: true,
  report: true,
  when: ["always"],
  slots: { readsHighPsi: "number", untested: "flag" },
  parts: ["pounds", "half", "low"],
  example: "the dial reads two pounds high",
  finish: finishGauge,
  wordings: [
    "<the-dial> <dial-reads> <pounds-off> [too] high",
    "<the-dial> <dial-reads> <pounds-off> (too much|over)",
    "<the-dial> <dial-reads> (high|over) by <pounds-off>",
    "<the-dial> is (off|high|out|over) by <pounds-off>",
    "<the-dial> is <pounds-off> (off|out)",
    "<the-dial> is <pounds-off> [too] high",
    "<the-dial> (<dial-reads>|is) <pounds-off> [too] low {low=1}",
    "<the-dial> <dial-reads> <pounds-off> too little {low=1}",
    {
      set: { untested: true },
      phrases: [
        "<the-dial> (was|is|has) (not|never) [ever] [been] <tested> [<this-season>]",
        "<the-dial> is (not tested|untested) [<this-season>]",
        `(i|we) (did not have|did not get|have not had|never had|never got|have never had)
        <the-dial> <tested> [<this-season>]`,
        "(nobody|no one) [has] [ever] <tested> <the-dial> [<this-season>]",
        "(i|we) (never|have not|have never) <tested> <the-dial> [<this-season>]",
        "(i|we) (did not|never did) (test|check|calibrate) <the-dial> [<this-season>]",
        "<the-dial> (test|check) was (skipped|missed|forgotten|not done) [<this-season>]",
      ],
    },
  ],
  lists: {
    "the-dial": `
      [the|my|our|this|that|the canner is] (dial|gauge|dial gauge|pressure gauge|needle)
    `,
    tested: "(tested|checked|calibrated|looked at)",
    "dial-reads": "(reads|shows|is reading|is showing|read|showed)",
    "pounds-off": `
      ({pounds:number} [and a half {half=1}] (pound|pounds|psi)|(a|one) pound {pounds=1}
      [and a half {half=1}]|half a pound {half=1})
    `,
    "this-season": "this (year|season|summer|spring)|yet|in years|since last year|lately|at all",
  },
};
