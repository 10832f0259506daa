import type { MeaningOf } from "./meaning.ts";

/** No to the question that waits. */
export const no: MeaningOf<"no"> = {
  cost: "raising",
  when: ["asked", "asked:disposition"],
  slots: {},
  example: "no it didn't",
  unasked: true,
  answer: true,
  wordings: [
    "<no-word> [<no-word>] [<no-tail>] [please|sir|maam|thanks|thank you]",
    "(heavens|goodness|gracious|good heavens|lord|dear) no",
    `(do not|do not do that|do not do it|please do not|better not|i would rather not|rather not|
    not yet|not now|not at all|not really|leave it|leave it be|leave it alone|leave that|keep
    it|keep it as it is|absolutely not|certainly not|of course not|no way|not a chance|no
    chance|not on your life|i do not want to|i do not want that|i do not think so|i think not|i
    think i will pass|it did not|it was not|it is not|they are not|they were not|they did not|i
    did not|we did not|i have not|we have not|i am not|we are not|it has not|they have not|they
    do not|it does not|i do not|we do not|stop do
    not|wait do not|hold on do not|that is not right no|no need|not necessary|by no means|under
    no circumstances|i am not sure|not sure|negatory|i said no|that is a no|it is a no|i would
    say no|i will pass|pass|skip it|i guess not|i suppose not|afraid not|i am afraid not|not
    quite|do nothing|let us not|i changed my mind|changed my mind|i have changed my mind|on
    second thought no|i would not|i will not|we will not|rather you did not|not this time|not
    today|wait no|keep going do not) [please|now|then|thanks|yet|thank you|after all|just yet]`,
  ],
  spoken: ["no", "no it did not", "no they are not", "nope"],
  lists: {
    "no-word": `
      no|nope|nah|no no|negative|uh uh|naw|nay|no way|certainly not|absolutely not|definitely
      not|not at all|no siree|no sirree|no indeed|no mam|god no|never|of course not|nuh uh|not
      really
    `,
    "no-tail": `
      do not|do not do it|do not do that|leave it|it did not|it was not|it is not|they are not|
      they did not|not yet|not now|thanks|thank you|i do not|i did not|we did not|wait|stop|
      keep it|leave it be|it has not|they have not|i am not|i have not|we have not|not at all|
      way|not that|not that one|i do not think so|never mind|forget it|it does not|they do not|
      they were not|we are not|do not do anything|leave it alone|leave that alone|leave them|
      keep going|not really|i changed my mind|i have changed my mind|changed my mind|not this
      time|not today|keep them|that is not right|that is wrong|that is not it|it lost the boil|
      need|not quite|i would rather not|better not|hold off|it did not hold|sorry|let us not|do
      not toss it|do not abandon it|i do not want to|i do not want that|not any more
    `,
  },
};
