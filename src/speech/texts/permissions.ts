// data table
/** What may be done otherwise than a recipe says: what the rules answer, whatever the moment. */
import type { Act } from "../../kitchen/topics.ts";
import { countWords, inchesWords } from "../../reckon/number-words.ts";
import {
  COOLING_APART_IN,
  REPROCESS_WITHIN_HOURS,
  VENT_MINUTES,
  VINEGAR_PERCENT,
} from "../../reckon/trade-numbers.ts";
import { SAFETY } from "./fears.ts";
import { type OwnText, SOURCES } from "./own-text.ts";
import { SHORTAGES } from "./shortages.ts";

/** What hangs on the clocks is answered from them instead. */
export type ClockAct = "heat-off" | "open" | "take-out" | "stop" | "begin" | "leave";

export const PERMISSIONS: Readonly<Record<Exclude<Act, ClockAct>, OwnText>> = {
  "start-over": SAFETY["power-cut"],
  reprocess: {
    text: `Within ${REPROCESS_WITHIN_HOURS} hours, yes: empty the jar, heat the food to a boil, clean hot jar, new lid, and the whole hot-pack time. After that, throw it out.`,
    source: SOURCES.general,
  },
  tighten: {
    text: "No: leave the bands alone once the jars are out. Tightening them hot can break the seal that's forming.",
    source: SOURCES.general,
  },
  "turn-over": {
    text: "No: leave jars upright and still until they're cold. Turning them over processes nothing, and can break the seal.",
    source: SOURCES.general,
  },
  "reuse-lids": SAFETY["old-lids"],
  "boil-lids": {
    text: "Wash them, and do what their box says. Most lids today need no boiling.",
    source: null,
  },
  double: {
    text: "Pickles, fruit and tomatoes: yes, with everything doubled together. Jam and jelly without added pectin: no, a double pot may not set; make one pot after the other.",
    source: SOURCES.jams,
  },
  "less-sugar": SHORTAGES.sugar,
  "less-salt": {
    text: "Where salt only seasons, as in canned vegetables, meat and fresh-pack pickles: yes. In a ferment, no: salt makes it safe.",
    source: SOURCES.pickles,
  },
  "less-acid": {
    text: "No. Vinegar, lemon juice and citric acid are what makes it safe. A spoon of sugar takes off the sharpness, without taking out any acid.",
    source: SOURCES.pickles,
  },
  "more-low-acid": {
    text: "No: more onion, pepper, garlic or another vegetable thins the acid, and that wasn't tested. Less of them is safe.",
    source: SOURCES.pickles,
  },
  thicken: {
    text: "No: flour, starch, rice, noodles, butter or cream keep the heat from getting through. Add them when you open the jar.",
    source: SOURCES.general,
  },
  spices: {
    text: "Dry spices and dried herbs, yes: they only season. Fresh garlic, peppers or herbs beyond the recipe, no.",
    source: null,
  },
  "fresh-lemon": {
    text: "No: use bottled lemon or lime juice. Its strength is always the same, and a fresh fruit's isn't known.",
    source: SOURCES.tomatoes,
  },
  "other-vinegar": {
    text: `Any vinegar will do whose label says ${VINEGAR_PERCENT} percent or more, white or cider. Not a weaker one, and not a home-made one.`,
    source: SOURCES.pickles,
  },
  "bigger-jar": {
    text: "No: a larger jar than was tested takes longer to heat through, and nobody knows how long.",
    source: SOURCES.general,
  },
  "smaller-jar": {
    text: "Yes: a smaller canning jar takes the time of the next larger one that was tested.",
    source: null,
  },
  "other-jars": {
    text: "Canning jars with new two-piece lids are what was tested. Jars from the store may break or not seal, and never go in a pressure canner.",
    source: SOURCES.general,
  },
  "table-salt": SHORTAGES["canning-salt"],
  stack: {
    text: `Once they're cold and sealed, with the bands off, on their own layer each. While they cool they stand ${inchesWords(COOLING_APART_IN)} apart.`,
    source: null,
  },
  "skip-vent": {
    text: `No: air left in the canner makes it cooler than the gauge says. It takes ${countWords(VENT_MINUTES, "minute")} of steady steam first, every time.`,
    source: SOURCES.general,
  },
  "lid-on": {
    text: "On, while it heats and for the whole time. A pressure canner's lid is locked, and its vent stays open until it has steamed ten minutes.",
    source: SOURCES.general,
  },
  "add-jar": {
    text: "Not to a load that has begun: the whole time would start over. It goes in with the next load, or in the refrigerator.",
    source: null,
  },
  "water-low": {
    text: "Add boiling water until it stands an inch over the lids, with the heat high. If the boil stops, bring it back: the whole time starts over. Never open a pressure canner to look.",
    source: SOURCES.general,
  },
  "skip-process": SAFETY["open-kettle"],
  "skip-peel": {
    text: "Only where the recipe leaves the peel on. Skins carry most of the germs, and the times were tested as the recipe says.",
    source: null,
  },
  "force-cool": {
    text: "No: never cool a pressure canner with water or by opening the vent. Food can spoil, jars lose liquid, and the lid can buckle.",
    source: SOURCES.general,
  },
  "cold-water": {
    text: "No: add boiling water, poured around the jars and not on them. Cold water stops the boil, and can crack a jar.",
    source: SOURCES.general,
  },
  "bands-on": {
    text: "Better off: wash the jars and store them without bands. A band can rust on, or hide a lid that has let go.",
    source: SOURCES.general,
  },
  "top-up-jar": {
    text: "No: don't open a jar to fill it up. Sealed and under half gone it keeps; eat that one first.",
    source: SOURCES.center,
  },
  "overnight-in-canner": {
    text: "No: take them out when their wait is over. Slow cooling can spoil them, even sealed.",
    source: null,
  },
  "boil-instead-of-pressure": SHORTAGES["pressure-canner"],
  "tip-weight": {
    text: "No: leave the weight on until the gauge has fallen to zero by itself. Letting steam out pulls the liquid from the jars.",
    source: SOURCES.general,
  },
};
