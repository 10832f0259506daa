/** Answers about critical factors and gauges: by value, at the edges of what is right. */
import { describe, expect, it } from "vitest";
import {
  applies,
  factorOf,
  factorQuestions,
  heldBy,
  isRight,
} from "../../src/kitchen/questions/factor-questions.ts";
import type { Batch } from "../../src/kitchen/state.ts";
import type { CriticalFactor } from "../../src/recipe/recipe.ts";
import { at, Story, told } from "./story.ts";

const BEANS = "dilled-green-beans";

function beans(): { story: Story; batch: Batch } {
  const story = new Story();
  return { story, batch: story.begins(0, BEANS) };
}

/** A factor of our own, answered in a way. */
function factor(answer: CriticalFactor["answer"], onlyFor?: CriticalFactor["onlyFor"]) {
  const { batch } = beans();
  const [one] = batch.recipe.critical;
  if (!one) throw new Error("no factor");
  return { batch, one: { ...one, ...(answer ? { answer } : {}), ...(onlyFor ? { onlyFor } : {}) } };
}

describe("a value that was answered", () => {
  it("of a label is right from the recipe's strength up to what a vinegar can have", () => {
    const { batch, one } = factor({ type: "percent", least: 5 });
    const right = (value: number | string) => isRight(batch, one, value);
    expect([4.9, 5, 10, 12, 12.1].map(right)).toEqual([false, true, true, true, undefined]);
    expect(right(0)).toBe(false);
    expect([-1, Number.NaN, Number.POSITIVE_INFINITY, "five"].map(right)).toEqual(
      Array(4).fill(undefined),
    );
  });

  it("of a headspace is right from what is asked to a quarter inch more", () => {
    const { batch, one } = factor({ type: "inches" });
    const asked = batch.recipe.headspaceIn ?? 0;
    const right = (value: number) => isRight(batch, one, value);
    expect([asked - 0.02, asked - 0.005, asked, asked + 0.25, asked + 0.26].map(right)).toEqual([
      ...[false, true, true, true, false],
    ]);
    expect(right(0)).toBe(false);
    expect([11, 12, 930].map(right)).toEqual([false, undefined, undefined]);
    const { headspaceIn: _, ...recipe } = batch.recipe;
    expect(isRight({ ...batch, recipe } as Batch, one, asked)).toBeUndefined();
  });

  it("says nothing where a yes or no was asked for", () => {
    const { batch, one } = factor(undefined);
    const { answer: _, ...plain } = one;
    expect(isRight(batch, plain, 5)).toBeUndefined();
  });

  it("counts for more than how it was said, but for a guess", () => {
    const { batch, one } = factor({ type: "percent", least: 5 });
    const held = (said: "yes" | "no" | "unsure", value?: number) =>
      heldBy(batch, one, { factor: one.id, held: said, ...(value === undefined ? {} : { value }) });
    expect([held("yes"), held("no"), held("unsure")]).toEqual(["yes", "no", "unsure"]);
    expect([held("yes", 4), held("no", 5), held("yes", 40)]).toEqual(["no", "yes", "unsure"]);
    expect(held("unsure", 5)).toBe("unsure");
  });
});

describe("a factor applies", () => {
  it("to its methods, its packs and its short processes, and else to all", () => {
    const way = (onlyFor: CriticalFactor["onlyFor"], change: Partial<Batch> = {}) => {
      const { batch, one } = factor(undefined, onlyFor);
      return applies({ ...batch, ...change }, one);
    };
    expect(way({})).toBe(true);
    expect(way({}, { terms: null })).toBe(true);
    expect(way({ methods: ["boiling-water"] })).toBe(true);
    expect(way({ methods: ["pressure"] })).toBe(false);
    expect(way({ methods: ["boiling-water"] }, { option: null })).toBe(false);
    expect(way({ packs: ["raw"] })).toBe(true);
    expect(way({ packs: ["hot"] })).toBe(false);
    expect(way({ packs: ["raw"] }, { pack: null })).toBe(false);
    const minutes = beans().batch.terms?.minutes ?? 0;
    expect(way({ processUnderMinutes: minutes + 1 })).toBe(true);
    expect(way({ processUnderMinutes: minutes })).toBe(false);
    expect(way({ processUnderMinutes: minutes + 1 }, { terms: null })).toBe(false);
  });

  it("by its id, where it applies at all", () => {
    const { batch } = beans();
    const [first] = batch.recipe.critical;
    expect(factorOf(batch, first?.id ?? "")).toBe(first);
    expect(factorOf(batch, "none")).toBeUndefined();
    const never = batch.recipe.critical.map((one) => ({
      ...one,
      onlyFor: { methods: ["steam" as const] },
    }));
    const recipe = { ...batch.recipe, critical: never };
    expect(factorOf({ ...batch, recipe }, first?.id ?? "")).toBeUndefined();
  });
});

describe("the question about a factor", () => {
  const asked = (story: Story) => factorQuestions(story.state).map(({ detail }) => detail);
  const brine = (story: Story, batch: Batch, minute = 1) =>
    story.happened(minute, { type: "stage-begun", owner: batch.id, stage: "brine" });

  it("waits for the turn of the stage that asks it, and for jars where they are filled", () => {
    const { story, batch } = beans();
    expect(asked(story)).toEqual([]);
    brine(story, batch);
    expect(asked(story)).toEqual(["vinegar-5-percent"]);
    for (const { id, spec } of batch.stages) {
      if (spec.kind === "fill") {
        story.happened(3, { type: "stage-begun", owner: batch.id, stage: id });
        break;
      }
      story.happened(2, { type: "stage-done", owner: batch.id, stage: id });
    }
    expect(asked(story)).not.toContain("headspace");
    story.happened(4, { type: "jars-filled", batch: batch.id, count: 2, size: null });
    expect(asked(story)).toContain("headspace");
  });

  it("is asked once for lots in step, and apart where one is packed otherwise", () => {
    const { story, batch } = beans();
    const other = story.apart(0, batch, "Provider");
    brine(story, batch);
    brine(story, other);
    const [question, more] = factorQuestions(story.state);
    expect(more).toBeUndefined();
    expect(question?.batches).toEqual([batch.id, other.id]);
    expect(question).toMatchObject({ about: batch.id, kind: "factor", takes: "percent" });
    other.pack = null;
    expect(factorQuestions(story.state)).toHaveLength(2);
    expect(factorQuestions(story.state)[0]?.batches).toBeUndefined();
  });

  it("is not asked of what was answered or given up, and for a day of what was taken back", () => {
    const { story, batch } = beans();
    brine(story, batch);
    const vinegar = "vinegar-5-percent";
    story.happened(2, { type: "confirmed", batch: batch.id, factor: vinegar, held: true });
    expect(asked(story)).toEqual([]);
    story.happened(3, { type: "factor-reopened", batch: batch.id, factor: vinegar });
    expect(asked(story)).toEqual([vinegar]);
    expect(factorQuestions(story.state)[0]?.key).toBe(`factor/${batch.id}/${vinegar}/1`);
    batch.state = "complete";
    story.state.lastW = at(3 + 24 * 60) - 1;
    expect(asked(story)).toEqual([vinegar]);
    story.state.lastW = at(3 + 24 * 60);
    expect(asked(story)).toEqual([]);
    batch.state = "abandoned";
    expect(asked(story)).toEqual([]);
  });

  it("names the choices it offers, and all that it takes", () => {
    const { story, batch } = beans();
    brine(story, batch);
    const [first, ...others] = batch.recipe.critical;
    if (!first) throw new Error("no factor");
    const answer = { type: "choice" as const, right: ["new", "fresh"], wrong: ["used", "old"] };
    batch.recipe = { ...batch.recipe, critical: [{ ...first, answer }, ...others] };
    const question = factorQuestions(story.state).find(({ detail }) => detail === first.id);
    if (first.id === "vinegar-5-percent") {
      expect(question?.choices).toEqual(["new", "used"]);
      expect(question?.alsoSaid).toEqual(["new", "fresh", "used", "old"]);
      expect(question?.takes).toBe("choice");
    }
  });
});

describe("a dial's error", () => {
  function asking(): Story {
    const story = new Story();
    const [canner] = story.state.kitchen.canners;
    story.happened(0, { type: "gauge-set", canner: canner?.id ?? "", gauge: { kind: "dial" } });
    story.begins(1, "snap-beans");
    story.says(2, "yes");
    return story;
  }
  const gauge = (story: Story) => story.state.kitchen.canners[0]?.gauge;

  it.each([0, 1, -1, 2, -2])("of %d pounds is kept", (pounds) => {
    const story = asking();
    const outcome = story.says(3, "answer", { value: pounds, readsHighPsi: pounds });
    expect(outcome).toMatchObject({ kind: "done" });
    expect(outcome.kind === "done" && outcome.refusal).toBeFalsy();
    expect(gauge(story)).toEqual({ kind: "dial", testedSeason: 2027, readsHighPsi: pounds });
  });

  it.each([2.5, -3, 10])("of %d pounds is kept, and the dial refused", (pounds) => {
    const story = asking();
    const outcome = story.says(3, "answer", { value: pounds, readsHighPsi: pounds });
    expect(outcome.kind === "done" && outcome.refusal).toMatch(/two pounds has to be replaced/);
    expect(gauge(story)).toMatchObject({ readsHighPsi: pounds });
  });

  it.each([10.5, -11, Number.NaN])("of %d pounds is none", (pounds) => {
    const story = asking();
    expect(told(story.says(3, "answer", { value: "x", readsHighPsi: pounds }))).toMatch(
      /By how many pounds/,
    );
    expect(gauge(story)).toEqual({ kind: "dial", testedSeason: 2027 });
  });

  it("is not known of one that was never tested", () => {
    const story = asking();
    story.says(3, "answer", { value: "never", untested: true });
    expect(gauge(story)).toEqual({ kind: "dial", untestedSeason: 2027 });
  });
});

describe("a factor in the journal", () => {
  it("is not held by a line with less than was tested, whatever it says", () => {
    const story = new Story();
    const batch = story.begins(0, "bread-and-butter-pickles");
    const factor = { batch: batch.id, factor: "vinegar-5-percent" };
    story.happened(5, { type: "confirmed", ...factor, held: true, value: 4 });
    expect(batch.confirmed).toMatchObject([{ held: false, value: 4 }]);
    story.happened(6, { type: "confirmed", ...factor, held: true, value: 5 });
    expect(batch.confirmed).toMatchObject([{ held: true, value: 5 }]);
  });
});
