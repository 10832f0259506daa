/**
 * The recipes: those that come with the program, and the person's own beside the journal. Parsing
 * is slow and depends only on the text, so the build keeps its result under the text's digest.
 */
import { existsSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { crc32 } from "node:zlib";
import { readRegular } from "../../journal/regular-file.ts";
import {
  type DangerOf,
  type Library,
  libraryOf,
  MOST_RECIPE_BYTES,
  type ParsedFile,
  TABLES_FILE,
} from "../../recipe/library.ts";

export type ParsedByDigest = Record<string, ParsedFile>;

/** Detects edits since the build, not forgery, and is quick to compute. */
function digestOf(text: string): string {
  return `${crc32(text).toString(16)}.${text.length}`;
}

/** A file of a recipes folder: its text, or why it was not read. */
type RecipeText = { name: string; text: string } | { name: string; problem: string };

/** The files of a recipes folder by name; none where the folder is missing. Never throws. */
export function recipeTexts(folder: string): RecipeText[] {
  return namesIn(folder)
    .filter((name) => name.endsWith(".yaml") || name.endsWith(".yml"))
    .sort()
    .map((name) => textOf(folder, name));
}

function namesIn(folder: string): string[] {
  try {
    return readdirSync(folder);
  } catch {
    return [];
  }
}

function textOf(folder: string, name: string): RecipeText {
  try {
    const bytes = readRegular(join(folder, name), MOST_RECIPE_BYTES);
    if (bytes.length > MOST_RECIPE_BYTES) {
      return { name, problem: `over ${MOST_RECIPE_BYTES / 1000} kB, so this is no recipe` };
    }
    return { name, text: bytes.toString("utf8") };
  } catch (error) {
    return { name, problem: `it cannot be read (${(error as Error).message.split("\n")[0]})` };
  }
}

/**
 * The files of one recipe and the tables, if its id names a file and no other folder has one that
 * could be meant; else undefined.
 */
function textsOfOne(folders: string[], id: string): RecipeText[] | undefined {
  const [own, ...others] = folders;
  if (own === undefined || others.some(existsSync) || !/^[a-z0-9-]+$/.test(id)) return undefined;
  const names = [`${id}.yaml`, TABLES_FILE];
  if (!names.every((name) => existsSync(join(own, name)))) return undefined;
  return names.map((name) => textOf(own, name));
}

/**
 * Reads the folders into one library; a file the build has parsed already is taken from there.
 * Where `only` one recipe is asked for by its id, the others may be missing.
 */
export async function loadLibrary(
  folders: string[],
  known: ParsedByDigest,
  only?: string,
): Promise<Library> {
  const files: ParsedFile[] = [];
  let dangerOf: DangerOf | undefined;
  const texts = only === undefined ? undefined : textsOfOne(folders, only);
  for (const file of texts ?? folders.flatMap(recipeTexts)) {
    const { name } = file;
    if ("problem" in file) {
      files.push({ name, problems: [`${name}: ${file.problem}`] });
      continue;
    }
    const { text } = file;
    const parsed = known[digestOf(text)];
    if (parsed) files.push({ ...parsed, name });
    else {
      const { parseLibraryFile, shelfDanger } = await import("../../kitchen/read-library.ts");
      dangerOf = shelfDanger;
      files.push({ ...parseLibraryFile(name, text), unchecked: true });
    }
  }
  return libraryOf(files, dangerOf);
}
