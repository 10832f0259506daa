import { CAUTIONS } from "./cautions.ts";
import { CRITICAL_FACTORS } from "./critical-factors.ts";
import { LONGEST_MINUTES } from "./duration.ts";
import type { Kinds } from "./kind-in-recipe.ts";
import { type FileProblem, type Path, readYaml } from "./read-yaml.ts";
import type { After, CriticalFactor, Recipe, Stage } from "./recipe.ts";
import { type RecipeFile, recipeSchema } from "./schema.ts";
import { structureFaults } from "./structure.ts";

/** Lines of the parts a check may point to: `stages.slice`, `ingredients.vinegar`, `title`. */
type RecipeLines = Record<string, number>;

type RecipeRead =
  | { ok: true; recipe: Recipe; lines: RecipeLines }
  | { ok: false; problems: FileProblem[] };

type StageFile = RecipeFile["stages"][number];

function afterOf(stage: StageFile, above: string | undefined): After[] {
  if (stage.after === undefined) return above === undefined ? [] : [{ stage: above }];
  const list = Array.isArray(stage.after) ? stage.after : [stage.after];
  return list.map((item) => {
    if (typeof item === "string") return { stage: item };
    return {
      stage: item.stage,
      ...(item.atLeast === undefined ? {} : { atLeastMinutes: item.atLeast }),
      ...(item.atMost === undefined ? {} : { atMostMinutes: item.atMost }),
    };
  });
}

function heatOf(stage: StageFile): Stage["heat"] {
  if (stage.until === undefined) return undefined;
  return { until: stage.until, holdMinutes: stage.hold ?? 0 };
}

/** Undefined values left out, so that a recipe is the same read from YAML or from JSON. */
function compact<T extends object>(value: T): T {
  return Object.fromEntries(Object.entries(value).filter(([, v]) => v !== undefined)) as T;
}

function stageOf(written: StageFile, above: string | undefined, kinds: Kinds): Stage {
  const { length, usual } = kinds[written.kind];
  const tested = length === "tested-table";
  const window = written.window ?? usual.window ?? undefined;
  const heat = heatOf(written);
  const typical = written.typical ?? (written.window ? undefined : usual.minutes) ?? undefined;
  const writtenMinutes = written.minutes ?? (tested ? written.typical : undefined);
  return compact({
    id: written.id ?? written.kind,
    kind: written.kind,
    title: written.title ?? usual.title ?? written.kind,
    say: written.say ?? usual.say ?? "",
    after: afterOf(written, above),
    start: written.start ?? "auto",
    typicalMinutes: tested ? 0 : (typical ?? window?.minMinutes ?? 0),
    minutesPerLb: written.perLb,
    window,
    heat,
    short: written.short ?? usual.short,
    done: written.done,
    pot: written.pot,
    temperatureF: written.temperatureF,
    checks: written.checks,
    asks: written.asks ?? [],
    cautions: [
      ...(usual.closing === undefined ? [] : [usual.closing]),
      ...(written.cautions ?? []).map((id) => CAUTIONS[id] ?? id),
    ],
    uses: written.uses ?? usual.uses,
    attended: written.attended ?? usual.attended,
    optional: written.optional,
    onlyFor:
      written.packs || written.methods
        ? compact({ packs: written.packs, methods: written.methods })
        : undefined,
    writtenMinutes,
  });
}

function stagesOf(file: RecipeFile, kinds: Kinds): Stage[] {
  const stages: Stage[] = [];
  const spoils = file.keptAs === "refrigerator" || file.keptAs === "ferment";
  const bare = file.processes.length === 0 && spoils;
  for (const written of file.stages) {
    const { sayUnprocessed } = kinds[written.kind].usual;
    const say = written.say ?? (bare ? sayUnprocessed : null) ?? undefined;
    stages.push(stageOf(compact({ ...written, say }), stages.at(-1)?.id, kinds));
  }
  return stages;
}

/** The factors its stages ask for, in their order, from the file's own list or the common one. */
function criticalOf(file: RecipeFile): CriticalFactor[] {
  const known = new Map([...CRITICAL_FACTORS, ...file.factors].map((f) => [f.id, f]));
  const asked = new Set(file.stages.flatMap((stage) => stage.asks ?? []));
  return [...asked].flatMap((id) => {
    const factor = known.get(id);
    return factor ? [compact({ ...factor })] : [];
  });
}

function recipeOf(file: RecipeFile, kinds: Kinds): Recipe {
  const { factors: _factors, source, processes, stages: _stages, ...rest } = file;
  return compact({
    ...rest,
    tested: file.tested && source !== undefined,
    source: source ?? { publication: "no published source" },
    ingredients: file.ingredients.map((i) => compact(i)),
    processes: processes.map(({ method, pack, table, minutes }) =>
      compact({ method, pack, table: table ?? "none", writtenMinutes: minutes }),
    ),
    critical: criticalOf(file),
    stages: stagesOf(file, kinds),
  });
}

/** Asks and cautions in the file that refer to nothing, and durations that do not fit. */
function fileFaults(file: RecipeFile, kinds: Kinds): { path: Path; message: string }[] {
  const known = new Set([...CRITICAL_FACTORS, ...file.factors].map((f) => f.id));
  return file.stages.flatMap((stage, index) => {
    const path = ["stages", index];
    const faults: { path: Path; message: string }[] = [];
    for (const ask of stage.asks ?? []) {
      if (!known.has(ask)) {
        faults.push({ path: [...path, "asks"], message: `no critical factor is called ${ask}` });
      }
    }
    for (const caution of stage.cautions ?? []) {
      if (!CAUTIONS[caution]) {
        faults.push({ path: [...path, "cautions"], message: `no caution is called ${caution}` });
      }
    }
    if (stage.hold !== undefined && stage.until === undefined) {
      faults.push({ path: [...path, "hold"], message: "what is held? `until: boil` is missing" });
    }
    if (stage.minutes !== undefined && kinds[stage.kind].length !== "tested-table") {
      const message = "say `typical: 20 min`; bare `minutes` means nothing here";
      faults.push({ path: [...path, "minutes"], message });
    }
    return faults;
  });
}

function linesOf(file: RecipeFile, lineOf: (path: Path) => number): RecipeLines {
  const lines: RecipeLines = {};
  for (const key of Object.keys(file)) lines[key] = lineOf([key]);
  file.stages.forEach((stage, index) => {
    lines[`stages.${stage.id ?? stage.kind}`] = lineOf(["stages", index]);
  });
  file.ingredients.forEach((ingredient, index) => {
    lines[`ingredients.${ingredient.id}`] = lineOf(["ingredients", index]);
  });
  file.processes.forEach((option, index) => {
    lines[`processes.${option.method}-${option.pack}`] = lineOf(["processes", index]);
  });
  return lines;
}

/**
 * Reads one recipe file.
 *
 * @param text the whole file; at most 32,768 characters and 2,000 lines are accepted.
 * @param fileName the name problems are reported under.
 * @param kinds what a file may leave out, and must say, by the kind of a stage.
 * @returns the recipe with every default filled in, as plain JSON-ready data, or every problem
 *   found, each with its line. No stage may last longer than ten years.
 */
export function readRecipe(text: string, fileName: string, kinds: Kinds): RecipeRead {
  const read = readYaml(text, fileName, recipeSchema);
  if (!read.ok) return read;
  const recipe = recipeOf(read.value, kinds);
  const faults = [
    ...fileFaults(read.value, kinds),
    ...structureFaults(recipe, kinds, LONGEST_MINUTES),
  ];
  if (faults.length === 0) return { ok: true, recipe, lines: linesOf(read.value, read.lineOf) };
  const problems = faults.map(({ path, message }) => ({
    file: fileName,
    line: read.lineOf(path),
    message: `${where(read.value, path)}: ${message}`,
  }));
  return { ok: false, problems };
}

function where(file: RecipeFile, path: Path): string {
  const [head, index] = path;
  if (head === "stages" && typeof index === "number") {
    const stage = file.stages[index];
    return `stage ${stage?.id ?? stage?.kind ?? index + 1}`;
  }
  return path.join(" ");
}
