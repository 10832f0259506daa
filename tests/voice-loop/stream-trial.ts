import type { EarsGrammar, HeardWords, Unheard } from "../../src/ports/ears.ts";
import { Listener } from "../../src/voice/listening/listener.ts";
import type { Recognizer } from "../../src/voice/listening/recognizer.ts";
import { SAMPLE_RATE } from "../../src/voice/listening/sample-rate.ts";
import { endOfSpeech, type NoiseKind, noise, speechLevel } from "./noise.ts";

/** One thing said into the stream; `command` is undefined for talk. */
export type Said = { text: string; voice: string; samples: Int16Array; command?: string };

/** A bed of noise and what is said over it. */
export type Trial = {
  recognizer: Recognizer;
  grammar: EarsGrammar;
  said: readonly Said[];
  kind: NoiseKind;
  snrDb: number;
  seed: number;
  withWakeWords: boolean;
  /** Silence after each thing said, in ms. */
  gapMs?: number;
  /** Noise before the first word, in ms. */
  leadMs?: number;
  /** What words mean, for telling right from wrong; the words themselves where missing. */
  means?: (text: string) => string;
  /** How sure the kitchen is of what was heard; as sure as the ears where missing. */
  sureness?: (heard: HeardWords) => number;
};

export type TrialResult = {
  commands: number;
  right: number;
  /** Every command said, and whether it alone was heard. */
  outcomes: { text: string; right: boolean }[];
  wrong: string[];
  missed: string[];
  /** Commands heard where none was said. */
  falseCommands: string[];
  /** The confidence of each of them, in the same order. */
  falseConfidences: number[];
  /** From the end of the speech in the recording to its command, computing time and all. */
  delaysMs: number[];
  /** Of every command heard: whether it was meant, alone, and the confidence. */
  sure: { said: string; heard: string; meant: boolean; right: boolean; confidence: number }[];
  audioMs: number;
  computeMs: number;
  unheard: Record<Unheard["why"], number>;
};

/** Level at which speech is mixed, as a root mean square of 16-bit samples. */
const SPEECH_RMS = 2500;

/** Computing time of this process: what waiting for a busy machine adds is left out. */
function cpuMs(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

/** Samples that come at once: as many as a microphone gives. */
const CHUNK = 256;

type Slot = {
  said: Said;
  from: number;
  to: number;
  /** Where its speech ends; `to` may come after a silence. */
  end: number;
  heard: string[];
  sure: number[];
};

function lay(trial: Trial): { stream: Int16Array; slots: Slot[] } {
  const gap = ((trial.gapMs ?? 1500) * SAMPLE_RATE) / 1000;
  let length = ((trial.leadMs ?? 2000) * SAMPLE_RATE) / 1000;
  const slots = trial.said.map((said): Slot => {
    const from = length;
    length += said.samples.length + gap;
    const to = from + said.samples.length;
    return { said, from, to, end: from + endOfSpeech(said.samples), heard: [], sure: [] };
  });
  const level = SPEECH_RMS / 10 ** (trial.snrDb / 20);
  const stream = Int16Array.from(noise(trial.kind, length, trial.seed), (value) => value * level);
  for (const { said, from } of slots) {
    const gain = SPEECH_RMS / speechLevel(said.samples);
    said.samples.forEach((sample, index) => {
      const sum = (stream[from + index] ?? 0) + sample * gain;
      stream[from + index] = Math.max(-32768, Math.min(32767, Math.round(sum)));
    });
  }
  return { stream, slots };
}

/** Hears a whole stream as fast as it goes and sorts out what came of each thing said. */
export function hearStream(trial: Trial): TrialResult {
  const { stream, slots } = lay(trial);
  let position = 0;
  let chunkMs = 0;
  const delaysMs: number[] = [];
  const stray: Stray[] = [];
  const unheard = { "no-wake-words": 0, unsure: 0, "too-long": 0, nothing: 0 };
  const onHeard = (heard: HeardWords) => {
    const ended = position - (heard.delayMs * SAMPLE_RATE) / 1000;
    const slot = slots.find(({ from, to }) => ended > from && ended < to + SAMPLE_RATE);
    if (!slot) stray.push(heard);
    slot?.heard.push(heard.text);
    slot?.sure.push(trial.sureness?.(heard) ?? heard.confidence);
    if (!slot) return;
    const samples = position + CHUNK - slot.end;
    delaysMs.push((samples * 1000) / SAMPLE_RATE + cpuMs() - chunkMs);
  };
  const listener = new Listener({
    recognizer: trial.recognizer,
    events: { onHeard, onUnheard: ({ why }) => unheard[why]++ },
    withWakeWords: trial.withWakeWords,
    wallMs: () => Date.now(),
    monoMs: cpuMs,
  });
  listener.expect(trial.grammar);
  const before = process.cpuUsage();
  for (; position < stream.length; position += CHUNK) {
    chunkMs = cpuMs();
    listener.hear(stream.subarray(position, position + CHUNK));
  }
  listener.close();
  const { user, system } = process.cpuUsage(before);
  const computeMs = (user + system) / 1000;
  const audioMs = (stream.length * 1000) / SAMPLE_RATE;
  return {
    ...sorted(slots, stray, trial.means ?? withoutArticles),
    delaysMs,
    audioMs,
    computeMs,
    unheard,
  };
}

type Stray = { text: string; confidence: number };

function sorted(slots: Slot[], stray: Stray[], means: (text: string) => string) {
  const commands = slots.filter(({ said }) => said.command !== undefined);
  const line = ({ said, heard }: Slot) => `${said.voice}: ${said.text} -> ${heard.join(" + ")}`;
  const isRight = ({ said, heard }: Slot) => means(heard.join(" + ")) === means(said.command ?? "");
  const right = commands.filter(isRight);
  const missed = commands.filter(({ heard }) => heard.length === 0);
  const wrong = commands.filter((slot) => !right.includes(slot) && !missed.includes(slot));
  const talk = slots.filter(({ said, heard }) => said.command === undefined && heard.length > 0);
  return {
    commands: commands.length,
    right: right.length,
    outcomes: commands.map((slot) => ({ text: slot.said.text, right: right.includes(slot) })),
    sure: commands.flatMap((slot) => {
      return slot.sure.map((confidence, index) => ({
        said: slot.said.text,
        heard: slot.heard[index] ?? "",
        meant: means(slot.heard[index] ?? "") === means(slot.said.command ?? ""),
        right: isRight(slot),
        confidence,
      }));
    }),
    wrong: wrong.map(line),
    missed: missed.map(({ said }) => `${said.voice}: ${said.text}`),
    falseCommands: [...talk.map(line), ...stray.map(({ text }) => `noise -> ${text}`)],
    falseConfidences: [
      ...talk.map(({ sure }) => Math.max(...sure)),
      ...stray.map(({ confidence }) => confidence),
    ],
  };
}

/** Articles change nothing. */
function withoutArticles(text: string): string {
  return text.replace(/\b(?:the|a) /g, "");
}
