// data table
import { DISCARD_BOIL_MINUTES } from "../reckon/trade-numbers.ts";
import type { FoodClass } from "./recipe.ts";

/** Cautions said where work can hurt someone. Recipes point here by id; texts are our own. */
export const CAUTIONS: Record<string, string> = {
  botulism: "Low-acid food not pressure canned for its tested time can carry botulism.",
  "tested-only": "Change nothing: this mix was tested.",
  "hot-liquid": "Boiling hot: keep children away.",
  "hot-sugar": "Boiling sugar burns deep: long spoon, dry cloth.",
  "hot-jars": "Hot jars break on cold: set them on a towel.",
  steam: "Steam burns. Lift any lid away from you.",
  "pressure-lid": "Never open the canner before the pressure is back to zero by itself.",
  "never-taste": "If a jar seems doubtful, never taste it.",
  chiles: "Wear gloves for hot peppers, and keep your hands off your face.",
  lime: "Lime burns eyes and lungs. Do not breathe the dust, and rinse it all off.",
  peeling: "The fruit comes out of boiling water. Dip it cold before you touch it.",
  knife: "Wet hands, sharp knife: go slowly.",
  lifter: "Lifter, and your face clear of the steam.",
  "hot-lids": "Leave hot lids and bands alone.",
  forcing: "Never force a canner open or cool it to hurry it. Lift the lid away from you.",
};

/** Those about steam, pressure and lids: said at each load, short after the first of a day. */
const AT_EACH_LOAD: Record<string, string> = {
  steam: "Lid away from you.",
  "pressure-lid": "It stays shut until it is at zero by itself.",
  lifter: "Mind the steam.",
  "hot-lids": "Hands off the lids.",
  forcing: "Never force it. Lid away from you.",
};

const SHORT_OF = new Map(Object.entries(AT_EACH_LOAD).map(([id, short]) => [CAUTIONS[id], short]));

/** The short form of a caution that is said at each load; undefined for any other. */
export function shortCaution(text: string): string | undefined {
  return SHORT_OF.get(text);
}

/**
 * Food that can carry botulism once it has spoiled: low-acid food and tomatoes (USDA Complete Guide
 * to Home Canning, Guide 1); pickled vegetables too, since a jar that spoiled may have lost its
 * acid (our choice).
 */
const MAY_BE_TOXIC: ReadonlySet<FoodClass> = new Set(["low-acid", "tomato", "acidified"]);

/**
 * How to get rid of a spoiled jar, by its food and by whether it is still sealed.
 * Published: USDA Complete Guide to Home Canning, Guide 1.
 */
export function disposalWords(food: FoodClass, isSealed: boolean): string {
  if (!MAY_BE_TOXIC.has(food)) {
    return "Do not taste it. Throw it out where no child or animal can get at it, and wash what it touched.";
  }
  if (isSealed) {
    return (
      "Do not taste it, and leave it shut. Put it in a heavy bag, and throw it out where no child " +
      "or animal can get at it."
    );
  }
  return (
    "Do not taste it. Wear gloves; lay jar and all in a pot, cover with an inch of water, " +
    `boil ${DISCARD_BOIL_MINUTES} minutes, then throw it out, and clean what it touched.`
  );
}

/** Published: USDA Complete Guide to Home Canning, Guide 6, fermented dills and sauerkraut. */
export const SCUM_WORDS =
  "A film, scum or mold on top of a ferment is not spoilage by itself: skim it off, two or three " +
  "times a week. If it is soft, slimy or smells bad, throw all of it out.";
