// data table
import { countWords } from "../reckon/number-words.ts";
import {
  OFF_PROCESS_HOURS,
  STERILE_BELOW_MINUTES,
  VINEGAR_PERCENT,
} from "../reckon/trade-numbers.ts";
import type { CriticalFactor } from "./recipe.ts";

/**
 * What must be right for a jar to be safe and only the cook can see. Recipes point here by id from
 * the stage where each is asked. A factor that is missing here may be written in the recipe's own
 * file.
 */

const GUIDE_1 = "USDA Complete Guide to Home Canning, Guide 1";
const GUIDE_3 = "USDA Complete Guide to Home Canning, Guide 3";
const GUIDE_6 = "USDA Complete Guide to Home Canning, Guide 6";

const COLD = "Keep those jars in the refrigerator.";

/** The two hours are those given for a mistake in the process (University of Nebraska-Lincoln). */
const LATER =
  `Out of the canner for less than ${countWords(OFF_PROCESS_HOURS, "hour")}: ` +
  "put those jars in the refrigerator now. " +
  "Longer: they are not safe to eat; throw them out untasted.";
const SEAL = "The seal may not last: keep those jars in the refrigerator and eat them first.";

const factor = <const Id extends string>(declared: CriticalFactor & { id: Id }) => declared;

export const CRITICAL_FACTORS = [
  factor({
    id: "vinegar-5-percent",
    ask: "What percent is the vinegar?",
    shared: true,
    answer: { type: "percent", least: VINEGAR_PERCENT },
    otherwise:
      `The recipe was tested with ${VINEGAR_PERCENT} percent: make the brine again with that ` +
      "before you fill, or keep those jars in the refrigerator.",
    later: LATER,
    source: GUIDE_6,
  }),
  factor({
    id: "bottled-juice",
    ask: "Lemon or lime juice: bottled or fresh?",
    answer: {
      type: "choice",
      right: ["bottled"],
      wrong: ["fresh", "squeezed", "fresh squeezed", "key lime"],
    },
    otherwise: `Its acid varies and was not tested. ${COLD}`,
    later: LATER,
    source: "National Center for Home Food Preservation, choice salsa",
  }),
  factor({
    id: "acid-in-every-jar",
    ask: "Acid: in every jar or only in some?",
    answer: {
      type: "choice",
      right: ["in every jar", "all"],
      wrong: ["only in some", "some", "none", "in none"],
    },
    otherwise:
      "Open each jar and put its acid in before it goes into the canner; else keep it in the " +
      "refrigerator.",
    later: LATER,
    source: GUIDE_3,
  }),
  factor({
    id: "sterile-jars",
    ask: "Empty jars: sterilized or only washed?",
    answer: {
      type: "choice",
      right: ["sterilized", "sterile", "boiled"],
      wrong: ["only washed", "washed", "rinsed", "not sterilized", "not boiled"],
    },
    otherwise: `A process under ${STERILE_BELOW_MINUTES} minutes wants sterile jars. ${COLD}`,
    later: LATER,
    onlyFor: { methods: ["boiling-water", "steam"], processUnderMinutes: STERILE_BELOW_MINUTES },
    source: GUIDE_1,
  }),
  factor({
    id: "hot-pack-hot",
    ask: "Packed hot off the boil, or cooled?",
    askShort: "Packed hot or cooled?",
    answer: {
      type: "choice",
      right: ["hot off the boil", "hot", "boiling", "straight from the pot", "still bubbling"],
      wrong: ["cooled", "cold", "warm", "lukewarm", "raw"],
    },
    otherwise:
      "The time was tested for food packed hot: heat it up and fill again, " +
      "or keep those jars in the refrigerator.",
    later: LATER,
    onlyFor: { packs: ["hot"] },
    source: GUIDE_1,
  }),
  factor({
    id: "headspace",
    ask: "How much headspace?",
    answer: { type: "inches" },
    otherwise: "Put it right before the jars go in; otherwise keep them in the refrigerator.",
    later: SEAL,
    source: GUIDE_1,
  }),
  factor({
    id: "new-lids",
    ask: "Lids: new or used?",
    answer: { type: "choice", right: ["new"], wrong: ["used", "old", "reused"] },
    otherwise: "Put on new lids before the jars go in, or keep them in the refrigerator.",
    later: SEAL,
    source: GUIDE_1,
  }),
  factor({
    id: "sound-ferment",
    ask: "The ferment: sound, or with slime, mold below the surface or a bad smell?",
    answer: {
      type: "choice",
      right: ["sound", "clean and sour", "sour and clean", "clean"],
      wrong: ["slime", "slimy", "mold", "moldy", "a bad smell", "smells bad"],
    },
    otherwise: "Throw it out.",
    source: GUIDE_6,
  }),
  factor({
    id: "full-salt",
    ask: "The salt: all by the recipe or less?",
    answer: {
      type: "choice",
      right: ["all by the recipe", "all", "all in", "all of it", "the lot", "every grain"],
      wrong: ["less", "half", "not all"],
    },
    otherwise: "With less salt a ferment is not safe: put in the rest now, or throw it out.",
    source: GUIDE_6,
  }),
];

export type FactorId = (typeof CRITICAL_FACTORS)[number]["id"];
