// data table
/** What was tested in the place of something that has run out, and where nothing was. */

import type { Shortage } from "../../kitchen/topics.ts";
import { numberWords } from "../../reckon/number-words.ts";
import { COVER_IN, LOW_TEMPERATURE_F, VINEGAR_PERCENT } from "../../reckon/trade-numbers.ts";
import { type OwnText, SOURCES } from "./own-text.ts";

export const SHORTAGES: Readonly<Record<Shortage, OwnText>> = {
  "lemon-juice": {
    text: `In tomatoes citric acid does it: half a teaspoon a quart, a quarter a pint. So do four tablespoons of ${VINEGAR_PERCENT} percent vinegar a quart. In other recipes nothing else was tested.`,
    source: SOURCES.tomatoes,
  },
  "citric-acid": {
    text: "In tomatoes bottled lemon juice does it: two tablespoons a quart, one a pint. Not fresh lemons; their strength isn't known.",
    source: SOURCES.tomatoes,
  },
  vinegar: {
    text: `Nothing takes the place of ${VINEGAR_PERCENT} percent vinegar, and water doesn't stretch it. Make a smaller batch, everything scaled down together, and refrigerate the rest until you have more.`,
    source: SOURCES.pickles,
  },
  "canning-salt": {
    text: "Table salt is safe in its place, and clouds the brine. Coarse kosher salt: one and a quarter cups for a cup. In a ferment don't take less salt than it says.",
    source: SOURCES.pickles,
  },
  sugar: {
    text: "Jam without added pectin needs all its sugar to set: make a smaller batch. Canned fruit keeps as well in water or juice. In pickles, take only a tested recipe with less.",
    source: SOURCES.jams,
  },
  pectin: {
    text: "The jams and jellies here are made without added pectin. Say recipes to hear them.",
    source: SOURCES.jams,
  },
  lids: {
    text: "Flat lids are used only once, and nothing takes their place. Put in the canner only what has a new lid; refrigerate or freeze the rest.",
    source: SOURCES.general,
  },
  bands: {
    text: "A band is needed only in the canner and while the jar cools. From jars that have cooled and sealed you can take them off and use them.",
    source: SOURCES.general,
  },
  jars: {
    text: "A smaller canning jar may take the time of the next larger tested one; a larger one never. What finds no jar goes in the refrigerator or freezer.",
    source: SOURCES.general,
  },
  ice: {
    text: "It has to stay cold for its hours: put it in the refrigerator, and top it up with ice when you have some. Don't leave it out without.",
    source: null,
  },
  dill: {
    text: "In fresh-pack dills a teaspoon and a half of dill seed a pint was tested for one and a half heads. Dried herbs only season: less of them is safe.",
    source: SOURCES.pickles,
  },
  garlic: {
    text: "In these pickles garlic only seasons: leave it out or take less. Don't take more than the recipe says.",
    source: null,
  },
  spice: {
    text: "Dry spices only season: leave it out, or take less or another. Vinegar, salt and water stay as they are.",
    source: null,
  },
  onion: {
    text: "Less onion is safe, for it brings no acid. More of it isn't, and neither is another vegetable in its place.",
    source: null,
  },
  brine: {
    text: "Boil some more in the recipe's own proportions. Never top it up with water, or with vinegar and water by eye.",
    source: SOURCES.pickles,
  },
  syrup: {
    text: "Boil some more, as thin as you like. Fruit keeps as well in a lighter syrup, in juice or in boiling water.",
    source: null,
  },
  "pressure-canner": {
    text: "Nothing takes its place: boiling water isn't hot enough for low-acid food. Freeze it, or pickle it by a tested recipe.",
    source: SOURCES.general,
  },
  canner: {
    text: `Any deep pot will do for boiling water, with a lid, a rack, and room for ${numberWords(COVER_IN.deep)} inches over the jars. Without one, refrigerate or freeze. Low-acid food needs a pressure canner.`,
    source: SOURCES.general,
  },
  rack: {
    text: "Jars mustn't stand on the bottom of the pot: there they break. A round cake rack will do, or canning bands tied together.",
    source: null,
  },
  thermometer: {
    text: `Go without where the sign is a boil. Pasteurizing at ${LOW_TEMPERATURE_F.min} degrees and steam need one: use the boiling-water time instead.`,
    source: SOURCES.pickles,
  },
};

/** Where it was not said what has run out, or nothing is known of it here. */
export const ANY_SHORTAGE =
  "I know of nothing that was tested in its place. Leave it out only if it just seasons. " +
  "For anything else, ask your extension service.";
