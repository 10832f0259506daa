/** What a load's gauge must show. */
import type { Load } from "../state.ts";
import { gaugeTarget } from "./canner-stages.ts";

/** What the gauge must show: the tested pressure plus what the dial reads too high. */
export function gaugeTargetPsi(load: Load): number | undefined {
  const tested = load.terms?.pressurePsi;
  if (tested === null || tested === undefined) return undefined;
  return gaugeTarget(tested, load.gauge);
}
