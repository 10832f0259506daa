/** Answers in the talk of a first opening. */
import type { FactOf } from "../kitchen/events.ts";
import type { SetUpTopic } from "../kitchen/set-up-topic.ts";

/** What a topic is needed for, said where it is left for later. */
const NEEDED: Record<SetUpTopic, string> = {
  altitude: "I'll ask when a batch goes into a canner: the process time depends on it.",
  canner: "I'll ask when a batch is to go into it.",
  gauge: "I'll ask with the first batch for a pressure canner.",
  units: "Until then it is pounds and Fahrenheit.",
  voice: "If you hear nothing, brinebell soundcheck says why.",
};

export function setUpSentence({ topic, became, yes }: FactOf<"set-up">): string {
  if (became === "left") return `Later, then. ${NEEDED[topic]}`;
  if (became === "open") return "";
  if (topic !== "voice") return "Noted.";
  const begin = "That is all. Say what you want to make.";
  return yes
    ? `Good. ${begin}`
    : `Then read along: brinebell soundcheck says what is wrong. ${begin}`;
}

/** What was set that has no sentence of its own. */
export function kitchenSentence({ canners, units }: FactOf<"kitchen-set">): string {
  if (units)
    return units === "metric" ? "Kilograms and Celsius it is." : "Pounds and Fahrenheit it is.";
  const holds = Object.entries(canners?.[0]?.holds ?? {});
  if (holds.length === 0) return "Changed.";
  const sizes = holds.map(([size, count]) => `${count} ${size.replace("-", " ")}s`);
  return `It holds ${sizes.join(" or ")}.`;
}
