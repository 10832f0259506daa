import { chmodSync, mkdtempSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { MemoryDisk } from "../../src/journal/memory-disk.ts";
import { realDisk } from "../../src/journal/real-disk.ts";
import type { Disk } from "../../src/ports/disk.ts";

const scratch = mkdtempSync(join(tmpdir(), "disk-contract-"));
afterAll(() => rmSync(scratch, { recursive: true, force: true }));
let folders = 0;

const DISKS: [string, () => Disk][] = [
  ["the real disk", realDisk],
  ["the disk in memory", () => new MemoryDisk()],
];
const bytes = (text: string) => Buffer.from(text);

/** A disk and a fresh folder on it. */
function fresh(make: () => Disk): { disk: Disk; folder: string } {
  const disk = make();
  folders += 1;
  const folder = `${scratch}/${folders}/a`;
  expect(disk.makeFolder(folder)).toMatchObject({ ok: true });
  return { disk, folder };
}

function textAt(disk: Disk, path: string): string {
  const read = disk.read(path);
  return read.ok ? Buffer.from(read.bytes).toString() : `(${read.why})`;
}

describe.each(DISKS)("%s", (_name, make) => {
  it("makes folders with their parents, twice if asked", () => {
    const { disk, folder } = fresh(make);
    expect(disk.makeFolder(folder).ok).toBe(true);
    expect(disk.list(folder)).toEqual({ ok: true, names: [] });
    expect(disk.syncFolder(folder).ok).toBe(true);
  });

  it("adds at the end of a file and makes it where there is none", () => {
    const { disk, folder } = fresh(make);
    const first = disk.openAppend(`${folder}/f`);
    if (!first.ok) throw new Error(first.message);
    expect(first.length).toBe(0);
    expect([first.file.append(bytes("one")).ok, first.file.sync().ok]).toEqual([true, true]);
    first.file.close();
    const second = disk.openAppend(`${folder}/f`);
    if (!second.ok) throw new Error(second.message);
    expect(second.length).toBe(3);
    second.file.append(bytes("two"));
    expect(textAt(disk, `${folder}/f`)).toBe("onetwo");
    second.file.close();
  });

  it("truncates a file, and what is added afterwards follows the cut", () => {
    const { disk, folder } = fresh(make);
    const opened = disk.openAppend(`${folder}/f`);
    if (!opened.ok) throw new Error(opened.message);
    opened.file.append(bytes("keep, lose"));
    expect(disk.truncate(`${folder}/f`, 4).ok).toBe(true);
    opened.file.append(bytes("!"));
    expect(textAt(disk, `${folder}/f`)).toBe("keep!");
    opened.file.close();
  });

  it("replaces a whole file, whether there was one or not", () => {
    const { disk, folder } = fresh(make);
    for (const text of ["first", "second, longer", "", "3"]) {
      expect(disk.replace(`${folder}/f`, bytes(text)).ok).toBe(true);
      expect(textAt(disk, `${folder}/f`)).toBe(text);
    }
    expect(disk.list(folder)).toEqual({ ok: true, names: ["f"] });
  });

  it("makes a file only where there is none", () => {
    const { disk, folder } = fresh(make);
    expect(disk.createExclusive(`${folder}/f`, bytes("mine")).ok).toBe(true);
    const again = disk.createExclusive(`${folder}/f`, bytes("yours"));
    expect(again).toMatchObject({ ok: false, why: "exists" });
    expect(textAt(disk, `${folder}/f`)).toBe("mine");
    expect(disk.list(folder)).toEqual({ ok: true, names: ["f"] });
  });

  it("renames, lists in order and removes", () => {
    const { disk, folder } = fresh(make);
    for (const name of ["b", "c", "a"]) disk.replace(`${folder}/${name}`, bytes(name));
    expect(disk.rename(`${folder}/c`, `${folder}/d`).ok).toBe(true);
    expect(disk.remove(`${folder}/a`).ok).toBe(true);
    expect(disk.list(folder)).toEqual({ ok: true, names: ["b", "d"] });
    expect(textAt(disk, `${folder}/d`)).toBe("c");
  });

  it("distinguishes a file from another of the same name, and recognizes it when renamed", () => {
    const { disk, folder } = fresh(make);
    const path = `${folder}/f`;
    disk.createExclusive(path, bytes("x"));
    const first = disk.identity(path);
    expect(first).toMatchObject({ ok: true });
    disk.rename(path, `${folder}/g`);
    expect(disk.identity(`${folder}/g`)).toEqual(first);
    disk.createExclusive(path, bytes("x"));
    expect(disk.identity(path)).not.toEqual(first);
  });

  it("says what is missing instead of throwing", () => {
    const { disk, folder } = fresh(make);
    const path = `${folder}/none`;
    const answers = [
      disk.read(path),
      disk.truncate(path, 0),
      disk.rename(path, `${folder}/x`),
      disk.remove(path),
      disk.identity(path),
      disk.list(path),
      disk.replace(`${path}/deeper`, bytes("x")),
      disk.createExclusive(`${path}/deeper`, bytes("x")),
      disk.openAppend(`${path}/deeper`),
    ];
    for (const answer of answers) {
      expect(answer).toMatchObject({ ok: false, why: "missing" });
      if (!answer.ok) expect(answer.message).toContain("none");
    }
  });
});

describe("the real disk's files", () => {
  it.skipIf(process.platform === "win32")("are for their owner alone", () => {
    const { disk, folder } = fresh(realDisk);
    const opened = disk.openAppend(`${folder}/a`);
    if (opened.ok) opened.file.close();
    disk.replace(`${folder}/b`, bytes("x"));
    disk.createExclusive(`${folder}/c`, bytes("x"));
    const modes = ["a", "b", "c"].map((name) => statSync(`${folder}/${name}`).mode & 0o777);
    expect(modes).toEqual([0o600, 0o600, 0o600]);
    expect(statSync(folder).mode & 0o777).toBe(0o700);
  });

  it.skipIf(process.platform === "win32" || process.getuid?.() === 0)(
    "in a folder that may not be written are refused as denied",
    () => {
      const { disk, folder } = fresh(realDisk);
      chmodSync(folder, 0o500);
      expect(disk.openAppend(`${folder}/a`)).toMatchObject({ ok: false, why: "denied" });
      chmodSync(folder, 0o700);
    },
  );
});
