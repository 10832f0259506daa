import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { agenda } from "../../src/kitchen/agenda.ts";
import { DEVIATION_CODES } from "../../src/kitchen/deviation-codes.ts";
import { batchDeviations } from "../../src/kitchen/deviations.ts";
import { KINDS } from "../../src/kitchen/stages/kinds.ts";
import { rest } from "../../src/kitchen/stages/rest.ts";
import type { StageRules } from "../../src/kitchen/stages/rules.ts";
import type { Recipe, StageKind } from "../../src/recipe/recipe.ts";
import { dueSentence } from "../../src/speech/due-sentences.ts";
import { at, Story } from "./story.ts";

/** Produce that hangs in the air: a kind of stage that this file alone knows. */
const airing: StageRules = {
  ...rest,
  kind: "airing" as StageKind,
  thermometer: null,
  window: { short: "skipped", long: "temperature-high", opens: "alarm", reminded: false },
  says: { ...rest.says, opens: "ready-to-open" },
};

const table = KINDS as Record<string, StageRules>;

/** Sauerkraut whose ferment is an airing of one to two hours. */
function aired(recipe: Recipe): Recipe {
  const stages = recipe.stages.map((stage) =>
    stage.kind === "ferment"
      ? { ...stage, kind: airing.kind, window: { minMinutes: 60, maxMinutes: 120 } }
      : stage,
  );
  return { ...recipe, stages };
}

describe("a kind of stage that is added in one place", () => {
  beforeAll(() => {
    table.airing = airing;
  });
  afterAll(() => {
    delete table.airing;
  });

  const NO_LOT = { variety: null, weightLb: null, pickedAt: null };

  function airs(minutes: number) {
    const story = new Story();
    const known = story.begins(0, "sauerkraut");
    const recipe = aired(known.recipe);
    story.happened(0, {
      ...{ type: "batch-begun", batch: "aired", recipe, lot: NO_LOT, jar: null, pack: null },
      ...{ option: null, terms: null, expectedJars: null, mark: "A" },
    });
    const batch = story.batch("aired");
    const stage = batch.stages.find((run) => run.spec.kind === airing.kind);
    if (!stage) throw new Error("nothing is aired");
    for (const run of batch.stages) {
      if (run === stage) break;
      story.happened(5, { type: "stage-done", owner: "aired", stage: run.id });
    }
    const opens = agenda(story.state, at(5)).find((item) => item.run === stage);
    const said = opens && dueSentence(story.state, opens);
    story.happened(5 + minutes, { type: "stage-done", owner: "aired", stage: stage.id });
    const codes = batchDeviations(story.state, batch, at(500)).map((one) => one.code);
    return { rank: opens?.rank, said, codes };
  }

  it("deviates by its own codes where its window is left", () => {
    expect(airs(30).codes).toEqual(["skipped"]);
    expect(airs(90).codes).toEqual([]);
    expect(airs(150).codes).toEqual(["temperature-high"]);
  });

  it("is told in its own way and by its own rank", () => {
    const { rank, said } = airs(90);
    expect(rank).toBe("alarm");
    expect(said).toMatch(/ready to open/);
  });
});

describe("the kinds of stages", () => {
  it("each go by their own name, with a window where they end by one", () => {
    for (const [name, rules] of Object.entries(KINDS)) {
      expect(rules.kind).toBe(name);
      expect(rules.window !== null).toBe(rules.ends === "window");
      expect(rules.date !== null).toBe(rules.ends === "date");
      if (rules.watched) expect(rules.condition).not.toBeNull();
    }
  });

  it("say which only words end, which are watched, and where the food is", () => {
    const having = (test: (rules: StageRules) => boolean) =>
      Object.values(KINDS).flatMap((rules) => (test(rules) ? [rules.kind] : []));
    expect(having(({ guarded }) => guarded).sort()).toEqual(["process", "seal-check"]);
    expect(having(({ watched }) => watched).sort()).toEqual(["process", "vent"]);
    expect(having(({ onceForCanner }) => onceForCanner).sort()).toEqual([
      "cool",
      "fill",
      "process",
      "seal-check",
    ]);
    const where = (food: StageRules["food"]) => having((rules) => rules.food === food).sort();
    expect(where("table")).toEqual(["hands-on", "rest"]);
    expect(where("pot")).toEqual(["heat"]);
    expect(where("away")).toEqual(["dry", "store"]);
    const shorts = Object.values(KINDS).flatMap(({ kind, window }) => {
      return window ? [`${kind}: ${window.short}, ${window.long}`] : [];
    });
    expect(shorts.sort()).toEqual([
      ...["cool: cool-short, null", "dry: rest-short, rest-long"],
      ...["ferment: rest-short, rest-long", "rest: rest-short, rest-long"],
    ]);
  });

  it("lose what they keep by published codes", () => {
    const codes = Object.values(KINDS).flatMap(
      ({ condition }) => condition?.loss("pressure") ?? [],
    );
    expect(codes).toEqual(expect.arrayContaining(["boil-lost", "pressure-lost"]));
    for (const code of codes) expect(DEVIATION_CODES).toContain(code);
  });

  it("take every part in a canner but the filling once", () => {
    const roles = Object.values(KINDS).flatMap(({ role }) => role ?? []);
    expect(new Set(roles).size).toBe(roles.length);
  });
});
