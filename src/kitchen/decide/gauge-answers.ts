/** Answers about a canner's gauge: which kind it is, and how far a dial is off. */
import { numberWords } from "../../reckon/number-words.ts";
import { DIAL_OFF_PSI } from "../../reckon/trade-numbers.ts";
import type { DatedFact, GaugeRecord } from "../events.ts";
import { gaugeYear, type Question } from "../questions/questions.ts";
import { type Decision, done, type Present, refused } from "./decision.ts";

/** A dial that was tested this season and reads this many pounds high. */
function trueGauge(deciding: Present, readsHighPsi: number): GaugeRecord {
  return { kind: "dial", testedSeason: gaugeYear(deciding.state, deciding.now), readsHighPsi };
}

/** A dial that has not been tested this season. */
export function untestedGauge(deciding: Present, question: Question): DatedFact {
  const gauge: GaugeRecord = {
    kind: "dial",
    untestedSeason: gaugeYear(deciding.state, deciding.now),
  };
  return { type: "gauge-set", canner: question.about ?? "", gauge, t: deciding.now };
}

/** How many pounds a dial reads high; one that is off by too much is written down and refused. */
export function gaugeOffAnswer(deciding: Present, question: Question, pounds: number): Decision {
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
