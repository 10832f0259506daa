import { describe, expect, it } from "vitest";
import { kitchenAt } from "./kitchen-moments.ts";

describe("an altitude set from outside the kitchen that is open", () => {
  it("raises running processes at once, and is spoken", async () => {
    const session = await kitchenAt("boiling-water process", 900);
    const t = session.now();
    const { lines } = session.setDown([{ type: "kitchen-set", altitudeFt: 4000, t }]);
    expect(lines.join("\n")).toMatch(/At 4,000 feet the tested process is ten minutes, not five/);
    const [load] = Object.values(session.state.loads);
    expect(load?.terms?.minutes).toBe(10);
  });
});
