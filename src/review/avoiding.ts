import { COOL_HOURS } from "../reckon/trade-numbers.ts";

// data table
const { min, max } = COOL_HOURS;

/** How to avoid a deviation, by its code, in one sentence. */
export const AVOIDING: Readonly<Record<string, string>> = {
  "rest-short": "Start the rest earlier, or plan the canner for later.",
  "rest-long": "Plan the next step for the end of the rest, or begin the rest later.",
  "boil-lost": "Keep the heat high enough for a full boil, and a lid on the pot.",
  "pressure-lost": "Stay by the canner and turn the heat in small steps.",
  "temperature-lost": "Read the thermometer more often and turn the heat in small steps.",
  "temperature-high": "Turn the heat down as soon as the reading nears the top of its range.",
  "process-restarted": "The lost time was done again in full; keep the heat steady from the start.",
  "process-short": "Leave the jars in until the whole time is full.",
  "process-long": "Lift the jars out when the time is up: longer softens the food.",
  unwatched: "Keep the program open and the machine awake while a process runs.",
  "written-late": "Report it when it happens.",
  skipped: "Say why a step is left out, or follow the recipe.",
  headspace: "Measure the headspace of each jar before the lid goes on.",
  "jar-count": "Count the jars into the canner, out of it, and at the seal check.",
  "cool-short": `Leave the jars alone for ${min} hours before the seals are checked.`,
  "seal-check-late": `Check the seals ${min} to ${max} hours after the jars come out.`,
  "seal-failed": "New lids, clean rims, the right headspace, bands only fingertip tight.",
  "critical-unrecorded": "Answer each question of the recipe when it is asked.",
  "water-low": "Begin with more hot water over the lids, and keep a kettle hot.",
  "gauge-untested": "Have the dial gauge tested before the season.",
  "ingredient-changed": "Keep to the tested recipe's ingredients and proportions.",
  "altitude-doubt":
    "Set the altitude once, from a map, and check the thermometer in boiling water.",
  "altitude-raised": "Set the altitude once, from a map, before the canner is lit.",
  waited: "Fill only what the canner takes at once, and keep the rest of the food hot.",
  "clock-changed": "Leave the machine's clock alone on canning days.",
  "log-not-written": "Keep enough room on the disk.",
};
