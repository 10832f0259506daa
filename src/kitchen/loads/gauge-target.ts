/** What a load's gauge must show. */
import { numberWords } from "../../reckon/number-words.ts";
import { DIAL_OFF_PSI } from "../../reckon/trade-numbers.ts";
import type { Load } from "../state.ts";
import { gaugeTarget } from "./canner-stages.ts";

/** What the gauge must show: the tested pressure plus what the dial reads too high. */
export function gaugeTargetPsi(load: Pick<Load, "terms" | "gauge">): number | undefined {
  const tested = load.terms?.pressurePsi;
  if (tested === null || tested === undefined) return undefined;
  return gaugeTarget(tested, load.gauge);
}

type Gauge = NonNullable<Load["gauge"]>;

/** Why no process counts by a dial: not tested, off by an unknown amount, or by too much. */
export function gaugeDoubt({ testedSeason, readsHighPsi }: Gauge): string | undefined {
  if (testedSeason === undefined) return "the dial gauge was not tested this season";
  if (readsHighPsi === undefined) return "nobody said how far the dial gauge is off";
  if (Math.abs(readsHighPsi) <= DIAL_OFF_PSI) return undefined;
  return `the dial gauge is off by more than ${numberWords(DIAL_OFF_PSI)} pounds`;
}

/** The same for a load under pressure, once it is told or its jars are out. */
export function dialDoubt({ gauge, terms, unloadedAt }: Load): string | undefined {
  if (gauge?.kind !== "dial" || terms?.method !== "pressure") return undefined;
  const denied = gauge.untestedSeason !== undefined && gauge.testedSeason === undefined;
  return denied || unloadedAt !== undefined ? gaugeDoubt(gauge) : undefined;
}
