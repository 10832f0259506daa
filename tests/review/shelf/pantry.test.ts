import fc from "fast-check";
import { beforeAll, describe, expect, it } from "vitest";
import { pantryText } from "../../../src/commands/record/pantry.ts";
import type { KitchenEvent } from "../../../src/kitchen/events.ts";
import { replay } from "../../../src/kitchen/evolve.ts";
import { countTrouble, jarCounts } from "../../../src/kitchen/jars/canner-room.ts";
import { DAY_MS } from "../../../src/kitchen/time.ts";
import { labelsOf } from "../../../src/review/shelf/labels.ts";
import { pantryOf } from "../../../src/review/shelf/pantry.ts";
import { BAD_SEAL, opening, playedEvents } from "../demo-season.ts";
import { LIBRARY } from "../kitchen-files.ts";

const BEANS = { recipe: "dilled-green-beans", variety: "Provider", weightLb: 4 } as const;
let beans: KitchenEvent[];
let badSeal: KitchenEvent[];

beforeAll(async () => {
  beans = await playedEvents(LIBRARY, { ...BEANS, jar: "pint" });
  badSeal = await playedEvents(LIBRARY, { ...BEANS, jar: "pint", script: BAD_SEAL });
});

function kitchen(events: readonly KitchenEvent[], more: readonly object[] = [], days = 30) {
  const last = events.at(-1) as KitchenEvent;
  const added = more.map((fact, n) => {
    const t = last.w + (n + 1) * 1000;
    return { cmd: `x${n}`, t, w: t, ...fact } as KitchenEvent;
  });
  const state = replay([...opening(events[0]?.t ?? 0), ...events, ...added]);
  return { state, now: last.w + days * DAY_MS, batch: Object.values(state.batches)[0]! };
}

describe("the pantry", () => {
  it("has the sealed jars of an as-tested batch on the shelf for a year", () => {
    const { state, now } = kitchen(beans);
    const { lines } = pantryOf(state, now);
    expect(lines).toMatchObject([
      { keep: "shelf", jars: 8, left: 8, putUp: "2027-08-14", by: "2028-08-13", place: "pantry" },
    ]);
    expect(lines[0]?.source).toContain("Guide 1");
  });

  it("keeps a jar that did not seal in the refrigerator, for days", () => {
    const { state, now } = kitchen(badSeal, [], 2);
    const { lines } = pantryOf(state, now);
    expect(lines.map(({ keep, jars, by }) => ({ keep, jars, by }))).toEqual([
      { keep: "refrigerate", jars: 1, by: "2027-08-21" },
      { keep: "shelf", jars: 7, by: "2028-08-13" },
    ]);
  });

  it("forgets an unsealed jar when nobody would still have it", () => {
    const { state, now } = kitchen(badSeal, [], 40);
    expect(pantryOf(state, now).lines.map((line) => line.keep)).toEqual(["shelf"]);
  });

  it("puts nothing on the shelf from a load nobody vouched for", () => {
    const doubted = beans.map((event) =>
      event.type === "end-answer" ? { ...event, yes: false } : event,
    );
    const { state, now } = kitchen(doubted);
    const { lines } = pantryOf(state, now);
    expect(lines.map((line) => line.keep)).toEqual(["refrigerate"]);
    expect(lines[0]?.why).toContain("not as tested");
  });

  it("puts nothing on the shelf from a batch with a critical factor nobody confirmed", () => {
    const unsaid = beans.filter((event) => {
      return !(event.type === "confirmed" && event.factor.includes("vinegar"));
    });
    expect(unsaid.length).toBeLessThan(beans.length);
    const { state, now } = kitchen(unsaid);
    expect(pantryOf(state, now).lines.map((line) => line.keep)).toEqual(["refrigerate"]);
  });

  it("never suggests eating what is past its use-by, but throwing it out", () => {
    const unsaid = beans.filter(({ type }) => type !== "confirmed");
    const fresh = kitchen(unsaid, [], 2);
    expect(pantryOf(fresh.state, fresh.now)).toMatchObject({ throwOut: [], eatFirst: [/./] });
    const old = kitchen(unsaid, [], 60);
    const found = pantryOf(old.state, old.now);
    expect(found).toMatchObject({ throwOut: [old.batch.id], eatFirst: [] });
    const text = pantryText(found);
    expect(text).not.toContain("Eat first");
    expect(text).toMatch(/^Throw out: .*past its use by[\s\S]*Do not taste it/m);
    // Past its best on the shelf is a matter of quality, and may be eaten.
    const best = kitchen(beans, [], 400);
    expect(pantryOf(best.state, best.now)).toMatchObject({
      throwOut: [],
      eatFirst: [best.batch.id],
    });
  });

  it("subtracts opened jars, a spoiled one as such, and follows the jars to another place", () => {
    const { batch } = kitchen(beans);
    const { state, now } = kitchen(beans, [
      { type: "jars-moved", batch: batch.id, place: "cellar" },
      { type: "jar-opened", batch: batch.id, count: 2, spoiled: false },
      { type: "jar-opened", batch: batch.id, count: 1, spoiled: true },
    ]);
    const found = pantryOf(state, now);
    expect(found.lines).toMatchObject([{ jars: 7, left: 5, opened: 2, place: "cellar" }]);
    expect(found.opened.map((one) => one.spoiled)).toEqual([false, true]);
  });

  it("holds a rehearsal's jars only where nothing but rehearsals was kept", () => {
    const rehearsed = opening(beans[0]?.t ?? 0).map((event) => {
      return event.type === "opened" ? { ...event, rehearsal: true } : event;
    });
    const alone = replay([...rehearsed, ...beans]);
    expect(pantryOf(alone, alone.lastW).lines.length).toBe(1);
    const [real] = beans.flatMap((event) => (event.type === "batch-begun" ? [event] : []));
    if (!real) throw new Error("no batch");
    const opened = opening(alone.lastW);
    const beside = replay([...rehearsed, ...beans, ...opened, { ...real, batch: "real" }]);
    expect(pantryOf(beside, beside.lastW).lines).toEqual([]);
  });

  it("always adds up with the seal check, whatever sealed, failed, was kept or opened", () => {
    const seals = fc.record({
      sealed: fc.nat(8),
      failed: fc.nat(8),
      numbered: fc.boolean(),
      disposed: fc.constantFrom("refrigerate", "freeze", "discard", "undecided"),
      asTested: fc.boolean(),
      loadDisposed: fc.constantFrom(null, "refrigerate", "freeze", "discard"),
      opened: fc.array(fc.record({ count: fc.integer({ min: 1, max: 3 }) })),
      spoiled: fc.nat(3),
    });
    const before = beans.filter((event) => event.type !== "sealed");
    const load = before.find((event) => event.type === "load-opened");
    if (load?.type !== "load-opened") throw new Error("no load");
    fc.assert(
      fc.property(seals, (given) => {
        const failed = Math.min(given.failed, 8 - Math.min(8, given.sealed));
        const sealed = 8 - failed;
        const jars = given.numbered ? Array.from({ length: failed }, (_, i) => i + 1) : [];
        const ids = { load: load.load, batch: load.batch };
        const what = given.disposed;
        const of = { type: "disposed", owner: load.load, option: null };
        const facts: object[] = [];
        if (failed > 0) {
          facts.push({ type: "seal-failed", ...ids, count: failed, jars });
          facts.push({ ...of, code: "seal-failed", what, count: null });
        }
        if (sealed > 0) facts.push({ type: "sealed", ...ids, count: sealed });
        if (given.loadDisposed) {
          facts.push({ ...of, code: "process-short", what: given.loadDisposed, count: null });
        }
        for (const one of given.opened)
          facts.push({ type: "jar-opened", batch: load.batch, ...one });
        const events = before.map((event) =>
          event.type === "end-answer" ? { ...event, yes: given.asTested } : event,
        );
        const { state, now, batch } = kitchen(events, facts, 1);
        const { lines, troubles } = pantryOf(state, now);
        const off = { type: "spoiled", ...ids, count: given.spoiled, jars: [], sign: "off" };
        const later = kitchen(events, given.spoiled > 0 ? [...facts, off] : facts, 1);
        expect(jarCounts(later.state, later.batch).spoiled).toBe(given.spoiled);
        expect(countTrouble(later.state, later.batch)).toBe(countTrouble(state, batch));
        const jarsOf = (list: typeof lines) => list.reduce((sum, line) => sum + line.jars, 0);
        const because = (why: RegExp) => lines.filter((line) => why.test(line.why));
        const others = because(/^$|^not as tested/);
        const kept = given.loadDisposed === null ? sealed : 0;
        expect(jarsOf(others)).toBe(kept);
        expect(jarsOf(because(/did not seal/))).toBe(what === "discard" ? 0 : failed);
        const aside = given.loadDisposed === "discard" ? 0 : sealed - kept;
        expect(jarsOf(because(/short process/))).toBe(aside);
        expect(jarCounts(state, batch)).toMatchObject({ sealed: kept, failed });
        const wanted = given.opened.reduce((sum, one) => sum + one.count, 0);
        const opened = others.reduce((sum, line) => sum + line.opened, 0);
        expect(opened).toBe(Math.min(wanted, jarsOf(others)));
        for (const line of lines) expect(line.left).toBe(line.jars - line.opened);
        for (const line of lines) expect(line.left).toBeGreaterThanOrEqual(0);
        expect(troubles.length > 0).toBe(wanted > jarsOf(others));
        const shelf = lines.filter((line) => line.keep === "shelf");
        expect(jarsOf(shelf)).toBe(given.asTested ? kept : 0);
        const labels = labelsOf(state, batch, now);
        expect(labels.filter((label) => label.keep === "shelf")).toHaveLength(jarsOf(shelf));
        expect(labels).toHaveLength(jarsOf(lines));
        const numbers = labels.flatMap((label) => label.jar ?? []);
        expect(new Set(numbers).size).toBe(numbers.length);
      }),
      { numRuns: 200 },
    );
  });
});
