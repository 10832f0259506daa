/** What becomes of jars that something went wrong with. */
import { REPROCESS_WITHIN_HOURS } from "../../reckon/trade-numbers.ts";
import type { Disposition } from "../facts/fields.ts";
import { liveParts, sum, tally } from "../jars/lots.ts";
import { mayReprocess } from "../loads/hot-pack.ts";
import { lowReadings } from "../loads/low-readings.ts";
import { runOfRole } from "../owners.ts";
import { isOver } from "../stage-run.ts";
import type { Load, LoadPart, State } from "../state.ts";
import { HOUR_MS } from "../time.ts";
import { OFF_PROCESS_LIMIT_MS, offMs } from "../unbroken-time.ts";
import type { Question } from "./question.ts";
import { leftToCheck } from "./seal-questions.ts";

/** How long after coming out jars may be reprocessed. */
export const REPROCESS_WITHIN_MS = REPROCESS_WITHIN_HOURS * HOUR_MS;

/**
 * What may become of jars now. Off the process for over two hours, they are not processed again;
 * after a day, a failed seal or a short process leaves only throwing them out.
 */
export function dispositionsFor(load: Load, code: string, now: number): Disposition[] {
  if (load.unloadedAt === undefined) return ["refrigerate", "freeze", "discard"];
  const inTime = now <= load.unloadedAt + REPROCESS_WITHIN_MS;
  if (inTime) return ["reprocess", "refrigerate", "freeze", "discard"];
  return code === "seal-failed" ? ["discard"] : ["refrigerate", "freeze", "discard"];
}

/** Jars of a part that sealed, or that nobody has counted yet. */
export function undecidedOf(state: State, load: Load, part: LoadPart): number {
  const { unaccounted, sealed } = tally(state, load, part);
  return unaccounted + sealed;
}

/** Jars of a part that did not seal and were not emptied to be processed again. */
export function failedOf(state: State, load: Load, part: LoadPart): number {
  const { failed, failedAgain } = tally(state, load, part);
  return failed - failedAgain;
}

type Undecided = "process-short" | "boil-lost" | "pressure-lost" | "seal-failed";

type Waiting = { code: Undecided; jars: number };

/** What has gone wrong with jars and still waits for a person to say what becomes of them. */
export function undecided(state: State, load: Load): Waiting | undefined {
  const open = undecidedYet(state, load);
  // While jars are still being counted, more may fail: one question for all of them.
  return open?.code === "seal-failed" && leftToCheck(state, load) > 0 ? undefined : open;
}

/** The same, with jars that failed while others of their load are still being counted. */
export function undecidedYet(state: State, load: Load): Waiting | undefined {
  if (load.state === "abandoned") return undefined;
  const process = runOfRole(load, "treatment");
  const parts = liveParts(state, load);
  const jars = sum(parts, (part) => undecidedOf(state, load, part));
  // Off the heat after its time was full is how every process ends.
  const off = process?.kept && !isOver(process) ? offMs(process.kept, state.lastW) : 0;
  const short =
    load.unloadedAt === undefined
      ? off > OFF_PROCESS_LIMIT_MS
      : process?.endedShort || process?.state === "skipped" || lowReadings(load).length > 0;
  if (short && jars > 0) return { code: "process-short", jars };
  const lost = load.unloadedAt !== undefined && load.endAnswer?.yes === false;
  const code = load.terms?.method === "pressure" ? "pressure-lost" : "boil-lost";
  if (lost && jars > 0) return { code, jars };
  const failed = sum(parts, (part) => failedOf(state, load, part));
  const disposed = load.disposed
    .filter((one) => one.code === "seal-failed" && one.what !== "reprocess")
    .reduce((sum, one) => sum + (one.count ?? failed), 0);
  const left = failed - disposed;
  return left > 0 ? { code: "seal-failed", jars: left } : undefined;
}

const REPROCESS = `reprocess within ${REPROCESS_WITHIN_HOURS} hours`;

export function dispositionQuestions(state: State): Question[] {
  const list: Question[] = [];
  const recent = Object.values(state.loads);
  for (const load of recent) {
    const open = undecided(state, load);
    if (!open) continue;
    const jars = open.jars === 1 ? "the jar" : `the ${open.jars} jars`;
    const choices = dispositionsFor(load, open.code, state.lastW).filter(
      (one) => one !== "reprocess" || mayReprocess(state, load),
    );
    const why = {
      "process-short": "That process was too short to count.",
      "boil-lost": "That was not a full boil throughout.",
      "pressure-lost": "That was not the tested pressure throughout.",
      "seal-failed": `${open.jars} did not seal.`,
    }[open.code];
    const names = choices.map((one) => (one === "reprocess" ? REPROCESS : one));
    const last = names.pop();
    const ways = [names.join(", "), last].filter(Boolean).join(" or ");
    const text = `${why} What becomes of ${jars}: ${ways}?`;
    const key = `disposition/${load.id}/${open.code}/${load.disposed.length}`;
    const kind = "disposition" as const;
    list.push({ key, kind, text, about: load.id, detail: open.code, choices });
  }
  return list;
}
