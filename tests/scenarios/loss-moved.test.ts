import { describe, expect, it } from "vitest";
import { onlyBatch, play, timesSaid } from "./play.ts";

const LOST = `
0:00 [cook until process]
+0:00 it's boiling and the lids are covered
+0:12 it lost its boil ten minutes ago
+0:01 that was three minutes ago`;

const lost = (batch: ReturnType<typeof onlyBatch>) =>
  batch.deviations.find((one) => one.code === "boil-lost")?.detail;

describe("a loss that is said to have come later", () => {
  it("needs a yes that names it, since more of the time would then count", async () => {
    const no = await play("dilled-green-beans", `${LOST}\n+0:00 no`);
    expect(timesSaid(no, "Move the lost boil forward by")).toBe(1);
    expect(lost(onlyBatch(no))).toBe("lost after 2 of 15 min");
    const yes = await play("dilled-green-beans", `${LOST}\n+0:00 yes`);
    expect(lost(onlyBatch(yes))).toBe("lost after 10 of 15 min");
  });
});

describe("a boil that is said to have been back for longer than it was lost", () => {
  it("counts from the loss, and no minute before it", async () => {
    const played = await play(
      "dilled-green-beans",
      `0:00 [cook until process]
+0:00 it's boiling and the lids are covered
+0:05 the boil stopped
+0:02 it's been boiling for ten minutes and the lids are covered
+0:00 [cook until done]`,
    );
    const boils = played.journal.filter(({ type }) => type === "boil" || type === "boil-lost");
    const [lostAt, backAt] = boils.slice(-2).map(({ t }) => t);
    expect(backAt).toBe(lostAt);
    expect(onlyBatch(played).process).toMatchObject({ restarts: 1, achievedMinutes: 15 });
  });
});
