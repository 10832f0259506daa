import { describe, expect, it } from "vitest";
import { codes, onlyBatch, play } from "./play.ts";

const PROCESSED = `
+0:00 [cook until process]
+0:00 it's boiling and the lids are covered
+0:20 yes
`;

describe("jars said to have come out before their time was full", () => {
  it("need a yes, and then their process was too short", async () => {
    const script = `${PROCESSED}
+0:01 the jars came out fifteen minutes ago
+0:00 yes
+0:00 put them in the fridge`;
    const batch = onlyBatch(await play("dilled-green-beans", script, { altitude: "6200ft" }));
    expect(codes(batch)).toContain("process-short");
    expect(batch.verdict).toBe("not-as-tested");
  });

  it("are short too where the time of their coming out is corrected to it", async () => {
    const script = `${PROCESSED}
+0:00 the jars are out
+0:05 that was twenty minutes ago
+13:00 all sealed`;
    const batch = onlyBatch(await play("dilled-green-beans", script, { altitude: "6200ft" }));
    expect(codes(batch)).toContain("process-short");
    expect(batch.verdict).toBe("not-as-tested");
  });

  it("are not asked about once the heat was turned off: that has ended the time", async () => {
    const played = await play(
      "dilled-green-beans",
      `${PROCESSED.replace("+0:20 yes\n", "")}
+0:05 heat's off
+0:01 the jars are out`,
      { altitude: "6200ft" },
    );
    expect(played.asked.map(({ text }) => text).join()).not.toContain("Take them out anyway");
    expect(onlyBatch(played).jars?.processed).toBeGreaterThan(0);
    expect(codes(onlyBatch(played))).toContain("process-short");
  });
});
