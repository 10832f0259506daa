/**
 * Keys for what the bare key must not do: the start sign of a process, its loss, and the jars
 * coming out. Each stands for words, takes the same path as they do, and is shown with what it
 * says.
 */

import { gaugeTargetPsi } from "../../kitchen/loads/gauge-target.ts";
import { activeOwners, isLoad, runOfRole } from "../../kitchen/owners.ts";
import { readyAt } from "../../kitchen/settle.ts";
import { potOf } from "../../kitchen/spoken-names.ts";
import { hasRole, rulesOf } from "../../kitchen/stages/kinds.ts";
import type { Batch, Load, StageRun, State } from "../../kitchen/state.ts";
import { current, OFF_PROCESS_LIMIT_MS, offMs } from "../../kitchen/unbroken-time.ts";
import type { KeySign, LabeledKey } from "../../ports/view.ts";

/** The labeled keys that mean something now, at most one for each sign. */
export function labeledKeys(state: State, now: number): LabeledKey[] {
  const all: LabeledKey[] = [];
  for (const owner of activeOwners(state)) {
    if (isLoad(owner)) all.push(...loadKeys(state, owner, now));
    else if (owner.state === "running") all.push(...potKeys(state, owner, now));
  }
  const keys: LabeledKey[] = [];
  for (const sign of ["!", "-", "="] as const) {
    const [first, ...others] = all.filter((one) => one.key === sign);
    if (!first) continue;
    keys.push(others.length === 0 ? first : { ...first, ...unnamed(sign) });
  }
  return keys;
}

/** Where several could be meant, the key does not say which, and the person is asked. */
function unnamed(sign: KeySign): Partial<LabeledKey> {
  const nobody = { owner: "", stage: "" };
  if (sign === "=") return { ...nobody, words: "the jars are out", label: "jars out: asks which" };
  if (sign === "-") return { ...nobody, words: "it lost its boil", label: "boil lost: asks which" };
  return { ...nobody, words: "it's boiling", label: "it boils: asks which" };
}

function cannerName(state: State, load: Load): string {
  return state.kitchen.canners.length > 1 ? load.canner : "canner";
}

function loadKeys(state: State, load: Load, now: number): LabeledKey[] {
  const keys: LabeledKey[] = [];
  const name = cannerName(state, load);
  for (const run of load.stages) {
    if (run.state !== "running") continue;
    const add = (key: KeySign, words: string, label: string) =>
      keys.push({ key, words, label, owner: load.id, stage: run.id });
    if (run.spec.step === "unload") add("=", "the jars are out", "jars are out");
    if (run.spec.step === "come-up" || run.spec.step === "pressurize") startSign(load, name, add);
    if (hasRole(run.spec, "venting") && run.kept) {
      if (current(run.kept)) add("-", "we lost steam pressure", "steam stopped");
      else add("!", "it's venting", "steam pours steadily");
    }
    if (hasRole(run.spec, "treatment") && run.kept) {
      if (current(run.kept)) lossSign(load, name, add);
      else if (offMs(run.kept, now) <= OFF_PROCESS_LIMIT_MS) startSign(load, name, add);
    }
  }
  return keys;
}

type Add = (key: KeySign, words: string, label: string) => void;

function startSign(load: Load, name: string, add: Add): void {
  const { terms } = load;
  if (!terms || load.loadedAt === undefined) return;
  const vented = runOfRole(load, "venting")?.state === "complete";
  if (terms.method === "boiling-water") add("!", `the ${name} is boiling`, `${name}: a full boil`);
  if (terms.method === "steam" && load.column === undefined) {
    add("!", "a full column of steam", "a full column of steam");
  }
  if (terms.method !== "pressure") return;
  if (!vented) add("!", "it's venting", "steam pours steadily");
  else if (load.gauge?.kind === "weighted") add("!", "the weight is rocking", "weight rocks");
  else {
    const psi = gaugeTargetPsi(load);
    if (psi !== undefined) add("!", `${psi} pounds`, `dial shows ${psi} pounds`);
  }
}

function lossSign(load: Load, name: string, add: Add): void {
  const method = load.terms?.method;
  if (method === "boiling-water") add("-", `the ${name} lost its boil`, "boil lost");
  if (method === "pressure") add("-", "the pressure dropped", "pressure lost");
  if (method === "steam") add("-", "we lost steam pressure", "steam stopped");
}

function potKeys(state: State, batch: Batch, now: number): LabeledKey[] {
  const keys: LabeledKey[] = [];
  for (const run of batch.stages) {
    if (rulesOf(run.spec).thermometer !== "pot" || !run.kept || !boils(run)) continue;
    const pot = potOf(run);
    const holds = current(run.kept) !== undefined;
    const base = { owner: batch.id, stage: run.id };
    if (run.state === "running" && holds && run.kept.needMinutes > 0) {
      keys.push({ ...base, key: "-", words: `the ${pot} lost its boil`, label: "boil lost" });
    } else if (!holds && (run.state === "running" || mayBegin(state, batch, run, now))) {
      keys.push({ ...base, key: "!", words: `the ${pot} is boiling`, label: `${pot} boils` });
    }
  }
  return keys;
}

function boils(run: StageRun): boolean {
  return run.spec.heat?.until === "boil";
}

function mayBegin(state: State, batch: Batch, run: StageRun, now: number): boolean {
  if (run.state !== "waiting" || run.spec.start !== "word") return false;
  const at = readyAt(state, batch, run, now);
  return at !== undefined && at <= now;
}
