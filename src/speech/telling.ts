/** Answers to questions people ask, worked out from the clocks and the recipe; nothing changes. */

import { agenda, stageClock } from "../kitchen/agenda.ts";
import type { Meant } from "../kitchen/command.ts";
import { handsNow, reasonOf, toCome } from "../kitchen/day/coming.ts";
import { queue } from "../kitchen/loads/next-load.ts";
import { namesOnlySort, namesSort } from "../kitchen/meant.ts";
import { activeOwners, inCanner, isLoad, type Owner, ownerOf, runOf } from "../kitchen/owners.ts";
import { questions } from "../kitchen/questions/questions.ts";
import { type ShelfItem, shelves } from "../kitchen/shelves.ts";
import {
  batchName,
  calledName,
  loadName,
  ownerName,
  timerName,
  upper,
} from "../kitchen/spoken-names.ts";
import { hasRole, rulesOf } from "../kitchen/stages/kinds.ts";
import { type StageRun, type State, type Timer, wallOf } from "../kitchen/state.ts";
import { MINUTE_MS, upToMinute } from "../kitchen/time.ts";
import { isLost } from "../kitchen/unbroken-time.ts";
import { prompt } from "./prompts.ts";
import { durationWords, momentWords } from "./spoken-time.ts";

/** Something with a clock: a stage or a timer, with what to call it. */
type Ticking = {
  name: string;
  what?: string;
  dueAt: number;
  lost: boolean;
  owner?: Owner;
  run?: StageRun;
  timer?: Timer;
};

function ticking(state: State): Ticking[] {
  const list: Ticking[] = [];
  for (const owner of activeOwners(state)) {
    for (const run of owner.stages) {
      const clock = stageClock(run);
      if (!clock) continue;
      const name = calledName(state, owner);
      list.push({ name, what: run.spec.title, dueAt: clock.dueAt, lost: clock.lost, owner, run });
    }
  }
  for (const timer of Object.values(state.timers)) {
    if (timer.state !== "running") continue;
    list.push({ name: timerName(timer), dueAt: timer.endsAt, lost: false, timer });
  }
  return list.sort((a, b) => a.dueAt - b.dueAt);
}

/** The clocks that a name picks; all where nothing was named, none where it fits nothing. */
function narrowed(state: State, ref: Meant | undefined): Ticking[] {
  const all = ticking(state);
  if (namesOnlySort(ref, "timer")) return all.filter((one) => one.timer);
  if (!ref || namesOnlySort(ref, "it", "all")) return all;
  return all.filter(({ owner, run, timer }) =>
    ref.running.some((each) => {
      if ("timer" in each) return each.timer === timer?.id;
      if (each.owner === owner?.id) return each.stage === undefined || each.stage === run?.id;
      return owner && isLoad(owner) && owner.parts.some((part) => part.batch === each.owner);
    }),
  );
}

function leftSentence(state: State, one: Ticking, now: number): string {
  const name = upper(one.what === undefined ? one.name : `${one.name}: ${one.what}`);
  const and = one.what === undefined ? ":" : ",";
  if (one.lost) return `${name}${and} stopped. Its sign was lost, and the whole time starts again.`;
  const left = one.dueAt - now;
  const when = momentWords(upToMinute(wallOf(state, one.dueAt)), wallOf(state, now), state.zone);
  if (left <= 0) return `${name}${and} due for ${durationWords(left)}.`;
  const tested = one.run && rulesOf(one.run.spec).watched;
  const length = tested ? durationWords(upToMinute(left)) : `about ${durationWords(left)}`;
  return `${name}${and} ${length}, ${when.replace(/^(at|on) /, "until ")}.`;
}

/** Work without a clock: how long it has had, and how long it usually takes. */
function usually(state: State, owner: Owner, named: StageRun | undefined, now: number): string {
  const run = named ?? owner.stages.find((one) => one.state === "running");
  const name = upper(ownerName(state, owner));
  if (run?.state !== "running" || run.startedAt === undefined) {
    return `${name} has no clock running.`;
  }
  const had = durationWords(now - run.startedAt);
  const typical = durationWords(run.spec.typicalMinutes * MINUTE_MS);
  return `${name}: ${run.spec.title} has had ${had}; it usually takes about ${typical}.`;
}

/** What was asked about, in words and by what it stands for. */
type AskedAfter = { slots: { target?: string }; ref?: Meant };

/** How long is left for what was asked about; for everything where nothing was named. */
export function clocks(state: State, asked: AskedAfter, now: number): string {
  const { slots, ref } = asked;
  const { target } = slots;
  const list = narrowed(state, ref);
  if (list.length > 0) return list.map((one) => leftSentence(state, one, now)).join(" ");
  const [first] = ref?.running ?? [];
  const owner = first && "owner" in first ? ownerOf(state, first.owner) : undefined;
  if (owner && first && "owner" in first) {
    const run = first.stage === undefined ? undefined : runOf(owner, first.stage);
    return usually(state, owner, run, now);
  }
  return target ? `I have nothing running called ${target}.` : "No clock is running.";
}

/** "When do the jars come out": the time, and for a load the step that comes with it. */
export function whenDone(state: State, asked: AskedAfter, now: number): string {
  const jars = asked.ref === undefined || namesSort(asked.ref, "jars", "canner");
  const inside = inCanner(state).filter((load) => load.loadedAt !== undefined);
  const processing = ticking(state).filter((one) => one.run && hasRole(one.run.spec, "treatment"));
  if (jars && processing.length > 0) {
    return processing.map((one) => leftSentence(state, one, now)).join(" ");
  }
  if (jars && inside.length > 0) {
    return inside
      .map((load) => {
        const minutes = load.terms?.minutes ?? 0;
        const name = upper(loadName(state, load));
        return `${name} is not timed yet: ${durationWords(minutes * 60_000)} from the sign.`;
      })
      .join(" ");
  }
  return clocks(state, asked, now);
}

export function overview(state: State, now: number): string {
  const ticks = ticking(state);
  const names = activeOwners(state)
    .filter((owner) => !isLoad(owner) || owner.unloadedAt === undefined)
    .flatMap((owner) => {
      const run = owner.stages.find((one) => one.state === "running");
      if (!run || ticks.some((one) => one.owner === owner)) return [];
      const at = isHeld(owner) ? " is held, at" : ":";
      return [`${calledName(state, owner)}${at} ${run.spec.title}`];
    });
  const clocksLeft = ticks.map((one) => leftSentence(state, one, now));
  if (names.length === 0 && ticks.length === 0)
    return "Nothing is running. Say start and a recipe to begin.";
  return [...names.map((name) => `${upper(name)}.`), ...clocksLeft].join(" ");
}

function isHeld(owner: Owner): boolean {
  return !isLoad(owner) && owner.state === "held";
}

export function whatNow(state: State, now: number): string {
  const question = questions(state)[0];
  const asking = question && state.asked[question.key] !== undefined ? question.text : "";
  const shown = shelves(state, now);
  const lost = shown.find((item) => item.run.kept && isLost(item.run.kept));
  const rules = lost && rulesOf(lost.run.spec);
  if (lost && rules?.condition) {
    const what = rules.says.lost;
    const name = upper(ownerName(state, lost.owner));
    return `${name} has lost its ${what}: bring it back and tell me. ${asking}`.trim();
  }
  const [item] = handsNow(state, now);
  if (item) {
    const todo = prompt(state, item.owner, item.run, now);
    return `${asking} ${todo} ${whyNow(state, item, now)}`.trim();
  }
  if (asking) return asking;
  const held = shown.find((one) => isHeld(one.owner))?.owner;
  const first = ticking(state)[0];
  if (held) {
    const runs = first ? leftSentence(state, first, now) : "";
    return `${upper(ownerName(state, held))} is held. Say resume to go on. ${runs}`.trim();
  }
  const heat = shown.find((one) => one.shelf === "heat");
  if (heat) return prompt(state, heat.owner, heat.run, now) || clocks(state, { slots: {} }, now);
  if (first) return `Nothing for your hands now. ${leftSentence(state, first, now)}`;
  return "Nothing is running. Say start and a recipe to begin.";
}

/** "It can be done while the beans are in the canner, until about ten past ten." */
function whyNow(state: State, item: ShelfItem, now: number): string {
  const reason = reasonOf(state, item, now);
  if (!reason) return "";
  const when = (t: number) => {
    const wall = Math.round(wallOf(state, t) / FIVE_MINUTES_MS) * FIVE_MINUTES_MS;
    return momentWords(wall, wallOf(state, now), state.zone).replace(/^at /, "");
  };
  switch (reason.is) {
    case "beside-canner":
      return `${upper(loadName(state, reason.load))} is in until about ${when(reason.until)}.`;
    case "canner-waits":
      return "That first: the canner is hot.";
    case "wanted":
      return `It is wanted about ${when(reason.at)}, to ${reason.by.spec.title}.`;
  }
}

const FIVE_MINUTES_MS = 5 * MINUTE_MS;
/** More than this is not kept in mind. */
const MOST_NEXT = 3;

export function whatNext(state: State, now: number): string {
  const next = agenda(state, now)[0];
  const [, ...hands] = handsNow(state, now);
  const waiting = hands.map(({ owner, run }) => ({ owner, run, at: now }));
  const begun = new Set(hands.map(({ run }) => run));
  const later = toCome(state, now).filter(({ run }) => !begun.has(run));
  const coming = [...waiting, ...later].slice(0, MOST_NEXT).map(({ owner, run, at }) => {
    const wall = Math.round(wallOf(state, at) / FIVE_MINUTES_MS) * FIVE_MINUTES_MS;
    const when = at <= now ? "" : `, ${momentWords(wall, wallOf(state, now), state.zone)}`;
    return `${ownerName(state, owner)}: ${run.spec.title}${when.replace(/, at /, " about ")}`;
  });
  const line = queue(state, now).slice(0, 2);
  const after =
    line.length > 1 ? ` For the canner after that: ${line.map(batchName).join(", then ")}.` : "";
  if (coming.length === 0 && !next) return "Nothing is waiting.";
  const steps = coming.length > 0 ? `Next, ${coming.join("; ")}.` : "";
  const at = next && upToMinute(wallOf(state, next.at));
  const when = at && momentWords(at, wallOf(state, now), state.zone);
  const due = when ? ` The next clock is due ${when}.` : "";
  return `${steps}${due}${after}`.trim();
}
