import type { Unheard } from "../../ports/ears.ts";
import type { Recognized } from "./recognizer.ts";

/** Thresholds for a command, in the recognizer's logarithms per frame of 10 ms. */
type Bounds = {
  wakeFit: number;
  fit: number;
  commandFit: number;
  longestFrames: number;
  /** The command's fit at which it is as likely wrong as right. */
  evenFit: number;
};

/**
 * Found with the voice loop: of true commands at 20 dB, barely two in a hundred are below. Talk
 * that begins like the wake words usually continues with words that fit no command: -3.8 and less.
 */
const WITH_WAKE_WORDS: Bounds = {
  wakeFit: -3.4,
  fit: -3.3,
  commandFit: -4.5,
  longestFrames: 450,
  evenFit: -3.4,
};

/**
 * Without wake words, only what fits well is accepted, and only when it is short: 93 of 100
 * commands at 30 dB, and next to no talk. More is read back.
 */
const WITHOUT: Bounds = {
  wakeFit: -2.7,
  fit: -2.7,
  commandFit: -2.7,
  longestFrames: 300,
  evenFit: -2.4,
};

/**
 * Every threshold rises by this much for each dB that speech falls short of this level above the
 * noise, and so does the lead over a sound-alike.
 */
const PLAIN_SNR_DB = 14;
const STRICTER_PER_DB = 0.1;
const LEAD_PER_DB = 10;

/** Speech must rise at least this far above the noise, in dB. */
const LEAST_SNR_DB = 4;

/** Shortest wake words and command anybody says, in frames of 10 ms. */
const SHORTEST = 30;

/**
 * People do not pause within a command: none of 650 had a pause of a quarter of a second, and half
 * of all talk mistaken for a command has longer ones.
 */
const LONGEST_GAP = 25;

/** How steeply the chance of being right rises with the fit. */
const STEEPNESS = 2;

/** Leads over a sound-alike, in logarithms of the likelihood of the whole sentence. */
const SURE_LEAD = 40;
const LEAD_SPREAD = 15;

/** Where two hearings disagree, it is accepted only above this fit, and never with certainty. */
const DISAGREED_FIT = -3;
const DISAGREED_CONFIDENCE = 0.4;

export type Acceptance =
  | { taken: true; confidence: number; orElse?: string | undefined }
  | { taken: false; why: Unheard["why"]; confidence: number };

function noisyDb(snrDb: number): number {
  return Math.max(0, PLAIN_SNR_DB - snrDb);
}

/**
 * Whether to accept what was recognized as a command. The confidence rises with the fit of the
 * command alone: wake words fit well before anything mistaken for a command. A rejected command
 * costs a repeat, never a wrong act; the louder the noise, the more is rejected.
 */
export function acceptance(
  recognized: Recognized,
  snrDb: number,
  withWakeWords: boolean,
): Acceptance {
  const { text, wakeFit, fit, commandFit, longestGap, frames } = recognized;
  if (text === "" || frames < SHORTEST) return { taken: false, why: "nothing", confidence: 0 };
  const bounds = withWakeWords ? WITH_WAKE_WORDS : WITHOUT;
  const more = noisyDb(snrDb) * STRICTER_PER_DB;
  const confidence = 1 / (1 + Math.exp(-STEEPNESS * (commandFit - bounds.evenFit - more)));
  if (frames > bounds.longestFrames) return { taken: false, why: "too-long", confidence };
  if (wakeFit < bounds.wakeFit + more) return { taken: false, why: "no-wake-words", confidence };
  const fits = fit >= bounds.fit + more && commandFit >= bounds.commandFit + more;
  if (!fits || longestGap > LONGEST_GAP || snrDb < LEAST_SNR_DB) {
    return { taken: false, why: "unsure", confidence };
  }
  return { taken: true, confidence };
}

/**
 * Whether it is still accepted after a second hearing, and what else it may have been. A lead of
 * {@link SURE_LEAD} over a sound-alike makes even odds (measured: nine in ten right numbers lead
 * by 55 or more). Hearings that agree, apart from articles, are seldom wrong; with talk and noise
 * they seldom agree.
 */
export function afterSecondHearing(
  recognized: Recognized,
  snrDb: number,
  first: number,
): Acceptance {
  const { text, commandFit, again, rival } = recognized;
  const plain = (words: string) => words.replace(/\b(?:the|a) /g, "");
  if (again !== undefined && plain(again) !== plain(text)) {
    const confidence = Math.min(first, DISAGREED_CONFIDENCE);
    const fits = commandFit >= DISAGREED_FIT + noisyDb(snrDb) * STRICTER_PER_DB;
    if (!fits) return { taken: false, why: "unsure", confidence };
    return { taken: true, confidence, orElse: again || undefined };
  }
  if (!rival) return { taken: true, confidence: first };
  const even = SURE_LEAD + noisyDb(snrDb) * LEAD_PER_DB;
  const odds = 1 / (1 + Math.exp((even - rival.leadOver) / LEAD_SPREAD));
  return { taken: true, confidence: Math.min(first, odds), orElse: rival.text };
}
