/** Commands of a moment, spoken to the grammar of that moment. */

import { understand } from "../../src/language/understand.ts";
import { contextOf, readBack } from "../../src/session/dialogue.ts";
import { grammarNow, surenessOf } from "../../src/session/listening.ts";
import type { Session } from "../../src/session/session.ts";
import type { Recogniser } from "../../src/voice/recogniser.ts";
import { type Condition, WAKE_WORDS } from "./loop-bench.ts";
import { hearStream, type Said, type TrialResult } from "./stream-trial.ts";
import type { SyntheticVoice } from "./synthetic-voices.ts";

/** What words mean to this kitchen now: the intent with its slots. */
export function meaningIn(session: Session): (text: string) => string {
  const context = contextOf(session.state, session.now(), session.names, session.waitingFor);
  return (text) => {
    const { intent, slots } = understand(text, context);
    return `${intent} ${JSON.stringify(slots)}`;
  };
}

/** Every `step`-th sentence in every voice, beginning at `offset`. */
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

export function hearMoment(
  session: Session,
  recogniser: Recogniser,
  said: readonly Said[],
  { kind, snrDb }: Pick<Condition, "kind" | "snrDb">,
  seed: number,
): TrialResult {
  return hearStream({
    recogniser,
    grammar: grammarNow(session),
    said,
    kind,
    snrDb,
    seed,
    withWakeWords: true,
    means: meaningIn(session),
    sureness: (heard) => surenessOf(session, heard),
  });
}

/** Commands heard that the session acts on at once, without asking for a yes. */
export function actedOn(session: Session, { sure }: TrialResult): TrialResult["sure"] {
  const context = contextOf(session.state, session.now(), session.names, session.waitingFor);
  return sure.filter(({ heard, confidence }) => {
    const command = understand(heard, context);
    return command.intent !== "unknown" && !readBack(command, heard, confidence);
  });
}
