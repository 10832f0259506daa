import type { SlotsOf } from "../../kitchen/command.ts";
import { foodsNamed } from "../../recipe/foods/name-foods.ts";
import type { Context } from "../context.ts";
import { begunBy } from "../values/gated-lots.ts";
import { RECIPE_NAMES } from "../values/recipe-names.ts";
import type { SpokenLot } from "../values/spoken-lots.ts";
import { textOf, type Utterance } from "../words.ts";
import type { Finish, MeaningOf } from "./meaning.ts";

type Begun = SlotsOf["begin"];

/** How much less certain it is where a name fits several recipes. */
const SEVERAL = 0.3;

/** Turns a lot into the recipe it names, or the choices where it names several. */
const finishBegin: Finish = (raw, context, _plain, said) => {
  const named = raw.lot ?? (typeof raw.food === "string" ? undefined : raw.food);
  const lot = named ?? (raw.pickles === true ? PICKLES : undefined);
  if (!lot) {
    const made = typeof raw.named === "string" && madeInPot(raw.named, said, context);
    if (made) return { slots: made, doubt: made.choices ? SEVERAL : 0 };
    const { weight, ...slots } = raw;
    return { slots: weight ? { ...slots, weightLb: weight.weightLb } : slots };
  }
  const slots = toldApart(begunBy(lot, context), lot, said, context);
  const produce = raw.produce;
  if (produce) slots.weightLb ??= produce.weightLb;
  return { slots, doubt: slots.choices ? SEVERAL : 0 };
};

/**
 * "Start the tomato juice": what stands in a pot may be a recipe, unless what is running has such
 * a pot.
 */
function madeInPot(named: string, { words }: Utterance, context: Context): Begun | undefined {
  const stages = context.running.flatMap(({ stages: all = [] }) => all);
  if (stages.some(({ pot = "", title }) => `${pot} ${title}`.includes(named))) return undefined;
  const at = words.findIndex(({ word }) => word === named);
  const kind = words[at - 1]?.word ?? "";
  const whole = foodsNamed(kind).length > 0 ? `${kind} ${named}` : named;
  const lot = { recipes: [], named: whole, said: whole, beside: "", exact: true };
  const found = begunBy(lot, context);
  return found.recipe || (found.choices?.length ?? 0) > 0 || found.untested ? found : undefined;
}

/** "Let's pickle the lot": any recipe of that name. */
const PICKLES: SpokenLot = {
  recipes: Object.keys(RECIPE_NAMES).filter((id) =>
    RECIPE_NAMES[id]?.some((name) => /\bpickle/.test(name)),
  ),
  named: "pickles",
  said: "pickles",
  beside: "",
  exact: true,
};

/** "I've hauled in strawberries, let's get some jam going": the food tells which jam. */
function toldApart(slots: Begun, lot: SpokenLot, said: Utterance, context: Context): Begun {
  if (!slots.choices) return slots;
  const foods = foodsNamed(textOf(said.words));
  for (const { name } of foods) {
    const found = begunBy({ ...lot, recipes: [], said: `${name} ${lot.said}` }, context);
    if (found.recipe && slots.choices.includes(found.recipe)) return found;
  }
  return slots;
}

/** A batch begins, or a pot is put on. */
export const begin: MeaningOf<"begin"> = {
  cost: "changing",
  inPieces: true,
  when: ["always"],
  slots: {
    recipe: "name",
    named: "name",
    choices: "names",
    untested: "untested",
    beside: "text",
    aside: "text",
    foods: "names",
    variety: "name",
    weightLb: "number",
    jar: "size",
    pack: "word",
    method: "word",
    atPsi: "gauge",
  },
  parts: ["lot", "food", "produce", "target", "weight", "pickles"],
  example: "start the dilly beans, six pounds of Provider",
  forgiving: true,
  unasked: true,
  finish: finishBegin,
  wordings: [
    `(time for|it is time for|up for|ready for|on to|we are on to|i am ready for|we are ready
    for|moving on to|let us move on to|now for|and now for) {lot}`,
    `[<let>|i am|we are] [start|begin|get going on|going to] (pickle|pickling) [up] [[about]
    {weight} [of]] [some|the|our|my|a batch of|those|these] {recipe=pickled-beets} beets`,
    `[<let>] (dill|pickle) [up] [[about] {weight} [of]] [some|the|our|my|a batch of|those|these]
    {recipe=dilled-green-beans} [green|dilly] beans`,
    `<let> (pickle|pickling) {pickles=true} [up] ([all of] (the lot|them|these|those|it|this|this
    lot)
    [all]|the whole (lot|basket|bushel)|everything|all of it)|<let> (do some|start) pickling
    {pickles=true}|(start|begin) pickling {pickles=true}`,
    `[<let>] {recipe=sauerkraut} (make|turn) [the|some|this|that|our] cabbage into (kraut|
    sauerkraut)`,
    `[<let>] (pressure can|pressure cook) [some|the|our|my] {recipe=snap-beans} [green|snap|
    string] beans`,
    `{lot} [<let>] (start|begin|go|to start|to begin|start up|get going|get started) [on|with]
    [it|them|that|those|these|that one|on it|on them|now]`,
    `{lot} [<let>] (do|make|can|put up|get|run|have|save|pickle|put by|start|begin) (it|that|
    them|those|these|that one|some|a batch|one) [going|started|up|of (them|it|those)]`,
    `(i have|i have got|we have|we have got|here are|there are|got|here is|there is) {lot} (to
    do|to can|to put up|to make|to pickle|to start|ready to start|ready|here|to get through)
    [so] <let> (start|begin|go|get going|get started|do it|do them|can them|make it|start those|
    start them)`,
    "(how about|let us have) {lot} (next|now|today|then|this time)",
    `[(<got>|here is|here are|with|i am using|we are using|let us use|let us take|take|use|for)]
    [about|all|roughly] [<the>|some] {produce} [here|ready|to use|to put up|to do|to can|
    picked|washed] [so|and|now|then] [<let>] (<start>|make|turn them into|turn it into|make them
    into|make it into) [on] {lot}`,
    "[<let>] (put|get) {lot} (up|by) [now|today]",
    "[<let>] (turn|make|put|use) [about] [<the>|some] {produce} (into|for|to make|as) {lot}",
    `(<got>|here is|here are) [about] {produce} (for|to make|to make into|to turn into|to go
    into|to put up as) {lot} [[so] <let> (start|begin|go|get going|get started)]`,
    "[<let>] <start> [up|in on|making|with|on|off] ({lot}|{food})",
    "[<we>|i] [am|are|will be|would be] [now|just] <starting> ({lot}|{food})",
    `[<let>] (start|begin|open|set up|create|run) [a|another|one|the first|a new|the next]
    (batch|lot|round|run|session) [of|with|for] {lot}`,
    "new batch [of] {lot}",
    `(today it is|next up is|next up|first up|first up is|today we are doing|today is|on today
    is|first batch is|up first|next batch is|up next) {lot}`,
    `(i have|i have got|we have|we have got|here are|there are|got) {lot} (to do|to can|to put
    up|to make|to pickle|to start|ready to start)`,
    "{lot} (is|are) (next|first|starting|up next|going in next)",
    `[<let>] (have a go at|get|put on|put together|throw together|get cracking on|crack on with|
    get a batch of|get going making|get stuck into|go ahead with|bring on) {lot} [going|
    started|on|under way|underway|on the go]`,
    "[<let>|i am|we are] (go|going) (with|for) {lot}",
    "i (am|will be) (here to|ready to) (make|can|do|start|put up) {lot}",
    "(i|we) (begin|start) [now] (with|on) {lot}|(i|we) now (begin|start) {lot}",
    "(i want|i would like|we want|give me) {lot} [today|started|going]",
    `[<let>] (start|start up|start on|start with|put on|begin|light|get going on|get started on|
    fire up|kick off|set going) [<the>|some|a|a pot of] [<kind>] <pot> [going|on|now|started|
    heating|next] [<for-what>]`,
    `[<let>] (get|put|set|have|bring) [<the>|some|a|a pot of] [<kind>] <pot> (going|on|started|
    heating|on to heat|to heat|cooking|on to cook|<onto-stove>) [now]`,
    `[<let>] (get|put|set|have|bring) [<the>|some|a pot of] <potful> (on|on to heat|on to cook|
    <onto-stove>) [now]`,
    "[<let>] (put on|start heating) [<the>|some|a pot of] ([<kind>] <pot>|<potful>)",
    `[i am|we are|i have|we have|i|we] [just] (starting|started|putting on|put on|heating|lit|
    heating up|lighting|beginning|begun|began|starting up) [<the>] [<kind>] <pot> [up|now]`,
    `[i am|we are|i have|we have|i|we] [just] (put|got|putting|getting|set|setting|have|moved)
    [<the>] [<kind>] <pot> [back] (on|going|heating|cooking|started|<onto-stove>) [now]`,
    `[i am|we are|i have|we have|i|we] [just] (put|got|putting|set|setting|have|moved) [<the>]
    <potful> [back] (on|<onto-stove>) [now]`,
    `[<the>] [<kind>] <pot> (is|are|goes|went|has gone|has been put|has been) [just] [now|back]
    (on|<onto-stove>|heating|heating up|on the heat|cooking|started|going|on now|under way|
    underway|going on|on to heat|warming up) [now]`,
    `[<the>] <potful> (is|are|goes|went|has gone|has been put) [just] [now|back] (on|
    <onto-stove>|on now|going on|on to heat|on to cook) [now]`,
    "[<the>] [<kind>] <pot> (heating|on|started|<onto-stove>) [now]",
    "[<the>] <potful> <onto-stove> [now]",
  ],
  spoken: ["start [the] {lot}", "let us make [the] {lot}", "start the <pot>", "the <pot> is on"],
  lists: {
    start: `
      fire up|get a start on|make a start on|get stuck into|get to|start in on|throw together|
      put together|knock out|get cracking on|whip together|start us on|get us started on|set
      about|begin on|begin making|start up with|go ahead with|move on to making|go on to make|
      start|begin|make|do|can|put up|get going on|get started on|get started with|start on|
      start with|kick off|set up|open|cook up|start up|get going with|process|fix|run|prepare|
      cook|set going|start making|start canning|launch|whip up|pickle|jump into|dive into|put
      by|preserve|get into|get on with|begin with|bottle|start off|save|ferment|try
    `,
    starting: `
      starting|beginning|making|doing|canning|putting up|starting on|starting with|going to
      make|going to do|going to start|going to can|going to put up|about to start|about to make|
      going to begin|cooking up|going with|saving|fermenting|setting up|kicking off|getting
      started on|running|pickling|getting going on|putting by
    `,
    kind: `
      (fresh|hot|spiced|pickling|sugar|light|heavy|medium|vinegar|salt|salted|pickle|canning|
      sweet|boiling|new|simple|apple|tomato|berry|honey)
    `,
    "for-what": "(for|of) [<the>] {target}",
    "onto-stove": "(on|onto|over|on to) [the|a] (stove|heat|burner|fire|range|flame|stovetop)",
    pot: `
      brine {named=brine}|syrup {named=syrup}|broth {named=broth}|juice {named=juice}|water
      {named=water}|liquid {named=liquid}|vinegar {named=vinegar}
    `,
    potful: `
      jam {named=jam}|jelly {named=jelly}|sauce {named=sauce}|salsa {named=salsa}|relish
      {named=relish}|butter {named=butter}|fruit {named=fruit}|berries {named=berries}|tomatoes
      {named=tomatoes}|apples {named=apples}|beets {named=beets}|stock {named=stock}|preserves
      {named=preserves}
    `,
  },
};
