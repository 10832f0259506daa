/**
 * The day's plan as the day goes by: worked out when it is asked for, and again at every start and
 * finish of a stage, for what has not begun. What has to survive a crash is in the log; the tasks
 * and their order are worked out again.
 */
import type { Command, SlotsOf } from "../../kitchen/command.ts";
import type { LotToPlan } from "../../kitchen/day/wanted.ts";
import { handsBusy } from "../../kitchen/decide/begin/planned-begin.ts";
import { planIds } from "../../kitchen/decide/day-plan.ts";
import type { Decision, Wish } from "../../kitchen/decide/decision.ts";
import { planKey } from "../../kitchen/due-key.ts";
import type { DatedFact, PlannedItem, QuietHours } from "../../kitchen/events.ts";
import { severalRun } from "../../kitchen/spoken-names.ts";
import { type DayPlan as Kept, kitchenTimeOf, type State } from "../../kitchen/state.ts";
import { MINUTE_MS, parseIso } from "../../kitchen/time.ts";
import { dayRequest } from "../../plan/day-request.ts";
import { planKitchen } from "../../plan/kitchen-plan.ts";
import { type Lessons, lessonsOf } from "../../plan/learning/learn.ts";
import { fitsToday } from "../../plan/one-day.ts";
import type {
  KitchenPlan,
  PlanBatch,
  PlanRequest,
  PlanTask,
  Saving,
} from "../../plan/plan-request.ts";
import { hotCanners } from "../../plan/running-batch.ts";
import { savedBySharing, savingWords } from "../../plan/shared-pots.ts";
import { seededRandom } from "../../plan/solver/random.ts";
import { wantedLabel } from "../../plan/wanted-batch.ts";
import type { Library } from "../../recipe/library.ts";
import { nightOf } from "../../reckon/quiet-hours.ts";
import { changedItems } from "./changed-items.ts";
import { finishSentence, planSentences } from "./day-plan-words.ts";
import {
  agreedSince,
  batchOf,
  beginsOf,
  courseOf,
  hasMoved,
  inHands,
  isTwin,
  signatureOf,
  startsByName,
  startsLike,
} from "./planned-day.ts";

type DayPlannerParts = {
  state(): State;
  library: Library;
  /** Milliseconds since some fixed moment: the outer limit of a search. Stands still in tests. */
  elapsedMs(): number;
};

/** What came of replanning: facts to write down, sentences to say. */
type Replanned = { facts: DatedFact[]; said: string[] };

/** A plan that is asked for may take this long; one between two reports, or a look ahead, not. */
const ASKED = { nodeBudget: 150_000, limitMs: 1500 };
const GLANCE = { nodeBudget: 100, limitMs: 60, glance: true };
const BETWEEN = { nodeBudget: 12_000, limitMs: 150 };
/** A finish that moves by more than this is announced. */
const TOLD_MS = 10 * MINUTE_MS;
/** Without any report, the plan is checked again after this long. */
const LOOK_AGAIN_MS = 20 * MINUTE_MS;
/** A proposed plan may be accepted for this long. */
const PROPOSAL_MS = 60 * MINUTE_MS;
/** A plan counts as new for this long. */
const NEW_MS = 2 * MINUTE_MS;
const MOST_LB = 500;
const MOST_ITEMS = 60;

export class DayPlanner {
  private readonly parts: DayPlannerParts;
  private seen = { events: -1, signature: "" };
  private plannedAt = Number.NEGATIVE_INFINITY;
  private proposal: { kept: Kept; at: number } | undefined;
  private known: { batches: number; lessons: Lessons } | undefined;
  private inHands: string | undefined;
  /** The plan as it stands, in wall time; empty where there is none. */
  tasks: PlanTask[] = [];
  /** When each step was last planned, by what its batch is called. */
  private starts = new Map<string, number>();

  constructor(parts: DayPlannerParts) {
    this.parts = parts;
  }

  /**
   * The decision about a wish for a plan, if it need not go to the kitchen; undefined otherwise.
   */
  outcome(wish: Wish, now: number): Decision | undefined {
    const { command } = wish;
    if (command.intent !== "plan") return undefined;
    const { go, drop, items } = command.slots;
    if (drop || command.slots.planned) return undefined;
    if (command.slots.change !== undefined) return this.changed(command.slots, now);
    if (go && !items) {
      const { proposal } = this;
      if (proposal && now - proposal.at < PROPOSAL_MS) return begun(proposal.kept, now);
    }
    const asked = this.asked(command.slots, now);
    if (typeof asked === "string") return { kind: "refused", reason: asked };
    return this.proposed(asked, command, now);
  }

  /** A plan that was agreed to, changed in words. */
  private changed(slots: SlotsOf["plan"], now: number): Decision {
    const state = this.parts.state();
    const { dayPlan } = state;
    if (!dayPlan) return { kind: "refused", reason: "There is no plan for the day." };
    const items = changedItems(dayPlan.items, slots, now);
    if (typeof items === "string") return { kind: "refused", reason: items };
    const found = this.work({ ...dayPlan, items }, now, BETWEEN);
    if ("fault" in found) return { kind: "refused", reason: `${found.fault}.` };
    const { plan, request } = found;
    if (request.batches.length === 0)
      return { kind: "done", facts: [{ type: "day-plan-dropped", t: now }] };
    if (!plan.feasible) {
      return { kind: "refused", reason: ["No plan fits.", ...plan.why.map(sentence)].join(" ") };
    }
    this.tasks = plan.tasks;
    return begun(this.settled({ ...dayPlan, items }, found), now);
  }

  private proposed(kept: Wished, command: PlanCommand, now: number): Decision {
    const found = this.work(kept, now, ASKED);
    if ("fault" in found) return { kind: "refused", reason: `${found.fault}.` };
    const { plan, request } = found;
    if (request.batches.length === 0) {
      return {
        kind: "refused",
        reason:
          "Nothing is running. Say what there is, like plan eight pounds of dilly beans and " +
          "seven pounds of beets.",
      };
    }
    if (!plan.feasible) {
      return { kind: "refused", reason: ["No plan fits.", ...plan.why.map(sentence)].join(" ") };
    }
    const more = kept.finishBy === null && this.more(found);
    if (more) return { kind: "refused", reason: sentence(more) };
    const planned = this.settled(kept, found);
    this.proposal = { kept: planned, at: now };
    if (command.slots.go) return begun(planned, now);
    const words = planSentences(this.parts.state(), planned, plan, now);
    const saving = this.saved(found);
    if (saving) words.push(sentence(savingWords(saving)));
    const asks = planned.items.length > 0 ? "Shall I begin it?" : "Shall I keep to it?";
    const wish: Wish = { command: { ...command, slots: { ...command.slots, planned } } };
    const text = [...words, found.altitudeKnown ? "" : NO_ALTITUDE, asks].filter(Boolean).join(" ");
    return { kind: "ask", text, wish, expects: "yes", choices: [] };
  }

  /** What fits, where it is more than one day. */
  private more({ request, plan }: Worked): string | null {
    const { elapsedMs } = this.parts;
    const from = elapsedMs();
    const clock = { random: seededRandom(1), elapsedMs: () => elapsedMs() - from };
    return fitsToday(request, plan, { ...BETWEEN, ...clock });
  }

  private saved({ request, plan, alone }: Worked): Saving | null {
    const { elapsedMs } = this.parts;
    const from = elapsedMs();
    const clock = { random: seededRandom(1), elapsedMs: () => elapsedMs() - from };
    return savedBySharing(request, plan, alone, { ...BETWEEN, ...clock });
  }

  /** What is asked for now, plus what the existing plan still has to begin; or a refusal. */
  private asked(slots: SlotsOf["plan"], now: number): Wished | string {
    const state = this.parts.state();
    const old = state.dayPlan;
    const kept = old?.items.filter((item) => state.due[planKey(item)] === undefined) ?? [];
    const lots = slots.items ?? [];
    if (lots.length + kept.length > MOST_ITEMS)
      return `More than ${MOST_ITEMS} batches are no day.`;
    const ids = planIds(state, lots.length);
    const items = [...kept];
    for (const [n, lot] of lots.entries()) {
      const item = this.itemOf(lot, ids[n] ?? "", now);
      if (typeof item === "string") return item;
      if (isTwin(state, items, item)) {
        return `There are two lots of ${item.title}. Name a variety to tell them apart.`;
      }
      items.push(item);
    }
    const finishBy = this.moment(slots.finishBy, "finish", now);
    const notBefore = this.moment(slots.startAt, "start", now);
    if (typeof finishBy === "string") return finishBy;
    if (typeof notBefore === "string") return notBefore;
    const quiet = slots.quiet === undefined ? undefined : nightOf(slots.quiet);
    return {
      items,
      finishBy: finishBy ?? old?.finishBy ?? null,
      quiet: quiet === undefined ? (old ?? state.kitchen).quiet : quiet,
      ...(notBefore === undefined ? {} : { notBefore }),
    };
  }

  private itemOf(lot: LotToPlan, id: string, now: number): PlannedItem | string {
    const recipe = this.parts.library.recipes.get(lot.recipe);
    if (!recipe) return `I have no recipe called ${lot.recipe}.`;
    const weightLb = lot.weightLb ?? null;
    if (weightLb !== null && !(weightLb > 0 && weightLb <= MOST_LB)) {
      return `${weightLb} pounds can't be right. How much is there?`;
    }
    const variety = lot.variety ?? null;
    const title = wantedLabel(recipe, variety);
    return { id, recipe: recipe.id, title, variety, weightLb, beginAt: now };
  }

  private moment(iso: string | undefined, what: string, now: number): number | string | undefined {
    if (iso === undefined) return undefined;
    const state = this.parts.state();
    const wall = parseIso(iso, state.zone);
    if (wall === undefined) return `I can't read the time ${iso}.`;
    const at = kitchenTimeOf(state, wall);
    return what === "finish" && at <= now ? "That time is past." : at;
  }

  private work(wished: Wished, now: number, effort: { nodeBudget: number; limitMs: number }) {
    const { library, elapsedMs } = this.parts;
    const state = this.parts.state();
    const asked = dayRequest({
      ...wished,
      state,
      now,
      library,
      lessons: this.lessons(state),
      ...(this.inHands === undefined ? {} : { inHands: this.inHands }),
    });
    if ("fault" in asked) return asked;
    const from = elapsedMs();
    const { altitudeKnown, alone } = asked;
    const request = { ...asked.request, like: startsLike(asked.request, this.starts) };
    const plan = planKitchen(
      { ...request, explain: effort === ASKED },
      { ...effort, random: seededRandom(1), elapsedMs: () => elapsedMs() - from },
    );
    if (plan.feasible) this.starts = startsByName(request, plan.tasks);
    return { plan, request, altitudeKnown, alone };
  }

  /** What was learned changes only when a batch is complete. */
  private lessons(state: State): Lessons {
    const batches = Object.values(state.batches).filter((one) => one.state === "complete").length;
    if (this.known?.batches !== batches) this.known = { batches, lessons: lessonsOf(state) };
    return this.known.lessons;
  }

  /** A plan in the form in which it is kept: when each batch begins, and when the day is done. */
  private settled(wished: Wished, { plan, request }: Worked): Kept {
    const state = this.parts.state();
    const now = kitchenTimeOf(state, request.nowMs ?? request.startMs);
    const warm = hotCanners(state, now) > 0;
    const starts = beginsOf(plan, wished.items, warm);
    const items = wished.items.map((item) => {
      const wall = starts.get(batchOf(request, item));
      const at = wall === undefined ? item.beginAt : kitchenTimeOf(state, wall);
      // The plan's grid lies up to a minute behind the clock.
      return { ...item, beginAt: at - now < MINUTE_MS ? now : at };
    });
    const { finishBy, quiet } = wished;
    const finishAt = kitchenTimeOf(state, plan.finishMs);
    const steps = courseOf(state, plan.tasks);
    return { items, agreedAt: finishAt, finishAt, finishBy, quiet, steps };
  }

  /**
   * Whether something has happened, or failed to happen, that the plan has to take into account.
   */
  isStale(now: number): boolean {
    const state = this.parts.state();
    const { dayPlan } = state;
    if (!dayPlan && !severalRun(state)) {
      if (state.course) this.keep(undefined);
      return false;
    }
    if (now - this.plannedAt >= LOOK_AGAIN_MS) return true;
    if (state.history.length !== this.seen.events) {
      const signature = signatureOf(state);
      if (signature !== this.seen.signature) return true;
      this.seen.events = state.history.length;
    }
    const overdue = dayPlan?.items.some((item) => item.beginAt <= now) ?? false;
    return overdue && now - this.plannedAt >= MINUTE_MS && handsBusy(state, now);
  }

  /** Without a plan that was agreed to, the same model looks ahead at what runs. */
  private lookAhead(state: State, now: number): Replanned {
    const { quiet } = state.kitchen;
    const found = this.best({ items: [], finishBy: null, quiet }, now, GLANCE);
    this.keep(found?.plan.feasible ? found : undefined);
    this.inHands = inHands(state, now);
    return NOTHING;
  }

  /** Plans what has not begun again. The existing plan stays where nothing better can be found. */
  replan(now: number): Replanned {
    const state = this.parts.state();
    const { dayPlan } = state;
    this.plannedAt = now;
    this.seen = { events: state.history.length, signature: signatureOf(state) };
    if (!dayPlan) return this.lookAhead(state, now);
    const items = dayPlan.items.filter((item) => state.due[planKey(item)] === undefined);
    // The first look after an opening has no plan to begin with.
    const effort = this.starts.size === 0 ? ASKED : BETWEEN;
    const found = this.best({ ...dayPlan, items }, now, effort);
    if (!found) return NOTHING;
    if (found.request.batches.length === 0) {
      this.keep(undefined);
      return { facts: [{ type: "day-plan-dropped", t: now }], said: [ALL_DONE] };
    }
    this.keep(found);
    const fresh = this.settled({ ...dayPlan, items }, found);
    this.inHands = inHands(state, now);
    const told = Math.abs(fresh.finishAt - dayPlan.finishAt) > TOLD_MS;
    const moved = items.length !== dayPlan.items.length || hasMoved(dayPlan.items, fresh.items);
    if (!told && !moved) return NOTHING;
    const { finishBy } = dayPlan;
    // A better plan found at once counts as what was agreed to: nothing went faster.
    const better = told && fresh.finishAt < dayPlan.finishAt && now - agreedSince(state) < NEW_MS;
    const agreedAt = better ? fresh.finishAt : dayPlan.agreedAt;
    const finishAt = told ? fresh.finishAt : dayPlan.finishAt;
    const kept = { ...fresh, agreedAt, finishAt, finishBy };
    const { steps: _, ...again } = kept;
    return {
      facts: [{ type: "day-planned", ...again, t: now }],
      said: told && !better ? [finishSentence(state, kept, now)] : [],
    };
  }

  /** A plan with everything asked for, else without the finish, else without the quiet hours. */
  private best(wished: Wished, now: number, effort: typeof BETWEEN): Worked | undefined {
    for (const less of [{}, { finishBy: null }, { finishBy: null, quiet: null }]) {
      const found = this.work({ ...wished, ...less }, now, effort);
      if ("fault" in found) return undefined;
      if (found.plan.feasible || found.request.batches.length === 0) return found;
    }
    return undefined;
  }

  /** What the plan makes of the day is where the kitchen takes its next word from. */
  private keep(found: Worked | undefined): void {
    const state = this.parts.state();
    this.tasks = found?.plan.tasks ?? [];
    state.course = found ? courseOf(state, found.plan.tasks) : null;
  }
}

type PlanCommand = Extract<Command, { intent: "plan" }>;
type Wished = {
  items: readonly PlannedItem[];
  finishBy: number | null;
  quiet: QuietHours | null;
  notBefore?: number;
};
type Worked = { plan: KitchenPlan; request: PlanRequest; alone: PlanBatch[] };

const NOTHING: Replanned = { facts: [], said: [] };
const NO_ALTITUDE = "That is for a low kitchen: tell me the altitude.";
const ALL_DONE = "That was the last of the day's plan.";

function begun(kept: Kept, now: number): Decision {
  return { kind: "done", facts: [{ type: "day-planned", ...kept, t: now }] };
}

function sentence(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
}
