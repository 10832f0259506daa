/** A plan as text: when to do what, drawn as a timeline, and what limits it. */
import { hasRole, rulesOf } from "../../kitchen/stages/kinds.ts";
import { localFields, MINUTE_MS } from "../../kitchen/time.ts";
import type { KitchenPlan, PlanBatch, PlanRequest, PlanTask } from "../../plan/plan-request.ts";
import { loadJars } from "../../plan/shared-pots.ts";

const WIDTH = 60;

function clock(ms: number, startMs: number, zone: string): string {
  const { hour, minute, day } = localFields(ms, zone);
  const first = localFields(startMs, zone).day;
  const time = `${String(hour).padStart(2, "0")}:${String(minute).padStart(2, "0")}`;
  return day === first ? `${time}     ` : `${time} (${day})`.padEnd(10);
}

function span(minutes: number): string {
  const hours = Math.floor(minutes / 60);
  const rest = Math.round(minutes % 60);
  return hours === 0 ? `${rest} min` : `${hours} h${rest ? ` ${rest} min` : ""}`;
}

/** One line per task, in the order of the day. */
function taskLine(request: PlanRequest, task: PlanTask): string {
  const load = task.load === undefined ? "" : `, load ${task.load}`;
  const batch = request.batches.find((one) => one.id === task.batch);
  const label = batch?.label ?? task.batch;
  const from = clock(task.startMs, request.startMs, request.zone);
  const length = span((task.endMs - task.startMs) / MINUTE_MS);
  const hands = task.hands ? "hands" : "     ";
  return `${from} ${hands}  ${label}: ${task.stage}${load} (${length})${jarsOf(batch, task)}`;
}

/** Of a filling of several lots: ": 8 Provider, 1 Dragon Tongue". */
function jarsOf(batch: PlanBatch | undefined, task: PlanTask): string {
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
  const tasks = [...plan.tasks].sort((a, b) => a.startMs - b.startMs);
  const proved = plan.proved ? "proved: no plan is shorter" : "not proved shortest";
  const [from, to] = [startMs, plan.finishMs].map((ms) => clock(ms, startMs, zone).trim());
  const lines = [
    `From ${from} to ${to}: ${span(plan.minutes)} (${proved})`,
    "",
    ...tasks.map((task) => taskLine(request, task)),
    "",
    ...bars(request, plan),
    "  H hands, C canner, - waits by itself",
    "",
    ...plan.why,
    ...notes,
  ];
  return `${lines.join("\n")}\n`;
}
