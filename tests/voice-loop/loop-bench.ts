import { spawnSync } from "node:child_process";
import { Recognizer } from "../../src/voice/listening/recognizer.ts";
import { loadSphinx } from "../../src/voice/listening/sphinx-library.ts";
import { CHATTER, COMMANDS, KITCHEN_GRAMMAR } from "./kitchen-talk.ts";
import type { NoiseKind } from "./noise.ts";
import { hearStream, type Said, type TrialResult } from "./stream-trial.ts";
import type { SyntheticVoice } from "./synthetic-voices.ts";

/** Below this confidence a command is read back before it is acted on. */
export const READ_BACK = 0.7;

/** What is answered or done at once, however uncertain: it affects neither food nor times. */
const HARMLESS = /^(?:say|what|how|when|help|speak up|got it|yes|no|hush$)/;

function isReadBack(heard: string, confidence: number): boolean {
  return confidence < READ_BACK && !HARMLESS.test(heard);
}

export const WAKE_WORDS = ["brine", "bell"];

/** Noise and how far speech is above it. */
export type Condition = { kind: NoiseKind; snrDb: number; leastRight: number };

/** The conditions with the share of commands wanted right. */
export const CONDITIONS: Condition[] = [
  { kind: "pink", snrDb: 30, leastRight: 0.96 },
  { kind: "pink", snrDb: 20, leastRight: 0.96 },
  { kind: "fan", snrDb: 20, leastRight: 0.96 },
  { kind: "fan", snrDb: 10, leastRight: 0.85 },
  { kind: "pink", snrDb: 10, leastRight: 0.75 },
  { kind: "boiling", snrDb: 20, leastRight: 0.96 },
  { kind: "boiling", snrDb: 10, leastRight: 0.75 },
];

/** What the loop needs and this machine lacks, in words; undefined where nothing is missing. */
export function missingForLoop(): string | undefined {
  const loaded = loadSphinx();
  if ("missing" in loaded) return loaded.missing.join();
  const speaks = !spawnSync("espeak-ng", ["--version"], { stdio: "ignore" }).error;
  return speaks ? undefined : "espeak-ng";
}

export function makeRecognizer(wakeWords = WAKE_WORDS): Recognizer {
  const loaded = loadSphinx();
  if ("missing" in loaded) throw new Error(loaded.missing.join());
  return new Recognizer(loaded.library, loaded.modelFolder, wakeWords);
}

/** The half of the commands that no threshold was tuned on. */
export const HELD_OUT: ReadonlySet<string> = new Set(
  COMMANDS.filter((_, index) => index % 2 === 1),
);

/** Every `step`-th of all commands in all voices, beginning at `offset`. */
export function commandsSaid(
  voices: SyntheticVoice[],
  step: number,
  offset = 0,
  wakeWords = WAKE_WORDS,
): Said[] {
  const prefix = wakeWords.length > 0 ? `${wakeWords.join(" ")}, ` : "";
  const all = voices.flatMap((voice) => COMMANDS.map((command) => ({ voice, command })));
  return all
    .filter((_, index) => index % step === offset)
    .map(({ voice, command }) => ({
      text: command,
      command,
      voice: voice.name,
      samples: voice.speak(`${prefix}${command}`),
    }));
}

/** Read-aloud talk; with step 1 about an hour of it. */
export function talkSaid(
  voices: SyntheticVoice[],
  step: number,
  sentences: readonly string[] = CHATTER,
): Said[] {
  const all = sentences.flatMap((text) => voices.map((voice) => ({ voice, text })));
  return all
    .filter((_, index) => index % step === 0)
    .map(({ voice, text }) => ({ text, voice: voice.name, samples: voice.speak(text) }));
}

export function hearAll(
  recognizer: Recognizer,
  said: readonly Said[],
  { kind, snrDb }: Pick<Condition, "kind" | "snrDb">,
  seed: number,
  withWakeWords = true,
): TrialResult {
  const grammar = KITCHEN_GRAMMAR;
  return hearStream({ recognizer, grammar, said, kind, snrDb, seed, withWakeWords });
}

export type Figures = {
  said: number;
  right: number;
  rejected: number;
  /** Another command acted on, read-backs taken off. */
  wrong: number;
  readBack: number;
  delayP50: number;
  delayP95: number;
  cpu: number;
};

function quantile(values: readonly number[], q: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(q * sorted.length))] ?? Number.NaN;
}

export function figures(result: TrialResult): Figures {
  const { commands, right, missed, sure, delaysMs, computeMs, audioMs } = result;
  const asked = sure.filter(({ heard, confidence }) => isReadBack(heard, confidence));
  const acted = sure.filter((each) => !each.meant && !asked.includes(each));
  return {
    said: commands,
    right: right / commands,
    rejected: missed.length / commands,
    wrong: acted.length / commands,
    readBack: asked.length / commands,
    delayP50: quantile(delaysMs, 0.5),
    delayP95: quantile(delaysMs, 0.95),
    cpu: computeMs / audioMs,
  };
}

/** Right and wrong among the commands that no threshold was tuned on. */
export function heldOut(result: TrialResult): string {
  const said = result.outcomes.filter(({ text }) => HELD_OUT.has(text));
  const right = said.filter((each) => each.right).length;
  const wrong = result.sure.filter(
    ({ said: text, heard, meant, confidence }) =>
      HELD_OUT.has(text) && !meant && !isReadBack(heard, confidence),
  ).length;
  const percent = (part: number) => ((100 * part) / said.length).toFixed(1);
  return `held out: ${percent(right)} % of ${said.length} right, ${percent(wrong)} % wrong`;
}

export function tableLine({ kind, snrDb }: Condition, f: Figures): string {
  const percent = (share: number) => `${(share * 100).toFixed(1)} %`.padStart(8);
  const ms = (value: number) => `${value.toFixed(0)} ms`.padStart(8);
  return [
    `${kind} ${snrDb} dB`.padEnd(15),
    String(f.said).padStart(5),
    percent(f.right),
    percent(f.rejected),
    percent(f.wrong),
    percent(f.readBack),
    ms(f.delayP50),
    ms(f.delayP95),
    percent(f.cpu),
  ].join(" | ");
}

export const TABLE_HEAD = [
  "noise".padEnd(15),
  "said ",
  "right   ",
  "rejected",
  "wrong   ",
  "readback",
  "p50     ",
  "p95     ",
  "one core",
].join(" | ");
