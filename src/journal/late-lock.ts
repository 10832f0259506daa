import { crc32 } from "node:zlib";
import type { Disk, DiskRefusal } from "../ports/disk.ts";
import { fileName, filesInOrder } from "./file-name.ts";
import type { WriteRefusal } from "./journal.ts";
import { type Lock, type LockAnswer, type Processes, takeLock } from "./lock.ts";

/** Temporary refusals of a disk: no room, not writable now, a passing fault. */
const MAY_PASS: ReadonlySet<string> = new Set(["full", "denied", "io"]);

export type LateAnswer =
  | { ok: true; lock: Lock & { whyNot?(): WriteRefusal | undefined }; late?: LateLock }
  | Extract<LockAnswer, { ok: false }>;

/**
 * Takes the folder's lock like `takeLock`; where only the disk stands in the way, the answer is a
 * lock not yet held, so that a kitchen can be open in memory meanwhile.
 */
export function lockOrLate(
  disk: Disk,
  folder: string,
  self: { pid: number; bootId: string; startedAt: string },
  processes?: Processes,
): LateAnswer {
  const take = () => takeLock(disk, folder, self, processes);
  const before = filesNow(disk, folder);
  const answer = take();
  if (answer.ok || answer.why === "held" || !MAY_PASS.has(answer.why)) return answer;
  const late = new LateLock(disk, folder, { take, before, refusal: answer });
  return { ok: true, lock: late, late };
}

/**
 * A lock that is tried for each time it is asked for, until the disk lets it be made. It is given
 * up for good once another program holds it, or held it meanwhile and wrote: the journal then no
 * longer ends where it did at the opening, and nothing may be added to it.
 */
export class LateLock implements Lock {
  /** Called once, when the lock is held. */
  onHad: (() => void) | undefined;
  private readonly disk: Disk;
  private readonly folder: string;
  private readonly take: () => LockAnswer;
  private readonly before: string;
  private lock: Lock | undefined;
  private refusal: WriteRefusal;
  private givenUp = false;

  /** @param parts.before `filesNow` from before the journal was read. */
  constructor(
    disk: Disk,
    folder: string,
    parts: { take: () => LockAnswer; before: string; refusal: DiskRefusal },
  ) {
    this.disk = disk;
    this.folder = folder;
    this.take = parts.take;
    this.before = parts.before;
    this.refusal = waiting(parts.refusal);
  }

  get had(): boolean {
    return this.lock !== undefined;
  }

  owns(): boolean {
    if (this.lock) return this.lock.owns();
    if (this.givenUp) return false;
    const answer = this.take();
    if (!answer.ok) {
      if (answer.why === "held") this.giveUp(answer.message);
      else this.refusal = waiting(answer);
      return false;
    }
    if (filesNow(this.disk, this.folder) !== this.before) {
      answer.lock.release();
      this.giveUp(`another program wrote the journal in ${this.folder} meanwhile`);
      return false;
    }
    this.lock = answer.lock;
    this.onHad?.();
    return true;
  }

  /** Why nothing can be written; undefined once the lock has been held. */
  whyNot(): WriteRefusal | undefined {
    return this.lock ? undefined : this.refusal;
  }

  release(): void {
    this.lock?.release();
  }

  private giveUp(why: string): void {
    this.givenUp = true;
    const mend = "nothing from this session will be recorded; close it, and tell the other one";
    this.refusal = { why: "not-ours", message: `${why}; ${mend}` };
  }
}

function waiting({ why, message }: DiskRefusal): WriteRefusal {
  const mend = "once there is room and leave to write, all of it is written";
  return { why, message: `${message}; ${mend}` };
}

/**
 * A fingerprint of the journal's files: it changes with any line that anybody adds. It covers all
 * of them, since the next line need not go to the last (an empty one does not count).
 */
function filesNow(disk: Disk, folder: string): string {
  const listed = disk.list(folder);
  if (!listed.ok) return listed.why === "missing" ? "" : `not read: ${listed.why}`;
  const files = filesInOrder(listed.names).map((place) => {
    const name = fileName(place);
    const read = disk.read(`${folder}/${name}`);
    return `${name} ${read.ok ? `${read.bytes.length} ${crc32(read.bytes)}` : read.why}`;
  });
  return files.join("\n");
}
