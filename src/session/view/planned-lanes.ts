/** Batches that the day's plan has still to begin, in the lanes of the day. */
import { rulesOf } from "../../kitchen/stages/kinds.ts";
import type { State } from "../../kitchen/state.ts";
import type { PlanTask } from "../../plan/plan-request.ts";
import type { LanePart } from "../../ports/view.ts";

/** Adds each task to the first lane of its kind that is free then, up to a wall instant. */
export function addPlanned(
  lanes: Map<string, LanePart[]>,
  state: State,
  planned: readonly PlanTask[],
  until: number,
): void {
  const titles = new Map(state.dayPlan?.items.map((item) => [item.id, item.title]));
  const burners = Array.from({ length: state.kitchen.burners }, (_, n) => `burner ${n + 1}`);
  const canners = state.kitchen.canners.map(({ id }) => id);
  for (const task of planned) {
    const title = titles.get(task.batch);
    if (title === undefined) continue;
    const put = (names: string[], fromWallMs: number, toWallMs: number) => {
      if (fromWallMs >= until || toWallMs <= fromWallMs) return;
      const label = `${title}: ${task.stage}`;
      insert(lanes, names, { fromWallMs, toWallMs, label, phase: "coming" });
    };
    for (const [from, to] of task.attended) put(["hands"], from, to);
    if (task.uses.includes("canner")) put(canners, task.startMs, task.endMs);
    else if (rulesOf(task).plan.burner && task.stage !== "canner")
      put(burners, task.startMs, task.endMs);
  }
}

function insert(lanes: Map<string, LanePart[]>, names: readonly string[], part: LanePart): void {
  const isFree = (name: string) =>
    (lanes.get(name) ?? []).every((other) => {
      return other.toWallMs <= part.fromWallMs || other.fromWallMs >= part.toWallMs;
    });
  const name = names.find(isFree) ?? names.at(-1);
  if (name === undefined) return;
  const parts = [...(lanes.get(name) ?? []), part];
  lanes.set(
    name,
    parts.sort((a, b) => a.fromWallMs - b.fromWallMs),
  );
}
