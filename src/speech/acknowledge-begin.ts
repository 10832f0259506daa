/** Answers as a batch begins: what to expect, and what its time rests on. */
import type { GuideAnswer } from "../kitchen/events.ts";
import { isUncompared } from "../kitchen/questions/guide.ts";
import { batchName, upper } from "../kitchen/spoken-names.ts";
import { memoryNote } from "../recipe/process-table.ts";
import { countWords, numberWords } from "../reckon/number-words.ts";
import { opening } from "./prompts.ts";
import type { Told } from "./told.ts";

/** "The Provider dilly beans. Expect about 8 pints." Says so where its time is from memory. */
export function openingSentence({ state }: Told, id: string): string {
  const batch = state.batches[id];
  if (!batch) return "";
  const { terms } = batch;
  const note = isUncompared(state, terms) ? memoryNote(terms) : undefined;
  const memory = note ? ` ${upper(note)}. Until then its jars are not as tested.` : "";
  return `${opening(state, batch)}${memory}`;
}

/** Describes a batch after something about it was changed. */
export function changedSentence({ state, before }: Told, id: string): string {
  const batch = state.batches[id];
  const was = before.batches[id];
  if (!batch || !was) return "";
  const { lot, jar, terms, expectedJars } = batch;
  const weight =
    lot.weightLb === was.lot.weightLb ? "" : ` ${countWords(lot.weightLb ?? 0, "pound")}.`;
  const jars = expectedJars && jar ? ` Expect about ${expectedJars} ${jar}s.` : "";
  const longer = terms && terms.minutes !== was.terms?.minutes;
  const time = longer ? ` The tested time here is ${countWords(terms.minutes, "minute")}.` : "";
  return `${upper(batchName(batch))}.${weight}${jars}${time}`;
}

/** What the comparison with a person's own guide means for the batch. */
export function guideSentence(
  { jar, minutes, oursMinutes }: GuideAnswer,
  assumed: boolean,
): string {
  if (assumed) {
    return (
      `The time for ${jar}s here is from memory; ` +
      "this rehearsal takes it as compared with your guide."
    );
  }
  if (minutes === oursMinutes) return `The same as mine, ${numberWords(minutes)} minutes. Kept.`;
  const longer = Math.max(minutes, oursMinutes);
  return (
    `I have ${numberWords(oursMinutes)} minutes from memory. The longer time runs, ` +
    `${numberWords(longer)} minutes, and the jars are not as tested: ` +
    "ask your extension service which is right."
  );
}
