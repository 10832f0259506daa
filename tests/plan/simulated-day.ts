import { planKitchen } from "../../src/plan/kitchen-plan.ts";
import type { PlanBatch, PlanRequest, PlanStage } from "../../src/plan/plan-request.ts";
import { seededRandom } from "../../src/plan/solver/random.ts";
import { waitsFor } from "./may-start.ts";
import { MINUTE } from "./sample-day.ts";

/** How long things really take on one drawn day, in whole minutes, by `batch/stage`. */
export function drawnMinutes(batches: readonly PlanBatch[], seed: number, spread: number) {
  const random = seededRandom(seed);
  const normal = () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
  const drawn = new Map<string, number>();
  for (const { id, stages } of batches) {
    for (const stage of stages) {
      const varies = stage.kind === "hands-on" || stage.kind === "heat" || stage.kind === "fill";
      const factor = varies ? Math.exp(spread * normal()) : 1;
      const typical = stage.window?.minMinutes ?? stage.minutes;
      drawn.set(`${id}/${stage.id}`, Math.max(1, Math.round(typical * factor)));
    }
  }
  return drawn;
}

type Facts = Map<string, { startedMs: number; endedMs?: number }>;

/** One day lived through minute by minute; `careful` replans and keeps gates, else a timetable. */
export class SimulatedDay {
  readonly facts: Facts = new Map();
  private readonly request: PlanRequest;
  private readonly drawn: ReadonlyMap<string, number>;
  private readonly timetable: Map<string, number>;
  private order: string[];
  private readonly careful: boolean;

  constructor(request: PlanRequest, drawn: ReadonlyMap<string, number>, careful: boolean) {
    this.request = { ...request, gridMinutes: 1 };
    this.drawn = drawn;
    this.careful = careful;
    this.timetable = new Map();
    this.order = [];
    this.plan(request.startMs);
  }

  /** Lives through the day; returns the windows that were broken, one line each. */
  live(): string[] {
    const all = this.request.batches.flatMap(({ id, stages }) =>
      stages.map((s) => `${id}/${s.id}`),
    );
    const from = this.request.startMs;
    for (let now = from; this.facts.size < all.length; now += MINUTE) {
      if (now > from + 3000 * MINUTE) throw new Error("the day never ends");
      if (this.endWhatIsDone(now) && this.careful) this.plan(now);
      for (let started = true; started; ) {
        started = this.order.some((key) => this.tryStart(key, now));
        if (started && this.careful) this.plan(now);
      }
    }
    return this.broken();
  }

  private plan(now: number): void {
    const plan = planKitchen(
      { ...this.soFar(now), prefer: "short" },
      {
        random: seededRandom(1),
        nodeBudget: 500,
      },
    );
    if (!plan.feasible) return;
    this.order = plan.tasks.map(({ batch, stage }) => `${batch}/${stage}`);
    for (const { batch, stage, startMs } of plan.tasks)
      this.timetable.set(`${batch}/${stage}`, startMs);
  }

  private soFar(nowMs: number): PlanRequest {
    const batches = this.request.batches.map((batch) => ({
      ...batch,
      stages: batch.stages.map((s) => ({ ...s, ...this.facts.get(`${batch.id}/${s.id}`) })),
    }));
    return { ...this.request, batches, nowMs };
  }

  private endWhatIsDone(now: number): boolean {
    let any = false;
    for (const [key, fact] of this.facts) {
      const minutes = this.drawn.get(key)!;
      if (fact.endedMs !== undefined || this.stageOf(key).window) continue;
      if (now < fact.startedMs + minutes * MINUTE) continue;
      this.facts.set(key, { ...fact, endedMs: now });
      any = true;
    }
    return any;
  }

  private stageOf(key: string): PlanStage {
    const [batch, stage] = key.split("/");
    return this.request.batches
      .find(({ id }) => id === batch)!
      .stages.find(({ id }) => id === stage)!;
  }

  private tryStart(key: string, now: number): boolean {
    const [batch = "", id = ""] = key.split("/");
    const stage = this.stageOf(key);
    const hurried = stage.after.some(({ atMostMinutes = 99 }) => atMostMinutes <= 30);
    const early = now < (this.timetable.get(key) ?? 0) && (this.careful || !hurried);
    if (this.facts.has(key) || early) return false;
    for (const { stage: before } of stage.after) {
      const fact = this.facts.get(`${batch}/${before}`);
      const window = this.stageOf(`${batch}/${before}`).window;
      if (!fact) return false;
      if (window ? now < fact.startedMs + window.minMinutes * MINUTE : fact.endedMs === undefined)
        return false;
    }
    if (!this.free(stage)) return false;
    if (this.careful && waitsFor(this.soFar(now), batch, id).length > 0) return false;
    this.facts.set(key, { startedMs: now });
    for (const { stage: before } of stage.after) {
      const fact = this.facts.get(`${batch}/${before}`)!;
      if (fact.endedMs === undefined)
        this.facts.set(`${batch}/${before}`, { ...fact, endedMs: now });
    }
    return true;
  }

  /** Hands and things that running stages leave over. */
  private free(stage: PlanStage): boolean {
    const running = [...this.facts].filter(([, fact]) => fact.endedMs === undefined);
    const stages = running.map(([key]) => this.stageOf(key));
    const busy = stages.some(({ hands }) => hands === "all");
    if (stage.hands !== "none" && busy) return false;
    return stage.uses.every((use) => {
      const held = stages.filter(({ uses }) => uses.includes(use)).length;
      return held < (this.request.resources[use] ?? 99);
    });
  }

  private broken(): string[] {
    const found: string[] = [];
    for (const { id, stages } of this.request.batches) {
      for (const stage of stages) {
        const start = this.facts.get(`${id}/${stage.id}`)!.startedMs;
        for (const { stage: before, atMostMinutes } of stage.after) {
          const fact = this.facts.get(`${id}/${before}`)!;
          const gap = (start - (fact.endedMs ?? fact.startedMs)) / MINUTE;
          if (
            atMostMinutes !== undefined &&
            gap > atMostMinutes &&
            !this.stageOf(`${id}/${before}`).window
          )
            found.push(`${id}: ${stage.id} ${gap} min after ${before}`);
        }
        const fact = this.facts.get(`${id}/${stage.id}`)!;
        const minutes = ((fact.endedMs ?? fact.startedMs) - fact.startedMs) / MINUTE;
        if (stage.window && minutes > stage.window.maxMinutes)
          found.push(`${id}: ${stage.id} took ${minutes} min`);
      }
    }
    return found;
  }
}
