import { describe, expect, it } from "vitest";
import { signIn } from "../../src/language/evidence/gone-off.ts";
import { onlyBatch, play } from "../scenarios/play.ts";

describe("words of spoilage", () => {
  it.each([
    ["opened C1 and good lord it stinks, straight in the bin", "off"],
    ["opened P2, there's fuzz on top", "moldy"],
    ["we opened a jar and it was fizzing", "spurted"],
    ["opened one, the lid was bulging", "bulged"],
    ["had one open at supper, it smelled kind of funny", "off"],
    ["opened P3. It had gone bad", "off"],
  ])("are told by: %s", (text, sign) => {
    expect(signIn(text)).toBe(sign);
  });

  it.each([
    "opened P1, no mold, smells lovely",
    "opened P1, took the lid off",
    "opened a pint and it isn't fizzy",
    "opened the beets, would it smell off if they were bad",
    "opened P4, sour and crunchy",
  ])("are not told by: %s", (text) => {
    expect(signIn(text)).toBeUndefined();
  });

  it("make an opened jar a spoiled one, and say how to be rid of it", async () => {
    const played = await play(
      "dilled-green-beans",
      `0:00 [cook until done]
+600:00 opened jar one and good lord it stinks, straight in the bin
+0:01 opened jar two, no mold, smells lovely`,
    );
    expect(onlyBatch(played).jars).toMatchObject({ spoiled: 1 });
    const types = played.journal.map(({ type }) => type);
    expect(types.filter((type) => type === "jar-opened")).toHaveLength(1);
    expect(played.said.map(({ text }) => text).join("\n")).toContain("Do not taste it");
  });
});
