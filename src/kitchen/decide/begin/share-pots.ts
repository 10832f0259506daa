/** Whether a lot can share the pots of a batch that is running. */
import type { JarSize, ProcessTerms } from "../../../recipe/recipe.ts";
import type { BatchOption } from "../../events.ts";
import { brewNow, brewStages, isUnpoured, isWeak } from "../../jars/brews.ts";
import { cannotShare } from "../../jars/canner-room.ts";
import { filled } from "../../jars/lots.ts";
import { activeOwners, isLoad } from "../../owners.ts";
import { isOver } from "../../stage-run.ts";
import { isOfCanner, rulesOf } from "../../stages/kinds.ts";
import type { Batch, StageRun, State } from "../../state.ts";
import { MINUTE_MS } from "../../time.ts";

/** A lot that is named this soon after a rest began rests with the others (our choice). */
const BESIDE_MS = 5 * MINUTE_MS;

type Shared = {
  batch: Batch;
  /** A pot that was boiled or poured: whether it holds enough for one lot more is not known. */
  made?: StageRun;
};

type Wanted = {
  recipe: string;
  option: BatchOption | null;
  jar: JarSize | null;
  terms: ProcessTerms | null;
};

/**
 * The batch whose pots a lot shares: of the same recipe, put up in the same way on the same terms,
 * none of whose rests have begun without it, and nothing of whose brew is in doubt.
 */
export function potsFor(state: State, wanted: Wanted, now: number): Shared | undefined {
  for (const batch of activeOwners(state)) {
    if (isLoad(batch) || batch.state !== "running" || batch.recipe.id !== wanted.recipe) continue;
    if (batch.jar !== wanted.jar || !sameWay(batch.option, wanted.option)) continue;
    if (batch.terms && wanted.terms && cannotShare(batch.terms, wanted.terms)) continue;
    if (isDoubted(batch) || batch.stages.some((run) => goesOnWithout(run, now))) continue;
    const pots = brewStages(batch);
    if (filled(batch) > 0 && pots.length === 0) continue;
    const boiled = batch.stages.find((run) => isOver(run) && run.kept !== undefined);
    const made = isUnpoured(batch) ? undefined : (boiled ?? (filled(batch) > 0 && pots[0]));
    return made ? { batch, made } : { batch };
  }
  return undefined;
}

/** What is in its pot was changed, or is not as strong as it should be: a lot gets its own. */
function isDoubted(batch: Batch): boolean {
  const brew = brewNow(batch);
  const changed = batch.changes.some((one) => (one.brew ?? brew) === brew);
  return changed || isWeak(batch, brew);
}

function sameWay(one: BatchOption | null, other: BatchOption | null): boolean {
  if (!one || !other) return one === other;
  const { method, pack, table, atPsi } = one;
  return (
    method === other.method && pack === other.pack && table === other.table && atPsi === other.atPsi
  );
}

/** A rest or a ferment that began too long ago for a lot to join it. */
function goesOnWithout({ spec, startedAt }: StageRun, now: number): boolean {
  if (isOfCanner(spec) || startedAt === undefined || !rulesOf(spec).window) return false;
  return now - startedAt > BESIDE_MS;
}
