/** Commands of a moment, spoken to the grammar of that moment. */
import { understand } from "../../src/language/understand.ts";
import { readBack } from "../../src/session/dialogue.ts";
import { grammarNow, surenessOf } from "../../src/session/listening/listening.ts";
import type { Session } from "../../src/session/session.ts";
import type { Recognizer } from "../../src/voice/listening/recognizer.ts";
import { type Condition, WAKE_WORDS } from "./loop-bench.ts";
import { hearStream, type Said, type TrialResult } from "./stream-trial.ts";
import type { SyntheticVoice } from "./synthetic-voices.ts";

/** What words mean to this kitchen now: the intent with its slots. */
export function meaningIn(session: Session): (text: string) => string {
  const context = session.context();
  return (text) => {
    const { intent, slots } = understand(text, context);
    return `${intent} ${JSON.stringify(slots)}`;
  };
}

/** Every `step`-th sentence of all in all voices, beginning at `offset`. */
export function sentencesSaid(
  sentences: readonly string[],
  voices: readonly SyntheticVoice[],
  step: number,
  offset: number,
): Said[] {
  return voices
    .flatMap((voice) => sentences.map((command) => ({ voice, command })))
    .filter((_, index) => index % step === offset % step)
    .map(({ voice, command }) => ({
      text: command,
      command,
      voice: voice.name,
      samples: voice.speak(`${WAKE_WORDS.join(" ")}, ${command}`),
    }));
}

/** What came of the sentences said in one condition, over all moments. */
export type MomentCounts = {
  said: number;
  right: number;
  missed: number;
  /** Acted on at once though another thing was said; and of these, what changed the kitchen. */
  wrong: number;
  wrongChange: number;
  /** Right, but a yes was asked for. */
  readBack: number;
  audioMs: number;
  computeMs: number;
  delaysMs: number[];
  /** Every error in words. */
  errors: string[];
};

export function noCounts(): MomentCounts {
  return {
    said: 0,
    right: 0,
    missed: 0,
    wrong: 0,
    wrongChange: 0,
    readBack: 0,
    audioMs: 0,
    computeMs: 0,
    delaysMs: [],
    errors: [],
  };
}

/** Speaks to a kitchen and adds what came of it to the counts. */
export function hearMoment(
  session: Session,
  recognizer: Recognizer,
  said: readonly Said[],
  { kind, snrDb }: Pick<Condition, "kind" | "snrDb">,
  seed: number,
  into: MomentCounts,
): void {
  const result = hearStream({
    recognizer,
    grammar: grammarNow(session),
    said,
    kind,
    snrDb,
    seed,
    withWakeWords: true,
    means: meaningIn(session),
    sureness: (heard) => surenessOf(session, heard),
  });
  count(session, result, into);
}

function count(session: Session, result: TrialResult, into: MomentCounts): void {
  const context = session.context();
  into.said += result.commands;
  into.right += result.right;
  into.missed += result.missed.length;
  into.audioMs += result.audioMs;
  into.computeMs += result.computeMs;
  into.delaysMs.push(...result.delaysMs);
  into.errors.push(...result.missed.map((said) => `missed ${said}`));
  for (const { said, heard, right, confidence } of result.sure) {
    const command = understand(heard, context);
    const asked = readBack(command, heard, confidence) !== undefined;
    const changes = readBack(command, heard, 0) !== undefined;
    if (right && asked) into.readBack += 1;
    if (right || command.intent === "unknown") continue;
    into.errors.push(`${asked ? "asked" : "wrong"} ${said} -> ${heard} ${confidence.toFixed(2)}`);
    if (asked) continue;
    into.wrong += 1;
    if (changes) into.wrongChange += 1;
  }
}
