/** Whether the cook's hands are in the jars, so that what can wait is not asked. */
import { filled, ready } from "../jars/lots.ts";
import { activeOwners, isLoad, type Owner, runOfRole, runOfStep } from "../owners.ts";
import type { State } from "../state.ts";
import { MINUTE_MS } from "../time.ts";
import type { Question } from "./questions.ts";

/** Filling, loading or lifting out takes no longer; after that, nothing waits for the hands. */
const HANDS_MS = 30 * MINUTE_MS;

/** Kitchen time by which the hands are free again; undefined where they are free. */
export function handsFreeAt(state: State, now: number): number | undefined {
  const ends = activeOwners(state).flatMap((owner) => {
    const since = inJarsSince(owner);
    return since === undefined ? [] : since + HANDS_MS;
  });
  const last = Math.max(...ends, Number.NEGATIVE_INFINITY);
  return last > now ? last : undefined;
}

/** Since when jars are filled, stand filled before the canner, or are lifted out of it. */
function inJarsSince(owner: Owner): number | undefined {
  if (isLoad(owner)) {
    const lift = runOfStep(owner, "unload");
    return lift?.state === "running" ? lift.startedAt : undefined;
  }
  const fill = runOfRole(owner, "filling");
  if (fill?.state === "running" && ready(owner) === 0 && filled(owner) > 0) return undefined;
  const inHand = fill?.state === "running" || (owner.option !== null && ready(owner) > 0);
  return inHand ? (fill?.endedAt ?? fill?.startedAt) : undefined;
}

/** Kinds of questions that nothing in the jars hangs on. */
const WAITS: ReadonlySet<Question["kind"]> = new Set<Question["kind"]>([
  "gauge",
  "gauge-tested",
  "gauge-off",
  "seals",
  "sealed-line",
  "set-up",
]);

/**
 * Whether a question can wait until the hands are free. What is asked about the jars in hand is put
 * right before they go in, or never.
 */
export function waitsForHands(state: State, { kind, about }: Question): boolean {
  if (kind !== "factor") return WAITS.has(kind);
  const batch = about === null ? undefined : state.batches[about];
  return batch !== undefined && ready(batch) === 0;
}
