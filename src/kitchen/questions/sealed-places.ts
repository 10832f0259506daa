/**
 * What damage to a journal affects: the batches and loads that an unreliable line names, or else
 * whatever was open at that place.
 */

import type { DatedFact, KitchenEvent } from "../events.ts";
import { historyOf } from "../events.ts";
import { apply } from "../evolve.ts";
import { isFactType } from "../facts/all-facts.ts";
import { idsOf, namingFields } from "../facts/references.ts";
import { ownerOf } from "../owners.ts";
import { initialState, type State } from "../state.ts";

/** A place in a file that cannot be relied on; line 0 is the file as a whole. */
type SealedPlace = {
  file: string;
  line: number;
  reason: string;
  /** How many of the events stand before it. */
  recordsBefore: number;
  /** What of the line can be read after all. */
  refused?: object;
};

/**
 * The facts to be written down about places that cannot be relied on: those that affect a batch or
 * a load and are not among the events yet.
 */
export function sealedFacts(
  events: readonly KitchenEvent[],
  places: readonly SealedPlace[],
): Extract<DatedFact, { type: "line-sealed" }>[] {
  if (places.length === 0) return [];
  const told = new Set(events.map((event) => (event.type === "line-sealed" ? event.seal : "")));
  const fresh = withSeals(places).filter(({ seal }) => !told.has(seal));
  if (fresh.length === 0) return [];
  const state = initialState();
  let lived = 0;
  return fresh.flatMap(({ seal, file, line, reason, recordsBefore, refused }) => {
    for (const event of events.slice(lived, recordsBefore)) apply(state, event);
    lived = Math.max(lived, recordsBefore);
    const named = refused ? namedIn(refused, events) : { ids: [], all: false };
    const touches = named.all ? named.ids : [...new Set([...named.ids, ...state.active])];
    if (touches.length === 0) return [];
    return [{ type: "line-sealed" as const, seal, file, line, reason, touches, t: state.lastW }];
  });
}

/** Places in the order of their events, each under a name of its own. */
function withSeals(places: readonly SealedPlace[]): (SealedPlace & { seal: string })[] {
  const times = new Map<string, number>();
  const named = places.map((place) => {
    const name = `${place.file}-${place.line}`;
    const time = (times.get(name) ?? 0) + 1;
    times.set(name, time);
    return { ...place, seal: time === 1 ? name : `${name}.${time}` };
  });
  return named.sort((a, b) => a.recordsBefore - b.recordsBefore);
}

/** No name is nested deeper in a line: a list, an object in it, and its field. */
const DEEPEST = 4;

/**
 * Batches and loads that a refused line names, and whether it can have named no others: false where
 * it names none, or where a field that should name one does not.
 */
function namedIn(line: object, events: readonly KitchenEvent[]): { ids: string[]; all: boolean } {
  const known = knownNames(events);
  const named = (value: unknown, depth = DEEPEST): string[] => {
    if (typeof value === "string") return known.get(value) ?? [];
    if (typeof value !== "object" || value === null || depth === 0) return [];
    return Object.values(value).flatMap((inner) => named(inner, depth - 1));
  };
  const fields: Readonly<Record<string, unknown>> = { ...line };
  const { type } = fields;
  const ids = [...new Set(named(line))];
  const naming = isFactType(type) ? namingFields(type) : undefined;
  const readable = naming?.every((field) => {
    const value = fields[field];
    return value === null || everyNames(value, (one) => known.has(one));
  });
  return { ids, all: ids.length > 0 && readable === true };
}

/** Whether every name in a value, its items included, is known. */
function everyNames(value: unknown, isKnown: (name: string) => boolean, depth = DEEPEST): boolean {
  if (typeof value === "string") return isKnown(value);
  if (typeof value !== "object" || value === null || depth === 0) return false;
  const items = Array.isArray(value) ? value : [(value as { batch?: unknown }).batch];
  return items.length > 0 && items.every((item) => everyNames(item, isKnown, depth - 1));
}

/** What each name stands for: a batch or load for itself, a command for those it was about. */
function knownNames(events: readonly KitchenEvent[]): Map<string, string[]> {
  const names = new Map<string, string[]>();
  for (const event of events) {
    const ids = idsOf(event);
    for (const id of ids) names.set(id, [id]);
    names.set(event.cmd, [...new Set([...(names.get(event.cmd) ?? []), ...ids])]);
  }
  return names;
}

/**
 * Batches and loads that the log mentions but does not know: the line that began them was damaged
 * or taken back.
 */
export function unknownOwners(state: State): string[] {
  const unknown = historyOf(state)
    .flatMap(idsOf)
    .filter((id) => !ownerOf(state, id));
  return [...new Set(unknown)];
}
