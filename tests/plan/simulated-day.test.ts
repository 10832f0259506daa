import { describe, expect, it } from "vitest";
import { beans, day, pickles } from "./sample-day.ts";
import { drawnMinutes, SimulatedDay } from "./simulated-day.ts";

describe("days on which things take longer or shorter than usual", () => {
  it("break no window where the rest is replanned and gates are kept, unlike a fixed order", () => {
    const batches = [
      pickles("a", "Bread-and-butter pickles"),
      beans("b", "Provider"),
      pickles("c", "Sweet pickles", 50),
      beans("d", "Blue Lake"),
    ];
    const request = day(batches);
    const broken = { blind: 0, careful: 0 };
    for (let seed = 1; seed <= 12; seed++) {
      const drawn = drawnMinutes(batches, seed, 0.3);
      if (new SimulatedDay(request, drawn, false).live().length > 0) broken.blind += 1;
      const windows = new SimulatedDay(request, drawn, true).live();
      if (windows.length > 0) broken.careful += 1;
    }
    expect(broken.careful).toBe(0);
    expect(broken.blind).toBeGreaterThan(1);
  }, 120_000);
});
