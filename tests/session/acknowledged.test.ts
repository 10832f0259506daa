import { describe, expect, it } from "vitest";
import { MEANINGS } from "../../src/language/intents/all.ts";
import { kitchenAt, MOMENT_NAMES } from "./kitchen-moments.ts";

/** Leaves the program: there is nobody to be answered. */
const UNANSWERED: ReadonlySet<string> = new Set(["quit"]);

const EXAMPLES = Object.entries(MEANINGS).flatMap(([intent, { example }]) => {
  return example && !UNANSWERED.has(intent) ? [{ intent, example }] : [];
});

describe("whatever is said is answered", () => {
  it.each(MOMENT_NAMES)("while this goes on: %s", async (name) => {
    const silent: string[] = [];
    let session = await kitchenAt(name);
    for (const { intent, example } of EXAMPLES) {
      const events = session.state.history.length;
      const { lines } = session.hear(example);
      if (lines.length === 0) silent.push(`${intent}: ${example}`);
      // Each is said at the same moment.
      if (session.state.history.length !== events) session = await kitchenAt(name);
    }
    expect(silent).toEqual([]);
  });
}, 300_000);
