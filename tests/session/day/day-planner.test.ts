import { describe, expect, it } from "vitest";
import type { KitchenEvent } from "../../../src/kitchen/events.ts";
import { MINUTE_MS } from "../../../src/kitchen/time.ts";
import { review } from "../../../src/review/batch-log.ts";
import { nextAction } from "../../../src/session/rehearsal/ideal-cook.ts";
import type { MadeUpKitchen } from "../../../src/session/rehearsal/made-up-kitchen.ts";
import { EIGHT, saturdayKitchen } from "../../scenarios/saturday-kitchen.ts";

const PLAN = "plan eight pounds of Provider dilly beans and seven pounds of pickled beets";

function planned(): MadeUpKitchen {
  const kitchen = saturdayKitchen();
  kitchen.session.hear(PLAN);
  kitchen.session.hear("yes");
  return kitchen;
}

/** The ideal cook works on for a given time. */
function cook(kitchen: MadeUpKitchen, minutes: number): void {
  const end = kitchen.session.now() + minutes * MINUTE_MS;
  for (let now = kitchen.session.now(); now < end; now = kitchen.session.now()) {
    const action = nextAction(kitchen.session.state, now, 6200);
    const at = Math.min(end, action?.at ?? end);
    const wake = kitchen.clock.untilNextTimer() ?? Number.POSITIVE_INFINITY;
    kitchen.clock.advance(Math.max(0, Math.min(at - now, wake)));
    if (action && action.at <= kitchen.session.now()) kitchen.session.carry(action);
  }
}

function said(kitchen: MadeUpKitchen, words: RegExp): string[] {
  return kitchen.lines.filter((line) => words.test(line.text)).map((line) => line.text);
}

function begunAt(kitchen: MadeUpKitchen, recipe: string): number | undefined {
  const batches = Object.values(kitchen.session.state.batches);
  return batches.find((batch) => batch.recipe.id === recipe)?.begunAt;
}

function beetsAt(kitchen: MadeUpKitchen): number {
  const item = kitchen.session.state.dayPlan?.items.find((one) => one.recipe === "pickled-beets");
  return item?.beginAt ?? Number.NaN;
}

function plans(kitchen: MadeUpKitchen) {
  return kitchen.session.state.history.filter(
    (event): event is Extract<KitchenEvent, { type: "day-planned" }> =>
      event.type === "day-planned",
  );
}

describe("a day that is asked for", () => {
  it("is described in a few sentences, with what limits it, and begun after a yes", () => {
    const kitchen = saturdayKitchen();
    const { lines, refused } = kitchen.session.hear(`${PLAN}, done by six`);
    expect(refused).toBe(false);
    expect(lines.join(" ")).toMatch(
      /Begin the Provider dilled green beans now, and the pickled beets at/,
    );
    expect(lines.join(" ")).toMatch(/a second canner would save/);
    expect(lines.join(" ")).toMatch(/Shall I begin it\?$/);
    expect(kitchen.session.state.dayPlan).toBeNull();
    kitchen.session.hear("yes");
    expect(begunAt(kitchen, "dilled-green-beans")).toBe(EIGHT);
    expect(begunAt(kitchen, "pickled-beets")).toBeUndefined();
    expect(beetsAt(kitchen)).toBeGreaterThan(EIGHT);
  });

  it("is done by the evening, where that is what the morning means", () => {
    const { lines } = saturdayKitchen().session.hear(
      "plan seven pounds of pickled beets, done by nine",
    );
    expect(lines.join(" ")).toMatch(/The jars are out by/);
  });

  it("says what fits today where it is more than a day", () => {
    const noon = ", quiet from twelve to six";
    const { lines, refused } = saturdayKitchen().session.hear(
      `plan eight pounds of dilly beans and seven pounds of pickled beets${noon}`,
    );
    expect(refused).toBe(true);
    expect(lines.join(" ")).toMatch(
      /That is more than one day: without dilled green beans it fits/,
    );
  });

  it("is not begun after a no, and may still be begun on request", () => {
    const kitchen = saturdayKitchen();
    kitchen.session.hear(PLAN);
    kitchen.session.hear("no");
    expect(kitchen.session.state.dayPlan).toBeNull();
    kitchen.session.hear("start the plan");
    expect(kitchen.session.state.dayPlan?.items).toHaveLength(1);
  });

  it.each([
    ["plan the day", /Nothing is running/],
    ["plan zero pounds of pickled beets", /0 pounds can't be right/],
    [
      "plan seven pounds of pickled beets and eight pounds of pickled beets",
      /two lots of pickled beets/,
    ],
    ["plan seven pounds of pickled beets, done by nine in the morning", /No plan fits/],
  ])("refuses %j with the reason", (words, reason) => {
    const { refused, lines } = saturdayKitchen().session.hear(words);
    expect(refused).toBe(true);
    expect(lines.join(" ")).toMatch(reason);
  });

  it("takes account of what is running", () => {
    const kitchen = saturdayKitchen();
    kitchen.session.hear("start seven pounds of pickled beets");
    const { lines } = kitchen.session.hear("plan the day");
    expect(lines.join(" ")).toMatch(/The jars are out by .* Shall I keep to it\?/);
  });
});

describe("a plan that is kept", () => {
  it("begins each batch at its time, said once", () => {
    const kitchen = planned();
    const at = beetsAt(kitchen);
    cook(kitchen, (at - EIGHT) / MINUTE_MS + 60);
    const last = plans(kitchen).findLast((event) => event.items.length > 0)?.items[0]?.beginAt;
    expect(begunAt(kitchen, "pickled-beets")).toBe(last);
    expect(said(kitchen, /Time to begin the pickled beets, by the plan\./)).toHaveLength(1);
    expect(said(kitchen, /Trim the tops to an inch/)).toHaveLength(1);
  });

  it("moves what has not begun when a stage runs late, and says by how much once", () => {
    const kitchen = planned();
    const before = beetsAt(kitchen);
    cook(kitchen, 20);
    kitchen.clock.advance(85 * MINUTE_MS);
    expect(begunAt(kitchen, "pickled-beets")).toBeUndefined();
    expect(beetsAt(kitchen)).toBeGreaterThan(before + 10 * MINUTE_MS);
    const late = said(kitchen, /^The day runs about .* late: done by/);
    expect(late.length).toBeGreaterThan(0);
    expect(new Set(late).size).toBe(late.length);
  });

  it("does not plan again while the day goes as planned", () => {
    const kitchen = planned();
    cook(kitchen, 30);
    expect(said(kitchen, /^The day runs about/)).toEqual([]);
  });

  it("outlives a crash", () => {
    const kitchen = planned();
    const at = beetsAt(kitchen);
    cook(kitchen, 15);
    kitchen.crash();
    expect(Math.abs(beetsAt(kitchen) - at)).toBeLessThan(30 * MINUTE_MS);
    cook(kitchen, (at - EIGHT) / MINUTE_MS + 60);
    expect(begunAt(kitchen, "pickled-beets")).toBeGreaterThan(EIGHT);
    expect(said(kitchen, /Time to begin the pickled beets/)).toHaveLength(1);
  });

  it("begins nothing behind the cook's back after hours in which nobody was there", () => {
    const kitchen = planned();
    cook(kitchen, 15);
    kitchen.crash(5 * 60 * MINUTE_MS);
    expect(begunAt(kitchen, "pickled-beets")).toBeUndefined();
    expect(said(kitchen, /By the plan the pickled beets were to begin/)).toHaveLength(1);
    kitchen.session.hear("start seven pounds of pickled beets");
    expect(begunAt(kitchen, "pickled-beets")).toBe(kitchen.session.now());
    expect(kitchen.session.state.dayPlan?.items ?? []).toEqual([]);
  });

  it("begins nothing more once it is dropped", () => {
    const kitchen = planned();
    const { lines } = kitchen.session.hear("drop the plan");
    expect(lines).toContain("The plan is dropped. What has begun goes on.");
    cook(kitchen, 6 * 60);
    expect(begunAt(kitchen, "pickled-beets")).toBeUndefined();
    expect(kitchen.session.hear("drop the plan").refused).toBe(true);
  });

  it("leaves a batch alone if a person begins it sooner", () => {
    const kitchen = planned();
    cook(kitchen, 5);
    kitchen.session.hear("start seven pounds of pickled beets");
    expect(kitchen.session.state.dayPlan?.items).toEqual([]);
    cook(kitchen, 4 * 60);
    const beets = Object.values(kitchen.session.state.batches).filter(
      (batch) => batch.recipe.id === "pickled-beets",
    );
    expect(beets).toHaveLength(1);
  });

  it("is over with the last jars out of the canner", () => {
    const kitchen = planned();
    cook(kitchen, 9 * 60);
    expect(said(kitchen, /That was the last of the day's plan\./)).toHaveLength(1);
    expect(kitchen.session.state.dayPlan).toBeNull();
  });

  it("is the same to the byte when the same day is lived again", () => {
    const journals = [planned(), planned()].map((kitchen) => {
      cook(kitchen, 240);
      return JSON.stringify(kitchen.session.state.history);
    });
    expect(journals[0]).toBe(journals[1]);
  });
});

describe("a plan that was agreed to", () => {
  const batchOf = (kitchen: MadeUpKitchen, recipe: string) =>
    Object.values(kitchen.session.state.batches).find((batch) => batch.recipe.id === recipe);

  it("is a fact for each step, and stands beside what happened", () => {
    const kitchen = planned();
    const [first] = plans(kitchen);
    expect(first?.steps?.filter(({ stage }) => stage === "process")).toHaveLength(3);
    const beans = batchOf(kitchen, "dilled-green-beans");
    const trim = beans?.agreed?.find(({ stage }) => stage === "trim");
    expect(trim?.from).toBeGreaterThanOrEqual(EIGHT);
    cook(kitchen, 7 * 60);
    const beets = batchOf(kitchen, "pickled-beets");
    const steps = first?.steps?.filter(({ stage, from }) => stage === "peel" && from > EIGHT);
    expect(beets?.agreed?.find(({ stage }) => stage === "peel")?.from).toBe(steps?.[0]?.from);
    const { state } = kitchen.session;
    const [log] = review(state, kitchen.session.now(), beets ? [beets] : []).batches;
    const peel = log?.stages.find(({ id }) => id === "peel");
    expect(Date.parse(peel?.agreed?.from ?? "")).toBe(steps?.[0]?.from);
  });

  it("is not moved by planning again", () => {
    const kitchen = planned();
    const agreed = batchOf(kitchen, "dilled-green-beans")?.agreed;
    cook(kitchen, 20);
    kitchen.clock.advance(85 * MINUTE_MS);
    expect(plans(kitchen).length).toBeGreaterThan(1);
    expect(batchOf(kitchen, "dilled-green-beans")?.agreed).toEqual(agreed);
    const { lines } = kitchen.session.hear("how do we stand");
    expect(lines.join(" ")).toMatch(/late: done by .* behind\./);
  });

  it("is changed in words", () => {
    const kitchen = saturdayKitchen();
    kitchen.session.hear(`${PLAN} and six pounds of bread and butter pickles`);
    kitchen.session.hear("yes");
    const times = () =>
      ["bread-and-butter-pickles", "pickled-beets", "dilled-green-beans"].map((recipe) => {
        return kitchen.session.state.dayPlan?.items.find((one) => one.recipe === recipe)?.beginAt;
      });
    const before = times();
    const [early, late] = before
      .flatMap((at, n) => (at === undefined ? [] : [n]))
      .sort((a, b) => {
        return (before[a] ?? 0) - (before[b] ?? 0);
      });
    const name = (n = 0) => ["the bread and butter pickles", "the beets", "the dilly beans"][n];
    expect(late).toBeDefined();
    kitchen.session.hear(`swap ${name(early)} and ${name(late)}`);
    const swapped = times();
    expect(swapped[late ?? 0]).toBeLessThan(swapped[early ?? 0] ?? 0);
    kitchen.session.hear(`do ${name(late)} later`);
    expect(times()[late ?? 0]).toBeGreaterThanOrEqual((swapped[late ?? 0] ?? 0) + 60 * MINUTE_MS);
    kitchen.session.hear(`drop ${name(early)} from the plan`);
    expect(times()[early ?? 0]).toBeUndefined();
    expect(kitchen.session.hear("drop the sauerkraut from the plan").refused).toBe(true);
  });
});

describe("lots of one recipe", () => {
  const LOTS =
    "plan four pounds of Provider dilly beans, three pounds of Dragon Tongue dilly beans, " +
    "three pounds of Blue Lake dilly beans and seven pounds of pickled beets";

  it("begin together, and it is said what that saves", () => {
    const kitchen = saturdayKitchen();
    const told = kitchen.session.hear(LOTS).lines.join(" ");
    expect(told).toMatch(/the Provider, Dragon Tongue and Blue Lake dilled green beans now/);
    expect(told).toMatch(/Sharing pots saves \d+ minutes of work and no load/);
    kitchen.session.hear("yes");
    const { batches } = kitchen.session.state;
    expect(Object.values(batches).map(({ lots }) => lots.map(({ variety }) => variety))).toEqual([
      ["Provider", "Dragon Tongue", "Blue Lake"],
    ]);
  });
});
