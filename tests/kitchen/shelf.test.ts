/** What is said of jars that are put by: opened, found bad, tasted; and what undo makes of it. */
import { beforeAll, describe, expect, it } from "vitest";
import type { Intent, SlotsOf } from "../../src/kitchen/command.ts";
import { decide } from "../../src/kitchen/decide/decide.ts";
import type { Outcome } from "../../src/kitchen/decide/outcome.ts";
import type { KitchenEvent } from "../../src/kitchen/events.ts";
import { apply, replay } from "../../src/kitchen/evolve.ts";
import { jarCounts } from "../../src/kitchen/jars.ts";
import type { Batch, State } from "../../src/kitchen/state.ts";
import { HOUR_MS } from "../../src/kitchen/time.ts";
import { moved, opening, playedEvents } from "../review/demo-season.ts";
import { theLibrary } from "../scenarios/play.ts";
import { commandOf, told } from "./story.ts";

const BEANS = { recipe: "dilled-green-beans", variety: "Provider", weightLb: 4, jar: "pint" };
const WEEK_HOURS = 24 * 7;

let beans: KitchenEvent[];

beforeAll(async () => {
  beans = moved(await playedEvents(theLibrary(), { ...BEANS, jar: "pint" }), 0, 1);
});

/** A kitchen some hours after the last word about a batch of beans that is on the shelf. */
class Shelf {
  readonly state: State;
  readonly batch: Batch;
  private now: number;
  private said = 0;

  constructor(hours: number) {
    this.state = replay([...opening(beans[0]?.t ?? 0), ...beans]);
    this.batch = Object.values(this.state.batches)[0] as Batch;
    this.now = this.state.lastW + hours * HOUR_MS;
  }

  says<I extends Intent>(intent: I, slots: SlotsOf[I]): Outcome {
    const wish = { command: commandOf(this.state, intent, slots) };
    this.now += 1000;
    const outcome = decide(this.state, wish, this.now, theLibrary());
    this.said += 1;
    for (const fact of outcome.kind === "done" ? outcome.facts : []) {
      apply(this.state, { ...fact, cmd: `c${this.said}`, w: this.now } as KitchenEvent);
    }
    return outcome;
  }
}

describe("a jar taken off the shelf", () => {
  it("is counted, in the size it was put up in", () => {
    const shelf = new Shelf(WEEK_HOURS);
    expect(told(shelf.says("opened", { target: "beans", count: 2, size: "pint" }))).toEqual([
      "jar-opened",
    ]);
    expect(told(shelf.says("opened", { target: "beans", size: "quart" }))).toMatch(
      /put up in pint jars/,
    );
    expect(shelf.state.openedJars).toMatchObject([{ count: 2, spoiled: false }]);
  });

  it("is at least one, and no more than are left", () => {
    const shelf = new Shelf(WEEK_HOURS);
    expect(told(shelf.says("opened", { target: "beans", count: 0 }))).toMatch(/How many/);
    expect(told(shelf.says("opened", { target: "beans", count: 40 }))).toMatch(/Only \d+/);
  });

  it("is down as spoiled where it was bad, and the old seal check stands", () => {
    const shelf = new Shelf(WEEK_HOURS);
    const { sealed } = jarCounts(shelf.state, shelf.batch);
    shelf.says("opened", { target: "beans", spoiled: true });
    expect(shelf.state.openedJars.map((one) => one.spoiled)).toEqual([true]);
    expect(jarCounts(shelf.state, shelf.batch)).toMatchObject({ sealed, failed: 0 });
  });

  it("cannot be found unsealed once all were eaten", () => {
    const shelf = new Shelf(WEEK_HOURS);
    shelf.says("opened", { target: "beans", count: jarCounts(shelf.state, shelf.batch).sealed });
    expect(told(shelf.says("seal-failed", { target: "beans", count: 1 }))).toMatch(/Only 0/);
  });

  it("is a failed seal where it is found on the day of the seal check", () => {
    const shelf = new Shelf(2);
    expect(told(shelf.says("opened", { target: "beans", spoiled: true }))).toContain("seal-failed");
    expect(jarCounts(shelf.state, shelf.batch).failed).toBe(1);
  });
});

describe("undo after a word about the shelf", () => {
  it("takes that word back, whatever batch is in focus", () => {
    const shelf = new Shelf(WEEK_HOURS);
    shelf.says("begin", { recipe: "pickled-beets", variety: "Chioggia", weightLb: 7 });
    shelf.says("done", {});
    shelf.says("opened", { target: "provider" });
    expect(shelf.state.openedJars).toHaveLength(1);
    expect(told(shelf.says("undo", {}))).toEqual(["withdrawn"]);
    expect(shelf.state.openedJars).toEqual([]);
    expect(shelf.state.batches[shelf.batch.id]?.state).toBe("complete");
  });
});

describe("a score", () => {
  it("goes from one to five", () => {
    const shelf = new Shelf(WEEK_HOURS);
    expect(told(shelf.says("taste", { target: "beans", crunch: 6 }))).toMatch(/from 1 to 5/);
    expect(told(shelf.says("taste", { target: "beans", crunch: 0 }))).toMatch(/from 1 to 5/);
    shelf.says("taste", { target: "beans", taster: "anna", crunch: 5 });
    expect(shelf.state.tastings).toMatchObject([{ taster: "anna", scores: { crunch: 5 } }]);
  });
});
