import { describe, expect, it } from "vitest";
import { allSaid, codes, onlyBatch, play, timesSaid } from "./play.ts";

const CANNER = "0:00 [cook until process]";
const VENTED = "0:00 [cook until vent]\n+0:00 it's venting steadily";
const DONE = "+0:00 [cook until done]";
const pressed = (...lines: string[]) =>
  play("snap-beans", [VENTED, "+0:11 14.2 pounds", ...lines].join("\n"), { gauge: "dial" });
const boiled = (...lines: string[]) => play("dilled-green-beans", [CANNER, ...lines].join("\n"));
const BOILS = "+0:00 it's boiling and the lids are covered";

/** A probe's lines, some seconds apart, for some minutes. */
function reads(value: string, everyS: number, minutes: number): string {
  const lines = Array(Math.round((minutes * 60) / everyS));
  return lines.fill(`+0:00:${String(everyS).padStart(2, "0")} [probe canner ${value}]`).join("\n");
}

/** Lines of a logger with their times, from an instant of that day onward. */
function logged(value: string, from: string, seconds: number, everyS = 10): string {
  const start = Date.parse(`2027-08-14T${from}:00-06:00`);
  return Array.from({ length: seconds / everyS }, (_, at) => {
    const t = new Date(start + at * everyS * 1000).toISOString().slice(0, 19);
    return `+0:00 [probe ${t}Z canner ${value}]`;
  }).join("\n");
}

describe("a pressure that a probe reads", () => {
  it("is lost where it reads below the mark every five seconds", async () => {
    const script = [reads("14.4psi", 5, 8), reads("11psi", 5, 5), reads("14.4psi", 5, 21), DONE];
    const batch = onlyBatch(await pressed(...script));
    expect(codes(batch)).toEqual(expect.arrayContaining(["pressure-lost", "process-restarted"]));
    expect(batch.process).toMatchObject({ restarts: 1, state: "complete" });
  });

  it("is lost by one reading under the mark, and runs on with none", async () => {
    const held = onlyBatch(await pressed(reads("14.1psi", 5, 21), DONE));
    expect(held).toMatchObject({ verdict: "as-tested", deviations: [] });
    const dip = [
      reads("14.1psi", 5, 8),
      "+0:00:05 [probe canner 13.8psi]",
      reads("14.1psi", 5, 13),
    ];
    const played = await pressed(...dip);
    expect(played.journal.some(({ type }) => type === "pressure-lost")).toBe(true);
  });

  it("begins again where a logger's late lines show that it was lost", async () => {
    const script = ["+0:21 heat's off", logged("13.1psi", "10:00", 60), DONE];
    const batch = onlyBatch(await pressed(...script));
    expect(codes(batch)).toEqual(expect.arrayContaining(["pressure-lost", "process-restarted"]));
  });

  it("is not as tested where they show it when the jars are out", async () => {
    const out = ["+0:21 heat's off", "+0:40 zero pounds", "+0:11 the jars are out"];
    const script = [...out, logged("13.1psi", "10:00", 60), "+0:00 refrigerate them"];
    const batch = onlyBatch(await pressed(...script));
    expect(batch.verdict).toBe("not-as-tested");
    expect(batch.reasons.join()).toContain("read 13.1 pounds, under the 14 to be kept");
    expect(codes(batch)).toContain("pressure-lost");
  });
});

describe("a boil that a probe reads", () => {
  it("is lost by a reading that no thermometer and no weather explain", async () => {
    const played = await boiled(BOILS, reads("200.4F", 5, 3), reads("195.2F", 10, 1));
    expect(played.journal.some(({ type }) => type === "boil-lost")).toBe(true);
  });

  it("does not begin below the local boiling point, except on a person's word", async () => {
    const low = reads("199.9F", 5, 3);
    const alone = await boiled(low, "+0:00 what now");
    expect(alone.journal.some(({ type, owner }) => type === "boil" && isLoad(owner))).toBe(false);
    const told = await boiled(low, BOILS, low, "+0:00 what now");
    expect(told.journal.some(({ type, owner }) => type === "boil" && isLoad(owner))).toBe(true);
    expect(told.journal.some(({ type }) => type === "boil-lost")).toBe(false);
  });

  it("is vouched for, except the lids, which a person is asked about", async () => {
    const script = [BOILS, "+0:04 [closed for 0:15]", logged("200.9F", "09:25", 1500)];
    const yes = await boiled(...script, "+0:00 yes", DONE);
    expect(yes.asked.at(-1)?.text ?? "").not.toBe("");
    expect(yes.asked.map(({ text }) => text).join("\n")).toContain("Were the lids covered all");
    expect(onlyBatch(yes).verdict).toBe("as-tested");
    const no = onlyBatch(await boiled(...script, "+0:00 no", "+0:00 what now"));
    expect(no.process?.state).toBe("running");
    expect(codes(no)).toContain("unwatched");
  });
});

const isLoad = (id: unknown): boolean => typeof id === "string" && id.includes("-L");

describe("a whole day on which everything else was right", () => {
  const cooled = "+0:00 heat's off\n+0:06 the jars are out\n+0:00 yes\n+13:00 all sealed";
  const read = (words: string) => boiled(BOILS, `+0:05 ${words}`, "+0:10 yes", cooled);

  it.each([
    "it's at 190 degrees",
    "the thermometer says 195",
    "the water is 180",
    "the canner reads 196 degrees",
    "it's 88 celsius",
    "the canner is at a hundred and ninety degrees",
  ])("is not as tested after a thermometer under the boil: %s", async (words) => {
    const batch = onlyBatch(await read(words));
    expect(batch.verdict).toBe("not-as-tested");
    expect(batch.reasons.join()).toMatch(/read \d+(\.\d)? F, under the 197\.6 to be kept/);
  });

  it("is as tested where the thermometer is off by no more than one may be", async () => {
    expect(onlyBatch(await read("the thermometer reads 199")).verdict).toBe("as-tested");
  });

  const down = "+0:40 zero pounds\n+0:00 yes\n+0:11 the jars are out\n+0:00 yes\n+13:00 all sealed";

  it.each([
    "it's at 11 pounds",
    "eleven pounds on the gauge",
    "the dial shows twelve",
    "13 pounds",
    "the needle is at ten",
  ])("is not as tested after a dial under its mark: %s", async (words) => {
    const batch = onlyBatch(await pressed(`+0:05 ${words}`, `+0:15:20 heat's off\n${down}`));
    expect(batch.verdict).not.toBe("as-tested");
    expect(codes(batch)).toContain("pressure-lost");
  });

  it("is not as tested after five minutes at 11 of 14 pounds, read every 5 s", async () => {
    const script = [reads("14.4psi", 5, 8), reads("11psi", 5, 5), reads("14.4psi", 5, 9)];
    const batch = onlyBatch(await pressed(...script, `+0:00 heat's off\n${down}`));
    expect(batch.verdict).toBe("not-as-tested");
    expect(batch.process?.achievedMinutes).toBeLessThan(10);
  });

  it.each(["done", "finished", "that's it", "I'm done", "ready", "we're through"])(
    "is not over for a ferment of weeks by a stray word: %s",
    async (words) => {
      const script = `0:00 [cook until ferment]\n+5:00 ${words}\n+0:00 what now`;
      const batch = onlyBatch(await play("sauerkraut", script));
      expect(batch.stages.find(({ kind }) => kind === "ferment")?.state).toBe("running");
    },
  );

  it.each(["never", "not ever", "never tested it", "nobody has tested it", "no idea"])(
    "is not as tested where the pounds that are asked are none: %s",
    async (words) => {
      const script = `0:00 what now\n+0:01 yes\n+0:01 ${words}\n${DONE}`;
      const batch = onlyBatch(await play("snap-beans", script, { gauge: "dial" }));
      expect(batch.verdict).toBe("not-as-tested");
      expect(codes(batch)).toContain("gauge-untested");
    },
  );
});

describe("a probe that cannot do what it is there for", () => {
  it("is refused aloud where it reads too seldom, and its low readings count", async () => {
    const played = await pressed(reads("14.2psi", 40, 5), "+0:00:40 [probe canner 13.5psi]");
    expect(timesSaid(played, "reads too seldom")).toBe(1);
    expect(played.journal.some(({ type }) => type === "pressure-lost")).toBe(true);
    const back = await pressed(
      reads("14.2psi", 40, 3),
      "+0:00:40 [probe canner 13.5psi]",
      reads("14.6psi", 40, 5),
    );
    expect(onlyBatch(back).process).toMatchObject({ state: "running", restarts: 0 });
  });

  it("is refused aloud where its steps are too coarse, until it shows finer ones", async () => {
    const played = await pressed(reads("15psi", 5, 1));
    expect(timesSaid(played, "too coarse")).toBe(1);
    expect(timesSaid(await pressed(reads("14.4psi", 5, 1)), "too coarse")).toBe(0);
    expect(timesSaid(await boiled(BOILS, reads("94C", 5, 1)), "too coarse")).toBe(1);
    expect(timesSaid(await boiled(BOILS, reads("201F", 5, 1)), "too coarse")).toBe(0);
  });

  it("leaves facts about its start, its silence and its return", async () => {
    const played = await boiled(
      reads("200.9F", 5, 1),
      "+0:00 yes",
      "+0:02 what now",
      reads("200.8F", 5, 1),
    );
    const states = played.journal.flatMap(({ type, is }) => (type === "probe-is" ? [is] : []));
    expect(states).toEqual(["watching", "began", "silent", "back"]);
    const notes = onlyBatch(played).notes.map(({ text }) => text);
    expect(notes).toContain("probe canner: fell silent");
    expect(allSaid(played)).toContain("Nothing from the probe");
  });
});

describe("what ends early by more than a tenth", () => {
  const FERMENT = "0:00 [cook until ferment]";

  it("is asked about first: a stray done ends no ferment of weeks", async () => {
    const stray = await play("fermented-dills", `${FERMENT}\n+5:00 done\n+0:00 what now`);
    expect(stray.asked.at(-1)?.text).toMatch(/ferment.*has had none of at least twenty-one days/i);
    const ferment = onlyBatch(stray).stages.find(({ kind }) => kind === "ferment");
    expect(ferment?.state).toBe("running");
    const meant = await play("fermented-dills", `${FERMENT}\n+5:00 done\n+0:00 yes`);
    expect(onlyBatch(meant).stages.find(({ kind }) => kind === "ferment")?.state).toBe("complete");
  });

  it("is not asked about in the last tenth", async () => {
    const late = await play("fermented-dills", `${FERMENT}\n+460:00 done`);
    expect(onlyBatch(late).stages.find(({ kind }) => kind === "ferment")?.state).toBe("complete");
  });
});

describe("a dial that nobody tested", () => {
  it.each(["never", "I don't know"])(
    "is one where the answer is %j, and no dial that reads true",
    async (said) => {
      const script = `0:00 what now\n+0:01 yes\n+0:01 ${said}\n${DONE}`;
      const played = await play("snap-beans", script, { gauge: "dial" });
      const gauges = played.journal.filter(({ type }) => type === "gauge-set");
      expect(gauges.map(({ gauge }) => gauge)).toEqual([
        { kind: "dial", testedSeason: 2027 },
        { kind: "dial", untestedSeason: 2027 },
      ]);
      const batch = onlyBatch(played);
      expect(batch.verdict).toBe("not-as-tested");
      expect(batch.reasons).toContain("gauge-untested: the dial gauge was not tested this season");
    },
  );
});
