/**
 * What of a wrong world the program is held to today, and what it cannot know or does not yet take
 * up: each with the reason. A gap that is closed moves from the second list to the first.
 */
import type { Topic } from "./wordings.ts";

/** No jar of these is as-tested unless somebody said falsely that it was right. */
export const HELD: readonly Topic[] = ["boil", "cover", "headspace", "sterile", "vinegar"];

export const KNOWN_GAPS: Partial<Record<Topic, string>> = {
  acid: "acid that is remembered after a yes does not reopen the answer",
  altitude: "an altitude corrected in passing, or after the day, does not reach the verdict",
  cold: "a pot that went cold is not asked about again, and its words are not understood",
  early: "heat taken off under pressure before the time is not understood, nor asked about",
  food: "what is said to go in is not held against the foods that were tested",
  forced: "a pressure process ends without a question",
  gauge: "a dial that was never tested leaves the verdict as it is",
  lids: "an answer that is taken back stays as it was",
  pressure: "a pressure process ends without a question",
  stood: "filled jars may stand for any time before they go in",
  vent: "a vent that is said to be too short is not understood",
};
