/**
 * Data folders that were taken in keep what is their own: their clock, their settings, what was in
 * doubt about them. Facts of a branch are lived through under its own clock and settings, and touch
 * only what that branch knows of.
 */
import { initialState, type Place, type State, wallOf } from "./state.ts";

function placeOf(from: Place): Place {
  const { kitchen, zone, rehearsal, open, offsets, clockSets, logFailures, gaps, doubts } = from;
  const { focus, dayPlan, hushedUntil, setUp, jarIds, lastW } = from;
  const clock = { zone, open, offsets, clockSets, logFailures, gaps, lastW };
  return { ...clock, kitchen, rehearsal, jarIds, doubts, focus, dayPlan, hushedUntil, setUp };
}

/** What follows is lived through under the clock and settings of this branch. */
export function enterPlace(state: State, name: string): void {
  if (state.place === name) return;
  const place = state.elsewhere[name] ?? placeOf(initialState());
  state.elsewhere[state.place] = placeOf(state);
  delete state.elsewhere[name];
  Object.assign(state, place, { place: name });
  unsettle(state);
}

/** What ends or begins next for a branch is not known before it was settled. */
function unsettle(state: State): void {
  state.nextEnd = Number.NEGATIVE_INFINITY;
  state.nextBegin = Number.NEGATIVE_INFINITY;
}

/** The branch that is lived through leaves another: until here all was theirs in common. */
export function leaveFor(state: State, parent: string): void {
  const from = state.elsewhere[parent];
  if (from) Object.assign(state, structuredClone(from));
  for (const id of begunIn(state).flatMap(Object.keys)) {
    const known = state.knownTo[id] ?? [""];
    if (known.includes(parent)) state.knownTo[id] = [...known, state.place];
  }
  unsettle(state);
}

/** Everything that a fact began, by its id. */
export function begunIn({ batches, loads, timers, seeds, reminders }: State): object[] {
  return [batches, loads, timers, seeds, reminders];
}

/** Whether nothing but this data folder's own log was ever lived through. */
export const isAlone = ({ elsewhere, place }: State) => place === "" && isEmpty(elsewhere);

function isEmpty(record: object): boolean {
  for (const _ in record) return false;
  return true;
}

/** Whether the branch that is lived through knows of something that was begun. */
export function knows(state: State, id: string): boolean {
  return isAlone(state) || (state.knownTo[id] ?? [""]).includes(state.place);
}

/**
 * The state with the clock, the settings and the doubts of the data folder in which something was
 * begun: of all of them, where several know of it.
 */
export function seenFor(state: State, id: string): State {
  if (isAlone(state)) return state;
  const known = state.knownTo[id] ?? [""];
  const places = known.flatMap((name) =>
    name === state.place ? state : (state.elsewhere[name] ?? []),
  );
  const all = <K extends keyof Place>(of: K): Place[K][] => places.map((one) => one[of]);
  return {
    ...state,
    offsets: once(all("offsets").flat(), (one) => one.from),
    clockSets: once(all("clockSets").flat(), (one) => one.at),
    logFailures: once(all("logFailures").flat(), (one) => one.from),
    doubts: worst(all("doubts").flat()),
    kitchen: once(all("kitchen"), () => 0)[0] ?? state.kitchen,
  };
}

/** Wall time of an instant, by the clock of the data folder in which a batch was begun. */
export function wallFor(state: State, id: string, t: number): number {
  return wallOf(seenFor(state, id), t);
}

/** Each once, in an order that does not depend on who took whom in. */
function once<T>(list: readonly T[], at: (one: T) => number): T[] {
  const texts = new Map(list.map((one) => [JSON.stringify(one), one]));
  return [...texts]
    .sort(([a, one], [b, other]) => at(one) - at(other) || (a < b ? -1 : 1))
    .map(([, one]) => one);
}

/** Each doubt once; where it was settled in one of them only, it is open. */
function worst(doubts: State["doubts"]): State["doubts"] {
  const bare = ({ settledFt: _settled, ...doubt }: State["doubts"][number]) =>
    JSON.stringify(doubt);
  const open = new Set(doubts.filter((one) => one.settledFt === undefined).map(bare));
  const kept = doubts.filter((one) => one.settledFt === undefined || !open.has(bare(one)));
  return once(kept, (one) => one.at);
}

/** An id as it was given, without what tells it from another folder's. */
export function plainId(id: string): string {
  const end = id.indexOf(".");
  return end < 0 ? id : id.slice(0, end);
}

/** A command as it was given, likewise. */
export function plainCommand(cmd: string): string {
  const end = cmd.indexOf("~", 1);
  return end < 0 ? cmd : cmd.slice(0, end);
}
