/**
 * Who writes in a data folder: a name that the ids of its jars begin with. A folder that was copied
 * or restored writes under a new one, so that no two folders give the same id.
 */
import { randomInt } from "node:crypto";
import { resolve } from "node:path";
import { WRITER_WORDS, wordOf, writerNamed } from "../kitchen/jars/jar-ids.ts";
import type { Disk } from "../ports/disk.ts";

const NAME = "writer.json";

/** 36 to the seventh times the words: two folders seldom draw the same. */
const NAMES = 2 ** 40;

const drawWriter = (): number => randomInt(NAMES);

/**
 * The folder's writer; a new one where it has none, or its file is not the one that was written
 * here. Undefined where the disk refuses: ids then follow from the journal alone.
 * @param known writers in the folder's journal, whose words a new one does without.
 */
export function writerIn(
  disk: Disk,
  folder: string,
  known: ReadonlySet<string>,
  draw: () => number = drawWriter,
): string | undefined {
  const path = `${folder}/${NAME}`;
  const kept = disk.read(path);
  const here = kept.ok ? placeOf(disk, folder, path) : undefined;
  const before = kept.ok ? writtenIn(kept.bytes) : undefined;
  if (before && here !== undefined && before.place === here) return before.writer;
  const words = new Set([...known].map(wordOf));
  const writer = writerNamed(draw(), words.size < WRITER_WORDS.length ? words : new Set());
  if (kept.ok && !disk.remove(path).ok) return undefined;
  // The file is made first: what tells it from a copy is known only once it is there.
  const opened = disk.openAppend(path);
  if (!opened.ok) return undefined;
  const { file } = opened;
  const place = placeOf(disk, folder, path);
  const line = Buffer.from(`${JSON.stringify({ writer, place })}\n`);
  const written = place !== undefined && file.append(line).ok && file.sync().ok;
  file.close();
  return written ? writer : undefined;
}

/** Which file this is, and where. */
function placeOf(disk: Disk, folder: string, path: string): string | undefined {
  const found = disk.identity(path);
  return found.ok ? `${found.identity} ${resolve(folder)}` : undefined;
}

function writtenIn(bytes: Uint8Array): { writer: string; place: string } | undefined {
  try {
    const { writer, place } = JSON.parse(Buffer.from(bytes).toString("utf8"));
    const fits = /^[a-z]+-[a-z0-9]+$/.test(writer) && typeof place === "string";
    return fits ? { writer, place } : undefined;
  } catch {
    return undefined;
  }
}
