import { textOf } from "../words.ts";
import type { MeaningOf } from "./meaning.ts";

/** Closes the program. */
export const quit: MeaningOf<"quit"> = {
  cost: "changing",
  when: ["always"],
  slots: {},
  example: "quit the program",
  unasked: true,
  // "Quit it" is said to whoever does something.
  finish: (raw, _context, _plain, { words }) => {
    return /\bquit (it|that|this|\w+ing)\b/.test(textOf(words)) ? undefined : { slots: raw };
  },
  wordings: [
    `[<let>] (quit|exit|leave|close|close down|shut|shut down|log out of|get out of) (the program|
    this program|the app|brinebell|this thing|the kitchen hand) [now|please]`,
    "(quit|exit|goodbye|good bye|bye|bye bye|shut down|log out|close down) [now|please|brinebell]",
    `[<let>] (close|turn off|switch off|shut off) (brinebell|the program|the app) [for (today|now|
    the night)]`,
    `(good night|that is all for today|that is it for today|we are done for (today|the day))
    [brinebell|goodbye]`,
  ],
};
