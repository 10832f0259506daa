/** Answers as a batch begins: what to expect, and what its time rests on. */

import type { GuideAnswer } from "../kitchen/events.ts";
import { brewStages } from "../kitchen/jars/brews.ts";
import { batchOfLot, findLot, jarsExpected, readyOf, weightLb } from "../kitchen/jars/lots.ts";
import { isUncompared } from "../kitchen/questions/guide.ts";
import { batchName, calledLot, lotName, potOf, upper } from "../kitchen/spoken-names.ts";
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

/** A further lot in the pots of a batch. */
export function addedSentence({ state }: Told, id: string): string {
  const found = findLot(state, id);
  if (!found) return "";
  const pounds = weightLb(found.batch);
  const all = pounds === null ? "" : `: ${countWords(pounds, "pound")} in all`;
  return `${upper(calledLot(state, found))} with them${all}.`;
}

/** Another potful of brine or syrup; what to make of it is said as its stage begins. */
export function newBrewSentence({ state }: Told, id: string): string {
  const batch = state.batches[id];
  const [run] = batch ? brewStages(batch) : [];
  return run ? `A new pot of ${potOf(run)}; the log keeps its jars apart.` : "";
}

/** One lot of a batch is given up. */
export function givenUpSentence({ before }: Told, id: string): string {
  const found = findLot(before, id);
  return found ? `${upper(lotName(found))} is given up. The rest goes on.` : "";
}

/** Says which lot is taken up again, and the jars it has. */
export function takenUpSentence({ state }: Told, id: string): string {
  const found = findLot(state, id);
  if (!found) return "";
  const jars = readyOf(found.lot).length;
  const filled = jars > 0 ? ` ${upper(countWords(jars, "jar"))} of it filled.` : "";
  return `${upper(lotName(found))} goes on.${filled}`;
}

/** Describes a batch after something about it was changed. */
export function changedSentence({ state, before }: Told, id: string): string {
  const batch = batchOfLot(state, id);
  const was = batchOfLot(before, id);
  if (!batch || !was) return "";
  const { jar, terms } = batch;
  const pounds = weightLb(batch);
  const expected = jarsExpected(batch);
  const weight = pounds === weightLb(was) ? "" : ` ${countWords(pounds ?? 0, "pound")}.`;
  const jars = expected && jar ? ` Expect about ${expected} ${jar}s.` : "";
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
