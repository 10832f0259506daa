/**
 * What can happen in the kitchen. Events are facts: what a person reported, what a clock showed,
 * what was chosen with everything it was chosen from. What follows from them (a restart, a
 * deviation, a verdict) is worked out and never written, so a corrected time corrects it all. Each
 * kind of fact is declared in `facts/`.
 */
import type { FACTS, FactType } from "./facts/all-facts.ts";
import type { FieldsOf } from "./facts/fact.ts";
import type { Stamp, Written } from "./facts/stamp.ts";
import type { State } from "./state.ts";

export type {
  AltitudeDoubt,
  BatchOption,
  Canner,
  Disposition,
  GapCause,
  GaugeRecord,
  GuideAnswer,
  Lot,
  Part,
  PlannedItem,
  PlannedStep,
  QuietHours,
  SpoilSign,
} from "./facts/fields.ts";
export type { Stamp } from "./facts/stamp.ts";

export type EventType = FactType;
type FactByType = {
  [T in EventType]: { type: T } & FieldsOf<(typeof FACTS)[T]["fields"]>;
};
export type Fact = FactByType[EventType];
export type KitchenEvent = Fact & Stamp;
/** A fact of one kind and when it happened. */
export type FactOf<T extends EventType> = FactByType[T] & { t: number };
/** A fact and when it happened, before the session stamps it with its command. */
export type DatedFact = Fact & { t: number };

/** An event's fields by name, whatever its kind. */
export function fieldsOf(event: Written): Readonly<Record<string, unknown>> {
  return event;
}

/** The events that a state followed from: all of them passed the gate of `facts/`. */
export function historyOf(state: Pick<State, "history">): KitchenEvent[] {
  return state.history as KitchenEvent[];
}
