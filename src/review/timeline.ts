/** A batch's stages over time, planned and actual, for drawing. Wall milliseconds. */
import { agreedStep } from "../kitchen/day/course.ts";
import { loadsWith } from "../kitchen/jars/canner-room.ts";
import type { BatchLot } from "../kitchen/jars/jar.ts";
import { seenFor } from "../kitchen/places.ts";
import { rulesOf } from "../kitchen/stages/kinds.ts";
import { type Batch, type Gap, type StageRun, type State, wallOf } from "../kitchen/state.ts";
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
  /** When it was to go on by the day's plan that was agreed to. */
  agreed?: { from: number; to: number };
  marks: TimelineMark[];
  /** Times in which nobody watched; `held` once somebody said whether the condition held. */
  gaps: { from: number; to: number; held: boolean | null }[];
};

/** What was work in `rows`; in `dates`, the weeks jars were to be left alone, as in curing. */
export type Timeline = { rows: TimelineRow[]; dates: TimelineRow[]; zone: string };

/** The stages begun for some lots, in the order of the log; storing is left out. */
export function timelineOf(
  state: State,
  batch: Batch,
  now: number,
  lots: readonly BatchLot[] = batch.lots,
): Timeline {
  const seen = seenFor(state, batch.id);
  const wall = (t: number) => Math.round(wallOf(seen, t));
  const rows: TimelineRow[] = [];
  const dates: TimelineRow[] = [];
  for (const { id, run, load } of stagesInOrder(batch, loadsWith(state, batch, lots))) {
    const { ends, date } = rulesOf(run.spec);
    const row = rowOf(id, run, now, wall);
    const step = agreedStep(batch, run.id, load ? batch.loads.indexOf(load.id) + 1 : undefined);
    if (row && step) row.agreed = { from: wall(step.from), to: wall(step.to) };
    if (row && ends !== "date") rows.push(row);
    if (row && date === "from") dates.push(datedRow(row));
  }
  return { rows, dates, zone: state.zone };
}

function rowOf(
  id: string,
  run: StageRun,
  now: number,
  wall: (t: number) => number,
): TimelineRow | undefined {
  if (run.startedAt === undefined) return undefined;
  const { window, typicalMinutes, kind, title } = run.spec;
  const need = run.kept && run.kept.needMinutes > 0 ? run.kept.needMinutes : undefined;
  const end = run.endedAt ?? Math.max(now, run.startedAt);
  const marks = marksOf(run.kept?.stretches ?? [], wall);
  const [unwatched] = run.kept ? unanswered(run.kept) : [];
  if (unwatched) marks.push({ at: wall(unwatched.from), kind: "lost", text: "unwatched" });
  return {
    id,
    title,
    kind,
    state: run.state,
    from: wall(run.startedAt),
    to: wall(end),
    open: run.endedAt === undefined,
    plannedMinMs: (window?.minMinutes ?? need ?? typicalMinutes) * MINUTE_MS,
    plannedMaxMs: (window?.maxMinutes ?? need ?? typicalMinutes) * MINUTE_MS,
    marks,
    gaps: (run.kept?.gaps ?? []).map((gap) => gapOf(gap, wall)),
  };
}

/** A date is over when its longest time is, though nobody ends it. */
function datedRow(row: TimelineRow): TimelineRow {
  const until = row.from + row.plannedMaxMs;
  return { ...row, to: Math.min(row.to, until), open: row.open && row.to < until };
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
