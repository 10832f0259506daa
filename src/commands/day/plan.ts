/** `brinebell plan`: several batches over one kitchen and one pair of hands. */

import type { State } from "../../kitchen/state.ts";
import { isoWithOffset, MINUTE_MS } from "../../kitchen/time.ts";
import { type DayBatch, dayBatch } from "../../plan/day-batches.ts";
import { planKitchen } from "../../plan/kitchen-plan.ts";
import { lessonsOf } from "../../plan/learning/learn.ts";
import { fitsToday } from "../../plan/one-day.ts";
import type {
  KitchenPlan,
  PlanBatch,
  PlanRequest,
  PlanTask,
  Saving,
} from "../../plan/plan-request.ts";
import {
  eachAlone,
  loadJars,
  savedBySharing,
  savingWords,
  sharingPots,
} from "../../plan/shared-pots.ts";
import { seededRandom } from "../../plan/solver/random.ts";
import { quietSpans, stageLength, type Wanted, wantedBatch } from "../../plan/wanted-batch.ts";
import type { Library } from "../../recipe/library.ts";
import type { Stage } from "../../recipe/recipe.ts";
import type { Units } from "../../reckon/metric-words.ts";
import { parseQuantity, quoted } from "../../reckon/quantity.ts";
import { nightOf } from "../../reckon/quiet-hours.ts";
import { G_PER_LB } from "../../reckon/units.ts";
import { CALLS } from "../call/calls.ts";
import { type CommandResult, failed } from "../call/command-result.ts";
import { type KitchenWish, readKitchenOptions } from "../call/kitchen-options.ts";
import { isOn, type Options, optionValue, optionValues, parseOptions } from "../call/options.ts";
import { recipeToBegin } from "../recipes/recipe-to-begin.ts";
import { type ReviewIo, writtenOutput } from "../record/review-io.ts";
import { type BeginWish, beginPlan, oddWithBegin } from "./begin-plan.ts";
import {
  CallFault,
  fault,
  GRID_MINUTES,
  grid,
  kitchenOf,
  momentOf,
  nightWanted,
} from "./plan-call.ts";
import { planPage } from "./plan-page.ts";
import { planText } from "./plan-text.ts";

export type PlanIo = {
  library(): Promise<Library> | Library;
  /** The recorded kitchen, for its altitude, canners, burners and what was learned. */
  kitchen(): Promise<State | undefined> | State | undefined;
  zone: string;
  nowMs: number;
  /** Milliseconds since some fixed moment, the outer limit of the search. */
  elapsedMs(): number;
  /** Where a plan that is to be begun is written down. */
  record: ReviewIo;
};

/** Options that plan for a kitchen other than the recorded one. */
const WHAT_IF = [
  ...["altitude", "gauge", "canner-holds", "jar", "pack", "burners", "canners", "away", "meal"],
  "html",
];

/** Searching stops after this many steps of work, or this long. */
const NODE_BUDGET = 400_000;
const LIMIT_MS = 2500;
const MOST_BATCHES = 200;
/** Additional nights kept quiet, where a plan reaches further. */
const MANY_NIGHTS = 10;
const DEFAULT_ALTITUDE_NOTE =
  "the altitude is not known: times are for the lowest band; set it with --altitude";

export async function planCommand(args: string[], io: PlanIo): Promise<CommandResult> {
  const parsed = parseOptions(args, CALLS.plan.options);
  if (!parsed.ok) return failed(2, `plan: ${parsed.error}`);
  const wish = readKitchenOptions(parsed.value);
  if (!wish.ok) return failed(2, `plan: ${wish.error}`);
  const odd = isOn(parsed.value, "begin")
    ? oddWithBegin(WHAT_IF.filter((name) => optionValue(parsed.value, name) !== undefined))
    : undefined;
  if (odd) return odd;
  let units: Units | undefined;
  try {
    const kept = await io.kitchen();
    units = kept?.kitchen.units;
    const asked = await requestOf(parsed.value, wish.value, io, kept);
    const effort = () => ({
      nodeBudget: NODE_BUDGET,
      random: seededRandom(1),
      elapsedMs: sinceNow(io),
      limitMs: LIMIT_MS,
    });
    const { plan, request } = planInQuiet(asked, (one) => planKitchen(one, effort()));
    const json = isOn(parsed.value, "json");
    if (plan.feasible && isOn(parsed.value, "begin"))
      return beginPlan(asked.begin, io.record, json);
    const today = fitsToday(request, plan, effort());
    if (today) plan.why.unshift(today);
    const saving = savedBySharing(request, plan, asked.alone, effort());
    const planned = { request, plan, saving, notes: asked.notes };
    const result = onPage(parsed.value, io, planned) ?? answer(planned, json);
    return { ...result, ...(units ? { units } : {}) };
  } catch (error) {
    if (error instanceof CallFault)
      return { ...failed(error.code, `plan: ${error.message}`), ...(units ? { units } : {}) };
    throw error;
  }
}

/**
 * Plans with as many nights as a day of canning reaches; if the plan goes on past them, again with
 * many more. A plan that goes past those too has only waited for the quiet hours to end: none fits.
 */
function planInQuiet({ request, quiet }: Asked, search: (r: PlanRequest) => KitchenPlan): Planned {
  if (!quiet) return { request, plan: search(request) };
  const planned = (nights: number) => {
    const inQuiet = { ...request, quiet: quiet(nights) };
    const knownMs = request.startMs + Math.max(...inQuiet.quiet.map(([, to]) => to)) * MINUTE_MS;
    const plan = search(inQuiet);
    return { request: inQuiet, plan, ends: !plan.feasible || plan.finishMs <= knownMs };
  };
  const first = planned(0);
  const found = first.ends ? first : planned(MANY_NIGHTS);
  if (found.ends) return found;
  const why = ["the quiet hours leave too little of the day; try shorter ones"];
  const { plan } = found;
  return {
    request: found.request,
    plan: { ...plan, feasible: false, proved: false, tasks: [], why },
  };
}

type Planned = { request: PlanRequest; plan: KitchenPlan };

function sinceNow(io: PlanIo): () => number {
  const from = io.elapsedMs();
  return () => io.elapsedMs() - from;
}

/** The plan as a page, where one is asked for. */
function onPage(options: Options, io: PlanIo, planned: Answered): CommandResult | undefined {
  const path = optionValue(options, "html");
  const { request, plan, saving, notes } = planned;
  if (path === undefined || !plan.feasible) return undefined;
  const content = planPage(request, plan, [...(saving ? [savingWords(saving)] : []), ...notes]);
  return writtenOutput("plan", io.record, options, { path, content, kind: "page" });
}

type Answered = Planned & { saving: Saving | null; notes: string[] };

function answer({ request, plan, saving, notes: all }: Answered, json: boolean): CommandResult {
  const code = plan.feasible ? 0 : 1;
  const notes = [...(saving ? [savingWords(saving)] : []), ...all];
  const iso = (ms: number) => isoWithOffset(ms, request.zone);
  if (!json) return { code, stdout: planText(request, plan, notes), stderr: "" };
  const tasks = plan.tasks.map((task) => ({
    batch: task.batch,
    stage: task.stage,
    ...(task.load === undefined ? {} : { load: task.load }),
    kind: task.kind,
    start: iso(task.startMs),
    end: iso(task.endMs),
    uses: task.uses,
    hands: isAttended(task),
    attended: task.attended.map(([from, to]) => ({ start: iso(from), end: iso(to) })),
    moments: task.moments.map(({ what, ms }) => ({ what, at: iso(ms) })),
  }));
  const report = {
    feasible: plan.feasible,
    start: plan.feasible ? iso(plan.startMs) : null,
    finish: plan.feasible ? iso(plan.finishMs) : null,
    minutes: plan.minutes,
    proved: plan.proved,
    atLeastMinutes: plan.atLeastMinutes,
    batches: request.batches.map(({ id, label, lots = [] }) => ({ id, label, lots })),
    loads: request.batches.flatMap((batch) =>
      loadJars(batch).map((jars, at) => ({ batch: batch.id, load: at + 1, jars })),
    ),
    saving,
    tasks,
    why: [...plan.why, ...notes],
  };
  const stdout = `${JSON.stringify(report, null, 2)}\n`;
  return { code, stdout, stderr: "", forPrograms: true };
}

/** True where the whole task needs hands; a task that needs them now and then lists when. */
function isAttended({ attended, startMs, endMs }: PlanTask): boolean {
  const minutes = attended.reduce((sum, [from, to]) => sum + to - from, 0);
  return minutes > 0 && minutes >= endMs - startMs;
}

type QuietSpans = (moreNights: number) => [number, number][];

type Asked = {
  request: PlanRequest;
  /** The same lots, each with pots of its own. */
  alone: PlanBatch[];
  quiet?: QuietSpans;
  notes: string[];
  begin: BeginWish;
};

async function requestOf(
  options: Options,
  wish: KitchenWish,
  io: PlanIo,
  kept: State | undefined,
): Promise<Asked> {
  const { words } = options;
  if (words.length === 0) fault('name a batch, such as "dilled-green-beans 8lb Provider"');
  if (words.length > MOST_BATCHES) fault(`${words.length} batches are more than ${MOST_BATCHES}`);
  const library = await io.library();
  const kitchen = kitchenOf(options, wish, kept);
  const saidStart = momentOf(options, "start", io);
  const startMs = grid(saidStart ?? io.nowMs);
  const finishByMs = momentOf(options, "finish-by", io);
  if (finishByMs !== undefined && finishByMs <= startMs) {
    fault("--finish-by: that time is past, or before the start");
  }
  const notes = kitchen.altitudeKnown ? [] : [DEFAULT_ALTITUDE_NOTE];
  const taken = new Set<string>();
  const lessons = kept ? lessonsOf(kept) : undefined;
  const wanted = words.map((word) => wantedOf(word, library, taken));
  const made = wanted.map((one) => {
    const found = wantedBatch(one, library, kitchen);
    return found.ok ? found.batch : fault(found.error, found.untested ? 1 : 2);
  });
  const lengthFor = (batch: DayBatch) => (stage: Stage) =>
    stageLength(lessons, batch, stage, kitchen.altitudeFt);
  const shared = sharingPots(made);
  const batches = shared.map((batch) => dayBatch(batch, lengthFor(batch)));
  const night = optionValue(options, "quiet");
  const hours = nightWanted(night, kept?.kitchen.quiet ?? null);
  const daily = (name: string) =>
    optionValues(options, name).map((text) => dailyHours(name, text, startMs, io.zone));
  const away = daily("away");
  const quiet: QuietSpans | undefined =
    hours || away.length > 0
      ? (more) => [...(hours ? quietSpans(hours, startMs, io.zone, batches, more) : []), ...away]
      : undefined;
  return {
    notes,
    alone: shared.flatMap((batch) => eachAlone(batch, lengthFor)),
    begin: {
      wanted,
      zone: io.zone,
      ...(saidStart === undefined ? {} : { startMs: saidStart }),
      ...(finishByMs === undefined ? {} : { finishByMs }),
      ...(night === undefined ? {} : { quiet: night }),
    },
    request: {
      batches,
      resources: { hands: 1, burner: kitchen.burners, canner: kitchen.canners },
      startMs,
      zone: io.zone,
      gridMinutes: GRID_MINUTES,
      meals: daily("meal"),
      ...(finishByMs === undefined ? {} : { finishByMs }),
    },
    ...(quiet ? { quiet } : {}),
  };
}

const WEIGHT = /(?:^|\s)(-?\d[\d./\s]*(?:lbs?|pounds?|kg|g|oz)\b)/i;

/** `RECIPE WEIGHT [VARIETY]` as one batch of the day. */
function wantedOf(text: string, library: Library, taken: Set<string>): Wanted {
  const match = WEIGHT.exec(text);
  const name = (match ? text.slice(0, match.index) : text).trim();
  const variety = match ? text.slice(match.index + match[0].length).trim() : "";
  const found = recipeToBegin(library, name);
  if (!found.ok) return fault(found.error, found.code);
  const { recipe } = found;
  const weightLb = match ? poundsOf(match[1] ?? "", text) : recipe.yield.weightLb;
  let id = variety ? `${recipe.id}:${variety}` : recipe.id;
  for (let n = 2; taken.has(id); n++) id = `${recipe.id}${variety ? `:${variety}` : ""}#${n}`;
  taken.add(id);
  return { id, recipe, variety: variety || null, weightLb };
}

function poundsOf(text: string, entry: string): number {
  const read = parseQuantity(text, ["mass"], quoted(entry));
  if (!read.ok) return fault(read.error);
  const pounds = read.value.value / G_PER_LB;
  if (!(pounds > 0)) fault(`${quoted(entry)}: a weight of zero makes no batch`);
  return pounds;
}

/** Hours of the first day, as minutes from its start. */
function dailyHours(name: string, text: string, startMs: number, zone: string): [number, number] {
  const hours = nightOf(text);
  if (!hours) return fault(`--${name}: ${quoted(text)} is not a span of hours; write 14:00-15:00`);
  const [from] = quietSpans(hours, startMs, zone, []).filter(([, to]) => to > 0);
  return from ?? [0, 0];
}
