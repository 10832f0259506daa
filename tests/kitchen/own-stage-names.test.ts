import { describe, expect, it } from "vitest";
import { Story, told } from "./story.ts";

describe("a stage of a recipe that is called like a step of the canner", () => {
  it("is none of them: a pot that goes by canner boils like any other", () => {
    const story = new Story();
    const { recipe } = story.begins(0, "dilled-green-beans");
    const boils = recipe.stages.find((one) => one.kind === "heat");
    if (!boils) throw new Error("nothing is heated");
    const heat = { ...boils, id: "canner", after: [] };
    const lot = { variety: null, weightLb: null, pickedAt: null };
    story.happened(1, {
      ...{ type: "batch-begun", batch: "own", lot, jar: null, pack: null, option: null },
      ...{ recipe: { ...recipe, stages: [heat] }, terms: null, expectedJars: null, mark: "O" },
    });
    const own = { owner: "own", stage: "canner" };
    story.happened(2, { type: "stage-begun", ...own });
    const outcome = story.says(
      9,
      "temperature",
      { value: 200, unit: "F", boiling: true },
      { chosen: [own] },
    );
    expect(told(outcome)).toContain("boil");
  });
});
