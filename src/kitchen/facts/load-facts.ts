/** Facts about a load: its canner lit, its jars put in and lifted out. */

import * as z from "zod/mini";
import { processTerms } from "../../recipe/recipe-shape.ts";
import { STILL_HOT_MINUTES } from "../../reckon/trade-numbers.ts";
import { areReady, putIn } from "../jars/change-jars.ts";
import { idsFor } from "../jars/jar-ids.ts";
import { findLot, lotOf, standingSince } from "../jars/lots.ts";
import { cannerStages } from "../loads/canner-stages.ts";
import { gaugeTargetPsi } from "../loads/gauge-target.ts";
import { raiseTerms } from "../loads/raise-terms.ts";
import { mayStandMinutes } from "../loads/standing.ts";
import { unload } from "../loads/unload.ts";
import { hasBegun, runOf, runOfRole } from "../owners.ts";
import { knows } from "../places.ts";
import { carriedDoubts } from "../questions/heard-doubts.ts";
import { finish, isOver, newRun } from "../stage-run.ts";
import { rulesOf } from "../stages/kinds.ts";
import type { Batch, Load, State } from "../state.ts";
import { MINUTE_MS } from "../time.ts";
import { fact } from "./fact.ts";
import { batchId, flag, gauge, loadId, part, word } from "./fields.ts";
import { newJar } from "./jar-facts.ts";
import { markLate } from "./mark-late.ts";

export const LOAD_FACTS = {
  "load-opened": fact({
    fields: {
      load: loadId,
      canner: word,
      batch: batchId,
      terms: processTerms,
      gauge: z.nullable(gauge),
      /** The end of its process is asked about, whatever its method. */
      endAsked: z.optional(z.literal(true)),
    },
    begins: "load",
    follows: "stages",
    own: true,
    passing: true,
    evolve(state, event): boolean {
      const batch = state.batches[event.batch];
      if (!batch || batch.state === "abandoned") return false;
      batch.terms = event.terms;
      state.loads[event.load] = {
        id: event.load,
        canner: event.canner,
        batch: event.batch,
        terms: event.terms,
        gauge: event.gauge,
        openedAt: event.t,
        state: "running",
        stages: loadRuns(batch, event.terms, event.gauge, isHot(state, event.canner, event.t)),
        parts: [],
        early: false,
        raised: [],
        endAsked: event.endAsked ?? event.terms.method !== "pressure",
        covered: null,
        uncoveredTimes: 0,
        waterLow: [],
        heard: [],
        endReopened: [],
        readings: [],
        disposed: [],
        gaps: [],
        late: [],
      };
      state.active.push(event.load);
      return true;
    },
  }),
  "load-terms": fact({
    fields: {
      load: loadId,
      terms: processTerms,
      gauge: z.nullable(gauge),
      /** The altitude is higher than was thought while the process ran, or after it. */
      raised: z.optional(z.literal(true)),
    },
    follows: "stages",
    own: true,
    passing: true,
    undoWarns: ({ raised }) => (raised ? "The tested process would be less." : undefined),
    evolve(state, event): boolean {
      const load = state.loads[event.load];
      const batch = load && state.batches[load.batch];
      if (!load || !batch) return false;
      const begun = hasBegun(load);
      if (begun && !event.raised) return false;
      const hot = isHot(state, load.canner, load.openedAt);
      const stages = loadRuns(batch, event.terms, event.gauge, hot);
      batch.terms = event.terms;
      const shown = gaugeTargetPsi(load) ?? 0;
      load.gauge = event.gauge;
      if (begun) {
        raiseTerms(state, load, { ...event, shown }, stages);
        return true;
      }
      load.terms = event.terms;
      // Stages that were done stay done: the canner is warm, the jars are in. A boil
      // that waits for a word about the water stays reported.
      const unconfirmedAt = runOfRole(load, "treatment")?.kept?.unconfirmedAt;
      load.stages = stages.map(
        (run) => load.stages.find((one) => one.id === run.id && one.state !== "waiting") ?? run,
      );
      const kept = runOfRole(load, "treatment")?.kept;
      if (kept && unconfirmedAt !== undefined) kept.unconfirmedAt = unconfirmedAt;
      return true;
    },
  }),
  loaded: fact({
    fields: { load: loadId, parts: z.array(part) },
    follows: "stages",
    undone: ({ of }) => `the loading${of}`,
    quiets: true,
    timed: "told",
    evolve(state, event): boolean {
      const load = state.loads[event.load];
      if (!load || load.loadedAt !== undefined) return false;
      if (!event.parts.every((part) => areReady(lotOf(state, part.batch), part.numbers)))
        return false;
      load.loadedAt = event.t;
      const newId = idsFor(state);
      for (const part of event.parts) {
        const found = findLot(state, part.batch);
        if (!found) continue;
        const { batch, lot } = found;
        const made = newJar(batch, lot, event, event.t);
        const jars = putIn(lot, load.id, { ...part, made, newId });
        const from = standingSince(jars) ?? event.t;
        const stood = { from, mayMinutes: mayStandMinutes(state, batch) };
        if (!load.parts.some((one) => one.batch === batch.id)) {
          load.heard.push(...carriedDoubts(batch));
        }
        const own = part.terms ? { terms: part.terms } : {};
        load.parts.push({ lot: lot.id, batch: batch.id, stood, ...own });
        if (!batch.loads.includes(load.id)) batch.loads.push(load.id);
      }
      for (const id of ["canner", "load"]) {
        const run = runOf(load, id);
        if (run && !isOver(run)) finish(run, event.t);
      }
      markLate(state, load.id, event, "loaded");
      return true;
    },
  }),
  unloaded: fact({
    fields: { load: loadId, early: flag },
    follows: "stages",
    quiets: true,
    timed: "told",
    evolve(state, event): boolean {
      const load = state.loads[event.load];
      if (!load || load.loadedAt === undefined || load.unloadedAt !== undefined) return false;
      unload(state, load, event);
      markLate(state, load.id, event, "jars out");
      return true;
    },
  }),
};

function loadRuns(
  batch: Batch,
  terms: NonNullable<Load["terms"]>,
  gauge: Load["gauge"],
  hot: boolean,
): Load["stages"] {
  return cannerStages(terms, batch.recipe, gauge, hot).map((stage) => {
    const { condition } = rulesOf(stage);
    return newRun(stage, condition?.minutes(terms), condition?.readEvery(terms));
  });
}

/** Whether jars were lifted out of a canner so recently that it is still hot. */
function isHot(state: State, canner: string, at: number): boolean {
  return Object.values(state.loads).some((load) => {
    const since = at - (load.unloadedAt ?? Number.NEGATIVE_INFINITY);
    return (
      load.canner === canner &&
      knows(state, load.id) &&
      since >= 0 &&
      since <= STILL_HOT_MINUTES * MINUTE_MS
    );
  });
}
