/** `brinebell words`: own words are listed, printed as JSON, forgotten, and move house. */
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { ReviewIo } from "../../src/commands/record/review-io.ts";
import { wordsCommand } from "../../src/commands/record/words.ts";
import type { KitchenEvent } from "../../src/kitchen/events.ts";
import { exportKitchen, importKitchen } from "../../src/session/archive/move-house.ts";
import { readKitchen } from "../../src/session/reading/read-kitchen.ts";
import { opening } from "../review/demo-season.ts";
import { LIBRARY } from "../review/kitchen-files.ts";
import { kitchenFolder } from "../review/kitchen-folder.ts";

const T = Date.UTC(2022, 7, 14, 15);
const learned = (words: string, intent: string, nth: number): KitchenEvent => {
  const moment = { stages: ["heat"], question: "vinegar-5-percent" };
  const stamp = { cmd: `~c${nth}`, t: T + nth * 60_000, w: T + nth * 60_000 };
  return { type: "words-learned", words, ...moment, intent, ...stamp };
};
const EVENTS = [learned("give them a rest", "hold", 1), learned("bell at three", "remind", 2)];

let kitchen: ReturnType<typeof kitchenFolder>;
let io: ReviewIo;

beforeEach(() => {
  kitchen = kitchenFolder([...opening(T), ...EVENTS]);
  const { folder } = kitchen;
  io = { folder, version: "0", build: "test", library: () => LIBRARY, readFile: () => "" };
});
afterEach(() => kitchen.done());

const words = async (...args: string[]) => {
  const { stdout } = await wordsCommand([...args, "--json"], io);
  return JSON.parse(stdout).words.map((one: { words: string }) => one.words);
};

describe("brinebell words", () => {
  it("lists them with what they mean and their moment", async () => {
    const { code, stdout } = await wordsCommand([], io);
    expect(code).toBe(0);
    const [first] = stdout.split("\n");
    expect(first).toMatch(/^1 {2}"give them a rest", as in ".+"; heat/);
    expect(first).toMatch(/; heat, asked about vinegar-5-percent; learned 2022-08-14$/);
    const json = JSON.parse((await wordsCommand(["--json"], io)).stdout);
    expect(json.words[1]).toMatchObject({ number: 2, words: "bell at three", intent: "remind" });
  });

  it("forgets one by its number, or all", async () => {
    expect((await wordsCommand(["--forget", "1"], io)).stdout).toMatch(/Forgotten/);
    expect(await words()).toEqual(["bell at three"]);
    expect((await wordsCommand(["--forget", "all"], io)).code).toBe(0);
    expect(await words()).toEqual([]);
    expect((await wordsCommand([], io)).stdout).toBe("No words were learned yet.\n");
  });

  it("says what is wrong with a number", async () => {
    expect(await wordsCommand(["--forget", "3"], io)).toMatchObject({ code: 1 });
    expect(await wordsCommand(["--forget", "some"], io)).toMatchObject({ code: 2 });
    expect(await wordsCommand(["give"], io)).toMatchObject({ code: 2 });
    expect(await words()).toHaveLength(2);
  });

  it("move house with all the rest", async () => {
    const other = kitchenFolder([]);
    const answer = await importKitchen(other.folder, exportKitchen(kitchen.folder).text);
    expect(answer.ok).toBe(true);
    const { state } = readKitchen(other.folder, { wallMs: 0 });
    expect(state.ownWords).toEqual(readKitchen(kitchen.folder, { wallMs: 0 }).state.ownWords);
    expect(state.ownWords).toHaveLength(2);
    other.done();
  });
});
