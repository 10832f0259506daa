import { DAY_MS, localFields, MINUTE_MS } from "../kitchen/time.ts";
import { formatMinutes } from "../recipe/duration.ts";
import { kitchenProject } from "./kitchen-project.ts";
import type { PlanRequest, PlanTask } from "./plan-request.ts";
import { shareOf } from "./solver/budget.ts";
import type { Effort, Solution } from "./solver/model.ts";
import { solve } from "./solver/solve.ts";

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
  const savings = busiest.map(({ what, spans, units }) => {
    const richer = { ...request.resources, [what]: units! + 1 };
    const { project } = kitchenProject({ ...request, resources: richer });
    const lengthOnly = { ...project, objectives: [{ kind: "length" }] as const };
    const share = shareOf(effort, 1 / busiest.length);
    const again = solve(lengthOnly, { ...share, known: shortest.starts });
    const saved = (shortest.makespan - Math.max(0, again.makespan)) * grid;
    return { what, saved, sure: again.status === "optimal", span: longestStretch(spans, units!) };
  });
  const why = savings
    .filter(({ saved, sure }) => saved > 0 || !sure)
    .sort((a, b) => b.saved - a.saved)
    .map(({ what, saved, sure, span: [from, to] }) => {
      const { busy, more } = WORDS[what];
      const stretch = `${busy} busy from ${when(request, from)} to ${when(request, to)}`;
      if (saved === 0)
        return `${stretch}; there was no time to find out whether ${more} would help`;
      return `${stretch}: ${more} would save ${sure ? "" : "at least "}${formatMinutes(saved)}`;
    });
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

/** The longest stretch in which all units are in use, apart from short gaps. */
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

/** The time of day as `14:05`, with the number of days later where it is not the starting day. */
export function when(request: PlanRequest, ms: number): string {
  const { hour, minute } = localFields(ms, request.zone);
  const clock = `${String(hour).padStart(2, "0")}:${String(minute).padStart(2, "0")}`;
  const days = dayNumber(ms, request.zone) - dayNumber(request.startMs, request.zone);
  if (days <= 0) return clock;
  return days === 1 ? `${clock} on the next day` : `${clock} ${days} days later`;
}

function dayNumber(ms: number, zone: string): number {
  const { year, month, day } = localFields(ms, zone);
  return Math.floor(Date.UTC(year, month - 1, day) / DAY_MS);
}
