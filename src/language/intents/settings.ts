import type { MeaningOf } from "./meaning.ts";

/** How much is said, and in which hours of the night what can wait is silent. */
export const settings: MeaningOf<"settings"> = {
  cost: "changing",
  when: ["always"],
  slots: { talk: "word", night: "word" },
  example: "keep it short",
  wordings: [
    {
      set: { talk: "short" },
      phrases: [
        "[<want>] [just] (keep|make) (it|things|that|your answers) (short|brief) [<from-now-on>]",
        "[<want>] be (brief|short) [with me] [<from-now-on>]",
        "[<want>] (say less|talk less|use fewer words) [<from-now-on>]",
        "[i want|give me|just] [the] short (answers|prompts|version|form) [<from-now-on>]",
        `[<want>] stop explaining everything|(do not|no need to|you need not|you do not need to)
        explain everything`,
        "less talk please|fewer words please|(only|just) the short version",
      ],
    },
    {
      set: { talk: "whole" },
      phrases: [
        "[<want>] (tell me|say|explain) (everything|it all) [<from-now-on>]",
        "[<want>] (tell me|say|give me) the whole thing [<from-now-on>]",
        "[i want|give me] (all the details|full instructions) [<from-now-on>]",
        "[<want>] (do not keep it short|stop keeping it short|do not be so short)",
      ],
    },
    "[<want>] [be] (quiet|silent) [<nightly>] {night:hours} [<nightly>]",
    "[<want>] [set|make|change] [the|my|our] (quiet hours|night) [is|are|to|at] {night:hours}",
    "[<want>] (do not talk|no talking) [<nightly>] {night:hours} [<nightly>]",
    {
      set: { night: "none" },
      phrases: [
        "[<want>] no [more] quiet hours [at all|ever|any more]",
        "[<want>] (turn off|drop|cancel|stop) [the] quiet hours",
      ],
    },
    {
      set: { night: "not-tonight" },
      phrases: [
        "[<want>] no quiet hours (tonight|this night)",
        "[<want>] (turn off|drop|cancel|skip) [the] quiet hours (tonight|for tonight)",
        "[<want>] (do not be quiet|no need to be quiet|tell me everything) tonight",
        "i am up (tonight|all night) [anyway|so] [tell me everything|no quiet hours]",
      ],
    },
  ],
  spoken: ["keep it short", "tell me everything", "no quiet hours tonight"],
  lists: {
    "from-now-on": "from now on|now|please|always|today|every time|again",
    nightly: "every night|at night|nights|each night|always|please",
  },
};
