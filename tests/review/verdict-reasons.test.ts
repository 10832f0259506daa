/** What a verdict says, word for word, where each of its conditions is just met or just missed. */

import { describe, expect, it } from "vitest";
import { MemoryDisk } from "../../src/journal/memory-disk.ts";
import { loadJars } from "../../src/kitchen/jars/lots.ts";
import { runOfRole } from "../../src/kitchen/owners.ts";
import type { Batch, Load, State } from "../../src/kitchen/state.ts";
import { MINUTE_MS } from "../../src/kitchen/time.ts";
import { againstBatch, judgeBatch, judgeLoad, verdictOf } from "../../src/review/verdict.ts";
import { readKitchen } from "../../src/session/reading/read-kitchen.ts";
import { goldenJournal } from "../kitchen/facts/golden-journals.ts";

const disk = new MemoryDisk();
disk.makeFolder("/home");
disk.plant("/home/journal-2027.jsonl", Buffer.from(goldenJournal("season")));
const season = readKitchen("/home", { wallMs: 0, disk }).state;
const PRESSURE = "270705-L1";
const BOILING = "270701-L1";

function copied(id = PRESSURE): { state: State; load: Load; batch: Batch } {
  const state = structuredClone(season);
  const load = state.loads[id];
  const batch = state.batches[load?.batch ?? ""];
  if (!load || !batch) throw new Error(`no load ${id}`);
  return { state, load, batch };
}

function reasonsOf(change: (load: Load, state: State) => void, id = PRESSURE): string[] {
  const { state, load } = copied(id);
  change(load, state);
  return judgeLoad(state, load).reasons;
}

function process(load: Load) {
  const run = runOfRole(load, "treatment");
  if (!run?.kept) throw new Error("no process");
  return { run, kept: run.kept };
}

describe("the reasons of a load", () => {
  it("are that its jars are still inside, or that it has no process", () => {
    const inside = ["the jars are not out of the canner yet"];
    expect(reasonsOf((load) => delete load.unloadedAt)).toEqual(inside);
    expect(reasonsOf((load) => delete process(load).run.kept)).toEqual(inside);
    expect(
      reasonsOf((load) => {
        load.stages = [];
      }),
    ).toEqual(inside);
  });

  it("say the unbroken minutes to a tenth, never rounded up", () => {
    const short = reasonsOf((load) => {
      const { run, kept } = process(load);
      run.endedShort = true;
      kept.stretches = [{ from: 0, to: 9.99 * MINUTE_MS, ended: "lost" }];
      kept.needMinutes = 20;
      load.readings = [];
    });
    expect(short).toEqual(["process-short: 9.9 of 20 minutes unbroken and watched"]);
  });

  it("are that no dial was tested this season, under pressure and nowhere else", () => {
    const untested = { kind: "dial" } as const;
    const reason = "gauge-untested: the dial gauge was not tested this season";
    const dial = (gauge: Load["gauge"]) => (load: Load) => {
      load.gauge = gauge;
      // What is judged here is whether it was tested.
      load.readings = [];
    };
    expect(reasonsOf(dial(untested))).toContain(reason);
    expect(reasonsOf(dial({ ...untested, untestedSeason: 2027 }))).toContain(reason);
    expect(reasonsOf(dial({ ...untested, testedSeason: 2027 }))).not.toContain(reason);
    expect(reasonsOf(dial({ kind: "weighted" }))).not.toContain(reason);
    expect(reasonsOf(dial(null))).not.toContain(reason);
    expect(reasonsOf(dial(untested), BOILING)).not.toContain(reason);
  });

  it("are a cooling cut short, unless every jar goes through again", () => {
    const short = (again: number, failedAgain = 0) =>
      reasonsOf((load, state) => {
        const cool = runOfRole(load, "cooling");
        if (cool) cool.endedShort = true;
        loadJars(state, load).forEach((jar, index) => {
          if (index < again) jar.gone = { what: "again", at: 0 };
          if (index < failedAgain) jar.seal = "failed";
          else delete jar.seal;
        });
      }).join();
    const given = copied();
    const jars = loadJars(given.state, given.load).length;
    expect(short(0)).toMatch(/^cool-short/);
    expect(short(jars)).toBe("");
    expect(short(jars, 1)).toMatch(/^cool-short/);
    expect(short(jars - 1)).toMatch(/^cool-short/);
  });

  it("name the stage whose unwatched minutes nobody answered for", () => {
    const asked = reasonsOf((load) => {
      const { kept } = process(load);
      const from = kept.stretches.at(-1)?.from ?? 0;
      kept.gaps.push({ from: from + 1, to: from + MINUTE_MS, cause: "closed" });
    });
    expect(asked.join()).toMatch(/unwatched: nobody said whether the process held/);
  });

  it("are that a time from memory was compared with no guide, or with another", () => {
    const remembered = (load: Load) => {
      if (load.terms) load.terms.reading = "remembered";
    };
    expect(reasonsOf(remembered).join()).toMatch(/nobody compared/);
  });
});

describe("the verdict on a batch", () => {
  it("is unfinished while it runs, or where it was given up", () => {
    const running = copied();
    running.batch.state = "running";
    expect(judgeBatch(running.state, running.batch, [])).toEqual({
      verdict: "unfinished",
      reasons: ["the batch is still running"],
    });
    const given = copied();
    given.batch.state = "abandoned";
    expect(judgeBatch(given.state, given.batch, [])).toEqual({
      verdict: "unfinished",
      reasons: ["abandoned"],
    });
  });

  it("says by which minutes and whose table it is as tested", () => {
    const { state, batch, load } = copied();
    const { verdict, reasons } = judgeBatch(state, batch, []);
    expect(verdict).toBe("as-tested");
    expect(reasons).toEqual([`the whole ${load.terms?.minutes} minutes, by ${load.terms?.source}`]);
    expect(verdictOf(state, batch, state.lastW).verdict).toBe("as-tested");
    load.terms = null;
    expect(judgeBatch(state, batch, []).reasons).toEqual([]);
  });

  it("holds an altitude against it that nobody vouches for, and no other doubt", () => {
    const doubt = { code: "altitude-doubt", stage: null, at: 0, detail: "205 F" } as const;
    expect(againstBatch([{ ...doubt, disposition: "undecided" }])).toEqual([
      "altitude-doubt: 205 F",
    ]);
    expect(againstBatch([{ ...doubt, disposition: "carried-on" }])).toEqual([]);
    const late = { ...doubt, code: "written-late", disposition: "undecided" } as const;
    expect(againstBatch([late])).toEqual([]);
  });

  it("lets a stage be left out that is only a date", () => {
    const { state, batch } = copied();
    const date = batch.stages.at(-1);
    if (date) date.state = "skipped";
    expect(judgeBatch(state, batch, []).verdict).toBe("as-tested");
  });

  it("judges no load whose jars of it all went again", () => {
    const { state, batch, load } = copied();
    for (const jar of loadJars(state, load)) jar.gone = { what: "again", at: 0 };
    expect(judgeBatch(state, batch, []).reasons).toEqual(["no jars were processed"]);
  });

  it("is open where one of its loads, or a damaged line, is", () => {
    const { state, batch, load } = copied();
    load.heard.push({
      at: load.unloadedAt ?? 0,
      text: "it hissed",
      strength: "trace",
      about: "pressure",
    });
    expect(judgeBatch(state, batch, []).verdict).toBe("unfinished");
    const other = copied();
    const seal = { seal: "s", file: "f", line: 3, reason: "", at: 0, touches: [other.batch.id] };
    other.state.sealedLines.push(seal);
    expect(judgeBatch(other.state, other.batch, []).verdict).toBe("unfinished");
  });

  it("is none of a shelf's where there was no canner", () => {
    const without = (change: Partial<Batch["recipe"]>) => {
      const { state, batch } = copied();
      batch.option = null;
      batch.recipe = { ...batch.recipe, ...change };
      return judgeBatch(state, batch, []);
    };
    const nothing = { verdict: "no-process", reasons: ["seed: there is nothing to process"] };
    expect(without({ keptAs: "seed" })).toEqual(nothing);
    expect(without({ keptAs: "dry" })).toEqual(nothing);
    expect(without({ keptAs: "refrigerator", tested: true })).toEqual({
      verdict: "not-shelf-stable",
      reasons: ["no canner process: keep it in the refrigerator"],
    });
    const untested = without({ keptAs: "refrigerator", tested: false });
    expect(untested.reasons).toEqual([
      "no tested source: keep it in the refrigerator, never on the shelf",
    ]);
    const held = without({ keptAs: "refrigerator", tested: false, heldBack: "too thick" });
    expect(held.reasons[0]).toMatch(/^too thick: /);
  });
});
