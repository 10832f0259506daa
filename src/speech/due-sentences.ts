/** What is said when something comes due, and when an alarm repeats. */
import type { DueItem } from "../kitchen/agenda.ts";
import { nextMatch } from "../kitchen/cron.ts";
import type { PlannedItem } from "../kitchen/events.ts";
import { batchName, ownerName, timerName, upper } from "../kitchen/names.ts";
import { isLoad } from "../kitchen/owners.ts";
import { type Load, type State, wallOf } from "../kitchen/state.ts";
import { MINUTE_MS } from "../kitchen/time.ts";
import { durationWords } from "./spoken-time.ts";

/** The sentence for something that came due. */
export function dueSentence(state: State, item: DueItem): string {
  const { owner, run, planned } = item;
  if (planned) return beginSentence(state, planned, item.at);
  if (item.what === "timer") {
    const timer = state.timers[item.key];
    return timer ? `${upper(timerName(timer))} is done.` : "A timer is done.";
  }
  if (item.what === "reminder") return `A reminder: ${state.reminders[item.key]?.text ?? ""}.`;
  if (!owner || !run) return "";
  const name = upper(ownerName(state, owner));
  const title = run.spec.title;
  const { window, kind } = run.spec;
  switch (item.what) {
    case "half":
      return halfway(owner as Load, name);
    case "read":
      return `${name}: read the water's temperature and tell me.`;
    case "off":
      return (
        `${name} has been off for over two hours. It is not started over: ` +
        "refrigerate, freeze or discard those jars."
      );
    case "check": {
      const wall = wallOf(state, item.at);
      const check = run.spec.checks?.find((one) => {
        return nextMatch(one.cron, wall - MINUTE_MS, state.zone) === wall;
      });
      return `${name}: ${check?.say ?? run.spec.checks?.[0]?.say ?? "look at it."}`;
    }
    case "late":
      return `${name}: ${title} is overdue. It should follow at once.`;
    case "start":
      return `${name}: time to start to ${title}.`;
    case "min":
      if (kind === "cool") return `${name}: cooled long enough. Check the seals.`;
      if (kind === "cure") return `${name}: ready to open.`;
      return `${name}: ${title} has had ${length(window?.minMinutes)}. Say done when you go on.`;
    case "max":
      if (kind === "cool") return `${name}: a whole day since they came out. Check the seals now.`;
      if (kind === "store") return `${name}: past its best time on the shelf. Eat it soon.`;
      return `${name}: ${title} has had its longest, ${length(window?.maxMinutes)}. Go on now.`;
    case "end":
      return endSentence(name, item);
    default:
      return `${name}: ${title}.`;
  }
}

/** A batch the plan began just now, or one that its time found nobody for. */
function beginSentence(state: State, { recipe, variety, title }: PlannedItem, at: number): string {
  const batch = Object.values(state.batches).findLast((one) => {
    return one.recipe.id === recipe && one.lot.variety === variety && one.begunAt >= at;
  });
  return batch
    ? `Time to begin ${batchName(batch)}, by the plan.`
    : `By the plan the ${title} were to begin. Say start the ${title} when you do.`;
}

function length(minutes = 0): string {
  return durationWords(minutes * MINUTE_MS);
}

function halfway(load: Load, name: string): string {
  const method = load.terms?.method;
  if (method === "steam") return `${name}, halfway. Look at the steam column; keep the lid shut.`;
  if (method === "pressure") return `${name}, halfway. Look at the gauge.`;
  return (
    `${name}, halfway. See that the lids are still covered; ` +
    "top up with boiling water, around the jars."
  );
}

function endSentence(name: string, item: DueItem): string {
  const { owner, run } = item;
  if (!owner || !run) return "";
  if (run.spec.kind === "process") return `${name}: the time is full.`;
  if (run.spec.kind === "vent") return `${name}: ten minutes of steam.`;
  if (run.spec.kind === "depressurize")
    return `${name}: ten minutes at zero. The lid may come off, away from you.`;
  if (run.id === "settle") return `${name}: lift the jars now.`;
  const minutes = run.kept?.needMinutes ?? run.spec.window?.minMinutes ?? 0;
  const what = isLoad(owner) ? "" : ` ${run.spec.title},`;
  return `${name}:${what} ${durationWords(minutes * MINUTE_MS)} are up.`;
}
