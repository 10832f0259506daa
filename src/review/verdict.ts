/**
 * What the record says about a batch: whether its process was done as tested, and why not. It
 * speaks only about the record, never about the food.
 */
import { batchDeviations, ownDeviations } from "../kitchen/deviations.ts";
import { loadsOf } from "../kitchen/jars/canner-room.ts";
import type { BatchLot, Jar } from "../kitchen/jars/jar.ts";
import { isEmptied, type LotOf, tally } from "../kitchen/jars/lots.ts";
import { dialDoubt } from "../kitchen/loads/gauge-target.ts";
import { loadDeviations } from "../kitchen/loads/load-deviations.ts";
import { lowReadings, lowReadingWords } from "../kitchen/loads/low-readings.ts";
import { runOfRole } from "../kitchen/owners.ts";
import { againstMemory } from "../kitchen/questions/guide.ts";
import { openDoubts } from "../kitchen/questions/heard-doubts.ts";
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
export function judgeSealed(state: State, ids: readonly string[]): Judged | undefined {
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

/** Codes of a batch's own record that mean its process cannot be called as tested. */
const AGAINST: ReadonlySet<string> = new Set([
  "critical-unrecorded",
  "headspace",
  "ingredient-changed",
  "waited",
  "contradicted",
]);

/** What in a batch's own record, apart from its loads, counts against calling it as tested. */
export function againstBatch(deviations: readonly Deviation[]): string[] {
  return deviations.flatMap((one) => {
    // An altitude that was doubted and confirmed is only a doubt; one nobody vouches for is not an
    // altitude.
    const nowhere = one.code === "altitude-doubt" && one.disposition === "undecided";
    return AGAINST.has(one.code) || nowhere ? [`${one.code}: ${one.detail}`] : [];
  });
}

/** Stages that were left out although the recipe was tested with them. */
function leftOut({ stages }: Batch): string[] {
  return stages
    .filter(({ state, spec }) => state === "skipped" && rulesOf(spec).date === null)
    .map(({ spec }) => `skipped: ${spec.title} left out`);
}

/**
 * The verdict on a batch or on one lot of it: its worst load's, and its critical factors'.
 * `deviations` are those of the batch or of the lot.
 */
export function judgeBatch(
  state: State,
  batch: Batch,
  deviations: Deviation[],
  lot?: BatchLot,
): Judged {
  const given = batch.state === "abandoned" || lot?.abandonedAt !== undefined;
  if (given) return { verdict: "unfinished", reasons: ["abandoned"] };
  if (!batch.option) return judgeWithout(batch);
  const loads = loadsOf(state, batch).filter((load) =>
    load.parts.some((part) => {
      if (part.batch !== batch.id || (lot && part.lot !== lot.id)) return false;
      const { jars, again } = tally(state, load, part);
      return jars > again;
    }),
  );
  const judged = loads.map((load) => judgeLoad(state, load));
  const reasons = judged.flatMap((one) => (one.verdict === "not-as-tested" ? one.reasons : []));
  reasons.push(...againstBatch(deviations), ...leftOut(batch));
  if (reasons.length > 0) return { verdict: "not-as-tested", reasons: [...new Set(reasons)] };
  if (batch.state !== "complete") {
    return { verdict: "unfinished", reasons: ["the batch is still running"] };
  }
  if (judged.length === 0) return { verdict: "not-as-tested", reasons: ["no jars were processed"] };
  const unheard = judged.find(({ verdict }) => verdict === "unfinished");
  if (unheard) return unheard;
  const sealed = judgeSealed(state, [batch.id, ...batch.loads]);
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

/**
 * The verdict on one jar: the worst of its pots, its filling, its load and itself. Of a jar that
 * went through no canner, that of its lot.
 */
export function judgeJar(state: State, { batch, lot }: LotOf, jar: Jar, now: number): Judged {
  const load = jar.load === undefined ? undefined : state.loads[jar.load];
  if (!batch.option || !load) {
    return judgeBatch(state, batch, batchDeviations(state, batch, now, lot), lot);
  }
  const parts = load.parts.filter((part) => part.lot === lot.id);
  const deviations = [
    ...ownDeviations(state, batch, now),
    ...loadDeviations(state, load, parts, now),
  ];
  const judged = judgeLoad(state, load);
  const reasons = [...againstBatch(deviations), ...leftOut(batch)];
  if (judged.verdict === "not-as-tested") reasons.push(...judged.reasons);
  if (reasons.length > 0) return { verdict: "not-as-tested", reasons: [...new Set(reasons)] };
  if (batch.state !== "complete") {
    return { verdict: "unfinished", reasons: ["the batch is still running"] };
  }
  if (judged.verdict === "unfinished") return judged;
  return judgeSealed(state, [batch.id, load.id]) ?? { verdict: "as-tested", reasons: [] };
}

/** The verdict of a batch with its deviations worked out afresh. */
export function verdictOf(state: State, batch: Batch, now: number): Judged {
  return judgeBatch(state, batch, batchDeviations(state, batch, now));
}
