/** Deciding on changes to a running batch, and on stages that are left out. */

import { refusedJar } from "../../recipe/choose-process.ts";
import type { JarSize } from "../../recipe/recipe.ts";
import { commandOf } from "../command.ts";
import { handsNow } from "../day/coming.ts";
import type { DatedFact } from "../events.ts";
import { largestLoad } from "../jars/canner-room.ts";
import { filled, lotsIn } from "../jars/lots.ts";
import { termsFor } from "../loads/next-load.ts";
import { openLoad } from "../loads/open-load.ts";
import { lotsOf } from "../meant.ts";
import { isLoad } from "../owners.ts";
import { batchName, ownerName, upper } from "../spoken-names.ts";
import { isOver } from "../stage-run.ts";
import { isOfCanner, rulesOf } from "../stages/kinds.ts";
import type { Batch, StageRun } from "../state.ts";
import { admittedVariety } from "./begin/begin-gate.ts";
import { batchFor, expectedJars, HEAVIEST_LB } from "./decide-batch.ts";
import { candidateStages, choicesOf, decideDone } from "./decide-stages.ts";
import {
  askWhich,
  askWhichLot,
  askYes,
  type Deciding,
  type Decision,
  done,
  happenedAt,
  refOf,
  refused,
} from "./decision.ts";

type Changed = { jar: JarSize | null; terms: Batch["terms"]; ask?: string };

/** Changes weight, variety or jar of a batch, as far as what has happened allows. */
export function decideChange(deciding: Deciding<"change-batch">): Decision {
  const { now, wish } = deciding;
  const { slots } = wish.command;
  const live = (batch: Batch) => batch.state === "running" || batch.state === "held";
  const found = batchFor(deciding, live, "Nothing to change");
  if ("outcome" in found) return found.outcome;
  const { batch } = found;
  const { moreLb } = slots;
  const ofLot = [moreLb, slots.weightLb, slots.variety, slots.name].some(
    (one) => one !== undefined,
  );
  const refs = wish.chosen ?? wish.command.ref?.running ?? [];
  const named = lotsOf(deciding.state, refs).filter((one) => one.batch === batch);
  const [one, other] = named.length > 0 ? named : lotsIn(batch);
  if (!one) return refused(`Nothing of ${batchName(batch)} is left.`);
  if (ofLot && other)
    return askWhichLot(wish, "Which batch:", named.length > 0 ? named : lotsIn(batch));
  const { lot: meant } = one;
  const chosen = { ...wish, chosen: [refOf(one)] };
  const before = meant.weightLb;
  if (moreLb !== undefined && before === null) {
    return refused(`How many pounds of ${batchName(batch)} are there now in all?`);
  }
  const summed = Math.round(((before ?? 0) + (moreLb ?? 0)) * 1000) / 1000;
  const weightLb = moreLb === undefined ? slots.weightLb : summed;
  if (weightLb !== undefined && !(weightLb > 0 && weightLb <= HEAVIEST_LB)) {
    return refused(`${weightLb} pounds can't be right. How much is there?`);
  }
  const name = slots.variety ?? slots.name;
  const gate = name === undefined ? undefined : admittedVariety(deciding, batch, meant, name);
  if (gate && "kind" in gate) return gate.kind === "ask" ? { ...gate, wish: chosen } : gate;
  const jar = slots.jar === undefined ? undefined : jarChanged(deciding, batch, slots.jar);
  if (typeof jar === "string") return refused(jar);
  if (jar?.ask && gate && gate.facts.length > 0)
    return refused("One thing at a time: say it again.");
  if (jar?.ask && wish.confirmed !== true) return askYes(chosen, jar.ask);
  const size = jar?.jar ?? batch.jar;
  const facts = (ofLot ? [meant] : batch.lots).map(
    ({ variety, foods, pickedAt, ...of }): DatedFact => {
      const lot = {
        variety: gate ? gate.variety : variety,
        ...(foods ? { foods } : {}),
        weightLb: weightLb ?? of.weightLb,
        pickedAt,
      };
      return {
        type: "batch-changed",
        batch: of.id,
        lot,
        jar: size,
        terms: jar ? jar.terms : batch.terms,
        expectedJars: expectedJars(batch.recipe, lot, size),
        t: now,
      };
    },
  );
  return done(...(gate?.facts ?? []), ...facts);
}

/** Another size of jar, before any is filled and where it was tested; or why not. */
function jarChanged(deciding: Deciding, batch: Batch, jar: JarSize): Changed | string {
  const { state, library } = deciding;
  if (batch.jar === null) return `${upper(batchName(batch))} goes into no jars.`;
  if (batch.jar === jar) return `They are ${jar}s already.`;
  if (filled(batch) > 0 || batch.loads.some((id) => state.loads[id]?.loadedAt !== undefined)) {
    return `Jars are filled already, in ${batch.jar}s: the size stays as it is.`;
  }
  const larger = refusedJar(batch.recipe, jar);
  if (larger !== undefined) return `${upper(larger)}.`;
  if (!batch.option) return { jar, terms: null };
  if (largestLoad(state, jar) < 1) return `No canner here holds ${jar}s.`;
  if (state.kitchen.altitudeFt === null) return { jar, terms: null };
  const load = openLoad(state, batch);
  const canner =
    state.kitchen.canners.find((one) => one.id === load?.canner) ?? state.kitchen.canners[0];
  const choice = termsFor(state, { ...batch, jar }, canner, library);
  if (!choice.ok) return choice.missing ? { jar, terms: null } : `${upper(choice.reason)}.`;
  const { terms } = choice;
  const before = batch.terms?.minutes;
  if (before === undefined || before === terms.minutes) return { jar, terms };
  const ask =
    `In ${jar}s the process takes ${terms.minutes} minutes instead of ${before}. ` +
    `Change to ${jar}s? Say yes or no.`;
  return { jar, terms, ask };
}

/**
 * Whether a stage may be left out: never one that the food's safety or a tested process rests on.
 */
function mayBeSkipped({ spec, kept }: StageRun): boolean {
  const rules = rulesOf(spec);
  const guards = rules.guarded || rules.watched || rules.role !== null || isOfCanner(spec);
  const lives = rules.thermometer === "culture" || rules.ends === "sign";
  return !guards && !lives && kept === undefined && spec.asks.length === 0;
}

/** Leaves a stage out, after a yes: the recipe was tested with it, and the log says so. */
export function decideSkip(deciding: Deciding<"skip">): Decision {
  const { state, now, wish } = deciding;
  const open = candidateStages(deciding, wish.command.ref, (_, run) => {
    return !isOver(run) && (run.state === "running" || wish.command.ref !== undefined);
  });
  const inFocus = open.filter(({ owner }) => owner.id === state.focus);
  const list = open.length > 1 && !wish.command.ref && inFocus.length > 0 ? inFocus : open;
  const [one] = list;
  if (!one) return refused("There is nothing in hand to leave out.");
  if (list.length > 1)
    return askWhich(wish, "Which one should be left out:", choicesOf(state, list));
  const { owner, run } = one;
  const title = run.spec.title;
  if (isLoad(owner) || !mayBeSkipped(run)) {
    return refused("I can't leave that out: the jar's safety rests on it.");
  }
  if (wish.confirmed !== true) {
    const chosen = { ...wish, chosen: [{ owner: owner.id, stage: run.id }] };
    const name = ownerName(state, owner);
    return askYes(chosen, `Leave out ${title} of ${name}? The recipe calls for it. Say yes or no.`);
  }
  return done({ type: "stage-skipped", owner: owner.id, stage: run.id, t: now });
}

const UNSOUND =
  "Soft, slimy, pink or foul: throw it out, and say so. " +
  "Scum or a little mold on top: take it off, and tell me when it is under the brine.";

/** Below this certainty, what may end a step is not taken for its end (our choice). */
const SURE = 0.9;

/** A look at what ferments or dries, for which a recurring check asks. */
export function decideLooked(deciding: Deciding<"looked">): Decision {
  const { state, wish, now } = deciding;
  const { slots, ref } = wish.command;
  const found = candidateStages(deciding, ref, (_, run) => {
    return run.state === "running" && !isOver(run) && run.spec.checks !== undefined;
  });
  const [one] = found;
  // "Skimmed it" may be said of the jam, while the kraut ferments.
  const another = ref === undefined && handsNow(state, now).some(({ run }) => run !== one?.run);
  if (!one || another) {
    if (wish.command.confidence < SURE) return refused("Say what is done, please.");
    const command = commandOf("done", slots, ref === undefined ? {} : { ref });
    return decideDone({ ...deciding, wish: { command } });
  }
  if (wish.command.confirms?.some(({ held }) => held === "no")) return refused(UNSOUND);
  if (found.length > 1) return askWhich(wish, "Which one:", choicesOf(state, found));
  const when = happenedAt(state, slots, now);
  if (!when.ok) return refused(when.reason);
  if (when.t < (one.run.startedAt ?? 0)) return refused("It had not begun by then.");
  if (one.run.lookedAt === when.t) return done();
  return done({ type: "looked", owner: one.owner.id, stage: one.run.id, t: when.t });
}
