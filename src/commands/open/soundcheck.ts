/** `brinebell soundcheck`: tries speaking and listening, and says what is missing. */

import { openEars, wakeWordsOf } from "../../session/listening/listening.ts";
import { realClock } from "../../session/time/real-clock.ts";
import { soundcheck } from "../../voice/soundcheck.ts";
import { chooseVoice } from "../../voice/speaking/choose-voice.ts";
import { CALLS } from "../call/calls.ts";
import { type CommandResult, failed } from "../call/command-result.ts";
import { isOn, optionValue, parseOptions } from "../call/options.ts";

type SoundcheckIo = { searchPath: string; out: (line: string) => void };

/** `--sound FILE` hears raw 16 kHz mono sound from a file instead of a microphone. */
export async function soundcheckCommand(
  args: string[],
  io: SoundcheckIo,
): Promise<CommandResult | number> {
  const parsed = parseOptions(args, CALLS.soundcheck.options);
  if (!parsed.ok) return failed(2, `soundcheck: ${parsed.error}`);
  const json = isOn(parsed.value, "json");
  const wakeWords = wakeWordsOf(optionValue(parsed.value, "wake-words"));
  const file = optionValue(parsed.value, "sound");
  const { searchPath } = io;
  const source =
    file === undefined
      ? ({ from: "microphone", searchPath } as const)
      : ({ from: "file", path: file, paced: true } as const);
  const result = await soundcheck({
    voice: chooseVoice({ platform: process.platform, searchPath }),
    openEars: (events) => openEars({ wakeWords, source, searchPath }, events),
    clock: realClock(),
    wakeWords,
    tell: (line) => {
      if (!json) io.out(line);
    },
  });
  if (json) io.out(JSON.stringify(result, null, 2));
  return result.voice.works && result.ears.works ? 0 : 1;
}
