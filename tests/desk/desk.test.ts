import { describe, expect, it } from "vitest";
import { Desk } from "../../src/desk/desk.ts";
import type { Want } from "../../src/desk/want.ts";
import { lineWords } from "../../src/speech/line-words.ts";

const MINUTE = 60_000;
const DAY = "2027-08-14";

/** A desk with a clock: what is said at a minute, as it is worded. */
class Counter {
  readonly desk = new Desk();
  ringing: Want[] = [];

  lines(seconds: number, wants: Want[] = [], more: { day?: string; asleepUntil?: number } = {}) {
    const moment = { now: seconds * 1000, day: DAY, ringing: this.ringing, ...more };
    return this.desk.decide(wants, moment);
  }

  at(...when: Parameters<Counter["lines"]>): string[] {
    return this.lines(...when).map((line) => lineWords(line));
  }
}

const done: Want = {
  rank: "alarm",
  key: "L1/process/end/1",
  name: "Provider",
  text: "the time is full.",
};
const lift: Want = {
  rank: "alarm",
  key: "L2/settle/end/0",
  name: "Beets",
  text: "lift the jars now.",
};
const brine: Want = {
  rank: "prompt",
  key: "B1/brine",
  name: "Provider",
  text: "Vinegar, water and salt into a pot.",
  lesson: { id: "beans/brine", short: "Same brine, to a boil." },
  cautions: [{ text: "It is boiling hot." }, { text: "Steam burns.", short: "Mind the steam." }],
};

describe("the desk", () => {
  it("puts alarm, answer, read-back, question, prompt and news in this order", () => {
    const said = new Counter().at(0, [
      { rank: "news", text: "News." },
      { rank: "prompt", text: "Prompt." },
      { rank: "question", text: "Question?" },
      { rank: "read-back", text: "Read-back." },
      { rank: "answer", text: "Answer." },
      { rank: "alarm", text: "Alarm." },
    ]);
    expect(said).toEqual(["Alarm.", "Answer.", "Read-back.", "Question?", "Prompt.", "News."]);
  });

  it("says a prompt whole the first time of a day, then short, and whole again tomorrow", () => {
    const counter = new Counter();
    expect(counter.at(0, [brine])).toEqual([
      "Provider: Vinegar, water and salt into a pot. It is boiling hot. Steam burns.",
    ]);
    const other = { ...brine, key: "B2/brine", name: "Dragon Tongue" };
    expect(counter.at(60, [other])).toEqual([
      "Dragon Tongue: Same brine, to a boil. Mind the steam.",
    ]);
    const [next] = counter.at(90_000, [brine], { day: "2027-08-15" });
    expect(next).toContain("Vinegar, water and salt into a pot. It is boiling hot.");
  });

  it("never drops a caution about steam, pressure or lids", () => {
    const counter = new Counter();
    for (let load = 0; load < 8; load++) {
      const [said = ""] = counter.at(load * 60, [{ ...brine, key: `L${load}/load` }]);
      expect(said).toMatch(load === 0 ? /Steam burns/ : /Mind the steam/);
    }
  });

  it("says in one breath what comes together, and names each", () => {
    const [said] = new Counter().at(0, [
      { ...brine, cautions: [] },
      { rank: "prompt", key: "x", name: "Beets", text: "Drain them. Slip off the skins." },
    ]);
    expect(said).toBe(
      "Two things. Provider: Vinegar, water and salt into a pot. " +
        "Beets: Drain them. Slip off the skins.",
    );
    const brief = { rank: "prompt", key: "x", name: "Beets", text: "Slip off the skins." } as const;
    expect(new Counter().at(0, [{ ...brine, cautions: [] }, brief])).toEqual([
      "Provider: Vinegar, water and salt into a pot. Beets: Slip off the skins.",
    ]);
  });

  it("says once what is the same for several", () => {
    const seals = { rank: "prompt", text: "check the seals." } as const;
    const said = new Counter().at(0, [
      { ...seals, key: "1", name: "Provider" },
      { ...seals, key: "2", name: "Blue Lake" },
    ]);
    expect(said).toEqual(["Provider and Blue Lake: check the seals."]);
  });

  it("says once what several have to do, with what is particular to each", () => {
    const seals = (name: string, each: string): Want => ({
      rank: "prompt",
      key: name,
      name,
      text: `check the seals ${each}.`,
      task: { todo: "check the seals", each },
    });
    const wants = [seals("Provider", "by ten"), seals("Blue Lake", "by noon")];
    expect(new Counter().at(0, wants)).toEqual([
      "Check the seals: Provider by ten; Blue Lake by noon.",
    ]);
    expect(new Counter().at(0, wants.slice(1))).toEqual(["Blue Lake: check the seals by noon."]);
  });

  it("never says what is no longer true, and says why it was dropped", () => {
    const counter = new Counter();
    expect(counter.at(10, [{ rank: "prompt", text: "gone", until: 5000 }])).toEqual([]);
    expect(counter.desk.decisions()).toMatchObject([{ wanted: "gone", dropped: true, said: null }]);
  });

  it("lets a later want of the same key take the place of an earlier one", () => {
    const said = new Counter().at(0, [
      { rank: "prompt", key: "k", text: "Before." },
      { rank: "prompt", key: "k", text: "After." },
    ]);
    expect(said).toEqual(["After."]);
  });

  it("does not say a name twice in a row, but an alarm always has its own", () => {
    const counter = new Counter();
    counter.ringing = [done];
    expect(counter.at(0, [{ rank: "prompt", name: "Provider", text: "Heat off." }])).toEqual([
      "Provider: the time is full.",
      "Heat off.",
    ]);
  });

  it("leaves out that something was done where what follows of the same one says it", () => {
    const done: Want = { rank: "answer", name: "Provider", text: "Canner hot.", plain: true };
    const fill: Want = { rank: "prompt", name: "Provider", key: "fill", text: "Fill the jars." };
    const lines = new Counter().lines(0, [done, fill]);
    expect(lines.map(({ rank, parts }) => [rank, parts[0]?.text])).toEqual([
      ["answer", "Fill the jars."],
    ]);
    expect(new Counter().at(0, [done, { ...fill, name: "Beets" }])).toEqual([
      "Provider: Canner hot.",
      "Beets: Fill the jars.",
    ]);
  });

  it("says of what rings on what to do about it", () => {
    const counter = new Counter();
    counter.ringing = [{ ...done, todo: "Heat off, lid off." }];
    expect(counter.at(0)).toEqual(["Provider: the time is full."]);
    expect(counter.at(31)).toEqual(["Provider: the time is full. Heat off, lid off."]);
  });

  it("says that something was done where nothing is left to say of what follows", () => {
    const counter = new Counter();
    const lesson = { id: "stand", short: "" };
    const stand: Want = { rank: "prompt", name: "Provider", text: "Let them stand.", lesson };
    const out: Want = { rank: "answer", name: "Provider", text: "Jars out.", plain: true };
    expect(counter.at(0, [out, stand])).toEqual(["Provider: Let them stand."]);
    expect(counter.at(900, [out, stand])).toEqual(["Provider: Jars out."]);
  });

  it("names again what is talked of after five minutes, or once something else was said", () => {
    const counter = new Counter();
    const answer = (text: string): Want => ({ rank: "answer", name: "Provider", text });
    expect(counter.at(0, [answer("8 pints.")])).toEqual(["Provider: 8 pints."]);
    expect(counter.at(20, [answer("Noted.")])).toEqual(["Noted."]);
    expect(counter.at(400, [answer("8 jars in.")])).toEqual(["Provider: 8 jars in."]);
    counter.at(405, [{ rank: "answer", name: "Beets", text: "Syrup boiling." }]);
    expect(counter.at(410, [answer("Noted.")])).toEqual(["Provider: Noted."]);
    counter.at(415, [{ rank: "answer", text: "Nothing is ringing." }]);
    expect(counter.at(420, [answer("Noted.")])).toEqual(["Provider: Noted."]);
  });

  it("keeps news for the morning while everybody sleeps, and nothing else", () => {
    const counter = new Counter();
    const wants: Want[] = [
      { rank: "news", text: "The plan moved." },
      { rank: "prompt", text: "Now." },
    ];
    expect(counter.at(0, wants, { asleepUntil: 8 * 60 * MINUTE })).toEqual(["Now."]);
    expect(counter.desk.decisions()).toContainEqual(
      expect.objectContaining({
        wanted: "The plan moved.",
        deferredTill: 8 * 60 * MINUTE,
        said: null,
      }),
    );
    expect(counter.at(8 * 3600)).toEqual(["The plan moved."]);
    expect(counter.at(8 * 3600 + 1)).toEqual([]);
  });
});

describe("alarms that nobody answers", () => {
  it("are one sentence that names all", () => {
    const counter = new Counter();
    counter.ringing = [done, lift];
    expect(counter.at(0)).toEqual(["Provider: the time is full; Beets: lift the jars now."]);
  });

  it("grow rarer, from half a minute to five", () => {
    const counter = new Counter();
    counter.ringing = [lift];
    const times: number[] = [];
    for (let second = 0; second < 1800; second++)
      if (counter.at(second).length > 0) times.push(second);
    expect(times.slice(0, 6)).toEqual([0, 30, 90, 210, 450, 750]);
  });

  it("keep their pace while a process is broken", () => {
    const counter = new Counter();
    counter.ringing = [{ ...done, guards: true, broken: true }];
    const times: number[] = [];
    for (let second = 0; second < 200; second++)
      if (counter.at(second).length > 0) times.push(second);
    expect(times).toEqual([0, 30, 60, 90, 120, 150, 180]);
  });

  it("gather: what would ring soon anyway rings with the others, all by name", () => {
    const counter = new Counter();
    counter.ringing = [done];
    counter.at(0);
    counter.ringing = [done, lift];
    counter.at(5);
    expect(counter.at(30)).toEqual(["Provider: the time is full; Beets: lift the jars now."]);
  });

  it("fall silent once they ring no longer, and begin anew where they ring again", () => {
    const counter = new Counter();
    counter.ringing = [done];
    counter.at(0);
    counter.ringing = [];
    expect(counter.at(40)).toEqual([]);
    counter.ringing = [done];
    expect(counter.at(41)).toHaveLength(1);
  });

  it("are said at night like by day", () => {
    const counter = new Counter();
    counter.ringing = [done];
    expect(counter.at(0, [], { asleepUntil: 1e9 })).toEqual(["Provider: the time is full."]);
  });
});
