import { textOf } from "../words.ts";
import type { Finish, MeaningOf } from "./meaning.ts";

/** Said to a child or a dog as often as to the kitchen. */
const TO_ANYBODY =
  /\b(stop|quit) (it|that|this)$|^(stop|quit) (it|that|this)( now| please| right now)?\b/;
/** What follows in "stop pulling", "hold still" and "stop it, Rex, get down" is no batch. */
const TO_OTHERS = new RegExp(
  "\\b(stop|quit) (?!everything)\\w+ing\\b|\\b(hold|stand|stay|sit) still\\b|\\bhold my\\b|" +
    "\\b(stop|hold|leave|quit) (it|that|this)\\b(?!$| (now|please|there|here|right|for|on|up|" +
    "will|would|can|and|a|just|while|so|i|we|thought)\\b)",
);
/** Who says that they wait holds nothing. */
const WAITS = /\b(i|we) (am |are |will )?(still )?wait(ing)?\b/;
const NO_MOMENT = /^(just )?(a|another) (little )?(bit|few|spell|while)$/;

/** Only what takes the whole clause holds a batch; the rest is asked about, or none. */
const finishHold: Finish = (raw, _context, _plain, { words }) => {
  const all = textOf(words);
  if (WAITS.test(all)) return undefined;
  if (raw.target === undefined && (TO_OTHERS.test(all) || NO_MOMENT.test(all))) return undefined;
  return TO_ANYBODY.test(all) ? { slots: raw, doubt: TO_ASK } : { slots: raw };
};
const TO_ASK = 0.8;

/** Pauses a batch for a while. Its clocks keep running. */
export const hold: MeaningOf<"hold"> = {
  cost: "changing",
  when: ["working"],
  slots: { target: "name" },
  example: "hold the beets",
  forgiving: true,
  topical: true,
  givesWay: ["repeat", "help", "what-now"],
  finish: finishHold,
  wordings: [
    `[<let>] (wait|hold|hold on|hold up|hang on|hang tight|hold everything|hold it|hold it there|
    pause|stand by|stop|stop there|hold off|hold that thought|pause it|pause that|wait up|halt|
    hold your horses|freeze everything|pause everything|pause here|pause there|stop for now|
    hold for now|time out|wait there|whoa|sit tight|stop right there|put it on hold|put
    everything on hold|put that on hold|stop everything|stay there|bear with me) [<a-moment>|
    for now|there|on|up|right there|everything]`,
    "<a-moment>",
    "(hold|hold on|hold it|hang on|wait|stop|stop there|<a-moment>) <quiet-reason>",
    "<quiet-reason> [so] (hold|hold on|hold it|hang on|wait|stop there|<a-moment>)",
    "[<let>] (give|allow) me <a-moment>",
    `(i need|need|i will need|we need|just need) [to take] (<a-moment>|a break|to stop|to step
    away|a pause|a breather|to pause|to step out|to stop for a bit|to step away for a minute|to
    take a break|to step away <a-moment>|to step out <a-moment>|to stop <a-moment>|to pause
    <a-moment>|to go|to get the door|to answer the phone|to answer the door|to catch up|to sit
    down|to rest|a rest) [<a-moment>]`,
    `[<let>] (take|have|i am taking|we are taking|i will take) a (break|breather|pause|rest|
    short break|little break|quick break) [here|for now|now|<a-moment>]`,
    `[<let>] (pause|hold|stop|suspend|put off) [<the>] {target} [<a-moment>|for now|there|for a
    while]`,
    "[<let>] (pause|hold|suspend) the (process|processing|clock|clocks|time) [<a-moment>|for now]",
    "[<let>] (put|leave) [<the>] {target} on hold [<a-moment>|for now]",
    "[<let>] (leave|park) [<the>] {target} for (now|a bit|a while|a minute|the moment)",
    `(i will|i have to|i am going to|let me) (step away|step out|go get the
    door|go answer the door|get the phone|get the door|answer the phone|answer the door)
    [<a-moment>|now]`,
    `(not just yet|i am not ready|i am not ready yet|not ready|
    not ready yet|we are not ready|we are not ready yet|stepping away|
    stepping out|stepping away <a-moment>)`,
    "[<let>] hold off [on] [<the>] [{target}] [<a-moment>|for now]",
  ],
  spoken: ["hold the {target}", "hold everything"],
  bags: [
    {
      must: [
        `wait|hold|pause|stop|hang on|hold on|break|breather|stand by|freeze|hold up|sit tight|
        step away|second|minute|moment|sec`,
      ],
      may: `
        <a-moment>|<let>|give me|take|need|on|up|for|a|the|here|there|now|everything|it|that|
        please|i|we|have|got to|to|get|answer|door|phone|right|things|where|is|are|you|let|me|
        us|just|will|[<the>] {target}|step|away|out|go|check|find|someone is at the door|the
        phone is ringing|put|on hold|quick|must
      `,
    },
  ],
  lists: {
    "a-moment": `
      [just|for|for just|about] (a|one|half a|another) (moment|minute|second|sec|bit|while|
      little while|tick|mo|few minutes|little bit|couple of minutes|short while|spell|jiffy|
      few|couple minutes|few seconds|few moments|second here|minute here)|
      for {number} minutes
    `,
  },
};
