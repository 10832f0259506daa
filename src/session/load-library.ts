/**
 * The recipes: those that come with the program, and the person's own beside the journal. Parsing
 * is slow and depends on the text alone, so the build keeps its outcome under the text's digest.
 */
import { createHash } from "node:crypto";
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { type Library, libraryOf, type ParsedFile } from "../recipe/library.ts";

export type ParsedByDigest = Record<string, ParsedFile>;

export function digestOf(text: string): string {
  return createHash("sha256").update(text).digest("hex");
}

/** Texts of a recipes folder by file name; none where the folder is missing. */
export function recipeTexts(folder: string): { name: string; text: string }[] {
  if (!existsSync(folder)) return [];
  return readdirSync(folder)
    .filter((name) => name.endsWith(".yaml") || name.endsWith(".yml"))
    .sort()
    .map((name) => ({ name, text: readFileSync(join(folder, name), "utf8") }));
}

/** Reads the folders into one library; a file the build has parsed already is taken from there. */
export async function loadLibrary(folders: string[], known: ParsedByDigest): Promise<Library> {
  const files: ParsedFile[] = [];
  for (const { name, text } of folders.flatMap(recipeTexts)) {
    const parsed = known[digestOf(text)];
    if (parsed) files.push({ ...parsed, name });
    else {
      const { parseLibraryFile } = await import("../recipe/read-library.ts");
      files.push(parseLibraryFile(name, text));
    }
  }
  return libraryOf(files);
}
