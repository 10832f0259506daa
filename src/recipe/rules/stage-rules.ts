import { CRITICAL_FACTORS } from "../critical-factors.ts";
import { formatMinutes } from "../duration.ts";
import type { Recipe, Stage } from "../recipe.ts";
import { danger, type Finding, type Rule, SOURCES, warning } from "./finding.ts";

/** Stages whose length the tested recipe gives by their id. */
const RESTING: readonly Stage["kind"][] = ["rest", "ferment"];
const COOL = { minMinutes: 12 * 60, maxMinutes: 24 * 60 };

const place = (stage: Stage) => `stages.${stage.id}`;

function testedRest(
  recipe: Recipe,
  stage: Stage,
  rests: Record<string, { minMinutes: number; maxMinutes: number }>,
) {
  const own = rests[stage.id];
  if (own) return own;
  const all = Object.values(rests);
  const only =
    recipe.stages.filter((s) => RESTING.includes(s.kind)).length === 1 && all.length === 1;
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
    if (!RESTING.includes(stage.kind) || rests.length === 0) return [];
    const tested = rests.map((one) => testedRest(recipe, stage, one)).find(Boolean);
    if (!tested || (low >= tested.minMinutes && high <= tested.maxMinutes)) return [];
    const message =
      `this rest is ${formatMinutes(low)} to ${formatMinutes(high)}; tested is ` +
      `${formatMinutes(tested.minMinutes)} to ${formatMinutes(tested.maxMinutes)}`;
    // Half fermented is hardly sour, and the short process was tested for what is.
    const make = stage.kind === "ferment" && low < tested.minMinutes ? danger : warning;
    return [make("rest-window", place(stage), message, SOURCES.pickles)];
  });

/** A ferment warmer than tested spoils before it sours; a colder one merely waits. */
export const fermentTemperature: Rule = ({ recipe, known }) =>
  recipe.stages.flatMap((stage): Finding[] => {
    const tested = known.map(({ formula }) => formula?.fermentF).find(Boolean);
    const mine = stage.kind === "ferment" ? stage.temperatureF : undefined;
    if (!tested || !mine || (mine.max <= tested.max && mine.min >= tested.min)) return [];
    const message =
      `this ferments at ${mine.min} to ${mine.max} degrees; tested is ` +
      `${tested.min} to ${tested.max}`;
    const make = mine.max > tested.max ? danger : warning;
    return [make("ferment-temperature", place(stage), message, SOURCES.ferment)];
  });

/** A common question keeps its words and its cases: "are the jars nice" sterilizes none. */
export const factorRewritten: Rule = ({ recipe }) =>
  recipe.critical.flatMap((mine) => {
    const common = CRITICAL_FACTORS.find(({ id }) => id === mine.id);
    if (!common || JSON.stringify(mine) === JSON.stringify(common)) return [];
    const message = `${mine.id} is a question of every recipe; give one of your own another id`;
    return [danger("factor-rewritten", "factors", message, common.source)];
  });

const asks = ({ critical }: Recipe, id: string) => critical.some((factor) => factor.id === id);

/** What every canner recipe asks before the jars go in. */
export const criticalAsked: Rule = ({ recipe, shelf }) => {
  if (!shelf) return [];
  const wanted = ["headspace", "new-lids"];
  if (recipe.processes.some((p) => p.pack === "hot")) wanted.push("hot-pack-hot");
  if (recipe.class === "ferment") wanted.push("sound-ferment");
  if (recipe.ingredients.some((i) => i.role === "acid" && i.strengthPercent !== undefined)) {
    if (recipe.class === "acidified") wanted.push("vinegar-5-percent");
  }
  const missing = wanted.filter((id) => !asks(recipe, id));
  if (missing.length === 0) return [];
  const message = `no stage asks for: ${missing.join(", ")}; without it no jar is as tested`;
  const make = missing.includes("sound-ferment") ? danger : warning;
  return [make("critical-unasked", "stages", message, SOURCES.principles)];
};

/** Jam and jelly set one pot at a time. */
export const oneBatch: Rule = ({ recipe }) => {
  if (recipe.class !== "jam" || recipe.scaling === "one-batch") return [];
  const message = "a jam or jelly without added pectin is made one batch at a time to set";
  return [warning("one-batch", "scaling", message, SOURCES.jams)];
};
