/**
 * Doubt about the altitude: what raises it, the short question it asks, and what a yes or no to
 * that writes down. A doubt never changes a time by itself; only an altitude that a person gives
 * does.
 */

import { boilingPointF, judgeBoil, leastBoilF } from "../../reckon/boiling.ts";
import { withCommas } from "../../reckon/reckoned.ts";
import type { DatedFact } from "../events.ts";
import { lowReadings } from "../loads/low-readings.ts";
import { activeOwners, isLoad, runOfRole } from "../owners.ts";
import { type Doubt, type Load, type State, wallOf } from "../state.ts";
import { localIso } from "../time.ts";
import { current } from "../unbroken-time.ts";
import type { Question } from "./question.ts";

export const ALTITUDE_QUESTION = "What is your altitude in feet? The process time depends on it.";

/** What a boiling point was measured in when no stage waits for it. */
export const BOILING_WATER = "boiling water";

/**
 * This far under the local boiling point, degrees F, it is likelier that the water is not boiling
 * than that the kitchen lies 4,000 feet higher than its people say. The program's own choice.
 */
export const OFF_BOIL_F = 8;

/** A boil measured further from the altitude's boiling point than weather explains raises doubt. */
export function boilDoubt(
  state: State,
  load: Load | undefined,
  boilF: number,
  t: number,
): DatedFact[] {
  const { altitudeFt } = state.kitchen;
  if (altitudeFt === null) return [];
  const judged = judgeBoil(boilF, altitudeFt);
  if (!judged.doubt) return [];
  const usual = `at ${altitudeFt} ft about ${judged.expectedF.toFixed(1)} F is usual`;
  const detail = `a full boil read ${boilF} F; ${usual}`;
  const fact = { type: "altitude-doubt", owner: load?.id ?? null, detail, t } as const;
  if (load && judged.differenceF < -OFF_BOIL_F) return [{ ...fact, why: "no-boil" }];
  // Once it was said that the altitude is right, the next such reading asks nothing.
  if (!isKept(state, altitudeFt)) return [{ ...fact, why: "boil" }];
  const process = load && runOfRole(load, "treatment");
  const holds = process?.kept && current(process.kept);
  if (!load || !process || !holds || boilF >= leastBoilF(altitudeFt)) return [fact];
  const lost = { type: "boil-lost", owner: load.id, stage: process.id, uncovered: false } as const;
  return [fact, { ...lost, t }];
}

/** Whether a reading can be a boil at the altitude that is set, or near enough to ask. */
export function boilsHere({ kitchen }: State, boilF: number): boolean {
  const { altitudeFt } = kitchen;
  return altitudeFt === null || judgeBoil(boilF, altitudeFt).differenceF >= -OFF_BOIL_F;
}

function isKept(state: State, altitudeFt: number): boolean {
  return state.doubts.some((one) => one.atFt === altitudeFt && one.settledFt === altitudeFt);
}

/** The doubt that asks: a no first, then a reading far too low, then one that is off. */
function asking(state: State): Doubt | undefined {
  const open = state.doubts.filter((one) => one.settledFt === undefined);
  const active = new Set(activeOwners(state).map((owner) => owner.id));
  // After a yes to "does it boil", the same reading speaks against the altitude.
  const boils = new Set(open.flatMap((one) => (one.why === "boil" ? one.detail : [])));
  return (
    open.find((one) => one.why === "denied") ??
    open.find((one) => one.why === "no-boil" && !boils.has(one.detail) && stillBoils(state, one)) ??
    open.find((one) => one.why === "boil" && (one.owner === null || active.has(one.owner))) ??
    open.find((one) => one.why === "then")
  );
}

/** Whether the boil that was doubted is the one that is still timed. */
function stillBoils(state: State, doubt: Doubt): boolean {
  const load = state.loads[doubt.owner ?? ""];
  const process = load && load.unloadedAt === undefined ? runOfRole(load, "treatment") : undefined;
  const stretch = process?.kept && current(process.kept);
  return stretch !== undefined && stretch.from <= doubt.at;
}

/** Loads finished long ago that would have needed more, had the kitchen been that high then. */
function openThen(state: State): Doubt[] {
  return state.doubts.filter((one) => one.why === "then" && one.settledFt === undefined);
}

function thenQuestion(state: State, altitudeFt: number): string {
  const days = openThen(state).flatMap(({ owner }) => state.loads[owner ?? ""]?.unloadedAt ?? []);
  const day = (t: number) => localIso(wallOf(state, t), state.zone).slice(0, 10);
  const [first, last] = [day(Math.min(...days)), day(Math.max(...days))];
  const when = first === last ? `on ${first}` : `from ${first} to ${last}`;
  const jars = "when the jars that want more there were put up";
  return `Was the kitchen at ${withCommas(altitudeFt)} feet too ${when}, ${jars}?`;
}

/**
 * After a yes, those loads are judged by what was tested there; after a no, they stay as they were.
 */
function thenAnswer(state: State, held: boolean, t: number): DatedFact[] {
  return openThen(state).flatMap(({ owner, terms }): DatedFact[] => {
    const load = state.loads[owner ?? ""];
    if (!load) return [];
    const raised = { type: "load-terms", load: load.id, raised: true, t } as const;
    const answer: DatedFact = { type: "altitude-then", load: load.id, held, t };
    return held && terms ? [answer, { ...raised, terms, gauge: load.gauge }] : [answer];
  });
}

/** The question that a doubt asks, if one does. */
export function doubtQuestion(state: State): Question[] {
  const { altitudeFt } = state.kitchen;
  const doubt = asking(state);
  if (!doubt || altitudeFt === null) return [];
  const { at, owner } = doubt;
  switch (doubt.why) {
    case "denied": {
      const key = `altitude/${at}`;
      return [{ key, kind: "altitude", text: ALTITUDE_QUESTION, about: null }];
    }
    case "then": {
      const text = thenQuestion(state, altitudeFt);
      return [{ key: `altitude-then/${at}`, kind: "altitude-doubt", text, about: null }];
    }
    case "boil": {
      const text = `Is the altitude really ${withCommas(altitudeFt)} feet?`;
      return [{ key: `altitude-doubt/${at}`, kind: "altitude-doubt", text, about: null }];
    }
    default: {
      const boils = Math.round(boilingPointF(altitudeFt));
      const text = `Water boils at about ${boils} degrees here. Is it really at a full boil?`;
      return [{ key: `no-boil/${at}`, kind: "no-boil", text, about: owner }];
    }
  }
}

/** Where the altitude is right, what reads under any boil of it was none. */
function lostByReading(state: State): DatedFact[] {
  return activeOwners(state).flatMap((owner): DatedFact[] => {
    const process = isLoad(owner) ? runOfRole(owner, "treatment") : undefined;
    if (!isLoad(owner) || !process?.kept || !current(process.kept)) return [];
    const [low] = owner.terms?.method === "boiling-water" ? lowReadings(owner) : [];
    if (!low) return [];
    const lost = { type: "boil-lost", owner: owner.id, stage: process.id } as const;
    return [{ ...lost, uncovered: false, t: low.at }];
  });
}

/** What a yes or no to a doubt's question writes down. */
export function doubtAnswer(state: State, yes: boolean, t: number): DatedFact[] | undefined {
  const { altitudeFt, altitudeUncertaintyFt } = state.kitchen;
  const doubt = asking(state);
  if (!doubt || altitudeFt === null) return undefined;
  const { owner, detail } = doubt;
  if (doubt.why === "then") return thenAnswer(state, yes, t);
  if (doubt.why === "boil") {
    const off = altitudeUncertaintyFt > 0 ? { altitudeUncertaintyFt } : {};
    if (yes) return [{ type: "kitchen-set", altitudeFt, ...off, t }, ...lostByReading(state)];
    const denied = `the altitude was said not to be ${altitudeFt} ft`;
    return [{ type: "altitude-doubt", owner: null, detail: denied, why: "denied", t }];
  }
  if (doubt.why !== "no-boil" || owner === null) return undefined;
  if (yes) return [{ type: "altitude-doubt", owner, detail, why: "boil", t }];
  const load = state.loads[owner];
  const process = load && runOfRole(load, "treatment");
  if (!process) return undefined;
  return [{ type: "boil-lost", owner, stage: process.id, uncovered: false, t }];
}
