/** What a command writes down while a kitchen is open is written by that kitchen. */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { beginPlan } from "../../src/commands/day/begin-plan.ts";
import { pantryCommand } from "../../src/commands/record/pantry.ts";
import type { ReviewIo } from "../../src/commands/record/review-io.ts";
import { seedsCommand } from "../../src/commands/record/seeds.ts";
import type { Recipe } from "../../src/recipe/recipe.ts";
import { type LiveKitchen, openLiveKitchen } from "../../src/session/live-kitchen.ts";
import { moved, opening, playedEvents } from "../review/demo-season.ts";
import { LIBRARY } from "../review/kitchen-files.ts";
import { kitchenFolder } from "../review/kitchen-folder.ts";

let folder = "";
let kitchen: LiveKitchen;
let io: ReviewIo;

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), "record-"));
  io = { folder, version: "0", build: "test", library: () => LIBRARY, readFile: () => "" };
  kitchen = await opened(folder);
});
afterEach(async () => {
  await kitchen.close();
  rmSync(folder, { recursive: true });
});

// Long past, since a kitchen opens after everything in its log.
const YEARS_BACK = -5 * 366;

async function opened(at: string): Promise<LiveKitchen> {
  const parts = {
    folder: at,
    library: LIBRARY,
    version: "0",
    build: "0",
    speaks: false,
    welcomes: false,
  };
  const answer = await openLiveKitchen({ ...parts, ring: () => {} });
  if (!answer.ok) throw new Error(answer.message);
  return answer.kitchen;
}

const words = (line: string) => line.split(" ");

describe("while a kitchen is open", () => {
  it("seed saved and a germination test are written down by it", async () => {
    const added = await seedsCommand(
      ["add", "cucumber", "--variety", "Boothby Blond", "--isolation", "a mile off; caged"],
      io,
    );
    expect(added).toMatchObject({ code: 0, stderr: "" });
    const [seed] = Object.values(kitchen.session.state.seeds);
    expect(seed).toMatchObject({ crop: "cucumber", isolation: "a mile off; caged" });
    const tested = await seedsCommand(words(`test ${seed?.id} 18/20 --days 7`), io);
    expect(tested.stdout).toMatch(/18 of 20/);
    const [after] = Object.values(kitchen.session.state.seeds);
    expect(after?.tests).toMatchObject([{ sprouted: 18, of: 20, days: 7 }]);
  });

  it("what it refuses is refused, with its reason", async () => {
    const { code, stderr } = await seedsCommand(words("test S9 18/20"), io);
    expect(code).toBe(1);
    expect(stderr).toMatch(/^.*seeds: There is no seed lot S9/);
  });

  it("jars of one of two similar batches get their place, and nothing is asked", async () => {
    await kitchen.close();
    const wanted = { recipe: "dilled-green-beans", variety: "Provider", weightLb: 4 } as const;
    const events = await playedEvents(LIBRARY, wanted);
    const [one, other] = [1, 2].map((nth) => moved(events, YEARS_BACK + nth, nth));
    const made = kitchenFolder([...opening(one?.[0]?.t ?? 0), ...(one ?? []), ...(other ?? [])]);
    kitchen = await opened(made.folder);
    try {
      const { session } = kitchen;
      const [first, second] = Object.keys(session.state.batches);
      expect(second).toBeDefined();
      const place = ["--place", `${first}=cellar`];
      expect(await pantryCommand(place, { ...io, folder: made.folder })).toMatchObject({ code: 0 });
      expect(session.waitingFor).toBeUndefined();
      expect(Object.keys(session.state.places)).toEqual([first]);
    } finally {
      await kitchen.close();
      made.done();
    }
  });

  it("a plan with a start is begun by it", async () => {
    const recipe = LIBRARY.recipes.get("pickled-beets") as Recipe;
    const startMs = Date.now() + 3_600_000;
    const wanted = [{ id: "1", recipe, weightLb: 7, variety: null }];
    const begun = await beginPlan({ wanted, startMs, zone: "UTC" }, io, false);
    expect(begun.stderr).toBe("");
    expect(kitchen.session.state.dayPlan).not.toBeNull();
  });
});
