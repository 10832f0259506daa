// data table
import type { Family } from "./family.ts";

/** Pots a recipe may leave to be started by a word. */
const POTS = ["brine", "syrup", "broth", "juice", "water", "liquid", "vinegar"];

const startPot = (pot: string): Family => ({
  intent: "begin",
  set: { named: pot },
  phrases: [
    `[<let>] (start|start up|start on|put on|get|begin|light) [on|to] [<the>|some] [fresh|hot|spiced] ${pot} [going|on|now|started|heating]`,
    `[i am|we are|i have|we have] (starting|started|putting on|put on|heating|lit) [<the>] ${pot} [now]`,
  ],
});

/** The heat turned off at a process's end, and pots begun by a word. */
export const STOVE_WORDS: readonly Family[] = [
  {
    intent: "done",
    set: { target: "heat off" },
    phrases: [
      "[the] (heat|burner|stove|gas|fire) is off [now]",
      "[the] (heat|burner|stove|gas) off [now]",
      "[i|we] [have] (turned|shut|switched) off [the] (heat|burner|stove|gas) [now]",
      "[i|we] [have] (turned|shut|switched) [the] (heat|burner|stove|gas) off [now]",
    ],
  },
  ...POTS.map(startPot),
];
