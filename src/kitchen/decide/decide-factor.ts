/** Deciding on what is said about critical factors: confirmed, denied, or taken back. */

import type { CriticalFactor } from "../../recipe/recipe.ts";
import type { Confirm } from "../command.ts";
import type { DatedFact } from "../events.ts";
import { inStore } from "../jars/change-jars.ts";
import { readyJars } from "../jars/lots.ts";
import { batchesOf, ownerIds } from "../meant.ts";
import { activeOwners, isLoad } from "../owners.ts";
import { factorOf, heldBy } from "../questions/factor-questions.ts";
import { questions, shownQuestion } from "../questions/questions.ts";
import { answerOf, openRound, roundsOf, touchedBy } from "../questions/rounds.ts";
import type { Batch, Load, State } from "../state.ts";
import { batchesAsked } from "./decide-answers.ts";
import { askWhichBatch, askYes, type Deciding, type Decision, done, refused } from "./decision.ts";

/** Critical factors are said to hold, or not to, or the last answer is taken back. */
export function decideFactor(deciding: Deciding<"factor">): Decision {
  const { command } = deciding.wish;
  const { factor, value, held, takenBack } = command.slots;
  const said = command.confirms ?? [];
  if (said.length === 0 && (factor === undefined || takenBack)) return changeAnswer(deciding);
  if (said.length === 0 && held === "unsure" && factor) return askedAnew(deciding, factor);
  const own =
    factor === undefined ? [] : [{ factor, held, ...(value === undefined ? {} : { value }) }];
  const facts: DatedFact[] = [];
  let outcome: Decision | undefined;
  for (const confirm of said.length > 0 ? said : own) {
    const one = ofOne(deciding, confirm);
    if (one.kind === "done") facts.push(...one.facts);
    else outcome ??= one;
  }
  return facts.length > 0 ? done(...facts) : (outcome ?? refused("Nothing here has that."));
}

/** Words that are only taken to be about a factor: its own question is asked, nothing is noted. */
function askedAnew(deciding: Deciding<"factor">, id: string): Decision {
  const { state, wish } = deciding;
  const open = questions(state).find(({ kind, detail }) => kind === "factor" && detail === id);
  if (open) return refused(open.text);
  const running = activeOwners(state).filter((one): one is Batch => !isLoad(one));
  const known = running.find((batch) => batch.confirmed.some(({ factor }) => factor === id));
  const factor = known && factorOf(known, id);
  if (!factor) return refused("I have not asked about that yet.");
  const confirm: Confirm = { factor: id, held: "unsure" };
  if (wish.confirmed) return noted(deciding, [known], confirm);
  return askYes(wish, `Shall I ask you again? It was: ${factor.ask}`);
}

function ofOne(deciding: Deciding<"factor">, confirm: Confirm): Decision {
  const { state, wish } = deciding;
  const { factor } = confirm;
  const shown = shownQuestion(state);
  if (shown?.kind === "factor" && shown.detail === factor && wish.command.ref === undefined) {
    return noted(deciding, batchesAsked(state, shown), confirm, shown.round);
  }
  const of = (list: Batch[]) => list.filter((batch) => factorOf(batch, factor) !== undefined);
  const named = wish.chosen
    ? [...ownerIds(wish.chosen)].flatMap((id) => state.batches[id] ?? [])
    : batchesOf(state, wish.command.ref?.recorded ?? []);
  if (named.length > 0) return noted(deciding, of(named), confirm);
  const running = activeOwners(state).filter((one): one is Batch => !isLoad(one));
  if (confirm.held === "yes" && !of(running).some((batch) => isWrong(batch, confirm))) {
    return confirmed(deciding, confirm);
  }
  const list = of(running).length > 0 ? of(running) : of(notEaten(state));
  const recipes = new Set(list.map((batch) => batch.recipe.id));
  if (recipes.size <= 1) return noted(deciding, list, confirm);
  return askWhichBatch(wish, "Which jars:", list);
}

/** Whether what is said to hold is a value that does not. */
function isWrong(batch: Batch, confirm: Confirm): boolean {
  const factor = factorOf(batch, confirm.factor);
  return factor !== undefined && heldBy(batch, factor, confirm) === "no";
}

/** A yes goes to the open question about the factor; of several, to the one that was asked. */
function confirmed(deciding: Deciding<"factor">, confirm: Confirm): Decision {
  const { state } = deciding;
  const open = questions(state).filter(({ kind, detail }) => {
    return kind === "factor" && detail === confirm.factor;
  });
  const [question, other] = open;
  if (!question) return put(deciding, confirm);
  if (other && state.asked[question.key] === undefined) return refused(question.text);
  return noted(deciding, batchesAsked(state, question), confirm, question.round);
}

/**
 * A yes that nothing asked for restores an answer that was taken back, and confirms nothing new.
 */
function put(deciding: Deciding<"factor">, confirm: Confirm): Decision {
  const { state } = deciding;
  const denied = Object.values(state.batches).filter((batch) =>
    batch.confirmed.some(({ factor, held }) => factor === confirm.factor && !held),
  );
  const [batch] = denied;
  if (!batch || denied.length > 1) return refused(whyNotNow(state, confirm));
  return noted(deciding, [batch], confirm);
}

/** Why a yes that was given unasked is not taken: it is known, or its question comes later. */
function whyNotNow(state: State, { factor: id }: Confirm): string {
  const running = activeOwners(state).filter((one): one is Batch => !isLoad(one));
  const having = running.filter((batch) => factorOf(batch, id) !== undefined);
  const known = having.some((batch) => {
    return batch.confirmed.some(({ factor, held }) => factor === id && held);
  });
  if (known) return "I have that noted already.";
  if (having.length === 0) return "Nothing here has that.";
  return "I'll ask about that when it counts. Tell me again then.";
}

/** What is written down about a factor of these batches. */
function noted(
  deciding: Deciding<"factor">,
  batches: Batch[],
  confirm: Confirm,
  asked?: number,
): Decision {
  const { state, now } = deciding;
  const { factor: id, value } = confirm;
  const facts = batches.flatMap((batch): DatedFact[] => {
    const factor = factorOf(batch, id);
    if (!factor) return [];
    const held = heldBy(batch, factor, confirm);
    // "I hope they are new" does not take back an earlier "they are new".
    const known = batch.confirmed.some((one) => one.factor === id && one.held);
    if (held === "unsure" && confirm.leans === "yes" && known) return [];
    if (held === "unsure") return reopened(state, batch, factor, { asked, t: now });
    const said = value === undefined ? {} : { value };
    if (held === "no" && asked === undefined && ofStanding(batch, factor)) {
      return [
        { type: "confirmed", batch: batch.id, factor: id, held: false, standing: true, t: now },
      ];
    }
    return roundsMeant(batch, factor, held, asked).map((one): DatedFact => {
      const of = one > 0 ? { round: one } : {};
      const fact = {
        type: "confirmed",
        batch: batch.id,
        factor: id,
        held: held === "yes",
      } as const;
      return { ...fact, ...said, ...of, t: now };
    });
  });
  return facts.length > 0 ? done(...facts) : refused("Nothing here has that.");
}

/**
 * Which brews or fillings an answer is about: the one whose question waits; where none does, a yes
 * is about those that were denied, and a no, which only raises a doubt, about all of them.
 */
function roundsMeant(
  batch: Batch,
  factor: CriticalFactor,
  held: "yes" | "no",
  asked: number | undefined,
): number[] {
  if (asked !== undefined) return [asked];
  const rounds = roundsOf(batch, factor);
  const open = openRound(batch, factor);
  if (held === "no" && open === undefined) return rounds;
  const denied = rounds.filter((round) => answerOf(batch, factor.id, round)?.held === false);
  if (open !== undefined) return [open];
  return denied.length > 0 ? denied : rounds.slice(-1);
}

/**
 * Whether a no is about the jars that stand filled: a yes was given for those in loads, before any
 * of these was filled.
 */
function ofStanding(batch: Batch, factor: CriticalFactor): boolean {
  const standing = readyJars(batch);
  const rounds = roundsOf(batch, factor);
  const last = answerOf(batch, factor.id, rounds.at(-1) ?? 0);
  if (standing.length === 0 || !last?.held || touchedBy(batch, factor, 0)?.round === undefined) {
    return false;
  }
  return standing.every((jar) => jar.filledAt > last.at);
}

/** A doubt reopens the answers that were given, and leaves open a question that waits. */
function reopened(
  state: State,
  batch: Batch,
  { id: factor }: CriticalFactor,
  { asked, t }: { asked: number | undefined; t: number },
): DatedFact[] {
  const round = asked ?? openRound(batch, { id: factor });
  const given = batch.confirmed.filter((one) => {
    return one.factor === factor && (round === undefined || one.round === round);
  });
  if (given.length > 0) {
    return given.map(({ round }) => {
      const of = round > 0 ? { round } : {};
      return { type: "factor-reopened", batch: batch.id, factor, ...of, t };
    });
  }
  const open = questions(state).find(({ kind, about, batches, detail }) => {
    return kind === "factor" && detail === factor && (batches ?? [about]).includes(batch.id);
  });
  return open ? [{ type: "left-open", key: open.key, t }] : [];
}

/** "Change my answer": the last one that was given, of a factor if one is named, is asked anew. */
function changeAnswer({ state, now, wish }: Deciding<"factor">): Decision {
  const { factor: named } = wish.command.slots;
  const answers = [
    ...Object.values(state.batches).flatMap((batch) =>
      batch.confirmed.map(({ factor, at, round }) => {
        const of = round > 0 ? { round } : {};
        const fact = { type: "factor-reopened", batch: batch.id, factor, ...of, t: now } as const;
        return { at, fact };
      }),
    ),
    ...Object.values(state.loads).flatMap((load: Load) => {
      const at = load.endAnswer?.at;
      const fact = { type: "end-reopened", load: load.id, t: now } as const;
      return at === undefined ? [] : [{ at, fact }];
    }),
  ];
  const last = answers
    .filter(({ fact }) => named === undefined || ("factor" in fact && fact.factor === named))
    .toSorted((a, b) => a.at - b.at)
    .at(-1);
  return last ? done(last.fact) : refused("I have no answer of yours to change.");
}

/** Finished batches that have jars left, newest first. */
function notEaten(state: State): Batch[] {
  const left = (batch: Batch) => batch.lots.some((lot) => inStore(lot, true).length > 0);
  return Object.values(state.batches)
    .filter((batch) => batch.state === "complete" && left(batch))
    .toReversed();
}

/** A report that already says what would be asked ("eight pints filled, new lids"). */
export function confirmedBeside(
  state: State,
  facts: readonly DatedFact[],
  confirms: readonly Confirm[],
  t: number,
): DatedFact[] {
  const ids = facts.flatMap((fact) => {
    if (fact.type === "jars-filled") return [fact.batch];
    return fact.type === "stage-done" ? [fact.owner] : [];
  });
  const batch = state.batches[ids[0] ?? ""];
  return (batch ? confirms : []).flatMap((confirm): DatedFact[] => {
    const factor = batch && factorOf(batch, confirm.factor);
    const held = batch && factor && heldBy(batch, factor, confirm);
    if (!held || held === "unsure") return [];
    const { factor: id, value } = confirm;
    const round = openRound(batch, factor) ?? roundsOf(batch, factor).at(-1) ?? 0;
    if (held === "yes" && answerOf(batch, id, round)) return [];
    const said = value === undefined ? {} : { value };
    const of = round > 0 ? { round } : {};
    return [
      { type: "confirmed", batch: batch.id, factor: id, held: held === "yes", ...said, ...of, t },
    ];
  });
}
