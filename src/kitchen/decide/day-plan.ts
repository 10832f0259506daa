/** The day's plan in the core: when a batch of it begins, and what a word does to it. */

import type { DatedFact, KitchenEvent, PlannedItem } from "../events.ts";
import { apply, fork } from "../evolve.ts";
import type { State } from "../state.ts";
import { decideBegin } from "./decide-batch.ts";
import { type Deciding, type Decision, done, type Present, refused } from "./decision.ts";
import { planKey, TOO_LATE_MS } from "./planned-begin.ts";

/** The batches whose time has come by these due facts, begun as by a word. */
export function beginPlanned(deciding: Present, due: readonly DatedFact[]): DatedFact[] {
  const { state, now, library } = deciding;
  const keys = new Set(due.map((fact) => (fact.type === "due" ? fact.key : "")));
  const items = (state.dayPlan?.items ?? []).filter((item) => keys.has(planKey(item)));
  if (items.length === 0) return [];
  const trial = fork(state);
  const facts: DatedFact[] = [];
  for (const item of items) {
    if (now - item.beginAt > TOO_LATE_MS) continue;
    // Nobody stands by to be asked what the guide says: it begins, and that is told.
    const wish = { command: beginOf(item), amount: null };
    const outcome = decideBegin({ state: trial, now, library, wish });
    if (outcome.kind !== "done") continue;
    for (const fact of outcome.facts) {
      apply(trial, { ...fact, cmd: "trial", w: now } as KitchenEvent);
      facts.push(fact);
    }
  }
  return facts;
}

function beginOf(item: PlannedItem) {
  const { recipe, variety, weightLb } = item;
  const slots = {
    recipe,
    ...(variety === null ? {} : { variety }),
    ...(weightLb === null ? {} : { weightLb }),
  };
  return { intent: "begin" as const, slots, confidence: 1 };
}

/** Writes down a plan that was said yes to, or drops the one there is. */
export function decidePlan(deciding: Deciding<"plan">): Decision {
  const { state, now, wish } = deciding;
  const { planned, drop } = wish.command.slots;
  if (drop) {
    if (!state.dayPlan) return refused("There is no plan for the day.");
    return done({ type: "day-plan-dropped", t: now });
  }
  return planned ? done({ type: "day-planned", ...planned, t: now }) : { kind: "tell" };
}

/** Ids for the batches of a plan, told apart from those of every plan before. */
export function planIds(state: State, count: number): string[] {
  const seen = state.history.flatMap((event) =>
    event.type === "day-planned" ? event.items.map((item) => Number(item.id.slice(1))) : [],
  );
  const last = Math.max(0, ...seen.filter(Number.isFinite));
  return Array.from({ length: count }, (_, n) => `P${last + n + 1}`);
}
