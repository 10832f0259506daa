import { heat } from "../kitchen/stages/heat.ts";
import { rulesOf } from "../kitchen/stages/kinds.ts";
import { MINUTE_MS } from "../kitchen/time.ts";
import { CANNER_WARM_UP_MINUTES, HOT_WITHIN_MINUTES } from "../reckon/trade-numbers.ts";
import { HotCanners } from "./hot-canners.ts";
import { CANNER_STAGE, type PlanStep, planSteps, SHORT_WINDOW_MINUTES } from "./plan-loads.ts";
import type { PlanBatch, PlanRequest } from "./plan-request.ts";
import { PRESENCE, ProjectDraft } from "./project-draft.ts";
import type { Objective, Project } from "./solver/model.ts";
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

export type KitchenProject = {
  project: Project;
  placed: PlacedStep[];
  /** The activities in which a cold canner is lit. */
  lightings: string[];
  gridMinutes: number;
};

const START_MINUTES = 5;
/** More pots and canners than any kitchen has on at once. */
const MANY = 1000;

/** Turns the kitchen's request into activities and lags. Throws a RangeError on unknown stages. */
export function kitchenProject(request: PlanRequest): KitchenProject {
  const build = new ProjectBuilder(request);
  for (const batch of request.batches) build.addBatch(planSteps(batch), batch);
  build.lightCanners();
  build.addQuiet();
  return build.result();
}

class ProjectBuilder {
  private readonly request: PlanRequest;
  private readonly grid: number;
  private readonly now: number;
  /** Before which nothing of the batch that is added begins. */
  private from = 0;
  private readonly draft: ProjectDraft;
  private readonly canners: HotCanners;
  private readonly placed: PlacedStep[] = [];
  private lightings: string[] = [];
  /** Until when work that is going on needs hands, in grid steps. */
  private handsUntil = 0;
  private readonly held = new Map<string, number>();
  private readonly capacities: Record<string, number>;
  /** Somebody has to stay in the kitchen, where there are hours in which nobody is. */
  private readonly here: Record<string, number>;

  constructor(request: PlanRequest) {
    this.request = request;
    this.grid = request.gridMinutes ?? 5;
    this.now = this.slot(request.nowMs ?? request.startMs);
    this.here = request.quiet?.length ? { [PRESENCE]: 1 } : {};
    this.capacities = {
      ...request.resources,
      hands: request.resources.hands ?? 1,
      ...(request.quiet?.length ? { [PRESENCE]: MANY } : {}),
    };
    this.draft = new ProjectDraft(this.capacities);
    this.canners = new HotCanners(this.draft, (minutes) => this.up(minutes));
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

  addBatch(steps: readonly PlanStep[], { label, notBeforeMs = 0 }: PlanBatch): void {
    this.from = Math.max(this.now, this.slot(notBeforeMs));
    const hasty = hastySteps(steps);
    const own = new Map<string, PlacedStep>();
    const lit = steps.find(({ stage }) => stage === CANNER_STAGE);
    const toLight = lit?.startedMs === undefined ? lit : undefined;
    for (const step of steps) {
      if (step === toLight) continue;
      const minutes = hasty.has(step.id) ? (step.p90Minutes ?? step.minutes) : step.minutes;
      const length = this.up(step.window?.minMinutes ?? minutes);
      own.set(step.id, this.addStep(step, length, lit !== undefined));
    }
    this.keepForWindows(steps, own);
    for (const step of steps) {
      for (const link of step.after) {
        if (link.stage === toLight?.id) continue;
        const before = own.get(link.stage);
        if (!before) throw new RangeError(`${label}: ${step.id} follows an unknown ${link.stage}`);
        this.link(before, own.get(step.id)!, link.atLeastMinutes ?? 0, link.atMostMinutes);
      }
      const next = own.get(`${step.stage}@${(step.load ?? 0) + 1}`);
      if (step.load !== undefined && next && step.uses.includes("canner"))
        this.draft.follow(own.get(step.id)!.activity, next.activity, 0);
    }
    if (lit) this.holdCanner(steps, own, lit.startedMs !== undefined);
  }

  /** From its first jar on, a load has its canner to itself. */
  private holdCanner(
    steps: readonly PlanStep[],
    own: ReadonlyMap<string, PlacedStep>,
    warm: boolean,
  ): void {
    let claimed = warm;
    for (const step of steps) {
      if (!isLoading(step) || step.startedMs !== undefined) continue;
      const process = own.get(step.id)!;
      const fill = own.get(step.after[0]?.stage ?? "");
      const holds = this.holds(step);
      if (!fill || fill.step.startedMs !== undefined) {
        this.draft.pinned(
          process.activity,
          { name: "hold", offset: 0, duration: process.length },
          holds,
        );
      } else {
        const load = {
          fill: fill.activity,
          process: process.activity,
          fillLength: fill.length,
          processLength: process.length,
        };
        this.canners.add(load, claimed, holds);
      }
      claimed = false;
    }
  }

  /** What a step occupies, of what the kitchen counts. */
  private holds({ uses, kind }: Pick<PlanStep, "uses" | "kind">): Record<string, number> {
    const counted = uses.filter((use) => use in this.capacities).map((use) => [use, 1]);
    return { ...Object.fromEntries(counted), ...(rulesOf({ kind }).plan.present ? this.here : {}) };
  }

  lightCanners(): void {
    const { hotCanners = 0 } = this.request;
    const holds = this.holds({ kind: heat.kind, uses: ["canner", "burner"] });
    this.lightings = this.canners.light(hotCanners, holds, this.now);
  }

  /**
   * The gate rule in the plan: the first stage that opens a short window reserves what the window
   * leads to from the moment it must be free, so that nothing is planned that may not start.
   */
  private keepForWindows(steps: readonly PlanStep[], own: ReadonlyMap<string, PlacedStep>): void {
    const lit = steps.some(({ stage }) => stage === CANNER_STAGE);
    const kept = new Map<string, { step: PlanStep; from: number; to: number }>();
    for (const step of steps) {
      const gate = windowGate(steps, step.id);
      if (!gate || step.startedMs !== undefined) continue;
      for (const id of gate.meanwhile) {
        const quick = own.get(id);
        // What is over by now holds nothing up.
        if (!quick) continue;
        const latest = this.up(SURE_PART * step.minutes) - quick.length;
        if (quick.step.startedMs === undefined)
          this.draft.follow(quick.activity, own.get(step.id)!.activity, -latest);
      }
      for (const { what, withinMinutes, neededMinutes } of gate.free) {
        if (what === "hands" || !(what in this.capacities)) continue;
        if (what === "canner") this.waitForCanner(step, withinMinutes, own);
        const filling = this.fillingBefore(steps, own, step.load);
        const to = this.up(neededMinutes) - filling;
        // Heated sooner than usual, it still keeps hot until its canner is free.
        const sure = Math.ceil(SURE_PART * to) + this.up(HOT_WITHIN_MINUTES);
        const key = `${what} ${step.load ?? 0}`;
        if (to <= (kept.get(key)?.to ?? 0)) continue;
        kept.set(key, { step, from: lit ? sure : this.up(withinMinutes), to });
      }
    }
    for (const [key, { step, from, to }] of kept) {
      const [what = ""] = key.split(" ");
      if (to > from)
        this.draft.pinned(
          own.get(step.id)!.activity,
          { name: `kept-${what}`, offset: from, duration: to - from },
          { [what]: 1 },
        );
    }
  }

  /** How long the load's canner is held while its jars are filled, where it is held. */
  private fillingBefore(
    steps: readonly PlanStep[],
    own: ReadonlyMap<string, PlacedStep>,
    load: number | undefined,
  ): number {
    if (!steps.some(({ stage }) => stage === CANNER_STAGE)) return 0;
    const process = steps.find((step) => isLoading(step) && step.load === load);
    return own.get(process?.after[0]?.stage ?? "")?.length ?? 0;
  }

  /** Food that is packed hot is not heated before there is a hot canner to take it. */
  private waitForCanner(
    step: PlanStep,
    withinMinutes: number,
    own: ReadonlyMap<string, PlacedStep>,
  ): void {
    const { activity, length } = own.get(step.id)!;
    // A canner that waits, hot, has a burner of its own: there is no second to heat the food on.
    if (this.capacities.burner === 1 && step.uses.includes("burner"))
      this.draft.pinned(activity, { name: "hot", offset: 0, duration: length }, { burner: 1 });
    const long = step.minutes >= CANNER_WARM_UP_MINUTES;
    this.canners.wait(activity, long ? this.down(withinMinutes) : 0);
  }

  private addStep(step: PlanStep, planned: number, cannerHeld: boolean): PlacedStep {
    const activity = `${step.batch}/${step.id}`;
    const placed: PlacedStep = { step, activity, length: planned, attended: [], followers: [] };
    this.placed.push(placed);
    const outsideEnd = step.afterwards ?? false;
    if (step.startedMs !== undefined) {
      this.addFact(placed, step.startedMs, outsideEnd);
      return placed;
    }
    const demands: Record<string, number> = {};
    const apart = cannerHeld && step.uses.includes("canner");
    const holds = apart ? {} : this.holds(step);
    const most = step.window ? this.up(step.window.maxMinutes) : planned;
    if (most === planned) Object.assign(demands, holds);
    if (step.hands === "all") demands.hands = 1;
    placed.attended = this.attendedBits(step, planned);
    const earliest = this.from;
    this.draft.add({ id: activity, duration: planned, demands, earliest, outsideEnd });
    if (most !== planned && Object.keys(holds).length > 0)
      this.draft.pinned(activity, { name: "hold", offset: 0, duration: most }, holds);
    if (step.hands !== "all")
      placed.attended.forEach(([offset, duration], b) => {
        this.draft.pinned(activity, { name: `hands${b + 1}`, offset, duration }, { hands: 1 });
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
    this.draft.add({ id: activity, duration: length, demands: {}, ...fixed });
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
      this.draft.occupy(`${activity}#hands`, at, span, { hands: 1 });
      placed.attended.push([offset, span]);
    }
    if (step.hands === "all") placed.attended = [[0, length]];
    if (step.hands === "all") this.handsUntil = Math.max(this.handsUntil, end);
    this.draft.occupy(`${activity}#rest`, this.now, end - this.now, demands);
  }

  private link(before: PlacedStep, next: PlacedStep, least: number, most?: number): void {
    before.followers.push(next.activity);
    if (next.step.startedMs !== undefined) return;
    const { activity: from, length, step } = before;
    const to = next.activity;
    this.draft.follow(from, to, length + this.up(least));
    const limits: number[] = [];
    if (most !== undefined) limits.push(length + Math.max(this.up(least), this.down(most)));
    if (step.window) limits.push(Math.max(length, this.down(step.window.maxMinutes)));
    for (const limit of limits) {
      const started = step.startedMs === undefined ? undefined : this.slot(step.startedMs);
      const past = started !== undefined && started + limit < this.now;
      if (!past) this.draft.follow(to, from, -limit);
    }
  }

  addQuiet(): void {
    const { quiet = [], meals = [] } = this.request;
    const hands = { hands: this.capacities.hands! };
    this.close("quiet", quiet, { ...hands, ...(quiet.length > 0 ? { [PRESENCE]: MANY } : {}) });
    this.close("meal", meals, hands);
  }

  /** Nothing that hands or a cook are needed for lies in these spans, beside what is going on. */
  private close(
    name: string,
    minutes: readonly (readonly [number, number])[],
    demands: Record<string, number>,
  ): void {
    let until = this.handsUntil;
    const spans = minutes.toSorted((a, b) => a[0] - b[0]);
    spans.forEach(([from, to], q) => {
      const start = Math.max(until, this.down(from));
      this.draft.occupy(`${name}${q + 1}`, start, this.up(to) - start, demands);
      until = Math.max(until, this.up(to));
    });
  }

  result(): KitchenProject {
    const { finishByMs, startMs } = this.request;
    const objectives: Objective[] = [{ kind: "length" }, this.idleWaits()];
    const project: Project = {
      activities: this.draft.activities,
      lags: this.draft.lags,
      capacities: this.capacities,
      objectives,
      ...(finishByMs === undefined
        ? {}
        : { deadline: this.down(Math.max(0, finishByMs - startMs) / MINUTE_MS) }),
    };
    const { placed, lightings, grid: gridMinutes } = this;
    return { project, placed, lightings, gridMinutes };
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

/** Whether jars go into the canner with it. */
function isLoading({ stage, uses }: PlanStep): boolean {
  return uses.includes("canner") && stage !== CANNER_STAGE;
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
