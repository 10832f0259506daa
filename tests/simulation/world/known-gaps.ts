/**
 * What of a wrong world the program is held to today, and what it cannot know or does not yet take
 * up: each with the reason. A gap that is closed moves from the second list to the first.
 */
import type { Topic } from "./wordings.ts";

/** No jar of these is as-tested unless somebody said falsely that it was right. */
export const HELD: readonly Topic[] = [
  "acid",
  "altitude",
  "boil",
  "cold",
  "cover",
  "headspace",
  "lids",
  "sterile",
  "vinegar",
];

/** Topics of which a wrong jar may still be as-tested without a false word. */
export const KNOWN_GAPS: Partial<Record<Topic, string>> = {
  early: "heat that is taken off before the time is not understood, nor asked about under pressure",
  food: "what is said to go in is not held against the foods that were tested",
  forced: "a pressure process ends without a question",
  gauge: "a dial that was never tested leaves the verdict as it is",
  pressure: "a pressure process ends without a question",
  stood: "filled jars may stand for any time before they go in",
  vent: "a pressure that is read while it vents is refused, and taken two minutes later",
};

/** Answers of any topic that leave a wrong jar as-tested and were no false plain word. */
export const KNOWN_EXCUSES = {
  "taken back": "a false answer that is taken back later stays as it was",
  hedged: "a hedged answer counts as a yes",
} as const;
