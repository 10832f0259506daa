/** What is said when something comes due, and when an alarm repeats. */

import type { Wording } from "../desk/want.ts";
import { type DueMoment, stageClock } from "../kitchen/agenda.ts";
import { nextMatch } from "../kitchen/cron.ts";
import { readStageDue } from "../kitchen/due-key.ts";
import type { PlannedItem } from "../kitchen/events.ts";
import { ready } from "../kitchen/jars/lots.ts";
import { mayStandMinutes } from "../kitchen/loads/standing.ts";
import { isLoad, type Owner } from "../kitchen/owners.ts";
import {
  batchName,
  calledName,
  leadName,
  severalRun,
  timerName,
  upper,
} from "../kitchen/spoken-names.ts";
import { rulesOf } from "../kitchen/stages/kinds.ts";
import type { StageRules } from "../kitchen/stages/rules.ts";
import { type Batch, type Load, type StageRun, type State, wallOf } from "../kitchen/state.ts";
import { MINUTE_MS } from "../kitchen/time.ts";
import type { ProcessTerms } from "../recipe/recipe.ts";
import { countWords, numberWords } from "../reckon/number-words.ts";
import { LID_WAIT_MINUTES, OFF_PROCESS_HOURS, VENT_MINUTES } from "../reckon/trade-numbers.ts";
import { promptWording } from "./prompts.ts";
import { durationWords, momentWords } from "./spoken-time.ts";

type Says = StageRules["says"];
type OfWindow = (title: string, length: string, closes: string) => string;

const CHECK_SEALS = "check the seals";

const OPENS: Record<Says["opens"], OfWindow> = {
  "may-go-on": (_, length) => `it has had ${length}. Say done when you go on.`,
  "check-seals": (_, __, closes) => `${CHECK_SEALS} ${closes}.`,
  "ready-to-open": () => "ready to open.",
};

/** In the evening before a night in which it closes. */
const EVENINGS: Record<Says["opens"], (title: string, closes: string) => string> = {
  "may-go-on": (title, closes) => `before the night: ${title} should go on ${closes}.`,
  "check-seals": (_, closes) => `before the night: check the seals ${closes}.`,
  "ready-to-open": (_, closes) => `before the night: best ${closes}.`,
};

const CLOSES: Record<Says["closes"], (title: string, length: string) => string> = {
  "go-on": (_, length) => `it has had its longest, ${length}. Go on now.`,
  "check-seals": () => "a whole day since they came out. Check the seals now.",
  "past-best": () => "past its best time on the shelf. Eat it soon.",
};

const AT_ZERO = countWords(LID_WAIT_MINUTES, "minute");

/** The end of a clock; undefined where its length says enough. */
const ENDS: Record<Says["ends"], string | undefined> = {
  "is-up": undefined,
  "time-is-full": "the time is full.",
  "steam-had": `${countWords(VENT_MINUTES, "minute")} of steam.`,
  "lid-may-come-off": `${AT_ZERO} at zero. The lid may come off, away from you.`,
};

/** The sentence for something that came due, with the name of its batch. */
export function dueSentence(state: State, item: DueMoment): string {
  const { name, text } = dueWording(state, item);
  return name === undefined ? text : `${name}: ${text}`;
}

/** The wording for something that came due. */
export function dueWording(state: State, item: DueMoment): Wording {
  const { owner, run, planned } = item;
  if (planned) return { text: beginSentence(state, planned, item.at) };
  if (item.what === "timer" || item.what === "reminder") return { text: askedFor(state, item) };
  if (!owner || !run) return { text: "" };
  if (item.what === "start") return promptWording(state, owner, run, item.at);
  const name = severalRun(state) ? leadName(state, owner) : upper(calledName(state, owner));
  const method = methodOf(owner);
  const short = item.what === "half" && method ? SHORT_HALF[method] : undefined;
  const lesson = short && { lesson: { id: `${item.what}/${method}`, short } };
  const seals = item.what === "min" && rulesOf(run.spec).says.opens === "check-seals";
  const task = seals && { task: { todo: CHECK_SEALS, each: closing(state, run) } };
  return { name, text: stageSentence(state, item, owner, run), ...lesson, ...task };
}

function askedFor(state: State, item: DueMoment): string {
  if (item.what === "timer") {
    const timer = state.timers[item.key];
    return timer ? `${upper(timerName(timer))} is done.` : "A timer is done.";
  }
  return `A reminder: ${state.reminders[item.key]?.text ?? ""}.`;
}

function stageSentence(state: State, item: DueMoment, owner: Owner, run: StageRun): string {
  const title = run.spec.title;
  const { window } = run.spec;
  const { says } = rulesOf(run.spec);
  switch (item.what) {
    case "half":
      return halfway(owner as Load);
    case "read":
      return "read the water's temperature and tell me.";
    case "off":
      return (
        `off for over ${countWords(OFF_PROCESS_HOURS, "hour")}. ` +
        "It is not started over: " +
        "refrigerate, freeze or discard those jars."
      );
    case "check": {
      const wall = wallOf(state, item.at);
      const check = run.spec.checks?.find((one) => {
        return nextMatch(one.cron, wall - MINUTE_MS, state.zone) === wall;
      });
      const say = check?.say ?? run.spec.checks?.[0]?.say ?? "look at it.";
      const { missed = 0 } = item;
      return missed > 0 ? `${say} It was due ${times(missed)} before that.` : say;
    }
    case "late":
      return `${title} is overdue. It should follow at once.`;
    case "again":
      return `heat what is left now: ${title}. The canner is free soon after.`;
    case "stands":
      return `${filled(owner)} before the canner. In with them, or keep them hot.`;
    case "stood":
      return (
        `${filled(owner)}, and may stand no longer than ` +
        `${durationWords(mayStandMinutes(state, owner as Batch) * MINUTE_MS)} in all. ` +
        "Into the canner now; later they are not as tested."
      );
    case "warning": {
      const dueAt = stageClock(run)?.dueAt;
      const left = dueAt === undefined ? "soon" : `in ${durationWords(dueAt - item.at)}`;
      return `${title} ends ${left}.`;
    }
    case "min":
      return OPENS[says.opens](title, length(window?.minMinutes), closing(state, run));
    case "evening":
      return EVENINGS[says.opens](title, closing(state, run));
    case "max":
      return CLOSES[says.closes](title, length(window?.maxMinutes));
    case "end":
      return endSentence(state, item);
    default:
      return `${title}.`;
  }
}

/** A batch the plan began just now, or one that its time found nobody for. */
function beginSentence(state: State, { recipe, variety, title }: PlannedItem, at: number): string {
  const batch = Object.values(state.batches).findLast((one) => {
    const its = one.lots.some((lot) => lot.variety === variety);
    return one.recipe.id === recipe && its && one.begunAt >= at;
  });
  return batch
    ? `Time to begin ${batchName(batch)}, by the plan.`
    : `By the plan the ${title} were to begin. Say start the ${title} when you do.`;
}

/** "by ten past ten": when the window closes. */
function closing(state: State, { startedAt = 0, spec }: StageRun): string {
  const at = startedAt + (spec.window?.maxMinutes ?? 0) * MINUTE_MS;
  const words = momentWords(wallOf(state, at), wallOf(state, state.lastW), state.zone);
  return `by ${words.replace(/^(at|on) /, "")}`;
}

function times(count: number): string {
  return ["", "once", "twice"][count] ?? `${numberWords(count)} times`;
}

function length(minutes = 0): string {
  return durationWords(minutes * MINUTE_MS);
}

function filled(owner: Owner): string {
  const jars = isLoad(owner) ? 0 : ready(owner);
  return `${jars} filled jar${jars === 1 ? " stands" : "s stand"}`;
}

const SHORT_HALF: Record<ProcessTerms["method"], string> = {
  "boiling-water": "halfway. Keep the lids covered.",
  "low-temperature": "halfway. Keep the lids covered.",
  steam: "halfway. Look at the steam column.",
  pressure: "halfway. Look at the gauge.",
};

function methodOf(owner: Owner): ProcessTerms["method"] | undefined {
  return isLoad(owner) ? owner.terms?.method : undefined;
}

function halfway(load: Load): string {
  const method = methodOf(load);
  if (method === "steam") return "halfway. Look at the steam column; keep the lid shut.";
  if (method === "pressure") return "halfway. Look at the gauge.";
  return "halfway. Keep the lids covered: top up with boiling water, around the jars.";
}

function endSentence(state: State, item: DueMoment): string {
  const { owner, run } = item;
  if (!owner || !run) return "";
  const own = ENDS[rulesOf(run.spec).says.ends];
  if (own) return own;
  if (run.spec.step === "settle") return "lift the jars now.";
  const minutes = run.kept?.needMinutes ?? run.spec.window?.minMinutes ?? 0;
  const what = hasOtherClock(state, owner, run) ? `${run.spec.title}, ` : "";
  return `${what}${durationWords(minutes * MINUTE_MS)} are up.`;
}

/** Whether another stage of the same batch has a clock, or rings. */
function hasOtherClock(state: State, owner: Owner, run: StageRun): boolean {
  const rings = state.ringing.flatMap((key) => readStageDue(key) ?? []);
  const others = owner.stages.filter((one) => one !== run);
  return others.some((one) => {
    const ringsToo = rings.some((due) => due.owner === owner.id && due.stage === one.id);
    return ringsToo || (one.state === "running" && stageClock(one) !== undefined);
  });
}
