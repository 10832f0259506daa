import { describe, expect, it } from "vitest";
import type { Batch } from "../../src/kitchen/state.ts";
import { MINUTE_MS } from "../../src/kitchen/time.ts";
import { verdictOf } from "../../src/review/verdict.ts";
import { nextAction } from "../../src/session/rehearsal/ideal-cook.ts";
import { MadeUpKitchen } from "../../src/session/rehearsal/made-up-kitchen.ts";
import { SILENT } from "../../src/session/short-session.ts";
import { onlyBatch, play, theLibrary } from "./play.ts";

const EIGHT = Date.parse("2027-08-14T08:00:00-06:00");
const ASKED = /What does your guide say for pints at this altitude, in minutes\?/;

/** A day that is not a rehearsal; the times of this salsa above 1,000 ft are from memory. */
function kitchenAt(altitudeFt: number | undefined): MadeUpKitchen {
  return new MadeUpKitchen({
    library: theLibrary(),
    startMs: EIGHT,
    zone: "America/Denver",
    setUp: [{ type: "kitchen-set", ...(altitudeFt ? { altitudeFt } : {}), t: EIGHT }],
    version: "0.0.0",
    voice: () => SILENT,
    rehearsal: false,
  });
}

function batches(kitchen: MadeUpKitchen): Batch[] {
  return Object.values(kitchen.session.state.batches);
}

/** The ideal cook does the rest of the day. */
function cookOn(kitchen: MadeUpKitchen, until: () => unknown = () => false): void {
  for (let turn = 0; turn < 5000; turn++) {
    const now = kitchen.session.now();
    if (batches(kitchen).every((one) => one.state === "complete") || until()) return;
    const action = nextAction(kitchen.session.state, now, 6200);
    const at = Math.min(action?.at ?? now + 15 * MINUTE_MS, now + 15 * MINUTE_MS);
    const wake = kitchen.clock.untilNextTimer() ?? Number.POSITIVE_INFINITY;
    kitchen.clock.advance(Math.max(0, Math.min(at - now, wake)));
    if (action && action.at <= kitchen.session.now()) kitchen.session.carry(action);
  }
}

function judged(kitchen: MadeUpKitchen) {
  const { state } = kitchen.session;
  const [batch] = batches(kitchen);
  return batch && verdictOf(state, batch, kitchen.session.now());
}

describe("a time from memory", () => {
  it("is compared before the batch begins, once, and is then as tested", () => {
    const kitchen = kitchenAt(6200);
    const { lines } = kitchen.session.hear("start the choice salsa");
    expect(lines.join(" ")).toMatch(ASKED);
    expect(batches(kitchen)).toEqual([]);
    expect(kitchen.session.hear("twenty five minutes").lines.join(" ")).toMatch(/The same as mine/);
    cookOn(kitchen);
    expect(judged(kitchen)).toMatchObject({ verdict: "as-tested" });
    expect(kitchen.session.hear("start the choice salsa").lines.join(" ")).not.toMatch(ASKED);
    expect(batches(kitchen)).toHaveLength(2);
  });

  it.each([
    ["it says thirty", 30],
    ["my guide says twenty", 25],
  ])("runs the longer one where the guide differs, not as tested: %s", (answer, minutes) => {
    const kitchen = kitchenAt(6200);
    kitchen.session.hear("start the choice salsa");
    expect(kitchen.session.hear(answer).lines.join(" ")).toMatch(/not as tested/);
    cookOn(kitchen);
    expect(Object.values(kitchen.session.state.loads)[0]?.terms?.minutes).toBe(minutes);
    expect(judged(kitchen)).toMatchObject({
      verdict: "not-as-tested",
      reasons: [expect.stringMatching(/^the guide says/)],
    });
  });

  it("is announced as such where nobody compared it, and is not as tested", () => {
    const kitchen = kitchenAt(6200);
    kitchen.session.hear("start the choice salsa");
    const { lines } = kitchen.session.hear("I don't know");
    expect(lines.join(" ")).toMatch(/from memory.*not as tested/);
    cookOn(kitchen);
    expect(judged(kitchen)).toMatchObject({
      verdict: "not-as-tested",
      reasons: [expect.stringMatching(/from memory/)],
    });
  });

  it.each(["yes", "okay", "about twenty-five I think"])(
    "is not compared by a word that says no number: %s",
    (answer) => {
      const kitchen = kitchenAt(6200);
      kitchen.session.hear("start the choice salsa");
      kitchen.session.hear(answer);
      expect(kitchen.session.state.guides).toEqual([]);
    },
  );

  it("is asked about again where the comparison was for another band", () => {
    const kitchen = kitchenAt(6200);
    kitchen.session.hear("start the choice salsa");
    kitchen.session.hear("twenty-five");
    const [guide] = kitchen.session.state.guides;
    expect(guide).toMatchObject({ table: "choice-salsa", minutes: 25, oursMinutes: 25 });
    kitchen.session.state.guides = [{ ...(guide as NonNullable<typeof guide>), band: "other" }];
    kitchen.session.hear("abandon the salsa");
    kitchen.session.hear("yes");
    expect(kitchen.session.hear("start the choice salsa").lines.join(" ")).toMatch(ASKED);
  });

  it("is never asked about where it was read in the publication", () => {
    const kitchen = kitchenAt(6200);
    expect(kitchen.session.hear("start the chile salsa").lines.join(" ")).not.toMatch(/guide/);
    expect(batches(kitchen)).toHaveLength(1);
  });
});

describe("a time from memory that nobody could ask about at the beginning", () => {
  const asked = (kitchen: MadeUpKitchen) => {
    return kitchen.lines.filter(({ kind, text }) => kind === "asked" && ASKED.test(text)).length;
  };

  it("is asked about once the altitude is known", () => {
    const kitchen = kitchenAt(undefined);
    kitchen.session.hear("start the choice salsa");
    expect(batches(kitchen)).toHaveLength(1);
    expect(asked(kitchen)).toBe(0);
    cookOn(kitchen);
    expect(asked(kitchen)).toBe(1);
    expect(judged(kitchen)).toMatchObject({ verdict: "as-tested" });
  });

  it("is asked about where the altitude is raised into it", () => {
    const raised = (answer: string) => {
      const kitchen = kitchenAt(900);
      kitchen.session.hear("start the choice salsa");
      kitchen.session.hear("fifteen minutes");
      const timed = () => {
        const [load] = Object.values(kitchen.session.state.loads);
        return load?.stages.some(({ kept, id }) => id === "process" && kept?.stretches.length);
      };
      cookOn(kitchen, timed);
      expect(asked(kitchen)).toBe(1);
      kitchen.session.hear("we're at 6200 feet");
      kitchen.clock.advance(MINUTE_MS);
      expect(asked(kitchen)).toBe(2);
      kitchen.session.hear(answer);
      cookOn(kitchen);
      return { times: asked(kitchen), ...judged(kitchen) };
    };
    expect(raised("twenty-five minutes")).toMatchObject({ verdict: "as-tested", times: 2 });
    expect(raised("thirty minutes").reasons?.join()).toMatch(/^the guide says 30/);
    // What is not known is asked once more, at a calm moment.
    expect(raised("I don't know")).toMatchObject({ times: 3 });
  });
});

describe("a rehearsal", () => {
  it("takes a time from memory as compared, and says so", async () => {
    const played = await play("choice-salsa");
    expect(onlyBatch(played).verdict).toBe("as-tested");
    const said = played.said.map(({ text }) => text).join(" ");
    expect(said).toMatch(/from memory; this rehearsal takes it as compared with your guide/);
    expect(played.asked.map(({ text }) => text).join(" ")).not.toMatch(ASKED);
  });
});
