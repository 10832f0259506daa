// data table
/** What people are afraid of, answered from the rules. */

import type { SafetyTopic } from "../../kitchen/topics.ts";
import { daysWords, numberWords } from "../../reckon/number-words.ts";
import {
  BEST_BY_DAYS,
  DISCARD_BOIL_MINUTES,
  IN_OIL_DAYS,
  OFF_PROCESS_HOURS,
  REPROCESS_WITHIN_HOURS,
  VINEGAR_PERCENT,
} from "../../reckon/trade-numbers.ts";
import { type OwnText, SOURCES } from "./own-text.ts";
import { TROUBLES } from "./troubles.ts";

/** What is answered from the state where it can be, and so else. */
export const SAFETY: Readonly<Record<SafetyTopic, OwnText>> = {
  ...TROUBLES,
  botulism: {
    text: "Botulism grows in low-acid food without air, in a jar that wasn't processed right. A tested recipe, its whole time, and your altitude's time or pressure keep it out. In doubt, never taste.",
    source: SOURCES.general,
  },
  tasting: {
    text: "Never taste to find out. You can't see, smell or taste the poison of botulism, and a little can kill. In doubt, throw it out.",
    source: SOURCES.washington,
  },
  looks: {
    text: "Not always: spoiled low-acid food may show very little. A raised lid, a leak, spurting, rising bubbles, mold or a bad smell: don't taste it. In doubt, throw it out.",
    source: SOURCES.general,
  },
  overfull: {
    text: "Take some out: the headspace is part of the recipe. Too full, food boils out under the lid, and the jar may not seal.",
    source: SOURCES.general,
  },
  tested: {
    text: "Each recipe names its source, mostly the USDA Complete Guide to Home Canning. A time that's from memory says so, and counts once you've compared it with your guide.",
    source: SOURCES.general,
  },
  bulged: {
    text: `No. Don't taste it, and don't open one that's still sealed: bag it and throw it out. Open or leaking low-acid food and tomatoes: boil it under water ${DISCARD_BOIL_MINUTES} minutes, jar and all, then throw it out.`,
    source: SOURCES.general,
  },
  mold: {
    text: "No. Mold on canned food means the jar is spoiled: don't scrape it, don't taste it, throw it out. Scum on a ferment is another thing: skim that off.",
    source: SOURCES.general,
  },
  "not-sealed": {
    text: `Found within ${REPROCESS_WITHIN_HOURS} hours: refrigerate it, freeze it, or process it again with a new lid, for the whole time. Found later, throw it out.`,
    source: SOURCES.general,
  },
  "seal-alone": {
    text: "A seal alone proves nothing: a jar can seal after too short a process. It's safe when the recipe was tested and its whole process kept.",
    source: SOURCES.iowa,
  },
  "process-time": {
    text: "A tested time goes with its recipe, jar, pack and altitude. Tell me which one you're making, and I'll give you its time and where it stands.",
    source: SOURCES.general,
  },
  explosion: {
    text: "A boiling-water canner holds no pressure. A pressure canner is safe with a clear vent and gasket, and a tested gauge. Never force it open: let it fall to zero by itself.",
    source: SOURCES.general,
  },
  "old-jar": {
    text: `Canned food is best within ${daysWords(BEST_BY_DAYS)}, and a sealed, well-processed jar doesn't turn unsafe on that day. Look at the lid and the liquid first. If it bulges, leaks, spurts or smells off, don't taste it.`,
    source: SOURCES.general,
  },
  "old-lids": {
    text: "Flat lids are used once: a second time they may not seal. Bands can be used again if they aren't rusty or bent.",
    source: SOURCES.general,
  },
  rust: {
    text: "A rusty band goes; it may hold a bad lid down. Rust through a lid, or under it at the rim, and the jar isn't to be trusted.",
    source: null,
  },
  "old-recipe": {
    text: "Only if it was tested: many old or handed-on recipes have too short a time, or too little acid. Use a current tested one, and keep the old one for the refrigerator.",
    source: SOURCES.general,
  },
  oven: {
    text: "No: jars aren't processed in an oven, a microwave or a dishwasher. They heat unevenly and may burst. Use a canner.",
    source: null,
  },
  "open-kettle": {
    text: "No: hot food in a hot jar, or a jar turned over, may seal but isn't processed. Put it through the canner for its tested time.",
    source: SOURCES.general,
  },
  "power-cut": {
    text: `Back within ${OFF_PROCESS_HOURS} hours: bring it up again, and start the whole time over. Longer than that, don't process it again, and throw low-acid food out. Leave a pressure canner shut until it's at zero.`,
    source: SOURCES.nebraska,
  },
  "freezer-power-cut": {
    text: "Shut, a full freezer keeps two days and a half-full one a day; a refrigerator four hours. What still has ice crystals may be frozen again.",
    source: "FoodSafety.gov",
  },
  "garlic-in-oil": {
    text: `Don't can garlic or herbs in oil. Keep it in the refrigerator for at most ${numberWords(IN_OIL_DAYS)} days, or freeze it.`,
    source: SOURCES.center,
  },
  "blue-garlic": {
    text: "Garlic can turn blue or green in acid. It looks odd, and it's harmless.",
    source: null,
  },
  animals: {
    text: "No: what isn't safe for you isn't for animals either. Bag it, and put it where no person or animal gets at it.",
    source: SOURCES.general,
  },
  touched: {
    text: "Wash your hands well with soap and water, and put what wiped it up in the trash. Clean what it touched with bleach and water. If you feel odd, see a doctor at once.",
    source: SOURCES.general,
  },
  "jars-waiting": {
    text: `No source prints a limit, so fill only one load at a time and load it at once. Past ${OFF_PROCESS_HOURS} hours between warm and hot, it's not to be trusted.`,
    source: "the two-hour rule of the USDA Food Safety and Inspection Service",
  },
  chipped: {
    text: "Don't use a jar with a chip or a crack: it may not seal, or may break in the canner. Put that one by for dry things.",
    source: SOURCES.general,
  },
  "broken-jar": {
    text: "Throw out that jar's food and all its glass. In a shut pressure canner leave it until the end. The others stay only if you find no glass on them, no chips, and they seal.",
    source: null,
  },
  altitude: {
    text: "Look up your town's elevation on a map, or ask your extension office; if it's between two, take the higher. Then say: we're at so many feet.",
    source: SOURCES.general,
  },
  "pressure-canner": {
    text: "Vegetables, meat, fish and soups need a pressure canner; boiling water isn't hot enough for them. Fruit, jams and pickles by tested recipes don't.",
    source: SOURCES.general,
  },
  "home-vinegar": {
    text: `Only vinegar of ${VINEGAR_PERCENT} percent by its label is safe for pickles here. Home-made vinegar may be weaker, and nobody knows by how much.`,
    source: SOURCES.pickles,
  },
  "boil-before-eating": {
    text: "Low-acid food that may not have been canned by the rules: don't eat it. Boiling ten minutes, and a minute more each thousand feet, kills the toxin; it's no cure for a spoiled jar.",
    source: SOURCES.general,
  },
};
