/**
 * State replayed from a long journal, kept beside it so that the next reader need not replay it
 * again. It is valid only for the exact bytes it was made from and the exact program that made it,
 * and only ever saves time: deleting it, or being unable to write it, loses nothing else.
 */
import { crc32 } from "node:zlib";
import { fileName, filesInOrder } from "../../journal/file-name.ts";
import type { Heartbeat } from "../../journal/heartbeat.ts";
import type { State } from "../../kitchen/state.ts";
import type { Disk } from "../../ports/disk.ts";
import { packedState, unpackedState } from "./pack-state.ts";

const NAME = "snapshot.json";

/** A snapshot is only used by the build of the program that kept it. */
type SnapshotPlace = { disk: Disk; folder: string; build: string };

/** A journal with fewer lines is replayed as quickly as its snapshot is read. */
export const WORTH_KEEPING = 2_000;

/** Identifies the program and the journal's bytes; undefined where a file cannot be read. */
export function snapshotKey(
  { disk, folder, build }: SnapshotPlace,
  beat: Heartbeat | undefined,
): string | undefined {
  const listed = disk.list(folder);
  if (!listed.ok) return undefined;
  // The clocks know how far the journal went, which a cut one does not.
  const parts = [build, String(beat?.lastN ?? "")];
  for (const name of filesInOrder(listed.names).map(fileName)) {
    const file = disk.read(`${folder}/${name}`);
    if (!file.ok) return undefined;
    parts.push(`${name} ${file.bytes.length} ${crc32(file.bytes)}`);
  }
  return parts.join(", ");
}

/**
 * The state kept under a key, or undefined. The events themselves are not in it; they are read
 * where somebody asks for them.
 */
export function readSnapshot(
  { disk, folder }: SnapshotPlace,
  key: string,
  history: () => State["history"],
): State | undefined {
  const file = disk.read(`${folder}/${NAME}`);
  if (!file.ok) return undefined;
  const { buffer, byteOffset, byteLength } = file.bytes;
  const bytes = Buffer.from(buffer, byteOffset, byteLength);
  const head = bytes.indexOf("\n");
  const body = bytes.subarray(head + 1);
  if (bytes.toString("utf8", 0, head) !== headOf(key, body)) return undefined;
  const state = unpackedState(body.toString("utf8"));
  let read: State["history"] | undefined;
  return Object.defineProperty(state, "history", {
    enumerable: true,
    get: () => {
      read ??= history();
      return read;
    },
  }) as State;
}

/** Keeps a state under a key, replacing the previous one. A refusal of the disk is ignored. */
export function keepSnapshot({ disk, folder }: SnapshotPlace, key: string, state: State): void {
  const body = Buffer.from(packedState(state));
  const head = Buffer.from(`${headOf(key, body)}\n`);
  disk.replace(`${folder}/${NAME}`, Buffer.concat([head, body]));
}

function headOf(key: string, body: Uint8Array): string {
  return JSON.stringify({ of: key, sum: crc32(body) });
}
