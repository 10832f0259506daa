/**
 * Which jars of a batch stand where: on the shelf only what sealed and came out of a load that was
 * done as tested; everything else cold, by what was decided about it.
 */
import { batchDeviations } from "../kitchen/deviations.ts";
import { loadsOf } from "../kitchen/jars.ts";
import type { Batch, Load, LoadPart, State } from "../kitchen/state.ts";
import type { Keep } from "./keeping.ts";
import { againstBatch, judgeLoad } from "./verdict.ts";

/** Jars of one batch and one fate. `numbers` is null where it is not known which jars they are. */
export type JarGroup = {
  keep: Keep;
  jars: number;
  numbers: number[] | null;
  sealed: boolean;
  /** Which rule of KEEPING says how long. */
  rule: "shelf" | "cold" | "freezer" | "ferment" | "pickle";
  /** From when the days count, kitchen time. */
  since: number;
  /** Why it is no shelf jar; empty for one that is. */
  why: string;
};

export type ShelfJars = {
  groups: JarGroup[];
  /** Sealed jars of a batch that is not finished: not put anywhere yet. */
  waiting: number;
  /** Sealed or failed jars that were decided to be thrown out. */
  discarded: number;
};

/** Sealed jars of a part that were not emptied again. */
function standing(part: LoadPart): number {
  const again = Math.max(0, part.again - part.failedAgain);
  return Math.max(0, Math.min(part.sealed, part.jars - part.failed - part.broken - again));
}

/** The numbers of the jars that sealed; null where a failed or broken one has no number. */
function sealedNumbers(part: LoadPart): number[] | null {
  const failed = new Set(part.failedJars);
  if (failed.size !== part.failed || part.broken > 0 || part.again > part.failedAgain) return null;
  const all = Array.from({ length: part.jars }, (_, index) => part.first + index);
  const left = all.filter((number) => !failed.has(number));
  return left.length === part.sealed ? left : null;
}

type Decided = { what: string; count: number | null };

/** What was last decided about jars of a load for one cause, or for any cause but a bad seal. */
function decided(load: Load, batch: Batch, seal: boolean): Decided | undefined {
  const words = [...load.disposed, ...batch.disposed].filter((one) => {
    return (one.code === "seal-failed") === seal && one.what !== "restarted";
  });
  return words.sort((a, b) => a.at - b.at).at(-1);
}

/** Splits jars by a disposition: so many thrown out, frozen, or kept cold. */
function coldGroups(
  jars: number,
  given: Decided | undefined,
  base: Pick<JarGroup, "numbers" | "sealed" | "since" | "why">,
): { groups: JarGroup[]; discarded: number } {
  const meant = Math.min(jars, given?.count ?? jars);
  const cold = (count: number): JarGroup => {
    return { ...base, keep: "refrigerate", rule: "cold", jars: count };
  };
  const rest = jars - meant;
  const others = rest > 0 ? [{ ...cold(rest), numbers: null }] : [];
  const numbers = rest > 0 ? null : base.numbers;
  if (given?.what === "discard") return { groups: others, discarded: meant };
  if (given?.what === "freeze") {
    const frozen: JarGroup = { ...cold(meant), numbers, keep: "freeze", rule: "freezer" };
    return { groups: [frozen, ...others], discarded: 0 };
  }
  return { groups: [{ ...cold(meant), numbers }, ...others], discarded: 0 };
}

function cold(batch: Batch): ShelfJars {
  const { keptAs, tested } = batch.recipe;
  const ferment = keptAs === "ferment" && tested;
  const group: JarGroup = {
    keep: "refrigerate",
    jars: batch.ready,
    numbers: null,
    sealed: false,
    rule: ferment ? "ferment" : "pickle",
    since: batch.endedAt ?? batch.begunAt,
    why: "no canner process",
  };
  return { groups: batch.ready > 0 ? [group] : [], waiting: 0, discarded: 0 };
}

/** The jars of a batch by where they belong, before any was opened. */
export function shelfJars(state: State, batch: Batch, now: number): ShelfJars {
  const found: ShelfJars = { groups: [], waiting: 0, discarded: 0 };
  if (batch.state === "abandoned") return found;
  const { keptAs } = batch.recipe;
  if (!batch.option) return keptAs === "seed" || keptAs === "dry" ? found : cold(batch);
  const faults = againstBatch(batchDeviations(state, batch, now));
  for (const load of loadsOf(state, batch)) {
    for (const part of load.parts) {
      if (part.batch === batch.id) placePart(found, batch, load, part, faults);
    }
  }
  return found;
}

function placePart(
  found: ShelfJars,
  batch: Batch,
  load: Load,
  part: LoadPart,
  faults: string[],
): void {
  const since = load.unloadedAt ?? load.openedAt;
  const sealed = standing(part);
  const judged = judgeLoad(load);
  const numbers = sealedNumbers(part);
  if (sealed > 0 && batch.state !== "complete") found.waiting += sealed;
  else if (sealed > 0 && judged.verdict === "as-tested" && faults.length === 0) {
    const keep = { keep: "shelf", rule: "shelf", why: "" } as const;
    found.groups.push({ ...keep, jars: sealed, numbers, sealed: true, since });
  } else if (sealed > 0) {
    const why = `not as tested: ${faults[0] ?? judged.reasons[0] ?? ""}`;
    const base = { numbers, sealed: true, since, why };
    add(found, coldGroups(sealed, decided(load, batch, false), base));
  }
  const failed = part.failed - part.failedAgain;
  if (failed > 0) {
    const known = part.failedJars.length === failed ? [...part.failedJars] : null;
    const base = { numbers: known, sealed: false, since, why: "did not seal" };
    add(found, coldGroups(failed, decided(load, batch, true), base));
  }
}

function add(found: ShelfJars, more: { groups: JarGroup[]; discarded: number }): void {
  found.groups.push(...more.groups);
  found.discarded += more.discarded;
}
