import type { MeaningOf } from "./meaning.ts";

/** A jar is not full and goes to the refrigerator. */
export const setAside: MeaningOf<"set-aside"> = {
  cost: "changing",
  report: true,
  when: ["stage:filling"],
  slots: { target: "name", count: "count", jars: "numbers" },
  example: "one jar set aside",
  doubting: ["would"],
  wordings: [
    `[<we>|i|i will|i am|we will|let us] [have|just|am|are|have just] (set|put|setting|putting|
    kept|keeping|keep|leave|left|leaving|hold|held) {count} [jar|jars|pint|quart|half pint|
    <of-them>|pints|quarts] [aside|to one side|to the side|out|back|by|off to the side|out of
    the load|over|out of the canner] [for (supper|dinner|lunch|tonight|later|the fridge|
    eating)]`,
    `[<we>|i|i will|i am] [have|just|am] (set|put|setting|putting|kept|held|leave|left) (jar|
    jars|number|numbers|jar number) {jars} (aside|to one side|to the side|out|back|off to the
    side) [<not-full>]`,
    `[<we>|i|i will|i am] [have|just|am] (set|put|setting|putting) aside (jar|jars|number|
    numbers|jar number) {jars} [<not-full>]`,
    `[<we>|i|i will|i am] [have|just|am] (set|put|setting|putting|kept|held) {count=1} (it|that|
    that one|the last one|the last jar|the partial jar|the part filled jar|the half full one|
    the partial|the partial one|the short jar|the odd one|the odd jar|the leftover|the extra|
    the half full jar|the extra one|the extra jar|the part jar|this one|the short one) (aside|
    to one side|to the side|out|back|off to the side|out of the load)`,
    `<set-aside-one> [so] [it|that|that one|i] [is|goes|went|set it|put it|am setting it|i will
    set it|i set it|i put it|has been] [set] (aside|in the fridge|to the fridge|into the fridge|
    to one side)`,
    `[<the>] [last] {count=1} (jar|one|last one|last jar) was not [quite|all the way] full [so]
    [i] [have|just] (set|put) it (aside|to one side|in the fridge)`,
    `[<the>|a] {count=1} (half full|part full|partial|part filled) (jar|one) [so] (i am|i have|
    i) [just] (leaving|left|leave|setting|set|putting|put) it (out|aside|to one side)`,
    `[<the>] {count=1} (last jar|last one) is (only|just|not) [half|part|partly|quite] full [and|
    so] [i am|i will|i have|i] (setting|set|put|putting) it (aside|to one side|in the fridge)`,
    `[<the>] {count=1} (last jar|last one|partial jar|part filled jar|odd jar|short jar|partial)
    (is|goes|gets|went) [set] (aside|in the fridge|to the fridge|into the fridge|to one side)`,
    `{count} [jar|jars|pint|pints|quart|quarts] (set aside|left over|to set aside|aside|is set
    aside|are set aside|left out|goes in the fridge|for the fridge|only part full|part filled|
    partly filled|half full|is only half full|is not full|is only part full|is part full|is
    partly full)`,
    `[the] {count=1} last (jar|one) is (only|just|not|part|partly|only partly|only part|half)
    [half|part|partly] (full|filled|a full jar)`,
    `[i have|we have|there is|i have got|we have got] {count} (partial|part filled|half full|
    partly filled|half filled|part full|short|leftover|extra) [jar|jars|one|pint|left|left over]`,
    `[i have|we have|there is|there are|i have got] {count} [jar|jars|pint|half pint] (left over|
    too many|that is not full|that is only half full|that will not fit|that does not fit|extra|
    that would not fit|over|more than fits|more than will fit)`,
    "setting (one|{count}) aside",
  ],
  spoken: ["{count:whole} jar set aside", "set {count:whole} jar aside"],
  bags: [
    {
      must: ["{count} [<of-them>|jars|jar|pint|quart|pints|quarts]", "<left-aside>"],
      may: `
        <said-of-it>|i|put|set|keeping|kept|leaving|left|holding|held|setting|putting|only|not|
        full|half|to|for|will|let us|let me|partial|short|jar|did not fill
      `,
    },
  ],
  lists: {
    "left-aside": `
      (aside|to the side|to one side|left over|leftover|extra|out of the load|half full|part
      full|not full|only half|back|for the fridge|off to the side|that will not fit|that does
      not fit|will not fit|does not fit|too many|partly full|partly filled|short)
    `,
    "not-full": `
      [because|since|as] (it is|they are) (not [quite] full|only half full|only part full|too
      low)
    `,
    "set-aside-one": `
      {count=1} (the|my|our) (last|partial|odd|short|part filled|half full) (jar|one) [is]
      [only] [half full|part full|not full|short|did not fill|does not fill]|
      {count} [jar|jars|pint] (is|was|came up|came out|ended up) [only] (half full|part full|
      short|not full|partly full|half filled)
    `,
  },
};
