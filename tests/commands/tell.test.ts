import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { tellCommand } from "../../src/commands/open/tell.ts";
import { openTellServer, type TellServer } from "../../src/session/tell/tell-server.ts";

const folder = mkdtempSync(join(tmpdir(), "tell-command-"));
let server: TellServer;

beforeAll(async () => {
  const opened = await openTellServer(
    folder,
    () => true,
    (words) => ({
      refused: words === "out with the jars",
      lines: [`Heard "${words}".`],
    }),
  );
  if (!opened.ok) throw new Error(opened.message);
  server = opened.server;
});
afterAll(async () => {
  await server.close();
  rmSync(folder, { recursive: true });
});

async function run(args: string[], at = folder) {
  const out: string[] = [];
  const err: string[] = [];
  const io = {
    folder: at,
    out: (line: string) => out.push(line),
    err: (line: string) => err.push(line),
  };
  return { status: await tellCommand(args, io), out, err };
}

describe("brinebell tell", () => {
  it("prints the answer", async () => {
    expect(await run(["it's boiling"])).toEqual({
      status: 0,
      out: ['Heard "it\'s boiling".'],
      err: [],
    });
  });

  it("takes words without quotes, and after -- words that look like options", async () => {
    expect((await run(["lids", "on"])).out).toEqual(['Heard "lids on".']);
    expect((await run(["--", "--json", "x"])).out).toEqual(['Heard "--json x".']);
  });

  it("ends with 1 where the kitchen refuses", async () => {
    const refused = await run(["out with the jars", "--json"]);
    expect(refused.status).toBe(1);
    expect(JSON.parse(refused.out.join())).toEqual({
      refused: true,
      lines: ['Heard "out with the jars".'],
    });
  });

  it("ends with 2 and says how to call it where the call is wrong", async () => {
    for (const args of [[], [""], ["--loud", "x"], ["x".repeat(2001)]]) {
      const { status, out, err } = await run(args);
      expect([status, out, err.length]).toEqual([2, [], 1]);
      expect(err[0]).toContain('brinebell tell "it\'s boiling"');
    }
  });

  it("ends with 3 and says how to open one where no kitchen is open", async () => {
    const { status, err } = await run(["hello"], join(folder, "elsewhere"));
    expect(status).toBe(3);
    expect(err[0]).toMatch(/no kitchen is open on .*elsewhere; open one with: brinebell/);
  });
});
