import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { questionFrom } from "../../../src/commands/open/understand.ts";
import { confirmInClause } from "../../../src/language/answers/confirms.ts";
import { FACTOR_WORDINGS } from "../../../src/language/answers/factor-wordings.ts";
import { hear } from "../../../src/language/hear.ts";
import { understand } from "../../../src/language/understand.ts";
import { utteranceOf } from "../../../src/language/words.ts";
import { CRITICAL_FACTORS } from "../../../src/recipe/critical-factors.ts";
import { kitchenContext } from "../kitchen-context.ts";

const context = kitchenContext({ question: { kind: "yes-no" }, factors: CRITICAL_FACTORS });

function heldIn(text: string, held: "yes" | "no" | "unsure"): string[] {
  const { confirms = [] } = understand(text, context);
  return confirms.filter((one) => one.held === held).map(({ factor }) => factor);
}

describe("a clause of several", () => {
  it("confirms a factor where it says so, and never where it asks", () => {
    const inClause = (text: string) => {
      const said = utteranceOf(text);
      return confirmInClause(said, said, CRITICAL_FACTORS);
    };
    expect(inClause("the vinegar is five percent")).toMatchObject({ held: "yes" });
    expect(inClause("the vinegar is five percent?")).toBeUndefined();
  });
});

describe("a whole clause", () => {
  it.each([
    ["five percent", "vinegar-5-percent"],
    ["5%", "vinegar-5-percent"],
    ["it's five percent", "vinegar-5-percent"],
    ["the vinegar is five percent", "vinegar-5-percent"],
    ["well, the vinegar's labeled five percent", "vinegar-5-percent"],
    ["the label says five percent", "vinegar-5-percent"],
    ["yes, new lids", "new-lids"],
    ["yes new lids", "new-lids"],
    ["the lids are brand new", "new-lids"],
    ["they're all new", "new-lids"],
    ["the juice is bottled", "bottled-juice"],
    ["every jar got its acid", "acid-in-every-jar"],
    ["we boiled the empty jars", "sterile-jars"],
    ["it all went in hot", "hot-pack-hot"],
    ["the headspace is checked in every jar", "headspace"],
    ["the ferment is sound", "sound-ferment"],
    ["no slime, no mold below the surface and no bad smell", "sound-ferment"],
    ["all the canning salt is in", "full-salt"],
    ["the bottle says five per cent acidity, dear", "vinegar-5-percent"],
    ["white vinegar, five percent on the label", "vinegar-5-percent"],
    ["the damn lids are all brand new, straight out of the box", "new-lids"],
    ["they're new, I opened the box this morning", "new-lids"],
    ["I put two tablespoons of lemon juice in every single jar", "acid-in-every-jar"],
    ["every quart got its half teaspoon of citric acid", "acid-in-every-jar"],
    ["we used the bottled kind", "bottled-juice"],
    ["the little jam jars were boiled for a full ten minutes", "sterile-jars"],
    ["the beets were piping hot when I packed them", "hot-pack-hot"],
    ["half an inch of headspace in every jar", "headspace"],
    ["there's an inch of room at the top", "headspace"],
  ])("confirms: %s", (text, factor) => {
    expect(heldIn(text, "yes")).toEqual([factor]);
    expect(understand(text, context).intent).toBe("factor");
  });

  it("is known for every factor that recipes share, both ways", () => {
    for (const { id } of CRITICAL_FACTORS) {
      const { yes = [], no = [] } = FACTOR_WORDINGS.get(id) ?? {};
      expect({ id, known: yes.length > 0 && no.length > 0 }).toEqual({ id, known: true });
    }
    expect([...FACTOR_WORDINGS]).toHaveLength(CRITICAL_FACTORS.length);
  });

  it("confirms beside a report that is complete without it", () => {
    for (const text of ["eight pints filled, new lids", "8 pints filled with new lids"]) {
      expect(understand(text, context)).toMatchObject({
        intent: "jars-filled",
        slots: { count: 8, size: "pint" },
        confirms: [{ factor: "new-lids", held: "yes" }],
      });
    }
    expect(heldIn("done, new lids, and the headspace is right", "yes")).toHaveLength(2);
  });

  it.each([
    ["it's 4.5%", "vinegar-5-percent"],
    ["four percent", "vinegar-5-percent"],
    ["less than five percent", "vinegar-5-percent"],
    ["it isn't five percent", "vinegar-5-percent"],
    ["not five percent", "vinegar-5-percent"],
    ["not store-bought", "vinegar-5-percent"],
    ["homemade vinegar", "vinegar-5-percent"],
    ["old lids", "new-lids"],
    ["no, old lids", "new-lids"],
    ["they're not new", "new-lids"],
    ["eight pints filled, old lids", "new-lids"],
    ["fresh lemon juice", "bottled-juice"],
    ["the jars weren't boiled", "sterile-jars"],
    ["it all went in cold", "hot-pack-hot"],
    ["the headspace wasn't checked", "headspace"],
    ["it's slimy", "sound-ferment"],
    ["half the salt", "full-salt"],
    ["we forgot the lemon juice in the last two", "acid-in-every-jar"],
    ["no lemon went in", "acid-in-every-jar"],
    ["I squeezed it myself", "bottled-juice"],
    ["those are the same lids as last year", "new-lids"],
    ["they've been used once", "new-lids"],
    ["we only rinsed the jam jars under the tap", "sterile-jars"],
    ["the carrots went in raw", "hot-pack-hot"],
    ["three of the jars are full to the brim", "headspace"],
  ])("denies: %s", (text, factor) => {
    expect(heldIn(text, "no")).toEqual([factor]);
    expect(heldIn(text, "yes")).toEqual([]);
  });

  it.each(["I think it's five percent", "new lids, I think", "the lids are new, probably"])(
    "said with a doubt is neither: %s",
    (text) => {
      expect(heldIn(text, "unsure")).toHaveLength(1);
    },
  );

  it("confirms a recipe's own factor by the words the recipe brings", () => {
    const factors = [{ id: "cold-cellar", words: ["the cellar is cold"] }];
    const command = understand("yes, the cellar is cold", { ...context, factors });
    expect(command.confirms).toEqual([{ factor: "cold-cellar", held: "yes" }]);
    expect(understand("the cellar is not cold", { ...context, factors }).confirms).toBeUndefined();
  });
});

/** Each contains words or a number of a confirmation, and is not one. */
const NOTHING_CONFIRMED = `
4.5
5
five
it's five
it's 4.5%
four point five percent
4 and a half percent
less than five
less than five percent
under five percent
about five percent
around 5 percent
nearly five percent
almost 5%
six percent I think
fifty five percent
five percent of the jars broke
half of it is five percent
some of it is five percent
the other bottle is five percent
I ran out of the five percent
we're out of five percent vinegar
I need five percent vinegar
get the five percent
is it five percent?
it isn't five percent
not five percent
it should be five percent
it used to be five percent
the book says five percent
she said it's five percent
if it's five percent we're good
I wish it were five percent
I hope it's five percent
I think it's five percent
five percent, I guess
I diluted the five percent with water
water and five percent vinegar
five percent salt
one of the vinegars is five percent
half of them are new
some of the lids are new
two new lids
most of the lids are new
not all the lids are new
the lids are not new
not new lids
no new lids
not new
old lids
old and new lids
new and old lids
the lids are new to me
I bought new lids yesterday
I need new lids
we're out of new lids
where are the new lids
new lids tomorrow
the new lids are in the drawer
should I use new lids
do I need new lids
new lids?
the lids were new last year
maybe new lids
I think so
I guess so
probably
I believe so
yes, I think so
I'm pretty sure
not sure
it should be
eight pints filled, half of them with new lids
eight pints filled, three with new lids
eight pints filled, not new lids
eight pints filled, I think new lids
eight pints filled but not with new lids
eight pints filled with old lids and two new lids
eight pints filled with whatever new lids were left
no slime
no mold
it smells clean
the ferment was sound yesterday
the salt is in
canning salt
half of the canning salt is in
some jars got acid
not every jar got its acid
every jar but one got its acid
the jars were boiled last week
boil the jars
two of the jars were boiled
one jar went in hot
six jars new lids
six jars, headspace checked
old lids and new lids
eight pints filled, old lids, new lids
it went in almost hot
the headspace is checked in six jars
check the headspace
the headspace needs to be checked
bottled water
the bottled lemon juice ran out
half bottled juice half fresh
mom says five percent
said five percent
the other vinegar is five percent
I have five percent vinegar in the cellar
the recipe says five percent
the lids I threw out were fresh out of the box
new lids on all but one
the lids are fresh out of the drawer
I left half an inch in most of them
about half an inch of headspace
half an inch of headspace, I'd guess
half an inch of headspace is what you want
half an inch of water over the lids
an inch of water at the top
lemon juice in every jar but one
lemon juice in almost every jar
I should put lemon juice in every jar
two tablespoons of lemon juice in each jar, right?
the jars were boiled five minutes
the jars were boiled ten minutes last week
the beets went in hot water
the first two went in hot
did you see, the lids are brand new?
my neighbor says the lids are brand new
when the lids are brand new
the lids are brand new next time
`
  .trim()
  .split("\n");

describe("words that confirm nothing", () => {
  it("are many", () => {
    expect(new Set(NOTHING_CONFIRMED).size).toBeGreaterThanOrEqual(60);
  });

  it.each(NOTHING_CONFIRMED)("%s", (text) => {
    expect(heldIn(text, "yes")).toEqual([]);
    expect(understand(text, context).intent).not.toBe("yes");
  });
});

describe("an answer in a person's own words", () => {
  const rows = readFileSync(new URL("right-answers.tsv", import.meta.url), "utf8")
    .split("\n")
    .filter((line) => line !== "" && !line.startsWith("#"))
    .map((line) => line.split("\t") as [string, string]);
  const value: Record<string, number> = { headspace: 0.5, "vinegar-5-percent": 5, "gauge-off": 0 };

  function heardAsked(key: string, text: string) {
    const question = questionFrom(key);
    const factors = CRITICAL_FACTORS.filter(({ id }) => id === key);
    return hear(text, kitchenContext({ factors, ...(question ? { question } : {}) }));
  }

  /** Whether it is taken to hold, or for the value that is right. */
  function holds(key: string, text: string): boolean {
    return heardAsked(key, text).commands.some(({ intent, slots }) => {
      if (intent === "factor") return slots.factor === key && slots.held === "yes";
      if (intent !== "answer" || slots.unsure) return false;
      return key in value ? slots.value === value[key] : slots.held === "yes";
    });
  }

  it.each([...new Set(rows.map(([key]) => key))])("that is right is taken at once: %s", (key) => {
    const list = rows.filter(([one]) => one === key);
    expect(list.length).toBeGreaterThanOrEqual(25);
    expect(list.filter(([, text]) => !holds(key, text))).toEqual([]);
  });

  it.each([
    ["about a finger, half an inch", "headspace"],
    ["half an inch, by eye", "headspace"],
    ["five percent, I think", "vinegar-5-percent"],
    ["brand new, I guess", "new-lids"],
  ])("that is a guess leaves it open, and is no doubt: %s", (text, key) => {
    const { commands, evidence } = heardAsked(key, text);
    expect(evidence).toBeUndefined();
    expect(JSON.stringify(commands)).toContain("unsure");
  });
});
