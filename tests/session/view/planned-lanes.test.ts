import { describe, expect, it } from "vitest";
import { dayLanes } from "../../../src/session/view/lanes.ts";
import { saturdayKitchen } from "../../scenarios/saturday-kitchen.ts";

describe("the strip of a planned day", () => {
  it("shows what is still to begin at its planned time, one thing at a time in a lane", () => {
    const kitchen = saturdayKitchen();
    const { session } = kitchen;
    session.hear("plan eight pounds of Provider dilly beans and seven pounds of pickled beets");
    session.hear("yes");
    const lanes = dayLanes(session.state, session.now(), session.plannedTasks);
    const [item] = session.state.dayPlan?.items ?? [];
    const first = lanes
      .find((lane) => lane.name === "hands")
      ?.parts.find((part) => part.label.startsWith("pickled beets"));
    expect(first?.label).toBe("pickled beets: trim");
    expect(Math.abs((first?.fromWallMs ?? 0) - (item?.beginAt ?? 0))).toBeLessThan(60_000);
    expect(lanes.map((lane) => lane.name)).toContain("canner");
    for (const { name, parts } of lanes) {
      const planned = parts.filter((part) => part.label.startsWith("pickled beets"));
      planned.forEach((part, at) => {
        const next = planned[at + 1];
        if (name !== "hands") return;
        expect(part.toWallMs).toBeLessThanOrEqual(next?.fromWallMs ?? part.toWallMs);
      });
    }
  });
});
