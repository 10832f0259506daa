import { describe, expect, it } from "vitest";
import type { Command } from "../../src/kitchen/command.ts";
import type { PlannedItem } from "../../src/kitchen/events.ts";
import { historyOf } from "../../src/kitchen/events.ts";
import { allFilled, ready } from "../../src/kitchen/jars/lots.ts";
import type { State } from "../../src/kitchen/state.ts";
import { HOUR_MS } from "../../src/kitchen/time.ts";
import { EIGHT, saturdayKitchen } from "../scenarios/saturday-kitchen.ts";
import { DrawnCook } from "./drawn-cook.ts";

const PLAN =
  "plan eight pounds of Provider dilly beans, seven pounds of pickled beets and " +
  "six pounds of bread and butter pickles";
const SPREAD = 0.3;
const DAYS = 8;

function isOver(state: State): boolean {
  const loads = Object.values(state.loads);
  const batches = Object.values(state.batches);
  return (
    batches.length === 3 &&
    batches.every((batch) => allFilled(batch) && ready(batch) === 0) &&
    loads.every((load) => load.unloadedAt !== undefined)
  );
}

/** The day with the plan kept: begun by the kitchen, planned again as it goes. */
function kept(seed: number, patient: boolean): DrawnCook {
  const kitchen = saturdayKitchen();
  kitchen.session.hear(PLAN);
  kitchen.session.hear("yes");
  const cook = new DrawnCook(kitchen, seed, SPREAD, patient);
  cook.live(EIGHT + 20 * HOUR_MS, isOver);
  return cook;
}

/** The same plan as a timetable: each batch begun when it first said, and nothing planned again. */
function blind(seed: number): DrawnCook {
  const kitchen = saturdayKitchen();
  kitchen.session.hear(PLAN);
  kitchen.session.hear("yes");
  const [first] = historyOf(kitchen.session.state).filter((event) => event.type === "day-planned");
  const items: PlannedItem[] = first?.type === "day-planned" ? [...first.items] : [];
  kitchen.session.hear("drop the plan");
  const cook = new DrawnCook(kitchen, seed, SPREAD, true);
  for (const { recipe, variety, weightLb, beginAt } of items.sort(
    (a, b) => a.beginAt - b.beginAt,
  )) {
    cook.live(beginAt, () => false);
    const slots = { recipe, weightLb, ...(variety ? { variety } : {}) };
    const command = { intent: "begin", slots, confidence: 1 } as Command;
    if (beginAt > EIGHT) kitchen.session.carry({ wish: { command }, words: "" });
  }
  cook.live(EIGHT + 20 * HOUR_MS, isOver);
  return cook;
}

function hoursOf(cook: DrawnCook): number {
  expect(isOver(cook.kitchen.session.state)).toBe(true);
  return (cook.kitchen.session.now() - EIGHT) / HOUR_MS;
}

describe("days whose stages take as long as they like", () => {
  it("break no short window where the gate is kept, and end sooner when planned again", () => {
    const broken = { patient: 0, impatient: 0 };
    const hours = { kept: 0, blind: 0 };
    for (let seed = 1; seed <= DAYS; seed++) {
      const day = kept(seed, true);
      hours.kept += hoursOf(day);
      hours.blind += hoursOf(blind(seed));
      if (day.brokenWindows().length > 0) broken.patient += 1;
      if (kept(seed, false).brokenWindows().length > 0) broken.impatient += 1;
    }
    expect(broken.patient).toBe(0);
    expect(broken.impatient).toBeGreaterThan(DAYS / 4);
    expect(hours.kept).toBeLessThan(hours.blind);
  }, 300_000);
});
