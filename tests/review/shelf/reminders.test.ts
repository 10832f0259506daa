import { describe, expect, it } from "vitest";
import { comeDue } from "../../../src/kitchen/agenda.ts";
import { nextMatch } from "../../../src/kitchen/cron.ts";
import type { KitchenEvent } from "../../../src/kitchen/events.ts";
import { historyOf } from "../../../src/kitchen/events.ts";
import { replay } from "../../../src/kitchen/evolve.ts";
import type { State } from "../../../src/kitchen/state.ts";
import { isoWithOffset } from "../../../src/kitchen/time.ts";
import { dayAndTime } from "../../../src/review/day-and-time.ts";
import { kitchenMark, revision, upcoming } from "../../../src/review/shelf/reminders.ts";
import { play, theLibrary } from "../../scenarios/play.ts";

const ZONE = "America/Denver";
const DAY_MS = 86_400_000;

/** The state a script leads to, and the moment of its last event. */
async function kitchenAfter(
  recipe: string,
  script: string | undefined,
  from = "2027-08-14T08:00:00",
) {
  const played = await play(recipe, script, { altitude: "6200ft", from });
  const events = played.journal.map(({ at: _at, written: _written, ...event }) => event);
  const state = replay(events as unknown as KitchenEvent[]);
  return { state, now: state.lastW };
}

function listed(state: State, now: number, days: number) {
  return upcoming(state, now, days).map(({ at, title, overdue }) => {
    return `${isoWithOffset(at, ZONE).slice(0, 16)} ${overdue ? "! " : ""}${title}`;
  });
}

function add(state: State, ...facts: object[]): State {
  const t = state.lastW + 1000;
  const events = facts.map((fact, index) => ({ cmd: `x${index}`, t, w: t, ...fact }));
  return replay([...historyOf(state), ...(events as KitchenEvent[])]);
}

describe("what is coming", () => {
  it("has every check of a ferment when its recipe says, across a clock change", async () => {
    const { state, now } = await kitchenAfter(
      "sauerkraut",
      "+0:00 [cook until ferment]",
      "2027-10-22T08:00:00",
    );
    const checks = upcoming(state, now, 24).filter((one) => one.title.startsWith("Look at"));
    const times = checks.map(({ at }) => isoWithOffset(at, ZONE));
    expect(times.slice(0, 2)).toEqual(["2027-10-25T09:00:00-06:00", "2027-10-27T09:00:00-06:00"]);
    expect(times).toContain("2027-11-05T09:00:00-06:00");
    expect(times).toContain("2027-11-08T09:00:00-07:00");
    expect(checks[0]?.detail).toContain("under the brine");
    expect(new Set(checks.map(({ id }) => id)).size).toBe(checks.length);
  });

  it("says when a ferment may be ready and when it must go on, once each", async () => {
    const { state, now } = await kitchenAfter("cucumber-seed", "+0:00 [cook until ferment]");
    const lines = listed(state, now, 10).filter((line) => !line.includes("Look at"));
    expect(lines).toEqual([
      "2027-08-15T08:20 May be ready: the cucumber seed, ferment",
      "2027-08-17T08:20 Go on: the cucumber seed, ferment",
    ]);
  });

  it("has seals of jars that cool overnight checked next morning, marks overdue ones", async () => {
    const { state, now } = await kitchenAfter(
      "dilled-green-beans",
      "+0:00 [cook until cool]",
      "2027-08-14T14:00:00",
    );
    const [seals] = upcoming(state, now, 2).filter((one) =>
      one.title.startsWith("Check the seals"),
    );
    expect(seals && isoWithOffset(seals.at, ZONE)).toBe("2027-08-15T06:30:00-06:00");
    expect(seals?.batch).toBe(Object.keys(state.batches)[0]);
    expect(seals?.detail).toMatch(/only until Sun Aug 15 2027, \d+:\d\d PM\.$/);
    const late = upcoming(state, now + 1.5 * DAY_MS, 2);
    expect(late.find((one) => one.id === seals?.id)?.overdue).toBe(true);
  });

  it("keeps the quiet hours, but for what people asked for", async () => {
    const script = "+0:00 [cook until ferment]\n+0:01 remind me tomorrow at 5am to light the stove";
    const { state: usual, now } = await kitchenAfter("sauerkraut", script);
    const longer = { fromMinute: 21 * 60, toMinute: 10 * 60 };
    const state = add(usual, { type: "kitchen-set", quiet: longer });
    const lines = listed(state, now, 5);
    expect(lines.filter((line) => line.includes("Look at"))).toEqual([
      "2027-08-16T10:00 Look at the sauerkraut",
      "2027-08-18T10:00 Look at the sauerkraut",
    ]);
    expect(lines).toContain("2027-08-15T05:00 light the stove");
    const rings = comeDue(state, Date.parse("2027-08-16T09:59:00-06:00"));
    expect(rings.some((one) => "key" in one && one.key.includes("check"))).toBe(false);
    const none = add(usual, { type: "kitchen-set", quiet: null });
    expect(listed(none, now, 5)).toContain("2027-08-16T09:00 Look at the sauerkraut");
  });

  it("dates jars and seed after a long night, not in it", async () => {
    const { state: usual, now } = await kitchenAfter("bread-and-butter-pickles", undefined);
    const quiet = { fromMinute: 20 * 60, toMinute: 9 * 60 + 30 };
    const dates = listed(add(usual, { type: "kitchen-set", quiet }), now, 500);
    expect(dates.some((line) => /T09:30 Ready to open/.test(line))).toBe(true);
    expect(dates.some((line) => /T09:30 Best by/.test(line))).toBe(true);
    expect(dates.filter((line) => /T09:00/.test(line))).toEqual([]);
  });

  it("has jars ready to open and best by, each on its morning, while there are any", async () => {
    const { state, now } = await kitchenAfter("bread-and-butter-pickles", undefined);
    const dates = listed(state, now, 500);
    expect(dates.some((line) => /T09:00 Ready to open: the bread-and-butter/i.test(line))).toBe(
      true,
    );
    expect(dates.some((line) => /^2028-08-\d\dT09:00 Best by: the bread/.test(line))).toBe(true);
    const [batch] = Object.values(state.batches);
    const eaten = add(state, { type: "jar-opened", batch: batch?.id, count: 99, spoiled: false });
    expect(listed(eaten, now, 500)).toEqual([]);
  });

  it("has seed tested in spring, every spring until it was", async () => {
    const { state, now } = await kitchenAfter("cucumber-seed", undefined, "2027-09-01T08:00:00");
    const test = (of: State, at = now, days = 400) =>
      listed(of, at, days).filter((line) => line.includes("Test the seed"));
    expect(test(state)).toEqual(["2028-03-01T09:00 Test the seed: the cucumber seed"]);
    const [batch] = Object.keys(state.batches);
    const lot = { crop: "cucumber", variety: "Poinsett", isolation: null, fermentDays: 2 };
    const rest = { dryWeightG: 12, storage: null, batch };
    const kept = add(state, { type: "seed-saved", seed: "S1", ...lot, ...rest });
    expect(test(kept)).toEqual(["2028-03-01T09:00 Test the seed: Poinsett cucumber"]);
    const spring = Date.parse("2028-03-10T12:00:00Z");
    const tested = add(
      { ...kept, lastW: spring },
      { type: "germination", seed: "S1", sprouted: 9, of: 10, days: 6 },
    );
    expect(test(tested, spring + DAY_MS)).toEqual([
      "2029-03-01T09:00 Test the seed: Poinsett cucumber",
    ]);
  });

  it("has what people asked to be reminded of, until it is answered", async () => {
    const script = `
0:01 remind me tomorrow morning at nine to wipe the jars
0:02 remind me sunday evening at six to call about the crate of beets
`;
    const { state, now } = await kitchenAfter("cucumber-seed", script);
    const own = (at: number) => listed(state, at, 3).filter((line) => /wipe|beets/.test(line));
    expect(own(now)).toEqual([
      "2027-08-15T09:00 wipe the jars",
      "2027-08-15T18:00 call about the crate of beets",
    ]);
    const rung = await kitchenAfter("cucumber-seed", `${script}+30:00 what's running`);
    expect(listed(rung.state, rung.now, 3).filter((line) => /wipe/.test(line))).toEqual([
      expect.stringMatching(/^2027-08-15T09:00 ! wipe the jars$/),
    ]);
    const answered = await kitchenAfter(
      "cucumber-seed",
      `${script}+30:00 got it\n+0:01 got it\n+0:01 got it`,
    );
    expect(listed(answered.state, answered.now, 3).filter((line) => /wipe/.test(line))).toEqual([]);
  });

  it("leaves out what a canner or a timer will ring for today", async () => {
    const { state, now } = await kitchenAfter(
      "dilled-green-beans",
      "+0:00 timer for ten minutes\n+0:00 [cook until process]",
    );
    expect(listed(state, now, 30)).toEqual([]);
  });

  it("identifies a kitchen by its first moment, and counts corrections", async () => {
    const { state } = await kitchenAfter("cucumber-seed", "0:20 done\n0:25 undo");
    expect(kitchenMark(state)).toMatch(/^[0-9a-z]+$/);
    expect(revision(state)).toBe(1);
  });

  it("writes a moment with its day and clock", () => {
    expect(dayAndTime(Date.parse("2027-12-31T23:05:00-07:00"), ZONE)).toBe(
      "Fri Dec 31 2027, 11:05 PM",
    );
    expect(dayAndTime(Date.parse("2027-08-14T06:00:00Z"), ZONE)).toBe("Sat Aug 14 2027, 12:00 AM");
  });
});

describe("the recurring checks of the recipes", () => {
  it("are caught up where the clocks skip their minute", () => {
    const at = nextMatch("30 2 * * *", Date.parse("2027-03-14T00:00:00-07:00"), ZONE);
    expect(at && isoWithOffset(at, ZONE)).toBe("2027-03-14T03:30:00-06:00");
  });

  it("come at the minutes an independent cron finds, across a clock change", async () => {
    const cron = await import("node-cron");
    const { vi } = await import("vitest");
    const expressions = new Set(
      [...theLibrary().recipes.values()].flatMap((recipe) =>
        recipe.stages.flatMap((stage) => (stage.checks ?? []).map((check) => check.cron)),
      ),
    );
    expect(expressions.size).toBeGreaterThan(1);
    vi.useFakeTimers();
    try {
      for (const expression of [...expressions, "30 1 * * *", "15,45 6-8/2 * 3,11 *"]) {
        expect(cron.validate(expression)).toBe(true);
        for (const day of [
          "2027-03-12T10:11:12Z",
          "2027-11-05T03:04:05Z",
          "2027-08-14T14:00:00Z",
        ]) {
          let at = Date.parse(day);
          for (let turn = 0; turn < 4; turn++) {
            vi.setSystemTime(at);
            const task = cron.schedule(expression, () => {}, { timezone: ZONE });
            const theirs = task.getNextRun()?.getTime();
            const ours = nextMatch(expression, at, ZONE);
            expect({ expression, ours }).toEqual({ expression, ours: theirs });
            task.destroy();
            at = ours ?? 0;
          }
        }
      }
    } finally {
      vi.useRealTimers();
    }
  });
});
