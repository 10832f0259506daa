/** "Is it safe", "are you sure": from what runs where that tells, else from the rules. */
import type { CommandOf } from "../../kitchen/command.ts";
import { batchName } from "../../kitchen/names.ts";
import type { State } from "../../kitchen/state.ts";
import { withCommas } from "../../reckon/reckoned.ts";
import { ASK_EXTENSION, withSource } from "../texts/own-text.ts";
import { SAFETY } from "../texts/safety.ts";
import { batchInMind } from "./in-mind.ts";

/** The tested time of what is being made, with where it stands. */
function processTime(state: State): string | undefined {
  const batch = batchInMind(state, undefined);
  const terms = batch?.terms;
  if (!batch || !terms) return undefined;
  const { minutes, jar, altitudeFt, pressurePsi, source } = terms;
  const pounds = pressurePsi ? ` at ${pressurePsi} pounds` : "";
  const feet = withCommas(altitudeFt);
  const where = `in ${jar}s at ${feet} feet`;
  return `Yes: ${minutes} minutes${pounds} for ${batchName(batch)}, ${where}. By ${source}.`;
}

export function safetyAnswer(state: State, { slots }: CommandOf<"is-safe">): string {
  const { topic } = slots;
  if (topic === undefined) return `${ASK_EXTENSION} Until you know, don't eat it.`;
  const known = topic === "process-time" ? processTime(state) : undefined;
  return known ?? withSource(SAFETY[topic]);
}
