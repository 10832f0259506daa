/**
 * Deciding on jars in store: opened, given away, thrown out, or put somewhere else. A jar that is
 * named by its number has to be there; of jars that are only counted, any will do.
 */
import type { SpokenJarSize } from "../command.ts";
import { givenAway, inStore } from "../jars/change-jars.ts";
import type { Jar } from "../jars/jar.ts";
import { type LotOf, lotsIn } from "../jars/lots.ts";
import { lotsOf } from "../meant.ts";
import { lotName, toldApart, upper } from "../spoken-names.ts";
import type { State } from "../state.ts";
import { onShelf, shelved } from "./decide-kitchen.ts";
import { askWhichLot, type Deciding, type Decision, done, refused } from "./decision.ts";

/** What can be said about jars in store. */
type OfStore = "opened" | "given" | "returned" | "place" | "disposition" | "jar-broken";

/** The lots named, or of jars named by nothing but a number, all; undefined where nothing is. */
function namedLots({ state, wish }: Deciding<OfStore>): LotOf[] | undefined {
  const refs = wish.chosen ?? wish.command.ref?.recorded;
  const all = () => Object.values(state.batches).flatMap(lotsIn);
  const numbered = wish.command.slots.jars !== undefined;
  const lots = refs ? lotsOf(state, refs) : numbered ? all() : undefined;
  return lots?.filter(({ batch, lot }) => {
    return batch.state !== "abandoned" && lot.abandonedAt === undefined;
  });
}

/** Whether a jar is in store, or was only guessed to have left it. */
function holds({ batch, lot }: LotOf, number: number): boolean {
  const kept = inStore(lot, batch.option !== null).some((jar) => jar.number === number);
  return kept || lot.jars.some((jar) => jar.number === number && jar.left && jar.guessed);
}

/** The one lot whose jars are meant by their numbers; else which of several, or what is amiss. */
function lotWith(deciding: Deciding<OfStore>, jars: readonly number[]): LotOf | Decision {
  const { state, wish } = deciding;
  const named = namedLots(deciding) ?? [];
  const fitting = named.filter((one) => jars.every((jar) => holds(one, jar)));
  const [one] = fitting;
  if (one && fitting.length === 1) return one;
  if (one) return askWhichLot(wish, "Which one:", fitting, toldApart(state, fitting));
  return refused(whyNot(named, jars, wish.command.slots.target));
}

/** Why none of these lots has the jars in store. */
function whyNot(named: LotOf[], jars: readonly number[], target: string | undefined): string {
  for (const { lot } of named) {
    const known = lot.jars.filter(({ number }) => jars.includes(number));
    const gone = known.find((jar) => jar.left || jar.gone) ?? known[0];
    if (gone) return `${lot.mark}${gone.number} ${becameOf(gone)}.`;
  }
  const [only] = named;
  if (!only) return target ? `I have nothing called ${target} in the log.` : "I know no such jar.";
  const numbers = only.lot.jars.map(({ number }) => number).filter((number) => number > 0);
  if (numbers.length === 0) return `${upper(lotName(only))} has no jars yet.`;
  const range = `${Math.min(...numbers)} to ${Math.max(...numbers)}`;
  return `${upper(lotName(only))} has no jar ${jars.join(" and ")}; it has ${range}.`;
}

function becameOf({ left, gone, seal }: Jar): string {
  if (gone?.what === "spoiled") return "is down as spoiled";
  if (gone?.what === "broken") return "is down as broken";
  if (left)
    return { opened: "is open", given: "was given away", discarded: "is thrown out" }[left.what];
  return seal === "failed" || gone ? "did not go into the store" : "is not put away yet";
}

type Chosen = { one: LotOf; count: number; jars: number[] };
type Counted = { count?: number; size?: SpokenJarSize; jars?: number[] };

/** Which jars leave the store; `question` asks for their number. */
function leaving(
  deciding: Deciding<"opened" | "given">,
  slots: Counted,
  question: string,
): Chosen | Decision {
  const { size } = slots;
  if (slots.jars) {
    const one = lotWith(deciding, slots.jars);
    return "kind" in one ? one : { one, count: slots.jars.length, jars: slots.jars };
  }
  const count = slots.count ?? 1;
  if (!(Number.isInteger(count) && count > 0)) return refused(question);
  const ofSize = ({ batch }: LotOf) => {
    return size === undefined || batch.jar === null || batch.jar === size;
  };
  const found = shelved(deciding, (one) => ofSize(one) && onShelf(one) > 0);
  if ("kind" in found) return found;
  if (!ofSize(found)) {
    return refused(`${upper(lotName(found))} was put up in ${found.batch.jar} jars.`);
  }
  const left = onShelf(found);
  if (count > left) return refused(`Only ${left} of ${lotName(found)} should be left.`);
  return { one: found, count, jars: [] };
}

export function decideOpened(deciding: Deciding<"opened">): Decision {
  const found = leaving(deciding, deciding.wish.command.slots, "How many jars were opened?");
  if ("kind" in found) return found;
  const jars = found.jars.length > 0 ? { jars: found.jars } : {};
  const { count, one } = found;
  return done({ type: "jar-opened", batch: one.lot.id, count, ...jars, t: deciding.now });
}

export function decideGiven(deciding: Deciding<"given">): Decision {
  const { slots } = deciding.wish.command;
  const found = leaving(deciding, slots, "How many jars were given away?");
  if ("kind" in found) return found;
  const { one, count, jars } = found;
  const to = slots.to ?? null;
  return done({ type: "jars-given", batch: one.lot.id, count, jars, to, t: deciding.now });
}

/** A jar that was given away is brought back: those named, else the last that was given. */
export function decideReturned(deciding: Deciding<"returned">): Decision {
  const { state, wish, now: t } = deciding;
  const { slots, ref } = wish.command;
  const { jars = [], count = Math.max(1, jars.length) } = slots;
  const named = ref && !ref.sortAlone ? namedLots(deciding) : undefined;
  const lots = named ?? Object.values(state.batches).flatMap(lotsIn);
  const given = lots.filter(({ lot }) => givenAway(lot, jars).length >= count);
  const lastAt = ({ lot }: LotOf) => givenAway(lot, jars)[0]?.left?.at ?? 0;
  const [one] = given.toSorted((first, other) => lastAt(other) - lastAt(first));
  if (!one) return refused("I have no such jar down as given away.");
  return done({ type: "jars-returned", batch: one.lot.id, count, jars, t });
}

export function decidePlace(deciding: Deciding<"place">): Decision {
  const { slots } = deciding.wish.command;
  const place = slots.place.trim();
  if (place === "") return refused("Where do the jars stand?");
  return putInto(deciding, place);
}

function putInto(deciding: Deciding<"place" | "disposition">, place: string): Decision {
  const { jars } = deciding.wish.command.slots;
  const found = jars ? lotWith(deciding, jars) : shelved(deciding, (one) => onShelf(one) > 0);
  if ("kind" in found) return found;
  const which = jars ? { jars } : {};
  return done({ type: "jars-moved", batch: found.lot.id, place, ...which, t: deciding.now });
}

const COLD = { refrigerate: "refrigerator", freeze: "freezer" } as const;

/**
 * "Put P four in the fridge" of a jar in store, which waits for no decision; undefined where the
 * words are about jars that do.
 */
export function decideInStore(deciding: Deciding<"disposition">): Decision | undefined {
  const { slots } = deciding.wish.command;
  const named = namedLots(deciding) ?? [];
  const { jars, what } = slots;
  const inside = jars
    ? named.some((one) => jars.every((jar) => holds(one, jar)))
    : named.some((one) => onShelf(one) > 0) && !isWaiting(deciding.state, named);
  if (!inside) return undefined;
  if (what === "refrigerate" || what === "freeze") return putInto(deciding, COLD[what]);
  if (what !== "discard") return undefined;
  if (jars) return thrownOut(deciding, jars);
  if (slots.count === undefined) return undefined;
  const found = shelved(deciding, (one) => onShelf(one) > 0);
  if ("kind" in found) return found;
  const left = onShelf(found);
  if (slots.count > left) return refused(`Only ${left} of ${lotName(found)} should be left.`);
  const facts = { batch: found.lot.id, count: slots.count, jars: [] };
  return done({ type: "jars-discarded", ...facts, t: deciding.now });
}

/** A jar in store that is named as broken is thrown out; undefined where it stands elsewhere. */
export function brokenInStore(deciding: Deciding<"jar-broken">): Decision | undefined {
  const { jars } = deciding.wish.command.slots;
  const named = namedLots(deciding) ?? [];
  const inside = jars && named.some((one) => jars.every((jar) => holds(one, jar)));
  return inside ? thrownOut(deciding, jars) : undefined;
}

function thrownOut(deciding: Deciding<OfStore>, jars: number[]): Decision {
  const found = lotWith(deciding, jars);
  if ("kind" in found) return found;
  const count = jars.length;
  return done({ type: "jars-discarded", batch: found.lot.id, count, jars, t: deciding.now });
}

/** Whether any of these lots has jars that are not sealed and not decided on. */
function isWaiting(state: State, lots: readonly LotOf[]): boolean {
  return lots.some(({ batch, lot }) => {
    const open = batch.loads.some((id) => state.loads[id]?.state === "running");
    return open || lot.jars.some(({ seal, gone }) => seal === "failed" && !gone);
  });
}
