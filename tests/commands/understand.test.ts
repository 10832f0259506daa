import { describe, expect, it } from "vitest";
import { understandCommand } from "../../src/commands/open/understand.ts";
import { theLibrary } from "../scenarios/play.ts";

async function run(args: string[], lines: string[]) {
  const out: string[] = [];
  const err: string[] = [];
  const status = await understandCommand(args, {
    lines,
    zone: "America/Denver",
    nowMs: Date.UTC(2027, 7, 14, 20),
    library: theLibrary(),
    out: (line) => out.push(line),
    err: (line) => err.push(line),
  });
  return { status, out, err };
}

describe("brinebell understand", () => {
  it("prints one JSON object per line, in order", async () => {
    const lines = ["it has been boiling since ten to two", "", "what a lovely day"];
    const { status, out } = await run(["--json", "--now", "2027-08-14T14:00:00"], lines);
    expect(status).toBe(0);
    const all = out.map((line) => JSON.parse(line));
    expect(all.map(({ text }) => text)).toEqual(lines);
    expect(all.map(({ intent }) => intent)).toEqual(["boiling", "unknown", "unknown"]);
    expect(all[0].slots).toEqual({ at: "2027-08-14T13:50:00" });
    for (const { confidence } of all) expect(confidence).toSatisfy((c) => c >= 0 && c <= 1);
  });

  it("knows what is running", async () => {
    const args = ["--json", "--running", "pickled-beets,dilled-green-beans:Dragon-Tongue"];
    const { out } = await run(args, ["go to the dragon tongue", "go to the dragon tung"]);
    for (const line of out) {
      expect(JSON.parse(line)).toMatchObject({
        intent: "focus",
        slots: { target: "dragon tongue" },
      });
    }
  });

  it("says what is wrong with the call", async () => {
    const late = await run(["--now", "teatime"], []);
    expect(late.status).toBe(2);
    expect(late.err[0]).toContain('"teatime" is not a time');
    const stranger = await run(["--running", "moon-cheese"], []);
    expect(stranger.status).toBe(2);
    expect(stranger.err[0]).toContain('"moon-cheese"');
    expect((await run(["--nonsense"], [])).status).toBe(2);
    expect((await run(["words"], [])).status).toBe(2);
  });
});
