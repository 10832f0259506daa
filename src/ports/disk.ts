/**
 * The disk, as little of it as the journal needs. Calls finish before they return, never throw,
 * and say what went wrong as a value. Paths are absolute, or relative to the working folder.
 */

/** Why the disk refused: no room, not allowed, not there, there already, or anything else. */
export type DiskTrouble = "full" | "denied" | "missing" | "exists" | "io";

/** A refusal. `message` is one plain line with the call, the path and the system's own words. */
export type DiskRefusal = { ok: false; why: DiskTrouble; message: string };

/** What a call gave, or its refusal. */
export type DiskAnswer<Given = unknown> = ({ ok: true } & Given) | DiskRefusal;

/** A file held open for adding at its end. */
export type AppendFile = {
  /** Adds all of the bytes. After a refusal any part of them, or none, may be in the file. */
  append(bytes: Uint8Array): DiskAnswer;
  /** Returns once what was added is on the disk. After a refusal this handle is no longer good. */
  sync(): DiskAnswer;
  /** Which file this is, whatever now stands under its name, and how long it is. */
  identity(): DiskAnswer<FileIdentity>;
  close(): void;
};

/** Tells a file from any other that had or will have its name, on one machine; and its length. */
export type FileIdentity = { identity: string; length: number };

export type Disk = {
  /** The whole file. */
  read(path: string): DiskAnswer<{ bytes: Uint8Array }>;
  /** Opens for adding, and makes the file (for its owner alone) where there is none. */
  openAppend(path: string): DiskAnswer<{ file: AppendFile; length: number }>;
  /** Cuts the file to this many bytes, on the disk when it returns. */
  truncate(path: string, length: number): DiskAnswer;
  /**
   * Replaces the content: afterwards, power cut or not, the file holds either all of the old or all
   * of the new. A refusal leaves the old.
   */
  replace(path: string, bytes: Uint8Array): DiskAnswer;
  /** Makes a new file, content included, in one step; refuses with `exists` where there is one. */
  createExclusive(path: string, bytes: Uint8Array): DiskAnswer;
  /** Renames within a folder; of several that try with the same file, one succeeds. */
  rename(from: string, to: string): DiskAnswer;
  remove(path: string): DiskAnswer;
  /** Names of the entries of a folder, sorted. */
  list(folder: string): DiskAnswer<{ names: string[] }>;
  /** Makes the folder and those above it (for their owner alone); fine where it is there. */
  makeFolder(folder: string): DiskAnswer;
  /** Returns once the folder's new, renamed and removed names are on the disk. */
  syncFolder(folder: string): DiskAnswer;
  /** Which file stands under a name, and how long it is. */
  identity(path: string): DiskAnswer<FileIdentity>;
};
