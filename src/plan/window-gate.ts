import { SHORT_WINDOW_MINUTES } from "./plan-loads.ts";
import type { PlanStage, PlanUse } from "./plan-request.ts";

/** What has to hold before a stage that opens a short window may start. */
type WindowGate = {
  /** Stages of the batch that must be done. */
  done: string[];
  /** Quick stages that may be done early while the stage runs. */
  meanwhile: string[];
  /**
   * What must be free for what follows: within how many minutes of the start, and after how many
   * it is usually needed. Hands must be free from the start.
   */
  free: { what: PlanUse | "hands"; withinMinutes: number; neededMinutes: number }[];
};

/** The part of its usual length that a stage takes even on a quick day. */
export const SURE_PART = 0.6;

/**
 * The gate of a stage: everything that has to follow it through a chain of short windows, and what
 * else that needs. Of two stages that must both be fresh, the one with the shorter window goes
 * last; one that takes less than half as long can be done meanwhile. Null where the stage opens no
 * short window.
 */
export function windowGate(stages: readonly PlanStage[], id: string): WindowGate | null {
  const chain = chainFrom(stages, id);
  const own = stages.find((stage) => stage.id === id);
  if (!own || chain.size === 1) return null;
  const behind = followersOf(stages, id);
  const done = new Set<string>();
  const meanwhile = new Set<string>();
  const free = new Map<PlanUse | "hands", number>();
  for (const stage of stages) {
    const reached = chain.get(stage.id);
    if (reached === undefined || stage === own) continue;
    for (const sibling of siblingsOf(stages, stage, chain)) {
      if (behind.has(sibling.id)) continue;
      const quick = !sibling.window && 2 * sibling.minutes <= own.minutes;
      (quick ? meanwhile : done).add(sibling.id);
    }
    const needs: (PlanUse | "hands")[] = stage.uses.filter((use) => !own.uses.includes(use));
    if (stage.hands !== "none") needs.push("hands");
    for (const what of needs)
      free.set(what, Math.min(free.get(what) ?? Number.POSITIVE_INFINITY, reached));
  }
  return {
    done: [...done],
    meanwhile: [...meanwhile],
    free: [...free].map(([what, neededMinutes]) => ({
      what,
      withinMinutes: what === "hands" ? 0 : SURE_PART * neededMinutes,
      neededMinutes,
    })),
  };
}

/** The stages chained by short windows, and the usual minutes until each begins. */
function chainFrom(stages: readonly PlanStage[], id: string): Map<string, number> {
  const chain = new Map([[id, 0]]);
  for (let size = 0; size !== chain.size; ) {
    size = chain.size;
    for (const stage of stages) {
      if (chain.has(stage.id)) continue;
      for (const { stage: before, atMostMinutes = Number.POSITIVE_INFINITY } of stage.after) {
        const begins = chain.get(before);
        if (begins === undefined || atMostMinutes > SHORT_WINDOW_MINUTES) continue;
        const length = stages.find((other) => other.id === before)?.minutes ?? 0;
        chain.set(stage.id, Math.max(chain.get(stage.id) ?? 0, begins + length));
      }
    }
  }
  return chain;
}

/** What else `stage` follows, with a longer window or none. */
function siblingsOf(
  stages: readonly PlanStage[],
  stage: PlanStage,
  chain: ReadonlyMap<string, number>,
): PlanStage[] {
  const limit = (minutes: number | undefined) => minutes ?? Number.POSITIVE_INFINITY;
  const hurried = stage.after.filter((link) => chain.has(link.stage));
  const tightest = Math.min(...hurried.map((link) => limit(link.atMostMinutes)));
  const slower = stage.after.filter((link) => limit(link.atMostMinutes) > tightest);
  return stages.filter(({ id }) => slower.some((link) => link.stage === id));
}

/** The stage itself and all that comes after it. */
function followersOf(stages: readonly PlanStage[], id: string): Set<string> {
  const behind = new Set([id]);
  for (let size = 0; size !== behind.size; ) {
    size = behind.size;
    for (const stage of stages)
      if (stage.after.some(({ stage: before }) => behind.has(before))) behind.add(stage.id);
  }
  return behind;
}
