/**
 * Words that a yes has given a meaning: in the same moment they have it again, with the values
 * found anew. A memory stands for that yes and for no more: what raises or clears a doubt, and what
 * sets how many jars, their size, a strength or a gauge, is asked about each time.
 */
import type { Command } from "../kitchen/command.ts";
import { type OwnWords, type Saying, sameWords } from "../kitchen/own-words.ts";
import type { Hearing } from "./clauses/clause-facts.ts";
import type { Context } from "./context.ts";
import { isStopped, namesSomebody } from "./frames.ts";
import { isIntent, MEANINGS } from "./intents/all.ts";
import { MOST_GUESSED, situationOf } from "./weighing.ts";
import { textOf, type Utterance, utteranceOf } from "./words.ts";

/** Kinds of slots that say how many jars, of which size, or at which pressure. */
const GUARDED: ReadonlySet<string> = new Set(["count", "numbers", "size", "gauge"]);

/** Whether a yes to this may stand for the next time, by the declaration of its meaning. */
export function mayBeLearned({ intent, slots, confirms = [] }: Command): boolean {
  const { cost, plainly, answer, slots: kinds } = MEANINGS[intent];
  if (intent === "unknown" || plainly || answer || confirms.length > 0) return false;
  if (cost === "raising" || cost === "clearing") return false;
  const declared: Readonly<Record<string, string>> = kinds;
  return !Object.keys(slots).some((slot) => GUARDED.has(declared[slot] ?? ""));
}

/** Words as they are remembered, with their moment; undefined where some were left unread. */
function sayingOf(text: string, context: Context): Saying | undefined {
  const { words, asked, cut } = utteranceOf(text);
  if (cut || words.length === 0) return undefined;
  const { stages, question = null } = situationOf(context);
  const said = textOf(words);
  return { words: asked ? `${said}?` : said, stages: [...stages], question };
}

/** What a yes to this reading of the words teaches; undefined where it teaches nothing. */
export function learnable(
  text: string,
  command: Command,
  context: Context,
): Omit<OwnWords, "at"> | undefined {
  if (!mayBeLearned(command) || namesSomebody(utteranceOf(text), command)) return undefined;
  const saying = sayingOf(text, context);
  return saying && { ...saying, intent: command.intent };
}

export type Recalled = { command: Command; memory: OwnWords };

/**
 * What the words were learned to mean in this moment, `said` being the same with corrections put
 * right; undefined where without a memory they would
 * be asked about for something that raises or clears a doubt.
 */
export function recalled(
  text: string,
  said: Utterance,
  anew: { reading: "sure" | "ask" | "unknown"; candidates: readonly Command[] },
  hearing: Hearing,
): Recalled | undefined {
  const { context } = hearing;
  const { ownWords = [] } = context;
  const saying = ownWords.length > 0 ? sayingOf(text, context) : undefined;
  const memory = saying && ownWords.find((one) => sameWords(one, saying));
  if (!memory || !isIntent(memory.intent)) return undefined;
  const asked = anew.reading === "ask" ? anew.candidates[0] : undefined;
  if (asked && !mayBeLearned(asked)) return undefined;
  const intent = memory.intent;
  const command = asked?.intent === intent ? asked : hearing.command(intent, MOST_GUESSED, said);
  if (!command || !mayBeLearned(command)) return undefined;
  if (isStopped(command, said, { whole: false }) || namesSomebody(said, command)) return undefined;
  return { command, memory };
}
