import { SHORTAGE_PATTERNS, topicIn } from "../values/topic-patterns.ts";
import { utteranceOf } from "../words.ts";
import type { MeaningOf } from "./meaning.ts";

const ASKS = /^(?:how|what|when|where|which|who|why)\b/i;

/** Something has run out, or there is too little of it. */
export const shortOf: MeaningOf<"short-of"> = {
  cost: "harmless",
  tellsOf: { about: "jars" },
  when: ["always"],
  slots: { what: "text", item: "word", value: "number", unit: "word" },
  example: "I'm out of canning salt",
  finish: ({ what, item, value, unit }, _context, _plain, said) => {
    // "How much salt goes in, and when is it finished?" asks of something else.
    if (typeof what === "string" && ASKS.test(what)) return undefined;
    const words = typeof what === "string" ? utteranceOf(what).words : said.words;
    const found = item ?? topicIn(words, SHORTAGE_PATTERNS);
    if (found === undefined && what !== undefined) return undefined;
    const had = value === undefined || unit === undefined ? {} : { value, unit };
    return { slots: { what: what ?? said.text, ...(found ? { item: found } : {}), ...had } };
  },
  wordings: [
    `(i|we) (am|are|have|have run|ran|am running|are running|just ran|am all|are all|run) [all]
    (out|short|low|shy) (of|on) {what:text}`,
    `(i|we) (do not have|have no|have not got|have not|have got no|do not own|lack|can not find|
    can not get|could not find|could not get|is not got) [any|enough|a|the|no] [more] {what:text}`,
    `(i|we) (have|have got|got) (only|just) [got] [about] {value:number} <kitchen-unit> [of]
    {what:text}`,
    `(i|we) only (have|have got|got) [about] {value:number} <kitchen-unit> [of] {what:text}`,
    "there is (no|not enough|not any|hardly any) [more] {what:text}",
    `[the|my|our] {what:text} (is gone|is all gone|are all gone|are gone|is out|ran out|has run out|
    is used up|is finished|finished|is all used up|is empty)`,
    `what (can|could|may|should|do|will|would|shall) (i|we) use (if|when|now|since|as) (i|we) (am|
    are|
    have run|ran|run) [all] (out|short|low) (of|on) {what:text}`,
    `what [else] (can|could|may|should|do) (i|we) use (instead of|in place of|for) {what:text}`,
    `(is there|have you|do you know) (anything|something|a substitute|a replacement|another way)
    [i can use|that works] (instead of|in place of|for|without) {what:text}`,
    "what if (i|we) (have no|do not have|run out of|have not got) [any|a|enough] {what:text}",
    "(i|we) (need|need some) more {what:text} than (i|we) have",
  ],
  lists: {
    "kitchen-unit": `
      (cup|cups) {unit=cup}|(tablespoon|tablespoons) {unit=tablespoon}|(teaspoon|teaspoons)
      {unit=teaspoon}|(pint|pints) {unit=pint}|(quart|quarts) {unit=quart}|(gallon|gallons)
      {unit=gallon}|(pound|pounds) {unit=lb}|(ounce|ounces) {unit=oz}|(gram|grams) {unit=g}|
      (kilo|kilos) {unit=kg}|(liter|liters|litre|litres) {unit=l}|(milliliters|ml) {unit=ml}
    `,
  },
};
