import { localFields, MINUTE_MS } from "../kitchen/time.ts";
import { formatMinutes } from "../recipe/duration.ts";
import { shareOf } from "./budget.ts";
import { kitchenProject } from "./kitchen-project.ts";
import type { Effort, Solution } from "./model.ts";
import type { PlanRequest, PlanTask } from "./plan-request.ts";
import { solve } from "./solve.ts";

type Shared = keyof PlanRequest["resources"];

/** Gaps up to this long do not interrupt a busy stretch. */
const GAP_MINUTES = 20;

const WORDS: Record<Shared, { busy: string; more: string }> = {
  hands: { busy: "your hands are", more: "a second pair of hands" },
  canner: { busy: "the canner is", more: "a second canner" },
  burner: { busy: "the burners are", more: "one more burner" },
  fridge: { busy: "the refrigerator is", more: "one more place in the refrigerator" },
  pot: { busy: "the big pots are", more: "one more big pot" },
};

/**
 * What makes the day as long as it is: the busiest things, and what one more of each would save,
 * found by planning again. Where nothing would save anything, the longest batch by itself.
 */
export function whatLimits(
  request: PlanRequest,
  tasks: readonly PlanTask[],
  shortest: Solution,
  effort: Effort,
): string[] {
  const grid = request.gridMinutes ?? 5;
  const busiest = (Object.keys(WORDS) as Shared[])
    .map((what) => ({ what, spans: spansOf(what, tasks), units: unitsOf(request, what) }))
    .filter(({ spans, units }) => spans.length > 0 && units !== undefined)
    .map((use) => ({ ...use, load: minutesOf(use.spans) / use.units! }))
    .sort((a, b) => b.load - a.load)
    .slice(0, 2);
  const why: string[] = [];
  let saves = 0;
  for (const { what, spans, units } of busiest) {
    const richer = { ...request.resources, [what]: units! + 1 };
    const { project } = kitchenProject({ ...request, resources: richer });
    const lengthOnly = { ...project, objectives: [{ kind: "length" }] as const };
    const share = 1 / busiest.length;
    const again = solve(lengthOnly, { ...shareOf(effort, share), known: shortest.starts });
    const saved = (shortest.makespan - again.makespan) * grid;
    if (again.makespan < 0 || saved <= 0) continue;
    const [from, to] = longestStretch(spans, units!);
    const about = again.status === "optimal" ? "" : "at least ";
    const sentence =
      `${WORDS[what].busy} busy from ${clock(from, request.zone)} to ${clock(to, request.zone)}: ` +
      `${WORDS[what].more} would save ${about}${formatMinutes(saved)}`;
    if (saved > saves) why.unshift(sentence);
    else why.push(sentence);
    saves = Math.max(saves, saved);
  }
  return why.length > 0 ? why : [longestBatch(request, tasks)];
}

function unitsOf(request: PlanRequest, what: Shared): number | undefined {
  return what === "hands" ? (request.resources.hands ?? 1) : request.resources[what];
}

function spansOf(what: Shared, tasks: readonly PlanTask[]): [number, number][] {
  if (what === "hands") return tasks.flatMap((task) => task.attended);
  return tasks
    .filter((task) => task.uses.includes(what))
    .map((task): [number, number] => [task.startMs, task.endMs]);
}

function minutesOf(spans: readonly [number, number][]): number {
  return spans.reduce((sum, [from, to]) => sum + (to - from), 0) / MINUTE_MS;
}

/** The longest stretch in which all units are in use, short gaps aside. */
function longestStretch(spans: readonly [number, number][], units: number): [number, number] {
  const moments = spans
    .flatMap(([from, to]) => [
      { at: from, change: 1 },
      { at: to, change: -1 },
    ])
    .sort((a, b) => a.at - b.at || a.change - b.change);
  const full: [number, number][] = [];
  let used = 0;
  for (const { at, change } of moments) {
    const last = full.at(-1);
    if (change > 0 && used + 1 === units) {
      if (last && at - last[1] <= GAP_MINUTES * MINUTE_MS) last[1] = at;
      else full.push([at, at]);
    }
    if (change < 0 && used === units && last) last[1] = at;
    used += change;
  }
  const length = ([from, to]: [number, number]) => to - from;
  const first = spans[0]!;
  return full.reduce((best, span) => (length(span) > length(best) ? span : best), full[0] ?? first);
}

function longestBatch(request: PlanRequest, tasks: readonly PlanTask[]): string {
  let longest = { label: "", minutes: -1 };
  for (const { id, label, stages } of request.batches) {
    const later = new Set(stages.filter((stage) => stage.afterwards).map((stage) => stage.id));
    const own = tasks.filter((task) => task.batch === id && !later.has(task.stage));
    if (own.length === 0) continue;
    const from = Math.min(...own.map((task) => task.startMs));
    const to = Math.max(...own.map((task) => task.endMs));
    const minutes = (to - from) / MINUTE_MS;
    if (minutes > longest.minutes) longest = { label, minutes };
  }
  if (longest.minutes < 0) return "nothing has to be done on the day";
  return (
    `one more of anything would save nothing: ${longest.label} takes ` +
    `${formatMinutes(longest.minutes)} from its first stage to its last`
  );
}

/** Wall time as `14:05`. */
export function clock(ms: number, zone: string): string {
  const { hour, minute } = localFields(ms, zone);
  return `${String(hour).padStart(2, "0")}:${String(minute).padStart(2, "0")}`;
}
