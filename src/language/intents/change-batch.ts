import { foodsNamed } from "../../recipe/foods/name-foods.ts";
import { JARS_SAID } from "../values/lot-ways.ts";
import { textOf } from "../words.ts";
import type { Finish, MeaningOf } from "./meaning.ts";

/** The weight comes on top of what was told. */
const ADDED = new RegExp(
  " (another|extra|additional|further|on top|as well|plus|besides|(pounds?|kilos?|them) more|" +
    "more (of|pounds?|kilos?|tomatoes|beans|beets)|more) (?!like )",
);

/** "Was the Provider five pounds": with or without its mark. */
const ASKED = /^ (was|were|is|are|did|does|do|has) /;

/** Slots as the kitchen has them; undefined where they change nothing. */
const finishChange: Finish = (raw, _context, _plain, said) => {
  const { weight, less, size, called, target } = raw;
  const jar = typeof size === "string" ? JARS_SAID[size] : undefined;
  const name = typeof called === "string" ? asWritten(said.text, called) : undefined;
  const words = ` ${textOf(said.words)} `;
  if (ASKED.test(words)) return undefined;
  const weighed = weight?.weightLb;
  const changed = {
    ...(weighed === undefined
      ? {}
      : ADDED.test(words)
        ? { moreLb: weighed }
        : { weightLb: weighed }),
    ...(typeof less === "number" ? { moreLb: -less } : {}),
    ...(jar ? { jar } : {}),
    ...(name ? { variety: name } : {}),
  };
  if (Object.keys(changed).length === 0 || (name && isAnotherFood(name))) return undefined;
  return { slots: { ...changed, ...(target ? { target } : {}) } };
};

/** "These are zucchini, not beans": one word that names a food is no variety of another. */
function isAnotherFood(name: string): boolean {
  return !name.includes(" ") && foodsNamed(name).length > 0;
}

/** A name as it was written, capitals and all. */
function asWritten(text: string, name: string): string {
  const at = text.toLowerCase().indexOf(name.toLowerCase());
  return at < 0 ? name : text.slice(at, at + name.length);
}

/** Changes the weight, jar or variety of a running batch. */
export const changeBatch: MeaningOf<"change-batch"> = {
  cost: "changing",
  when: ["working"],
  slots: {
    target: "name",
    weightLb: "number",
    moreLb: "number",
    jar: "size",
    variety: "name",
    name: "name",
  },
  parts: ["weight", "less", "size", "called", "other", "loss"],
  example: "make that seven pounds",
  unasked: true,
  finish: finishChange,
  wordings: [
    `[no|wait|sorry|actually|oh] (make|let us make|change|correct|fix) (it|that|them|those|this)
    [to] [about] {weight} [instead|after all|not {other:weight}|please]`,
    `[no|wait|sorry|actually|oh] [<let>] (change|correct|set|put) [<the>] {target} [to|at|down
    as] [about] {weight} [instead|after all]`,
    `[no|wait|sorry|actually|oh] (it is|that is|there are|there is|it was|they are|we have|i have)
    [only|really|more like] {weight} [of [<the>] {target}] (after all|instead|not {other:weight}|in
    all|altogether)`,
    `[it is|there is|there are|that is] [only] {weight} [of [<the>] {target}] (once|after|when|
    now) (i|
    we|you) (take|took|have taken|cut|trim|trimmed|get|got|pulled) <the> [{loss:thing}] [off|out]`,
    `[<let>] (go|stay|stick|settle) (with|for|on) {weight} [of [<the>] {target}]`,
    `[no|wait|sorry|actually|oh] [<the>] {target} (is|are|was|were|weighs|weigh|comes to|come to)
    [only|really|more like] {weight} [after all|instead|not {other:weight}|in all]`,
    `[no|wait|sorry|actually|oh] (use|let us use|using|make it|make that|make them|make those|go
    with|change to|switch to|change it to|change them to|we are using|we use|i am using|i use)
    {size} [jars] [instead|after all|then|not {other:size}|for [<the>] {target}]`,
    `[no|wait|sorry|actually|oh] [let us] (put|do|can|make|change|switch) [<the>] {target} (in|into|
    to) {size} [jars] [instead|after all]`,
    `[no|wait|sorry|actually|oh] [<let>] (call|name) [<the>] (it|that|that one|this one|them|those|
    this batch|that batch|{target}) [<the>] {called:thing}`,
    `[no|wait|sorry|actually|oh] (they are|it is|those are|that is|these are|the variety is)
    [really] [<the>] {called:thing} (not [<the>] {target}|after all)`,
    `[no|wait|sorry|actually|oh] the variety [of [<the>] {target}] is [really] [<the>]
    {called:thing}`,
  ],
};
