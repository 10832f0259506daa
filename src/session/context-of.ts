/** What `language/` gets to know about the kitchen: the names of what is there, no more. */

import { type Asked as Pending, YES_NO } from "../kitchen/decide/decision.ts";
import { activeOwners, isLoad } from "../kitchen/owners.ts";
import {
  type AnswerKind,
  type Question as Asked,
  answerKind,
  shownQuestion,
} from "../kitchen/questions/questions.ts";
import { mayWait } from "../kitchen/questions/set-up.ts";
import { hasRole, rulesOf } from "../kitchen/stages/kinds.ts";
import { type Batch, type Load, type StageRun, type State, wallOf } from "../kitchen/state.ts";
import type {
  Context,
  NamedBatch,
  NamedLoad,
  NamedStage,
  OpenQuestion,
} from "../language/context.ts";
import type { Library } from "../recipe/library.ts";
import type { Recipe } from "../recipe/recipe.ts";

const KINDS: Record<AnswerKind, OpenQuestion["kind"]> = {
  "yes-no": "yes-no",
  choice: "choice",
  percent: "percent",
  inches: "inches",
  pounds: "gauge-off",
  feet: "altitude",
  jars: "jars",
  count: "number",
  minutes: "minutes",
  holds: "holds",
};

function kindOf(question: Asked): OpenQuestion {
  const kind = KINDS[answerKind(question)];
  const { choices = [], alsoSaid = choices, right } = question;
  if (kind !== "choice" && !right) return { kind, guards: true };
  return { kind, guards: true, choices: alsoSaid, ...(right ? { right } : {}) };
}

function asked(state: State, question: Asked): OpenQuestion {
  const { kind, detail } = question;
  const waits = mayWait(state, question) ? { mayWait: true as const } : {};
  const metric = state.kitchen.units === "metric" ? { metric: true as const } : {};
  return {
    ...waits,
    ...metric,
    ...kindOf(question),
    key: kind === "factor" && detail ? detail : kind,
  };
}

function pendingKind(pending: Pending): OpenQuestion {
  if (YES_NO.has(pending.expects)) return { kind: "yes-no" };
  if (pending.expects === "which") {
    return { kind: "choice", choices: pending.choices.map((choice) => choice.label) };
  }
  if (pending.expects === "minutes") return { kind: "minutes", guards: true };
  return pending.expects === "number" ? { kind: "number" } : { kind: "text" };
}

function namedStage({ id, spec, state }: StageRun): NamedStage {
  const { title, kind, pot, say = "", uses = [] } = spec;
  const running = state === "running";
  return {
    ...{ id, title, kind },
    ...(pot ? { pot } : {}),
    ...(rulesOf(spec).thermometer === "pot" ? { onStove: true } : {}),
    ...(spec.checks ? { checked: true as const } : {}),
    ...(hasRole(spec, "treatment") && running ? { timed: true as const } : {}),
    ...(running ? { instructions: [title, say, ...uses].join(" ").toLowerCase() } : {}),
    ...(running || state === "waiting" ? { state } : {}),
  };
}

function namedLots(state: State, { id, recipe, lots, stages }: Batch): NamedBatch[] {
  const { id: of, title, names } = recipe;
  return lots.map(({ id: lot, variety, mark, jars, addedAt, abandonedAt }) => ({
    ...{ id, recipe: of, title, names: [...names, recipe.yield.produce], mark },
    jars: jars.map(({ number, id }) => ({ number, id })),
    begunMs: wallOf(state, addedAt),
    ...(variety ? { variety } : {}),
    ...(lots.length > 1 ? { lot } : {}),
    ...(abandonedAt === undefined ? {} : { givenUp: true as const }),
    stages: stages.map(namedStage),
  }));
}

function namedLoad({ id, canner, stages, loadedAt, unloadedAt }: Load): NamedLoad {
  const inside = loadedAt !== undefined && unloadedAt === undefined;
  return { id, canner, stages: stages.map(namedStage), ...(inside ? { inside } : {}) };
}

/** The things of the kitchen by the names they go by. */
export function thingsOf(state: State): Pick<Context, "running" | "loads" | "timers" | "onRecord"> {
  const active = activeOwners(state);
  return {
    running: active
      .filter((one): one is Batch => !isLoad(one))
      .flatMap((batch) => namedLots(state, batch)),
    loads: active.filter(isLoad).map(namedLoad),
    timers: Object.values(state.timers)
      .filter((timer) => timer.state === "running" || timer.state === "rang")
      .map(({ id, label, minutes }) => ({ id, label: label ?? `${minutes} minute`, minutes })),
    onRecord: {
      batches: Object.values(state.batches).flatMap((batch) => namedLots(state, batch)),
      loads: Object.values(state.loads).map(namedLoad),
    },
  };
}

const known = new WeakMap<Library, Recipe[]>();

/** The recipes of a library, the same list each time, so that names are gathered only once. */
function recipesOf(library: Library): Recipe[] {
  const recipes = known.get(library) ?? [...library.recipes.values()];
  known.set(library, recipes);
  return recipes;
}

/** What `language/` may know about this kitchen at this moment. */
export function contextOf(
  state: State,
  now: number,
  library: Library,
  pending: Pending | undefined,
): Context {
  const open = shownQuestion(state);
  const question = pending ? pendingKind(pending) : open ? asked(state, open) : undefined;
  const metric = state.kitchen.units === "metric";
  const factors = Object.values(state.batches).flatMap(({ recipe }) => recipe.critical);
  return {
    nowMs: wallOf(state, now),
    zone: state.zone,
    recipes: recipesOf(library),
    library,
    ...thingsOf(state),
    ownWords: state.ownWords,
    factors: [...new Map(factors.map((factor) => [factor.id, factor])).values()],
    temperatureUnit: metric ? "C" : "F",
    pressureUnit: metric ? "kPa" : "psi",
    ...(question ? { question } : {}),
  };
}
