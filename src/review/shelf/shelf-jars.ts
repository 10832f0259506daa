/**
 * Where the jars of a lot belong: on the shelf, only those that sealed and came from a load that
 * was done as tested; everything else in the cold, by what was decided about it.
 */
import { batchDeviations } from "../../kitchen/deviations.ts";
import type { Jar } from "../../kitchen/jars/jar.ts";
import { type LotOf, loadJars } from "../../kitchen/jars/lots.ts";
import type { Batch, Load, State } from "../../kitchen/state.ts";
import type { ProcessTerms } from "../../recipe/recipe.ts";
import { type JarJudge, type Judged, jarJudge } from "../verdict.ts";
import type { Keep, RuleName } from "./shelf-life.ts";

/** A jar with where it belongs: thrown out, not put away yet, or kept in some way. */
export type PlacedJar = {
  jar: Jar;
  judged: Judged;
  keep: Keep | "discarded" | "waiting";
  sealed: boolean;
  /** The rule of KEEPING that says how long it keeps. */
  rule: RuleName;
  /** When the days begin to count, kitchen time. */
  since: number;
  /** Why it is not a jar for the shelf; empty for one that is. */
  why: string;
  /** The process it went through as tested; null where it went through none. */
  terms: ProcessTerms | null;
};

/**
 * Jars of one lot with the same fate. `numbers` is null where it is not known which jars they
 * are.
 */
export type JarGroup = Pick<PlacedJar, "sealed" | "rule" | "since" | "why" | "terms"> & {
  keep: Keep;
  jars: number;
  /** Of them, those that are known to have been opened, and those known to be gone unopened. */
  opened: number;
  away: number;
  /** Where they were put by themselves. */
  place: string | undefined;
  numbers: number[] | null;
  members: Jar[];
};

type ShelfJars = {
  groups: JarGroup[];
  /** Sealed jars of an unfinished batch: not put away yet. */
  waiting: number;
  /** Jars that somebody decided to throw out. */
  discarded: number;
};

/** What became of jars that did not seal: the last decision holds, for as many as it named. */
function failedFates(load: Load): string[] {
  const said = load.disposed.findLast((one) => {
    return one.code === "seal-failed" && one.what !== "reprocess";
  });
  if (!said) return [];
  const all = Number.POSITIVE_INFINITY;
  return repeated(said.what, said.count ?? all);
}

/** What became of jars that were taken off a short process, decision by decision. */
function asideFates(load: Load): string[] {
  return load.disposed.flatMap(({ code, what, count }) => {
    if (code === "seal-failed" || what === "reprocess") return [];
    return repeated(what, count ?? Number.POSITIVE_INFINITY);
  });
}

const OFF_SHORT = "taken off a short process";
const MOST_JARS = 10_000;

function repeated(what: string, times: number): string[] {
  return Array.from({ length: Math.min(times, MOST_JARS) }, () => what);
}

/** Whether its food, unprocessed or in an open jar, keeps only for days in the refrigerator. */
function isLowAcid({ recipe }: Batch): boolean {
  return recipe.class === "low-acid";
}

function jarJudgeOf(state: State, { batch, lot }: LotOf, now: number): JarJudge {
  return jarJudge(state, batch, batchDeviations(state, batch, now, lot));
}

/** The jars of a lot by where they belong, those that were opened since among them. */
export function placedJars(
  state: State,
  one: LotOf,
  now: number,
  judge = jarJudgeOf(state, one, now),
): PlacedJar[] {
  const { batch, lot } = one;
  if (batch.state === "abandoned" || lot.abandonedAt !== undefined) return [];
  const { keptAs } = batch.recipe;
  if (!batch.option) return keptAs === "seed" || keptAs === "dry" ? [] : cold(one, judge);
  return batch.loads.flatMap((id) => {
    const load = state.loads[id];
    return load ? inLoad(state, one, load, judge) : [];
  });
}

function cold({ batch, lot }: LotOf, judge: JarJudge): PlacedJar[] {
  const { keptAs, tested } = batch.recipe;
  const rule: RuleName =
    keptAs === "ferment" && tested ? "ferment" : isLowAcid(batch) ? "low-acid" : "pickle";
  const since = batch.endedAt ?? batch.begunAt;
  return lot.jars
    .filter(({ gone }) => gone === undefined)
    .map((jar) => {
      const judged = judge(lot, jar);
      const why = "no canner process";
      return { jar, judged, keep: "refrigerate", sealed: false, rule, since, why, terms: null };
    });
}

function inLoad(state: State, { batch, lot }: LotOf, load: Load, judge: JarJudge): PlacedJar[] {
  const jars = lot.jars.filter((jar) => jar.load === load.id);
  const since = load.unloadedAt ?? load.openedAt;
  const rule: RuleName = isLowAcid(batch) ? "low-acid" : "cold";
  // Decisions go over the jars of all lots in the load, in their order.
  const everyone = loadJars(state, load);
  const fateOf = (of: readonly Jar[], fates: readonly string[], jar: Jar) => {
    return fates[of.indexOf(jar)] ?? "undecided";
  };
  const isFailed = (jar: Jar) => jar.seal === "failed" && !jar.gone;
  const isAside = (jar: Jar) => jar.gone?.what === "aside";
  const failed = everyone.filter(isFailed);
  const aside = everyone.filter(isAside);
  const failedAs = failedFates(load);
  const asideAs = asideFates(load);
  return jars.flatMap((jar): PlacedJar[] => {
    const judged = judge(lot, jar);
    const terms = judged.verdict === "as-tested" ? load.terms : null;
    const placed = { jar, judged, rule, since, terms };
    if (isFailed(jar)) {
      const keep = keptFor(fateOf(failed, failedAs, jar));
      return [{ ...placed, ...ruled(keep, rule), sealed: false, why: "did not seal" }];
    }
    if (isAside(jar)) {
      const keep = keptFor(fateOf(aside, asideAs, jar));
      return [{ ...placed, ...ruled(keep, rule), sealed: false, why: OFF_SHORT, terms: null }];
    }
    if (jar.seal !== "sealed" || jar.gone) return [];
    if (batch.state !== "complete") {
      return [{ ...placed, keep: "waiting", sealed: true, why: "" }];
    }
    if (judged.verdict === "as-tested") {
      return [{ ...placed, keep: "shelf", rule: "shelf", sealed: true, why: "" }];
    }
    const why = `not as tested: ${judged.reasons[0] ?? ""}`;
    return [{ ...placed, keep: "refrigerate", sealed: true, why }];
  });
}

function keptFor(what: string): Keep | "discarded" {
  if (what === "discard") return "discarded";
  return what === "freeze" ? "freeze" : "refrigerate";
}

function ruled(keep: Keep | "discarded", rule: RuleName) {
  return { keep, rule: keep === "freeze" ? ("freezer" as const) : rule };
}

/** The jars of a lot in groups of one fate, before any were opened. */
export function shelfJars(state: State, one: LotOf, now: number): ShelfJars {
  const found: ShelfJars = { groups: [], waiting: 0, discarded: 0 };
  const groups = new Map<string, PlacedJar[]>();
  const { batch, lot } = one;
  for (const placed of placedJars(state, one, now)) {
    const { keep, rule, since, why, sealed } = placed;
    if (keep === "waiting") found.waiting += 1;
    else if (keep === "discarded") found.discarded += 1;
    else {
      const key = [keep, rule, since, why, sealed, placed.jar.place].join("\n");
      groups.set(key, [...(groups.get(key) ?? []), placed]);
    }
  }
  const guessed = lot.jars.some((jar) => jar.guessed && !jar.left);
  for (const placed of groups.values()) {
    const [first] = placed;
    if (!first || first.keep === "waiting" || first.keep === "discarded") continue;
    const { keep, rule, since, why, sealed, terms } = first;
    const numbers = placed.map(({ jar }) => jar.number);
    const known = batch.option && !guessed && !numbers.includes(0);
    const gone = placed.filter(({ jar }) => jar.left && !jar.guessed);
    const opened = gone.filter(({ jar }) => jar.left?.what === "opened").length;
    const away = gone.length - opened;
    const { place } = first.jar;
    const jars = placed.length;
    found.groups.push({
      ...{ keep, rule, since, why, sealed, jars, opened, away, place, terms },
      numbers: known ? numbers : null,
      members: placed.map(({ jar }) => jar),
    });
  }
  return found;
}
