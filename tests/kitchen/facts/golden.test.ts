/** Journals that the version before wrote are read as it read them. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { gunzipSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import { FACTS } from "../../../src/kitchen/facts/all-facts.ts";
import { review } from "../../../src/review/batch-log.ts";
import { readKitchen } from "../../../src/session/reading/read-kitchen.ts";

const GOLDEN = join(import.meta.dirname, "../../journal/golden");
/** Kinds that came after those journals were written. */
const LATER = new Set<string>();

function golden(file: string): string {
  return gunzipSync(readFileSync(join(GOLDEN, file))).toString("utf8");
}

function opened(name: string) {
  const folder = mkdtempSync(join(tmpdir(), "golden-"));
  try {
    writeFileSync(join(folder, "journal-2027.jsonl"), golden(`${name}.jsonl.gz`));
    return readKitchen(folder, { wallMs: 0 });
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

describe("a journal of the version before", () => {
  it.each(["season", "every-kind"])("reads the same: %s", (name) => {
    const { state, nowMs, notices } = opened(name);
    expect(notices).toEqual([]);
    // What a review has gained since is let be.
    expect(review(state, nowMs)).toMatchObject(JSON.parse(golden(`${name}.review.json.gz`)));
  });

  it("with every kind of fact has every kind there was", () => {
    const kinds = new Set(opened("every-kind").state.history.map(({ type }) => type));
    const missing = Object.keys(FACTS).filter((type) => !kinds.has(type as never));
    expect(missing.filter((type) => !LATER.has(type))).toEqual([]);
  });
});
