/** What things are called aloud. */

import { countWords } from "../reckon/number-words.ts";
import { USUAL_CANNER_JARS } from "../reckon/trade-numbers.ts";
import type { BatchLot } from "./jars/jar.ts";
import { isShared, type LotOf, onlyVariety } from "./jars/lots.ts";
import { activeOwners, isLoad, type Owner } from "./owners.ts";
import { type Batch, type Load, type StageRun, type State, type Timer, wallOf } from "./state.ts";
import { localFields, MONTHS } from "./time.ts";

/** What a stage's vessel goes by: its pot, else the stage itself. */
export function potOf({ spec }: StageRun): string {
  return spec.pot ?? spec.title;
}

/** A sentence begins with a capital. */
export function upper(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** A title within a sentence begins with a small letter. */
export function lower(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}

/** "the Provider dilled green beans"; the variety alone tells lots of one recipe apart. */
export function batchName(batch: Batch): string {
  const title = lower(batch.recipe.title);
  const variety = onlyVariety(batch);
  return variety ? `the ${variety} ${title}` : `the ${title}`;
}

/** "the Provider dilled green beans", of one lot. */
export function lotName({ batch, lot }: LotOf): string {
  const title = lower(batch.recipe.title);
  return lot.variety ? `the ${lot.variety} ${title}` : `the ${title}`;
}

/** "August 14": the day a lot was put up, by the wall clock there. */
function dayOf(state: State, { addedAt }: BatchLot) {
  const { year, month, day } = localFields(wallOf(state, addedAt), state.zone);
  return { year: `${year}`, month: MONTHS[month - 1] ?? "", day: `${MONTHS[month - 1]} ${day}` };
}

/** Names that tell lots apart: by variety and food, else by when they were put up or stand. */
export function toldApart(state: State, lots: readonly LotOf[]): (one: LotOf) => string {
  const ways: ((one: LotOf) => string)[] = [
    () => "",
    ({ lot }) => ` from ${dayOf(state, lot).year}`,
    ({ lot }) => ` from ${dayOf(state, lot).month}`,
    ({ lot }) => ` from ${dayOf(state, lot).day}`,
    ({ lot }) => ` in the ${state.places[lot.id] ?? "pantry"}`,
    ({ lot }) => ` (${lot.id})`,
  ];
  return (one) => {
    const twins = lots.filter((other) => other !== one && lotName(other) === lotName(one));
    const differs = (way: (one: LotOf) => string) => {
      return twins.every((twin) => way(twin) !== way(one));
    };
    const way = ways.find(differs) ?? ways.at(-1);
    return `${lotName(one)}${way?.(one) ?? ""}`;
  };
}

/** What one lot goes by among those running: its variety where the batch has several. */
export function calledLot(state: State, { batch, lot }: LotOf): string {
  return isShared(batch) && lot.variety ? `the ${lot.variety}` : calledBatch(state, batch);
}

export function loadName(state: State, load: Load): string {
  const names = batchesIn(state, load).map(batchName);
  const canner = state.kitchen.canners.length > 1 ? `${load.canner} with ` : "";
  return `${canner}${names.join(" and ")}`;
}

export function ownerName(state: State, owner: Owner): string {
  return isLoad(owner) ? loadName(state, owner) : batchName(owner);
}

/** The batches whose jars are in a load, else the one it was opened for. */
export function batchesIn(state: State, load: Load): Batch[] {
  const ids = load.parts.length > 0 ? load.parts.map((part) => part.batch) : [load.batch];
  return [...new Set(ids)].flatMap((id) => state.batches[id] ?? []);
}

/** What it goes by among those running: its variety or the food, where that tells them apart. */
export function calledName(state: State, owner: Owner): string {
  if (!isLoad(owner)) return calledBatch(state, owner);
  const names = batchesIn(state, owner).flatMap((batch) => {
    const its = owner.parts.flatMap(({ lot }) => batch.lots.filter(({ id }) => id === lot));
    const lots = its.filter(({ variety }) => variety !== null);
    if (batch.lots.length < 2 || lots.length === 0 || !hasOthers(state, owner, batch)) {
      return [calledBatch(state, batch)];
    }
    return lots.map(({ variety }) => `the ${variety}`);
  });
  const canner = state.kitchen.canners.length > 1 ? `${owner.canner} with ` : "";
  return `${canner}${listed(names)}`;
}

/** Whether its batch's name alone would not tell a load from others: in the canner, it is alone. */
function hasOthers(state: State, load: Load, batch: Batch): boolean {
  const isOut = (one: Load) => one.unloadedAt !== undefined;
  return activeOwners(state).some((one) => {
    if (!isLoad(one) || one.id === load.id) return false;
    return isOut(one) === isOut(load) && batch.loads.includes(one.id);
  });
}

/** What goes in front of a sentence about it: "Provider", "Pickled beets". */
export function leadName(state: State, owner: Owner): string {
  return upper(calledName(state, owner).replace(/\bthe /g, ""));
}

/** "Provider, Dragon Tongue and Blue Lake". */
export function leadNames(state: State, owners: readonly Owner[]): string {
  return listed(owners.map((owner) => leadName(state, owner)));
}

/** "a, b and c", each once. */
export function listed(names: readonly string[], word = "and"): string {
  const [last = "", ...others] = [...new Set(names)].toReversed();
  return others.length > 0 ? `${others.toReversed().join(", ")} ${word} ${last}` : last;
}

/** As `calledName`, of a batch. */
function calledBatch(state: State, batch: Batch): string {
  const variety = onlyVariety(batch);
  const others = runningBatches(state).filter((one) => one !== batch);
  if (others.length === 0) return batchName(batch);
  const alike = others.some((one) => onlyVariety(one) === variety);
  if (variety) return alike ? batchName(batch) : `the ${variety}`;
  const { called } = batch.recipe;
  const unique = others.every((one) => one.recipe.called !== called);
  return called && unique ? `the ${called}` : batchName(batch);
}

/** Whether another batch of the same recipe is running. */
export function hasTwin(state: State, batch: Batch): boolean {
  return runningBatches(state).some((one) => {
    return one !== batch && one.recipe.id === batch.recipe.id;
  });
}

/** Whether more than one batch is running, so that each is called by its name. */
export function severalRun(state: State): boolean {
  return runningBatches(state).length > 1;
}

function runningBatches(state: State): Batch[] {
  return activeOwners(state).filter((one): one is Batch => !isLoad(one));
}

export function timerName(timer: Timer): string {
  return timer.label ? `the ${timer.label} timer` : `the ${timerLength(timer.minutes)} timer`;
}

/** What a canner usually holds: "nine pints or seven quarts". */
export function usualHolds(join: "and" | "or"): string {
  return Object.entries(USUAL_CANNER_JARS)
    .map(([size, jars]) => countWords(jars, size))
    .join(` ${join} `);
}

/** As it was asked for: "9 minute", "90 second", "2 minute 30 second". */
function timerLength(minutes: number): string {
  const seconds = Math.round(minutes * 60);
  if (seconds % 60 === 0) return `${seconds / 60} minute`;
  if (seconds < 120) return `${seconds} second`;
  return `${Math.floor(seconds / 60)} minute ${seconds % 60} second`;
}

/** "P" for Provider, longer where another lot, or one `beside` it, already marks its lids so. */
export function lidMark(
  state: State,
  variety: string | null,
  title: string,
  beside: readonly string[] = [],
): string {
  const isLetter = (sign: string) => sign >= "A" && sign <= "Z";
  const written = (variety ?? title).normalize("NFD").toUpperCase();
  const letters = [...written].filter(isLetter).join("") || "J";
  const running = activeOwners(state).flatMap((owner) => (isLoad(owner) ? [] : owner.lots));
  const taken = new Set([...running.map((lot) => lot.mark), ...beside]);
  for (let length = 1; length <= letters.length; length++) {
    const mark = letters.slice(0, length);
    if (!taken.has(mark)) return mark;
  }
  return `${letters.charAt(0)}${taken.size + 1}`;
}
