/** When the seal check of a load is over. */
import { liveParts, tally } from "../jars/lots.ts";
import { runOfRole } from "../owners.ts";
import { finish, isOver, skipStage } from "../stage-run.ts";
import type { Load, State } from "../state.ts";

/** Every jar is accounted for: the seal check is over (and the cooling, if nobody said so). */
export function checkDone(state: State, load: Load, at: number): void {
  const check = runOfRole(load, "seals");
  const cool = runOfRole(load, "cooling");
  if (!check || !cool || isOver(check) || load.unloadedAt === undefined) return;
  const counts = liveParts(state, load).map((part) => tally(state, load, part));
  if (counts.some(({ unaccounted }) => unaccounted > 0)) return;
  // Where no jar was left to cool, nothing was checked either.
  const left = counts.some((one) => one.jars > one.again - one.failedAgain + one.aside);
  const end = left ? finish : skipStage;
  if (!isOver(cool)) end(cool, at);
  end(check, at);
}
