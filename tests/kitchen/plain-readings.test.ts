import { describe, expect, it } from "vitest";
import { apply, fork } from "../../src/kitchen/evolve.ts";
import { settle } from "../../src/kitchen/settle.ts";
import { initialState } from "../../src/kitchen/state.ts";
import { demoSeason } from "../review/demo-season.ts";
import { LIBRARY } from "../review/kitchen-files.ts";

describe("a reading that changes no stage", () => {
  it("has no consequences: settling after it changes nothing", async () => {
    const events = await demoSeason(LIBRARY, 3000);
    const state = initialState();
    let readings = 0;
    for (const event of events) {
      apply(state, event);
      if (event.type !== "temperature" && event.type !== "pressure") continue;
      readings += 1;
      // Copying everything is slow, so only every seventh is checked.
      if (readings % 7 !== 0) continue;
      const copy = fork(state);
      settle(copy, event.w);
      expect({ ...copy, history: [] }).toEqual({ ...state, history: [] });
    }
    expect(readings).toBeGreaterThan(400);
  });
});
