import { describe, expect, it } from "vitest";
import { mayStandMinutes } from "../../src/kitchen/loads/standing.ts";
import { type Batch, initialState } from "../../src/kitchen/state.ts";
import { contradictions } from "./own-figures.ts";
import { allSaid, codes, onlyBatch, play } from "./play.ts";

/** Eight pints of beans filled, and put into the canner some time later. */
async function filled(wait: string, before = "") {
  const script = `0:00 [cook until fill]\n${before}+0:20 8 pints filled\n+0:00 yes\n+0:00 yes
+${wait} the jars are in\n+0:00 [cook until done]`;
  const played = await play("dilled-green-beans", script, { altitude: "6200ft" });
  return { played, batch: onlyBatch(played) };
}

describe("filled jars before the canner", () => {
  it("may stand a while, and are mentioned soon", async () => {
    const { played, batch } = await filled("1:00");
    expect(batch.verdict).toBe("as-tested");
    expect(allSaid(played)).toMatch(/8 filled jars stand before the canner\. In with them/);
  });

  it("are not as tested once they have stood over two hours, whatever is answered", async () => {
    const { played, batch } = await filled("2:05");
    expect(codes(batch)).toContain("waited");
    expect(batch.verdict).toBe("not-as-tested");
    expect(batch.reasons.join()).toMatch(/waited: 2 h.* at most/);
    expect(
      played.said.some(({ rank, text }) => rank === "alarm" && /stand no longer/.test(text)),
    ).toBe(true);
  });

  it.each([
    "the room is 95 degrees",
    "the kitchen is over ninety",
    "it's hotter than ninety in here\n+0:00 yes",
  ])("may stand one hour once it is said that %j", async (words) => {
    const hot = await filled("1:05", `+0:00 ${words}\n`);
    expect(codes(hot.batch)).toContain("waited");
  });

  it("may stand longer where the kitchen is milder", async () => {
    const mild = await filled("1:05", "+0:00 the room is 85 degrees\n");
    expect(mild.batch.verdict).toBe("as-tested");
  });

  it("may stand no longer than the recipe itself allows", () => {
    const allowed = (atMostMinutes: number) => {
      const stages = [{ kind: "process", after: [{ stage: "fill", atMostMinutes }] }];
      return mayStandMinutes(initialState(), { recipe: { stages } } as unknown as Batch);
    };
    expect(allowed(30)).toBe(30);
    expect(allowed(300)).toBe(120);
  });

  it("are filled load by load where there are more than the canner takes", async () => {
    const lots = { altitude: "6200ft", "canner-holds": "4" };
    const played = await play("dilled-green-beans", "0:00 [cook until done]", lots);
    expect(allSaid(played)).toContain("Fill four now; keep the rest hot.");
    expect(onlyBatch(played).verdict).toBe("as-tested");
    expect(codes(onlyBatch(played))).not.toContain("waited");
  });
});

describe("a verdict's own figures", () => {
  it("would speak against it: minutes, a stage cut short, a wait, an open loss", async () => {
    const { played } = await filled("0:05");
    const [load] = played.review.loads;
    const [batch] = played.review.batches;
    if (!load?.process || !batch?.process) throw new Error("no process");
    expect(contradictions(played.review)).toEqual([]);
    const process = { ...batch.process, achievedMinutes: 14.9 };
    const against = (change: object) =>
      contradictions({ ...played.review, batches: [{ ...batch, ...change }] });
    expect(against({ process })).toHaveLength(1);
    const stages = batch.stages.map((stage) => ({ ...stage, minutes: 9 }));
    expect(against({ stages })).toHaveLength(1);
    const waited = { code: "waited", stage: null, at: "", detail: "", disposition: "undecided" };
    expect(against({ deviations: [waited] })).toHaveLength(1);
    expect(against({ deviations: [{ ...waited, code: "boil-lost" }] })).toHaveLength(1);
    expect(against({ deviations: [{ ...waited, code: "rest-long" }] })).toEqual([]);
  });
});
