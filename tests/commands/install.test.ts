/** What an install brings along: what is meant to be there and what is loaded at run time. */
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";

const { dependencies } = JSON.parse(readFileSync("package.json", "utf8"));
/** What the program is meant to be made with, built in or not. */
const MEANT = ["ink", "react", "say", "node-cron", "zod", "chrono-node"];

describe("an install", () => {
  it("needs nothing that the build holds already", () => {
    const build = readFileSync("esbuild.config.mjs", "utf8");
    const [, list = ""] = /external: \[([^\]]*)\]/.exec(build) ?? [];
    const loaded = [...list.matchAll(/"([^"]+)"/g)].map(([, name]) => name ?? "");
    expect(loaded.length).toBeGreaterThan(0);
    expect(Object.keys(dependencies).sort()).toEqual([...MEANT, ...loaded].sort());
  });

  it("carries a notice of every package that is built in", () => {
    const notices = readFileSync("dist/NOTICES.txt", "utf8");
    for (const name of [...MEANT, "yaml", "yoga-layout", "string-width", "env-paths"]) {
      expect(notices).toMatch(new RegExp(`^${name} [\\d.]+ \\((MIT|ISC)\\)$`, "m"));
    }
    const all = notices.split(/\n-{80}\n/);
    expect(all.length).toBeGreaterThan(40);
    for (const one of all) expect(one).toMatch(/Copyright[\s\S]*permission/i);
  });
});
