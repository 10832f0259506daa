import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { corpus } from "../training/corpus-files.ts";

/** Written before anything was tuned, by writers who saw neither the program nor the corpus. */
const SEALED = {
  "days.tsv": "612f6bb213afd8b6a808a44e422afe18b91cd5356e89feac13e67d335efa0c81",
  "commands.tsv": "06f03ad76b43364db359b930121e7b94a1600eb785b1e90c830a3ad00e235ced",
};

describe("the sentences that are held out", () => {
  it.each(Object.entries(SEALED))("are as they were sealed: %s", (file, digest) => {
    const bytes = readFileSync(join(import.meta.dirname, file));
    expect(createHash("sha256").update(bytes).digest("hex")).toBe(digest);
  });

  it("are no file of the corpus, and were looked at three times at most", () => {
    expect([...corpus().keys()].filter((file) => Object.hasOwn(SEALED, file))).toEqual([]);
    const lines = readFileSync(join(import.meta.dirname, "openings.tsv"), "utf8").split("\n");
    for (const name of ["days", "commands"]) {
      expect(lines.filter((line) => line.startsWith(`${name}\t`)).length).toBeLessThanOrEqual(3);
    }
  });
});
