import { SHORT_WINDOW_MINUTES } from "./plan-loads.ts";
import type { PlanStage, PlanUse } from "./plan-request.ts";

/** What has to be so before a stage that opens a short window may start. */
export type WindowGate = {
  /** Stages of the batch that must be done. */
  done: string[];
  /** What must be free, and stay so, for what the stage leads to. */
  free: (PlanUse | "hands")[];
};

/**
 * The gate of a stage: everything that has to follow it within a short window, one such window
 * leading to the next, and what that needs besides. Null where the stage opens no short window.
 */
export function windowGate(stages: readonly PlanStage[], id: string): WindowGate | null {
  const chain = new Set([id]);
  for (let size = 0; size !== chain.size; ) {
    size = chain.size;
    for (const stage of stages) {
      const hurried = stage.after.some(
        ({ stage: before, atMostMinutes }) =>
          chain.has(before) && atMostMinutes !== undefined && atMostMinutes <= SHORT_WINDOW_MINUTES,
      );
      if (hurried) chain.add(stage.id);
    }
  }
  if (chain.size === 1) return null;
  const behind = followersOf(stages, id);
  const done = new Set<string>();
  const free = new Set<PlanUse | "hands">();
  const own = stages.find((stage) => stage.id === id);
  for (const stage of stages) {
    if (!chain.has(stage.id) || stage.id === id) continue;
    for (const { stage: before } of stage.after) if (!behind.has(before)) done.add(before);
    for (const use of stage.uses) if (!own?.uses.includes(use)) free.add(use);
    if (stage.hands !== "none") free.add("hands");
  }
  return { done: [...done], free: [...free] };
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
