/** What is reported about jars in store: opened, found bad, tasted; and how undo treats it. */
import { beforeAll, describe, expect, it } from "vitest";
import type { Intent, SlotsOf } from "../../src/kitchen/command.ts";
import { decide } from "../../src/kitchen/decide/decide.ts";
import type { Decision } from "../../src/kitchen/decide/decision.ts";
import type { KitchenEvent } from "../../src/kitchen/events.ts";
import { apply, replay } from "../../src/kitchen/evolve.ts";
import { countTrouble, jarCounts } from "../../src/kitchen/jars/canner-room.ts";
import { questions } from "../../src/kitchen/questions/questions.ts";
import type { Batch, State } from "../../src/kitchen/state.ts";
import { HOUR_MS } from "../../src/kitchen/time.ts";
import { disposalWords, SCUM_WORDS } from "../../src/recipe/cautions.ts";
import { batchLog } from "../../src/review/batch-log.ts";
import { moved, opening, playedEvents } from "../review/demo-season.ts";
import { allSaid, onlyBatch, play, theLibrary } from "../scenarios/play.ts";
import { commandOf, told } from "./story.ts";

const BEANS = { recipe: "dilled-green-beans", variety: "Provider", weightLb: 4, jar: "pint" };
const WEEK_HOURS = 24 * 7;

let beans: KitchenEvent[];

beforeAll(async () => {
  beans = moved(await playedEvents(theLibrary(), { ...BEANS, jar: "pint" }), 0, 1);
});

/** A kitchen some hours after the last report about a batch of beans that is on the shelf. */
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

  says<I extends Intent>(intent: I, slots: SlotsOf[I]): Decision {
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

function opened({ state, batch: { id } }: Shelf): number {
  const lots = state.batches[id]?.lots ?? [];
  return lots.flatMap(({ jars }) => jars).filter((jar) => jar.left?.what === "opened").length;
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
    expect(opened(shelf)).toBe(2);
  });

  it("is at least one, and no more than are left", () => {
    const shelf = new Shelf(WEEK_HOURS);
    expect(told(shelf.says("opened", { target: "beans", count: 0 }))).toMatch(/How many/);
    expect(told(shelf.says("opened", { target: "beans", count: 40 }))).toMatch(/Only \d+/);
  });

  it("cannot be found unsealed once all were eaten", () => {
    const shelf = new Shelf(WEEK_HOURS);
    shelf.says("opened", { target: "beans", count: jarCounts(shelf.state, shelf.batch).sealed });
    expect(told(shelf.says("seal-failed", { target: "beans", count: 1 }))).toMatch(/Only 0/);
  });
});

describe("a spoiled jar", () => {
  const counts = (shelf: Shelf) => jarCounts(shelf.state, shelf.batch);

  it.each(["bulged", "leaked", "spurted", "off", "moldy"] as const)(
    "is no seal failure and no food, however soon it is found: %s",
    (sign) => {
      for (const hours of [2, WEEK_HOURS]) {
        const shelf = new Shelf(hours);
        const { sealed } = counts(shelf);
        expect(told(shelf.says("spoiled", { target: "beans", sign }))).toEqual(["spoiled"]);
        expect(counts(shelf)).toMatchObject({ sealed: sealed - 1, failed: 0, spoiled: 1 });
        expect(countTrouble(shelf.state, shelf.batch)).toBeUndefined();
        const waiting = questions(shelf.state).map((one) => one.kind);
        expect(waiting).not.toContain("disposition");
      }
    },
  );

  it("is never counted as eaten, nor can it be eaten afterwards", () => {
    const shelf = new Shelf(WEEK_HOURS);
    const { sealed } = counts(shelf);
    shelf.says("spoiled", { target: "beans", count: 2, sign: "leaked" });
    expect(opened(shelf)).toBe(0);
    expect(told(shelf.says("opened", { target: "beans", count: sealed - 1 }))).toMatch(/Only/);
    expect(told(shelf.says("opened", { target: "beans", count: sealed - 2 }))).toEqual([
      "jar-opened",
    ]);
  });

  it("no longer counts as failed if it was, and is not offered for reprocessing", () => {
    const shelf = new Shelf(2);
    shelf.says("seal-failed", { target: "beans", jars: [3] });
    shelf.says("spoiled", { target: "beans", jars: [3], sign: "bulged" });
    expect(counts(shelf)).toMatchObject({ failed: 0, spoiled: 1 });
    expect(told(shelf.says("disposition", { what: "reprocess" }))).toMatch(/No jars are waiting/);
    expect(told(shelf.says("spoiled", { target: "beans", jars: [3], sign: "off" }))).toMatch(
      /down as spoiled already/,
    );
  });

  it("that only came open is a failed seal on the day of the check, and spoiled later", () => {
    const early = new Shelf(2);
    expect(told(early.says("spoiled", { target: "beans", sign: "unsealed" }))).toContain(
      "seal-failed",
    );
    const late = new Shelf(WEEK_HOURS);
    expect(told(late.says("spoiled", { target: "beans", sign: "unsealed" }))).toEqual(["spoiled"]);
  });

  it("is at least one, one of those that existed, and no more than are left", () => {
    const shelf = new Shelf(WEEK_HOURS);
    const says = (more: object) => {
      return told(shelf.says("spoiled", { target: "beans", sign: "off", ...more }));
    };
    expect(says({ count: 0 })).toMatch(/How many/);
    expect(says({ count: 40 })).toMatch(/Only \d+/);
    expect(says({ jars: [99] })).toMatch(/no jar 99/);
    expect(says({ target: "marmalade" })).toMatch(/no jars of that/);
  });

  it("is taken back only with a yes that names it", () => {
    const shelf = new Shelf(WEEK_HOURS);
    shelf.says("spoiled", { target: "beans", sign: "off" });
    expect(told(shelf.says("undo", {}))).toMatch(/Take back the spoiled jar .*count as food again/);
  });

  it("of an older journal, where it was opened and bad, counts the same", () => {
    const shelf = new Shelf(WEEK_HOURS);
    const { sealed } = counts(shelf);
    const { lastW } = shelf.state;
    const old = { type: "jar-opened", batch: shelf.batch.id, count: 1, spoiled: true } as const;
    apply(shelf.state, { ...old, cmd: "c1.old", t: lastW, w: lastW });
    expect(counts(shelf)).toMatchObject({ sealed: sealed - 1, spoiled: 1 });
    expect(opened(shelf)).toBe(0);
  });

  it("stands in the review with its fate, and no verdict changes by it", () => {
    const shelf = new Shelf(WEEK_HOURS);
    const log = () => batchLog(shelf.state, shelf.batch, shelf.state.lastW);
    const { verdict } = log();
    shelf.says("spoiled", { target: "beans", jars: [2], sign: "moldy" });
    expect(log()).toMatchObject({
      verdict,
      jars: { spoiled: 1 },
      spoiled: [{ fate: "spoiled", count: 1, jars: [2], sign: "moldy" }],
    });
  });
});

describe("what is said of a spoiled jar", () => {
  it.each([
    ["low-acid", true, /leave it shut[\s\S]*heavy bag/],
    ["low-acid", false, /boil 30 minutes/],
    ["tomato", false, /boil 30 minutes/],
    ["acidified", false, /boil 30 minutes/],
    ["acid", false, /^Do not taste it. Throw it out/],
    ["jam", true, /^Do not taste it. Throw it out/],
    ["ferment", false, /^Do not taste it. Throw it out/],
  ] as const)(
    "is how food of its class is got rid of: %s, still sealed %s",
    (food, shut, words) => {
      expect(disposalWords(food, shut)).toMatch(words);
      expect(disposalWords(food, shut)).toContain("Do not taste it");
    },
  );

  it("is said once it is written down", async () => {
    const played = await play(
      "dilled-green-beans",
      "0:00 [cook until cool]\n+2:00 jar 3 is leaking\n+12:00 [cook until done]",
    );
    expect(allSaid(played)).toContain("Written down as spoiled. Do not taste it. Wear gloves");
    const batch = onlyBatch(played);
    expect(batch.jars).toMatchObject({ failed: 0, spoiled: 1 });
    expect(batch.jars?.sealed).toBe((batch.jars?.processed ?? 0) - 1);
    expect(batch.state).toBe("complete");
  });

  it("is of a ferment that still goes on what its source says: scum is no spoilage", async () => {
    const played = await play(
      "sauerkraut",
      "0:00 [cook until ferment]\n+48:00 there's mold on the sauerkraut",
    );
    expect(played.refused[0]?.reason).toContain(SCUM_WORDS);
    expect(onlyBatch(played).spoiled).toEqual([]);
  });
});

describe("undo after a word about the shelf", () => {
  it("takes that word back, whatever batch is in focus", () => {
    const shelf = new Shelf(WEEK_HOURS);
    shelf.says("begin", { recipe: "pickled-beets", variety: "Chioggia", weightLb: 7 });
    shelf.says("done", {});
    shelf.says("opened", { target: "provider" });
    expect(opened(shelf)).toBe(1);
    expect(told(shelf.says("undo", {}))).toEqual(["withdrawn"]);
    expect(opened(shelf)).toBe(0);
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
