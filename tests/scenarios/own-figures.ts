/**
 * Checks a verdict against the figures printed with it: what a reader of the log could object to in
 * an as-tested batch by arithmetic alone.
 */
import type { BatchLog, LoadLog, Review } from "../../src/review/batch-log.ts";
import { boilsAtF } from "../simulation/world/tables.ts";

/** Codes that no as-tested batch may have, whatever was answered. */
const NEVER: ReadonlySet<string> = new Set([
  ...["process-short", "cool-short", "critical-unrecorded", "headspace", "ingredient-changed"],
  ...["waited", "unheard", "contradicted"],
]);
/** Codes that need an answer or a restart before a batch can be as tested. */
const ANSWERED: ReadonlySet<string> = new Set([
  ...["boil-lost", "pressure-lost", "temperature-lost", "unwatched", "altitude-raised"],
]);

/** What was done with jars that are no longer among those judged. */
const GONE: ReadonlySet<string> = new Set(["reprocess", "refrigerate", "freeze", "discard"]);

function ofLoad(load: LoadLog): string[] {
  const { process, verdict } = load;
  if (verdict !== "as-tested") return [];
  if (!process) return ["as tested without a process"];
  const { achievedMinutes, testedMinutes } = process;
  if (process.state !== "complete") return [`as tested, its process ${process.state}`];
  if (achievedMinutes >= testedMinutes) return [];
  return [`as tested after ${achievedMinutes} of ${testedMinutes} minutes`];
}

/** How far under the local boiling point a thermometer may read, F: weather plus its own error. */
const READS_LOW_F = 3;

/** The lowest allowed reading of a batch's canner, by unit. */
function marksOf({ method, altitudeFt, process }: BatchLog): Record<string, number> {
  if (method === "pressure") return { psi: process?.pressurePsi ?? 0 };
  if (method === "low-temperature") return { F: 180 };
  return { F: boilsAtF(altitudeFt ?? 0) - READS_LOW_F };
}

/** Readings below their mark during the minutes counted, for a batch of one load. */
function lowOf(batch: BatchLog): string[] {
  const run = batch.stages.find(({ kind, load }) => kind === "process" && load !== null);
  const [own, more] = batch.loads;
  if (!run?.endedAt || !batch.process || own === undefined || more !== undefined) return [];
  const end = Date.parse(run.endedAt);
  const from = end - batch.process.testedMinutes * 60_000;
  const marks = marksOf(batch);
  return batch.readings.flatMap(({ at, value, unit, what }) => {
    const low = value < (marks[unit] ?? Number.NEGATIVE_INFINITY);
    // Whole seconds are printed, so a second at either end is ignored.
    const inside = Date.parse(at) > from + 1000 && Date.parse(at) < end - 1000;
    return low && inside ? [`as tested though the ${what} read ${value} ${unit}`] : [];
  });
}

function ofBatch(batch: BatchLog, good: ReadonlySet<string>): string[] {
  if (batch.verdict !== "as-tested") return [];
  const { process, jars } = batch;
  const held = batch.deviations.filter(({ code, disposition }) => {
    const gone = GONE.has(disposition);
    return (NEVER.has(code) && !gone) || (ANSWERED.has(code) && disposition === "undecided");
  });
  const short = process && process.achievedMinutes < process.testedMinutes;
  const timed = batch.stages.filter(({ kind }) => kind === "process" || kind === "vent");
  const brief = timed.filter(({ load, minutes, planned }) => {
    return load !== null && good.has(load) && minutes + 0.01 < planned.minMinutes;
  });
  return [
    ...held.map(({ code, detail }) => `as tested with ${code}: ${detail}`),
    ...(short ? [`as tested after ${process.achievedMinutes} minutes`] : []),
    ...(process ? [] : ["as tested without a process"]),
    ...(jars && jars.processed > 0 ? [] : ["as tested without a jar"]),
    ...lowOf(batch),
    ...brief.map(({ id, minutes }) => `as tested with ${id} of ${minutes} minutes`),
    ...(batch.state === "complete" ? [] : [`as tested while ${batch.state}`]),
  ].map((fault) => `${batch.id}: ${fault}`);
}

/** Every verdict that its own figures contradict. */
export function contradictions(review: Review): string[] {
  const tested = review.loads.filter(({ verdict }) => verdict === "as-tested");
  const good = new Set(tested.map(({ id }) => id));
  return [
    ...review.loads.flatMap(ofLoad),
    ...review.batches.flatMap((batch) => ofBatch(batch, good)),
  ];
}
