/** What the passing of time alone leads to. */
import type { Library } from "../../recipe/library.ts";
import { comeDue } from "../agenda.ts";
import { openLoads, refreshTerms } from "../loads/next-load.ts";
import type { State } from "../state.ts";
import { CarriedOut, type EventMark } from "./carried-out.ts";
import { beginPlanned } from "./day-plan.ts";

/**
 * The passing of time is a command like any other; undefined where nothing has come of it.
 * @param mark called only where something has.
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
  // A daily check that was missed for days comes due once for each of them.
  const missed = () => comeDue(woken.after, now);
  for (let more = missed(); more.length > 0; more = missed()) woken.add(more);
  beginPlanned(woken, now, library, ripe);
  return woken.follow(now, library);
}
