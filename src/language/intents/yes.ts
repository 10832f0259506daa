import type { MeaningOf } from "./meaning.ts";

/** Yes to the question that waits. */
export const yes: MeaningOf<"yes"> = {
  cost: "clearing",
  when: ["asked"],
  slots: {},
  example: "yes it did",
  unasked: true,
  answer: true,
  givesWay: ["begin", "resume"],
  wordings: [
    "<yes-word> [<yes-word>] [<yes-tail>] [please|sir|maam|indeed]",
    "(that is right|that is correct|right|i am sure|it did|it is|it was|it has) <yes-word>",
    "i (surely|certainly|sure|most certainly|do indeed) [do|did|am|have|will]",
    `(do it|go ahead|please do|go for it|do that|do so|make it so|by all means|of course|that is
    right|that is correct|that is the one|that is it exactly|that is true|you bet|you got it|
    you bet you|i am sure|i am certain|quite sure|i am positive|certainly|go right ahead|yes go
    ahead|all good yes|it did|it was|it is|they are|they were|they did|i did|we did|i have|we
    have|i am|we are|it has|they have|it held|it did hold|it held fine|they do|it does|i do|we
    do|you can|you may|confirmed|confirm|i confirm|affirmative|sounds right|that sounds right|
    that will do it|exactly right|exactly|precisely|definitely|absolutely|most definitely|sure
    is|sure did|sure was|sure are|why not|fine do it|okay do it|all right do it|go on and do it|
    yes i am sure|it kept boiling|it stayed on the boil|it never stopped|it boiled throughout|
    it boiled the whole time|it boiled all the way|without a break|the whole time|all the way
    through|throughout|i would say so|i think so|i believe so|i suppose so|i guess so|looks that
    way|it looks that way|so it is|so it did|i would|i will|we will|i want to|i do want to|of
    course it did|of course it is|of course i am|one hundred percent|hundred percent|no doubt|
    without a doubt|without question|for sure|that it is|that it did|that it was|that i am|that
    they are|that they did|you heard me|you heard right|you heard me right|i mean it|just do it|
    please go ahead|go ahead and do it|go ahead please) [please|sure|now|then|thanks]`,
  ],
  spoken: ["yes", "yeah", "yes it (did|is)", "yes they are", "that is right"],
  lists: {
    "yes-word": `
      yes|yeah|yep|yup|yea|yah|sure|aye|uh huh|mm hmm|mhm|affirmative|certainly|absolutely|
      definitely|of course|correct|indeed|ya|yessir|yes siree|yes indeed|yes mam|you betcha|yep
      yep|true|sure thing|you bet|yes yes|roger yes|surely|positive|sure do|by all means|
      totally|exactly|oui|yup yup|confirmed
    `,
    "yes-tail": `
      that is right yes|yes|right|do it|go ahead|please|please do|that is right|that is correct|
      do that|it is|it did|it was|they are|they did|they have|i am|i am sure|we did|i did|i do|
      go for it|of course|i have|it has|we have|we are|it held|all of them|throughout|it does|
      they do|they were|i would|i want to|let us|let us do it|let us do that|do so|that is fine|
      that is good|that will do|i will|we do|ma am|thanks|thank you|go on|that is it|that one|
      absolutely|definitely|enough|do go ahead|you can|you may|to that|the whole time|it held
      throughout|all the way|all the time|toss it|the lids are covered|that is what i said|that
      is what i meant|that is the one|i mean it|we will|i want that|it stayed boiling|it kept
      boiling|it boiled throughout|a full boil throughout|full boil throughout|they all are|
      they all did|they still are|it still is|that is so
    `,
  },
};
