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
    source: GUIDE_6,
  },
  {
    id: "bottled-juice",
    ask: "Is the lemon or lime juice bottled, and not key lime?",
    source: "National Center for Home Food Preservation, choice salsa",
  },
  {
    id: "acid-in-every-jar",
    ask: "Did every jar get its acid?",
    source: GUIDE_3,
  },
  {
    id: "sterile-jars",
    ask: "Were the empty jars boiled to sterilize them?",
    onlyFor: { methods: ["boiling-water", "steam"], processUnderMinutes: 10 },
    source: GUIDE_1,
  },
  {
    id: "hot-pack-hot",
    ask: "Did it all go into the jars hot, straight off the boil?",
    onlyFor: { packs: ["hot"] },
    source: GUIDE_1,
  },
  {
    id: "headspace",
    ask: "Was the headspace checked in every jar?",
    source: GUIDE_1,
  },
  {
    id: "new-lids",
    ask: "Are the lids new?",
    source: GUIDE_1,
  },
  {
    id: "sound-ferment",
    ask: "Is the ferment sound: no slime, no mold below the surface, no bad smell?",
    source: GUIDE_6,
  },
  {
    id: "full-salt",
    ask: "Is all the salt in, pure canning salt, by the recipe's measure?",
    source: GUIDE_6,
  },
];
