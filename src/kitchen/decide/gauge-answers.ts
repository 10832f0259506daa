/** What is answered about a canner's gauge: which kind it is, and how far a dial is off. */
import { numberWords } from "../../reckon/number-words.ts";
import { DIAL_OFF_PSI } from "../../reckon/trade-numbers.ts";
import type { GaugeRecord } from "../events.ts";
import { type Question, seasonOf } from "../questions.ts";
import { type Deciding, done, type Outcome, refused } from "./outcome.ts";

/** A dial that was tested this season and reads so many pounds high. */
export function trueGauge(deciding: Deciding, readsHighPsi: number): GaugeRecord {
  return { kind: "dial", testedSeason: seasonOf(deciding.state, deciding.now), readsHighPsi };
}

export function gaugeAnswer(deciding: Deciding, question: Question, words: string): Outcome {
  const kind = /dial/.test(words) ? "dial" : /weight/.test(words) ? "weighted" : undefined;
  if (!kind) return refused(question.text);
  const gauge: GaugeRecord = { kind };
  return done({ type: "gauge-set", canner: question.about ?? "", gauge, t: deciding.now });
}

const POUNDS: Record<string, number> = { a: 1, one: 1, two: 2, three: 3, four: 4, five: 5 };
const OFF =
  /\b(?:(half) a|(a|one|two|three|four|five|[\d.]+)( and a half)?) pounds?( and a half)?( low)?\b/;

/** How far off a dial is in so many words: "half a pound high", "it reads true"; low is below 0. */
export function poundsOff(text: string): number | undefined {
  const said = text.toLowerCase();
  if (/n't|\?|\b(not|about|if|should|maybe)\b/.test(said)) return undefined;
  if (/\b(reads?|is|it's) (true|right|spot on|dead on)\b/.test(said)) return 0;
  const found = OFF.exec(said);
  if (!found || !/\b(high|low|off|pounds?|half)$/.test(said)) return undefined;
  const [, half, whole = "", more, andHalf, low] = found;
  const pounds = half ? 0.5 : (POUNDS[whole] ?? Number(whole)) + (more || andHalf ? 0.5 : 0);
  return low ? -pounds : pounds;
}

/** How many pounds a dial reads high; one that is off by too much is written down and refused. */
export function gaugeOffAnswer(deciding: Deciding, question: Question, pounds: number): Outcome {
  if (Number.isNaN(pounds) || Math.abs(pounds) > 10) return refused(question.text);
  const canner = question.about ?? "";
  const gauge = trueGauge(deciding, pounds);
  const outcome = done({ type: "gauge-set", canner, gauge, t: deciding.now });
  if (outcome.kind !== "done" || Math.abs(pounds) <= DIAL_OFF_PSI) return outcome;
  const refusal =
    `A dial that is off by more than ${numberWords(DIAL_OFF_PSI)} pounds has to be replaced. ` +
    "Use a weighted gauge, or have it changed first.";
  return { ...outcome, refusal };
}
