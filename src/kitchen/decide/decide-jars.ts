import type { JarSize } from "../../recipe/recipe.ts";
import type { SlotsOf, SpokenJarSize } from "../command.ts";
import { brewing, brewNow } from "../jars/brews.ts";
import { cannerOf, loadsOf } from "../jars/canner-room.ts";
import type { BatchLot } from "../jars/jar.ts";
import { filledOf, fillingLot, type LotOf, lotsIn, readyOf, tally } from "../jars/lots.ts";
import { termsFor } from "../loads/next-load.ts";
import { lotsOf } from "../meant.ts";
import { activeOwners, isLoad, runOfRole } from "../owners.ts";
import { readyAt } from "../settle.ts";
import { batchName, listed, lotName, potOf, upper } from "../spoken-names.ts";
import { isOver } from "../stage-run.ts";
import { hasRole } from "../stages/kinds.ts";
import type { Batch, Load, StageRun, State } from "../state.ts";
import { expectedJars } from "./decide-batch.ts";
import { brokenInStore } from "./decide-store.ts";
import {
  askEither,
  askNumber,
  askWhichLot,
  askYes,
  type Deciding,
  type Decision,
  done,
  refused,
} from "./decision.ts";

const MOST_JARS = 60;

/** The recipe's jar for a spoken size; an in-between size takes the next larger tested one. */
function jarOf(size: SpokenJarSize | undefined): JarSize | null {
  if (size === undefined) return null;
  if (size === "quarter-pint") return "half-pint";
  if (size === "12-ounce") return "pint";
  return size === "pint-and-a-half" ? "pint-and-half" : size;
}

/** Batches that are not over. */
export function activeBatches(state: State): Batch[] {
  return activeOwners(state).filter(
    (one): one is Batch => !isLoad(one) && one.state !== "abandoned",
  );
}

const NO_JARS = "No jars of that are filled yet.";

/** The lot a report about jars is for: the one named, or the only possible one; else it asks. */
function oneLot(
  deciding: Deciding,
  test: (one: LotOf) => boolean,
  none: string,
): LotOf | { outcome: Decision } {
  const { state, wish } = deciding;
  const able = activeBatches(state).flatMap(lotsIn).filter(test);
  const named = wish.chosen ?? wish.command.ref?.running;
  let list = able;
  if (named) {
    const meant = new Set(lotsOf(state, named).map(({ lot }) => lot));
    list = able.filter(({ lot }) => meant.has(lot));
  } else if (able.length > 1) {
    const focused = able.filter(({ batch }) => batch.id === state.focus);
    if (focused.length === 1) list = focused;
  }
  const [one] = list;
  if (!one) return { outcome: refused(none) };
  if (list.length > 1) {
    return { outcome: askWhichLot(wish, "Which batch:", list) };
  }
  return one;
}

/**
 * Whether jars of this batch may be filled now: everything before that is done, except the canner.
 */
export function mayFill(state: State, now: number) {
  return (batch: Batch): boolean => {
    const fill = runOfRole(batch, "filling");
    if (!fill) return false;
    if (fill.state !== "waiting") return batch.state === "running" || batch.state === "held";
    const withoutCanner = { ...batch, option: null };
    return readyAt(state, withoutCanner, fill, now) !== undefined;
  };
}

/** What has to be done before the jars are filled; undefined where nothing has. */
function beforeFilling(batch: Batch): string | undefined {
  const running = batch.stages.find((run) => run.state === "running");
  if (running)
    return `${upper(batchName(batch))} is still at ${running.spec.title}. Say done when that is.`;
  const [next] = batch.stages.filter((run) => run.state === "waiting");
  if (!next || hasRole(next.spec, "filling")) return undefined;
  return `${upper(batchName(batch))}: ${next.spec.title} comes first.`;
}

export function decideFilled(deciding: Deciding<"jars-filled">): Decision {
  const { state, now, wish } = deciding;
  const fills = mayFill(state, now);
  // Lots are filled one after the other: without a name, the one in hand is meant.
  const named = lotsOf(state, wish.chosen ?? wish.command.ref?.running ?? []);
  const isNamed = ({ batch }: LotOf) => {
    const told = named.filter((one) => one.batch === batch).length;
    return told > 0 && told < batch.lots.length;
  };
  const inHand = (one: LotOf) => isNamed(one) || fillingLot(one.batch) === one.lot;
  const live = ({ batch, lot }: LotOf) => lot.abandonedAt === undefined && fills(batch);
  const counted = named.length > 0 ? undefined : countedAs(deciding, live);
  const able = counted ? (one: LotOf) => counted.includes(one.lot) : inHand;
  const found = oneLot(deciding, (one) => live(one) && able(one), "Nothing is to be filled now.");
  if ("outcome" in found) {
    const early = activeBatches(state).find(
      (batch) => runOfRole(batch, "filling")?.state === "waiting",
    );
    const notYet = early && found.outcome.kind === "refused" ? beforeFilling(early) : undefined;
    if (notYet) return refused(notYet);
    return found.outcome;
  }
  return countTold(deciding, found, isNamed(found));
}

/**
 * "Six, not seven" is of the lot that seven were counted of, whichever is in hand; more jars, where
 * several lots stand filled, may be of any of them.
 */
function countedAs(
  { state, wish }: Deciding<"jars-filled">,
  live: (one: LotOf) => boolean,
): readonly BatchLot[] | undefined {
  const { not, more } = wish.command.slots;
  const lots = activeBatches(state).flatMap(lotsIn).filter(live);
  const standing = lots.filter(({ lot }) => readyOf(lot).length > 0);
  const wrong = standing.filter(({ lot }) => readyOf(lot).length === not);
  if (wrong.length > 0) return wrong.map(({ lot }) => lot);
  return more && standing.length > 1 ? standing.map(({ lot }) => lot) : undefined;
}

/** What is written down of a count of filled jars, or why it is asked about first. */
function countTold(deciding: Deciding<"jars-filled">, found: LotOf, isNamed: boolean): Decision {
  const { now, wish } = deciding;
  const { batch, lot } = found;
  const { brew, not, more, corrected } = wish.command.slots;
  const stand = readyOf(lot).length;
  const count = countOfLot(wish, stand);
  const without = wish.amount == null ? [] : [wish.command.slots.count ?? 0];
  const inLoads = filledOf(lot) - stand;
  const allIn = lot.allFilled && stand === 0 && lot.again === 0 && inLoads > 0;
  if (allIn && !wish.confirmed) {
    const known = `I have all ${inLoads} of ${lotName(found)} filled already.`;
    return askYes(wish, `${known} Did you fill ${count ?? "some"} more? Say yes or no.`);
  }
  if (count === undefined) {
    return askNumber(wish, `How many jars did you fill of ${lotName(found)}?`);
  }
  if (!Number.isInteger(count) || count < 0 || count > MOST_JARS) {
    return refused(`${count} jars can't be right. How many are filled?`);
  }
  if (count === 0 && brew === undefined) {
    return refused(
      "With none filled, nothing is finished. Say how many are filled, or abandon the batch.",
    );
  }
  const size = jarOf(wish.command.slots.size);
  const tooMany = wish.confirmed ? undefined : farTooMany(found, count, size);
  if (tooMany) return askYes(wish, `${tooMany} Is it ${count}? Say yes or no.`);
  const heating = brew === undefined ? brewing(batch) : undefined;
  if (heating && wish.confirmed !== true) return beforeItBoils(deciding, batch, heating, count);
  const fewer = stand - count;
  if (fewer > 0 && lot.jars.some(({ named }) => named)) {
    const missing = whichIsMissing(deciding, found, { count, without });
    if (missing) return missing;
  }
  const right = without.length > 0 || not === stand || more || corrected;
  const plain = right || (isNamed && not === undefined && fewer < 0);
  if (!heating && stand > 0 && fewer !== 0 && !plain && !wish.confirmed) {
    const known = `I have ${stand} filled of ${lotName(found)}.`;
    return askYes(wish, `${known} Is it ${count} in all? Say yes or no.`);
  }
  const untested = otherSize(deciding, batch, size);
  if (untested !== undefined) return refused(`${untested}.`);
  const { mixed } = wish.command.slots;
  if (mixed && !wish.confirmed) {
    const by = `all by the time for a ${size ?? batch.jar}`;
    const all = `I keep one size for a lot: ${count} jars, ${by}`;
    return askYes(wish, `${all}, which is enough for smaller ones. Shall I? Say yes or no.`);
  }
  const of = heating ? brewNow(batch) - 1 : brew;
  const gone = without.length > 0 ? { without } : {};
  const its = { ...(of === undefined ? {} : { brew: of }), ...gone };
  return done({ type: "jars-filled", batch: lot.id, count, size, ...its, t: now });
}

/** What stands of a lot by what is told. */
function countOfLot({ amount, command }: Deciding<"jars-filled">["wish"], stand: number) {
  // Asked which jar is not there, its number is the answer, and the count is known already.
  if (amount != null) return amount;
  const { count, more } = command.slots;
  return count !== undefined && more ? stand + count : count;
}

/** Where jars go by their numbers, which one is not there has to be said. */
function whichIsMissing(
  { wish }: Deciding<"jars-filled">,
  found: LotOf,
  { count, without }: { count: number; without: readonly number[] },
): Decision | undefined {
  const { mark } = found.lot;
  const numbers = readyOf(found.lot).map(({ number }) => number);
  if (numbers.length - count > 1) {
    return refused(`Which are not there? Say so one by one: ${numbers.length - 1} filled.`);
  }
  if (without.some((number) => numbers.includes(number))) return undefined;
  const { count: _, ...slots } = wish.command.slots;
  const asking = { ...wish, command: { ...wish.command, slots }, amount: count };
  const marks = numbers.map((number) => `${mark} ${number}`);
  return askNumber(asking, `Which jar is not there? I have ${listed(marks)}.`);
}

/** Jars told of while the next brew is heated: they can only hold the one before. */
function beforeItBoils(
  { wish }: Deciding,
  batch: Batch,
  heating: StageRun,
  count: number,
): Decision {
  if (wish.confirmed === false) return refused(beforeFilling(batch) ?? heating.spec.title);
  const before = `${upper(potOf(heating))} for the next jars has not boiled yet.`;
  const what = count === 1 ? "Is it one jar" : `Is it ${count} jars`;
  return askEither(wish, `${before} ${what} in all, of the one before it? Say yes or no.`);
}

/** Why jars of another size can't be filled; undefined where they can. */
function otherSize(
  { state, library }: Deciding,
  batch: Batch,
  size: JarSize | null,
): string | undefined {
  if (!size || size === batch.jar || !batch.option) return undefined;
  const loads = activeOwners(state).filter(isLoad);
  const canner = cannerOf(state, loads.find((load) => load.batch === batch.id)?.canner ?? "");
  const as = { ...batch, jar: size };
  const choice = termsFor(state, as, canner ?? state.kitchen.canners[0], library);
  return choice.ok ? undefined : choice.reason;
}

/** Produce yields a quarter more or less than published; over twice that is a slip (our choice). */
const FAR_TOO_MANY = 2;

/** Why a lot cannot have made this many jars; undefined where it can. */
function farTooMany(
  { batch, lot }: LotOf,
  count: number,
  size: JarSize | null,
): string | undefined {
  const { recipe } = batch;
  const expected = expectedJars(recipe, lot, size ?? batch.jar);
  const all = filledOf(lot) - readyOf(lot).length + count;
  if (expected === null || all <= Math.max(FAR_TOO_MANY * expected, expected + 2)) return undefined;
  const jar = size ?? batch.jar ?? "jar";
  const pounds = lot.weightLb ?? recipe.yield.weightLb;
  return `${all} ${jar}s are far more than ${pounds} pounds make, about ${expected}.`;
}

type CountSlots = SlotsOf["jar-broken"];

/** How many jars are meant, if there are that many; `left` is undefined where nobody knows. */
function countOf(slots: CountSlots, left: number | undefined): number | string {
  const count = slots.jars?.length ?? slots.count ?? 1;
  if (Number.isInteger(count) && count > 0 && count <= (left ?? MOST_JARS)) return count;
  return `There are ${left ?? "no"} jars there. How many is it?`;
}

export function decideSetAside(deciding: Deciding<"set-aside">): Decision {
  const { slots } = deciding.wish.command;
  const able = ({ batch, lot }: LotOf) =>
    filledOf(lot) > 0 || runOfRole(batch, "filling")?.state === "running";
  const found = oneLot(deciding, able, NO_JARS);
  if ("outcome" in found) return found.outcome;
  const { batch, lot } = found;
  const stand = readyOf(lot);
  if (stand.length === 0 && batch.loads.length > 0) {
    return refused(
      "Its jars are all in the canner or out of it. Tell me if one broke or did not seal.",
    );
  }
  const count = countOf(slots, stand.length > 0 ? stand.length : undefined);
  if (typeof count === "string") return refused(count);
  const jars = slots.jars ? { jars: slots.jars } : {};
  return done({ type: "set-aside", batch: lot.id, count, ...jars, t: deciding.now });
}

/** Jars of a lot in its last load that are still whole and not accounted for. */
function inLastLoad(state: State, { batch, lot }: LotOf): number {
  const load = loadsOf(state, batch).findLast((one) => one.parts.some((p) => p.lot === lot.id));
  const part = load?.parts.find((one) => one.lot === lot.id);
  return load && part ? tally(state, load, part).unaccounted : 0;
}

/** The closed pressure canner that a batch's last jars are in: nobody can look into it. */
function shutCanner(state: State, batch: Batch): Load | undefined {
  const load = loadsOf(state, batch).at(-1);
  if (load?.terms?.method !== "pressure" || load.unloadedAt !== undefined) return undefined;
  const zero = runOfRole(load, "coming-down");
  return zero && isOver(zero) ? undefined : load;
}

export function decideBroken(deciding: Deciding<"jar-broken">): Decision {
  const { slots } = deciding.wish.command;
  const stored = brokenInStore(deciding);
  if (stored) return stored;
  const found = oneLot(deciding, ({ lot }) => filledOf(lot) > 0, NO_JARS);
  if ("outcome" in found) return found.outcome;
  const { batch, lot } = found;
  if (slots.toldOf && lot.jars.some(({ gone }) => gone?.what === "broken")) {
    const refusal = "That jar is written down as broken. Say another one broke, if one more did.";
    return { kind: "done", facts: [], refusal };
  }
  const stand = readyOf(lot).length;
  const shut = stand > 0 ? undefined : shutCanner(deciding.state, batch);
  if (shut) return done({ type: "broken-inside", load: shut.id, batch: lot.id, t: deciding.now });
  const count = countOf(slots, stand > 0 ? stand : inLastLoad(deciding.state, found));
  if (typeof count === "string") return refused(count);
  const jars = slots.jars ? { jars: slots.jars } : {};
  return done({ type: "jar-broken", batch: lot.id, count, ...jars, t: deciding.now });
}
