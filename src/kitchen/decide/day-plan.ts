/** The day's plan in the core: when a batch of it begins, and what a person's words change. */

import type { Library } from "../../recipe/library.ts";
import { commandOf } from "../command.ts";
import { planKey } from "../due-key.ts";
import type { DatedFact, PlannedItem } from "../events.ts";
import { historyOf } from "../events.ts";
import type { State } from "../state.ts";
import { TOO_LATE_MS } from "./begin/planned-begin.ts";
import type { CarriedOut } from "./carried-out.ts";
import { decideBegin } from "./decide-batch.ts";
import { type Deciding, type Decision, done, refused } from "./decision.ts";

/** Begins the batches whose time has come by these due facts, as if a person had said so. */
export function beginPlanned(
  woken: CarriedOut,
  now: number,
  library: Library,
  due: readonly DatedFact[],
): void {
  const keys = new Set(due.map((fact) => (fact.type === "due" ? fact.key : "")));
  const items = (woken.after.dayPlan?.items ?? []).filter((item) => keys.has(planKey(item)));
  for (const item of items) {
    if (now - item.beginAt > TOO_LATE_MS) continue;
    // Nobody is there to be asked what the guide says: the batch begins, and that is announced.
    const wish = { command: beginOf(item), amount: null };
    const begin = (confirmed?: boolean) => {
      const own = confirmed === undefined ? wish : { ...wish, confirmed };
      return decideBegin({ state: woken.after, now, library, wish: own });
    };
    const asked = begin();
    // Nor whether a pot that was made without this lot is enough for it: it gets its own.
    const outcome = asked.kind === "ask" ? begin(false) : asked;
    if (outcome.kind !== "done") continue;
    // What a name stands for was not asked either.
    if (outcome.facts.every(({ type }) => type !== "name-settled")) woken.add(outcome.facts);
  }
}

function beginOf(item: PlannedItem) {
  const { recipe, variety, weightLb } = item;
  const slots = {
    recipe,
    ...(variety === null ? {} : { variety }),
    ...(weightLb === null ? {} : { weightLb }),
  };
  return commandOf("begin", slots);
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

/** Ids for the batches of a plan, different from those of every earlier plan. */
export function planIds(state: State, count: number): string[] {
  const seen = historyOf(state).flatMap((event) =>
    event.type === "day-planned" ? event.items.map((item) => Number(item.id.slice(1))) : [],
  );
  const last = Math.max(0, ...seen.filter(Number.isFinite));
  return Array.from({ length: count }, (_, n) => `P${last + n + 1}`);
}
