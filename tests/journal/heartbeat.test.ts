import { describe, expect, it } from "vitest";
import { readHeartbeat, writeHeartbeat } from "../../src/journal/heartbeat.ts";
import { MemoryDisk } from "../../src/journal/memory-disk.ts";

const reading = { wallMs: 1_818_252_000_000, monoMs: 5.25, bootMs: 5000, bootId: "b", zone: "UTC" };

function disk(): MemoryDisk {
  const made = new MemoryDisk();
  made.makeFolder("/home");
  return made;
}

describe("the side file of clocks", () => {
  it("gives back the last reading and the journal's last line", () => {
    const on = disk();
    writeHeartbeat(on, "/home", { reading, lastN: 6 });
    writeHeartbeat(on, "/home", { reading: { ...reading, monoMs: 6 }, lastN: 7 });
    expect(readHeartbeat(on, "/home")).toEqual({ reading: { ...reading, monoMs: 6 }, lastN: 7 });
    expect(on.list("/home")).toEqual({ ok: true, names: ["clocks.json"] });
  });

  it("is as good as missing where it is torn or any byte of it changed", () => {
    const on = disk();
    expect(readHeartbeat(on, "/home")).toBeUndefined();
    writeHeartbeat(on, "/home", { reading, lastN: 6 });
    const read = on.read("/home/clocks.json");
    const bytes = read.ok ? Buffer.from(read.bytes) : Buffer.alloc(0);
    expect(bytes.length).toBeGreaterThan(60);
    for (let i = 0; i < bytes.length - 1; i += 1) {
      on.plant("/home/clocks.json", bytes.subarray(0, i));
      expect(readHeartbeat(on, "/home"), `cut at ${i}`).toBeUndefined();
      const flipped = Buffer.from(bytes);
      flipped[i] = (flipped[i] as number) ^ 1;
      on.plant("/home/clocks.json", flipped);
      expect(readHeartbeat(on, "/home"), `byte ${i}`).toBeUndefined();
    }
  });

  it("keeps the previous one where the disk refuses", () => {
    const on = disk();
    writeHeartbeat(on, "/home", { reading, lastN: 6 });
    on.fault = () => ({ why: "full" });
    expect(writeHeartbeat(on, "/home", { reading, lastN: 7 })).toMatchObject({ why: "full" });
    on.fault = undefined;
    expect(readHeartbeat(on, "/home")?.lastN).toBe(6);
  });
});
