/**
 * How commands write files for a person: completely or not at all, and never over the person's own
 * files.
 */
import { closeSync, constants, fstatSync, openSync, readSync, realpathSync } from "node:fs";
import { basename, dirname, join, relative, resolve } from "node:path";
import { realDisk } from "../../journal/real-disk.ts";

/** What identifies earlier outputs of a kind, so that they may be overwritten. */
const MARKS = {
  page: pageOf("Brinebell"),
  labels: pageOf("Brinebell labels"),
  pdf: /^%PDF-[\s\S]*\n\d+ 0 obj\s\(Brinebell\)\sendobj\s/,
  calendar: /^BEGIN:VCALENDAR\r?\n[\s\S]{0,400}PRODID:[^\n]*brinebell/i,
  archive: /^\{"archive":"brinebell"/,
} as const satisfies Record<string, RegExp>;

function pageOf(maker: string): RegExp {
  const mark = `<meta name="generator" content="${maker}">`;
  return new RegExp(`^<!doctype html>\\s<html[^>]*>\\s<head>\\s${mark}`);
}

export type OutputKind = keyof typeof MARKS;

type Output = {
  path: string;
  content: string | Uint8Array;
  kind: OutputKind;
  /** The data folder, into which nothing is ever written. */
  folder: string;
  /** Replace whatever file is there. */
  force: boolean;
};

type WriteAnswer = { ok: true } | { ok: false; code: 1 | 2 | 3; message: string };

/** The longest file that is searched for the mark of an earlier output. */
const LONGEST_LOOKED_AT = 16 * 1024 * 1024;

/** A path with its links resolved, as far as it exists. */
function realPath(path: string): string {
  try {
    return realpathSync(path);
  } catch {
    const above = dirname(path);
    return above === path ? path : join(realPath(above), basename(path));
  }
}

function isInside(path: string, folder: string): boolean {
  const way = relative(realPath(resolve(folder)), realPath(resolve(path)));
  return way === "" || !(way.startsWith("..") || resolve(way) === way);
}

type Found = { is: "nothing" | "other" | "no file" } | { is: "earlier"; bytes: Buffer };

/** What is at a path: nothing, an earlier output of this kind, or something else. */
function found(path: string, kind: OutputKind): Found {
  let file: number;
  try {
    // Without O_NONBLOCK a pipe that nobody writes into would be waited for.
    file = openSync(path, constants.O_RDONLY | (constants.O_NONBLOCK ?? 0));
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === "ENOENT" ? { is: "nothing" } : { is: "other" };
  }
  try {
    const stat = fstatSync(file);
    if (!stat.isFile()) return { is: "no file" };
    const bytes = Buffer.alloc(Math.min(stat.size, LONGEST_LOOKED_AT));
    const length = readSync(file, bytes, 0, bytes.length, 0);
    const ours = length === 0 || MARKS[kind].test(bytes.toString("latin1", 0, length));
    return ours ? { is: "earlier", bytes: bytes.subarray(0, length) } : { is: "other" };
  } finally {
    closeSync(file);
  }
}

/** The text of an earlier output of this kind that an output to a path replaces; else empty. */
export function earlierOutput(path: string, kind: OutputKind): string {
  const there = path === "-" || path === "" ? undefined : found(path, kind);
  return there?.is === "earlier" ? there.bytes.toString("utf8") : "";
}

/**
 * Writes an output to a temporary file and renames it into place (that of the file a link leads
 * to), so that a failure leaves what was there. Code 2: a bad path; 1: a different file is there;
 * 3: it cannot be written.
 */
export function writeOutput({ path, content, kind, folder, force }: Output): WriteAnswer {
  const refused = (code: 1 | 2 | 3, message: string) => ({ ok: false as const, code, message });
  if (path === "") return refused(2, "the file has no name; name one");
  if (isInside(path, folder)) {
    return refused(2, `${path} is in the data folder; name a file outside ${folder}`);
  }
  const there = found(path, kind).is;
  if (there === "no file") return refused(2, `${path} is not a file; name a file`);
  if (there === "other" && !force) {
    return refused(1, `${path} is a different file; name another one, or add --force`);
  }
  const bytes = typeof content === "string" ? new TextEncoder().encode(content) : content;
  const answer = realDisk().replace(realPath(resolve(path)), bytes);
  return answer.ok ? { ok: true } : refused(3, `${answer.message}; name another file`);
}
