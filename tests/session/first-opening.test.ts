/** The short talk of a first opening: each question once, each answered or left for later. */
import { beforeAll, describe, expect, it } from "vitest";
import { MemoryDisk } from "../../src/journal/memory-disk.ts";
import { shownQuestion } from "../../src/kitchen/questions/questions.ts";
import type { Library } from "../../src/recipe/library.ts";
import { loadLibrary } from "../../src/session/reading/load-library.ts";
import { MadeUpKitchen } from "../../src/session/rehearsal/made-up-kitchen.ts";
import { SILENT } from "../../src/session/short-session.ts";

let library: Library;

beforeAll(async () => {
  library = await loadLibrary(["recipes"], {});
});

type SetUp = ConstructorParameters<typeof MadeUpKitchen>[0]["setUp"];
type Opening = { setUp?: SetUp; welcomes?: boolean; disk?: MemoryDisk; hour?: string };

function opened({
  setUp = [],
  welcomes = true,
  disk = new MemoryDisk(),
  hour = "08",
}: Opening = {}) {
  const kitchen = new MadeUpKitchen({
    library,
    startMs: Date.parse(`2027-08-14T${hour}:00:00-06:00`),
    zone: "America/Denver",
    setUp,
    welcomes,
    disk,
    folder: "/home",
    version: "0",
    rehearsal: false,
    voice: () => SILENT,
  });
  const asked = () => shownQuestion(kitchen.session.state);
  return {
    kitchen,
    asked: () => asked()?.detail ?? asked()?.kind,
    text: () => asked()?.text ?? "",
    say: (words: string) => kitchen.session.hear(words).lines.join(" "),
    state: () => kitchen.session.state,
  };
}

/** Closes a kitchen and gives its folder free. */
function closed({ session }: MadeUpKitchen, disk: MemoryDisk): void {
  session.close();
  disk.remove("/home/lock");
}

describe("the talk of a first opening", () => {
  it("asks for altitude, canner, gauge, units and voice, one at a time, and keeps each", () => {
    const { asked, say, state, text } = opened();
    expect(text()).toContain("thermometer in boiling water");
    const order = ["altitude", "canner", "gauge", "units", "voice"];
    const answers = [
      ["6200 feet", /Altitude 6200 feet/],
      ["eight pints and seven quarts", /8 pints or 7 quarts/],
      ["weighted", /./],
      ["metric", /Kilograms and Celsius/],
      ["yes", /Say what you want to make/],
    ] as const;
    for (const [at, [words, reply]] of answers.entries()) {
      expect(asked()).toBe(order[at]);
      expect(say(words)).toMatch(reply);
    }
    expect(asked()).toBeUndefined();
    const { altitudeFt, canners, units } = state().kitchen;
    expect({ altitudeFt, units }).toEqual({ altitudeFt: 6200, units: "metric" });
    expect(canners[0]).toMatchObject({ holds: { pint: 8, quart: 7 }, gauge: { kind: "weighted" } });
  });

  it("is held at night, too, with whoever has just opened the kitchen", () => {
    for (const welcomes of [true, false]) {
      const { lines } = opened({ welcomes, hour: "01" }).kitchen;
      expect(lines.some(({ text }) => text.includes("What is your altitude"))).toBe(welcomes);
    }
  });

  it("says how a question is answered to words that do not answer it", () => {
    const { say } = opened();
    expect(say("my aunt had a place like this")).toMatch(/answer in feet.*6200 feet, or later/);
    say("6200 feet");
    expect(say("it is green with a red knob")).toMatch(/answer like nine pints.*or later/);
  });

  it.each(["later", "skip", "skip that", "not now please", "leave it for later"])(
    "leaves each question for later: %s",
    (words) => {
      const { asked, say } = opened();
      for (const topic of ["altitude", "canner", "gauge", "units", "voice"]) {
        expect(asked()).toBe(topic);
        expect(say(words)).toContain("Later, then.");
      }
      expect(asked()).toBeUndefined();
      expect(say("what now")).not.toContain("altitude");
    },
  );

  it.each([
    ["altitude", ["dial", "yes", "nine pints"]],
    ["canner", ["five percent", "yes", "nine", "dial", "maybe nine pints", "a hundred pints"]],
    ["gauge", ["nine pints", "half an inch", "yes"]],
    ["units", ["nine", "dial", "none"]],
    ["voice", ["nine pints", "metric", "five percent"]],
  ] as const)("takes no answer of another type, and no guess, to %s", (topic, wrong) => {
    for (const words of wrong) {
      const { asked, say, state } = opened();
      while (asked() !== topic) say("later");
      const before = structuredClone(state().kitchen);
      say(words);
      expect(asked(), words).toBe(topic);
      expect(state().kitchen, words).toEqual(before);
    }
  });

  it("says what altitude and canner are needed for when the first batch needs them", () => {
    const { asked, say, text } = opened();
    for (let at = 0; at < 5; at++) say("later");
    say("start the dilly beans, 4 pounds");
    expect(asked()).toBe("altitude");
    expect(text()).toContain("process time depends on it");
    say("6200 feet");
    expect(asked()).toBe("canner");
    expect(text()).toContain("Loads are planned by it");
  });

  it.each(["none", "we have no canner"])("leaves the canner of who has none: %s", (words) => {
    const { asked, say, state } = opened();
    say("1890 meters");
    expect(say(words)).toContain("Later, then.");
    expect(asked()).toBe("gauge");
    expect(state().setUp).toContainEqual({ topic: "canner", left: true });
  });

  it("steps aside for a process, a lost boil and an alarm, and comes again after them", () => {
    const { asked, say, text, kitchen } = opened();
    for (let at = 0; at < 5; at++) say("later");
    const minutes = (count: number) => kitchen.clock.advance(count * 60_000);
    const timesAsked = () =>
      kitchen.lines.filter((line) => line.text.includes("Loads are planned by it"));
    say("start the dilly beans, 4 pounds");
    say("6200 feet");
    expect(asked()).toBe("canner");
    for (const words of ["trimmed", "the brine is boiling", "five percent", "the canner's ready"]) {
      minutes(10);
      say(words);
    }
    for (const words of ["eight pints filled", "half an inch", "new", "the jars are in"])
      say(words);
    expect(asked()).toBe("canner");
    minutes(10);
    say("timer for one minute");
    minutes(2);
    expect(asked()).toBeUndefined();
    say("got it");
    expect(asked()).toBe("canner");
    expect(timesAsked()).toHaveLength(1);
    say("it's boiling and the lids are covered");
    expect(asked()).toBeUndefined();
    minutes(3);
    say("it stopped boiling");
    minutes(1);
    expect(asked()).not.toBe("canner");
    expect(text()).not.toContain("canner hold");
    say("it's boiling again and the lids are covered");
    minutes(16);
    say("got it");
    expect(asked()).toBe("end");
    say("yes");
    minutes(1);
    expect(asked()).toBe("canner");
    expect(timesAsked()).toHaveLength(2);
  });

  it("steps aside while a pressure falls", () => {
    const { asked, say, kitchen } = opened();
    for (let at = 0; at < 5; at++) say("later");
    const minutes = (count: number) => kitchen.clock.advance(count * 60_000);
    for (const words of ["start the snap beans, 9 pounds", "6200 feet", "weighted"]) say(words);
    expect(asked()).toBe("canner");
    const work = ["trimmed", "the canner's ready", "the beans boil", "got it", "nine pints filled"];
    for (const words of [...work, "hot off the boil", "one inch", "new"]) {
      minutes(6);
      say(words);
    }
    expect(asked()).toBe("canner");
    for (const words of ["the jars are in", "steam is coming"]) say(words);
    expect(asked()).toBeUndefined();
    for (const words of ["got it", "the weight is rocking"]) {
      minutes(11);
      say(words);
    }
    for (const words of ["got it", "heat's off"]) {
      minutes(21);
      say(words);
    }
    const { loads } = kitchen.session.state;
    const states = Object.values(loads).flatMap(({ stages }) => stages);
    expect(states.find(({ id }) => id === "depressurize")?.state).toBe("running");
    expect(asked()).toBeUndefined();
  });

  it("leaves what is needed for later, once and then once more", () => {
    const { asked, say, kitchen } = opened();
    for (let at = 0; at < 5; at++) say("later");
    say("start the dilly beans, 4 pounds");
    say("6200 feet");
    expect(say("later")).toBe("Later, then. Until then I take nine pints or seven quarts.");
    expect(asked()).toBeUndefined();
    kitchen.clock.advance(15 * 60_000);
    say("note: thin beans");
    expect(asked()).toBe("canner");
    say("later");
    kitchen.clock.advance(15 * 60_000);
    say("note: the last row");
    expect(asked()).toBeUndefined();
  });

  it("ends where the work begins, and asks nothing of the talk after that", () => {
    const { asked, say } = opened();
    say("6200 feet");
    say("start the dilly beans, 4 pounds");
    expect(asked()).not.toBe("canner");
    expect(asked()).not.toBe("units");
  });

  it("does not ask a kitchen again what it has answered or left", () => {
    const { kitchen, say } = opened();
    say("6200 feet");
    say("later");
    kitchen.crash(60_000);
    const { session } = kitchen;
    expect(shownQuestion(session.state)?.detail).toBe("gauge");
    session.hear("later");
    session.hear("later");
    session.hear("yes");
    kitchen.crash(60_000);
    expect(shownQuestion(kitchen.session.state)).toBeUndefined();
  });

  it("asks nobody who is not at a terminal, and later only for what is not set", () => {
    const disk = new MemoryDisk();
    const setUp: SetUp = [{ type: "kitchen-set", altitudeFt: 6200, units: "us", t: 0 }];
    const quiet = opened({ setUp, welcomes: false, disk });
    expect(quiet.asked()).toBeUndefined();
    closed(quiet.kitchen, disk);
    const { state, asked } = opened({ disk });
    expect(state().setUp.map(({ topic }) => topic)).toEqual(["canner", "gauge", "voice"]);
    expect(asked()).toBe("canner");
  });

  it("asks nothing in a home where something was made", () => {
    const disk = new MemoryDisk();
    const quiet = opened({ welcomes: false, disk });
    quiet.say("6200 feet");
    quiet.say("start the dilly beans, 4 pounds");
    closed(quiet.kitchen, disk);
    expect(opened({ disk }).state().setUp).toEqual([]);
  });
});
