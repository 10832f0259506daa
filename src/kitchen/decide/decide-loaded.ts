/** Deciding on jars put into the canner: whose they are, and whether they may share it. */
import type { ProcessTerms } from "../../recipe/recipe.ts";
import type { Ref } from "../command.ts";
import type { DatedFact, Part } from "../events.ts";
import { cannerOf, cannotShare, capacity } from "../jars/canner-room.ts";
import { fillingLot, type LotOf, lotsIn, partOf, ready, readyOf, sum } from "../jars/lots.ts";
import { termsFor } from "../loads/next-load.ts";
import { lotsOf, namesOnlySort } from "../meant.ts";
import { activeOwners, isLoad, runOfRole } from "../owners.ts";
import { batchName, listed, lotName } from "../spoken-names.ts";
import type { Batch, Load, State } from "../state.ts";
import { activeBatches, mayFill } from "./decide-jars.ts";
import {
  askNumber,
  askWhichBatch,
  askYes,
  type Deciding,
  type Decision,
  done,
  happenedAt,
  type Present,
  refused,
} from "./decision.ts";

export function decideLoaded(deciding: Deciding<"loaded">): Decision {
  const { state, now, wish } = deciding;
  const { slots, ref } = wish.command;
  const when = happenedAt(state, slots, now);
  if (!when.ok) return refused(when.reason);
  const load = activeOwners(state).find(
    (owner): owner is Load => isLoad(owner) && owner.loadedAt === undefined,
  );
  if (!load) return refused(noCanner(state));
  const waiting = activeBatches(state)
    .filter((batch) => batch.option)
    .flatMap(lotsIn)
    .filter(({ lot }) => readyOf(lot).length > 0);
  const counts = countsOf(deciding);
  const chosen = counts ? [...counts.keys()] : chosenLots(deciding, waiting);
  const empty = chosen.find((one) => readyOf(one.lot).length === 0 && !mayGoIn(state, now, one));
  if (counts && empty) return refused(`No jars of ${lotName(empty)} are filled.`);
  if (chosen.length === 0) {
    const batch = state.batches[load.batch];
    const [other] = lotsOf(state, ref?.running ?? []);
    if (other && other.batch !== batch) {
      return refused(`No jars of ${lotName(other)} are filled. Say how many are.`);
    }
    const fill = batch && runOfRole(batch, "filling");
    const lot = batch && fillingLot(batch);
    if (!lot || !fill || !mayFill(state, now)(batch)) return refused("No jars are filled yet.");
    const { count } = slots;
    if (count === undefined) return askNumber(wish, "How many jars went in?");
    const t = when.t;
    return (
      fits(state, load, [{ batch, jars: count }]) ??
      done(
        { type: "jars-filled", batch: lot.id, count, size: null, t },
        { type: "loaded", load: load.id, parts: [partOf(lot, count)], t },
      )
    );
  }
  const batches = [...new Set(chosen.map(({ batch }) => batch))];
  if (!wish.chosen && ref === undefined && batches.length > 1 && !slots.together) {
    const able = batches.filter((batch) => !shareOf(deciding, load, batch)?.reason);
    if (able.length > 1) {
      const lead = `Say ${able.length === 2 ? "both" : "all"}, or which jars went in:`;
      return askWhichBatch(wish, lead, able, (one) => `${batchName(one)}, ${ready(one)}`);
    }
  }
  return loadThese(deciding, load, counts ?? uncounted(chosen, slots.count), when.t);
}

/** How many went in of each lot; undefined where that is all that stands of it. */
type Counts = ReadonlyMap<LotOf, number | undefined>;

/** A single lot takes the number that was told; of several, it has to be all. */
function uncounted(lots: readonly LotOf[], count: number | undefined): Counts {
  return new Map(lots.map((one) => [one, lots.length === 1 ? count : undefined]));
}

/** "Five Provider and all the Dragon Tongue are in"; undefined where lots were not counted so. */
function countsOf({ state, wish }: Deciding<"loaded">): Counts | undefined {
  const { ref, slots } = wish.command;
  const { counts } = slots;
  if (!counts) return undefined;
  const lots = lotsOf(state, ref?.running ?? []);
  return new Map(lots.map((one, at) => [one, counts[at] || undefined]));
}

/** Whether jars of a lot that nobody counted before may have been filled by now. */
function mayGoIn(state: State, now: number, { batch, lot }: LotOf): boolean {
  return lot.abandonedAt === undefined && mayFill(state, now)(batch);
}

function noCanner(state: State): string {
  const busy = activeOwners(state).find(
    (owner) => isLoad(owner) && owner.loadedAt !== undefined && owner.unloadedAt === undefined,
  );
  if (busy) return "The canner is taken. These jars go in the next load.";
  return "No canner is open for jars. Begin a batch, or say the altitude first.";
}

function chosenLots({ state, wish }: Deciding<"loaded">, waiting: LotOf[]): LotOf[] {
  const among = (refs: readonly Ref[]) => {
    const meant = new Set(lotsOf(state, refs).map(({ lot }) => lot));
    return { meant, waiting: waiting.filter(({ lot }) => meant.has(lot)) };
  };
  if (wish.chosen) return among(wish.chosen).waiting;
  const { ref } = wish.command;
  if (!ref || namesOnlySort(ref, "jars", "canner", "load", "all")) return waiting;
  const named = among(ref.running);
  return named.meant.size > 0 ? named.waiting : waiting;
}

/** What was tested for a batch's jars, and why they may not go into a load where they may not. */
function shareOf(
  { state, library }: Present,
  load: Load,
  batch: Batch,
): { reason?: string; terms?: ProcessTerms } | undefined {
  if (batch.id === load.batch || !load.terms) return undefined;
  const choice = termsFor(state, batch, cannerOf(state, load.canner), library);
  if (!choice.ok) return { reason: choice.reason };
  const reason = cannotShare(load.terms, choice.terms);
  return reason === undefined ? {} : { reason, terms: choice.terms };
}

function fits(
  state: State,
  load: Load,
  parts: { batch: Batch; jars: number }[],
): Decision | undefined {
  const canner = cannerOf(state, load.canner);
  const smallest = Math.min(
    ...parts.map((part) => (part.batch.jar ? capacity(canner, part.batch.jar) : 0)),
  );
  const total = parts.reduce((sum, part) => sum + part.jars, 0);
  if (total <= smallest) return undefined;
  return refused(`The ${canner?.name ?? "canner"} holds ${smallest} of these jars, not ${total}.`);
}

/** A count of jars of several lots that is not what stands filled: whose are they? */
function otherCount(
  lots: readonly LotOf[],
  count: number | undefined,
  holds: number,
): Decision | undefined {
  const standing = sum(lots, ({ lot }) => readyOf(lot).length);
  if (count === undefined || lots.length < 2 || count >= Math.min(standing, holds))
    return undefined;
  const each = lots.map((one) => `${readyOf(one.lot).length} of ${lotName(one)}`);
  return refused(`I have ${listed(each)} filled. Say which lot went in, and how many of it.`);
}

function loadThese(deciding: Deciding<"loaded">, load: Load, counts: Counts, t: number): Decision {
  const { state, wish } = deciding;
  const { count } = wish.command.slots;
  const lots = [...counts.keys()];
  const own = lots.filter(({ batch }) => batch.id === load.batch);
  const ordered = [...own, ...lots.filter((one) => !own.includes(one))];
  const named = deciding.wish.chosen !== undefined || ordered.length === 1;
  const parts: { one: LotOf; jars: number; its: Pick<Part, "terms"> }[] = [];
  const canner = cannerOf(state, load.canner);
  const holds = Math.min(...ordered.map(({ batch }) => capacity(canner, batch.jar ?? "pint")));
  const odd = wish.confirmed ? undefined : otherCount(ordered, count, holds);
  if (odd) return odd;
  let room = holds;
  for (const one of ordered) {
    const { batch, lot } = one;
    const choice = shareOf(deciding, load, batch);
    if (choice?.reason !== undefined) {
      if (!named && !wish.command.ref && !wish.command.slots.together) continue;
      const cannot = `They can't share the canner: ${choice.reason}.`;
      if (!choice.terms) return refused(cannot);
      if (!wish.confirmed) {
        return askYes(wish, `${cannot} Are they in together all the same? Say yes or no.`);
      }
    }
    const told = counts.get(one);
    const wanted = told ?? readyOf(lot).length;
    if (told !== undefined && told > room) {
      const before = parts.map(({ one: { batch: of }, jars }) => ({ batch: of, jars }));
      const all = [...before, { batch, jars: told }];
      return fits(state, load, all) ?? refused("Too many jars.");
    }
    const jars = Math.min(wanted, room);
    const its = choice?.reason !== undefined && choice.terms ? { terms: choice.terms } : {};
    if (jars > 0) parts.push({ one, jars, its });
    room -= jars;
  }
  if (parts.length === 0) return refused("No jars are filled yet.");
  const short = parts.filter(({ one, jars }) => jars > readyOf(one.lot).length);
  const facts = short.map(({ one, jars }): DatedFact => {
    return { type: "jars-filled", batch: one.lot.id, count: jars, size: null, t };
  });
  const into = parts.map(({ one, jars, its }) => ({ ...partOf(one.lot, jars), ...its }));
  return done(...facts, { type: "loaded", load: load.id, parts: into, t });
}
