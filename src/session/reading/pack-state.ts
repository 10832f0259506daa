/**
 * A state as JSON that is quick to read: parts that copies may share are written once, however many
 * batches contain them, and readings, by far the largest part of a season, as columns.
 */
import { SHARED_PARTS } from "../../kitchen/evolve.ts";
import type { Measurement, State } from "../../kitchen/state.ts";

type Kept = Omit<State, "history">;
type Columns = {
  kinds: [what: string, unit: string][];
  of: number[];
  at: number[];
  value: number[];
};
type Parts = Record<string, unknown>;

/** The JSON of a state without its history. */
export function packedState({ history: _history, ...state }: State): string {
  const known = new Map<string, number>();
  const shared: string[] = [];
  const place = (part: object): number => {
    const text = JSON.stringify(part);
    const before = known.get(text);
    if (before !== undefined) return before;
    known.set(text, shared.length);
    return shared.push(text) - 1;
  };
  const packed = (value: unknown): unknown => {
    if (Array.isArray(value)) return value.map(packed);
    if (!isObject(value)) return value;
    const made: Parts = {};
    for (const [key, part] of Object.entries(value)) {
      if (SHARED_PARTS.has(key) && isObject(part)) made[key] = place(part);
      else made[key] = key === "readings" ? columnsOf(part as Measurement[]) : packed(part);
    }
    return made;
  };
  const rest = JSON.stringify(packed(state));
  return `{"shared":[${shared.join(",")}],"state":${rest}}`;
}

/** The state in such JSON. Shared parts must not be changed, as in any state. */
export function unpackedState(text: string): Kept {
  const { shared, state } = JSON.parse(text) as { shared: object[]; state: Kept };
  unpack(state, shared);
  // JSON has no infinity: it comes back as null.
  state.nextEnd ??= Number.POSITIVE_INFINITY;
  state.nextBegin ??= Number.POSITIVE_INFINITY;
  return state;
}

function isObject(value: unknown): value is object {
  return typeof value === "object" && value !== null;
}

/** Puts shared parts and readings back into an object, in place. */
function unpack(within: object, shared: readonly object[]): void {
  const parts = within as Parts;
  for (const key in parts) {
    const part = parts[key];
    if (typeof part === "number" && SHARED_PARTS.has(key)) parts[key] = shared[part];
    else if (key === "readings") parts[key] = readingsOf(part as Columns);
    else if (isObject(part)) unpack(part, shared);
  }
}

function columnsOf(readings: readonly Measurement[]): Columns {
  const columns: Columns = { kinds: [], of: [], at: [], value: [] };
  const known = new Map<string, number>();
  for (const { at, what, value, unit } of readings) {
    const name = `${what}\n${unit}`;
    if (!known.has(name)) known.set(name, columns.kinds.push([what, unit]) - 1);
    columns.of.push(known.get(name) as number);
    columns.at.push(at);
    columns.value.push(value);
  }
  return columns;
}

function readingsOf({ kinds, of, at, value }: Columns): Measurement[] {
  return of.map((kind, index) => {
    const [what, unit] = kinds[kind] as [string, string];
    return { at: at[index] as number, what, value: value[index] as number, unit };
  });
}
