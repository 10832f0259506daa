import type { MeaningOf } from "./meaning.ts";

/** One batch was liked better than another. */
export const prefer: MeaningOf<"prefer"> = {
  cost: "changing",
  when: ["always"],
  ofRecord: true,
  slots: { target: "name", over: "name", taster: "name" },
  example: "we liked the beets better than the beans",
  wordings: [
    "(<we>|i) (like|liked|love|enjoyed) [<the>] {target:open} (better|more|best) [<than-other>]",
    "(<we>|i) (prefer|preferred) [<the>] {target:open} [<to-other>]",
    "[<the>] {target:open} (is|was|are|were|tastes|tasted|taste) better [<than-other>]",
    `{taster:person} (likes|liked|loves|enjoyed) [<the>] {target:open} (better|more|best)
    [<than-other>]`,
    "{taster:person} (prefers|preferred) [<the>] {target:open} [<to-other>]",
  ],
  lists: {
    "than-other": "than [<the>] {over:open}",
    "to-other": "(to|over|than) [<the>] {over:open}",
  },
};
