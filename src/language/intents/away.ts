import type { MeaningOf } from "./meaning.ts";

/** Going away for a while or until a time; the answer is what comes due meanwhile. */
export const away: MeaningOf<"away"> = {
  cost: "harmless",
  inPieces: true,
  when: ["working"],
  slots: { minutes: "number", until: "instant" },
  example: "i'm out for an hour",
  unasked: true,
  wordings: [
    `<go> [<where>] for [about|around] {minutes:length} [or so|now]`,
    `<go> [<where>] (until|till) {until:future}`,
    "<go> [<where>] [and] [will be] back (in|within) [about|around] {minutes:length} [or so]",
    "<go> [<where>] [and] [will be] back (at|by|around) {until:future}",
    "[i will be|be|we will be] back in [about|around] {minutes:length} [or so]",
    `<go> <where> [for a (while|bit)] [now]`,
    `[i will|we will|i am going to] be (right back|back) [soon|shortly|directly|in a (minute|
    moment|bit|second|sec|jiffy|while|tick)]|back in a (minute|
    moment|bit|second|sec|jiffy|while|tick)|brb`,
  ],
  lists: {
    go: `
      (i am|we are|i will be|we will be|i have to be|i need to be) [just] [now] (out|away|off|
      gone|going out|going away|stepping out|heading out|popping out|off out|leaving|going)|
      (i have to|i need to|we have to|i will|let me|i am going to|we are going to) [just] (go
      out|step out|leave|run out|pop out|nip out|head out|run|go)|
      [just] (off|out|heading out|stepping out|popping out|going out|leaving now|gone)
    `,
    where: `
      (to|in|at) (the|my) (garden|store|shop|shops|market|yard|barn|neighbors|neighbours|school|
      post office|mailbox|field|orchard|coop|henhouse)|to (town|work|church|bed)|outside|
      shopping|out for a walk|for a walk|to pick up the (kids|children)|to get the (kids|children|
      mail)|to fetch the (kids|children|mail)
    `,
  },
};
