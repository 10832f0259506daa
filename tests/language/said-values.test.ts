/** Values told in words of a cook's own: each ends in its slot, and no word of it in another. */
import { describe, expect, it } from "vitest";
import { hear } from "../../src/language/hear.ts";
import { wholeLibrary } from "../recipe/library-files.ts";
import { kitchenContext } from "./kitchen-context.ts";

const library = wholeLibrary();
const context = kitchenContext({
  library,
  recipes: [...library.recipes.values()].map(({ id, title, names }) => ({ id, title, names })),
  running: [
    { id: "b-1", recipe: "dilled-green-beans", variety: "Provider" },
    { id: "b-2", recipe: "pickled-beets" },
  ],
  timers: [{ id: "t-1", label: "rice" }],
});

/** What is acted on, as its meaning and its values. */
const acted = (text: string) => {
  const { reading, commands } = hear(text, context);
  if (reading !== "sure") return [];
  return commands.map(({ intent, slots }) => ({ intent, ...slots }));
};

describe("what is begun", () => {
  it.each([
    [
      "get going on the apple butter i have got sixteen pounds of apples these are jonathans",
      { recipe: "apple-butter", variety: "jonathans", weightLb: 16 },
    ],
    [
      "I'll put up a mess of snap beans, fourteen pound of Half Runners, in the pressure canner",
      { recipe: "snap-beans", variety: "Half Runners", weightLb: 14 },
    ],
    [
      "okay, start the kosher dills, eight pounds of Boston Pickling, before they go soft on me",
      { recipe: "quick-fresh-pack-dills", variety: "Boston Pickling", weightLb: 8 },
    ],
    [
      "So, I begin now with the apple butter, I have here nine pounds of apples.",
      { recipe: "apple-butter", weightLb: 9 },
    ],
    [
      "let's get on with the dilly beans, four pound of Provider and my back's already gone",
      { recipe: "dilled-green-beans", variety: "Provider", weightLb: 4 },
    ],
    [
      "Let's do the bread-and-butters, five, no, I weighed the bowl too, four pounds of cucumbers.",
      { recipe: "bread-and-butter-pickles", weightLb: 4 },
    ],
    [
      "going to do the sauerkraut now, it's twenty pounds of cabbage, Late Flat Dutch",
      { recipe: "sauerkraut", variety: "Late Flat Dutch", weightLb: 20 },
    ],
    [
      "start the sweet pickles, they're Boston Pickling, ten pounds of them",
      { recipe: "quick-sweet-pickles", variety: "Boston Pickling", weightLb: 10 },
    ],
  ])("%s", (text, values) => {
    expect(acted(text)).toEqual([expect.objectContaining({ intent: "begin", ...values })]);
  });

  it("keeps what else is said in the breath", () => {
    const said =
      "start me a batch of applesauce, ten pounds of Jonathans, and remind me at five to " +
      "thaw the chicken";
    expect(acted(said)).toEqual([
      expect.objectContaining({ recipe: "applesauce", variety: "Jonathans", weightLb: 10 }),
      expect.objectContaining({ intent: "remind", text: "thaw the chicken" }),
    ]);
    expect(acted("toss the beets and start the dilly beans, five pounds of Provider")).toEqual([
      { intent: "abandon", target: "beets" },
      expect.objectContaining({ recipe: "dilled-green-beans", variety: "Provider", weightLb: 5 }),
    ]);
  });

  it("is two batches where each food is a batch of its own", () => {
    const begun = acted("start bread and butters, four pounds of cucumbers, and beets, six pounds");
    expect(begun.map(({ intent }) => intent)).toEqual(["begin", "begin"]);
  });
});

describe("a jar by its place in the row", () => {
  it.each([
    ["Third bean jar didn't seal, the little bastard.", [3]],
    ["the fifth jar didn't seal", [5]],
    ["the lid on the third jar never took", [3]],
    ["the sixth one is still up", [6]],
    ["my seventh jar didn't take", [7]],
    ["the eighth jar along is a dud", [8]],
    ["fourth pint of the beans pops when I press it", [4]],
    ["the second lid flexes", [2]],
  ])("%s", (text, jars) => {
    expect(acted(text)).toEqual([expect.objectContaining({ intent: "seal-failed", jars })]);
  });

  it("seals nothing", () => {
    expect(acted("the third jar sealed").map(({ intent }) => intent)).not.toContain("sealed");
  });
});
