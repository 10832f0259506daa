import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { MEANINGS } from "../../src/language/intents/all.ts";
import { understand } from "../../src/language/understand.ts";
import { kitchenContext } from "./kitchen-context.ts";

const FOLDER = new URL("./wordings/", import.meta.url);
const running = [
  { id: "b-1", recipe: "dilled-green-beans", variety: "Provider" },
  { id: "b-2", recipe: "pickled-beets" },
];
const context = kitchenContext({ running });

type Wording = { text: string; intent: string; slots: Record<string, unknown> };

function wordingsIn(file: string): Wording[] {
  const lines = readFileSync(new URL(file, FOLDER), "utf8").split("\n");
  return lines
    .filter((line) => line !== "" && !line.startsWith("#"))
    .map((line) => {
      const [text = "", intent = "", slots = "{}"] = line.split("\t");
      return { text, intent, slots: JSON.parse(slots) };
    });
}

function isExact({ text, intent, slots }: Wording): boolean {
  const understood = understand(text, context);
  const filled: Record<string, unknown> = understood.slots;
  return (
    understood.intent === intent &&
    Object.entries(slots).every(
      ([slot, value]) => JSON.stringify(filled[slot]) === JSON.stringify(value),
    )
  );
}

describe("wordings written without looking at the phrases", () => {
  const files = readdirSync(FOLDER).filter((file) => file.endsWith(".tsv"));

  it.each(files)("are understood except for one in a hundred: %s", (file) => {
    const commands = wordingsIn(file).filter(({ intent }) => intent !== "unknown");
    const wrong = commands.filter((wording) => !isExact(wording)).map(({ text }) => text);
    const most = Math.floor(commands.length / 100);
    expect(wrong.length, wrong.join("\n")).toBeLessThanOrEqual(most);
  });

  it.each(files)("contain no talk that is taken for a report: %s", (file) => {
    const talk = wordingsIn(file).filter(({ intent }) => intent === "unknown");
    const taken = talk.filter(({ text }) => MEANINGS[understand(text, context).intent].report);
    expect(taken.map(({ text }) => text)).toEqual([]);
  });
});
