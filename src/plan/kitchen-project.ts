import { MINUTE_MS } from "../kitchen/time.ts";
import { type PlanStep, planSteps, SHORT_WINDOW_MINUTES } from "./plan-loads.ts";
import type { PlanRequest } from "./plan-request.ts";
import type { Activity, Lag, Objective, Project } from "./solver/model.ts";
import { SURE_PART, windowGate } from "./window-gate.ts";

/** A step's place in the project: its activity, its length there, and when hands are needed. */
export type PlacedStep = {
  step: PlanStep;
  activity: string;
  length: number;
  /** Offsets and lengths in grid steps. */
  attended: [number, number][];
  /** Activities that follow it directly. */
  followers: string[];
};

export type KitchenProject = { project: Project; placed: PlacedStep[]; gridMinutes: number };

const START_MINUTES = 5;

/** Turns the kitchen's request into activities and lags. Throws a RangeError on unknown stages. */
export function kitchenProject(request: PlanRequest): KitchenProject {
  const build = new ProjectBuilder(request);
  for (const batch of request.batches) build.addBatch(planSteps(batch), batch.label);
  build.addQuiet();
  return build.result();
}

class ProjectBuilder {
  private readonly request: PlanRequest;
  private readonly grid: number;
  private readonly now: number;
  private readonly activities: Activity[] = [];
  private readonly lags: Lag[] = [];
  private readonly placed: PlacedStep[] = [];
  /** Until when work that is going on needs hands, in grid steps. */
  private handsUntil = 0;
  private readonly held = new Map<string, number>();
  private readonly capacities: Record<string, number>;

  constructor(request: PlanRequest) {
    this.request = request;
    this.grid = request.gridMinutes ?? 5;
    this.now = this.slot(request.nowMs ?? request.startMs);
    this.capacities = { ...request.resources, hands: request.resources.hands ?? 1 };
  }

  private up(minutes: number): number {
    return Math.ceil(minutes / this.grid - 1e-9);
  }

  private down(minutes: number): number {
    return Math.floor(minutes / this.grid + 1e-9);
  }

  private slot(ms: number): number {
    return Math.max(0, this.up((ms - this.request.startMs) / MINUTE_MS));
  }

  addBatch(steps: readonly PlanStep[], label: string): void {
    const hasty = hastySteps(steps);
    const own = new Map<string, PlacedStep>();
    for (const step of steps) {
      const minutes = hasty.has(step.id) ? (step.p90Minutes ?? step.minutes) : step.minutes;
      own.set(step.id, this.addStep(step, this.up(step.window?.minMinutes ?? minutes)));
    }
    this.keepForWindows(steps, own);
    for (const step of steps) {
      for (const link of step.after) {
        const before = own.get(link.stage);
        if (!before) throw new RangeError(`${label}: ${step.id} follows an unknown ${link.stage}`);
        this.link(before, own.get(step.id)!, link.atLeastMinutes ?? 0, link.atMostMinutes);
      }
      const next = own.get(`${step.stage}@${(step.load ?? 0) + 1}`);
      if (step.load !== undefined && next && step.uses.includes("canner"))
        this.lags.push({ from: own.get(step.id)!.activity, to: next.activity, atLeast: 0 });
    }
  }

  /**
   * The gate rule in the plan: the first stage that opens a short window reserves what the window
   * leads to from the moment it must be free, so that nothing is planned that may not start.
   */
  private keepForWindows(steps: readonly PlanStep[], own: ReadonlyMap<string, PlacedStep>): void {
    const kept = new Map<string, { step: PlanStep; from: number; to: number }>();
    for (const step of steps) {
      const gate = windowGate(steps, step.id);
      if (!gate || step.startedMs !== undefined) continue;
      for (const id of gate.meanwhile) {
        const quick = own.get(id)!;
        const latest = this.up(SURE_PART * step.minutes) - quick.length;
        if (quick.step.startedMs === undefined)
          this.lags.push({
            from: quick.activity,
            to: own.get(step.id)!.activity,
            atLeast: -latest,
          });
      }
      for (const { what, withinMinutes, neededMinutes } of gate.free) {
        if (what === "hands" || !(what in this.capacities)) continue;
        const to = this.up(neededMinutes);
        const key = `${what} ${step.load ?? 0}`;
        if (to <= (kept.get(key)?.to ?? 0)) continue;
        kept.set(key, { step, from: this.up(withinMinutes), to });
      }
    }
    for (const [key, { step, from, to }] of kept) {
      const [what = ""] = key.split(" ");
      if (to > from)
        this.pinned(own.get(step.id)!.activity, `kept-${what}`, from, to - from, { [what]: 1 });
    }
  }

  private addStep(step: PlanStep, planned: number): PlacedStep {
    const activity = `${step.batch}/${step.id}`;
    const placed: PlacedStep = { step, activity, length: planned, attended: [], followers: [] };
    this.placed.push(placed);
    const outsideEnd = step.afterwards ?? false;
    if (step.startedMs !== undefined) {
      this.addFact(placed, step.startedMs, outsideEnd);
      return placed;
    }
    const demands: Record<string, number> = {};
    const holds = Object.fromEntries(
      step.uses.filter((use) => use in this.capacities).map((use) => [use, 1]),
    );
    const most = step.window ? this.up(step.window.maxMinutes) : planned;
    if (most === planned) Object.assign(demands, holds);
    if (step.hands === "all") demands.hands = 1;
    placed.attended = this.attendedBits(step, planned);
    const earliest = this.now;
    this.activities.push({ id: activity, duration: planned, demands, earliest, outsideEnd });
    if (most !== planned && Object.keys(holds).length > 0)
      this.pinned(activity, "hold", 0, most, holds);
    if (step.hands !== "all")
      placed.attended.forEach(([offset, length], b) => {
        this.pinned(activity, `hands${b + 1}`, offset, length, { hands: 1 });
      });
    return placed;
  }

  private attendedBits(step: PlanStep, length: number): [number, number][] {
    if (step.hands === "none") return [];
    if (step.hands === "all") return length > 0 ? [[0, length]] : [];
    const ends = step.hands === "start" ? { startMinutes: START_MINUTES } : step.hands;
    const first = Math.min(length, this.up(ends.startMinutes ?? 0));
    const last = Math.min(length - first, this.up(ends.endMinutes ?? 0));
    const bits: [number, number][] = [
      [0, first],
      [length - last, last],
    ];
    return bits.filter(([, minutes]) => minutes > 0);
  }

  private pinned(
    to: string,
    part: string,
    offset: number,
    duration: number,
    demands: Record<string, number>,
  ): void {
    const id = `${to}#${part}`;
    this.activities.push({ id, duration, demands, outsideEnd: true });
    this.lags.push({ from: to, to: id, atLeast: offset }, { from: id, to, atLeast: -offset });
  }

  /**
   * What has begun stays where it is; what is still going on keeps what it occupies from now on.
   */
  private addFact(placed: PlacedStep, startedMs: number, outsideEnd: boolean): void {
    const { step } = placed;
    const start = Math.min(this.now, this.slot(startedMs));
    const running = step.endedMs === undefined;
    if (!running) placed.length = Math.max(0, this.slot(step.endedMs!) - start);
    else if (!step.window) placed.length = Math.max(placed.length, this.now - start + 1);
    const { activity, length } = placed;
    const fixed = { earliest: start, latest: start, outsideEnd };
    this.activities.push({ id: activity, duration: length, demands: {}, ...fixed });
    if (!running) return;
    const end = start + (step.window ? this.up(step.window.maxMinutes) : length);
    const uses: string[] = step.hands === "all" ? [...step.uses, "hands"] : [...step.uses];
    const demands: Record<string, number> = {};
    for (const use of uses) {
      const taken = this.held.get(use) ?? 0;
      if (taken >= (this.capacities[use] ?? 0)) continue;
      this.held.set(use, taken + 1);
      demands[use] = 1;
    }
    const last = step.hands === "all" ? [] : this.attendedBits(step, length);
    for (const [offset, span] of last) {
      const at = start + offset;
      if (at < this.now || offset === 0) continue;
      this.occupy(`${activity}#hands`, at, span, { hands: 1 });
      placed.attended.push([offset, span]);
    }
    if (step.hands === "all") placed.attended = [[0, length]];
    if (step.hands === "all") this.handsUntil = Math.max(this.handsUntil, end);
    this.occupy(`${activity}#rest`, this.now, end - this.now, demands);
  }

  private occupy(id: string, at: number, duration: number, demands: Record<string, number>): void {
    if (duration <= 0) return;
    this.activities.push({ id, duration, demands, earliest: at, latest: at, outsideEnd: true });
  }

  private link(before: PlacedStep, next: PlacedStep, least: number, most?: number): void {
    before.followers.push(next.activity);
    if (next.step.startedMs !== undefined) return;
    const { activity: from, length, step } = before;
    const to = next.activity;
    this.lags.push({ from, to, atLeast: length + this.up(least) });
    const limits: number[] = [];
    if (most !== undefined) limits.push(length + Math.max(this.up(least), this.down(most)));
    if (step.window) limits.push(Math.max(length, this.down(step.window.maxMinutes)));
    for (const limit of limits) {
      const started = step.startedMs === undefined ? undefined : this.slot(step.startedMs);
      const past = started !== undefined && started + limit < this.now;
      if (!past) this.lags.push({ from: to, to: from, atLeast: -limit });
    }
  }

  addQuiet(): void {
    let until = this.handsUntil;
    const spans = (this.request.quiet ?? []).toSorted((a, b) => a[0] - b[0]);
    spans.forEach(([from, to], q) => {
      const start = Math.max(until, this.down(from));
      const duration = this.up(to) - start;
      this.occupy(`quiet${q + 1}`, start, duration, { hands: this.capacities.hands! });
      until = Math.max(until, this.up(to));
    });
  }

  result(): KitchenProject {
    const { finishByMs, startMs } = this.request;
    const objectives: Objective[] = [{ kind: "length" }, this.idleWaits()];
    const project: Project = {
      activities: this.activities,
      lags: this.lags,
      capacities: this.capacities,
      objectives,
      ...(finishByMs === undefined
        ? {}
        : { deadline: this.down(Math.max(0, finishByMs - startMs) / MINUTE_MS) }),
    };
    return { project, placed: this.placed, gridMinutes: this.grid };
  }

  /** The waits between consecutive stages, as a sum of starts. */
  private idleWaits(): Objective {
    const weights = new Map<string, number>();
    const add = (activity: string, weight: number) =>
      weights.set(activity, (weights.get(activity) ?? 0) + weight);
    for (const { activity, followers } of this.placed) {
      for (const follower of followers) {
        add(follower, 1);
        add(activity, -1);
      }
    }
    const terms = [...weights].map(([activity, weight]) => ({ activity, weight }));
    return { kind: "sum", terms };
  }
}

/** Steps that a short window depends on: what opens one, and what else its far end waits for. */
function hastySteps(steps: readonly PlanStep[]): Set<string> {
  const hasty = new Set<string>();
  for (const step of steps) {
    const short = step.after.some(
      ({ atMostMinutes }) => atMostMinutes !== undefined && atMostMinutes <= SHORT_WINDOW_MINUTES,
    );
    if (short) for (const { stage } of step.after) hasty.add(stage);
  }
  return hasty;
}
