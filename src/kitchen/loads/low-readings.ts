/**
 * Readings of a load that speak against its process: what a gauge or a thermometer showed under
 * what was to be kept, between the start and the end of the time that counts. They are a loss,
 * whoever noticed it or did not.
 */
import { leastBoilF } from "../../reckon/boiling.ts";
import { LOW_TEMPERATURE_F } from "../../reckon/trade-numbers.ts";
import { runOfRole } from "../owners.ts";
import type { Load, Measurement, UnbrokenTime } from "../state.ts";
import { MINUTE_MS } from "../time.ts";
import { gaugeTargetPsi } from "./gauge-target.ts";

/** What no reading of a unit may fall under while the process is timed. */
type Mark = { unit: "F" | "psi"; least: number };

/** The mark of a load's process; undefined where there is no process. */
export function markOf(load: Load): Mark | undefined {
  const { terms } = load;
  switch (terms?.method) {
    case "pressure": {
      const least = gaugeTargetPsi(load);
      return least === undefined ? undefined : { unit: "psi", least };
    }
    case "boiling-water":
    case "steam":
      return { unit: "F", least: leastBoilF(terms.altitudeFt) };
    case "low-temperature":
      return { unit: "F", least: LOW_TEMPERATURE_F.min };
    case undefined:
      return undefined;
  }
}

/** The stretch of time that counts for a process, as far as it has come. */
function counted({
  stretches,
  needMinutes,
}: UnbrokenTime): { from: number; to: number } | undefined {
  const last = stretches.at(-1);
  if (!last) return undefined;
  const end = last.from + needMinutes * MINUTE_MS;
  return { from: last.from, to: Math.min(last.to ?? end, end) };
}

/** Readings under the mark in the time that counts, oldest first. */
export function lowReadings(load: Load): Measurement[] {
  const mark = markOf(load);
  const kept = runOfRole(load, "treatment")?.kept;
  const time = kept && counted(kept);
  if (!mark || !time) return [];
  return load.readings
    .filter(({ at, value, unit }) => {
      return unit === mark.unit && value < mark.least && at > time.from && at < time.to;
    })
    .sort((a, b) => a.at - b.at);
}

/** "read 11 pounds, under the 14 to be kept". */
export function lowReadingWords(load: Load, { value, unit }: Measurement): string {
  const { least } = markOf(load) ?? { least: value };
  const name = unit === "psi" ? "pounds" : unit;
  return `read ${value} ${name}, under the ${Math.round(least * 10) / 10} to be kept`;
}
