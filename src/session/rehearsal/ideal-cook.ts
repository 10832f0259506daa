/**
 * A cook who does each stage in its typical time, answers every question as for an unbroken run,
 * and refrigerates where a disposition is asked. Plays rehearsals, and the quiet parts of tests.
 */

import { startByWordAt } from "../../kitchen/agenda.ts";
import {
  commandOf,
  type Intent,
  type Ref,
  type SlotsOf,
  type SpokenJarSize,
} from "../../kitchen/command.ts";
import type { Wish } from "../../kitchen/decide/decision.ts";
import { nextFills } from "../../kitchen/jars/canner-room.ts";
import { ready, readyJars, weightLb } from "../../kitchen/jars/lots.ts";
import { gaugeTargetPsi } from "../../kitchen/loads/gauge-target.ts";
import { openLoad, sharers } from "../../kitchen/loads/open-load.ts";
import { activeOwners, isLoad, type Owner, runOfRole, runOfStep } from "../../kitchen/owners.ts";
import { dispositionsFor } from "../../kitchen/questions/dispositions.ts";
import { factorOf } from "../../kitchen/questions/factor-questions.ts";
import { type Question, shownQuestion } from "../../kitchen/questions/questions.ts";
import { readyAt } from "../../kitchen/settle.ts";
import { potOf } from "../../kitchen/spoken-names.ts";
import { hasRole, isOfCanner, rulesOf } from "../../kitchen/stages/kinds.ts";
import type { Batch, Load, StageRun, State } from "../../kitchen/state.ts";
import { MINUTE_MS } from "../../kitchen/time.ts";
import { current, isLost } from "../../kitchen/unbroken-time.ts";
import { boilingPointF } from "../../reckon/boiling.ts";
import {
  COME_UP_MINUTES,
  LOAD_MINUTES,
  LOW_TEMPERATURE_READ_MINUTES,
  UNLOAD_MINUTES,
} from "../../reckon/trade-numbers.ts";
import type { Carried } from "../carried.ts";

type CookAction = Carried & { at: number };

/** An alarm that no work in the next minutes answers is acknowledged after this. */
const ANSWER_MS = 2 * MINUTE_MS;
const RECOVERY_MINUTES = 2;
const SEALS_MINUTES = 5;
const GOOD_LOW_TEMPERATURE_F = 182;

function wish<I extends Intent>(
  intent: I,
  slots: SlotsOf[I],
  words: string,
  chosen?: Ref,
): { wish: Wish<I>; words: string } {
  const command = commandOf(intent, slots);
  return { wish: chosen ? { command, chosen: [chosen] } : { command }, words };
}

/** What the cook does next and when; undefined when there is nothing left to do. */
export function nextAction(
  state: State,
  now: number,
  demoAltitudeFt: number,
): CookAction | undefined {
  const answer = answers(state, now, demoAltitudeFt);
  if (answer) return answer;
  const [ringing] = state.ringing;
  const heard: CookAction[] =
    ringing === undefined
      ? []
      : [{ at: (state.due[ringing] ?? now) + ANSWER_MS, ...wish("acknowledge", {}, "got it") }];
  const actions = activeOwners(state).flatMap((owner) =>
    isLoad(owner) ? loadActions(state, owner) : batchActions(state, owner, now),
  );
  return [...heard, ...actions].reduce<CookAction | undefined>(
    (best, one) => (best === undefined || one.at < best.at ? one : best),
    undefined,
  );
}

function answers(state: State, now: number, demoAltitudeFt: number): CookAction | undefined {
  const question = shownQuestion(state);
  if (!question) return undefined;
  switch (question.kind) {
    case "altitude":
      return {
        at: now,
        ...wish("altitude", { feet: demoAltitudeFt }, `we're at ${demoAltitudeFt} feet`),
      };
    case "gauge":
      return { at: now, ...wish("answer", { value: "dial", gauge: "dial" }, "a dial") };
    case "gauge-off":
      return { at: now, ...wish("answer", { value: 0 }, "zero") };
    case "disposition": {
      const load = state.loads[question.about ?? ""];
      const cold =
        load && dispositionsFor(load, question.detail ?? "", now).includes("refrigerate");
      return cold
        ? { at: now, ...wish("disposition", { what: "refrigerate" }, "put them in the fridge") }
        : { at: now, ...wish("disposition", { what: "discard" }, "throw them out") };
    }
    case "guide": {
      const minutes = state.loads[question.about ?? ""]?.terms?.minutes ?? 0;
      return { at: now, ...wish("answer", { value: minutes }, `${minutes} minutes`) };
    }
    case "broken":
      return { at: now, ...wish("answer", { value: 1 }, "one") };
    case "heard":
    case "still": {
      if (question.choices === undefined) return { at: now, ...wish("yes", {}, "yes") };
      const value = question.choices[0] ?? "";
      return { at: now, ...wish("answer", { value, held: "yes" }, value) };
    }
    case "factor":
      return { at: now, ...factorAnswer(state, question) };
    case "seals":
      return {
        at: now + SEALS_MINUTES * MINUTE_MS,
        ...wish("sealed", { all: true }, "all sealed"),
      };
    default:
      return { at: now, ...wish("yes", {}, "yes") };
  }
}

/** What the recipe asks for, as the kind of answer that the question takes. */
function factorAnswer(state: State, { about, detail }: Question): Carried {
  const batch = state.batches[about ?? ""];
  const factor = batch && factorOf(batch, detail ?? "");
  const answer = factor?.answer;
  switch (answer?.type) {
    case "percent":
      return wish("answer", { value: answer.least }, `${answer.least} percent`);
    case "inches": {
      const value = batch?.recipe.headspaceIn ?? 0;
      return wish("answer", { value }, `${value} inch`);
    }
    case "choice": {
      const value = answer.right[0] ?? "";
      return wish("answer", { value, held: "yes" }, value);
    }
    default:
      return wish("yes", {}, "yes");
  }
}

function refOf(owner: Owner, run: StageRun): Ref {
  return { owner: owner.id, stage: run.id };
}

function doneAfter(owner: Owner, run: StageRun, minutes: number, text: string): CookAction {
  const at = (run.startedAt ?? 0) + minutes * MINUTE_MS;
  return { at, ...wish("done", {}, text, refOf(owner, run)) };
}

function batchActions(state: State, batch: Batch, now: number): CookAction[] {
  if (batch.state === "held") {
    return [{ at: now, ...wish("resume", {}, "let's go on", { owner: batch.id }) }];
  }
  if (batch.state !== "running") return [];
  return batch.stages.flatMap((run): CookAction[] => {
    if (isOfCanner(run.spec)) return [];
    if (run.state === "waiting") return beginByWord(state, batch, run, now);
    if (run.state !== "running") return [];
    const { window, typicalMinutes } = run.spec;
    const { ends } = rulesOf(run.spec);
    const beyond = (weightLb(batch) ?? 0) - batch.recipe.yield.weightLb;
    const typical = typicalMinutes + (run.spec.minutesPerLb ?? 0) * Math.max(0, beyond);
    if (ends === "date") return [];
    if (ends === "sign") return heatAction(batch, run, typical);
    if (ends === "count") return fillAction(state, batch, run, typical);
    if (ends === "word") return [doneAfter(batch, run, typical, `${run.spec.title} done`)];
    if (!window) return [doneAfter(batch, run, typical, "done")];
    if (window.minMinutes === window.maxMinutes) return [];
    const minutes = Math.min(Math.max(typical, window.minMinutes), window.maxMinutes);
    return [doneAfter(batch, run, minutes, `${run.spec.title} done`)];
  });
}

function beginByWord(state: State, batch: Batch, run: StageRun, now: number): CookAction[] {
  if (run.spec.start !== "word") return [];
  const ready = readyAt(state, batch, run, now);
  if (ready === undefined) return [];
  const at = startByWordAt(state, batch, run, now) ?? ready;
  const pot = potOf(run);
  return [{ at, ...wish("begin", { named: pot }, `start the ${pot}`, refOf(batch, run)) }];
}

function heatAction(batch: Batch, run: StageRun, typical: number): CookAction[] {
  if (!run.kept || current(run.kept)) return [];
  const text = `the ${potOf(run)} is boiling`;
  const last = run.kept.stretches.at(-1)?.to;
  const from = last === undefined ? (run.startedAt ?? 0) : last;
  const minutes =
    last === undefined ? Math.max(1, typical - run.kept.needMinutes) : RECOVERY_MINUTES;
  return [{ at: from + minutes * MINUTE_MS, ...wish("boiling", {}, text, refOf(batch, run)) }];
}

function fillAction(state: State, batch: Batch, run: StageRun, typical: number): CookAction[] {
  const [next] = nextFills(state, batch);
  if (!next) return [];
  const { lot, count } = next;
  const load = openLoad(state, batch);
  const canner = runOfStep(load, "canner");
  if (batch.option && canner?.state !== "complete") return [];
  const from = Math.max(run.startedAt ?? 0, canner?.endedAt ?? 0, lastFilled(batch));
  const size: SpokenJarSize | null = batch.jar === "pint-and-half" ? "pint-and-a-half" : batch.jar;
  const text = size ? `${count} ${size}s filled` : `${count} filled`;
  const slots = size ? { count, size } : { count };
  return [
    {
      at: from + typical * MINUTE_MS,
      ...wish("jars-filled", slots, text, { owner: batch.id, lot: lot.id }),
    },
  ];
}

/** When jars of other lots of the batch were last filled for the load that is waited for. */
function lastFilled(batch: Batch): number {
  return Math.max(0, ...readyJars(batch).map((jar) => jar.filledFrom));
}

function loadActions(state: State, load: Load): CookAction[] {
  const process = load.stages.find((run) => hasRole(run.spec, "treatment"));
  for (const run of load.stages) {
    const vents = hasRole(run.spec, "venting") && run.kept !== undefined && isLost(run.kept);
    const lost = run === process && run.state === "running" && run.kept && isLost(run.kept);
    if (run.state === "running" && (lost || vents)) {
      const at = (run.kept?.stretches.at(-1)?.to ?? 0) + RECOVERY_MINUTES * MINUTE_MS;
      return [{ at, ...(vents ? venting(load, run) : sign(load, run)) }];
    }
  }
  const run = load.stages.find((one) => one.state === "running");
  if (!run) return [];
  const at = (minutes: number) => (run.startedAt ?? 0) + minutes * MINUTE_MS;
  switch (run.spec.step) {
    case "canner":
      return [doneAfter(load, run, run.spec.typicalMinutes, "the canner's ready")];
    case "load":
      return loadTogether(state, load, at(LOAD_MINUTES));
    case "come-up":
      return comeUp(load, process, at(COME_UP_MINUTES));
    case "pressurize":
      return process ? [{ at: at(run.spec.typicalMinutes), ...sign(load, process) }] : [];
    case "unload":
      return [
        {
          at: at(UNLOAD_MINUTES),
          ...wish("done", {}, "the jars are out", { owner: load.id, stage: "unload" }),
        },
      ];
    case "settle":
      return [];
    default:
      return byRole(load, run);
  }
}

function byRole(load: Load, run: StageRun): CookAction[] {
  const { title, typicalMinutes } = run.spec;
  switch (rulesOf(run.spec).role) {
    case "treatment":
      return lowReading(load, run);
    case "coming-down": {
      if (run.kept && current(run.kept)) return [];
      const at = (run.startedAt ?? 0) + typicalMinutes * MINUTE_MS;
      return [{ at, ...wish("pressure", { value: 0, unit: "psi" }, "the pressure is zero") }];
    }
    case "seals":
    case "venting":
      return [];
    case "cooling":
      return [doneAfter(load, run, typicalMinutes, "cooled")];
    default:
      return [doneAfter(load, run, typicalMinutes, title)];
  }
}

/** The jars go in with those of other batches that are filled, or soon will be, for this load. */
function loadTogether(state: State, load: Load, at: number): CookAction[] {
  const batches = sharers(state, load);
  const filling = batches.some((batch) => {
    return nextFills(state, batch).length > 0 && runOfRole(batch, "filling")?.state === "running";
  });
  if (filling) return [];
  const chosen = batches.filter((batch) => ready(batch) > 0).map((batch) => ({ owner: batch.id }));
  const { wish: one, words } = wish("loaded", {}, "the jars are in");
  return [{ at, words, wish: { ...one, chosen } }];
}

function venting(load: Load, run: StageRun): Carried {
  return wish("venting", {}, "it's venting", { ...refOf(load, run) });
}

function comeUp(load: Load, process: StageRun | undefined, at: number): CookAction[] {
  if (!process) return [];
  if (load.terms?.method === "pressure") {
    return [{ at, ...wish("venting", {}, "it's venting steadily") }];
  }
  if (load.terms?.method === "steam") {
    if (load.column === undefined)
      return [{ at, ...wish("venting", {}, "a full column of steam") }];
    return [{ at, ...sign(load, process) }];
  }
  return [{ at, ...sign(load, process) }];
}

/** The sign that starts the clock, by method. */
function sign(load: Load, process: StageRun): Carried {
  const ref = refOf(load, process);
  const altitude = load.terms?.altitudeFt ?? 0;
  switch (load.terms?.method) {
    case "pressure": {
      if (load.gauge?.kind === "weighted")
        return wish("weight-rocking", {}, "the weight is rocking", ref);
      const value = gaugeTargetPsi(load) ?? load.terms.pressurePsi ?? 0;
      return wish("pressure", { value, unit: "psi" }, `${value} pounds`, ref);
    }
    case "low-temperature":
      return temperature(GOOD_LOW_TEMPERATURE_F, ref);
    case "steam":
      if (load.column === undefined) return wish("venting", {}, "a full column of steam", ref);
      return temperature(Math.ceil(boilingPointF(altitude)), ref);
    default:
      return wish("boiling", { covered: true }, "it's boiling and the lids are covered", ref);
  }
}

function temperature(value: number, ref: Ref): Carried {
  return wish("temperature", { value, unit: "F" }, `the canner is at ${value}`, ref);
}

function lowReading(load: Load, run: StageRun): CookAction[] {
  const { kept } = run;
  if (!kept?.readAt || !current(kept)) return [];
  const last = kept.readAt.at(-1) ?? run.startedAt ?? 0;
  const at = last + LOW_TEMPERATURE_READ_MINUTES * MINUTE_MS;
  return [{ at, ...temperature(GOOD_LOW_TEMPERATURE_F, refOf(load, run)) }];
}
