import { describe, expect, it } from "vitest";
import {
  cannotShare,
  capacity,
  countTrouble,
  jarCounts,
} from "../../src/kitchen/jars/canner-room.ts";
import { lotsIn } from "../../src/kitchen/jars/lots.ts";
import { openLoad, sharers } from "../../src/kitchen/loads/open-load.ts";
import { isLoad } from "../../src/kitchen/owners.ts";
import { batchName, lidMark, lotName } from "../../src/kitchen/spoken-names.ts";
import type { ProcessTerms } from "../../src/recipe/recipe.ts";
import { Story } from "./story.ts";

function lots() {
  const story = new Story();
  const provider = story.begins(0, "dilled-green-beans", { variety: "Provider", weightLb: 2 });
  const lake = story.apart(0, provider, "Blue Lake");
  return { story, provider, lake };
}

describe("names", () => {
  it("say the variety before the recipe's title", () => {
    expect(batchName(lots().provider)).toBe("the Provider dilled green beans");
  });

  it("say no variety where a batch has several lots", () => {
    const { story, provider } = lots();
    story.begins(0, "dilled-green-beans", { variety: "Contender" });
    expect(batchName(provider)).toBe("the dilled green beans");
    const [first] = lotsIn(provider);
    expect(first && lotName(first)).toBe("the Provider dilled green beans");
  });

  it("mark lids with enough letters to tell them apart", () => {
    const { story } = lots();
    expect(lidMark(story.state, "Dragon Tongue", "Beans")).toBe("D");
    expect(lidMark(story.state, "Black Valentine", "Beans")).toBe("BL");
  });
});

describe("what a canner holds", () => {
  const canner = { id: "c", name: "c", holds: { pint: 9, quart: 7 } };

  it("is given by size; a missing size takes the next larger", () => {
    expect(capacity(canner, "pint")).toBe(9);
    expect(capacity(canner, "half-pint")).toBe(9);
    expect(capacity(canner, "pint-and-half")).toBe(7);
    expect(capacity(canner, "half-gallon")).toBe(0);
    expect(capacity(undefined, "pint")).toBe(0);
  });

  const terms: ProcessTerms = {
    method: "boiling-water",
    pack: "raw",
    jar: "pint",
    jarTested: "pint",
    minutes: 15,
    pressurePsi: null,
    gauge: null,
    altitudeFt: 6200,
    band: "above 6,000 ft",
    table: "t",
    source: "s",
    sterileJars: false,
    coverIn: 1,
    waterStartF: 140,
  };

  it.each([
    [{}, undefined],
    [{ jar: "half-pint" as const }, undefined],
    [{ minutes: 20 }, "15 minutes and the other for 20"],
    [{ method: "steam" as const }, "boiling-water process and the other steam"],
    [{ pressurePsi: 11 }, "pounds"],
    [{ pack: "hot" as const }, "140 degrees and a hot pack at 180"],
  ])("may be shared by terms that differ in %o: %s", (other, reason) => {
    const said = cannotShare(terms, { ...terms, ...other });
    if (reason === undefined) expect(said).toBeUndefined();
    else expect(said).toContain(reason);
  });
});

describe("an open load", () => {
  it("is for the batch it was opened for and for those that fit beside it", () => {
    const { story, provider, lake } = lots();
    const [load] = Object.values(story.state.loads);
    expect(load?.batch).toBe(provider.id);
    expect(load && sharers(story.state, load)).toEqual([provider, lake]);
    expect(openLoad(story.state, lake)).toBe(load);
  });

  it("is not for a batch that would have to be split", () => {
    const story = new Story();
    const first = story.begins(0, "dilled-green-beans", { weightLb: 4 });
    const second = story.apart(0, first, "Provider");
    const [load] = Object.values(story.state.loads);
    expect(load && sharers(story.state, load)).toEqual([first]);
    expect(openLoad(story.state, second)).toBeUndefined();
  });

  it("is not for a batch that is processed differently", () => {
    const story = new Story();
    story.begins(0, "dilled-green-beans", { weightLb: 1 });
    const beets = story.begins(0, "pickled-beets", { weightLb: 1 });
    const load = openLoad(story.state, beets);
    expect(load === undefined || load.batch === beets.id).toBe(true);
  });
});

describe("jars that are counted", () => {
  it("add up, or what does not is named", () => {
    const story = new Story();
    const batch = story.begins(0, "dilled-green-beans");
    const load = story.loads(60, batch, 8);
    expect(isLoad(load)).toBe(true);
    story.says(70, "boiling", { covered: true });
    story.passes(86);
    story.says(90, "done", { target: "jars" });
    expect(jarCounts(story.state, batch)).toMatchObject({ filled: 8, processed: 8, sealed: 0 });
    expect(countTrouble(story.state, batch)).toBe(
      "8 processed, but 0 sealed, 0 failed and 0 broken",
    );
    story.says(91 + 13 * 60, "sealed", { all: true });
    expect(countTrouble(story.state, batch)).toBeUndefined();
  });
});
