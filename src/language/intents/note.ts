import type { MeaningOf } from "./meaning.ts";

/** Words for the log. */
export const note: MeaningOf<"note"> = {
  cost: "changing",
  when: ["always"],
  slots: { text: "text" },
  example: "note that the garlic was old",
  wordings: [
    `[<want>] (put in|put|stick in|make|leave|write|jot|type in|keep|take down) [me] a (note|
    line|record|memo) [in (the log|the book|the record|there|here)] [that|saying|saying that|
    of|about|to say|to say that] {text}`,
    `[<want>] (note|make a note|take a note|jot down|write down|record|log|put down|jot|note
    down|put a note|add a note|leave a note|make note|take note|mark down|scribble down|get this
    down|take this down|put in the log|write in the log|put in the notes|add to the log|put it
    down|write it down|put on record|set down|put it in the log|write it in the log|note for the
    log|note for the record|put on the record|note in the log|keep a note|keep a record|note to
    the log|new note|add to the notes|write this down|jot this down|note this|log this|log a
    note|note this down|record this|record a note|make a record|add note|batch note|put this in
    the log|enter in the log|enter a note|make a note in the log|make a note for next time|add a
    note to the log|make a note of this|take a memo|memo|just a note|let the record show|let the
    log show|please note) [that|saying|saying that|of the fact that|down that|to say|to say
    that|says|which says|for next time|here that|of how|in the log that|for the record|for the
    log] {text}`,
    `(note to self|for the record|for the log|for the notes|side note|for my notes|for our notes|
    for next time|just so it is written down|on the record) {text}`,
    "{text:pinged}",
  ],
};
