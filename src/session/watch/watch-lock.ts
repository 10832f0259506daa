/** One watch for each data folder: which process it is, and how it is ended. */
import { join } from "node:path";
import { type LockAnswer, type LockHolder, lockHolder, takeLock } from "../../journal/lock.ts";
import { realDisk } from "../../journal/real-disk.ts";
import { realClock } from "../time/real-clock.ts";

/** Its own lock, since a kitchen may be opened beside a watch. */
const lockFolder = (folder: string) => join(folder, "watch");

/** How often to check whether a watch has begun or ended, ms. */
const LOOK_MS = 50;

/** Makes this process the watch of a folder, or says who that is. */
export function takeWatch(folder: string): LockAnswer {
  const { bootId, wallMs } = realClock().read();
  const self = { pid: process.pid, bootId, startedAt: new Date(wallMs).toISOString() };
  return takeLock(realDisk(), lockFolder(folder), self);
}

/** The process that watches a folder; undefined where none does. */
export function watcherOf(folder: string): LockHolder | undefined {
  return lockHolder(realDisk(), lockFolder(folder), realClock().read().bootId);
}

/** Waits until a condition holds, for this many ms at most; returns whether it does. */
export async function comesTrue(condition: () => boolean, ms: number): Promise<boolean> {
  for (const until = performance.now() + ms; ; ) {
    if (condition()) return true;
    if (performance.now() > until) return false;
    await new Promise((resolve) => setTimeout(resolve, LOOK_MS));
  }
}

/** Asks the watch of a folder to end; false where it has not within this many ms. */
export function endWatch(folder: string, { pid }: LockHolder, ms: number): Promise<boolean> {
  try {
    process.kill(pid, "SIGTERM");
  } catch {
    // It has ended by itself, or is another user's; which of them is seen by looking.
  }
  return comesTrue(() => watcherOf(folder)?.pid !== pid, ms);
}
