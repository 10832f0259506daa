import { describe, expect, it } from "vitest";
import { onlyBatch, play, theLibrary } from "./play.ts";

const BEANS = "dilled-green-beans";
const BOIL = "0:00 [cook until process]\n+0:00 it's boiling and the lids are covered\n";

/** What was answered to the last line of a script. */
async function answered(recipes: string, script: string, options = {}): Promise<string> {
  const before = await play(recipes, script.slice(0, script.lastIndexOf("\n")), options);
  const played = await play(recipes, script, options);
  expect(played.refused).toEqual(before.refused);
  // A question changes nothing that is written down.
  const facts = (journal: typeof played.journal) =>
    journal.filter(({ type }) => type !== "due" && type !== "asked" && type !== "closed").length;
  expect(facts(played.journal)).toBe(facts(before.journal));
  return played.said.at(-1)?.text ?? "";
}

describe("whether the heat may be turned off", () => {
  it.each([
    [
      "while the time runs",
      `${BOIL}+0:09 can I turn it off now`,
      "No: six minutes are left, until twenty to ten.",
    ],
    [
      "before it has begun",
      "0:00 [cook until process]\n+0:01 can I turn the heat off",
      /^No: its time hasn't begun/,
    ],
    [
      "after a loss",
      `${BOIL}+0:05 it went off the boil\n+0:01 can I turn the heat off`,
      /^No: bring it back up\. Then all fifteen minutes start again/,
    ],
    [
      "when the time is full",
      `${BOIL}+0:16 can I turn the heat off`,
      /^Yes, and take the lid off, away from you\. Then the jars wait five minutes/,
    ],
  ])("is worked out %s", async (_when, script, answer) => {
    expect(await answered(BEANS, script)).toMatch(answer);
  });

  it("under pressure leaves the canner shut", async () => {
    const script = "0:00 [cook until process]\n+0:00 14 pounds\n+0:21 can I turn the heat off";
    const said = await answered("snap-beans", script, { gauge: "dial" });
    expect(said).toBe("Yes. Leave it shut: the pressure has to fall to zero by itself.");
  });

  it("has no answer where nothing is on", async () => {
    expect(await answered("cucumber-seed", "0:00 what now\n+0:00 can I turn the heat off")).toMatch(
      /^Nothing that I know of is on the heat/,
    );
  });
});

describe("whether the canner may be opened", () => {
  it.each([
    [
      "while it boils",
      `${BOIL}+0:09 can I open the canner`,
      /^Leave it on: six minutes are left, until twenty to ten/,
    ],
    ["when the heat may go off", `${BOIL}+0:16 can I open the canner`, /^When the heat is off/],
  ])("is worked out %s", async (_when, script, answer) => {
    expect(await answered(BEANS, script)).toMatch(answer);
  });

  it.each([
    ["at pressure", "+0:05 can I open the canner", /^No, never under pressure/],
    ["coming down", "+0:21 heat's off\n+0:10 can I open the canner", /^No, never under pressure/],
    [
      "at zero",
      "+0:21 heat's off\n+0:40 the pressure is zero\n+0:04 can I open the canner",
      /^Not yet: six minutes are left, until/,
    ],
    [
      "after the wait",
      "+0:21 heat's off\n+0:40 the pressure is zero\n+0:11 can I open the canner",
      /^Yes: weight off, unlock it/,
    ],
  ])("of pressure is worked out %s", async (_when, lines, answer) => {
    const script = `0:00 [cook until process]\n+0:00 14 pounds\n${lines}`;
    expect(await answered("snap-beans", script, { gauge: "dial" })).toMatch(answer);
  });
});

describe("other questions of the moment", () => {
  it.each([
    [
      `${BOIL}+0:09 what happens if I stop`,
      /^Six minutes are left, until twenty to ten\. If it stops, all fifteen .* start again\. By/,
    ],
    [`${BOIL}+0:09 what happens if it stops boiling`, /all fifteen minutes start again/],
    [
      `${BOIL}+0:05 it went off the boil\n+0:10 is it too late to start over`,
      /^There is time until/,
    ],
    [`${BOIL}+0:09 can I lift the jars out yet`, "No: six minutes are left, until twenty to ten."],
    [
      `${BOIL}+0:09 can I leave the house`,
      /somebody has to watch the dilled green beans until twenty to ten/,
    ],
    [
      `${BOIL}+0:09 do I have to stay with it`,
      /^Stay: somebody has to watch the dilled green beans until twenty to ten/,
    ],
    [
      `${BOIL}+0:09 can I begin the pickled beets now`,
      /^It can begin: say start pickled beets\. The canner has the dilled .* until twenty to ten/,
    ],
    [
      `${BOIL}+0:09 what's in the canner`,
      /^The dilled green beans, eight jars: six minutes are left, until twenty to ten/,
    ],
    [
      "0:00 what now\n+0:00 is the canner free",
      /^The canner is warming for the dilled green beans/,
    ],
    [`${BOIL}+0:09 how do we stand`, /^All is well: one batch running/],
    [`${BOIL}+0:05 it went off the boil\n+0:01 are we late`, /has stopped: bring it back/],
    [
      `${BOIL}+0:01 timer for two minutes\n+0:03 which one is that`,
      /^The two minute timer|^The 2 minute timer/,
    ],
    [
      `${BOIL}+0:09 are you sure it is fifteen minutes`,
      /^Yes: 15 minutes for the dilled green beans, in pints at 6,200 feet\. By USDA/,
    ],
    ["0:00 what now\n+0:00 I've only got three cups of vinegar", /^That does for 3 pounds of/],
    ["0:00 what now\n+0:00 I'm out of canning salt", /^Table salt is safe in its place/],
    ["0:00 what now\n+0:00 can I use fresh lemon juice", /^No: use bottled/],
  ])("are answered: %j", async (script, answer) => {
    expect(await answered(BEANS, script)).toMatch(answer);
  });

  it("give way to somebody hurt, said as an alarm", async () => {
    const played = await play(BEANS, `${BOIL}+0:04 I burned my hand\n+0:00 [cook until done]`);
    const said = played.said.find(({ text }) => text.startsWith("Cool running water"));
    expect(said?.rank).toBe("alarm");
    expect(onlyBatch(played).verdict).toBe("as-tested");
  });
});

describe("what is read out", () => {
  const READ = "0:00 what now\n+0:00 read me the ingredients one by one\n";

  it("comes one thing at a time, when the cook says next, which ends no stage", async () => {
    const played = await play(BEANS, `${READ}+0:01 next\n+0:01 how much dill per jar\n+0:01 next`);
    const texts = played.said.map(({ text }) => text);
    expect(texts[texts.length - 4]).toMatch(
      /^\d things for the dilled green beans; say next after/,
    );
    expect(texts.at(-3)).toMatch(/dill/);
    expect(texts.at(-2)).toMatch(/dill.*in each pint/);
    expect(texts.at(-1)).toMatch(/garlic/i);
    expect(played.journal.some(({ type }) => type === "stage-ended")).toBe(false);
  });

  it("is over with the last one, or when something is done meanwhile", async () => {
    const played = await play(BEANS, `${READ}+0:01 timer for ten minutes\n+0:01 more`);
    expect(played.said.at(-1)?.text).toBe("That was all.");
  });

  it.each([
    ["what recipes do you know", /^\d+ recipes: pickles and salsas, fruit, tomatoes/],
    ["what recipes do you know\n+0:00 more", /^Pickles and salsas: bread-and-butter pickles/],
    ["how much vinegar for twelve pints", /^White vinegar, 5 percent: 6 cups/],
    ["how much salt for ten pounds of cabbage", /salt.*(cup|tablespoon)/],
    ["how many jars from eight pounds", /^About 16 pints/],
    ["how many cups in a quart", /^1 quart is 4 cups\.$/],
    ["how many grams are in a cup of sugar", /^1 cup of sugar is about 200 grams\. By USDA/],
    ["what is one hundred eighty degrees fahrenheit in celsius", /is 82\.2 degrees Celsius/],
    [
      "how long do the bread and butter pickles have to cure",
      /^Bread-and-butter pickles: \w+ weeks to/,
    ],
    ["when can we eat the beets", /^Of which recipe/],
    ["when can we eat the sauerkraut", /^Sauerkraut: \w+ weeks to \w+ weeks first/],
    ["what's in the pantry", /^I have no jars on record/],
    ["how long does bean seed keep", /3 to 4 years; a germination test tells/],
    ["what can I say", /^Tell me what happens: done/],
  ])("or answered at once: %s", async (words, answer) => {
    expect(await answered(BEANS, `0:00 what now\n+0:00 ${words}`)).toMatch(answer);
  });

  it("counts the recipes it knows", async () => {
    const said = await answered(BEANS, "0:00 what now\n+0:00 what recipes do you know");
    expect(said).toMatch(new RegExp(`^${theLibrary().recipes.size} recipes: `));
  });

  it("takes a jelly that doesn't scale one pot at a time", async () => {
    const said = await answered(
      "berry-jam",
      "0:00 what now\n+0:00 how much sugar for 40 cups of berries",
    );
    expect(said).toMatch(/Make \d+ pots of that, one by one/);
  });
});
