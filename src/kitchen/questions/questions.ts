/**
 * Questions that guard safety. They follow from the state, so they outlive a crash; the first is
 * the one that is asked, and a yes or no answers it.
 */

import type { ProcessTerms } from "../../recipe/recipe.ts";
import { inchesWords } from "../../reckon/number-words.ts";
import { ready } from "../jars/lots.ts";
import { activeOwners, isLoad, runOfRole } from "../owners.ts";
import { batchName, leadName, leadNames, upper } from "../spoken-names.ts";
import { isOver } from "../stage-run.ts";
import type { Batch, Load, StageRun, State } from "../state.ts";
import { wallOf } from "../state.ts";
import { localFields, MINUTE_MS } from "../time.ts";
import { current, roundOf } from "../unbroken-time.ts";
import { ALTITUDE_QUESTION, doubtQuestion } from "./altitude-doubts.ts";
import { dispositionQuestions } from "./dispositions.ts";
import { factorQuestions } from "./factor-questions.ts";
import { gapQuestions } from "./gap-questions.ts";
import { guideQuestion, isUncompared, rowKey } from "./guide.ts";
import {
  COVERED_OR_NOT,
  heardQuestion,
  processDoubts,
  quotedDoubts,
  stillQuestion,
} from "./heard-doubts.ts";
import type { AnswerKind, Question, QuestionKind } from "./question.ts";
import { sealQuestion } from "./seal-questions.ts";
import { sealedName, touchedBatches } from "./sealed-lines.ts";
import { isPutOff, mayWait, setUpQuestions, WHERE_IS_THE_KITCHEN } from "./set-up.ts";

export type { AnswerKind, Question, QuestionKind } from "./question.ts";

const TAKES: Partial<Record<QuestionKind, AnswerKind>> = {
  altitude: "feet",
  gauge: "choice",
  "gauge-off": "pounds",
  disposition: "choice",
  seals: "jars",
  broken: "count",
  guide: "minutes",
};

/** What kind of answer a question takes. */
export function answerKind({ kind, takes: own }: Question): AnswerKind {
  return own ?? TAKES[kind] ?? "yes-no";
}

const RANK: Record<QuestionKind, number> = {
  gap: 0,
  cover: 1,
  "still-covered": 1,
  disposition: 2,
  "no-boil": 2,
  "altitude-doubt": 2,
  still: 0,
  end: 3,
  heard: 3,
  broken: 3,
  altitude: 4,
  guide: 4,
  gauge: 5,
  "gauge-tested": 5,
  "gauge-off": 5,
  factor: 6,
  seals: 7,
  "sealed-line": 7,
  "set-up": 8,
};

/** Questions that a running process depends on: nothing else is asked while one of them waits. */
const URGENT_RANK = 1;
/** A question that has had no answer for this long no longer keeps others from being asked. */
export const PATIENCE_MS = 5 * MINUTE_MS;

/** Whether a running process depends on it. */
export function isUrgent({ kind }: Question): boolean {
  return RANK[kind] <= URGENT_RANK;
}

/**
 * Open questions. First the one that a yes, a no or a number answers now (the one asked last, or
 * one that a process depends on); then the others, the one to ask next in front.
 */
export function questions(state: State): readonly Question[] {
  const events = state.history.length;
  const last = found.get(state);
  if (last?.events === events) return last.list;
  const list = openQuestions(state);
  found.set(state, { events, list });
  return list;
}

/** A state changes by events alone, and all of them are in its history. */
const found = new WeakMap<State, { events: number; list: readonly Question[] }>();

function openQuestions(state: State): Question[] {
  const all = byRank(state).flatMap((one) => openStill(state, one) ?? []);
  const isAsked = (one: Question) => state.asked[one.key] !== undefined;
  // What is asked about the kitchen steps aside for what is asked about jars.
  const jars = all.some((one) => one.kind !== "set-up" && isAsked(one));
  const list = jars ? all.filter(({ kind }) => kind !== "set-up") : all;
  const asked = list.filter(isAsked);
  const when = (one: Question) => state.asked[one.key] ?? 0;
  const urgent = asked.find((one) => RANK[one.kind] <= URGENT_RANK);
  const now =
    urgent ??
    asked.reduceRight<Question | undefined>(
      (last, one) => (last === undefined || when(one) > when(last) ? one : last),
      undefined,
    );
  return now ? [now, ...list.filter((one) => one !== now)] : list;
}

/** The question that was asked and waits for its answer. */
export function shownQuestion(state: State): Question | undefined {
  const [open] = questions(state);
  return open && state.asked[open.key] !== undefined ? open : undefined;
}

/** A guess is asked about again no sooner than this. */
const AGAIN_AFTER_MS = 10 * MINUTE_MS;

/** An answer that left the question open is asked for once more, when no jars are on their way. */
function openStill(state: State, question: Question): Question | undefined {
  const again = `${question.key}/again`;
  const leftAt = state.leftOpen[question.key];
  if (leftAt === undefined) return question;
  if (state.leftOpen[again] !== undefined || state.lastW - leftAt < AGAIN_AFTER_MS)
    return undefined;
  const calm = activeOwners(state).every((owner) => {
    if (isLoad(owner)) return owner.loadedAt === undefined || isQuiet(owner);
    return ready(owner) === 0 && runOfRole(owner, "filling")?.state !== "running";
  });
  return calm ? { ...question, key: again } : undefined;
}

/** Whether its jars are out, or its process runs and nothing of it is in doubt. */
function isQuiet(load: Load): boolean {
  const kept = runOfRole(load, "treatment")?.kept;
  return load.unloadedAt !== undefined || (kept !== undefined && current(kept) !== undefined);
}

/** Whether nobody need be asked at night: no jars in the canner hang on it. */
export function waitsForMorning({ kind }: Question): boolean {
  return RANK[kind] >= RANK.altitude;
}

/**
 * The question to ask now: none while one that was just asked, or an urgent one, waits.
 * @param may whether one may be asked at this moment.
 */
export function questionToAsk(
  state: State,
  now: number,
  may: (question: Question) => boolean = () => true,
): Question | undefined {
  const all = questions(state);
  const [open] = all;
  if (!open) return undefined;
  const next = all.find((one) => state.asked[one.key] === undefined && may(one));
  const askedAt = state.asked[open.key];
  if (askedAt === undefined || !next) return next;
  if (RANK[next.kind] < RANK[open.kind]) return next;
  const waits = RANK[open.kind] <= URGENT_RANK || now - askedAt < PATIENCE_MS;
  return waits ? undefined : next;
}

function byRank(state: State): Question[] {
  const list: Question[] = [];
  if (state.kitchen.altitudeFt === null && !isPutOff(state, "altitude")) {
    const first = {
      key: "altitude",
      kind: "altitude",
      text: ALTITUDE_QUESTION,
      about: null,
    } as const;
    list.push(mayWait(state, first) ? { ...first, text: WHERE_IS_THE_KITCHEN } : first);
  }
  for (const owner of activeOwners(state)) {
    if (isLoad(owner)) list.push(...loadQuestions(state, owner), ...guideQuestions(state, owner));
    else if (owner.state !== "abandoned") {
      list.push(...gaugeQuestions(state, owner));
    }
  }
  list.push(...factorQuestions(state));
  for (const load of Object.values(state.loads)) {
    const ending = list.some(({ kind, about }) => kind === "end" && about === load.id);
    list.push(...heardQuestion(state, load, ending));
  }
  list.push(...setUpQuestions(state));
  list.push(...dispositionQuestions(state), ...doubtQuestion(state), ...sealedQuestions(state));
  const named = list.map((one) => {
    const lead = leadOf(state, one);
    return lead === undefined ? one : { ...one, lead, text: `${lead}: ${one.text}` };
  });
  return named.sort((a, b) => RANK[a.kind] - RANK[b.kind]);
}

/** Whether anything is missing where the journal is damaged: only a person can know. */
function sealedQuestions(state: State): Question[] {
  return state.sealedLines.flatMap((line): Question[] => {
    const batches = touchedBatches(state, line);
    if (line.held !== undefined || batches.length === 0) return [];
    const names = batches.map(batchName).join(" and ");
    const text =
      `${upper(sealedName(line))} cannot be relied on, and it may tell of ${names}. ` +
      "Did everything go as the rest of the log says, with nothing wrong missing from it?";
    return [
      {
        key: `sealed-line/${line.seal}`,
        kind: "sealed-line",
        text,
        about: null,
        detail: line.seal,
      },
    ];
  });
}

/** The year a gauge test belongs to. */
export function gaugeYear(state: State, t: number): number {
  return localFields(wallOf(state, t), state.zone).year;
}

function gaugeQuestions(state: State, batch: Batch): Question[] {
  if (batch.option?.method !== "pressure" || batch.state === "complete") return [];
  const season = gaugeYear(state, Math.max(state.lastW, batch.begunAt));
  const list: Question[] = [];
  for (const canner of state.kitchen.canners) {
    const { gauge } = canner;
    const about = canner.id;
    if (!gauge) {
      const text = `Does the ${canner.name} have a dial gauge or a weighted gauge?`;
      const choices = ["dial", "weighted"];
      list.push({ key: `gauge/${about}`, kind: "gauge", text, about, choices });
      continue;
    }
    if (gauge.kind !== "dial" || gauge.untestedSeason === season) continue;
    if (gauge.testedSeason !== season) {
      const text = "Was the dial gauge tested this season?";
      list.push({ key: `gauge-tested/${about}/${season}`, kind: "gauge-tested", text, about });
    } else if (gauge.readsHighPsi === undefined) {
      const text = "By how many pounds does the dial read high? Zero if it reads true.";
      list.push({ key: `gauge-off/${about}/${season}`, kind: "gauge-off", text, about });
    }
  }
  return list;
}

/** A load whose time is from another row, from memory too, than the one its batch began with. */
function guideQuestions(state: State, load: Load): Question[] {
  const { terms } = load;
  const asked = state.batches[load.batch]?.askedRow;
  if (!isUncompared(state, terms) || rowKey(terms) === asked) return [];
  const key = `guide/${load.id}/${terms.minutes}`;
  return [{ key, kind: "guide", text: guideQuestion(terms), about: load.id }];
}

function loadQuestions(state: State, load: Load): Question[] {
  const list = stillQuestion(state, load);
  const process = runOfRole(load, "treatment");
  const kept = process?.kept;
  const about = load.id;
  const { terms } = load;
  if (!kept || !terms) return list;
  list.push(...gapQuestions(load, terms.method));
  if (kept.unconfirmedAt !== undefined && load.unloadedAt === undefined) {
    const text = `Are the lids covered by at least ${inchesWords(terms.coverIn)} of water?`;
    const round = `${kept.stretches.length}.${load.uncoveredTimes}`;
    list.push({ key: `cover/${about}/${round}`, kind: "cover", text, about, ...COVERED_OR_NOT });
  }
  load.waterLow.forEach((low, index) => {
    if (low.covered !== undefined || load.unloadedAt !== undefined) return;
    const text = "Are the lids still covered?";
    const key = `still-covered/${about}/${index}`;
    list.push({ key, kind: "still-covered", text, about, ...COVERED_OR_NOT });
  });
  const ending = ENDING[terms.method];
  if (ending && hasEnded(load, process) && !load.endAnswer) {
    const doubts = quotedDoubts(state, processDoubts(load));
    const forms = doubts ? { text: `${doubts} ${ending.text}` } : ending;
    const again = load.endReopened.map((at) => `/${at}`).at(-1) ?? "";
    const key = `end/${about}/${roundOf(kept)}${again}`;
    list.push({ key, kind: "end", ...forms, about });
  }
  if (load.brokenInside !== undefined && load.unloadedAt !== undefined) {
    const text = "How many jars broke in the canner?";
    list.push({ key: `broken/${about}`, kind: "broken", text, about, detail: load.brokenInside });
  }
  const check = runOfRole(load, "seals");
  if (check?.state === "running") list.push(sealQuestion(state, load));
  return list;
}

/** Asked at the end of a process; readings alone speak for a pasteurization. */
const ENDING: Partial<Record<ProcessTerms["method"], { text: string; short: string }>> = {
  "boiling-water": {
    text: "Was it a full boil throughout, with the lids covered at the end?",
    short: "Full boil throughout, lids covered?",
  },
  steam: {
    text: "Was there a full column of steam throughout?",
    short: "A full column of steam throughout?",
  },
  pressure: {
    text: "At the pressure throughout, vented, and left to fall by itself?",
    short: "At the pressure throughout, vented, and left to fall by itself?",
  },
};

/** Whether its time is full and, for a pressure canner, it has come down too. */
function hasEnded(load: Load, process: StageRun): boolean {
  if (process.state !== "complete" || load.early) return false;
  const zero = runOfRole(load, "coming-down");
  return !zero || isOver(zero) || (zero.kept !== undefined && current(zero.kept) !== undefined);
}

/** Whose a question is, where several batches run: "Provider". */
function leadOf(state: State, question: Question): string | undefined {
  const running = activeOwners(state).filter(
    (owner) => !isLoad(owner) && owner.state !== "complete",
  );
  if (running.length < 2 || question.about === null) return undefined;
  if (question.batches) {
    const lots = question.batches.flatMap((id) => state.batches[id] ?? []);
    return leadNames(state, lots);
  }
  const batch = state.batches[question.about];
  const load = state.loads[question.about];
  const owner = batch ?? load;
  return owner && leadName(state, owner);
}
