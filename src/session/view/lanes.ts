/**
 * The day by what is busy: hands, burners, canners. The past comes from reports, the future from
 * running clocks and each stage's usual length.
 */
import { onlyVariety } from "../../kitchen/jars/lots.ts";
import { isLoad, type Owner, runOfStep } from "../../kitchen/owners.ts";
import { isOver } from "../../kitchen/stage-run.ts";
import { hasRole, isOfCanner, rulesOf } from "../../kitchen/stages/kinds.ts";
import { type StageRun, type State, wallOf } from "../../kitchen/state.ts";
import { HOUR_MS, MINUTE_MS } from "../../kitchen/time.ts";
import type { PlanTask } from "../../plan/plan-request.ts";
import type { DayLane, DayStrip, LanePart } from "../../ports/view.ts";
import { hoursBetween, timeText } from "./clock-text.ts";
import { addPlanned } from "./planned-lanes.ts";

/** How far back and ahead the day is drawn. */
const BACK_MS = 6 * HOUR_MS;
const AHEAD_MS = 10 * HOUR_MS;
const SHORTEST_MS = 2 * HOUR_MS;

type Busy = { owner: Owner; run: StageRun; from: number; to: number; phase: LanePart["phase"] };

/**
 * A lane for hands, for each burner and for each canner in use; empty ones are left out. What the
 * day's plan has still to begin is drawn where the plan has it.
 */
export function dayLanes(state: State, now: number, planned: readonly PlanTask[] = []): DayLane[] {
  const from = now - BACK_MS;
  const to = now + AHEAD_MS;
  const owners = [...Object.values(state.batches), ...Object.values(state.loads)].filter(
    (owner) => owner.state !== "abandoned" && (owner.endedAt ?? now) >= from,
  );
  const all = owners
    .flatMap((owner) => busyTimes(state, owner, now))
    .filter((one) => one.to > from && one.from < to && one.to > one.from)
    .sort((a, b) => a.from - b.from);
  const lanes = new Map<string, Busy[]>();
  const put = (name: string, one: Busy) => lanes.set(name, [...(lanes.get(name) ?? []), one]);
  for (const one of all) {
    if (isLoad(one.owner)) {
      if (rulesOf(one.run.spec).ofCanner !== "after") put(one.owner.canner, one);
    } else if (rulesOf(one.run.spec).plan.burner) put(freeBurner(lanes, one), one);
    if (rulesOf(one.run.spec).shelf === "hands") put("hands", one);
  }
  const order = (name: string) => (name === "hands" ? 0 : name.startsWith("burner") ? 1 : 2);
  const drawn = new Map(
    [...lanes].map(([name, parts]) => [name, parts.map((part) => shown(state, part))]),
  );
  addPlanned(drawn, state, planned, wallOf(state, to));
  return [...drawn]
    .sort(([a], [b]) => order(a) - order(b) || a.localeCompare(b))
    .map(([name, parts]) => ({ name, parts }));
}

/** The lanes with the instants they reach from and to, now among them, and the hours between. */
export function dayStrip(
  state: State,
  now: number,
  planned: readonly PlanTask[] | undefined,
): DayStrip {
  const lanes = dayLanes(state, now, planned);
  const nowWallMs = wallOf(state, now);
  const parts = lanes.flatMap((lane) => lane.parts);
  const fromWallMs = Math.min(nowWallMs, ...parts.map((part) => part.fromWallMs));
  const last = Math.max(nowWallMs, ...parts.map((part) => part.toWallMs));
  const toWallMs = Math.max(last, fromWallMs + SHORTEST_MS);
  const full = lanes.length > 0 ? hoursBetween(fromWallMs, toWallMs) : [];
  const hours = full.map((wallMs) => ({ wallMs, text: timeText(wallMs, state.zone) }));
  return { fromWallMs, toWallMs, lanes, hours };
}

function freeBurner(lanes: Map<string, Busy[]>, one: Busy): string {
  for (let number = 1; ; number++) {
    const name = `burner ${number}`;
    const parts = lanes.get(name) ?? [];
    if (parts.every((part) => part.to <= one.from || part.from >= one.to)) return name;
  }
}

function shown(state: State, { owner, run, from, to, phase }: Busy): LanePart {
  const variety = isLoad(owner) ? null : onlyVariety(owner);
  const label = variety ? `${variety} ` : "";
  return {
    fromWallMs: wallOf(state, from),
    toWallMs: wallOf(state, to),
    label: `${label}${run.spec.title}`,
    phase,
  };
}

/** What a batch or load has done, is doing, and is likely to do next and when. */
function busyTimes(state: State, owner: Owner, now: number): Busy[] {
  const list: Busy[] = [];
  const ends = new Map<string, number>();
  let before = now;
  for (const run of owner.stages) {
    const skip = !isLoad(owner) && isOfCanner(run.spec);
    if (skip || run.state === "skipped" || rulesOf(run.spec).ends === "date") continue;
    if (isOver(run)) {
      const { startedAt: from, endedAt: to } = run;
      if (from !== undefined && to !== undefined)
        list.push({ owner, run, from, to, phase: "been" });
      ends.set(run.id, to ?? now);
      continue;
    }
    if (run.state === "running" && run.startedAt !== undefined) {
      const from = run.startedAt;
      const to = Math.max(now, expectedEnd(run, from));
      list.push({ owner, run, from, to: now, phase: "been" });
      list.push({ owner, run, from: now, to, phase: "now" });
      ends.set(run.id, to);
      before = to;
      continue;
    }
    const after = isLoad(owner)
      ? before
      : Math.max(now, ...run.spec.after.map((one) => ends.get(one.stage) ?? now));
    const from = Math.max(after, cannerReady(state, owner, run, now));
    const to = from + lengthMs(run);
    list.push({ owner, run, from, to, phase: "coming" });
    ends.set(run.id, to);
    before = to;
  }
  return list;
}

function lengthMs(run: StageRun): number {
  const { window, typicalMinutes } = run.spec;
  return (run.kept?.needMinutes || window?.minMinutes || typicalMinutes) * MINUTE_MS;
}

function expectedEnd(run: StageRun, from: number): number {
  const stretch = run.kept?.stretches.at(-1);
  if (stretch && stretch.to === undefined) return stretch.from + lengthMs(run);
  return from + Math.max(lengthMs(run), run.spec.typicalMinutes * MINUTE_MS);
}

/** Jars are not filled before the canner lit for them is hot. */
function cannerReady(state: State, owner: Owner, run: StageRun, now: number): number {
  if (isLoad(owner) || !hasRole(run.spec, "filling")) return now;
  const load = Object.values(state.loads).find(
    (one) => one.batch === owner.id && one.loadedAt === undefined,
  );
  const canner = runOfStep(load, "canner");
  if (canner?.state !== "running" || canner.startedAt === undefined) return now;
  return expectedEnd(canner, canner.startedAt);
}
