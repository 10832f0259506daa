import type { Clock } from "../ports/clock.ts";
import type { EarsEvents, EarsGrammar, EarsPort, HeardWords, SoundLevel } from "../ports/ears.ts";
import type { SpeechOutcome } from "../ports/voice.ts";
import type { VoiceChoice } from "./speaking/choose-voice.ts";
import { readable } from "./speaking/readable.ts";

type SoundcheckParts = {
  voice: VoiceChoice;
  /** Opens the ears with these events. */
  openEars: (events: EarsEvents) => EarsPort;
  clock: Clock;
  wakeWords: readonly string[];
  /** Each line as soon as it is known. */
  tell: (line: string) => void;
  /** How long to listen, in ms. */
  listenMs?: number;
};

export type SoundcheckResult = {
  voice: { works: boolean; engine: string | undefined; outcome: SpeechOutcome["kind"] | "missing" };
  ears: {
    works: boolean;
    heard: string | undefined;
    confidence: number;
    /**
     * The loudest and the quietest sound that came in, dB below full scale; undefined without
     * sound.
     */
    loudestDb: number | undefined;
    noiseDb: number | undefined;
  };
  /** What is missing and how to get it, one sentence each. */
  problems: string[];
};

/** What may be said during the check. */
const CHECK_GRAMMAR: EarsGrammar = {
  command: "command",
  rules: "<command> = what now | what's next | it's boiling | that's done | help;",
};

const LINE = "This is Brinebell. If you can hear me, the voice works.";
const LISTEN_MS = 12_000;

/** Below the first, only the sound card's own hiss comes in; above the second, sound is clipped. */
const SILENT_DB = -70;
const CLIPPING_DB = -3;
/** Speech should be this far above the noise. */
const CLEAR_DB = 10;

/** Speaks a line, listens for one, and says in plain words how each went. */
export async function soundcheck(parts: SoundcheckParts): Promise<SoundcheckResult> {
  const problems: string[] = [];
  const problem = (line: string) => {
    problems.push(line);
    parts.tell(line);
  };
  const voice = await tryVoice(parts, problem);
  const ears = await tryEars(parts, problem);
  return { voice, ears, problems };
}

async function tryVoice(
  { voice, tell }: SoundcheckParts,
  problem: (line: string) => void,
): Promise<SoundcheckResult["voice"]> {
  const { engine, advice } = voice;
  if (!engine) {
    problem(`There is no voice on this system. ${advice}`);
    return { works: false, engine: undefined, outcome: "missing" };
  }
  tell(`Speaking with ${engine.name}: "${LINE}"`);
  const outcome = await engine.start(readable(LINE), { rate: 1, volume: 1 }).done;
  if (outcome.kind === "spoken") tell("That was spoken. If you heard nothing, turn the sound up.");
  if (outcome.kind === "failed") {
    problem(`${engine.name} could not be heard: ${outcome.reason}. Is there a loudspeaker?`);
  }
  if (outcome.kind === "timed-out") problem(`${engine.name} did not answer in time.`);
  return { works: outcome.kind === "spoken", engine: engine.name, outcome: outcome.kind };
}

async function tryEars(
  parts: SoundcheckParts,
  problem: (line: string) => void,
): Promise<SoundcheckResult["ears"]> {
  const { clock, tell, wakeWords } = parts;
  let heard: HeardWords | undefined;
  let troubled = false;
  const levels: SoundLevel[] = [];
  await new Promise<void>((resolve) => {
    const ears = parts.openEars({
      onHeard(what) {
        heard = what;
        finish();
      },
      onUnheard({ nearest }) {
        if (nearest) tell(`Heard something like "${nearest}", but not clearly. Once more, please.`);
      },
      onLevel(level) {
        // Only what comes in shows that it can listen.
        if (levels.push(level) === 1) {
          tell(`Listening. Please say: "${[...wakeWords, "what", "now"].join(" ")}".`);
        }
      },
      onProblem(message) {
        troubled = true;
        problem(message);
        finish();
      },
    });
    const callOff = clock.after(parts.listenMs ?? LISTEN_MS, () => finish());
    const finish = () => {
      callOff();
      ears.stop().then(resolve);
    };
    ears.start(CHECK_GRAMMAR);
  });
  const loudestDb = levels.length > 0 ? Math.max(...levels.map((each) => each.levelDb)) : undefined;
  const noiseDb = levels.at(-1)?.noiseDb;
  if (heard) tell(`Heard: "${heard.text}" (${Math.round(heard.confidence * 100)} % sure).`);
  if (loudestDb !== undefined && noiseDb !== undefined) {
    tell(`Loudest ${Math.round(loudestDb)} dB, noise ${Math.round(noiseDb)} dB.`);
  }
  if (!heard && !troubled) problem(whyNothing(loudestDb, noiseDb));
  const confidence = heard?.confidence ?? 0;
  return { works: heard !== undefined, heard: heard?.text, confidence, loudestDb, noiseDb };
}

function whyNothing(loudestDb: number | undefined, noiseDb: number | undefined): string {
  if (loudestDb === undefined || noiseDb === undefined) {
    return "No sound came in. Is a microphone plugged in and allowed?";
  }
  if (loudestDb < SILENT_DB) return "The microphone is silent: is it muted, or turned down?";
  if (loudestDb > CLIPPING_DB) return "The microphone is too loud: turn it down, or step back.";
  if (loudestDb - noiseDb < CLEAR_DB) return "Too much noise to hear you: come closer to it.";
  return "Sound came in, but no command was understood. Say it again, a little slower.";
}
