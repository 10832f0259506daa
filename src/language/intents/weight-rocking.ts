import type { MeaningOf } from "./meaning.ts";

/** The weight of a weighted gauge rocks, and so the pressure is there. */
export const weightRocking: MeaningOf<"weight-rocking"> = {
  cost: "clearing",
  tellsOf: { about: "pressure", comes: true },
  plainly: true,
  report: true,
  shaken: {
    clause: [/^no\b|\b(once|twice)\b|^rock$/],
  },
  when: ["load:in-steam"],
  slots: { target: "name", at: "instant" },
  example: "the weight is rocking",
  wordings: [
    `[<the>] <weight> [is|are|has|have|has been] [<still>] [started|begun|began|begins|starts|
    took|taken] [to] [now] [<still>] <rocking> [<steady>] [<steady>] [<when>|<lasting>]`,
    `[<the>] <weight> [has|have|just|is|has just] (started|started up|got going|took off|came
    alive|come alive|going|moving|got moving|woke up|kicked in|come on) [<steady>] [<steady>]
    [<when>]`,
    `<it> (is|has|has started|started|has begun|just started|began|starts) [<still>] [to]
    (rocking|jiggling|dancing|wobbling|rock|jiggle|dance|wobble|jittering|swaying) [<steady>]
    [<steady>] [<when>|<lasting>]`,
    "<rocking> [<steady>] [<steady>]",
    `(<we>|i|<got>) [have|got|have got|hear|see|can hear] [a|the|<the>] [<full>] [weight]
    (rocking|jiggling|weight rocking|jiggle|rock|weight jiggling|rattle|rocking weight|jiggler
    going|weight going|weight dancing|weight rattling) [<steady>] [<when>]`,
    "(there goes|here goes|there is) the <weight> [<rocking>] [<steady>]",
    "[<the>] <weight> is at a [<full>] (rock|jiggle|rattle|wobble) [<steady>]",
    `[now|there|i see|i hear] [<the>] <weight> [is|are|be|has|goes|went|does|keeps] [on the go|
    going|<still>] [and] [started|begun|began|begins|starts|just started|got] [to]
    [now] [<still>] <rocking> [and (rocking|rattling|hissing|jiggling|singing|spitting)]
    [<rock-how>]
    [<rock-how>] [<when>|<lasting>]`,
    `[<the>] <weight> (does|is doing|does it is|is doing it is|has started it is)
    [it is|
    the] (dance|jiggle|jig|thing|rock|shimmy|wobble) [<rock-how>] [<when>]`,
  ],
  spoken: ["the weight is (rocking|jiggling)"],
  bags: [
    {
      beside: true,
      must: ["<weight>", "<rocking>"],
      may: "<said-of-it>|<steady>|<when>|<lasting>|i|can|hear|see|started|begun|began|to|a|going",
    },
  ],
  lists: {
    "rock-how": `
      <steady>|<like>|side to side|back and forth|to and fro|(two|three|four|a couple of|a few|
      several|{number}) times a minute|now and then as it should|away [merrily|nicely]|nice and
      (steady|gentle|slow|even)|(good|real) (and|nice) (steady|strong)|up top|a treat
    `,
  },
};
