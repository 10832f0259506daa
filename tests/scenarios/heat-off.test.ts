import { describe, expect, it } from "vitest";
import { verdictOf } from "../../src/review/verdict.ts";
import { whenText } from "../../src/session/view/clock-text.ts";
import { at, Story, told } from "../kitchen/story.ts";
import { allSaid, codes, onlyBatch, play } from "./play.ts";

const BOIL = "0:00 [cook until process]\n+0:00 it's boiling and the lids are covered\n";
const DONE = "\n+0:00 [cook until done]";

/** Beans that boil fifteen minutes from ten past nine, and whose heat goes off a minute later. */
function boiled() {
  const story = new Story();
  const { id } = story.begins(0, "dilled-green-beans");
  const load = story.loads(60, story.batch(id), 8);
  story.says(70, "boiling", { covered: true });
  story.passes(86);
  story.says(86, "yes");
  const off = story.says(86, "done", { target: "heat off" });
  const verdict = () => {
    story.says(95, "done", { target: "jars" }, { confirmed: true });
    story.says(95 + 13 * 60, "sealed", { all: true });
    return verdictOf(story.state, story.batch(id), at(2000));
  };
  return { story, off, verdict, process: () => story.load(load.id).stages.find(isProcess) };
}

function isProcess({ id }: { id: string }): boolean {
  return id === "process";
}

describe("the heat under a process", () => {
  it("that goes off during its time breaks it: the whole time is needed again", async () => {
    const played = await play("dilled-green-beans", `${BOIL}+0:10 heat's off${DONE}`);
    const batch = onlyBatch(played);
    expect(allSaid(played)).toMatch(/The clock is stopped\. Bring it back/);
    expect(codes(batch)).toEqual(["boil-lost", "process-restarted"]);
    expect(batch.deviations[0]?.detail).toMatch(/^heat off after 10 min/);
    expect(batch.process).toMatchObject({ restarts: 1 });
    expect(batch.process?.achievedMinutes).toBe(batch.process?.testedMinutes);
  });

  it("that goes off after its time is how every process ends", () => {
    const { off, verdict, process } = boiled();
    expect(told(off)).toEqual(["heat-off"]);
    expect(process()?.kept?.stretches).toEqual([{ from: at(70), to: at(86), ended: "out" }]);
    expect(verdict().verdict).toBe("as-tested");
  });

  it("that had gone off before its time was full leaves the process short", () => {
    const { story, verdict, process } = boiled();
    story.says(90, "correct-time", { at: "2027-08-14T09:22:00" });
    expect(process()).toMatchObject({ state: "running" });
    const { verdict: judged, reasons } = verdict();
    expect(judged).toBe("not-as-tested");
    expect(reasons.join()).toContain("process-short: 12 of 15 minutes");
  });
});

describe("the end of a pressure process", () => {
  const script = (answer: string) => `0:00 [cook until depressurize]
+0:45 the pressure is zero\n+0:00 ${answer}\n+0:10 the jars are out\n+13:00 all sealed`;

  it.each([
    ["yes", "as-tested", ""],
    ["no", "not-as-tested", "pressure-lost"],
    ["what now", "not-as-tested", ""],
  ])("is asked about once it has come to zero: %s", async (answer, verdict, code) => {
    const played = await play("snap-beans", script(answer), { jar: "pint", altitude: "6200ft" });
    const asked = played.asked.map(({ text }) => text);
    expect(asked).toContain("At the pressure throughout, vented, and left to fall by itself?");
    const batch = onlyBatch(played);
    expect(batch.verdict).toBe(verdict);
    if (code) expect(codes(batch)).toContain(code);
  });
});

describe("an end that is told", () => {
  const zone = "America/Denver";
  const wall = Date.UTC(2027, 7, 14, 18, 28, 58);

  it("is never announced too early: seconds make it the next minute", () => {
    expect(whenText(wall, wall - 60_000, zone)).toBe("12:29");
    expect(whenText(wall + 2000, wall, zone)).toBe("12:29");
  });

  it("is rounded that way in answers, and a tested time is never called approximate", async () => {
    const script = `0:00 [cook until process]\n+0:00:58 it's boiling and the lids are covered
+0:04:30 how long until the jars are done`;
    const played = await play("dilled-green-beans", script, { altitude: "6200ft" });
    const begun = onlyBatch(played).stages.find(isProcess)?.startedAt ?? "";
    const full = new Date(Date.parse(begun) + 15 * 60_000);
    const minute = Math.ceil(full.getTime() / 60_000) % 60;
    const said = allSaid(played);
    expect(begun).toMatch(/:58[+-]/);
    expect(said).toMatch(/Fifteen minutes, until /);
    expect(said).toMatch(/process, eleven minutes, until /);
    const words = minute % 5 === 0 ? /until (.*past|.*to) / : new RegExp(`until \\d+:${minute}`);
    expect(said).toMatch(words);
  });
});
