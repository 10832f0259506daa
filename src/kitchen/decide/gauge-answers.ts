/** Answers about a canner's gauge: which kind it is, and how far a dial is off. */
import { numberWords } from "../../reckon/number-words.ts";
import { DIAL_OFF_PSI } from "../../reckon/trade-numbers.ts";
import type { DatedFact, GaugeRecord } from "../events.ts";
import { activeOwners, isLoad } from "../owners.ts";
import { gaugeYear, type Question } from "../questions/questions.ts";
import { type Deciding, type Decision, done, type Present, refused } from "./decision.ts";

/** A dial that was tested this season and reads this many pounds high. */
function trueGauge(deciding: Present, readsHighPsi: number): GaugeRecord {
  return { kind: "dial", testedSeason: gaugeYear(deciding.state, deciding.now), readsHighPsi };
}

/** A dial that has not been tested this season. */
export function untestedGauge(deciding: Present, canner: string): DatedFact {
  const gauge: GaugeRecord = {
    kind: "dial",
    untestedSeason: gaugeYear(deciding.state, deciding.now),
  };
  return { type: "gauge-set", canner, gauge, t: deciding.now };
}

/** How many pounds a dial reads high; one that is off by too much is written down and refused. */
function gaugeOff(deciding: Present, canner: string, pounds: number): Decision {
  const gauge = trueGauge(deciding, pounds);
  const outcome = done({ type: "gauge-set", canner, gauge, t: deciding.now });
  if (outcome.kind !== "done" || Math.abs(pounds) <= DIAL_OFF_PSI) return outcome;
  const refusal =
    `A dial that is off by more than ${numberWords(DIAL_OFF_PSI)} pounds has to be replaced. ` +
    "Use a weighted gauge, or have it changed first.";
  return { ...outcome, refusal };
}

/** No dial is off by so much. */
const MOST_OFF_PSI = 10;

/** The answer to how many pounds a dial reads high. */
export function gaugeOffAnswer(deciding: Present, question: Question, pounds: number): Decision {
  return canBeOff(pounds)
    ? gaugeOff(deciding, question.about ?? "", pounds)
    : refused(question.text);
}

function canBeOff(pounds: number): boolean {
  return !Number.isNaN(pounds) && Math.abs(pounds) <= MOST_OFF_PSI;
}

/** What is said of the one dial there is, or of the one whose canner is in use, unasked. */
export function decideGauge(deciding: Deciding<"gauge">): Decision {
  const { state, wish } = deciding;
  const { readsHighPsi = Number.NaN, untested } = wish.command.slots;
  const dials = state.kitchen.canners.filter(({ gauge }) => gauge?.kind === "dial");
  const inUse = new Set(activeOwners(state).flatMap((one) => (isLoad(one) ? one.canner : [])));
  const used = dials.filter(({ id }) => inUse.has(id));
  const [dial, another] = used.length > 0 ? used : dials;
  if (!dial) return refused("No canner here has a dial gauge.");
  if (another)
    return refused("Several canners have a dial. Say it when one of them is asked about.");
  if (untested) return done(untestedGauge(deciding, dial.id));
  if (!canBeOff(readsHighPsi)) return refused("By how many pounds does the dial read high?");
  return gaugeOff(deciding, dial.id, readsHighPsi);
}
