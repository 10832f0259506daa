// data table
import type { Family } from "./family.ts";

/** What is said of jars that are put by: where they stand, and which were liked better. */
export const SHELF_REPORTS: readonly Family[] = [
  {
    intent: "place",
    phrases: [
      "[<we>|i] [have] [just] <put-away> [<the>] {target:open} [away|down] <into-place>",
      "[<the>] {target:open} (is|are|stands|stand|went|live|lives) [now|down] <into-place>",
    ],
  },
  {
    intent: "prefer",
    phrases: [
      "(<we>|i) (like|liked|love|enjoyed) [<the>] {target:open} (better|more|best) [<than-other>]",
      "(<we>|i) (prefer|preferred) [<the>] {target:open} [<to-other>]",
      "[<the>] {target:open} (is|was|are|were|tastes|tasted|taste) better [<than-other>]",
      `
        {taster:person} (likes|liked|loves|enjoyed) [<the>] {target:open} (better|more|best)
        [<than-other>]
      `,
      "{taster:person} (prefers|preferred) [<the>] {target:open} [<to-other>]",
    ],
  },
];

export const SHELF_LISTS: Readonly<Record<string, readonly string[]>> = {
  "put-away": ["put", "moved", "carried", "stored", "took", "brought"],
  "into-place": [
    "(in|into|to|down in|down to|on) [<the>] (root cellar|cellar) {place=cellar}",
    "(in|into|to|down in|down to) [<the>] basement {place=basement}",
    "(in|into|to|on|over to) [<the>] pantry [shelf] {place=pantry}",
    "(in|into|to|out in|out to) [<the>] garage {place=garage}",
    "(in|into|to) [<the>] (closet|cupboard) {place=cupboard}",
    "(in|into|to) [<the>] cold room {place=cold room}",
    "(in|into|to) [<the>] store room {place=store room}",
    "(in|into|to|out in|out to) [<the>] shed {place=shed}",
  ],
  "than-other": ["than [<the>] {over:open}"],
  "to-other": ["(to|over|than) [<the>] {over:open}"],
};
