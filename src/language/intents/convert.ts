import type { MeaningOf } from "./meaning.ts";

/** Units by the names that `reckon` knows, with the words for them. */
export const UNIT_WORDINGS: Readonly<Record<string, string>> = {
  cup: "cup|cups",
  tablespoon: "tablespoon|tablespoons|table spoon|table spoons",
  teaspoon: "teaspoon|teaspoons|tea spoon|tea spoons",
  pint: "pint|pints",
  quart: "quart|quarts",
  gallon: "gallon|gallons",
  ml: "milliliter|milliliters|millilitre|millilitres|ml|mls",
  liter: "liter|liters|litre|litres",
  "fluid ounce": "fluid ounce|fluid ounces",
  ounce: "ounce|ounces",
  pound: "pound|pounds",
  gram: "gram|grams",
  kilo: "kilo|kilos",
  fahrenheit: "[degrees|degree] fahrenheit",
  celsius: "[degrees|degree] (celsius|centigrade)",
  psi: "psi|pounds of pressure|pounds pressure",
  kpa: "kpa",
  foot: "feet|foot",
  inch: "inch|inches",
  centimeter: "centimeter|centimeters|centimetre|centimetres|cm",
  millimeter: "millimeter|millimeters|millimetre|millimetres|mm",
  meter: "meters",
};

function unitsInto(slot: "from" | "to"): string {
  return Object.entries(UNIT_WORDINGS)
    .map(([unit, words]) => `(${words}) {${slot}=${unit}}`)
    .join("|");
}

/** An amount in another unit. */
export const convert: MeaningOf<"convert"> = {
  cost: "harmless",
  asked: true,
  when: ["always"],
  slots: { value: "number", from: "word", to: "word", of: "name" },
  example: "how many cups in a quart",
  finish: ({ value = 1, from, to, of }) => {
    if (from === undefined || to === undefined) return undefined;
    return { slots: { value, from, to, ...(of === undefined ? {} : { of }) } };
  },
  wordings: [
    `how many <unit-to> [are there|is there|are|is|of {of:thing}|do i need for|go|fit] (in|into|
    to|is|are|
    make|makes|make up) [<an-amount>] <unit-from> [of {of:thing}]`,
    `what (is|are) [<an-amount>] <unit-from> [of {of:thing}] in <unit-to>`,
    `[<an-amount>] <unit-from> [of {of:thing}] (is|are|makes|make) how many <unit-to>`,
    `(convert|change|turn|give me|tell me) [<an-amount>] <unit-from> [of {of:thing}] (to|into|in|
    as) <unit-to>`,
    "[<an-amount>] <unit-from> [of {of:thing}] in <unit-to>",
    `how (much|many <unit-to>) (does|do) [<an-amount>] <unit-from> of {of:thing} weigh [in
    <unit-to>]`,
    "how many <unit-to> (is|are) that [if it is] [<an-amount>] <unit-from>",
  ],
  lists: {
    "unit-from": unitsInto("from"),
    "unit-to": unitsInto("to"),
    "an-amount": "a|an|one|{value:number}|{value:number} of|a full",
  },
};
