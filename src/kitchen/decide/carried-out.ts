/** What is decided is carried out on a copy of the state, which becomes the state once written. */
import type { Library } from "../../recipe/library.ts";
import type { DatedFact, KitchenEvent } from "../events.ts";
import { apply, fork } from "../evolve.ts";
import { nextIds } from "../jars/used-ids.ts";
import { openLoads, refreshTerms } from "../loads/next-load.ts";
import type { State } from "../state.ts";
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
      const ids = fact.type === "jars-filled" ? nextIds(this.after) : undefined;
      const event: KitchenEvent = { ...fact, ...(ids ? { ids } : {}), ...this.mark };
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
