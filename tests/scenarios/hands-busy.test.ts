import { describe, expect, it } from "vitest";
import { play } from "./play.ts";

const DAY = `0:00 start the dilly beans
0:00:20 start the pickled beets
0:04 start the brine
+0:00:20 five percent
0:19 the brine is boiling
0:24 the beans are trimmed
0:25 the beets are scrubbed
1:00 the canner's ready
1:05 start the syrup
1:20 8 pints of beans filled
+0:00:15 half an inch
+0:00:15 new`;

const minuteOf = (at: string) => Number(at.slice(11, 13)) * 60 + Number(at.slice(14, 16)) - 480;

describe("a question while hands are in the jars", () => {
  it("waits until the jars are in, unless it is about those jars", async () => {
    const played = await play([], `${DAY}\n1:24 the jars are in`, { altitude: "6200ft" });
    const asked = played.asked.map(({ at, text }) => `${minuteOf(at)} ${text}`);
    expect(asked).toEqual([
      expect.stringMatching(/^4 .*vinegar/),
      expect.stringMatching(/^80 .*headspace/),
      expect.stringMatching(/^80 .*Lids/),
      expect.stringMatching(/^84 Beets: .*vinegar/),
    ]);
    const [put] = played.desk.filter(({ why }) => why === "hands busy");
    expect(put?.wanted).toMatch(/vinegar/);
  });

  it("waits no longer than jars take to fill, whatever is forgotten", async () => {
    const played = await play([], `${DAY}\n2:20 what now`, { altitude: "6200ft" });
    const last = played.asked.at(-1);
    expect(last?.text).toMatch(/vinegar/);
    expect(minuteOf(last?.at ?? "")).toBe(110);
  });
}, 60_000);
