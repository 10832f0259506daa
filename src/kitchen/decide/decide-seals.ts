/** Deciding on seals, and on what becomes of jars that failed or were not processed in full. */
import { REPROCESS_WITHIN_HOURS } from "../../reckon/trade-numbers.ts";
import type { SlotsOf } from "../command.ts";
import type { BatchOption, DatedFact, Disposition } from "../events.ts";
import { findLot, jarsIn, type LotOf, liveParts, sum, tally } from "../jars/lots.ts";
import { hotPackOf } from "../loads/hot-pack.ts";
import { batchesOf, lotsOf, namesSort, ownerIds } from "../meant.ts";
import { activeOwners, isLoad, runOfRole } from "../owners.ts";
import { dispositionsFor, failedOf, undecidedOf, undecidedYet } from "../questions/dispositions.ts";
import { checkedWith, leftToCheck, stillCooling } from "../questions/seal-questions.ts";
import { batchName, lotName } from "../spoken-names.ts";
import type { Load, LoadPart, State } from "../state.ts";
import { HOUR_MS } from "../time.ts";
import { onShelf } from "./decide-kitchen.ts";
import { decideInStore } from "./decide-store.ts";
import {
  askNumber,
  askWhichLot,
  type Deciding,
  type Decision,
  done,
  type Present,
  refused,
} from "./decision.ts";

/** What can be said about seals. */
type OfSeals = "sealed" | "seal-failed";

type OfLoad = { load: Load; part: LoadPart; of: LotOf };

/** Loads whose jars are out and not all accounted for, narrowed to what was named. */
function openSeals(deciding: Deciding<OfSeals>): OfLoad[] {
  const loads = activeOwners(deciding.state).filter(isLoad);
  const out = loads.filter((load) => load.unloadedAt !== undefined && load.state === "running");
  return narrowed(deciding, partsOf(deciding.state, out));
}

/** Loads with jars counted as sealed, the last load first: one may be found open later. */
function sealedBefore(deciding: Deciding<OfSeals>): OfLoad[] {
  const loads = Object.values(deciding.state.loads).filter((load) => load.state === "complete");
  const all = partsOf(deciding.state, loads.reverse());
  const parts = all.filter(({ load, part }) => tally(deciding.state, load, part).sealed > 0);
  const named = narrowed(deciding, parts);
  return deciding.wish.command.ref === undefined ? named.slice(0, 1) : named;
}

function partsOf(state: State, loads: Load[]): OfLoad[] {
  return loads.flatMap((load) => {
    return load.parts.flatMap((part): OfLoad[] => {
      const of = findLot(state, part.lot);
      return of && of.lot.abandonedAt === undefined ? [{ load, part, of }] : [];
    });
  });
}

function narrowed({ state, wish }: Deciding<OfSeals>, all: OfLoad[]): OfLoad[] {
  const { ref } = wish.command;
  const open = !ref || namesSort(ref, "jars", "lids", "others", "canner");
  const named = wish.chosen ?? (open ? undefined : ref.recorded);
  if (!named) return all;
  const lots = new Set(lotsOf(state, named).map(({ lot }) => lot));
  const ids = ownerIds(named);
  return all.filter((one) => lots.has(one.of.lot) || ids.has(one.load.id));
}

export function decideSealed(deciding: Deciding<"sealed">): Decision {
  const { state, now, wish } = deciding;
  const { slots } = wish.command;
  const open = openSeals(deciding);
  if (open.length === 0) return refused("No jars are cooling or waiting for their seal check.");
  const cooling = open.filter(({ load }) => stillCooling(load, now));
  if (cooling.length === open.length) {
    const owner = open[0]?.part.batch ?? null;
    return done({ type: "note", owner, text: tooSoon(slots), t: now });
  }
  const left = ({ load, part }: OfLoad) => tally(state, load, part).unaccounted;
  const ready = open.filter((one) => !cooling.includes(one) && left(one) > 0);
  const finish = ready.flatMap(({ load }): DatedFact[] => endCooling(load, now));
  // "Nineteen sealed", where nineteen are left in all, is said of every one of them.
  if (slots.all || (!slots.jars && slots.count === sum(ready, left))) {
    const facts = ready.map((one): DatedFact => {
      const { load, part } = one;
      return { type: "sealed", load: load.id, batch: part.lot, count: left(one), t: now };
    });
    return facts.length > 0
      ? done(...unique(finish), ...facts)
      : refused("Those are all counted already.");
  }
  const [one] = ready;
  if (!one) return refused("Those are all counted already.");
  if (lotsAmong(ready).length > 1) return askWhichLot(wish, "Which batch:", lotsAmong(ready));
  if (slots.jars) return sealedByNumber(state, ready, slots.jars, unique(finish), now);
  const { count } = slots;
  if (count === undefined) return askNumber(wish, "How many sealed?");
  if (!Number.isInteger(count) || count < 0 || count > left(one)) {
    return refused(`Only ${left(one)} are not counted yet. How many sealed?`);
  }
  const { load, part } = one;
  return done(...unique(finish), { type: "sealed", load: load.id, batch: part.lot, count, t: now });
}

/** The parts of loads that hold these jars of a lot, each with its own. */
function byPart(state: State, parts: readonly OfLoad[], jars: readonly number[]) {
  return parts.flatMap((one) => {
    const inside = jarsIn(state, one.load, one.part);
    const own = inside.filter(({ number }) => jars.includes(number));
    return own.length > 0 ? [{ one, own }] : [];
  });
}

/** Refuses jars that are in none of these parts of loads, or that failed already. */
function missingOrFailed(
  parts: ReturnType<typeof byPart>,
  jars: readonly number[],
  where: string,
): Decision | undefined {
  const own = parts.flatMap((part) => part.own);
  const missing = jars.find((jar) => !own.some(({ number }) => number === jar));
  if (missing !== undefined) return refused(`Jar ${missing} was not in ${where}.`);
  const failed = own.find(({ seal, guessed }) => seal === "failed" && !guessed);
  return failed && refused(`Jar ${failed.number} is down as failed already.`);
}

/** Jars of a lot that are named, in whichever loads they were; no failed one is among them. */
function sealedByNumber(
  state: State,
  ready: readonly OfLoad[],
  jars: readonly number[],
  finish: readonly DatedFact[],
  t: number,
): Decision {
  const parts = byPart(state, ready, jars);
  const odd = missingOrFailed(parts, jars, "that load");
  if (odd) return odd;
  const facts = parts.flatMap(({ one: { load, part }, own: all }): DatedFact[] => {
    const open = all.filter(({ seal, guessed }) => seal !== "sealed" || guessed);
    const numbers = open.map(({ number }) => number);
    const count = Math.min(numbers.length, tally(state, load, part).unaccounted);
    if (count === 0) return [];
    return [{ type: "sealed", load: load.id, batch: part.lot, count, jars: numbers, t }];
  });
  return facts.length > 0 ? done(...finish, ...facts) : refused("Those are all counted already.");
}

/** A yes to whether the others sealed: of all that the question was asked of, and of no more. */
export function othersSealed(state: State, about: string, now: number): DatedFact[] {
  const asked = state.loads[about];
  if (!asked) return [];
  const all = checkedWith(state, asked, now);
  const loads = [...new Set(all.map(({ load }) => load))];
  const sealed = all.flatMap(({ load, part }): DatedFact[] => {
    const count = tally(state, load, part).unaccounted;
    return count > 0 ? [{ type: "sealed", load: load.id, batch: part.lot, count, t: now }] : [];
  });
  return [...loads.flatMap((load) => endCooling(load, now)), ...sealed];
}

/** The lots among parts of loads, each once. */
function lotsAmong(parts: readonly OfLoad[]): LotOf[] {
  return [...new Map(parts.map(({ of }) => [of.lot, of])).values()];
}

/** The note made of seals reported while the jars are still cooling. */
function tooSoon({ all, count, jars }: SlotsOf["sealed"]): string {
  const which = all ? "all" : jars ? `jar ${jars.join(", ")}` : (count ?? "some");
  return `heard before the seal check: ${which} sealed`;
}

function endCooling(load: Load, now: number): DatedFact[] {
  const cool = runOfRole(load, "cooling");
  if (cool?.state !== "running") return [];
  return [{ type: "stage-done", owner: load.id, stage: cool.id, t: now }];
}

function unique(facts: DatedFact[]): DatedFact[] {
  return [...new Map(facts.map((fact) => [JSON.stringify(fact), fact])).values()];
}

export function decideSealFailed(deciding: Deciding<"seal-failed">): Decision {
  const { state, wish } = deciding;
  const { slots } = wish.command;
  const fresh = openSeals(deciding);
  const all = fresh.length > 0 ? fresh : sealedBefore(deciding);
  const left = ({ load, part }: OfLoad) => undecidedOf(state, load, part);
  const open = all.filter((one) => left(one) > 0);
  if (open.length === 0) return refused("No jars have come out of a canner yet.");
  const jars = slots.jars ?? [];
  const holding = lotsAmong(open).length === 1 ? byPart(state, open, jars) : [];
  const [one] = holding.length > 0 ? holding.map(({ one: part }) => part) : open;
  if (!one) return refused("Those are all counted already.");
  const lots = lotsAmong(open);
  // Several jars may be of several lots: one name would be a guess.
  if (lots.length > 1 && jars.length === 0 && (slots.count ?? 1) > 1) {
    const few = lots.slice(0, 2).map(({ lot }) => `one ${lot.variety ?? lot.mark}`);
    return refused(`Which ${slots.count} did not seal? Say the marks, or ${few.join(" and ")}.`);
  }
  if (lots.length > 1) return askWhichLot(wish, "Which batch:", lots);
  if (slots.all) {
    return done(...open.flatMap((part) => failedFacts(deciding, part, left(part), [])));
  }
  if (holding.length > 1) return failedInSeveral(deciding, holding);
  const { load, part, of } = one;
  const inside = jarsIn(state, load, part);
  const numbers = inside.map(({ number }) => number);
  const wrong = jars.find((jar) => !numbers.includes(jar));
  if (wrong !== undefined) {
    const had = `${Math.min(...numbers)} to ${Math.max(...numbers)}`;
    return refused(`Jar ${wrong} was not in that load; it had ${had}.`);
  }
  const failed = (jar: number) => {
    return inside.some((one) => one.number === jar && one.seal === "failed" && !one.guessed);
  };
  const twice = jars.find(failed);
  if (twice !== undefined) return refused(`Jar ${twice} is down as failed already.`);
  const count = slots.jars?.length ?? slots.count ?? 1;
  if (!(Number.isInteger(count) && count > 0 && count <= left(one))) {
    return refused("That is more jars than are left. How many did not seal?");
  }
  if (load.state === "complete") {
    const kept = onShelf(of);
    if (count > kept) return refused(`Only ${kept} of ${lotName(of)} should be left.`);
  }
  return done(...failedFacts(deciding, one, count, jars));
}

/** Jars of a part of a load that did not seal, and its others where they did. */
function failedFacts(
  { state, now: t, wish }: Deciding<"seal-failed">,
  { load, part }: OfLoad,
  count: number,
  jars: number[],
): DatedFact[] {
  const at = { load: load.id, batch: part.lot, t };
  const cooling = stillCooling(load, t);
  const rest = tally(state, load, part).unaccounted - count;
  const others = wish.command.slots.othersSealed && rest > 0 && !cooling;
  return [
    ...(cooling ? [] : endCooling(load, t)),
    { type: "seal-failed", ...at, count, jars },
    ...(others ? [{ type: "sealed" as const, ...at, count: rest }] : []),
  ];
}

/** Jars of one lot that were in several loads and did not seal. */
function failedInSeveral(
  deciding: Deciding<"seal-failed">,
  holding: ReturnType<typeof byPart>,
): Decision {
  const odd = missingOrFailed(holding, deciding.wish.command.slots.jars ?? [], "those loads");
  if (odd) return odd;
  const facts = holding.flatMap(({ one, own }) => {
    const numbers = own.map(({ number }) => number);
    return failedFacts(deciding, one, numbers.length, numbers);
  });
  return done(...facts);
}

export function decideDisposition(deciding: Deciding<"disposition">): Decision {
  const { state, now, wish } = deciding;
  const { slots, ref } = wish.command;
  const stored = decideInStore(deciding);
  if (stored) return stored;
  const all = Object.values(state.loads).flatMap((load) => {
    const what = undecidedYet(state, load);
    return what ? [{ load, what }] : [];
  });
  const named = batchesOf(state, ref?.recorded ?? []);
  const of = all.filter(({ load }) => named.some((one) => one.loads.includes(load.id)));
  const waiting = of.length > 0 ? of : all;
  const [one] = waiting;
  if (!one) return refused("No jars are waiting for that decision.");
  const { code } = one.what;
  const alike = waiting.filter(({ load, what }) => {
    return what.code === code && dispositionsFor(load, code, now).includes(slots.what);
  });
  const count = slots.jars?.length ?? slots.count ?? null;
  const meant = count === null ? alike : alike.filter((each) => each === one);
  if (meant.length === 0) return refused(cannot(one.load, code, slots.what, now));
  if (count !== null && !(Number.isInteger(count) && count > 0 && count <= one.what.jars)) {
    return refused(`${one.what.jars} jars are waiting for that decision. How many of them?`);
  }
  const facts: DatedFact[] = [];
  for (const { load, what } of meant) {
    // More of a load that is still being checked may fail, and will be asked about then.
    const of = count ?? (leftToCheck(state, load) > 0 ? what.jars : null);
    const fact = { type: "disposed", owner: load.id, code, count: of, t: now } as const;
    const parts = slots.what === "reprocess" ? partsAgain(deciding, load, code) : [];
    if (typeof parts === "string") return refused(parts);
    if (slots.what !== "reprocess") facts.push({ ...fact, what: slots.what, option: null });
    for (const { batch, option } of parts) {
      const lot = parts.length === 1 ? {} : { batch };
      facts.push({ ...fact, ...lot, what: "reprocess", option });
    }
  }
  return done(...facts);
}

/** Why jars may not be disposed of in that way. */
function cannot(load: Load, code: string, what: Disposition, now: number): string {
  if (what === "carried-on" || what === "restarted" || what === "undecided") {
    return "Say reprocess, refrigerate, freeze or discard.";
  }
  if (code !== "seal-failed") {
    return load.unloadedAt === undefined
      ? "They have been off their process too long to be processed again. " +
          "Refrigerate, freeze or discard them."
      : `It is over ${REPROCESS_WITHIN_HOURS} hours, ` +
          "so these can't be reprocessed: discard them untasted.";
  }
  const hours = Math.floor((now - (load.unloadedAt ?? now)) / HOUR_MS);
  return (
    `They stood ${hours} hours unsealed. ` +
    `After ${REPROCESS_WITHIN_HOURS} hours a failed jar can only be discarded, untasted.`
  );
}

/** The tested hot pack each batch's jars may go through again, or why they may not. */
function partsAgain(
  { state }: Present,
  load: Load,
  code: string,
): { batch: string; option: BatchOption }[] | string {
  const parts: { batch: string; option: BatchOption }[] = [];
  for (const part of liveParts(state, load)) {
    const batch = state.batches[part.batch];
    const jars =
      code === "seal-failed" ? failedOf(state, load, part) : undecidedOf(state, load, part);
    if (!batch || jars <= 0) continue;
    const option = hotPackOf(batch, load);
    if (!option) {
      const none = `No hot pack was tested for ${batchName(batch)}`;
      return `${none}, so they can't be reprocessed: refrigerate or freeze them.`;
    }
    const { atPsi } = batch.option ?? {};
    parts.push({ batch: part.lot, option: atPsi === undefined ? option : { ...option, atPsi } });
  }
  return parts;
}
