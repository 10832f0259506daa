import { describe, expect, it } from "vitest";
import { meantBy } from "../../src/language/values/resolve-names.ts";
import { thingsOf } from "../../src/session/context-of.ts";
import { Story } from "../kitchen/story.ts";

function lots() {
  const story = new Story();
  const provider = story.begins(0, "dilled-green-beans", { variety: "Provider", weightLb: 2 });
  story.begins(0, "dilled-green-beans", { variety: "Blue Lake", weightLb: 2 });
  return { story, provider };
}

function meaning(story: Story, name: string) {
  return meantBy(name, { ...thingsOf(story.state), recipes: [] }, true);
}

describe("what a name stands for", () => {
  it("is a lot by its variety, and every lot that a shared name fits", () => {
    const { story, provider } = lots();
    const [first, second] = provider.lots.map(({ id }) => ({ owner: provider.id, lot: id }));
    expect(meaning(story, "provider").running).toEqual([first]);
    expect(meaning(story, "the dilly beans").running).toEqual([first, second]);
    expect(meaning(story, "the Provider and the Blue Lake").running).toEqual([first, second]);
  });

  it("is a batch as a whole where it has one lot", () => {
    const story = new Story();
    const beets = story.begins(0, "pickled-beets", { variety: "Chioggia" });
    expect(meaning(story, "the Chioggia").running).toEqual([{ owner: beets.id }]);
  });

  it("is empty where a word fits nothing", () => {
    const { running, recorded, vessels, parts, sorts } = meaning(lots().story, "the purple ones");
    expect([running, recorded, vessels, parts, sorts].flat()).toEqual([]);
  });

  it("is a stage by its pot before a batch by its title", () => {
    const story = new Story();
    const batch = story.begins(0, "bread-and-butter-pickles");
    expect(meaning(story, "syrup").running[0]).toEqual({ owner: batch.id, stage: "syrup" });
  });

  it("is one of the stages of a batch that is named with it", () => {
    const { story, provider } = lots();
    expect(meaning(story, "provider brine").parts).toEqual([
      { owner: provider.id, stage: expect.any(String) },
    ]);
  });

  it("is every pot where only a pot is named, and every load where only its water is", () => {
    const { story } = lots();
    expect(meaning(story, "the big pot").vessels.length).toBeGreaterThan(1);
    const [load] = Object.keys(story.state.loads);
    expect(meaning(story, "the water bath").vessels).toEqual([{ owner: load }]);
  });

  it("is a sort of thing where nothing more is said", () => {
    const { story } = lots();
    expect(meaning(story, "the jars")).toMatchObject({ sorts: ["jars"], sortAlone: true });
    expect(meaning(story, "provider jars")).toMatchObject({ sorts: ["jars"], sortAlone: false });
  });

  it("may be a finished batch, where the shelf is mentioned", () => {
    const { story, provider } = lots();
    story.happened(5, { type: "abandoned", batch: provider.id });
    expect(meaning(story, "provider").running).toEqual([]);
    expect(meaning(story, "provider").recorded).toEqual([{ owner: provider.id, lot: provider.id }]);
  });
});
