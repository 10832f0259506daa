import * as fs from "node:fs";
import { basename, dirname, join, resolve } from "node:path";
import type {
  AppendFile,
  Disk,
  DiskAnswer,
  DiskRefusal,
  DiskTrouble,
  FileIdentity,
} from "../ports/disk.ts";
import { standStill } from "./lock.ts";
import { openRegular, readRegular } from "./regular-file.ts";

const FILE_MODE = 0o600;
const FOLDER_MODE = 0o700;

const TROUBLE: Record<string, DiskTrouble> = {
  ENOSPC: "full",
  EDQUOT: "full",
  EFBIG: "full",
  EACCES: "denied",
  EPERM: "denied",
  EROFS: "denied",
  ENOENT: "missing",
  EEXIST: "exists",
  ENOTEMPTY: "exists",
};

/** File systems without hard links answer `link` with one of these. */
const NO_LINKS = new Set(["EPERM", "ENOTSUP", "EOPNOTSUPP", "ENOSYS", "EMLINK"]);

/** On Windows a rename may be refused for a moment while another program has the file open. */
const RENAME_TRIES = 20;

let temporaryFiles = 0;

/** The machine's disk. Files it makes are for their owner alone (0600), folders too (0700). */
export function realDisk(): Disk {
  return {
    read: (path) => attempt("read", path, () => ({ bytes: readRegular(path) })),
    openAppend: (path) => attempt("open", path, () => openAppend(path)),
    truncate: (path, length) => attempt("shorten", path, () => truncate(path, length)),
    replace: (path, bytes) => attempt("replace", path, () => replace(path, bytes)),
    createExclusive: (path, bytes) => attempt("create", path, () => createWhole(path, bytes)),
    rename: (from, to) => attempt("rename", from, () => renameTrying(from, to)),
    remove: (path) => attempt("remove", path, () => fs.unlinkSync(path)),
    list: (folder) => attempt("list", folder, () => ({ names: fs.readdirSync(folder).sort() })),
    makeFolder: (folder) => attempt("create", folder, () => makeFolder(folder)),
    syncFolder: (folder) => attempt("sync", folder, () => syncFolder(folder)),
    identity: (path) =>
      attempt("look at", path, () => identityOf(fs.statSync(path, { bigint: true }))),
  };
}

/**
 * Makes a folder and those above it, step by step: Node's own recursive call never returns where
 * the system says that a folder exists but lets nothing be made in it.
 */
function makeFolder(folder: string): void {
  const path = resolve(folder);
  const above = dirname(path);
  try {
    fs.mkdirSync(path, { mode: FOLDER_MODE });
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === "EEXIST" && fs.statSync(path).isDirectory()) return;
    if (code !== "ENOENT" || above === path) throw error;
    makeFolder(above);
    fs.mkdirSync(path, { mode: FOLDER_MODE });
  }
  syncFolder(above);
}

function openAppend(path: string): { file: AppendFile; length: number } {
  const { O_APPEND, O_CREAT, O_WRONLY } = fs.constants;
  const descriptor = openRegular(path, O_APPEND | O_CREAT | O_WRONLY, FILE_MODE);
  const file: AppendFile = {
    append: (bytes) => attempt("write", path, () => writeAll(descriptor, bytes)),
    sync: () => attempt("sync", path, () => fs.fdatasyncSync(descriptor)),
    identity: () => attempt("look at", path, () => identityOf(bigStat(descriptor))),
    close: () => void attempt("close", path, () => fs.closeSync(descriptor)),
  };
  return { file, length: fs.fstatSync(descriptor).size };
}

/**
 * One write may write only a part: on a nearly full disk it does, and says so only by its count.
 */
function writeAll(descriptor: number, bytes: Uint8Array): void {
  let done = 0;
  while (done < bytes.length) done += fs.writeSync(descriptor, bytes, done);
}

function truncate(path: string, length: number): void {
  const descriptor = openRegular(path, fs.constants.O_RDWR);
  try {
    fs.ftruncateSync(descriptor, length);
    fs.fsyncSync(descriptor);
  } finally {
    fs.closeSync(descriptor);
  }
}

function replace(path: string, bytes: Uint8Array): void {
  const temporary = writeTemporary(path, bytes);
  try {
    renameTrying(temporary, path);
  } catch (error) {
    fs.rmSync(temporary, { force: true });
    throw error;
  }
  syncFolder(dirname(path));
}

/** A link appears whole or not at all, so nobody ever reads a half-written lock. */
function createWhole(path: string, bytes: Uint8Array): void {
  const temporary = writeTemporary(path, bytes);
  try {
    fs.linkSync(temporary, path);
  } catch (error) {
    if (!NO_LINKS.has(codeOf(error))) throw error;
    writeNew(path, bytes);
  } finally {
    fs.rmSync(temporary, { force: true });
  }
  syncFolder(dirname(path));
}

function writeTemporary(path: string, bytes: Uint8Array): string {
  temporaryFiles += 1;
  const name = `${basename(path)}.new-${process.pid}-${temporaryFiles}`;
  const temporary = join(dirname(path), name);
  // A file left behind by an earlier process with this number would be in the way.
  fs.rmSync(temporary, { force: true });
  writeNew(temporary, bytes);
  return temporary;
}

function writeNew(path: string, bytes: Uint8Array): void {
  const descriptor = fs.openSync(path, "wx", FILE_MODE);
  try {
    writeAll(descriptor, bytes);
    fs.fsyncSync(descriptor);
  } catch (error) {
    fs.rmSync(path, { force: true });
    throw error;
  } finally {
    fs.closeSync(descriptor);
  }
}

function renameTrying(from: string, to: string): void {
  for (let left = RENAME_TRIES; ; left -= 1) {
    try {
      fs.renameSync(from, to);
      return;
    } catch (error) {
      const passing = process.platform === "win32" && ["EPERM", "EBUSY"].includes(codeOf(error));
      if (!passing || left === 0) throw error;
      standStill(10);
    }
  }
}

/** Windows keeps names safe by itself and refuses to sync a folder. */
function syncFolder(folder: string): void {
  if (process.platform === "win32") return;
  const descriptor = fs.openSync(folder, "r");
  try {
    fs.fsyncSync(descriptor);
  } finally {
    fs.closeSync(descriptor);
  }
}

const bigStat = (descriptor: number) => fs.fstatSync(descriptor, { bigint: true });

function identityOf({ dev, ino, birthtimeNs, size }: fs.BigIntStats): FileIdentity {
  return { identity: `${dev}-${ino}-${birthtimeNs}`, length: Number(size) };
}

function attempt<Given>(call: string, path: string, run: () => Given): DiskAnswer<Given> {
  try {
    return { ok: true, ...run() } as DiskAnswer<Given>;
  } catch (error) {
    return refusal(call, path, error);
  }
}

function refusal(call: string, path: string, error: unknown): DiskRefusal {
  const why = TROUBLE[codeOf(error)] ?? "io";
  const words = error instanceof Error ? error.message : String(error);
  return { ok: false, why, message: `cannot ${call} ${path}: ${words.split("\n")[0]}` };
}

function codeOf(error: unknown): string {
  return (error as NodeJS.ErrnoException | undefined)?.code ?? "";
}
