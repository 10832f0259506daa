import { execFileSync } from "node:child_process";
import {
  appendFileSync,
  closeSync,
  mkdtempSync,
  openSync,
  rmSync,
  writeFileSync,
  writeSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { probeReader } from "../../../src/session/probe/probe-reader.ts";
import { realClock } from "../../../src/session/time/real-clock.ts";
import { codes, onlyBatch, play, timesSaid } from "../../scenarios/play.ts";

const CANNER = "0:00 [cook until process]";
/** A minute of readings at and about a full boil in the mountain kitchen. */
const BOILING = "+0:00 [probe canner 200.6F for 0:01]\n+0:00 [probe canner 200.5F for 0:01]";
const boilFor = (minutes: number) =>
  Array(Math.ceil(minutes / 2))
    .fill(BOILING)
    .join("\n");

describe("a canner with a probe", () => {
  it("notices the boil, and still asks about the lids", async () => {
    const played = await play(
      "dilled-green-beans",
      `${CANNER}\n${BOILING}\n+0:00 yes\n+0:00 [cook until done]`,
    );
    expect(timesSaid(played, "Are the lids covered")).toBe(1);
    expect(onlyBatch(played).verdict).toBe("as-tested");
    expect(played.journal.some((one) => one.type === "boil" && one.covered === null)).toBe(true);
  });

  it("stops the clock at once when it falls, and starts over when it is back", async () => {
    const script = [
      CANNER,
      BOILING,
      "+0:00 yes",
      boilFor(6),
      "+0:00 [probe canner 191.0F for 0:01]",
      "+0:00 [probe canner 195.0F for 0:01]",
      boilFor(18),
      "+0:00 [cook until done]",
    ].join("\n");
    const batch = onlyBatch(await play("dilled-green-beans", script));
    expect(codes(batch)).toEqual(expect.arrayContaining(["boil-lost", "process-restarted"]));
    expect(batch.process).toMatchObject({ restarts: 1, state: "complete" });
    expect(batch.verdict).toBe("as-tested");
  });

  it("asks when a person says it boils and the probe is far under", async () => {
    const probe = "+0:00 [probe canner 150.2F for 0:00:20]";
    const script = `${CANNER}\n${probe}\n+0:00 it's boiling and the lids are covered`;
    const no = await play("dilled-green-beans", `${script}\n+0:00 no`);
    expect(timesSaid(no, "Is it really a full boil?")).toBe(1);
    expect(no.journal.some((one) => one.type === "boil" && one.covered === true)).toBe(false);
    const yes = await play("dilled-green-beans", `${script}\n+0:00 yes`);
    expect(yes.journal.some((one) => one.type === "boil" && one.covered === true)).toBe(true);
    expect(JSON.stringify(yes.journal.filter((one) => one.type === "note"))).toContain(
      "150.2 degrees",
    );
  });

  it("says when the probe falls silent or is stuck, once", async () => {
    const probe = "+0:00 [probe canner 200.4F for 0:04]";
    const script = `${CANNER}\n${BOILING}\n+0:00 yes\n${probe}\n+0:05 what now`;
    const played = await play("dilled-green-beans", script);
    expect(timesSaid(played, "has shown exactly 200.4 degrees")).toBe(1);
    expect(timesSaid(played, "Nothing from the probe")).toBe(0);
    const silent = await play(
      "dilled-green-beans",
      `${CANNER}\n${BOILING}\n+0:00 yes\n+0:10 what now`,
    );
    expect(timesSaid(silent, "Nothing from the probe")).toBe(1);
  });

  it("vouches for a time nobody watched, where its readings have their own times", async () => {
    const logged = (value: number, after = 0) => {
      const lines: string[] = [];
      for (let second = 0; second <= 24 * 60; second += 10) {
        const at = new Date(Date.UTC(2027, 7, 14, 15, 25) + second * 1000).toISOString();
        const shown = second < after ? 200.5 : value;
        lines.push(`+0:00 [probe ${at.slice(0, 19)}Z canner ${shown}F]`);
      }
      return lines.join("\n");
    };
    const begin = `${CANNER}\n+0:00 it's boiling and the lids are covered\n+0:04 [closed for 0:15]`;
    const held = await play("dilled-green-beans", `${begin}\n${logged(200.5)}\n+0:00 what now`);
    expect(timesSaid(held, "it held")).toBe(1);
    expect(held.journal.find((one) => one.type === "vouched")).toMatchObject({
      held: true,
      by: "probe",
    });
    const fell = await play(
      "dilled-green-beans",
      `${begin}\n${logged(180, 12 * 60)}\n+0:00 what now`,
    );
    expect(fell.journal.find((one) => one.type === "vouched")).toMatchObject({
      held: false,
      by: "probe",
    });
  });

  it("starts a pressure process by the mark, and loses it under the mark", async () => {
    const script = [
      "0:00 [cook until vent]",
      "+0:00 it's venting steadily",
      "+0:11 [probe canner 14.2psi for 0:01]",
      "+0:00 [probe canner 14.0psi for 0:03]",
      "+0:00 [probe canner 12.0psi for 0:01]",
      "+0:00 what now",
    ].join("\n");
    const played = await play("snap-beans", script, { gauge: "dial" });
    const types = played.journal.map((one) => one.type);
    expect(types).toContain("pressure");
    expect(types).toContain("pressure-lost");
    expect(codes(onlyBatch(played))).toContain("pressure-lost");
  });

  it("leaves its trace in the log, thinned", async () => {
    const script = `${CANNER}\n${BOILING}\n+0:00 yes\n${boilFor(16)}\n+0:00 [cook until done]`;
    const played = await play("dilled-green-beans", script);
    const traces = played.journal.filter((one) => one.type === "probe");
    expect(traces.length).toBeGreaterThan(0);
    const samples = traces.flatMap((one) => one.samples as [number, number][]);
    expect(samples.length).toBeLessThanOrEqual(60);
    expect(onlyBatch(played).readings.length).toBeGreaterThanOrEqual(samples.length);
  });
});

const wait = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

async function until(test: () => boolean): Promise<void> {
  for (let tries = 0; tries < 100 && !test(); tries++) await wait(30);
}

describe("reading a probe", () => {
  it("follows a growing file, with lines in parts too, and one that is started over", async () => {
    const folder = mkdtempSync(join(tmpdir(), "probe-"));
    const path = join(folder, "log.txt");
    const lines: string[] = [];
    const problems: string[] = [];
    const reader = probeReader(path, realClock());
    reader.start({ onLine: (line) => lines.push(line), onProblem: (one) => problems.push(one) });
    expect(problems).toHaveLength(1);
    writeFileSync(path, "200.1F\n200.");
    await until(() => lines.length === 1);
    appendFileSync(path, "2F\n");
    await until(() => lines.length === 2);
    writeFileSync(path, "1F\n");
    await until(() => lines.length === 3);
    reader.stop();
    rmSync(folder, { recursive: true });
    expect(lines).toEqual(["200.1F", "200.2F", "1F"]);
    expect(problems).toHaveLength(1);
  });

  it.skipIf(process.platform === "win32")("never waits for a pipe", async () => {
    const folder = mkdtempSync(join(tmpdir(), "probe-"));
    const path = join(folder, "pipe");
    execFileSync("mkfifo", [path]);
    const lines: string[] = [];
    const reader = probeReader(path, realClock());
    const began = performance.now();
    reader.start({ onLine: (line) => lines.push(line), onProblem: () => {} });
    expect(performance.now() - began).toBeLessThan(500);
    const writer = openSync(path, "r+");
    writeSync(writer, `${"x".repeat(50_000)}\n12.1psi\n`);
    await until(() => lines.length > 0);
    reader.stop();
    closeSync(writer);
    rmSync(folder, { recursive: true });
    expect(lines).toEqual(["12.1psi"]);
  });
});
