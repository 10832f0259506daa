import { describe, expect, it, vi } from "vitest";
import { Listeners } from "../../src/session/listeners.ts";
import type { LiveKitchen } from "../../src/session/live-kitchen.ts";
import { goOnWithoutFace, mayNotEnd } from "../../src/session/without-face.ts";
import { madeUp } from "../screen/made-up-screen.ts";

const LOOK_MS = 10;
const HOUR_MS = 3_600_000;

/** A made-up kitchen whose terminal is gone; `pass` lets its hour and ours go on together. */
async function faceless(...words: string[]) {
  const { kitchen } = await madeUp();
  for (const one of words) kitchen.session.hear(one);
  const changes = new Listeners();
  const state = { glasses: 0, ended: false, steadyMs: 0 };
  const live: Pick<LiveKitchen, "session" | "lines" | "onChange" | "glasses"> = {
    session: kitchen.session,
    lines: kitchen.lines,
    onChange: (listener) => changes.add(listener),
    glasses: () => state.glasses,
  };
  const notice = vi.fn(async () => true);
  const nowMs = () => state.steadyMs;
  const before = kitchen.lines.length;
  const over = goOnWithoutFace({ kitchen: live, notice, nowMs, lookMs: LOOK_MS }).then(() => {
    state.ended = true;
  });
  const pass = async (ms: number) => {
    kitchen.clock.advance(ms);
    state.steadyMs += ms;
    changes.tell();
    await new Promise((resolve) => setTimeout(resolve, 3 * LOOK_MS));
  };
  return { kitchen, live, notice, over, pass, state, said: () => kitchen.lines.slice(before) };
}

describe("a kitchen whose terminal is gone", () => {
  it("may end unless something runs that somebody waits for, or rings", async () => {
    const waits: [string[], boolean][] = [
      [[], false],
      [["timer for nine minutes"], true],
      [["start the sauerkraut", "done", "done"], false],
      [["start the bread and butter pickles", "done"], true],
    ];
    for (const [words, expected] of waits) {
      const { kitchen } = await madeUp();
      for (const one of words) kitchen.session.hear(one);
      expect([words, mayNotEnd(kitchen)]).toEqual([words, expected]);
    }
  });

  it("goes on aloud, shows alarms on the desktop, and ends once they are answered", async () => {
    const { kitchen, notice, over, pass, state, said } = await faceless("timer for nine minutes");
    expect(said().at(-1)?.text).toMatch(/The terminal is gone.*the 9 minute timer runs/);
    await pass(60_000);
    expect([state.ended, notice.mock.calls.length]).toEqual([false, 0]);
    await pass(8 * 60_000 + 1000);
    expect([state.ended, notice.mock.calls.length > 0]).toEqual([false, true]);
    kitchen.session.hear("got it");
    await pass(1000);
    await pass(1000);
    await over;
  });

  it("waits for nobody longer than an hour, and for a window as long as it looks in", async () => {
    const { pass, state, over } = await faceless("timer for nine minutes");
    await pass(10 * 60_000);
    state.glasses = 1;
    await pass(2 * HOUR_MS);
    expect(state.ended).toBe(false);
    state.glasses = 0;
    await pass(HOUR_MS - 60_000);
    expect(state.ended).toBe(false);
    await pass(120_000);
    await pass(1000);
    await over;
  });
});
