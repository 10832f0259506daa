// data table
import type { CriticalFactor } from "./recipe.ts";

/**
 * What must be right for a jar to be safe and only the cook can see. Recipes point here by id
 * from the stage where each is asked. A factor a recipe needs and this list has not may be
 * written in the recipe's own file.
 */

const GUIDE_1 = "USDA Complete Guide to Home Canning, Guide 1";
const GUIDE_3 = "USDA Complete Guide to Home Canning, Guide 3";
const GUIDE_6 = "USDA Complete Guide to Home Canning, Guide 6";

export const CRITICAL_FACTORS: CriticalFactor[] = [
  {
    id: "vinegar-5-percent",
    ask: "Is the vinegar store-bought and labeled 5 percent?",
    words: ["five percent", "5 percent", "5%", "labeled five"],
    source: GUIDE_6,
  },
  {
    id: "bottled-juice",
    ask: "Is the lemon or lime juice bottled, and not key lime?",
    words: ["bottled juice", "bottled lemon", "bottled lime", "juice is bottled"],
    source: "National Center for Home Food Preservation, choice salsa",
  },
  {
    id: "acid-in-every-jar",
    ask: "Did every jar get its acid?",
    words: ["acid in every jar", "lemon juice in every jar", "citric acid in every jar"],
    source: GUIDE_3,
  },
  {
    id: "sterile-jars",
    ask: "Were the empty jars boiled to sterilize them?",
    words: ["jars are sterile", "sterile jars", "boiled the jars", "jars were boiled"],
    onlyFor: { methods: ["boiling-water", "steam"], processUnderMinutes: 10 },
    source: GUIDE_1,
  },
  {
    id: "hot-pack-hot",
    ask: "Did it all go into the jars hot, straight off the boil?",
    words: ["packed hot", "filled hot", "went in hot", "still boiling when filled"],
    onlyFor: { packs: ["hot"] },
    source: GUIDE_1,
  },
  {
    id: "headspace",
    ask: "Was the headspace checked in every jar?",
    words: ["headspace checked", "headspace is right", "headspace is good"],
    source: GUIDE_1,
  },
  {
    id: "new-lids",
    ask: "Are the lids new?",
    words: ["new lids", "lids are new", "fresh lids"],
    source: GUIDE_1,
  },
  {
    id: "sound-ferment",
    ask: "Is the ferment sound: no slime, no mold below the surface, no bad smell?",
    words: ["ferment is sound", "smells clean", "no slime", "smells good and sour"],
    source: GUIDE_6,
  },
  {
    id: "full-salt",
    ask: "Is all the salt in, pure canning salt, by the recipe's measure?",
    words: ["all the salt", "canning salt", "salt is in", "salt weighed"],
    source: GUIDE_6,
  },
];
