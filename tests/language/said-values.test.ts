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

const timer = (minutes: number, label?: string) => {
  return { intent: "timer-set", minutes, ...(label ? { label } : {}) };
};

describe("several timers in one breath", () => {
  it.each([
    [
      "put ten minutes on for the eggs and another one of twenty-five for the biscuits",
      [timer(10, "eggs"), timer(25, "biscuits")],
    ],
    [
      "set a timer for the eggs for ten minutes and one for the bread for forty",
      [timer(10, "eggs"), timer(40, "bread")],
    ],
    [
      "set two timers, ten minutes for the eggs and twelve minutes for the pasta",
      [timer(10, "eggs"), timer(12, "pasta")],
    ],
    ["timer for six minutes and another for nine minutes", [timer(6), timer(9)]],
    [
      "ten minutes for the eggs, twenty-five for the biscuits",
      [timer(10, "eggs"), timer(25, "biscuits")],
    ],
    [
      "set a timer for eggs, eight minutes, and the same for the corn",
      [timer(8, "eggs"), timer(8, "corn")],
    ],
    [
      "start me a pasta timer at nine minutes and a sauce one at twenty",
      [timer(9, "pasta"), timer(20, "sauce")],
    ],
    [
      "put five on for the eggs and then twelve for the spuds",
      [timer(5, "eggs"), timer(12, "spuds")],
    ],
    ["Set a damn timer, nine minutes, pasta, because I will forget, I swear.", [timer(9, "pasta")]],
    ["Set me a spell o' twenty minutes for the cornbread, would ye.", [timer(20, "cornbread")]],
    ["set a timer for nine minutes, love", [timer(9)]],
    ["set a timer for nine minutes, and that's enough for one day", [timer(9)]],
    [
      "put ten minutes on for the eggs and five more for the rice",
      [timer(10, "eggs"), { intent: "timer-add", minutes: 5, target: "rice" }],
    ],
  ])("%s", (text, wanted) => {
    expect(acted(text)).toEqual(wanted);
  });
});

describe("several facts in one breath", () => {
  it.each([
    ["note the dill was store-bought and tell me what's next", ["note", "what-next"]],
    [
      "write down the second batch is saltier and set a timer for nine minutes",
      ["note", "timer-set"],
    ],
    ["remind me at five to thaw the chicken and what's left on the beets", ["remind", "time-left"]],
    ["remind me at six to check the crock and stop the rice timer", ["remind"]],
    ["note that the beets are boiling and the lids are new", ["note"]],
    ["put down that Ben asked how long have the beets got", ["note"]],
    ["use pints for the beets, not quarts", ["change-batch"]],
    ["we filled nine pints, not ten", ["jars-filled"]],
    ["ten minutes for the eggs and we filled nine pints", ["timer-set", "jars-filled"]],
    ["the beets are all filled, nine pints", ["jars-filled"]],
    ["throw out the beans and start a new batch of dilled beans", ["abandon", "begin"]],
  ])("%s", (text, intents) => {
    expect(acted(text).map(({ intent }) => intent)).toEqual(intents);
  });

  it("holds of the words for the log only those that are for it", () => {
    const [note] = acted("note the dill was store-bought and tell me what's next");
    expect(note).toEqual({ intent: "note", text: "the dill was store-bought" });
  });
});

describe("words that only open a sentence", () => {
  it.each([
    ["All right, the jars are washed", ["done"]],
    ["Okay, damn it, fine, set a timer for ten minutes", ["timer-set"]],
    ["Well hello again, set a timer for six minutes", ["timer-set"]],
    ["You know what, let's stop the beets", ["hold"]],
    ["good, good, carry on", ["resume"]],
    ["got it, what's next", ["acknowledge", "what-next"]],
    ["all right", ["acknowledge"]],
    ["sorry, what was that again", ["repeat"]],
  ])("%s", (text, intents) => {
    expect(acted(text).map(({ intent }) => intent)).toEqual(intents);
  });
});

describe("which of several batches", () => {
  const running = [
    { id: "b-1", recipe: "dilled-green-beans", variety: "Provider" },
    { id: "b-2", recipe: "pickled-beets" },
    { id: "b-3", recipe: "dilled-green-beans", variety: "Blue Lake" },
  ];
  const meant = (text: string, given = running) => {
    const { commands } = hear(text, { ...context, running: given });
    return commands.map(({ ref }) => ref?.running.map((one) => "owner" in one && one.owner));
  };

  it.each([
    ["throw out the second beans", "b-3"],
    ["dump the second batch of beans", "b-3"],
    ["how long have the first beans got", "b-1"],
    ["what time will the dill beans second batch be out", "b-3"],
    ["hold the second lot of beans", "b-3"],
    ["let's talk about the second bean batch", "b-3"],
    ["how much longer for the first run of beans", "b-1"],
  ])("%s", (text, batch) => {
    expect(meant(text)).toEqual([[batch]]);
  });

  it("is none where there are not so many", () => {
    expect(meant("throw out the third batch of beans")).toEqual([[]]);
    expect(meant("throw out the second beans", running.slice(0, 2))).toEqual([[]]);
  });

  it("is the one that runs where the first is over", () => {
    const onRecord = { batches: running, loads: [] };
    const { commands } = hear("throw out the second beans", {
      ...context,
      running: running.slice(1),
      onRecord,
    });
    expect(commands[0]?.ref?.running).toEqual([{ owner: "b-3" }]);
  });
});
