/** What makes sense at this moment: the smaller the grammar, the better the recognition. */

import { jarsExpected } from "../../kitchen/jars/lots.ts";
import { activeOwners, isLoad, type Owner } from "../../kitchen/owners.ts";
import { type QuestionKind, questions } from "../../kitchen/questions/questions.ts";
import { hasRole, rulesOf } from "../../kitchen/stages/kinds.ts";
import type { Batch, Load, StageRun, State } from "../../kitchen/state.ts";
import type { SpokenGrammarOptions } from "../../language/grammar/spoken-grammar.ts";
import { meanings } from "../../language/intents/all.ts";
import type { When } from "../../language/intents/meaning.ts";
import { celsiusOf } from "../../reckon/units.ts";
import type { Pending } from "../dialogue.ts";

/** What people time in kitchens besides their batches. */
const LABELS = ["eggs", "rice", "bread", "oven", "potatoes"];

/** Where jam jells at sea level, degrees Fahrenheit (8 above boiling); less higher up. */
const JELLING_F = 220;

/** How far around the wanted temperature readings are expected, degrees Fahrenheit. */
const AROUND_F = 10;

/** The most jars that are counted aloud, whatever is expected. */
const MOST_JARS = 24;

function isOpen(run: StageRun): boolean {
  return run.state === "running" || run.state === "waiting" || run.state === "held";
}

/** Stages of a batch that are under way, or only wait for a person to start them. */
function atHand(batch: Batch): StageRun[] {
  return batch.stages.filter(
    (run) => run.state === "running" || (run.state === "waiting" && run.spec.start === "word"),
  );
}

function ofStage({ spec }: StageRun): When[] {
  if (rulesOf(spec).thermometer === "pot") return ["stage:pot"];
  return hasRole(spec, "filling") ? ["stage:filling"] : [];
}

function ofLoad(load: Load): When[] {
  if (load.unloadedAt !== undefined) return ["load:out"];
  const method = load.terms?.method;
  return [
    "load:in-canner",
    ...(load.loadedAt === undefined ? (["load:waiting"] as const) : []),
    ...(method === "pressure" || method === "steam" ? (["load:in-steam"] as const) : []),
    ...(method === "pressure" ? [] : (["load:in-water"] as const)),
  ];
}

/** Kinds of questions that have their own answers, not a yes, a no or a value. */
const OWN_WORDS: ReadonlySet<QuestionKind> = new Set(["altitude", "seals", "disposition"]);

/** The open question, if there is one. */
function asked(state: State, pending: Pending | undefined): When[] {
  if (pending) return ["asked"];
  const [question] = questions(state);
  if (!question) return [];
  return OWN_WORDS.has(question.kind) ? [`asked:${question.kind}`] : ["asked"];
}

/** Temperatures that the current stages need, degrees Fahrenheit. */
function wantedF(owners: readonly Owner[]): number[] {
  return owners.flatMap((owner) => {
    const runs = isLoad(owner)
      ? owner.stages.filter(({ state }) => state === "running")
      : atHand(owner);
    const ofStages = runs.flatMap(({ spec }) => {
      const { until } = spec.heat ?? {};
      const { temperatureF } = spec;
      return [
        ...(typeof until === "object" ? [until.temperatureF] : []),
        ...(until === "jelling-point" ? [JELLING_F] : []),
        ...(temperatureF ? [temperatureF.min, temperatureF.max] : []),
      ];
    });
    const waiting = isLoad(owner) && owner.loadedAt === undefined ? owner.terms : null;
    return waiting ? [...ofStages, waiting.waterStartF] : ofStages;
  });
}

function temperatures(state: State, owners: readonly Owner[]): [number, number] | undefined {
  const wanted = wantedF(owners);
  if (wanted.length === 0) return undefined;
  const from = Math.min(...wanted) - AROUND_F;
  const to = Math.max(...wanted) + AROUND_F;
  if (state.kitchen.units !== "metric") return [Math.round(from), Math.round(to)];
  return [Math.round(celsiusOf(from)), Math.round(celsiusOf(to))];
}

/** As many jars as a canner holds or a batch is expected to fill. */
function mostJars(state: State, owners: readonly Owner[]): number {
  const holds = state.kitchen.canners.flatMap((canner) => Object.values(canner.holds));
  const expected = owners.map((owner) => (isLoad(owner) ? 0 : (jarsExpected(owner) ?? 0)));
  return Math.min(MOST_JARS, Math.max(1, ...holds, ...expected));
}

function potsOf(runs: readonly StageRun[]): string[] {
  return runs.flatMap(({ spec }) => spec.pot ?? []);
}

/** What can be said at this moment, and what it can be said of. */
export function momentOf(state: State, pending: Pending | undefined): SpokenGrammarOptions {
  const owners = activeOwners(state);
  const batches = owners.filter((owner): owner is Batch => !isLoad(owner));
  const loads = owners.filter(isLoad);
  const temperature = temperatures(state, owners);
  const timers = Object.values(state.timers).some((timer) => timer.state === "running");
  const now = new Set<When>([
    "always",
    owners.length === 0 ? "idle" : "working",
    ...asked(state, pending),
    ...batches.flatMap(atHand).flatMap(ofStage),
    ...loads.flatMap(ofLoad),
    ...(batches.length > 1 ? (["several-batches"] as const) : []),
    ...(temperature ? (["temperature-wanted"] as const) : []),
    ...(timers ? (["timer"] as const) : []),
  ]);
  const inCanner = loads.some(({ unloadedAt }) => unloadedAt === undefined);
  return {
    intents: meanings().flatMap(([intent, { when }]) =>
      when.some((one) => now.has(one)) ? [intent] : [],
    ),
    things: [
      ...batches.flatMap((batch) => potsOf(batch.stages.filter(isOpen))),
      ...(inCanner ? ["canner"] : []),
    ],
    pots: batches.flatMap((batch) =>
      potsOf(atHand(batch).filter((run) => run.state === "waiting")),
    ),
    ingredients: batches.flatMap((batch) => batch.recipe.ingredients.map(({ id }) => id)),
    labels: LABELS,
    mostJars: mostJars(state, owners),
    ...(temperature ? { temperature } : {}),
  };
}
