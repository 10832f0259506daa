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

  it("is each of several", () => {
    expect(acted("third and fifth jars didn't seal")).toEqual([
      expect.objectContaining({ intent: "seal-failed", jars: [3, 5] }),
    ]);
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

describe("clauses with no mark between them", () => {
  it.each([
    ["ok im back keep going", ["back", "resume"]],
    ["alright thats the jars washed whats the next thing", ["done", "what-next"]],
    ["set a timer for ten minutes stop the rice", ["timer-set", "timer-cancel"]],
    ["hold the beets what's next", ["hold", "what-next"]],
    ["stop the rice timer when the beets come out", ["timer-cancel"]],
    ["put it down set the timer", ["note"]],
  ])("%s", (text, intents) => {
    expect(acted(text).map(({ intent }) => intent)).toEqual(intents);
  });
});

describe("what a clause is about", () => {
  it("may be named before it, in a question beside, or last", () => {
    const text = "how much salt goes in the kraut and when's it going to be finished";
    expect(acted(text)).toEqual([
      expect.objectContaining({ intent: "how-much", target: "kraut" }),
      expect.objectContaining({ intent: "finish-time", target: "kraut" }),
    ]);
    expect(acted("it quit boiling on me, the propane ran out, this is the beets")).toEqual([
      expect.objectContaining({ intent: "boil-lost", target: "beets" }),
    ]);
    expect(acted("can I shut the burner off under the beets yet?")).toEqual([
      expect.objectContaining({ intent: "may-i", target: "beets", act: "heat-off" }),
    ]);
    expect(acted("how much longer have them beetroots got")).toEqual([
      expect.objectContaining({ intent: "time-left", target: "beetroots" }),
    ]);
  });

  it("is each thing where several are named", () => {
    expect(acted("done slicing the cucumbers, done with the onions")).toEqual([
      expect.objectContaining({ intent: "done", target: "cucumbers" }),
      expect.objectContaining({ intent: "done", target: "onions" }),
    ]);
  });

  it("is told by a food that is named elsewhere", () => {
    expect(acted("I've a bushel of peaches here, let's make jam, five pounds of them")).toEqual([
      expect.objectContaining({ intent: "begin", recipe: "peach-jam", weightLb: 5 }),
    ]);
  });
});

describe("a count of jars", () => {
  it.each([
    ["I got the last bean jar packed, nine of them all told", { count: 9, target: "beans" }],
    ["That's seven jars of beetroot filled, and my back knows about it.", { count: 7 }],
    ["I counted the beets jars we filled and there's six", { count: 6, target: "beets" }],
    ["Already I put the beets in the jars, are eight jars.", { count: 8, target: "beets" }],
    ["I filled the last of the beets twenty minutes ago, nine pints", { count: 9, size: "pint" }],
    ["the jars were eight, not seven", { count: 8 }],
  ])("%s", (text, values) => {
    const facts = acted(text);
    expect(facts).toEqual([expect.objectContaining({ intent: "jars-filled", ...values })]);
  });

  it("puts nothing into the food", () => {
    expect(acted("I put the beets in the jars").map(({ intent }) => intent)).not.toContain("added");
    expect(acted("I threw in some beets")).toEqual([{ intent: "added", food: "beets" }]);
  });
});

describe("lids that failed, and what becomes of them", () => {
  it.each([
    [
      "two lids didn't take on the beans, so I'll reprocess the one and pitch the other",
      [
        { intent: "seal-failed", count: 2, target: "beans" },
        { intent: "disposition", what: "reprocess", count: 1 },
        { intent: "disposition", what: "discard", count: 1 },
      ],
    ],
    [
      "one of the beet lids was up when I looked an hour ago",
      [{ intent: "seal-failed", count: 1, target: "beets" }],
    ],
  ])("%s", (text, wanted) => {
    expect(acted(text)).toEqual(wanted.map((one) => expect.objectContaining(one)));
  });
});

it.each([
  ["I pitched that second bean batch half an hour ago, it smelled wrong", "abandon"],
  ["Pitch out that second run o' beans, the whole of it, I don't trust 'em.", "abandon"],
  ["You no talk twenty minute okay, my baby sleep.", "hush"],
  ["could you keep mum for a quarter hour?", "hush"],
  ["Mom wants to know how everything's doing", "overview"],
  ["how's the whole show coming along?", "overview"],
  ["what'll I use if I'm out of pickling salt?", "short-of"],
  ['"Headspace." Meaning?', "explain"],
  ["whatcha want me at now", "what-now"],
  ["fridge it or redo it?", "is-safe"],
  ["I opened one of last fall's apple butters for my toast", "opened"],
  ["it's only nine pounds of beets once you take the tops off", "change-batch"],
])("%s is %s", (text, intent) => {
  expect(acted(text).map((one) => one.intent)).toEqual([intent]);
});

describe("a jar that was opened, and how it tasted", () => {
  it.each([
    [
      "I opened one of last fall's apple butters, and oh, it's gotten a touch too clovey",
      "it's gotten a touch too clovey",
    ],
    [
      "We cracked us open a jar o' that kraut from the cellar, and it was sour as all get-out",
      "it was sour as all get-out",
    ],
    ["opened the first jar of salsa Thursday night, good heat but watery", "good heat"],
  ])("%s", (text, words) => {
    const [opened, taste, ...others] = acted(text);
    expect(opened).toMatchObject({ intent: "opened", count: 1 });
    expect(taste).toEqual({
      intent: "taste",
      target: opened && "target" in opened && opened.target,
      words,
    });
    expect(others).toEqual([]);
  });

  it("is no taste where it has gone off", () => {
    const facts = acted("we opened a jar of the beets and it was sour and fizzed, smells off");
    expect(facts.map(({ intent }) => intent)).not.toContain("taste");
  });
});
