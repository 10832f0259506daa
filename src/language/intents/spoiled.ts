import type { MeaningOf } from "./meaning.ts";

/** A jar has gone bad, on the shelf or while its seal was still to be checked. */
export const spoiled: MeaningOf<"spoiled"> = {
  cost: "raising",
  tellsOf: { about: "jars" },
  report: true,
  when: ["always"],
  ofRecord: true,
  slots: { target: "name", count: "count", size: "size", jars: "numbers", sign: "word" },
  example: "a jar of the beets is leaking",
  doubting: ["used", "would"],
  wordings: [
    "<opening> {count} <gone-bad> <jars-or-size> of [<the>] {target:open} [<off>]",
    `<opening> {count} <jars-or-size> of [<the>] {target:open} [and|but|which|that] [it|they|
    one] [is|are|was|were|had|has|looked|had been|smelled|smells] <gone-bad> [<off>]`,
    "[<came-upon>] {count} <gone-bad> <jars-or-size> of [<the>] {target:open} [<off>]",
    `[<came-upon>] {count} <jars-or-size> of [<the>] {target:open} [that|which] [is|are|was|
    were|has|have|had] [gone|just|still|all] <gone-bad> [<off>]`,
    `[the] [lid|lids] [on|of] <numbered> [is|are|was|were|has|have|had] [gone|just|still|both]
    <gone-off> [<off>]`,
    `{jars:jar-list} [is|are|was|were|has|have|had] [gone|just|still|both] <gone-off>`,
    `(one|{count}) of [<the>] {target} [jars|pints|quarts] [is|are|was|were|has|have|had] [gone]
    <gone-bad> [<off>]`,
    `(a|one|the) (jar|lid) [is|was|has|had] [gone|just] <gone-bad> [<off>]`,
    "[<came-upon>] {count} <gone-bad> (jar|jars) [<off>]",
    `[<we>|i|i have|we have|had to] [just] (threw|tossed|chucked|pitched|dumped|binned|trashed)
    [out|away] {count} [<jars-or-size> of [<the>]] {target:open} [out|away] [because|as|since]
    (it|they) (is|are|was|were|had|has|have|had gone|has gone|went) <gone-bad>`,
    "<some-jars> [is|are|was|were|has|have|had] [gone|just|still|both] <gone-off> [<off>]",
    `[there is|there was|i found|we found|i see] [some] {sign=moldy} (mold|fuzz) (on|in) [top of]
    [<the>] {target}`,
  ],
  lists: {
    opening: `
      [<we>|i|i have|we have|just|i just|we just] [just] (opened|opened up|cracked open|
      opening)
    `,
    "came-upon": "(there is|there was|i found|we found|i have|found)",
    "gone-bad": `
      <gone-off>|
      {sign=unsealed} (unsealed|come unsealed|came unsealed|open already|not sealed|no longer
      sealed)
    `,
    "gone-off": `
      {sign=bulged} (bulged|bulging|swollen|swelled up|swelling)|
      {sign=leaked} (leaked|leaking|leaky|seeping)|
      {sign=spurted} (spurted|spurting|squirted|foaming|foamy|fizzing|fizzy)|
      {sign=moldy} (moldy|mold|got mold|mold in it|mold on it|furry|fuzzy|(growing|grown|grew)
      [some|a bit of] (fur|fuzz|hair|whiskers|mold))|
      {sign=off} (spoiled|spoilt|rotten|bad|gone bad|gone off|went bad|off|smelled bad|
      smells bad|smelled off|smells off|smelled wrong|smells wrong|stinks)
    `,
    off: `
      (on|from|off) the shelf|(in|from) the (pantry|cellar|basement)|today|tonight|
      [and|so] out (it|they) (goes|go|went)|[and|so] [i|we] [have] (binned|chucked|tossed|threw|
      pitched) (it|them) [out|away]
    `,
  },
};
