/** Which canner or pot a probe's reading is about, and by which rule it is judged. */
import { gaugeTargetPsi } from "../../kitchen/loads/gauge-target.ts";
import { standsFor } from "../../kitchen/meant.ts";
import { activeOwners, isLoad, type Owner, runOfRole } from "../../kitchen/owners.ts";
import type { ProbeReading } from "../../kitchen/probe/probe-line.ts";
import {
  boilRule,
  lowTemperatureRule,
  type ProbeRule,
  pressureRule,
} from "../../kitchen/probe/probe-rules.ts";
import { isOver } from "../../kitchen/stage-run.ts";
import { rulesOf } from "../../kitchen/stages/kinds.ts";
import type { Load, StageRun, State } from "../../kitchen/state.ts";
import { meantBy } from "../../language/values/resolve-names.ts";
import { thingsOf } from "../context-of.ts";

export type ProbeSubject = {
  owner: Owner;
  run: StageRun;
  /** What kind of sign it gives. */
  sign: "boil" | "pressure" | "low-temperature" | "steam";
};

/** Loads that are in a canner, and heats that are on the stove. */
function watchable(state: State, kind: ProbeReading["kind"], t: number): ProbeSubject[] {
  return activeOwners(state).flatMap((owner): ProbeSubject[] => {
    if (isLoad(owner)) return loadSubject(owner, kind, t);
    if (kind === "pressure" || owner.state === "abandoned") return [];
    return owner.stages
      .filter(
        (run) => rulesOf(run.spec).thermometer === "pot" && run.state === "running" && run.kept,
      )
      .filter((run) => run.spec.heat?.until === "boil" || (run.spec.heat?.holdMinutes ?? 0) > 0)
      .map((run) => ({ owner, run, sign: "boil" as const }));
  });
}

function loadSubject(load: Load, kind: ProbeReading["kind"], t: number): ProbeSubject[] {
  const run = runOfRole(load, "treatment");
  // What comes late may still be of the time that seemed full.
  if (!run?.kept || (isOver(run) && t >= (run.endedAt ?? 0))) return [];
  if (load.loadedAt === undefined || t >= (load.unloadedAt ?? Number.POSITIVE_INFINITY)) return [];
  const method = load.terms?.method;
  if (kind === "pressure") {
    return method === "pressure" ? [{ owner: load, run, sign: "pressure" }] : [];
  }
  if (method === "boiling-water") return [{ owner: load, run, sign: "boil" }];
  return method === "steam" || method === "low-temperature"
    ? [{ owner: load, run, sign: method }]
    : [];
}

/**
 * What a reading of kitchen time `t` is about: what it names, else the loaded canner, else the only
 * pot on the heat; undefined where nothing fits, or several do.
 */
export function subjectOf(
  state: State,
  reading: ProbeReading,
  t: number,
): ProbeSubject | undefined {
  const all = watchable(state, reading.kind, t);
  const { where } = reading;
  if (where !== undefined && where !== "probe") {
    const named = all.filter((one) => isNamed(state, where, one));
    return named.length === 1 ? named[0] : undefined;
  }
  const canners = all.filter((one) => isLoad(one.owner));
  if (canners.length > 0) return canners.length === 1 ? canners[0] : undefined;
  return all.length === 1 ? all[0] : undefined;
}

function isNamed(state: State, where: string, { owner, run }: ProbeSubject): boolean {
  if (isLoad(owner) && (where === owner.canner || /\b(canner|water|load)\b/.test(where)))
    return true;
  return standsFor(meantBy(where, { ...thingsOf(state), recipes: [] }).running, owner, run);
}

/** The rule for a subject; undefined while the altitude or the pressure is not known. */
export function ruleFor(
  state: State,
  subject: ProbeSubject,
  stoodAtF?: number,
): ProbeRule | undefined {
  const { owner, sign } = subject;
  if (sign === "low-temperature") return lowTemperatureRule();
  if (sign === "pressure") {
    const target = isLoad(owner) ? gaugeTargetPsi(owner) : undefined;
    return target === undefined ? undefined : pressureRule(target);
  }
  const altitudeFt =
    (isLoad(owner) ? owner.terms?.altitudeFt : undefined) ?? state.kitchen.altitudeFt;
  if (altitudeFt === null || altitudeFt === undefined) return undefined;
  // In steam there is no plateau of its own to learn: the place's boiling point is the mark.
  return sign === "steam" ? boilRule(altitudeFt) : boilRule(altitudeFt, stoodAtF);
}

/** True where the subject waits for its sign: it has not begun, or it was lost. */
export function awaitsSign({ owner, run }: ProbeSubject): boolean {
  const { kept } = run;
  if (!kept || isOver(run) || kept.unconfirmedAt !== undefined) return false;
  const last = kept.stretches.at(-1);
  if (last && last.to === undefined) return false;
  if (!isLoad(owner)) return true;
  const vent = runOfRole(owner, "venting");
  return vent === undefined || isOver(vent);
}
