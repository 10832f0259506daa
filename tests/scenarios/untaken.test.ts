/** What a cook tells in words that no meaning covers, and where nothing comes of it. */
import { describe, expect, it } from "vitest";
import { codes, onlyBatch, play } from "./play.ts";

const BEANS = "dilled-green-beans";
const BOIL = "0:00 [cook until process]\n+0:00 it's boiling and the lids are covered\n";
const REST = "+0:15 yes\n+0:00 heat's off\n+0:06 the jars are out\n+13:00 all sealed";

async function told(script: string, recipe = BEANS, options = {}) {
  const played = await play(recipe, script, options);
  return { batch: onlyBatch(played), asked: played.asked.map(({ text }) => text) };
}

describe("what nobody understood while jars are in the canner", () => {
  it.each([
    "dropped off for half a minute there but she's going again",
    "it only makes small bubbles from the bottom, like for tea",
    "looks more like a hot bath than a boil",
    "somebody set the pot to warm",
    "three of them are lying on their side half out of the water",
    "hubby went and shoved the pan half off the ring to do his eggs",
    "he's put it back, going like the clappers again",
    "wasn't ever off, bar that bit with the eggs",
    "the wee one has been at the dials again",
    "it had settled to nothing much when I came in from the washing line",
    "topped it up from the tap",
  ])("is kept, and quoted at the end: %s", async (words) => {
    const { batch, asked } = await told(`${BOIL}+0:05 ${words}\n+0:11 what now`);
    expect(batch.heard).toMatchObject([{ text: words }]);
    expect(asked.join("\n")).toContain(`I heard "${words}"`);
  });

  it("is kept where it is a clause beside what is acted on", async () => {
    const words = "I dozed off in the chair and it was ticking over when I woke up";
    const { batch } = await told(`${BOIL}+0:05 ${words}\n+0:00:20 what now`);
    expect(batch.heard).toMatchObject([{ text: words, strength: "trace" }]);
  });

  it.each([
    "hot in here today",
    "the dog wants out",
    "it smells wonderful in here",
    "could you hand me the tongs",
    "the potatoes for supper are simmering",
    "I fried some bacon for lunch earlier",
    "did you hear the kids in the yard",
  ])("is let go where it is talk: %s", async (words) => {
    const { batch } = await told(`${BOIL}+0:05 ${words}\n${REST}`);
    expect(batch).toMatchObject({ verdict: "as-tested", heard: [] });
  });

  it("is kept where it was asked back and not confirmed", async () => {
    const words = "put the weight on right off, I never bother letting it blow";
    const VENTING = "0:00 [cook until vent]\n+0:01 it's venting\n+0:03 ";
    const denied = await told(`${VENTING}${words}\n+0:01 no`, "snap-beans");
    expect(denied.batch.heard).toMatchObject([{ text: words, strength: "trace" }]);
    const left = await told(`${VENTING}${words}\n+0:01 what now`, "snap-beans");
    expect(left.batch.heard).toMatchObject([{ text: words }]);
  });

  it.each(["no", "what now"])(
    "is kept where its act was asked about, and then: %s",
    async (then) => {
      const words = "I pulled them out just now, ten minutes felt like plenty";
      const { batch } = await told(`${BOIL}+0:05 ${words}\n+0:01 ${then}`);
      expect(batch.heard).toMatchObject([{ text: words }]);
    },
  );

  it("is kept where the weight went on too soon, though that is what was waited for", async () => {
    const script =
      "0:00 [cook until process]\n+0:00 15 pounds\n+0:04 I put the weight on straight away";
    const { batch } = await told(script, "snap-beans");
    expect(batch.heard).toMatchObject([{ strength: "trace" }]);
  });

  it("is kept where its act cannot be, once jars are filled", async () => {
    const words = "halved the vinegar, doubled the water, less bite that way";
    const { batch } = await told(`0:00 [cook until cool]\n+1:00 ${words}`);
    expect(batch.heard[0]).toMatchObject({ text: words });
  });
});

describe("what is told once the jars are put away", () => {
  it.each([
    "my vinegar was only 4 percent, I checked",
    "those lids were last year's",
    "the beans sat out all afternoon before I canned them",
    "I never did time it, I was watching the game",
  ])("leaves them unfinished until it is settled: %s", async (words) => {
    const { batch } = await told(`0:00 [cook until done]\n+2d 0:00 ${words}\n+0:01 what now`);
    expect(batch.verdict).toBe("unfinished");
    expect(codes(batch)).toContain("unheard");
  });

  it.each(["it was so", "true", "yes that's true", "that's what I did"])(
    "stands where it is said to be so: %s",
    async (answer) => {
      const script = "0:00 [cook until cool]\n+1:00 I pulled the jars too soon\n+0:01 ";
      const { batch } = await told(`${script}${answer}\n+13:00 all sealed`);
      expect(batch.heard).toMatchObject([{ answered: expect.stringMatching(/^(?!well)/) }]);
      expect(batch.verdict).not.toBe("as-tested");
    },
  );

  it("is about the last that were put away, and no others", async () => {
    const script = `0:00 [cook until done]
+3d 0:00 start the bread and butter pickles
+0:00 [cook until done]
+1d 0:00 those lids were last year's`;
    const { review } = await play(BEANS, script);
    expect(review.batches.map(({ heard }) => heard.length)).toEqual([0, 1]);
  });
});

describe("a doubt whether it stopped", () => {
  const DOUBT = `${BOIL}+0:03 fuse went again\n`;

  it("is not settled by a boil that is there now", async () => {
    const { batch, asked } = await told(
      `${DOUBT}+0:03 it's boiling and the lids are covered\n+0:10 what now`,
    );
    expect(batch.heard).toMatchObject([{ strength: "suspicion", answered: null }]);
    expect(asked.at(-1)).toContain('I heard "fuse went again"');
  });

  it.each(["still boiling", "it's still boiling hard", "it never stopped", "still rolling"])(
    "is settled where it is said that it never did: %s",
    async (answer) => {
      const { batch } = await told(`${DOUBT}+0:01 ${answer}\n${REST}`);
      expect(batch).toMatchObject({ verdict: "as-tested", process: { restarts: 0 } });
    },
  );
});

describe("the question at the end", () => {
  it.each(["of course it was, well, until the end", "sure, only I was out in the garden for it"])(
    "is not answered by a yes with more in it, which is kept: %s",
    async (answer) => {
      const { batch, asked } = await told(`${BOIL}+0:15 ${answer}\n+0:01 what now`);
      expect(asked.join("\n")).not.toContain("Is that right?");
      expect(batch.heard).toMatchObject([{ text: answer, answered: null }]);
    },
  );

  it.each(["yes ma'am, full boil the whole way and covered", "oh yes, never let up"])(
    "is answered by a yes that says the same again: %s",
    async (answer) => {
      const { batch } = await told(
        `${BOIL}+0:15 ${answer}\n+0:00 heat's off\n+0:06 the jars are out\n+13:00 all sealed`,
      );
      expect(batch).toMatchObject({ verdict: "as-tested", heard: [] });
    },
  );
});

it("an overpressure plug that blew stops the time of the process", async () => {
  const { batch } = await told(
    "0:00 [cook until process]\n+0:00 13 pounds\n+0:08 the plug blew out, steam everywhere",
    "snap-beans",
    { altitude: "4200ft", gauge: "dial" },
  );
  expect(codes(batch)).toContain("pressure-lost");
});

describe("what is told at the table and comes to nothing", () => {
  /** What is kept of the words, as the journal has it. */
  const kept = async (recipe: string, script: string) => {
    const { journal } = await play(recipe, `${script}\n+0:00:20 what now`);
    return journal.flatMap(({ type, text }) => (type === "heard" ? [text] : []));
  };

  it.each([
    ["dilled-green-beans", "heat", "I ran short of vinegar so I let the pot down from the tap"],
    ["quick-fresh-pack-dills", "fill", "they sat there all through lunch and have gone stone cold"],
    ["stock", "fill", "thickened it with a roux so it is more of a soup, noodles in it too"],
    ["whole-tomatoes", "fill", "crammed so full that no liquid gets between, they're dry on top"],
    ["sauerkraut", "hands-on", "cut it right down for his heart, hardly a pinch to a head"],
    ["crushed-tomatoes", "heat", "the frost had caught the plants but I picked the lot"],
    ["snap-beans", "hands-on", "they lay in a sack in the barn for over a week, some had mold on"],
  ])("is a doubt about its jars: %s at %s, %s", async (recipe, until, words) => {
    expect(await kept(recipe, `0:00 [cook until ${until}]\n+0:02 ${words}`)).toEqual([words]);
  });

  it.each(["yes", "no"])("is kept beside what it is asked back as, after a %s", async (answer) => {
    const words = "didn't boil all of them first, half of them I only peeled and cut up raw";
    const script = `0:00 [cook until hands-on]\n+0:05 ${words}\n+0:00:20 ${answer}`;
    expect(await kept("pickled-beets", script)).toEqual([words]);
  });

  it.each([
    "does it matter the lids sat in the damp, there's a bit of orange coming through",
    "is it bad the last one's only half full?",
    "they're in the oven, that does the same job, gas mark four",
    "doing these in the electric pot with the buttons this time",
    "half the lot went in the big half-gallon ones, they're for the church supper",
  ])("is kept between loading and the boil: %s", async (words) => {
    const script = `0:00 [cook until process]\n+0:02 ${words}\n+0:05 what now`;
    const { batch } = await told(script, "peaches");
    expect(batch.heard).toMatchObject([{ text: words, strength: "trace" }]);
  });

  it.each(["does it matter which way round the lids go", "is it bad if the lids are damp"])(
    "is not what is only asked: %s",
    async (words) => {
      const script = `0:00 [cook until process]\n+0:02 ${words}\n+0:05 what now`;
      const { batch } = await told(script, "peaches");
      expect(batch.heard).toEqual([]);
    },
  );

  it("is kept of jars that are put away, too", async () => {
    const words = "one at the back's gone plink the wrong way and there's a dribble down the label";
    const { batch } = await told(`${BOIL}${REST}\n+1:00 ${words}`);
    expect(batch.heard).toMatchObject([{ text: words, strength: "trace" }]);
  });

  it("is kept where it seemed to be about food, and about nothing that is known", async () => {
    const words = "they're the pale sort from my aunt's, white right through to the stone";
    const script = `0:00 [cook until heat]\n+0:02 ${words}\n+0:00:20 no`;
    expect(await kept("peaches", script)).toEqual([words]);
  });

  it.each(["take the rubbish out will you", "bring the washing back in"])(
    "takes nothing back: %s",
    async (words) => {
      const { batch } = await told(`${BOIL}+0:05 ${words}\n${REST}`);
      expect(batch.verdict).toBe("as-tested");
    },
  );

  it("stops no clock where it is another pot's", async () => {
    const words = "the soup's gone off the boil on the back ring, it's only our dinner";
    const { batch, asked } = await told(`${BOIL}+0:05 ${words}\n+0:00:20 still boiling\n${REST}`);
    expect(asked.join("\n")).toContain("Still boiling, or did it stop?");
    expect(batch.verdict).toBe("as-tested");
  });
});
