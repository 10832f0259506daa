import { describe, expect, it } from "vitest";
import type { PlanIo } from "../../src/commands/day/plan.ts";
import { planCommand } from "../../src/commands/day/plan.ts";
import { wholeLibrary } from "../recipe/library-files.ts";

const io: PlanIo = {
  library: async () => wholeLibrary(),
  kitchen: async () => undefined,
  zone: "America/Denver",
  nowMs: Date.UTC(2027, 7, 14, 12),
  elapsedMs: () => 0,
  record: {} as PlanIo["record"],
};

const START = ["--start", "2027-08-14T08:00:00"];

type Report = {
  feasible: boolean;
  why: string[];
  tasks: {
    kind: string;
    hands: boolean;
    start: string;
    end: string;
    attended: { start: string; end: string }[];
  }[];
};

async function plan(...args: string[]): Promise<Report> {
  const { stdout } = await planCommand([...args, ...START, "--json"], io);
  return JSON.parse(stdout);
}

const minutes = (one: { start: string; end: string }) =>
  (Date.parse(one.end) - Date.parse(one.start)) / 60_000;

describe("the plan of a day", () => {
  it("has one pair of hands: the moments that need them never overlap", async () => {
    const { tasks } = await plan("pickled-beets 7lb", "dilled-green-beans 4lb", "rhubarb 7lb");
    const whole = tasks.filter((task) => task.hands);
    expect(whole.length).toBeGreaterThan(3);
    const moments = tasks.flatMap((task) => task.attended);
    moments.sort((a, b) => Date.parse(a.start) - Date.parse(b.start));
    for (const [n, one] of moments.entries()) {
      const next = moments[n + 1];
      if (next) expect(Date.parse(one.end)).toBeLessThanOrEqual(Date.parse(next.start));
    }
  });

  it("says when a process needs hands, and that it does not throughout", async () => {
    const { tasks } = await plan("pickled-beets 7lb");
    const process = tasks.find((task) => task.kind === "process");
    expect(process?.hands).toBe(false);
    expect(process?.attended.length).toBeGreaterThan(0);
  });

  it("refuses a jar that was not tested, and takes the time of the jar asked for", async () => {
    const half = await planCommand(["pickled-beets 7lb", "--jar", "half-gallon", ...START], io);
    expect(half.code).toBe(2);
    expect(half.stderr).toContain("half-gallon jars were not tested");
    const length = async (jar: string) => {
      const { tasks } = await plan("crushed-tomatoes 14lb", "--jar", jar);
      return minutes(tasks.find((task) => task.kind === "process")!);
    };
    expect((await length("quart")) - (await length("pint"))).toBe(10);
  });

  it("says that quiet hours leave no room, and does not wait for them to end", async () => {
    const { feasible, why } = await plan("pickled-beets 7lb", "--quiet", "00:00-23:59");
    expect(feasible).toBe(false);
    expect(why[0]).toContain("the quiet hours leave too little of the day");
  });

  it("keeps the nights of a ferment quiet, and those after it", async () => {
    const { feasible, tasks } = await plan("sauerkraut 25lb", "--quiet", "09:00-20:00");
    expect(feasible).toBe(true);
    const hour = (iso: string) => Number(iso.slice(11, 13));
    const moments = tasks.flatMap((task) => task.attended);
    for (const { start } of moments) expect(hour(start) < 9 || hour(start) >= 20).toBe(true);
  });
});
