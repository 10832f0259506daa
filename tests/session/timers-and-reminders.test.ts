import { describe, expect, it } from "vitest";
import { allSaid, play, timesSaid } from "../scenarios/play.ts";

/** The answer said at, or right after, a line of the script. */
async function saying(script: string) {
  const played = await play("cucumber-seed", script, { from: "2027-08-14T08:00:00" });
  expect(played.trouble).toBeUndefined();
  expect(played.refused).toEqual([]);
  return played;
}

describe("timers by voice", () => {
  it("run several at once, each by its name, and ring at their own moments", async () => {
    const played = await saying(`
0:01 set a timer for ten minutes for the rice
0:02 timer for twenty minutes for the eggs
0:03 start a five minute timer
0:40 got it
`);
    const rings = played.said.filter((one) => one.rank === "alarm");
    const first = (name: string) => rings.find((one) => one.text.includes(name))?.at.slice(11, 16);
    expect(first("rice timer is done")).toBe("08:11");
    expect(first("eggs timer is done")).toBe("08:22");
    expect(first("5 minute timer is done")).toBe("08:08");
  });

  it("are asked about by name and all together", async () => {
    const played = await saying(`
0:01 timer for twenty minutes for the rice
0:02 timer for an hour for the beans
0:11 how long on the rice
0:12 how much time is left on the beans
`);
    expect(allSaid(played)).toMatch(/rice timer: about ten minutes/i);
    expect(allSaid(played)).toMatch(/beans timer: about fifty minutes/i);
  });

  it("are lengthened and canceled, by name", async () => {
    const played = await saying(`
0:01 timer for ten minutes for the rice
0:02 timer for ten minutes for the eggs
0:05 add five minutes to the rice timer
0:06 cancel the egg timer
0:30 got it
`);
    expect(timesSaid(played, "eggs timer is done")).toBe(0);
    const rice = played.said.find((one) => one.text.includes("rice timer is done"));
    expect(rice?.at.slice(11, 16)).toBe("08:16");
    expect(
      played.review.timers.map(({ label, minutes, state }) => [label, minutes, state]),
    ).toEqual([
      ["rice", 15, "answered"],
      ["eggs", 10, "cancelled"],
    ]);
  });

  it("that ended while it was closed are announced at opening with how long ago", async () => {
    const played = await saying(`
0:01 timer for ten minutes for the rice
0:02 [closed for 0:30]
+0:01 got it
`);
    const told = played.said.find((one) => one.text.includes("rice timer is done"));
    expect(told?.text).toMatch(/That was twenty-one minutes ago\./);
  });
});

describe("reminders by voice", () => {
  it("ring at their time on their day", async () => {
    const played = await saying(`
0:05 remind me sunday morning at nine to wipe the jars
25:10 got it
`);
    const [set] = played.journal.filter((event) => event.type === "reminder-set");
    expect(set).toMatchObject({ text: "wipe the jars" });
    const rung = played.said.find((one) => one.text === "A reminder: wipe the jars.");
    expect(rung?.at.slice(0, 16)).toBe("2027-08-15T09:00");
    expect(rung?.rank).toBe("alarm");
  });

  it("that come due while it is closed are announced exactly once, at the opening", async () => {
    const played = await saying(`
0:05 remind me tomorrow at nine to wipe the jars
0:06 [closed for 48:00]
+0:00 got it
+1:00 what's running
`);
    expect(timesSaid(played, "wipe the jars. That was 23 hours", "alarm")).toBeLessThanOrEqual(1);
    const rung = played.said.filter((one) => one.text.startsWith("A reminder: wipe the jars."));
    expect(rung).toHaveLength(1);
    expect(rung[0]?.text).toMatch(/That was .* ago\./);
    const due = played.journal.filter((event) => event.type === "due" && event.rings === true);
    expect(due.map((event) => event.at.slice(0, 16))).toContain("2027-08-15T09:00");
  });

  it("ring until they are answered", async () => {
    const played = await saying(`
0:05 remind me in ten minutes to stir
0:25 got it
0:40 what's running
`);
    const rings = played.said.filter((one) => one.text.startsWith("A reminder: stir"));
    expect(rings.length).toBeGreaterThan(2);
    expect(rings.every((one) => one.at < "2027-08-14T08:25:01")).toBe(true);
  });
});
