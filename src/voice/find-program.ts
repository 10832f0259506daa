import { accessSync, constants, statSync } from "node:fs";
import { delimiter, join } from "node:path";

/**
 * The path of the first of these programs found on a search path, in the order of the names;
 * undefined where there is none. `searchPath` is a PATH value; on Windows `.exe` is tried too.
 */
export function findProgram(
  names: readonly string[],
  searchPath: string,
  platform: NodeJS.Platform,
): string | undefined {
  const endings = platform === "win32" ? [".exe", ".cmd", ""] : [""];
  const folders = searchPath.split(delimiter).filter((folder) => folder !== "");
  for (const name of names) {
    for (const folder of folders) {
      const found = endings.map((ending) => join(folder, name + ending)).find(isProgram);
      if (found) return found;
    }
  }
  return undefined;
}

function isProgram(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return statSync(path).isFile();
  } catch {
    return false;
  }
}
