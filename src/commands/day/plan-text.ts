/** A plan as text: when to do what, drawn as a timeline, and what limits it. */
import { hasRole, rulesOf } from "../../kitchen/stages/kinds.ts";
import { localFields } from "../../kitchen/time.ts";
import type { KitchenPlan, PlanBatch, PlanRequest, PlanTask } from "../../plan/plan-request.ts";
import { loadJars } from "../../plan/shared-pots.ts";
import { type WallRow, wallRows } from "../../plan/wall-rows.ts";

const WIDTH = 60;

export function clock(ms: number, startMs: number, zone: string): string {
  const { hour, minute, day } = localFields(ms, zone);
  const first = localFields(startMs, zone).day;
  const time = `${String(hour).padStart(2, "0")}:${String(minute).padStart(2, "0")}`;
  return day === first ? `${time}     ` : `${time} (${day})`.padEnd(10);
}

export function span(minutes: number): string {
  const hours = Math.floor(minutes / 60);
  const rest = Math.round(minutes % 60);
  return hours === 0 ? `${rest} min` : `${hours} h${rest ? ` ${rest} min` : ""}`;
}

/** One line for each row of the wall. */
function rowLine(request: PlanRequest, row: WallRow): string {
  const load = row.load === undefined ? "" : `, load ${row.load}`;
  const batch = request.batches.find(({ id }) => id === row.batch);
  const from = clock(row.ms, request.startMs, request.zone);
  const length = row.minutes === null ? "" : ` (${span(row.minutes)})`;
  const look = row.lookMinutes === null ? "" : `; look every ${row.lookMinutes} min`;
  const hands = row.handsMinutes > 0 ? `hands ${row.handsMinutes}'` : "";
  const where = row.where.length > 0 ? `  [${row.where.join(", ")}]` : "";
  const jars = row.minutes === null ? "" : jarsOf(batch, row.task);
  const what = `${row.label}: ${row.what}${load}${length}${jars}`;
  return `${from} ${hands.padEnd(10)} ${what}${where}${look}`;
}

/** Of a filling of several lots: ": 8 Provider, 1 Dragon Tongue". */
export function jarsOf(batch: PlanBatch | undefined, task: PlanTask): string {
  const { lots = [] } = batch ?? {};
  if (!batch || lots.length < 2 || !hasRole(task, "filling")) return "";
  const parts = (loadJars(batch)[(task.load ?? 1) - 1] ?? []).map(({ lot, jars }) => {
    const at = lots.findIndex(({ id }) => id === lot);
    return `${jars} ${lots[at]?.variety ?? `of lot ${at + 1}`}`;
  });
  return `: ${parts.join(", ")}`;
}

/** A bar for each batch and for each scarce thing, over the whole day. */
function bars(request: PlanRequest, plan: KitchenPlan): string[] {
  const { startMs } = plan;
  const daily = plan.tasks.filter((task) => rulesOf(task).ofCanner !== "after");
  const endMs = Math.max(plan.finishMs, ...daily.map((task) => task.endMs));
  const at = (ms: number) =>
    Math.min(WIDTH, Math.max(0, Math.round(((ms - startMs) / (endMs - startMs)) * WIDTH)));
  const bar = (spans: [number, number, string][]) => {
    const cells = Array.from({ length: WIDTH }, () => ".");
    for (const [from, to, mark] of spans) {
      for (let cell = at(from); cell < Math.max(at(from) + 1, at(to)) && cell < WIDTH; cell++) {
        cells[cell] = mark;
      }
    }
    return cells.join("");
  };
  const width = Math.max(6, ...request.batches.map((batch) => batch.label.length));
  const lines = request.batches.map((batch) => {
    const own = daily.filter((task) => task.batch === batch.id);
    const spans = own.map((task): [number, number, string] => {
      const mark = task.uses.includes("canner") ? "C" : task.hands ? "H" : "-";
      return [task.startMs, task.endMs, mark];
    });
    return `${batch.label.padEnd(width)}  ${bar(spans)}`;
  });
  const hands = plan.tasks.flatMap((task) =>
    task.attended.map(([from, to]): [number, number, string] => [from, to, "H"]),
  );
  return [...lines, `${"hands".padEnd(width)}  ${bar(hands)}`];
}

export function planText(request: PlanRequest, plan: KitchenPlan, notes: string[]): string {
  if (!plan.feasible) {
    return `${["No plan fits.", ...plan.why.map((why) => `  ${why}`), ...notes].join("\n")}\n`;
  }
  const { zone, startMs } = request;
  const proved = plan.proved ? "proved: no plan is shorter" : "not proved shortest";
  const [from, to] = [startMs, plan.finishMs].map((ms) => clock(ms, startMs, zone).trim());
  const lines = [
    `From ${from} to ${to}: ${span(plan.minutes)} (${proved})`,
    "",
    ...wallRows(request, plan).map((row) => rowLine(request, row)),
    "",
    ...bars(request, plan),
    "  H hands, C canner, - waits by itself",
    "",
    ...plan.why,
    ...notes,
  ];
  return `${lines.join("\n")}\n`;
}
