/**
 * The recipes: those that come with the program, and the person's own beside the journal. Parsing
 * is slow and depends on the text alone, so the build keeps its outcome under the text's digest.
 */
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { crc32 } from "node:zlib";
import {
  type DangerOf,
  type Library,
  libraryOf,
  type ParsedFile,
  TABLES_FILE,
} from "../recipe/library.ts";

export type ParsedByDigest = Record<string, ParsedFile>;

/** Guards against what was edited since the build, not against forgery, and is quick to load. */
export function digestOf(text: string): string {
  return `${crc32(text).toString(16)}.${text.length}`;
}

/** Texts of a recipes folder by file name; none where the folder is missing. */
export function recipeTexts(folder: string): { name: string; text: string }[] {
  if (!existsSync(folder)) return [];
  return readdirSync(folder)
    .filter((name) => name.endsWith(".yaml") || name.endsWith(".yml"))
    .sort()
    .map((name) => ({ name, text: readFileSync(join(folder, name), "utf8") }));
}

/**
 * The files of one recipe and the tables, where its id names a file and no folder besides the
 * program's own has any that could be meant; else undefined.
 */
function textsOfOne(folders: string[], id: string): { name: string; text: string }[] | undefined {
  const [own, ...others] = folders;
  if (own === undefined || others.some(existsSync) || !/^[a-z0-9-]+$/.test(id)) return undefined;
  const names = [`${id}.yaml`, TABLES_FILE];
  if (!names.every((name) => existsSync(join(own, name)))) return undefined;
  return names.map((name) => ({ name, text: readFileSync(join(own, name), "utf8") }));
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
  for (const { name, text } of texts ?? folders.flatMap(recipeTexts)) {
    const parsed = known[digestOf(text)];
    if (parsed) files.push({ ...parsed, name });
    else {
      const { parseLibraryFile, shelfDanger } = await import("../recipe/read-library.ts");
      dangerOf = shelfDanger;
      files.push({ ...parseLibraryFile(name, text), unchecked: true });
    }
  }
  return libraryOf(files, dangerOf);
}
