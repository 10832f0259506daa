import type { MeaningOf } from "./meaning.ts";

/** Which of several brews jars were filled from. */
export const brewOf: MeaningOf<"brew-of"> = {
  cost: "clearing",
  plainly: true,
  report: true,
  tellsOf: { about: "jars" },
  when: ["stage:filling"],
  slots: { target: "name", jars: "numbers", count: "count", which: "word", brew: "word" },
  example: "the last two came out of the second pot",
  wordings: [
    "<brewed-jars> [all|both] <holds-brew> <the-brew> [pot|brine|batch]",
    "<brewed-jars> [all|both] <holds-brew> [the] brine (from|out of|of) <the-brew>",
    "<the-brew> (did|filled|covered|went (to|into|on|in)|was for|is in) <brewed-jars>",
    "[i|we] (used|poured) <the-brew> (for|on|in|into|over) <brewed-jars>",
    "[i|we] (filled|did|covered|poured) <brewed-jars> (from|with|out of) <the-brew>",
  ],
  lists: {
    "brewed-jars": `
      <numbered>|{jars:jar-list}|
      the first {which=first} {count:whole} [jars|pints|quarts|half pints] [of [<the>] {target}]|
      the first {which=first} {count:whole} {target}|
      [<the>] {target} first {which=first} {count:whole}|
      the (last|other) {which=last} {count:whole} [jars|pints|quarts|half pints] [of [<the>]
      {target}]|
      the (last|other) {which=last} {count:whole} {target}|
      the (first {which=first}|last {which=last}) {count=1} (one|jar|pint|quart) [of [<the>]
      {target}]|
      [all|all of] [<the>] {target} {which=all}|the rest {which=others} [of them|of the jars]|
      (those|these|they) {which=those} [{count:whole}] [jars|pints|quarts]
    `,
    "holds-brew": `
      got|have|have got|has|hold|holds|took|had|(is|are|was|were|came|come|got filled|was filled|
      were filled|have been filled) (from|out of|with)|(is|are) full of
    `,
    "the-brew": `
      [the] (<which-brew>) (brine|syrup|pot|batch of (brine|syrup)|brew|potful|pan|kettle|one|lot|
      pickling liquid|liquid)
    `,
    "which-brew": `
      (first|original) {brew=first}|second {brew=second}|third {brew=third}|
      (new|fresh|latest) {brew=new}|
      old {brew=old}|(weak|weaker|thin|bad|wrong) {brew=weak}|
      (good|sound|right|strong|stronger|proper) {brew=sound}
    `,
  },
};
