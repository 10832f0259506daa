/** Deciding on a boil: that it began, that it was lost, and what else such words may mean. */

import { numberWords } from "../../reckon/number-words.ts";
import { OFF_PROCESS_HOURS } from "../../reckon/trade-numbers.ts";
import { isLoad, type Owner } from "../owners.ts";
import { questions } from "../questions/questions.ts";
import { heldForCanner } from "../settle.ts";
import { isOver } from "../stage-run.ts";
import { hasRole, isOfCanner, rulesOf } from "../stages/kinds.ts";
import type { StageRun } from "../state.ts";
import { current, isLost, OFF_PROCESS_LIMIT_MS, offMs } from "../unbroken-time.ts";
import { notTheseLoads } from "./decide-heard.ts";
import { type Candidate, candidateStages, choicesOf, isReady, stageFact } from "./decide-stages.ts";
import {
  askWhich,
  type Deciding,
  type Decision,
  done,
  happenedAt,
  type Present,
  refused,
} from "./decision.ts";

/** Whether a report of a boil could be about this stage. */
function awaitsBoil(deciding: Present) {
  return (owner: Owner, run: StageRun): boolean => {
    if (isLoad(owner)) {
      const loaded = owner.loadedAt !== undefined && owner.unloadedAt === undefined;
      if (!loaded || !hasRole(run.spec, "treatment") || isOver(run)) return false;
      return owner.terms?.method === "boiling-water" && !(run.kept && current(run.kept));
    }
    if (rulesOf(run.spec).thermometer !== "pot" || !run.kept || current(run.kept)) return false;
    if (owner.state === "held") return false;
    const waits = heldForCanner(deciding.state, owner, run, deciding.now);
    return run.state === "running" || waits || isReady(deciding, owner, run);
  };
}

export function decideBoiling(deciding: Deciding<"boiling">): Decision {
  const { state, now, wish } = deciding;
  const { slots, ref } = wish.command;
  const when = happenedAt(state, slots, now);
  if (!when.ok) return refused(when.reason);
  let open = candidateStages(deciding, ref, awaitsBoil(deciding));
  const canners = open.filter((one) => isLoad(one.owner));
  if (slots.covered && canners.length > 0) open = canners;
  const [one] = open;
  if (!one) return boilWithoutWait(deciding, when.t);
  if (open.length > 1) return askWhich(wish, "Which is boiling:", choicesOf(state, open));
  const kept = one.run.kept;
  if (kept && isLoad(one.owner) && offMs(kept, when.t) > OFF_PROCESS_LIMIT_MS) {
    return refused(
      `It has been off its boil for over ${numberWords(OFF_PROCESS_HOURS)} hours, ` +
        "so it can't be started over. " +
        "Refrigerate, freeze or discard those jars.",
    );
  }
  const t = Math.max(when.t, earliestSign(one));
  const covered = slots.covered ?? null;
  return done({ type: "boil", owner: one.owner.id, stage: one.run.id, covered, t });
}

/** A start is never moved to before the loading or the last loss. */
export function earliestSign(one: Candidate): number {
  const loadedAt = isLoad(one.owner) ? (one.owner.loadedAt ?? 0) : (one.run.startedAt ?? 0);
  return Math.max(loadedAt, one.run.kept?.stretches.at(-1)?.to ?? 0);
}

/** What a canner that is not judged by its boil needs to be told instead. */
const GOES_BY: Record<string, string> = {
  pressure: "That canner goes by steam and pressure. Tell me when it vents, or the pressure.",
  steam: "That canner goes by steam. Tell me of a full column of steam, and its temperature.",
  "low-temperature": "That canner goes by its temperature. What does the thermometer show?",
};

function boilWithoutWait(deciding: Deciding<"boiling">, t: number): Decision {
  const { ref } = deciding.wish.command;
  const warm = candidateStages(deciding, ref, (owner, run) => {
    return isLoad(owner) && run.spec.step === "canner" && run.state === "running";
  });
  const [canner] = warm;
  if (canner && warm.length === 1) return done(stageFact("stage-done", canner, t));
  const already = candidateStages(deciding, ref, (_, run) => {
    return run.kept !== undefined && current(run.kept) !== undefined && run.state === "running";
  });
  if (already.length > 0) return boilsAlready(deciding, already, t);
  const pressure = candidateStages(deciding, ref, (owner, run) => {
    return isLoad(owner) && hasRole(run.spec, "treatment") && !isOver(run);
  }).find((one) => isLoad(one.owner) && one.owner.loadedAt !== undefined);
  const method = pressure && isLoad(pressure.owner) ? pressure.owner.terms?.method : undefined;
  const asks = method && GOES_BY[method];
  if (asks) return refused(asks);
  return refused("Nothing is waiting to boil.");
}

/** The boil is already known: the words may still answer what was asked about the water. */
function boilsAlready(deciding: Deciding<"boiling">, already: Candidate[], t: number): Decision {
  const { wish, state } = deciding;
  const asked = questions(state)[0];
  const load = already.find((one) => one.owner.id === asked?.about)?.owner;
  if (load && asked?.kind === "still-covered" && wish.command.slots.covered) {
    return done({ type: "cover", load: load.id, covered: true, t });
  }
  // That it boils now does not say that it never stopped.
  if (load && asked?.kind === "still" && asked.detail === "boil") return refused(asked.text);
  if (load && asked?.kind === "gap") return refused(`${asked.text} Say yes or no.`);
  return refused("I already have it boiling.");
}

function isCurrent({ kept }: StageRun): boolean {
  return kept !== undefined && current(kept) !== undefined;
}

export function decideBoilLost(deciding: Deciding<"boil-lost">): Decision {
  const { state, now, wish } = deciding;
  const { slots, ref } = wish.command;
  const when = happenedAt(state, slots, now);
  if (!when.ok) return refused(when.reason);
  const vented = candidateStages(deciding, ref, (owner, run) => {
    return isLoad(owner) && hasRole(run.spec, "venting") && !isOver(run) && isCurrent(run);
  })[0];
  if (vented) return done({ type: "steam-lost", load: vented.owner.id, t: when.t });
  const open = candidateStages(deciding, ref, (owner, run) => {
    if (!run.kept || !(isLoad(owner) ? hasRole(run.spec, "treatment") : !isOfCanner(run.spec)))
      return false;
    if (isLoad(owner) && owner.unloadedAt !== undefined) return false;
    if (isOver(run)) return when.t < (run.endedAt ?? 0) && isLoad(owner);
    return current(run.kept) !== undefined || run.kept.unconfirmedAt !== undefined;
  });
  const [one] = open;
  if (!one) {
    const lost = candidateStages(
      deciding,
      ref,
      (_, run) => run.kept !== undefined && isLost(run.kept),
    );
    return refused(
      lost.length > 0 ? "I already have it as lost." : "Nothing is boiling that I know of.",
    );
  }
  if (open.length > 1) return askWhich(wish, "Which lost its boil:", choicesOf(state, open));
  if (isLoad(one.owner) && one.owner.terms?.method === "pressure") {
    return done({ type: "pressure-lost", load: one.owner.id, t: when.t });
  }
  const uncovered = slots.uncovered ?? false;
  const from = one.run.kept?.stretches.at(-1)?.from ?? when.t;
  const t = Math.max(when.t, from);
  const others = wish.chosen ? notTheseLoads(state, one.owner.id, now) : [];
  const lost = { type: "boil-lost", owner: one.owner.id, stage: one.run.id, uncovered, t } as const;
  return done(lost, ...others);
}
