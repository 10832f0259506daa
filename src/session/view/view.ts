/** What the screen shows, worked out from the state and the present: plain data, no drawing. */

import { agenda } from "../../kitchen/agenda.ts";
import { handsNow, toCome } from "../../kitchen/day/coming.ts";
import { queue } from "../../kitchen/loads/next-load.ts";
import { activeOwners } from "../../kitchen/owners.ts";
import { openDoubts } from "../../kitchen/questions/heard-doubts.ts";
import { questions } from "../../kitchen/questions/questions.ts";
import { keyOffer, shelves } from "../../kitchen/shelves.ts";
import { leadName } from "../../kitchen/spoken-names.ts";
import { type State, wallOf } from "../../kitchen/state.ts";
import { HOUR_MS } from "../../kitchen/time.ts";
import type { PlanTask } from "../../plan/plan-request.ts";
import type { Item, Line, ScreenParts, ShownLine, View } from "../../ports/view.ts";
import { withCommas } from "../../reckon/reckoned.ts";
import { howAnswered, TO_ANSWER } from "../../speech/how-answered.ts";
import type { Pending } from "../dialogue.ts";
import { dayText, timeText, whenText } from "./clock-text.ts";
import { metricView } from "./in-units.ts";
import { itemsOf } from "./items.ts";
import { labeledKeys } from "./labeled-keys.ts";
import { dayStrip } from "./lanes.ts";
import { keyWords, needsWords, wordsNeeded } from "./offer-words.ts";
import { bigClock } from "./shown-clock.ts";

type ViewParts = Partial<ScreenParts> & {
  lines: readonly Line[];
  /** The transient question: "which one?". */
  pending?: Pick<Pending, "text" | "expects"> | undefined;
  notRecorded: boolean;
  /** Tasks of the day's plan, in wall time. */
  planned?: readonly PlanTask[];
  status?: { listening?: string; voice?: string };
};

/** What was said longer ago than this answers nothing any more. */
const RECENT_MS = 12 * HOUR_MS;
/** Lines of the conversation that can be leafed through. */
const MOST_LINES = 300;

/**
 * The view at an instant.
 * @param now kitchen time, ms.
 */
export function view(state: State, now: number, parts: ViewParts): View {
  const nowWallMs = wallOf(state, now);
  const { zone } = state;
  const keys = labeledKeys(state, now);
  const { items, clocks } = itemsOf(state, keys, now);
  const of = (shelf: Item["shelf"]) => items.filter((item) => item.shelf === shelf);
  const clock = bigClock(state, clocks, now);
  const question = questionOf(state, parts);
  const talk = parts.lines.slice(-MOST_LINES).map((line) => {
    return { ...line, time: timeText(line.wallMs, zone) };
  });
  const isRecent = ({ wallMs }: Line) => nowWallMs - wallMs <= RECENT_MS;
  const { listening, voice } = parts.status ?? {};
  const shown: View = {
    time: timeText(nowWallMs, zone),
    nowWallMs,
    day: dayText(nowWallMs, zone),
    place: placeOf(state),
    status: [state.rehearsal ? "rehearsal" : "", listening, voice].filter(Boolean).join(" · "),
    warnings: warningsOf(state, parts),
    empty: items.length === 0 && activeOwners(state).length === 0,
    hands: of("hands"),
    heat: of("heat"),
    rest: of("rest"),
    timers: of("timers"),
    ...(clock ? { clock } : {}),
    ...(question ? { question } : {}),
    key: keyOf(state, now),
    keys,
    next: nextOf(state, now),
    queue: queue(state, now)
      .slice(0, 4)
      .map((batch) => leadName(state, batch)),
    unexplained: unexplainedOf(state, question),
    talk,
    latest: latestOf(talk.filter(isRecent), [
      ...[...items, ...(clock ? [clock] : [])].flatMap(({ say }) => say ?? []),
      ...(question ? [question.text] : []),
    ]),
    strip: dayStrip(state, now, parts.planned),
    input: parts.input ?? { text: "", cursor: 0 },
    ...(parts.hint === undefined ? {} : { hint: parts.hint }),
    ...(parts.talkBack === undefined ? {} : { talkBack: parts.talkBack }),
  };
  return state.kitchen.units === "metric" ? metricView(shown) : shown;
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

/** Words that raised a doubt and wait for their explanation, where no open question quotes them. */
function unexplainedOf(state: State, question: View["question"]): string[] {
  return Object.values(state.loads).flatMap((load) =>
    openDoubts(load)
      .filter(({ text }) => !question?.text.includes(text))
      .map(({ at, text }) => `${timeText(wallOf(state, at), state.zone)} ${text}`),
  );
}

/** What the voice says and the shelves, the question or the warnings show as well. */
function isShown({ kind, text }: Line, said: readonly string[]): boolean {
  if (kind === "alarm" || kind === "asked") return true;
  return said.some((say) => text.includes(firstSentence(say)));
}

function firstSentence(text: string): string {
  return text.split(/(?<=[.!?]) /)[0] ?? "";
}

/** What was heard last, and what was said last since then that is shown nowhere else. */
function latestOf(talk: readonly ShownLine[], shown: readonly string[]): ShownLine[] {
  const at = talk.findLastIndex(({ kind }) => kind === "heard");
  const said = talk.slice(at + 1).findLast((line) => !isShown(line, shown));
  return [...talk.slice(Math.max(0, at), at + 1), ...(said ? [said] : [])];
}

function questionOf(state: State, parts: ViewParts): View["question"] {
  const { pending } = parts;
  const all = questions(state);
  if (pending) {
    return { text: pending.text, answer: TO_ANSWER[pending.expects], of: all.length + 1 };
  }
  const [open] = all;
  if (!open) return undefined;
  return { text: open.text, answer: howAnswered(state, open), of: all.length };
}

function keyOf(state: State, now: number): View["key"] {
  const offer = keyOffer(state, now);
  if (offer && !needsWords(state, offer)) return { works: true, text: keyWords(state, offer) };
  const top = shelves(state, now).find((item) => item.shelf === "hands");
  return { works: false, text: wordsNeeded(state, top?.owner, top?.run) };
}

/** What comes after what is running, and the next moment anything is due. */
function nextOf(state: State, now: number): string[] {
  const inHands = handsNow(state, now).map(({ run }) => run);
  const coming = toCome(state, now).filter(({ run }) => !inHands.includes(run));
  const steps = coming
    .filter(({ owner }, at) => coming.findIndex((one) => one.owner === owner) === at)
    .map(({ owner, run }) => `${leadName(state, owner)}: ${run.spec.title}`);
  const [due] = agenda(state, now).filter((item) => item.at > now);
  const at = due && whenText(wallOf(state, due.at), wallOf(state, now), state.zone);
  return [...steps.slice(0, 4), ...(at ? [`next moment due ${at}`] : [])];
}
