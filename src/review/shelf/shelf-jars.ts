/**
 * Where the jars of a batch belong: on the shelf, only those that sealed and came from a load that
 * was done as tested; everything else in the cold, by what was decided about it.
 */
import { batchDeviations } from "../../kitchen/deviations.ts";
import { loadsOf } from "../../kitchen/jars.ts";
import type { Batch, Load, LoadPart, State } from "../../kitchen/state.ts";
import type { ProcessTerms } from "../../recipe/recipe.ts";
import { againstBatch, type Judged, judgeLoad, judgeSealed } from "../verdict.ts";
import type { Keep, RuleName } from "./keeping.ts";

/**
 * Jars of one batch with the same fate. `numbers` is null where it is not known which jars they
 * are.
 */
export type JarGroup = {
  keep: Keep;
  jars: number;
  numbers: number[] | null;
  sealed: boolean;
  /** The rule of KEEPING that says how long they keep. */
  rule: RuleName;
  /** When the days begin to count, kitchen time. */
  since: number;
  /** Why it is not a jar for the shelf; empty for one that is. */
  why: string;
  /** The process it went through as tested; null where it went through none. */
  terms: ProcessTerms | null;
};

type ShelfJars = {
  groups: JarGroup[];
  /** Sealed jars of an unfinished batch: not put away yet. */
  waiting: number;
  /** Jars that somebody decided to throw out. */
  discarded: number;
};

/** The numbers of the jars that sealed; null where a jar that did not has no number. */
function sealedNumbers(part: LoadPart): number[] | null {
  const failed = new Set([...part.failedJars, ...part.spoiledJars]);
  if (failed.size !== part.failed + part.spoiled || part.broken > 0 || part.aside > 0) return null;
  if (part.again > part.failedAgain) return null;
  const all = Array.from({ length: part.jars }, (_, index) => part.first + index);
  const left = all.filter((number) => !failed.has(number));
  return left.length === part.sealed ? left : null;
}

type Fate = { what: string; jars: number };

/** What became of jars that did not seal: the last decision holds, for as many as it named. */
function failedFates(load: Load, failed: number): Fate[] {
  const said = load.disposed.findLast((one) => {
    return one.code === "seal-failed" && one.what !== "reprocess";
  });
  const jars = Math.min(failed, said?.count ?? failed);
  const fates = [
    { what: said?.what ?? "undecided", jars },
    { what: "undecided", jars: failed - jars },
  ];
  return fates.filter((fate) => fate.jars > 0);
}

/** What became of a part's jars that were taken off a short process, decision by decision. */
function asideFates(load: Load, wanted: LoadPart): Fate[] {
  const left = new Map(load.parts.map((part) => [part, part.aside]));
  const fates: Fate[] = [];
  for (const { code, what, count } of load.disposed) {
    if (code === "seal-failed" || what === "reprocess") continue;
    let more = count ?? Number.POSITIVE_INFINITY;
    for (const part of load.parts) {
      const jars = Math.min(left.get(part) ?? 0, more);
      left.set(part, (left.get(part) ?? 0) - jars);
      more -= jars;
      if (part === wanted && jars > 0) fates.push({ what, jars });
    }
  }
  const rest = left.get(wanted) ?? 0;
  return rest > 0 ? [...fates, { what: "undecided", jars: rest }] : fates;
}

/** Jars by their fates: thrown out, frozen, or kept cold. Numbers are known where all share one. */
function placeCold(
  found: ShelfJars,
  fates: readonly Fate[],
  base: Omit<JarGroup, "keep" | "jars">,
): void {
  const numbers = fates.length === 1 ? base.numbers : null;
  for (const { what, jars } of fates) {
    if (what === "discard") found.discarded += jars;
    else if (what === "freeze") {
      found.groups.push({ ...base, numbers, keep: "freeze", rule: "freezer", jars });
    } else found.groups.push({ ...base, numbers, keep: "refrigerate", jars });
  }
}

/** Whether its food, unprocessed or in an open jar, keeps only for days in the refrigerator. */
function isLowAcid({ recipe }: Batch): boolean {
  return recipe.class === "low-acid";
}

function cold(batch: Batch): ShelfJars {
  const { keptAs, tested } = batch.recipe;
  const ferment = keptAs === "ferment" && tested;
  const group: JarGroup = {
    keep: "refrigerate",
    jars: batch.ready,
    numbers: null,
    sealed: false,
    rule: ferment ? "ferment" : isLowAcid(batch) ? "low-acid" : "pickle",
    since: batch.endedAt ?? batch.begunAt,
    why: "no canner process",
    terms: null,
  };
  return { groups: batch.ready > 0 ? [group] : [], waiting: 0, discarded: 0 };
}

/** The jars of a batch by where they belong, before any were opened. */
export function shelfJars(state: State, batch: Batch, now: number): ShelfJars {
  const found: ShelfJars = { groups: [], waiting: 0, discarded: 0 };
  if (batch.state === "abandoned") return found;
  const { keptAs } = batch.recipe;
  if (!batch.option) return keptAs === "seed" || keptAs === "dry" ? found : cold(batch);
  const faults = againstBatch(batchDeviations(state, batch, now));
  faults.push(...(judgeSealed(state, [batch.id])?.reasons ?? []));
  for (const load of loadsOf(state, batch)) {
    for (const part of load.parts) {
      if (part.batch === batch.id)
        placePart(found, batch, part, { load, faults, judged: judgeLoad(state, load) });
    }
  }
  return found;
}

function placePart(
  found: ShelfJars,
  batch: Batch,
  part: LoadPart,
  { load, faults, judged }: { load: Load; faults: string[]; judged: Judged },
): void {
  const since = load.unloadedAt ?? load.openedAt;
  const { sealed } = part;
  const numbers = sealedNumbers(part);
  const rule = isLowAcid(batch) ? "low-acid" : "cold";
  const asTested = judged.verdict === "as-tested" && faults.length === 0;
  const terms = asTested ? load.terms : null;
  const why = `not as tested: ${faults[0] ?? judged.reasons[0] ?? ""}`;
  if (sealed > 0 && batch.state !== "complete") found.waiting += sealed;
  else if (sealed > 0 && asTested) {
    const keep = { keep: "shelf", rule: "shelf", why: "", terms } as const;
    found.groups.push({ ...keep, jars: sealed, numbers, sealed: true, since });
  } else if (sealed > 0) {
    const fates = [{ what: "undecided", jars: sealed }];
    placeCold(found, fates, { numbers, sealed: true, since, why, rule, terms });
  }
  const failed = part.failed - part.failedAgain;
  const known = part.failedJars.length === failed ? [...part.failedJars] : null;
  const loose = { sealed: false, since, rule, terms } as const;
  const unsealed = { ...loose, numbers: known, why: "did not seal" };
  placeCold(found, failedFates(load, failed), unsealed);
  const aside = { ...loose, numbers: null, why: "taken off a short process", terms: null };
  placeCold(found, asideFates(load, part), aside);
}
