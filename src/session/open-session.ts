/**
 * Opens the kitchen: becomes the only writer, reads the journal, works out how long nobody watched,
 * and announces what came due meanwhile.
 */

import type { DeskDecision } from "../desk/want.ts";
import { type Heartbeat, isOfLog, lookAtHeartbeat } from "../journal/heartbeat.ts";
import type { Appended, WriteRefusal } from "../journal/journal.ts";
import { openJournal } from "../journal/open-journal.ts";
import { agenda, type DueItem } from "../kitchen/agenda.ts";
import { latestCheck } from "../kitchen/day/checks.ts";
import { CarriedOut } from "../kitchen/decide/carried-out.ts";
import { OWN_COMMAND } from "../kitchen/decide/decide-corrections.ts";
import { wake } from "../kitchen/decide/wake.ts";
import type { DatedFact } from "../kitchen/events.ts";
import { historyOf } from "../kitchen/events.ts";
import { replay } from "../kitchen/evolve.ts";
import { writersIn } from "../kitchen/jars/jar-ids.ts";
import { activeOwners, isLoad } from "../kitchen/owners.ts";
import { questions } from "../kitchen/questions/questions.ts";
import { sealedFacts, unknownOwners } from "../kitchen/questions/sealed-places.ts";
import { SET_UP_TOPICS, type SetUpTopic } from "../kitchen/questions/set-up-topic.ts";
import { ownerName } from "../kitchen/spoken-names.ts";
import { rulesOf } from "../kitchen/stages/kinds.ts";
import { type State, wallOf } from "../kitchen/state.ts";
import { localFields, MINUTE_MS } from "../kitchen/time.ts";
import { isLost } from "../kitchen/unbroken-time.ts";
import type { Clock, ClockReading } from "../ports/clock.ts";
import type { Disk } from "../ports/disk.ts";
import type { Line } from "../ports/view.ts";
import type { VoicePort } from "../ports/voice.ts";
import type { Library } from "../recipe/library.ts";
import { wordsIn } from "../reckon/metric-words.ts";
import { dueSentence } from "../speech/due-sentences.ts";
import { prompt } from "../speech/prompts.ts";
import { durationWords } from "../speech/spoken-time.ts";
import { isMerged, mergedEvents } from "./reading/branches.ts";
import { eventsOf, KITCHEN_FORMAT, recordOf } from "./reading/journal-records.ts";
import { Session } from "./session.ts";
import { KitchenTimeline } from "./time/kitchen-timeline.ts";
import { somethingRuns } from "./time/time-facts.ts";
import { sameBoot, TimeWatch } from "./time/time-watch.ts";

type OpenParts = {
  clock: Clock;
  disk: Disk;
  folder: string;
  voice: VoicePort;
  library: Library;
  version: string;
  rehearsal: boolean;
  /** Facts to write at the first opening of an empty kitchen, such as a rehearsal's altitude. */
  setUp?: DatedFact[];
  /** Somebody is there to be asked about a kitchen that is new. */
  welcomes?: boolean;
  owns?: () => boolean;
  /** Why this program may not write, where `owns` says so. */
  whyNot?: () => WriteRefusal | undefined;
  /** False where nobody is there to be asked: questions wait for the next opening. */
  asks?: boolean;
  /** The longest time between two looks at the clocks, ms; a second by default. */
  lookMs?: (kept: boolean) => number;
  /** Who writes in this folder, beside the writers known in its journal; nobody by default. */
  writer?: (known: ReadonlySet<string>) => string | undefined;
  /** How work is put off until an answer is out; done at once by default. */
  later?: (work: () => void) => void;
  /** What limits a search for a plan besides its steps; nothing by default. */
  elapsedMs?: () => number;
  onLines(lines: Line[]): void;
  onDecided?: (decisions: DeskDecision[]) => void;
};

/** Something that came due while nobody was there, as announced at the opening; `at` is wall ms. */
export type CameDue = {
  key: string;
  at: number;
  rank: "alarm" | "prompt";
  text: string;
  /** It tells of a process, and is said even in a hush. */
  guards: boolean;
};

export type OpenedSession = {
  session: Session;
  /** What could not be relied on in the log, one sentence each. */
  notices: string[];
  /** True where lines are missing or damaged. */
  incomplete: boolean;
  damaged: boolean;
  /** What came due meanwhile and was written down as due by this opening. */
  told: CameDue[];
};

/** How far apart two looks at the clocks are expected, ms. */
const LOOK_MS = 1000;
/** A wall clock that strays less than this from kitchen time, ms, was not set by anybody. */
const DRIFT_MS = 1500;

export function openSession(parts: OpenParts): OpenedSession {
  const { clock, disk, folder, lookMs = () => LOOK_MS } = parts;
  const reading = clock.read();
  const clocks = lookAtHeartbeat(disk, folder);
  const opened = openJournal(disk, folder, {
    format: KITCHEN_FORMAT,
    year: () => localFields(clock.read().wallMs, clock.read().zone).year,
    ...(parts.owns ? { owns: parts.owns } : {}),
    ...(parts.whyNot ? { whyNot: parts.whyNot } : {}),
    ...(clocks.beat ? { expectedN: clocks.beat.lastN } : {}),
  });
  const { beat, problem } = ofThisLog(clocks, opened.records);
  const events = eventsOf(opened.records);
  const state = replay(isMerged(events) ? mergedEvents(events) : events);
  const sealed = sealedFacts(events, opened.damages);
  const { timeline, from, byWall } = resumeTime(state, beat, reading);
  const now = timeline.now(reading);
  const facts = [...openingFacts(parts, state, { now, from, byWall, reading }), ...sealed];
  const mark = (what: string) => ({ cmd: `${OWN_COMMAND}${what}.${Math.round(now)}`, w: now });
  const written = write(opened.journal, state, new CarriedOut(state, mark("open")).add(facts));
  const due = agenda(state, now).filter((item) => item.tellAt <= now);
  const woken = wake(state, now, parts.library, () => mark("woke"));
  if (woken) write(opened.journal, state, woken);
  const damaged = opened.found === "damaged";
  const session = new Session({
    clock,
    disk,
    folder,
    voice: parts.voice,
    library: parts.library,
    journal: opened.journal,
    state,
    timeline,
    watch: new TimeWatch(reading, lookMs(false)),
    lookMs,
    asks: parts.asks ?? true,
    later: parts.later ?? ((work) => work()),
    elapsedMs: parts.elapsedMs ?? (() => 0),
    onLines: parts.onLines,
    ...(parts.onDecided ? { onDecided: parts.onDecided } : {}),
  });
  const unknown = opened.damages.length > 0 ? unknownOwners(state) : [];
  const unwritten = !written.ok && written.why !== "read-only" ? written.message : undefined;
  const notices = [
    ...opened.notices,
    ...(problem === undefined ? [] : [`${problem}: ${BY_THE_WALL}`]),
    ...(unknown.length > 0 ? [beginningMissing(unknown)] : []),
    ...(unwritten === undefined ? [] : [`Not recorded: ${unwritten}`]),
  ];
  const told = due.flatMap((item) => tellDue(state, latestCheck(state, item, now), now));
  const running = runningNow(state);
  const waiting = running.map((text) => ({ rank: "prompt" as const, text }));
  session.greet([...told, ...waiting], notices, parts.welcomes ?? false);
  if (damaged) session.offerFreshFile();
  const recorded = told.filter(({ key }) => state.due[key] !== undefined);
  const incomplete = opened.damages.length > 0;
  return { session, notices: opened.notices, incomplete, damaged, told: recorded };
}

const BY_THE_WALL = "how long nobody watched is reckoned by the wall clock alone.";

/** The clocks of another log say nothing about this one. */
function ofThisLog(
  clocks: ReturnType<typeof lookAtHeartbeat>,
  records: Parameters<typeof isOfLog>[1],
): ReturnType<typeof lookAtHeartbeat> {
  const { beat } = clocks;
  if (!beat || isOfLog(beat, records)) return clocks;
  return { problem: "The clocks that lie beside the log are another log's" };
}

/** Said where the line that began a batch or a load cannot be read. */
function beginningMissing(ids: string[]): string {
  return (
    `What the log says of ${ids.join(" and ")} cannot be placed: the line that began it is ` +
    "damaged. I keep no clock for it. Look at the canner and the jars yourself, and count no " +
    "time of it as tested."
  );
}

/** What came due, as it is announced where nobody was there. */
export function cameDue(state: State, item: DueItem): CameDue {
  const { key, rank, run } = item;
  const guards = rank === "alarm" && run !== undefined && rulesOf(run.spec).watched;
  const at = Math.round(wallOf(state, item.at));
  const text = wordsIn(state.kitchen.units, dueSentence(state, item));
  return { key, at, rank, text, guards };
}

/** What came due meanwhile, with how long ago; empty where there is nothing to say about it. */
function tellDue(state: State, item: DueItem, now: number): CameDue[] {
  const warming = item.what === "warm-up";
  const text = warming ? lightTheCanner(state, item, now) : dueSentence(state, item);
  if (!text) return [];
  const since = now - item.at;
  const ago = warming || since < MINUTE_MS ? "" : ` That was ${durationWords(since)} ago.`;
  return [{ ...cameDue(state, item), text: `${text}${ago}` }];
}

/** A canner whose time to be lit came while nobody was there is not lit yet. */
function lightTheCanner(state: State, { owner }: DueItem, now: number): string {
  for (const load of activeOwners(state)) {
    const run = load.stages.find((one) => one.spec.step === "canner" && one.state === "running");
    if (isLoad(load) && load.batch === owner?.id && run) return prompt(state, load, run, now);
  }
  return "";
}

/** What is running at an opening, by name, and what is still unanswered. */
function runningNow(state: State): string[] {
  const names = activeOwners(state)
    .filter((owner) => isLoad(owner) || owner.state === "running" || owner.state === "held")
    .flatMap((owner) => {
      const run = owner.stages.find((one) => one.state === "running");
      if (!run) return [];
      const stopped = isLoad(owner) && run.kept && isLost(run.kept) ? ", its clock stopped" : "";
      const held = !isLoad(owner) && owner.state === "held" ? ", held" : "";
      return [`${ownerName(state, owner)}, at ${run.spec.title}${stopped}${held}`];
    });
  const [open] = questions(state);
  const asked = open && state.asked[open.key] !== undefined ? open.text : undefined;
  return [
    ...(names.length > 0 ? [`Running: ${names.join("; ")}.`] : []),
    ...(asked === undefined ? [] : [`Still to answer: ${asked}`]),
  ];
}

/**
 * Continues from the last known moment: the side file of clocks, else the last event's own time.
 */
export function resumeTime(
  state: State,
  beat: Heartbeat | undefined,
  reading: ClockReading,
): { timeline: KitchenTimeline; from: number; byWall: boolean } {
  if (state.history.length === 0) {
    return { timeline: KitchenTimeline.begin(reading), from: reading.wallMs, byWall: false };
  }
  const offset = state.offsets.at(-1)?.offsetMs ?? 0;
  if (beat) {
    const { reading: last, kitchenMs = last.wallMs - offset } = beat;
    const timeline = KitchenTimeline.from(kitchenMs, last);
    // The log may have gone on after the heartbeat, and the machine may then have started with an
    // early wall clock.
    const behind = timeline.now(reading) < state.lastW;
    return {
      timeline: behind ? KitchenTimeline.from(state.lastW, reading) : timeline,
      from: Math.max(kitchenMs, state.lastW),
      byWall: !sameBoot(last, reading),
    };
  }
  // Without a reading of the clocks, only the wall clock shows how long it was.
  const wall = { ...reading, wallMs: state.lastW + offset, bootMs: 0, bootId: "unknown" };
  return { timeline: KitchenTimeline.from(state.lastW, wall), from: state.lastW, byWall: true };
}

function openingFacts(
  parts: OpenParts,
  state: State,
  time: { now: number; from: number; byWall: boolean; reading: ClockReading },
): DatedFact[] {
  const { now, from, byWall, reading } = time;
  const facts: DatedFact[] = [];
  const first = state.history.length === 0;
  if (!first && somethingRuns(state) && now > from) {
    const cause = state.open ? "crashed" : "closed";
    facts.push({ type: "gap", from, to: now, cause, byWall, t: now });
  }
  const known = first ? reading.wallMs - now : (state.offsets.at(-1)?.offsetMs ?? 0);
  const strayed = reading.wallMs - now - known;
  if (!first && Math.abs(strayed) > DRIFT_MS) {
    facts.push({ type: "clock-set", byMs: Math.round(strayed), t: now });
  }
  const writer = parts.writer?.(writersIn(state));
  facts.push({
    type: "opened",
    version: parts.version,
    zone: reading.zone,
    offsetMs: known + (Math.abs(strayed) > DRIFT_MS ? Math.round(strayed) : 0),
    rehearsal: parts.rehearsal,
    ...(writer === undefined ? {} : { writer }),
    t: now,
  });
  if (first) facts.push(...(parts.setUp ?? []).map((fact) => ({ ...fact, t: now })));
  if (parts.welcomes) facts.push(...welcomeFacts(state, now));
  return facts;
}

/** A home that never made anything is asked, once, for what nobody has set yet. */
function welcomeFacts(state: State, t: number): DatedFact[] {
  const { batches, kitchen } = state;
  const history = historyOf(state);
  if (Object.keys(batches).length > 0 || history.some(({ type }) => type === "set-up")) return [];
  const sets = history.filter((event) => event.type === "kitchen-set");
  const known: Record<SetUpTopic, boolean> = {
    altitude: kitchen.altitudeFt !== null,
    canner: sets.some(({ canners }) => canners),
    gauge: kitchen.canners.some(({ gauge }) => gauge),
    units: sets.some(({ units }) => units),
    voice: false,
  };
  return SET_UP_TOPICS.filter((topic) => !known[topic]).map((topic) => {
    return { type: "set-up", topic, became: "open", t };
  });
}

function write(
  journal: ReturnType<typeof openJournal>["journal"],
  state: State,
  { events, after }: CarriedOut,
): Appended {
  // A kitchen's very first record is written in the zone it opens in.
  const zone = events.find((event) => event.type === "opened");
  const at =
    zone?.type === "opened" && state.history.length === 0 ? { ...state, zone: zone.zone } : state;
  const appended = journal.append(events.map((event) => recordOf(at, event)));
  Object.assign(state, after);
  return appended;
}
