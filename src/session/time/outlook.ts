/** When the next due moment is; worked out again only where something may have changed it. */
import { agenda } from "../../kitchen/agenda.ts";
import type { State } from "../../kitchen/state.ts";

/** A look ahead is taken again after this, ms: queues shift with time alone, slowly. */
const HOLDS_MS = 60_000;

export class Outlook {
  /** How many events the last look saw, and until when it holds. */
  private events = -1;
  private until = 0;
  private soonest = Number.POSITIVE_INFINITY;
  /** What was due by then has been dealt with, or waits for something other than time. */
  private dealtWithBy = Number.NEGATIVE_INFINITY;

  /** Everything due by this moment is being dealt with. */
  dealtWith(now: number): void {
    this.dealtWithBy = Math.max(this.dealtWithBy, now);
  }

  /**
   * The next due moment not dealt with yet, in kitchen time; Infinity where nothing will come due.
   * It may have come while the one before it was being written down.
   */
  dueAt(state: State, now: number): number {
    if (!this.holds(state, now)) this.look(state, now);
    return this.soonest;
  }

  /** Nothing has happened since the last look, and nothing has come due. */
  holds(state: State, now: number): boolean {
    return state.history.length === this.events && now < this.until;
  }

  /** With nothing overdue, a look holds for a minute or to the next event. */
  private look(state: State, now: number): void {
    const items = agenda(state, now);
    const times = items.map((item) => item.tellAt);
    const next = times.filter((at) => at > this.dealtWithBy);
    this.soonest = Math.min(...next, Number.POSITIVE_INFINITY);
    const overdue = times.some((at) => at <= now);
    this.until = overdue ? now : Math.min(this.soonest, now + HOLDS_MS);
    this.events = state.history.length;
  }
}

/** Asked to be quiet, and the time asked for is not over. */
export function isHushed({ hushedUntil }: State, now: number): boolean {
  return hushedUntil === null || (hushedUntil !== undefined && now < hushedUntil);
}
