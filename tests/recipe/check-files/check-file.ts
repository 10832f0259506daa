import { readFileSync } from "node:fs";
import { parse, stringify } from "yaml";
import { KINDS } from "../../../src/kitchen/stages/kinds.ts";
import { checkRecipe } from "../../../src/recipe/check-recipe.ts";
import { readRecipe } from "../../../src/recipe/read-recipe.ts";
import { STAGE_KINDS } from "../../../src/recipe/recipe.ts";
import type { Finding } from "../../../src/recipe/rules/finding.ts";
import { recipeFile, wholeLibrary } from "../library-files.ts";

/**
 * Recipe files written short. Lines after `== id | what the finding speaks of` say why it is safe
 * or not and where that stands (`why`, `from`), and then the recipe:
 *
 * - `base: ID` takes a recipe of the library; else `title` and `class` begin one.
 * - `in: ROLE | AMOUNT | NAME | STRENGTH` adds an ingredient; `set: ID | AMOUNT` and `drop: ID`
 *   change one of the base.
 * - `process: METHOD PACK TABLE` or `process: none`; `kept: dry`; `jars: [quart]`; `note: TEXT`.
 * - `say STAGE: TEXT` replaces what a stage of the base says, `add STAGE: TEXT` goes on after it.
 * - `KIND {MORE}: TEXT` is a further stage.
 */
export interface CheckFile {
  id: string;
  safe: boolean;
  /** What the finding has to speak of; `undefined` in a safe file. */
  about: RegExp | undefined;
  why: string;
  from: string;
  /** The recipe as a file of the recipes folder would hold it. */
  text: string;
  /** Not looked at while the rules were mended. */
  heldOut: boolean;
}

type Yaml = Record<string, unknown> & {
  ingredients: Record<string, unknown>[];
  stages: Record<string, unknown>[];
};

const library = wholeLibrary();

export function checkFiles(name: "danger.txt" | "safe.txt"): CheckFile[] {
  const text = readFileSync(new URL(name, import.meta.url), "utf8");
  const blocks = text.split(/^== /m).slice(1);
  return blocks.map((block, index) => {
    const [head = "", ...rest] = block.trim().split("\n");
    const [id = "", about] = head.split(/ \| (.*)/);
    const lines = rest.map(keyed);
    const only = (key: string) => lines.find((line) => line.key === key)?.value ?? "";
    return {
      id,
      safe: about === undefined,
      about: about === undefined ? undefined : new RegExp(about, "i"),
      why: only("why"),
      from: only("from"),
      text: stringify(recipeOf(id, lines)),
      heldOut: index % 3 === 2,
    };
  });
}

/** The sentences of `sentences.txt`, each in the note of its recipe. */
export function checkSentences(): CheckFile[] {
  const text = readFileSync(new URL("sentences.txt", import.meta.url), "utf8");
  const lines = text.split("\n").filter((line) => /^(danger|safe) /.test(line));
  return lines.map((line, index) => {
    const [kind, base = "", ...rest] = line.split(" | ").map((part) => part.trim());
    const note = rest.at(-1) ?? "";
    const about = kind === "danger" ? rest.slice(0, -1).join("|") : undefined;
    return {
      id: `sentence-${index}`,
      safe: about === undefined,
      about: about === undefined ? undefined : new RegExp(about, "i"),
      why: note,
      from: "USDA Complete Guide, Guide 1",
      text: stringify(recipeOf("sentence", base === "none" ? relish(note) : noted(base, note))),
      heldOut: false,
    };
  });
}

const noted = (base: string, note: string): Line[] => [
  { key: "base", value: base },
  { key: "note", value: note },
];

const relish = (said: string): Line[] => [
  { key: "title", value: "Zucchini relish" },
  { key: "class", value: "acidified" },
  { key: "in", value: "produce | 3 lb | zucchini" },
  { key: "in", value: "acid | 4 cups | vinegar, 5 percent | 5" },
  { key: "heat", value: "Boil everything ten minutes." },
  { key: "fill", value: "Fill the jars and put the lids on." },
  { key: "store", value: said },
];

/** What the check finds in it. */
export function findingsOf({ id, text }: CheckFile): Finding[] {
  const read = readRecipe(text, `${id}.yaml`, KINDS);
  if (!read.ok) throw new Error(`${id}: ${JSON.stringify(read.problems)}`);
  return checkRecipe(read.recipe, library.tables, KINDS, read.lines);
}

/** Whether a dangerous file is found, and for its own reason; whether a safe one is let be. */
export function judgedRight(file: CheckFile): boolean {
  const dangers = findingsOf(file).filter(({ severity }) => severity === "danger");
  const { about } = file;
  if (about === undefined) return dangers.length === 0;
  return dangers.some(({ message }) => about.test(message));
}

interface Line {
  key: string;
  value: string;
}

function keyed(line: string): Line {
  const found = /^((?:[a-z-]+)(?: [a-z-]+| \{.*\})?):(?: (.*))?$/.exec(line);
  if (!found) throw new Error(`not a line of a check file: ${line}`);
  return { key: found[1] ?? "", value: found[2] ?? "" };
}

function recipeOf(id: string, lines: Line[]): Yaml {
  const base = lines.find(({ key }) => key === "base");
  const recipe = base ? (parse(recipeFile(`${base.value}.yaml`)) as Yaml) : blank(id);
  for (const line of lines) change(recipe, line);
  const first = recipe.ingredients[0];
  if (!base) recipe.yield = { produce: first?.name, weightLb: 4 };
  return recipe;
}

function blank(id: string): Yaml {
  return {
    id: `file-${id}`,
    source: { publication: "our own kitchen" },
    tested: false,
    headspaceIn: 0.5,
    jars: ["pint"],
    processes: [],
    ingredients: [],
    stages: [],
  };
}

const CANNED = ["process", "cool", "seal-check"];

function change(recipe: Yaml, { key, value }: Line): void {
  const [word = "", name] = key.split(/ (.*)/);
  const [first = "", second = "", third = "", fourth] = value.split(" | ");
  const stage = recipe.stages.find((one) => (one.id ?? one.kind) === name);
  if (word === "in") {
    const more = fourth ? { strengthPercent: Number(fourth) } : {};
    const id = `${third.replace(/[^a-z]+/gi, "-").toLowerCase()}-${recipe.ingredients.length}`;
    recipe.ingredients.push({ id, name: third, amount: second, role: first, ...more });
  } else if (word === "set") {
    Object.assign(one(recipe.ingredients, first), { amount: second });
  } else if (word === "drop") {
    recipe.ingredients = recipe.ingredients.filter(
      (item) => item !== one(recipe.ingredients, first),
    );
  } else if (key === "process" && value === "none") {
    recipe.processes = [];
    recipe.stages = recipe.stages.filter(({ kind }) => !CANNED.includes(String(kind)));
  } else if (key === "process" && value) {
    const [method, pack, table] = value.split(" ");
    recipe.processes = [{ method, pack, table }];
  } else if (word === "say" || word === "add") {
    const found = stage ?? one(recipe.stages, name ?? "");
    found.say = word === "say" ? value : `${found.say ?? ""} ${value}`.trim();
  } else if ((STAGE_KINDS as readonly string[]).includes(word)) {
    recipe.stages.push(stageOf(word, name, value, recipe.stages.length));
  } else if (word === "jars") recipe.jars = parse(value);
  else if (word === "kept") recipe.keptAs = value;
  else if (["title", "class", "note"].includes(word)) recipe[word] = value;
}

function one(items: Record<string, unknown>[], name: string): Record<string, unknown> {
  const found = items.find((item) => (item.id ?? item.kind) === name);
  if (!found) throw new Error(`the base has no ${name}`);
  return found;
}

function stageOf(kind: string, more: string | undefined, say: string, count: number) {
  const given = more ? (parse(more) as Record<string, unknown>) : {};
  const heat = kind === "heat" && !given.until ? { until: "boil" } : {};
  const typical =
    given.typical || !["heat", "hands-on", "fill"].includes(kind) ? {} : { typical: "20 min" };
  return { id: `${kind}-${count}`, kind, ...(say ? { say } : {}), ...typical, ...heat, ...given };
}
