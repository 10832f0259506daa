import { describe, expect, it } from "vitest";
import { hear } from "../../src/language/hear.ts";
import { withoutFirstThoughts } from "../../src/language/second-thoughts.ts";
import { utteranceOf } from "../../src/language/words.ts";
import { CRITICAL_FACTORS } from "../../src/recipe/critical-factors.ts";
import { kitchenContext } from "./kitchen-context.ts";

const context = kitchenContext({
  running: [
    { id: "b-1", recipe: "dilled-green-beans", variety: "Provider" },
    { id: "b-2", recipe: "pickled-beets" },
  ],
  timers: [{ id: "t-1", label: "rice" }],
});
const acted = (text: string, question?: typeof context.question) => {
  const heard = hear(text, question ? { ...context, question } : context);
  return heard.commands.map(({ intent }) => intent);
};

describe("a correction in the same breath", () => {
  it.each([
    ["two jars, well three actually", "three jars actually"],
    ["quarts, no wait, pints", "pints"],
    ["eight pints no seven pints filled", "seven pints filled"],
    ["six thousand, no, six thousand two hundred feet", "six thousand two hundred feet"],
    ["it was half past one, no, quarter to two", "it was quarter to two"],
    ["jar four, I mean jar five, didn't seal", "jar five, didn't seal"],
    ["start dilly beans, four, no, five pounds", "start dilly beans, five pounds"],
    ["hush for five, or no, make it ten minutes", "hush for ten minutes"],
    ["five pounds of Blue Lake, I mean Provider", "five pounds of Provider"],
    ["make it quarts, no, I haven't enough quarts, make it pints", "make it pints"],
    [
      "it's ten pounds, or it was till I cut out the bad ones, so put down eight and a half",
      "it's eight and a half pounds",
    ],
    [
      "start the kraut, five, no, I weighed the bowl too, four pounds",
      "start the kraut, four pounds",
    ],
    [
      "set a timer for ten minutes, no wait, it's not hot yet, make it fifteen minutes",
      "set a timer for fifteen minutes",
    ],
    [
      "the second jar, I mean the one after it, the fourth one didn't seal",
      "the fourth one didn't seal",
    ],
    ["that's seven pints, well no, there's one under the towel, eight pints", "that's eight pints"],
  ])("counts: %s", (said, meant) => {
    expect(withoutFirstThoughts(said, context).text).toBe(meant);
  });

  it.each([
    "six jars sealed, no lids left",
    "no, six",
    "well three sealed",
    "two jars broke and three sealed",
    "six pints boiling, no, I lost the boil, seven pints",
    "it's at ten pounds, no, it sank for a while, it is at twelve",
    "six jars sealed, no, a lid of mine popped up, five jars",
  ])("is not heard where nothing is corrected: %s", (said) => {
    expect(withoutFirstThoughts(said, context).text).toBe(said);
  });
});

it("takes pounds for a pressure while something is in the canner, and leaves its fall said", () => {
  const loads = [{ id: "l-1", canner: "pressure", stages: [] }];
  const said = "ten pounds, no, it sank for a while, eleven pounds";
  expect(withoutFirstThoughts(said, { ...context, loads }).text).toBe(said);
  expect(withoutFirstThoughts(said, context).text).toBe("eleven pounds");
});

describe("a sentence of several clauses", () => {
  it("does each of its facts in order", () => {
    expect(
      acted("the beets are boiling, and a jar broke, and set a timer for ten minutes"),
    ).toEqual(["boiling", "jar-broken", "timer-set"]);
  });

  it("is heard in spite of empty words beside it", () => {
    expect(acted("my sister rang twice about her roses, so set a timer for nine minutes")).toEqual([
      "timer-set",
    ]);
  });

  it("reports nothing that it takes back itself", () => {
    expect(acted("it's boiling, no, it's not")).not.toContain("boiling");
    expect(acted("they all sealed, no wait, not yet")).not.toContain("sealed");
  });

  it("clears nothing beside a condition, a story or a doubt", () => {
    for (const beside of ["if I'm lucky", "my neighbor says", "I wish", "maybe not all of it"]) {
      expect(acted(`${beside}, the water is boiling`)).not.toContain("boiling");
      expect(acted(`all the jars sealed, ${beside}`)).not.toContain("sealed");
    }
  });

  it("answers the open question before it asks its own", () => {
    const question = { kind: "yes-no", key: "end" } as const;
    expect(acted("yes, and what do I do now", question)).toEqual(["yes", "what-now"]);
  });

  it("takes the name before a clause as what the clause is about", () => {
    const [taste] = hear("the beets, crunch four and flavor three", context).commands;
    expect(taste).toMatchObject({
      intent: "taste",
      slots: { target: "beets", crunch: 4, flavor: 3 },
    });
  });
});

describe("a report that is wrapped in a question", () => {
  it.each([
    ["could you put down ten pounds on the gauge?", "pressure"],
    ["did I mention it's been boiling since ten to two?", "boiling"],
    ["can you mark the jars as loaded in the canner?", "loaded"],
    ["would you record that a jar broke", "jar-broken"],
  ])("is a report: %s", (said, intent) => {
    expect(acted(said)).toEqual([intent]);
  });

  it("stays a note, and the doubt it raises is heard too", () => {
    expect(acted("note that the dill had gone to seed")).toEqual(["note"]);
    expect(acted("make a note that the flame went out")).toContain("boil-lost");
  });

  it("is not a report where it asks", () => {
    expect(acted("is it boiling yet?")).not.toContain("boiling");
    expect(acted("did they all seal?")).not.toContain("sealed");
  });
});

describe("a clause about a critical factor", () => {
  const asking = { ...context, factors: CRITICAL_FACTORS };
  const confirmed = (text: string) => {
    const { commands } = hear(text, asking);
    return commands.flatMap(({ confirms = [] }) => confirms).filter(({ held }) => held === "yes");
  };

  it("confirms it beside idle talk and beside other facts", () => {
    expect(confirmed("my sister is on the phone again, all new lids")).toHaveLength(1);
    expect(confirmed("eight pints filled, new lids, headspace is right")).toHaveLength(2);
  });

  it.each([
    "the lids are new, two old ones",
    "the lids are new, mostly",
    "the lids are new, I think",
    "the acid is in every jar, but one",
    "if the lids are new, we can go",
    "all new lids, my neighbor says",
    "I wish, all new lids",
  ])("confirms nothing where anything else may stand beside it: %s", (said) => {
    expect(confirmed(said)).toEqual([]);
  });
});

describe("talk to others in the room", () => {
  it.each(["Kids, hold on to the dog", "Mom, they all sealed at your place"])(
    "does nothing: %s",
    (said) => {
      expect(acted(said)).toEqual([]);
    },
  );
});

describe("dialect", () => {
  const words = (text: string) =>
    utteranceOf(text)
      .words.map(({ word }) => word)
      .join(" ");

  it("is read as the words it stands for", () => {
    expect(words("the watter's aff the bile an' it wisnae me")).toBe(
      "the water is off the boil and it was not me",
    );
    expect(words("it's boilin' an the lids wi a cup o' salt")).toBe(
      "it is boiling and the lids with a cup of salt",
    );
    expect(words("six o them")).toBe("six of them");
  });

  it("leaves alone what may mean something else", () => {
    expect(words("one o six, an hour, blue fur, a peach pit")).toBe(
      "one o six an hour blue fur a peach pit",
    );
  });
});

describe("a loss in words that nobody listed", () => {
  const processing = {
    ...context,
    loads: [
      {
        id: "L1",
        canner: "canner",
        stages: [
          { id: "process", title: "process", kind: "process" as const, state: "running" as const },
        ],
      },
    ],
  };
  const left = (text: string) => {
    const { commands, evidence } = hear(text, processing);
    return evidence ?? commands.find((command) => command.evidence !== undefined)?.evidence;
  };

  it.each([
    "hob's clicked off, the pan's gone all quiet",
    "she's stopped her bubbling, poor thing",
    "the breaker tripped and everything went dark in here",
    "I look and it is not more cooking, only warm",
    "the little blue ring under it isn't there any more",
    "somebody nudged the dial down, it's just steaming",
    "damn cat, the burner's dead",
    "the bubbles went away",
    "no more flame, gas bottle's empty I reckon",
    "it's gone flat calm in there",
    "it's sulking, barely a shimmer on top",
    "I've had it on low by mistake this whole while",
    "my lad's turned it down to a simmer",
    "it wisnae biling when I keeked in",
    "they were peeking out the top of the water when I looked",
    "water's dropped, I can see the rings",
    "I topped it up with cold and it went off for a bit",
    "took the canner off for a minute to clean under it",
    "we lost power a few minutes but it's back now",
  ])("leaves a loss, a suspicion or a trace: %s", (said) => {
    expect(left(said)).toBeDefined();
  });

  it.each([
    "my sister is getting married in June",
    "what a lovely morning",
    "no I like the blue one",
  ])("is not found in idle talk: %s", (said) => {
    expect(left(said)).toBeUndefined();
  });
});

describe("butter that goes into jars", () => {
  const leaves = (text: string) =>
    hear(text, kitchenContext({ running: [] })).evidence?.foods ?? [];

  it.each(["butter went in with it", "there may be some butter in there"])(
    "is a doubt about the food: %s",
    (text) => expect(leaves(text)).toContain("butter"),
  );

  it("is one as eggs are, which are on many a stove, where they are used up", () => {
    expect(leaves("I might as well use up the hard-boiled eggs")).not.toEqual([]);
  });

  it.each(["start the apple butter", "the bread and butter pickles are in there"])(
    "is none where it is part of a name: %s",
    (text) => expect(leaves(text)).not.toContain("butter"),
  );
});
