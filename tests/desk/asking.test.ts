import { describe, expect, it } from "vitest";
import { Desk } from "../../src/desk/desk.ts";

const text = "The vinegar: what percent?";
const busy = { now: 0, handsFreeAt: 1000 };
const night = { now: 0, asleepUntil: 8000 };

describe("when the desk lets a question be asked", () => {
  it("is later where hands are in the jars and it can wait for them, and says why once", () => {
    const desk = new Desk();
    const waits = { morning: true, hands: true };
    expect(desk.mayAsk({ text, waits }, busy)).toBe(false);
    expect(desk.mayAsk({ text, waits }, busy)).toBe(false);
    expect(desk.decisions()).toEqual([
      expect.objectContaining({ wanted: text, deferredTill: 1000, said: null, why: "hands busy" }),
    ]);
    expect(desk.mayAsk({ text, waits }, { now: 1000 })).toBe(true);
  });

  it("is now where it guards what is in the jars, or a process at night", () => {
    const desk = new Desk();
    const waits = { morning: false, hands: false };
    expect(desk.mayAsk({ text, waits }, { ...busy, ...night })).toBe(true);
    expect(desk.decisions()).toEqual([]);
  });

  it("is in the morning where it can wait for that", () => {
    const desk = new Desk();
    expect(desk.mayAsk({ text, waits: { morning: true, hands: false } }, night)).toBe(false);
    expect(desk.decisions()).toMatchObject([{ deferredTill: 8000, why: "night" }]);
  });
});
