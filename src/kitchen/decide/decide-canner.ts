/** Deciding on a canner's signs: steam, pressure, temperature, low water. */
import { jellingPoint } from "../../reckon/boiling.ts";
import { numberWords } from "../../reckon/number-words.ts";
import { DIAL_OFF_PSI, OFF_PROCESS_HOURS, VENT_MINUTES } from "../../reckon/trade-numbers.ts";
import { KPA_PER_PSI } from "../../reckon/units.ts";
import type { DatedFact } from "../events.ts";
import { gaugeTargetPsi } from "../loads/gauge-target.ts";
import { isLoad, type Owner, runOfRole, runOfStep } from "../owners.ts";
import { BOILING_WATER, boilDoubt, boilsHere } from "../questions/altitude-doubts.ts";
import { potOf } from "../spoken-names.ts";
import { isOver } from "../stage-run.ts";
import { hasRole, rulesOf } from "../stages/kinds.ts";
import type { Load, StageRun } from "../state.ts";
import { MINUTE_MS } from "../time.ts";
import { current, OFF_PROCESS_LIMIT_MS, offMs } from "../unbroken-time.ts";
import { earliestSign } from "./decide-boil.ts";
import { candidateStages, choicesOf, isReady } from "./decide-stages.ts";
import {
  askWhich,
  type Deciding,
  type Decision,
  done,
  happenedAt,
  type Present,
  refused,
} from "./decision.ts";

const OFF_HOURS = `${numberWords(OFF_PROCESS_HOURS)} hours`;
/** What a home canner's gauge can show, psi; more is a slip of the tongue or of the ear. */
const HIGHEST_PSI = 25;
/** What a kitchen thermometer can truly read in food or water here, degrees Fahrenheit. */
const PLAUSIBLE_F = { min: 10, max: 320 };

/** What a canner shows. */
type Signs =
  | "venting"
  | "pressure"
  | "weight-rocking"
  | "pressure-lost"
  | "water-low"
  | "temperature";

function inCannerNow(load: Load): boolean {
  return load.loadedAt !== undefined && load.unloadedAt === undefined;
}

/** The loaded canner of these methods that a report is about; else it asks which one. */
function oneLoad(
  deciding: Deciding,
  methods: string[],
  nothing: string,
): { load: Load } | { outcome: Decision } {
  const open = candidateStages(deciding, deciding.wish.command.ref, (owner, run) => {
    if (!isLoad(owner) || !hasRole(run.spec, "treatment") || !inCannerNow(owner)) return false;
    return methods.includes(owner.terms?.method ?? "");
  });
  const [one] = open;
  if (!one || !isLoad(one.owner)) return { outcome: refused(nothing) };
  if (open.length > 1) {
    const choices = choicesOf(deciding.state, open);
    return { outcome: askWhich(deciding.wish, "Which canner:", choices) };
  }
  return { load: one.owner };
}

function when(deciding: Deciding<Signs>): { t: number } | { outcome: Decision } {
  const at = happenedAt(deciding.state, deciding.wish.command.slots, deciding.now);
  return at.ok ? { t: at.t } : { outcome: refused(at.reason) };
}

export function decideVenting(deciding: Deciding<"venting">): Decision {
  const at = when(deciding);
  if ("outcome" in at) return at.outcome;
  const found = oneLoad(deciding, ["pressure", "steam"], "No canner is waiting for steam.");
  if ("outcome" in found) return found.outcome;
  const { load } = found;
  const vent = runOfRole(load, "venting");
  const process = runOfRole(load, "treatment");
  if (load.terms?.method === "steam" && process?.kept && current(process.kept)) {
    return refused("I'm already timing it.");
  }
  if (vent?.kept && current(vent.kept) && !isOver(vent))
    return refused("I already have it venting.");
  if (vent && isOver(vent))
    return refused(`It has had its ${numberWords(VENT_MINUTES)} minutes of steam.`);
  return done({ type: "steam", load: load.id, t: Math.max(at.t, load.loadedAt ?? 0) });
}

/** Minutes of venting still to go, where the vent has not had its time. */
function ventLeft(load: Load, now: number): number | undefined {
  const vent = runOfRole(load, "venting");
  if (!vent || isOver(vent)) return undefined;
  const stretch = vent.kept && current(vent.kept);
  return stretch ? Math.ceil(VENT_MINUTES - (now - stretch.from) / MINUTE_MS) : VENT_MINUTES;
}

/** Why a pressure process may not begin (again) now; undefined where it may. */
function cannotPressurize(load: Load, now: number): string | undefined {
  const left = ventLeft(load, now);
  if (left !== undefined) {
    const whole = `${numberWords(VENT_MINUTES)} minutes`;
    return `Steam has to pour from the open vent for ${whole} first: ${left} to go.`;
  }
  if (Math.abs(load.gauge?.readsHighPsi ?? 0) > DIAL_OFF_PSI) {
    return (
      `That dial is off by more than ${numberWords(DIAL_OFF_PSI)} pounds. ` +
      "It has to be replaced before it can time a process."
    );
  }
  const kept = runOfRole(load, "treatment")?.kept;
  if (kept && offMs(kept, now) > OFF_PROCESS_LIMIT_MS) {
    return (
      `It has been under its pressure for over ${OFF_HOURS}, so it can't be started over. ` +
      "Refrigerate, freeze or discard those jars."
    );
  }
  return undefined;
}

export function decidePressure(deciding: Deciding<"pressure">): Decision {
  const { slots } = deciding.wish.command;
  const at = when(deciding);
  if ("outcome" in at) return at.outcome;
  const psi = slots.unit === "kPa" ? slots.value / KPA_PER_PSI : slots.value;
  if (!(psi >= 0 && psi <= HIGHEST_PSI)) {
    return refused(`${slots.value} ${slots.unit} can't be right. What does the gauge show?`);
  }
  const found = oneLoad(deciding, ["pressure"], "No pressure canner is loaded.");
  if ("outcome" in found) return found.outcome;
  const { load } = found;
  const process = runOfRole(load, "treatment");
  const target = gaugeTargetPsi(load) ?? Number.POSITIVE_INFINITY;
  if (process && !isOver(process) && psi >= target) {
    const reason = cannotPressurize(load, deciding.now);
    if (reason) return refused(reason);
  }
  const t = process ? Math.max(at.t, earliestSign({ owner: load, run: process })) : at.t;
  const reading = { type: "pressure", load: load.id, psi: Math.round(psi * 100) / 100, t } as const;
  // Under the mark as soon as the time is full, it may have been under it before.
  const ended = process && isOver(process) ? process.endedAt : undefined;
  if (psi >= target || ended === undefined || t - ended > FALLS_WITHIN_MS || isHeatOff(load)) {
    return done(reading);
  }
  const doubt = { strength: "suspicion", about: "pressure", t } as const;
  return done(reading, { type: "heard", load: load.id, text: `${slots.value} pounds`, ...doubt });
}

/** A canner whose heat is just off still shows its pressure for so long at least (our choice). */
const FALLS_WITHIN_MS = MINUTE_MS;

function isHeatOff(load: Load): boolean {
  const off = runOfStep(load, "heat-off");
  return off === undefined || isOver(off);
}

export function decideRocking(deciding: Deciding<"weight-rocking">): Decision {
  const at = when(deciding);
  if ("outcome" in at) return at.outcome;
  const found = oneLoad(deciding, ["pressure"], "No pressure canner is loaded.");
  if ("outcome" in found) return found.outcome;
  const { load } = found;
  const process = runOfRole(load, "treatment");
  if (!process || isOver(process)) return refused("That process is over.");
  if (process.kept && current(process.kept)) return refused("I'm already timing it.");
  if (load.gauge?.kind === "dial") return refused("That canner has a dial. What does it show?");
  const reason = cannotPressurize(load, deciding.now);
  if (reason) return refused(reason);
  const t = Math.max(at.t, earliestSign({ owner: load, run: process }));
  return done({ type: "rocking", load: load.id, t });
}

export function decidePressureLost(deciding: Deciding<"pressure-lost">): Decision {
  const at = when(deciding);
  if ("outcome" in at) return at.outcome;
  const found = oneLoad(deciding, ["pressure", "steam"], "No pressure canner is loaded.");
  if ("outcome" in found) return found.outcome;
  const { load } = found;
  const vent = runOfRole(load, "venting");
  if (load.terms?.method === "steam" || (vent?.kept && current(vent.kept) && !isOver(vent))) {
    return done({ type: "steam-lost", load: load.id, t: at.t });
  }
  const process = runOfRole(load, "treatment");
  if (process && isOver(process) && at.t >= (process.endedAt ?? 0)) {
    return refused("Its time was already full.");
  }
  if (!process?.kept || !(isOver(process) || current(process.kept)))
    return refused("It isn't being timed yet.");
  return done({ type: "pressure-lost", load: load.id, t: at.t });
}

export function decideWaterLow(deciding: Deciding<"water-low">): Decision {
  const at = when(deciding);
  if ("outcome" in at) return at.outcome;
  const found = oneLoad(
    deciding,
    ["boiling-water", "low-temperature", "pressure", "steam"],
    "No canner is loaded.",
  );
  if ("outcome" in found) return found.outcome;
  const { load } = found;
  const low = { type: "water-low", load: load.id, t: at.t } as const;
  // Lids out of the water count as a lost boil, not just a warning.
  const method = load.terms?.method;
  const deep = method === "boiling-water" || method === "low-temperature";
  if (!deep || !deciding.wish.command.slots.uncovered) return done(low);
  return done(low, { type: "cover", load: load.id, covered: false, t: at.t });
}

/** What a temperature may be of: a canner, a pot on the heat, or a crock. */
function takesTemperature(deciding: Present) {
  return (owner: Owner, run: StageRun): boolean => {
    if (isLoad(owner)) {
      if (run.spec.step === "canner") return run.state === "running";
      return hasRole(run.spec, "treatment") && inCannerNow(owner) && !isOver(run);
    }
    const { thermometer } = rulesOf(run.spec);
    if (thermometer === null) return false;
    return run.state === "running" || (thermometer === "pot" && isReady(deciding, owner, run));
  };
}

export function decideTemperature(deciding: Deciding<"temperature">): Decision {
  const { state, wish } = deciding;
  const { slots, ref } = wish.command;
  const at = when(deciding);
  if ("outcome" in at) return at.outcome;
  const temperatureF = slots.unit === "C" ? slots.value * 1.8 + 32 : slots.value;
  if (!(temperatureF >= PLAUSIBLE_F.min && temperatureF <= PLAUSIBLE_F.max)) {
    return refused(`${slots.value} degrees can't be right. What does the thermometer show?`);
  }
  let open = candidateStages(deciding, ref, takesTemperature(deciding));
  const rounded = Math.round(temperatureF * 10) / 10;
  // A boil is not about a canner that is only warming, nor about a crock.
  if (slots.boiling) open = open.filter(({ run }) => run.spec.step !== "canner" && boils(run));
  const [one] = open;
  if (!one && slots.boiling) {
    const fact = {
      type: "temperature",
      owner: null,
      what: BOILING_WATER,
      temperatureF: rounded,
    } as const;
    return done({ ...fact, t: at.t }, ...boilDoubt(state, undefined, rounded, at.t));
  }
  if (!one) {
    const what = slots.target ?? "temperature";
    return done({ type: "temperature", owner: null, what, temperatureF: rounded, t: at.t });
  }
  if (open.length > 1) {
    const guided = open.filter((each) => isLoad(each.owner) && hasRole(each.run.spec, "treatment"));
    const low = guided.find(
      (each) => isLoad(each.owner) && each.owner.terms?.method === "low-temperature",
    );
    if (!low) return askWhich(wish, "Which is that:", choicesOf(state, open));
    return done(...temperatureFacts(deciding, low, rounded, at.t));
  }
  return done(...temperatureFacts(deciding, one, rounded, at.t));
}

function boils({ spec }: StageRun): boolean {
  const { thermometer } = rulesOf(spec);
  return thermometer === "pot" || thermometer === "canner";
}

function temperatureFacts(
  deciding: Deciding<"temperature">,
  one: { owner: Owner; run: StageRun },
  temperatureF: number,
  t: number,
): DatedFact[] {
  const { state } = deciding;
  const { owner, run } = one;
  const what = isLoad(owner) ? "canner" : potOf(run);
  const facts: DatedFact[] = [{ type: "temperature", owner: owner.id, what, temperatureF, t }];
  const until = run.spec.heat?.until;
  const altitude = state.kitchen.altitudeFt;
  const notYet = run.kept !== undefined && !current(run.kept);
  if (typeof until === "object" && temperatureF >= until.temperatureF && notYet) {
    const type = run.spec.step === "canner" ? "stage-done" : "boil";
    facts.push(
      type === "boil"
        ? { type, owner: owner.id, stage: run.id, covered: null, t }
        : { type, owner: owner.id, stage: run.id, t },
    );
  }
  if (until === "jelling-point" && altitude !== null && notYet) {
    const jells = jellingPoint(altitude);
    if (jells.ok && temperatureF >= jells.value.value) {
      facts.push({ type: "boil", owner: owner.id, stage: run.id, covered: null, t });
    }
  }
  const boiling = isLoad(owner) && owner.terms?.method === "boiling-water";
  const begins = saysBoil(deciding, one, temperatureF, boiling || until === "boil");
  if (begins) {
    const from = Math.max(t, earliestSign(one));
    facts.push({ type: "boil", owner: owner.id, stage: run.id, covered: null, t: from });
  }
  if (boiling && (begins || (run.kept && current(run.kept)))) {
    facts.push(...boilDoubt(state, owner, temperatureF, t));
  }
  return facts;
}

/** "204 at a full boil" also reports the boil of what waits for one, where 204 can be a boil. */
function saysBoil(
  deciding: Deciding<"temperature">,
  { run }: { run: StageRun },
  temperatureF: number,
  boils: boolean,
): boolean {
  const { boiling } = deciding.wish.command.slots;
  if (!boiling || !boils || !run.kept || current(run.kept)) return false;
  return (
    boilsHere(deciding.state, temperatureF) && offMs(run.kept, deciding.now) <= OFF_PROCESS_LIMIT_MS
  );
}
