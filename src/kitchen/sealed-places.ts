/**
 * What a damaged journal touches: the batches and loads that a line names which cannot be relied
 * on, or else what was open where it stands.
 */
import type { DatedFact, KitchenEvent } from "./events.ts";
import { apply } from "./evolve.ts";
import { idsOf } from "./facts/references.ts";
import { ownerOf } from "./owners.ts";
import { initialState, type State } from "./state.ts";

/** A place in a file that cannot be relied on; line 0 is the file as a whole. */
export type SealedPlace = {
  file: string;
  line: number;
  reason: string;
  /** How many of the events stand before it. */
  recordsBefore: number;
  /** What of the line can be read after all. */
  refused?: object;
};

/**
 * The facts to be written down about places that cannot be relied on: those that touch a batch or
 * a load and that the events do not tell of yet.
 */
export function sealedFacts(
  events: readonly KitchenEvent[],
  places: readonly SealedPlace[],
): Extract<DatedFact, { type: "line-sealed" }>[] {
  const told = new Set(events.map((event) => (event.type === "line-sealed" ? event.seal : "")));
  const fresh = withSeals(places).filter(({ seal }) => !told.has(seal));
  if (fresh.length === 0) return [];
  const state = initialState();
  let lived = 0;
  return fresh.flatMap(({ seal, file, line, reason, recordsBefore, refused }) => {
    for (; lived < recordsBefore && lived < events.length; lived++) {
      apply(state, events[lived] as KitchenEvent);
    }
    const named = refused ? namedIn(refused, events) : [];
    const touches = named.length > 0 ? named : [...state.active];
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

/** Batches and loads that a line names which cannot be taken: what of it can be read. */
function namedIn(line: object, events: readonly KitchenEvent[]): string[] {
  const known = new Set(events.flatMap(idsOf));
  const commands = new Map<string, string[]>();
  for (const event of events) {
    const ids = commands.get(event.cmd) ?? [];
    commands.set(event.cmd, [...ids, ...idsOf(event)]);
  }
  const found = new Set<string>();
  const look = (value: unknown, depth: number): void => {
    if (typeof value === "string") {
      if (known.has(value)) found.add(value);
      for (const id of commands.get(value) ?? []) found.add(id);
    } else if (typeof value === "object" && value !== null && depth < 3) {
      for (const part of Object.values(value)) look(part, depth + 1);
    }
  };
  look(line, 0);
  return [...found];
}

/**
 * Batches and loads the log tells of and does not know: the line that began them was damaged, or
 * was taken back.
 */
export function unknownOwners(state: State): string[] {
  const unknown = state.history.flatMap(idsOf).filter((id) => !ownerOf(state, id));
  return [...new Set(unknown)];
}
