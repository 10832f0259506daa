import { describe, expect, it } from "vitest";
import { runRehearsalScreen } from "../../src/screen/run-rehearsal-screen.tsx";
import type { Rehearsal } from "../../src/session/rehearsal/rehearse.ts";
import { watchedRehearsal } from "../../src/session/rehearsal/watched-rehearsal.ts";
import { FakeTerminal } from "./fake-terminal.ts";
import { MORNING, recipes, settled, ZONE } from "./made-up-screen.ts";

async function rehearse(terminal: FakeTerminal, speed?: number) {
  const library = await recipes();
  let rehearsal: Rehearsal | undefined;
  const end = runRehearsalScreen(
    (hooks) => {
      const parts = {
        library,
        recipes: ["dilled-green-beans"],
        begin: {},
        startMs: MORNING,
        zone: ZONE,
        setUp: [{ type: "kitchen-set" as const, altitudeFt: 6200, t: 0 }],
        demoAltitudeFt: 6200,
        version: "0",
      };
      const watched = watchedRehearsal(parts, hooks);
      rehearsal = watched.rehearsal;
      return watched;
    },
    terminal.io,
    speed,
  );
  return { end, session: () => rehearsal!.kitchen.session };
}

describe("a rehearsal on the screen", () => {
  it("plays to its end", async () => {
    const terminal = new FakeTerminal(100, 40);
    const { end, session } = await rehearse(terminal, 200_000);
    await end;
    const batch = Object.values(session().state.batches)[0];
    expect(batch?.state).toBe("complete");
    expect(terminal.stdin.rawMode).toBe(false);
    expect(terminal.scrolled).toBe(0);
  });

  it("is shown as it goes, takes words, and ends with q", async () => {
    const terminal = new FakeTerminal(100, 40);
    const { end, session } = await rehearse(terminal);
    await settled(300);
    expect(await terminal.text()).toContain("rehearsal");
    expect(await terminal.text()).toContain("wash and trim");
    terminal.type("timer for ten minutes\r");
    expect(Object.values(session().state.timers)).toHaveLength(1);
    terminal.type("q\r");
    await end;
    expect(await terminal.ownPage()).toBe(false);
  });
});
