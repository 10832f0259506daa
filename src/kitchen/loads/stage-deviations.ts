/** What departed in one stage: its window, its condition, its being written late. */
import type { DeviationCode } from "../deviation-codes.ts";
import type { Disposition } from "../events.ts";
import { rulesOf } from "../stages/kinds.ts";
import type { Deviation, StageRun, Stretch, UnbrokenTime } from "../state.ts";
import { MINUTE_MS } from "../time.ts";

export function deviation(
  code: DeviationCode,
  stage: string | null,
  at: number,
  detail: string,
  disposition: Deviation["disposition"] = "carried-on",
): Deviation {
  return { code, stage, at, detail, disposition };
}

export function lateDeviation(late: { at: number; written: number; what: string }): Deviation {
  const minutes = Math.round((late.written - late.at) / MINUTE_MS);
  return deviation("written-late", null, late.at, `${late.what}: written ${minutes} min after`);
}

export function minutesText(ms: number): string {
  const minutes = Math.round(ms / MINUTE_MS);
  if (minutes < 120) return `${minutes} min`;
  return `${Math.floor(minutes / 60)} h${minutes % 60 ? ` ${minutes % 60} min` : ""}`;
}

export function windowDeviations(run: StageRun, now: number): Deviation[] {
  const { startedAt } = run;
  const { window } = run.spec;
  const rules = rulesOf(run.spec).window;
  if (!rules || !window || startedAt === undefined) return [];
  const took = (run.endedAt ?? now) - startedAt;
  const fixed = window.minMinutes === window.maxMinutes;
  if (rules.short && run.endedAt !== undefined && took < window.minMinutes * MINUTE_MS) {
    const detail = `${minutesText(took)} of at least ${minutesText(window.minMinutes * MINUTE_MS)}`;
    return [deviation(rules.short, run.id, run.endedAt, detail)];
  }
  if (rules.long && !fixed && took > window.maxMinutes * MINUTE_MS) {
    const at = startedAt + window.maxMinutes * MINUTE_MS;
    const detail = `${minutesText(took)} of at most ${minutesText(window.maxMinutes * MINUTE_MS)}`;
    return [deviation(rules.long, run.id, at, detail)];
  }
  return [];
}

/** How a loss is described, `%` standing for the minutes reached; any other was simply lost. */
const LOSS_DETAILS: Partial<Record<NonNullable<Stretch["ended"]>, string>> = {
  uncovered: "lids uncovered after % min",
  off: "heat off after % min",
};

/**
 * Each loss, and the restart that answered it: two codes for one incident. `otherwise` is what was
 * done about a loss that no restart answered.
 */
export function lossDeviations(
  kept: UnbrokenTime,
  stage: string,
  code: DeviationCode,
  otherwise: Disposition,
): Deviation[] {
  const list: Deviation[] = [];
  kept.stretches.forEach((stretch, index) => {
    if (stretch.to === undefined || stretch.ended === "out") return;
    const next = kept.stretches[index + 1];
    const minutes = (stretch.to - stretch.from) / MINUTE_MS;
    const got = `${Math.round(minutes * 10) / 10}`;
    // Once the time was full, there is nothing to start over.
    const full = minutes >= kept.needMinutes;
    const detail =
      LOSS_DETAILS[stretch.ended ?? "lost"] ?? `lost after % of ${kept.needMinutes} min`;
    const what = next ? "restarted" : full ? "carried-on" : otherwise;
    // Raised terms are reported once for the load, with what they were before.
    if (stretch.ended !== "unwatched" && stretch.ended !== "raised") {
      list.push(deviation(code, stage, stretch.to, detail.replace("%", got), what));
    }
    if (!next) return;
    const again = `the whole ${kept.needMinutes} min again`;
    list.push(deviation("process-restarted", stage, next.from, again, "restarted"));
  });
  return list;
}
