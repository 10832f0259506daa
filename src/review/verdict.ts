/**
 * What the record says about a batch: whether its process was done as tested, and why not. It
 * speaks only about the record, never about the food.
 */
import { batchDeviations } from "../kitchen/deviations.ts";
import { brewStages, holds } from "../kitchen/jars/brews.ts";
import { loadsOf } from "../kitchen/jars/canner-room.ts";
import type { BatchLot, Jar } from "../kitchen/jars/jar.ts";
import { isEmptied, liveLots } from "../kitchen/jars/lots.ts";
import { dialDoubt } from "../kitchen/loads/gauge-target.ts";
import { lowReadings, lowReadingWords } from "../kitchen/loads/low-readings.ts";
import { runOfRole } from "../kitchen/owners.ts";
import { againstMemory } from "../kitchen/questions/guide.ts";
import { openDoubts } from "../kitchen/questions/heard-doubts.ts";
import { touches } from "../kitchen/questions/rounds.ts";
import { sealedName, sealedOver } from "../kitchen/questions/sealed-lines.ts";
import { rulesOf } from "../kitchen/stages/kinds.ts";
import type { Batch, Deviation, Load, State } from "../kitchen/state.ts";
import { achievedMinutes, completesAt, unanswered } from "../kitchen/unbroken-time.ts";
import type { ProcessTerms } from "../recipe/recipe.ts";
import { countWords, numberWords } from "../reckon/number-words.ts";
import { COOL_HOURS, VENT_MINUTES } from "../reckon/trade-numbers.ts";

type Verdict = "as-tested" | "not-as-tested" | "unfinished" | "not-shelf-stable" | "no-process";

export type Judged = { verdict: Verdict; reasons: string[] };

/** What a person vouches for at the end of a process: without a yes it is not as tested. */
const ANSWERED_FOR: Partial<Record<ProcessTerms["method"], { no: string; silent: string }>> = {
  "boiling-water": {
    no: "not a full boil throughout, or the lids were uncovered at the end",
    silent: "nobody answered for a full boil throughout with the lids covered",
  },
  steam: {
    no: "not a full column of steam throughout",
    silent: "nobody answered for a full column of steam throughout",
  },
  pressure: {
    no: "not at the pressure throughout, not vented, or not left to fall by itself",
    silent: "nobody answered for the pressure throughout, the vent and the coming down",
  },
};

/** The verdict on one load's process, from its own record. */
export function judgeLoad(state: State, load: Load): Judged {
  if (load.state === "abandoned") return { verdict: "not-as-tested", reasons: ["abandoned"] };
  const process = runOfRole(load, "treatment");
  const kept = process?.kept;
  if (!process || !kept || load.unloadedAt === undefined) {
    return { verdict: "unfinished", reasons: ["the jars are not out of the canner yet"] };
  }
  const reasons: string[] = [];
  if (process.endedShort || process.state === "skipped" || completesAt(kept) === undefined) {
    const got = Math.floor(achievedMinutes(kept, load.unloadedAt) * 10) / 10;
    reasons.push(`process-short: ${got} of ${kept.needMinutes} minutes unbroken and watched`);
  }
  const [low] = lowReadings(load);
  if (low) reasons.push(`process-short: ${lowReadingWords(load, low)}`);
  for (const run of load.stages) {
    if (run.kept && unanswered(run.kept).length > 0) {
      reasons.push(`unwatched: nobody said whether the ${run.spec.title} held`);
    }
  }
  const vent = runOfRole(load, "venting");
  if (vent && vent.state !== "complete") reasons.push("process-short: the canner was not vented");
  if (vent?.endedShort)
    reasons.push(`process-short: the vent was shorter than ${countWords(VENT_MINUTES, "minute")}`);
  const dial = dialDoubt(load);
  if (dial) reasons.push(`gauge-untested: ${dial}`);
  const memory = againstMemory(state, load.terms);
  if (memory) reasons.push(memory);
  const asked = load.endAsked && load.terms ? ANSWERED_FOR[load.terms.method] : undefined;
  if (asked && load.endAnswer?.yes !== true) {
    reasons.push(load.endAnswer ? asked.no : asked.silent);
  }
  const cool = runOfRole(load, "cooling");
  if (cool?.endedShort && !isEmptied(state, load))
    reasons.push(
      `cool-short: less than ${numberWords(COOL_HOURS.min)} hours before the seal check`,
    );
  if (reasons.length > 0) return { verdict: "not-as-tested", reasons };
  return judgeHeard(load) ?? judgeSealed(state, [load.id]) ?? { verdict: "as-tested", reasons };
}

/**
 * A doubt that was never explained leaves a load unsettled; one that was confirmed counts against
 * it.
 */
function judgeHeard(load: Load): Judged | undefined {
  const denied = load.heard.filter(({ held }) => held === false);
  const open = openDoubts(load);
  const reasons = [...denied, ...open].map(({ text }) => `unheard: "${text}"`);
  if (reasons.length === 0) return undefined;
  return { verdict: denied.length > 0 ? "not-as-tested" : "unfinished", reasons };
}

/** What a damaged journal leaves unsettled about some batches and loads. */
function judgeSealed(state: State, ids: readonly string[]): Judged | undefined {
  const lines = sealedOver(state, ids);
  if (lines.length === 0) return undefined;
  const denied = lines.some((line) => line.held === false);
  const reasons = lines.map((line) => {
    const said =
      line.held === false ? "something is missing there" : "nobody has said what it held";
    return `the log is damaged at ${sealedName(line)}: ${said}`;
  });
  return { verdict: denied ? "not-as-tested" : "unfinished", reasons };
}

/** Codes that mean its process cannot be called as tested. */
const AGAINST: ReadonlySet<string> = new Set([
  "critical-unrecorded",
  "headspace",
  "ingredient-changed",
  "waited",
  "contradicted",
]);

/** What, apart from the processes of its loads, counts against calling it as tested. */
export function againstBatch(deviations: readonly Deviation[]): string[] {
  return deviations.flatMap((one) => {
    // Jars put in with others, whose own tested time was not met.
    if (one.code === "process-short" && one.only?.lot) return [`${one.code}: ${one.detail}`];
    // An altitude that was doubted and confirmed is only a doubt; one nobody vouches for is not an
    // altitude.
    const nowhere = one.code === "altitude-doubt" && one.disposition === "undecided";
    return AGAINST.has(one.code) || nowhere ? [`${one.code}: ${one.detail}`] : [];
  });
}

/** Stages that were left out although the recipe was tested with them. */
function leftOut(batch: Batch, jars: readonly JarOf[]): string[] {
  const pots = brewStages(batch);
  const touched = ({ jar }: JarOf, brew: number) => batch.poured.length === 0 || holds(jar, brew);
  const brews = [...batch.poured, pots].flatMap((runs, brew) => {
    return jars.some((one) => touched(one, brew)) ? runs : [];
  });
  const others = batch.stages.filter((run) => !pots.includes(run));
  return [...(jars.length > 0 ? brews : pots), ...others]
    .filter(({ state, spec }) => state === "skipped" && rulesOf(spec).date === null)
    .map(({ spec }) => `skipped: ${spec.title} left out`);
}

type JarOf = { lot: BatchLot; jar: Jar };

/**
 * The verdict on a batch or on one lot of it: that of its worst jar, with counts where not all are
 * alike. `deviations` are those of the batch or of the lot.
 */
export function judgeBatch(
  state: State,
  batch: Batch,
  deviations: readonly Deviation[],
  lot?: BatchLot,
): Judged {
  const given = batch.state === "abandoned" || lot?.abandonedAt !== undefined;
  if (given) return { verdict: "unfinished", reasons: ["abandoned"] };
  if (!batch.option) return judgeWithout(batch);
  const lots = lot ? [lot] : liveLots(batch);
  const jars = lots.flatMap((one) => one.jars.map((jar) => ({ lot: one, jar })));
  const worst = judgeJars(state, batch, jars, deviations);
  if (worst.verdict === "as-tested" || batch.state !== "complete") return worst;
  const kept = jars.filter(({ jar }) => jar.load !== undefined && jar.gone === undefined);
  const judge = jarJudge(state, batch, deviations);
  const good = kept.filter((one) => judge(one.lot, one.jar).verdict === "as-tested").length;
  if (good === 0 || good === kept.length) return worst;
  const [first = "", ...others] = worst.reasons;
  return {
    verdict: worst.verdict,
    reasons: [`${good} as tested, ${kept.length - good} not: ${first}`, ...others],
  };
}

/** The verdict on jars of one batch together: that of the worst of them. */
function judgeJars(
  state: State,
  batch: Batch,
  jars: readonly JarOf[],
  deviations: readonly Deviation[],
): Judged {
  const loaded = jars.filter(({ jar }) => jar.load !== undefined && jar.gone?.what !== "again");
  const whole = loaded.filter(({ jar }) => jar.gone?.what !== "broken");
  const its = [whole, loaded, jars].find((list) => list.length > 0) ?? [];
  const loads = loadsOf(state, batch).filter((load) => {
    return load.parts.some((part) => {
      return loaded.some(({ lot, jar }) => lot.id === part.lot && jar.load === load.id);
    });
  });
  const judged = loads.map((load) => judgeLoad(state, load));
  const reasons = judged.flatMap((one) => (one.verdict === "not-as-tested" ? one.reasons : []));
  const touching = deviations.filter(({ only }) => {
    return !only || its.some(({ lot, jar }) => touches(only, lot, jar));
  });
  reasons.push(...againstBatch(touching), ...leftOut(batch, its));
  if (reasons.length > 0) return { verdict: "not-as-tested", reasons: [...new Set(reasons)] };
  if (batch.state !== "complete") {
    return { verdict: "unfinished", reasons: ["the batch is still running"] };
  }
  if (judged.length === 0) return { verdict: "not-as-tested", reasons: ["no jars were processed"] };
  const unheard = judged.find(({ verdict }) => verdict === "unfinished");
  if (unheard) return unheard;
  const sealed = judgeSealed(state, [batch.id, ...loads.map(({ id }) => id)]);
  if (sealed) return sealed;
  const terms = loads[0]?.terms;
  const source = terms ? [`the whole ${terms.minutes} minutes, by ${terms.source}`] : [];
  return { verdict: "as-tested", reasons: source };
}

function judgeWithout(batch: Batch): Judged {
  const { keptAs, heldBack } = batch.recipe;
  if (keptAs === "seed" || keptAs === "dry") {
    return { verdict: "no-process", reasons: ["seed: there is nothing to process"] };
  }
  const why = batch.recipe.tested
    ? "no canner process: keep it in the refrigerator"
    : `${heldBack ?? "no tested source"}: keep it in the refrigerator, never on the shelf`;
  return { verdict: "not-shelf-stable", reasons: [why] };
}

export type JarJudge = (lot: BatchLot, jar: Jar) => Judged;

/**
 * Judges the jars of a batch one by one: each is as good as the worst of its brew, its filling, its
 * load and itself. A jar that went through no canner is judged as its lot is.
 */
export function jarJudge(state: State, batch: Batch, deviations: readonly Deviation[]): JarJudge {
  const known = new Map<string, Judged>();
  return (lot, jar) => {
    const { load, brew, brewFrom, filledAt, denied } = jar;
    const canned = batch.option !== null && load !== undefined;
    const its = canned ? [load, brew, brewFrom, filledAt, denied] : [];
    const key = JSON.stringify([lot.id, ...its]);
    const judged =
      known.get(key) ??
      (canned
        ? judgeJars(state, batch, [{ lot, jar }], deviations)
        : judgeBatch(state, batch, deviations, lot));
    known.set(key, judged);
    return judged;
  };
}

/** The verdict of a batch with its deviations worked out afresh. */
export function verdictOf(state: State, batch: Batch, now: number): Judged {
  return judgeBatch(state, batch, batchDeviations(state, batch, now));
}
