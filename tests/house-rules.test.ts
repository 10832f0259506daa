import { existsSync, readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { STAGE_KINDS } from "../src/recipe/choices.ts";

/**
 * The house rules that no compiler or linter checks: which folder may import which, what
 * pure folders may not touch, and how large things may grow. A fault is `file:line: rule`.
 */
const ROOT = fileURLToPath(new URL("..", import.meta.url));
const LONGEST_FILE = 400;
const LONGEST_FUNCTION = 60;
const FULLEST_FOLDER = 25;
const LONGEST_LINE = 100;

type Source = { file: string; folder: string; text: string; lines: string[] };
/** `later` where it is loaded only once it is needed. */
type Import = { line: number; from: string; typeOnly: boolean; later: boolean };

function filesUnder(folder: string): string[] {
  return readdirSync(join(ROOT, folder), { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile() && /\.(tsx?|mjs)$/.test(entry.name))
    .map((entry) => relative(ROOT, join(entry.parentPath, entry.name)))
    .sort();
}

function sourceOf(file: string): Source {
  const text = readFileSync(join(ROOT, file), "utf8");
  return { file, folder: file.split("/")[1] ?? "", text, lines: text.split("\n") };
}

/** The imports of a file; one that spans lines is named by its first. */
function importsOf(source: Source): Import[] {
  const found: Import[] = [];
  const pattern =
    /^(?:import|export)\s+(type\s+)?(?:([\s\S]*?)\s+from\s+)?"([^"]+)";|\bimport\("([^"]+)"\)/gm;
  for (const match of source.text.matchAll(pattern)) {
    const line = source.text.slice(0, match.index).split("\n").length;
    const names = /^\{([\s\S]*)\}$/.exec(match[2]?.trim() ?? "")?.[1];
    const each = names?.split(",").map((name) => name.trim()) ?? [];
    const listed = each.filter((name) => name !== "");
    const allTypes = listed.length > 0 && listed.every((name) => name.startsWith("type "));
    const typeOnly = match[1] !== undefined || allTypes;
    const later = match[4] !== undefined;
    found.push({ line, from: match[3] ?? match[4] ?? "", typeOnly, later });
  }
  return found;
}

const sources = filesUnder("src").map(sourceOf);
const tests = filesUnder("tests")
  .filter((file) => file !== "tests/house-rules.test.ts")
  .map(sourceOf);

/** What a folder may import; a folder that is not listed may import all but `commands`. */
const MAY: Record<string, string[]> = {
  ports: ["ports"],
  reckon: ["reckon"],
  recipe: ["recipe", "reckon"],
  kitchen: ["kitchen", "recipe", "reckon"],
  language: ["language", "kitchen", "recipe", "reckon"],
  speech: ["speech", "desk", "kitchen", "recipe", "reckon"],
  desk: ["desk", "kitchen", "recipe", "reckon"],
  plan: ["plan", "kitchen", "recipe", "reckon"],
  review: ["review", "kitchen", "recipe", "reckon"],
  voice: ["voice", "ports"],
  screen: ["screen", "ports"],
  journal: ["journal", "ports"],
};
/** Folders that may import only types from the kitchen. */
const KITCHEN_TYPES = new Set(["voice", "screen", "journal"]);

/** The folder under src of an import's target; undefined for packages. */
function targetFolder(source: Source, from: string): string | undefined {
  if (!from.startsWith(".")) return undefined;
  const target = join(dirname(source.file), from);
  return target.startsWith("src/") ? (target.split("/")[1] ?? "") : "outside src";
}

function directionFaults(): string[] {
  return sources.flatMap((source) =>
    importsOf(source).flatMap(({ line, from, typeOnly }) => {
      const target = targetFolder(source, from);
      if (target === undefined) return [];
      const may = MAY[source.folder];
      const types = typeOnly && KITCHEN_TYPES.has(source.folder) && target === "kitchen";
      const fine = may
        ? may.includes(target) || types
        : source.folder === "commands" || target !== "commands" || !source.file.includes("/", 4);
      if (fine) return [];
      return [`${source.file}:${line}: ${source.folder} may not import ${target} (${from})`];
    }),
  );
}

const PURE = new Set([
  ...["kitchen", "reckon", "recipe", "language", "speech", "desk", "plan", "review"],
]);
const IMPURE: [RegExp, string][] = [
  [/from "node:|import\("node:/, "a node: import"],
  [/\bDate\.now\(|\bnew Date\(\)|\bperformance\./, "a clock"],
  [/\bMath\.random\(|\bcrypto\./, "a random number"],
  [/\bset(Timeout|Interval|Immediate)\(|\bqueueMicrotask\(/, "a timer"],
  [/\bprocess\.(env|argv|cwd|stdout|stdin|exit|platform|hrtime|memoryUsage)/, "the environment"],
];

function withoutComment(line: string): string {
  if (/^\s*(\/\/|\*|\/\*)/.test(line)) return "";
  return line;
}

function impureFaults(): string[] {
  return sources
    .filter((source) => PURE.has(source.folder) && !/^src\/recipe\/read[^/]*$/.test(source.file))
    .flatMap((source) =>
      source.lines.flatMap((line, index) =>
        IMPURE.filter(([pattern]) => pattern.test(withoutComment(line))).map(
          ([, what]) => `${source.file}:${index + 1}: ${what} in a pure folder`,
        ),
      ),
    );
}

/** Shapes are declared with what has them: recipes and facts. */
const PLACES_OF: Record<string, RegExp> = { zod: /^src\/(recipe|kitchen\/facts)\// };

function packageFaults(): string[] {
  const users = new Map<string, Map<string, string>>();
  for (const source of sources) {
    for (const { from, line } of importsOf(source)) {
      if (from.startsWith(".") || from.startsWith("node:")) continue;
      const name = from
        .split("/")
        .slice(0, from.startsWith("@") ? 2 : 1)
        .join("/");
      const folders = users.get(name) ?? new Map<string, string>();
      const place = PLACES_OF[name]?.test(source.file) ? "" : source.folder;
      if (!folders.has(place)) folders.set(place, `${source.file}:${line}`);
      users.set(name, folders);
    }
  }
  return [...users].flatMap(([name, folders]) =>
    [...folders.values()].slice(1).map((where) => `${where}: ${name} has another folder already`),
  );
}

function isData(source: Source): boolean {
  return source.lines[0]?.startsWith("// data table") ?? false;
}

function lengthFaults(list: Source[]): string[] {
  return list.flatMap((source) => {
    if (isData(source)) return [];
    const count = source.lines.at(-1) === "" ? source.lines.length - 1 : source.lines.length;
    const long = source.lines.flatMap((line, index) =>
      line.length > LONGEST_LINE && !/https?:\/\/\S{60}/.test(line)
        ? [`${source.file}:${index + 1}: ${line.length} columns, more than ${LONGEST_LINE}`]
        : [],
    );
    const file = `${source.file}:${count}: ${count} lines, more than ${LONGEST_FILE}`;
    return count > LONGEST_FILE ? [file, ...long] : long;
  });
}

const FUNCTION_HEAD =
  /^(\s*)(export )?(default )?(async )?(function\b|(private |public |static |async |get |set )*[\w$]+(<[^>]*>)?\(.*\{$|(const|let) [\w$]+.*=>\s*\{$)/;
const NO_FUNCTION = /^\s*(if|for|while|switch|return|describe|it|catch|expect)\b/;

/**
 * Finds functions by their first and last line: formatted code closes a brace at its own indent.
 */
function functionFaults(list: Source[]): string[] {
  return list.flatMap((source) =>
    source.lines.flatMap((line, index) => {
      const indent = FUNCTION_HEAD.exec(line)?.[1];
      if (indent === undefined || NO_FUNCTION.test(line)) return [];
      const end = source.lines.findIndex((other, at) => {
        return at > index && other.startsWith(`${indent}}`);
      });
      const length = end - index + 1;
      if (end < 0 || length <= LONGEST_FUNCTION) return [];
      return [`${source.file}:${index + 1}: a function of ${length} lines`];
    }),
  );
}

/** Words that say nothing about what a thing is, or that put work off. */
const UNUSED_WORDS =
  /(?<![-:])\b(TODO|FIXME|XXX|HACK|[Uu]tils?|[Hh]elpers?|[Mm]isc|\w*(Manager|Helper|Util|Utils))\b/;

function wordFaults(list: Source[]): string[] {
  return list.flatMap((source) => {
    const named = UNUSED_WORDS.test(source.file.replaceAll(/[-/.]/g, " "));
    const faults = source.lines.flatMap((line, index) => {
      const word = UNUSED_WORDS.exec(line)?.[0];
      return word ? [`${source.file}:${index + 1}: the word ${word}`] : [];
    });
    return named ? [`${source.file}:1: its name`, ...faults] : faults;
  });
}

function nameFaults(list: Source[]): string[] {
  return list.flatMap((source) => {
    const name = source.file.split("/").at(-1) ?? "";
    const kebab = /^[a-z0-9]+(-[a-z0-9]+)*(\.(test|bench|d|config))?\.(tsx?|mjs)$/.test(name);
    if (kebab && !/^index\./.test(name)) return [];
    return [`${source.file}:1: a file is named in lower case with hyphens for the thing it holds`];
  });
}

/** Folders in which each file is one entry of a list, so that nobody looks for a subject there. */
const ONE_FILE_EACH = new Set(["src/language/intents"]);

/** Folders with more code than can be looked through. */
function fullFaults(files: string[]): string[] {
  const counts = new Map<string, number>();
  for (const file of files) counts.set(dirname(file), (counts.get(dirname(file)) ?? 0) + 1);
  return [...counts]
    .filter(([folder, count]) => count > FULLEST_FOLDER && !ONE_FILE_EACH.has(folder))
    .map(([folder, count]) => `${folder}:1: ${count} files, more than ${FULLEST_FOLDER}`);
}

/** Imports, those of types too, that lead back to where they began. */
function cycleFaults(): string[] {
  const graph = new Map<string, string[]>();
  for (const source of sources) {
    const targets = importsOf(source)
      .filter((one) => one.from.startsWith("."))
      .map((one) => join(dirname(source.file), one.from));
    graph.set(source.file, targets);
  }
  const done = new Set<string>();
  const faults: string[] = [];
  const visit = (file: string, path: string[]) => {
    const at = path.indexOf(file);
    if (at >= 0) faults.push(`${file}:1: a cycle: ${[...path.slice(at), file].join(" -> ")}`);
    if (at >= 0 || done.has(file)) return;
    for (const next of graph.get(file) ?? []) visit(next, [...path, file]);
    done.add(file);
  };
  for (const file of graph.keys()) visit(file, []);
  return faults;
}

/** What answers at once; it must not wait for the shapes of facts and recipes to load. */
const AT_ONCE = ["src/main.ts", "src/commands/run.ts", "src/commands/reckon/reckon.ts"];

/** A package that is loaded, apart from types, with one of the files that answer at once. */
function slowFaults(name: string): string[] {
  const known = new Map(sources.map((source) => [source.file, source]));
  const seen = new Set<string>();
  const faults: string[] = [];
  const visit = (file: string, path: string[]) => {
    const source = known.get(file);
    if (!source || seen.has(file)) return;
    seen.add(file);
    for (const { from, typeOnly, later } of importsOf(source)) {
      if (typeOnly || later) continue;
      if (from.split("/")[0] === name) faults.push(`${file}:1: ${[...path, file].join(" -> ")}`);
      if (from.startsWith(".")) visit(join(dirname(file), from), [...path, file]);
    }
  };
  for (const file of AT_ONCE) visit(file, []);
  return faults;
}

function portFaults(): string[] {
  return sources
    .filter((source) => source.folder === "ports")
    .flatMap((source) =>
      source.lines.flatMap((line, index) =>
        /^(export )?(const|let|function|class|enum)\b/.test(line)
          ? [`${source.file}:${index + 1}: ports hold types only`]
          : [],
      ),
    );
}

/** Names of kinds of stages that also mean something else, in these files only. */
const OTHERWISE: Readonly<Record<string, RegExp>> = {
  heat: /^src\/(screen|session\/view|ports\/view|kitchen\/shelves|speech\/telling|plan\/learning\/learn)\b/,
  rest: /^src\/(screen|session\/view|ports\/view|kitchen\/(shelves|decide\/decide-stages))\b/,
  ferment: /^src\/(recipe|review\/shelf|kitchen\/decide\/decide-batch)\b/,
  dry: /^src\/(recipe\/(recipe|recipe-shape|schema)|review\/(verdict|shelf\/shelf-jars))\.ts$/,
  process:
    /^src\/(commands\/(command-table|reckon\/reckon-(recipe|kinds))|language\/evidence\/named-topics)\.ts$/,
};

/** Kinds asked for by name, and stages by id: what is particular to one belongs in its own file. */
function kindFaults(list: Source[]): string[] {
  const named = STAGE_KINDS.join("|");
  const kind = new RegExp(
    `(?<!Stage\\[)"(${named})"|/\\^\\(?(${named})(?:\\||\\)?\\$/)|run\\??\\.id [!=]== "`,
    "g",
  );
  return list
    .filter(({ file }) => file.startsWith("src/") && !file.startsWith("src/kitchen/stages/"))
    .filter(({ file }) => file !== "src/recipe/choices.ts")
    .flatMap(({ file, lines }) =>
      lines.flatMap((line, index) =>
        [...withoutComment(line).matchAll(kind)]
          .filter(([, name = ""]) => !OTHERWISE[name]?.test(file))
          .map(([name]) => `${file}:${index + 1}: the kind ${name} is asked for by name`),
      ),
    );
}

/** What the core may read by pattern: ids, instants and figures, which nobody says. */
const READS_SIGNS =
  /^src\/kitchen\/(cron|time|spoken-names|probe\/probe-line|facts\/(gate|checker|fields))\.ts$/;
const READS_WORDS =
  /\bRegExp\b|(?<![\w)\]] ?)\/(?![/*])(\\.|[^/\\])+\/[a-z]*(?=[.,;)\]]|$)|\.toLowerCase\(|\.includes\(String\(|\.text\b.*\.includes\(/;

/** The core reads no words: language/ turns them into typed commands. */
function readingFaults(list: Source[]): string[] {
  return list
    .filter(({ folder, file }) => folder === "kitchen" && !READS_SIGNS.test(file))
    .flatMap(({ file, lines }) =>
      lines.flatMap((line, index) => {
        const plain = withoutComment(line).replaceAll(/"[^"]*"|`[^`]*`/g, '""');
        const fault = READS_WORDS.test(plain) || /\bcommand\.text\b/.test(plain);
        return fault ? [`${file}:${index + 1}: the core reads no words`] : [];
      }),
    );
}

/** Numbers of the trade state their unit and what they rest on. */
function numberFaults(list: Source[]): string[] {
  const rests = /^(\/\*\*|\s*\*) (Published|Common practice|From memory|Our choice): /;
  return list
    .filter(({ file }) => file === "src/reckon/trade-numbers.ts")
    .flatMap(({ file, lines }) =>
      lines.flatMap((line, index) => {
        const name = /^export const (\w+)/.exec(line)?.[1];
        if (name === undefined) return [];
        const before = lines.slice(0, index).findLastIndex((one) => /^\/\*\*/.test(one));
        const said = lines.slice(before, index).some((one) => rests.test(one));
        const unit = /_(SECONDS|MINUTES|HOURS|DAYS|F|PSI|IN|PERCENT|JARS)(_|$)/.test(name);
        const where = `${file}:${index + 1}: ${name}`;
        return [
          ...(said ? [] : [`${where} rests on nothing`]),
          ...(unit ? [] : [`${where} has no unit`]),
        ];
      }),
    );
}

/** What is promised, each with what tries it: a file here, or an attack by its name. */
function promiseFaults(text: string): string[] {
  const [, promised = ""] = /\*\*Promised\.\*\*\n\n([\s\S]*?)\n\n/.exec(text) ?? [];
  const attacks = readFileSync("tests/attack/attacks.mjs", "utf8");
  return promised.split(/^- /m).flatMap((promise) => {
    const named = [...promise.matchAll(/`(?:npm run attack -- --only )?([^`]+)`/g)];
    const names = named.map(([, name = ""]) => name).filter((name) => name !== "tell");
    if (promise.trim() === "") return [];
    if (names.length === 0) return [`no test is named: ${promise}`];
    const tried = (name: string) =>
      name.includes("/") ? existsSync(name) : new RegExp(`^  "?${name}"?[:,]`, "m").test(attacks);
    return names.filter((name) => !tried(name)).map((name) => `there is no ${name}`);
  });
}

describe("the rules of the house", () => {
  it("are read from every file of src and tests", () => {
    expect(sources.length).toBeGreaterThan(100);
    expect(sources.flatMap(importsOf).length).toBeGreaterThan(300);
    expect(tests.length).toBeGreaterThan(30);
  });

  it.each([
    ["imports point one way", directionFaults],
    ["no imports run in a circle", cycleFaults],
    ["pure folders read no clock, chance, timer, file or environment", impureFaults],
    ["an outside package belongs to one folder", packageFaults],
    ["what answers at once loads no shapes", () => slowFaults("zod")],
    ["ports hold types only", portFaults],
    ["the core reads no words", () => readingFaults(sources)],
    ["no kind of stage is asked for by name outside its file", () => kindFaults(sources)],
    ["numbers of the trade have a unit and a source", () => numberFaults(sources)],
    ["files and lines keep their size", () => lengthFaults([...sources, ...tests])],
    ["folders are grouped by subject", () => fullFaults(filesUnder("src"))],
    ["functions keep their size", () => functionFaults([...sources, ...tests])],
    ["some words are not used", () => wordFaults([...sources, ...tests])],
    ["files are named for what they hold", () => nameFaults([...sources, ...tests])],
  ])("%s", (_rule, faults) => {
    expect(faults()).toEqual([]);
  });

  it("name what tries each promise", () => {
    const text = readFileSync("DEVELOPERS.md", "utf8");
    expect(promiseFaults(text)).toEqual([]);
    expect(promiseFaults(text.replace("stalled-terminal", "gone"))).toEqual(["there is no gone"]);
    expect(promiseFaults("**Promised.**\n\n- It works.\n\n")).toHaveLength(1);
  });

  it("would be noticed: each rule finds a fault made for it", () => {
    const text = ["function long() {", ...Array(70).fill("  // line"), "}"].join("\n");
    const made: Source = { file: "src/a-b.ts", folder: "a-b.ts", text, lines: text.split("\n") };
    expect(functionFaults([made])).toEqual(["src/a-b.ts:1: a function of 72 lines"]);
    const core = { ...made, folder: "kitchen", file: "src/kitchen/a.ts" };
    const reads = ["if (/^jars?$/.test(target))", "text.toLowerCase()", "wish.command.text"];
    expect(readingFaults([{ ...core, lines: [...reads, "const half = all / 2;"] }])).toHaveLength(
      3,
    );
    const word = { ...made, lines: [`// ${["TO", "DO"].join("")} later`, "x".repeat(101)] };
    expect(wordFaults([word])).toHaveLength(1);
    expect(lengthFaults([word])).toHaveLength(1);
    expect(nameFaults([{ ...made, file: "src/aB.ts" }])).toHaveLength(1);
    const full = Array.from({ length: 26 }, (_, at) => `src/speech/${at}.ts`);
    expect(fullFaults(full)).toEqual(["src/speech:1: 26 files, more than 25"]);
    expect(fullFaults(full.slice(1))).toEqual([]);
    const asks = [
      ...['if (run.spec.kind === "cool") return;', 'const rest = "rest";'],
      "const OUT = /^(cool|seal-check)$/;",
      'const hot = run.id !== "canner";',
    ];
    expect(kindFaults([{ ...made, lines: asks }])).toHaveLength(4);
    const file = "src/reckon/trade-numbers.ts";
    const numbers = [
      "/** Published: a guide. */",
      "export const A_MINUTES = 1;",
      "export const B = 2;",
    ];
    expect(numberFaults([{ ...made, file, lines: numbers }])).toHaveLength(1);
    expect(
      numberFaults([{ ...made, file, lines: ["/** Ten. */", "export const A_F = 1;"] }]),
    ).toEqual([`${file}:2: A_F rests on nothing`]);
    expect(slowFaults("node:fs").length).toBeGreaterThan(0);
    expect(importsOf({ ...made, text: 'import { type A } from "./a.ts";' })).toMatchObject([
      { from: "./a.ts", typeOnly: true },
    ]);
  });
});
