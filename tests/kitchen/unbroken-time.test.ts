import { describe, expect, it } from "vitest";
import type { Gap } from "../../src/kitchen/state.ts";
import {
  achievedMinutes,
  addGap,
  beyondAllowance,
  clockEndsAt,
  completesAt,
  current,
  isLost,
  lose,
  newKept,
  OFF_PROCESS_LIMIT_MS,
  offMs,
  read,
  restarts,
  roundOf,
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

describe("the time that counts", () => {
  it("begins empty, with no readings where none are asked for", () => {
    expect(newKept(15)).toEqual({ needMinutes: 15, stretches: [], gaps: [] });
    expect(newKept(30, 5)).toMatchObject({ readAt: [], readEveryMinutes: 5 });
    expect(completesAt(newKept(15))).toBeUndefined();
    expect(clockEndsAt(newKept(15))).toBeUndefined();
    expect(achievedMinutes(newKept(15), at(60))).toBe(0);
  });

  it("has a round of its own for each start and each raise", () => {
    const kept = begun();
    expect(roundOf(kept)).toBe("1");
    expect(roundOf({ ...kept, raised: 1 })).toBe("1.1");
  });

  it("shows on the clock where it ends while it holds, and nowhere once it is lost", () => {
    const kept = begun(15, 3);
    expect(clockEndsAt(kept)).toBe(at(18));
    lose(kept, at(4), "lost");
    expect(clockEndsAt(kept)).toBeUndefined();
  });

  it("is full to the very moment, and is none before pressure was raised", () => {
    const kept = begun();
    lose(kept, at(15), "out");
    expect(completesAt(kept)).toBe(at(15));
    expect(isLost(kept)).toBe(false);
    const raised = { ...begun(), countsFrom: at(5) };
    expect(completesAt(raised)).toBeUndefined();
    expect(achievedMinutes(raised, at(15))).toBe(0);
    const anew = { ...begun(15, 5), countsFrom: at(5) };
    expect(completesAt(anew)).toBe(at(20));
    expect(achievedMinutes(anew, at(20))).toBe(15);
  });

  it("is not held up by a gap outside of it", () => {
    const kept = begun();
    kept.gaps.push(gap(15, 25), gap(-10, 0));
    expect(beyondAllowance(kept)).toBe(true);
    expect(completesAt(kept)).toBe(at(15));
    expect(achievedMinutes(kept, at(15))).toBe(15);
    expect(unanswered(kept)).toMatchObject([{ from: at(15) }]);
  });

  it("is the longest stretch of several", () => {
    const kept = begun();
    lose(kept, at(9), "lost");
    start(kept, at(20));
    lose(kept, at(24), "lost");
    expect(achievedMinutes(kept, at(60))).toBe(9);
    expect(restarts(newKept(15))).toBe(0);
  });

  it("leaves an earlier loss as it was where another is told of later", () => {
    const kept = begun();
    lose(kept, at(5), "lost");
    lose(kept, at(7), "off");
    expect(kept.stretches).toEqual([{ from: at(0), to: at(5), ended: "lost" }]);
    lose(kept, at(5), "off");
    expect(kept.stretches).toEqual([{ from: at(0), to: at(5), ended: "lost" }]);
  });

  it("asks no more of a gap that was answered", () => {
    const kept = begun();
    addGap(kept, gap(5, 12));
    vouch(kept, true);
    vouch(kept, false);
    expect(kept.gaps).toMatchObject([{ held: true }]);
    expect(current(kept)).toBeDefined();
    expect(offMs(kept, at(20))).toBe(0);
  });

  it("may be off for two hours in all", () => {
    expect(OFF_PROCESS_LIMIT_MS).toBe(at(120) - at(0));
    const kept = begun();
    expect(offMs(newKept(15), at(9))).toBe(0);
    lose(kept, at(15), "out");
    expect(offMs(kept, at(60))).toBe(0);
  });

  it("is not counted from a boil that nobody confirmed once that was lost", () => {
    const kept = { ...newKept(15), unconfirmedAt: at(0) };
    lose(kept, at(1), "lost");
    expect(kept.unconfirmedAt).toBeUndefined();
    expect(kept.stretches).toEqual([]);
  });
});

describe("readings that show it", () => {
  const kept = () => {
    const one = newKept(30, 5);
    start(one, at(0));
    return one;
  };

  it("may be five and a half minutes apart, and not more", () => {
    const one = kept();
    read(one, at(5.5));
    expect(one.gaps).toEqual([]);
    read(one, at(11.1));
    expect(one.gaps).toEqual([{ from: at(5.5), to: at(11.1), cause: "stalled" }]);
  });

  it("count from the start where there was none before", () => {
    const one = kept();
    read(one, at(6));
    expect(one.gaps).toMatchObject([{ from: at(0), to: at(6) }]);
  });

  it("are replaced by a time that was vouched for, and not by one that was not", () => {
    const one = kept();
    read(one, at(4));
    one.gaps.push({ ...gap(5, 20), held: true });
    read(one, at(24));
    expect(one.gaps).toHaveLength(1);
    const other = kept();
    read(other, at(4));
    other.gaps.push({ ...gap(5, 20), held: false });
    read(other, at(24));
    expect(other.gaps).toMatchObject([{ held: false }, { from: at(4), to: at(24) }]);
  });

  it("that were missing before such a time are still missed", () => {
    const one = kept();
    read(one, at(1));
    one.gaps.push({ ...gap(9, 20), held: true });
    read(one, at(24));
    expect(one.gaps.at(-1)).toMatchObject({ from: at(1), to: at(24), cause: "stalled" });
  });

  it("take a gap inside the wait into one question, and leave others", () => {
    const one = kept();
    one.gaps.push(gap(1, 2));
    read(one, at(4));
    one.gaps.push(gap(6, 14));
    read(one, at(15));
    expect(one.gaps).toMatchObject([{ from: at(1) }, { from: at(4), to: at(15) }]);
  });

  it("of what is lost, or not known by readings, change nothing but the list", () => {
    const lost = kept();
    lose(lost, at(2), "lost");
    read(lost, at(20));
    expect(lost.gaps).toEqual([]);
    expect(lost.readAt).toEqual([at(20)]);
    const boil = begun();
    read(boil, at(20));
    expect(boil.readAt).toBeUndefined();
    const half = { ...newKept(30), readAt: [] };
    read(half, at(1));
    expect(half.readAt).toEqual([]);
  });

  it("that come out of order are held against those before them", () => {
    const one = kept();
    read(one, at(5));
    read(one, at(10));
    read(one, at(8));
    expect(one.gaps).toEqual([]);
    expect(achievedMinutes(one, at(9))).toBe(8);
  });
});
