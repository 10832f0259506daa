import { describe, expect, it } from "vitest";
import type { Intent } from "../../../src/kitchen/command.ts";
import { foundSlots } from "../../../src/language/evidence/found-slots.ts";
import { Scan } from "../../../src/language/evidence/scan.ts";
import { phraseBook } from "../../../src/language/grammar/phrase-book.ts";
import { finishSlots } from "../../../src/language/values/finish-slots.ts";
import { slotReader } from "../../../src/language/values/slots.ts";
import { spokenNames } from "../../../src/language/values/targets.ts";
import { utteranceOf } from "../../../src/language/words.ts";
import { CRITICAL_FACTORS } from "../../../src/recipe/critical-factors.ts";
import { kitchenContext } from "../kitchen-context.ts";

const kitchen = kitchenContext({
  running: [{ id: "b-1", recipe: "dilled-green-beans", variety: "Provider" }],
  factors: CRITICAL_FACTORS,
});

function found(intent: Intent, text: string, context = kitchen) {
  const said = utteranceOf(text);
  const read = slotReader(said, context, spokenNames(context), phraseBook().plain);
  const raw = foundSlots(intent, new Scan(said, read));
  return raw && finishSlots(intent, raw, 0.5, said, context)?.slots;
}

describe("a guess that a sentence is about a critical factor", () => {
  it.each([
    ["I took those caps out of the drawer, they might be the used ones", "new-lids"],
    ["I filled every one right up to the brim", "headspace"],
    ["there is about a finger of room at the top", "headspace"],
    ["the jug only says four", "vinegar-5-percent"],
    ["that lemon was fresh off the tree", "bottled-juice"],
    ["the last two never got any citric", "acid-in-every-jar"],
    ["the jars only saw the dishwasher", "sterile-jars"],
    ["I put half the salt on the cabbage", "full-salt"],
    ["they had gone cold before I packed them", "hot-pack-hot"],
    ["the kraut smells wrong", "sound-ferment"],
  ])("finds which one by its words, and takes nothing to hold: %s", (text, factor) => {
    expect(found("factor", text)).toEqual({ factor, held: "unsure" });
  });

  it("is about the open question where its words name none", () => {
    const question = { kind: "inches", key: "headspace", guards: true } as const;
    const slots = found("factor", "somebody else did that", { ...kitchen, question });
    expect(slots).toEqual({ factor: "headspace", held: "unsure" });
  });

  it("is nothing where no factor is named, or none that the kitchen has", () => {
    expect(found("factor", "the cat sat on the mat")).toBeUndefined();
    expect(found("factor", "the lids are old", { ...kitchen, factors: [] })).toBeUndefined();
  });
});

describe("the values of a guess", () => {
  it.each<[Intent, string, object | undefined]>([
    ["explain", "what in blazes is a venting period", { term: "venting" }],
    ["explain", "what is all that about", undefined],
    [
      "convert",
      "I need three quarts, how many pints is that",
      { value: 3, from: "quart", to: "pint" },
    ],
    ["convert", "how many tablespoons make a cup", { value: 1, from: "cup", to: "tablespoon" }],
    ["change-batch", "wait, I make it sixteen pounds after all", { weightLb: 16 }],
    ["change-batch", "use the quarts for this lot", { jar: "quart" }],
    ["change-batch", "something about it is different", undefined],
    ["warn-ahead", "give us ten minutes notice, love", { minutes: 10 }],
    ["away", "off to the barn for twenty minutes then", { minutes: 20 }],
    ["spoiled", "one of them stinks to heaven", { sign: "off" }],
    ["place", "they are on the shelf in the cellar", { place: "cellar" }],
    ["begin", "I fancy having a go at pickled beets today", { recipe: "pickled-beets" }],
    ["begin", "I fancy having a go at it today", undefined],
    ["convert", "ounces in a pound, it has slipped my mind", { from: "pound", to: "ounce" }],
    ["convert", "nine pounds, in new money", { value: 9, from: "pound", to: "kilo" }],
    ["convert", "half an inch, in millimeters", { value: 0.5, from: "inch", to: "millimeter" }],
    ["change-batch", "the bowl was on the scale, take two pounds off", { moreLb: -2 }],
    ["change-batch", "they weighed out at five and a half", { weightLb: 5.5 }],
    ["change-batch", "you should know these are Dragon Tongue", { variety: "Dragon Tongue" }],
    ["change-batch", "I said pints and filled quarts", { jar: "quart" }],
    ["instead", "it is the beans, not the beets", { target: "beans" }],
    ["jar-broken", "oh no, one of them broke", { count: 1 }],
    ["jar-broken", "jar no. 4 broke", { jars: [4] }],
    ["how-much", "vinegar, ten pounds of beans, what does that want", { amount: 10, unit: "lb" }],
    ["may-i", "have I got time to get on with the beans", { act: "begin" }],
    ["may-i", "would rice vinegar do for the beans", { act: "other-vinegar" }],
  ])("are found anywhere: %s, %s", (intent, text, slots) => {
    const all = found(intent, text);
    if (slots === undefined) expect(all).toBeUndefined();
    else expect(all).toMatchObject(slots);
  });

  it("name no thing of the kitchen as whose jars they are", () => {
    expect(found("jar-broken", "one broke in the pot")).toEqual({ count: 1 });
    expect(found("jars-filled", "five filled with lids on")).toEqual({ count: 5 });
    expect(found("seal-failed", "two of the beans clicked")).toMatchObject({ target: "beans" });
  });
});
