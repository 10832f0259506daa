import type { VoiceEngine } from "../../ports/voice.ts";
import { findProgram } from "../find-program.ts";
import { installAdvice } from "../install-advice.ts";
import { espeakEngine } from "./espeak-engine.ts";
import { sayEngine } from "./say-engine.ts";

export type VoiceChoice = {
  engine: VoiceEngine | undefined;
  /** One sentence that says how to get a voice here. */
  advice: string;
};

type VoiceSystem = {
  platform: NodeJS.Platform;
  /** The PATH to search; searched once. */
  searchPath: string;
};

/**
 * The voice of this system. macOS and Windows speak through `say`, elsewhere espeak-ng comes
 * first, then festival; where the system's own voice is missing, espeak-ng is used on any system.
 */
export function chooseVoice({ platform, searchPath }: VoiceSystem): VoiceChoice {
  const find = (...names: string[]) => findProgram(names, searchPath, platform);
  const advice = installAdvice("voice", { platform, hasProgram: (name) => !!find(name) });
  const espeak = find("espeak-ng");
  const espeaking = espeak ? espeakEngine({ program: espeak, platform }) : undefined;
  const own = { darwin: "say", win32: "powershell" }[platform as string];
  if (own) return { engine: find(own) ? sayEngine({ platform }) : espeaking, advice };
  if (espeaking || !find("festival")) return { engine: espeaking, advice };
  return { engine: sayEngine({ platform: "linux" }), advice };
}
