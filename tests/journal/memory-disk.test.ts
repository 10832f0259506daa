import { describe, expect, it } from "vitest";
import { MemoryDisk, type Unsynced } from "../../src/journal/memory-disk.ts";
import type { AppendFile } from "../../src/ports/disk.ts";

const bytes = (text: string) => Buffer.from(text);

function begun(): { disk: MemoryDisk; file: AppendFile } {
  const disk = new MemoryDisk();
  disk.makeFolder("/home");
  const opened = disk.openAppend("/home/f");
  if (!opened.ok) throw new Error(opened.message);
  return { disk, file: opened.file };
}

function textAt(disk: MemoryDisk, path = "/home/f"): string {
  const read = disk.read(path);
  return read.ok ? Buffer.from(read.bytes).toString("latin1") : `(${read.why})`;
}

describe("a power cut on the disk in memory", () => {
  it("keeps what was synced and, of the rest, as much as requested", () => {
    const { disk, file } = begun();
    file.append(bytes("safe"));
    file.sync();
    disk.syncFolder("/home");
    file.append(bytes("risk"));
    const left = (unsynced: Unsynced) => textAt(disk.afterPowerCut(unsynced));
    expect(left("lost")).toBe("safe");
    expect(left("kept")).toBe("saferisk");
    expect(left("half")).toBe("saferi");
    expect(left("zeros")).toBe("safe\0\0\0\0");
  });

  it("forgets names that were not synced", () => {
    const { disk, file } = begun();
    file.append(bytes("safe"));
    file.sync();
    expect(textAt(disk.afterPowerCut("lost"))).toBe("(missing)");
    disk.syncFolder("/home");
    disk.rename("/home/f", "/home/g");
    expect(textAt(disk.afterPowerCut("lost"))).toBe("safe");
    expect(textAt(disk.afterPowerCut("kept"), "/home/g")).toBe("safe");
  });

  it("never has what a failed sync dropped, though a second sync claims success", () => {
    const { disk, file } = begun();
    disk.syncFolder("/home");
    disk.fault = ({ name }) => (name === "sync" ? { why: "io" } : undefined);
    file.append(bytes("gone"));
    expect(file.sync().ok).toBe(false);
    disk.fault = undefined;
    expect(file.sync().ok).toBe(true);
    expect(textAt(disk)).toBe("gone");
    expect(textAt(disk.afterPowerCut("kept"))).toBe("\0\0\0\0");
  });

  it("leaves the earlier disk untouched by what is written afterwards", () => {
    const { disk, file } = begun();
    file.append(bytes("one"));
    const after = disk.afterPowerCut("kept");
    const opened = after.openAppend("/home/f");
    if (opened.ok) opened.file.append(bytes("after"));
    file.append(bytes("two"));
    expect([textAt(disk), textAt(after)]).toEqual(["onetwo", "oneafter"]);
  });
});

describe("faults of the disk in memory", () => {
  it("fail the requested call, with half of the bytes written on request", () => {
    const { disk, file } = begun();
    const first = disk.calls;
    disk.fault = ({ count }) => (count === first + 2 ? { why: "io", half: true } : undefined);
    expect(file.append(bytes("aaaa")).ok).toBe(true);
    expect(file.append(bytes("bbbb"))).toMatchObject({ ok: false, why: "io" });
    expect(file.append(bytes("cccc")).ok).toBe(true);
    expect(textAt(disk)).toBe("aaaabbcccc");
  });

  it("fill the disk after some bytes; an old file is never replaced by a part", () => {
    const { disk, file } = begun();
    disk.roomBytes = 10;
    expect(file.append(bytes("123456")).ok).toBe(true);
    expect(file.append(bytes("789012"))).toMatchObject({ ok: false, why: "full" });
    expect(textAt(disk)).toBe("1234567890");
    expect(disk.replace("/home/f", bytes("x"))).toMatchObject({ ok: false, why: "full" });
    expect(textAt(disk)).toBe("1234567890");
  });
});
