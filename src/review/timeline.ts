/** A batch's stages over time, planned and actual, for drawing. Wall milliseconds. */
import { loadsOf } from "../kitchen/jars.ts";
import { rulesOf } from "../kitchen/stages/kinds.ts";
import { type Batch, type Gap, type State, wallOf } from "../kitchen/state.ts";
import { MINUTE_MS } from "../kitchen/time.ts";
import { unanswered } from "../kitchen/unbroken-time.ts";
import { stagesInOrder } from "./batch-log.ts";

export type TimelineMark = { at: number; kind: "lost" | "restart"; text: string };

export type TimelineRow = {
  id: string;
  title: string;
  kind: string;
  state: string;
  from: number;
  to: number;
  /** Still going on: `to` is now. */
  open: boolean;
  plannedMinMs: number;
  plannedMaxMs: number;
  marks: TimelineMark[];
  /** Times in which nobody watched; `held` once somebody said whether the condition held. */
  gaps: { from: number; to: number; held: boolean | null }[];
};

export type Timeline = { rows: TimelineRow[]; zone: string };

/** The stages that were begun, in the order of the log; curing and storing are left out. */
export function timelineOf(state: State, batch: Batch, now: number): Timeline {
  const wall = (t: number) => Math.round(wallOf(state, t));
  const rows: TimelineRow[] = [];
  for (const { id, run } of stagesInOrder(batch, loadsOf(state, batch))) {
    // Dates are not work: they would only squeeze everything else.
    if (run.startedAt === undefined || rulesOf(run.spec).ends === "date") continue;
    const { window, typicalMinutes, kind, title } = run.spec;
    const need = run.kept && run.kept.needMinutes > 0 ? run.kept.needMinutes : undefined;
    const end = run.endedAt ?? Math.max(now, run.startedAt);
    rows.push({
      id,
      title,
      kind,
      state: run.state,
      from: wall(run.startedAt),
      to: wall(end),
      open: run.endedAt === undefined,
      plannedMinMs: (window?.minMinutes ?? need ?? typicalMinutes) * MINUTE_MS,
      plannedMaxMs: (window?.maxMinutes ?? need ?? typicalMinutes) * MINUTE_MS,
      marks: marksOf(run.kept?.stretches ?? [], wall),
      gaps: (run.kept?.gaps ?? []).map((gap) => gapOf(gap, wall)),
    });
    const open = run.kept ? unanswered(run.kept) : [];
    if (open.length > 0) {
      const row = rows.at(-1);
      row?.marks.push({ at: wall(open[0]?.from ?? end), kind: "lost", text: "unwatched" });
    }
  }
  return { rows, zone: state.zone };
}

function gapOf(gap: Gap, wall: (t: number) => number): TimelineRow["gaps"][number] {
  return { from: wall(gap.from), to: wall(gap.to), held: gap.held ?? null };
}

function marksOf(
  stretches: readonly { from: number; to?: number; ended?: string }[],
  wall: (t: number) => number,
): TimelineMark[] {
  return stretches.flatMap((stretch, index): TimelineMark[] => {
    const marks: TimelineMark[] = [];
    if (index > 0) marks.push({ at: wall(stretch.from), kind: "restart", text: "begun again" });
    if (stretch.to !== undefined && stretch.ended !== "out") {
      marks.push({ at: wall(stretch.to), kind: "lost", text: stretch.ended ?? "lost" });
    }
    return marks;
  });
}
