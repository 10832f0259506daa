import type { Unheard } from "../ports/ears.ts";
import type { Recognised } from "./recogniser.ts";

/** What is asked of a command, in the recogniser's logarithms per frame of 10 ms. */
type Bounds = { wakeFit: number; fit: number; longestFrames: number };

/**
 * Measured by the voice loop. Since noise is turned down before anything is decoded, true
 * commands fit about as well in loud noise as in faint (19 of 20 at -2.9 or better, at 30 dB as
 * at 10), so that one pair of bounds serves. Talk that begins like the wake words fits at -2.9.
 */
const WITH_WAKE_WORDS: Bounds = { wakeFit: -3.3, fit: -2.95, longestFrames: 450 };

/** Without wake words only what fits very well is taken, and only when it is short. */
const WITHOUT: Bounds = { wakeFit: -1.9, fit: -1.9, longestFrames: 250 };

/** Speech must rise so far above the noise, in dB. */
const LEAST_SNR_DB = 4;

/** Shortest wake words and command anybody says, in frames of 10 ms. */
const SHORTEST = 30;

/** Leads over a sound-alike, in logarithms of the likelihood of the whole sentence. */
const SURE_LEAD = 22;
const LEAD_SPREAD = 8;

/** What two hearings disagree on is taken only above this fit, and never surely. */
const DISAGREED_FIT = -2.4;
const DISAGREED_CONFIDENCE = 0.4;

export type Acceptance =
  | { taken: true; confidence: number; orElse?: string | undefined }
  | { taken: false; why: Unheard["why"]; confidence: number };

/**
 * Whether to take what was recognised for a command. The confidence is 0.5 at the bound and rises
 * with the fit above it; a rejected command costs a repeat, never a wrong act.
 */
export function acceptance(
  recognised: Recognised,
  snrDb: number,
  withWakeWords: boolean,
): Acceptance {
  const { text, wakeFit, fit, frames } = recognised;
  if (text === "" || frames < SHORTEST) return { taken: false, why: "nothing", confidence: 0 };
  const bounds = withWakeWords ? WITH_WAKE_WORDS : WITHOUT;
  const confidence = 1 / (1 + Math.exp(-2 * (fit - bounds.fit)));
  if (frames > bounds.longestFrames) return { taken: false, why: "too-long", confidence };
  if (wakeFit < bounds.wakeFit) return { taken: false, why: "no-wake-words", confidence };
  if (fit < bounds.fit || snrDb < LEAST_SNR_DB) return { taken: false, why: "unsure", confidence };
  return { taken: true, confidence };
}

/**
 * Whether it is still taken after a second hearing, and what else it may have been. A lead of
 * {@link SURE_LEAD} over a sound-alike makes even odds (measured: right numbers led by 32 or
 * more, wrong ones by 10). Hearings that agree, articles apart, are seldom wrong; talk and noise
 * seldom make them agree.
 */
export function afterSecondHearing(recognised: Recognised, first: number): Acceptance {
  const { text, fit, again, rival } = recognised;
  const plain = (words: string) => words.replace(/\b(?:the|a) /g, "");
  if (again !== undefined && plain(again) !== plain(text)) {
    const confidence = Math.min(first, DISAGREED_CONFIDENCE);
    if (fit < DISAGREED_FIT) return { taken: false, why: "unsure", confidence };
    return { taken: true, confidence, orElse: again || undefined };
  }
  if (!rival) return { taken: true, confidence: first };
  const odds = 1 / (1 + Math.exp((SURE_LEAD - rival.leadOver) / LEAD_SPREAD));
  return { taken: true, confidence: Math.min(first, odds), orElse: rival.text };
}
