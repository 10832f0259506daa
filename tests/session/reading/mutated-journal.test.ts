/**
 * A journal with any fact in it that no program wrote opens, answers and continues. The gate alone
 * is tried on 100,000 in `tests/kitchen/facts/gate.test.ts`; by hand, whole kitchens are, too:
 * `MUTATED_FACTS=100000 npx vitest run tests/session/reading/mutated-journal.test.ts`.
 */
import { describe, expect, it } from "vitest";
import { MemoryDisk } from "../../../src/journal/memory-disk.ts";
import { openJournal } from "../../../src/journal/open-journal.ts";
import { agenda } from "../../../src/kitchen/agenda.ts";
import type { KitchenEvent } from "../../../src/kitchen/events.ts";
import { replay } from "../../../src/kitchen/evolve.ts";
import { faultOfEvent } from "../../../src/kitchen/facts/gate.ts";
import { questions } from "../../../src/kitchen/questions/questions.ts";
import { review } from "../../../src/review/batch-log.ts";
import { packedState } from "../../../src/session/reading/pack-state.ts";
import { readKitchen } from "../../../src/session/reading/read-kitchen.ts";
import { MadeUpKitchen } from "../../../src/session/rehearsal/made-up-kitchen.ts";
import { SILENT } from "../../../src/session/short-session.ts";
import { goldenEvents } from "../../kitchen/facts/golden-journals.ts";
import { mutated } from "../../kitchen/facts/mutated-facts.ts";
import { theLibrary } from "../../scenarios/play.ts";
import { type Dice, dice } from "../../simulation/dice.ts";

const TRIED = Number(process.env.MUTATED_FACTS ?? 2000);
const OPENED = Math.ceil(TRIED / 50);
const SEED = Number(process.env.SEED ?? 5);
const JOURNALS = [goldenEvents("every-kind"), goldenEvents("later-kinds")];
const EVENTS = JOURNALS.flat();
const LAST = Math.max(...EVENTS.map(({ w }) => w));
const HOME = "/home";
/** However odd a fact is, opening takes no more of a processor than this, ms. */
const LONGEST_MS = 5000;

function processorMs(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

function diskWith(records: readonly object[]): MemoryDisk {
  const disk = new MemoryDisk();
  const added = openJournal(disk, HOME, { year: () => 2027 }).journal.append(records);
  if (!added.ok) throw new Error(added.message);
  return disk;
}

function kitchenOn(disk: MemoryDisk): MadeUpKitchen {
  return new MadeUpKitchen({
    library: theLibrary(),
    startMs: LAST + 60_000,
    zone: "America/Denver",
    setUp: [],
    disk,
    folder: HOME,
    version: "0.0.0",
    voice: () => SILENT,
  });
}

function asTested(disk: MemoryDisk): string[] {
  const { state, nowMs } = readKitchen(HOME, { wallMs: 0, disk });
  const { batches, loads } = review(state, nowMs);
  return [...batches, ...loads].flatMap((one) => (one.verdict === "as-tested" ? [one.id] : []));
}

/** Opens, answers, goes on in a fresh file, dies and opens again; what went wrong, if anything. */
function lived(records: readonly object[]): string | undefined {
  const disk = diskWith(records);
  const began = processorMs();
  try {
    asTested(disk);
    const kitchen = kitchenOn(disk);
    for (const words of ["what now", "yes", "note still here", "undo"]) kitchen.session.hear(words);
    kitchen.clock.advance(60_000);
    kitchen.crash(60_000);
    kitchen.session.hear("what's running");
    if (kitchen.session.notRecorded) return "it does not go on in a fresh file";
    const before = asTested(disk);
    kitchen.session.close();
    if (JSON.stringify(asTested(disk)) !== JSON.stringify(before)) return "closing changes it";
  } catch (error) {
    return String((error as Error).stack);
  }
  const took = processorMs() - began;
  return took > LONGEST_MS ? `it takes ${took} ms` : undefined;
}

/** Works out what opening shows, without the disk; what went wrong, if anything. */
function workedOut(events: readonly KitchenEvent[]): string | undefined {
  const began = processorMs();
  try {
    const state = replay(events);
    questions(state);
    agenda(state, state.lastW + 1000);
    JSON.stringify(review(state, state.lastW));
    packedState(state);
  } catch (error) {
    return String((error as Error).stack);
  }
  const took = processorMs() - began;
  return took > LONGEST_MS ? `it takes ${took} ms` : undefined;
}

/** A journal in which one fact is as no program wrote it, and whether the gate lets it through. */
function oddJournal(chance: Dice): { events: KitchenEvent[]; odd: string; kept: boolean } {
  const journal = chance.pick(JOURNALS);
  const at = chance.whole(0, journal.length - 1);
  const odd = JSON.stringify(mutated(chance, journal[at] as KitchenEvent, EVENTS));
  const kept = faultOfEvent(JSON.parse(odd)) === undefined;
  const events = [...journal.slice(0, at), JSON.parse(odd), ...journal.slice(at + 1)];
  return { events, odd: odd.slice(0, 1000), kept };
}

describe("a journal with a fact that no program wrote", () => {
  it("opens, answers and continues", { timeout: OPENED * 1000 + 60_000 }, () => {
    const chance = dice(SEED);
    for (let left = OPENED; left > 0; left -= 1) {
      const { events, odd } = oddJournal(chance);
      expect([lived(events), odd]).toEqual([undefined, odd]);
    }
  });

  it("is replayed completely where the gate lets it through", {
    timeout: TRIED * 100 + 60_000,
  }, () => {
    const chance = dice(SEED + 1);
    let passed = 0;
    for (let left = TRIED; left > 0; left -= 1) {
      const { events, odd, kept } = oddJournal(chance);
      if (!kept) continue;
      passed += 1;
      expect([workedOut(events), odd]).toEqual([undefined, odd]);
    }
    if (TRIED > 2000) console.log(`${TRIED} tried, ${passed} through the gate, ${OPENED} opened`);
    expect(passed).toBeGreaterThan(TRIED / 20);
    expect(passed).toBeLessThan(TRIED / 2);
  });
});
