/**
 * The scheduling problem in plain data: activities that occupy renewable resources, and lags of
 * either sign between their starts. Times are whole steps of one grid (a minute, five minutes);
 * the engine does not care which.
 */

/** A piece of work that runs without interruption once begun. */
export type Activity = {
  id: string;
  /** Whole grid steps, 0 or more. */
  duration: number;
  /** Units of each resource held from start to end. */
  demands: Readonly<Record<string, number>>;
  /** Earliest and latest start from the origin; equal ones pin the activity. */
  earliest?: number;
  latest?: number;
  /** True where it belongs to no group: all groups may wait for it, and it is placed first. */
  common?: boolean;
  /** True where the activity's end is not part of the length (quiet hours, overnight cooling). */
  outsideEnd?: boolean;
};

/**
 * `start(to) >= start(from) + atLeast`. A negative figure is a maximum lag the other way round:
 * "b at most 10 after a" is `{ from: "b", to: "a", atLeast: -10 }`.
 */
export type Lag = { from: string; to: string; atLeast: number };

/** What to make small: the length, or a weighted sum of starts (idle waits, for one). */
export type Objective =
  | { kind: "length" }
  | { kind: "sum"; terms: readonly { activity: string; weight: number }[] };

export type Project = {
  activities: readonly Activity[];
  lags: readonly Lag[];
  capacities: Readonly<Record<string, number>>;
  /** The latest allowed end of everything that counts towards the length. */
  deadline?: number;
  /** In order of importance; the length alone where absent. */
  objectives?: readonly Objective[];
};

/** How long to search. The same seed and node budget give the same plan on any machine. */
export type Effort = {
  /** Uniform in [0, 1), from a seeded generator. */
  random: () => number;
  /** Schedules built, decisions taken and conflicts met, in all. */
  nodeBudget: number;
  /** Milliseconds since the call began, and the limit; an outer limit only. */
  elapsedMs?: () => number;
  limitMs?: number;
  /** The first plans that are put together are enough: no search goes on from them. */
  glance?: boolean;
  /** A plan to start from; ignored where it breaks a rule of the project. */
  known?: Schedule;
};

/**
 * A small set of constraints that cannot hold together; where none smaller was proved, all that may
 * matter.
 */
export type Conflict = {
  activities: string[];
  lags: Lag[];
  /** True where the end has to be later than the deadline. */
  deadline: boolean;
};

export type Schedule = Readonly<Record<string, number>>;

export type Solution = {
  status: "optimal" | "feasible" | "infeasible" | "unknown";
  /** Start of every activity; empty without a plan. */
  starts: Schedule;
  /** The latest end that counts; -1 without a plan. */
  makespan: number;
  /** No plan is shorter than this. */
  lowerBound: number;
  nodes: number;
  /** One value per objective, in their order; empty without a plan. */
  objectives: number[];
  conflict?: Conflict;
};
