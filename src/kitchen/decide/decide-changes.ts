/** Deciding on reported departures from the recipe: things added, and time away. */

import { gateAddition } from "../../recipe/foods/addition-gate.ts";
import { commandOf, type SlotsOf } from "../command.ts";
import type { DatedFact, KitchenEvent } from "../events.ts";
import { historyOf } from "../events.ts";
import { brewNow, brewStages, isWeak, mayBrew } from "../jars/brews.ts";
import { filledOf, fillingLot, type LotOf, liveLots, lotsIn, ready } from "../jars/lots.ts";
import { lotsOf } from "../meant.ts";
import { activeOwners, isLoad, runOfRole } from "../owners.ts";
import { batchName, listed, lotName, potOf } from "../spoken-names.ts";
import { isOver } from "../stage-run.ts";
import { rulesOf } from "../stages/kinds.ts";
import type { Batch, Load, StageRun, State } from "../state.ts";
import { MINUTE_MS } from "../time.ts";
import { current } from "../unbroken-time.ts";
import { batchFor } from "./decide-batch.ts";
import { OWN_COMMAND } from "./decide-corrections.ts";
import { decideFilled } from "./decide-jars.ts";
import {
  askWhichBatch,
  askYes,
  type Deciding,
  type Decision,
  done,
  lookUp,
  refOf,
  refused,
} from "./decision.ts";

/** The batches that something can have been put into: those still being filled come first. */
function ableBatches(state: State): Batch[] {
  const running = activeOwners(state).filter((one): one is Batch => {
    return !isLoad(one) && one.state !== "abandoned" && one.state !== "complete";
  });
  const open = running.filter((batch) => {
    const fill = runOfRole(batch, "filling");
    return ready(batch) > 0 || (fill !== undefined && !isOver(fill));
  });
  return open.length > 0 ? open : running;
}

/** The batch that is meant, or the question which. */
function oneOf(
  deciding: Deciding<"added" | "topped-up">,
): { batch: Batch } | { outcome: Decision } {
  const { state, wish } = deciding;
  const chosen = (wish.chosen ?? []).flatMap((ref) => lookUp(state, ref)?.owner ?? []);
  const able =
    chosen.length > 0 ? chosen.filter((one): one is Batch => !isLoad(one)) : ableBatches(state);
  const [batch] = able;
  if (!batch) return { outcome: refused("Nothing is running that it could have gone into.") };
  if (able.length === 1) return { batch };
  return { outcome: askWhichBatch(wish, "Into which:", able) };
}

export function decideAdded(deciding: Deciding<"added">): Decision {
  const found = oneOf(deciding);
  if ("outcome" in found) return found.outcome;
  const { food, amount } = deciding.wish.command.slots;
  return held(deciding, found.batch, food, `added ${amount ? `${amount} ` : ""}${food}`);
}

export function decideToppedUp(deciding: Deciding<"topped-up">): Decision {
  const { state, wish } = deciding;
  const stuff = wish.command.slots.with;
  const { brew } = wish.command.slots;
  const kettle = brew !== "named" && activeOwners(state).some((one) => isLoad(one) && isTimed(one));
  const found = oneOf(deciding);
  if ("outcome" in found) return kettle ? { kind: "tell" } : found.outcome;
  const { batch } = found;
  // The canner itself is topped up with water while it runs.
  if (kettle && ready(batch) === 0) return { kind: "tell" };
  // The recipe's own water is in the brine already: more of it is not the recipe's.
  const ingredients = batch.recipe.ingredients.filter(({ role }) => role !== "water");
  const recipe = { ...batch.recipe, ingredients };
  const its = brew && brewStages(batch).length > 0 ? { brew: brewNow(batch) } : {};
  return held(deciding, { ...batch, recipe }, stuff, `topped up with ${stuff}`, its);
}

/** Jars told of so shortly before a brew ran out were all that hold it (our choice). */
const JUST_TOLD_MS = MINUTE_MS;

/** What is poured over the produce ran out: another brew is made, and asked about as the first. */
export function decideBrewMade(deciding: Deciding<"brew-made">): Decision {
  const { state, wish, now } = deciding;
  const { slots, ref } = wish.command;
  const count = slots.count ?? slots.jars?.at(-1);
  if (!activeOwners(state).some((one) => !isLoad(one) && mayBrew(one))) return { kind: "tell" };
  const found = batchFor(deciding, mayBrew, "Another pot");
  if ("outcome" in found) return found.outcome;
  const { batch } = found;
  const [pot] = brewStages(batch);
  const [named, another] = lotsOf(state, ref?.running ?? []).filter((one) => one.batch === batch);
  const ofJar = slots.jars && !another ? named?.lot : undefined;
  const lot = ofJar ?? liveLots(batch).findLast(({ jars }) => jars.length > 0) ?? fillingLot(batch);
  if (!pot || !lot) return { kind: "tell" };
  const told = Math.max(0, ...lot.jars.map(({ filledAt }) => filledAt));
  const counted = now - told <= JUST_TOLD_MS;
  if (isFull(batch) && count === undefined && !counted && !wish.confirmed) {
    const known = `I have all of ${batchName(batch)} filled.`;
    return askYes(wish, `${known} Are you making more ${potOf(pot)} for others? Say yes or no.`);
  }
  const brew = brewNow(batch);
  const counting = { command: commandOf("jars-filled", { brew }), chosen: [refOf({ batch, lot })] };
  const made = { type: "brew-made", batch: batch.id, t: now } as const;
  if (count !== undefined) {
    const command = commandOf("jars-filled", { brew, count });
    const filled = decideFilled({ ...deciding, wish: { ...counting, command } });
    if (filled.kind !== "done") return filled;
    return done(...filled.facts, { ...made, counted: true });
  }
  const unpoured = runOfRole(batch, "filling")?.state === "waiting";
  if (counted || unpoured) return done({ ...made, counted: true });
  const text = `How many jars of ${lotName({ batch, lot })} are filled so far?`;
  return { kind: "ask", facts: [made], text, wish: counting, expects: "number", choices: [] };
}

const ORDINALS: readonly string[] = ["first", "second", "third"];

/** Which brew of a batch is meant, or why that is not plain. */
function brewMeant(batch: Batch, brew: SlotsOf["brew-of"]["brew"]): number | string {
  const last = brewNow(batch);
  const pot = brewStages(batch).slice(0, 1).map(potOf).join();
  if (brew === "new" || brew === "old") return brew === "new" ? last : last - 1;
  if (brew === "weak" || brew === "sound") {
    const all = Array.from({ length: last + 1 }, (_, at) => at);
    const weak = all.filter((at) => isWeak(batch, at));
    const meant = brew === "weak" ? weak : all.filter((at) => !weak.includes(at));
    const [one, another] = meant;
    if (one !== undefined && another === undefined && weak.length > 0) return one;
    return `Which ${pot} do you mean: the first or the second?`;
  }
  const number = ORDINALS.indexOf(brew);
  return number <= last ? number : `There was no ${brew} ${pot}.`;
}

/** Jars by which of them are meant, of these lots, in the order in which they were filled. */
function jarsMeant(lots: readonly LotOf[], slots: SlotsOf["brew-of"]) {
  const all = lots.flatMap(({ lot }) => {
    return lot.jars.filter(({ number, gone }) => number > 0 && !gone).map((jar) => ({ lot, jar }));
  });
  const { jars, which, count } = slots;
  if (jars) return all.filter(({ jar }) => jars.includes(jar.number));
  const ordered = all.toSorted((one, other) => one.jar.filledAt - other.jar.filledAt);
  if (which === "those") {
    const last = ordered.at(-1)?.jar.filledAt;
    const told = ordered.filter(({ jar }) => jar.filledAt === last);
    return count === undefined ? told : told.slice(-count);
  }
  if (which === "others") return ordered.filter(({ jar }) => jar.brewFrom !== undefined);
  if (which === "all" || count === undefined) return ordered;
  return which === "last" ? ordered.slice(-count) : ordered.slice(0, count);
}

/** Which brew jars were filled from, where a batch has had several. */
export function decideBrewOf(deciding: Deciding<"brew-of">): Decision {
  const { state, wish, now: t } = deciding;
  const { slots, ref } = wish.command;
  const named = lotsOf(state, wish.chosen ?? ref?.running ?? []);
  const several = (batch: Batch) => brewNow(batch) > 0;
  if (!activeOwners(state).some((one) => !isLoad(one) && several(one))) {
    return refused("I know of one pot only. Tell me first that another was made.");
  }
  const found = batchFor(deciding, several, "Two pots");
  if ("outcome" in found) return found.outcome;
  const { batch } = found;
  const lots = named.filter((one) => one.batch === batch);
  const of = lots.length > 0 ? lots : lotsIn(batch);
  const brew = brewMeant(batch, slots.brew);
  if (typeof brew === "string") return refused(brew);
  const meant = jarsMeant(of, slots);
  const wanted = slots.jars?.length ?? slots.count ?? 1;
  if (meant.length < wanted) return refused(`I have only ${meant.length} of those jars filled.`);
  const marks = listed(meant.map(({ lot, jar }) => `${lot.mark} ${jar.number}`));
  const clears = meant.some(({ jar }) => jar.brewFrom !== undefined && jar.brewFrom !== jar.brew);
  // Which jars "the first five" are is worked out here: that clears nothing by itself.
  if (clears && !slots.jars && !isWeak(batch, brew) && !wish.confirmed) {
    const pot = potOf(brewStages(batch)[0] as StageRun);
    return askYes(wish, `Are ${marks} from ${pot} number ${brew + 1}?`);
  }
  const ofLots = of.map(({ lot }) => ({
    lot,
    jars: meant.filter((one) => one.lot === lot).map(({ jar }) => jar.number),
  }));
  return done(
    ...ofLots.flatMap(({ lot, jars }): DatedFact[] => {
      return jars.length > 0 ? [{ type: "brew-told", batch: lot.id, jars, brew, t }] : [];
    }),
  );
}

/** Whether every lot has as many jars as were expected. */
function isFull(batch: Batch): boolean {
  return liveLots(batch).every((lot) => {
    return lot.allFilled && filledOf(lot) >= (lot.expectedJars ?? 0);
  });
}

/** Checks an addition against the recipe: it is written down as a change, or as no change. */
function held(
  { library, now }: Deciding<"added" | "topped-up">,
  batch: Batch,
  said: string,
  detail: string,
  its: { brew?: number } = {},
): Decision {
  const gate = gateAddition(batch.recipe, library.tables, said);
  const changed = (why: string): Decision =>
    done({
      type: "ingredient-changed",
      batch: batch.id,
      detail: `${detail}: ${why}`,
      ...its,
      t: now,
    });
  switch (gate.is) {
    case "changes":
      return changed(gate.why);
    case "unknown":
      return changed(`Whether "${said}" was tested is not known here.`);
    default:
      return done({ type: "note", owner: batch.id, text: detail, t: now });
  }
}

function isTimed(load: Load): boolean {
  return load.stages.some(({ spec, state, kept }) => {
    return state === "running" && rulesOf(spec).watched && kept !== undefined && current(kept);
  });
}

/** When a person last said anything, in kitchen time. */
function lastWord(history: readonly KitchenEvent[], now: number): number {
  const last = history.findLast(({ cmd, w }) => !cmd.startsWith(OWN_COMMAND) && w < now);
  return last?.w ?? now;
}

/** Time nobody watched, by a person's own account: a gap that has to be vouched for. */
export function decideWasAway({ state, now, wish }: Deciding<"was-away">): Decision {
  const { minutes } = wish.command.slots;
  const from = minutes === undefined ? lastWord(historyOf(state), now) : now - minutes * MINUTE_MS;
  const loads = activeOwners(state).filter(isLoad);
  const over = loads.filter((load) => {
    const run = runOfRole(load, "treatment");
    const full = run && isOver(run) && load.unloadedAt === undefined;
    return full && !load.endAnswer && (run.endedAt ?? 0) > from;
  });
  const text = minutes === undefined ? "I was away" : `I was away for ${minutes} minutes`;
  const facts: DatedFact[] = over.map(({ id }) => {
    return { type: "heard", load: id, text, strength: "trace", about: "boil", t: now };
  });
  if (loads.some(isTimed)) {
    facts.push({ type: "gap", from, to: now, cause: "away", byWall: false, t: now });
  }
  return facts.length > 0 ? done(...facts) : { kind: "tell" };
}
