import { rulesOf } from "../kitchen/stages/kinds.ts";
import type { PlanAfter, PlanBatch, PlanStage } from "./plan-request.ts";

/** A maximum of up to this many minutes is a short window, which leaves no time for other work. */
export const SHORT_WINDOW_MINUTES = 30;

/** The stage in which a batch's canner is lit and warms up. */
export const CANNER_STAGE = "canner";

/** A stage as it is planned: of a batch, and of one of its loads where there are several. */
export type PlanStep = PlanStage & {
  batch: string;
  /** The stage's own id, without the load. */
  stage: string;
  load?: number;
};

/**
 * The stages of a batch, with those of the canner repeated for every load: the canner's own stage,
 * what short windows tie to it (a hot pack is filled just in time), and everything after it.
 * Filling and handwork are divided among the loads by jars.
 */
export function planSteps(batch: PlanBatch): PlanStep[] {
  const { count, perLoad } = batch.jars ?? { count: 1, perLoad: 1 };
  if (!(perLoad > 0)) throw new RangeError(`${batch.label}: a load takes ${perLoad} jars`);
  const loads = Math.max(1, Math.ceil(count / perLoad));
  const single = (stage: PlanStage) => ({ ...stage, batch: batch.id, stage: stage.id });
  if (loads === 1) return batch.stages.map(single);
  const repeated = repeatedStages(batch.stages);
  return batch.stages.flatMap((stage): PlanStep[] => {
    if (!repeated.has(stage.id)) return [single(stage)];
    return Array.from({ length: loads }, (_, l) => {
      const share = Math.min(perLoad, count - l * perLoad) / count;
      return {
        ...forLoad(stage, share),
        id: loadStepId(stage.id, l + 1),
        batch: batch.id,
        stage: stage.id,
        load: l + 1,
        after: stage.after.map((link) =>
          linkForLoad(link, { repeated, stages: batch.stages }, l + 1),
        ),
      };
    });
  });
}

/** The id of a stage's step for one load. */
function loadStepId(stage: string, load: number): string {
  return `${stage}@${load}`;
}

function forLoad(stage: PlanStage, share: number): PlanStage {
  if (!rulesOf(stage).plan.byJars) return stage;
  const { p90Minutes, ...rest } = stage;
  const scaled = { ...rest, minutes: stage.minutes * share };
  return p90Minutes === undefined ? scaled : { ...scaled, p90Minutes: p90Minutes * share };
}

function takesBurner(stage: PlanStage): boolean {
  return rulesOf(stage).plan.burner || stage.uses.includes("burner");
}

/** A pot that was made once for all loads is kept hot, or heated again, for the later ones. */
function linkForLoad(
  link: PlanAfter,
  { repeated, stages }: { repeated: ReadonlySet<string>; stages: readonly PlanStage[] },
  load: number,
): PlanAfter {
  if (repeated.has(link.stage)) return { ...link, stage: loadStepId(link.stage, load) };
  const before = stages.find(({ id }) => id === link.stage);
  if (load === 1 || !before || !takesBurner(before)) return link;
  const { atMostMinutes, ...rest } = link;
  return rest;
}

function repeatedStages(stages: readonly PlanStage[]): Set<string> {
  const inCanner = stages.filter(({ id, uses }) => uses.includes("canner") && id !== CANNER_STAGE);
  const repeated = new Set(inCanner.map(({ id }) => id));
  for (let size = -1; size !== repeated.size; ) {
    size = repeated.size;
    for (const stage of stages) {
      if (!repeated.has(stage.id)) continue;
      for (const { stage: before, atMostMinutes } of stage.after)
        if (atMostMinutes !== undefined && atMostMinutes <= SHORT_WINDOW_MINUTES)
          repeated.add(before);
    }
  }
  for (let size = -1; size !== repeated.size; ) {
    size = repeated.size;
    for (const stage of stages)
      if (stage.after.some(({ stage: before }) => repeated.has(before))) repeated.add(stage.id);
  }
  return repeated;
}
