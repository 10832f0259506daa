import type { MeaningOf } from "./meaning.ts";

/** Where the jars of a batch stand. */
export const place: MeaningOf<"place"> = {
  cost: "changing",
  when: ["always"],
  ofRecord: true,
  slots: { target: "name", place: "name", jars: "numbers" },
  example: "I put the beets in the cellar",
  wordings: [
    `[<we>|i] [have] [just] <put-away> <numbered> [of [<the>] {target:open}] [away|down]
    <into-place>`,
    "<numbered> (is|are|stands|stand|went|live|lives) [now|down] <into-place>",
    "[<we>|i] [have] [just] <put-away> [<the>] {target:open} [away|down] <into-place>",
    "[<the>] {target:open} (is|are|stands|stand|went|live|lives) [now|down] <into-place>",
  ],
  lists: {
    "put-away": `
      (put|move|shift|carry|moved|carried|stored|took|brought|shifted|shoved|hauled|lugged) [all
      [of]|the rest of]
    `,
    "into-place": `
      (in|into|to|down in|down to|on|down) [<the>] (root cellar|cellar) {place=cellar}|
      (in|into|to|down in|down to) [<the>] basement {place=basement}|
      (in|into|to|on|over to) [<the>] pantry [shelf] {place=pantry}|
      (in|into|to|out in|out to) [<the>] garage {place=garage}|
      (in|into|to) [<the>] (closet|cupboard) {place=cupboard}|
      (in|into|to) [<the>] cold room {place=cold room}|
      (in|into|to) [<the>] store room {place=store room}|
      (in|into|to|out in|out to) [<the>] shed {place=shed}
    `,
  },
};
