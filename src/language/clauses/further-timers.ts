/**
 * Timers that leave out what was said of the one before: "and another one of twenty-five for the
 * biscuits", "one for the bread for forty", "and the same for the corn".
 */
import type { Command } from "../../kitchen/command.ts";
import { BESIDE } from "../beside-words.ts";
import type { Context } from "../context.ts";
import { wordSet } from "../grammar/word-set.ts";
import { durationsAt } from "../values/durations.ts";
import { finishSlots } from "../values/finish-slots.ts";
import { labelsAt } from "../values/open-slots.ts";
import { numbersAt, type Parsed } from "../values/spoken-numbers.ts";
import type { Utterance, Word } from "../words.ts";

/** Words beside a length and a label that change neither. */
const AROUND = wordSet(
  "and then also set start put give me make do another one ones a an the timer of at for on in to",
  "please too minutes minute second",
);
/** No timer longer than this is set by a bare number, minutes. */
const MOST_BARE_MINUTES = 180;

/** A length of time, or a bare number of minutes; "one" alone stands for a timer. */
function lengthAt(words: readonly Word[], at: number): Parsed<number> | undefined {
  const [length] = durationsAt(words, at);
  if (length) return length;
  const [number] = words[at]?.word === "one" ? [] : numbersAt(words, at);
  return number && number.value > 0 && number.value <= MOST_BARE_MINUTES ? number : undefined;
}

/** "For the biscuits", "a sauce one". */
function labelAt(words: readonly Word[], at: number): Parsed<string> | undefined {
  const word = (place: number) => words[place]?.word ?? "";
  if (/^(for|on)$/.test(word(at))) return labelsAt(words, at + 1).at(-1);
  const [first] = labelsAt(words, at);
  const thing = first && !AROUND.has(word(at)) && /^(one|timer)$/.test(word(first.next));
  return thing ? first : undefined;
}

/**
 * The timer that a clause sets after one that was just set; undefined where it says something else.
 */
export function furtherTimer(
  clause: Utterance,
  before: Command | undefined,
  context: Context,
): Command | undefined {
  if (before?.intent !== "timer-set" || clause.asked) return undefined;
  const { words } = clause;
  let minutes: number | undefined;
  let label: string | undefined;
  for (let at = 0; at < words.length; ) {
    const length = minutes === undefined ? lengthAt(words, at) : undefined;
    const named = label === undefined ? labelAt(words, at) : undefined;
    const word = words[at]?.word ?? "";
    if (length) minutes = length.value;
    else if (named) label = named.value;
    else if (word === "same") minutes ??= before.slots.minutes;
    else if (!AROUND.has(word)) return undefined;
    at = length?.next ?? named?.next ?? at + 1;
  }
  if (minutes === undefined) return undefined;
  return finishSlots("timer-set", { minutes, ...(label ? { label } : {}) }, 1, clause, context);
}

const MOST_LABEL_WORDS = 2;

/** The timer before, with its label where a clause is nothing else: "nine minutes, pasta". */
export function withLabel({ words, text }: Utterance, before: Command | undefined) {
  if (before?.intent !== "timer-set" || before.slots.label !== undefined) return undefined;
  const label = labelsAt(words, 0).find(({ next }) => next === words.length)?.value;
  const capital = /\p{Lu}/u.test(text[words[0]?.start ?? 0] ?? "");
  const said = words.some(({ word }) => BESIDE.has(word)) || capital;
  if (label === undefined || said || words.length > MOST_LABEL_WORDS) return undefined;
  return { ...before, slots: { ...before.slots, label } };
}
