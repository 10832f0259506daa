// data table
import type { Family } from "./family.ts";

/** The heat turned off at a process's end, and pots begun by a word. */
export const STOVE_WORDS: readonly Family[] = [
  {
    intent: "done",
    set: { target: "heat off" },
    phrases: [
      "[<the>] (heat|burner|stove|gas|fire|flame) [is] off [now]",
      "[i|we] [have] [just] (turned|shut|switched|killed|cut) off [<the>] <heat> [now]",
      "[i|we] [have] [just] (turned|shut|switched) [<the>] <heat> off [now]",
      "[i|we] [have] [just] (killed|cut) [<the>] <heat> [now]",
    ],
  },
  {
    intent: "begin",
    phrases: [
      `
        [<let>] (start|start up|start on|start with|put on|begin|light|get going on|get started
        on|fire up|kick off|set going) [<the>|some|a|a pot of] [<kind>] <pot> [going|on|now|
        started|heating|next] [<for-what>]
      `,
      `
        [<let>] (get|put|set|have|bring) [<the>|some|a|a pot of] [<kind>] <pot> (going|on|started|
        heating|on to heat|to heat|cooking|on to cook|<onto-stove>) [now]
      `,
      `
        [<let>] (get|put|set|have|bring) [<the>|some|a pot of] <potful> (on|on to heat|on to cook|
        <onto-stove>) [now]
      `,
      "[<let>] (put on|start heating) [<the>|some|a pot of] ([<kind>] <pot>|<potful>)",
      `
        [i am|we are|i have|we have|i|we] [just] (starting|started|putting on|put on|heating|lit|
        heating up|lighting|beginning|begun|began|starting up) [<the>] [<kind>] <pot> [up|now]
      `,
      `
        [i am|we are|i have|we have|i|we] [just] (put|got|putting|getting|set|setting|have|moved)
        [<the>] [<kind>] <pot> [back] (on|going|heating|cooking|started|<onto-stove>) [now]
      `,
      `
        [i am|we are|i have|we have|i|we] [just] (put|got|putting|set|setting|have|moved) [<the>]
        <potful> [back] (on|<onto-stove>) [now]
      `,
      `
        [<the>] [<kind>] <pot> (is|are|goes|went|has gone|has been put|has been) [just] [now|back]
        (on|<onto-stove>|heating|heating up|on the heat|cooking|started|going|on now|under way|
        underway|going on|on to heat|warming up) [now]
      `,
      `
        [<the>] <potful> (is|are|goes|went|has gone|has been put) [just] [now|back] (on|
        <onto-stove>|on now|going on|on to heat|on to cook) [now]
      `,
      "[<the>] [<kind>] <pot> (heating|on|started|<onto-stove>) [now]",
      "[<the>] <potful> <onto-stove> [now]",
    ],
  },
];

export const STOVE_LISTS: Readonly<Record<string, readonly string[]>> = {
  heat: ["(heat|burner|stove|gas|fire|flame|burners)"],
  kind: [
    `
      (fresh|hot|spiced|pickling|sugar|light|heavy|medium|vinegar|salt|salted|pickle|canning|
      sweet|boiling|new|simple|apple|tomato|berry|honey)
    `,
  ],
  "for-what": ["(for|of) [<the>] {target}"],
  "onto-stove": ["(on|onto|over|on to) [the|a] (stove|heat|burner|fire|range|flame|stovetop)"],
  /** What no recipe is called, so that "start it" can only mean the pot. */
  pot: [
    "brine {named=brine}",
    "syrup {named=syrup}",
    "broth {named=broth}",
    "juice {named=juice}",
    "water {named=water}",
    "liquid {named=liquid}",
    "vinegar {named=vinegar}",
  ],
  /** What a recipe may be called: begun as a pot only where a stove is spoken of. */
  potful: [
    "jam {named=jam}",
    "jelly {named=jelly}",
    "sauce {named=sauce}",
    "salsa {named=salsa}",
    "relish {named=relish}",
    "butter {named=butter}",
    "fruit {named=fruit}",
    "berries {named=berries}",
    "tomatoes {named=tomatoes}",
    "apples {named=apples}",
    "beets {named=beets}",
    "stock {named=stock}",
    "preserves {named=preserves}",
  ],
};
