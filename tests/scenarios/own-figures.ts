/**
 * A verdict against the figures it is printed with: what a reader of the log could hold against an
 * as-tested batch by arithmetic alone.
 */
import type { BatchLog, LoadLog, Review } from "../../src/review/batch-log.ts";

/** Codes of which no as-tested batch may have one, whatever was answered. */
const NEVER: ReadonlySet<string> = new Set([
  ...["process-short", "cool-short", "critical-unrecorded", "headspace", "ingredient-changed"],
  ...["waited", "unheard", "contradicted"],
]);
/** Codes that want an answer or a restart before a batch can be as tested. */
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
    ...brief.map(({ id, minutes }) => `as tested with ${id} of ${minutes} minutes`),
    ...(batch.state === "complete" ? [] : [`as tested while ${batch.state}`]),
  ].map((fault) => `${batch.id}: ${fault}`);
}

/** Every verdict that its own figures contradict; empty where none does. */
export function contradictions(review: Review): string[] {
  const tested = review.loads.filter(({ verdict }) => verdict === "as-tested");
  const good = new Set(tested.map(({ id }) => id));
  return [
    ...review.loads.flatMap(ofLoad),
    ...review.batches.flatMap((batch) => ofBatch(batch, good)),
  ];
}
