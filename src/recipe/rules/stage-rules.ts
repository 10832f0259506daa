import { formatMinutes } from "../duration.ts";
import type { Recipe, Stage } from "../recipe.ts";
import { danger, type Finding, type Rule, SOURCES, warning } from "./finding.ts";

const COOL = { minMinutes: 12 * 60, maxMinutes: 24 * 60 };

const place = (stage: Stage) => `stages.${stage.id}`;

/** `process for 10 minutes` in so many words: a time where only the table may give one. */
const SPOKEN_TIME = /\b(process|can|boiling[- ]water bath|canner)\b[^.]*\b\d+\s*min/i;

/** A process time written into a stage instead of looked up in a table. */
export const minutesInStage: Rule = ({ recipe }) =>
  recipe.stages.flatMap((stage) => {
    const spoken =
      SPOKEN_TIME.test(stage.say) || (stage.kind === "process" && /\d/.test(stage.say));
    const has = stage.writtenMinutes !== undefined || spoken;
    if (!has || (stage.kind !== "process" && !spoken)) return [];
    const message =
      "a process time stands in the stage; it depends on jar and altitude: use a table";
    return [danger("minutes-in-stage", place(stage), message, SOURCES.principles)];
  });

function testedRest(
  recipe: Recipe,
  stage: Stage,
  rests: Record<string, { minMinutes: number; maxMinutes: number }>,
) {
  const own = rests[stage.id];
  if (own) return own;
  const all = Object.values(rests);
  const only = recipe.stages.filter((s) => s.kind === "rest").length === 1 && all.length === 1;
  return only ? all[0] : undefined;
}

/** Rests as tested, and cooling for 12 to 24 hours. */
export const restWindow: Rule = ({ recipe, known }) =>
  recipe.stages.flatMap((stage): Finding[] => {
    const rests = known.flatMap(({ formula }) => (formula?.rests ? [formula.rests] : []));
    const low = stage.window?.minMinutes ?? stage.typicalMinutes;
    const high = stage.window?.maxMinutes ?? stage.typicalMinutes;
    if (stage.kind === "cool") {
      if (low < COOL.minMinutes) {
        const message = `jars cool 12 to 24 hours before the seal check, not ${formatMinutes(low)}`;
        return [danger("cool-window", place(stage), message, SOURCES.principles)];
      }
      if (high <= COOL.maxMinutes) return [];
      const message = "a seal is checked within 24 hours, while a failed jar can still be saved";
      return [warning("cool-window", place(stage), message, SOURCES.principles)];
    }
    if (stage.kind !== "rest" || rests.length === 0) return [];
    const tested = rests.map((one) => testedRest(recipe, stage, one)).find(Boolean);
    if (!tested || (low >= tested.minMinutes && high <= tested.maxMinutes)) return [];
    const message =
      `this rest is ${formatMinutes(low)} to ${formatMinutes(high)}; tested is ` +
      `${formatMinutes(tested.minMinutes)} to ${formatMinutes(tested.maxMinutes)}`;
    return [warning("rest-window", place(stage), message, SOURCES.pickles)];
  });

/** What every canner recipe asks before the jars go in. */
export const criticalAsked: Rule = ({ recipe, shelf }) => {
  if (!shelf) return [];
  const wanted = ["headspace", "new-lids"];
  if (recipe.processes.some((p) => p.pack === "hot")) wanted.push("hot-pack-hot");
  if (recipe.class === "ferment") wanted.push("sound-ferment");
  if (recipe.ingredients.some((i) => i.role === "acid" && i.strengthPercent !== undefined)) {
    if (recipe.class === "acidified") wanted.push("vinegar-5-percent");
  }
  const missing = wanted.filter((id) => !recipe.critical.some((factor) => factor.id === id));
  if (missing.length === 0) return [];
  const message = `no stage asks for: ${missing.join(", ")}; without it no jar is as tested`;
  return [warning("critical-unasked", "stages", message, SOURCES.principles)];
};

/** Jam and jelly set one pot at a time. */
export const oneBatch: Rule = ({ recipe }) => {
  if (recipe.class !== "jam" || recipe.scaling === "one-batch") return [];
  const message = "a jam or jelly without added pectin is made one batch at a time to set";
  return [warning("one-batch", "scaling", message, SOURCES.jams)];
};
