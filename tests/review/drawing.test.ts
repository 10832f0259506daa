import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { localIso, parseIso } from "../../src/kitchen/time.ts";
import { html, raw } from "../../src/review/pages/html.ts";
import { axisTicks, timeAxis } from "../../src/review/pages/time-axis.ts";
import { joined, minutesAtOrAbove, type Point, thinnedPoints } from "../../src/review/trace.ts";
import { ZONE } from "./demo-season.ts";

const MINUTE = 60_000;
const point = fc.record({ at: fc.nat(10_000_000), value: fc.integer({ min: -50, max: 300 }) });
const trace = fc.array(point, { minLength: 1, maxLength: 3000 }).map((list) => {
  return [...list].sort((a, b) => a.at - b.at);
});

describe("a trace made thinner", () => {
  it("keeps the first, the last, the lowest and the highest, and the order", () => {
    fc.assert(
      fc.property(trace, fc.integer({ min: 4, max: 200 }), (points, most) => {
        const few = thinnedPoints(points, most);
        expect(few.length).toBeLessThanOrEqual(Math.max(most, 4));
        expect(few[0]).toEqual(points[0]);
        expect(few.at(-1)).toEqual(points.at(-1));
        const values = (list: Point[]) => list.map((one) => one.value);
        expect(Math.min(...values(few))).toBe(Math.min(...values(points)));
        expect(Math.max(...values(few))).toBe(Math.max(...values(points)));
        let last = -1;
        for (const one of few) {
          const at = points.indexOf(one);
          expect(at).toBeGreaterThan(last);
          last = at;
        }
      }),
      { numRuns: 60 },
    );
  });

  it("still shows a drop of a single reading among a hundred thousand", () => {
    const points = Array.from({ length: 100_000 }, (_, i) => ({ at: i * 1000, value: 11 }));
    const dip = { at: 43_210_500, value: 3 };
    points.splice(43_211, 0, dip);
    expect(thinnedPoints(points, 600)).toContainEqual(dip);
  });
});

describe("minutes at or above a line", () => {
  it("are counted by straight lines between readings", () => {
    const points = [0, 10, 20, 30].map((minute, i) => {
      return { at: minute * MINUTE, value: [0, 20, 20, 0][i] ?? 0 };
    });
    expect(minutesAtOrAbove(points, 10)).toBe(20);
    expect(minutesAtOrAbove(points, 21)).toBe(0);
    expect(minutesAtOrAbove(points, 0)).toBe(30);
  });

  it("are not made up across half an hour without a reading", () => {
    const points = [
      { at: 0, value: 20 },
      { at: 31 * MINUTE, value: 20 },
    ];
    expect(minutesAtOrAbove(points, 10)).toBe(0);
    expect(joined(points)).toHaveLength(2);
  });

  it("are not counted across a reported loss, however close the readings", () => {
    const points = [0, 2, 4, 6].map((minute) => ({ at: minute * MINUTE, value: 14 }));
    const losses = [{ from: 2 * MINUTE, to: 4 * MINUTE }];
    expect(minutesAtOrAbove(points, 14)).toBe(6);
    expect(minutesAtOrAbove(points, 14, losses)).toBe(4);
    expect(joined(points, losses)).toHaveLength(2);
  });
});

describe("a time axis", () => {
  it("runs forward from 0 to 1, with every wait drawn", () => {
    fc.assert(
      fc.property(fc.array(fc.nat(1_000_000_000), { minLength: 1, maxLength: 60 }), (instants) => {
        const axis = timeAxis(instants);
        const sorted = [...instants].sort((a, b) => a - b);
        expect(axis.at(axis.from)).toBe(0);
        expect(axis.at(axis.to)).toBe(1);
        let last = 0;
        for (const instant of sorted) {
          expect(axis.at(instant)).toBeGreaterThanOrEqual(last);
          last = axis.at(instant);
        }
        for (const tick of axisTicks(axis, ZONE, 9, MINUTE)) {
          expect(tick).toBeGreaterThanOrEqual(axis.from);
          expect(tick).toBeLessThanOrEqual(axis.to);
          expect(axis.breaks.some((wait) => tick > wait.from && tick < wait.to)).toBe(false);
        }
      }),
    );
  });

  it("draws a night as short as an hour and a half, and labels what follows", () => {
    const [evening, night] = [parseIso("2027-08-14T20:00:00", ZONE) ?? 0, 11 * 60 * MINUTE];
    const axis = timeAxis([evening, evening + 90 * MINUTE, evening + night + 90 * MINUTE]);
    expect(axis.breaks).toEqual([{ from: evening + 90 * MINUTE, to: axis.to }]);
    expect(axis.at(evening + 90 * MINUTE)).toBe(0.5);
    expect(axis.at(evening + (90 * MINUTE + night / 2))).toBe(0.75);
    expect(axisTicks(axis, ZONE, 9, MINUTE).slice(0, 2)).toEqual([evening, axis.to]);
  });

  it("has hours in a morning and midnights in weeks, also where clocks are set", () => {
    const labels = (from: string, minutes: number, leastMs: number) => {
      const start = parseIso(from, ZONE) ?? 0;
      const axis = timeAxis([start, start + minutes * MINUTE], Number.POSITIVE_INFINITY);
      return axisTicks(axis, ZONE, 6, leastMs).map((at) => localIso(at, ZONE).slice(5, 16));
    };
    expect(labels("2027-08-14T08:10:00", 170, MINUTE)).toEqual([
      ...["08-14T08:30", "08-14T09:00", "08-14T09:30", "08-14T10:00", "08-14T10:30"],
      "08-14T11:00",
    ]);
    // Clocks are set back on November 7.
    const days = labels("2027-10-30T08:10:00", 28 * 1440, 1440 * MINUTE);
    expect(days.length).toBeGreaterThan(3);
    for (const day of days) expect(day).toMatch(/^1\d-\d\dT00:00$/);
  });
});

describe("markup", () => {
  it("escapes every value that is not markup already", () => {
    const bad = `<script>alert("x")</script>'&`;
    expect(html`<p title="${bad}">${bad}${raw("<b>ok</b>")}</p>`.markup).toBe(
      '<p title="&lt;script&gt;alert(&quot;x&quot;)&lt;/script&gt;&#39;&amp;">' +
        "&lt;script&gt;alert(&quot;x&quot;)&lt;/script&gt;&#39;&amp;<b>ok</b></p>",
    );
  });
});
