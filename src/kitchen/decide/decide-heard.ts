/** Deciding on words that raise a doubt about jars at stake, and on answers to it. */
import { gateAddition } from "../../recipe/foods/addition-gate.ts";
import { isMeasured, otherSort } from "../../recipe/foods/beside-food.ts";
import type { Library } from "../../recipe/library.ts";
import type { Evidence } from "../command.ts";
import type { DatedFact } from "../events.ts";
import { hasBegun, runOfRole, runOfStep } from "../owners.ts";
import { atStake, OF_PROCESS, processDoubts, stillAtTheTable } from "../questions/heard-doubts.ts";
import { type Question, questions } from "../questions/questions.ts";
import { isOver } from "../stage-run.ts";
import type { Batch, Load, State } from "../state.ts";
import { MINUTE_MS } from "../time.ts";
import { current, isLost } from "../unbroken-time.ts";
import {
  type Deciding,
  type Decision,
  done,
  type Present,
  refused,
  type Wish,
  withFacts,
} from "./decision.ts";

/** Anything longer is a story; the log keeps its beginning. */
const MOST_LETTERS = 200;

function heardFacts(loads: readonly (Load | Batch)[], evidence: Evidence, t: number): DatedFact[] {
  const { strength, about, intent } = evidence;
  const text = evidence.text.slice(0, MOST_LETTERS);
  const meant = intent ? { intent } : {};
  return loads.map(({ id: load }) => ({ type: "heard", load, text, strength, about, ...meant, t }));
}

/** Words that ask for nothing known: kept where they raise a doubt about jars at stake. */
export function decideUnknown({ state, now, wish, library }: Deciding<"unknown">): Decision {
  const { evidence: told } = wish.command;
  if (!told) return { kind: "tell" };
  // Where nothing is under pressure, the dial is the stove's.
  const ofStove = told.about === "gauge" && atStake(state, told, now).length === 0;
  const evidence: Evidence = ofStove ? { ...told, about: "boil" } : ahead(state, told, now);
  const ofFood: Evidence = { ...evidence, about: "food" };
  const mixed = atStake(state, ofFood, now).filter((load) => {
    return changes(state.batches[load.batch], evidence, library);
  });
  // No answer about the heat settles what a strange food raises.
  const whole = evidence.about !== "food" && (evidence.strength !== "trace" || mixed.length === 0);
  const facts = [
    ...(whole ? heardFacts(atStake(state, evidence, now), evidence, now) : []),
    ...heardFacts(mixed, ofFood, now),
  ];
  if (facts.length > 0) return done(...facts);
  return keptForLater(state, evidence, library, now);
}

/**
 * A boil or pressure that seems lost before there is any was something else: it is kept as what is
 * told of the jars, and no answer about the boil settles it.
 */
function ahead(state: State, told: Evidence, now: number): Evidence {
  const seemsLost = told.intent === "boil-lost" || told.intent === "pressure-lost";
  if (told.strength !== "suspicion" || !seemsLost) return told;
  const loads = atStake(state, told, now);
  if (loads.length === 0 || loads.some((load) => hasBegun(load))) return told;
  const { intent: _, ...rest } = told;
  return { ...rest, strength: "trace", about: "jars" };
}

/** Whether what was named is none of what the recipe of a batch was tested with. */
function changes(batch: Batch | undefined, evidence: Evidence, { tables }: Library): boolean {
  if (batch === undefined) return false;
  const { recipe } = batch;
  const { foods = [], sorts = [], amounts = [] } = evidence;
  // A food by the name of its kind ("cured meat") is none that a recipe has.
  const strange = foods.some((food) => {
    const { is } = gateAddition(recipe, tables, food);
    return is === "changes" || is === "unknown";
  });
  const other = sorts.some((sort) => otherSort(recipe, tables, sort) !== undefined);
  return strange || other || amounts.some((one) => isMeasured(recipe, one));
}

/** What is doubted of a batch's food before a canner is lit for it goes with it into its jars. */
function keptForLater(state: State, evidence: Evidence, library: Library, t: number): Decision {
  const { foods, strength, about } = evidence;
  const isSlight = strength === "trace" && (foods !== undefined || about === "food");
  if (OF_PROCESS.has(about) || isSlight) return { kind: "tell" };
  const batches = stillAtTheTable(state).filter((batch) => {
    return !foods || changes(batch, evidence, library);
  });
  const facts = heardFacts(batches, evidence, t);
  return facts.length > 0 ? done(...facts) : { kind: "tell" };
}

/** Whether a plain loss can still concern this load: not known already, and not the proper end. */
function mayBeLost(load: Load): boolean {
  const run = runOfRole(load, "treatment");
  if (run?.kept && isLost(run.kept)) return false;
  return !isOff(load) && load.unloadedAt === undefined;
}

/** Whether its process is over and its heat off. */
function isOff(load: Load): boolean {
  const off = runOfStep(load, "heat-off");
  return off !== undefined && isOver(off);
}

/** The loads that facts are about. */
function loadsIn(facts: readonly DatedFact[]): Set<unknown> {
  return new Set(facts.flatMap((fact) => Object.values({ ...fact })));
}

/**
 * What a plain loss leaves besides its effect: its words or, where nothing could be done about it
 * or it has to be asked which one was lost, a doubt.
 */
export function withLoss({ state, now }: Present, wish: Wish, outcome: Decision): Decision {
  const { evidence } = wish.command;
  if (evidence?.returned) return withReturn(state, evidence, outcome, now);
  // Once it is said which was lost, the words are kept already.
  if (evidence?.strength !== "loss" || outcome.kind === "tell" || wish.chosen) return outcome;
  if (outcome.kind === "leave") return outcome;
  const loads = atStake(state, evidence, now);
  if (outcome.kind === "done") {
    const named = loadsIn(outcome.facts);
    const lost = loads.filter(({ id }) => named.has(id));
    return withFacts(outcome, heardFacts(lost, evidence, now));
  }
  const doubt: Evidence = { ...evidence, strength: "suspicion" };
  // Told once the jars are out, or the heat is off, it was lost before.
  const { past, earlier } = evidence;
  const late = (load: Load) => {
    return past === true && (load.unloadedAt !== undefined || (earlier === true && isOff(load)));
  };
  const lost = loads.filter((load) => late(load) || mayBeLost(load));
  if (lost.length > 0 || outcome.kind !== "refused") {
    return withFacts(outcome, heardFacts(lost, doubt, now));
  }
  // Nothing is in a canner: "the tops are dry" is about what is being filled.
  const ofFilling: Evidence = { ...doubt, strength: "trace", about: "jars" };
  const filling = atStake(state, ofFilling, now).filter(({ batch }) => {
    const of = state.batches[batch];
    return (of && runOfRole(of, "filling")?.state) === "running";
  });
  return withFacts(outcome, heardFacts(filling, ofFilling, now));
}

/** Told again so soon after it began, it was most likely only told twice (our choice). */
const TOLD_TWICE_MS = 2 * MINUTE_MS;

/** Since when its heat holds, as far as anyone told; undefined where it does not. */
function heldSince(load: Load): number | undefined {
  const run = runOfRole(load, "treatment");
  return mayBeLost(load) ? run?.kept?.stretches.at(-1)?.from : undefined;
}

/** The heat is said to be back where it never went: it may have been lost without a word. */
function withReturn(state: State, evidence: Evidence, outcome: Decision, t: number): Decision {
  if (outcome.kind !== "done" && outcome.kind !== "refused") return outcome;
  const facts = atStake(state, evidence, t).flatMap((load) => {
    const since = heldSince(load);
    const ofPressure = load.terms?.method === "pressure";
    if (since === undefined || ofPressure !== (evidence.about === "pressure")) return [];
    const strength = t - since < TOLD_TWICE_MS ? "trace" : evidence.strength;
    return heardFacts([load], { ...evidence, strength }, t);
  });
  return withFacts(outcome, facts);
}

/** "Still boiling, or did it stop?" "It's boiling again": it did, when the words were heard. */
export function stoppedBefore(present: Present, { command }: Wish): DatedFact[] {
  const { returned, strength } = command.evidence ?? {};
  const [asked] = questions(present.state);
  if (!returned || strength !== "suspicion") return [];
  if (asked?.kind !== "still" || asked.detail === "water") return [];
  const lost = stillAnswer(present, asked, false);
  return lost.kind === "done" ? lost.facts : [];
}

/** Another pot lost its boil: that settles the doubts about these loads. */
export function notTheseLoads(state: State, lost: string, t: number): DatedFact[] {
  return Object.values(state.loads).flatMap((load): DatedFact[] => {
    if (lost === load.id || processDoubts(load).length === 0) return [];
    return [{ type: "heard-settled", load: load.id, held: true, t }];
  });
}

/** "Still boiling, or did it stop?": it goes on, or it was lost when the words were heard. */
export function stillAnswer(
  { state, now }: Present,
  question: Question,
  still: boolean | undefined,
): Decision {
  const load = state.loads[question.about ?? ""];
  if (!load || still === undefined) return refused(question.text);
  const ofWater = question.detail === "water";
  const about = ofWater ? { about: "water" as const } : {};
  if (still) return done({ type: "heard-settled", load: load.id, held: true, ...about, t: now });
  if (ofWater) return done({ type: "cover", load: load.id, covered: false, t: now });
  const run = runOfRole(load, "treatment");
  const from = run?.kept && current(run.kept)?.from;
  const heardAt = processDoubts(load).find(({ strength }) => strength === "suspicion")?.at ?? now;
  const t = Math.max(heardAt, from ?? heardAt);
  if (load.terms?.method === "pressure") return done({ type: "pressure-lost", load: load.id, t });
  if (load.terms?.method === "steam") return done({ type: "steam-lost", load: load.id, t });
  return done({ type: "boil-lost", owner: load.id, stage: run?.id ?? "", uncovered: false, t });
}
