/** What a load's gauge must show. */
import type { Load } from "../state.ts";
import { gaugeTarget } from "./canner-stages.ts";

/** What the gauge must show: the tested pressure, and what a dial reads too high on top. */
export function gaugeTargetPsi(load: Load): number | undefined {
  const tested = load.terms?.pressurePsi;
  if (tested === null || tested === undefined) return undefined;
  return gaugeTarget(tested, load.gauge);
}
