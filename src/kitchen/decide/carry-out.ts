/** What is decided is carried out on a copy of the state, which becomes the state once written. */
import type { Library } from "../../recipe/library.ts";
import { comeDue } from "../agenda.ts";
import type { DatedFact, KitchenEvent } from "../events.ts";
import { apply, fork } from "../evolve.ts";
import { openLoads, refreshTerms } from "../loads/next-load.ts";
import type { State } from "../state.ts";
import { beginPlanned } from "./day-plan.ts";
import { nextId } from "./decide-batch.ts";

/** Under which command events are written, and when in kitchen time. */
export type EventMark = Pick<KitchenEvent, "cmd" | "w">;

export class CarriedOut {
  readonly events: KitchenEvent[] = [];
  /** The state after the events so far. */
  readonly after: State;
  private readonly mark: EventMark;

  constructor(before: State, mark: EventMark) {
    this.after = fork(before);
    this.mark = mark;
  }

  /** Adds facts in the order in which they happened. */
  add(facts: readonly DatedFact[]): this {
    for (const fact of facts) {
      const event = { ...fact, ...this.mark };
      apply(this.after, event);
      this.events.push(event);
    }
    return this;
  }

  /** Adds what the kitchen does of its own accord: opens loads, looks terms up again. */
  follow(now: number, library: Library): this {
    for (let more = true; more; ) {
      const id = nextId(this.after, now, "L");
      const { after } = this;
      const next = [...refreshTerms(after, now, library), ...openLoads(after, now, library, id)];
      this.add(next);
      more = next.length > 0;
    }
    return this;
  }
}

/**
 * The passing of time is a command like any other; undefined where nothing has come of it.
 * @param mark asked for only where something has.
 */
export function wake(
  state: State,
  now: number,
  library: Library,
  mark: () => EventMark,
): CarriedOut | undefined {
  const ripe = comeDue(state, now);
  const idle = ripe.length === 0 && openLoads(state, now, library, "trial").length === 0;
  if (idle && refreshTerms(state, now, library).length === 0) return undefined;
  const woken = new CarriedOut(state, mark()).add(ripe);
  beginPlanned(woken, now, library, ripe);
  return woken.follow(now, library);
}
