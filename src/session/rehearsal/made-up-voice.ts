/** A simulated voice: it says nothing aloud, fails when told to, and can be overheard. */
import type {
  SpeechHandle,
  SpeechOutcome,
  SpokenSentence,
  VoiceEngine,
  VoicePort,
} from "../../ports/voice.ts";

/** An engine that says everything at once, until it is told to fail or to hang. */
export class MadeUpVoice implements VoiceEngine {
  readonly name = "made up";
  mood: "well" | "gone" | "hangs" | "late" = "well";

  start(): SpeechHandle {
    if (this.mood === "hangs") return { done: new Promise(() => {}), stop: () => {} };
    if (this.mood === "late") return spokenLate();
    const outcome: SpeechOutcome =
      this.mood === "gone" ? { kind: "failed", reason: "the voice is gone" } : { kind: "spoken" };
    return { done: Promise.resolve(outcome), stop: () => {} };
  }
}

/** Says what it has to say long after it should have, and only when it is told to stop. */
function spokenLate(): SpeechHandle {
  let settle: (outcome: SpeechOutcome) => void = () => {};
  const done = new Promise<SpeechOutcome>((resolve) => {
    settle = resolve;
  });
  return { done, stop: () => settle({ kind: "spoken" }) };
}

/** The same voice, with a listener for everything it is asked to say. */
export function overheard(
  voice: VoicePort,
  onSaid: (utterance: SpokenSentence) => void,
): VoicePort {
  return {
    say(utterance) {
      onSaid(utterance);
      voice.say(utterance);
    },
    cancel: (key) => voice.cancel(key),
    hush: (on) => voice.hush(on),
    adjust: (manner) => voice.adjust(manner),
    idle: () => voice.idle(),
    close: () => voice.close(),
  };
}
