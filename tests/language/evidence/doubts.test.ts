/** What a sentence that nothing was done about leaves, for each of its telling words. */
import { describe, expect, it } from "vitest";
import { commandOf } from "../../../src/kitchen/command.ts";
import { doubtIn, withEvidence } from "../../../src/language/evidence/doubts.ts";
import type { Frame } from "../../../src/language/model/corpus.ts";
import { utteranceOf } from "../../../src/language/words.ts";

const doubt = (text: string, frame: Frame = "said", answered = false) =>
  doubtIn(utteranceOf(text), { frame, intents: [] }, answered);

describe("a likely loss", () => {
  it.each([
    ["the flame must have gone out", "boil"],
    ["the burner cut", "boil"],
    ["it stopped its boiling", "boil"],
    ["boiling just quit", "boil"],
    ["it only was simmering", "boil"],
    ["hardly a simmer", "boil"],
    ["scarcely bubbling", "boil"],
    ["it is not really boiling", "boil"],
    ["somebody turned the stove off", "boil"],
    ["the breaker's tripped", "boil"],
    ["I blew the old fuse", "boil"],
    ["I leaned on the knob", "boil"],
    ["I've knocked the dial down", "boil"],
    ["the knob got nudged", "boil"],
    ["the needle is down", "pressure"],
    ["we are losing steam", "pressure"],
    ["the weight has quit", "pressure"],
    ["the lids are showing", "water"],
    ["the water is low", "water"],
    ["those were used lids", "lids"],
    ["lids that are old", "lids"],
    ["there was no lemon in it", "acid"],
    ["four percent", "acid"],
    ["I poured cold water over the canner", "pressure"],
    ["we opened it with some steam in it", "pressure"],
    ["I knocked the weight aside", "pressure"],
    ["I pulled the jars too soon", "boil"],
    ["the heat went off before its time", "boil"],
    ["it could have dropped a little", "boil"],
    ["those are up to the brim", "jars"],
    ["the filled ones stood for two hours", "jars"],
    ["it had gone cold by then", "jars"],
    ["we are a good deal higher up now", "jars"],
    ["a lid had dents", "lids"],
    ["maybe one jar went without the citric acid", "acid"],
    ["I can't remember the lemon", "acid"],
  ])("is suspected by a piece of it: %s", (text, about) => {
    expect(doubt(text)).toMatchObject({ strength: "suspicion", about });
  });

  it.each<Frame>(["wished", "imagined", "elsewhere", "idle", "asked"])(
    "is no more than a trace where it is %s",
    (frame) => {
      expect(doubt("the flame must have gone out", frame)?.strength).toBe("trace");
    },
  );

  it("is no more than a trace where it is a question, or about another year", () => {
    expect(doubt("has the flame gone out?")?.strength).toBe("trace");
    expect(doubt("the flame had gone out last year")?.strength).toBe("trace");
  });

  it.each("was were had went stopped quit lost came ran fell dropped died turned".split(" "))(
    "may be of jars that are out already where it %s",
    (word) => {
      expect(doubt(`the heat ${word} out`)?.past).toBe(true);
    },
  );
});

describe("words that fit nothing", () => {
  it.each([
    ["vinegar lemon lime citric acid percent", "acid"],
    ["pressure needle weight rocking jiggling hissing pounds psi steam", "pressure"],
    ["gauge dial", "gauge"],
    ["boil simmer bubbles rolling flame burner fire gas heat hob stove spits sputters", "boil"],
    ["flickers power electric propane pilot knob fizzing murmurs shivers trembles", "boil"],
    ["lid band rubber reused", "lids"],
    ["water covered uncovered poking sticking submerged dry", "water"],
  ])("leave a trace: %s", (words, about) => {
    for (const word of words.split(" ")) {
      expect(doubt(`that ${word} there again`)).toMatchObject({ strength: "trace", about });
    }
  });

  const elsewhere =
    "kettle coffee tea pasta soup eggs toast bacon rice bath shower dinner supper lunch " +
    "breakfast laundry dishwasher";
  it.each(elsewhere.split(" "))("leave none beside %s", (word) => {
    expect(doubt(`the ${word} is boiling over`)).toBeUndefined();
  });

  it("leave none where they are cooked for a meal", () => {
    expect(doubt("the potatoes for supper are simmering")).toBeUndefined();
  });

  it("leave a trace of the foods that they name, and of no watermelon as water", () => {
    expect(doubt("the pumpkin smells fine")).toMatchObject({ about: "food", foods: ["pumpkin"] });
    expect(doubt("a bowl of watermelon is here")).toMatchObject({ about: "food" });
    expect(doubt("I ran out of berries so it's mostly figs", "said", true)).toMatchObject({
      about: "food",
      foods: ["berry", "fig"],
    });
    expect(doubt("the figs are ripe", "asked", true)).toBeUndefined();
  });

  it.each([
    ["they have been sitting since breakfast", "jars"],
    ["I filled those this morning", "jars"],
    ["our kitchen moved up to 6000 feet", "jars"],
    ["we thinned out the vinegar a bit", "acid"],
    ["I put in fresh lemons", "acid"],
    ["the dial is two pounds off", "gauge"],
  ] as const)("suspect how jars were filled or measured: %s", (words, about) => {
    expect(doubt(words)).toMatchObject({ strength: "suspicion", about });
  });

  it("leave none where a question about them was answered", () => {
    expect(doubt("that water there again", "asked", true)).toBeUndefined();
    expect(doubt("nice weather")).toBeUndefined();
  });
});

describe("heat that is told to be there", () => {
  const raised = (intent: "boiling" | "pressure", text: string) =>
    withEvidence(commandOf(intent, {}), text).evidence?.strength;

  it.each([
    "it's boiling again",
    "boiling again, and I said nothing",
    "the boil came back",
    "we're back to a boil on the back burner",
    "relit, and boiling",
    "restarted it and it boils",
    "the boil has returned",
  ])("was gone before, where it came back: %s", (text) => {
    expect(raised("boiling", text)).toBe("suspicion");
  });

  it.each(["now it's boiling", "it's finally boiling", "it has reached a boil", "there it goes"])(
    "leaves a trace, where it arrives: %s",
    (text) => {
      expect(raised("boiling", text)).toBe("trace");
    },
  );

  it.each([
    "it's boiling",
    "it's boiling on the back burner",
    "the pot at the back is boiling",
    "I'm back and it's boiling",
    "I just got back, it's boiling",
    "I say again, it is boiling",
    "still boiling on the front ring, back and forth",
    "it kept boiling, now as before",
    "it never stopped, boiling now",
  ])("was always there, where nothing says that it came back: %s", (text) => {
    expect(raised("boiling", text)).toBeUndefined();
  });

  it("is a plain reading where a gauge arrives, and a doubt where it comes back", () => {
    expect(raised("pressure", "now it's fifteen pounds")).toBeUndefined();
    expect(raised("pressure", "it's back at fifteen pounds")).toBe("suspicion");
  });
});
