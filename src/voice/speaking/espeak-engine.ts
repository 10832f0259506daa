import { spawn } from "node:child_process";
import type { SpeechHandle, VoiceEngine } from "../../ports/voice.ts";
import { childSpeech, speechDeadlineMs, speechHasteMs } from "./child-speech.ts";

/** espeak-ng's own words per minute at rate 1, and the range it accepts. */
const WORDS_PER_MINUTE = 165;

type EspeakParts = {
  /** The program: its path, or a name to be found on PATH. */
  program: string;
  /** Voice as `espeak-ng --voices` names it. */
  voice?: string;
  /** Where sound goes as WAV bytes instead of the loudspeaker. */
  sink?: (bytes: Buffer) => void;
  /** Longest one text may take, in ms; worked out from its length when not given. */
  deadlineMs?: number;
  platform?: NodeJS.Platform;
};

function failedAtOnce(error: unknown): SpeechHandle {
  const reason = error instanceof Error ? error.message : String(error);
  return { done: Promise.resolve({ kind: "failed", reason }), stop: () => {} };
}

/**
 * The program espeak-ng, driven directly: text on its standard input, which is never read as
 * options, sound from the program itself or, with a sink, as WAV bytes.
 */
export function espeakEngine(parts: EspeakParts): VoiceEngine {
  return {
    name: "espeak-ng",
    start(text, { rate, volume }) {
      const wpm = Math.min(400, Math.max(80, Math.round(WORDS_PER_MINUTE * rate)));
      const amplitude = Math.min(200, Math.max(10, Math.round(100 * volume)));
      const args = ["--stdin", "-v", parts.voice ?? "en-us", "-s", String(wpm)];
      args.push("-a", String(amplitude));
      if (parts.sink) args.push("--stdout");
      try {
        const child = spawn(parts.program, args, {
          stdio: ["pipe", parts.sink ? "pipe" : "ignore", "pipe"],
          windowsHide: true,
        });
        const handle = childSpeech(child, {
          deadlineMs: parts.deadlineMs ?? speechDeadlineMs(text, rate),
          hasteMs: parts.sink ? 0 : speechHasteMs(text, rate),
          platform: parts.platform ?? process.platform,
        });
        child.stdout?.on("data", parts.sink ?? (() => {}));
        child.stdin?.end(`${text}\n`);
        return handle;
      } catch (error) {
        return failedAtOnce(error);
      }
    },
  };
}
