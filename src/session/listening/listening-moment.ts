/** What makes sense to say just now: the smaller the grammar, the better it is heard. */
import type { Intent } from "../../kitchen/command.ts";
import { activeOwners, isLoad, type Owner } from "../../kitchen/owners.ts";
import { questions } from "../../kitchen/questions.ts";
import type { Batch, Load, StageRun, State } from "../../kitchen/state.ts";
import type { SpokenGrammarOptions } from "../../language/grammar/spoken-grammar.ts";
import { celsiusOf } from "../../reckon/units.ts";
import type { Pending } from "../dialogue.ts";

/** Said at any moment. */
const ALWAYS: Intent[] = [
  "repeat",
  "what-now",
  "what-next",
  "overview",
  "undo",
  "acknowledge",
  "hush",
  "unhush",
  "help",
  "timer-set",
];

const WITH_TIMERS: Intent[] = ["timer-add", "timer-cancel", "time-left"];
const WITH_BATCHES: Intent[] = [
  "done",
  "correct-time",
  "how-much",
  "time-left",
  "finish-time",
  "hold",
  "resume",
  "abandon",
];
const HEATING: Intent[] = ["boiling", "boil-lost"];
const FILLING: Intent[] = ["jars-filled", "set-aside", "jar-broken"];
const STEAMING: Intent[] = ["pressure", "pressure-lost", "weight-rocking", "venting"];
const CHECKING: Intent[] = ["sealed", "seal-failed", "disposition", "jar-broken"];

/** What kitchens time besides their batches. */
const LABELS = ["eggs", "rice", "bread", "oven", "potatoes"];

/** Where jam jells at sea level, degrees Fahrenheit (8 above boiling); less higher up. */
const JELLING_F = 220;

/** Readings come in from so far around what is wanted, in degrees Fahrenheit. */
const AROUND_F = 10;

/** Most jars that are counted aloud, whatever is expected. */
const MOST_JARS = 24;

function isOpen(run: StageRun): boolean {
  return run.state === "running" || run.state === "waiting" || run.state === "held";
}

/** Stages of a batch that are under way, or wait only for a word. */
function atHand(batch: Batch): StageRun[] {
  return batch.stages.filter(
    (run) => run.state === "running" || (run.state === "waiting" && run.spec.start === "word"),
  );
}

function ofBatch(batch: Batch): Intent[] {
  const intents: Intent[] = [];
  for (const { spec } of atHand(batch)) {
    if (spec.kind === "heat") intents.push(...HEATING);
    if (spec.kind === "fill") intents.push(...FILLING);
  }
  return intents;
}

function ofLoad(load: Load): Intent[] {
  if (load.unloadedAt !== undefined) return CHECKING;
  const intents: Intent[] = load.loadedAt === undefined ? ["loaded"] : [];
  intents.push("jar-broken", "done");
  const method = load.terms?.method;
  if (method === "pressure" || method === "steam") intents.push(...STEAMING);
  if (method !== "pressure") intents.push(...HEATING, "water-low");
  return intents;
}

/** The intents that answer the question that waits. */
function answering(state: State, pending: Pending | undefined): Intent[] {
  if (pending) return ["yes", "no", "answer"];
  const [asked] = questions(state);
  if (!asked) return [];
  if (asked.kind === "altitude") return ["altitude"];
  if (asked.kind === "seals") return CHECKING;
  return asked.kind === "disposition" ? ["disposition", "no"] : ["yes", "no", "answer"];
}

/** Temperatures that are wanted of the stages at hand, in degrees Fahrenheit. */
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
  const expected = owners.map((owner) => (isLoad(owner) ? 0 : (owner.expectedJars ?? 0)));
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
  const idle = owners.length === 0;
  const temperature = temperatures(state, owners);
  const intents: Intent[] = [
    ...ALWAYS,
    ...answering(state, pending),
    ...batches.flatMap(ofBatch),
    ...loads.flatMap(ofLoad),
    ...(idle ? (["plan"] as const) : WITH_BATCHES),
    ...(batches.length > 1 ? (["focus"] as const) : []),
    ...(temperature ? (["temperature"] as const) : []),
    ...(Object.values(state.timers).some(({ state }) => state === "running") ? WITH_TIMERS : []),
    "begin",
  ];
  const inCanner = loads.some(({ unloadedAt }) => unloadedAt === undefined);
  return {
    intents: [...new Set(intents)],
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
