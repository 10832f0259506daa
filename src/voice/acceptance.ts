import type { Unheard } from "../ports/ears.ts";
import type { Recognised } from "./recogniser.ts";

/** Thresholds in the recogniser's logarithms per frame, at one ratio of speech to noise. */
type Bounds = { snrDb: number; wakeFit: number; fit: number };

/**
 * Measured by the voice loop. In louder noise true commands fit worse, so the bounds follow the
 * noise; between these points they are drawn straight.
 */
const WITH_WAKE_WORDS: Bounds[] = [
  { snrDb: 8, wakeFit: -4.2, fit: -3.9 },
  { snrDb: 20, wakeFit: -3.4, fit: -3.0 },
];

/** Without wake words only what fits very well is taken, and only when it is short. */
const WITHOUT: Bounds[] = [
  { snrDb: 8, wakeFit: -2.4, fit: -2.4 },
  { snrDb: 20, wakeFit: -1.9, fit: -1.9 },
];

/** Longest sentence taken for a command, in frames of 10 ms. */
const LONGEST = { withWakeWords: 450, without: 250 };

/** Shortest wake words anybody says, in frames of 10 ms. */
const SHORTEST = 30;

/** Leads over a sound-alike, in logarithms of the likelihood of the whole sentence. */
const SURE_LEAD = 22;
const LEAD_SPREAD = 8;

export type Acceptance =
  | { taken: true; confidence: number }
  | { taken: false; why: Unheard["why"]; confidence: number };

function boundsAt(bounds: readonly Bounds[], snrDb: number): Bounds {
  const low = bounds[0] as Bounds;
  const high = bounds[1] as Bounds;
  const share = Math.min(1, Math.max(0, (snrDb - low.snrDb) / (high.snrDb - low.snrDb)));
  const between = (a: number, b: number) => a + (b - a) * share;
  return {
    snrDb,
    wakeFit: between(low.wakeFit, high.wakeFit),
    fit: between(low.fit, high.fit),
  };
}

/**
 * The confidence once a sound-alike is known: a lead of {@link SURE_LEAD} over it makes even odds.
 * Measured: right numbers led by 32 or more, wrong ones by 10.
 */
export function withRivalConfidence(confidence: number, rival: Recognised["rival"]): number {
  if (!rival) return confidence;
  return Math.min(confidence, 1 / (1 + Math.exp((SURE_LEAD - rival.leadOver) / LEAD_SPREAD)));
}

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
  const bounds = boundsAt(withWakeWords ? WITH_WAKE_WORDS : WITHOUT, snrDb);
  const confidence = 1 / (1 + Math.exp(-2 * (fit - bounds.fit)));
  const longest = withWakeWords ? LONGEST.withWakeWords : LONGEST.without;
  if (frames > longest) return { taken: false, why: "too-long", confidence };
  if (wakeFit < bounds.wakeFit) return { taken: false, why: "no-wake-words", confidence };
  if (fit < bounds.fit) return { taken: false, why: "unsure", confidence };
  return { taken: true, confidence };
}
