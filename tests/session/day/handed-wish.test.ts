/** A command passed to an open kitchen arrives unchanged, or not at all. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Wish } from "../../../src/kitchen/decide/decision.ts";
import { COMMAND_MARK, handedLine, handedWish } from "../../../src/session/day/handed-wish.ts";

const SEED = { crop: "cucumber", variety: "Boothby Blond", fermentDays: 3, dryWeightG: 12.5 };

function line(parts: object): string {
  return `${COMMAND_MARK}${JSON.stringify(parts)}`;
}

const saved = (slots: object) => handedWish(line({ intent: "seed-saved", text: "x", slots }));

describe("a command handed over", () => {
  it("arrives unchanged, whatever its words are", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary" }), fc.option(fc.string()), (text, owner) => {
        const wish = {
          command: { intent: "seed-saved", slots: { ...SEED, isolation: text } },
          ...(owner === null ? {} : { chosen: [{ owner }] }),
        } as unknown as Wish;
        const sent = handedLine({ wish, words: text });
        expect(sent).not.toContain("\n");
        const { command, ...rest } = wish;
        const arrived = { command: { ...command, confidence: 1 }, ...rest };
        expect(handedWish(sent)).toEqual({ wish: arrived, words: text });
      }),
    );
  });

  it("carries the batches of a plan", () => {
    const items = [
      { recipe: "pickled-beets", weightLb: 7 },
      { recipe: "dilled-green-beans", weightLb: 4, variety: "Provider" },
    ];
    const slots = { items, go: true, finishBy: "2027-08-14T21:00:00" };
    const arrived = handedWish(line({ intent: "plan", text: "plan", slots }));
    expect(arrived?.wish.command.slots).toEqual(slots);
    const off = { ...slots, items: [...items, { recipe: "rhubarb" }] };
    expect(handedWish(line({ intent: "plan", text: "plan", slots: off }))).toBeUndefined();
  });

  it.each([
    ["no JSON", `${COMMAND_MARK}{`],
    ["no object", `${COMMAND_MARK}[]`],
    ["nothing", `${COMMAND_MARK}null`],
    ["an intent that words are for", line({ intent: "boiling", text: "x", slots: {} })],
    ["a name every object has", line({ intent: "constructor", text: "x", slots: {} })],
    ["no words to show", line({ intent: "seed-saved", slots: SEED })],
    ["no slots", line({ intent: "seed-saved", text: "x" })],
  ])("is rejected where the line is %s", (_what, text) => {
    expect(handedWish(text)).toBeUndefined();
  });

  it("is rejected where a field is missing or wrong, and loses unknown fields", () => {
    expect(saved({ variety: "Boothby Blond" })).toBeUndefined();
    expect(saved({ ...SEED, fermentDays: "three" })).toBeUndefined();
    expect(saved({ ...SEED, storage: null })).toBeUndefined();
    expect(saved({ ...SEED, polluted: true })?.wish.command.slots).toEqual(SEED);
  });
});
