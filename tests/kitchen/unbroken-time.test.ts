import { describe, expect, it } from "vitest";
import type { Gap } from "../../src/kitchen/state.ts";
import {
  achievedMinutes,
  addGap,
  completesAt,
  current,
  isLost,
  lose,
  newKept,
  offMs,
  read,
  restarts,
  start,
  unanswered,
  vouch,
} from "../../src/kitchen/unbroken-time.ts";
import { at } from "./story.ts";

function gap(from: number, to: number): Gap {
  return { from: at(from), to: at(to), cause: "closed" };
}

function begun(minutes = 15, from = 0) {
  const kept = newKept(minutes);
  start(kept, at(from));
  return kept;
}

describe("a condition kept for a time", () => {
  it("is complete its whole time after it began", () => {
    expect(completesAt(begun())).toBe(at(15));
  });

  it("is not complete once it was lost before", () => {
    const kept = begun();
    lose(kept, at(14), "lost");
    expect(completesAt(kept)).toBeUndefined();
    expect(isLost(kept)).toBe(true);
    expect(achievedMinutes(kept, at(60))).toBe(14);
  });

  it("needs its whole time again after a loss", () => {
    const kept = begun();
    lose(kept, at(14), "lost");
    start(kept, at(16));
    expect(completesAt(kept)).toBe(at(31));
    expect(restarts(kept)).toBe(1);
    expect(achievedMinutes(kept, at(31))).toBe(15);
  });

  it("is cut where a loss is reported late, and what began after it never was", () => {
    const kept = begun();
    lose(kept, at(10), "lost");
    start(kept, at(12));
    lose(kept, at(5), "lost");
    expect(kept.stretches).toEqual([{ from: at(0), to: at(5), ended: "lost" }]);
  });

  it("counts in all how long it was off", () => {
    const kept = begun();
    lose(kept, at(5), "lost");
    start(kept, at(65));
    expect(offMs(kept, at(70))).toBe(0);
    lose(kept, at(70), "lost");
    expect(offMs(kept, at(100))).toBe(at(90) - at(0));
  });
});

describe("time that nobody watched", () => {
  it("of half a minute in all asks nothing", () => {
    const kept = begun();
    addGap(kept, gap(2, 2.25));
    addGap(kept, gap(4, 4.25));
    expect(unanswered(kept)).toEqual([]);
    expect(completesAt(kept)).toBe(at(15));
    addGap(kept, gap(6, 6.1));
    expect(unanswered(kept)).toHaveLength(3);
    expect(completesAt(kept)).toBeUndefined();
  });

  it("counts after a yes", () => {
    const kept = begun();
    addGap(kept, gap(5, 12));
    expect(achievedMinutes(kept, at(40))).toBe(5);
    vouch(kept, true);
    expect(completesAt(kept)).toBe(at(15));
    expect(achievedMinutes(kept, at(16))).toBe(16);
  });

  it("ends the stretch where it began after a no", () => {
    const kept = begun();
    addGap(kept, gap(5, 12));
    vouch(kept, false);
    expect(kept.stretches).toEqual([{ from: at(0), to: at(5), ended: "unwatched" }]);
    expect(current(kept)).toBeUndefined();
    start(kept, at(20));
    expect(completesAt(kept)).toBe(at(35));
  });

  it("never counts in a stretch that was lost afterwards, and then asks nothing", () => {
    const kept = begun();
    addGap(kept, gap(5, 12));
    lose(kept, at(20), "lost");
    expect(completesAt(kept)).toBeUndefined();
    expect(unanswered(kept)).toEqual([]);
    expect(achievedMinutes(kept, at(60))).toBe(5);
  });

  it("before the condition held is none of its own", () => {
    const kept = begun(15, 10);
    addGap(kept, gap(2, 8));
    expect(kept.gaps).toEqual([]);
    addGap(kept, gap(8, 12));
    expect(kept.gaps).toEqual([{ from: at(10), to: at(12), cause: "closed" }]);
  });
});

describe("a condition known only by readings", () => {
  function reading(...minutes: number[]) {
    const kept = newKept(30, 5);
    start(kept, at(0));
    for (const minute of minutes) read(kept, at(minute));
    return kept;
  }

  it("is complete at the first reading at or after its end", () => {
    expect(completesAt(reading(0, 5, 10, 15, 20, 25))).toBeUndefined();
    expect(completesAt(reading(0, 5, 10, 15, 20, 25, 30))).toBe(at(30));
  });

  it("takes a longer wait between readings for unwatched time", () => {
    const kept = reading(0, 5, 12);
    expect(unanswered(kept)).toMatchObject([{ from: at(5), to: at(12) }]);
    expect(achievedMinutes(kept, at(12))).toBe(5);
  });

  it("counts no further than its last reading", () => {
    expect(achievedMinutes(reading(0, 5), at(60))).toBe(5);
  });

  it("asks once for a time in which it was closed and not read", () => {
    const kept = reading(0, 5);
    addGap(kept, gap(6, 14));
    read(kept, at(15));
    expect(unanswered(kept)).toHaveLength(1);
  });
});
