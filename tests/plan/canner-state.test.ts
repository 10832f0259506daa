/** A canner is lit once, stays hot, and is one food's at a time; nothing warm is left alone. */
import { describe, expect, it } from "vitest";
import { type PlanIo, planCommand } from "../../src/commands/day/plan.ts";
import { wholeLibrary } from "../recipe/library-files.ts";

const LIBRARY = wholeLibrary();
const HERE = ["--altitude", "6200ft", "--canner-holds", "9pint,7quart", "--gauge", "dial"];
const START = ["--start", "2027-08-14T08:00:00"];
const NIGHT = ["--quiet", "21:30-06:30"];

const io: PlanIo = {
  library: () => LIBRARY,
  kitchen: () => undefined,
  zone: "America/Denver",
  nowMs: Date.UTC(2027, 7, 14, 12),
  elapsedMs: () => 0,
  record: { folder: "" } as PlanIo["record"],
};

type Task = {
  batch: string;
  stage: string;
  load?: number;
  start: string;
  end: string;
  uses: string[];
  attended: { start: string; end: string }[];
  moments: { what: string; at: string }[];
};
type Report = { feasible: boolean; minutes: number; proved: boolean; tasks: Task[]; why: string[] };

async function plan(...args: string[]): Promise<Report> {
  const { stdout, stderr } = await planCommand([...args, ...HERE, ...START, "--json"], io);
  expect(stderr).toBe("");
  return JSON.parse(stdout);
}

const clock = (iso: string) => iso.slice(11, 16);
const of = ({ tasks }: Report, stage: string) => tasks.filter((task) => task.stage === stage);

describe("a canner in the plan", () => {
  it("is lit once, and topped up from load to load", async () => {
    const report = await plan("dilled-green-beans 8lb", "pickled-beets 7lb", ...NIGHT);
    const lit = of(report, "canner").map(({ start, end }) => Date.parse(end) - Date.parse(start));
    expect(lit.map((ms) => ms / 60_000)).toEqual([60, 10, 10]);
    const [first] = of(report, "canner");
    expect(first?.uses).toEqual(["canner", "burner"]);
  });

  it("is never made ready for one food while another is in it", async () => {
    const report = await plan("crushed-tomatoes 28lb", "dilled-green-beans 8lb", ...NIGHT);
    const inside = report.tasks.filter(({ uses }) => uses.includes("canner"));
    inside.sort((a, b) => a.start.localeCompare(b.start));
    for (const [at, task] of inside.entries()) {
      for (const other of inside.slice(at + 1)) {
        const same = other.batch === task.batch && other.load === task.load;
        if (!same) expect(Date.parse(other.start)).toBeGreaterThanOrEqual(Date.parse(task.end));
      }
    }
  });

  it("leaves its burner to nothing else, also while it warms", async () => {
    const one = await plan("pickled-beets 7lb", "--burners", "1", ...NIGHT);
    expect(one.feasible).toBe(false);
    const two = await plan("pickled-beets 7lb", "--burners", "2", ...NIGHT);
    for (const task of two.tasks.filter(({ uses }) => uses.includes("burner"))) {
      const beside = two.tasks.filter(({ uses, start, end }) => {
        return uses.includes("burner") && start <= task.start && end > task.start;
      });
      expect(beside.length).toBeLessThanOrEqual(2);
    }
  });

  it("takes the second half of a hot pack, heated when the first is in", async () => {
    const report = await plan("snap-beans 14lb", ...NIGHT);
    expect(report).toMatchObject({ feasible: true, proved: true });
    const [, second] = of(report, "boil");
    const [first, next] = of(report, "process");
    expect(Date.parse(second?.start ?? "")).toBeGreaterThan(Date.parse(first?.start ?? ""));
    expect(Date.parse(second?.end ?? "")).toBeLessThanOrEqual(Date.parse(next?.start ?? ""));
  });

  it("has its heat turned off to the minute, and hands only where hands are", async () => {
    const [load] = of(await plan("dilled-green-beans 4lb"), "process");
    const at = load?.moments.map(({ what, at: when }) => `${what} ${clock(when)}`);
    // Five minutes of loading, twenty of come-up, fifteen of process; one, five, and out.
    expect(at).toEqual(["load 09:20", "heat-off 10:00", "lift-out 10:06"]);
    const hands = load?.attended.map(({ start, end }) => `${clock(start)} to ${clock(end)}`);
    expect(hands).toEqual(["09:20 to 09:25", "10:10 to 10:15"]);
  });
});

describe("the cook", () => {
  it("looks at a long simmer, and works on something else", async () => {
    const report = await plan("pickled-beets 7lb");
    const [cook] = of(report, "cook");
    expect(cook?.attended.map(({ start }) => start)).toEqual([cook?.start]);
    expect(cook?.moments.map(({ what }) => what)).toEqual(["look", "look", "look", "look"]);
  });

  it("leaves nothing on the heat while out, and goes on with it at a meal", async () => {
    const away = await plan("pickled-beets 7lb", "--away", "09:00-10:00", ...NIGHT);
    const meal = await plan("pickled-beets 7lb", "--meal", "09:00-10:00", ...NIGHT);
    const on = (report: Report) =>
      report.tasks.filter(({ uses, start, end }) => {
        return uses.includes("burner") && clock(start) < "10:00" && clock(end) > "09:00";
      });
    expect(on(away)).toEqual([]);
    expect(on(meal).length).toBeGreaterThan(0);
    expect(meal.minutes).toBeLessThan(away.minutes);
    for (const { tasks } of [away, meal]) {
      const hands = tasks.flatMap(({ attended }) => attended);
      for (const { start, end } of hands)
        expect(clock(start) >= "10:00" || clock(end) <= "09:00").toBe(true);
    }
  });

  it("does not leave cooked food standing over the night", async () => {
    const late = ["--start", "2027-08-14T19:00:00"];
    const { stdout } = await planCommand(
      ["pickled-beets 14lb", ...HERE, ...late, ...NIGHT, "--json"],
      io,
    );
    const report: Report = JSON.parse(stdout);
    const [cook] = of(report, "cook");
    const [peel] = of(report, "peel");
    expect(report.feasible).toBe(true);
    expect(Date.parse(peel?.start ?? "") - Date.parse(cook?.end ?? "")).toBeLessThanOrEqual(7.2e6);
    expect(cook?.start.slice(0, 10)).toBe(peel?.start.slice(0, 10));
  });

  it("is told what fits today where it is more than a day", async () => {
    const args = ["crushed-tomatoes 84lb", "pickled-beets 7lb", ...HERE, ...START, ...NIGHT];
    const hurried = { ...io, elapsedMs: () => performance.now() };
    const { stdout } = await planCommand([...args, "--json"], hurried);
    expect((JSON.parse(stdout) as Report).why[0]).toMatch(
      /^that is more than one day: without crushed tomatoes it fits, done by 1\d:\d\d$/,
    );
  });

  it("keeps the night by the wall on the day the clocks change", async () => {
    const args = ["sauerkraut 5lb", "pickled-beets 7lb", ...HERE, ...NIGHT, "--json"];
    for (const day of ["2027-03-13", "2027-11-06"]) {
      const late = ["--start", `${day}T20:00:00`];
      const { stdout } = await planCommand([...args, ...late], io);
      const report: Report = JSON.parse(stdout);
      const hands = report.tasks.flatMap(({ attended }) => attended);
      for (const { start, end } of hands) {
        const night = clock(start) < "06:30" || clock(start) >= "21:30" || clock(end) > "21:30";
        expect(night, `${start} to ${end}`).toBe(false);
      }
    }
  });
});

describe("the plan on the wall", () => {
  it("has rows by time, with what they use", async () => {
    const { stdout } = await planCommand(["dilled-green-beans 4lb", ...HERE, ...START], io);
    expect(stdout).toMatch(
      /09:20 {6}hands 5' {3}dilled green beans: jars into the canner {2}\[canner\]/,
    );
    expect(stdout).toMatch(/10:00 {17}dilled green beans: heat off/);
    expect(stdout).toMatch(/10:06 {6}hands 5' {3}dilled green beans: lift the jars out/);
    expect(stdout).toMatch(/brine \(15 min\) {2}\[burner 1, brine pot\]/);
  });

  it("is one page with a box to tick for each row", async () => {
    const args = ["dilled-green-beans 4lb", ...HERE, ...START];
    const { stdout } = await planCommand([...args, "--html", "-"], io);
    const text = (await planCommand(args, io)).stdout;
    const rows = text.split("\n").filter((line) => /^\d\d:\d\d /.test(line));
    expect(stdout.match(/\u2610/g)).toHaveLength(rows.length);
    expect(stdout).toContain("The plan for Saturday, August 14, 2027");
    expect(stdout).not.toMatch(/<script|https?:/);
  });
});
