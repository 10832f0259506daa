import { COOL_HOURS, REPROCESS_WITHIN_HOURS } from "../../reckon/trade-numbers.ts";
import { CRITICAL_FACTORS } from "../critical-factors.ts";
import { formatMinutes } from "../duration.ts";
import type { Recipe, Stage } from "../recipe.ts";
import {
  type CheckedRecipe,
  danger,
  type Finding,
  PUBLICATIONS,
  type Rule,
  warning,
} from "./finding.ts";

const place = (stage: Stage) => `stages.${stage.id}`;

function testedRest(
  { recipe, kinds }: CheckedRecipe,
  stage: Stage,
  rests: Record<string, { minMinutes: number; maxMinutes: number }>,
) {
  const own = rests[stage.id];
  if (own) return own;
  const all = Object.values(rests);
  const only =
    recipe.stages.filter((s) => kinds[s.kind].restsAsTested).length === 1 && all.length === 1;
  return only ? all[0] : undefined;
}

/** Rests last as long as tested, and cooling as long as jars must stand untouched. */
export const restWindow: Rule = (subject) =>
  subject.recipe.stages.flatMap((stage): Finding[] => {
    const { known, kinds } = subject;
    const kind = kinds[stage.kind];
    const rests = known.flatMap(({ formula }) => (formula?.rests ? [formula.rests] : []));
    const low = stage.window?.minMinutes ?? stage.typicalMinutes;
    const high = stage.window?.maxMinutes ?? stage.typicalMinutes;
    if (kind.role === "cooling") {
      const { min, max } = COOL_HOURS;
      if (low < min * 60) {
        const hours = `${min} to ${max} hours`;
        const message = `jars cool ${hours} before the seal check, not ${formatMinutes(low)}`;
        return [danger("cool-window", place(stage), message, PUBLICATIONS.principles)];
      }
      if (high <= max * 60) return [];
      const message =
        `a seal is checked within ${REPROCESS_WITHIN_HOURS} hours, ` +
        "while a failed jar can still be saved";
      return [warning("cool-window", place(stage), message, PUBLICATIONS.principles)];
    }
    if (!kind.restsAsTested || rests.length === 0) return [];
    const tested = rests.map((one) => testedRest(subject, stage, one)).find(Boolean);
    if (!tested || (low >= tested.minMinutes && high <= tested.maxMinutes)) return [];
    const message =
      `this rest is ${formatMinutes(low)} to ${formatMinutes(high)}; tested is ` +
      `${formatMinutes(tested.minMinutes)} to ${formatMinutes(tested.maxMinutes)}`;
    // Half-fermented food is barely sour, and the short process was tested for sour food.
    const make = kind.thermometer === "culture" && low < tested.minMinutes ? danger : warning;
    return [make("rest-window", place(stage), message, PUBLICATIONS.pickles)];
  });

/** A ferment warmer than tested spoils before it sours; a colder one merely waits. */
export const fermentTemperature: Rule = ({ recipe, known, kinds }) =>
  recipe.stages.flatMap((stage): Finding[] => {
    const tested = known.map(({ formula }) => formula?.fermentF).find(Boolean);
    const mine = kinds[stage.kind].thermometer === "culture" ? stage.temperatureF : undefined;
    if (!tested || !mine || (mine.max <= tested.max && mine.min >= tested.min)) return [];
    const message =
      `this ferments at ${mine.min} to ${mine.max} degrees; tested is ` +
      `${tested.min} to ${tested.max}`;
    const make = mine.max > tested.max ? danger : warning;
    return [make("ferment-temperature", place(stage), message, PUBLICATIONS.ferment)];
  });

/** A common question keeps its wording and its cases: "are the jars nice" sterilizes nothing. */
export const factorRewritten: Rule = ({ recipe }) =>
  recipe.critical.flatMap((mine) => {
    const common = CRITICAL_FACTORS.find(({ id }) => id === mine.id);
    if (!common || JSON.stringify(mine) === JSON.stringify(common)) return [];
    const message = `${mine.id} is a question of every recipe; give one of your own another id`;
    return [danger("factor-rewritten", "factors", message, common.source)];
  });

const asks = ({ critical }: Recipe, id: string) => critical.some((factor) => factor.id === id);

/** The questions every canner recipe asks before the jars go in. */
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
  return [make("critical-unasked", "stages", message, PUBLICATIONS.principles)];
};

/** Jam and jelly set one pot at a time. */
export const oneBatch: Rule = ({ recipe }) => {
  if (recipe.class !== "jam" || recipe.scaling === "one-batch") return [];
  const message = "a jam or jelly without added pectin is made one batch at a time to set";
  return [warning("one-batch", "scaling", message, PUBLICATIONS.jams)];
};
