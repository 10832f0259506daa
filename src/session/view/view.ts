/** What the screen shows, worked out from the state and the present: plain data, no drawing. */

import { agenda, type StageClock } from "../../kitchen/agenda.ts";
import { queue } from "../../kitchen/loads/next-load.ts";
import { activeOwners, isLoad } from "../../kitchen/owners.ts";
import { type AnswerKind, answerKind, questions } from "../../kitchen/questions/questions.ts";
import { keyOffer, type Shelf, type ShelfItem, shelves } from "../../kitchen/shelves.ts";
import { batchName, ownerName, timerName } from "../../kitchen/spoken-names.ts";
import { rulesOf } from "../../kitchen/stages/kinds.ts";
import { type State, wallOf } from "../../kitchen/state.ts";
import { MINUTE_MS } from "../../kitchen/time.ts";
import { isLost } from "../../kitchen/unbroken-time.ts";
import type { PlanTask } from "../../plan/plan-request.ts";
import type {
  BigClock,
  Item,
  LabeledKey,
  Line,
  ScreenParts,
  ShownClock,
  View,
} from "../../ports/view.ts";
import { withCommas } from "../../reckon/reckoned.ts";
import { prompt } from "../../speech/prompts.ts";
import type { Pending } from "../dialogue.ts";
import { dayText, digitsText, lengthText, timeText, whenText } from "./clock-text.ts";
import { labeledKeys } from "./labeled-keys.ts";
import { dayStrip } from "./lanes.ts";
import { keyWords, needsWords, wordsNeeded } from "./offer-words.ts";

type ViewParts = Partial<ScreenParts> & {
  lines: readonly Line[];
  /** The transient question: "which one?". */
  pending?: Pick<Pending, "text" | "expects"> | undefined;
  notRecorded: boolean;
  /** Tasks of the day's plan, in wall time. */
  planned?: readonly PlanTask[];
  status?: { listening?: string; voice?: string };
};

/** Lines of the conversation that even the largest screen shows. */
const MOST_LINES = 60;

/**
 * The view at an instant.
 * @param now kitchen time, ms.
 */
export function view(state: State, now: number, parts: ViewParts): View {
  const nowWallMs = wallOf(state, now);
  const { zone } = state;
  const keys = labeledKeys(state, now);
  const shelved = shelves(state, now);
  const first = shelved.find((item) => item.shelf === "hands");
  const items = shelved.map((item) => shown(state, item, keys, now, item === first));
  const timers = timerItems(state, now);
  const of = (shelf: Shelf) => items.filter((item) => item.shelf === shelf);
  const soonest = soonestOf([...items, ...timers]);
  const question = questionOf(state, parts);
  const talk = parts.lines.slice(-MOST_LINES).map((line) => {
    return { ...line, time: timeText(line.wallMs, zone) };
  });
  const { listening, voice } = parts.status ?? {};
  return {
    time: timeText(nowWallMs, zone),
    nowWallMs,
    day: dayText(nowWallMs, zone),
    place: placeOf(state),
    status: [state.rehearsal ? "rehearsal" : "", listening, voice].filter(Boolean).join(" · "),
    warnings: warningsOf(state, parts),
    empty: items.length === 0 && timers.length === 0 && activeOwners(state).length === 0,
    hands: of("hands"),
    heat: of("heat"),
    rest: of("rest"),
    timers,
    ...(soonest ? { soonest } : {}),
    ...(question ? { question } : {}),
    key: keyOf(state, now),
    keys,
    next: nextOf(state, now),
    queue: queue(state, now)
      .slice(0, 4)
      .map((batch) => batchName(batch)),
    talk,
    strip: dayStrip(state, now, parts.planned),
    input: parts.input ?? { text: "", cursor: 0 },
    ...(parts.hint === undefined ? {} : { hint: parts.hint }),
  };
}

const NOT_RECORDED = "NOT RECORDED: the log cannot be written. The clocks run on.";

function warningsOf(state: State, parts: ViewParts): string[] {
  const alarm = parts.lines.findLast((line) => line.kind === "alarm");
  const rings = state.ringing.length > 0 && alarm ? [`ALARM: ${alarm.text} Say got it.`] : [];
  return [...(parts.notRecorded ? [NOT_RECORDED] : []), ...rings];
}

function placeOf(state: State): string {
  const { altitudeFt, altitudeUncertaintyFt, canners, units } = state.kitchen;
  if (altitudeFt === null) return "altitude not known";
  const metres = Math.round(altitudeFt * 0.3048);
  const about = altitudeUncertaintyFt > 0 ? "about " : "";
  const altitude = `${about}${units === "metric" ? `${metres} m` : `${withCommas(altitudeFt)} ft`}`;
  const gauges = canners.flatMap(({ gauge }) => {
    if (!gauge) return [];
    if (gauge.kind === "weighted") return ["weighted gauge"];
    if (gauge.readsHighPsi) return [`dial reads ${gauge.readsHighPsi} lb high`];
    return [gauge.untestedSeason === undefined ? "dial gauge" : "dial gauge, not tested"];
  });
  return [altitude, ...new Set(gauges)].join(" · ");
}

function shown(
  state: State,
  item: ShelfItem,
  keys: LabeledKey[],
  now: number,
  first: boolean,
): Item {
  const { owner, run, shelf } = item;
  const clock = item.clock && clockText(state, item.clock, item, now);
  const stands = standsOf(item);
  const own = keys.filter((key) => key.owner === owner.id && key.stage === run.id);
  const say = first || (shelf === "heat" && !clock) ? prompt(state, owner, run, now) : "";
  return {
    id: `${owner.id}/${run.id}`,
    shelf,
    name: nameOf(state, item),
    title: `${run.spec.title}${!isLoad(owner) && owner.state === "held" ? " (held)" : ""}`,
    keys: own,
    ...(clock ? { clock } : {}),
    ...(stands ? { stands } : {}),
    ...(say ? { say } : {}),
  };
}

/** Only the variety where that is enough to tell things apart; the canner by its own name. */
function nameOf(state: State, { owner }: ShelfItem): string {
  if (!isLoad(owner)) return owner.lot.variety ?? owner.recipe.title;
  const parts = owner.parts.length > 0 ? owner.parts.map((part) => part.batch) : [owner.batch];
  const names = parts.flatMap((id) => {
    const batch = state.batches[id];
    return batch ? [batch.lot.variety ?? batch.recipe.title] : [];
  });
  const what = [...new Set(names)].join(" + ");
  if (owner.unloadedAt !== undefined) return what;
  return `${state.kitchen.canners.length > 1 ? owner.canner : "canner"}, ${what}`;
}

function standsOf({ run, shelf, offer }: ShelfItem): string | undefined {
  if (run.state === "waiting") return offer === "begin" ? "can begin" : "waits";
  if (shelf !== "heat" || !run.kept) return undefined;
  if (isLost(run.kept)) return undefined;
  return run.kept.stretches.length === 0 ? "coming up" : undefined;
}

function clockText(state: State, clock: StageClock, { run }: ShelfItem, now: number): ShownClock {
  const { window } = run.spec;
  const max =
    window && rulesOf(run.spec).ends === "window" && run.startedAt !== undefined
      ? run.startedAt + window.maxMinutes * MINUTE_MS
      : undefined;
  if (clock.lost) {
    const whole = lengthText(clock.dueAt - clock.from);
    const text = `STOPPED: lost, the whole ${whole} again`;
    return { state: "lost", text, due: "", digits: "-:--", dueAt: Number.POSITIVE_INFINITY };
  }
  const open = now >= clock.dueAt && max !== undefined && now < max && max > clock.dueAt;
  const dueAt = open ? (max ?? clock.dueAt) : clock.dueAt;
  const left = dueAt - now;
  const due = whenText(wallOf(state, dueAt), wallOf(state, now), state.zone);
  const digits = digitsText(left);
  if (open)
    return { state: "open", text: `ready, ${lengthText(left)} at most`, due, digits, dueAt };
  if (left <= 0) {
    return { state: "over", text: `DUE ${lengthText(left)} ago`, due, digits: `+${digits}`, dueAt };
  }
  return { state: "running", text: lengthText(left), due, digits, dueAt };
}

function timerItems(state: State, now: number): Item[] {
  return Object.values(state.timers)
    .filter((timer) => timer.state === "running" || timer.state === "rang")
    .sort((a, b) => a.endsAt - b.endsAt)
    .map((timer) => {
      const left = timer.endsAt - now;
      const over = left <= 0;
      const digits = `${over ? "+" : ""}${digitsText(left)}`;
      const text = over ? `RANG ${lengthText(left)} ago` : lengthText(left);
      const due = whenText(wallOf(state, timer.endsAt), wallOf(state, now), state.zone);
      const clock = { state: over ? "over" : "running", text, due, digits, dueAt: timer.endsAt };
      const name = timerName(timer).replace(/^the /, "");
      return { id: timer.id, shelf: "timers", name, title: "", keys: [], clock } as Item;
    });
}

/** What comes due first, or already has; a stopped clock does not count. */
function soonestOf(items: Item[]): BigClock | undefined {
  let best: Item | undefined;
  for (const item of items) {
    if (!item.clock || !Number.isFinite(item.clock.dueAt)) continue;
    if (!best?.clock || item.clock.dueAt < best.clock.dueAt) best = item;
  }
  if (!best?.clock) return undefined;
  return { digits: best.clock.digits, name: best.name, title: best.title, clock: best.clock };
}

/** How each kind of transient question is answered. */
const ANSWERS: Record<Pending["expects"], string> = {
  yes: "answer yes or no",
  either: "answer yes or no",
  heard: "answer yes or no",
  number: "answer with a number",
  minutes: "answer with minutes, or I don't know",
  when: "answer with a time, or no",
  which: "answer by name, or no",
};

const TAKES: Record<AnswerKind, string> = {
  "yes-no": "answer yes or no",
  choice: "answer with one of them",
  percent: "answer with a number, such as five percent",
  inches: "answer with a number, such as half an inch",
  pounds: "answer with a number, or never tested",
  feet: "type it, such as 6200 feet",
  count: "answer with a number",
  minutes: "answer with minutes, or I don't know",
  jars: "all sealed, or the numbers that did not",
};

function questionOf(state: State, parts: ViewParts): View["question"] {
  const { pending } = parts;
  const all = questions(state);
  if (pending) {
    return { text: pending.text, answer: ANSWERS[pending.expects], of: all.length + 1 };
  }
  const [open] = all;
  if (!open) return undefined;
  const choices = open.choices?.join(", ");
  return { text: open.text, answer: choices ?? TAKES[answerKind(open)], of: all.length };
}

function keyOf(state: State, now: number): View["key"] {
  const offer = keyOffer(state, now);
  if (offer && !needsWords(state, offer)) return { works: true, text: keyWords(state, offer) };
  const top = shelves(state, now).find((item) => item.shelf === "hands");
  return { works: false, text: wordsNeeded(state, top?.owner, top?.run) };
}

/** What comes after what is running, and the next moment anything is due. */
function nextOf(state: State, now: number): string[] {
  const steps = activeOwners(state).flatMap((owner) => {
    if (!isLoad(owner) && owner.state !== "running") return [];
    const index = owner.stages.findLastIndex((run) => run.state === "running");
    const after = owner.stages.slice(index + 1).find((run) => run.state === "waiting");
    if (index < 0 || !after || rulesOf(after.spec).ends === "date") return [];
    return [`${short(ownerName(state, owner))}: ${after.spec.title}`];
  });
  const [due] = agenda(state, now).filter((item) => item.at > now);
  const at = due && whenText(wallOf(state, due.at), wallOf(state, now), state.zone);
  return [...steps.slice(0, 4), ...(at ? [`next moment due ${at}`] : [])];
}

function short(name: string): string {
  return name.replace(/\bthe /g, "");
}
