/** What is asked of the planner in the kitchen's own words, and what it answers. */

import type { StageKind } from "../recipe/recipe.ts";

export type PlanUse = "burner" | "canner" | "fridge" | "pot";

/** Hands at the beginning and the end of a stage that otherwise runs by itself. */
type AttendedEnds = { startMinutes?: number; endMinutes?: number };

export type PlanStage = {
  /** Unique within its batch. */
  id: string;
  kind: StageKind;
  /** The pot it is in, where the recipe names one. */
  pot?: string;
  /** Typical or learned length. */
  minutes: number;
  /** Nine times in ten it takes no longer; used where a short window depends on this stage. */
  p90Minutes?: number;
  /** Hands throughout, for the first five minutes, not at all, or at both ends for some minutes. */
  hands: "all" | "start" | "none" | AttendedEnds;
  /** Occupied from start to end, one of each; what the kitchen does not count never runs short. */
  uses: readonly PlanUse[];
  /** Earlier stages of the batch, and the minutes from their end to this one's start. */
  after: readonly PlanAfter[];
  /** The range within which a stage may go on, whatever `minutes` says. */
  window?: { minMinutes: number; maxMinutes: number };
  /** True where the day does not have to wait for it: cooling overnight, curing. */
  afterwards?: boolean;
  /** What is done within it at a moment of its own, minutes from its start. */
  moments?: readonly { what: MomentKind; minute: number }[];
  /** What has already happened: a stage that has begun or is done is a fact and is not moved. */
  startedMs?: number;
  endedMs?: number;
};

/** Jars go in, the heat goes off, jars are lifted out; a pot is looked at. */
export type MomentKind = "load" | "heat-off" | "lift-out" | "look";

export type PlanAfter = { stage: string; atLeastMinutes?: number; atMostMinutes?: number };

/** A lot of a batch: its pounds of produce, and the jars it makes. */
export type PlanLot = {
  id: string;
  variety: string | null;
  weightLb: number;
  jars: number | null;
};

export type PlanBatch = {
  /** That of its first lot. */
  id: string;
  label: string;
  /** The lots that share its pots, in the order they are filled; absent of a running batch. */
  lots?: readonly PlanLot[];
  stages: readonly PlanStage[];
  /** None of it begins before this. Epoch milliseconds. */
  notBeforeMs?: number;
  /** The number of jars and how many the canner takes; more than fit become several loads. */
  jars?: { count: number; perLoad: number };
};

export type PlanRequest = {
  batches: readonly PlanBatch[];
  /** How many of each; one pair of hands unless given. What is left out never runs short. */
  resources: { hands?: number } & Partial<Record<PlanUse, number>>;
  /** The day begins here; nothing is planned before. Epoch milliseconds. */
  startMs: number;
  /** What has not begun may not begin before this; `startMs` where absent. */
  nowMs?: number;
  finishByMs?: number;
  /**
   * Minutes from `startMs` in which nothing may need hands, and no pot or canner is on: one span
   * for every night, and for every time the cook is out.
   */
  quiet?: readonly (readonly [number, number])[];
  /** The same where the cook is near the stove, as at a meal: what is on goes on. */
  meals?: readonly (readonly [number, number])[];
  /** Canners that are hot, warming or in use now; the others have to be lit. None where absent. */
  hotCanners?: number;
  /** Zone for the times in the answer. */
  zone: string;
  /** Minutes of one step; 5 where absent. */
  gridMinutes?: number;
  /** Starts in an earlier plan, to begin the search with, epoch ms by `batch/stage[@load]`. */
  like?: ReadonlyMap<string, number>;
  /** False where nobody asks what limits the day or stands in the way. */
  explain?: boolean;
  /** The shortest day, or few idle waits first; calm where a finish is asked for, else short. */
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
  /** What is done within it at a moment of its own, in order, in epoch milliseconds. */
  moments: { what: MomentKind; ms: number }[];
};

export type KitchenPlan = {
  feasible: boolean;
  /** No better plan exists by the order asked for (shortest, or calmest in time). */
  proved: boolean;
  startMs: number;
  /** The end of the last stage the day waits for; `startMs` without a plan. */
  finishMs: number;
  minutes: number;
  /** No plan for the day takes less than this, in minutes. */
  atLeastMinutes: number;
  /** Total idle minutes between consecutive stages. */
  idleMinutes: number;
  tasks: PlanTask[];
  /** What limits the day, or what stands in the way and what would fit; one sentence each. */
  why: string[];
};

/** What sharing pots saves against doing each lot alone; less than nothing is a loss. */
export type Saving = {
  /** By which the day is shorter. */
  minutes: number;
  /** By which hands are needed for less. */
  handsMinutes: number;
  loads: number;
};
