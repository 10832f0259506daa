import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { KitchenEvent } from "../../src/kitchen/events.ts";
import { apply, replay } from "../../src/kitchen/evolve.ts";
import { jarCounts } from "../../src/kitchen/jars/canner-room.ts";
import { ready } from "../../src/kitchen/jars/lots.ts";
import { runOfRole } from "../../src/kitchen/owners.ts";
import { initialState, type State } from "../../src/kitchen/state.ts";
import { review } from "../../src/review/batch-log.ts";
import { eventsOf, recordOf } from "../../src/session/reading/journal-records.ts";
import { day, hour, live } from "./life.ts";
import { hadItsTime } from "./watched-time.ts";

const DAYS = Number(process.env.DAYS ?? 20);
const SEED = Number(process.env.SEED ?? 14);

/**
 * Everything in a state except its history, the recipes it merely carries along, and the course of
 * the day, which is worked out and never written down.
 */
function plain({ history: _, course: __, ...rest }: State): string {
  return JSON.stringify(rest, (key, value) => {
    return key === "recipe" || key === "spec" ? value.id : value;
  });
}

/** The events as they come back from the lines of a journal. */
function throughJournal(history: KitchenEvent[], state: State): KitchenEvent[] {
  return eventsOf(JSON.parse(JSON.stringify(history.map((event) => recordOf(state, event)))));
}

describe("any day in a kitchen", () => {
  it("is replayed to the same state, from a cut at any event", async () => {
    await fc.assert(
      fc.asyncProperty(day, async (one) => {
        const { history, rehearsal } = await live(one);
        const { state } = rehearsal.kitchen.session;
        const read = throughJournal(history, state);
        expect(plain(replay(read))).toBe(plain(state));
        const growing = initialState();
        read.forEach((event, index) => {
          apply(growing, event);
          expect(plain(replay(read.slice(0, index + 1)))).toBe(plain(growing));
        });
      }),
      { numRuns: DAYS, seed: SEED },
    );
  }, 120_000);

  it("records what is due once, asks once, and counts no jars below zero", async () => {
    await fc.assert(
      fc.asyncProperty(day, async (one) => {
        const { history, rehearsal } = await live(one);
        const { state } = rehearsal.kitchen.session;
        const keys = history.flatMap((event) => {
          return event.type === "due" || event.type === "asked"
            ? [`${event.type} ${event.key}`]
            : [];
        });
        // Only a timer that is lengthened after it rang comes due again.
        const once = keys.filter((key) => !/^due \d+-T\d+$/.test(key));
        expect(new Set(once).size).toBe(once.length);
        for (const batch of Object.values(state.batches)) {
          const counts = jarCounts(state, batch);
          for (const count of Object.values(counts)) expect(count).toBeGreaterThanOrEqual(0);
          expect(ready(batch)).toBeGreaterThanOrEqual(0);
          expect(counts.sealed + counts.failed).toBeLessThanOrEqual(counts.processed);
        }
        expect(() => review(state, rehearsal.kitchen.session.now())).not.toThrow();
      }),
      { numRuns: DAYS, seed: SEED + 1 },
    );
  }, 120_000);

  it("never completes a process with less watched or vouched time than was tested", async () => {
    let complete = 0;
    await fc.assert(
      fc.asyncProperty(fc.oneof(hour, hour, day), async (one) => {
        const { history, rehearsal } = await live(one);
        const { state } = rehearsal.kitchen.session;
        for (const load of Object.values(state.loads)) {
          const process = runOfRole(load, "treatment");
          const ended = process?.state === "complete" && !process.endedShort;
          if (!ended || !load.terms) continue;
          complete += 1;
          expect(hadItsTime(history, load.id, load.terms.minutes)).toBe(true);
        }
        const log = review(state, rehearsal.kitchen.session.now());
        for (const { verdict, process } of [...log.batches, ...log.loads]) {
          if (verdict !== "as-tested" || !process) continue;
          expect(process.achievedMinutes).toBeGreaterThanOrEqual(process.testedMinutes);
        }
      }),
      { numRuns: 4 * DAYS, seed: SEED + 2 },
    );
    expect(complete).toBeGreaterThan(5);
  }, 120_000);
});
