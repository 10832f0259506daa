/**
 * Where what happened departs from what the recipe asks. Deviations are worked out from the
 * record each time, so a corrected time corrects them; only dispositions are written.
 */
import type { CriticalFactor } from "../recipe/recipe.ts";
import { brewStages } from "./jars/brews.ts";
import { loadsOf, lotTrouble } from "./jars/canner-room.ts";
import type { BatchLot } from "./jars/jar.ts";
import { loadDeviations } from "./loads/load-deviations.ts";
import {
  deviation,
  lateDeviation,
  lossDeviations,
  minutesText,
  windowDeviations,
} from "./loads/stage-deviations.ts";
import { runOfRole } from "./owners.ts";
import { seenFor } from "./places.ts";
import { applies } from "./questions/factor-questions.ts";
import { answerOf, roundsOf, touchedBy, touches } from "./questions/rounds.ts";
import { potOf } from "./spoken-names.ts";
import { isOver } from "./stage-run.ts";
import { rulesOf } from "./stages/kinds.ts";
import type { Batch, Deviation, LoadPart, StageRun, State } from "./state.ts";
import { achievedMinutes } from "./unbroken-time.ts";

/**
 * Codes of a batch and of the loads its jars went through, in the order they happened; of one lot
 * alone, those of its own loads.
 */
export function batchDeviations(
  state: State,
  batch: Batch,
  now: number,
  lot?: BatchLot,
): Deviation[] {
  const isIts = (part: LoadPart) => part.batch === batch.id && (!lot || part.lot === lot.id);
  const isOfIts = ({ only }: Deviation) => {
    // Jars that are still to be filled may be touched.
    return !lot?.allFilled || !only || lot.jars.some((jar) => touches(only, lot, jar));
  };
  const list = [
    ...ownDeviations(state, batch, now).filter(isOfIts),
    ...countDeviations(state, batch, lot ? [lot] : batch.lots),
    ...loadsOf(state, batch).flatMap((load) => {
      return loadDeviations(state, load, load.parts.filter(isIts), now);
    }),
  ];
  return list.sort((a, b) => a.at - b.at);
}

/** Those of a batch's own stages, pots and food. */
function ownDeviations(state: State, batch: Batch, now: number): Deviation[] {
  return [
    ...stageDeviations(batch, now),
    ...warmReadings(batch),
    ...factorDeviations(batch),
    ...jarDeviations(batch),
    ...kitchenDeviations(state, batch, now),
    ...batch.changes.map(({ at, detail, brew }): Deviation => {
      const changed = deviation("ingredient-changed", null, at, detail);
      return brew === undefined ? changed : { ...changed, only: { brew, after: at } };
    }),
    ...batch.late.map(lateDeviation),
  ];
}

/** Those of its stages; of several brews, each touches its own jars. */
function stageDeviations(batch: Batch, now: number): Deviation[] {
  if (batch.poured.length === 0) return batch.stages.flatMap((run) => runDeviations(run, now));
  const pots = brewStages(batch);
  const others = batch.stages.filter((run) => !pots.includes(run));
  const brews = [...batch.poured, pots].flatMap((runs, brew) => {
    return runs
      .flatMap((run) => runDeviations(run, now))
      .map((one) => ({ ...one, only: { brew } }));
  });
  return [...brews, ...others.flatMap((run) => runDeviations(run, now))];
}

function runDeviations(run: StageRun, now: number): Deviation[] {
  if (run.state !== "skipped") return [...potDeviations(run), ...windowDeviations(run, now)];
  if (run.spec.optional === true) return potDeviations(run);
  const left = deviation("skipped", run.id, run.endedAt ?? now, `${run.spec.title} left out`);
  return [left, ...potDeviations(run)];
}

/** What was denied of some jars alone. */
function jarDeviations(batch: Batch): Deviation[] {
  const said = new Map<string, Deviation>();
  for (const jar of batch.lots.flatMap(({ jars }) => jars)) {
    for (const { factor, at } of jar.denied ?? []) {
      const only = { denied: { factor, at } };
      said.set(`${factor} ${at}`, { ...deniedFactor(batch, factor, at), only });
    }
  }
  return [...said.values()];
}

/** A brine or syrup that lost its boil, or was taken off before its time. */
function potDeviations(run: StageRun): Deviation[] {
  const list: Deviation[] = [];
  const { kept } = run;
  const { condition } = rulesOf(run.spec);
  if (!kept || !condition || run.spec.heat?.holdMinutes === 0) return list;
  const done = isOver(run) ? "carried-on" : "undecided";
  list.push(...lossDeviations(kept, run.id, condition.loss(undefined), done));
  if (run.endedShort && run.endedAt !== undefined) {
    const got = Math.floor(achievedMinutes(kept, run.endedAt));
    const detail = `${run.spec.title}: ${got} of ${kept.needMinutes} min`;
    list.push(deviation("skipped", run.id, run.endedAt, detail));
  }
  return list;
}

function factorDeviations(batch: Batch): Deviation[] {
  return batch.recipe.critical.flatMap((factor) => {
    if (!applies(batch, factor)) return [];
    const rounds = roundsOf(batch, factor);
    return rounds.flatMap((round) => {
      const only = rounds.length > 1 ? touchedBy(batch, factor, round) : undefined;
      const list = roundDeviations(batch, factor, round);
      return only ? list.map((one) => ({ ...one, only })) : list;
    });
  });
}

/** What departed in one factor as it was said of one brew or one filling. */
function roundDeviations(batch: Batch, { id }: CriticalFactor, round: number): Deviation[] {
  const said = answerOf(batch, id, round);
  const asking = askingStage(batch, id);
  const stage = asking?.id ?? null;
  const list = batch.reopened
    .filter((one) => one.factor === id && one.round === round)
    .map(({ at, held }) => {
      const now = held === null ? "then in doubt" : "then denied";
      return deviation("contradicted", stage, at, `${id}: confirmed, ${now}`);
    });
  if (said?.held) return list;
  if (said) return [...list, deniedFactor(batch, id, said.at)];
  if (!asking || !isOver(asking) || batch.state !== "complete") return list;
  const at = asking.endedAt ?? batch.endedAt ?? batch.begunAt;
  return [...list, deviation("critical-unrecorded", stage, at, `${id}: nobody confirmed it`)];
}

function deniedFactor(batch: Batch, id: string, at: number): Deviation {
  const code = id === "headspace" ? "headspace" : "critical-unrecorded";
  return deviation(code, askingStage(batch, id)?.id ?? null, at, `${id}: answered no`);
}

function askingStage(batch: Batch, id: string): StageRun | undefined {
  return batch.stages.find((run) => run.spec.asks.includes(id));
}

function countDeviations(state: State, batch: Batch, lots: readonly BatchLot[]): Deviation[] {
  if (batch.state !== "complete" || !batch.option) return [];
  return lots.flatMap((lot) => {
    const trouble = lotTrouble(state, batch, lot);
    if (!trouble) return [];
    return deviation("jar-count", checkIn(state, batch), batch.endedAt ?? 0, trouble);
  });
}

/** The id of the stage in which a batch's jars were counted. */
function checkIn(state: State, batch: Batch): string | null {
  const load = loadsOf(state, batch).at(-1);
  return (load && runOfRole(load, "seals")?.id) ?? null;
}

/** Doubts that leave the tested time unknown until an altitude is given. */
const UNTIL_SETTLED: ReadonlySet<string> = new Set(["denied", "untested", "then"]);

function kitchenDeviations(given: State, batch: Batch, now: number): Deviation[] {
  const state = seenFor(given, batch.id);
  const until = batch.endedAt ?? now;
  const during = (at: number) => at >= batch.begunAt && at <= until;
  const list: Deviation[] = [];
  for (const set of state.clockSets) {
    if (!during(set.at)) continue;
    const by = `${set.byMs < 0 ? "back" : "forward"} ${minutesText(Math.abs(set.byMs))}`;
    list.push(deviation("clock-changed", null, set.at, `the wall clock was set ${by}`));
  }
  for (const failure of state.logFailures) {
    if (failure.to < batch.begunAt || failure.from > until) continue;
    const detail = `${failure.events} events written late: the disk refused them`;
    list.push(deviation("log-not-written", null, failure.from, detail));
  }
  for (const doubt of state.doubts) {
    // A boil that was confirmed after all leaves one doubt: the altitude.
    const again = state.doubts.some((one) => one !== doubt && one.detail === doubt.detail);
    const its = doubt.why === "then" ? batch.loads.includes(doubt.owner ?? "") : during(doubt.at);
    if (!its || (doubt.why === "no-boil" && again)) continue;
    const open = doubt.settledFt === undefined && UNTIL_SETTLED.has(doubt.why ?? "");
    const what = open ? "undecided" : "carried-on";
    list.push(deviation("altitude-doubt", null, doubt.at, doubt.detail, what));
  }
  return list;
}

/** Readings of a crock or a rest above what its recipe allows: only a matter of quality. */
function warmReadings(batch: Batch): Deviation[] {
  return batch.stages.flatMap((run) => {
    const { temperatureF } = run.spec;
    const pot = rulesOf(run.spec).thermometer === "pot";
    if (!temperatureF || pot || run.startedAt === undefined) return [];
    const { startedAt, endedAt = Number.POSITIVE_INFINITY } = run;
    return batch.readings
      .filter(({ at, what, unit }) => {
        return what === potOf(run) && unit === "F" && at >= startedAt && at <= endedAt;
      })
      .filter(({ value }) => value > temperatureF.max)
      .map(({ at, value }) => {
        const detail = `${value} F: ${temperatureF.max} F at most is asked`;
        return deviation("temperature-high", run.id, at, detail);
      });
  });
}

/** What was said once of the jars of several loads departs once. */
export function eachOnce(all: readonly Deviation[]): Deviation[] {
  const keyOf = ({ code, at, detail }: Deviation) => `${code} ${at} ${detail}`;
  const heard = all.filter(({ code }) => code === "unheard");
  const first = new Map(heard.toReversed().map((one) => [keyOf(one), one]));
  return all.filter((one) => one.code !== "unheard" || first.get(keyOf(one)) === one);
}
