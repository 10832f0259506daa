import type { YAMLMap } from "yaml";
import { isAlias, isCollection, isMap, isScalar, LineCounter, parseDocument, visit } from "yaml";
import type { z } from "zod";

/**
 * Reads YAML text into plain data that fits a schema, or says what is wrong with it, line by line.
 * Files may come from anyone: size, nesting and number of values are limited before anything is
 * built, and anchors, aliases and tags are refused.
 */

export type FileProblem = { file: string; line: number; message: string };

export type Path = readonly (string | number)[];

type Yaml<T> =
  | { ok: true; value: T; lineOf: (path: Path) => number }
  | { ok: false; problems: FileProblem[] };

/** Largest file read, characters. The library's longest, its process tables, has about 40,000. */
const LARGEST_FILE = 65_536;
const DEEPEST = 12;
const MOST_LINES = 2_000;
const MOST_COMMAS = 4_000;
const MOST_PROBLEMS = 20;
const FORBIDDEN_KEYS = new Set(["__proto__", "constructor", "prototype"]);

type Document = ReturnType<typeof parseDocument>;

/** Refuses by simple counting what would take the parser too long: size, lines, brackets. */
function oversize(text: string): string | undefined {
  if (text.length > LARGEST_FILE) {
    return `the file is longer than ${LARGEST_FILE} characters; a recipe has a few thousand`;
  }
  let lines = 1;
  let depth = 0;
  let deepest = 0;
  let commas = 0;
  for (const char of text) {
    if (char === "\n") lines += 1;
    else if (char === ",") commas += 1;
    else if (char === "[" || char === "{") deepest = Math.max(deepest, ++depth);
    else if (char === "]" || char === "}") depth = Math.max(0, depth - 1);
  }
  if (lines > MOST_LINES) return `the file has ${lines} lines; at most ${MOST_LINES} are read`;
  if (commas > MOST_COMMAS) return `the file has ${commas} commas; at most ${MOST_COMMAS} are read`;
  if (deepest > DEEPEST) return `brackets are nested ${deepest} deep; at most ${DEEPEST}`;
  return undefined;
}

/** `- - - - x` nests a list at every dash: found before the parser descends into it. */
function deepDash(text: string): number | undefined {
  const lines = text.split("\n");
  const index = lines.findIndex((line) => /^\s*(?:[-?:]\s+){12}/.test(line));
  return index < 0 ? undefined : index + 1;
}

/** Keys that are not plain text, appear twice, or have a meaning for every object. */
function keyFaults(map: YAMLMap): { offset: number | undefined; message: string }[] {
  const seen = new Set<string>();
  return map.items.flatMap(({ key }) => {
    const offset = isScalar(key) ? key.range?.[0] : map.range?.[0];
    if (!isScalar(key) || typeof key.value !== "string" || FORBIDDEN_KEYS.has(key.value)) {
      const name = isScalar(key) ? plain(String(key.value)) : "of several parts";
      return [{ offset, message: `the key ${name} is not read` }];
    }
    if (seen.has(key.value)) return [{ offset, message: plain(`${key.value} is written twice`) }];
    seen.add(key.value);
    return [];
  });
}

function forbidden(document: Document, lines: LineCounter, file: string): FileProblem[] {
  const problems: FileProblem[] = [];
  const add = (offset: number | undefined, message: string): void => {
    problems.push({ file, line: lines.linePos(offset ?? 0).line, message });
  };
  visit(document, (_key, node, ancestors) => {
    if (problems.length >= MOST_PROBLEMS) return visit.BREAK;
    if (ancestors.length > 4 * DEEPEST) {
      problems.push({ file, line: 1, message: `is nested deeper than ${DEEPEST} levels` });
      return visit.BREAK;
    }
    if (isAlias(node)) add(node.range?.[0], "aliases (*name) are not read; write it out");
    else if (isScalar(node) || isCollection(node)) {
      if (node.anchor) add(node.range?.[0], "anchors (&name) are not read; write it out");
      else if (node.tag) add(node.range?.[0], `the tag ${node.tag} is not read`);
    }
    if (!isMap(node)) return undefined;
    for (const { offset, message } of keyFaults(node)) add(offset, message);
    return undefined;
  });
  return problems;
}

/** The line of the nearest node along a path; an unknown key is looked up itself. */
function lineFinder(document: Document, lines: LineCounter): (path: Path) => number {
  return (path) => {
    for (let length = path.length; length > 0; length -= 1) {
      const parent: unknown =
        length === 1 ? document.contents : document.getIn(path.slice(0, length - 1), true);
      const key = path[length - 1];
      if (isMap(parent)) {
        const pair = parent.items.find((item) => isScalar(item.key) && item.key.value === key);
        if (pair && isScalar(pair.key)) return lines.linePos(pair.key.range?.[0] ?? 0).line;
      }
      const node = document.getIn(path.slice(0, length), true) as { range?: number[] } | undefined;
      if (node?.range) return lines.linePos(node.range[0] ?? 0).line;
    }
    return 1;
  };
}

function pathText(path: Path): string {
  return path.map((part) => (typeof part === "number" ? `[${part + 1}]` : part)).join(" ");
}

/** Text from a file made safe for a terminal and short enough for one line. */
function plain(message: string): string {
  return message
    .replace(/[\u0000-\u001f\u007f-\u009f\u200b-\u202f\u2060-\u206f]/g, "?")
    .slice(0, 300);
}

function issueProblems(
  issues: readonly z.core.$ZodIssue[],
  lineOf: (path: Path) => number,
  file: string,
): FileProblem[] {
  return issues.slice(0, MOST_PROBLEMS).flatMap((issue): FileProblem[] => {
    const path = issue.path.filter((part) => typeof part !== "symbol");
    if (issue.code === "unrecognized_keys") {
      return issue.keys.slice(0, MOST_PROBLEMS).map((key) => ({
        file,
        line: lineOf([...path, key]),
        message: plain(`${pathText([...path, key])}: this key is not known`),
      }));
    }
    const place = path.length === 0 ? "the file" : pathText(path);
    const message = plain(`${place}: ${lowerFirst(issue.message)}`);
    return [{ file, line: lineOf(path), message }];
  });
}

function lowerFirst(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}

function parse(text: string, file: string, lines: LineCounter): Document | FileProblem[] {
  const fault = oversize(text);
  if (fault) return [{ file, line: 1, message: fault }];
  const dashLine = deepDash(text);
  if (dashLine) return [{ file, line: dashLine, message: "lists are nested too deep" }];
  try {
    const document = parseDocument(text, {
      lineCounter: lines,
      prettyErrors: false,
      merge: false,
      uniqueKeys: false,
    });
    const errors = [...document.errors, ...document.warnings].slice(0, MOST_PROBLEMS);
    if (errors.length === 0) return document;
    return errors.map((e) => ({
      file,
      line: lines.linePos(e.pos[0]).line,
      message:
        e.code === "MULTIPLE_DOCS" ? "one file holds one recipe" : plain(lowerFirst(e.message)),
    }));
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    return [{ file, line: 1, message: plain(`cannot be read: ${why}`) }];
  }
}

/**
 * Reads YAML that must fit a schema. A byte-order mark and CRLF line ends are accepted.
 * @param file the name problems are reported under.
 */
export function readYaml<S extends z.ZodType>(
  text: string,
  file: string,
  schema: S,
): Yaml<z.infer<S>> {
  const lines = new LineCounter();
  const document = parse(text.replace(/^\ufeff/, ""), file, lines);
  if (Array.isArray(document)) return { ok: false, problems: document };
  const lineOf = lineFinder(document, lines);
  const banned = forbidden(document, lines, file);
  if (banned.length > 0) return { ok: false, problems: banned };
  const result = schema.safeParse(document.toJS({ maxAliasCount: 0 }));
  if (result.success) return { ok: true, value: result.data, lineOf };
  const problems = issueProblems(result.error.issues, lineOf, file).slice(0, MOST_PROBLEMS);
  return { ok: false, problems };
}

/** A problem as one line: file, line, what is wrong. */
export function problemLine(problem: FileProblem): string {
  return `${problem.file}:${problem.line}: ${problem.message}`;
}
