/**
 * Reports that clear a doubt or set a value, as people say them with idle talk around them, and
 * what only sounds like one: denied, wished, asked, half-way, of another pot, on a condition, in
 * jest, from hearsay, of another day, as an order.
 */
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { questionFrom } from "../../src/commands/open/understand.ts";
import type { Command, Intent } from "../../src/kitchen/command.ts";
import { hear } from "../../src/language/hear.ts";
import { MEANINGS } from "../../src/language/intents/all.ts";
import { kitchenContext, underWayOf } from "./kitchen-context.ts";

const rows = (file: string) =>
  readFileSync(new URL(file, import.meta.url), "utf8")
    .split("\n")
    .filter((line) => line !== "" && !line.startsWith("#"))
    .map((line) => line.split("\t"));

const PLAIN = rows("clearing/plain.tsv");
const FOOLING = rows("clearing/fooling.tsv");
/** Words of orders and of changing reports that nobody means. */
const NOT_MEANT = rows("clearing/not-meant.tsv");

function commandsIn(text: string, stage: string, key = ""): readonly Command[] {
  return heardIn(text, stage, key).commands;
}

function heardIn(text: string, stage: string, key = "") {
  const question = questionFrom(key === "" ? undefined : key);
  const table = stage === "hands-on";
  const loads =
    stage === "" || table ? [] : [{ id: "L1", canner: "canner", stages: [underWayOf(stage)] }];
  return hear(
    text,
    kitchenContext({
      running: [
        { id: "b-1", recipe: "dilled-green-beans", variety: "Provider" },
        { id: "b-2", recipe: "pickled-beets", ...(table ? { stages: [underWayOf(stage)] } : {}) },
      ],
      timers: [{ id: "t-1", label: "rice" }],
      loads,
      factors: key === "" ? [] : [{ id: key }],
      ...(question ? { question } : {}),
    }),
  );
}

/** Takes food for sound, or sets a count or a measure. */
function clears({ intent, slots, confirms }: Command): boolean {
  const { cost, plainly, answer } = MEANINGS[intent];
  const unsure = "unsure" in slots && slots.unsure === true;
  const no = intent === "no" || unsure || ("held" in slots && slots.held === "no");
  if (confirms?.some(({ held }) => held === "yes")) return true;
  if (answer === true && no) return false;
  if (intent === "factor" && "held" in slots && slots.held !== "yes") return false;
  return cost === "clearing" || plainly === true || answer === true;
}

describe("a plain report", () => {
  it.each([...new Set(PLAIN.map(([intent]) => intent as Intent))])("acts at once: %s", (intent) => {
    const list = PLAIN.filter(([meant]) => meant === intent);
    expect(list.length).toBeGreaterThanOrEqual(25);
    const missed = list.filter(([, stage = "", values = "", text = ""]) => {
      const commands = commandsIn(text, stage);
      const one = commands.find((command) => command.intent === intent);
      const slots = JSON.stringify(one?.slots);
      const right = Object.entries(JSON.parse(values)).every(([slot, value]) =>
        slots?.includes(`"${slot}":${JSON.stringify(value).replace(/"$/, "")}`),
      );
      return !one || !right;
    });
    expect(missed).toEqual([]);
  });
});

describe("nothing is cleared and no value set by what is", () => {
  it.each([...new Set(FOOLING.map(([family]) => family ?? ""))])("%s", (family) => {
    const list = FOOLING.filter(([one]) => one === family);
    const fooled = list.filter(([, stage = "", question, text = ""]) => {
      return commandsIn(text, stage, question).some(clears);
    });
    expect(fooled).toEqual([]);
  });

  it("tried with many", () => {
    expect(FOOLING.length).toBeGreaterThanOrEqual(500);
  });
});

describe("nothing is ordered, changed or raised by what is", () => {
  it.each([...new Set(NOT_MEANT.map(([family]) => family ?? ""))])("%s", (family) => {
    const list = NOT_MEANT.filter(([one]) => one === family);
    const acted = list.filter(([, stage = "", text = ""]) => {
      return commandsIn(text, stage).some(({ intent }) => MEANINGS[intent].cost !== "harmless");
    });
    expect(acted).toEqual([]);
  });
});

describe("what stays as it is said", () => {
  it.each([
    "one popped up",
    "two have popped up",
    "one popped back up",
    "two never pinged",
    "jar two pings when I press it",
  ])("a lid that is up has failed: %s", (text) => {
    expect(commandsIn(text, "cool")).toMatchObject([{ intent: "seal-failed" }]);
  });

  it("a lid that is domed up is no seal, whatever popped", () => {
    for (const text of [
      "the lid's domed up",
      "one went pop and the lid's domed up like a balloon",
    ]) {
      expect(commandsIn(text, "cool")).toMatchObject([{ intent: "spoiled" }]);
    }
  });

  it.each(["hold", "hold the beans", "hold on", "stop the clock", "hold everything", "a minute"])(
    "an order that takes the whole clause holds: %s",
    (text) => {
      expect(commandsIn(text, "process")).toMatchObject([{ intent: "hold" }]);
    },
  );

  it("an order that may be anybody's is asked about", () => {
    const { reading, candidates } = heardIn("stop it", "process");
    expect([reading, candidates[0]?.intent]).toEqual(["ask", "hold"]);
  });

  it("water that covers the lids raises no doubt", () => {
    expect(heardIn("water is still well over the lids", "process").evidence).toBeUndefined();
    expect(commandsIn("water is over the lids no more", "process")).toMatchObject([
      { intent: "water-low" },
    ]);
  });
});
