/** Jars by what is on them, and lots by when they were put up: what is written down for them. */
import { beforeAll, describe, expect, it } from "vitest";
import { decide } from "../../src/kitchen/decide/decide.ts";
import { apply, fork } from "../../src/kitchen/evolve.ts";
import type { State } from "../../src/kitchen/state.ts";
import { DAY_MS } from "../../src/kitchen/time.ts";
import { hear } from "../../src/language/hear.ts";
import { jarRecords } from "../../src/review/shelf/jar-records.ts";
import { pantryOf } from "../../src/review/shelf/pantry.ts";
import { contextOf } from "../../src/session/context-of.ts";
import { askedBack, telling } from "../../src/speech/intents.ts";
import { twoYears } from "../kitchen/two-years.ts";
import { theLibrary } from "../scenarios/play.ts";
import { knownOf } from "../speech/answers/known.ts";

let shelf: State;

beforeAll(async () => {
  shelf = await twoYears();
});

/** Provider of two years, Dragon Tongue and beets, by their lots' ids. */
const [OLD, NEW, DRAGON, BEETS] = ["260818-1", "270814-1", "270815-1", "270816-1"];

class Kitchen {
  readonly state = fork(shelf);
  readonly now = shelf.lastW + 2 * DAY_MS;

  says(text: string): unknown[] {
    const context = contextOf(this.state, this.now, theLibrary(), undefined);
    const heard = hear(text, context);
    if (heard.reading !== "sure") return [heard.reading, heard.candidates[0]?.intent];
    return heard.commands.flatMap((command, at): unknown[] => {
      const outcome = decide(this.state, { command }, this.now, theLibrary());
      if (outcome.kind === "refused") return [outcome.reason];
      if (outcome.kind === "ask") return [outcome.text];
      if (outcome.kind !== "done") {
        const told = telling(this.state, command, this.now, knownOf(this.state, this.now));
        return [typeof told === "string" ? told : told?.pages[0]];
      }
      return outcome.facts.map((fact) => {
        apply(this.state, { ...fact, cmd: `c${at}`, w: this.now });
        const { t: _t, ...rest } = fact;
        return rest;
      });
    });
  }

  jar(id: string, number: number) {
    const batch = this.state.batches[id];
    const lot = batch?.lots[0];
    if (!batch || !lot) throw new Error(`no batch ${id}`);
    const { id: jar } = lot.jars.find((one) => one.number === number) ?? { id: "" };
    return jarRecords(this.state, { batch, lot }, this.now).find((one) => one.id === jar);
  }
}

function facts(text: string): unknown[] {
  return new Kitchen().says(text);
}

const opened = (batch: string | undefined, ...jars: number[]) => {
  return { type: "jar-opened", batch, count: jars.length, jars };
};

describe("a jar by its mark", () => {
  it.each([
    ["opened D six", DRAGON, [6]],
    ["we opened D4 tonight", DRAGON, [4]],
    ["ate dee two last night", DRAGON, [2]],
    ["opened D 2, 3 and 5", DRAGON, [2, 3, 5]],
    ["opened D one through three", DRAGON, [1, 2, 3]],
    ["opened P6 from last year", OLD, [6]],
    ["opened P two from 2027", NEW, [2]],
    ["opened 270815-1:3", DRAGON, [3]],
  ])("is opened: %s", (text, batch, jars) => {
    expect(facts(text)).toEqual([opened(batch, ...jars)]);
  });

  it("is asked about where two years have it, by what tells them apart", () => {
    const kitchen = new Kitchen();
    const [question] = kitchen.says("opened P six");
    expect(question).toMatch(
      /^Which one: the Provider .* from 2026 or the Provider .* from 2027\?$/,
    );
    kitchen.says("opened P six from 2026");
    expect(kitchen.says("opened P six")).toEqual([opened(NEW, 6)]);
  });

  it("of several lots in one sentence is of each its own", () => {
    expect(facts("opened D two and B one")).toEqual([opened(DRAGON, 2), opened(BEETS, 1)]);
    const failed = { type: "seal-failed", count: 1 };
    for (const text of ["D three and B one didn't seal", "D three and bee one didn't"]) {
      expect(facts(text)).toMatchObject([
        { ...failed, batch: DRAGON, jars: [3] },
        { ...failed, batch: BEETS, jars: [1] },
      ]);
    }
  });

  it.each([
    ["D six had gone moldy", { type: "spoiled", batch: DRAGON, jars: [6], sign: "moldy" }],
    ["found B 5 bulging", { type: "spoiled", batch: BEETS, jars: [5], sign: "bulged" }],
    [
      "gave D two to the neighbors",
      { type: "jars-given", batch: DRAGON, jars: [2], to: "neighbors" },
    ],
    ["gave my sister B one", { type: "jars-given", batch: BEETS, jars: [1], to: "sister" }],
    ["put D four in the fridge", { type: "jars-moved", jars: [4], place: "refrigerator" }],
    ["moved D 1 to 4 down to the cellar", { type: "jars-moved", jars: [1, 2, 3, 4] }],
    ["threw out D 3", { type: "jars-discarded", batch: DRAGON, jars: [3] }],
    ["D 6 broke", { type: "jars-discarded", batch: DRAGON, jars: [6] }],
  ])("has a fate: %s", (text, fact) => {
    expect(facts(text)).toMatchObject([fact]);
  });

  it.each([
    "they've all gone down lovely, 'cept D two, he's still clickin'",
    "I pressed every lid, D 1 moves, D 6 moves, the rest are tight",
  ])("is not passed over where the others sealed: %s", (text) => {
    const context = contextOf(shelf, shelf.lastW, theLibrary(), undefined);
    const { commands, candidates } = hear(text, context);
    expect(commands.filter(({ intent }) => intent === "sealed")).toEqual([]);
    expect([...commands, ...candidates].map(({ intent }) => intent)).toContain("seal-failed");
  });

  it("is told of by what it is in: D4's in the fridge", () => {
    expect(facts("D4's in the fridge")).toMatchObject([{ type: "jars-moved", jars: [4] }]);
  });

  it("is the one meant in the end, where it is put right in the same breath", () => {
    expect(facts("D four, no wait, D five got opened")).toEqual([opened(DRAGON, 5)]);
    expect(facts("opened D four, I mean B one")).toEqual([opened(BEETS, 1)]);
  });

  it("tells of which lot a tasting is", () => {
    const tasted = { type: "tasted", scores: { crunch: 5 } };
    expect(facts("D one and D two were both great, crunch five")).toMatchObject([
      { ...tasted, batch: DRAGON },
    ]);
  });

  it("that its lot does not have is refused", () => {
    expect(facts("opened D 12")).toEqual([expect.stringMatching(/has no jar 12; it has 1 to 8/)]);
    const kitchen = new Kitchen();
    kitchen.says("gave D two to the neighbors");
    expect(kitchen.says("opened D two")).toEqual(["D2 was given away."]);
  });

  it.each(["the P 5 bus", "a 3 for the beets"])("is in no other words: %s", (text) => {
    expect(facts(text)).not.toContainEqual(expect.objectContaining({ jars: expect.anything() }));
  });
});

describe("a jar by its short id", () => {
  it("is the one jar, whatever its lot is called", () => {
    const kitchen = new Kitchen();
    const short = kitchen.jar(OLD ?? "", 6)?.short ?? "";
    expect(short).toMatch(/^[a-z]+ \d+$/);
    expect(kitchen.says(`opened ${short}`)).toEqual([opened(OLD, 6)]);
    expect(kitchen.says(`which jar is ${short}`)).toEqual([
      expect.stringMatching(/^P6, .* Provider dilled green beans of August 18, 2026.* was opened/),
    ]);
  });
});

describe("a jar whose writer's word is another's too", () => {
  /** The first jar of the old beans, and the third of the beets, which has its word and number. */
  function sharing(): { kitchen: Kitchen; ids: [string, string] } {
    const kitchen = new Kitchen();
    const first = kitchen.jar(OLD ?? "", 1)?.id ?? "";
    const beet = kitchen.state.batches[BEETS ?? ""]?.lots[0]?.jars[2];
    if (!beet) throw new Error("no beets");
    beet.id = first.replace(/-.*-/, "-zz-");
    return { kitchen, ids: [first, beet.id] };
  }

  it("is the one that its whole id says", () => {
    const { kitchen, ids } = sharing();
    const [bean, beet] = ids;
    expect(kitchen.jar(BEETS ?? "", 3)?.short).toBe(beet);
    expect(kitchen.says(`opened ${beet}`)).toEqual([opened(BEETS, 3)]);
    expect(kitchen.says(`opened ${bean}`)).toEqual([opened(OLD, 1)]);
  });

  it("is the one that its batch and number say", () => {
    expect(sharing().kitchen.says(`opened ${BEETS}:3`)).toEqual([opened(BEETS, 3)]);
  });

  it("is not guessed from the word and the number", () => {
    const { kitchen, ids } = sharing();
    const short = ids[0].replace(/-.*-/, " ");
    expect(kitchen.says(`opened ${short}`)).toEqual(["Which batch?"]);
  });
});

describe("a jar of which only its lot is said", () => {
  it.each([
    ["we ate the last dragon tongue", { type: "jar-opened", batch: DRAGON, count: 1 }],
    ["used two of the dragon tongue", { type: "jar-opened", batch: DRAGON, count: 2 }],
    [
      "the other two dragon tongue went to the church sale",
      { type: "jars-given", batch: DRAGON, count: 2, to: "church sale" },
    ],
    [
      "I took two dragon tongue over to my aunt",
      { type: "jars-given", batch: DRAGON, count: 2, to: "aunt" },
    ],
    ["D two I take it to my daughter", { type: "jars-given", batch: DRAGON, jars: [2] }],
    ["D four's cloudy, chucked it", { type: "jars-discarded", batch: DRAGON, jars: [4] }],
    ["D two's growing fur, out it goes", { type: "spoiled", jars: [2], sign: "moldy" }],
    [
      "I dropped one and it smashed, it was D five",
      { type: "jars-discarded", batch: DRAGON, jars: [5] },
    ],
    ["shifted all the dragon tongue down cellar", { type: "jars-moved", place: "cellar" }],
  ])("has its fate: %s", (text, fact) => {
    expect(facts(text)).toMatchObject([fact]);
  });

  it("is asked about where two years have it", () => {
    expect(facts("opened a provider last night")).toEqual([
      expect.stringMatching(/^Which .* from 2026 or the .* from 2027\?$/),
    ]);
  });

  it.each(["we ate two pancakes", "took two pills to my mother", "might open a provider sunday"])(
    "is none of the kitchen's: %s",
    (text) => {
      expect(facts(text)).not.toContainEqual(expect.objectContaining({ batch: expect.anything() }));
    },
  );

  it("is found and counted", () => {
    expect(facts("where's D three got to")).toEqual([expect.stringMatching(/^D3, /)]);
    expect(facts("how many dragon tongue we got")).toEqual([
      expect.stringMatching(/^Eight pints of Dragon Tongue/),
    ]);
  });
});

describe("a lot by when it was put up", () => {
  it.each([
    ["opened jar six of Saturday's Provider", opened(NEW, 6)],
    ["opened jar six of last year's Provider", opened(OLD, 6)],
    ["opened a jar of the Provider from last August", { type: "jar-opened", batch: OLD }],
    ["opened two pints of the 2026 Provider", { type: "jar-opened", batch: OLD, count: 2 }],
  ])("is meant alone: %s", (text, fact) => {
    expect(facts(text)).toMatchObject([fact]);
  });

  it("is what is left of it, and nothing else", () => {
    const [told] = facts("what's left of the Provider from last year");
    expect(told).toMatch(/^Eight pints of Provider/);
    expect(told).not.toMatch(/Dragon|2028/);
    expect(facts("what's left of the Dragon Tongue")).toEqual([
      expect.stringMatching(/^Eight pints of Dragon Tongue/),
    ]);
  });
});

describe("a tasting without a name", () => {
  it("is of the jar that was just opened", () => {
    const kitchen = new Kitchen();
    kitchen.says("opened D seven");
    expect(kitchen.says("crunch four")).toMatchObject([
      { type: "tasted", batch: DRAGON, scores: { crunch: 4 }, jars: [7] },
    ]);
    expect(facts("crunch four")).toEqual(["Which batch?"]);
  });
});

describe("what became of a jar", () => {
  it("stands in its record and in the pantry", () => {
    const kitchen = new Kitchen();
    kitchen.says("opened D one");
    kitchen.says("gave D two to the neighbors");
    kitchen.says("put D three in the fridge");
    kitchen.says("threw out D four");
    kitchen.says("D five is leaking");
    const fates = [1, 2, 3, 4, 5, 6].map((number) => kitchen.jar(DRAGON ?? "", number)?.fate);
    expect(fates).toEqual(["opened", "given", "cold", "discarded", "spoiled", "shelf"]);
    const lines = pantryOf(kitchen.state, kitchen.now).lines.filter(
      ({ batch }) => batch === DRAGON,
    );
    expect(lines.map(({ place, left }) => [place, left]).sort()).toEqual([
      ["pantry", 3],
      ["refrigerator", 1],
    ]);
  });

  it("may turn out to be another's, where one was only counted", () => {
    const kitchen = new Kitchen();
    kitchen.says("opened a jar of the Dragon Tongue");
    const all = kitchen.state.batches[DRAGON ?? ""]?.lots[0]?.jars ?? [];
    const guessed = all.find(({ left }) => left)?.number ?? 0;
    expect(kitchen.says(`opened D ${guessed}`)).toEqual([opened(DRAGON, guessed)]);
    const gone = kitchen.state.batches[DRAGON ?? ""]?.lots[0]?.jars.filter(({ left }) => left);
    expect(gone).toHaveLength(2);
  });

  it("is asked back with the number of its jar", () => {
    const context = contextOf(shelf, shelf.lastW, theLibrary(), undefined);
    const [command] = hear("gave D two to the neighbors", context).commands;
    expect(command && askedBack(command)).toBe("Was jar 2 given away?");
  });
});
