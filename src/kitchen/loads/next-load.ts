/** Which batch the canner is for next, when to light it, and on what terms a load is opened. */

import { chooseProcess, type ProcessChoice } from "../../recipe/choose-process.ts";
import type { Library } from "../../recipe/library.ts";
import type { JarSize } from "../../recipe/recipe.ts";
import { CANNER_WARM_UP_MINUTES, DIAL_OFF_PSI } from "../../reckon/trade-numbers.ts";
import { courseStep } from "../day/course.ts";
import { minutesLeft } from "../day/expected.ts";
import type { Canner, DatedFact } from "../events.ts";
import { capacity } from "../jars/canner-room.ts";
import { again, allFilled, ready } from "../jars/lots.ts";
import { activeOwners, hasBegun, inCanner, isLoad, runOfRole } from "../owners.ts";
import { withGuide } from "../questions/guide.ts";
import { needsHotCanner } from "../settle.ts";
import { isOver } from "../stage-run.ts";
import type { Batch, Load, State } from "../state.ts";
import { MINUTE_MS } from "../time.ts";
import { openLoad } from "./open-load.ts";
import { asksMore } from "./raise-terms.ts";

/** The canner is lit this long before it is expected to be needed hot. */
const LIGHT_AHEAD_MINUTES = CANNER_WARM_UP_MINUTES + 15;

/** True where more jars of this batch have still to go into a canner. */
function needsLoad(state: State, batch: Batch): boolean {
  if (!batch.option || batch.state === "abandoned" || batch.state === "complete") return false;
  if (openLoad(state, batch)) return false;
  return ready(batch) > 0 || again(batch) > 0 || !allFilled(batch);
}

/**
 * Minutes until a batch is likely to need a hot canner, to fill its jars or to heat what is packed
 * hot: its stages' typical times and shortest rests. Infinity while that depends on a ferment,
 * whose end cannot be foreseen.
 */
function minutesToCanner(batch: Batch, now: number): number {
  const until = minutesLeft(batch, now);
  const fill = runOfRole(batch, "filling");
  if (!fill || isOver(fill) || fill.state === "running") return 0;
  const wanting = batch.stages.filter(
    (run) => run.state === "waiting" && needsHotCanner(batch, run),
  );
  const starts = wanting.map((run) =>
    Math.max(0, ...run.spec.after.map((after) => until(after.stage))),
  );
  return Math.min(...starts);
}

/**
 * When a canner should be lit for a batch, where one will be free; undefined where none need be.
 */
export function warmUpAt(state: State, batch: Batch, now: number): number | undefined {
  if (!needsLoad(state, batch)) return undefined;
  if (queue(state, now)[0] !== batch || !freeCanner(state, batch.jar)) return undefined;
  const minutes = minutesToCanner(batch, now) - LIGHT_AHEAD_MINUTES;
  if (!Number.isFinite(minutes)) return undefined;
  return now + Math.max(0, minutes) * MINUTE_MS;
}

/** Batches that wait for a canner, the one that will be ready first at the front. */
export function queue(state: State, now: number): Batch[] {
  return activeOwners(state)
    .filter((owner): owner is Batch => !isLoad(owner) && needsLoad(state, owner))
    .map((batch) => ({ batch, minutes: minutesToFill(state, batch, now) }))
    .sort(
      (a, b) =>
        (a.minutes === b.minutes ? 0 : a.minutes - b.minutes) || a.batch.begunAt - b.batch.begunAt,
    )
    .map((one) => one.batch);
}

/** The same by the course of the day, where there is one. */
function minutesToFill(state: State, batch: Batch, now: number): number {
  const fill = runOfRole(batch, "filling");
  const step = fill && courseStep(state, batch, fill);
  return step ? Math.max(0, step.from - now) / MINUTE_MS : minutesToCanner(batch, now);
}

function freeCanner(state: State, jar: JarSize | null): Canner | undefined {
  const taken = new Set(inCanner(state).map((load) => load.canner));
  return state.kitchen.canners.find((one) => {
    return !taken.has(one.id) && (jar === null || capacity(one, jar) > 0);
  });
}

/** The tested process for a batch in a canner of this kitchen, or why there is none. */
export function termsFor(
  state: State,
  batch: Pick<Batch, "recipe" | "jar" | "option">,
  canner: Canner | undefined,
  library: Library,
): ProcessChoice {
  const { altitudeFt, altitudeUncertaintyFt } = state.kitchen;
  if (altitudeFt === null) return { ok: false, reason: "the kitchen's altitude is not known" };
  const { option, jar, recipe } = batch;
  if (!option) return { ok: false, reason: `${recipe.title} is not canned` };
  const choice = chooseProcess(recipe, library.tables, {
    altitudeFt,
    altitudeUncertaintyFt,
    method: option.method,
    pack: option.pack,
    ...(jar ? { jar } : {}),
    ...(canner?.gauge ? { gauge: canner.gauge.kind } : {}),
    ...(option.atPsi === undefined ? {} : { atPsi: option.atPsi }),
  });
  return choice.ok ? { ok: true, terms: withGuide(state, choice.terms) } : choice;
}

function gaugeServes(canner: Canner, method: string): boolean {
  if (method !== "pressure") return true;
  return Math.abs(canner.gauge?.readsHighPsi ?? 0) <= DIAL_OFF_PSI;
}

/** Opens the next load where a canner is free and its batch will soon be ready for it. */
export function openLoads(state: State, now: number, library: Library, id: string): DatedFact[] {
  for (const batch of queue(state, now)) {
    const at = warmUpAt(state, batch, now);
    if (at === undefined || at > now) continue;
    const canner = freeCanner(state, batch.jar);
    if (!canner || !batch.option || !gaugeServes(canner, batch.option.method)) continue;
    const choice = termsFor(state, batch, canner, library);
    if (!choice.ok) continue;
    const gauge = canner.gauge ? { ...canner.gauge } : null;
    const { terms } = choice;
    return [
      {
        type: "load-opened",
        load: id,
        canner: canner.id,
        batch: batch.id,
        terms,
        gauge,
        endAsked: true,
        t: now,
      },
    ];
  }
  return [];
}

/**
 * Looks terms up again where the kitchen's altitude or gauge has changed: a waiting load takes the
 * new terms, one whose process has begun only if they ask for more.
 */
export function refreshTerms(state: State, now: number, library: Library): DatedFact[] {
  const raised = [...raisedTerms(state, now, library), ...truerGauge(state, now)];
  const facts = [...raised, ...doubtedThen(state, now, library)];
  for (const load of inCanner(state)) {
    if (hasBegun(load)) continue;
    const batch = state.batches[load.batch];
    const canner = state.kitchen.canners.find((one) => one.id === load.canner);
    if (!batch || !canner) continue;
    const choice = termsFor(state, batch, canner, library);
    const gauge = canner.gauge ? { ...canner.gauge } : null;
    const same =
      choice.ok &&
      JSON.stringify(choice.terms) === JSON.stringify(load.terms) &&
      JSON.stringify(gauge) === JSON.stringify(load.gauge);
    if (!choice.ok && !choice.missing && liesHigher(state, load)) {
      facts.push(...untested(state, load, choice.reason, now));
    }
    if (!choice.ok || same) continue;
    facts.push({ type: "load-terms", load: load.id, terms: choice.terms, gauge, t: now });
  }
  return facts;
}

/** What an altitude higher than thought means for running loads and for those still cooling. */
function raisedTerms(state: State, now: number, library: Library): DatedFact[] {
  return activeOwners(state).flatMap((load): DatedFact[] => {
    if (!isLoad(load) || !load.terms || !hasBegun(load) || !liesHigher(state, load)) return [];
    const found = highestTerms(state, load, library);
    if (!found.ok) return untested(state, load, found.reason, now);
    if (!asksMore(found.terms, load.terms)) return [];
    const { terms } = found;
    return [{ type: "load-terms", load: load.id, terms, gauge: load.gauge, raised: true, t: now }];
  });
}

/**
 * Loads of this season whose dial is known better now than when they were begun: how far off it is,
 * that it reads higher than was said, or that nobody tested it. What was said to be better than it
 * was stays.
 */
function truerGauge(state: State, t: number): DatedFact[] {
  return Object.values(state.loads).flatMap((load): DatedFact[] => {
    const canner = state.kitchen.canners.find((one) => one.id === load.canner);
    const [then, now] = [load.gauge, canner?.gauge];
    const { terms } = load;
    if (terms?.method !== "pressure" || load.state === "abandoned" || !hasBegun(load)) return [];
    if (then?.kind !== "dial" || now?.kind !== "dial") return [];
    const season = then.testedSeason ?? then.untestedSeason;
    if (season === undefined || season !== (now.testedSeason ?? now.untestedSeason)) return [];
    const worse = now.testedSeason === undefined && then.testedSeason !== undefined;
    const off = then.testedSeason === undefined ? undefined : now.readsHighPsi;
    const known = off !== undefined && off > (then.readsHighPsi ?? Number.NEGATIVE_INFINITY);
    if (!worse && !known) return [];
    return [{ type: "load-terms", load: load.id, terms, gauge: { ...now }, raised: true, t }];
  });
}

/**
 * Loads finished long ago that would have needed more, had the kitchen been as high on their day.
 */
function doubtedThen(state: State, t: number, library: Library): DatedFact[] {
  return Object.values(state.loads).flatMap((load): DatedFact[] => {
    if (load.state !== "complete" || !load.terms || !liesHigher(state, load)) return [];
    const { altitudeFt } = state.kitchen;
    const asked = state.doubts.some((one) => {
      return one.owner === load.id && one.why === "then" && one.atFt === altitudeFt;
    });
    const found = asked ? undefined : highestTerms(state, load, library);
    if (!found?.ok || !asksMore(found.terms, load.terms)) return [];
    const detail = `at ${altitudeFt} ft ${found.terms.minutes} min are tested`;
    const { terms } = found;
    return [{ type: "altitude-doubt", owner: load.id, detail, why: "then", terms, t }];
  });
}

/** Whether the kitchen now counts as higher than when a load's terms were looked up. */
function liesHigher({ kitchen }: State, { terms }: Load): boolean {
  const { altitudeFt, altitudeUncertaintyFt } = kitchen;
  if (altitudeFt === null || !terms) return false;
  return altitudeFt + altitudeUncertaintyFt > terms.altitudeFt + (terms.altitudeUncertaintyFt ?? 0);
}

/** The highest terms asked here of any batch with jars in a load, by that load's own gauge. */
function highestTerms(state: State, load: Load, library: Library): ProcessChoice {
  const ids = new Set([load.batch, ...load.parts.map((part) => part.batch)]);
  const canner = state.kitchen.canners.find((one) => one.id === load.canner);
  const as = canner && { ...canner, ...(load.gauge ? { gauge: load.gauge } : {}) };
  let most: ProcessChoice | undefined;
  for (const id of ids) {
    const batch = state.batches[id];
    if (!batch) continue;
    const choice = termsFor(state, loadedAs(batch, load), as, library);
    if (!choice.ok) return choice;
    if (!most?.ok || asksMore(choice.terms, most.terms)) most = choice;
  }
  return most ?? { ok: false, reason: "its batch is not known" };
}

/**
 * A batch as it went into a load: sent through again, it may have been packed differently since.
 */
function loadedAs(batch: Batch, { terms }: Load): Pick<Batch, "recipe" | "jar" | "option"> {
  const { option, recipe } = batch;
  if (!terms || !option) return batch;
  const { method, pack, table, jar } = terms;
  return { recipe, jar, option: { ...option, method, pack, table } };
}

/** Nothing was tested that high: said once, and not as tested while that altitude stands. */
function untested(state: State, load: Load, reason: string, t: number): DatedFact[] {
  const known = state.doubts.some((doubt) => {
    return doubt.owner === load.id && doubt.why === "untested" && doubt.settledFt === undefined;
  });
  if (known) return [];
  return [{ type: "altitude-doubt", owner: load.id, detail: reason, why: "untested", t }];
}
