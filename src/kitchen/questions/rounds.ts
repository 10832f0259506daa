/**
 * Rounds of a critical factor: what is asked of a brew is asked of the next one anew, and what is
 * asked of jars and lids is asked anew of a lot that joined when jars were filled already. An
 * answer holds for its own round.
 */
import { brewNow, holds, isOfBrew } from "../jars/brews.ts";
import type { Jar, Touched } from "../jars/jar.ts";
import { type LotOf, liveLots } from "../jars/lots.ts";
import { hasRole } from "../stages/kinds.ts";
import type { Batch } from "../state.ts";

type OfFactor = { id: string };

/** Whether a factor is asked of the jars and their lids as they are filled. */
function isOfJars(batch: Batch, { id }: OfFactor): boolean {
  return batch.stages.some(({ spec }) => hasRole(spec, "filling") && spec.asks.includes(id));
}

/** What a round of a factor touches: the jars of a brew, those of some lots, or all. */
export function touchedBy(batch: Batch, factor: OfFactor, round: number): Touched | undefined {
  if (isOfBrew(batch, factor)) return { brew: round };
  return isOfJars(batch, factor) ? { round } : undefined;
}

/** Whether something touches a jar of a lot; what is not limited touches all. */
export function touches(only: Touched | undefined, lot: LotOf["lot"], jar: Jar): boolean {
  if (!only) return true;
  const { denied, round, load = jar.load } = only;
  if (load !== jar.load || (only.lot ?? lot.id) !== lot.id) return false;
  if (round !== undefined && round !== lot.round) return false;
  if (denied && !isDenied(jar, denied)) return false;
  return holds(jar, only.brew) && (only.after === undefined || jar.filledAt > only.after);
}

function isDenied(jar: Jar, { factor, at }: { factor: string; at: number }): boolean {
  return jar.denied?.some((one) => one.factor === factor && one.at === at) === true;
}

/** The rounds of a factor that have jars, and the one that is under way. */
export function roundsOf(batch: Batch, factor: OfFactor): number[] {
  const lots = isOfJars(batch, factor) ? liveLots(batch) : [];
  const last = Math.max(0, ...lots.map(({ round }) => round));
  const now = isOfBrew(batch, factor) ? brewNow(batch) : last;
  return Array.from({ length: now + 1 }, (_, round) => round).filter((round) => {
    if (round === now) return true;
    const only = touchedBy(batch, factor, round);
    return liveLots(batch).some((lot) => lot.jars.some((jar) => touches(only, lot, jar)));
  });
}

/** What was last said of a factor in a round. */
export function answerOf(batch: Batch, factor: string, round: number) {
  return batch.confirmed.find((one) => one.factor === factor && one.round === round);
}

/** The first round of a factor that nobody has answered for. */
export function openRound(batch: Batch, factor: OfFactor): number | undefined {
  return roundsOf(batch, factor).find((round) => !answerOf(batch, factor.id, round));
}
