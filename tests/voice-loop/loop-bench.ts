import { spawnSync } from "node:child_process";
import { Recogniser } from "../../src/voice/recogniser.ts";
import { loadSphinx } from "../../src/voice/sphinx-library.ts";
import { CHATTER, COMMANDS, KITCHEN_GRAMMAR } from "./kitchen-talk.ts";
import type { NoiseKind } from "./noise.ts";
import { hearStream, type Said, type TrialResult } from "./stream-trial.ts";
import type { SyntheticVoice } from "./synthetic-voices.ts";

/** Below this confidence a command is read back before it is acted on. */
export const READ_BACK = 0.7;

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

/** What the loop needs and this machine lacks, in words; undefined when all is there. */
export function missingForLoop(): string | undefined {
  const loaded = loadSphinx();
  if ("missing" in loaded) return loaded.missing;
  const speaks = !spawnSync("espeak-ng", ["--version"], { stdio: "ignore" }).error;
  return speaks ? undefined : "espeak-ng";
}

export function makeRecogniser(wakeWords = WAKE_WORDS): Recogniser {
  const loaded = loadSphinx();
  if ("missing" in loaded) throw new Error(loaded.missing);
  return new Recogniser(loaded.library, loaded.modelFolder, wakeWords);
}

/** Every `step`-th of all commands in all voices, beginning at `offset`. */
export function commandsSaid(voices: SyntheticVoice[], step: number, offset = 0): Said[] {
  const all = voices.flatMap((voice) => COMMANDS.map((command) => ({ voice, command })));
  return all
    .filter((_, index) => index % step === offset)
    .map(({ voice, command }) => ({
      text: command,
      command,
      voice: voice.name,
      samples: voice.speak(`${WAKE_WORDS.join(" ")}, ${command}`),
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
  recogniser: Recogniser,
  said: readonly Said[],
  { kind, snrDb }: Pick<Condition, "kind" | "snrDb">,
  seed: number,
): TrialResult {
  const grammar = KITCHEN_GRAMMAR;
  return hearStream({ recogniser, grammar, said, kind, snrDb, seed, withWakeWords: true });
}

export type Figures = {
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
  const unsure = sure.filter(({ confidence }) => confidence < READ_BACK);
  const caught = unsure.filter((each) => !each.right).length;
  return {
    right: right / commands,
    rejected: missed.length / commands,
    wrong: Math.max(0, result.wrong.length - caught) / commands,
    readBack: unsure.length / commands,
    delayP50: quantile(delaysMs, 0.5),
    delayP95: quantile(delaysMs, 0.95),
    cpu: computeMs / audioMs,
  };
}

export function tableLine({ kind, snrDb }: Condition, n: number, f: Figures): string {
  const percent = (share: number) => `${(share * 100).toFixed(1)} %`.padStart(8);
  const ms = (value: number) => `${value.toFixed(0)} ms`.padStart(8);
  return [
    `${kind} ${snrDb} dB`.padEnd(15),
    String(n).padStart(5),
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
