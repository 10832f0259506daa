import { describe, expect, it } from "vitest";
import { MINUTE_MS } from "../../src/kitchen/time.ts";
import { saturdayKitchen } from "./saturday-kitchen.ts";

const START = "start the Provider dilly beans, four pounds";

function heard(...words: string[]): { kitchen: ReturnType<typeof saturdayKitchen>; said: string } {
  const kitchen = saturdayKitchen();
  const said = words.map((one) => kitchen.session.hear(one).lines.join(" ")).at(-1) ?? "";
  return { kitchen, said };
}

describe("how much is said", () => {
  it("is short always for a cook who asks for that, and more tells the rest", () => {
    const { kitchen, said } = heard("keep it short", START);
    expect(said).toContain("Wash and trim.");
    expect(said).not.toContain("cut them to four inches");
    expect(kitchen.session.hear("more").lines.join(" ")).toContain("cut them to four inches");
  });

  it("keeps what the hands need and what guards against steam", () => {
    const { kitchen } = heard("keep it short", START, "start the brine", "five percent");
    for (const words of ["the brine is boiling", "done", "the canner's ready"])
      kitchen.session.hear(words);
    const fill = kitchen.session.hear("what now").lines.join(" ");
    expect(fill).toContain("half an inch");
    kitchen.session.hear("eight pints filled");
    kitchen.session.hear("half an inch");
    const { lines } = kitchen.session.hear("new lids");
    const all = [...kitchen.lines.map(({ text }) => text), ...lines].join("\n");
    expect(all).toContain("Fill to half an inch, lids from P 1");
    expect(all).toMatch(/face clear of the steam/);
  });

  it("is whole again when that is asked for, and the setting can be taken back", () => {
    expect(heard("keep it short", "tell me everything", START).said).toContain("to four inches");
    expect(heard("keep it short", "undo", START).said).toContain("to four inches");
  });
});

describe("the quiet hours in words", () => {
  it("are set, switched off and taken back", () => {
    const { kitchen } = heard("quiet from ten to six");
    const { state } = kitchen.session;
    expect(state.kitchen.quiet).toEqual({ fromMinute: 22 * 60, toMinute: 6 * 60 });
    kitchen.session.hear("no quiet hours");
    expect(state.kitchen.quiet).toBeNull();
    expect(kitchen.session.hear("undo").lines.join(" ")).toBe("Taken back: the quiet hours.");
    expect(state.kitchen.quiet).toEqual({ fromMinute: 22 * 60, toMinute: 6 * 60 });
  });

  it("are left out for one night, and come back the next", () => {
    const { kitchen, said } = heard("no quiet hours tonight");
    expect(said).toBe("No quiet hours tonight.");
    const { session, clock } = kitchen;
    const { awakeUntil = 0 } = session.state.kitchen;
    expect(awakeUntil - session.now()).toBeCloseTo(22.5 * 60 * MINUTE_MS, -6);
    clock.advance(20 * 60 * MINUTE_MS);
    expect(session.now()).toBeLessThan(awakeUntil);
  });
});
