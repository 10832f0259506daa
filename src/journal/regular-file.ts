/** Opening files and nothing else: a pipe or device in their place is refused, never waited for. */
import * as fs from "node:fs";

/** Without it, opening a pipe waits for whoever is at its other end. */
const NEVER_WAITING = fs.constants.O_NONBLOCK ?? 0;

/** @param flags of `open`. Throws what the system says, or where something else stands there. */
export function openRegular(path: string, flags: number, mode?: number): number {
  const descriptor = fs.openSync(path, flags | NEVER_WAITING, mode);
  if (fs.fstatSync(descriptor).isFile()) return descriptor;
  fs.closeSync(descriptor);
  throw new Error("it is a pipe, a folder or a device, not a file");
}

/** A file's bytes; with `mostBytes`, that many and one more, so that a huge file costs nothing. */
export function readRegular(path: string, mostBytes = Number.POSITIVE_INFINITY): Buffer {
  const descriptor = openRegular(path, fs.constants.O_RDONLY);
  try {
    if (fs.fstatSync(descriptor).size <= mostBytes) return fs.readFileSync(descriptor);
    const bytes = Buffer.alloc(mostBytes + 1);
    let length = 0;
    for (let more = 1; more > 0 && length < bytes.length; length += more) {
      more = fs.readSync(descriptor, bytes, length, bytes.length - length, null);
    }
    return bytes.subarray(0, length);
  } finally {
    fs.closeSync(descriptor);
  }
}
