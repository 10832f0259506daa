/**
 * Questions that guard safety. They follow from the state, so they outlive a crash; the first is
 * the one that is asked, and a yes or no answers it.
 */
import type { CriticalFactor } from "../recipe/recipe.ts";
import { countTrouble } from "./jars.ts";
import { OFF_PROCESS_LIMIT_MS, offMs, unanswered } from "./kept.ts";
import { batchName, loadName } from "./names.ts";
import { activeOwners, isLoad, runOfKind } from "./owners.ts";
import { isOver } from "./stage-run.ts";
import type { Batch, Load, State } from "./state.ts";
import { wallOf } from "./state.ts";
import { localFields, MINUTE_MS } from "./time.ts";

export type QuestionKind =
  | "altitude"
  | "gauge"
  | "gauge-tested"
  | "gauge-off"
  | "factor"
  | "cover"
  | "still-covered"
  | "gap"
  | "end"
  | "disposition"
  | "seals";

export type Question = {
  key: string;
  kind: QuestionKind;
  text: string;
  /** The batch, load or canner it is about. */
  about: string | null;
  /** Which factor, gap or deviation. */
  detail?: string;
  choices?: string[];
};

const RANK: Record<QuestionKind, number> = {
  gap: 0,
  cover: 1,
  "still-covered": 1,
  disposition: 2,
  end: 3,
  altitude: 4,
  gauge: 5,
  "gauge-tested": 5,
  "gauge-off": 5,
  factor: 6,
  seals: 7,
};

/** Open questions, the one to ask first. A question that was already asked keeps its place. */
export function questions(state: State): Question[] {
  const list: Question[] = [];
  if (state.kitchen.altitudeFt === null) {
    const text = "What is your altitude in feet? The process time depends on it.";
    list.push({ key: "altitude", kind: "altitude", text, about: null });
  }
  for (const owner of activeOwners(state)) {
    if (isLoad(owner)) list.push(...loadQuestions(state, owner));
    else if (owner.state !== "abandoned") {
      list.push(...gaugeQuestions(state, owner), ...factorQuestions(owner));
    }
  }
  list.push(...dispositionQuestions(state));
  return list.sort((a, b) => RANK[a.kind] - RANK[b.kind]);
}

/** Whether a factor of the recipe applies to the way this batch is put up. */
export function applies(batch: Batch, factor: CriticalFactor): boolean {
  const { methods, packs, processUnderMinutes } = factor.onlyFor ?? {};
  const method = batch.option?.method;
  if (methods && !(method && methods.includes(method))) return false;
  if (processUnderMinutes !== undefined) {
    if (!batch.terms || batch.terms.minutes >= processUnderMinutes) return false;
  }
  return !packs || (batch.pack !== null && packs.includes(batch.pack));
}

function factorQuestions(batch: Batch): Question[] {
  if (batch.state === "complete") return [];
  const list: Question[] = [];
  for (const factor of batch.recipe.critical) {
    if (!applies(batch, factor)) continue;
    if (batch.confirmed.some((one) => one.factor === factor.id)) continue;
    const turn = batch.stages.some((run) => {
      if (!run.spec.asks.includes(factor.id) || run.state === "waiting") return false;
      return run.spec.kind !== "fill" || batch.filled > 0;
    });
    if (!turn) continue;
    const key = `factor/${batch.id}/${factor.id}`;
    list.push({ key, kind: "factor", text: factor.ask, about: batch.id, detail: factor.id });
  }
  return list;
}

/** The year a gauge test belongs to. */
export function seasonOf(state: State, t: number): number {
  return localFields(wallOf(state, t), state.zone).year;
}

function gaugeQuestions(state: State, batch: Batch): Question[] {
  if (batch.option?.method !== "pressure" || batch.state === "complete") return [];
  const season = seasonOf(state, Math.max(state.lastW, batch.begunAt));
  const list: Question[] = [];
  for (const canner of state.kitchen.canners) {
    const { gauge } = canner;
    const about = canner.id;
    if (!gauge) {
      const text = `Has the ${canner.name} a dial gauge or a weighted gauge?`;
      const choices = ["dial", "weighted"];
      list.push({ key: `gauge/${about}`, kind: "gauge", text, about, choices });
      continue;
    }
    if (gauge.kind !== "dial" || gauge.untestedSeason === season) continue;
    if (gauge.testedSeason !== season) {
      const text = "Was the dial gauge tested this season?";
      list.push({ key: `gauge-tested/${about}/${season}`, kind: "gauge-tested", text, about });
    } else if (gauge.readsHighPsi === undefined) {
      const text = "By how many pounds does the dial read high? Zero if it reads true.";
      list.push({ key: `gauge-off/${about}/${season}`, kind: "gauge-off", text, about });
    }
  }
  return list;
}

function loadQuestions(state: State, load: Load): Question[] {
  const list: Question[] = [];
  const process = runOfKind(load, "process");
  const kept = process?.kept;
  const about = load.id;
  const { terms } = load;
  if (!kept || !terms) return list;
  for (const run of load.stages) {
    const open = run.kept && !isOver(run) ? unanswered(run.kept) : [];
    const first = open[0];
    const last = open.at(-1);
    if (!first || !last) continue;
    const away = Math.max(1, Math.round((last.to - first.from) / MINUTE_MS));
    const what = HOLDING[run.spec.kind === "vent" ? "vent" : terms.method];
    const text = `About ${away} minute${away === 1 ? "" : "s"} went by unwatched. Did ${what} all that time?`;
    list.push({ key: `gap/${about}/${run.kept?.gaps.length}`, kind: "gap", text, about });
  }
  if (kept.unconfirmedAt !== undefined && load.unloadedAt === undefined) {
    const inches = terms.coverIn === 1 ? "1 inch" : `${terms.coverIn} inches`;
    const text = `Are the lids covered by at least ${inches} of water?`;
    list.push({ key: `cover/${about}/${kept.stretches.length}`, kind: "cover", text, about });
  }
  load.waterLow.forEach((low, index) => {
    if (low.covered !== undefined || load.unloadedAt !== undefined) return;
    const text = "Are the lids still covered?";
    list.push({ key: `still-covered/${about}/${index}`, kind: "still-covered", text, about });
  });
  const full = process.state === "complete" && !load.early;
  if (full && !load.endAnswer && ENDING[terms.method]) {
    list.push({ key: `end/${about}`, kind: "end", text: ENDING[terms.method] ?? "", about });
  }
  const check = runOfKind(load, "seal-check");
  if (check?.state === "running") {
    const which = load.parts.length > 1 ? ` of ${loadName(state, load)}` : "";
    const text = `Which jars${which} did not seal? Say their numbers, or all sealed.`;
    list.push({ key: `seals/${about}`, kind: "seals", text, about });
  }
  return list;
}

const HOLDING: Record<string, string> = {
  "boiling-water": "the canner hold a full boil with the lids covered",
  steam: "a full column of steam come out",
  pressure: "the pressure stay at or above the mark",
  "low-temperature": "the water stay at 180 to 185 degrees",
  vent: "steam pour steadily from the vent",
};

const ENDING: Record<string, string> = {
  "boiling-water": "Was it a full boil throughout, with the lids covered at the end?",
  steam: "Was there a full column of steam throughout?",
};

/** What has gone wrong with jars and still waits for a word on what becomes of them. */
export function undecided(
  state: State,
  load: Load,
): { code: "process-short" | "seal-failed"; jars: number } | undefined {
  if (load.state === "abandoned") return undefined;
  const jars = load.parts.reduce((sum, part) => sum + part.jars - part.again, 0);
  const process = runOfKind(load, "process");
  if (load.unloadedAt === undefined) {
    const off = process?.kept ? offMs(process.kept, state.lastW) : 0;
    const told = load.disposed.some((one) => one.code === "process-short");
    return off > OFF_PROCESS_LIMIT_MS && !told ? { code: "process-short", jars } : undefined;
  }
  const short = process?.kept !== undefined && (process.endedShort || process.state === "skipped");
  if (short && jars > 0 && !load.disposed.some((one) => one.code === "process-short")) {
    return { code: "process-short", jars };
  }
  if (load.disposed.some((one) => one.code === "process-short")) return undefined;
  const failed = load.parts.reduce((sum, part) => sum + part.failed - part.failedAgain, 0);
  const disposed = load.disposed
    .filter((one) => one.code === "seal-failed" && one.what !== "reprocess")
    .reduce((sum, one) => sum + (one.count ?? Number.POSITIVE_INFINITY), 0);
  const left = failed - disposed;
  if (left > 0 && !countsWait(state, load)) return { code: "seal-failed", jars: left };
  return undefined;
}

/** While jars are still being counted, more failures may come: one question for all of them. */
function countsWait(state: State, load: Load): boolean {
  const check = runOfKind(load, "seal-check");
  if (check?.state !== "running") return false;
  return load.parts.some((part) => {
    const batch = state.batches[part.batch];
    return batch !== undefined && part.failed === 0 && countTrouble(state, batch) !== undefined;
  });
}

function dispositionQuestions(state: State): Question[] {
  const list: Question[] = [];
  const recent = Object.values(state.loads);
  for (const load of recent) {
    const open = undecided(state, load);
    if (!open) continue;
    const jars = open.jars === 1 ? "the jar" : `the ${open.jars} jars`;
    const choices = ["reprocess", "refrigerate", "freeze", "discard"];
    const why =
      open.code === "process-short"
        ? "That process was too short to count."
        : `${open.jars} did not seal.`;
    const text = `${why} What becomes of ${jars}: reprocess within 24 hours, refrigerate, freeze or discard?`;
    const key = `disposition/${load.id}/${open.code}/${load.disposed.length}`;
    const kind = "disposition" as const;
    list.push({ key, kind, text, about: load.id, detail: open.code, choices });
  }
  return list;
}

/** The name a question's subject is spoken by, where several could be meant. */
export function aboutName(state: State, question: Question): string | undefined {
  if (question.about === null) return undefined;
  const batch = state.batches[question.about];
  if (batch) return batchName(batch);
  const load = state.loads[question.about];
  return load ? loadName(state, load) : undefined;
}
