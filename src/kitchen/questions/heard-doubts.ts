/**
 * Words that raise a doubt about jars at stake: which loads they may concern, when they may
 * interrupt, and what is asked about them. A plain loss is acted on at once and is not asked about
 * here.
 */
import type { ProcessTerms } from "../../recipe/recipe.ts";
import { numberWords } from "../../reckon/number-words.ts";
import { LOW_TEMPERATURE_F } from "../../reckon/trade-numbers.ts";
import type { Evidence } from "../command.ts";
import type { HeardDoubt } from "../heard-doubt.ts";
import { lotOf } from "../jars/lots.ts";
import { activeOwners, hasBegun, isLoad, runOfRole } from "../owners.ts";
import { isOver } from "../stage-run.ts";
import { type Batch, type Load, type State, wallOf } from "../state.ts";
import { HOUR_MS, localIso, MINUTE_MS } from "../time.ts";
import { current } from "../unbroken-time.ts";
import { undecidedOf } from "./dispositions.ts";
import { eitherOf, type Question } from "./question.ts";

/**
 * At most one interruption for a load in this time, and this many in a whole process (our choice).
 */
const APART_MS = 10 * MINUTE_MS;
const MOST_INTERRUPTIONS = 2;
const MOST_QUOTED = 3;
/** What is remembered about jars that are put away is taken as about them for this long. */
const ASKED_FOR_MS = 30 * 24 * HOUR_MS;
/** Loads put away within so long were done together. */
const TOGETHER_MS = 24 * HOUR_MS;

/** Subjects that concern only the process; lids and acid concern the filling before it too. */
export const OF_PROCESS: ReadonlySet<Evidence["about"]> = new Set(["boil", "water", "pressure"]);

/**
 * Loads that words about a subject may concern: those in a canner, else those just out of it.
 * @param now kitchen time in ms
 */
export function atStake(state: State, { about, strength, past }: Evidence, now: number): Load[] {
  const loads = activeOwners(state)
    .filter(isLoad)
    .filter((load) => hasGauge(state, load, about));
  const inside = loads.filter((load) => {
    if (load.unloadedAt !== undefined) return false;
    // What goes into a jar is at stake from the moment a canner is lit for it.
    if (!OF_PROCESS.has(about)) return true;
    // Its boil may be told later than it was, so a loss is kept before anybody spoke of one.
    const kept = strength !== "trace" || hasBegun(load) || isVenting(load);
    return load.loadedAt !== undefined && kept;
  });
  const ofFilling = !OF_PROCESS.has(about);
  if (inside.length > 0 || !(ofFilling || past === true)) return inside;
  const out = loads.filter((load) => load.unloadedAt !== undefined);
  if (out.length === 0 && stillAtTheTable(state).length > 0) return [];
  return out.length > 0 ? out : lately(state, now).filter((load) => hasGauge(state, load, about));
}

/** Whether a subject can concern a load at all: what is said of a gauge, only under pressure. */
function hasGauge(state: State, { batch }: Load, about: Evidence["about"]): boolean {
  return about !== "gauge" || state.batches[batch]?.option?.method === "pressure";
}

/** The last that were put away, so recently that what is remembered of them may still be told. */
function lately(state: State, now: number): Load[] {
  const away = Object.values(state.loads).flatMap((load) => {
    const { unloadedAt: at } = load;
    const told = at !== undefined && now - at <= ASKED_FOR_MS && !isLabeled(state, load);
    return load.state === "complete" && told ? { load, at } : [];
  });
  const last = Math.max(...away.map(({ at }) => at));
  return away.flatMap(({ load, at }) => (last - at <= TOGETHER_MS ? load : []));
}

function isVenting(load: Load): boolean {
  return (runOfRole(load, "venting")?.kept?.stretches.length ?? 0) > 0;
}

/** Batches that no canner is lit for yet, or that want none: their food is at stake already. */
export function stillAtTheTable(state: State): Batch[] {
  const lit = new Set(activeOwners(state).flatMap((one) => (isLoad(one) ? one.batch : [])));
  return activeOwners(state).flatMap((one) => {
    const able = !isLoad(one) && one.loads.length === 0 && !lit.has(one.id);
    return able ? one : [];
  });
}

/** Factors whose plain answer settles what was doubted of a subject before it. */
const ANSWERS: Partial<Record<Evidence["about"], readonly string[]>> = {
  acid: ["vinegar-5-percent", "acid-in-every-jar", "bottled-juice"],
  lids: ["new-lids"],
};

/** The doubts of a batch that go with its jars into a load: each load of it is asked about. */
export function carriedDoubts({ heard, confirmed }: Batch): HeardDoubt[] {
  const open = heard.filter(({ about, at, settledAt }) => {
    if (settledAt !== undefined) return false;
    return !confirmed.some((one) => {
      return one.held && one.at >= at && ANSWERS[about]?.includes(one.factor) === true;
    });
  });
  return open.map((one) => ({ ...one }));
}

/** When its boil, steam or pressure was first there; never, as long as nobody has said so. */
function heldFrom(load: Load): number {
  const runs = [runOfRole(load, "venting"), runOfRole(load, "treatment")];
  const begun = runs.flatMap((run) => run?.kept?.stretches.map(({ from }) => from) ?? []);
  const never = load.unloadedAt === undefined ? Number.POSITIVE_INFINITY : Number.NEGATIVE_INFINITY;
  return begun.length > 0 ? Math.min(...begun) : never;
}

/** Doubts of a load that nobody has settled; what was lost before it was there is none. */
export function openDoubts(load: Load): HeardDoubt[] {
  const from = heldFrom(load);
  return load.heard.filter(({ settledAt, about, at }) => {
    return settledAt === undefined && (!OF_PROCESS.has(about) || at >= from);
  });
}

/** What was said not to be all right, or, once the jars are out, was never settled. */
export function leftDoubts(load: Load): HeardDoubt[] {
  const open = load.unloadedAt === undefined ? [] : openDoubts(load);
  return load.heard.filter((one) => {
    return one.strength !== "loss" && (one.held === false || open.includes(one));
  });
}

/** Open doubts that the closing question of its process covers. */
export function processDoubts(load: Load): HeardDoubt[] {
  return openDoubts(load).filter(({ about }) => OF_PROCESS.has(about));
}

/**
 * Whether a load's process may be interrupted by a question now, however often it started over.
 * @param now kitchen time in ms
 */
function mayInterrupt(state: State, load: Load, now: number): boolean {
  const before = Object.entries(state.asked).filter(([key]) => key.startsWith(stillKey(load)));
  const last = Math.max(Number.NEGATIVE_INFINITY, ...before.map(([, at]) => at));
  return before.length < MOST_INTERRUPTIONS && now - last >= APART_MS;
}

function stillKey(load: Load): string {
  return `still/${load.id}/`;
}

type Either = { text: string; right: string[]; wrong: string[] };

const STOPPED = ["did it stop", "stopped", "it stopped", "it did stop", "stop"];
const DROPPED = ["did it drop", "dropped", "it dropped", "it did drop", ...STOPPED];
const STILL = [
  ...["still", "it still is", "still going", "still going strong", "it never stopped"],
  ...["never stopped", "it did not stop", "no it never stopped", "all along"],
];

const { min, max } = LOW_TEMPERATURE_F;
const EITHER: Record<ProcessTerms["method"], Either> = {
  "boiling-water": {
    text: "Still boiling, or did it stop?",
    right: [
      ...["still boiling", "still boiling hard", "still boiling away", "boiling all along"],
      ...["still at a boil", "still at a full boil", "still rolling", ...STILL],
    ],
    wrong: STOPPED,
  },
  steam: {
    text: "Still in full steam, or did it stop?",
    right: ["still in full steam", "still steaming", "full steam", ...STILL],
    wrong: STOPPED,
  },
  pressure: {
    text: "Still at pressure, or did it drop?",
    right: ["still at pressure", "still up", "it held", ...STILL],
    wrong: DROPPED,
  },
  "low-temperature": {
    text: `Still at ${min} to ${max} degrees, or did it drop?`,
    right: ["still there", ...STILL],
    wrong: DROPPED,
  },
};
const COVERED: Either = {
  text: "Lids still covered, or are some out of the water?",
  right: ["still covered", "covered", "all covered", "all under", "under water"],
  wrong: ["some out of the water", "out of the water", "uncovered", "not covered", "some out"],
};
/** What answers a question about the water over the lids besides yes and no. */
export const COVERED_OR_NOT = {
  alsoSaid: [...COVERED.right, ...COVERED.wrong],
  right: COVERED.right,
};

/** The question that interrupts a process for what may have been a loss, where one does. */
export function stillQuestion(state: State, load: Load): Question[] {
  const run = runOfRole(load, "treatment");
  const key = ({ at }: HeardDoubt) => `${stillKey(load)}${at}`;
  const asked = (doubt: HeardDoubt | undefined) => doubt && state.asked[key(doubt)] !== undefined;
  const suspected = processDoubts(load).filter((one) => one.strength === "suspicion");
  const ofWater = suspected.find(({ about }) => about === "water");
  const ofHeat = suspected.find(({ about }) => about !== "water");
  // What was asked about the water stays asked: its words are no answer about the boil.
  const doubt = asked(ofWater) ? ofWater : (ofHeat ?? ofWater);
  if (!doubt || !load.terms || !run?.kept || isOver(run) || !current(run.kept)) return [];
  if (!asked(doubt) && !mayInterrupt(state, load, state.lastW)) return [];
  const { text, right, wrong } = doubt === ofWater ? COVERED : EITHER[load.terms.method];
  const detail = doubt === ofWater ? "water" : "boil";
  return [
    { key: key(doubt), kind: "still", text, about: load.id, detail, ...eitherOf(right, wrong) },
  ];
}

/** "At 10:42 I heard "it's spitting all over"." before a closing question; empty without doubts. */
export function quotedDoubts(state: State, open: readonly HeardDoubt[]): string {
  const said = open.slice(0, MOST_QUOTED).map(({ at, text }) => {
    return `At ${localIso(wallOf(state, at), state.zone).slice(11, 16)} I heard "${text}".`;
  });
  const more = open.length - MOST_QUOTED;
  if (more > 0) said.push(`And ${numberWords(more)} more like it.`);
  return said.join(" ");
}

/** Whether all its jars have their labels: what was doubted of them then stands. */
function isLabeled(state: State, { parts }: Load): boolean {
  return parts.every(({ lot }) => lotOf(state, lot)?.labeledAt !== undefined);
}

/** The question about words that no closing question covers, once the jars are out. */
export function heardQuestion(state: State, load: Load, endIsAsked: boolean): Question[] {
  const open = openDoubts(load).filter(({ about }) => !endIsAsked || !OF_PROCESS.has(about));
  const [first] = open;
  const { unloadedAt } = load;
  if (!first || unloadedAt === undefined || isLabeled(state, load)) return [];
  // Jars that went to the refrigerator or were thrown out are no longer in doubt.
  if (load.parts.every((part) => undecidedOf(state, load, part) <= 0)) return [];
  const key = `heard/${load.id}/${first.at}`;
  const quoted = quotedDoubts(state, open);
  const about = load.id;
  if (open.every(({ strength }) => strength === "trace")) {
    return [{ key, kind: "heard", text: `${quoted} Was everything all right with that?`, about }];
  }
  // What was said plainly is never cleared by a bare yes.
  const either = eitherOf(WAS_SO.right, WAS_SO.wrong);
  return [{ key, kind: "heard", text: `${quoted} ${WAS_SO.text}`, about, ...either }];
}

const WAS_SO: Either = {
  text: "Was all well, or did that happen?",
  right: [
    "all was well",
    "all well",
    "all is well",
    "everything was all right",
    "it was all right",
  ],
  wrong: [
    ...["it was so", "that was so", "that is so", "it is so", "was so", "true", "it is true"],
    ...["that is true", "that is right", "that is what i did", "it is what i did", "so it was"],
    ...["it happened", "that happened", "it did happen", "that did happen", "it did", "they did"],
    ...["that is how it was", "it was not well", "it was not all well", "all was not well"],
    ...["i did do that", "i did that", "just like i said", "like i said", "as i said"],
  ],
};
