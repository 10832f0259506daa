/** Everything that keeps a load or a batch from being called as tested, one at a time. */
import { describe, expect, it } from "vitest";
import { MemoryDisk } from "../../src/journal/memory-disk.ts";
import { DEVIATION_CODES } from "../../src/kitchen/deviation-codes.ts";
import { runOfRole } from "../../src/kitchen/owners.ts";
import type { Load, State } from "../../src/kitchen/state.ts";
import { MINUTE_MS } from "../../src/kitchen/time.ts";
import { againstBatch, judgeBatch, judgeLoad } from "../../src/review/verdict.ts";
import { readKitchen } from "../../src/session/reading/read-kitchen.ts";
import { goldenJournal } from "../kitchen/facts/golden-journals.ts";

const disk = new MemoryDisk();
disk.makeFolder("/home");
disk.plant("/home/journal-2027.jsonl", Buffer.from(goldenJournal("season")));
const season = readKitchen("/home", { wallMs: 0, disk }).state;
const PRESSURE = "270705-L1";

function loadOf(state: State, id: string): Load {
  const load = state.loads[id];
  if (!load) throw new Error(`no load ${id}`);
  return load;
}

/** A load that was as tested, after one thing about it is changed. */
function judged(change: (load: Load, state: State) => void, id = PRESSURE) {
  const state = structuredClone(season);
  const load = loadOf(state, id);
  expect(judgeLoad(state, load)).toEqual({ verdict: "as-tested", reasons: [] });
  change(load, state);
  return judgeLoad(state, load);
}

function stage(load: Load, role: "treatment" | "venting" | "cooling") {
  const run = runOfRole(load, role);
  if (!run) throw new Error(`no ${role}`);
  return run;
}

function keptOf(load: Load) {
  const { kept } = stage(load, "treatment");
  const stretch = kept?.stretches.at(-1);
  if (!kept || !stretch) throw new Error("nothing was kept");
  return { kept, stretch };
}

/** Time nobody watched, ten minutes into the process. */
function leftAlone(load: Load, held?: boolean): void {
  const { kept, stretch } = keptOf(load);
  const from = stretch.from + 5 * MINUTE_MS;
  const gap = { from, to: from + 2 * MINUTE_MS, cause: "closed" as const };
  kept.gaps.push(held === undefined ? gap : { ...gap, held });
}

describe("a load that was as tested is not", () => {
  it.each<[string, RegExp, (load: Load) => void]>([
    [
      "whose process ended short",
      /^process-short: /,
      (load) => {
        stage(load, "treatment").endedShort = true;
      },
    ],
    [
      "whose process was left out",
      /^process-short: /,
      (load) => {
        stage(load, "treatment").state = "skipped";
      },
    ],
    [
      "whose pressure held a minute less",
      /^process-short: .* of \d+ minutes unbroken/,
      (load) => {
        const { kept, stretch } = keptOf(load);
        stretch.to = stretch.from + (kept.needMinutes - 1) * MINUTE_MS;
        stretch.ended = "lost";
      },
    ],
    ["whose minutes nobody watched", /^unwatched: nobody said/, (load) => leftAlone(load)],
    ["whose unwatched minutes were denied", /^process-short: /, (load) => leftAlone(load, false)],
    [
      "whose minutes are from before it was raised",
      /^process-short: /,
      (load) => {
        const { kept, stretch } = keptOf(load);
        kept.countsFrom = stretch.from + 1;
      },
    ],
    [
      "that was not vented",
      /the canner was not vented/,
      (load) => {
        stage(load, "venting").state = "skipped";
      },
    ],
    [
      "that was vented too short a time",
      /the vent was shorter than ten/,
      (load) => {
        stage(load, "venting").endedShort = true;
      },
    ],
    [
      "of whose end nobody said anything",
      /^nobody answered for the pressure/,
      (load) => {
        load.endAsked = true;
      },
    ],
    [
      "of whose end it was denied",
      /^not at the pressure throughout/,
      (load) => {
        load.endAsked = true;
        load.endAnswer = { at: 0, yes: false };
      },
    ],
    [
      "that was checked too early",
      /^cool-short: less than twelve hours/,
      (load) => {
        stage(load, "cooling").endedShort = true;
      },
    ],
    [
      "that was given up",
      /^abandoned$/,
      (load) => {
        load.state = "abandoned";
      },
    ],
    [
      "of which words were heard that were then owned to",
      /^unheard: "it hissed"$/,
      (load) => {
        const doubt = { at: 0, text: "it hissed", strength: "trace", about: "pressure" } as const;
        load.heard.push({ ...doubt, settledAt: 1, held: false });
      },
    ],
  ])("%s", (_, reason, change) => {
    const { verdict, reasons } = judged(change);
    expect(verdict).toBe("not-as-tested");
    expect(reasons.some((one) => reason.test(one))).toBe(true);
  });

  it("whose full boil nobody answered for", () => {
    const silent = judged((load) => delete load.endAnswer, "270701-L1");
    expect(silent.reasons).toEqual([expect.stringMatching(/^nobody answered for a full boil/)]);
  });

  it("settled while its jars are in, words that were heard are open, or the log is damaged", () => {
    const inside = judged((load) => delete load.unloadedAt);
    expect(inside.verdict).toBe("unfinished");
    const open = judged((load) => {
      load.heard.push({
        at: load.unloadedAt ?? 0,
        text: "it hissed",
        strength: "trace",
        about: "pressure",
      });
    });
    expect(open.verdict).toBe("unfinished");
    const seal = { seal: "s", file: "f", line: 3, reason: "", touches: [PRESSURE], at: 0 };
    const damaged = judged((_, state) => state.sealedLines.push({ ...seal }));
    expect(damaged.verdict).toBe("unfinished");
    const missing = judged((_, state) => state.sealedLines.push({ ...seal, held: false }));
    expect(missing.verdict).toBe("not-as-tested");
  });

  it("but may be, where its unwatched minutes were vouched for", () => {
    expect(judged((load) => leftAlone(load, true)).verdict).toBe("as-tested");
  });
});

describe("a batch is not as tested", () => {
  const AGAINST = ["critical-unrecorded", "headspace", "ingredient-changed", "waited"];

  it.each([...AGAINST, "contradicted"])("with the deviation %s", (code) => {
    const found = DEVIATION_CODES.find((one) => one === code);
    if (!found) throw new Error(`no code ${code}`);
    const one = {
      code: found,
      stage: null,
      at: 0,
      detail: "x",
      disposition: "carried-on",
    } as const;
    expect(againstBatch([one])).toEqual([`${code}: x`]);
  });

  it("with jars put in beside others whose time was shorter than their own", () => {
    const short = { code: "process-short", stage: null, at: 0, detail: "x" } as const;
    const one = { ...short, disposition: "undecided" } as const;
    expect(againstBatch([{ ...one, only: { lot: "b-1" } }])).toEqual(["process-short: x"]);
    // The load's own is counted with the load.
    expect(againstBatch([one])).toEqual([]);
  });

  it("where a stage was left out, or no jar was processed", () => {
    const state = structuredClone(season);
    const batch = state.batches[loadOf(state, PRESSURE).batch];
    if (!batch) throw new Error("no batch");
    expect(judgeBatch(state, batch, []).verdict).toBe("as-tested");
    const [first] = batch.stages;
    if (first) first.state = "skipped";
    expect(judgeBatch(state, batch, []).reasons).toEqual([expect.stringMatching(/^skipped: /)]);
    if (first) first.state = "complete";
    for (const load of Object.values(state.loads)) load.parts = [];
    expect(judgeBatch(state, batch, []).reasons).toEqual(["no jars were processed"]);
  });
});
