/** Answers to what is set of the kitchen, in the talk of a first opening and later. */

import type { FactOf } from "../kitchen/events.ts";
import { isNeeded } from "../kitchen/questions/set-up.ts";
import type { SetUpTopic } from "../kitchen/questions/set-up-topic.ts";
import { usualHolds } from "../kitchen/spoken-names.ts";
import { wallOf } from "../kitchen/state.ts";
import { instantOf, localFields } from "../kitchen/time.ts";
import { clockWords } from "./spoken-time.ts";
import type { Told } from "./told.ts";

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

/** A question that stays open: a guess, or what was needed was left once more. */
export function leftOpenSentence({ key }: FactOf<"left-open">): string {
  if (!isNeeded(key)) return "Then that stays open.";
  return `Later, then. Until then I take ${usualHolds("or")}.`;
}

/** What was set that has no sentence of its own. */
export function kitchenSentence(told: Told, fact: FactOf<"kitchen-set">): string {
  const { canners, units } = fact;
  const manner = mannerSentence(told, fact);
  if (manner !== undefined) return manner;
  if (units)
    return units === "metric" ? "Kilograms and Celsius it is." : "Pounds and Fahrenheit it is.";
  const holds = Object.entries(canners?.[0]?.holds ?? {});
  if (holds.length === 0) return "Changed.";
  const sizes = holds.map(([size, count]) => `${count} ${size.replace("-", " ")}s`);
  return `It holds ${sizes.join(" or ")}.`;
}

/** What was set of how much is said, and when. */
function mannerSentence(told: Told, fact: FactOf<"kitchen-set">): string | undefined {
  const { talk, quiet, awakeUntil } = fact;
  if (talk === "short") return "Short from now on. Say more to hear the rest.";
  if (talk === "whole") return "From now on I say it all, the first time of a day.";
  if (awakeUntil !== undefined) return "No quiet hours tonight.";
  if (quiet === null) return "No quiet hours: I speak up at any hour.";
  if (quiet === undefined) return undefined;
  const clock = (minute: number) => clockOfDay(told, minute);
  return `Quiet from ${clock(quiet.fromMinute)} to ${clock(quiet.toMinute)}.`;
}

/** "half past nine", of a minute of the day. */
function clockOfDay({ state, now }: Told, minute: number): string {
  const { zone } = state;
  const time = { hour: Math.floor(minute / 60) % 24, minute: minute % 60, second: 0 };
  return clockWords(instantOf({ ...localFields(wallOf(state, now), zone), ...time }, zone), zone);
}
