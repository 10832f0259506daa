/** Where the kitchen's data lives. */
import { chmodSync, existsSync, statSync } from "node:fs";
import { join } from "node:path";
import envPaths from "env-paths";
import { fileName, filesInOrder } from "../journal/file-name.ts";
import { realDisk } from "../journal/real-disk.ts";

/** `--home`, else BRINEBELL_HOME, else the platform's own data folder. */
export function dataFolder(
  home: string | undefined,
  env: Readonly<Record<string, string | undefined>>,
): string {
  const chosen = home ?? env.BRINEBELL_HOME;
  return chosen || envPaths("brinebell", { suffix: "" }).data;
}

/**
 * Who else has access to a data folder: nobody, others who may read it, or others who may change
 * it. Nobody where it is not there yet, or the system has no such thing.
 */
function openTo(folder: string): "nobody" | "readers" | "writers" {
  const mode = process.platform === "win32" ? 0 : (statSync(folder, NO_THROW)?.mode ?? 0);
  if ((mode & 0o022) !== 0) return "writers";
  return (mode & 0o055) === 0 ? "nobody" : "readers";
}

const NO_THROW = { throwIfNoEntry: false } as const;

/** Whether others may read a log in a folder they may look into. */
function isLogReadable(folder: string): boolean {
  const listed = realDisk().list(folder);
  const logs = listed.ok ? filesInOrder(listed.names).map(fileName) : [];
  return logs.some((name) => ((statSync(join(folder, name), NO_THROW)?.mode ?? 0) & 0o044) !== 0);
}

/**
 * Makes the platform's own data folder private. One that the person chose may be shared on
 * purpose, so a sentence points out where its log is open to others; undefined where nothing is.
 */
export function keepPrivate(folder: string, chosen: boolean): string | undefined {
  const to = openTo(folder);
  if (to === "nobody" || (chosen && to === "readers" && !isLogReadable(folder))) return undefined;
  if (!chosen) {
    try {
      chmodSync(folder, 0o700);
      return undefined;
    } catch {
      // It is another's; that is told.
    }
  }
  const may = to === "writers" ? "change" : "read";
  return `Others on this machine may ${may} what is in ${folder}: chmod 700 makes it yours alone.`;
}

/**
 * Why a folder that the person named is no kitchen: it is not there (`missing`), or holds no log
 * yet. Undefined where it holds one.
 */
export function noKitchenIn(folder: string): { missing: boolean; message: string } | undefined {
  const mend = "name the folder of a kitchen, or open one there: brinebell --home DIR";
  if (!existsSync(folder)) {
    return { missing: true, message: `there is no kitchen in ${folder}; ${mend}` };
  }
  const listed = realDisk().list(folder);
  if (!listed.ok || filesInOrder(listed.names).length > 0) return undefined;
  return { missing: false, message: `there is no log in ${folder} yet; ${mend}` };
}

/** The person's own recipes, beside the journal. */
export function ownRecipes(folder: string): string {
  return join(folder, "recipes");
}
