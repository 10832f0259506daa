import type { MeaningOf } from "./meaning.ts";

/** The alarm was heard. It answers no question. */
export const acknowledge: MeaningOf<"acknowledge"> = {
  cost: "changing",
  when: ["always"],
  slots: {},
  example: "got it",
  givesWay: "all",
  wordings: [
    `(okey (doke|dokey|dokie)|okay (doke|dokey|dokie)|okie dokie|righty ho|right you are|right
    oh|very good|fair enough|will do|jolly good|i hear you|much obliged)`,
    `[<ack>] <ack> [<ack>] [then|there|now|that|you|so much|very much|much|a lot|kindly|for that|
    sir|maam|to know|enough|for telling me|for the warning|for the reminder|for letting me know|
    for the heads up|for reminding me|dear|friend|on that]`,
  ],
  spoken: ["got it", "thank you"],
  lists: {
    ack: `
      right you are|right enough|good to hear|got you|sure okay|okay|all right|got it|i got it|
      got that|thanks|thank you|many thanks|i hear you|heard|heard you|understood|roger|roger
      that|will do|noted|on it|i am on it|copy|copy that|gotcha|sounds good|good|fine|very well|
      i know|i see|cheers|good to know|right|right o|righto|okey dokey|okie dokie|great|good
      enough|all righty|ten four|i heard you|i heard that|i heard|loud and clear|message
      received|received|acknowledged|that is fine|that is good|that is okay|all good|fair
      enough|cool|lovely|perfect|excellent|much obliged|appreciate it|i appreciate it|
      wonderful|thanks a lot|thanks very much|yes i heard|yes i heard you|yes i know|i know i
      know|i am coming|coming|i am going|i have got it|i understand|makes sense|sounds fine|
      sure thing boss|works for me|fine by me|fine with me|that works|very good|good job|well
      done|nice|nice work|splendid|aye aye|done and noted|consider it noted|i will do that|i
      will get to it|i will see to it|i am listening|i am here|that will do|super|terrific|no
      problem|no worries|heard that|point taken|i will get on it|right away|right on|okey doke|
      you are right|good thinking|i got you|on my way|i will|thanks for that|ta|alrighty|yes got
      it|yes okay|yeah okay|yeah got it|yep got it|seen|i saw|i saw that|i see that|i see it|
      taken care of thanks|duly noted|good call|thank you very much|i will remember|i will
      remember that
    `,
  },
};
