/** What is asked of the planner in the kitchen's own words, and what it answers. */

import type { StageKind } from "../recipe/recipe.ts";

export type PlanUse = "burner" | "canner" | "fridge" | "pot";

/** Hands at the beginning and at the end of a stage that otherwise goes by itself. */
type AttendedEnds = { startMinutes?: number; endMinutes?: number };

export type PlanStage = {
  /** Unique within its batch. */
  id: string;
  kind: StageKind;
  /** Typical or learned length. */
  minutes: number;
  /** Nine times of ten it takes no longer; used where a short window hangs on this stage. */
  p90Minutes?: number;
  /** Hands throughout, for the first five minutes, not at all, or at both ends for so long. */
  hands: "all" | "start" | "none" | AttendedEnds;
  /** Held from start to end, one of each; what the kitchen does not count is never short. */
  uses: readonly PlanUse[];
  /** Earlier stages of the batch, and the minutes from their end to this one's start. */
  after: readonly PlanAfter[];
  /** A stage that may go on for a while: not less and not more, whatever `minutes` says. */
  window?: { minMinutes: number; maxMinutes: number };
  /** True where the day does not wait for it: cooling overnight, curing. */
  afterwards?: boolean;
  /** What has already happened: a stage begun or done is a fact and is not moved. */
  startedMs?: number;
  endedMs?: number;
};

export type PlanAfter = { stage: string; atLeastMinutes?: number; atMostMinutes?: number };

export type PlanBatch = {
  id: string;
  label: string;
  stages: readonly PlanStage[];
  /** Jars in all and jars the canner takes; more than fit become loads of their own. */
  jars?: { count: number; perLoad: number };
};

export type PlanRequest = {
  batches: readonly PlanBatch[];
  /** How many of each; hands are one pair unless said. What is left out is never short. */
  resources: { hands?: number } & Partial<Record<PlanUse, number>>;
  /** The day begins here; nothing is planned before. Epoch milliseconds. */
  startMs: number;
  /** Nothing that has not begun may begin before this; `startMs` where absent. */
  nowMs?: number;
  finishByMs?: number;
  /** Minutes from `startMs` in which nothing may need hands, one span for every night. */
  quiet?: readonly (readonly [number, number])[];
  /** Zone in which the answer tells times. */
  zone: string;
  /** Minutes of one step; 5 where absent. */
  gridMinutes?: number;
  /** Starts of an earlier plan to begin the search with, epoch ms by `batch/stage[@load]`. */
  like?: ReadonlyMap<string, number>;
  /** False where nobody asks what limits the day or stands in the way. */
  explain?: boolean;
  /** The shortest day, or few idle waits first; calm where a finish is wished, else short. */
  prefer?: "short" | "calm";
};

export type PlanTask = {
  batch: string;
  stage: string;
  /** Which load, from 1, where the batch has several. */
  load?: number;
  kind: StageKind;
  startMs: number;
  endMs: number;
  uses: PlanUse[];
  hands: boolean;
  /** When hands are needed, as spans of epoch milliseconds. */
  attended: [number, number][];
};

export type KitchenPlan = {
  feasible: boolean;
  /** By the order asked for (shortest, or calmest in time) nothing better exists. */
  proved: boolean;
  startMs: number;
  /** The end of the last stage the day waits for; `startMs` without a plan. */
  finishMs: number;
  minutes: number;
  /** No plan of the day takes less, in minutes. */
  atLeastMinutes: number;
  /** Idle minutes between stages that follow each other, in all. */
  idleMinutes: number;
  tasks: PlanTask[];
  /** What limits the day, or what stands in the way and what would fit; one sentence each. */
  why: string[];
};
