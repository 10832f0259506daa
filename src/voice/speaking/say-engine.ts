import type { ChildProcess } from "node:child_process";
import type { SpeechHandle, SpeechOutcome, VoiceEngine } from "../../ports/voice.ts";
import { childSpeech, speechDeadlineMs, speechHasteMs } from "./child-speech.ts";

/** The parts of the package `say` that are used; its own types leave the constructor out. */
type SayInstance = {
  child: ChildProcess | null;
  speak(text: string, voice: string | undefined, speed: number | undefined): void;
};
type SayPackage = { default: { Say: new (platform: string) => SayInstance } };

type SayParts = {
  platform: NodeJS.Platform;
  /** Loads the package; given by tests that want to see when it is loaded. */
  load?: () => Promise<unknown>;
  /** Longest one text may take, in ms; worked out from its length when not given. */
  deadlineMs?: number;
};

/**
 * The package `say`: the system's own voice on macOS and Windows, festival on Linux. It is loaded
 * only when first used. Its `stop` is never called, since on Linux it signals a guessed process
 * number; the child is ended by our own handle. Its callback is not used either: it reports noise
 * on standard error as failure and a bad exit as success.
 */
export function sayEngine(parts: SayParts): VoiceEngine {
  const load = parts.load ?? (() => import("say"));
  return {
    name: parts.platform === "linux" ? "festival" : "say",
    start(text, { rate }): SpeechHandle {
      let inner: SpeechHandle | undefined;
      let stopped = false;
      const speak = async (): Promise<SpeechOutcome> => {
        const { default: say } = (await load()) as SayPackage;
        if (stopped) return { kind: "stopped" };
        inner = startSaying(new say.Say(parts.platform), text, rate, parts);
        return inner.done;
      };
      const done = speak().catch((error: unknown): SpeechOutcome => {
        return { kind: "failed", reason: error instanceof Error ? error.message : String(error) };
      });
      const stop = () => {
        stopped = true;
        inner?.stop();
      };
      return { done, stop };
    },
  };
}

function startSaying(say: SayInstance, text: string, rate: number, parts: SayParts): SpeechHandle {
  // Changing festival's speed needs a different player and a shell expression, so it keeps its own
  // speed.
  const speed = parts.platform === "linux" || rate === 1 ? undefined : rate;
  say.speak(text, undefined, speed);
  const child = say.child;
  if (!child) {
    return { done: Promise.resolve({ kind: "failed", reason: "no child" }), stop: () => {} };
  }
  // The package reads only the first line of standard error; unread, the rest would block it.
  const handle = childSpeech(child, {
    deadlineMs: parts.deadlineMs ?? speechDeadlineMs(text, rate),
    hasteMs: speechHasteMs(text, rate),
    platform: parts.platform,
  });
  child.stdout?.resume();
  // On macOS the package leaves standard input open, and on Windows it is already ended.
  if (parts.platform === "darwin") child.stdin?.end();
  return handle;
}
