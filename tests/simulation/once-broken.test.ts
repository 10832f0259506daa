import { beforeAll, describe, expect, it } from "vitest";
import type { Library } from "../../src/recipe/library.ts";
import { loadLibrary } from "../../src/session/reading/load-library.ts";
import { SimulatedKitchen } from "./simulated-kitchen.ts";

let library: Library;

beforeAll(async () => {
  library = await loadLibrary(["recipes"], {});
});

/** Plays a script to its end; the verdicts that came out. */
async function verdicts(args: string[], lines: readonly string[]): Promise<string[]> {
  const kitchen = await SimulatedKitchen.open(args, library);
  for (const line of lines) await kitchen.play(line);
  await kitchen.finish();
  return kitchen.verdicts;
}

const BEANS = ["snap-beans", "--altitude", "6200ft", "--from", "2027-12-31T19:00:00"];
const UNTIL_ZERO = [
  "+0:00:31 zero",
  "+0:51:29 done",
  "+0:14:00 the beans is boiling",
  "+0:07:43 7 pints filled",
  "+0:00:27 hot off the boil",
  "+0:09:00 an inch",
  "+0:00:16 new",
  "+0:19:00 the jars are in",
  "+0:44:00 it's venting steadily",
  "+0:11:45 14 pounds",
  "+1:09:00 the pressure is zero",
  "+0:00:10 yes",
];
const TO_THE_END = [
  "+0:01:59 yes",
  "+0:00:54 the jars are out",
  "+12:45:46 cooled",
  "+0:05:12 all sealed",
];

describe("kitchens that chance once broke", () => {
  it("a zero put back into the process, or before it, is a loss of it", async () => {
    const corrected = (time: string) =>
      verdicts(BEANS, [...UNTIL_ZERO, `+0:04:34 it was at ${time}`, ...TO_THE_END]);
    expect(await corrected("ten fifteen")).toEqual(["pressure: as-tested"]);
    expect(await corrected("nine forty five")).not.toContain("pressure: as-tested");
    expect(await corrected("nine thirty")).not.toContain("pressure: as-tested");
  });

  it("a timer that is set after one was taken back rings", async () => {
    const pickles = ["quick-sweet-pickles", "--from", "2027-11-07T00:40:00"];
    const lines = [
      "+0:00:40 set a timer for 4 minutes for the bread",
      "+0:05:00 got it",
      "+0:01:05 undo",
      "+0:02:24 set a timer for 40 minutes for the bread",
      "+1:00:00 what now",
    ];
    const kitchen = await SimulatedKitchen.open(pickles, library);
    for (const line of lines) await kitchen.play(line);
    const { timers } = kitchen.session.state;
    expect(Object.values(timers).map((timer) => timer.state)).toEqual(["rang"]);
    await kitchen.finish();
  });
  it("a death between the log and the side file of clocks moves no clock", async () => {
    const args = ["carrots", "--altitude", "7542ft", "--from", "2027-09-03T21:30:00"];
    for (let write = 1; write <= 8; write++) {
      const lines = ["+2:00:00 done", `+0:00:01 [dies at write ${write}]`, "+3:00:00 done"];
      const kitchen = await SimulatedKitchen.open(args, library);
      for (const line of lines) await kitchen.play(line);
      expect(kitchen.livedMs, `write ${write}`).toBe((5 * 3600 + 1) * 1000);
    }
  });

  it("an answer that no ruler shows is in the log all the same, and holds nothing", async () => {
    const carrots = "carrots --altitude 6200ft --from 2027-11-06T22:10:00 --jar quart";
    const lines = [
      "+0:00:33 done",
      "+0:09:00 the carrots is boiling",
      "+0:06:29 6 quarts filled",
      "+1d 3:19:34 what now",
      "+0:00:03 new",
      "+0:03:43 it was at nine thirty",
    ];
    const args = `${carrots} --method pressure --pack hot --gauge weighted --for 15lb`.split(" ");
    expect(await verdicts(args, lines)).not.toContain("pressure: as-tested");
  });
});
