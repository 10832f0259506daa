/** Each departure of a load from its process: when it is one, when it is not, and what it says. */
import { describe, expect, it } from "vitest";
import { batchDeviations } from "../../src/kitchen/deviations.ts";
import type { Jar } from "../../src/kitchen/jars/jar.ts";
import { loadJars } from "../../src/kitchen/jars/lots.ts";
import { runOfRole } from "../../src/kitchen/owners.ts";
import type {
  Batch,
  Gap,
  Load,
  LoadPart,
  StageRun,
  State,
  Stretch,
} from "../../src/kitchen/state.ts";
import { at, Story } from "./story.ts";

type Kitchen = { state: State; batch: Batch; load: Load; process: StageRun };

/** Eight jars in the canner since minute 60, fifteen minutes to be boiled, and nothing else. */
function loaded(stretches: Stretch[] = [], recipe = "dilled-green-beans"): Kitchen {
  const story = new Story();
  if (recipe === "snap-beans") {
    const canner = { id: "canner", name: "canner", gauge: DIAL } as const;
    story.happened(0, { type: "kitchen-set", canners: [{ ...canner, holds: { pint: 9 } }] });
  }
  const batch = story.begins(0, recipe);
  const load = story.loads(60, batch, 8);
  const process = runOfRole(load, "treatment") as StageRun;
  process.kept = { needMinutes: 15, stretches, gaps: [] };
  Object.assign(process, { state: "running", startedAt: at(65) });
  for (const run of batch.stages) delete run.endedShort;
  return { state: story.state, batch, load, process };
}

const DIAL = { kind: "dial", testedSeason: 2027, readsHighPsi: 0 } as const;

/** The jars are out at minute 100. */
function out(stretches: Stretch[] = WHOLE, recipe?: string): Kitchen {
  const kitchen = loaded(stretches, recipe);
  kitchen.load.unloadedAt = at(100);
  Object.assign(kitchen.process, { state: "complete", endedAt: at(85) });
  return kitchen;
}
const WHOLE: Stretch[] = [{ from: at(70), to: at(86), ended: "out" }];

const departed = ({ state, batch }: Kitchen, now = 110) => batchDeviations(state, batch, at(now));
const details = (kitchen: Kitchen, now = 110) => {
  return departed(kitchen, now).map(({ code, detail }) => `${code}: ${detail}`);
};
const disposed = (code: string, what: "freeze" | "discard") => ({ code, what, at: 0, count: null });

function partOf({ load }: Kitchen): LoadPart {
  return load.parts[0] as LoadPart;
}

describe("a boil that was lost", () => {
  const lost = (ended: NonNullable<Stretch["ended"]>, to = 72.25): Stretch => {
    return { from: at(70), to: at(to), ended };
  };

  it.each([
    ["lost", "boil-lost: lost after 2.3 of 15 min"],
    ["uncovered", "boil-lost: lids uncovered after 2.3 min"],
    ["off", "boil-lost: heat off after 2.3 min"],
  ] as const)("says after how many minutes, and how: %s", (ended, said) => {
    const kitchen = loaded([lost(ended)]);
    expect(details(kitchen)).toEqual([said]);
    const { id: stage } = kitchen.process;
    expect(departed(kitchen)).toMatchObject([{ stage, at: at(72.25), disposition: "undecided" }]);
  });

  it("is none while it runs, nor at its proper end", () => {
    expect(departed(loaded([{ from: at(70) }]))).toEqual([]);
    expect(departed(loaded([lost("out")]))).toEqual([]);
  });

  it("is one incident with the restart that answered it", () => {
    const kitchen = loaded([lost("lost"), { from: at(75) }]);
    expect(details(kitchen)).toEqual([
      "boil-lost: lost after 2.3 of 15 min",
      "process-restarted: the whole 15 min again",
    ]);
    expect(departed(kitchen)).toMatchObject([
      { disposition: "restarted", at: at(72.25) },
      { disposition: "restarted", at: at(75) },
    ]);
  });

  it.each(["unwatched", "raised"] as const)("is told elsewhere where it was %s", (ended) => {
    expect(details(loaded([lost(ended), { from: at(75) }]))).toEqual([
      "process-restarted: the whole 15 min again",
    ]);
    expect(departed(loaded([lost(ended)]))).toEqual([]);
  });

  it("has nothing to start over once the time was full", () => {
    expect(departed(loaded([lost("lost", 85)]))).toMatchObject([{ disposition: "carried-on" }]);
    expect(departed(loaded([lost("lost", 84.9)]))).toMatchObject([{ disposition: "undecided" }]);
  });

  it("became what was done about the short process", () => {
    const kitchen = loaded([lost("lost")]);
    kitchen.load.disposed.push(disposed("seal-failed", "discard"));
    expect(departed(kitchen)).toMatchObject([{ disposition: "undecided" }]);
    kitchen.load.disposed.push(disposed("process-short", "freeze"));
    expect(departed(kitchen)).toMatchObject([{ disposition: "freeze" }]);
  });

  it("is a loss of pressure in a canner under pressure", () => {
    expect(details(loaded([lost("lost")], "snap-beans"))).toEqual([
      "pressure-lost: lost after 2.3 of 15 min",
    ]);
  });
});

describe("a time nobody watched", () => {
  function unwatched(gap: Partial<Gap>, more: Stretch[] = []) {
    const kitchen = loaded([{ from: at(70) }, ...more]);
    const { kept } = kitchen.process;
    kept?.gaps.push({ from: at(72), to: at(75), cause: "away", ...gap });
    return kitchen;
  }

  it.each([
    [undefined, "unwatched: 3 min unwatched", "undecided"],
    [true, "unwatched: 3 min unwatched: it held", "carried-on"],
    [false, "unwatched: 3 min unwatched: it did not hold", "undecided"],
  ])("says what was answered: %s", (held, said, disposition) => {
    const kitchen = unwatched(held === undefined ? {} : { held });
    expect(details(kitchen)).toEqual([said]);
    expect(departed(kitchen)).toMatchObject([{ at: at(72), disposition, stage: "process" }]);
  });

  it("is none where it is too short to be asked about, unless it was answered", () => {
    expect(departed(unwatched({ to: at(72.4) }))).toEqual([]);
    expect(departed(unwatched({ to: at(72.4), held: true }))).toHaveLength(1);
  });

  it("was answered by a restart, from its end onward", () => {
    const disposition = (from: number) => {
      const list = departed(unwatched({ held: false }, [{ from: at(from) }]));
      return list.find(({ code }) => code === "unwatched")?.disposition;
    };
    expect(disposition(75)).toBe("restarted");
    expect(disposition(74)).toBe("undecided");
  });
});

describe("what was said or read against a process", () => {
  it("is a reading under the mark while it counted", () => {
    const kitchen = out();
    kitchen.load.readings.push({ at: at(75), what: "canner", value: 150, unit: "F" });
    expect(details(kitchen)).toEqual([
      expect.stringMatching(/^boil-lost: read 150 F, under the \d+(\.\d)? to be kept$/),
    ]);
    expect(departed(kitchen)).toMatchObject([{ at: at(75), disposition: "undecided" }]);
  });

  it.each([
    [
      "dilled-green-beans",
      "boil-lost: not a full boil throughout, or the lids not covered at the end",
    ],
    [
      "snap-beans",
      "pressure-lost: not at the pressure throughout, not vented, or not left to fall by itself",
    ],
  ])("is a no to the question about its end: %s", (recipe, said) => {
    const kitchen = out(WHOLE, recipe);
    const own = () => departed(kitchen).filter(({ at: when }) => when === at(90));
    kitchen.load.endAnswer = { at: at(90), yes: true };
    expect(own()).toEqual([]);
    kitchen.load.endAnswer = { at: at(90), yes: false };
    expect(own().map(({ code, detail }) => `${code}: ${detail}`)).toEqual([said]);
    expect(own()).toMatchObject([{ disposition: "undecided" }]);
    kitchen.load.disposed.push(disposed("process-short", "discard"));
    expect(own()).toMatchObject([{ disposition: "undecided" }]);
    kitchen.load.disposed.push(disposed(said.split(":")[0] ?? "", "freeze"));
    expect(own()).toMatchObject([{ disposition: "freeze" }]);
  });

  it("is a doubt that nobody settled, or that was so", () => {
    const kitchen = out();
    const heard = { text: "hm", strength: "suspicion", about: "jars", at: at(80) } as const;
    kitchen.load.heard.push({ ...heard });
    expect(details(kitchen)).toEqual(['unheard: "hm": nobody said how it was']);
    expect(departed(kitchen)).toMatchObject([{ at: at(80), disposition: "undecided" }]);
    kitchen.load.heard = [{ ...heard, settledAt: at(90), held: false }];
    expect(details(kitchen)).toEqual(['unheard: "hm": it was not all right']);
    kitchen.load.heard = [{ ...heard, settledAt: at(90), held: true }];
    expect(departed(kitchen)).toEqual([]);
  });

  it("is a yes to its end that was taken back", () => {
    const kitchen = out();
    kitchen.load.endReopened.push(at(95));
    expect(details(kitchen)).toEqual(["contradicted: the answer for its end was taken back"]);
    expect(departed(kitchen)).toMatchObject([{ at: at(95), stage: "process" }]);
  });

  it("is water that was low, with the lids covered or not", () => {
    const kitchen = out();
    kitchen.load.waterLow.push({ at: at(75), covered: true }, { at: at(76) });
    expect(details(kitchen)).toEqual([
      "water-low: topped up, lids still covered",
      "water-low: water low",
    ]);
    expect(departed(kitchen)).toMatchObject([{ at: at(75) }, { at: at(76) }]);
  });

  it("is a report that was written late", () => {
    const kitchen = out();
    kitchen.load.late.push({ at: at(70), written: at(73), what: "boil" });
    expect(details(kitchen)).toEqual(["written-late: boil: written 3 min after"]);
  });

  it("is a dial that nobody tested", () => {
    const kitchen = out(WHOLE, "snap-beans");
    expect(details(kitchen)).toEqual([]);
    kitchen.load.gauge = { kind: "dial" };
    expect(details(kitchen)).toEqual(["gauge-untested: the dial gauge was not tested this season"]);
    expect(departed(kitchen)).toMatchObject([{ at: kitchen.load.openedAt, stage: "process" }]);
  });
});

describe("the length of a process", () => {
  it("is short where its time was never whole, and open until something is done", () => {
    const kitchen = out([{ from: at(70), to: at(79.99), ended: "lost" }]);
    const short = () => departed(kitchen).filter(({ code }) => code === "process-short");
    expect(short()).toMatchObject([
      { at: at(100), detail: "9.9 of 15 min", disposition: "undecided", stage: "process" },
    ]);
    kitchen.load.disposed.push(disposed("process-short", "freeze"));
    expect(short()).toMatchObject([{ disposition: "freeze" }]);
    delete kitchen.load.unloadedAt;
    expect(short()).toEqual([]);
  });

  it("is short, too, where it was ended or left out on somebody's word", () => {
    const whole = () => out([{ from: at(70), to: at(90), ended: "out" }]);
    const ended = whole();
    ended.process.endedShort = true;
    expect(details(ended)).toEqual(["process-short: 20 of 15 min"]);
    const skipped = whole();
    skipped.process.state = "skipped";
    expect(details(skipped)).toEqual(["process-short: 20 of 15 min"]);
  });

  it("is long from more than ten minutes over it", () => {
    expect(departed(out([{ from: at(70), to: at(95), ended: "out" }]))).toEqual([]);
    const kitchen = out([{ from: at(70), to: at(96), ended: "out" }]);
    expect(details(kitchen)).toEqual(["process-long: 11 min over the tested time"]);
    expect(departed(kitchen)).toMatchObject([{ at: at(96), disposition: "carried-on" }]);
  });

  it("goes up to the jars coming out where nobody told of the heat", () => {
    expect(details(out([{ from: at(70) }]))).toEqual(["process-long: 15 min over the tested time"]);
  });
});

describe("an altitude that was raised while it ran", () => {
  function raised(kitchen: Kitchen, fromMinutes: number, fromPsi: number | null = null) {
    kitchen.load.raised.push({ at: at(75), fromMinutes, fromPsi, fromShown: 13 });
    return kitchen;
  }
  const what = (kitchen: Kitchen) => {
    return departed(kitchen).find(({ code }) => code === "altitude-raised")?.disposition;
  };

  it("says what was asked then and before", () => {
    const kitchen = raised(loaded([{ from: at(70) }]), 10);
    const { altitudeFt, minutes } = kitchen.load.terms ?? { altitudeFt: 0, minutes: 0 };
    expect(details(kitchen)).toEqual([
      `altitude-raised: at ${altitudeFt} ft ${minutes} min, not 10 min`,
    ]);
    expect(departed(kitchen)).toMatchObject([{ at: at(75), stage: "process" }]);
    if (kitchen.load.terms) kitchen.load.terms!.altitudeUncertaintyFt = 300;
    expect(details(kitchen)[0]).toContain(`at ${altitudeFt + 300} ft`);
  });

  it("was carried on, or started over at or after it", () => {
    expect(what(raised(loaded([{ from: at(70) }]), 10))).toBe("carried-on");
    expect(what(raised(loaded([{ from: at(74) }]), 10))).toBe("carried-on");
    expect(what(raised(loaded([{ from: at(70) }, { from: at(75) }]), 10))).toBe("restarted");
  });

  it("became what was done about a process that was ended short", () => {
    const kitchen = raised(loaded([{ from: at(70) }, { from: at(80) }]), 10);
    kitchen.process.endedShort = true;
    expect(what(kitchen)).toBe("undecided");
    kitchen.load.disposed.push(disposed("seal-failed", "discard"));
    expect(what(kitchen)).toBe("undecided");
    kitchen.load.disposed.push(disposed("process-short", "freeze"));
    expect(what(kitchen)).toBe("freeze");
  });

  it("names the pressure, too", () => {
    const kitchen = raised(loaded([{ from: at(70) }], "snap-beans"), 20, 11);
    const { minutes, pressurePsi: psi, altitudeFt } = kitchen.load.terms ?? {};
    expect(details(kitchen)).toEqual([
      `altitude-raised: at ${altitudeFt} ft ${minutes} min at ${psi} psi, not 20 min at 11 psi`,
    ]);
  });

  it("is a mark of the dial where the terms are the same", () => {
    const kitchen = loaded([{ from: at(70) }], "snap-beans");
    const { minutes = 0, pressurePsi = 0 } = kitchen.load.terms ?? {};
    kitchen.load.gauge = { ...DIAL, readsHighPsi: 1 };
    raised(kitchen, minutes, pressurePsi);
    const shown = (pressurePsi ?? 0) + 1;
    expect(details(kitchen)).toEqual([`pressure-lost: the dial had to show ${shown} psi, not 13`]);
  });
});

describe("jars after their process", () => {
  it("that stood too long before it are told so", () => {
    const kitchen = out();
    const part = partOf(kitchen);
    part.stood = { from: at(-60), mayMinutes: 120 };
    expect(departed(kitchen)).toEqual([]);
    part.stood = { from: at(-61), mayMinutes: 120 };
    expect(details(kitchen)).toEqual([
      "waited: 2 h 1 min from the first jar to the canner: 2 h at most",
    ]);
    expect(departed(kitchen)).toMatchObject([
      { at: at(60), stage: null, disposition: "undecided" },
    ]);
    delete kitchen.load.loadedAt;
    expect(departed(kitchen)).toEqual([]);
  });

  it("that did not seal are counted, and named where they are known", () => {
    const kitchen = out();
    const jars = loadJars(kitchen.state, kitchen.load);
    const check = runOfRole(kitchen.load, "seals") as StageRun;
    const failed = jars.filter(({ number }) => number === 3 || number === 5);
    for (const jar of failed) Object.assign(jar, { seal: "failed", guessed: true });
    expect(details(kitchen)).toEqual(["seal-failed: 2 did not seal"]);
    expect(departed(kitchen)).toMatchObject([
      { at: at(100), disposition: "undecided", stage: check.id },
    ]);
    for (const jar of failed) delete jar.guessed;
    kitchen.load.disposed.push(
      disposed("seal-failed", "freeze"),
      disposed("seal-failed", "discard"),
      disposed("process-short", "freeze"),
    );
    check.startedAt = at(800);
    expect(details(kitchen)).toEqual(["seal-failed: 2 did not seal (3, 5)"]);
    expect(departed(kitchen)).toMatchObject([{ at: at(800), disposition: "discard" }]);
    delete check.startedAt;
    delete kitchen.load.unloadedAt;
    expect(departed(kitchen)).toMatchObject([{ at: kitchen.load.openedAt }]);
  });

  it("are to be checked within a day of coming out", () => {
    const kitchen = out();
    const check = runOfRole(kitchen.load, "seals") as StageRun;
    const day = 100 + 24 * 60;
    expect(departed(kitchen, day)).toEqual([]);
    expect(details(kitchen, day + 125)).toEqual(["seal-check-late: 2 h 5 min past 24 h"]);
    expect(departed(kitchen, day + 125)).toMatchObject([{ at: at(day), stage: check.id }]);
    check.endedAt = at(day);
    expect(departed(kitchen, 9000)).toEqual([]);
    check.endedAt = at(day + 1);
    check.state = "abandoned";
    expect(departed(kitchen, 9000)).toEqual([]);
    check.state = "complete";
    expect(details(kitchen, 9000)).toEqual(["seal-check-late: 1 min past 24 h"]);
    delete kitchen.load.unloadedAt;
    expect(departed(kitchen, 9000)).toEqual([]);
  });

  it("are to cool for their time, unless all are to be processed again", () => {
    const kitchen = out();
    const cool = runOfRole(kitchen.load, "cooling") as StageRun;
    Object.assign(cool, { state: "complete", startedAt: at(100), endedAt: at(160) });
    expect(details(kitchen)).toEqual(["cool-short: 60 min of at least 12 h"]);
    const [first, ...others] = loadJars(kitchen.state, kitchen.load) as [Jar, ...Jar[]];
    for (const jar of others) jar.gone = { what: "again", at: at(101) };
    expect(departed(kitchen)).toHaveLength(1);
    first.gone = { what: "again", at: at(101) };
    expect(departed(kitchen, 9000)).toEqual([]);
    first.seal = "failed";
    expect(details(kitchen).join()).toContain("cool-short");
    delete first.seal;
    cool.state = "skipped";
    expect(departed(kitchen)).toEqual([]);
  });
});
