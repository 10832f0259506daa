/** Questions about critical factors, and what an answer says about the factor. */

import type { CriticalFactor } from "../../recipe/recipe.ts";
import type { Confirm } from "../command.ts";
import { brewStages, isOfBrew } from "../jars/brews.ts";
import { filled, filledOf, lotsIn } from "../jars/lots.ts";
import { activeOwners, isLoad } from "../owners.ts";
import { listed, lotName, potOf } from "../spoken-names.ts";
import { hasRole } from "../stages/kinds.ts";
import type { Batch, State } from "../state.ts";
import { HOUR_MS } from "../time.ts";
import { eitherOf, type Question } from "./question.ts";
import { openRound } from "./rounds.ts";

/** Whether a factor of the recipe applies to the way this batch is put up. */
export function applies(batch: Batch, factor: CriticalFactor): boolean {
  const { methods, packs, processUnderMinutes } = factor.onlyFor ?? {};
  const method = batch.option?.method;
  if (methods && !(method && methods.includes(method))) return false;
  if (processUnderMinutes !== undefined) {
    if (!batch.terms || batch.terms.minutes >= processUnderMinutes) return false;
  }
  return !packs || (batch.pack !== null && packs.includes(batch.pack));
}

/** A factor of a batch by its id, where it applies. */
export function factorOf(batch: Batch, id: string): CriticalFactor | undefined {
  return batch.recipe.critical.find((one) => one.id === id && applies(batch, one));
}

/** Whether the stage that asks for a factor has had its turn. */
function isTurn(batch: Batch, id: string): boolean {
  return batch.stages.some((run) => {
    if (!run.spec.asks.includes(id) || run.state === "waiting") return false;
    if (!hasRole(run.spec, "filling")) return true;
    const round = openRound(batch, { id });
    return batch.lots.some((lot) => lot.round === round && filledOf(lot) > 0);
  });
}

/**
 * Whether a factor waits for its answer; for jars on the shelf, until a day after it was doubted.
 */
function isOpen(state: State, batch: Batch, id: string): boolean {
  if (batch.state === "abandoned" || openRound(batch, { id }) === undefined) return false;
  const doubted = batch.reopened.findLast((one) => one.factor === id);
  if (batch.state === "complete") {
    return doubted !== undefined && state.lastW - doubted.at < 24 * HOUR_MS;
  }
  return isTurn(batch, id);
}

/**
 * Lots whose pots and jars are in step with a batch's, and those that will need what is shared: one
 * question names and covers them all. The first that must know now is in front.
 */
function together(state: State, batch: Batch, { id, shared }: CriticalFactor): Batch[] {
  const alike = asking(state).filter((one) => {
    if (one.recipe.id !== batch.recipe.id || one.pack !== batch.pack) return false;
    return factorOf(one, id) !== undefined;
  });
  const open = alike.filter((one) => isOpen(state, one, id));
  const later = alike.filter((one) => shared && !open.includes(one) && willAsk(one, id));
  return [...open, ...later];
}

/** Whether the stage that asks for a factor is still to come, and nothing is known of it yet. */
function willAsk(batch: Batch, id: string): boolean {
  const known = [...batch.confirmed, ...batch.reopened].some((one) => one.factor === id);
  return batch.state === "running" && !known && filled(batch) === 0;
}

/** Batches that may have something to ask: those under way, and those with a recent retraction. */
function asking(state: State): Batch[] {
  const running = activeOwners(state).filter((one): one is Batch => !isLoad(one));
  const doubted = Object.values(state.batches).filter((one) => one.reopened.length > 0);
  return [...new Set([...running, ...doubted])];
}

/** The questions about every batch's factors, one for each pot and each filling. */
export function factorQuestions(state: State): Question[] {
  return asking(state).flatMap((batch) =>
    batch.recipe.critical.flatMap((factor): Question[] => {
      const { id, ask, askShort, answer } = factor;
      if (!applies(batch, factor) || !isOpen(state, batch, id)) return [];
      const lots = together(state, batch, factor);
      if (lots[0] !== batch) return [];
      const round = openRound(batch, factor) ?? 0;
      const times = batch.reopened.filter((one) => one.factor === id && one.round === round);
      const of = round > 0 ? `/of-${round}` : "";
      const key = `factor/${batch.id}/${id}${of}${times.length > 0 ? `/${times.length}` : ""}`;
      const about = batch.id;
      const text = `${roundLead(batch, factor, round)}${ask}`;
      const question: Question = { key, kind: "factor", text, about, detail: id, round };
      if (askShort !== undefined) question.short = askShort;
      if (lots.length > 1) question.batches = lots.map((one) => one.id);
      if (answer?.type === "choice") {
        return [{ ...question, ...eitherOf(answer.right, answer.wrong) }];
      }
      question.takes = answer?.type ?? "yes-no";
      return [question];
    }),
  );
}

/** Which brew or which jars are asked about, where it was asked of others before. */
function roundLead(batch: Batch, factor: CriticalFactor, round: number): string {
  if (round === 0) return "";
  const [pot] = brewStages(batch);
  if (isOfBrew(batch, factor)) return `For the new ${pot ? potOf(pot) : "pot"}: `;
  const lots = lotsIn(batch).filter(({ lot }) => lot.round === round);
  return `For ${listed(lots.map((one) => one.lot.variety ?? lotName(one)))}: `;
}

/** No kitchen vinegar is stronger; a label that says more was misread or misheard. */
const STRONGEST_PERCENT = 12;
/**
 * A headspace may exceed what is asked by this many inches: jars are filled by eye (our choice).
 */
const OVER_IN = 0.25;
/** No jar is so tall: a clock time or a tally was taken for a headspace. */
const NO_HEADSPACE_IN = 12;
const ROUNDING_IN = 0.01;

/**
 * Whether a value given for a factor is what its recipe asks; undefined where it is not a value.
 */
export function isRight(
  batch: Batch,
  factor: CriticalFactor,
  value: number | string,
): boolean | undefined {
  const { answer } = factor;
  if (typeof value !== "number" || !Number.isFinite(value) || value < 0) return undefined;
  if (answer?.type === "percent") {
    return value > STRONGEST_PERCENT ? undefined : value >= answer.least;
  }
  const wanted = batch.recipe.headspaceIn;
  if (answer?.type !== "inches" || wanted === undefined) return undefined;
  if (value >= NO_HEADSPACE_IN) return undefined;
  return value >= wanted - ROUNDING_IN && value <= wanted + OVER_IN;
}

/** What is said about a factor; a value counts for more than the wording around it. */
export function heldBy(batch: Batch, factor: CriticalFactor, said: Confirm): Confirm["held"] {
  if (said.held === "unsure" || said.value === undefined) return said.held;
  const right = isRight(batch, factor, said.value);
  return right === undefined ? "unsure" : right ? "yes" : "no";
}
