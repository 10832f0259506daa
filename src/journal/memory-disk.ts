import type {
  AppendFile,
  Disk,
  DiskAnswer,
  DiskRefusal,
  DiskTrouble,
  FileIdentity,
} from "../ports/disk.ts";

/** A call as a fault sees it: `count` is 1 for the first call of this disk. */
export type DiskCall = { count: number; name: DiskCallName; path: string };

type DiskCallName = "append" | "sync" | "create-file" | Exclude<keyof Disk, "openAppend">;

/**
 * What goes wrong. With `half`, half of the bytes (or the whole of another change) happen
 * first.
 */
export type DiskFault = { why: DiskTrouble; half?: boolean };

/** What a power cut leaves of changes that were not synced; `zeros`: their space, unwritten. */
export type Unsynced = "lost" | "kept" | "half" | "zeros";

type Stored = {
  identity: number;
  bytes: Uint8Array;
  synced: Uint8Array;
  /** Parts that a failed sync dropped: readable while the power is on, but never on the disk. */
  dropped: { from: number; to: number }[];
};
type Names = Map<string, Stored>;

const NOTHING = new Uint8Array(0);

/**
 * A disk in memory, for rehearsals and tests. Changes are safe only once synced, as on a real one.
 * Faults it can play: any call refused, a write that writes half, a sync that fails (`fault`), a
 * disk with limited room (`roomBytes`), a power cut (`afterPowerCut`). Folders are safe once made.
 */
export class MemoryDisk implements Disk {
  /** Called for every change and every read; an answer makes the call fail. */
  fault: ((call: DiskCall) => DiskFault | undefined) | undefined;
  /** Called before every call is carried out, so that time can pass over it. */
  eachCall: ((call: DiskCall) => void) | undefined;
  /** Bytes of room for all files together. */
  roomBytes = Number.POSITIVE_INFINITY;
  /** Calls so far. */
  calls = 0;
  private names: Names = new Map();
  private safeNames: Names = new Map();
  private folders = new Set<string>();
  private identities = 0;

  read(path: string): DiskAnswer<{ bytes: Uint8Array }> {
    return this.call("read", path, () => this.withFile(path, ({ bytes }) => ({ ok: true, bytes })));
  }

  openAppend(path: string): DiskAnswer<{ file: AppendFile; length: number }> {
    if (!this.names.has(path)) {
      const made = this.call("create-file", path, () => this.put(path, NOTHING));
      if (!made.ok) return made;
    }
    return this.withFile(path, (stored) => {
      const file: AppendFile = {
        append: (bytes) => this.append(path, stored, bytes),
        sync: () => this.sync(path, stored),
        identity: () => ({ ok: true, ...identityOf(stored) }),
        close: () => {},
      };
      return { ok: true, file, length: stored.bytes.length };
    });
  }

  truncate(path: string, length: number): DiskAnswer {
    return this.call("truncate", path, () =>
      this.withFile(path, (stored) => {
        stored.bytes = stored.bytes.slice(0, length);
        stored.dropped = stored.dropped.filter(({ from }) => from < length);
        stored.synced = onDisk(stored.bytes, stored.dropped);
        return { ok: true };
      }),
    );
  }

  replace(path: string, bytes: Uint8Array): DiskAnswer {
    return this.call("replace", path, () => {
      if (bytes.length > this.room()) return refuse("full", "replace", path);
      const put = this.put(path, bytes);
      return put.ok ? this.makeNamesSafe(folderOf(path)) : put;
    });
  }

  createExclusive(path: string, bytes: Uint8Array): DiskAnswer {
    return this.call("createExclusive", path, () => {
      if (this.names.has(path)) return refuse("exists", "create", path);
      if (bytes.length > this.room()) return refuse("full", "create", path);
      const put = this.put(path, bytes);
      return put.ok ? this.makeNamesSafe(folderOf(path)) : put;
    });
  }

  rename(from: string, to: string): DiskAnswer {
    return this.call("rename", from, () =>
      this.withFile(from, (stored) => {
        this.names.delete(from);
        this.names.set(to, stored);
        return { ok: true };
      }),
    );
  }

  remove(path: string): DiskAnswer {
    return this.call("remove", path, () =>
      this.withFile(path, () => {
        this.names.delete(path);
        return { ok: true };
      }),
    );
  }

  list(folder: string): DiskAnswer<{ names: string[] }> {
    return this.call("list", folder, () => {
      if (!this.folders.has(folder)) return refuse("missing", "list", folder);
      const paths = [...this.names.keys(), ...this.folders];
      const inside = paths.filter((path) => folderOf(path) === folder);
      return { ok: true, names: inside.map((path) => path.slice(folder.length + 1)).sort() };
    });
  }

  makeFolder(folder: string): DiskAnswer {
    return this.call("makeFolder", folder, () => {
      for (let path = folder; path !== "" && path !== "/"; path = folderOf(path)) {
        this.folders.add(path);
      }
      return { ok: true };
    });
  }

  syncFolder(folder: string): DiskAnswer {
    return this.call("syncFolder", folder, () => this.makeNamesSafe(folder));
  }

  identity(path: string): DiskAnswer<FileIdentity> {
    return this.call("identity", path, () =>
      this.withFile(path, (stored) => ({ ok: true, ...identityOf(stored) })),
    );
  }

  /**
   * A new disk with what this one would hold after a power cut now. Synced bytes and names are
   * there; `unsynced` says what is left of the others (names: all gone with `lost`, else all
   * there).
   */
  afterPowerCut(unsynced: Unsynced): MemoryDisk {
    const after = new MemoryDisk();
    after.folders = new Set(this.folders);
    for (const [path, stored] of unsynced === "lost" ? this.safeNames : this.names) {
      const bytes = survivingBytes(stored, unsynced);
      after.put(path, bytes);
    }
    after.safeNames = new Map(after.names);
    return after;
  }

  /** Looks at the disk without a fault and without time passing, for tests. */
  aside<Seen>(look: () => Seen): Seen {
    const { fault, eachCall } = this;
    this.fault = undefined;
    this.eachCall = undefined;
    try {
      return look();
    } finally {
      this.fault = fault;
      this.eachCall = eachCall;
    }
  }

  /** Puts bytes in place as if they had always been there, for tests that damage a file. */
  plant(path: string, bytes: Uint8Array): void {
    this.put(path, bytes);
    this.safeNames.set(path, this.names.get(path) as Stored);
  }

  private sync(path: string, stored: Stored): DiskAnswer {
    const from = stored.synced.length;
    const answer = this.call("sync", path, () => {
      stored.synced = onDisk(stored.bytes, stored.dropped);
      return { ok: true };
    });
    if (!answer.ok && stored.synced.length === from) {
      stored.dropped.push({ from, to: stored.bytes.length });
    }
    return answer;
  }

  private append(path: string, stored: Stored, bytes: Uint8Array): DiskAnswer {
    const add = (count: number): void => {
      stored.bytes = grown(stored.bytes, bytes.subarray(0, count));
    };
    const half = () => add(Math.floor(bytes.length / 2));
    return this.call(
      "append",
      path,
      () => {
        const fitting = Math.min(bytes.length, Math.max(0, this.room()));
        add(fitting);
        return fitting === bytes.length ? { ok: true } : refuse("full", "write", path);
      },
      half,
    );
  }

  private call<Given>(
    name: DiskCallName,
    path: string,
    run: () => DiskAnswer<Given>,
    half: () => unknown = run,
  ): DiskAnswer<Given> {
    this.calls += 1;
    this.eachCall?.({ count: this.calls, name, path });
    const fault = this.fault?.({ count: this.calls, name, path });
    if (!fault) return run();
    if (fault.half) half();
    return refuse(fault.why, name, path);
  }

  private withFile<Given>(
    path: string,
    run: (stored: Stored) => DiskAnswer<Given>,
  ): DiskAnswer<Given> {
    const stored = this.names.get(path);
    return stored ? run(stored) : refuse("missing", "find", path);
  }

  private put(path: string, content: Uint8Array): DiskAnswer {
    if (!this.folders.has(folderOf(path))) return refuse("missing", "create", path);
    this.identities += 1;
    const bytes = new Uint8Array(content);
    this.names.set(path, { identity: this.identities, bytes, synced: bytes, dropped: [] });
    return { ok: true };
  }

  private makeNamesSafe(folder: string): DiskAnswer {
    for (const path of this.safeNames.keys()) {
      if (folderOf(path) === folder && !this.names.has(path)) this.safeNames.delete(path);
    }
    for (const [path, stored] of this.names) {
      if (folderOf(path) === folder) this.safeNames.set(path, stored);
    }
    return { ok: true };
  }

  private room(): number {
    let used = 0;
    for (const { bytes } of this.names.values()) used += bytes.length;
    return this.roomBytes - used;
  }
}

function identityOf({ identity, bytes }: Stored): FileIdentity {
  return { identity: String(identity), length: bytes.length };
}

function onDisk(bytes: Uint8Array, dropped: Stored["dropped"]): Uint8Array {
  if (dropped.length === 0) return bytes;
  const reached = bytes.slice();
  for (const { from, to } of dropped) reached.fill(0, from, to);
  return reached;
}

function survivingBytes(stored: Stored, unsynced: Unsynced): Uint8Array {
  const { synced } = stored;
  const bytes = onDisk(stored.bytes, stored.dropped);
  if (unsynced === "kept") return bytes;
  if (unsynced === "lost" || bytes.length <= synced.length) return synced;
  const added = bytes.subarray(synced.length);
  if (unsynced === "half")
    return grown(synced.slice(), added.slice(0, Math.ceil(added.length / 2)));
  return grown(synced.slice(), new Uint8Array(added.length));
}

/**
 * The bytes with more at their end, written into the room behind them where there is some, so
 * that a long journal is not copied at every append. Earlier, shorter views stay as they are.
 */
function grown(bytes: Uint8Array, more: Uint8Array): Uint8Array {
  const length = bytes.length + more.length;
  if (length <= bytes.buffer.byteLength) {
    const longer = new Uint8Array(bytes.buffer, 0, length);
    longer.set(more, bytes.length);
    return longer;
  }
  const room = new Uint8Array(Math.max(length * 2, 4096));
  room.set(bytes);
  room.set(more, bytes.length);
  return room.subarray(0, length);
}

function folderOf(path: string): string {
  return path.slice(0, Math.max(0, path.lastIndexOf("/")));
}

function refuse(why: DiskTrouble, call: string, path: string): DiskRefusal {
  return { ok: false, why, message: `cannot ${call} ${path}: made-up fault (${why})` };
}
