/** What is said of lots that share their pots: begun, added, filled jar by jar, given up. */
import { describe, expect, it } from "vitest";
import { lotCounts } from "../../src/language/clauses/lot-counts.ts";
import type { Context, NamedBatch } from "../../src/language/context.ts";
import { hear } from "../../src/language/hear.ts";
import { utteranceOf } from "../../src/language/words.ts";
import { CRITICAL_FACTORS } from "../../src/recipe/critical-factors.ts";
import { wholeLibrary } from "../recipe/library-files.ts";
import { kitchenContext } from "./kitchen-context.ts";

const library = wholeLibrary();
const recipes = [...library.recipes.values()];
const BEANS = "dilled-green-beans";

const KIND_OF = { trim: "hands-on", brine: "heat", fill: "fill" } as const;

/** A kitchen with these lots of beans in one batch, one of whose stages is in hand. */
function kitchen(varieties: readonly string[], inHand: "trim" | "fill" | "process"): Context {
  const recipe = library.recipes.get(BEANS);
  if (!recipe) throw new Error("no beans in the library");
  const order = Object.keys(KIND_OF);
  const at = inHand === "process" ? order.length : order.indexOf(inHand);
  const stages = order.map((id, place) => {
    const kind = KIND_OF[id as keyof typeof KIND_OF];
    if (place < at) return { id, title: id, kind };
    const state = place === at ? ("running" as const) : ("waiting" as const);
    return { id, title: id, kind, state };
  });
  const running = varieties.map(
    (variety, place): NamedBatch => ({
      ...{ id: "20270814-1", recipe: BEANS, title: recipe.title, variety, stages },
      ...(varieties.length > 1 ? { lot: `20270814-${place + 1}` } : {}),
      names: [...recipe.names, recipe.yield.produce],
      mark: variety.charAt(0),
    }),
  );
  const inside = inHand === "process";
  const state = inside ? ("running" as const) : ("waiting" as const);
  const process = { id: "process", title: "process", kind: "process", state } as const;
  const loads = [{ id: "L1", canner: "big pot", stages: [process], ...(inside ? { inside } : {}) }];
  return kitchenContext({ recipes, library, running, loads, factors: CRITICAL_FACTORS });
}

const two = ["Provider", "Dragon Tongue"];
const three = [...two, "Blue Lake"];
const idle = kitchenContext({ recipes, library });
const filling = kitchen(three, "fill");
const trimming = kitchen(two, "trim");

function meant(text: string, context: Context) {
  const { reading, commands } = hear(text, context);
  return reading === "sure" ? commands.map(({ intent, slots }) => ({ intent, ...slots })) : [];
}

const begun = (variety: string, weightLb: number) => {
  return expect.objectContaining({ intent: "begin", recipe: BEANS, variety, weightLb });
};
type Told = { more?: true; corrected?: true; not?: number };
const filled = (target: string, count: number, told: Told = {}) => {
  return { intent: "jars-filled", target, count, ...told };
};

describe("several lots begun in one breath", () => {
  it.each([
    "let's do dilly beans today, got four pound of Provider, three of Dragon Tongue and about " +
      "two of the Blue Lake",
    "dilly beans this morning, four pounds Provider, three Dragon Tongue, two Blue Lake",
    "Dilly then, Provider four pounds, Dragon Tongue three, Blue Lake two.",
    "we'll start the dilly beans, there's four pounds of Provider, three of them Dragon Tongue " +
      "and two Blue Lake",
  ])("begin together: %s", (text) => {
    expect(meant(text, idle)).toEqual([
      begun("Provider", 4),
      begun("Dragon Tongue", 3),
      begun("Blue Lake", 2),
    ]);
  });

  it("keep the unit of the first weight", () => {
    const text =
      "dilly beans, from the Provider two kilos and from the Dragon Tongue one and a half";
    expect(meant(text, idle)).toEqual([begun("Provider", 4.409), begun("Dragon Tongue", 3.307)]);
  });

  it("weigh as much as the one before where that is said", () => {
    expect(meant("Provider five pounds, same for the Blue Lake, dilly.", idle)).toEqual([
      begun("Provider", 5),
      begun("Blue Lake", 5),
    ]);
  });

  it("take pounds and ounces", () => {
    const text = "dilly beans, Provider two pounds, Contender one pound nine ounces";
    expect(meant(text, idle)).toEqual([begun("Provider", 2), begun("Contender", 1.563)]);
  });
});

describe("one lot more while beans are running", () => {
  it.each([
    ["oh and chuck in a pound and a half of Contender as well", begun("Contender", 1.5)],
    ["oh and chuck in a pound and a half of contender as well", begun("contender", 1.5)],
    ["put three pounds of Contender in with those too", begun("Contender", 3)],
    ["I've got two pounds of Contender to go in as well", begun("Contender", 2)],
    ["add a pound of Royal Burgundy to the batch", begun("Royal Burgundy", 1)],
    ["we can squeeze in another pound of Contender", begun("Contender", 1)],
    ["make it three lots, two pounds of Contender with the others", begun("Contender", 2)],
    ["another lot for the same brine, Contender, two pounds", begun("Contender", 2)],
    ["found more, Blue Lake, three pounds, they go in with the rest", begun("Blue Lake", 3)],
    ["there's a bag on the porch, Contender, a pound and a half, add it", begun("Contender", 1.5)],
    ["Can you add Grandpa's lot too, two pounds of Contender", begun("Contender", 2)],
  ])("is begun: %s", (text, wanted) => {
    expect(meant(text, trimming)).toEqual([wanted]);
  });

  it("is begun without a weight", () => {
    expect(meant("same again with the Blue Lake", trimming)).toMatchObject([
      { intent: "begin", recipe: BEANS, variety: "Blue Lake" },
    ]);
  });

  it("is more of a lot that runs already", () => {
    expect(meant("throw two pounds of Dragon Tongue in with them", trimming)).toEqual([
      { intent: "change-batch", target: "dragon tongue", moreLb: 2 },
    ]);
    expect(meant("two more pounds of the Provider turned up, add them", trimming)).toEqual([
      { intent: "change-batch", target: "provider", moreLb: 2 },
    ]);
    expect(
      meant("throw two pounds of Dragon Tongue in with them", kitchen(["Provider"], "trim")),
    ).toEqual([begun("Dragon Tongue", 2)]);
  });

  it.each([
    "add a pound of salt to the brine as well",
    "throw in two pounds of onions as well",
    "put two pounds of ice in there",
    "throw in a pound of garlic too",
    "I should add the Contender some time",
    "we might put two pounds of Contender in tomorrow",
    "should I chuck in the Blue Lake",
    "my sister put three pounds of Contender in her freezer",
    "put two pounds of Contender in the fridge",
  ])("is not begun: %s", (text) => {
    expect(meant(text, trimming).map(({ intent }) => intent)).not.toContain("begin");
  });
});

describe("jars counted while they are filled", () => {
  it.each([
    ["and one Dragon Tongue", [filled("dragon tongue", 1)]],
    ["plus two of the Blue Lake", [filled("blue lake", 2, { more: true })]],
    [
      "five more Dragon Tongue and four Blue Lake filled",
      [filled("dragon tongue", 5, { more: true }), filled("blue lake", 4)],
    ],
    ["eight Provider, one Dragon Tongue", [filled("provider", 8), filled("dragon tongue", 1)]],
    ["eight of P and one of D", [filled("provider", 8), filled("dragon tongue", 1)]],
    ["eight provider one dragon tongue", [filled("provider", 8), filled("dragon tongue", 1)]],
    ["that's two more of the Provider", [filled("provider", 2, { more: true })]],
    [
      "four of Provider, two Dragon Tongue and a Blue Lake",
      [filled("provider", 4), filled("dragon tongue", 2), filled("blue lake", 1)],
    ],
    [
      "three each of the Provider and the Blue Lake",
      [filled("provider", 3), filled("blue lake", 3)],
    ],
    ["I'm at six of the Provider", [filled("provider", 6)]],
    ["another three Provider", [filled("provider", 3, { more: true })]],
    ["another Blue Lake", [filled("blue lake", 1, { more: true })]],
    ["Provider seven, Dragon Tongue five.", [filled("provider", 7), filled("dragon tongue", 5)]],
    [
      "Provider's at four and the Blue Lake made three",
      [filled("provider", 4), filled("blue lake", 3)],
    ],
    [
      "five bloody jars of Provider, three of Blue Lake",
      [filled("provider", 5), filled("blue lake", 3)],
    ],
    [
      "Four, no, five Provider filled, and, phew, two of the Blue Lake.",
      [filled("provider", 5, { corrected: true }), filled("blue lake", 2, { corrected: true })],
    ],
  ])("are of the lots that are named: %s", (text, wanted) => {
    expect(meant(text, filling)).toEqual(wanted);
  });

  it.each([
    ["six, not five of the Dragon Tongue", "dragon tongue", 6, { not: 5 }],
    ["make that six Dragon Tongue", "dragon tongue", 6, { corrected: true }],
    ["no, seven of the Provider", "provider", 7, { corrected: true }],
    ["Provider's only six. I said seven. Six.", "provider", 6, { not: 7 }],
    ["sorry, the Blue Lake are not five, are six", "blue lake", 6, { not: 5 }],
    [
      "one is hiding behind the kettle, make that nine Provider",
      "provider",
      9,
      { corrected: true },
    ],
    ["the Provider were seven, not eight", "provider", 7, { not: 8 }],
    ["scratch that, six of the Provider", "provider", 6, { corrected: true }],
    ["it's four Provider I've filled, not five", "provider", 4, { not: 5 }],
  ] as const)("are put right: %s", (text, target, count, told) => {
    expect(meant(text, filling)).toEqual([filled(target, count, told)]);
  });

  it("are counted beside a critical factor and a loss", () => {
    const [count, ...factors] = meant("eight Provider, and half an inch of headspace", filling);
    expect(count).toEqual(filled("provider", 8));
    expect(factors).toMatchObject([{ intent: "factor", factor: "headspace" }]);
    const lost = meant("six Provider, one Dragon Tongue, and the boil's gone", filling);
    expect(lost.map(({ intent }) => intent)).toEqual(["jars-filled", "jars-filled", "boil-lost"]);
  });

  it.each([
    "did I do one Dragon Tongue yet",
    "did I do one Dragon Tongue",
    "how many Dragon Tongue is that",
    "Mum did six Provider last year",
    "six Provider would be nice",
    "I think six Provider, maybe five",
    "one Dragon Tongue broke",
    "two Provider left to go",
    "six Provider sealed",
    "I dropped one and it smashed, it was a Blue Lake",
    "if I get six Provider I'm happy",
  ])("are not counted: %s", (text) => {
    expect(meant(text, filling).map(({ intent }) => intent)).not.toContain("jars-filled");
  });

  it("are not counted beside others of which more is said", () => {
    const text = "six Provider, three Blue Lake went on the floor";
    expect(lotCounts(utteranceOf(text), filling)).toBeUndefined();
    expect(lotCounts(utteranceOf("six Provider, three Blue Lake"), filling)).toBeDefined();
  });

  it("are counted where no more is known than which lots run", () => {
    const running = two.map((variety, at) => ({
      id: `${BEANS}-${at + 1}`,
      recipe: BEANS,
      variety,
    }));
    const context = kitchenContext({ recipes, library, running });
    expect(meant("eight Provider, one Dragon Tongue", context)).toEqual([
      filled("provider", 8),
      filled("dragon tongue", 1),
    ]);
  });

  it("are no counts of filling once they are in the canner, nor a lot begun", () => {
    const processing = kitchen(two, "process");
    for (const context of [processing, trimming]) {
      const intents = meant("and one Dragon Tongue", context).map(({ intent }) => intent);
      expect(intents).not.toContain("jars-filled");
      expect(intents).not.toContain("begin");
    }
  });
});

describe("a lot given up", () => {
  it.each([
    ["give up on the Provider, they're all stringy", "provider"],
    ["forget the Provider, they're going to the chickens", "provider"],
    ["chuck the Blue Lake, they're no good", "blue lake"],
    ["the Blue Lake are going on the compost, forget them", "blue lake"],
    ["drop the Blue Lake. Carry on with the rest.", "blue lake"],
    ["leave the Dragon Tongue out, they've gone soft", "dragon tongue"],
    ["the hell with the Dragon Tongue, only Provider now", "dragon tongue"],
    ["them Provider's gone tough as rope, leave 'em out, the others'll do", "provider"],
    ["ach, the Dragon Tongue's a lost cause, bin it, but keep the Provider", "dragon tongue"],
    ["the Blue Lake I don't do anymore, they are for the salsa", "blue lake"],
  ])("is the one that is named, and nothing is left over: %s", (text, target) => {
    expect(meant(text, filling)).toEqual([{ intent: "abandon", target }]);
    expect(hear(text, filling).unused ?? []).toEqual([]);
  });

  it.each([
    "my sister gave up on her Provider",
    "don't give up on the Provider",
    "should I drop the Blue Lake",
    "never drop the Provider jars",
    "six Provider, forget it",
    "if they're stringy we drop the Blue Lake",
  ])("is none: %s", (text) => {
    expect(meant(text, filling).map(({ intent }) => intent)).not.toContain("abandon");
  });
});

describe("the canner gets hot", () => {
  it.each(["water's hot in the canner", "the water in the canner's hot"])("%s", (text) => {
    expect(meant(text, filling)).toEqual([{ intent: "done", target: "canner" }]);
  });

  it.each(["canner's up to 140", "one forty in the canner"])("%s", (text) => {
    expect(meant(text, filling)).toMatchObject([{ intent: "temperature", value: 140, unit: "F" }]);
  });
});

const weighs = (target: string, slots: { weightLb?: number; moreLb?: number }) => {
  return { intent: "change-batch", target, ...slots };
};

describe("lots that were weighed wrong, before their jars are filled", () => {
  it.each([
    ["no that's wrong, the Provider was five, I left the pan on", [["provider", { weightLb: 5 }]]],
    ["the dragon tongue was more like two and a half", [["dragon tongue", { weightLb: 2.5 }]]],
    ["sorry, the dragon is three pounds, provider two", [["dragon tongue", { weightLb: 3 }]]],
    ["take a pound off the Provider, they were all string", [["provider", { moreLb: -1 }]]],
    [
      "take eight ounces off both of those",
      [
        ["provider", { moreLb: -0.5 }],
        ["dragon tongue", { moreLb: -0.5 }],
      ],
    ],
    ["the Provider is three pound ten", [["provider", { weightLb: 3.625 }]]],
    ["half a pound more of the Provider", [["provider", { moreLb: 0.5 }]]],
    ["three quarters of a pound more of the Provider", [["provider", { moreLb: 0.75 }]]],
  ] as const)("weigh what is said now: %s", (text, changes) => {
    const told = meant(text, trimming);
    expect(told.slice(0, changes.length)).toEqual(
      changes.map(([target, slots]) => weighs(target, slots)),
    );
  });

  it.each([
    "the Provider was five minutes late",
    "if the Provider was five we'd be rich",
    "was the Provider five pounds",
    "last year the Provider was five pounds",
  ])("weigh as before: %s", (text) => {
    expect(meant(text, trimming).filter(({ intent }) => intent === "change-batch")).toEqual([]);
  });

  it("are no weights while jars are filled", () => {
    expect(meant("the Provider was five, not six", filling)).toEqual([
      filled("provider", 5, { not: 6 }),
    ]);
  });
});

describe("lots that are begun while a question of set-up waits", () => {
  it("are begun, each of them", () => {
    const question = { kind: "holds", key: "set-up", mayWait: true } as const;
    const text = "start dilly beans, five pounds of the Provider and two of Jade";
    expect(meant(text, { ...idle, question })).toEqual([begun("Provider", 5), begun("Jade", 2)]);
  });
});

describe("lots as a voice is written down, without capitals", () => {
  it("begin, each with its weight", () => {
    const text =
      "right so today its dilly beans ive got four pounds of kentucky wonder about two and a " +
      "half of the contender and one pound royal burgundy all going in the one brine";
    expect(meant(text, idle)).toEqual([
      begun("kentucky wonder", 4),
      begun("contender", 2.5),
      begun("royal burgundy", 1),
    ]);
  });

  it("begin by a list of names that nobody weighed yet", () => {
    const list = meant("dilly beans. contender, kentucky wonder and blue lake", idle);
    expect(list.map((one) => "variety" in one && one.variety)).toEqual([
      "contender",
      "kentucky wonder",
      "blue lake",
    ]);
  });

  it.each([
    "dilly beans. salt, vinegar and dill",
    "dilly beans, yes, okay then",
    "dilly beans. how long, how hot",
  ])("are no lots where the words are no names: %s", (text) => {
    const begins = meant(text, idle).filter(({ intent }) => intent === "begin");
    expect(begins.length).toBeLessThan(2);
  });

  it.each([
    ["add contender, four pounds", "contender", 4],
    ["oh and royal burgundy too, pound and three quarters", "royal burgundy", 1.75],
  ])("join what is running: %s", (text, variety, weightLb) => {
    expect(meant(text, trimming)).toEqual([begun(variety, weightLb)]);
  });

  it("are counted by a word of their names that says nothing else", () => {
    expect(meant("four provider and three of the dragons", filling)).toEqual([
      filled("provider", 4),
      filled("dragon tongue", 3),
    ]);
  });

  it("are not counted anew where jars go into the canner", () => {
    const told = meant("okay in the canner now, four provider and three of the dragons", filling);
    expect(told.filter(({ intent }) => intent === "jars-filled")).toEqual([]);
  });
});
