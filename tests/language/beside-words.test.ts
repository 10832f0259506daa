/** Words beside a report: they change nothing, and never hide that something failed. */
import { describe, expect, it } from "vitest";
import { BESIDE, LIKENS, MOST_LIKENED } from "../../src/language/beside-words.ts";
import { TELLING } from "../../src/language/guards.ts";
import { hear } from "../../src/language/hear.ts";
import { MEANINGS } from "../../src/language/intents/all.ts";
import { accountedFor } from "../../src/language/understand.ts";
import { utteranceOf } from "../../src/language/words.ts";
import { kitchenContext } from "./kitchen-context.ts";

const context = kitchenContext({
  running: [
    {
      id: "b-1",
      recipe: "dilled-green-beans",
      stages: [{ id: "brine", title: "boil the brine", kind: "heat", state: "running" }],
    },
  ],
});
const reported = (text: string) => accountedFor(utteranceOf(text), context)?.intent;

/** Verbs and little words of every report; alone they tell nothing. */
const OF_EVERY_REPORT = "that they them she her so is are am has have do does love".split(" ");

it("tell nothing of their own, but for the verbs of every report", () => {
  const telling = [...BESIDE].filter((word) => TELLING.has(word));
  expect(telling.sort()).toEqual([...OF_EVERY_REPORT].sort());
});

it.each(["not", "never", "almost", "if", "when", "stopped", "off", "down", "low", "gone", "cold"])(
  "are never %s",
  (word) => {
    expect(BESIDE.has(word)).toBe(false);
  },
);

describe("beside a report", () => {
  it.each([
    ["it is boiling, honey, all around the big pot", "boiling"],
    ["lord it is boiling fiercely and steady", "boiling"],
    ["it is boiling like the old trains", "boiling"],
    ["nine pints filled, honey, on the counter", "jars-filled"],
  ])("they change nothing: %s", (text, intent) => {
    expect(reported(text)).toBe(intent);
  });

  it.each([
    ["a word of another kind", "it is boiling, doctor, all around the big pot"],
    ["a comparison that tells of a loss", "it is boiling like it stopped"],
    ["a question", "is it boiling, honey, all around?"],
  ])("%s is not one of them", (_why, text) => {
    expect(reported(text)).toBe(undefined);
  });

  it("a comparison has few words", () => {
    const [likens = ""] = LIKENS;
    const words = "mules ducks geese wagons crows".split(" ").slice(0, MOST_LIKENED + 1);
    expect(reported(`it is boiling ${likens} ${words.slice(1).join(" ")}`)).toBe("boiling");
    expect(reported(`it is boiling ${likens} ${words.join(" ")}`)).toBe(undefined);
  });
});

describe("beside a loss", () => {
  it.each(["it stopped boiling", "it is not boiling", "there is no steam", "one lid did not seal"])(
    "none of them makes it sound: %s",
    (loss) => {
      const cleared = [...BESIDE].filter((word) => {
        const { commands } = hear(`${loss} ${word}`, context);
        return commands.some(({ intent }) => MEANINGS[intent].cost === "clearing");
      });
      expect(cleared).toEqual([]);
    },
  );
});

it.each(["the boil is going away", "the boil is going out", "steam is going away"])(
  "a boil that fades is none: %s",
  (text) => {
    const { commands } = hear(text, context);
    expect(commands.map(({ intent }) => MEANINGS[intent].cost)).not.toContain("clearing");
  },
);
