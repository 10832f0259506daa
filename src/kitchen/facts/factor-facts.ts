/** Facts about what is put into jars: critical factors, brews, and what was changed. */

import * as z from "zod/mini";
import { brewNow, brewStages, mayBrew } from "../jars/brews.ts";
import { liveLots, readyJars } from "../jars/lots.ts";
import { runOfRole } from "../owners.ts";
import { isRight } from "../questions/factor-questions.ts";
import { quiet } from "../settle.ts";
import { beginStage, isOver, newRun, reopen } from "../stage-run.ts";
import type { Batch } from "../state.ts";
import { fact, WOULD_STAND } from "./fact.ts";
import { batchId, count, flag, measured, text, word } from "./fields.ts";
import { markLate } from "./mark-late.ts";

function isWrong(batch: Batch, id: string, value: number | undefined): boolean {
  const factor = batch.recipe.critical.find((one) => one.id === id);
  return factor !== undefined && value !== undefined && isRight(batch, factor, value) === false;
}

export const FACTOR_FACTS = {
  confirmed: fact({
    fields: {
      batch: batchId,
      factor: word,
      held: flag,
      value: z.optional(measured),
      /** The brew or the filling it was said of, where it was not the first. */
      round: z.optional(count),
      /** Denied of the jars alone that stood filled. */
      standing: z.optional(z.literal(true)),
    },
    follows: "stages",
    passing: true,
    undoWarns: ({ held }) => (held ? undefined : WOULD_STAND()),
    evolve(state, fact): false | "noted" {
      const { batch: id, factor, value, round = 0, standing, t } = fact;
      const batch = state.batches[id];
      if (!batch) return false;
      // Whatever a line says, a value that is not what was tested does not hold.
      const held = fact.held && !isWrong(batch, factor, value);
      if (standing) {
        for (const jar of readyJars(batch)) jar.denied = [...(jar.denied ?? []), { factor, at: t }];
        return "noted";
      }
      if (!held) takenBack(batch, { factor, round, at: t, held: false });
      batch.confirmed = batch.confirmed.filter((one) => !isAnswer(one, factor, round));
      const said = value === undefined ? {} : { value };
      batch.confirmed.push({ factor, held, at: t, ...said, round });
      return "noted";
    },
  }),
  /** What was said about a factor no longer stands, and nothing else has been said yet. */
  "factor-reopened": fact({
    fields: { batch: batchId, factor: word, round: z.optional(count) },
    follows: "nothing",
    undone: ({ of }) => `the doubt${of}`,
    undoWarns: WOULD_STAND,
    evolve(state, { batch: id, factor, round = 0, t }): boolean {
      const batch = state.batches[id];
      if (!batch?.confirmed.some((one) => isAnswer(one, factor, round))) return false;
      takenBack(batch, { factor, round, at: t, held: null });
      batch.confirmed = batch.confirmed.filter((one) => !isAnswer(one, factor, round));
      return true;
    },
  }),
  /** Another potful of brine, syrup or cooking liquid, with a boil and a strength of its own. */
  "brew-made": fact({
    fields: {
      batch: batchId,
      /** All jars that hold the one before are told of. */
      counted: z.optional(z.literal(true)),
    },
    follows: "stages",
    quiets: true,
    timed: "told",
    undone: ({ of }) => `the new brew${of}`,
    evolve(state, event): boolean {
      const batch = state.batches[event.batch];
      if (!batch || !mayBrew(batch)) return false;
      if (!event.counted) {
        for (const lot of liveLots(batch)) lot.uncountedFrom ??= brewNow(batch);
      }
      pourNext(batch, event.t);
      for (const { id } of brewStages(batch)) quiet(state, batch.id, id);
      markLate(state, batch.id, event, "another brew made");
      return true;
    },
  }),
  "ingredient-changed": fact({
    fields: {
      batch: batchId,
      detail: text,
      /** The brew that was changed: jars filled before hold what it was. */
      brew: z.optional(count),
    },
    follows: "stages",
    evolve(state, { batch: id, detail, brew, t }): boolean {
      const batch = state.batches[id];
      if (!batch) return false;
      batch.changes.push({ at: t, detail, ...(brew === undefined ? {} : { brew }) });
      return true;
    },
  }),
};

function isAnswer(one: { factor: string; round: number }, factor: string, round: number): boolean {
  return one.factor === factor && one.round === round;
}

/** A factor that was said to hold is now denied or in doubt: the log keeps both. */
function takenBack(batch: Batch, now: Omit<Batch["reopened"][number], "saidAt">): void {
  const said = batch.confirmed.find((one) => isAnswer(one, now.factor, now.round));
  if (said?.held) batch.reopened.push({ ...now, saidAt: said.at });
}

/** The stages of the brew begin anew; there is more to fill, or nobody would make it. */
function pourNext(batch: Batch, at: number): void {
  const old = brewStages(batch);
  for (const run of old) {
    if (isOver(run) || run.state === "waiting") continue;
    run.state = "abandoned";
    run.endedAt = at;
  }
  const fresh = new Map(old.map((run) => [run, newRun(run.spec)]));
  batch.stages = batch.stages.map((run) => fresh.get(run) ?? run);
  const [first] = fresh.values();
  if (first) beginStage(first, at);
  batch.poured.push(old);
  const fill = runOfRole(batch, "filling");
  if (!fill || !isOver(fill)) return;
  const last = liveLots(batch).findLast((lot) => lot.jars.length > 0);
  if (last) last.allFilled = false;
  reopen(fill, "waiting");
}
