/** Facts that people and probes report: boil, steam, pressure, temperature, and their loss. */

import * as z from "zod/mini";
import { boilingPointF } from "../../reckon/boiling.ts";
import { LOW_TEMPERATURE_F } from "../../reckon/trade-numbers.ts";
import { gaugeTargetPsi } from "../loads/gauge-target.ts";
import { loseProcess, turnOff, uncover } from "../loads/heat-off.ts";
import { settleDoubts } from "../loads/settle-doubts.ts";
import { isAir } from "../loads/standing.ts";
import { isLoad, ownerOf, runOf, runOfRole, runOfStep } from "../owners.ts";
import { processDoubts } from "../questions/heard-doubts.ts";
import { quiet } from "../settle.ts";
import { finish, isOver, sign } from "../stage-run.ts";
import { hasRole } from "../stages/kinds.ts";
import type { Load, StageRun, State } from "../state.ts";
import {
  addGap,
  clockEndsAt,
  current,
  isLost,
  lose,
  read,
  unanswered,
  vouch,
} from "../unbroken-time.ts";
import { fact, WOULD_COUNT, WOULD_STAND } from "./fact.ts";
import { count, fahrenheit, flag, loadId, ownerId, psi, text, word } from "./fields.ts";
import { markLate } from "./mark-late.ts";

export const SIGN_FACTS = {
  boil: fact({
    sign: "boil",
    fields: { owner: ownerId, stage: word, covered: z.nullable(flag) },
    follows: "stages",
    quiets: true,
    timed: "start",
    undone: ({ vessel }) => `the boil of ${vessel}`,
    evolve(state, event): boolean {
      const owner = ownerOf(state, event.owner);
      const run = runOf(owner, event.stage);
      if (!owner || !run?.kept || isOver(run)) return false;
      markLate(state, event.owner, event, "boil");
      if (isLoad(owner) && hasRole(run.spec, "treatment")) {
        if (!isLoaded(owner) || current(run.kept)) return false;
        if (event.covered !== null) owner.covered = event.covered;
        if (owner.covered) return startProcess(owner, run.kept.unconfirmedAt ?? event.t);
        if (event.covered === null) run.kept.unconfirmedAt ??= event.t;
        return true;
      }
      sign(run, event.t);
      return true;
    },
  }),
  "boil-lost": fact({
    sign: "boil",
    fields: { owner: ownerId, stage: word, uncovered: flag },
    follows: "stages",
    quiets: true,
    timed: "loss",
    undoWarns: WOULD_COUNT,
    undone: () => "the lost boil",
    evolve(state, event): boolean {
      const owner = ownerOf(state, event.owner);
      const run = runOf(owner, event.stage);
      if (!owner || !run?.kept) return false;
      markLate(state, event.owner, event, "boil lost");
      if (isLoad(owner) && hasRole(run.spec, "treatment")) {
        if (run.kept.unconfirmedAt !== undefined && !current(run.kept)) {
          delete run.kept.unconfirmedAt;
          return true;
        }
        return loseProcess(state, owner, event.t, event.uncovered ? "uncovered" : "lost");
      }
      if (!current(run.kept) || isOver(run)) return false;
      lose(run.kept, event.t, "lost");
      return true;
    },
  }),
  cover: fact({
    fields: { load: loadId, covered: flag },
    follows: "stages",
    evolve(state, event): boolean {
      const load = state.loads[event.load];
      const kept = load && processOf(load)?.kept;
      if (!load || !kept) return false;
      for (const low of load.waterLow) low.covered ??= event.covered;
      if (!event.covered) {
        delete kept.unconfirmedAt;
        loseProcess(state, load, event.t, "uncovered");
        uncover(load);
        return true;
      }
      load.covered = true;
      if (kept.unconfirmedAt !== undefined) startProcess(load, kept.unconfirmedAt);
      return true;
    },
  }),
  "water-low": fact({
    fields: { load: loadId },
    follows: "stages",
    timed: "told",
    evolve(state, event): boolean {
      const load = state.loads[event.load];
      if (!isLoaded(load)) return false;
      load.waterLow.push({ at: event.t });
      return true;
    },
  }),
  steam: fact({
    sign: "steam",
    fields: { load: loadId },
    follows: "stages",
    quiets: true,
    timed: "start",
    evolve(state, event): boolean {
      const load = state.loads[event.load];
      if (!load || !isLoaded(load)) return false;
      if (load.terms?.method === "steam") {
        load.column = event.t;
        startSteam(load, event.t);
        return true;
      }
      const vent = runOfRole(load, "venting");
      if (!vent?.kept || isOver(vent) || current(vent.kept)) return false;
      const comeUp = runOfStep(load, "come-up");
      if (comeUp && !isOver(comeUp)) finish(comeUp, event.t);
      sign(vent, event.t);
      markLate(state, load.id, event, "steam");
      return true;
    },
  }),
  "steam-lost": fact({
    sign: "steam",
    fields: { load: loadId },
    follows: "stages",
    timed: "loss",
    undoWarns: WOULD_COUNT,
    evolve(state, event): boolean {
      const load = state.loads[event.load];
      const vent = load && runOfRole(load, "venting");
      if (load?.terms?.method === "steam") return loseProcess(state, load, event.t, "lost");
      if (!vent?.kept || isOver(vent) || !current(vent.kept)) return false;
      lose(vent.kept, event.t, "lost");
      return true;
    },
  }),
  pressure: fact({
    sign: "pressure",
    fields: { load: loadId, psi },
    follows: "stages",
    quiets: true,
    timed: "start",
    evolve(state, event): boolean | "noted" {
      const load = state.loads[event.load];
      if (!load) return false;
      load.readings.push({ at: event.t, what: "pressure", value: event.psi, unit: "psi" });
      if (!isLoaded(load)) return "noted";
      markLate(state, load.id, event, "pressure");
      if (depressurizing(load, event.psi, event.t)) return true;
      const target = gaugeTargetPsi(load);
      if (target === undefined || !isVented(load)) return "noted";
      const enough = event.psi >= target;
      const changed = enough
        ? startProcess(load, event.t)
        : loseProcess(state, load, event.t, "lost");
      return changed || "noted";
    },
  }),
  rocking: fact({
    sign: "pressure",
    fields: { load: loadId },
    follows: "stages",
    quiets: true,
    timed: "start",
    evolve(state, event): boolean {
      const load = state.loads[event.load];
      if (!load || !isLoaded(load) || !isVented(load)) return false;
      markLate(state, load.id, event, "weight rocking");
      return startProcess(load, event.t);
    },
  }),
  "pressure-lost": fact({
    sign: "pressure",
    fields: { load: loadId },
    follows: "stages",
    quiets: true,
    timed: "loss",
    undoWarns: WOULD_COUNT,
    undone: () => "the lost pressure",
    evolve(state, event): boolean {
      const load = state.loads[event.load];
      if (!load) return false;
      markLate(state, load.id, event, "pressure lost");
      return loseProcess(state, load, event.t, "lost");
    },
  }),
  temperature: fact({
    fields: { owner: z.nullable(ownerId), what: text, temperatureF: fahrenheit },
    follows: "stages",
    quiets: true,
    timed: "told",
    evolve(state, event): boolean | "noted" {
      const { what, temperatureF } = event;
      const reading = { at: event.t, what, value: temperatureF, unit: "F" };
      const owner = event.owner === null ? undefined : ownerOf(state, event.owner);
      if (event.owner === null && isAir(what)) state.kitchen.airF = temperatureF;
      if (!owner) return event.owner === null && "noted";
      owner.readings.push(reading);
      if (!isLoad(owner) || !isLoaded(owner)) return "noted";
      const method = owner.terms?.method;
      if (method === "low-temperature") lowTemperature(state, owner, event);
      else if (method === "steam") steamTemperature(state, owner, event);
      else return "noted";
      return true;
    },
  }),
  vouched: fact({
    fields: { load: loadId, gap: count, held: flag, by: z.optional(z.literal("probe")) },
    follows: "stages",
    evolve(state, event): boolean {
      const load = state.loads[event.load];
      if (!load) return false;
      for (const run of load.stages) {
        if (!run.kept || run.kept.gaps.every((gap) => gap.held !== undefined)) continue;
        if (event.held && event.by === "probe" && load.terms?.method === "boiling-water") {
          // No probe sees the lids: a person answers for those.
          for (const gap of unanswered(run.kept)) gap.boiled = true;
          continue;
        }
        vouch(run.kept, event.held);
        if (!event.held) quiet(state, load.id);
      }
      return true;
    },
  }),
  "heat-off": fact({
    sign: "burner",
    fields: { load: loadId },
    follows: "stages",
    quiets: true,
    timed: "loss",
    undoWarns: WOULD_COUNT,
    undone: () => "the heat going off",
    evolve(state, event): boolean | "noted" {
      const load = state.loads[event.load];
      if (!isLoaded(load)) return false;
      const changed = turnOff(state, load, event.t);
      // Off before there was a boil to lose: nothing follows from it.
      if (!changed) return processOf(load)?.kept?.stretches.length === 0 ? "noted" : false;
      markLate(state, load.id, event, "heat off");
      return true;
    },
  }),
  /** The answer about its end no longer stands. */
  "end-reopened": fact({
    fields: { load: loadId },
    follows: "nothing",
    undoWarns: WOULD_STAND,
    evolve(state, event): boolean {
      const load = state.loads[event.load];
      if (!load?.endAnswer) return false;
      load.endReopened.push(event.t);
      delete load.endAnswer;
      return true;
    },
  }),
  "end-answer": fact({
    fields: { load: loadId, yes: flag },
    follows: "stages",
    evolve(state, event): false | "noted" {
      const load = state.loads[event.load];
      if (!load) return false;
      load.endAnswer = { at: event.t, yes: event.yes };
      // What was said after the question was shown is asked about in its turn.
      const shown = processDoubts(load).filter(({ asked }) => asked === true);
      settleDoubts(shown, event.t, event.yes);
      return "noted";
    },
  }),
};

function processOf(load: Load): StageRun | undefined {
  return runOfRole(load, "treatment");
}

/** Whether its jars are in and have not been taken out. */
function isLoaded(load: Load | undefined): load is Load {
  return load?.loadedAt !== undefined && load.unloadedAt === undefined;
}

/** The sign for the process has come (again): its clock starts from the full time. */
function startProcess(load: Load, at: number): boolean {
  const run = processOf(load);
  if (!run?.kept || isOver(run) || current(run.kept)) return false;
  for (const before of load.stages) {
    if (before === run) break;
    if (!isOver(before)) finish(before, Math.max(at, before.startedAt ?? at));
  }
  sign(run, at);
  // A sign reported late may fall before a time in which nobody watched.
  for (const gap of load.gaps) addGap(run.kept, gap);
  return true;
}

function isVented(load: Load): boolean {
  const vent = runOfRole(load, "venting");
  return vent === undefined || vent.state === "complete";
}

/** A canner coming down: zero starts the wait before its lid, and shows that the heat is off. */
function depressurizing(load: Load, psi: number, at: number): boolean {
  const run = runOfRole(load, "coming-down");
  const process = processOf(load);
  if (!run?.kept || isOver(run) || !process || !isOver(process)) return false;
  // A zero dated back into the process time means that the process was lost.
  if (process.endedAt !== undefined && at < process.endedAt) return false;
  const target = gaugeTargetPsi(load) ?? 0;
  if (psi < target && process.kept && current(process.kept)) lose(process.kept, at, "out");
  if (psi > 0 || current(run.kept)) return run.state === "running";
  const off = runOfStep(load, "heat-off");
  if (off && !isOver(off)) finish(off, at);
  sign(run, at);
  return true;
}

/** A steam canner's clock needs both a full column and the local boiling point. */
function startSteam(load: Load, at: number): void {
  if (load.column !== undefined && load.hot !== undefined) startProcess(load, at);
}

/** Steam may read this far under the local boiling point (thermometer and weather), degrees F. */
const STEAM_ALLOWED_F = 1;

/** The local boiling point read in a steam canner, or the loss of it. */
function steamTemperature(
  state: State,
  load: Load,
  event: { t: number; temperatureF: number },
): void {
  const boilsAt = boilingPointF(load.terms?.altitudeFt ?? 0);
  if (event.temperatureF >= boilsAt - STEAM_ALLOWED_F) {
    load.hot = event.t;
    startSteam(load, event.t);
  } else if (processOf(load)?.kept?.stretches.length) loseProcess(state, load, event.t, "lost");
}

function lowTemperature(
  state: State,
  load: Load,
  event: { t: number; temperatureF: number },
): void {
  const kept = processOf(load)?.kept;
  if (!kept) return;
  if (event.temperatureF < LOW_TEMPERATURE_F.min) {
    if (current(kept)) loseProcess(state, load, event.t, "lost");
    return;
  }
  if (isLost(kept) || kept.stretches.length === 0) startProcess(load, event.t);
  const ends = clockEndsAt(kept);
  if (ends !== undefined) read(kept, event.t);
}
