import { describe, expect, it } from "vitest";
import { restUntil } from "../../../src/session/view/rest.ts";
import { madeUp } from "../../screen/made-up-screen.ts";

describe("a rest of everything", () => {
  it("does not exist in an empty kitchen, or while somebody has work", async () => {
    const { session } = (await madeUp()).kitchen;
    expect(restUntil(session.state, session.now())).toBeUndefined();
    session.hear("start the dilly beans");
    expect(restUntil(session.state, session.now())).toBeUndefined();
  });

  it("lasts until the shortest time of what rests, and then until its longest", async () => {
    const { session, clock } = (await madeUp()).kitchen;
    session.hear("start the sauerkraut, 5 pounds");
    for (let step = 0; step < 40; step++) {
      if (restUntil(session.state, session.now()) !== undefined) break;
      clock.advance(60_000);
      session.press();
      if (session.waitingFor) session.hear("yes");
    }
    const run = Object.values(session.state.batches)[0]?.stages.find(
      (one) => one.state === "running",
    );
    const { minMinutes = 0, maxMinutes = 0 } = run?.spec.window ?? {};
    const from = run?.startedAt ?? 0;
    expect(maxMinutes).toBeGreaterThan(minMinutes);
    expect(restUntil(session.state, from)).toBe(from + minMinutes * 60_000);
    const later = from + (minMinutes + 1) * 60_000;
    expect(restUntil(session.state, later)).toBe(from + maxMinutes * 60_000);
  });
});
