import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parseIso } from "../../src/kitchen/time.ts";
import { MEANINGS } from "../../src/language/intents/all.ts";
import { understand } from "../../src/language/understand.ts";
import { CHATTER } from "./chatter.ts";
import { COMMANDS } from "./commands.ts";
import { kitchenContext, ZONE } from "./kitchen-context.ts";
import { SAMPLE } from "./sample.ts";

const rice = { timers: [{ id: "t-1", label: "rice" }] };
const beans = [
  { id: "b-1", recipe: "dilled-green-beans", variety: "Provider" },
  { id: "b-2", recipe: "dilled-green-beans", variety: "Dragon Tongue" },
  { id: "b-3", recipe: "pickled-beets" },
];

describe("the sample of what people say", () => {
  it.each(SAMPLE)("understands %j as %s", (text, intent, slots) => {
    const understood = understand(text, kitchenContext(rice));
    expect(understood.intent).toBe(intent);
    expect(understood.slots).toMatchObject(slots);
  });
});

describe("further wordings", () => {
  it("are many, and their traps too", () => {
    expect(COMMANDS.length + CHATTER.length).toBeGreaterThanOrEqual(400);
    expect(CHATTER.length).toBeGreaterThanOrEqual(150);
  });

  it.each(COMMANDS)("understands %j as %s", (text, intent, slots) => {
    const understood = understand(text, kitchenContext(rice));
    expect(understood.intent).toBe(intent);
    expect(understood.slots).toMatchObject(slots);
  });

  it.each(COMMANDS)("understands %j as %s with batches running", (text, intent) => {
    expect(understand(text, kitchenContext({ ...rice, running: beans })).intent).toBe(intent);
  });
});

describe("talk, questions, wishes, plans, denials and tales", () => {
  it.each(CHATTER)("%j is no command", (text) => {
    expect(understand(text, kitchenContext(rice)).intent).toBe("unknown");
  });

  it.each(CHATTER)("%j is no report with batches running", (text) => {
    const { intent } = understand(text, kitchenContext({ ...rice, running: beans }));
    expect(MEANINGS[intent].report).toBeUndefined();
  });

  const reports = COMMANDS.filter(([, intent]) => MEANINGS[intent].report);
  it.each(reports)("%j is no report when asked", (text) => {
    const { intent } = understand(`${text}?`, kitchenContext());
    expect(MEANINGS[intent].report).toBeUndefined();
  });

  it.each([
    "i wish",
    "if",
    "when",
    "tell me when",
    "i hope",
    "let me know if",
    "i wonder whether",
    "unless",
    "yesterday",
    "maybe",
  ])("a report is not one after %j", (before) => {
    for (const [text] of reports) {
      const { intent } = understand(`${before} ${text}`, kitchenContext());
      expect({ text, report: MEANINGS[intent].report }).toEqual({ text });
    }
  });
});

describe("names of what is running", () => {
  const context = kitchenContext({ running: beans });
  const marks = ["P", "D", "B"];
  const marked = kitchenContext({ running: beans.map((one, at) => ({ ...one, mark: marks[at] })) });

  it("says which batches a name can mean", () => {
    const owners = (text: string) => {
      const { ref } = understand(text, context);
      return ref?.running.map((one) => ("owner" in one ? one.owner : ""));
    };
    expect(owners("the beets are done")).toEqual(["b-3"]);
    expect(owners("go to the dilly beans")).toEqual(["b-1", "b-2"]);
    expect(owners("go to the provider beans")).toEqual(["b-1"]);
  });

  it.each([
    ["two of the dragon tongue didn't seal", "seal-failed", { count: 2 }],
    ["number 3 of the dragon tongue didn't seal", "seal-failed", { jars: [3] }],
    ["the dragon tongue all sealed", "sealed", { all: true }],
    ["one of the dragon tongue jars broke", "jar-broken", { count: 1 }],
  ])("says whose jars are meant: %s", (text, intent, slots) => {
    const target = "dragon tongue";
    expect(understand(text, context)).toMatchObject({ intent, slots: { ...slots, target } });
  });

  it.each([
    ["P 2 didn't seal", "seal-failed", { jars: [2], target: "b-1" }],
    ["d3 didn't seal", "seal-failed", { jars: [3], target: "b-2" }],
    ["jars D 2 and D 5 did not seal", "seal-failed", { jars: [2, 5], target: "b-2" }],
    ["P 4 broke", "jar-broken", { jars: [4], target: "b-1" }],
  ])("knows jars by the marks on their lids: %s", (text, intent, slots) => {
    expect(understand(text, marked)).toMatchObject({ intent, slots });
  });

  it.each(["P 2 and D 3 didn't seal", "Q 2 didn't seal", "P 2 is on the table"])(
    "takes no other letter for a mark: %s",
    (text) => {
      expect(understand(text, marked).intent).toBe("unknown");
    },
  );

  it("corrects what was misheard, within limits", () => {
    expect(understand("the beats are done", context).slots).toEqual({ target: "beets" });
    expect(understand("go to the dragon tung", context).slots).toEqual({
      target: "dragon tongue",
    });
    expect(understand("the boats are done", context).intent).toBe("unknown");
    expect(understand("the buses are done", context).intent).toBe("unknown");
  });

  it("asks about a name that fits several recipes", () => {
    const { slots } = understand("start the pickles", kitchenContext());
    expect(slots).toMatchObject({ named: "pickles" });
    expect((slots as { choices: string[] }).choices).toContain("bread-and-butter-pickles");
  });
});

describe("times", () => {
  it("keep to the kitchen's zone, not the machine's", () => {
    for (const zone of ["Asia/Tokyo", "America/Denver", "Europe/Berlin", "Pacific/Auckland"]) {
      const nowMs = parseIso("2027-08-14T14:00:00", zone) ?? 0;
      const context = kitchenContext({ zone, nowMs });
      const said = "remind me next tuesday at nine to wipe the jars";
      expect(understand(said, context).slots).toMatchObject({ when: "2027-08-17T09:00:00" });
      const report = understand("it has been boiling since ten to two", context);
      expect(report.slots).toMatchObject({ at: "2027-08-14T13:50:00" });
    }
  });

  it("hold across the day the clocks go back", () => {
    const nowMs = parseIso("2027-11-06T20:00:00", ZONE) ?? 0;
    const { slots } = understand(
      "remind me tomorrow at nine to check the crock",
      kitchenContext({ nowMs }),
    );
    expect(slots).toEqual({ when: "2027-11-07T09:00:00", text: "check the crock" });
  });
});

describe("an answer to a question that waits", () => {
  it("is a bare number, a name or a choice", () => {
    const number = kitchenContext({ question: { kind: "number" } });
    expect(understand("nine", number)).toMatchObject({ intent: "answer", slots: { value: 9 } });
    expect(understand("about eleven and a half", number).slots).toEqual({ value: 11.5 });
    const choice = kitchenContext({
      question: { kind: "choice", choices: ["pickled beets", "dilly beans"] },
    });
    expect(understand("the beets", choice).slots).toEqual({ value: "pickled beets" });
    expect(understand("the second one", choice).slots).toEqual({ value: "dilly beans" });
    expect(understand("both", choice).slots).toEqual({ value: "both" });
    expect(understand("neither", choice).slots).toEqual({ value: "neither" });
    const altitude = kitchenContext({ question: { kind: "altitude" } });
    expect(understand("six thousand two hundred", altitude).slots).toEqual({ value: 6200 });
    expect(understand("6,200 feet", altitude)).toMatchObject({
      intent: "altitude",
      slots: { feet: 6200 },
    });
  });

  it("may be a yes or a no, and okay is neither", () => {
    const context = kitchenContext({ question: { kind: "yes-no" } });
    expect(understand("it did", context).intent).toBe("yes");
    expect(understand("it did not", context).intent).toBe("no");
    expect(understand("okay", context).intent).toBe("acknowledge");
    expect(understand("all right", context).intent).toBe("acknowledge");
  });

  it("lets a new report or an order through", () => {
    const choice = { kind: "choice", choices: ["pickled beets", "dilly beans"] } as const;
    const context = kitchenContext({ question: choice });
    expect(understand("it's boiling", context).intent).toBe("boiling");
    expect(understand("set a timer for ten minutes", context).intent).toBe("timer-set");
    expect(understand("the lid on jar two didn't seal", context).intent).toBe("seal-failed");
  });
});

describe("any text at all", () => {
  const context = kitchenContext({ ...rice, running: beans });

  it("gets an answer without throwing", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary", maxLength: 10_000 }), (text) => {
        const { confidence } = understand(text, context);
        expect(confidence >= 0 && confidence <= 1).toBe(true);
      }),
      { numRuns: 200 },
    );
  });

  it("made of the words of commands gets an answer without throwing", () => {
    const words = COMMANDS.flatMap(([text]) => text.split(" "));
    const odd = ["constructor", "__proto__", "toString", "½", "999999999", "1/0", "12:75"];
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...words, ...odd), { maxLength: 80 }), (said) => {
        understand(said.join(" "), context);
      }),
      { numRuns: 500 },
    );
  });

  it.each([
    ["the ", 2500],
    ["and a half ", 900],
    ["please okay now ", 600],
    ["remind me to ", 800],
    ["jar three and ", 700],
    ["\u0301", 10_000],
    ["'", 10_000],
    ["a'", 5000],
  ])("of 10,000 characters takes bounded time: %j", (part, times) => {
    const text = part.repeat(times);
    understand(text, context);
    const before = performance.now();
    understand(text, context);
    // Two orders of magnitude above what it takes, and far below what backtracking would take.
    expect(performance.now() - before).toBeLessThan(1000);
  });

  it("keeps a long note whole", () => {
    const tale = `the garlic was old ${"and so was the dill ".repeat(60)}`.trim();
    const { intent, slots } = understand(`note that ${tale}`, context);
    expect(intent).toBe("note");
    expect(slots).toEqual({ text: tale });
  });
});
